package lint

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stitchproof/lang/source"
	"stitchproof/lang/source/sourcetest"
)

// Analyzing after any edits finds what analyzing the text afresh finds.
func TestAnalyzeAfter(t *testing.T) {
	texts := sourcetest.Manuscripts(t, "..")
	rapid.Check(t, func(t *rapid.T) {
		text := source.New(rapid.SampledFrom(texts).Draw(t, "text"))
		a := Analyze(text)
		for range rapid.IntRange(1, 6).Draw(t, "edits") {
			text = sourcetest.Edit(t, text, texts)
			a = Settings{}.AnalyzeAfter(a, text)
			require.Equal(t, Analyze(text).Findings, a.Findings, text.String())
		}
	})
}
