package syntax

import (
	"iter"
	"slices"
	"strings"
	"unicode"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

// definition takes `sc = single crochet` and, before the first row, `Fan:
// (3 dc in next st)` wherever they stand.
func (d *document) definition(trimmed string, span source.Span) bool {
	if d.started || labelled(trimmed) || laysPart(trimmed) {
		return false
	}
	return d.definedSo(trimmed, span) || d.defined(trimmed, span, false)
}

// isMade begins a sentence that can only say how something is made: `A barb is: ch 3, …`.
var isMade = phrase.MustCompile(`^(?:An?|Each|Every|One) [^:.,]+ (?:is|are|is made|is worked)(?: (?:like this|like so|as follows|so|thus|this way))*: `)

// definitionWithin takes such a sentence where the work has begun.
func (d *document) definitionWithin(trimmed string, span source.Span) bool {
	return d.started && isMade.MatchString(trimmed) && d.definedSo(trimmed, span)
}

// laysPart tells a line that lays the chain of a part, `Main stem: ch 30.`: no word of a pattern's
// own stands for so many chains.
func laysPart(trimmed string) bool {
	_, rest, found := strings.Cut(trimmed, ": ")
	if !found {
		return false
	}
	r := readRow(rest, 0, Standard())
	chain, only := r.onlyChain()
	return only && chain.Number.At(0) >= surelyFoundation
}

// mostTitle is how long a sentence is at most that is the title of what comes, in bytes: `The foot of the stem.`
const mostTitle = 24

// laysChainAlone tells a line that does nothing but lay the chain that work begins with: `Ch 8.`, `With A, ch 20
// for the foot of the stem.`, `The foot. Make a slip knot and ch 14.`
func laysChainAlone(trimmed string) bool {
	laid := false
	for i, c := range readRow(trimmed, 0, Standard()).Clauses {
		if _, said := c.Node.(*Unread); said && i == 0 && c.Sep == SepStop && c.Span.Len() <= mostTitle {
			continue
		}
		switch n := c.Node.(type) {
		case *Chain:
			if laid || n.Counts.Said || n.Number.At(0) <= MostRising {
				return false
			}
			laid = true
		case *Yarn, *MakeUp:
		case *Remark:
			if !laid && !boldTitle.MatchString(trimmed) {
				return false
			}
		default:
			return false
		}
	}
	return laid
}

// onlyChain is the chain of an instruction that says nothing else.
func (r *Instruction) onlyChain() (chain *Chain, only bool) {
	if len(r.Clauses) != 1 {
		return nil, false
	}
	chain, only = r.Clauses[0].Node.(*Chain)
	return chain, only
}

// tellsHow takes a sentence that says how something of the pattern's own is made: `A thorn is
// made like this: ch 3, …`, `Each "Needle" is: ch 4, …`, `To make a barb: ch 2, …`, `**Thorn:** ch 4, …`.
var tellsHow = phrase.MustCompile(`^[-–•* ]*(?:(?:An?|Each|Every|One|The|(?:To )?(?:[Mm]ake|[Ww]ork)(?: (?:an?|each|the|one))?) |\*\*)["“”'‘’]?(\pL[\pL -]+?)["“”'‘’]?` +
	`(?: (?:is|are|made|worked|done|always|every time|each time|like this|like so|as follows|so|thus|this way))*:(?:\*\*)? *([^.]+)(?:\.\s.*|\.)?$`)

// definedSo reads such a sentence.
func (d *document) definedSo(trimmed string, span source.Span) bool {
	m := tellsHow.FindStringSubmatchIndex(trimmed)
	if m == nil {
		return false
	}
	name, meaning := trimmed[m[2]:m[3]], trimmed[m[4]:m[5]]
	if names := definedNames(name); len(names) != 1 || knownWord(name) && !varies(name) || namesARow(name) || !readsAsWork(meaning) || !readsWhole(meaning) {
		return false
	}
	if bold := trimmed[m[2]-1] == '*'; bold && afterChain(Lex(meaning, Standard()), 0) == 0 {
		return false
	}
	at := span.Start + strings.Index(d.text(span), trimmed)
	d.add(block{
		kind: blockDefinition, span: source.Span{Start: at, End: at + len(trimmed)}, names: []string{name},
		nameSpan: source.Span{Start: at + m[2], End: at + m[3]}, body: source.Span{Start: at + m[4], End: at + m[5]}, special: true,
	})
	return true
}

// definitionMarks separate a word from its meaning; of a word in bold or in italics they may
// stand among its marks.
var definitionMarks = [...]string{" = ", "=", ": ", ":** ", ":* ", ":__ ", ":_ ", " – ", " — ", " - ", " … ", " → ", " : "}

// markOf is what parts a word from its meaning without what stands around it.
func markOf(text string, at source.Span) string { return strings.Trim(text[at.Start:at.End], " *_") }

// marksIn are the marks that may part a text into a word and its meaning, in the order in
// which they are tried: the dots of a list set in two columns, the end of a word in bold, a sign of equality, each of the
// others where it stands first, the first of them before the rest, and the blanks between two columns.
func marksIn(text string) iter.Seq[source.Span] {
	return func(yield func(source.Span) bool) {
		if at := dotsLead.FindStringIndex(text); at != nil && !yield(source.Span{Start: at[0], End: at[1]}) {
			return
		}
		if at := boldWord.FindStringSubmatchIndex(text); at != nil && !yield(source.Span{Start: at[2], End: at[3]}) {
			return
		}
		var found []source.Span
		for _, mark := range definitionMarks {
			if at := strings.Index(text, mark); at >= 0 {
				found = append(found, source.Span{Start: at, End: at + len(mark)})
			}
		}
		slices.SortStableFunc(found, func(a, b source.Span) int {
			equals := func(s source.Span) bool { return strings.Contains(text[s.Start:s.End], "=") }
			if equals(a) != equals(b) {
				if equals(a) {
					return -1
				}
				return 1
			}
			return a.Start - b.Start
		})
		for _, span := range found {
			if !yield(span) {
				return
			}
		}
		if at := twoColumns.FindStringSubmatchIndex(text); at != nil {
			yield(source.Span{Start: at[2], End: at[3]})
		}
	}
}

// marksIn are the marks in a line, after which comes the one blank before the column of meanings: a word may fill
// the other one.
func (d *document) marksIn(trimmed string, span source.Span) iter.Seq[source.Span] {
	return func(yield func(source.Span) bool) {
		for mark := range marksIn(trimmed) {
			if !yield(mark) {
				return
			}
		}
		last := d.last()
		if last == nil || last.kind != blockDefinition || !d.adjoins(last.span.End, span.Start) {
			return
		}
		text := d.file.Text
		above := text.Slice(source.Span{Start: text.Line(text.LineOf(last.body.Start)).Start, End: last.body.Start})
		column := len(above) - strings.Index(text.Slice(span), trimmed)
		if !strings.HasSuffix(above, "  ") {
			return // set in no columns
		}
		if word := strings.IndexByte(trimmed, ' '); word > 1 && word+1 == column && column < len(trimmed) && trimmed[column] != ' ' {
			yield(source.Span{Start: word, End: column})
		}
	}
}

// boldWord is a word in bold with its meaning right after it, and what stands between them: `**ch** chain`.
var boldWord = phrase.MustCompile(`^(?:[-*•–+] +)?\*\*[^*.:=]{1,30}(\*\* )[\pL\d(]`)

// twoColumns are the blanks of a list that is set in two columns, of a word and its meaning.
var twoColumns = phrase.MustCompile(`^\pL[^\s.,;:]*(?: [^\s.,;:]+)?( {2,}|\t+)\S`)

// inList tells a line that stands in a list of definitions and defines no word
// itself: `* * = repeat to the end`, `3x – three single crochets`.
func (d *document) inList(trimmed string, span source.Span) bool {
	b := d.last()
	if b == nil || b.kind != blockDefinition && !b.listed || !d.adjoins(b.span.End, span.Start) || labelled(trimmed) {
		return false
	}
	if word, meaning, found := strings.Cut(trimmed, " "); found && !d.started && shapingWord(word) && meaning[:1] >= "0" && meaning[:1] <= "9" {
		at := span.Start + strings.Index(d.text(span), trimmed)
		end := at + len(trimmed)
		d.add(block{ // `inc 2 dc in one st`
			kind: blockDefinition, span: source.Span{Start: at, End: end}, names: []string{word},
			nameSpan: source.Span{Start: at, End: at + len(word)}, body: source.Span{Start: end - len(meaning), End: end},
		})
		return true
	}
	for mark := range marksIn(trimmed) {
		if m := markOf(trimmed, mark); m != ":" && m != "" && len(Lex(trimmed[:mark.Start], Standard())) <= maxNamed {
			d.add(block{kind: blockProse, span: span, listed: true})
			return true
		}
	}
	return false
}

// shapingWord tells the name of an increase or a decrease.
func shapingWord(word string) bool {
	tokens := Lex(word, Standard())
	return len(tokens) == 1 && tokens[0].Kind == Stitch && tokens[0].Stitch.Shapes()
}

// defined reads `name mark meaning`.
func (d *document) defined(trimmed string, span source.Span, special bool) bool {
	line := d.file.Text.Slice(span)
	at := span.Start + strings.Index(line, trimmed)
	if !special && spellsSeveral(trimmed) {
		return d.inFull(trimmed, at)
	}
	for cut := range d.marksIn(trimmed, span) {
		name, mark, meaning := trimmed[:cut.Start], markOf(trimmed, cut), trimmed[cut.End:]
		if strings.TrimSpace(meaning) == "" || mark == "" && d.section == "" {
			continue
		}
		names := definedNames(name)
		if len(names) == 0 || !special && namesARow(names[0]) {
			continue
		}
		if !special && definesSeveral(trimmed) {
			meaning, _, _ = strings.Cut(meaning, ";") // the first of them tells
		}
		bodyAt := at + cut.End
		if word, n := calledAlso(meaning); n > 0 {
			names, meaning, bodyAt = append(names, word), meaning[n:], bodyAt+n
		}
		bodyEnd := at + len(trimmed)
		if how := madeSo.FindStringSubmatchIndex(meaning); how != nil && !readsAsWork(meaning[:how[2]]) && readsWhole(meaning[how[2]:how[3]]) {
			bodyAt, bodyEnd = bodyAt+how[2], bodyAt+how[3]
		}
		known := knownWord(names[0]) && !callsAnew(names, meaning) || callsRow(names[0], meaning) || callsColour(names[0], meaning)
		if mark == ":" && known && !special && !knownStitch(names[0]) && strings.ContainsAny(meaning, "0123456789") && readsAsWork(meaning) {
			continue // `Foundation: ch 35`
		}
		if known && !special && d.section == "" && mark == ":" && !spellsOut(names[0], meaning) {
			continue // `Above: the leaf before blocking`
		}
		if !special && (hasSizes(meaning) || mark == ":" && inCapitals(name) && opensWork(meaning)) {
			continue // `SLEEVES: 36 (39, 42) ch`, `BORDER: With A, …`
		}
		if !special && !known && d.section == "" && strings.Contains(mark, "...") {
			continue // `MOTIF (make 9) ... With A, ch 2`
		}
		if !special && !known && mark != "=" && !readsAsWork(meaning) {
			continue
		}
		d.add(block{
			kind: blockDefinition, span: source.Span{Start: at, End: span.End}, names: names,
			nameSpan: source.Span{Start: at, End: at + len(strings.TrimRight(name, " "))},
			body:     source.Span{Start: bodyAt, End: bodyEnd},
			special:  special && !actions[canonOf(names[0])] || !known && !(strings.Contains(mark, "...") && !readsWhole(meaning)) || varies(names[0]) && strings.ContainsAny(meaning, "0123456789") && readsAsWork(meaning),
		})
		return true
	}
	if _, _, full := cutBeforeFull(trimmed); full || d.section == "abbreviations" {
		return d.inFull(trimmed, at)
	}
	return false
}

// inFull takes an entry of a list of abbreviations that has no mark before what the word
// is short for, or a line of several.
func (d *document) inFull(trimmed string, at int) bool {
	first := trimmed
	if parts := entriesIn(trimmed); parts != nil {
		first = trimmed[parts[0].Start:parts[0].End]
	}
	name, meaning, found := cutAtMark(first)
	names := definedNames(name)
	if !found || len(names) == 0 {
		return false
	}
	from := strings.Index(first, name)
	start := at + strings.Index(trimmed, first) + from
	body := start + len(name) + strings.Index(first[from+len(name):], meaning)
	d.add(block{
		kind: blockDefinition, span: source.Span{Start: at, End: at + len(trimmed)}, names: names[:1],
		nameSpan: source.Span{Start: start, End: start + len(name)},
		body:     source.Span{Start: body, End: body + len(meaning)},
	})
	return true
}

// definedNames splits `Picot stitch (pst)` and `Hip (a bobble)` into the
// words that are defined.
func definedNames(s string) []string {
	name, rest, found := strings.Cut(s, "(")
	name = strings.TrimSuffix(strings.Trim(name, " *•-–—_|`"), ".") // `beg. = beginning`
	if strings.Count(s, "(") > strings.Count(s, ")") {
		return nil // the mark stands in brackets: `Make 50 (54: 58)`
	}
	if one, other, both := strings.Cut(name, ", "); both && !found && sameWord(one, other) {
		return []string{one, other} // `st, sts`
	}
	if name == "" || amounts(name) || len(strings.Fields(name)) > 4 || len(name) > 32 || strings.ContainsAny(name, ",.;*[") {
		return nil
	}
	out := []string{name}
	if found {
		inner := strings.Trim(rest, " )*")
		if inner != "" && inner != "s" && inner != "es" && len(strings.Fields(inner)) <= 2 && !strings.ContainsAny(inner, ",;") && !strings.EqualFold(inner, "counts") {
			out = append(out, inner)
		}
	}
	return out
}

// amounts tells `3x`, `15 squares` and `Rnds 1-3`, which no word is defined by.
func amounts(name string) bool {
	tokens := Lex(name, Standard())
	return len(tokens) == 2 && tokens[0].Kind == Number && tokens[1].Kind != Stitch ||
		len(tokens) > 1 && tokens[1].Kind == Number && (tokens[0].Canon == "row" || tokens[0].Canon == "rnd")
}

// namesARow tells the label of a row, or of a branch, that goes by a name: `Dec row`, `Branch 1`.
func namesARow(name string) bool {
	tokens := Lex(name, Standard())
	return len(tokens) > 1 && (endsInRow(tokens) || isBranch(tokens[0]))
}

// endsInRow tells words whose last one is for a row: behind a stitch, `round` reads as around.
func endsInRow(tokens []Token) bool {
	last := tokens[len(tokens)-1].Canon
	return last == "row" || last == "rnd" || last == "around"
}

// spellsOut tells whether a meaning is the word itself in full: `rep: repeat`.
func spellsOut(name, meaning string) bool {
	word := Lex(name, Standard())[0]
	return word.Kind == Stitch || slices.ContainsFunc(Lex(meaning, Standard()), func(t Token) bool { return t.Kind == Word && t.Canon == word.Canon })
}

// opensWork tells an instruction that says first where or with what it is worked.
func opensWork(meaning string) bool {
	tokens := Lex(firstWords(meaning), Standard())
	return len(tokens) > 0 && (openers[tokens[0].Canon] || tokens[0].Canon == "join")
}

// explains tells whether the words after a stitch's name only say what it is:
// `increase, 2 in 1`.
func explains(tokens []Token) bool {
	return len(tokens) > 1 && tokens[1].Kind == Comma && !slices.ContainsFunc(tokens, func(t Token) bool {
		return t.Kind == Stitch && t.Stitch != tokens[0].Stitch || t.Canon == "ch"
	})
}

// hasSizes tells whether some number is given for each size.
func hasSizes(s string) bool {
	return slices.ContainsFunc(Lex(s, Standard()), func(t Token) bool { return t.Kind == Number && t.Values.PerSize() })
}

// actions are what a pattern may tell in its own words, and it is still that: `Join: slip stitch in the stitch named`.
var actions = map[string]bool{"join": true, "turn": true, "rep": true, "skip": true, "fasten": true}

// canonOf is what a single word of the trade means, "" for any other.
func canonOf(name string) string {
	if tokens := Lex(name, Standard()); len(tokens) == 1 && tokens[0].Kind == Word {
		return tokens[0].Canon
	}
	return ""
}

// knownWord tells a word of the trade. A single capital and the many words for a
// counted thing (block, petal) are a pattern's own to define.
func knownWord(name string) bool {
	tokens := Lex(name, Standard())
	return len(tokens) == 1 && tokens[0].Kind != Name && tokens[0].Canon != "group" && (len(name) > 1 || name != strings.ToUpper(name))
}

// madeSo takes what a word is made of, in brackets behind its full name: `CR2: cross 2 (miss 1 st, 1 htr in next st, 1 htr in
// the missed st)`.
var madeSo = phrase.MustCompile(`^\s*[\pL\d -]{2,30} \(([^()]{8,})\)\.?$`)

// alsoCalled takes the full name before what a word is made of: `om ... open mesh: ch 2, …`.
var alsoCalled = phrase.MustCompile(`^\s*(\pL[\pL -]{2,24}):\s+`)

// calledAlso gives that name and how long it is with its colon, 0 for none.
func calledAlso(meaning string) (word string, n int) {
	m := alsoCalled.FindStringSubmatchIndex(meaning)
	if m == nil || !readsAsWork(meaning[m[1]:]) {
		return "", 0
	}
	word = strings.TrimPrefix(meaning[m[2]:m[3]], "make ")
	for _, t := range Lex(word, Standard()) {
		if t.Kind != Name && t.Kind != Stitch && t.Canon != "sp" && t.Canon != "group" {
			return "", 0 // `work as follows: …`
		}
	}
	return word, m[1]
}

// callsAnew tells a word of the trade, no stitch, that the pattern takes for something of its
// own: `bl (block): dc in next 3 dc`.
func callsAnew(names []string, meaning string) bool {
	return len(names) > 1 && len(names[1]) > len("es") && !knownStitch(names[0]) && !knownWord(names[1]) && readsAsWork(meaning)
}

// callsColour tells the letters of a yarn: `MC = main color`.
func callsColour(name, meaning string) bool {
	return name == strings.ToUpper(name) && colourMeant.MatchString(meaning)
}

var colourMeant = phrase.MustCompile(`(?i)^\s*(?:the )?(?:main|contrast(?:ing)?|second|other) (?:colou?r|yarn|shade)\b`)

// callsRow tells a letter that rows or rounds go by: `R = round`.
func callsRow(name, meaning string) bool {
	is, of := Lex(name, Standard()), Lex(meaning, Standard())
	return len(is) == 1 && is[0].Canon == "r" && len(of) > 0 && (of[0].Canon == "row" || of[0].Canon == "rnd")
}

func knownStitch(name string) bool {
	tokens := Lex(name, Standard())
	return len(tokens) == 1 && tokens[0].Kind == Stitch
}

// varies tells a name that every pattern gives to something else of its own:
// shell, fan, bobble.
func varies(name string) bool {
	tokens := Lex(name, Standard())
	if len(tokens) != 1 || tokens[0].Kind != Stitch {
		return false
	}
	return tokens[0].Stitch.Is(stitch.Group, stitch.Texture)
}

// readsWhole tells whether no step of a meaning is left unread.
func readsWhole(meaning string) bool {
	if stitches, space, both := either(meaning); both {
		return readsWhole(stitches) && readsWhole(space)
	}
	list, _ := build(settled(Lex(meaning, Standard()), 0))
	return !slices.ContainsFunc(list, notWhole)
}

// notWhole tells a clause that is not read, or only as something that goes on as elsewhere.
func notWhole(c Clause) bool {
	switch c.Node.(type) {
	case *Unread, *Likewise:
		return true
	}
	return false
}

func readsAsWork(meaning string) bool {
	list, _ := build(settled(Lex(meaning, Standard()), 0))
	for _, c := range list {
		switch n := c.Node.(type) {
		case *Work, *Group, *Repeat, *Chain, *Skip:
			return true
		case *Bracket:
			return !unread(n.Body)
		}
	}
	return false
}

// listed reads the definitions of a list in one paragraph: `ch = chain, tr =
// treble`, `ch: chain; inc: 2 in one, of any stitch`. What has no mark of its own
// goes on with the meaning before it.
func (d *document) listed(span source.Span) {
	var last *Definition
	for _, part := range listParts(d.text(span)) {
		at := part.Shift(span.Start)
		text := d.text(at)
		name, meaning, found := cutAtMark(text)
		if m := inBrackets.FindStringSubmatch(text); !found && m != nil {
			name, meaning, found = m[1], m[2], true
		}
		if m := inBold.FindStringSubmatch(text); !found && m != nil {
			name, meaning, found = m[1], m[2], true
		}
		names := definedNames(name)
		if !found || len(names) == 0 || !unicode.IsLetter(firstRune(names[0])) {
			if last != nil && strings.TrimFunc(text, isBlank) != "" {
				last.Span.End = at.Start + len(strings.TrimRightFunc(text, isBlank))
				last.Text = strings.Clone(strings.TrimFunc(d.text(source.Span{Start: last.NameSpan.End, End: last.Span.End}), isMark))
			}
			continue
		}
		start := at.Start + len(text) - len(strings.TrimLeftFunc(text, isBlank))
		last = &Definition{
			Names: cloned(names), Text: strings.Clone(strings.TrimFunc(meaning, isBlank)), Listed: true,
			Span:     source.Span{Start: start, End: at.Start + len(strings.TrimRightFunc(text, isBlank))},
			NameSpan: source.Span{Start: start, End: start + len(strings.TrimFunc(name, isBlank))},
		}
		if varies(names[0]) && strings.ContainsAny(meaning, "0123456789(") && readsAsWork(meaning) && readsWhole(meaning) {
			from := at.Start + strings.LastIndex(text, meaning) // how one is worked
			last.Special, last.Row = true, d.newRow(source.Span{Start: from, End: from + len(meaning)})
		}
		d.chapter.definitions = append(d.chapter.definitions, last)
	}
}

// cutOutside cuts a text at some signs where they are not in brackets.
func cutOutside(text string, signs []string) []source.Span {
	var out []source.Span
	start, depth := 0, 0
	for i, r := range text {
		switch punctuation(r) {
		case Open:
			depth++
			continue
		case Close:
			depth--
			continue
		}
		if depth > 0 || i < start {
			continue
		}
		for _, sign := range signs {
			if strings.HasPrefix(text[i:], sign) {
				out = append(out, source.Span{Start: start, End: i})
				start = i + len(sign)
				break
			}
		}
	}
	return append(out, source.Span{Start: start, End: len(text)})
}

// cutAtMark parts a word from its meaning, neither of them empty. Where no mark stands
// between them, what the word is short for tells where it ends.
func cutAtMark(text string) (name, meaning string, found bool) {
	for mark := range marksIn(text) {
		name, meaning = strings.TrimFunc(text[:mark.Start], isBlank), text[mark.End:]
		if name != "" && strings.TrimFunc(meaning, isBlank) != "" {
			return name, meaning, true
		}
	}
	return cutBeforeFull(text)
}

// longestEntry is more than a word and the same in full take.
const longestEntry = 80

// cutBeforeFull parts a word from the same in full that stands right behind it: `sl st
// slip stitch`, `sp(s) space(s)`, `ch, chain`, `ch (chain)`, `*ch* chain`.
func cutBeforeFull(text string) (name, meaning string, found bool) {
	trimmed := strings.TrimFunc(text, isBlank)
	if len(trimmed) > longestEntry {
		return "", "", false
	}
	if tableRow(trimmed) {
		if cells := cellsOf(trimmed); len(cells) == 2 && sameWord(cells[0], cells[1]) {
			return cells[0], cells[1], true
		}
		return "", "", false
	}
	for _, way := range [...]*phrase.Phrase{inItalics, behindIt} {
		if m := way.FindStringSubmatch(trimmed); m != nil && len(m[1]) < len(m[2]) && sameWord(m[1], m[2]) {
			return m[1], m[2], true
		}
	}
	for i, r := range trimmed {
		if r != ' ' && r != '\t' {
			continue
		}
		if name, meaning := strings.TrimSuffix(trimmed[:i], ","), trimmed[i+1:]; sameWord(name, meaning) {
			return name, meaning, true
		}
	}
	return "", "", false
}

// inBrackets is an entry of a list that has the meaning in brackets.
var inBrackets = phrase.MustCompile(`^\s*([^\s()]+(?: [^\s()]+)?) \(([^()]+)\)\.?\s*$`)

// inBold is an entry of a list that has no mark but its word in bold: `**dc2tog** two double crochet worked together`.
var inBold = phrase.MustCompile(`^\s*(\*\*[^*]+\*\*) +(\S.*)$`)

var (
	// inItalics is a word set off from what it is short for, and behindIt one with that
	// behind it in brackets.
	inItalics = phrase.MustCompile("^[*_`]*([^*_`]+)[*_`]+:? +(\\S.*)$")
	behindIt  = phrase.MustCompile(`^(\S[^()]*(?:\(e?s\))?) \((.+)\)\.?$`)
)

// sameWord tells whether two spellings are one word of the trade, in the singular or with
// the ending of the plural behind it in brackets.
func sameWord(a, b string) bool {
	short, full := Lex(singular(a), Standard()), Lex(singular(b), Standard())
	if len(short) != 1 || len(full) != 1 || short[0].Kind != full[0].Kind {
		return false
	}
	one, other := short[0], full[0]
	if one.Kind == Stitch {
		return one.Stitch.US != nil && one.Stitch.US == other.Stitch.US || one.Stitch.UK != nil && one.Stitch.UK == other.Stitch.UK
	}
	return one.Kind == Word && one.Canon != "" && one.Canon == other.Canon
}

// singular is a word of a list without the marks around it and the ending of the plural.
func singular(s string) string { return pluralEnding.Replace(strings.Trim(s, " .*_`|")) }

var pluralEnding = strings.NewReplacer("(s)", "", "(es)", "")

// isMark tells what parts a word from its meaning.
func isMark(r rune) bool {
	return isBlank(r) || r == '=' || r == '→' || punctuation(r) == Colon || punctuation(r) == Dash
}

// inFields finds the words that a sentence of a field defines: `Gauge: … V =
// (dc, ch 1, dc) in one place.`
func (d *document) inFields() {
	for _, f := range d.file.Header {
		at := f.ValueSpan.Start
		for sentence := range strings.SplitAfterSeq(d.text(f.ValueSpan), ". ") {
			name, meaning, found := strings.Cut(sentence, " = ")
			if names := definedNames(strings.TrimSpace(name)); found && len(names) == 1 && strings.HasPrefix(meaning, "(") && !knownWord(names[0]) && readsAsWork(meaning) {
				d.inField = append(d.inField, block{
					kind: blockDefinition, names: names, special: true, listed: true,
					span:     source.Span{Start: at, End: at + len(sentence)},
					nameSpan: source.Span{Start: at, End: at + len(name)},
					body:     source.Span{Start: at + len(name) + len(" = "), End: at + len(sentence)},
				})
			}
			at += len(sentence)
		}
	}
}

// definesSeveral tells a list in one paragraph from a single definition.
func definesSeveral(text string) bool { return entriesIn(text) != nil }

// listParts are the entries of what is known to be a list in one paragraph.
func listParts(text string) []source.Span {
	if parts := entriesIn(text); parts != nil {
		return parts
	}
	return cutOutside(text, entryEnds[0])
}

// spellsSeveral tells a list in one paragraph that needs no heading: most of its entries
// are words of the trade with the same in full behind them.
func spellsSeveral(text string) bool {
	parts, full := entriesIn(text), 0
	for _, part := range parts {
		if name, meaning, found := cutAtMark(text[part.Start:part.End]); found && sameWord(name, meaning) {
			full++
		}
	}
	return full > 1 && 2*full > len(parts)
}

// entryEnds are the signs that part the entries of a list in one paragraph, in the order
// in which they are tried: all that may, then one alone, where the others stand within an entry.
var entryEnds = [...][]string{{",", "，", "、", ";", "·"}, {";"}, {"|"}, {" / "}, {" - "}, {". "}}

// entriesIn parts a list in one paragraph into its entries, nil for what is none: it has a
// mark in most of what its signs part, or it is one with `=`, whose meanings may have commas
// of their own.
func entriesIn(text string) []source.Span {
	for i, ends := range entryEnds {
		if ends[0] == ". " && strings.Contains(text, "..") {
			continue // dots lead to the meaning
		}
		parts, marked := cutOutside(text, ends), 0
		for _, part := range parts {
			name, _, found := cutAtMark(text[part.Start:part.End])
			if found && len(definedNames(name)) > 0 {
				marked++
			}
		}
		if marked > 1 && 2*marked > len(parts) || i == 0 && len(parts) > 1 && strings.Count(text, "=") > 1 {
			return parts
		}
	}
	return nil
}

// headsList tells what stands before a list of abbreviations and its colon from the first
// of its entries.
func headsList(key, list string) bool {
	if !spellsSeveral(list) {
		return false
	}
	first := entriesIn(list)[0]
	return !sameWord(key, list[first.Start:first.End])
}

// workDefined takes for instructions what was taken for the meanings of a pattern's own words, where they lay a chain longer
// than a row rises by, go back along it and nothing else is worked in the file: `Leaf: Ch 12, sl st in 2nd ch from hook, …` is all of a leaf.
// The blocks are kept as they were for the next reading, in which other work may call for the words.
func (d *document) workDefined() {
	tellsWork := func(b block) bool {
		if b.kind != blockDefinition || !b.special {
			return false
		}
		r := readRow(d.text(b.body), 0, Standard())
		chain := laysFirst(r)
		return chain != nil && chain.Number.At(0) > MostRising && worksBack(r)
	}
	if !slices.ContainsFunc(d.blocks, tellsWork) || slices.ContainsFunc(d.blocks, func(b block) bool { return d.works(&b) }) {
		return
	}
	d.blocks = slices.Clone(d.blocks)
	for i, b := range d.blocks {
		if tellsWork(b) {
			d.blocks[i] = block{kind: blockText, span: b.span, digest: digestText(d.text(b.span))}
		}
	}
}

// works tells a block of text that asks for stitches.
func (d *document) works(b *block) bool {
	return b.kind == blockText && slices.ContainsFunc(readRow(d.text(b.span), 0, Standard()).Clauses, func(c Clause) bool { return steps(c.Node) })
}

func (d *document) readDefinition(b *block) {
	if !b.special && definesSeveral(d.text(b.span)) {
		d.listed(b.span)
		d.chapter.say(b.span, turningIn(d.text(b.span)))
		return
	}
	def := &Definition{Names: b.names, Span: b.span, NameSpan: b.nameSpan, Text: strings.Clone(d.text(b.body)), Special: b.special, Listed: b.listed}
	if b.special {
		b.digest = b.digest.in(d.file.Vocab, func(g *digest) { g.parts = d.meanings(b.body) })
		rows := make([]*Row, len(b.digest.parts))
		for i, p := range b.digest.parts {
			rows[i] = &Row{At: b.body.Start, Instruction: p.row}
		}
		if def.Row = rows[0]; len(rows) > 1 {
			def.OverStitches, def.OverSpace = rows[1].Clauses, rows[2].Clauses
		}
		def.Uses, def.Makes = saidEffect(def.Row.Tokens)
	}
	d.chapter.definitions = append(d.chapter.definitions, def)
}

// meanings reads what a definition says and, where it tells them apart, what is worked over
// stitches and what over a space.
func (d *document) meanings(body source.Span) []part {
	out := []part{{row: d.newRow(body).Instruction}}
	if stitches, space, both := either(d.text(body)); both {
		for _, one := range [...]string{stitches, space} {
			out = append(out, part{row: readRow(one, body.Start, d.words).Instruction})
		}
	}
	return out
}

// saidEffect reads `uses 1 st, makes 5 dc`, and of what has chains in it for how many stitches it counts: `(dc, ch 1, dc)
// in next st; it stands for 3 sts`.
func saidEffect(tokens []Token) (uses, makes Num) {
	chains := false
	for i := 0; i+1 < len(tokens); i++ {
		chains = chains || tokens[i].Canon == "ch"
		if tokens[i+1].Kind != Number {
			continue
		}
		switch {
		case chains && i > 1 && i+2 < len(tokens) && tokens[i-1].Canon == "count" && tokens[i-2].Canon != "ch" && (tokens[i].Canon == "as" || tokens[i].Canon == "for") && tokens[i+2].Canon == "st" &&
			tokens[i+1].Values.At(0) > 1:
			makes = tokens[i+1].Values
		case tokens[i].Canon == "uses" || tokens[i].Canon == "use":
			uses = tokens[i+1].Values
		case tokens[i].Canon == "work" && uses.Written():
			makes = tokens[i+1].Values
		}
	}
	return uses, makes
}
