package lint

import (
	"fmt"
	"slices"

	"stitchproof/lang/fabric"
)

var multipleMismatch = &Rule{
	Name:     "multiple-mismatch",
	Family:   "counts",
	Severity: Error,
	OfPiece:  true,
	Summary:  "A foundation chain, and the repeat of the row on it, fit the stitch multiple that the pattern states.",
	Why: "A maker who wants another width trusts the multiple. A chain that does not fit it means that one of the two " +
		"is wrong, and the first row is where it is found out.",
	Bad: `Pattern: Bramble shell strip
Terms: US

Piece: Strip
With A, ch 27 (a multiple of 6 + 2).
Row 1: Sc in 2nd ch from hook and in each ch across. (26 sc)
Fasten off.
`,
	Good: `Pattern: Bramble shell strip
Terms: US

Piece: Strip
With A, ch 26 (a multiple of 6 + 2).
Row 1: Sc in 2nd ch from hook and in each ch across. (25 sc)
Fasten off.
`,
	Sources: []string{
		"a multiple of N + M is k times N, plus M, of chains: stitch dictionary pages and stitchwhisperdesigns.com 2021, as read",
	},
	Check: checkMultipleMismatch,
}

func checkMultipleMismatch(p *Pass) {
	for _, f := range p.faults(fabric.MultipleMismatch) {
		if f.N == 0 {
			p.reportFault(f, Finding{Message: unfit(f)})
			continue
		}
		message := fmt.Sprintf("ch %s is not a multiple of %d + %d", f.num(func(f fabric.Fault) int { return f.N }), f.Unit, f.Base)
		if len(f.Fits) > 0 && len(f.sizes) == 1 {
			message += ": " + either(itoas(f.Fits)) + " would fit"
		}
		p.reportFault(f, Finding{Message: message})
	}
	if m, stated := p.statedMultiple(); stated && slices.Contains(p.Pieces, p.mainPiece()) {
		p.holdMultiple(m, p.mainPiece())
	}
}

// unfit words that no chain of the multiple fits the first row.
func unfit(f *fault) string {
	message := fmt.Sprintf("no multiple of %d + %d fits the first row", f.Unit, f.Base)
	if takes := f.Fits[0]; takes > 0 && takes != f.Unit {
		message += fmt.Sprintf(", of which each repeat takes %d", takes)
	}
	return message
}
