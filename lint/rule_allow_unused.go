package lint

var allowUnused = &Rule{
	Name:     "allow-unused",
	Family:   "allowances",
	Severity: Warning,
	Summary:  "A comment that answers findings stands where there are such findings.",
	Why: "An answer that outlives its finding hides the next one of its kind at that place, which may be a real slip. Rules that " +
		"are switched off are not judged.",
	Bad: `Pattern: Haw
Terms: US

Piece: Haw
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
// allow count-mismatch: two sts are left for the stalk
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Fasten off.
`,
	Good: `Pattern: Haw
Terms: US

Piece: Haw
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Fasten off.
`,
	Check: checkAllowUnused,
	last:  true,
}

func checkAllowUnused(p *Pass) {
	for _, a := range p.allowances.all {
		if a.kind == allowEnd {
			continue
		}
		for i, n := range a.names {
			if n.used || p.allowances.running[n.name] == nil {
				continue
			}
			where := map[allowKind]string{
				allowHere:  "this instruction",
				allowBegin: "the lines from here on",
				allowFile:  "this file",
			}[a.kind]
			p.Report(Finding{Span: n.span, Message: "`" + n.name + "` finds nothing in " + where, Fix: p.without(a, i)})
		}
	}
}
