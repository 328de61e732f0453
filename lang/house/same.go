package house

import (
	"stitchproof/lang/fabric"
	"stitchproof/lang/plain"
)

// firstOther is the first row, by its number in the pattern, that is worked
// otherwise in one fabric than in another, -1 for none.
func firstOther(a, b *fabric.Fabric) int {
	from := 0
	for i, piece := range a.Pieces {
		if i == len(b.Pieces) {
			return from
		}
		if row := otherRow(piece, b.Pieces[i]); row >= 0 {
			return from + row
		}
		from += len(piece.Rows)
	}
	if len(a.Pieces) != len(b.Pieces) {
		return from - 1
	}
	return -1
}

// otherRow is the first row of a piece that is worked otherwise in another, -1
// for none.
func otherRow(a, b *fabric.Piece) int {
	first := -1
	note := func(row int) {
		if row = max(row, 0); first < 0 || row < first {
			first = row
		}
	}
	for i := range a.Rows {
		if i == len(b.Rows) || !sameRow(a.Rows[i], b.Rows[i]) {
			note(i)
			break
		}
	}
	if len(b.Rows) > len(a.Rows) {
		note(len(a.Rows) - 1)
	}
	for size := range a.Stitches {
		if row, other := otherStitch(a.Stitches[size], b.Stitches[size]); other {
			note(row)
		}
	}
	return first
}

// otherStitch is the row of the first stitch that is not the same in two fabrics,
// of the same row, yarn and name: of how a pattern is written nothing else may change.
func otherStitch(a, b []fabric.Stitch) (row int, other bool) {
	for i := range a {
		if i == len(b) {
			return a[i].Row, true
		}
		if x, y := a[i], b[i]; !x.Like(y) || x.Row != y.Row || x.Yarn != y.Yarn || x.Own != y.Own {
			return x.Row, true
		}
	}
	if len(b) > len(a) {
		return b[len(a)].Row, true
	}
	return 0, false
}

// sameRow tells whether two rows end alike, know as much, and state the same.
func sameRow(a, b *fabric.Row) bool {
	if a.Index != b.Index || len(a.Tallies) != len(b.Tallies) || a.Round != b.Round || a.Turned != b.Turned || a.Joined != b.Joined ||
		a.Tree.Label.Kind != b.Tree.Label.Kind || len(a.Tree.Unread()) != len(b.Tree.Unread()) {
		return false
	}
	for size := range a.Tallies {
		if !sameTally(&a.Tallies[size], &b.Tallies[size]) {
			return false
		}
	}
	return unworked(a) == unworked(b)
}

func sameTally(a, b *fabric.Tally) bool {
	if a.Known != b.Known || a.Works != b.Works || a.Made != b.Made || a.Chains != b.Chains || a.Left != b.Left ||
		len(a.Faults) != len(b.Faults) || len(a.Compared) != len(b.Compared) {
		return false
	}
	for i := range a.Faults {
		if a.Faults[i].Kind != b.Faults[i].Kind || a.Faults[i].N != b.Faults[i].N {
			return false
		}
	}
	for i := range a.Compared {
		if a.Compared[i].Stated != b.Compared[i].Stated || a.Compared[i].Made != b.Compared[i].Made || a.Compared[i].Result != b.Compared[i].Result {
			return false
		}
	}
	return true
}

// unworked says what was read in a row that works nothing, which no stitch can
// tell.
func unworked(r *fabric.Row) string {
	if r.Works() {
		return ""
	}
	return plain.Line(plain.Of(r.Tree, r.Tree.Clauses, 0))
}
