package syntax

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
)

// continues tells whether a line goes on with the one before it: it is
// indented, the text is wrapped there, or what stands before ends in the middle
// of something.
func (d *document) continues(line string, span source.Span) bool {
	b := d.last()
	if b == nil || b.kind == blockHeading || b.kind == blockSizes {
		return false
	}
	trimmed := strings.TrimFunc(line, isBlank)
	if !d.adjoins(b.span.End, span.Start) {
		return d.below(b, trimmed)
	}
	if pageNumber.MatchString(trimmed) || leader.MatchString(trimmed) {
		return false
	}
	if b.kind == blockText && countAlone(trimmed) {
		return true
	}
	if inCells(trimmed) || inCells(strings.TrimFunc(d.text(b.span), isBlank)) {
		return false
	}
	if b.kind == blockText && unicode.IsLower(firstRune(trimmed)) && opened(d.text(b.span)) > 0 && opened(trimmed) < 0 {
		return true // `(row 3 - 12 sts, row 4 - 16,` and below that `row 5 - 20 sts)`
	}
	if labelled(trimmed) {
		return false
	}
	if d.wrapped(b.span.End, trimmed) && !listed(line) {
		return true
	}
	before := strings.TrimRightFunc(d.text(b.span), isBlank)
	if b.kind == blockText && (endsInCount(before) || goesByLetter.MatchString(trimmed) && !labelled(before)) {
		return false
	}
	indented := line[0] == ' ' || line[0] == '\t'
	switch b.kind {
	case blockProse:
		return false
	case blockDefinition:
		marked := strings.ContainsAny(line, ":=") || strings.Contains(line, "....")
		return indented && !marked || endsOpen(before) || !marked && unicode.IsLower(firstRune(trimmed)) && dangling.MatchString(before)
	}
	if indented && d.indent(b.span.Start) < indentOf(line) || endsOpen(before) || onlyLabel(before) && !d.heads(trimmed) {
		return true
	}
	if repeatsAbove(trimmed) || b.kind == blockText && strings.HasPrefix(trimmed, "and ") && !endsSentence(before) && !strings.HasSuffix(before, ":") {
		return true
	}
	r := firstRune(trimmed)
	if !d.started {
		return b.kind == blockText && len(before) > longLine && !endsSentence(before) && unicode.IsLower(r) && !listed(line) && goesOnProse(trimmed)
	}
	return (unicode.IsLower(r) || unicode.IsDigit(r)) && (!endsSentence(before) || strings.HasSuffix(before, ":")) && len(before) > longLine
}

// opened is how many more round brackets a text opens than it closes.
func opened(text string) int { return strings.Count(text, "(") - strings.Count(text, ")") }

// goesOnProse tells a line in small letters that may go on with a sentence from a line above the work: it lists nothing,
// explains no word and begins no step.
func goesOnProse(trimmed string) bool {
	_, _, entry := cutBeforeFull(trimmed)
	return !entry && !strings.Contains(trimmed, "=") && !spellsSeveral(trimmed) && !beginsInstruction(trimmed)
}

// below tells a line that goes on with the label which a heading above it holds.
func (d *document) below(b *block, trimmed string) bool {
	head := strings.TrimFunc(d.text(b.span), isBlank)
	return b.kind == blockText && strings.HasPrefix(head, "#") && onlyLabel(head) && !d.heads(trimmed) && !labelled(trimmed) && !inCells(trimmed) &&
		strings.TrimSpace(d.file.Text.Slice(source.Span{Start: b.span.End, End: d.file.Text.Line(d.file.Text.LineOf(b.span.End) + 2).Start})) == ""
}

