package lint

import "stitchproof/lang/fabric"

var branchEmpty = &Rule{
	Name:     "branch-empty",
	Family:   "branches",
	Severity: Error,
	Summary:  "Stitches are worked back along every branch.",
	Why: "A chain that is not worked back is a loose string, and there is no way home from its tip. The words for the way " +
		"back have been lost.",
	Bad: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, return to stem, sc in next 5 ch.
Fasten off.
`,
	Good: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, sc in 2nd ch from hook and in each ch of A, return
  to stem, sc in next 5 ch.
Fasten off.
`,
	Check: checkBranchEmpty,
}

func checkBranchEmpty(p *Pass) {
	for _, f := range p.faults(fabric.BranchEmpty) {
		p.reportFault(f, Finding{
			Message: "nothing is worked back along the " + f.num(func(f fabric.Fault) int { return f.N }) + " ch of " + f.branch(),
			Related: f.related(f.branch() + " leaves here"),
		})
	}
}
