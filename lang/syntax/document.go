package syntax

import (
	"slices"
	"strings"
	"unicode"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

// Read reads a pattern. It never fails: what is not understood is in the tree
// as unread clauses or as prose.
func Read(text *source.Text) *File { return ReadAfter(nil, text) }

// ReadAfter reads a pattern, as Read does, in less time where an earlier text of it
// was read: what an edit left as it was is taken from there. before is nil for none.
func ReadAfter(before *File, text *source.Text) *File {
	d := document{file: &File{Text: text, lines: &outline{}}}
	if before != nil {
		d.known, d.edit = before, changed(before.Text, text)
	}
	d.split()
	d.finishBlocks()
	d.workDefined()
	d.sizes()
	d.vocabulary()
	d.readAll()
	return d.file
}

// document reads a file in three passes: lines into blocks, then the words
// the pattern defines, then the instructions in those words, chapter by chapter.
type document struct {
	file      *File
	blocks    []block
	inField   []block     // definitions that stand in a field's value
	chapter   *chapter    // what is read now goes into it
	section   string      // the header section that lines now belong to
	started   bool        // an instruction has been met
	asked     []string    // the names of parts of the pattern's own: see ownParts
	stemAsked int         // how many lines have asked whether a stem is laid
	level     int         // of the last heading: how many marks it has
	step      int         // the bare number of the last step below it, 0 for none
	words     *Vocabulary // of the instructions that are read now: all sizes have them, or some

	known *File // an earlier reading, nil for none
	edit  edit  // what is new since then
}

// blockKind is what a run of lines is.
type blockKind uint8

const (
	blockText blockKind = iota // an instruction, or prose that looks like one
	blockHeading
	blockDefinition
	blockProse
	blockSizes // it says which sizes have what follows
)

// block is a line with the lines that continue it.
type block struct {
	kind     blockKind
	span     source.Span
	names    []string
	nameSpan source.Span
	body     source.Span // of a definition
	special  bool
	listed   bool // prose in a list of definitions
	digest   *digest
}

func (d *document) text(s source.Span) string { return d.file.Text.Slice(s) }

// split sorts the lines of the file.
func (d *document) split() {
	t := d.file.Text
	front := frontMatter(t)
	shapes := d.shapes()
	d.file.lines.shapes, d.file.lines.front, d.file.lines.width = shapes, front, wrapWidth(shapes)
	i := d.resume()
	for ; i < t.Lines() && !d.catchUp(i); i++ {
		d.remember()
		d.sort(i, i < front)
	}
	if i == t.Lines() {
		d.remember()
	}
	d.file.lines.blocks = d.blocks
}

// sort takes a line in.
func (d *document) sort(i int, fronted bool) {
	span := d.withoutNote(d.file.Text.Line(i))
	line := d.file.Text.Slice(span)
	trimmed := strings.TrimFunc(line, isBlank)
	switch {
	case trimmed == "":
		d.blank()
	case fronted:
		d.fronted(trimmed, line, span)
	case strings.HasPrefix(trimmed, commentMark):
		d.comment(span)
	case strings.HasPrefix(trimmed, ">") && !countAlone(trimmed) && !supplies[d.section]: // there it is a list's mark
		d.add(block{kind: blockProse, span: span})
	case d.continuesField(line, span):
		d.extendField(span)
	case d.continues(line, span):
		d.extend(span)
	default:
		d.line(line, trimmed, span)
	}
}

// add begins a block. It outlives the text of the file, and so keeps its own words.
func (d *document) add(b block) {
	b.names = cloned(b.names)
	d.blocks = append(d.blocks, b)
	switch b.kind {
	case blockHeading:
		d.level, d.step = headingLevel(d.text(b.span)), 0
	case blockText:
		if n := bareNumber(strings.TrimFunc(d.text(b.span), isBlank)); n > 0 {
			d.step = n
		}
	}
}

func cloned(words []string) []string {
	out := make([]string, len(words))
	for i, w := range words {
		out[i] = strings.Clone(w)
	}
	return out
}

func (d *document) last() *block {
	if len(d.blocks) == 0 {
		return nil
	}
	return &d.blocks[len(d.blocks)-1]
}

// blank ends a section that a paragraph makes, but where that stands below a blank line, as
// in Markdown.
func (d *document) blank() {
	if (d.section == "notes" || d.section == "materials") && !d.headed() {
		d.section = ""
	}
}

// headed tells whether the last line was the heading of the section.
func (d *document) headed() bool {
	b := d.last()
	return b != nil && b.kind == blockProse && d.sectionHead(strings.TrimFunc(d.text(b.span), isBlank)) == d.section
}

// labelled tells whether a line begins with the label of a row, not just a
// name and a colon.
func labelled(line string) bool {
	label, found := labelOf(line)
	return found && label.Kind != Named
}

// beginsRow tells whether a line begins with the label of a row, and not with
// the number of an item in some other list.
func beginsRow(line string) bool {
	if !labelled(line) {
		return false
	}
	r := readRow(line, 0, Standard())
	return !r.Label.Bare || instructs(r)
}

// goesOnList tells the second or a later item of a numbered list. No work begins
// with it: below a heading for notes it is one of them, whatever it speaks of.
func goesOnList(line string) bool {
	label, found := labelOf(line)
	return found && label.Bare && label.First(0) > 1
}

// labelOf is the label that a line begins with, if it does.
func labelOf(line string) (label Label, found bool) {
	text := firstWords(line)
	label, n := readLabel(Lex(text, Standard()), text)
	return label, n > 0
}

// firstWords cuts a line to what a label can take.
func firstWords(line string) string {
	if len(line) <= 80 {
		return line
	}
	cut := strings.LastIndexByte(line[:80], ' ')
	if cut < 0 {
		cut = 80
	}
	return line[:cut]
}

// line sorts a line that begins something.
func (d *document) line(line, trimmed string, span source.Span) {
	switch {
	case caption.MatchString(trimmed):
		d.add(block{kind: blockProse, span: span})
	case fence.MatchString(trimmed), rule.MatchString(trimmed), pageNumber.MatchString(trimmed), leader.MatchString(trimmed), anchor.MatchString(trimmed):
		d.add(block{kind: blockProse, span: span})
	case sizeLine.MatchString(trimmed):
		d.add(block{kind: blockSizes, span: span})
	case d.sectionHead(trimmed) == "" && d.underlined(trimmed, d.file.Text.LineOf(span.Start)):
		d.addHeading(trimmed, line, span)
	case d.sideAhead(trimmed, d.file.Text.LineOf(span.Start)):
		d.add(block{kind: blockText, span: span})
	case d.branchAhead(line, trimmed, span):
	case d.subheads(trimmed, d.file.Text.LineOf(span.Start)):
		d.add(block{kind: blockProse, span: span})
	case d.definitionWithin(trimmed, span):
	case d.heading(line, trimmed, span):
	case !d.started && d.field(line, span):
	case d.inSection(trimmed, span):
	case d.runIn(line, span):
	case d.definition(trimmed, span):
	case d.inList(trimmed, span):
	case !d.started && d.unknownField(line, span):
	case isNote(trimmed):
		d.add(block{kind: blockProse, span: span})
	case d.titles(trimmed, d.file.Text.LineOf(span.Start)):
		d.addHeading(trimmed, line, span)
	default:
		if !d.started && d.section == "" && (beginsRow(trimmed) || laysPart(trimmed) || laysChainAlone(trimmed) || d.underHeading() && d.laysBranch(span)) {
			d.started = true
		}
		d.add(block{kind: blockText, span: span})
	}
}

// underHeading tells whether the line above is a heading.
func (d *document) underHeading() bool {
	last := d.last()
	return last != nil && last.kind == blockHeading
}

// field takes a line of the header.
func (d *document) field(line string, span source.Span) bool {
	f, ok := readField(line, span.Start)
	if !ok || supplies[f.Key] && runsIntoWork(f.Value) {
		return false
	}
	if !supplies[d.section] || !supplies[f.Key] && f.Key != "hook" {
		d.section = "" // else it is one line of the list
	}
	d.file.Header = append(d.file.Header, f)
	if sections[f.Key] && f.Value == "" || f.Key == "abbreviations" || f.Key == "special stitches" {
		d.section = f.Key
	}
	return true
}

// runsIntoWork tells `Colors: moss (A), frost (B). With A, ch 21.`, where the work begins
// behind the list.
func runsIntoWork(value string) bool {
	for rest := value; ; {
		_, after, found := strings.Cut(rest, ". ")
		if !found {
			return false
		}
		if rest = after; beginsInstruction(rest) && readsAsWork(rest) {
			return true
		}
	}
}

// mostUnknownWords is the most words of a key that nobody knows.
const mostUnknownWords = 3

// unknownField keeps a header line whose key nobody knows.
func (d *document) unknownField(line string, span source.Span) bool {
	key, value, found := cutKey(line)
	key = trimKey(key)
	measure := IsMeasure(key) && len(FindLengths(value)) > 0
	if !found || labelled(line) || strings.TrimSpace(value) == "" || !unicode.IsUpper(firstRune(key)) || len(strings.Fields(key)) > mostUnknownWords && !measure {
		return false
	}
	if !measure && (len(d.file.Header) == 0 || tableRow(line) || bulleted.MatchString(strings.TrimSpace(line)) && severalSentences.MatchString(value) || readsAsWork(value) || speaksOfWork(readRow(line, 0, Standard()))) {
		return false
	}
	d.file.Header = append(d.file.Header, fieldOf(line, span.Start, strings.ToLower(key), ""))
	return true
}

// severalSentences behind the mark of a list are no value of a field.
var severalSentences = phrase.MustCompile(`\pL{3,}[.!] \p{Lu}\pL* (?s:.*)\.$`)

// inSection takes a line below a section's heading.
func (d *document) inSection(trimmed string, span source.Span) bool {
	if d.section == "" {
		return false
	}
	if entry := withoutItem(trimmed); entry != trimmed && d.entry(entry) {
		trimmed = entry
		span.Start += strings.Index(d.text(span), entry)
	} else if beginsRow(trimmed) && !(d.section == "notes" && goesOnList(trimmed)) && !(d.section == "abbreviations" && (shortBehind(trimmed) || cableShort.MatchString(trimmed))) {
		d.section = ""
		return false
	}
	switch d.section {
	case "abbreviations", "special stitches":
		if d.defined(trimmed, span, d.section == "special stitches") {
			return true
		}
		if beginsInstruction(trimmed) && readsAsWork(trimmed) && !shortBehind(trimmed) {
			d.section = "" // `Ch 12, join to form a ring.`
			return false
		}
		if line := d.file.Text.Slice(span); d.section == "abbreviations" && (tableRow(trimmed) || strings.Contains(line, ",") || shortBehind(trimmed)) || line[0] == ' ' || line[0] == '\t' {
			break
		}
		d.section = ""
		return false
	case "notes", "materials", "notions", "yarn", "hook", "gauge", "finished size", "sizes", bothMeasures:
		if d.section == "notes" && d.definedSo(trimmed, span) {
			return true
		}
		if f, ok := readField(d.file.Text.Slice(span), span.Start); ok {
			d.file.Header = append(d.file.Header, f)
			return true
		}
		if d.section != "notes" && !((d.section == "gauge" || d.section == bothMeasures) && givesGauge(trimmed)) && !d.goesOnSupplies(span) && (beginsInstruction(trimmed) || beginsPart(trimmed)) {
			d.section = ""
			return false
		}
		if line := d.file.Text.Slice(span); givesValue(d.section, line) {
			d.bareField(line, span)
			return true
		}
		if supplies[d.section] {
			d.file.Supplies = append(d.file.Supplies, span)
		}
	}
	d.add(block{kind: blockProse, span: span})
	return true
}

// goesOnSupplies tells a line that is indented right below another of the list of what is needed: `White linen, two pieces
// each 36 cm by 25 cm`.
func (d *document) goesOnSupplies(span source.Span) bool {
	last := d.last()
	return supplies[d.section] && isBlank(rune(d.file.Text.Slice(span)[0])) && last != nil && d.adjoins(last.span.End, span.Start)
}

// withoutItem is a line without the bare number that it has in a list.
func withoutItem(trimmed string) string {
	m := itemNumber.FindStringSubmatch(trimmed)
	if m == nil {
		return trimmed
	}
	return m[1]
}

// itemNumber takes an item of a numbered list.
var itemNumber = phrase.MustCompile(`^\d{1,2}[.)] +(\S.*)$`)

// entry tells what a numbered list below the section's heading may hold: a word of the trade with its
// meaning, or a figure.
func (d *document) entry(text string) bool {
	if d.section != "abbreviations" {
		return givesValue(d.section, text)
	}
	for mark := range marksIn(text) {
		names := definedNames(text[:mark.Start])
		return len(names) > 0 && knownWord(names[0]) && len(Lex(text[mark.End:], Standard())) <= 2*maxNamed
	}
	return false
}

// behind takes an entry of a list that has the word behind what it is short for.
var behind = phrase.MustCompile(`^[-•* ]*\pL[\pL ()-]+ \(([^()]{1,20}(?:\(s\))?)\)\.?$`)

// cableShort begins an entry of a list whose word could be the label of a step: `C4: 4-st cable`.
var cableShort = phrase.MustCompile(`^[-•* ]*(?:[A-QS-Z]|[A-Z]{2})\d+[A-Z]{0,2} ?(?:[:=]|[–—-] )`)

// shortBehind tells an entry such as `chain (ch)`.
func shortBehind(trimmed string) bool {
	m := behind.FindStringSubmatch(trimmed)
	return m != nil && knownWord(strings.TrimSuffix(m[1], "(s)"))
}

// vocabulary adds the words the pattern defines to those of the trade. Where they
// are those of the earlier reading, so is the vocabulary.
func (d *document) vocabulary() {
	words := d.ownWords()
	d.file.lines.words = words
	switch {
	case len(words) == 0 && len(d.file.Sizes) == 0:
		d.file.Vocab = Standard()
	case d.known != nil && slices.Equal(words, d.known.lines.words) && slices.Equal(d.file.Sizes, d.known.Vocab.names):
		d.file.Vocab = d.known.Vocab
	default:
		d.file.Vocab = Standard().Defining(words, d.file.Sizes)
	}
	d.words = d.file.Vocab
}

// ownWords are the words that the pattern defines, and what its branches are called.
func (d *document) ownWords() []OwnWord {
	var words []OwnWord
	d.inFields()
	for _, b := range d.inField {
		words = append(words, OwnWord{Text: b.names[0]})
	}
	d.asked = d.ownParts()
	for _, name := range d.asked {
		words = append(words, OwnWord{Text: name})
	}
	calls := d.calls()
	for i := range d.blocks {
		for _, name := range d.blocks[i].digest.made {
			if calls[strings.ToLower(name)] > 1 {
				words = append(words, OwnWord{Text: name})
			}
		}
		words = append(words, d.blocks[i].digest.words...)
	}
	return append(words, d.yarnWords()...)
}

// yarnWords are those of the words with a colon behind them that the list of yarns has.
func (d *document) yarnWords() []OwnWord {
	var words []OwnWord
	var listed map[string]bool
	for i := range d.blocks {
		for _, word := range d.blocks[i].digest.leads {
			if listed == nil {
				listed = d.yarnsListed()
			}
			if listed[word] {
				words = append(words, OwnWord{Text: word, Yarn: true})
				listed[word] = false
			}
		}
	}
	return words
}

// tools stand among what is needed and are no yarn, whatever a branch is called by.
var tools = map[string]bool{"needle": true, "hook": true, "pin": true, "bead": true, "button": true, "marker": true, "stick": true}

// yarnsListed are the words, in lower case, of what the header says of yarns.
func (d *document) yarnsListed() map[string]bool {
	words := map[string]bool{}
	add := func(text string) {
		for _, w := range strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) }) {
			words[strings.ToLower(w)] = true
		}
		for tool := range tools {
			delete(words, tool)
		}
	}
	for _, f := range d.file.Header {
		if f.Key == "yarn" || f.Key == "materials" {
			add(f.Name)
			add(d.text(f.ValueSpan))
		}
	}
	for _, line := range d.file.Supplies {
		add(d.text(line))
	}
	return words
}

