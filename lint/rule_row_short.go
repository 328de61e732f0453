package lint

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
	"stitchproof/lang/syntax"
)

var rowShort = &Rule{
	Name:     "row-short",
	Family:   "counts",
	Severity: Error,
	OfPiece:  true,
	Summary:  "A row works or skips every place of the row below, or says that the rest is left unworked, and how many that are.",
	Why: "A maker who reaches the end of the instruction with stitches still waiting cannot tell whether they are meant to " +
		"wait or whether a number is wrong. Where they are meant to, a few words say so. A row that turns back early, " +
		"as its own count and the next row have it, is information only.",
	Bad: `Pattern: Acorn cup
Terms: US

Piece: Cup
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in next 8 sts. (8 sc)
Fasten off.
`,
	Good: `Pattern: Acorn cup
Terms: US

Piece: Cup
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in next 8 sts, leave remaining 4 sts unworked. (8 sc)
Fasten off.
`,
	Check: checkRowShort,
}

func checkRowShort(p *Pass) {
	for row := range p.rows() {
		p.checkLeaving(row)
	}
	for _, f := range p.faults(fabric.RowShort) {
		if t := &f.row.Tallies[f.sizes[0]]; t.Agrees() == fabric.Disagrees || hasFault(t, misfits...) {
			continue // the count shows the same slip and says more, or the row is out of step
		}
		if divides.MatchString(f.row.Tree.Text) {
			continue // `Divide for neck: sc in next 12 sts, turn`
		}
		if f.mayGoOn() {
			continue
		}
		if f.turnsEarly() {
			left, of := f.num(func(f fabric.Fault) int { return f.N }), f.num(func(f fabric.Fault) int { return f.Base })
			p.noteIn(f.sizes, p.mending(f.row).offered(Finding{
				Span:    f.span,
				Message: "turns with " + counted(left, leftNoun(f.facts[0])) + " of " + of + " unworked, as the counts have it, and does not say so",
			}))
			continue
		}
		p.reportMisfit(f, Finding{
			Message: "leaves " + counted(f.num(func(f fabric.Fault) int { return f.N }), leftNoun(f.facts[0])) + " of " +
				f.num(func(f fabric.Fault) int { return f.Base }) + " unworked and does not say so",
		})
	}
}

// mayGoOn tells whether the line after a row cannot be counted or sends branches out, and
// both have no more than a number before them: they may be steps of one row.
func (f *fault) mayGoOn() bool {
	next := f.row.After()
	step := func(l syntax.Label) bool { return l.Bare || l.Step }
	return step(f.row.Tree.Label) && next != nil && step(next.Tree.Label) && (next.Branched() || !next.Tallies[f.sizes[0]].Known)
}

// turnsEarly tells whether a row turns back before its end and all counts bear that out: its
// own, and those of the next row, which is worked on just these stitches. One stitch left is
// a stitch forgotten, and repeats that come short have a slip in them.
func (f *fault) turnsEarly() bool {
	if !turnsLast(f.row.Tree) || has[*syntax.Leave](f.row.Tree) || has[*syntax.Repeat](f.row.Tree) || f.row.Before() == nil || f.N < 2 {
		return false
	}
	next := f.row.After()
	for _, size := range f.sizes {
		if f.row.Tallies[size].Agrees() != fabric.Agrees {
			return false
		}
		if next == nil {
			continue
		}
		t := &next.Tallies[size]
		short := slices.ContainsFunc(t.Faults, func(f fabric.Fault) bool { return f.Kind != fabric.RowShort })
		if !t.Known || short || t.Agrees() == fabric.Disagrees || len(t.Faults) > 0 && t.Agrees() != fabric.Agrees {
			return false
		}
	}
	return true
}

// turnsLast tells whether a row turns after all that it works.
func turnsLast(r *syntax.Row) bool {
	for _, c := range slices.Backward(r.Clauses) {
		switch n := c.Node.(type) {
		case *syntax.Total, *syntax.Remark, *syntax.Marker:
		case *syntax.Turn:
			return !n.Not && !n.OtherSide
		default:
			return false
		}
	}
	return false
}

// leftSaid is how many places a row leaves, and how many it says that it leaves.
type leftSaid struct {
	there, said int
	of          string
}

