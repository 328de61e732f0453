package source_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"stitchproof/lang/source"
)

// texts draws texts made of what makes positions hard: every width of code point,
// sequences of several code points, all line ends, marks, broken bytes, and lines
// long enough for a conversion to start in their middle.
func texts() *rapid.Generator[string] {
	piece := rapid.SampledFrom([]string{
		"a", " ", "wren", "½", "é", "e\u0301", "€", "漢", "🌿", "👩\u200d🌾", "🇬🇧", "\u0000",
		"\n", "\r\n", "\r",
		"\ufeff", "\ufffd",
		"\xff", "\x80", "\xe2\x82", "\xf0\x9f\x8c", "\xed\xa0\x80", "\xc0\xaf",
	})
	long := rapid.Custom(func(t *rapid.T) string {
		return strings.Repeat(piece.Draw(t, "piece"), rapid.IntRange(200, 900).Draw(t, "times"))
	})
	return rapid.Custom(func(t *rapid.T) string {
		parts := rapid.SliceOfN(piece, 0, 40).Draw(t, "pieces")
		if rapid.IntRange(0, 7).Draw(t, "long") == 0 {
			parts = append(parts, long.Draw(t, "run"), "🌿a")
		}
		mark := rapid.SampledFrom([]string{"", "\ufeff"}).Draw(t, "mark")
		return mark + strings.Join(parts, "")
	})
}

func TestSpan(t *testing.T) {
	s := source.Span{Start: 3, End: 6}
	assert.Equal(t, 3, s.Len())
	assert.False(t, s.Empty())
	assert.True(t, source.Span{Start: 3, End: 3}.Empty())

	for offset, want := range map[int]bool{2: false, 3: true, 5: true, 6: false} {
		assert.Equal(t, want, s.Contains(offset), "offset %d", offset)
	}
	for other, want := range map[source.Span]bool{
		{Start: 3, End: 6}: true,
		{Start: 3, End: 3}: true,
		{Start: 6, End: 6}: true,
		{Start: 2, End: 4}: false,
		{Start: 5, End: 7}: false,
		{Start: 7, End: 7}: false,
	} {
		assert.Equal(t, want, s.Covers(other), "span %v", other)
	}
	for other, want := range map[source.Span][2]bool{
		{Start: 0, End: 2}: {false, false},
		{Start: 0, End: 3}: {false, true},
		{Start: 0, End: 4}: {true, true},
		{Start: 4, End: 5}: {true, true},
		{Start: 4, End: 4}: {true, true},
		{Start: 3, End: 3}: {false, true},
		{Start: 6, End: 9}: {false, true},
		{Start: 7, End: 9}: {false, false},
	} {
		assert.Equal(t, want, [2]bool{s.Overlaps(other), s.Touches(other)}, "span %v", other)
		assert.Equal(t, want, [2]bool{other.Overlaps(s), other.Touches(s)}, "span %v", other)
	}
	assert.Equal(t, source.Span{Start: 1, End: 6}, s.Union(source.Span{Start: 1, End: 2}))
	assert.Equal(t, source.Span{Start: 3, End: 9}, s.Union(source.Span{Start: 4, End: 9}))
	assert.Equal(t, source.Span{Start: 5, End: 8}, s.Shift(2))
	assert.Equal(t, source.Span{Start: 2, End: 5}, s.Shift(-1))
}

func TestLines(t *testing.T) {
	for _, test := range []struct {
		name, text      string
		lines, withEnds []string
	}{
		{"empty", "", []string{""}, []string{""}},
		{"no line end", "acorn", []string{"acorn"}, []string{"acorn"}},
		{"final line end", "acorn\n", []string{"acorn", ""}, []string{"acorn\n", ""}},
		{"all ends", "a\nb\r\nc\rd", []string{"a", "b", "c", "d"}, []string{"a\n", "b\r\n", "c\r", "d"}},
		{"CR CRLF", "a\r\r\nb", []string{"a", "", "b"}, []string{"a\r", "\r\n", "b"}},
		{"LF CR", "a\n\rb", []string{"a", "", "b"}, []string{"a\n", "\r", "b"}},
		{"mark", "\ufeffa\nb", []string{"a", "b"}, []string{"\ufeffa\n", "b"}},
		{"mark alone", "\ufeff", []string{""}, []string{"\ufeff"}},
		{"mark in a later line", "a\n\ufeffb", []string{"a", "\ufeffb"}, []string{"a\n", "\ufeffb"}},
		{"invalid bytes", "\xff\n\xe2\x82", []string{"\xff", "\xe2\x82"}, []string{"\xff\n", "\xe2\x82"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			text := source.New(test.text)
			var lines, withEnds []string
			for i := range text.Lines() {
				lines = append(lines, text.Slice(text.Line(i)))
				withEnds = append(withEnds, text.Slice(text.LineWithEnd(i)))
			}
			assert.Equal(t, test.lines, lines)
			assert.Equal(t, test.withEnds, withEnds)
		})
	}
}

func TestOutsideTheText(t *testing.T) {
	text := source.New("frost\noak")
	assert.Equal(t, text.Line(0), text.Line(-1))
	assert.Equal(t, text.Line(1), text.Line(2))
	assert.Equal(t, text.LineWithEnd(1), text.LineWithEnd(9))
	assert.Equal(t, 0, text.LineOf(-1))
	assert.Equal(t, 1, text.LineOf(99))
	assert.Equal(t, "frost\noak", text.Slice(source.Span{Start: -4, End: 99}))
	assert.Equal(t, "", text.Slice(source.Span{Start: 20, End: 30}))
	assert.Equal(t, "", text.Slice(source.Span{Start: 4, End: 2}))
}

func TestLinesTileTheText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := texts().Draw(t, "text")
		text := source.New(s)
		assert.Equal(t, s, text.String())
		assert.Equal(t, len(s), text.Len())

		end := 0
		for i := range text.Lines() {
			line := text.LineWithEnd(i)
			assert.Equal(t, end, line.Start)
			for offset := line.Start; offset < line.End; offset++ {
				assert.Equal(t, i, text.LineOf(offset))
			}
			assert.False(t, strings.ContainsAny(text.Slice(text.Line(i)), "\r\n"))
			assert.True(t, line.Covers(text.Line(i)))
			end = line.End
		}
		assert.Equal(t, len(s), end)
	})
}

func BenchmarkNew(b *testing.B) {
	s := strings.Repeat("Round 4: work 2 in the next, 1 in each of the next 3, repeat to the end\n", 140_000)
	b.SetBytes(int64(len(s)))
	for b.Loop() {
		source.New(s)
	}
}
