package lint

import (
	"fmt"
	"slices"

	"stitchproof/lang/fabric"
)

var rowOrder = &Rule{
	Name:     "row-order",
	Family:   "order",
	Severity: Warning,
	OfPiece:  true,
	Summary:  "The numbers of a piece's rows run on without a gap and without going back, and are as many as the rows.",
	Why: "A gap looks like a row that got lost, and a maker cannot know whether it did. References such as `rep Row 5` go " +
		"to the wrong row from there on.",
	Bad: `Pattern: Acorn
Terms: US

Piece: Acorn
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Rnd 4: Ch 1, sc in each st around; sl st in first sc to join. (12 sc)
Rnd 5: Ch 1, sc in each st around; sl st in first sc to join. (12 sc)
Fasten off.
`,
	Good: `Pattern: Acorn
Terms: US

Piece: Acorn
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Rnd 3: Ch 1, sc in each st around; sl st in first sc to join. (12 sc)
Rnd 4: Ch 1, sc in each st around; sl st in first sc to join. (12 sc)
Fasten off.
`,
	Check: checkRowOrder,
}

// checkBeginning tells of rows that are missing between a piece and the one before it, whose
// numbers it goes on with. Such a piece leans on those before it, and is looked at again
// whenever they change.
func (p *Pass) checkBeginning(piece *fabric.Piece) {
	rows := numberedRows(piece)
	if len(rows) == 0 || piece.From != nil || interleaved(piece) {
		return
	}
	first, _ := ends(rows[0].Tree.Label, 0)
	if first < 2 || slices.ContainsFunc(piece.Rows[:rows[0].Index], (*fabric.Row).Works) {
		return
	}
	for _, before := range slices.Backward(p.Fabric.Pieces[:slices.Index(p.Fabric.Pieces, piece)]) {
		above := numberedRows(before)
		if len(above) == 0 || lastWorking(before) != above[len(above)-1] {
			return
		}
		last := above[len(above)-1]
		if _, n := ends(last.Tree.Label, 0); n+1 < first && first-n <= mostMissing && last.Tree.Label.Round == rows[0].Tree.Label.Round && !thenRepeats(last.Tree) {
			p.Report(Finding{
				Span:    headSpan(rows[0].Tree),
				Message: rowDoes(rows[0].Tree, "comes", "come") + " next, and " + missing(n+1, first-1),
				Related: []Related{{headSpan(last.Tree), rowName(last.Tree) + " is the last one above"}},
			})
		}
		return
	}
}

// missing says which rows are.
func missing(first, last int) string {
	if last > first {
		return runName(first, last) + " are missing"
	}
	return runName(first, last) + " is missing"
}

// mostMissing is how many rows may be missing between two headings; where more are, the
// numbers are those of another piece.
const mostMissing = 4

// checkRowOrder tells of each row that stands where another is due. A label that numbers a run
// of rows is held against the times that its words say.
func checkRowOrder(p *Pass) {
	for _, piece := range p.Pieces {
		found := slips(piece)
		for i, s := range found {
			if s.earlier != nil {
				continue
			}
			message := rowDoes(s.row.Tree, "stands", "stand") + " where " + s.dueName() + " is due"
			switch {
			case s.before != nil:
				message = rowDoes(s.row.Tree, "stands", "stand") + " before " + rowName(s.before.Tree)
			case s.number > s.due && !s.alone:
				message = rowDoes(s.row.Tree, "comes", "come") + " next, and " + missing(s.due, s.number-1)
			}
			p.Report(Finding{Span: headSpan(s.row.Tree), Message: message, Fix: renumber(found, i)})
		}
		p.checkBeginning(piece)
		for _, row := range piece.Rows {
			p.checkTimes(row)
			p.checkTotal(row)
		}
		for _, s := range sizeSlips(piece, p.Fabric.Sizes()) {
			p.inSizes(s.sizes, Finding{
				Span:    headSpan(s.row.Tree),
				Message: fmt.Sprintf("the number is %d, and %d is due here, as in the other sizes the numbers run on", s.number, s.due),
			})
		}
	}
}
