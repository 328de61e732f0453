package lint

var allowUnpaired = &Rule{
	Name:     "allow-unpaired",
	Family:   "allowances",
	Severity: Warning,
	Summary:  "A stretch in which findings are answered has a beginning and an end.",
	Why: "Without its end, an answer meant for a few rows hides what is wrong in all that follow. An end without a beginning " +
		"shows that the beginning was lost or names other rules.",
	Bad: `Pattern: Haw
Terms: US

Piece: Haw
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
// allow-begin count-missing: the chart gives the counts
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join.
Rnd 3: Ch 1, sc in each st around; sl st in first sc to join. (12 sc)
Fasten off.
`,
	Good: `Pattern: Haw
Terms: US

Piece: Haw
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
// allow-begin count-missing: the chart gives the counts
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join.
// allow-end
Rnd 3: Ch 1, sc in each st around; sl st in first sc to join. (12 sc)
Fasten off.
`,
	Check: checkAllowUnpaired,
}

func checkAllowUnpaired(p *Pass) {
	for _, a := range p.allowances.all {
		switch {
		case a.ended:
		case a.kind == allowBegin:
			p.Report(Finding{Span: a.Span, Message: "nothing ends what this begins: it holds to the end of the file; write `// allow-end` after the last row that it is meant for"})
		case a.kind == allowEnd:
			p.Report(Finding{Span: a.Span, Message: "this ends nothing: no `allow-begin` with its rules stands before it", Fix: p.withoutComment(a)})
		}
	}
}