// calls counts how often instructions have each of the words, in lower case, that
// may name a stitch made where it is first worked.
func (d *document) calls() map[string]int {
	count := map[string]int{}
	for i := range d.blocks {
		for _, name := range d.blocks[i].digest.made {
			count[strings.ToLower(name)] = 0
		}
	}
	if len(count) == 0 {
		return nil
	}
	for _, b := range d.blocks {
		if b.kind != blockText {
			continue
		}
		for _, w := range strings.FieldsFunc(d.text(b.span), func(r rune) bool { return !unicode.IsLetter(r) }) {
			w = strings.ToLower(w)
			if n, named := count[w]; named {
				count[w] = n + 1
			}
		}
	}
	return count
}

// readAll reads definitions and instructions.
func (d *document) readAll() {
	d.take(d.header())
	chapters := d.chapters()
	d.subordinate(chapters)
	for _, c := range chapters {
		d.take(c)
	}
	d.file.lines.chapters = chapters
	slices.SortFunc(d.file.Prose, func(a, b source.Span) int { return a.Start - b.Start })
	for _, f := range d.file.Header {
		if f.Key != "turning chains" {
			for _, s := range turningIn(d.text(f.ValueSpan)) {
				d.file.Turning = append(d.file.Turning, s.Shift(f.ValueSpan.Start))
			}
		}
	}
}

