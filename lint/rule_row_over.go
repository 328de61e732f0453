package lint

import "stitchproof/lang/fabric"

var rowOver = &Rule{
	Name:     "row-over",
	Family:   "counts",
	Severity: Error,
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
	told := map[*fabric.Row]bool{}
	for _, f := range p.faults(fabric.RowOver) {
		if told[f.row] {
			continue // after the place where they ran out, everything is over
		}
		told[f.row] = true
		noun := f.Name
		if noun == "" {
			noun = "st"
		}
		p.reportFault(f, Finding{
			Message: "asks for " + counted(f.num(func(f fabric.Fault) int { return f.N }), noun) + " more than there are: the " +
				f.num(func(f fabric.Fault) int { return f.Base }) + " to work into are used up here",
		})
	}
}
