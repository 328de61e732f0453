package syntax

import (
	"math"
	"slices"
	"strings"
	"unicode"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

// An edit changes few lines of a file. The others are sorted as they were: reading
// goes back to a line before the edit at which a block begins, sorts from there on,
// and stops at a line after it from which all is as it was.

// outline is how the lines of a file were sorted.
type outline struct {
	front, width int         // lines of front matter; what the lines are wrapped to, 0 where they are not
	shapes       []lineShape // of each line
	states       []lineState // before each line, and after the last
	blocks       []block
	words        []OwnWord // that the pattern defines
	chapters     []*chapter
}

// lineState is how far sorting has come before a line.
type lineState struct {
	section                            string
	started                            bool
	blocks, fields, comments, supplies int
	stemAsked                          int // how many lines have asked whether a stem is laid
	level, step                        int
}

// edit is what is new in a text since an earlier one.
type edit struct {
	same  int // lines at the beginning that are the same
	from  int // the line from which on all lines are the same to the end
	was   int // the line that it was
	shift int // how many bytes it has moved

	first   int // blocks at the beginning that are the same
	rest    int // the block from which on all blocks are the same to the end
	restWas int // the block that it was
}

// stride is how many bytes are compared at once where they are likely the same.
const stride = 1 << 10

// changed compares two texts.
func changed(a, b *source.Text) edit {
	x, y := a.String(), b.String()
	most := min(len(x), len(y))
	head := 0
	for head+stride <= most && x[head:head+stride] == y[head:head+stride] {
		head += stride
	}
	for head < most && x[head] == y[head] {
		head++
	}
	tail := 0
	for tail+stride <= most-head && x[len(x)-tail-stride:len(x)-tail] == y[len(y)-tail-stride:len(y)-tail] {
		tail += stride
	}
	for tail < most-head && x[len(x)-1-tail] == y[len(y)-1-tail] {
		tail++
	}
	return edit{
		same: min(a.LineOf(head), b.LineOf(head)),
		from: b.LineOf(len(y)-tail) + 1, was: a.LineOf(len(x)-tail) + 1,
		shift: len(y) - len(x),
		rest:  math.MaxInt,
	}
}

// How many lines after and before a line may decide what it is taken for.
const (
	linesAhead  = 3
	linesBehind = 2
)

// resume begins sorting at the last line before the edit at which a block begins, and
// gives that line.
func (d *document) resume() int {
	if d.known == nil {
		return 0
	}
	b, now := d.known.lines, d.file.lines
	if b.front != now.front || b.width != now.width {
		d.known = nil
		return 0
	}
	for line := d.edit.same - linesAhead; line > now.front; line-- {
		at := b.states[line]
		if b.states[line+1].blocks == at.blocks {
			continue
		}
		d.section, d.started, d.stemAsked, d.level, d.step, d.edit.first = at.section, at.started, at.stemAsked, at.level, at.step, at.blocks
		d.blocks = first(at.blocks, b.blocks)
		d.file.Header = first(at.fields, d.known.Header)
		d.file.Comments = first(at.comments, d.known.Comments)
		d.file.Supplies = first(at.supplies, d.known.Supplies)
		now.states = first(line, b.states)
		return line
	}
	return 0
}

// first is a list of its own of the first n of a list, nil for none.
func first[T any](n int, list []T) []T { return append([]T(nil), list[:n]...) }

// remember notes how far sorting has come.
func (d *document) remember() {
	d.file.lines.states = append(d.file.lines.states, d.state())
}

func (d *document) state() lineState {
	return lineState{d.section, d.started, len(d.blocks), len(d.file.Header), len(d.file.Comments), len(d.file.Supplies), d.stemAsked, d.level, d.step}
}

// catchUp takes over all from a line on, where it would be sorted as before.
func (d *document) catchUp(line int) bool {
	if d.known == nil || line < d.edit.from+linesBehind {
		return false
	}
	was := line - d.edit.from + d.edit.was
	if !d.sameBefore(line, was) {
		return false
	}
	at, now := d.known.lines.states[was], d.state()
	d.edit.rest, d.edit.restWas = now.blocks, at.blocks
	d.blocks = slices.Grow(d.blocks, len(d.known.lines.blocks)-at.blocks)
	d.file.lines.states = slices.Grow(d.file.lines.states, len(d.known.lines.states)-was)
	for _, b := range d.known.lines.blocks[at.blocks:] {
		d.blocks = append(d.blocks, b.shift(d.edit.shift))
	}
	for _, f := range d.known.Header[at.fields:] {
		d.file.Header = append(d.file.Header, f.shift(d.edit.shift))
	}
	for _, c := range d.known.Comments[at.comments:] {
		moved := *c
		moved.Span = c.Span.Shift(d.edit.shift)
		d.file.Comments = append(d.file.Comments, &moved)
	}
	for _, s := range d.known.Supplies[at.supplies:] {
		d.file.Supplies = append(d.file.Supplies, s.Shift(d.edit.shift))
	}
	for _, s := range d.known.lines.states[was:] {
		s.blocks += now.blocks - at.blocks
		s.fields += now.fields - at.fields
		s.comments += now.comments - at.comments
		s.supplies += now.supplies - at.supplies
		s.stemAsked += now.stemAsked - at.stemAsked
		d.file.lines.states = append(d.file.lines.states, s)
	}
	return true
}

// sameBefore tells whether a line after the edit comes upon what it came upon
// before, and began a block there.
func (d *document) sameBefore(line, was int) bool {
	at := d.known.lines.states[was]
	if d.known.lines.states[was+1].blocks == at.blocks || at.section != d.section || at.started != d.started || at.level != d.level || at.step != d.step || at.blocks == 0 || len(d.blocks) == 0 {
		return false
	}
	last := d.known.lines.blocks[at.blocks-1].shift(d.edit.shift)
	if now := d.last(); now.span.Start < d.file.Text.Line(d.edit.from).Start || !last.sorted(now) {
		return false
	}
	if states := d.known.lines.states; states[len(states)-1].stemAsked > at.stemAsked && stemLaid(d.known.Text, d.known.lines.blocks[:at.blocks]) != stemLaid(d.file.Text, d.blocks) {
		return false
	}
	fields := len(d.file.Header)
	if d.started || at.fields == 0 && fields == 0 {
		return true
	}
	return at.fields > 0 && fields > 0 && d.known.Header[at.fields-1].Span.End+d.edit.shift == d.file.Header[fields-1].Span.End
}

// sorted tells whether two blocks are the same lines, taken for the same.
func (b *block) sorted(c *block) bool {
	return b.kind == c.kind && b.span == c.span && b.nameSpan == c.nameSpan && b.body == c.body && b.listed == c.listed
}

// shift is the block with its place moved.
func (b block) shift(n int) block {
	b.span = b.span.Shift(n)
	switch b.kind {
	case blockHeading:
		b.nameSpan = b.nameSpan.Shift(n)
	case blockDefinition:
		b.nameSpan, b.body = b.nameSpan.Shift(n), b.body.Shift(n)
	}
	return b
}

// shift is the field with its place moved.
func (f Field) shift(n int) *Field {
	f.Span, f.KeySpan, f.ValueSpan = f.Span.Shift(n), f.KeySpan.Shift(n), f.ValueSpan.Shift(n)
	return &f
}

// digest is what a block says, wherever it stands. It never changes and goes with
// the block from one reading to the next.
type digest struct {
	made  []string  // words that may name a stitch made where it is first worked
	words []OwnWord // that it defines
	lists []int     // how long its lists of numbers are
	alone []string  // steps that only call for something: see stepsAlone
	leads []string  // words with a colon behind them, or that a sentence begins in, which may be what yarns are called
	// turning are the sentences of prose that say what beginning chains count for.
	turning []source.Span
	vocab   *Vocabulary
	parts   []part // what it reads as in that vocabulary
	naming  naming // of a heading, what it says there
}

// part is an instruction in a block, or prose.
type part struct {
	span    source.Span   // in the block
	row     *Instruction  // nil for prose
	turning []source.Span // of prose, as in a digest
}

// finishBlocks reads of each new block what it says to the whole file.
func (d *document) finishBlocks() {
	for i := range d.blocks {
		b := &d.blocks[i]
		switch {
		case b.digest != nil:
		case b.kind == blockText:
			b.digest = digestText(d.text(b.span))
		case b.kind == blockDefinition && b.special:
			d.define(b)
		case b.kind == blockProse:
			b.digest = &digest{turning: turningIn(d.text(b.span))}
		case b.kind == blockDefinition:
			b.digest = &digest{words: shortFor(b.names[0], d.text(b.body))}
		default:
			b.digest = &digest{}
		}
	}
}

// shortFor is the name of a definition where no dictionary has it and it is short for a word of the trade
// that is no stitch: `m = marker`. None for any other.
func shortFor(name, meaning string) []OwnWord {
	is, of := Lex(name, Standard()), Lex(meaning, Standard())
	if len(is) != 1 || is[0].Kind != Name || len(of) != 1 || of[0].Kind != Word || nouns[of[0].Canon] == NounNone {
		return nil
	}
	return []OwnWord{{Text: strings.Clone(name), As: of[0].Canon}}
}

// digestText finds the words that an instruction defines on its way, and how long its
// lists of numbers are.
func digestText(text string) *digest {
	g := &digest{made: cloned(madeNames(text))}
	for _, name := range cloned(branchNames(text)) {
		g.words = append(g.words, OwnWord{Text: name, Branch: true})
	}
	tokens := Lex(text, Standard())
	g.alone = stepsAlone(tokens, text)
	for _, name := range limbNames(tokens) {
		g.words = append(g.words, OwnWord{Text: strings.Clone(name), Limb: true})
	}
	for i, t := range tokens {
		switch {
		case t.Kind == Number && t.Values.PerSize():
			g.lists = append(g.lists, len(t.Values.Vals))
		case t.Kind == Name && !callsYarn(t) && i+1 < len(tokens) && (tokens[i+1].Kind == Colon || worksIn(tokens, i, text)):
			g.leads = append(g.leads, strings.Clone(t.Canon))
		}
	}
	return g
}

// worksIn tells whether token i, in capitals, is what the words before it say to work in:
// `In Snow, make 38 ch`, `still in Snow, ch 1`.
func worksIn(tokens []Token, i int, text string) bool {
	return i > 0 && tokens[i-1].Kind == Word && tokens[i-1].Canon == "in" && unicode.IsUpper(firstRune(text[tokens[i].Span.Start:])) &&
		(separates(tokens[i+1]) || beginsAction(tokens[i+1]))
}

// define takes the words of a definition, and whether it is more than another name
// for a stitch of the trade.
func (d *document) define(b *block) {
	b.digest = &digest{}
	var stands stitch.Meaning
	meaning := d.text(b.body)
	if tokens := Lex(meaning, Standard()); len(tokens) > 0 && tokens[0].Kind == Stitch && (!readsAsWork(meaning) || explains(tokens)) {
		stands = tokens[0].Stitch // `x = single crochet`
		b.special = !explains(tokens)
	}
	for _, name := range b.names {
		b.digest.words = append(b.digest.words, OwnWord{Text: name, Stands: stands})
	}
}

// in is the digest with what the block reads as in a vocabulary, which read adds.
func (g *digest) in(vocab *Vocabulary, read func(*digest)) *digest {
	if g != nil && g.vocab == vocab {
		return g
	}
	out := &digest{}
	if g != nil {
		*out = *g
	}
	out.vocab = vocab
	read(out)
	return out
}
