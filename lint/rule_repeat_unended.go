package lint

import "stitchproof/lang/syntax"

var repeatUnended = &Rule{
	Name:     "repeat-unended",
	Family:   "order",
	Severity: Warning,
	Summary:  "Every star that begins a repeat has words that end it.",
	Why: "A star alone leaves open how far its repeat goes and how often it is worked. It is read as running to the end of " +
		"the row, which is not what every maker will do.",
	Bad: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, *sc in next st, 2 sc in next st. (18 sc)
Fasten off.
`,
	Good: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, *sc in next st, 2 sc in next st; rep from * across. (18 sc)
Fasten off.
`,
	Check: checkRepeatUnended,
}

func checkRepeatUnended(p *Pass) {
	for _, s := range p.problems(syntax.StarUnused) {
		p.Report(Finding{
			Span:    s.row.Abs(s.Span),
			Message: "a " + quoted(s.row.Source(s.Span)) + " that no repeat speaks of: nothing says what it marks",
		})
	}
}