// Reread reads other words for a row of the file, in the file's own vocabulary.
func (f *File) Reread(row *Row, text string) *Row {
	return readRow(text, row.At, f.Vocab.forSizes(row.Only))
}

// readRow reads the instruction that stands at an offset of its file. The row keeps
// its own words, not the text of the whole file.
func readRow(text string, at int, vocab *Vocabulary) *Row {
	return &Row{At: at, Instruction: vocab.rows.of(text, func(text string) *Instruction { return readInstruction(text, vocab) })}
}

func readInstruction(text string, vocab *Vocabulary) *Instruction {
	only, length, end, some := picked(text, vocab.names)
	if some {
		vocab = vocab.forSizes(only)
	}
	tokens := lexFor(text, vocab)
	if some {
		tokens = sizesOnly(tokens, end)
	}
	r := &Instruction{Text: text, Only: vocab.only}
	lead, from := leadClause(tokens, length)
	r.Clauses = lead
	label, n := readLabel(tokens[from:], text)
	if head := headingBefore(label, n, tokens[from:]); head > 0 {
		if next, m := readLabel(tokens[from+head:], text); m > 0 && next.Kind == NextRow && tokens[from+head+m-1].Kind == Colon {
			r.Clauses = append(r.Clauses, Clause{Span: source.Span{Start: tokens[from].Span.Start, End: tokens[from+head-2].Span.End}, Sep: SepStop, Node: &Remark{}})
			label, n = next, head+m
		}
	}
	r.Label = label
	at := from + n
	if n > 0 {
		if head := headingAfter(label, tokens[at-1:], text); head > 0 {
			r.Clauses = append(r.Clauses, Clause{Span: source.Span{Start: tokens[at].Span.Start, End: tokens[at+head-1].Span.End}, Sep: SepStop, Node: &Remark{}})
			at += head
		}
	}
	r.Tokens = settled(tokens, at)
	if label.Far.Len() > 0 {
		r.Clauses = append(r.Clauses, Clause{Span: label.Far, Sep: SepStop, Node: &Turn{Rotate: true, OtherSide: true}})
	}
	if label.Kind == Numbered {
		called, n := calledFirst(r.Tokens[at:])
		r.Clauses, at = append(r.Clauses, called...), at+n
	}
	clauses, problems := build(r.Tokens[at:])
	r.Clauses, r.Problems = append(r.Clauses, clauses...), problems
	if label.Kind == Numbered && toldInSquares(r.Clauses) {
		r.Clauses[0].Node = &Likewise{}
	}
	likeTheFirst(r)
	tellsNext(r)
	countsLayers(r)
	leavesFree(r)
	slipsUncounted(r)
	shapesEnds(r)
	countsThings(r)
	countsRows(r)
	countsLeft(r)
	r.Traits = traitsOf(r)
	return r
}

