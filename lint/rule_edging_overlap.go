package lint

import (
	"strconv"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var edgingOverlap = &Rule{
	Name:     "edging-overlap",
	Family:   "branches",
	Severity: Warning,
	OfPiece:  true,
	Summary:  "Edgings that are attached at counted stitches do not share places.",
	Why: "An edging that begins where another is still going on is sewn into it. Mostly one of the two is counted from the " +
		"wrong end, or is longer than the room there is.",
	Bad: `Pattern: Fern shelf edging
Terms: US

Piece: Edging
Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (20 sc)
Edging: Join B with sl st in 3rd st from beg of Row 1, [ch 3, sl st in next st] 6 times. (6 sl sts, 6 ch-3 sps)
Edging: Join B with sl st in 8th st from beg of Row 1, [ch 3, sl st in next st] 6 times. (6 sl sts, 6 ch-3 sps)
Fasten off.
`,
	Good: `Pattern: Fern shelf edging
Terms: US

Piece: Edging
Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (20 sc)
Edging: Join B with sl st in 3rd st from beg of Row 1, [ch 3, sl st in next st] 6 times. (6 sl sts, 6 ch-3 sps)
Edging: Join B with sl st in 11th st from beg of Row 1, [ch 3, sl st in next st] 6 times. (6 sl sts, 6 ch-3 sps)
Fasten off.
`,
	Check: checkEdgingOverlap,
}

func checkEdgingOverlap(p *Pass) {
	for _, f := range p.faults(fabric.EdgingOverlaps) {
		first := f.facts[0]
		finding := Finding{Message: "goes into " + counted(strconv.Itoa(first.N), "st") + " that another edging is worked into"}
		if rows := f.row.Piece.Rows; first.Base < len(rows) {
			finding.Related = []Related{{headSpan(rows[first.Base].Tree), "the other edging"}}
		}
		finding.Fix = moveEdging(f)
		p.reportFault(f, finding)
	}
}

// moveEdging is the fix that begins an edging where it shares no place with
// another; nil where there is no room.
func moveEdging(f *fault) *Fix {
	if len(f.Fits) == 0 || len(f.sizes) != len(f.row.Tallies) {
		return nil
	}
	for _, c := range f.row.Tree.Clauses {
		yarn, ok := c.Node.(*syntax.Yarn)
		if !ok || yarn.Place.Pick != syntax.PickNth {
			continue
		}
		nth := yarn.Place.Nth + f.Fits[0]
		if yarn.Place.From == syntax.FromEnd {
			nth = yarn.Place.Nth - f.Fits[0]
		}
		for _, t := range f.row.Tree.Tokens {
			if t.Kind == syntax.Ordinal && c.Span.Covers(t.Span) && nth > 0 {
				return &Fix{
					Title: "begin it in the " + syntax.Nth(nth) + " st",
					Edits: []source.Edit{{Span: f.row.Tree.Abs(t.Span), New: syntax.Nth(nth)}},
				}
			}
		}
	}
	return nil
}
