package lsp

import (
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/suggest"
	"stitchproof/lint"
)

// allowing is a comment to the checker up to where the name of a rule is written.
var allowing = phrase.MustCompile(`//\s*allow(?:-begin|-end|-file)?\s+(?:[a-z-]+,\s*)*([a-z-]*)$`)

// ruleNames suggests the names of rules in a comment to the checker: those that
// find something first.
func (v *view) ruleNames(at int) []suggest.Item {
	line := v.text.Line(v.text.LineOf(at))
	m := allowing.FindStringSubmatch(v.text.Slice(source.Span{Start: line.Start, End: at}))
	if m == nil {
		return nil
	}
	var found, others []suggest.Item
	for _, rule := range lint.Rules() {
		if !strings.HasPrefix(rule.Name, m[1]) {
			continue
		}
		item := suggest.Item{Kind: suggest.Value, Text: rule.Name, Detail: rule.Summary, Replace: source.Span{Start: at - len(m[1]), End: at}}
		if v.finds(rule.Name, m[0]) {
			found = append(found, item)
		} else {
			others = append(others, item)
		}
	}
	return append(found, others...)
}

// finds tells whether a rule finds something in the document, other than in the
// comment that is being written.
func (v *view) finds(rule, comment string) bool {
	for i := range v.Findings {
		if f := &v.Findings[i]; f.Rule == rule && !strings.Contains(comment, v.Text.Slice(f.Span)) {
			return true
		}
	}
	return false
}
