package source_test

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"
	"unicode/utf16"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"stitchproof/lang/source"
)

var encodings = []source.Encoding{source.UTF8, source.UTF16, source.UTF32}

func TestEncodingNames(t *testing.T) {
	for e, name := range map[source.Encoding]string{
		source.UTF8: "utf-8", source.UTF16: "utf-16", source.UTF32: "utf-32",
	} {
		assert.Equal(t, name, e.String())
		parsed, ok := source.ParseEncoding(name)
		assert.True(t, ok)
		assert.Equal(t, e, parsed)
	}
	for _, name := range []string{"", "utf8", "UTF-8", "utf-7"} {
		_, ok := source.ParseEncoding(name)
		assert.False(t, ok, name)
	}
}

func TestPosition(t *testing.T) {
	for _, test := range []struct {
		name, before, after string // the position is between the two
		line                int
		utf8, utf16, utf32  int
		column              int
	}{
		{"empty", "", "", 0, 0, 0, 0, 1},
		{"ASCII", "oak", " leaf", 0, 3, 3, 3, 4},
		{"second line", "oak\nle", "af", 1, 2, 2, 2, 3},
		{"after CRLF", "oak\r\n", "leaf", 1, 0, 0, 0, 1},
		{"after CR", "oak\rle", "af", 1, 2, 2, 2, 3},
		{"at a line end", "oak", "\r\nleaf", 0, 3, 3, 3, 4},
		{"after a final line end", "oak\n", "", 1, 0, 0, 0, 1},
		{"fraction", "4½", " cm", 0, 3, 2, 2, 3},
		{"combining mark", "cafe\u0301", "!", 0, 6, 5, 5, 6},
		{"emoji", "🌿 ", "bramble", 0, 5, 3, 2, 3},
		{"joined emoji", "👩\u200d🌾", "", 0, 11, 5, 3, 4},
		{"byte-order mark", "\ufeff", "Hat", 0, 3, 1, 1, 1},
		{"after the mark", "\ufeffHat", "", 0, 6, 4, 4, 4},
		{"line after the mark", "\ufeffHat\nof", "", 1, 2, 2, 2, 3},
		{"mark in a later line", "Hat\n\ufeff", "x", 1, 3, 1, 1, 2},
		{"lone bytes", "a\xff\x80", "b", 0, 3, 3, 3, 4},
		{"cut code point", "\xf0\x9f\x8c", "b", 0, 3, 3, 3, 4},
		{"half a surrogate pair", "\xed\xa0\x80", "b", 0, 3, 3, 3, 4},
		{"replacement character", "\ufffd", "b", 0, 3, 1, 1, 2},
	} {
		t.Run(test.name, func(t *testing.T) {
			text := source.New(test.before + test.after)
			offset := len(test.before)
			for e, character := range map[source.Encoding]int{
				source.UTF8: test.utf8, source.UTF16: test.utf16, source.UTF32: test.utf32,
			} {
				p := source.Position{Line: test.line, Character: character}
				assert.Equal(t, p, text.Position(offset, e), e)
				assert.Equal(t, offset, text.Offset(p, e), e)
			}
			line, column := text.LineColumn(offset)
			assert.Equal(t, [2]int{test.line + 1, test.column}, [2]int{line, column})
		})
	}
}

func TestPositionRoundsDown(t *testing.T) {
	text := source.New("a🌿\r\nb")
	for offset, want := range map[int]source.Position{
		-7: {Line: 0, Character: 0},
		2:  {Line: 0, Character: 1}, // inside the leaf
		4:  {Line: 0, Character: 1},
		5:  {Line: 0, Character: 3},
		6:  {Line: 0, Character: 3}, // between CR and LF
		7:  {Line: 1, Character: 0},
		99: {Line: 1, Character: 1},
	} {
		assert.Equal(t, want, text.Position(offset, source.UTF16), "offset %d", offset)
	}

	line, column := source.New("\ufeffHat").LineColumn(1)
	assert.Equal(t, [2]int{1, 1}, [2]int{line, column}, "inside the byte-order mark")
}

func TestOffsetClamps(t *testing.T) {
	text := source.New("a🌿\r\nbc")
	for _, test := range []struct {
		p    source.Position
		e    source.Encoding
		want int
	}{
		{source.Position{Line: 0, Character: 2}, source.UTF8, 1}, // inside the leaf
		{source.Position{Line: 0, Character: 4}, source.UTF8, 1},
		{source.Position{Line: 0, Character: 2}, source.UTF16, 1}, // between its surrogates
		{source.Position{Line: 0, Character: 2}, source.UTF32, 5},
		{source.Position{Line: 0, Character: 6}, source.UTF8, 5}, // beyond the line
		{source.Position{Line: 0, Character: math.MaxInt}, source.UTF16, 5},
		{source.Position{Line: 0, Character: -1}, source.UTF16, 0},
		{source.Position{Line: 1, Character: 9}, source.UTF16, 9},
		{source.Position{Line: 1, Character: math.MinInt}, source.UTF16, 7},
		{source.Position{Line: 2, Character: 0}, source.UTF16, 9},
		{source.Position{Line: math.MaxInt, Character: 0}, source.UTF16, 9},
		{source.Position{Line: -1, Character: 4}, source.UTF16, 0},
	} {
		assert.Equal(t, test.want, text.Offset(test.p, test.e), "%v in %v", test.p, test.e)
	}
}

