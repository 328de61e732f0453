package lint_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

func TestTextMisleading(t *testing.T) {
	const head = "Pattern: Nest\nTerms: US\n\nPiece: Nest\n"
	for _, test := range []struct {
		name, text string
		want       []string // the words found
	}{
		{"plain", head + "With A (moss), ch 11.\n", nil},
		{"a stitch in disguise", head + "Row 1: 5 sс in ring.\n", []string{"sс"}},
		{"a yarn in disguise", head + "With А, ch 11.\n", []string{"А"}},
		{"a Greek one", head + "With Α, ch 11.\n", []string{"Α"}},
		{"accents", head + "With A (éclair, naïve, Åland), ch 11.\n", nil},
		{"units and signs", head + "With A, ch 11. 5 µm, 3 Ω, 2 × 4, 90°, 你好.\n", nil},
		{"another language beside", head + "// Узор: гнездо, с листьями. А и Б.\nWith A, ch 11.\n", nil},
		{"a mixed word in another language", head + "// Узор: гнeздо.\nWith A, ch 11.\n", nil},
		{"an override", head + "// \u202ednat eerht\u202c\nWith A, ch 11.\n", []string{"\u202e"}},
		{"an isolate", head + "With A\u2067, ch 11\u2069.\n", []string{"\u2067"}},
		{"a mark that turns nothing", head + "// עברית\u200f: nest\nWith A, ch 11.\n", nil},
		{"a joined emoji", head + "// 👩\u200d🌾\nWith A, ch 11.\n", nil},
		{"what a page-description leaves", head + "With A, ch 1\x021.\n", []string{"\x02"}},
		{"a zero", head + "With A, ch 1\x001.\n", []string{"\x00"}},
		{"a form feed", head + "\x0cWith A, ch 11.\n", nil},
	} {
		t.Run(test.name, func(t *testing.T) {
			a := lint.Analyze(source.New(test.text))
			var got []string
			for _, f := range a.Findings {
				if f.Rule == "text-misleading" {
					got = append(got, a.Text.Slice(f.Span))
				}
			}
			assert.Equal(t, test.want, got)
		})
	}
}
