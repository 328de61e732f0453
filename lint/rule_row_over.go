package lint

import "stitchproof/lang/fabric"

var rowOver = &Rule{
	Name:     "row-over",
	Family:   "counts",
	Severity: Error,
	OfPiece:  true,
	Summary:  "A row asks for no more places than the row below has.",
	Why: "The maker runs out of stitches before the instruction does, usually far from the number that is wrong. The " +
		"clause at which they ran out and the number there were show where to look.",
	Bad: `Pattern: Acorn cup
Terms: US

Piece: Cup
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in next 8 sts, hdc in next 6 sts.
Fasten off.
`,
	Good: `Pattern: Acorn cup
Terms: US

Piece: Cup
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in next 8 sts, hdc in next 4 sts.
Fasten off.
`,
	Check: checkRowOver,
}

func checkRowOver(p *Pass) {
	for _, f := range p.faults(fabric.RowOver) {
		noun := f.Name
		if noun == "" {
			noun = "st"
		}
		message := "asks for " + counted(f.num(func(f fabric.Fault) int { return f.N }), noun) + " more than "
		if there := f.num(func(f fabric.Fault) int { return f.Base }); there != "0" {
			message += "the " + there + " there are" + f.onBranch() + ", which run out here"
		} else {
			message += "there are, and they run out here"
		}
		p.reportMisfit(f, Finding{Message: message})
	}
}