func TestRange(t *testing.T) {
	text := source.New("🌿 twig\nwren")
	span := source.Span{Start: 5, End: 12}
	r := source.Range{
		Start: source.Position{Line: 0, Character: 3},
		End:   source.Position{Line: 1, Character: 2},
	}
	assert.Equal(t, r, text.Range(span, source.UTF16))
	assert.Equal(t, span, text.Span(r, source.UTF16))
	assert.Equal(t, span, text.Span(source.Range{Start: r.End, End: r.Start}, source.UTF16), "backward")
}

var lineEnd = regexp.MustCompile(`\r\n|\n|\r`)

// naivePosition counts from the start of the text, with the standard library's idea
// of runes and of UTF-16. Offset must be a code point boundary outside CRLF.
func naivePosition(s string, offset int, e source.Encoding) source.Position {
	before := lineEnd.Split(s[:offset], -1)
	last := before[len(before)-1]
	p := source.Position{Line: len(before) - 1}
	switch e {
	case source.UTF8:
		p.Character = len(last)
	case source.UTF16:
		p.Character = len(utf16.Encode([]rune(last)))
	case source.UTF32:
		p.Character = utf8.RuneCountInString(last)
	}
	return p
}

// boundaries are the offsets in s that a position can name.
func boundaries(s string) []int {
	var offsets []int
	for i := range s {
		if i == 0 || s[i-1] != '\r' || s[i] != '\n' {
			offsets = append(offsets, i)
		}
	}
	return append(offsets, len(s))
}

// checkPositions holds every offset of s against the naive count and back again.
// Long texts are sampled, since the naive count starts over for each offset.
func checkPositions(t assert.TestingT, s string) {
	text := source.New(s)
	offsets := boundaries(s)
	for i := 0; i < len(offsets); i += 1 + len(offsets)/300 {
		offset := offsets[i]
		for _, e := range encodings {
			want := naivePosition(s, offset, e)
			assert.Equal(t, want, text.Position(offset, e), "offset %d in %v", offset, e)
			assert.Equal(t, offset, text.Offset(want, e), "position %v in %v", want, e)
			if i+1 < len(offsets) {
				for inside := offset + 1; inside < offsets[i+1]; inside++ {
					if s[offset] != '\r' { // inside CRLF is the end of the line's text as well
						assert.Equal(t, want, text.Position(inside, e), "offset %d in %v", inside, e)
					}
				}
			}
		}

		want := naivePosition(s, offset, source.UTF32)
		if want.Line == 0 && offset > 0 && strings.HasPrefix(s, "\ufeff") {
			want.Character--
		}
		line, column := text.LineColumn(offset)
		assert.Equal(t, [2]int{want.Line + 1, want.Character + 1}, [2]int{line, column}, "offset %d", offset)
	}
}

func TestPositionsThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) { checkPositions(t, texts().Draw(t, "text")) })
}

// Any pair of numbers that a client sends names the nearest place at or before it
// in its line.
func TestAnyPositionIsClamped(t *testing.T) {
	number := rapid.OneOf(rapid.IntRange(-2, 60), rapid.Int())
	rapid.Check(t, func(t *rapid.T) {
		s := texts().Draw(t, "text")
		text := source.New(s)
		e := rapid.SampledFrom(encodings).Draw(t, "encoding")
		p := source.Position{Line: number.Draw(t, "line"), Character: number.Draw(t, "character")}

		want := 0
		for _, offset := range boundaries(s) {
			q := naivePosition(s, offset, e)
			if q.Line < p.Line && p.Line >= text.Lines() || q.Line == p.Line && q.Character <= max(p.Character, 0) {
				want = offset
			}
		}
		assert.Equal(t, want, text.Offset(p, e))
	})
}

func FuzzPositions(f *testing.F) {
	f.Add("Hat 🌿\r\nof e\u0301 ½\rwool\n")
	f.Add("\ufeff\xff\xe2\x82\ufffd")
	f.Fuzz(func(t *testing.T, s string) { checkPositions(t, s) })
}

// The cost of one conversion must not follow the length of the line.
func BenchmarkPosition(b *testing.B) {
	for _, piece := range []string{"oaktwig", "½ twig"} {
		for _, length := range []int{70, 700, 70_000, 7_000_000} {
			text := source.New(strings.Repeat(piece, length/len(piece)))
			b.Run(fmt.Sprintf("%s/%d bytes", piece, length), func(b *testing.B) {
				for b.Loop() {
					text.Position(length-1, source.UTF16)
				}
			})
		}
	}
}
