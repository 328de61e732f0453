package lint

import "stitchproof/lang/fabric"

var branchChainLeft = &Rule{
	Name:     "branch-chain-left",
	Family:   "branches",
	Severity: Error,
	OfPiece:  true,
	Summary:  "A branch is left only when all its chains are worked.",
	Why: "Chains that are left over at the foot of a branch hold it off its parent by a loose loop. Either the chain is too " +
		"long or a stitch is missing on the way back.",
	Bad: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, sc in 2nd ch from hook and in next 2 ch, return
  to stem, sc in next 5 ch.
Fasten off.
`,
	Good: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, sc in 2nd ch from hook and in next 4 ch, return
  to stem, sc in next 5 ch.
Fasten off.
`,
	Check: checkBranchChainLeft,
}

func checkBranchChainLeft(p *Pass) {
	for _, f := range p.faults(fabric.BranchChainLeft) {
		p.reportMisfit(f, Finding{
			Message: f.branch() + " is left with " + f.num(func(f fabric.Fault) int { return f.N }) + " of its " +
				f.num(func(f fabric.Fault) int { return f.Base }) + " ch unworked",
			Related: f.related(f.branch() + " leaves here"),
		})
	}
}
