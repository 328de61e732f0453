package report

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"stitchproof/lint"
)

type jsonRules struct {
	Rules []jsonRule `json:"rules"`
}

type jsonRule struct {
	Name     string        `json:"name"`
	Family   string        `json:"family"`
	Severity lint.Severity `json:"severity"`
	Asked    bool          `json:"asked"` // it runs only where settings name it
	Fix      string        `json:"fix"`   // safe, risky, or none
	Summary  string        `json:"summary"`
	Why      string        `json:"why"`
	Bad      string        `json:"bad"`
	Good     string        `json:"good"`
	Sources  []string      `json:"sources"`
}

// RulesJSON lists all rules for programs. It fails only where w does.
func RulesJSON(w io.Writer) error {
	var out jsonRules
	for _, r := range lint.Rules() {
		out.Rules = append(out.Rules, jsonRule{
			r.Name, r.Family, r.Severity, r.Asked, fixKind(r), r.Summary, r.Why, strings.ToValidUTF8(r.Bad, "\uFFFD"), r.Good,
			append([]string{}, r.Sources...),
		})
	}
	return writeJSON(w, out)
}

// Rules lists all rules for people. It fails only where w does.
func Rules(w io.Writer) error {
	b := bufio.NewWriter(w)
	t := table{columns: []column{{name: "rule"}, {name: "family"}, {name: "severity"}, {name: "fix"}, {name: "promise"}}}
	for _, r := range lint.Rules() {
		t.add(r.Name, r.Family, severityOf(r), strings.TrimPrefix(fixKind(r), "none"), r.Summary)
	}
	t.write(b)
	fmt.Fprintln(b, "\n`stitchproof explain RULE` tells more of one.")
	return b.Flush()
}

// severityOf is a rule's severity, and that it must be asked for.
func severityOf(r *lint.Rule) string {
	if r.Asked {
		return r.Severity.String() + ", if asked for"
	}
	return r.Severity.String()
}

// fixKind is what kind of change a rule offers.
func fixKind(r *lint.Rule) string {
	switch fix := r.Offers(); {
	case fix == nil:
		return "none"
	case fix.Safe:
		return "safe"
	}
	return "risky"
}
