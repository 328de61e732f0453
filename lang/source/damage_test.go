package source_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"stitchproof/lang/source"
)

func TestDamage(t *testing.T) {
	damage := func(kind source.DamageKind, start, end, count int) source.Damage {
		return source.Damage{Kind: kind, Span: source.Span{Start: start, End: end}, Count: count}
	}
	for _, test := range []struct {
		name, text string
		want       []source.Damage
	}{
		{"empty", "", nil},
		{"clean", "oak 🌿\r\nleaf\r\n", nil},
		{"a written replacement character", "oak \ufffd", nil},
		{"mark in a later place", "oak \ufeff", nil},
		{"mark", "\ufeffoak", []source.Damage{damage(source.ByteOrderMark, 0, 3, 1)}},
		{"invalid bytes", "a\xe2\x82b\xff", []source.Damage{damage(source.InvalidUTF8, 1, 2, 3)}},
		{"mixed line ends", "a\nb\r\nc\nd\r", []source.Damage{damage(source.MixedLineEnds, 3, 5, 2)}},
		{"all", "\ufeff\xff\r\n\n", []source.Damage{
			damage(source.ByteOrderMark, 0, 3, 1),
			damage(source.InvalidUTF8, 3, 4, 1),
			damage(source.MixedLineEnds, 4, 6, 1),
		}},
	} {
		t.Run(test.name, func(t *testing.T) {
			assert.Equal(t, test.want, source.New(test.text).Damage())
		})
	}
}

func TestLineEnd(t *testing.T) {
	for text, want := range map[string]string{
		"":                 "\n",
		"oak":              "\n",
		"oak\n":            "\n",
		"oak\r\n":          "\r\n",
		"oak\r":            "\r",
		"a\nb\r\nc\r\n":    "\r\n",
		"a\rb\rc\n":        "\r",
		"a\r\nb\n":         "\n",
		"a\rb\r\n":         "\r\n",
		"a\r\r\nb\r\nc\nd": "\r\n",
	} {
		assert.Equal(t, want, source.New(text).LineEnd(), "%q", text)
	}
}

func TestDamageCounts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := texts().Draw(t, "text")
		text := source.New(s)
		count := map[source.DamageKind]int{}
		for _, d := range text.Damage() {
			count[d.Kind] = d.Count
		}

		// Replacing each bad byte by a two-byte letter lengthens the text by one each.
		var mended strings.Builder
		for _, r := range strings.ReplaceAll(s, "\ufffd", "???") {
			if r == '\ufffd' {
				r = 'é'
			}
			mended.WriteRune(r)
		}
		assert.Equal(t, mended.Len()-len(s), count[source.InvalidUTF8])

		ends := map[string]int{}
		for _, end := range lineEnd.FindAllString(s, -1) {
			ends[end]++
		}
		assert.Equal(t, ends["\n"]+ends["\r\n"]+ends["\r"]-max(ends["\n"], ends["\r\n"], ends["\r"]),
			count[source.MixedLineEnds])
		assert.Equal(t, strings.HasPrefix(s, "\ufeff"), count[source.ByteOrderMark] == 1)
	})
}
