package lint_test

import (
	"bytes"
	"encoding/csv"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lint"
	"stitchproof/lint/report"
)

func analyzeFile(t *testing.T, path string) *lint.Analysis {
	t.Helper()
	content, err := os.ReadFile(path)
	require.NoError(t, err)
	return lint.Analyze(source.New(string(content)))
}

func textReport(t *testing.T, path string, a *lint.Analysis) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, report.Text(&b, []report.Checked{report.CheckedOf(filepath.Base(path), a)}, report.Options{}))
	return b.String()
}

// A sound pattern gives nothing that would make a maker doubt it.
func TestSoundPatterns(t *testing.T) {
	paths, err := filepath.Glob("../testdata/patterns/*.crochet")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, path := range paths {
		t.Run(filepath.Base(path), func(t *testing.T) {
			a := analyzeFile(t, path)
			for _, f := range a.Findings {
				if f.Severity >= lint.Warning {
					t.Errorf("%s %s: %s\n%s", f.Severity, f.Rule, f.Message, textReport(t, path, a))
					return
				}
			}
		})
	}
}

// planted is a fault that was put into a sound pattern.
type planted struct {
	file, rule string
	line       int // the first line of the instruction it stands in
}

func plantedFaults(t *testing.T) []planted {
	t.Helper()
	f, err := os.Open("../testdata/broken/expected.tsv")
	require.NoError(t, err)
	defer f.Close()
	table := csv.NewReader(f)
	table.Comma, table.LazyQuotes, table.FieldsPerRecord, table.Comment = '\t', true, -1, '#'
	records, err := table.ReadAll()
	require.NoError(t, err)
	var out []planted
	for _, r := range records {
		line, err := strconv.Atoi(r[1])
		require.NoError(t, err)
		out = append(out, planted{file: r[0], rule: r[2], line: line})
	}
	require.NotEmpty(t, out)
	return out
}

func TestPlantedFaultsAreFound(t *testing.T) {
	for _, p := range plantedFaults(t) {
		t.Run(strings.TrimSuffix(p.file, ".crochet"), func(t *testing.T) {
			path := filepath.Join("../testdata/broken", p.file)
			a := analyzeFile(t, path)
			found := false
			for _, f := range a.Findings {
				found = found || f.Rule == p.rule && instructionLine(a, f.Span) == p.line
			}
			assert.True(t, found, "no %s in the instruction on line %d:\n%s", p.rule, p.line, textReport(t, path, a))
		})
	}
}

// instructionLine is the first line of the instruction that a place lies in,
// or the place's own line.
func instructionLine(a *lint.Analysis, s source.Span) int {
	at := s.Start
	for _, piece := range a.File.Pieces {
		for _, row := range piece.Rows {
			if row.Span().Covers(source.At(s.Start)) {
				at = row.At
			}
		}
	}
	line, _ := a.Text.LineColumn(at)
	return line
}

func TestBrokenReports(t *testing.T) {
	paths, err := filepath.Glob("../testdata/broken/*.crochet")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, path := range paths {
		t.Run(filepath.Base(path), func(t *testing.T) {
			golden := strings.TrimSuffix(path, ".crochet") + ".golden"
			text := textReport(t, path, analyzeFile(t, path))
			if *update {
				require.NoError(t, os.WriteFile(golden, []byte(text), 0o644))
			}
			want, err := os.ReadFile(golden)
			require.NoError(t, err)
			assert.Equal(t, string(want), text)
		})
	}
}
