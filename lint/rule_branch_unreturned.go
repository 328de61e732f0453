package lint

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
)

var branchUnreturned = &Rule{
	Name:     "branch-unreturned",
	Family:   "branches",
	Severity: Error,
	OfPiece:  true,
	Summary:  "Every branch is returned from.",
	Why: "Without the return nobody can tell where the branch ends and where the stem goes on: the next stitches may be " +
		"meant for either.",
	Bad: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 9 ch, branch A: ch 4, sc in 2nd ch from hook and in next 2 ch. (13 sts)
Fasten off.
`,
	Good: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 9 ch, branch A: ch 4, sc in 2nd ch from hook and in next 2 ch, return
  to stem. (13 sts)
Fasten off.
`,
	Check: checkBranchUnreturned,
}

func checkBranchUnreturned(p *Pass) {
	for _, f := range p.faults(fabric.BranchUnreturned) {
		p.reportFault(f, Finding{Message: f.branch() + " is never returned from", Fix: writeReturn(f)})
	}
}

// writeReturn is the fix that comes home where the branch's chains are used
// up. It is not safe: the branch may be meant to go on.
func writeReturn(f *fault) *Fix {
	for _, s := range f.row.Steps {
		n := len(s.Ledger)
		if n > 0 && s.Span.Start >= f.Span.Start && s.Ledger[n-1].Name == f.Name && usedUp(&s.Ledger[n-1]) {
			at := f.row.Tree.At + s.Span.End
			return &Fix{Title: "write `return` here", Edits: []source.Edit{{Span: source.At(at), New: ", return"}}}
		}
	}
	return nil
}

// usedUp tells whether a branch is worked to its foot in every size.
func usedUp(b *fabric.BranchState) bool {
	return slices.Max(b.Worked) > 0 && slices.Max(b.Left) == 0
}
