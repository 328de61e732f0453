package lint_test

import (
	"cmp"
	"encoding/csv"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lint"
)

// told is a finding as a table names it: its line and its rule.
type told struct {
	line int
	rule string
}

// edit is a fault in a pattern that has many. silent says why nothing tells of
// it while the others are there, "" where it is told.
type edit struct {
	told
	silent string
}

func editsOf(t *testing.T, path string) []edit {
	t.Helper()
	f, err := os.Open(path)
	require.NoError(t, err)
	defer f.Close()
	table := csv.NewReader(f)
	table.Comma, table.LazyQuotes, table.FieldsPerRecord = '\t', true, 4
	records, err := table.ReadAll()
	require.NoError(t, err)
	var out []edit
	for _, r := range records {
		line, err := strconv.Atoi(r[0])
		require.NoError(t, err)
		out = append(out, edit{told{line, r[1]}, r[3]})
	}
	require.GreaterOrEqual(t, len(out), 20)
	return out
}

// A manuscript with a score of faults at once: each is told where it stands, and
// nothing else is, above information. What the others hide is named with the reason.
func TestManyFaultsAtOnce(t *testing.T) {
	paths, err := filepath.Glob("../testdata/edits/*.crochet")
	require.NoError(t, err)
	require.Len(t, paths, 3)
	for _, path := range paths {
		t.Run(filepath.Base(path), func(t *testing.T) {
			a := analyzeFile(t, path)
			var all, grave []told
			for _, f := range a.Findings {
				line, _ := a.Text.LineColumn(f.Span.Start)
				said := told{line, f.Rule}
				all = append(all, said)
				if f.Severity > lint.Info {
					grave = append(grave, said)
				}
			}
			var wanted []told
			for _, e := range editsOf(t, strings.TrimSuffix(path, ".crochet")+".tsv") {
				if e.silent != "" {
					assert.NotContains(t, all, e.told, "is told now: the table need not say why not")
					continue
				}
				if assert.Contains(t, all, e.told) && slices.Contains(grave, e.told) {
					wanted = append(wanted, e.told)
				}
			}
			order := func(a, b told) int { return cmp.Or(a.line-b.line, strings.Compare(a.rule, b.rule)) }
			slices.SortFunc(wanted, order)
			slices.SortFunc(grave, order)
			assert.Equal(t, wanted, grave)
		})
	}
}
