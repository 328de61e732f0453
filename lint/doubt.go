package lint

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/syntax"
)

// doubts tells of which rows, by size, nothing can be said because a row
// before them is wrong. One slip of a writer is one finding: what it does to
// the rows above it is no slip of its own. A row that comes out right ends the
// doubt.
type doubts map[*fabric.Row][]bool

func doubtsOf(f *fabric.Fabric) doubts {
	d := doubts{}
	for _, piece := range f.Pieces {
		for _, row := range piece.Rows {
			d[row] = make([]bool, f.Sizes())
		}
		for size := range f.Sizes() {
			d.follow(piece, size)
		}
	}
	return d
}

// follow goes through a piece row by row as a maker does.
func (d doubts) follow(piece *fabric.Piece, size int) {
	doubt := piece.From != nil && d.wrong(piece.From, size)
	var wrong []syntax.RowSpan // the numbers of rows that are wrong
	for _, row := range piece.Rows {
		t := &row.Tallies[size]
		d[row][size] = doubt || refersTo(row.Tree, size, wrong)
		switch {
		case unsound(row, t):
			doubt = true
			wrong = append(wrong, row.Tree.Label.Numbers...)
		case t.Works && t.Agrees() == fabric.Agrees:
			doubt = false
		}
	}
}

// wrong tells whether a row of a piece is wrong: what is worked on it is in
// doubt.
func (doubts) wrong(piece *fabric.Piece, size int) bool {
	return slices.ContainsFunc(piece.Rows, func(r *fabric.Row) bool { return unsound(r, &r.Tallies[size]) })
}

// unsound tells whether a row is wrong in itself, or may be.
func unsound(row *fabric.Row, t *fabric.Tally) bool {
	return miswritten(row.Tree) || idle(row) || !t.Known || t.Agrees() == fabric.Disagrees || hasFault(t, misfits...) ||
		hasFault(t, fabric.RowShort, fabric.MultipleMismatch, fabric.RowUnknown)
}

// refersTo tells whether a row repeats one of some rows.
func refersTo(r *syntax.Row, size int, rows []syntax.RowSpan) bool {
	if len(rows) == 0 {
		return false
	}
	found := false
	syntax.Walk(r.Clauses, func(c syntax.Clause) {
		n, ok := c.Node.(*syntax.Rows)
		if !ok {
			return
		}
		found = found || n.Last.Written() || n.Piece != ""
		for _, named := range n.List {
			found = found || slices.ContainsFunc(rows, func(span syntax.RowSpan) bool {
				return named.From.At(size) <= span.To.At(size) && span.From.At(size) <= named.To.At(size)
			})
		}
	})
	return found
}
