package lint

import (
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
	doubt := false
	wrong := map[int]bool{} // the numbers of rows that are wrong
	for _, row := range piece.Rows {
		t := &row.Tallies[size]
		d[row][size] = doubt || refersTo(row.Tree, size, wrong)
		switch {
		case unsound(row, t):
			doubt = true
			for _, n := range row.Tree.Label.Each(size) {
				wrong[n] = true
			}
		case t.Works && t.Agrees() == fabric.Agrees:
			doubt = false
		}
	}
}

// unsound tells whether a row is wrong in itself, or may be.
func unsound(row *fabric.Row, t *fabric.Tally) bool {
	return miswritten(row.Tree) || !t.Known || t.Agrees() == fabric.Disagrees || hasFault(t, misfits...) ||
		hasFault(t, fabric.RowShort, fabric.MultipleMismatch, fabric.RowUnknown, fabric.RowCircular)
}

// refersTo tells whether a row repeats one of some rows.
func refersTo(r *syntax.Row, size int, numbers map[int]bool) bool {
	if len(numbers) == 0 {
		return false
	}
	found := false
	Walk(r.Clauses, func(c syntax.Clause) {
		n, ok := c.Node.(*syntax.Rows)
		if !ok {
			return
		}
		found = found || n.Last.Written() || n.Piece != ""
		for _, span := range n.List {
			for number := range numbers {
				found = found || number >= span.From.At(size) && number <= span.To.At(size)
			}
		}
	})
	return found
}
