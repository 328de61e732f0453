package report

import (
	"io"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/syntax"
	"stitchproof/lint"
)

// Count is what a whole pattern comes to: the table that a tech editor would
// make by hand. Lists have one value a size; nil stands for what is not known.
type Count struct {
	File  string   `json:"file"`
	Sizes []string `json:"sizes"`
	// ShowReading has text and Markdown say what each clause was read as.
	ShowReading bool `json:"-"`
	// The totals are of all pieces, each as often as it is made.
	CountTotals
	// Needs is the yarn of all of them, nil where it cannot be told.
	Needs  *CountNeeds  `json:"needs"`
	Pieces []CountPiece `json:"pieces"`

	of *fabric.Fabric
}

// CountPiece is one piece of the pattern.
type CountPiece struct {
	Name string `json:"name"`
	Line int    `json:"line"`
	// Make is how many are made of it, in each size.
	Make []int `json:"make"`
	// The totals are of one of it.
	CountTotals
	// Size is how large it comes out by the gauge, in each size; nil where that
	// cannot be told.
	Size []*CountSize `json:"size"`
	// Needs is the yarn that one of it takes, nil where that cannot be told.
	Needs *CountNeeds `json:"needs"`
	Rows  []CountRow  `json:"rows"`
}

// Lines is how many instruction lines the pattern has.
func (c *Count) Lines() int {
	lines := 0
	for i := range c.Pieces {
		lines += len(c.Pieces[i].Rows)
	}
	return lines
}

// CountRow is one instruction line.
type CountRow struct {
	Label string `json:"label"` // as written, "" for none
	Line  int    `json:"line"`
	Text  string `json:"text"`
	Works bool   `json:"works"` // false for a line such as `Fasten off.`
	// Repeats is how many rows the line stands for. What is made, by kind and
	// in all, is of the last of them.
	Repeats []*int `json:"repeats"`
	// Made is the number of stitches of one row, Change its difference from the
	// row below.
	Made   []*int `json:"made"`
	Change []*int `json:"change"`
	// Running is the number of stitches of the piece up to the end of the line.
	Running []*int `json:"running"`
	// Stated is the number of stitches that the line states, nil where it states
	// none or states only things that stitches are not counted by.
	Stated []int `json:"stated"`
	Agrees *bool `json:"agrees"`
	// Agreement is Agrees for each size.
	Agreement []*bool `json:"agreement"`
	// Compared holds the parts of the stated count.
	Compared []CountPart `json:"compared"`
	// Parts counts the stitches and spaces by kind; Yarn the stitches by yarn, in
	// all the rows that the line stands for. A yarn that is not named is "".
	Parts    Amounts        `json:"parts"`
	Yarn     Amounts        `json:"yarn"`
	Side     string         `json:"side"` // "RS", "WS" or "" where it is not known
	Turned   bool           `json:"turned"`
	Joined   bool           `json:"joined"`
	Unread   []string       `json:"unread"`
	Branches []CountBranch  `json:"branches"`
	Shape    []CountStrip   `json:"shape"`
	Reading  []CountReading `json:"reading"`

	bends string              // how it bends, in words; "" where it does not
	has   func(size int) bool // whether a size has it
}

// CountPart is one part of a stated count.
type CountPart struct {
	Name   string `json:"name"` // "" for stitches
	Stated []int  `json:"stated"`
	Made   []*int `json:"made"`
}

// Counted makes the table of a pattern.
func Counted(file string, a *lint.Analysis) *Count {
	out := &Count{File: file, Sizes: append([]string{}, a.File.Sizes...), Pieces: []CountPiece{}, of: a.Fabric}
	for _, piece := range a.Fabric.Pieces {
		out.Pieces = append(out.Pieces, countPiece(a, piece))
	}
	out.CountTotals = totalOfPieces(out.Pieces, a.Fabric.Sizes())
	out.Needs = needsOfPieces(out.Pieces, a.Fabric.Sizes())
	return out
}

// JSON writes the table for programs. It fails only where w does.
func (c *Count) JSON(w io.Writer) error {
	c.read()
	return writeJSON(w, c)
}

func countPiece(a *lint.Analysis, piece *fabric.Piece) CountPiece {
	line, _ := a.Text.LineColumn(piece.Tree.Span.Start)
	out := CountPiece{Name: piece.Tree.Name, Line: line, Rows: []CountRow{}}
	for size := range a.Fabric.Sizes() {
		out.Make = append(out.Make, max(0, piece.Tree.Make.Or(size, 1)))
	}
	for _, row := range piece.Rows {
		out.Rows = append(out.Rows, countRow(a, row))
	}
	out.addUp(a, piece)
	out.Size, out.Needs = measured(a, piece), needs(a, piece)
	return out
}

