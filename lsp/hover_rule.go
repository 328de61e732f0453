package lsp

import (
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lint"
)

// ruleName is what may be the name of a rule in a comment to the checker.
var ruleName = phrase.MustCompile(`[a-z]+(?:-[a-z]+)*`)

// hoverRule is the card of a rule that a comment to the checker names.
func (v *view) hoverRule(at int) (*card, source.Span) {
	for _, c := range v.File.Comments {
		if !c.Span.Contains(at) {
			continue
		}
		for _, m := range ruleName.FindAllStringIndex(v.Text.Slice(c.Span), -1) {
			span := source.Span{Start: m[0], End: m[1]}.Shift(c.Span.Start)
			if rule, ok := lint.Find(v.Text.Slice(span)); ok && span.Contains(at) {
				return &card{title: rule.Name, facts: []fact{{"", rule.Summary}, {"", rule.Why}}}, span
			}
		}
	}
	return nil, source.Span{}
}
