package syntax

import (
	"slices"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

// A Markdown file is read as it stands: its marks are passed over where words are
// cut, so every position is that of the file. What its marks mean beyond that,
// the lines of a table and of what stands before the text, is told here.

// markup finds what is no word of the pattern: a link's brackets and target, an
// image, a tag, a space by name.
var markup = phrase.MustCompile(`!\[[^\]\n]*\]\([^()\n]*\)|\]\((?:https?:|mailto:|#|\.{0,2}/)[^()\s]*\)|</?[A-Za-z][^<>\n]{0,60}>|&(?:nbsp|ensp|emsp|thinsp);`)

// marked gives the stretches of a text that are marks and no words, in order.
func marked(text string) []source.Span {
	out := itemLetters(text)
	if !strings.ContainsAny(text, "<&") && !strings.Contains(text, "](") {
		return out
	}
	for _, at := range markup.FindAllStringIndex(text, -1) {
		if text[at[0]] == ']' {
			open := strings.LastIndexByte(text[:at[0]], '[')
			if open < 0 {
				continue
			}
			out = append(out, source.Span{Start: open, End: open + 1})
		}
		out = append(out, source.Span{Start: at[0], End: at[1]})
	}
	return out
}

// itemLetter is the letter of an item within a step, a line each, the first perhaps behind the
// step's number: `2. a) Ch 10.` above `b) Ch 6.`
var itemLetter = phrase.MustCompile(`(?:^|\n)[ \t]*(?:[-*] |\d{1,2}[.)] ?)?(\(?(?:[a-z]|[ivx]{1,4})\)) +[A-Za-z\d\[]`)

// mostBeforeItem is how far into a text the bracket behind a letter stands that the text begins with.
const mostBeforeItem = 16

// itemLetters are where such letters stand, which are no words.
func itemLetters(text string) []source.Span {
	if at := strings.IndexByte(text, ')'); at < 0 || at > mostBeforeItem && !strings.Contains(text, "\n") {
		return nil
	}
	var out []source.Span
	for _, at := range itemLetter.FindAllStringSubmatchIndex(text, -1) {
		out = append(out, source.Span{Start: at[2], End: at[3]})
	}
	return out
}

// tableRow tells a row of a table.
func tableRow(line string) bool { return strings.HasPrefix(line, "|") }

// inCells tells a row of a table, whether strokes or blanks part its cells.
func inCells(line string) bool { return tableRow(line) || columnGaps(line) != nil }

var (
	// columnsRow is a row of a table that is set in columns with blanks alone: `7-9   sc in each st   24   A`.
	columnsRow = phrase.MustCompile(`^\s*(?:(?i:rnds?|rounds?|rows?|steps?|r)\.? ?)?\d+(?: ?[-–] ?\d+)?[.:)]?(?: {2,}|\t)[^\n]*?[^\s,;](?:(?: {3,}|\t)\S| {2}[\[(]?\d+[\])]?\s*(?:\n|$))`)
	cellGap    = phrase.MustCompile(` {3,}|\t+| {2}[\[(]?\d+[\])]?$`)
	firstGap   = phrase.MustCompile(`\d[.:)]?( {2,}|\t+)`)
)

// columnGaps are where the cells of such a row end, in a text that begins with one. The number
// that it begins with may stand closer to what follows it than the others.
func columnGaps(text string) []int {
	if !strings.Contains(text, "  ") && !strings.Contains(text, "\t") || !columnsRow.MatchString(text) {
		return nil
	}
	line, _, _ := strings.Cut(text, "\n")
	line = strings.TrimRightFunc(line, isBlank)
	first := firstGap.FindStringSubmatchIndex(line)
	gaps := []int{first[2]}
	for _, at := range cellGap.FindAllStringIndex(line[first[3]:], -1) {
		gaps = append(gaps, first[3]+at[0])
	}
	return gaps
}

// cellsOf are the cells of a row of a table: `| ch | chain |`.
func cellsOf(row string) []string {
	cells := strings.Split(strings.Trim(row, "|"), "|")
	for i := range cells {
		cells[i] = strings.TrimSpace(cells[i])
	}
	return cells
}

var (
	// underline stands below a heading.
	underline = phrase.MustCompile(`^(?:={3,}|-{3,})$`)
	// rule stands between parts of a text.
	rule = phrase.MustCompile(`^(?:(?:[*-] +){2,}[*-]|_{3,}|[=~]{3,}|-{3,})$`)
	// anchor is a line of a table of contents: a link within the page.
	anchor = phrase.MustCompile(`^(?:[-*+]|\d+\.)?\s*\[[^\]]*\]\(#[^()]*\)$`)
	// fence begins and ends a block that is shown as it is typed.
	fence = phrase.MustCompile("^(?:```+|~~~+)[a-z]*$")
)

// frontMatter is how many lines at the beginning of a file hold its fields
// between two rules, the rules with them; 0 for none.
func frontMatter(t *source.Text) int {
	if strings.TrimRight(t.Slice(t.Line(0)), " \r\n") != "---" {
		return 0
	}
	for i := 1; i < min(t.Lines(), longestFrontMatter); i++ {
		switch strings.TrimRight(t.Slice(t.Line(i)), " \r\n") {
		case "---", "...":
			return i + 1
		}
	}
	return 0
}

// longestFrontMatter is the most lines looked at for the end of front matter.
const longestFrontMatter = 60

// fronted takes a line of the front matter: a field where its key is known.
func (d *document) fronted(trimmed, line string, span source.Span) {
	if fence := strings.Trim(trimmed, "-."); fence != "" {
		if f, ok := readField(line, span.Start); ok {
			f.unquote()
			d.file.Header = append(d.file.Header, f)
			return
		}
	}
	d.add(block{kind: blockProse, span: span})
}

// unquote takes the quotes off a field's value.
func (f *Field) unquote() {
	if n := len(f.Value); n > 1 && (f.Value[0] == '"' || f.Value[0] == '\'') && f.Value[n-1] == f.Value[0] {
		f.Value = f.Value[1 : n-1]
		f.ValueSpan.Start++
		f.ValueSpan.End--
	}
}

// underlined tells a heading by the line below it, which the head of a table in columns has too.
func (d *document) underlined(trimmed string, at int) bool {
	return underline.MatchString(d.bare(at+1)) && !underline.MatchString(trimmed) && len(columns.FindAllStringIndex(trimmed, 2)) < 2 && len(strings.Fields(trimmed)) <= maxNamed+4 &&
		!strings.HasSuffix(trimmed, ".") && !labelled(trimmed)
}

// listItem is how many tokens of a line number it in a list, before a label that
// says which row it is: `2. **Row 1:**`, `- [ ] Row 1:`.
func listItem(tokens []Token) int {
	at := 0
	for at < len(tokens) && (tokens[at].Kind == Dash || tokens[at].Kind == Hyphen || tokens[at].Kind == Star && at == 0) {
		at++
	}
	switch {
	case len(tokens) > at+3 && tokens[at].Kind == Number && (tokens[at+1].Kind == Period || tokens[at+1].Kind == Close):
		at += 2
	case len(tokens) > at+4 && tokens[at].Kind == Open && tokens[at+1].Canon == "x" && tokens[at+2].Kind == Close:
		at += 3
	case len(tokens) > at+3 && tokens[at].Kind == Open && tokens[at+1].Kind == Close:
		at += 2
	default:
		return 0
	}
	next := at
	for next < len(tokens)-1 && tokens[next].Kind == Star {
		next++
	}
	if tokens[next].Kind == Word && leadsToRow[tokens[next].Canon] {
		for next++; next < len(tokens)-1 && tokens[next].Kind == Number; {
			next++
		}
	}
	if next == len(tokens) {
		return 0
	}
	if !namesRow(tokens[next]) || tokens[next].Kind == Ordinal {
		return 0
	}
	return at
}

// leadsToRow are the words that tell which row it is, before the word itself: `4. Last row:`, `5. Next 3 rows:`.
var leadsToRow = map[string]bool{"next": true, "last": true, "foundation": true, "beg": true, "base": true, "each": true}

// itemNumbers takes the bare numbers of the piece for those of a list, where
// another item of it says which row it is: `1. Ch 10.` above `2. Row 1: …`.
func (p *Piece) itemNumbers() {
	listed := slices.ContainsFunc(p.Rows, func(r *Row) bool {
		return r.Label.Kind == Numbered && r.Label.Span.Start > r.Tokens[0].Span.Start && r.Tokens[0].Kind == Number
	})
	for _, r := range p.Rows {
		if listed && r.Label.Bare && !inCells(r.Text) {
			r.Instruction = r.asItem()
		}
	}
}

// asItem is the instruction with its number taken for that of a list's item, which
// is no label.
func (r *Instruction) asItem() *Instruction {
	item := *r
	item.Label = Label{Text: r.Label.Text, Span: r.Label.Span, Item: r.Label.First(0)}
	return &item
}

// instructsIn tells whether a later cell of a table's row holds steps, so that a
// count before it is no step.
func instructsIn(tokens []Token) bool {
	for i := 0; i < len(tokens); {
		end := i
		for end < len(tokens) && tokens[end].Canon != "|" {
			end++
		}
		if cell := tokens[i:end]; len(cell) > 0 && asTotal(cell) == nil && slices.ContainsFunc(cell, func(t Token) bool { return t.Kind == Stitch || beginsAction(t) }) {
			return true
		}
		i = end + 1
	}
	return false
}

// numberFirst reads a step of which the number stands in bold with its title, `**2. Shoot A.** 9 ch`, as one that has the
// number before the bold: `2. **Shoot A.** 9 ch`. The star stands in the blank
// before the title then, and a filler where it was.
func (l *scanner) numberFirst(tokens []Token) []Token {
	if len(tokens) < 6 || tokens[0].Kind != Star || tokens[0].Canon != "**" || tokens[1].Kind != Number || tokens[1].Values.PerSize() ||
		tokens[1].Values.At(0) < 1 || !strings.Contains(".)", l.text[tokens[2].Span.Start:tokens[2].Span.End]) || tokens[2].Span.End == tokens[3].Span.Start || namesRow(tokens[3]) {
		return tokens
	}
	for i := 4; i < min(len(tokens), 4+mostInBold); i++ {
		if tokens[i].Kind != Star {
			continue
		}
		if tokens[i].Canon != "**" || tokens[i-1].Kind != Period && tokens[i-1].Kind != Comma {
			break
		}
		star := tokens[0]
		star.Span = source.Span{Start: tokens[2].Span.End, End: tokens[3].Span.Start}
		tokens[0].Kind, tokens[0].Canon = Word, ""
		return slices.Insert(tokens, 3, star)
	}
	return tokens
}

// emphasis passes over the stars around a stated count, or around words that are no steps,
// which mark no repeat: `*(24 sts)*`, `*second twig:* ch 5`, `with **B**`.
func emphasis(tokens []Token) {
	for i := 0; i+1 < len(tokens); i++ {
		if tokens[i].Kind != Star || tokens[i].Span.End != tokens[i+1].Span.Start {
			continue
		}
		end := i + lead(tokens[i:])
		if end == i {
			end += emphasized(tokens[i:])
		}
		if end > i {
			for _, k := range [...]int{i, end} {
				tokens[k].Kind, tokens[k].Canon = Word, ""
			}
			continue
		}
		if tokens[i+1].Kind != Open {
			continue
		}
		for j := i + 2; j+1 < len(tokens); j++ {
			if tokens[j].Kind == Open || tokens[j].Kind == Star {
				break
			}
			if tokens[j].Kind != Close {
				continue
			}
			if last := tokens[j+1]; last.Kind == Star && last.Canon == tokens[i].Canon && counts(tokens[i+2:j]) {
				for _, k := range [...]int{i, j + 1} {
					tokens[k].Kind, tokens[k].Canon = Word, ""
				}
			}
			break
		}
	}
}

// emphasized finds the star that ends words such as a yarn's letter, or a sentence of no
// stitches, where a star begins them, 0 where they may be steps that are worked again.
func emphasized(tokens []Token) int {
	end := 1 + slices.IndexFunc(tokens[1:min(len(tokens), maxEmphasized)], func(t Token) bool { return t.Kind == Star })
	if end < 2 || tokens[end].Canon != tokens[0].Canon || tokens[end].Span.Start > tokens[end-1].Span.End {
		return 0
	}
	inside := tokens[1:end]
	last := inside[len(inside)-1].Kind
	sentence := (last == Period || last == Comma) && !holds(inside, Stitch)
	if after := tokens[end+1:]; len(after) > 0 && (after[0].Kind == Number && !(sentence && len(after) > 1 && after[1].Canon == "ch") ||
		after[0].Canon == "rep" || after[0].Span.Start == tokens[end].Span.End && !separates(after[0])) {
		return 0
	}
	step := func(t Token) bool { return t.Kind != Name && t.Kind != Word || beginsAction(t) }
	ownWord := len(inside) == 1 && inside[0].Kind == Stitch && inside[0].Stitch == (stitch.Meaning{})
	if !sentence && !ownWord && slices.ContainsFunc(inside, step) {
		return 0
	}
	return end
}

// maxEmphasized is the most tokens of a sentence in bold or italics.
const maxEmphasized = 24

// lead finds the star that ends such words where a star begins them, 0 for none.
func lead(tokens []Token) int {
	for i := 1; i < len(tokens)-1 && i <= maxNamed+1; i++ {
		switch t, next := tokens[i], tokens[i+1]; {
		case i > 1 && t.Kind == Colon && next.Kind == Star && next.Canon == tokens[0].Canon && t.Span.End == next.Span.Start:
			return i + 1
		case i > 1 && t.Kind == Star && t.Canon == tokens[0].Canon && next.Kind == Colon && tokens[i-1].Span.End == t.Span.Start:
			return i
		case i > 1 && numbersPart(t) && (next.Kind == Colon || next.Kind == Star): // `**Side 1:** …`
		case t.Kind != Name && t.Kind != Word && t.Kind != Ordinal && t.Kind != Hyphen:
			return 0
		}
	}
	return 0
}

// setApart reads a stated count in bold, or between strokes, or a sentence of it in italics, as one in brackets: `join.
// **24 sts**`, `join /24 sts/`, `*Branch A: 14 sc.*`, `*24*`. So it does what is said of a chain between two
// dashes: `ch 3 - the ch 3 is the first dc - 2 dc in ring`.
func setApart(tokens []Token) {
	for i := range tokens {
		star := tokens[i].Kind == Star && (i == 0 || separates(tokens[i-1]))
		bold, slanted := star && tokens[i].Canon == "**", star && tokens[i].Canon == "*"
		stroke := tokens[i].Kind == Sign && tokens[i].Canon == "/"
		dash := tokens[i].Kind == Dash
		if !bold && !slanted && !stroke && !dash {
			continue
		}
		inside := slices.IndexFunc(tokens[i+1:], func(t Token) bool { return t.Kind == tokens[i].Kind && t.Canon == tokens[i].Canon })
		if inside < 1 {
			continue
		}
		end := i + 1 + inside
		if dash {
			if ofChain(tokens[i+1 : end]) {
				tokens[i].Kind, tokens[end].Kind = Open, Close
			}
			continue
		}
		hugs := tokens[i].Span.End == tokens[i+1].Span.Start && tokens[end-1].Span.End == tokens[end].Span.Start
		last := end == len(tokens)-1 || separates(tokens[end+1]) || slanted || bold && tokens[end+1].Kind == Open && ofEach(tokens[end+1:])
		if inside := tokens[i+1 : end]; hugs && last && (counts(inside) || countAfterName(inside) != nil || saysWhat(inside)) && !(slanted && inside[len(inside)-1].Kind != Period && !(len(inside) == 1 && inside[0].Kind == Number)) {
			tokens[i].Kind, tokens[end].Kind = Open, Close
		}
	}
}

// ofChain tells words that say what a chain just made stands for: `the ch 3 is the first dc`, `this is the first tr`.
func ofChain(tokens []Token) bool {
	says := slices.IndexFunc(tokens, func(t Token) bool { return t.Canon == "is" || t.Canon == "count" })
	if says < 0 || tokens[len(tokens)-1].Kind != Stitch {
		return false
	}
	return !slices.ContainsFunc(tokens[:says], func(t Token) bool { return t.Kind != Number && t.Canon != "ch" && t.Canon != "" })
}
