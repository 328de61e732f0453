package lint

import (
	"fmt"

	"stitchproof/lang/terms"
)

var termsUndeclared = &Rule{
	Name:     "terms-undeclared",
	Family:   "terms",
	Severity: Warning,
	Summary:  "A pattern with a stitch whose name means another one in the other dialect says whether its terms are US or UK.",
	Why: "Everyone who works from a pattern reads dc in the terms she grew up with, and half of them make another stitch. A line at " +
		"its head spares them looking for signs.",
	Bad: `Pattern: Dog rose
Piece: Rose
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: (Sc, dc, sc) in each st around; sl st in first sc to join. (18 sts)
Fasten off.
`,
	Good: `Pattern: Dog rose
Terms: US
Piece: Rose
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: (Sc, dc, sc) in each st around; sl st in first sc to join. (18 sts)
Fasten off.
`,
	Sources: []string{
		"a publication's country and date do not settle its terms: a US handbook of 1918 uses UK names, a London one of c. 1850 US names (read)",
		"what shows the terms, the strongest first: beautybady.com, foxcreations.com.au, woolandcrafts.co.uk (read)",
	},
	Check: checkTermsUndeclared,
}

func checkTermsUndeclared(p *Pass) {
	t := p.Fabric.Terms
	if t.Stated() || len(strongest(t)) == 0 || len(t.Strangers()) > 0 {
		return
	}
	doubtful := p.doubtfulNames()
	if len(doubtful) == 0 {
		return
	}
	first, shown := doubtful[0], strongest(t)
	f := Finding{
		Span: first.span,
		Message: fmt.Sprintf("the pattern does not say that its terms are %v, as %s; in %v terms %s is another stitch",
			t.Dialect, showing(shown), t.Dialect.Other(), quoted(first.written)),
		Related: shows(shown),
		Fix:     declaring(p.File, t.Dialect),
	}
	f.Fix.Safe = shown[0].Kind == terms.Stitch
	p.Report(f)
}

// strongest is the evidence of the strongest kind that a pattern has for its
// dialect.
func strongest(t terms.Terms) []terms.Evidence {
	for _, kind := range [...]terms.Kind{terms.Stitch, terms.Mention, terms.Height, terms.Word} {
		if found := t.Of(t.Dialect, kind); len(found) > 0 {
			return found
		}
	}
	return nil
}

// showing words evidence of one dialect: "`sc` and `hdc` show".
func showing(evidence []terms.Evidence) string {
	var words []string
	for _, e := range evidence[:min(len(evidence), fewShown)] {
		words = append(words, quoted(e.Text))
	}
	if len(words) == 1 {
		return words[0] + " shows"
	}
	return both(words) + " show"
}

// fewShown is how many pieces of evidence a message names.
const fewShown = 3

// shows attaches evidence to a finding.
func shows(evidence []terms.Evidence) []Related {
	var out []Related
	for _, e := range evidence[:min(len(evidence), fewShown)] {
		out = append(out, Related{Span: e.Span, Message: evidenceSaid(e)})
	}
	return out
}

// evidenceSaid says what a piece of evidence shows.
func evidenceSaid(e terms.Evidence) string {
	switch e.Kind {
	case terms.Statement:
		return fmt.Sprintf("says that the terms are %v", e.Dialect)
	case terms.Height:
		return fmt.Sprintf("the chain before the stitch is as high as it is in %v terms", e.Dialect)
	case terms.Word, terms.Spelling:
		return fmt.Sprintf("%s is more usual in %v patterns", quoted(e.Text), e.Dialect)
	}
	return fmt.Sprintf("%s is a name of %v terms only", quoted(e.Text), e.Dialect)
}
