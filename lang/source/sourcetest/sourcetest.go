// Package sourcetest makes texts and edits of them for tests: as a writer makes them
// in an editor, who types, rubs out, doubles lines and pastes from another pattern.
package sourcetest

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stitchproof/lang/source"
)

// Manuscripts are the texts of the project's example patterns and manuscripts, which
// lie in testdata below root.
func Manuscripts(t testing.TB, root string) []string {
	t.Helper()
	var out []string
	for _, folder := range []string{"patterns", "manuscripts"} {
		files, err := filepath.Glob(filepath.Join(root, "testdata", folder, "*.*"))
		require.NoError(t, err)
		for _, file := range files {
			data, err := os.ReadFile(file)
			require.NoError(t, err)
			out = append(out, string(data))
		}
	}
	require.NotEmpty(t, out)
	return out
}

// typed is what is typed at once, in the middle of anything.
var typed = []string{
	"x", "6", " ", "\n", "\r\n", "\n\n", ":", ", ", "(", "*", "Row 1: ", "## Leaf\n", "  ", " = ", "dc", "sk next st, ", "work Rows 2-3 of Back",
	"// allow count-missing: so it is", "sizes S (M, L)", "Terms: UK\n", "Gauge: 18 dc and 9 rows = 10 cm\n", "é", "🧶",
}

// Edit makes one edit of a text; lines that are pasted come from some of texts.
func Edit(t *rapid.T, text *source.Text, texts []string) *source.Text {
	line := func(name string, of *source.Text) int { return rapid.IntRange(0, of.Lines()-1).Draw(t, name) }
	at := text.LineWithEnd(line("line", text))
	edit := source.Edit{Span: at}
	switch rapid.SampledFrom([]string{"rub out a line", "rub out lines", "paste", "type", "rub out", "double"}).Draw(t, "edit") {
	case "rub out lines":
		last := min(text.Lines()-1, text.LineOf(at.Start)+rapid.IntRange(1, 8).Draw(t, "lines"))
		edit.Span.End = text.LineWithEnd(last).End
	case "paste":
		other := source.New(rapid.SampledFrom(texts).Draw(t, "other"))
		from := line("from", other)
		to := min(other.Lines()-1, from+rapid.IntRange(0, 5).Draw(t, "more"))
		edit = source.Edit{Span: source.At(at.Start), New: other.Slice(other.LineWithEnd(from).Union(other.LineWithEnd(to)))}
	case "type":
		edit = source.Edit{Span: source.At(within(t, at)), New: rapid.SampledFrom(typed).Draw(t, "typed")}
	case "rub out":
		start := within(t, at)
		edit.Span = source.Span{Start: start, End: within(t, source.Span{Start: start, End: at.End})}
	case "double":
		edit = source.Edit{Span: source.At(at.Start), New: text.Slice(at)}
	}
	after, err := text.Apply([]source.Edit{edit})
	require.NoError(t, err)
	return after
}

func within(t *rapid.T, s source.Span) int { return rapid.IntRange(s.Start, s.End).Draw(t, "at") }
