package syntax

import (
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/source"
)

// File is one pattern, read. Every line of the text belongs to exactly one of
// its parts, and the parts hold their text by position, so printing the file
// gives back every byte.
type File struct {
	Text   *source.Text
	Header []*Field
	// Definitions are the pattern's own stitches and its abbreviation list.
	Definitions []*Definition
	// OwnParts are the pieces that steps of others call for by name, a leaf on a twig, each with all
	// its lines as one instruction.
	OwnParts []*Definition
	Pieces   []*Piece
	Comments []*Comment
	// Prose is what is no instruction, in its order: introductions, notes, captions.
	Prose []source.Span
	// Supplies are those lines of Prose that stand in a list of what is needed:
	// below `Materials`, `Notions` or `Yarn`.
	Supplies []source.Span
	// Turning are the sentences of prose and notes that say for the whole pattern
	// whether its beginning chains count.
	Turning []source.Span
	// Multiple is the chain of a sentence that says above the foundation what it is a
	// multiple of, `Multiple of 6 + 2.`, nil for none. The header may say it too.
	Multiple *Chain
	// Sizes are the names of the sizes, empty for a pattern of one size.
	Sizes []string
	Vocab *Vocabulary
	// Traits are those of all its rows.
	Traits Traits

	lines *outline // how the lines were sorted, for a reading of the text after an edit
}

// SizeCount is how many sizes the pattern is worked in; at least one.
func (f *File) SizeCount() int { return max(1, len(f.Sizes)) }

// Field is one `Key: value` of the header.
type Field struct {
	Key   string // canonical, lower case: "hook", "finished size"
	Name  string // what a key such as `Yarn A` names: "A"
	Value string
	// Span covers the whole field, KeySpan its key, ValueSpan its value.
	Span, KeySpan, ValueSpan source.Span
}

// Definition is a stitch or a word that the pattern defines.
type Definition struct {
	Names    []string
	Span     source.Span
	NameSpan source.Span
	// Text is the definition as written; Row its reading as an instruction,
	// nil where it is prose.
	Text string
	Row  *Row
	// OverStitches and OverSpace are its steps where stitches lie below, and where a space does;
	// nil where it does not tell them apart.
	OverStitches, OverSpace []Clause
	// Uses and Makes are said in `shell: uses 1 st, makes 5 dc`.
	Uses, Makes Num
	// Listed is set where the definition stands in a list within a paragraph,
	// which is a part of the file of its own.
	Listed bool
	// Special is set under `Special stitches` and for words no dictionary has;
	// otherwise the line only spells an abbreviation out.
	Special bool
}

// Piece is a part that is made by itself: a sleeve, a leaf.
type Piece struct {
	Name string
	// Span is the heading, or the first instruction where there is none.
	Span     source.Span
	NameSpan source.Span
	// Under is the heading above that this piece stands under with others: `Back`
	// over `Ribbing` and `Body`; "" for none.
	Under string
	// Make is how many are made, where it is said.
	Make Num
	Rows []*Row
	// Again is set where no heading but a second Row 1 begins the piece.
	Again bool

	look string // how its heading is set apart
}

// Called tells whether a name is the piece's, with or without what stands behind it in
// brackets, behind a colon or a dash: `First hexagon (center)`, `Edging One: onto the hem`, and
// the number before it: `2. Back`. A number in it may be written as a word.
func (p *Piece) Called(name string) bool {
	bare := listNumber.ReplaceAllString(p.Name, "")
	for _, mark := range [...]string{" (", ":", " – ", " — ", " - "} {
		bare, _, _ = strings.Cut(bare, mark)
	}
	return strings.EqualFold(p.Name, name) || strings.EqualFold(bare, name) || strings.EqualFold(inDigits(bare), name)
}

// inDigits writes the number that a name ends in with digits: `Edging One` is `Edging 1`.
func inDigits(name string) string {
	at := strings.LastIndexByte(name, ' ') + 1
	if last := Lex(name[at:], Standard()); len(last) == 1 && last[0].Kind == Number {
		return name[:at] + strconv.Itoa(last[0].Values.At(0))
	}
	return name
}

// Row is one instruction where it stands in its file.
type Row struct {
	// At is the offset of the instruction in the file.
	At int
	*Instruction
}

// Instruction is what a row says: a labelled row or round, or a line without
// label. Every position in it counts from its own beginning and it never changes,
// so that it is kept while the text before it does: rows of two readings with one
// Instruction say the same.
type Instruction struct {
	Text    string
	Label   Label
	Tokens  []Token
	Clauses []Clause
	// Problems are faults of writing in this row.
	Problems []Problem
	// Only are the sizes, by index, that have the instruction; nil for all.
	Only []int
	// Traits are what it says that matters to the whole pattern.
	Traits Traits
}

// Span is the place of the whole instruction in the file.
func (r *Row) Span() source.Span { return source.Span{Start: r.At, End: r.At + len(r.Text)} }

// Abs turns a position in the row into one in the file.
func (r *Row) Abs(s source.Span) source.Span { return s.Shift(r.At) }

// Source is the text of a clause as written.
func (r *Row) Source(s source.Span) string { return r.Text[s.Start:s.End] }

// LabelKind is how a row is called.
type LabelKind uint8

// The kinds of label.
const (
	Unlabelled LabelKind = iota
	Numbered             // Row 3, Rnds 4-9
	NextRow              // Next row, Next 4 rnds, Last row
	Setup                // Foundation row, Set-up rnd
	Named                // Edging, Border
	Parity               // all even rows
)

