package lint

import (
	"fmt"

	"stitchproof/lang/terms"
)

var termsMixed = &Rule{
	Name:     "terms-mixed",
	Family:   "terms",
	Severity: Error,
	Summary:  "A pattern does not mix stitch names that only US and that only UK patterns have.",
	Why: "Where sc and htr stand together, nobody can tell which stitch the dc between them is. Most often a part was copied from another " +
		"pattern.",
	Bad: `Pattern: Oak leaf
Terms: US

Piece: Leaf
With A, ch 7.
Row 1: Sc in 2nd ch from hook, sc in next ch, htr in next ch, dc in next ch, sc in next 2 ch. (6 sts)
Fasten off.
`,
	Good: `Pattern: Oak leaf
Terms: US

Piece: Leaf
With A, ch 7.
Row 1: Sc in 2nd ch from hook, sc in next ch, hdc in next ch, dc in next ch, sc in next 2 ch. (6 sts)
Fasten off.
`,
	Sources: []string{"US and UK names: the conversion tables that `lang/stitch/data/sources.tsv` names (read)"},
	Check:   checkTermsMixed,
}

func checkTermsMixed(p *Pass) {
	t := p.Fabric.Terms
	for _, odd := range t.Strangers() {
		home := t.Of(odd.Dialect.Other(), terms.Statement, terms.Stitch)[0]
		f := Finding{
			Span:    odd.Span,
			Message: fmt.Sprintf("%s is a name of %v terms only, and %s one of %v terms", quoted(odd.Text), odd.Dialect, quoted(home.Text), home.Dialect),
			Related: shows([]terms.Evidence{home}),
		}
		if home.Kind == terms.Statement {
			f.Message = fmt.Sprintf("%s is a name of %v terms only, and the pattern says that its terms are %v", quoted(odd.Text), odd.Dialect, home.Dialect)
		}
		if edits := terms.Reword(p.File, odd); len(edits) > 0 {
			f.Fix = &Fix{Title: fmt.Sprintf("write %s, the same stitch in %v terms", edits[0].New, home.Dialect), Edits: edits}
		}
		p.Report(f)
	}
}
