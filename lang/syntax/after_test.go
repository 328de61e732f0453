package syntax

import (
	"strings"
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

// Whether a branch begins a part of its own is told by a chain that may be laid far above it.
func TestReadAfterStemIsLaid(t *testing.T) {
	laid := "Terms: US\n\nTWIG\n\nStep 1: Ch 18.\n" + strings.Repeat("Step 2: Sc in next 2 ch.\n", 8) +
		"Branch A: ch 6, sl st in 2nd ch from hook and in next 4 ch.\nStep 3: Sc in next 2 ch.\n"
	worked := strings.Replace(laid, "Ch 18", "Sc 18", 1)
	ended := strings.Replace(laid, "Sc in", "Fasten off. Sc in", 1)
	for _, text := range []string{worked, ended} {
		a, b := source.New(laid), source.New(text)
		require.Len(t, Read(a).Pieces, 1)
		require.Len(t, Read(b).Pieces, 2)
		require.Equal(t, unbound(Read(b)), unbound(ReadAfter(Read(a), b)))
		require.Equal(t, unbound(Read(a)), unbound(ReadAfter(Read(b), a)))
	}
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
