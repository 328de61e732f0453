package lint

var allowUnreasoned = &Rule{
	Name:     "allow-unreasoned",
	Family:   "allowances",
	Severity: Warning,
	Summary:  "A comment that answers findings says why they are as they should be.",
	Why: "Who edits the pattern next, perhaps its own writer, has to know whether the answer still holds. A reason of a few " +
		"words after a colon is enough. A caution is told until it has one.",
	Bad: `Pattern: Haw
Terms: US

Piece: Haw
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
// allow count-mismatch
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (14 sc)
Fasten off.
`,
	Good: `Pattern: Haw
Terms: US

Piece: Haw
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
// allow count-mismatch: two sts are left for the stalk
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (14 sc)
Fasten off.
`,
	Check: checkAllowUnreasoned,
}

func checkAllowUnreasoned(p *Pass) {
	for _, a := range p.allowances.all {
		switch {
		case a.kind == allowEnd:
		case len(a.names) == 0:
			p.Report(Finding{Span: a.Span, Message: "this names no rule: write `// " + string(a.kind) + " RULE: reason`", Fix: p.withoutComment(a)})
		case a.reason == "":
			p.Report(Finding{Span: a.Span, Message: "no reason is given: write why after a colon"})
		}
	}
}
