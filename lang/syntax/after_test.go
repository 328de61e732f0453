package syntax

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stitchproof/lang/source"
)

// Reading after any edits gives what reading the text afresh gives.
func TestReadAfter(t *testing.T) {
	texts := manuscripts(t)
	rapid.Check(t, func(t *rapid.T) {
		text := source.New(rapid.SampledFrom(texts).Draw(t, "text"))
		file := Read(text)
		for range rapid.IntRange(1, 6).Draw(t, "edits") {
			text = edited(t, text, texts)
			file = ReadAfter(file, text)
			require.Equal(t, unbound(Read(text)), unbound(file), text.String())
		}
	})
}

// edited makes one edit as a writer does: typing, deleting, pasting lines, another
// pattern's too.
func edited(t *rapid.T, text *source.Text, texts []string) *source.Text {
	line := func(name string, of *source.Text) int { return rapid.IntRange(0, of.Lines()-1).Draw(t, name) }
	at := text.LineWithEnd(line("line", text))
	edit := source.Edit{Span: at}
	switch rapid.IntRange(0, 5).Draw(t, "kind") {
	case 0: // a line goes
	case 1: // several lines go
		edit.Span.End = text.LineWithEnd(min(text.Lines()-1, text.LineOf(at.Start)+rapid.IntRange(1, 8).Draw(t, "lines"))).End
	case 2: // lines come in
		other := source.New(rapid.SampledFrom(texts).Draw(t, "other"))
		from := line("from", other)
		to := min(other.Lines()-1, from+rapid.IntRange(0, 5).Draw(t, "more"))
		edit = source.Edit{Span: source.At(at.Start), New: other.Slice(other.LineWithEnd(from).Union(other.LineWithEnd(to)))}
	case 3: // something is typed
		offset := rapid.IntRange(at.Start, at.End).Draw(t, "at")
		typed := rapid.SampledFrom([]string{"x", " ", "\n", "\n\n", ":", ", ", "Row 1: ", "## Leaf\n", "  ", "// allow count-missing: so it is", "sizes S (M, L)", " = ", "dc"}).Draw(t, "typed")
		edit = source.Edit{Span: source.At(offset), New: typed}
	case 4: // something is rubbed out
		start := rapid.IntRange(at.Start, at.End).Draw(t, "start")
		edit.Span = source.Span{Start: start, End: rapid.IntRange(start, at.End).Draw(t, "end")}
	case 5: // a line is doubled
		edit = source.Edit{Span: source.At(at.Start), New: text.Slice(at)}
	}
	after, err := text.Apply([]source.Edit{edit})
	require.NoError(t, err)
	return after
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

func manuscripts(t *testing.T) []string {
	var out []string
	for _, pattern := range []string{"../../testdata/patterns/*", "../../testdata/manuscripts/*"} {
		files, err := filepath.Glob(pattern)
		require.NoError(t, err)
		for _, file := range files {
			if info, err := os.Stat(file); err != nil || info.IsDir() {
				continue
			}
			data, err := os.ReadFile(file)
			require.NoError(t, err)
			out = append(out, string(data))
		}
	}
	require.Greater(t, len(out), 30)
	return out
}