// countAlone tells a line that is a stated count in brackets and no more.
func countAlone(line string) bool {
	if n := countMark(line); n > 0 {
		tokens := Lex(strings.TrimRight(line[n:], "."), Standard())
		return asTotal(tokens) != nil || countsAmong(tokens) != nil
	}
	if line == "" || !strings.ContainsRune("([{", rune(line[0])) || len(line) > 2*longLine {
		return false
	}
	tokens := Lex(strings.TrimRight(line, "."), Standard())
	n := len(tokens)
	return n > 2 && tokens[n-1].Kind == Close && asTotal(tokens[1:n-1]) != nil
}

// goesByLetter begins a step of a part that goes by a letter: `b) 2 shoots`.
var goesByLetter = phrase.MustCompile(`^\s*\(?[a-z]\) `)

// endsInCount tells lines of which the last ends in a count behind a sign: `sc in next 3 ch = 4 sts`, `sc in last 3 ch = 6
// sts, none left`.
func endsInCount(lines string) bool {
	line := lines[strings.LastIndexByte(lines, '\n')+1:]
	at := strings.LastIndex(line, " = ")
	if at < 0 {
		return false
	}
	count, _, _ := strings.Cut(line[at+len(" = "):], ",")
	return asTotal(Lex(count, Standard())) != nil
}

// listed tells a line that begins with the mark of a list.
func listed(line string) bool {
	return strings.ContainsRune("•·●▪◦", firstRune(strings.TrimSpace(line)))
}

// bulleted begins with the mark of a list, or with the hyphen, star or arrow that stands for one.
var bulleted = phrase.MustCompile(`^(?:[•·●▪◦]|[-–*>] )`)

// Listed tells an instruction that is an item of a list, `- sc in next 8 sc`, without a label of a row.
func (r *Instruction) Listed() bool { return r.Label.Kind != Numbered && bulleted.MatchString(r.Text) }

// onlyLabel tells a line that is a label and nothing more: `Row 3:`.
func onlyLabel(line string) bool {
	tokens := Lex(line, Standard())
	label, n := readLabel(tokens, line)
	return n > 0 && n == len(tokens) && label.Kind != Named && !label.Bare
}

// wrapped tells whether a paragraph goes on after the line that ends at an
// offset: the text is set to a width, and the next word had no room.
func (d *document) wrapped(end int, next string) bool {
	if d.file.lines.width == 0 {
		return false
	}
	t := d.file.Text
	before := strings.TrimFunc(bare(t.Slice(t.Line(t.LineOf(end)))), isBlank)
	word, _, _ := strings.Cut(next, " ")
	return fills(utf8.RuneCountInString(before), utf8.RuneCountInString(word), d.file.lines.width) && !d.begins(next)
}

// begins tells a line that cannot go on with another: a heading, a note, a
// label.
func (d *document) begins(line string) bool {
	_, found := labelOf(line)
	return d.heads(line) || found && unicode.IsUpper(firstRune(line))
}

// heads tells a heading or a note.
func (d *document) heads(line string) bool {
	_, runsIn := splitHeading(line)
	return runsIn || d.bareHeading(line) || isNote(line)
}

// fills tells whether a word would not have fitted at the end of a line, by their
// lengths in characters.
func fills(line, word, width int) bool { return line <= width && line+1+word > width }

// wrapsToTell is how many lines must go on in the next one before a text is
// taken to be wrapped to a width.
const wrapsToTell = 3

// wrapSlack is the part of the width that a line may be longer by.
const wrapSlack = 16

// lineShape is what a line shows of how a text is wrapped.
type lineShape struct {
	length, word int  // in characters: of the line, of its first word
	lower        bool // it begins in small letters
	open         bool // it is long and ends no sentence
	comment      bool
}

func shapeOf(line string) lineShape {
	line = strings.TrimRightFunc(bare(line), isBlank)
	word, _, _ := strings.Cut(line, " ")
	comment := strings.HasPrefix(line, commentMark)
	return lineShape{
		length: utf8.RuneCountInString(line), word: utf8.RuneCountInString(word), lower: unicode.IsLower(firstRune(line)),
		open: len(line) > longLine && !endsSentence(line) && !comment, comment: comment,
	}
}