// checkLeaving holds a number of stitches that a row says it leaves at its end against
// those that are left there.
func (p *Pass) checkLeaving(row *fabric.Row) {
	for i, c := range row.Tree.Clauses {
		var off sized[leftSaid]
		for size := range row.Tallies {
			if s, ok := leaving(row, i, size); ok && p.doubts[row][size] == certain && s.there != s.said {
				off.add(size, s)
			}
		}
		if len(off.sizes) > 0 {
			p.inSizes(off.sizes, Finding{
				Span: row.Tree.Abs(c.Span),
				Message: "leaves " + counted(off.num(func(s leftSaid) int { return s.there }), off.facts[0].of) + ", and says " +
					off.num(func(s leftSaid) int { return s.said }),
			})
		}
	}
}

// leavesOtherwise tells whether a row leaves another number of stitches than it says.
func leavesOtherwise(row *fabric.Row) bool {
	for i := range row.Tree.Clauses {
		for size := range row.Tallies {
			if s, ok := leaving(row, i, size); ok && s.there != s.said {
				return true
			}
		}
	}
	return false
}

// leaving is what a row's ith clause leaves at its end and says of it, where it says a
// number and that can be held against the stitches there.
func leaving(row *fabric.Row, i, size int) (leftSaid, bool) {
	if t, counts := row.Tree.Clauses[i].Node.(*syntax.Total); counts && t.Left.Written() && i > 0 {
		return chainsLeft(row, i, size, t.Left.At(size))
	}
	n, ok := row.Tree.Clauses[i].Node.(*syntax.Leave)
	if ok && n.Told && i > 0 {
		return chainsLeft(row, i, size, n.Place.Number.At(size))
	}
	if !ok || i == 0 || !n.Place.Number.Written() || n.Place.Noun.Kind > syntax.NounAny ||
		n.Place.Pick != syntax.PickRemaining && n.Place.Pick != syntax.PickLast || !ofStitches(row, size) {
		return leftSaid{}, false
	}
	s := leftSaid{leftAfter(row, i, size), n.Place.Number.At(size), "st"}
	return s, s.there > 0
}

// chainsLeft is how many chains are left to work into before a row's ith clause, which says how
// many, on the stem or on the branch where the work is.
func chainsLeft(row *fabric.Row, i, size, said int) (leftSaid, bool) {
	if i > 1 && syntax.CountOf(row.Tree.Clauses[i-1].Node) != nil {
		i-- // `(7 dc) [44 ch]`
	}
	before := &row.Steps[i-1]
	switch row.Tree.Clauses[i-1].Node.(type) {
	case *syntax.Work, *syntax.Group, *syntax.Repeat:
	default:
		return leftSaid{}, false // `ch 12 (12 ch left)`
	}
	if !before.Known || size >= len(before.Left) || len(row.Tallies[size].Faults) > 0 {
		return leftSaid{}, false
	}
	return leftSaid{before.Left[size], said, "ch"}, true
}

// leftAfter is how many places are left before a row's ith clause, 0 where what was used
// of them does not tell the same.
func leftAfter(row *fabric.Row, i, size int) int {
	used := 0
	for _, s := range row.Steps[:i] {
		if !s.Known || size >= len(s.Left) {
			return 0
		}
		used += s.Used[size]
	}
	left := row.Steps[i-1].Left[size]
	if used+left != row.Tallies[size].Base {
		return 0
	}
	return left
}

// ofStitches tells whether a row is right and the row below it all stitches, so that the
// places left are those.
func ofStitches(row *fabric.Row, size int) bool {
	below := row.Below(size)
	if t := &row.Tallies[size]; below == nil || !t.Known || len(t.Faults) > 0 || t.Agrees() == fabric.Disagrees || row.Branched() || below.Branched() {
		return false
	}
	t := &below.Tallies[size]
	return t.Known && t.Chains == 0 && t.Part("picot") == 0
}

// divides says that a row is worked over a part of the one below: a neck or shoulders are begun.
var divides = phrase.MustCompile(`(?i)\bdivid(?:e|ing)\b|\b(?:shape|shaping|work|begin) (?:the )?(?:(?:first|second|right|left|back|front) )*(?:neck|shoulder)`)

// leftNoun is what is left unworked: spaces where a row is worked by them.
func leftNoun(f fabric.Fault) string {
	if f.Name != "" {
		return f.Name
	}
	return "st"
}