// calledFirst takes the name of the row that a numbered one is worked as, how often, and how many it makes of what: `Row 12:
// Plain row.`, `Rows 3-10: Plain row, 8 times.`, `Row 11: Nest row: 9 nests.`
func calledFirst(tokens []Token) (clauses []Clause, n int) {
	for n < len(tokens) && (tokens[n].Kind == Name || tokens[n].Kind == Stitch) {
		n++
	}
	if n == 0 || n == len(tokens) || tokens[n].Canon != "row" && tokens[n].Canon != "rnd" {
		return nil, 0
	}
	rows := &Rows{Called: ideas(tokens[:n], nil), Limit: Times, Number: One(1)}
	n++
	if n+2 < len(tokens) && tokens[n].Kind == Comma && tokens[n+1].Kind == Number && tokens[n+2].Canon == "times" {
		rows.Number, n = tokens[n+1].Values, n+3
	}
	clauses = []Clause{{Span: spanOf(tokens[:n]), Sep: SepStop, Node: rows}}
	if n == len(tokens) || tokens[n].Kind == Open || tokens[n].Kind == Period {
		return clauses, n
	}
	if tokens[n].Kind != Colon {
		return nil, 0
	}
	made := tokens[n+1:]
	if end := slices.IndexFunc(made, func(t Token) bool { return t.Kind == Period || t.Kind == Open }); end >= 0 {
		made = made[:end]
	}
	count := asTotal(made)
	if count == nil {
		return []Clause{{Span: spanOf(tokens[:n]), Sep: SepStop, Node: &Remark{}}}, n + 1 // `Row 2: Shell row: ch 1, …`
	}
	return append(clauses, Clause{Span: spanOf(made), Sep: SepStop, Node: count}), n + 1 + len(made)
}

