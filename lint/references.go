package lint

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/syntax"
)

// What rows a row works again.

// refersTo tells whether a row repeats one of some rows.
func refersTo(r *syntax.Row, size int, rows []syntax.RowSpan) bool {
	if len(rows) == 0 {
		return false
	}
	return slices.ContainsFunc(clausesOf[*syntax.Rows](r), func(ref *syntax.Rows) bool {
		return ref.Last.Written() || ref.Piece != "" || slices.ContainsFunc(ref.List, func(named syntax.RowSpan) bool {
			return slices.ContainsFunc(rows, func(span syntax.RowSpan) bool {
				return named.From.At(size) <= span.To.At(size) && span.From.At(size) <= named.To.At(size)
			})
		})
	})
}

// repeatsAlone is the one row above that a row only repeats, nil for none.
func repeatsAlone(r *fabric.Row) *fabric.Row {
	for _, ref := range clausesOf[*syntax.Rows](r.Tree) {
		if !ref.Changed && len(ref.List) == 1 && rowsNamed(ref, 0) == 1 {
			if above := firstNamed(r, ref); above != nil {
				return above
			}
		}
	}
	return nil
}

// repeatsFirst is the row above that a row begins by repeating, nil for none.
func repeatsFirst(r *fabric.Row) *fabric.Row {
	refs := clausesOf[*syntax.Rows](r.Tree)
	if len(refs) == 0 {
		return nil
	}
	return firstNamed(r, refs[0])
}

// firstNamed is the first row that a row's instruction to repeat some names, nil where it
// is none of those above in the piece.
func firstNamed(r *fabric.Row, ref *syntax.Rows) *fabric.Row {
	if ref.Piece != "" || len(ref.List) == 0 {
		return nil
	}
	above := r.Piece.Rows[:r.Index]
	i := slices.IndexFunc(above, func(above *fabric.Row) bool {
		return slices.Contains(above.Tree.Label.Each(0), ref.List[0].From.At(0))
	})
	if i < 0 {
		return nil
	}
	return above[i]
}

// rowsNamed is how many rows an instruction to repeat them names.
func rowsNamed(n *syntax.Rows, size int) int {
	total := n.Last.Or(size, 0)
	if n.Called != "" {
		total++
	}
	for _, span := range n.List {
		total += max(1, span.To.At(size)-span.From.At(size)+1)
	}
	return total
}
