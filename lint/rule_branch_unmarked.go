package lint

import "stitchproof/lang/fabric"

var branchUnmarked = &Rule{
	Name:     "branch-unmarked",
	Family:   "branches",
	Severity: Info,
	OfPiece:  true,
	Summary:  "A branch is called one: `branch NAME: … return`.",
	Why: "The motion is understood without the word, but a maker who loses the place cannot find it again, and nobody can " +
		"see how much of the branch and of the stem is left. A spike of up to 5 chains that one step works back along is an " +
		"ornament, as a picot is, and needs no name.",
	Bad: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 9 ch, ch 7, sc in 2nd ch from hook and in next 5 ch. (16 sts)
Fasten off.
`,
	Good: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 9 ch, branch A: ch 7, sc in 2nd ch from hook and in next 5 ch, return. (16 sts)
Fasten off.
`,
	Check: checkBranchUnmarked,
}

func checkBranchUnmarked(p *Pass) {
	for _, f := range p.faults(fabric.BranchUnmarked) {
		p.reportFault(f, Finding{
			Message: "a branch of " + f.num(func(f fabric.Fault) int { return f.N }) + " ch leaves here without being called one",
			Fix:     writeBranch(f),
		})
	}
}