// shapes are those of all lines; those that an edit left are known.
func (d *document) shapes() []lineShape {
	t := d.file.Text
	out := make([]lineShape, 0, t.Lines())
	if d.known != nil {
		out = append(out, d.known.lines.shapes[:d.edit.same]...)
	}
	for i := len(out); i < t.Lines(); i++ {
		if d.known != nil && i == d.edit.from {
			return append(out, d.known.lines.shapes[d.edit.was:]...)
		}
		out = append(out, shapeOf(t.Slice(t.Line(i))))
	}
	return out
}

// wrapWidth finds the width that the lines of a text are wrapped to, 0 where
// each line is a paragraph: that of the longest line that goes on in small
// letters or is about as long, where enough of these are as full as they can be.
// A text that indents what goes on says so itself.
func wrapWidth(lines []lineShape) int {
	goOn := func(i int) bool { return lines[i].open && lines[i+1].lower }
	width, several := 0, 0
	for i := range lines[1:] {
		if goOn(i) {
			several++
			width = max(width, lines[i].length)
		}
	}
	if several == 0 {
		return 0
	}
	longest := width
	for i := range lines {
		if n := lines[i].length; n <= longest+longest/wrapSlack && !lines[i].comment {
			width = max(width, n)
		}
	}
	full := 0
	for i := range lines[1:] {
		if goOn(i) && fills(lines[i].length, lines[i+1].word, width) {
			full++
		}
	}
	if full < wrapsToTell || 2*full < several {
		return 0
	}
	return width
}

// dangling ends in a word that no sentence ends in: `hdc in` above `next ch`.
var dangling = phrase.MustCompile(`(?:^| )(?:in|into|of|and|the|an?|each|next|from|with|then|or)$`)

// repeatsAbove tells a line that repeats what the line before says: `Repeat around;
// join.`, `7 times, dc in next st`.
func repeatsAbove(line string) bool {
	tokens := Lex(firstWords(line), Standard())
	if len(tokens) > 1 && tokens[0].Kind == Number && tokens[1].Kind == Word && tokens[1].Canon == "times" {
		return true
	}
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

// longLine is the length from which a line without a full stop is taken to be
// wrapped.
const longLine = 48

// adjoins tells whether only a line end stands between two offsets, and perhaps
// a note before it: a blank line or a comment between ends a paragraph.
func (d *document) adjoins(end, start int) bool {
	return strings.TrimSpace(beforeNote(d.file.Text.Slice(source.Span{Start: end, End: start}))) == "" &&
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
	return open > 0 && len(s) > longLine
}

func endsSentence(s string) bool {
	return s == "" || strings.ContainsRune(".!?)]}:", rune(s[len(s)-1]))
}

// continuesField tells whether an indented line goes on with the header field
// before it: it is no further item of the list that this stands in.
func (d *document) continuesField(line string, span source.Span) bool {
	n := len(d.file.Header)
	if d.started || n == 0 || line[0] != ' ' && line[0] != '\t' {
		return false
	}
	field := d.file.Header[n-1].Span
	return d.adjoins(field.End, span.Start) && !(bulleted.MatchString(line[indentOf(line):]) && indentOf(line) <= d.indent(field.Start))
}

func (d *document) extendField(span source.Span) {
	f := d.file.Header[len(d.file.Header)-1]
	d.takeIn(source.Span{Start: f.Span.Start, End: span.End})
	f.Span.End, f.ValueSpan.End = span.End, span.End
	if f.Value == "" {
		f.ValueSpan.Start = span.Start
	}
	f.Value = strings.Join(strings.Fields(d.text(f.ValueSpan)), " ")
}

func (d *document) extend(span source.Span) {
	b := d.last()
	b.span.End = span.End
	d.takeIn(b.span)
	if b.kind == blockDefinition {
		b.body.End = span.End
	}
}