// RowPart is a part of a row that goes up one side of a chain and down the other.
type RowPart uint8

// The parts of a row, in the order in which they are worked.
const (
	WholeRow RowPart = iota
	AtFoot           // a quill or a stalk, before the first side
	FirstSide
	AtTip
	SecondSide
)

// Label is what stands before an instruction.
type Label struct {
	Kind LabelKind
	Text string
	Span source.Span // in the row
	// Round is set for rnd and round; the word alone does not decide how the
	// work is joined.
	Round bool
	// Step is set for a step of a row: `Step 3`.
	Step bool
	// Numbers are the rows named. Count is the 4 of `Next 4 rnds`.
	Numbers []RowSpan
	Count   Num
	// Lettered is set where a letter tells rows of one number apart: `Row 4a`, `Row 4b`.
	Lettered bool
	// EveryOther is set in `Row 2 and all even rows`: the rows between are
	// filled in by it.
	EveryOther bool
	// Which is set by `all even rows`, `all odd rows`.
	Which WhichRows
	// Bare is set where the label is a number alone, which may be that of any
	// list: `5.`, `5)`.
	Bare bool
	// Item is the number of an item of a list that works nothing, 0 for none: the 8 of `8. Fasten off.` It labels no row,
	// and is in its place among those that do.
	Item int
	// Limb is the name of the branch that the label is, where it may be one.
	Limb string
	// Homeward is set where a step is called by the way home of the branch that it ends: `**And home.**`
	Homeward bool
	// Side is the side said to face.
	Side SideKind
	// Part is the part of a row that it is said to be: `Row 1, second side:`.
	Part RowPart
	// Far is where it says that the row goes along the other side of its chain, nothing where it does not.
	Far source.Span // in the row
	// Loop is the loop that the whole row is worked in: `Rnd 7 (BLO):`.
	Loop Loop
}

// GoesOn tells whether the row is a further part of the one before it: `Row 1, second side:` behind a `Row 1`.
func (l Label) GoesOn(before Label) bool {
	further := l.Part > max(FirstSide, before.Part) || l.Part == FirstSide && before.Part == AtFoot
	return further && len(l.Numbers) == 1 && slices.EqualFunc(l.Numbers, before.Numbers, func(a, b RowSpan) bool { return a.From.Equal(b.From) && a.To.Equal(b.To) })
}

// Name is the label as the row is called by it: without the marks around it,
// "" for none.
func (l Label) Name() string { return strings.Trim(l.Text, "*_:. ") }

// Called tells whether the row goes by a name, which stands without the word row: `Dec row
// (RS)` is called `decrease`.
func (l Label) Called(name string) bool {
	bare, _, _ := strings.Cut(l.Name(), "(")
	own, of := Lex(bare, Standard()), Lex(name, Standard())
	n := len(own) - 1
	return l.Kind == Named && n > 0 && endsInRow(own) && slices.EqualFunc(own[:n], of, func(a, b Token) bool {
		return a.Canon == b.Canon || a.Kind == Stitch && b.Kind == Stitch && a.Stitch == b.Stitch
	})
}

// WhichRows tells even from odd rows.
type WhichRows uint8

// The rows that a label by parity means.
const (
	AllRows WhichRows = iota
	EvenRows
	OddRows
)

// SideKind is a side of the work.
type SideKind uint8

// The sides.
const (
	NoSide SideKind = iota
	RightSide
	WrongSide
)

// First is the row's number for a size, 0 where the label has none.
func (l Label) First(size int) int {
	if len(l.Numbers) == 0 {
		return 0
	}
	return l.Numbers[0].From.At(size)
}

// Each lists every row number the label names for a size, in order. A range
// running backwards gives its first number alone.
func (l Label) Each(size int) []int {
	var out []int
	for _, s := range l.Numbers {
		from, to := s.From.At(size), s.To.At(size)
		if to-from > maxRange {
			to = from + maxRange
		}
		out = append(out, from)
		for n := from + 1; n <= to; n++ {
			out = append(out, n)
		}
	}
	return out
}

// maxRange bounds how many rows one label may name.
const maxRange = 10_000

// Parts lists the place of every part of the file, in order. What lies
// between two of them is blank.
func (f *File) Parts() []source.Span {
	n := len(f.Header) + len(f.Definitions) + len(f.Comments) + len(f.Pieces) + len(f.Prose)
	for _, p := range f.Pieces {
		n += len(p.Rows)
	}
	out := make([]source.Span, 0, n)
	for _, h := range f.Header {
		out = append(out, h.Span)
	}
	for _, d := range f.Definitions {
		if d.Listed {
			continue
		}
		out = append(out, d.Span)
	}
	for _, c := range f.Comments {
		if !c.Within {
			out = append(out, c.Span)
		}
	}
	for _, p := range f.Pieces {
		if p.NameSpan.Len() > 0 {
			out = append(out, p.Span)
		}
		for _, r := range p.Rows {
			out = append(out, r.Span())
		}
	}
	out = append(out, f.Prose...)
	slices.SortFunc(out, func(a, b source.Span) int { return a.Start - b.Start })
	return out
}

// Print gives the file's text back, part by part, byte for byte.
func (f *File) Print() string {
	var b strings.Builder
	at := 0
	for _, part := range f.Parts() {
		b.WriteString(f.Text.Slice(source.Span{Start: at, End: part.Start}))
		b.WriteString(f.Text.Slice(part))
		at = part.End
	}
	b.WriteString(f.Text.Slice(source.Span{Start: at, End: f.Text.Len()}))
	return b.String()
}
