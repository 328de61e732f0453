package lint_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lint"
)

// TestManuscripts reads texts as they come, pasted from pages, printed sheets and
// mail, or written in Markdown: which of their lines are pieces and rows, how
// many stitches each row makes, and where in the text a fault is shown. What stands
// beside each text was worked out by hand.
func TestManuscripts(t *testing.T) {
	texts, err := filepath.Glob("../testdata/manuscripts/*.[tm][xd]*")
	require.NoError(t, err)
	require.NotEmpty(t, texts)
	for _, path := range texts {
		t.Run(filepath.Base(path), func(t *testing.T) {
			text, err := os.ReadFile(path)
			require.NoError(t, err)
			want, err := os.ReadFile(strings.TrimSuffix(path, filepath.Ext(path)) + ".want")
			require.NoError(t, err)
			for _, lineEnd := range []string{"\n", "\r\n"} {
				a := lint.Analyze(source.New(strings.ReplaceAll(string(text), "\n", lineEnd)))
				assert.Equal(t, string(want), manuscript(a))
				assert.Equal(t, a.Text.String(), a.File.Print(), "every byte belongs to some part")
			}
		})
	}
}

// manuscript writes what a text was read as: `piece NAME make N`, for each row
// its line, label and stitches (`-` for no label, `?` where they are not known),
// and with `!` the line and column of each error.
func manuscript(a *lint.Analysis) string {
	var b strings.Builder
	for i, p := range a.File.Pieces {
		if name := strings.TrimSpace("piece " + p.Name); p.Make.Written() {
			fmt.Fprintf(&b, "%s make %d\n", name, p.Make.At(0))
		} else {
			fmt.Fprintln(&b, name)
		}
		for _, row := range a.Fabric.Pieces[i].Rows {
			line, _ := a.Text.LineColumn(row.Tree.Abs(source.Span{}).Start)
			fmt.Fprintf(&b, "%d %s%s\n", line, labelOf(row), stitchesOf(row))
		}
	}
	for _, f := range a.Findings {
		if f.Severity == lint.Error {
			line, column := a.Text.LineColumn(f.Span.Start)
			fmt.Fprintf(&b, "! %d:%d %s\n", line, column, f.Rule)
		}
	}
	return b.String()
}

func labelOf(row *fabric.Row) string {
	if row.Tree.Label.Kind == syntax.Unlabelled {
		return "-"
	}
	return strings.Join(strings.Fields(row.Tree.Label.Text), " ")
}

func stitchesOf(row *fabric.Row) string {
	if !row.Works() {
		return ""
	}
	made := make([]string, len(row.Tallies))
	for size := range row.Tallies {
		made[size] = "?"
		if tally := &row.Tallies[size]; tally.Known {
			made[size] = fmt.Sprint(tally.Made)
		}
	}
	return " = " + strings.Join(made, " ")
}