// likeTheFirst takes what no row's label stands before and what is done as another one, with no word for a row, for something
// else than rows: `Second long edge: as the first.`
func likeTheFirst(r *Instruction) {
	if r.Label.Kind == Numbered || r.Label.Kind == NextRow {
		return
	}
	for i, c := range r.Clauses {
		if _, rows := c.Node.(*Rows); !rows {
			continue
		}
		nth := r.within(c.Span)
		if slices.ContainsFunc(nth, func(t Token) bool { return t.Kind == Ordinal }) && !slices.ContainsFunc(nth, func(t Token) bool { return t.Kind != Ordinal && t.Canon != "" && t.Canon != "as" && t.Canon != "work" }) {
			r.Clauses[i].Node = &Likewise{}
		}
	}
}

// announces are words that say no more than that the work is told next.
var announces = phrase.MustCompile(`(?i)^(?:and |then |now )*(?:work(?:ing)? )?(?:as follows|in (?:this|the following) order|the following)$`)

// tellsNext takes such words for a remark where a colon stands behind them, or more work.
func tellsNext(r *Instruction) {
	for i, c := range r.Clauses {
		switch c.Node.(type) {
		case *Likewise, *Unread:
		default:
			continue
		}
		told := strings.HasPrefix(strings.TrimLeft(r.Text[c.Span.End:], " *_"), ":") || i+1 < len(r.Clauses) && steps(r.Clauses[i+1].Node)
		if told && announces.MatchString(strings.Trim(r.Text[c.Span.Start:c.Span.End], " :*_")) {
			r.Clauses[i].Node = &Remark{}
		}
	}
}

