package lint_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

var update = flag.Bool("update", false, "write the generated and golden files anew")

func TestEveryRuleFileIsRegistered(t *testing.T) {
	files, err := filepath.Glob("rule_*.go")
	require.NoError(t, err)
	var named []string
	for _, file := range files {
		name := strings.TrimSuffix(strings.TrimPrefix(file, "rule_"), ".go")
		named = append(named, strings.ReplaceAll(name, "_", "-"))
	}
	var registered []string
	for _, r := range lint.Rules() {
		registered = append(registered, r.Name)
	}
	assert.Equal(t, named, registered, "the list of rules and the files differ, or are not sorted by name")
}

func TestEveryRuleIsDocumented(t *testing.T) {
	for _, r := range lint.Rules() {
		t.Run(r.Name, func(t *testing.T) {
			assert.Contains(t, []string{"allowances", "counts", "branches", "terms", "order", "materials", "shape", "style", "caution"}, r.Family)
			assert.True(t, strings.HasSuffix(r.Summary, "."), "the summary is a sentence")
			assert.NotContains(t, strings.TrimSuffix(r.Summary, "."), ". ", "the summary is one sentence")
			assert.True(t, strings.HasSuffix(r.Why, "."), "the reason is given in sentences")
			for _, pattern := range []string{r.Bad, r.Good} {
				assert.True(t, strings.HasPrefix(pattern, "Pattern: "), "an example is a whole pattern")
			}
		})
	}
}

func TestExamples(t *testing.T) {
	for _, r := range lint.Rules() {
		t.Run(r.Name, func(t *testing.T) {
			bad := r.Try(r.Bad).Findings
			assert.True(t, slices.ContainsFunc(bad, func(f lint.Finding) bool { return f.Rule == r.Name && f.Severity == r.Severity }),
				"the bad example gives no finding of its rule: %s", listed(bad))
			for _, f := range bad {
				assert.Equal(t, r.Name, f.Rule, "the bad example gives another rule's finding: %s", f.Message)
			}
			good := r.Try(r.Good).Findings
			if r.Asked {
				assert.Empty(t, listed(lint.Analyze(source.New(r.Bad)).Findings), "runs without being asked for")
			}
			assert.Empty(t, listed(good), "the good example gives findings")
		})
	}
}

// Where a bad example's finding has a fix, the fix settles it and brings no
// finding of another kind.
func TestExamplesFixed(t *testing.T) {
	fixes := 0
	for _, r := range lint.Rules() {
		text := source.New(r.Bad)
		for _, f := range r.Try(r.Bad).Findings {
			if f.Fix == nil {
				continue
			}
			fixes++
			t.Run(r.Name, func(t *testing.T) {
				fixed, err := text.Apply(f.Fix.Edits)
				require.NoError(t, err)
				assert.NotEqual(t, text.String(), fixed.String())
				assert.Empty(t, listed(r.Try(fixed.String()).Findings), "after the fix:\n%s", fixed)
			})
		}
	}
	assert.NotZero(t, fixes)
}

func listed(findings []lint.Finding) string {
	var b strings.Builder
	for _, f := range findings {
		fmt.Fprintf(&b, "%s %s at %d: %s\n", f.Severity, f.Rule, f.Span.Start, f.Message)
	}
	return b.String()
}

func TestRulesPageIsCurrent(t *testing.T) {
	page := rulesPage(lint.Rules())
	if *update {
		require.NoError(t, os.WriteFile("RULES.md", []byte(page), 0o644))
	}
	written, err := os.ReadFile("RULES.md")
	require.NoError(t, err)
	assert.Equal(t, page, string(written), "RULES.md is stale: run `go test ./lint -update`")
}

// rulesPage is the manual of rules, made of what stands in the rules' own files.
func rulesPage(rules []*lint.Rule) string {
	var b strings.Builder
	b.WriteString("# What is checked\n\n")
	b.WriteString("Written from the rules' own files by `go test ./lint -update`: change those, not this page.\n\n")
	b.WriteString("A safe fix alters nothing that a maker makes: `check --fix` makes it, and an editor may on saving. A risky one may alter it: a person\n" +
		"picks it in the editor, or asks for it with `check --fix-risky`.\n\n")
	b.WriteString("| rule | family | severity | fix | promise |\n|---|---|---|---|---|\n")
	for _, r := range rules {
		fmt.Fprintf(&b, "| [%s](#%s) | %s | %s | %s | %s |\n", r.Name, r.Name, r.Family, severityOf(r), fixOf(r), r.Summary)
	}
	for _, r := range rules {
		fmt.Fprintf(&b, "\n## %s\n\n%s\n\n%s\n", r.Name, r.Summary, r.Why)
		if r.Cautions() {
			fmt.Fprintf(&b, "\n%s\n", lint.OfCautions)
		}
		fmt.Fprintf(&b, "\nFound in:\n\n```\n%s```\n", strings.ToValidUTF8(r.Bad, "\uFFFD"))
		for _, f := range r.Try(r.Bad).Findings {
			fmt.Fprintf(&b, "\n> %s: %s\n", f.Severity, f.Message)
		}
		fmt.Fprintf(&b, "\nNot in:\n\n```\n%s```\n", r.Good)
		if len(r.Sources) > 0 {
			b.WriteString("\nWhere the numbers come from:\n\n")
			for _, s := range r.Sources {
				fmt.Fprintf(&b, "- %s\n", s)
			}
		}
	}
	return b.String()
}

// severityOf is a rule's severity, and that it must be asked for.
func severityOf(r *lint.Rule) string {
	if r.Asked {
		return r.Severity.String() + ", if asked for"
	}
	return r.Severity.String()
}

// fixOf tells what kind of fix the finding in a rule's bad example has.
func fixOf(r *lint.Rule) string {
	switch fix := r.Offers(); {
	case fix == nil:
		return ""
	case fix.Safe:
		return "safe"
	}
	return "risky"
}
