package suggest

import (
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// state is how the work stands where the next clause begins.
type state struct {
	fabric *fabric.Fabric
	row    *fabric.Row // the one being written
	known  bool
	left   []int // stitches that are left to work into, one value a size
	total  []int
	ahead  []fabric.PartCount
	open   []fabric.BranchState // branches, the outermost first
	// chain is the length of a chain that nothing is worked into yet, nil for none;
	// ring is set where there is only a ring.
	chain []int
	ring  bool
	last  *stitch.Stitch // the stitch worked last in the piece
}

// says is a clause that changes nothing. A row that is written as far as here is
// read with it in the place of what comes.
const says = "RS facing"

// separators are the signs that a clause begins after.
const separators = ",;.:([{*"

// standing works the pattern up to an offset of its text, where a clause begins.
func (w *writing) standing(offset int) *state {
	text := w.before[:offset]
	if words := strings.TrimRight(text, " \t\r\n"); words != "" && !strings.ContainsAny(words[len(words)-1:], separators) {
		text += ", "
	}
	worked := w.work(text + says)
	s := &state{fabric: worked}
	row := lastRow(worked)
	if row == nil || row.Tree.Span().End < len(text) {
		return s
	}
	if opened := unclosed(row.Tree, len(text)-row.Tree.At); opened != row.Tree.Text {
		// brackets and stars that are open stand for their first time through
		worked = w.work(text[:row.Tree.At] + opened)
		if row = lastRow(worked); row == nil {
			return s
		}
		s.fabric = worked
	}
	s.stand(row)
	return s
}

func lastRow(f *fabric.Fabric) *fabric.Row {
	for i := len(f.Pieces) - 1; i >= 0; i-- {
		if rows := f.Pieces[i].Rows; len(rows) > 0 {
			return rows[len(rows)-1]
		}
	}
	return nil
}

// unclosed is the text of a row without the marks, before its last clause, that
// nothing closes; what a round bracket holds goes with it, for its stitches may
// all go in one place.
func unclosed(row *syntax.Row, end int) string {
	text := []byte(row.Text)
	var open []syntax.Token
	star := -1
	for _, t := range row.Tokens {
		switch {
		case t.Span.Start >= end:
		case t.Kind == syntax.Open:
			open = append(open, t)
		case t.Kind == syntax.Close && len(open) > 0:
			open = open[:len(open)-1]
		case t.Kind == syntax.Star && star < 0:
			star = t.Span.Start
		case t.Kind == syntax.Word && t.Canon == "rep" || t.Kind == syntax.Star && t.Canon == "*":
			star = -1
		}
	}
	blankOut := func(from, to int) {
		for i := from; i < to; i++ {
			text[i] = ' '
		}
	}
	if star >= 0 {
		blankOut(star, star+1)
	}
	for _, t := range open {
		if row.Text[t.Span.Start] == '(' {
			blankOut(t.Span.Start, end)
			break
		}
		blankOut(t.Span.Start, t.Span.End)
	}
	return string(text)
}

// stand fills the state in from the row that is written up to here.
func (s *state) stand(row *fabric.Row) {
	s.row = row
	if len(row.Steps) == 0 {
		return
	}
	step := &row.Steps[len(row.Steps)-1]
	s.known = step.Known
	for size := range row.Tallies {
		s.known = s.known && row.Tallies[size].Known
	}
	s.left, s.total, s.ahead = step.Left, step.Total, row.Tallies[0].Ahead
	for _, b := range step.Ledger {
		if b.Name != "stem" {
			s.open = append(s.open, b)
		}
	}
	s.laid()
	for i := len(row.Piece.Rows) - 1; i >= 0 && s.last == nil; i-- {
		s.last = lastStitch(row.Piece.Rows[i].Tree.Clauses, s.fabric.Dialect)
	}
}

// laid finds the chain or the ring that nothing is worked into yet. A few chains
// may only give a row its height: what lies before them is meant then.
func (s *state) laid() {
	if len(s.ahead) > 0 {
		return
	}
	for _, row := range slices.Backward(s.row.Piece.Rows) {
		for _, c := range slices.Backward(row.Tree.Clauses) {
			switch n := c.Node.(type) {
			case *syntax.Chain:
				if s.chain = n.Number.Vals; n.Number.At(0) > fabric.MostTurning {
					return
				}
			case *syntax.MagicRing:
				s.ring, s.chain = true, nil
				return
			case *syntax.Join:
				s.ring, s.chain = n.Ring, nil
				return
			case *syntax.Work, *syntax.Group, *syntax.Repeat:
				s.chain = nil
				return
			}
		}
	}
	if s.chain != nil && s.chain[0] < 2 {
		s.chain = nil
	}
}

// rises tells whether the row has chains before its first stitch, which may take
// the first place.
func (s *state) rises() bool {
	return s.total[0] == 0 && slices.ContainsFunc(s.row.Tree.Clauses, func(c syntax.Clause) bool { _, ok := c.Node.(*syntax.Chain); return ok })
}

// lastStitch is the plain stitch that some clauses work last, nil for none.
func lastStitch(clauses []syntax.Clause, d stitch.Dialect) *stitch.Stitch {
	var last *stitch.Stitch
	syntax.Walk(clauses, func(c syntax.Clause) {
		if work, ok := c.Node.(*syntax.Work); ok {
			if k := work.Stitch.Meaning.In(d); k != nil && k.Class == stitch.Plain {
				last = k
			}
		}
	})
	return last
}

// some tells whether any place is left, in any size.
func (s *state) some() bool {
	for _, n := range s.left {
		if n > 0 {
			return true
		}
	}
	return false
}

// spaces are the kinds of space that are ahead.
func (s *state) spaces() []string {
	var out []string
	for _, p := range s.ahead {
		if strings.HasSuffix(p.Name, " sp") {
			out = append(out, p.Name)
		}
	}
	return out
}
