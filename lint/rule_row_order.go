package lint

import "fmt"

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

// A label that numbers a run of rows is held against the times that its words say.
func checkRowOrder(p *Pass) {
	for _, piece := range p.Pieces {
		found := slips(piece)
		for i, s := range found {
			if s.earlier != nil {
				continue
			}
			message := rowName(s.row.Tree) + " stands where " + s.dueName() + " is due"
			switch {
			case s.before != nil:
				message = rowName(s.row.Tree) + " stands before " + rowName(s.before.Tree)
			case s.number > s.due && !s.alone:
				message = rowName(s.row.Tree) + " comes next, and " + runName(s.due, s.number-1) + " is missing"
			}
			p.Report(Finding{Span: headSpan(s.row.Tree), Message: message, Fix: renumber(found, i)})
		}
		for _, row := range piece.Rows {
			p.checkTimes(row)
		}
		for _, s := range sizeSlips(piece, p.Fabric.Sizes()) {
			p.inSizes(s.sizes, Finding{
				Span:    headSpan(s.row.Tree),
				Message: fmt.Sprintf("the number is %d, and %d is due here, as in the other sizes the numbers run on", s.number, s.due),
			})
		}
	}
}
