package syntax

import (
	"slices"
	"strings"

	"stitchproof/lang/inflect"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
)

// A pattern tells a leaf or a thorn once, under a heading or a label of its own, and calls for
// it by that name wherever one grows: `Ch 10, leaf, ch 6, leaf.` Such a part is a word of the
// pattern's own.

// mostPartWords is how many words the name of such a part has at most.
const mostPartWords = 3

// stepsAlone are what words of an instruction that name no stitch say by themselves, in lower case: what a step
// that only calls for a part may be.
func stepsAlone(tokens []Token, text string) []string {
	var out []string
	start := 0
	for i := 0; i <= len(tokens); i++ {
		if i < len(tokens) && !separates(tokens[i]) && tokens[i].Kind != Open && tokens[i].Kind != Close && tokens[i].Kind != Star {
			continue
		}
		run := tokens[start:i]
		start = i + 1
		if i < len(tokens) && tokens[i].Kind == Colon {
			continue // it is a label
		}
		for len(run) > 0 && run[0].Kind == Word && (run[0].Canon == "" || run[0].Canon == "work") {
			run = run[1:]
		}
		if len(run) > 1 && run[0].Kind == Number {
			run = run[1:] // `2 long shoots`
		}
		if len(run) > 0 && len(run) <= mostPartWords && !slices.ContainsFunc(run, func(t Token) bool { return !callsPart(t) }) {
			out = append(out, strings.Clone(fold(text[run[0].Span.Start:run[len(run)-1].Span.End])))
		}
	}
	return out
}

// callsPart tells a word that a part may be called by.
func callsPart(t Token) bool {
	return t.Kind == Name && len(t.Canon) > 2 && !speaks[t.Canon] && !tells[t.Canon] || t.Kind == Word && t.Canon == "group"
}

// partArticle stands before the name of a part in its heading.
var partArticle = phrase.MustCompile(`^(?:the|an?|each|every|one|any) `)

// partName is what a heading or a label calls a part.
func partName(heading string) string {
	name, _, _ := strings.Cut(fold(strings.Trim(heading, headMarks+".")), "(")
	name = partArticle.ReplaceAllString(strings.TrimSpace(name), "")
	if len(strings.Fields(name)) > mostPartWords || namesARow(name) {
		return ""
	}
	return name
}

// ownParts are the names of the parts that steps of others call for.
func (d *document) ownParts() []string {
	called := map[string]int{} // in which chapter, -1 for several
	chapter := 0
	for i := range d.blocks {
		b := &d.blocks[i]
		if b.kind == blockHeading {
			chapter = i
		}
		for _, name := range b.digest.alone {
			if at, known := called[name]; known && at != chapter {
				called[name] = -1
			} else if !known {
				called[name] = chapter
			}
		}
	}
	if len(called) == 0 {
		return nil
	}
	var out []string
	begun := false // steps stand below the heading
	for i := range d.blocks {
		b := &d.blocks[i]
		name := ""
		switch b.kind {
		case blockHeading:
			begun = false
			name = partName(b.names[0])
			if i+1 == len(d.blocks) || d.blocks[i+1].kind != blockText || !d.laysBranch(d.blocks[i+1].span) {
				continue
			}
		case blockText:
			if name = d.partLabel(b.span); name == "" || begun && d.dotted(b.span) {
				begun = begun || d.works(b)
				continue
			}
		}
		asked := func(name string) bool {
			at, known := called[name]
			return known && (b.kind == blockText || at != i)
		}
		if (asked(name) || asked(inflect.Plural(name))) && !slices.Contains(out, name) {
			out = append(out, name)
		}
	}
	return out
}

// dotted tells a line of which the name is parted from the work by a stop, as a sentence may be.
func (d *document) dotted(line source.Span) bool {
	m := labelOfPart.FindStringSubmatchIndex(d.text(line))
	return d.text(line)[m[3]] == '.'
}

// labelOfPart is a line that tells a part behind its name: `PETAL: ch 8, …`, `Thorn. ch 5.`
var labelOfPart = phrase.MustCompile(`^[*_]{0,2}(\pL[\pL ’'-]{1,24})[:.][*_]{0,2} (\S.*)`)

