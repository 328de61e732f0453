package lint

import (
	"strings"

	"stitchproof/lang/syntax"
)

var repeatUnended = &Rule{
	Name:     "repeat-unended",
	Family:   "order",
	Severity: Warning,
	OfPiece:  true,
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
	for row := range p.rows() {
		r := row.Tree
		if !labelled(row) || len(r.Unread()) > 0 {
			continue // prose, or words that may well be those that end it
		}
		for _, problem := range r.Problems {
			if problem.Kind == syntax.StarUnused && strings.HasPrefix(r.Source(problem.Span), "*") {
				p.Report(Finding{
					Span:    r.Abs(problem.Span),
					Message: "a " + quoted(r.Source(problem.Span)) + " that no repeat speaks of: nothing says what it marks",
				})
				break // one unpaired star leaves the others of the row unpaired as well
			}
		}
	}
}
