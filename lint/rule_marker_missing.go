package lint

import (
	"stitchproof/lang/fabric"
	"stitchproof/lang/syntax"
)

var markerMissing = &Rule{
	Name:     "marker-missing",
	Family:   "order",
	Severity: Info,
	OfPiece:  true,
	Summary:  "A spiral places a marker, so that the rounds can be told apart.",
	Why:      "Nothing shows where an unjoined round begins. A maker without a marker loses the count in the third round.",
	Bad: `Pattern: Acorn
Terms: US

Piece: Acorn
Rnd 1: 6 sc in magic ring; do not join. (6 sc)
Rnd 2: 2 sc in each st around. (12 sc)
Rnd 3: Sc in each st around. (12 sc)
Fasten off.
`,
	Good: `Pattern: Acorn
Terms: US

Piece: Acorn
Rnd 1: 6 sc in magic ring, place marker in first st; do not join. (6 sc)
Rnd 2: 2 sc in each st around, move marker up. (12 sc)
Rnd 3: Sc in each st around. (12 sc)
Fasten off.
`,
	Check: checkMarkerMissing,
}

// fewRounds is how many rounds of a spiral a maker can tell apart by eye;
// common practice.
const fewRounds = 2

func checkMarkerMissing(p *Pass) {
	if says(p.around.notes, "mark", "join") {
		return // said once for all
	}
	for _, piece := range p.Pieces {
		var first *fabric.Row
		rounds := 0
		for _, row := range piece.Rows {
			if has[*syntax.Marker](row.Tree) || row.Joined && row.Works() || row.Round && len(row.Tree.Unread()) > 0 {
				first = nil // it is marked, or joined, or may be in words that are not understood
				break
			}
			if row.Works() && row.Round && labelled(row) && !row.Turned && !row.Continued {
				if first == nil {
					first = row
				}
				rounds += row.Repeats[0]
			}
		}
		if first != nil && rounds > fewRounds && !says(p.wordsOf(piece), "mark") {
			p.Report(Finding{Span: headSpan(first.Tree), Message: "the rounds are not joined, and no marker shows where they begin"})
		}
	}
}
