package report

import (
	"io"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
	"stitchproof/lint"
)

// Count is what a whole pattern comes to: the table that a tech editor would
// make by hand. Lists have one value a size; nil stands for what is not known.
type Count struct {
	File   string       `json:"file"`
	Sizes  []string     `json:"sizes"`
	Pieces []CountPiece `json:"pieces"`
}

// CountPiece is one piece of the pattern.
type CountPiece struct {
	Name string `json:"name"`
	Line int    `json:"line"`
	// Make is how many are made of it, in each size.
	Make []int `json:"make"`
	// Total is the number of stitches in one of it, all rows together.
	Total []*int     `json:"total"`
	Rows  []CountRow `json:"rows"`
}

// CountRow is one instruction line.
type CountRow struct {
	Label string `json:"label"` // as written, "" for none
	Line  int    `json:"line"`
	Text  string `json:"text"`
	Works bool   `json:"works"` // false for a line such as `Fasten off.`
	// Repeats is how many rows the line stands for.
	Repeats []int `json:"repeats"`
	// Made is the number of stitches of one row, Change its difference from the
	// row below.
	Made   []*int `json:"made"`
	Change []*int `json:"change"`
	// Stated is the number of stitches that the line states, nil where it states
	// none or states only things that stitches are not counted by.
	Stated []int `json:"stated"`
	Agrees *bool `json:"agrees"`
	// Compared holds the parts of the stated count.
	Compared []CountPart `json:"compared"`
	// Parts counts the stitches and spaces by kind.
	Parts    map[string][]*int `json:"parts"`
	Side     string            `json:"side"` // "RS", "WS" or "" where it is not known
	Turned   bool              `json:"turned"`
	Joined   bool              `json:"joined"`
	Unread   []string          `json:"unread"`
	Branches []CountBranch     `json:"branches"`

	kinds []string // the keys of Parts in the order first made
}

// CountPart is one part of a stated count.
type CountPart struct {
	Name   string `json:"name"` // "" for stitches
	Stated []int  `json:"stated"`
	Made   []*int `json:"made"`
}

// CountBranch is how far a branch, or the stem, was worked when it was last
// spoken of, in the first size.
type CountBranch struct {
	Name    string `json:"name"`
	Chains  int    `json:"chains"`
	Skipped int    `json:"skipped"`
	Worked  int    `json:"worked"`
	Left    int    `json:"left"`
}

// Counted makes the table of a pattern.
func Counted(file string, a *lint.Analysis) *Count {
	out := &Count{File: file, Sizes: append([]string{}, a.File.Sizes...), Pieces: []CountPiece{}}
	for _, piece := range a.Fabric.Pieces {
		out.Pieces = append(out.Pieces, countPiece(a, piece))
	}
	return out
}

// JSON writes the table for programs. It fails only where w does.
func (c *Count) JSON(w io.Writer) error { return writeJSON(w, c) }

func countPiece(a *lint.Analysis, piece *fabric.Piece) CountPiece {
	line, _ := a.Text.LineColumn(piece.Tree.Span.Start)
	sizes := a.Fabric.Sizes()
	out := CountPiece{Name: piece.Tree.Name, Line: line, Rows: []CountRow{}}
	for size := range sizes {
		out.Make = append(out.Make, piece.Tree.Make.Or(size, 1))
		out.Total = append(out.Total, total(piece, size))
	}
	for _, row := range piece.Rows {
		out.Rows = append(out.Rows, countRow(a.Text, row))
	}
	return out
}

// total is the number of stitches of a piece, nil where a row of it is not
// known or is not what it states. Chains to work into are no stitches.
func total(piece *fabric.Piece, size int) *int {
	for _, row := range piece.Rows {
		if t := &row.Tallies[size]; !t.Known || t.Agrees() == fabric.Disagrees {
			return nil
		}
	}
	n := 0
	for i := range piece.Stitches[size] {
		if s := &piece.Stitches[size][i]; !s.IsSpace() && s.Kind.Class != stitch.Chain {
			n++
		}
	}
	return &n
}

func countRow(text *source.Text, row *fabric.Row) CountRow {
	line, _ := text.LineColumn(row.Tree.At)
	out := CountRow{
		Label: row.Tree.Label.Name(), Line: line, Text: strings.Join(strings.Fields(row.Tree.Text), " "),
		Works: row.Works(), Repeats: row.Repeats, Side: sideName(row.Side), Turned: row.Turned, Joined: row.Joined,
		Parts: map[string][]*int{}, Unread: []string{}, Branches: []CountBranch{}, Compared: []CountPart{},
	}
	below := row.Before()
	for size := range row.Tallies {
		t := &row.Tallies[size]
		out.Made = append(out.Made, known(t, t.Made))
		var change *int
		if below != nil && t.Works && below.Tallies[size].Known {
			change = known(t, t.Made-below.Tallies[size].Made)
		}
		out.Change = append(out.Change, change)
		for _, part := range t.Parts {
			if out.Parts[part.Name] == nil {
				out.Parts[part.Name] = make([]*int, len(row.Tallies))
				out.kinds = append(out.kinds, part.Name)
			}
		}
	}
	for name, counts := range out.Parts {
		for size := range row.Tallies {
			counts[size] = known(&row.Tallies[size], row.Tallies[size].Part(name))
		}
	}
	out.compare(row)
	for _, s := range row.Tree.Unread() {
		out.Unread = append(out.Unread, row.Tree.Source(s))
	}
	for _, step := range row.Steps {
		for _, b := range step.Ledger {
			b.Name = row.Tree.AsWritten(b.Name)
			out.branch(b)
		}
	}
	return out
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
			counted.Stated = append(counted.Stated, part.Number.At(size))
			var made *int
			if c := row.Tallies[size].Compared; i < len(c) && c[i].Result != fabric.Uncheckable {
				made = known(&row.Tallies[size], c[i].Made)
			}
			counted.Made = append(counted.Made, made)
		}
		r.Compared = append(r.Compared, counted)
	}
	r.Agrees = agreement(row)
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

// agreement tells whether a stated count is met in every size, nil where that
// cannot be told.
func agreement(row *fabric.Row) *bool {
	all := true
	for size := range row.Tallies {
		switch row.Tallies[size].Agrees() {
		case fabric.Disagrees:
			no := false
			return &no
		case fabric.Agrees:
		default:
			all = false
		}
	}
	if !all {
		return nil
	}
	return &all
}

// statedStitches is the number of stitches that a row states, in each size.
// Parts add up to it where they account for every stitch made; where they do
// not, as shells do not, it is not stated.
func statedStitches(row *fabric.Row) []int {
	var out []int
	for size := range row.Tallies {
		stated, made := 0, 0
		for i, part := range row.Stated.Parts {
			if part.Noun.Kind == syntax.NounNone || part.Noun.Kind == syntax.NounAny {
				stated, made = part.Number.At(size), row.Tallies[size].Made
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

// branch notes the state of a branch, later ones over earlier ones.
func (r *CountRow) branch(b fabric.BranchState) {
	state := CountBranch{b.Name, b.Chains, b.Skipped, b.Worked, b.Left}
	for i := range r.Branches {
		if r.Branches[i].Name == state.Name {
			r.Branches[i] = state
			return
		}
	}
	r.Branches = append(r.Branches, state)
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
