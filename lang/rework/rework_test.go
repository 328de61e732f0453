package rework_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/names"
	"stitchproof/lang/rework"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

func patternOf(text string) *rework.Pattern {
	t := source.New(text)
	file := syntax.Read(t)
	return &rework.Pattern{Text: t, File: file, Fabric: fabric.Work(file)}
}

// examples are our own patterns.
func examples(t *testing.T) map[string]*rework.Pattern {
	t.Helper()
	paths, err := filepath.Glob("../../testdata/patterns/*.crochet")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	out := map[string]*rework.Pattern{}
	for _, path := range paths {
		content, err := os.ReadFile(path)
		require.NoError(t, err)
		out[filepath.Base(path)] = patternOf(string(content))
	}
	return out
}

// checked is a pattern after edits, which must leave the work as it is.
func checked(t *testing.T, p *rework.Pattern, edits []source.Edit) *rework.Pattern {
	t.Helper()
	after, err := p.Text.Apply(edits)
	require.NoError(t, err)
	out := patternOf(after.String())
	assert.True(t, fabric.Same(p.Fabric, out.Fabric), "another work:\n%s", after)
	return out
}

// Whatever can be renamed in an example can be renamed and named back.
func TestRenameThereAndBack(t *testing.T) {
	renamed := 0
	for name, p := range examples(t) {
		index := names.Of(p.File)
		for i, n := range index.Names {
			m := n.Mentions[0]
			if rework.Renamable(n, m) != nil {
				continue
			}
			to := strings.Repeat("z", i+2) + "w"
			edits, err := p.Rename(n, m, to)
			require.NoError(t, err, "%s: %s", name, p.Text.Slice(m.Span))
			after := checked(t, p, edits)
			assert.NotContains(t, p.Text.String(), to)
			assert.Equal(t, len(edits), strings.Count(after.Text.String(), to))
			back, at := names.Of(after.File).At(m.Span.Start)
			edits, err = after.Rename(back, at, p.Text.Slice(m.Span))
			require.NoError(t, err)
			assert.True(t, strings.EqualFold(p.Text.String(), checked(t, after, edits).Text.String()))
			renamed++
		}
	}
	assert.Greater(t, renamed, 40)
}

func TestRenameIsRefused(t *testing.T) {
	p := patternOf("Pattern: Cup\nTerms: US\nYarn A: bark\nYarn B: haw\n\nPiece: Cup\nWith A, ch 5.\nRow 1: With B, sc in each ch.\n")
	index := names.Of(p.File)
	at := func(words string) (*names.Name, names.Mention) {
		return index.At(strings.Index(p.Text.String(), words))
	}
	for words, to := range map[string]string{"A: bark": "B", "A, ch": "sc", "B: haw": "\n", "Row 1": "2", "sc in": "dc"} {
		name, m := at(words)
		require.NotNil(t, name, words)
		_, err := p.Rename(name, m, to)
		assert.Error(t, err, "%s as %s", words, to)
	}
}
