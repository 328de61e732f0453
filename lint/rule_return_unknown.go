package lint

import "stitchproof/lang/fabric"

var returnUnknown = &Rule{
	Name:     "return-unknown",
	Family:   "branches",
	Severity: Error,
	Summary:  "A return goes to the stem or to a branch that is open.",
	Why:      "The maker stands at the foot of a branch and is sent to a place that does not exist, or that was left before.",
	Bad: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, sc in 2nd ch from hook and in each ch of A, return
  to stem, sc in next 2 ch, return to B, sc in next 3 ch.
Fasten off.
`,
	Good: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, sc in 2nd ch from hook and in each ch of A, return
  to stem, sc in next 2 ch, sc in next 3 ch.
Fasten off.
`,
	Check: checkReturnUnknown,
}

func checkReturnUnknown(p *Pass) {
	for _, f := range p.faults(fabric.ReturnUnknown) {
		message := "nothing to return from: no branch is open"
		if open := openBranches(f); len(open) > 0 && f.Name != "" {
			message = "no " + f.branch() + " to return to: " + both(open) + " can be returned to"
		} else if f.Name != "" {
			message = "no " + f.branch() + " to return to: no branch is open"
		}
		p.reportFault(f, Finding{Message: message})
	}
}

// openBranches names what could have been returned to: the stem and the
// branches that are open, but for the innermost, which is being left.
func openBranches(f *fault) []string {
	var open []string
	for _, s := range f.row.Steps {
		if s.Span.Start >= f.Span.Start {
			break
		}
		open = nil
		for i, b := range s.Ledger {
			if i < len(s.Ledger)-1 && b.Name != "" {
				open = append(open, f.row.Tree.AsWritten(b.Name))
			}
		}
	}
	return open
}
