package syntax

import (
	"strings"
	"unicode"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

// Read reads a pattern. It never fails: what is not understood is in the tree
// as unread clauses or as prose.
func Read(text *source.Text) *File {
	d := document{file: &File{Text: text, Vocab: Standard()}}
	d.split()
	d.sizes()
	d.vocabulary()
	d.readAll()
	return d.file
}

// document reads a file in three passes: lines into blocks, then the words
// the pattern defines, then the instructions in those words.
type document struct {
	file    *File
	blocks  []block
	section string // the header section that lines now belong to
	started bool   // an instruction has been met
}

// blockKind is what a run of lines is.
type blockKind uint8

const (
	blockText blockKind = iota // an instruction, or prose that looks like one
	blockHeading
	blockDefinition
	blockProse
)

// block is a line with the lines that continue it.
type block struct {
	kind     blockKind
	span     source.Span
	names    []string
	nameSpan source.Span
	body     source.Span // of a definition
	special  bool
}

func (d *document) text(s source.Span) string { return d.file.Text.Slice(s) }

// split sorts the lines of the file.
func (d *document) split() {
	t := d.file.Text
	for i := 0; i < t.Lines(); i++ {
		span := t.Line(i)
		line := t.Slice(span)
		trimmed := strings.TrimFunc(line, isBlank)
		switch {
		case trimmed == "":
			d.blank()
		case strings.HasPrefix(trimmed, "//"):
			d.file.Comments = append(d.file.Comments, &Comment{Span: span, Text: strings.TrimSpace(strings.TrimPrefix(trimmed, "//"))})
		case strings.HasPrefix(trimmed, ">"):
			d.add(block{kind: blockProse, span: span})
		case d.continuesField(line, span):
			d.extendField(span)
		case d.continues(line, span):
			d.extend(span)
		default:
			d.line(line, trimmed, span)
		}
	}
}

func (d *document) add(b block) { d.blocks = append(d.blocks, b) }

func (d *document) last() *block {
	if len(d.blocks) == 0 {
		return nil
	}
	return &d.blocks[len(d.blocks)-1]
}

func (d *document) blank() {
	if d.section == "notes" || d.section == "materials" {
		d.section = ""
	}
}

// continues tells whether a line goes on with the one before it: it is
// indented, or what stands before ends in the middle of something.
func (d *document) continues(line string, span source.Span) bool {
	b := d.last()
	if b == nil || b.kind == blockHeading || b.kind == blockProse || !d.adjoins(b.span.End, span.Start) {
		return false
	}
	before := strings.TrimRightFunc(d.text(b.span), isBlank)
	indented := line[0] == ' ' || line[0] == '\t'
	if b.kind == blockDefinition {
		return indented && !strings.ContainsAny(line, ":=") || endsOpen(before)
	}
	trimmed := strings.TrimLeftFunc(line, isBlank)
	if labelled(trimmed) {
		return false
	}
	if indented && d.indent(b.span.Start) < indentOf(line) || endsOpen(before) {
		return true
	}
	if goesOn(trimmed) {
		return true
	}
	r := firstRune(trimmed)
	return d.started && (unicode.IsLower(r) || unicode.IsDigit(r)) && !endsSentence(before) && len(before) > wrapWidth
}

// goesOn tells a line that repeats what the line before says: `Repeat around;
// join.`
func goesOn(line string) bool {
	tokens := Lex(firstWords(line), 0, Standard())
	if len(tokens) < 2 || tokens[0].Kind != Word || tokens[0].Canon != "rep" {
		return false
	}
	switch next := tokens[1]; {
	case next.Kind == Star:
		return true
	case next.Kind == Word:
		return next.Canon == "around" || next.Canon == "across" || next.Canon == "from" || next.Canon == "between"
	}
	return false
}

// wrapWidth is the length from which a line without a full stop is taken to
// be wrapped.
const wrapWidth = 48

// adjoins tells whether only line ends stand between two offsets: a blank
// line or a comment between ends a paragraph.
func (d *document) adjoins(end, start int) bool {
	return strings.TrimRight(d.file.Text.Slice(source.Span{Start: end, End: start}), "\r\n \t") == "" &&
		d.file.Text.LineOf(start)-d.file.Text.LineOf(end) == 1
}

func (d *document) indent(at int) int {
	t := d.file.Text
	return indentOf(t.Slice(t.Line(t.LineOf(at))))
}

func indentOf(line string) int { return len(line) - len(strings.TrimLeft(line, " \t")) }

func firstRune(s string) rune {
	for _, r := range s {
		return r
	}
	return 0
}

// endsOpen tells whether a line stops in the middle of a list or a bracket.
func endsOpen(s string) bool {
	if s == "" {
		return false
	}
	switch s[len(s)-1] {
	case ',', ';', '(', '[', '{':
		return true
	}
	open := 0
	for i := 0; i < len(s); i++ {
		switch s[i] {
		case '(', '[', '{':
			open++
		case ')', ']', '}':
			open--
		}
	}
	return open > 0 && len(s) > wrapWidth
}

func endsSentence(s string) bool {
	return s == "" || strings.ContainsRune(".!?)]}:", rune(s[len(s)-1]))
}

// labelled tells whether a line begins with the label of a row, not just a
// name and a colon.
func labelled(line string) bool {
	label, n := readLabel(Lex(firstWords(line), 0, Standard()), firstWords(line))
	return n > 0 && label.Kind != Named
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

// continuesField tells whether an indented line goes on with the header field
// before it.
func (d *document) continuesField(line string, span source.Span) bool {
	n := len(d.file.Header)
	return !d.started && n > 0 && (line[0] == ' ' || line[0] == '\t') && d.adjoins(d.file.Header[n-1].Span.End, span.Start)
}

func (d *document) extendField(span source.Span) {
	f := d.file.Header[len(d.file.Header)-1]
	f.Span.End, f.ValueSpan.End = span.End, span.End
	if f.Value == "" {
		f.ValueSpan.Start = span.Start
	}
	f.Value = strings.Join(strings.Fields(d.text(f.ValueSpan)), " ")
}

func (d *document) extend(span source.Span) {
	b := d.last()
	b.span.End = span.End
	if b.kind == blockDefinition {
		b.body.End = span.End
	}
}

// line sorts a line that begins something.
func (d *document) line(line, trimmed string, span source.Span) {
	switch {
	case d.heading(line, trimmed, span):
	case !d.started && d.field(line, span):
	case d.inSection(trimmed, span):
	case strings.Contains(trimmed, "(make ") && d.runIn(line, span):
	case d.definition(trimmed, span):
	case !d.started && d.unknownField(line, span):
	case d.runIn(line, span):
	case isNote(trimmed):
		d.add(block{kind: blockProse, span: span})
	default:
		if d.section == "" && labelled(trimmed) {
			d.started = true
		}
		d.add(block{kind: blockText, span: span})
	}
}

func isNote(trimmed string) bool {
	head, _, found := strings.Cut(trimmed, ":")
	if !found {
		return false
	}
	key, _ := headerKey(strings.Trim(head, "*_ "))
	return key == "notes"
}

// heading takes `Piece: Leaf (make 6)`, `## Leaf`, `Leaf:` and `LEAF (make 6)`.
func (d *document) heading(line, trimmed string, span source.Span) bool {
	name := ""
	switch lower := strings.ToLower(trimmed); {
	case strings.HasPrefix(lower, "piece:"), strings.HasPrefix(lower, "part:"):
		name = trimmed[strings.IndexByte(trimmed, ':')+1:]
		d.started = true
	case strings.HasPrefix(trimmed, "#"):
		name = strings.TrimLeft(trimmed, "#")
		if labelled(strings.TrimSpace(name)) {
			return false
		}
	case d.sectionHead(trimmed) != "":
		d.section = d.sectionHead(trimmed)
		d.add(block{kind: blockProse, span: span})
		return true
	case d.bareHeading(trimmed):
		name = strings.TrimRight(trimmed, ":.")
	default:
		return false
	}
	name = strings.TrimFunc(name, func(r rune) bool { return isBlank(r) || r == '*' })
	d.section = ""
	at := span.Start + max(0, strings.Index(line, name))
	d.add(block{kind: blockHeading, span: span, names: []string{name}, nameSpan: source.Span{Start: at, End: at + len(name)}})
	return true
}

// sectionHead gives the section that a line of its own begins: `Special
// stitches`, `**Notes**`.
func (d *document) sectionHead(trimmed string) string {
	plain := strings.Trim(trimmed, "#*_:. ")
	key, _ := headerKey(plain)
	if !sections[key] || strings.Contains(plain, ":") {
		return ""
	}
	return key
}

// bareHeading tells a heading without markup: a short line of its own that
// ends in a colon or is written in capitals.
func (d *document) bareHeading(trimmed string) bool {
	if len(trimmed) > 60 || labelled(trimmed) {
		return false
	}
	plain := strings.Trim(trimmed, "*_ ")
	if bold, ok := strings.CutPrefix(trimmed, "**"); ok && strings.HasSuffix(bold, "**") && strings.Count(bold, "*") == 2 && len(strings.Fields(plain)) <= 6 {
		return true
	}
	if head, ok := strings.CutSuffix(plain, ":"); ok {
		key, _ := headerKey(head)
		return key == "" && len(strings.Fields(head)) <= 6 && !strings.ContainsAny(head, ",;")
	}
	name, after, found := strings.Cut(plain, "(")
	if found && !strings.HasSuffix(after, ")") {
		return false
	}
	name, _, _ = strings.Cut(name, ",")
	letters := 0
	for _, r := range name {
		if unicode.IsLower(r) {
			return false
		}
		if unicode.IsLetter(r) {
			letters++
		}
	}
	return letters >= 3 && len(strings.Fields(plain)) <= 7 && !finishes(plain)
}

// finishes tells `FASTEN OFF.`, in capitals on a line of its own, from a
// heading.
func finishes(line string) bool {
	list, _ := build(Lex(line, 0, Standard()))
	if len(list) == 0 {
		return false
	}
	switch list[0].Node.(type) {
	case *Finish, *MakeUp, *Turn, *Chain:
		return true
	}
	return false
}

// field takes a line of the header.
func (d *document) field(line string, span source.Span) bool {
	f, ok := readField(line, span.Start)
	if !ok {
		return false
	}
	d.section = ""
	d.file.Header = append(d.file.Header, f)
	if sections[f.Key] && f.Value == "" || f.Key == "abbreviations" || f.Key == "special stitches" {
		d.section = f.Key
	}
	return true
}

// unknownField keeps a header line whose key nobody knows.
func (d *document) unknownField(line string, span source.Span) bool {
	key, value, found := strings.Cut(line, ":")
	if !found || len(d.file.Header) == 0 || strings.TrimSpace(value) == "" || len(strings.Fields(key)) > 3 || labelled(line) ||
		!unicode.IsUpper(firstRune(key)) || d.readsAsWork(value) {
		return false
	}
	d.file.Header = append(d.file.Header, fieldOf(line, span.Start, strings.ToLower(strings.TrimSpace(key)), ""))
	return true
}

// inSection takes a line below a section's heading.
func (d *document) inSection(trimmed string, span source.Span) bool {
	if d.section == "" {
		return false
	}
	if labelled(trimmed) {
		d.section = ""
		return false
	}
	switch d.section {
	case "abbreviations", "special stitches":
		if d.defined(trimmed, span, d.section == "special stitches") {
			return true
		}
		if line := d.file.Text.Slice(span); d.section == "abbreviations" && strings.Contains(line, ",") || line[0] == ' ' || line[0] == '\t' {
			break
		}
		d.section = ""
		return false
	case "notes", "materials", "notions", "yarn", "gauge", "finished size", "sizes":
		if f, ok := readField(d.file.Text.Slice(span), span.Start); ok {
			d.file.Header = append(d.file.Header, f)
			return true
		}
		if d.section != "notes" && beginsInstruction(trimmed) {
			d.section = ""
			return false
		}
	}
	d.add(block{kind: blockProse, span: span})
	return true
}

// beginsInstruction tells a line such as `With A, ch 41.` by its first words.
func beginsInstruction(trimmed string) bool {
	tokens := Lex(firstWords(trimmed), 0, Standard())
	for _, t := range tokens {
		if t.Kind == Word && t.Canon == "" {
			continue
		}
		return t.Kind == Word && (t.Canon == "ch" || t.Canon == "with" || t.Canon == "work" || t.Canon == "join") && len(tokens) > 1
	}
	return false
}

// definition takes `sc = single crochet` and, before the first row, `Fan:
// (3 dc in next st)` wherever they stand.
func (d *document) definition(trimmed string, span source.Span) bool {
	if d.started || labelled(trimmed) {
		return false
	}
	return d.defined(trimmed, span, false)
}

// definitionMarks separate a word from its meaning.
var definitionMarks = [...]string{" = ", "=", ": ", " – ", " — ", " - ", " … ", " → ", " : "}

// defined reads `name mark meaning`.
func (d *document) defined(trimmed string, span source.Span, special bool) bool {
	line := d.file.Text.Slice(span)
	at := span.Start + strings.Index(line, trimmed)
	for _, mark := range definitionMarks {
		name, meaning, found := strings.Cut(trimmed, mark)
		if !found || strings.TrimSpace(meaning) == "" {
			continue
		}
		names := definedNames(name)
		if len(names) == 0 {
			continue
		}
		known := d.knownWord(names[0])
		if known && !special && !d.knownStitch(names[0]) && strings.ContainsAny(meaning, "0123456789") && d.readsAsWork(meaning) {
			continue // `Foundation: ch 35`
		}
		if !special && !known && (mark == ": " || mark == " : ") && !d.readsAsWork(meaning) {
			continue
		}
		if !special && !known && strings.TrimSpace(mark) != "=" && !d.readsAsWork(meaning) {
			continue
		}
		bodyAt := at + len(name) + len(mark)
		d.add(block{
			kind: blockDefinition, span: source.Span{Start: at, End: span.End}, names: names,
			nameSpan: source.Span{Start: at, End: at + len(strings.TrimRight(name, " "))},
			body:     source.Span{Start: bodyAt, End: at + len(trimmed)},
			special:  special || !known,
		})
		return true
	}
	return false
}

// definedNames splits `Picot stitch (pst)` and `Hip (a bobble)` into the
// words that are defined.
func definedNames(s string) []string {
	name, rest, found := strings.Cut(s, "(")
	name = strings.Trim(name, " *•-_")
	if name == "" || len(strings.Fields(name)) > 4 || len(name) > 32 || strings.ContainsAny(name, ",.;*[") {
		return nil
	}
	out := []string{name}
	if found {
		inner := strings.Trim(rest, " )*")
		if inner != "" && len(strings.Fields(inner)) <= 2 && !strings.ContainsAny(inner, ",;") && !strings.EqualFold(inner, "counts") {
			out = append(out, inner)
		}
	}
	return out
}

func (d *document) knownWord(name string) bool {
	tokens := Lex(name, 0, Standard())
	return len(tokens) == 1 && tokens[0].Kind != Name
}

func (d *document) knownStitch(name string) bool {
	tokens := Lex(name, 0, Standard())
	return len(tokens) == 1 && tokens[0].Kind == Stitch
}

func (d *document) readsAsWork(meaning string) bool {
	list, _ := build(Lex(meaning, 0, Standard()))
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

// runIn takes a part heading that runs into its instruction: `ROOT (make 5):
// ch 26`.
func (d *document) runIn(line string, span source.Span) bool {
	end := 0
	for end < len(line) && (line[end] == ' ' || line[end] == '-' || line[end] == '\'' || line[end] >= 'A' && line[end] <= 'Z') {
		end++
	}
	name := strings.TrimSpace(line[:end])
	if len(name) < 3 || labelled(line) || labelled(name+" 1:") && !strings.Contains(name, " ") {
		return false
	}
	rest := line[end:]
	if strings.HasPrefix(rest, "(") {
		shut := strings.IndexByte(rest, ')')
		if shut < 0 {
			return false
		}
		end += shut + 1
		rest = strings.TrimLeft(line[end:], " ")
		end = len(line) - len(rest)
		if !strings.HasPrefix(rest, ":") && !strings.HasPrefix(rest, ".") {
			rest = ":" + rest
			end--
		}
	}
	if rest == "" || rest[0] != ':' && rest[0] != '.' && !strings.HasPrefix(rest, "…") {
		return false
	}
	_, after, _ := strings.Cut(line[end:], string([]rune(rest)[0]))
	if rest[0] == ':' && line[end] != ':' {
		after = line[end+1:]
	}
	if strings.TrimSpace(after) == "" || !startsWork(after) {
		return false
	}
	head := source.Span{Start: span.Start, End: span.End - len(after)}
	label := strings.TrimRight(line[:len(line)-len(after)], " :.…")
	d.add(block{kind: blockHeading, span: head, names: []string{label}, nameSpan: source.Span{Start: span.Start, End: span.Start + len(label)}})
	d.add(block{kind: blockText, span: source.Span{Start: head.End, End: span.End}})
	d.started = true
	return true
}

func startsWork(s string) bool {
	if labelled(strings.TrimSpace(s)) {
		return true
	}
	list, _ := build(Lex(firstWords(s), 0, Standard()))
	if len(list) == 0 {
		return false
	}
	_, bad := list[0].Node.(*Unread)
	return !bad
}

// sizes finds how many sizes the pattern is written for.
func (d *document) sizes() {
	for _, f := range d.file.Header {
		if f.Key == "sizes" {
			d.file.Sizes = sizeNames(f.Value)
		}
	}
}

// vocabulary adds the words the pattern defines to those of the trade.
func (d *document) vocabulary() {
	var words []OwnWord
	for i := range d.blocks {
		b := &d.blocks[i]
		if b.kind != blockDefinition || !b.special {
			continue
		}
		var stands stitch.Meaning
		if tokens := Lex(d.text(b.body), 0, Standard()); len(tokens) > 0 && tokens[0].Kind == Stitch && !d.readsAsWork(d.text(b.body)) {
			stands = tokens[0].Stitch // `x = single crochet`
		}
		for _, name := range b.names {
			words = append(words, OwnWord{Text: name, Stands: stands})
		}
	}
	if len(words) > 0 || len(d.file.Sizes) > 0 {
		d.file.Vocab = Standard().Defining(words, len(d.file.Sizes))
	}
}

// readAll reads definitions and instructions.
func (d *document) readAll() {
	for _, f := range d.file.Header {
		if f.Key == "abbreviations" {
			d.listed(f.ValueSpan)
		}
	}
	for i := range d.blocks {
		b := &d.blocks[i]
		switch b.kind {
		case blockProse:
			d.file.Prose = append(d.file.Prose, b.span)
		case blockDefinition:
			d.readDefinition(b)
		case blockHeading:
			d.startPiece(b)
		case blockText:
			d.readText(b)
		}
	}
	d.dropEmptyPieces()
}

// listed reads the definitions of a list in one paragraph: `ch = chain, tr =
// treble`.
func (d *document) listed(span source.Span) {
	at := span.Start
	for part := range strings.SplitSeq(d.text(span), ",") {
		name, meaning, found := strings.Cut(part, "=")
		if names := definedNames(strings.TrimSpace(name)); found && len(names) > 0 && strings.TrimFunc(meaning, isBlank) != "" && unicode.IsLetter(firstRune(names[0])) {
			start := at + len(part) - len(strings.TrimLeftFunc(part, isBlank))
			d.file.Definitions = append(d.file.Definitions, &Definition{
				Names: names, Text: strings.TrimFunc(meaning, isBlank), Listed: true,
				Span:     source.Span{Start: start, End: at + len(strings.TrimRightFunc(part, isBlank))},
				NameSpan: source.Span{Start: start, End: start + len(strings.TrimSpace(name))},
			})
		}
		at += len(part) + 1
	}
}

func (d *document) readDefinition(b *block) {
	if strings.Count(d.text(b.span), "=") > 1 && strings.Contains(d.text(b.body), ",") && !b.special {
		d.listed(b.span)
		d.file.Prose = append(d.file.Prose, b.span)
		return
	}
	def := &Definition{Names: b.names, Span: b.span, NameSpan: b.nameSpan, Text: d.text(b.body), Special: b.special}
	if b.special {
		def.Row = d.newRow(b.body)
		def.Uses, def.Makes = saidEffect(def.Row.Tokens)
	}
	d.file.Definitions = append(d.file.Definitions, def)
}

// saidEffect reads `uses 1 st, makes 5 dc`.
func saidEffect(tokens []Token) (uses, makes Num) {
	for i := 0; i+1 < len(tokens); i++ {
		if tokens[i+1].Kind != Number {
			continue
		}
		switch {
		case tokens[i].Canon == "uses" || tokens[i].Canon == "use":
			uses = tokens[i+1].Values
		case tokens[i].Canon == "work" && uses.Written():
			makes = tokens[i+1].Values
		}
	}
	return uses, makes
}

func (d *document) startPiece(b *block) {
	p := &Piece{Name: b.names[0], Span: b.span, NameSpan: b.nameSpan}
	if name, rest, ok := strings.Cut(p.Name, "("); ok {
		tokens := Lex(rest, 0, d.file.Vocab)
		for _, t := range tokens {
			if t.Kind == Number {
				p.Make = t.Values
			}
		}
		if p.Make.Written() {
			p.Name = strings.TrimSpace(name)
		}
	}
	d.file.Pieces = append(d.file.Pieces, p)
}

// piece is the piece that instructions now belong to.
func (d *document) piece(at source.Span) *Piece {
	if len(d.file.Pieces) == 0 {
		d.file.Pieces = append(d.file.Pieces, &Piece{Span: at})
	}
	return d.file.Pieces[len(d.file.Pieces)-1]
}

func (d *document) dropEmptyPieces() {
	kept := d.file.Pieces[:0]
	for _, p := range d.file.Pieces {
		if len(p.Rows) > 0 {
			kept = append(kept, p)
			continue
		}
		d.file.Prose = append(d.file.Prose, p.Span)
	}
	d.file.Pieces = kept
}

func (d *document) newRow(span source.Span) *Row {
	return readRow(d.text(span), span.Start, d.file.Vocab)
}

// Reread reads other words for a row of the file, in the file's own vocabulary.
func (f *File) Reread(row *Row, text string) *Row { return readRow(text, row.At, f.Vocab) }

// readRow lexes and reads one instruction.
func readRow(text string, at int, vocab *Vocabulary) *Row {
	r := &Row{At: at, Text: text}
	r.Tokens = Lex(r.Text, 0, vocab)
	label, n := readLabel(r.Tokens, r.Text)
	r.Label = label
	r.Clauses, r.Problems = build(r.Tokens[n:])
	return r
}

// readText reads a block as instructions: one, or several that stand in one
// line. A block that does not read as an instruction is prose.
func (d *document) readText(b *block) {
	for _, span := range d.rowsIn(b.span) {
		r := d.newRow(span)
		if !d.instructs(r) {
			d.file.Prose = append(d.file.Prose, span)
			continue
		}
		p := d.piece(span)
		if d.startsAgain(p, r) {
			p = &Piece{Span: span, Again: true}
			d.file.Pieces = append(d.file.Pieces, p)
		}
		p.Rows = append(p.Rows, r)
	}
}

// rowsIn cuts a line that holds several labelled rows.
func (d *document) rowsIn(span source.Span) []source.Span {
	text := d.text(span)
	tokens := Lex(text, 0, d.file.Vocab)
	var out []source.Span
	start := 0
	for i := 1; i < len(tokens); i++ {
		if tokens[i-1].Kind != Period && tokens[i-1].Kind != Close || tokens[i].Kind != Ordinal && !(tokens[i].Kind == Word && (tokens[i].Canon == "row" || tokens[i].Canon == "rnd")) {
			continue
		}
		label, n := readLabel(tokens[i:], text)
		if n == 0 || label.Kind != Numbered || tokens[i+n-1].Kind != Colon && tokens[i+n-1].Kind != Dash {
			continue
		}
		end := tokens[i].Span.Start
		out = append(out, source.Span{Start: span.Start + start, End: span.Start + len(strings.TrimRight(text[:end], " \t"))})
		start = end
	}
	return append(out, source.Span{Start: span.Start + start, End: span.End})
}

// instructs tells an instruction from prose. A label makes an instruction of
// anything; without one most of the words must be understood.
func (d *document) instructs(r *Row) bool {
	if r.Label.Kind != Unlabelled {
		return true
	}
	read, total, does := 0, 0, false
	for i, c := range r.Clauses {
		total += c.Span.Len()
		switch n := c.Node.(type) {
		case *Remark:
			total -= c.Span.Len() // a comment says neither
			continue
		case *Unread:
			if i == 0 {
				total += c.Span.Len()
			}
			continue
		case *Total, *CountsNote, *Side, *Marker, *MakeUp, *LoopNote, *Join, *Turn, *NoJoin, *Skip:
		case *Rows:
			does = does || len(n.List) > 0 || n.Last.Written() || n.Piece != ""
		case *Work:
			does = does || len(n.Places) > 0 || n.Number.Written() || i > 0
		case *Bracket:
			does = does || !unread(n.Body)
		case *Made:
		case *Mark:
			does = does || len(r.Clauses) == 1
		default:
			does = true
		}
		read += c.Span.Len()
	}
	return does && 2*read >= total || makesUp(r) && read == total
}

// makesUp tells whether an unlabelled line is all handwork, such as `Weave in
// ends.`.
func makesUp(r *Row) bool {
	for _, c := range r.Clauses {
		switch c.Node.(type) {
		case *MakeUp, *Finish, *Marker, *Turn, *Yarn, *NoJoin, *Join:
		default:
			return false
		}
	}
	return len(r.Clauses) > 0
}

// startsAgain tells whether a second Row 1 begins a new piece.
func (d *document) startsAgain(p *Piece, r *Row) bool {
	if r.Label.Kind != Numbered || r.Label.First(0) != 1 {
		return false
	}
	for _, earlier := range p.Rows {
		if earlier.Label.Kind == Numbered && earlier.Label.First(0) >= 1 && earlier.Label.Round == r.Label.Round {
			return true
		}
	}
	return false
}
