package syntax

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
)

func TestNotesEndLines(t *testing.T) {
	const text = "Piece: Haw // allow tail-missing: worn loose\n" +
		"Rnd 1: 6 sc in magic ring, // allow row-over: as charted\n" +
		"  sl st in first sc to join. (6 sc) //allow row-short\n" +
		"// allow extra yarn\n" +
		"Rnd 2: 2 sc in each st. (12 sc) // mine to keep\n"
	f := Read(source.New(text))
	require.Len(t, f.Pieces, 1)
	assert.Equal(t, "Haw", f.Pieces[0].Name)
	require.Len(t, f.Pieces[0].Rows, 2)
	first := f.Pieces[0].Rows[0]
	assert.Empty(t, first.Unread(), "a note within a row is not read as one of its words")
	assert.Equal(t, 3, f.Text.LineOf(first.Span().End)+1, "the row goes on after a note")
	require.Len(t, f.Comments, 4)
	for i, want := range []Comment{
		{Text: "allow tail-missing: worn loose", Ends: true},
		{Text: "allow row-over: as charted", Ends: true, Within: true},
		{Text: "allow row-short", Ends: true},
		{Text: "allow extra yarn"},
	} {
		got := *f.Comments[i]
		got.Span = source.Span{}
		assert.Equal(t, want, got)
	}
	assert.Equal(t, text, f.Print())
	assert.Contains(t, f.Pieces[0].Rows[1].Text, "mine to keep", "other words are not taken off a line's end")
}

func TestNotes(t *testing.T) {
	for text, want := range map[string]bool{
		"// allow x": true, "//allow x": true, "//\tallow-file x": true,
		"// allowed": false, "// allow": false, "/ allow x": false, "// extra": false, "": false,
	} {
		assert.Equal(t, want, notes(text, 0), text)
	}
	assert.False(t, notes("http:// allow x", 5), "a mark that is part of a word begins no comment")
}

func TestWithoutNotesTheSameReading(t *testing.T) {
	const plain = "Row 1: Sc in 2nd ch from hook,\n  sc in each ch across; turn. (12 sc)\n"
	const noted = "Row 1: Sc in 2nd ch from hook, // allow row-over: so be it\n  sc in each ch across; turn. (12 sc)\n"
	a, b := Read(source.New(plain)).Pieces[0].Rows[0], Read(source.New(noted)).Pieces[0].Rows[0]
	require.Len(t, b.Clauses, len(a.Clauses))
	for i := range a.Clauses {
		assert.Equal(t, a.Clauses[i].Node, b.Clauses[i].Node)
	}
}
