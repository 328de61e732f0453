package lint

import (
	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
)

var rowShort = &Rule{
	Name:     "row-short",
	Family:   "counts",
	Severity: Error,
	OfPiece:  true,
	Summary:  "A row works or skips every place of the row below, or says that the rest is left unworked.",
	Why: "A maker who reaches the end of the instruction with stitches still waiting cannot tell whether they are meant to " +
		"wait or whether a number is wrong. Where they are meant to, a few words say so.",
	Bad: `Pattern: Acorn cup
Terms: US

Piece: Cup
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in next 8 sts. (8 sc)
Fasten off.
`,
	Good: `Pattern: Acorn cup
Terms: US

Piece: Cup
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in next 8 sts, leave remaining 4 sts unworked. (8 sc)
Fasten off.
`,
	Check: checkRowShort,
}

func checkRowShort(p *Pass) {
	for _, f := range p.faults(fabric.RowShort) {
		if t := &f.row.Tallies[f.sizes[0]]; t.Agrees() == fabric.Disagrees || hasFault(t, misfits...) {
			continue // the count shows the same slip and says more, or the row is out of step
		}
		if divides.MatchString(f.row.Tree.Text) {
			continue // `Divide for neck: sc in next 12 sts, turn`
		}
		p.reportMisfit(f, Finding{
			Message: "leaves " + counted(f.num(func(f fabric.Fault) int { return f.N }), leftNoun(f.facts[0])) + " of " +
				f.num(func(f fabric.Fault) int { return f.Base }) + " unworked and does not say so",
		})
	}
}

// divides says that a row is worked over a part of the one below.
var divides = phrase.MustCompile(`(?i)\bdivid(?:e|ing)\b`)

// leftNoun is what is left unworked: spaces where a row is worked by them.
func leftNoun(f fabric.Fault) string {
	if f.Name != "" {
		return f.Name
	}
	return "st"
}
