package syntax

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stitchproof/lang/source"
	"stitchproof/lang/source/sourcetest"
)

// Reading after any edits gives what reading the text afresh gives.
func TestReadAfter(t *testing.T) {
	texts := sourcetest.Manuscripts(t, "../..")
	rapid.Check(t, func(t *rapid.T) {
		text := source.New(rapid.SampledFrom(texts).Draw(t, "text"))
		file := Read(text)
		for range rapid.IntRange(1, 6).Draw(t, "edits") {
			text = sourcetest.Edit(t, text, texts)
			file = ReadAfter(file, text)
			require.Equal(t, unbound(Read(text)), unbound(file), text.String())
		}
	})
}

// unbound is a file without what is not said of its text.
func unbound(f *File) File {
	g := *f
	lines := *f.lines
	lines.blocks = nil
	for _, b := range f.lines.blocks {
		b.digest = &digest{made: b.digest.made, words: b.digest.words, lists: b.digest.lists, parts: b.digest.parts}
		lines.blocks = append(lines.blocks, b)
	}
	g.Vocab, g.lines = &Vocabulary{Sizes: f.Vocab.Sizes}, &lines
	return g
}
