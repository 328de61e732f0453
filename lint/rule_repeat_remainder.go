package lint

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/syntax"
)

var repeatRemainder = &Rule{
	Name:     "repeat-remainder",
	Family:   "counts",
	Severity: Error,
	OfPiece:  true,
	Summary:  "A repeat that runs to the end of the row, or to a number of places before it, comes out even.",
	Why: "`Rep from * across` promises that the last repeat ends exactly where the row does. Where it does not, the maker is " +
		"left in the middle of a repeat; the counts that would fit show whether the repeat or the row below is wrong.",
	Bad: `Pattern: Hedge row
Terms: US

Piece: Row
With A, ch 14.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (13 sc)
Row 2: Ch 1, *sc in next 3 sts, sc2tog over next 2 sts; rep from * across.
Fasten off.
`,
	Good: `Pattern: Hedge row
Terms: US

Piece: Row
With A, ch 16.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (15 sc)
Row 2: Ch 1, *sc in next 3 sts, sc2tog over next 2 sts; rep from * across. (12 sts)
Fasten off.
`,
	Check: checkRepeatRemainder,
}

func checkRepeatRemainder(p *Pass) {
	for _, f := range p.faults(fabric.RepeatRemainder) {
		if wordAfter(f, "if") {
			continue // `if you are left with an odd st, put an inc in it`
		}
		message := "the repeat takes " + f.num(func(f fabric.Fault) int { return f.Unit }) + " of the " +
			counted(f.num(func(f fabric.Fault) int { return f.Base }), "st") + " there are for it" + f.onBranch() + ", and " +
			isLeft(f.num(func(f fabric.Fault) int { return f.N }))
		if len(f.Fits) > 0 && len(f.sizes) == 1 {
			message += ": " + either(itoas(f.Fits)) + " in " + f.ground() + " would fit"
		}
		p.reportMisfit(f, Finding{Message: message})
	}
}

// wordAfter tells whether a word stands in the row past a fault.
func wordAfter(f *fault, word string) bool {
	return slices.ContainsFunc(f.row.Tree.Tokens, func(t syntax.Token) bool { return t.Span.Start >= f.Span.End && t.Canon == word })
}

// isLeft gives a number its verb: "1 is left", "2 are left".
func isLeft(n string) string {
	if n == "1" {
		return "1 is left"
	}
	return n + " are left"
}
