package source_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stitchproof/lang/source"
)

func edit(start, end int, text string) source.Edit {
	return source.Edit{Span: source.Span{Start: start, End: end}, New: text}
}

func TestApply(t *testing.T) {
	for _, test := range []struct {
		name, before string
		edits        []source.Edit
		after        string
	}{
		{"nothing", "acorn", nil, "acorn"},
		{"replace", "acorn hat", []source.Edit{edit(0, 5, "wren")}, "wren hat"},
		{"insert and delete", "acorn hat", []source.Edit{edit(5, 9, ""), edit(0, 0, "an ")}, "an acorn"},
		{"any order", "abcd", []source.Edit{edit(3, 4, "D"), edit(0, 1, "A")}, "AbcD"},
		{"touching", "abcd", []source.Edit{edit(2, 4, "2"), edit(0, 2, "1")}, "12"},
		{"insertions at one place", "ab", []source.Edit{edit(1, 1, "1"), edit(1, 1, "2")}, "a12b"},
		{"insertion before a replacement", "ab", []source.Edit{edit(1, 2, "B"), edit(1, 1, "-")}, "a-B"},
		{"insertion after a replacement", "ab", []source.Edit{edit(1, 1, "-"), edit(0, 1, "A")}, "A-b"},
		{"everything else kept", "\ufeffa\r\n\xff\r", []source.Edit{edit(3, 4, "b")}, "\ufeffb\r\n\xff\r"},
	} {
		t.Run(test.name, func(t *testing.T) {
			before := source.New(test.before)
			given := slices.Clone(test.edits)
			after, err := before.Apply(test.edits)
			require.NoError(t, err)
			assert.Equal(t, test.after, after.String())
			assert.Equal(t, test.before, before.String())
			assert.Equal(t, given, test.edits)
		})
	}
}

func TestManyInsertionsAtOnePlaceKeepTheirOrder(t *testing.T) {
	var edits []source.Edit
	for _, letter := range "hedgerow through the year" {
		edits = append(edits, edit(2, 2, string(letter)), edit(1, 1, string(letter)))
	}
	after, err := source.New("<|>").Apply(edits)
	require.NoError(t, err)
	assert.Equal(t, "<hedgerow through the year|hedgerow through the year>", after.String())
}

func TestApplyRefuses(t *testing.T) {
	for _, test := range []struct {
		name  string
		edits []source.Edit
		err   string
	}{
		{"a shared byte", []source.Edit{edit(2, 5, ""), edit(0, 3, "")},
			"edits 2 and 1 overlap: bytes 0 to 3 and bytes 2 to 5"},
		{"the same span", []source.Edit{edit(1, 2, "x"), edit(1, 2, "x")},
			"edits 1 and 2 overlap: bytes 1 to 2 and bytes 1 to 2"},
		{"an insertion inside", []source.Edit{edit(1, 3, ""), edit(2, 2, "x")},
			"edits 1 and 2 overlap: bytes 1 to 3 and bytes 2 to 2"},
		{"beyond the end", []source.Edit{edit(0, 1, ""), edit(4, 7, "")},
			"edit 2 spans bytes 4 to 7, which is out of range in a text of 5 bytes"},
		{"before the start", []source.Edit{edit(-1, 2, "")},
			"edit 1 spans bytes -1 to 2, which is out of range in a text of 5 bytes"},
		{"backward", []source.Edit{edit(3, 2, "")},
			"edit 1 spans bytes 3 to 2, which is out of range in a text of 5 bytes"},
	} {
		t.Run(test.name, func(t *testing.T) {
			after, err := source.New("acorn").Apply(test.edits)
			assert.Nil(t, after)
			assert.EqualError(t, err, test.err)
		})
	}
}

// splice visits each offset in turn and does there what the edits say.
func splice(s string, edits []source.Edit) string {
	var out strings.Builder
	for offset := 0; offset <= len(s); offset++ {
		deleted := false
		for _, e := range edits {
			if e.Span.Empty() && e.Span.Start == offset {
				out.WriteString(e.New)
			}
		}
		for _, e := range edits {
			if !e.Span.Empty() && e.Span.Start == offset {
				out.WriteString(e.New)
			}
			deleted = deleted || e.Span.Contains(offset)
		}
		if offset < len(s) && !deleted {
			out.WriteByte(s[offset])
		}
	}
	return out.String()
}

// collide says whether two spans share a byte or one is a place inside the other.
func collide(a, b source.Span) bool {
	for offset := min(a.Start, b.Start); offset < max(a.End, b.End); offset++ {
		if a.Contains(offset) && b.Contains(offset) {
			return true
		}
	}
	inside := func(place, s source.Span) bool {
		return place.Empty() && s.Start < place.Start && place.Start < s.End
	}
	return inside(a, b) || inside(b, a)
}

func TestApplyIsASplice(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := texts().Draw(t, "text")
		var edits []source.Edit
		for range rapid.IntRange(0, 6).Draw(t, "attempts") {
			start := rapid.IntRange(0, len(s)).Draw(t, "start")
			end := rapid.IntRange(start, min(start+8, len(s))).Draw(t, "end")
			next := edit(start, end, rapid.SampledFrom([]string{"", "oak", "\r\n", "🌿"}).Draw(t, "new"))
			if !slices.ContainsFunc(edits, func(e source.Edit) bool { return collide(e.Span, next.Span) }) {
				edits = append(edits, next)
			}
		}

		after, err := source.New(s).Apply(edits)
		require.NoError(t, err)
		want := splice(s, edits)
		assert.Equal(t, want, after.String())
		assert.Equal(t, source.New(want), after)
	})
}

func TestApplyRefusesExactlyOverlaps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := source.New("hawthorn")
		spans := make([]source.Span, 2)
		for i := range spans {
			start := rapid.IntRange(0, text.Len()).Draw(t, "start")
			spans[i] = source.Span{Start: start, End: rapid.IntRange(start, text.Len()).Draw(t, "end")}
		}
		_, err := text.Apply([]source.Edit{{Span: spans[0]}, {Span: spans[1]}})
		assert.Equal(t, collide(spans[0], spans[1]), err != nil, "%v", spans)
	})
}