// throughLayers says that two layers are closed with stitches that are none of a row.
var throughLayers = phrase.MustCompile(`(?i)\bthrough (?:both|the two) (?:layers|thicknesses|sides)\b`)

// countsLayers takes how many stitches do that behind a colon: `dc through both layers along the open edge: 9 dc`.
func countsLayers(r *Instruction) {
	for i := 0; i+1 < len(r.Clauses); i++ {
		c, next := r.Clauses[i], r.Clauses[i+1]
		n, told := next.Node.(*Work)
		if told && len(n.Places) == 0 && n.Number.Written() && throughLayers.MatchString(r.Text[c.Span.Start:c.Span.End]) && strings.HasPrefix(strings.TrimLeft(r.Text[c.Span.End:], " *_"), ":") {
			through := *n
			through.Number, through.Places = One(1), []Place{{Number: n.Number, Noun: anyStitch, Elsewhere: true}}
			r.Clauses[i].Node, r.Clauses[i+1].Node = &Remark{}, &through
		}
	}
}

// slipsUncounted takes a slip stitch that is said not to count for one that only joins: `Sl st in the ch skipped at the tip
// (not counted).`
func slipsUncounted(r *Instruction) {
	for i, c := range r.Clauses {
		if w, ok := c.Node.(*Work); ok && w.Stitch.Meaning.Is(stitch.Slip) && w.Counts.Said && len(w.Counts.As) == 0 && len(w.Places) == 1 {
			r.Clauses[i].Node = &Join{Place: Place{Elsewhere: true}}
		}
	}
}

// leftOver says of stitches, mostly of another piece, that nothing is worked in them: `One dc of the body is left free.`
var leftOver = phrase.MustCompile(`(?i)\b(?:is|are) left (?:free|over)$`)

