package lint_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// pullover is a front and a back of so many stitches at 12 to 10 cm, with more
// in the header.
func pullover(header string, front, back int, more string) string {
	half := func(name string, n int) string {
		return fmt.Sprintf("\nPiece: %s\nCh %d.\nRow 1: Hdc in 3rd ch from hook and in each ch across; turn. (%d hdc)\n"+
			"Rows 2-12: Ch 2, hdc in each st across; turn. (%d hdc)\n%sFasten off.\n", name, n+2, n, n, more)
	}
	return "Pattern: Stile pullover\nTerms: US\nSizes: S\nFor: women\nHook: 6 mm (US J-10)\nGauge: 12 hdc and 9 rows = 10 cm (4 in)\n" +
		"Turning chains: ch 2 does not count as a st.\n" + header + "\n" + half("Front", front) + half("Back", back)
}

// Widths against bodies, and against the pieces that make them. Ease as the Craft
// Yarn Council names it: standard is 2 to 4 inches; a woman's bust in size S is 32
// to 34 inches.
func TestFit(t *testing.T) {
	const fits = "To fit: bust 81-86 cm (32-34 in)\n"
	tests := []struct {
		name, header string
		front, back  int
		want         string // rules, the sorted names of those that find something
	}{
		{"as it says", fits + "Ease: 10 cm (4 in)\nFinished size: bust 96 cm (37 3/4 in)", 58, 58, ""},
		{"as a range says", fits + "Ease: 5-10 cm (2-4 in)\nFinished size: bust 92 cm (36 1/4 in)", 55, 55, ""},
		{"in words for a range", fits + "Ease: 5 to 10 cm (2 to 4 in)\nFinished size: bust 92 cm (36 1/4 in)", 55, 55, ""},
		{"another ease", fits + "Ease: 25 cm (9 3/4 in)\nFinished size: bust 96 cm (37 3/4 in)", 58, 58, "ease-mismatch"},
		{"the wrong way", fits + "Ease: 10 cm (4 in) of negative ease\nFinished size: bust 96 cm (37 3/4 in)", 58, 58, "ease-mismatch"},
		{"negative ease", fits + "Ease: 5 cm (2 in) of negative ease\nFinished size: bust 77 cm (30 1/4 in)", 46, 46, ""},
		{"a minus", fits + "Ease: -5 cm (-2 in)\nFinished size: bust 77 cm (30 1/4 in)", 46, 46, ""},
		{"none", fits + "Ease: none\nFinished size: bust 84 cm (33 in)", 50, 50, ""},
		{"none said, some there", fits + "Ease: none\nFinished size: bust 96 cm (37 3/4 in)", 58, 58, "ease-mismatch"},
		{"a name for it", fits + "Ease: standard\nFinished size: bust 90 cm (35 1/2 in)", 54, 54, ""},
		{"another name for it", fits + "Ease: oversized\nFinished size: bust 90 cm (35 1/2 in)", 54, 54, "ease-mismatch"},
		{"both ways is nothing", fits + "Ease: 5 cm negative to 5 cm positive ease\nFinished size: bust 96 cm (37 3/4 in)", 58, 58, ""},
		{"a published body", "Ease: 10 cm (4 in)\nFinished size: bust 96 cm (37 3/4 in)", 58, 58, ""},
		{"bodies of other tables", "Ease: 10 cm (4 in)\nFinished size: bust 101 cm (39 3/4 in)", 61, 61, ""},
		{"no such body", "Ease: 10 cm (4 in)\nFinished size: bust 118 cm (46 1/2 in)", 71, 71, "ease-mismatch"},
		{"no ease said", fits + "Finished size: bust 96 cm (37 3/4 in)", 58, 58, ""},
		{"another length first", fits + "Ease: 10 cm (4 in)\nFinished size: length 13.5 cm (5 1/4 in), bust 96 cm (37 3/4 in)", 58, 58, ""},

		{"seams taken off", "Finished size: bust 94 cm (37 in)", 58, 58, ""},
		{"a front too narrow", "Finished size: bust 101 cm (39 3/4 in)", 58, 48, "measure-mismatch"},
		{"said behind the length", "Finished size: 101 cm (39 3/4 in) bust", 58, 48, "measure-mismatch"},
		{"a front too wide", "Finished size: bust 96 cm (37 3/4 in)", 68, 68, "measure-mismatch"},
		{"inches as centimetres", fits + "Ease: 10 cm (8 in)\nFinished size: bust 96 cm (37 3/4 in)", 58, 58, "measure-mismatch"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			assert.Equal(t, test.want, strings.Join(rulesOf(lint.Analyze(source.New(pullover(test.header, test.front, test.back, "")))), " "), test.header)
		})
	}
	half := "Row 13: Ch 2, hdc in next 40 sts, leave remaining sts unworked; turn. (40 hdc)\nRows 14-40: Ch 2, hdc in each st across; turn. (40 hdc)\n"
	assert.Empty(t, rulesOf(lint.Analyze(source.New(pullover("Finished size: bust 96 cm (37 3/4 in)", 58, 58, half)))),
		"the bust is that of the first rows, above which it is narrower")
}

// A front that is worked as the back up to its neck goes half way round like it,
// however narrow it is there.
func TestFrontWorkedAsTheBack(t *testing.T) {
	like := func(bust string) string {
		whole := pullover("Finished size: "+bust, 58, 58, "Row 13: Ch 2, hdc in next 40 sts, leave remaining sts unworked; turn. (40 hdc)\n")
		front, back := strings.Index(whole, "\nPiece: Front"), strings.Index(whole, "\nPiece: Back")
		return whole[:front] + whole[back:] + "\nPiece: Front\nWork as for Back to Row 13. (40 hdc)\nRows 14-15: Ch 2, hdc in each st across; turn. (40 hdc)\nFasten off.\n"
	}
	assert.Empty(t, rulesOf(lint.Analyze(source.New(like("bust 96 cm (37 3/4 in)")))))
	assert.Equal(t, []string{"measure-mismatch"}, rulesOf(lint.Analyze(source.New(like("bust 106 cm (41 3/4 in)")))))
}

// rulesOf names the rules that found something, each once.
func rulesOf(a *lint.Analysis) []string {
	var out []string
	for _, r := range lint.Rules() {
		for _, f := range a.Findings {
			if f.Rule == r.Name {
				out = append(out, r.Name)
				break
			}
		}
	}
	return out
}
