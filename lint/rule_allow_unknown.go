package lint

import (
	"slices"

	"stitchproof/lang/nearest"
	"stitchproof/lang/source"
)

var allowUnknown = &Rule{
	Name:     "allow-unknown",
	Family:   "allowances",
	Severity: Warning,
	Summary:  "A comment that answers findings names rules that there are.",
	Why: "A name that no rule has answers nothing: the finding comes back, or something else goes by that the writer believes " +
		"to have settled.",
	Bad: `Pattern: Haw
Terms: US

Piece: Haw
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
// allow count-mismatch, petals-ragged: two sts are left for the stalk
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
	Check: checkAllowUnknown,
}

func checkAllowUnknown(p *Pass) {
	for _, a := range p.allowances.all {
		for i, n := range a.names {
			if slices.Contains(p.allowances.known, n.name) {
				continue
			}
			f := Finding{Span: n.span, Message: "no rule is called `" + n.name + "`"}
			if meant, ok := nearest.To(n.name, p.allowances.known); ok {
				f.Message += "; perhaps `" + meant + "` is meant"
				if !p.allowances.running[meant].Cautions() { // which people answer, and no fix
					f.Fix = &Fix{Title: "write `" + meant + "`", Safe: true, Edits: []source.Edit{{Span: n.span, New: meant}}}
				}
			} else if a.kind != allowEnd {
				f.Fix = p.without(a, i)
			}
			p.Report(f)
		}
	}
}
