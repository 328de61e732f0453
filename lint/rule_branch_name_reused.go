package lint

import "stitchproof/lang/fabric"

var branchNameReused = &Rule{
	Name:     "branch-name-reused",
	Family:   "branches",
	Severity: Error,
	OfPiece:  true,
	Summary:  "Every branch of a row has a name of its own.",
	Why:      "`Return to B` sends the maker to one of two places, and only one of them is right.",
	Bad: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, return
  to stem, sc in next 2 ch, branch B: ch 3, sc in 2nd ch from hook and in next ch, return to stem, sc in next 3 ch.
Fasten off.
`,
	Good: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, return
  to stem, sc in next 2 ch, branch C: ch 3, sc in 2nd ch from hook and in next ch, return to stem, sc in next 3 ch.
Fasten off.
`,
	Check: checkBranchNameReused,
}

func checkBranchNameReused(p *Pass) {
	for _, f := range p.faults(fabric.BranchNameReused) {
		p.reportFault(f, Finding{
			Message: "the row already has a " + f.branch() + ": this one needs a name of its own",
			Related: f.related("the other " + f.branch() + " leaves here"),
			Fix:     rename(f),
		})
	}
}
