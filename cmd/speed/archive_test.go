package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// What is measured are patterns that a writer would have: their counts are right, and
// all is understood.
func TestArchive(t *testing.T) {
	a := newArchive(7)
	seen := map[string]bool{}
	for n := range 60 {
		text := a.pattern(n, 3)
		seen[text] = true
		rows := 0
		analysis := lint.Analyze(source.New(text))
		for row := range analysis.Fabric.Rows() {
			rows++
			assert.Empty(t, row.Tree.Unread(), row.Tree.Text)
		}
		assert.Greater(t, rows, 15)
		for _, f := range analysis.Findings {
			assert.NotEqual(t, lint.Error, f.Severity, "%s: %s\n%s", f.Rule, f.Message, text)
		}
	}
	assert.Len(t, seen, 60)
}

func TestManuscript(t *testing.T) {
	for _, n := range []int{100, 1_000} {
		text := manuscript(n)
		assert.Equal(t, n, strings.Count(text, "\n"))
		line, from, to := counted(text)
		assert.Regexp(t, `^\d+$`, strings.Split(text, "\n")[line][from:to])
	}
}