// leavesFree takes such a sentence for no count of the row.
func leavesFree(r *Instruction) {
	for i, c := range r.Clauses {
		if _, counts := c.Node.(*Total); counts && leftOver.MatchString(r.Text[c.Span.Start:c.Span.End]) {
			r.Clauses[i].Node = &Remark{}
		}
	}
}

// countsRows takes a list in brackets that counts each of several rows, `Rows 3-5: … [11, 15, 19]`, for what the last of
// them comes to, and those before it.
func countsRows(r *Instruction) {
	rows := len(r.Label.Each(0))
	if r.Label.Kind != Numbered || rows < 2 || len(r.Clauses) == 0 {
		return
	}
	last := &r.Clauses[len(r.Clauses)-1]
	switch n := last.Node.(type) {
	case *Remark:
	case *Total:
		if len(n.Parts) != rows {
			return
		}
	default:
		return
	}
	var counts, of []Token
	for _, t := range r.Tokens {
		switch {
		case t.Span.Start < last.Span.Start || t.Span.End > last.Span.End || t.Kind == Open || t.Kind == Close || t.Kind == Comma || t.Kind == Word && t.Canon == "and":
		case t.Kind == Number && of == nil:
			counts = append(counts, t)
		case of == nil && (t.Kind == Stitch || t.Kind == Word && t.Canon == "st"):
			of = []Token{t}
		default:
			return
		}
	}
	if len(counts) != rows {
		return
	}
	if total := asTotal(append(counts[rows-1:], of...)); total != nil {
		own := *total // the same words are read once
		for _, t := range counts[:rows-1] {
			own.Before = append(own.Before, t.Values)
		}
		last.Node = &own
	}
}

// countsThings takes a last sentence of a number and one word that nobody knows, `… rep from * to end. 23 crosses.`, for a
// count of what the row is made of.
func countsThings(r *Instruction) {
	n := len(r.Clauses)
	if r.Label.Kind != Numbered || n < 2 || r.Clauses[n-2].Sep != SepStop {
		return
	}
	last := r.Clauses[n-1]
	if _, unread := last.Node.(*Unread); !unread {
		return
	}
	said := r.within(last.Span)
	if len(said) == 2 && said[0].Kind == Number && said[1].Kind == Name && len(said[1].Canon) >= leastThing && strings.HasSuffix(said[1].Canon, "s") {
		r.Clauses[n-1].Node = &Remark{}
	}
}

// leastThing is how many letters a word has at least that is no slip of a short stitch's name: `5 dcs`. Our own figure.
const leastThing = 5

// countsLeft takes chains that a step counts in a bracket of their own, right after its stitches,
// for those that are left to work into: `5. … (7 dc) [44 ch]`.
func countsLeft(r *Instruction) {
	if !r.Label.Bare && r.Label.Kind != Unlabelled {
		return
	}
	for i := 1; i < len(r.Clauses); i++ {
		made, left := CountOf(r.Clauses[i-1].Node), CountOf(r.Clauses[i].Node)
		if leave, told := r.Clauses[i].Node.(*Leave); told && leave.Told && made != nil {
			r.Clauses[i-1].Node = made // `(10 sc) [29 ch left]`
		}
		if _, works := r.Clauses[i-1].Node.(*Work); left != nil && left.OfChains() && (made != nil && !made.OfChains() || works && r.Label.Bare) {
			if made != nil {
				r.Clauses[i-1].Node = made
			}
			r.Clauses[i].Node = &Leave{Place: Place{Pick: PickRemaining, Number: left.Parts[0].Number, Noun: oneChain}, Told: true}
		}
	}
}

// toldInSquares tells a row that says no more than how many squares of a filet it has one after
// the other, `7 sp, 1 bl, 7 sp`, in words that the pattern does not define: they are its work,
// and no count.
func toldInSquares(clauses []Clause) bool {
	return onlyCounts(clauses, func(_ int, n *Total) bool {
		return !slices.ContainsFunc(n.Parts, func(p Part) bool {
			return p.Noun.Kind != NounSpace && p.Noun.Kind != NounGroup || p.Noun.Length.Written()
		})
	})
}

// newRow reads one instruction in the words of the pattern.
func (d *document) newRow(span source.Span) *Row {
	return readRow(d.text(span), span.Start, d.words)
}

// toCheck ends a line above counts of some rows that are told once more: `As a check:`.
var toCheck = phrase.MustCompile(`(?i)\bcheck(?:s|ing|points?)?\b[^.;:]*:$`)

