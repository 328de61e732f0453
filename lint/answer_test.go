package lint_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lint"
)

// Every finding in patterns that have some can be answered: nothing is found then,
// and the pattern is worked as it was.
func TestAnswers(t *testing.T) {
	var paths []string
	for _, folder := range []string{"broken", "edits", "manuscripts"} {
		found, err := filepath.Glob("../testdata/" + folder + "/*[ctd]") // .crochet, .txt, .md
		require.NoError(t, err)
		paths = append(paths, found...)
	}
	answered := 0
	for _, path := range paths {
		if filepath.Base(path) == "README.md" {
			continue
		}
		content, err := os.ReadFile(path)
		require.NoError(t, err)
		before := lint.Analyze(source.New(string(content)))
		edits := lint.Answer(before.Text, before.Findings, "as the old leaflet has it")
		answered += len(edits)
		text, err := before.Text.Apply(edits)
		require.NoError(t, err, path)
		after := lint.Analyze(text)
		assert.Empty(t, listed(after.Findings), path)
		assert.True(t, fabric.Same(before.Fabric, after.Fabric), "%s is worked otherwise", path)
	}
	assert.Greater(t, answered, 100)
}

// A line that has a comment is answered above, with the same line end and the same
// indent; what several rules find in a line is answered at once.
func TestAnswersBesideComments(t *testing.T) {
	pattern := "Pattern: Haw\nTerms: US\n\nPiece: Haw\n  Rnd 1: 6 sc in magic ring. (7 sc) // mind the ring\n"
	for _, end := range []string{"\n", "\r\n"} {
		a := lint.Analyze(source.New(strings.ReplaceAll(pattern, "\n", end)))
		text, err := a.Text.Apply(lint.Answer(a.Text, a.Findings, "so it is"))
		require.NoError(t, err)
		want := strings.Replace(pattern, "  Rnd 1", "  // allow ending-missing, count-mismatch: so it is\n  Rnd 1", 1)
		assert.Equal(t, strings.ReplaceAll(want, "\n", end), text.String())
		assert.Empty(t, listed(lint.Analyze(text).Findings))
	}
	unread := lint.Unread(source.New(""), lint.FileUnreadable, "no text")
	assert.Empty(t, lint.Answer(unread.Text, unread.Findings, "so it is"))
}
