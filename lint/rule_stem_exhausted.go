package lint

import "stitchproof/lang/fabric"

var stemExhausted = &Rule{
	Name:     "stem-exhausted",
	Family:   "branches",
	Severity: Error,
	OfPiece:  true,
	Summary:  "The stem's chains last until the branches and the row are done.",
	Why: "A stem that ends before its branches do leaves the maker with instructions and nothing to work into. The ledger " +
		"of the stem shows how many chains are missing.",
	Bad: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 9.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 4, sc in 2nd ch from hook and in next 2 ch, return
  to stem, sc in next 5 ch.
Fasten off.
`,
	Good: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 4, sc in 2nd ch from hook and in next 2 ch, return
  to stem, sc in next 5 ch.
Fasten off.
`,
	Check: checkStemExhausted,
}

func checkStemExhausted(p *Pass) {
	for _, f := range p.faults(fabric.StemExhausted) {
		p.reportMisfit(f, Finding{
			Message: "asks for " + counted(f.num(func(f fabric.Fault) int { return f.N }), f.Name) + " of the stem more than the " +
				f.num(func(f fabric.Fault) int { return f.Base }) + " there are, which run out here",
		})
	}
}