// readText takes in the rows and the prose of a block.
func (d *document) readText(b *block) {
	b.digest = b.digest.in(d.words, func(g *digest) { g.parts = d.parts(b.span) })
	for _, p := range b.digest.parts {
		span := p.span.Shift(b.span.Start)
		checks := d.chapter.checks
		d.chapter.checks = toCheck.MatchString(d.text(span))
		if p.row == nil {
			d.chapter.say(span, p.turning)
			continue
		}
		if checks && p.row.Label.Kind == Numbered && len(p.row.Clauses) == 1 && counts(p.row.within(p.row.Clauses[0].Span)) {
			d.chapter.say(span, nil)
			d.chapter.checks = true
			continue
		}
		r := &Row{At: span.Start, Instruction: p.row}
		if d.words.only != nil && r.Only == nil {
			d.words = d.file.Vocab // `All sizes: …`, and so from there on
		}
		if r.CountsAlone() && !d.chapter.begun() {
			d.chapter.say(span, nil) // of what comes
			continue
		}
		piece := d.chapter.piece(span)
		if piece.startsAgain(r) {
			piece = piece.again(span)
			d.chapter.pieces = append(d.chapter.pieces, piece)
		}
		piece.Rows = append(piece.Rows, r)
	}
}

// parts reads a block as instructions: one, or several that stand in one line. What
// does not read as an instruction is prose.
func (d *document) parts(block source.Span) []part {
	var out []part
	add := func(span source.Span, row *Instruction) {
		p := part{span: span.Shift(-block.Start), row: row}
		if row == nil {
			p.turning = turningIn(d.text(span))
		}
		out = append(out, p)
	}
	for _, span := range d.rowsIn(block) {
		r := d.newRow(span)
		if !instructs(r) {
			add(span, nil)
			continue
		}
		if r.Label.Bare && makesUp(r) {
			add(span, r.asItem()) // `8. Fasten off.`
			continue
		}
		if n := introduction(r); n > 0 {
			rest := d.text(span)[n:]
			work := source.Span{Start: span.Start + n + len(rest) - len(strings.TrimLeftFunc(rest, isBlank)), End: span.End}
			if r = d.newRow(work); !instructs(r) {
				add(span, nil)
				continue
			}
			add(source.Span{Start: span.Start, End: span.Start + n}, nil)
			span = work
		}
		add(span, r.Instruction)
	}
	return out
}

// rowsIn cuts a line that holds several labelled rows.
func (d *document) rowsIn(span source.Span) []source.Span {
	text := d.text(span)
	tokens := Lex(text, d.file.Vocab)
	var out []source.Span
	start := 0
	for i := listItem(tokens) + 1; i < len(tokens); i++ { // the number of an item begins the row that it stands before
		if !endsRow(tokens[i-1]) || !namesRow(tokens[i]) {
			continue
		}
		label, n := readLabel(tokens[i:], text)
		if n == 0 || label.Kind != Numbered || !marksRow(tokens[i-1], tokens[i:], n) {
			continue
		}
		end := tokens[i].Span.Start
		out = append(out, source.Span{Start: span.Start + start, End: span.Start + len(strings.TrimRight(text[:end], " \t"))})
		start = end
	}
	return append(out, source.Span{Start: span.Start + start, End: span.End})
}

// endsRow tells a token that a row may end with where another follows it in
// the line.
func endsRow(t Token) bool {
	switch t.Kind {
	case Period, Close, Semi:
		return true
	case Word:
		return t.Canon == "turn" || t.Canon == "join" || t.Canon == "around" || t.Canon == "across"
	}
	return false
}

func namesRow(t Token) bool {
	return t.Kind == Ordinal || t.Kind == Word && (t.Canon == "row" || t.Canon == "rnd" || t.Canon == "r")
}

// marksRow tells whether a label of n tokens is marked as one: by a colon or a
// dash, or after a full stop by what can only follow a label.
func marksRow(before Token, tokens []Token, n int) bool {
	switch tokens[n-1].Kind {
	case Colon, Dash:
		return true
	case Period:
		return before.Kind == Period && tokens[0].Kind == Word
	}
	return before.Kind == Period && n < len(tokens) && tokens[n].Kind == Word && (tokens[n].Canon == "same" || tokens[n].Canon == "as")
}
