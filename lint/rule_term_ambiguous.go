package lint

import (
	"fmt"

	"stitchproof/lang/stitch"
	"stitchproof/lang/terms"
)

var termAmbiguous = &Rule{
	Name:     "term-ambiguous",
	Family:   "terms",
	Severity: Warning,
	Summary:  "Something settles which of two stitches a name such as dc or tr means.",
	Why: "The names of the two dialects are shifted by one stitch. Read in the wrong one, every row comes out too low or too " +
		"high, and the yarn runs out or is left.",
	Bad: `Pattern: Haw
Piece: Haw
Rnd 1: 12 dc in magic ring; sl st in first dc to join. (12 dc)
Fasten off.
`,
	Good: `Pattern: Haw
Terms: UK
Piece: Haw
Rnd 1: 12 dc in magic ring; sl st in first dc to join. (12 dc)
Fasten off.
`,
	Sources: []string{
		"each US name is the UK name of the stitch one lower: the conversion tables that `lang/stitch/data/sources.tsv` names (read)",
		"1 chain for US sc, 2 for hdc, 3 for dc, 4 for tr and one more for each taller stitch: dummies.com (read)",
	},
	Check: checkTermAmbiguous,
}

func checkTermAmbiguous(p *Pass) {
	t := p.Fabric.Terms
	if t.Dialect != stitch.Unsettled || len(t.Strangers()) > 0 {
		return
	}
	likelier := stitch.US
	us, uk := t.Of(stitch.US, terms.Height, terms.Word, terms.Spelling), t.Of(stitch.UK, terms.Height, terms.Word, terms.Spelling)
	if len(uk) > len(us) {
		likelier = stitch.UK
	}
	related := append(shows(us[:min(len(us), 1)]), shows(uk[:min(len(uk), 1)])...)
	for _, name := range p.doubtfulNames() {
		us, uk := name.us.Plain(), name.uk.Plain()
		p.Report(Finding{
			Span: name.span,
			Message: fmt.Sprintf("%s is %d ch high in US terms (a UK %s) and %d ch high in UK terms (a US %s), and nothing in the pattern shows which is meant",
				quoted(name.written), us.Turning, name.us.UK.Abbr, uk.Turning, name.uk.US.Abbr),
			Related:      related,
			Fix:          declaring(p.File, likelier),
			Alternatives: []Fix{*declaring(p.File, likelier.Other())},
		})
	}
}
