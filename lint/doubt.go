package lint

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// doubts tells of which rows, by size, nothing can be said because a row
// before them is wrong. One slip of a writer is one finding: what it does to
// the rows above it is no slip of its own. A row that comes out right ends the
// doubt, and one that is wrong whatever the rows below make or state has a slip of
// its own.
type doubts map[*fabric.Row][]doubt

// doubt is how far a row's ground can be relied on.
type doubt uint8

const (
	certain  doubt = iota
	supposed       // of a row below nobody knows more than how many stitches it says it makes
	doubtful       // a row below is wrong
)

func doubtsOf(f *fabric.Fabric, pieces []*fabric.Piece) doubts {
	d := doubts{}
	for _, piece := range pieces {
		for _, row := range piece.Rows {
			d[row] = make([]doubt, len(row.Tallies))
		}
		for size := range piece.Stitches {
			d.follow(f, piece, size)
		}
	}
	return d
}

// follow goes through a piece row by row as a maker does.
func (d doubts) follow(f *fabric.Fabric, piece *fabric.Piece, size int) {
	ground := certain
	if piece.From != nil && d.wrong(piece.From, size) {
		ground = doubtful
	}
	var numbers []syntax.RowSpan // of rows that are wrong
	var wrong []*fabric.Row      // since a row that came out right
	drawn := drawnInOne(piece.Rows)
	lost := false // a step of what is drawn in one go could not be counted: a twig that comes out right says nothing of what it grows from
	for _, row := range piece.Rows {
		t := &row.Tallies[size]
		if beginsAnew(row) {
			ground, wrong, lost = certain, nil, false
		}
		d[row][size] = ground
		again := refersTo(row.Tree, size, numbers)
		switch {
		case again:
			d[row][size] = doubtful
		case ground == doubtful && !lost && slipsAnyhow(f, row, size, wrong):
			d[row][size] = certain
		}
		switch {
		case trusted(row, t):
			ground = supposed
		case unsound(row, t) || len(missized(row.Tree, f.Sizes())) > 0:
			if ground = doubtful; hangsOnNone(row, t) {
				wrong = nil
			}
			wrong, numbers = append(wrong, row), append(numbers, row.Tree.Label.Numbers...)
			lost = lost || drawn && !t.Known
		case t.Works && (t.Agrees() == fabric.Agrees || hangsOnNone(row, t)):
			if !lost {
				ground, wrong = certain, nil
			}
		case again:
			wrong = append(wrong, row)
		}
	}
}

// drawnInOne tells whether something branches from the work in some rows, or may: chains are
// worked from the hook in several of them.
func drawnInOne(rows []*fabric.Row) bool {
	chains := 0
	for _, row := range rows {
		if slices.ContainsFunc(row.Steps, func(s fabric.Step) bool { return s.Ledger != nil }) {
			return true
		}
		if slices.ContainsFunc(clausesOf[*syntax.Work](row.Tree), func(w *syntax.Work) bool { return len(w.Places) > 0 && w.Places[0].From == syntax.FromHook }) {
			chains++
		}
	}
	return chains > 1
}

// slipsAnyhow tells whether a row is wrong whichever of the wrong rows below it are
// right in what they make and which in what they state. Only numbers can tell: where a
// stitch by its name is not there, the row below may have it elsewhere.
func slipsAnyhow(f *fabric.Fabric, row *fabric.Row, size int, wrong []*fabric.Row) bool {
	if len(wrong) == 0 || !outOfNumber(&row.Tallies[size]) {
		return false
	}
	told := false // the nearest of them tells; those that are far away cannot, and need not
	for _, below := range slices.Backward(wrong) {
		switch {
		case borneOut(below, size):
			return true // on whatever it was worked
		case below.Tallies[size].Agrees() != fabric.Disagrees:
			return false
		}
		swatch := f.Swatch(below)
		if swatch == nil {
			return told
		}
		other := swatch.OnStated(row)
		if len(other) == 0 {
			return told
		}
		if slices.ContainsFunc(other, func(o *fabric.Row) bool { return !outOfNumber(&o.Tallies[size]) }) {
			return false
		}
		told = true
	}
	return told
}