// partLabel is what a line calls the part that it tells, "" for a line that tells none.
func (d *document) partLabel(line source.Span) string {
	text := d.text(line)
	m := labelOfPart.FindStringSubmatchIndex(text)
	if m == nil || !d.laysBranch(source.Span{Start: line.Start + m[4], End: line.Start + m[5]}) {
		return ""
	}
	return partName(text[m[2]:m[3]])
}

// laysBranch tells an instruction without a label that lays a chain and no more than a branch has, or works back along
// what it lays.
func (d *document) laysBranch(span source.Span) bool {
	r := readRow(d.text(span), 0, Standard())
	chain := laysFirst(r)
	return chain != nil && (len(r.Clauses) == 1 || chain.Number.At(0) < surelyFoundation || worksBack(r))
}

// laysFirst is the chain that an instruction without a label begins with, nil for none and for one without a number.
func laysFirst(r *Row) *Chain {
	if r.Label.Kind != Unlabelled || len(r.Clauses) == 0 {
		return nil
	}
	if chain, lays := r.Clauses[0].Node.(*Chain); lays && chain.Number.Written() {
		return chain
	}
	return nil
}

// worksBack tells a row that works along the chain that it begins with.
func worksBack(r *Row) bool {
	found := false
	Walk(r.Clauses, func(c Clause) { found = found || fromHook(c.Node) })
	return found
}

// ownPart reads all lines of a chapter that tells a part as the meaning of its name, where others
// call for it.
func (d *document) ownPart(c *chapter, heading *block) {
	name := partName(heading.names[0])
	if !slices.Contains(d.asked, name) || len(c.pieces) != 1 {
		return
	}
	rows := c.pieces[0].Rows
	if other := slices.IndexFunc(rows[1:], tellsElse); other >= 0 {
		rows = rows[:other+1]
	}
	body := source.Span{Start: rows[0].At, End: rows[len(rows)-1].Span().End}
	c.part = &Definition{
		Names: []string{name}, Span: body, NameSpan: heading.nameSpan, Text: strings.Clone(d.text(body)), Special: true, Row: d.inOneRow(rows, body),
	}
}

// tellsElse tells a line below a part that is not understood, and so may tell of something else: `MAGIC RING: an adjustable
// loop of yarn`.
func tellsElse(r *Row) bool {
	return slices.ContainsFunc(r.Clauses, func(c Clause) bool { _, unread := c.Node.(*Unread); return unread })
}

// inOneRow reads rows that stand one below the other as one: without their labels, and with a stop between them.
func (d *document) inOneRow(rows []*Row, body source.Span) *Row {
	text := []byte(d.text(body))
	for i, r := range rows {
		if i > 0 && !endsSentence(rows[i-1].Text) {
			text[rows[i-1].Span().End-body.Start] = '.'
		}
		if (r.Label.Kind != Unlabelled || goesByLetter.MatchString(r.Text)) && len(r.Clauses) > 0 {
			copy(text[r.At-body.Start:], strings.Repeat(" ", r.Clauses[0].Span.Start))
		}
	}
	return readRow(string(text), body.Start, d.words)
}

// labelledPart reads a line that tells a part as the meaning of its label, where steps call for
// that, and tells whether it is one.
func (d *document) labelledPart(b *block) bool {
	if len(d.asked) == 0 {
		return false
	}
	name := d.partLabel(b.span)
	if name == "" || !slices.Contains(d.asked, name) {
		return false
	}
	m := labelOfPart.FindStringSubmatchIndex(d.text(b.span))
	if d.dotted(b.span) && d.chapter.begun() {
		return false // `Stalk. 9 ch; …` is a step of what is worked there
	}
	at := func(i int) source.Span { return source.Span{Start: b.span.Start + m[i], End: b.span.Start + m[i+1]} }
	body := source.Span{Start: at(4).Start, End: b.span.End}
	d.chapter.definitions = append(d.chapter.definitions, &Definition{
		Names: []string{name}, Span: b.span, NameSpan: at(2), Text: strings.Clone(d.text(body)), Special: true, Row: d.newRow(body),
	})
	return true
}