func countRow(a *lint.Analysis, row *fabric.Row) CountRow {
	line, _ := a.Text.LineColumn(row.Tree.At)
	out := CountRow{
		Label: row.Tree.Label.Name(), Line: line, Text: strings.Join(strings.Fields(row.Tree.Text), " "),
		Works: row.Works(), Side: sideName(row.Side), Turned: row.Turned, Joined: row.Joined,
		Running: make([]*int, len(row.Tallies)), Unread: []string{}, Branches: branches(row), Compared: []CountPart{},
		Shape: shape(row), has: row.Tree.HasSize,
	}
	if words, bends := a.Shape(row); bends {
		out.bends = words
	}
	for size := range row.Tallies {
		t, below := &row.Tallies[size], row.Below(size)
		out.Repeats = append(out.Repeats, repeats(row, size))
		out.Made = append(out.Made, known(t, t.Made))
		var change *int
		if below != nil && t.Works && below.Tallies[size].Known {
			change = known(t, t.Made-below.Tallies[size].Made)
		}
		out.Change = append(out.Change, change)
	}
	out.parts(row)
	out.compare(row)
	for _, s := range row.Tree.Unread() {
		out.Unread = append(out.Unread, row.Tree.Source(s))
	}
	return out
}

// repeats is how many rows a line stands for, nil where the line does not tell:
// as for another piece.
func repeats(row *fabric.Row, size int) *int {
	n := row.Repeats[size]
	if n > 1 && !row.Works() {
		return nil
	}
	return &n
}

// parts counts what a row makes by kind, the kinds in the order first made.
func (r *CountRow) parts(row *fabric.Row) {
	for size := range row.Tallies {
		for _, part := range row.Tallies[size].Parts {
			r.Parts.of(part.Name, len(row.Tallies))
		}
	}
	for _, name := range r.Parts.names {
		for size := range row.Tallies {
			t := &row.Tallies[size]
			r.Parts.counts[name][size] = known(t, t.Part(name))
		}
	}
}

func known(t *fabric.Tally, n int) *int {
	if !t.Known {
		return nil
	}
	return &n
}

// compare holds the stated count against what was made.
func (r *CountRow) compare(row *fabric.Row) {
	if row.Stated == nil {
		return
	}
	for i, part := range row.Stated.Parts {
		counted := CountPart{Name: partWord(part)}
		for size := range row.Tallies {
			counted.Stated = append(counted.Stated, statedAt(row, part, size))
			var made *int
			if c := row.Tallies[size].Compared; i < len(c) && c[i].Result != fabric.Uncheckable {
				made = known(&row.Tallies[size], c[i].Made)
			}
			counted.Made = append(counted.Made, made)
		}
		r.Compared = append(r.Compared, counted)
	}
	r.Agreement = agreements(row)
	r.Agrees = inAll(row, r.Agreement)
	r.Stated = statedStitches(row)
}

// partWord is what a part of a stated count is a number of, "" for stitches.
func partWord(p syntax.Part) string {
	switch p.Noun.Kind {
	case syntax.NounNone, syntax.NounAny:
		return ""
	case syntax.NounStitch:
		return p.Noun.Stitch.Word
	case syntax.NounSpace, syntax.NounTurning:
		if p.Noun.Length.Written() {
			return "ch-" + p.Noun.Length.String() + " sp"
		}
	case syntax.NounChain:
		return "ch"
	}
	return p.Noun.Word
}

// agreements tells of each size whether the stated count is met.
func agreements(row *fabric.Row) []*bool {
	var out []*bool
	for size := range row.Tallies {
		out = append(out, agreement(row.Tallies[size].Agrees()))
	}
	return out
}

// agreement tells whether a stated count is met, nil where that cannot be told.
func agreement(a fabric.Agreement) *bool {
	met := a == fabric.Agrees
	if !met && a != fabric.Disagrees {
		return nil
	}
	return &met
}

// inAll tells whether something holds in every size that has the row: one in which it
// does not decides, and one of which it is not known leaves it open.
func inAll(row *fabric.Row, sizes []*bool) *bool {
	all := new(bool)
	*all = true
	for size, holds := range sizes {
		switch {
		case !row.Tree.HasSize(size):
		case holds == nil:
			all = nil
		case !*holds:
			return holds
		}
	}
	return all
}

// statedAt is what a part of a stated count says of a size: nothing where that skips
// the row.
func statedAt(row *fabric.Row, part syntax.Part, size int) int {
	if !row.Tree.HasSize(size) {
		return 0
	}
	return max(0, part.Number.At(size))
}

// statedStitches is the number of stitches that a row states, in each size.
// Parts add up to it where they account for every stitch made; where they do
// not, as shells do not, it is not stated.
func statedStitches(row *fabric.Row) []int {
	var out []int
	for size := range row.Tallies {
		stated, made := 0, 0
		for i, part := range row.Stated.Parts {
			if part.Noun.OfAll() {
				stated, made = statedAt(row, part, size), row.Tallies[size].Made
				break
			}
			if c := row.Tallies[size].Compared; part.Noun.Kind == syntax.NounStitch && i < len(c) {
				stated, made = stated+c[i].Stated, made+c[i].Made
			}
		}
		if made != row.Tallies[size].Made {
			return nil
		}
		out = append(out, stated)
	}
	return out
}

func sideName(s syntax.SideKind) string {
	switch s {
	case syntax.RightSide:
		return "RS"
	case syntax.WrongSide:
		return "WS"
	}
	return ""
}
