package lint

import (
	"strconv"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var branchAtTip = &Rule{
	Name:     "branch-at-tip",
	Family:   "branches",
	Severity: Warning,
	OfPiece:  true,
	Summary:  "A branch that is worked along more than once ends where it left.",
	Why: "The way back along the chain ends at the foot of the branch. A turn, or the other side of the chain, leads out to its " +
		"tip again, and the yarn is at the wrong end when the parent goes on. One more way back, if only in slip stitches, " +
		"brings it home.",
	Bad: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, sc in 2nd ch from hook and in each ch of A, turn,
  ch 1, sc in next 5 sts, return to stem, sc in next 5 ch.
Fasten off.
`,
	Good: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, sc in 2nd ch from hook and in each ch of A, turn,
  ch 1, sc in next 5 sts, turn, sl st in each of next 5 sts, return to stem, sc in next 5 ch.
Fasten off.
`,
	Check: checkBranchAtTip,
}

func checkBranchAtTip(p *Pass) {
	for _, f := range p.faults(fabric.BranchAtTip) {
		p.reportFault(f, Finding{
			Message: f.branch() + " is worked along " + syntax.One(f.N).Often() + ", so that it ends at its tip and not where it left",
			Related: f.related(f.branch() + " leaves here"),
			Fix:     slipHome(f),
		})
	}
}

// slipHome is the fix that comes back along what was worked last in slip stitches,
// before the return. It gives nil where a count is stated, which these would
// change, and where the sizes differ.
func slipHome(f *fault) *Fix {
	for i, c := range f.row.Tree.Clauses {
		if c.Span != f.Span || i == 0 || f.row.Stated != nil || len(f.row.Tallies) > 1 {
			continue
		}
		made := 0
		for k := i - 1; k >= 0; k-- {
			if _, turns := f.row.Tree.Clauses[k].Node.(*syntax.Turn); turns {
				break
			}
			made += f.row.Steps[k].Made[0]
		}
		at := f.row.Tree.At + f.row.Tree.Clauses[i-1].Span.End
		words := "turn, sl st in each of next " + strconv.Itoa(made) + " sts"
		return &Fix{Title: "write " + quoted(words), Edits: []source.Edit{{Span: source.At(at), New: ", " + words}}}
	}
	return nil
}