// outOfNumber tells whether all that is wrong with a row are numbers: it has too few
// or too many places, or does not make what it says.
func outOfNumber(t *fabric.Tally) bool {
	byNumber := func(f fabric.Fault) bool {
		return f.Kind == fabric.RowShort || f.Kind == fabric.RowOver || f.Kind == fabric.RepeatRemainder
	}
	return t.Known && t.Works && (len(t.Faults) > 0 || t.Agrees() == fabric.Disagrees) && !slices.ContainsFunc(t.Faults, func(f fabric.Fault) bool { return !byNumber(f) })
}

// borneOut tells whether a row in which something is wrong makes the number of
// stitches that it states all the same.
func borneOut(row *fabric.Row, size int) bool {
	t := &row.Tallies[size]
	stated := 0
	for _, c := range t.Compared {
		stated += c.Stated
	}
	return t.Agrees() == fabric.Agrees && stated == t.Made && !miswritten(row.Tree)
}

// wrong tells whether a row of a piece is wrong, or could not be counted and none after it came
// out right: what is worked on it is in doubt.
func (doubts) wrong(piece *fabric.Piece, size int) bool {
	lost := false
	for _, r := range piece.Rows {
		t := &r.Tallies[size]
		switch {
		case !unsound(r, t):
			lost = lost && t.Agrees() != fabric.Agrees
		case t.Known || len(t.Faults) > 0 || miswritten(r.Tree):
			return true
		default:
			lost = true
		}
	}
	return lost
}

// unsound tells whether a row is wrong in itself, or may be.
func unsound(row *fabric.Row, t *fabric.Tally) bool {
	return miswritten(row.Tree) || idle(row) || !t.Known || t.Agrees() == fabric.Disagrees || hasFault(t, misfits...) ||
		hasFault(t, fabric.RowShort, fabric.MultipleMismatch, fabric.RowUnknown)
}

// trusted tells whether a row that could not be counted says how many plain
// stitches it makes, so that the next can be counted on them.
func trusted(row *fabric.Row, t *fabric.Tally) bool {
	kind := row.Tree.Label.Kind
	if t.Known || !t.Works || len(t.Faults) > 0 || miswritten(row.Tree) || kind != syntax.Numbered && kind != syntax.NextRow ||
		row.Stated == nil || len(row.Stated.Parts) != 1 || row.Stated.Change != 0 {
		return false
	}
	noun := row.Stated.Parts[0].Noun
	return noun.Kind == syntax.NounAny || noun.Kind == syntax.NounNone || noun.Kind == syntax.NounStitch && noun.Stitch.Meaning.Is(stitch.Plain)
}

// counts tells whether the count that a row states can be held against it: not
// where a fault already says what is wrong; where a row below is wrong only if the
// row numbers all that it works; and on a ground that is supposed only where nothing but
// numbers is wrong.
func (d doubts) counts(row *fabric.Row, size int) bool {
	t := &row.Tallies[size]
	switch {
	case d[row][size] == certain:
		return !hasFault(t, misfits...)
	case hangsOnNone(row, t):
		return !slices.ContainsFunc(row.Stated.Parts, func(p syntax.Part) bool { return p.On != "" }) // what stands on a stem hangs on them
	}
	return d[row][size] == supposed && (len(t.Faults) == 0 || outOfNumber(t))
}

// hangsOnNone tells whether a row numbers all that it works, so that what it makes
// does not hang on the rows below.
func hangsOnNone(row *fabric.Row, t *fabric.Tally) bool {
	open, all := fabric.NumbersAll(row.Tree.Clauses)
	return all && !slices.ContainsFunc(t.Compared, func(c fabric.Compared) bool {
		off := max(c.Made-c.Stated, c.Stated-c.Made)
		return c.Result == fabric.Disagrees && off <= open
	})
}

// beginsAnew tells whether a line lays a chain or a ring of its own to work on: nothing
// that lies before it bears on what follows.
func beginsAnew(row *fabric.Row) bool {
	return !row.Works() && (longestChain(row.Tree) > syntax.MostRising || has[*syntax.MagicRing](row.Tree))
}
