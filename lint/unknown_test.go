package lint_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// Why a row has no count is said where it lies below the row, and not where it lies in
// the words.
func TestWhyARowIsNotCounted(t *testing.T) {
	tests := map[string]string{
		"Row 2: Ch 1, zc in each st across; turn.\nRow 3: Rep Row 2 until piece measures 10 cm.\nFasten off.\n": "`Rep Row 2 until piece measures 10 cm` cannot be counted, as it is not known what Row 2 makes, so the row is not",
		"Row 2: Ch 1, frob sc in each st across; turn.\nFasten off.\n":                                          "`frob sc in each st across` is not understood, so the row is not counted",
		"Row 2: Ch 1, sc in each st accross; turn.\nFasten off.\n":                                              "`sc in each st accross` is not understood, so the row is not counted: `accross` may be `across`",
	}
	for pattern, want := range tests {
		var said []string
		for _, f := range lint.Analyze(source.New(mat + pattern)).Findings {
			if f.Rule == "count-unknown" {
				said = append(said, f.Message)
			}
		}
		assert.Equal(t, []string{want}, said, pattern)
	}
}

// Where later rows bear out the count and many changes would make it, the words that stop
// short are named.
func TestWordsThatStopShortAreNamed(t *testing.T) {
	const rows = "Row 2: Ch 1, sc in next 3 sts, hdc in next 2 sts, dc in next 2 sts, tr in next 2 sts, sc in last 2 sts; turn. (12 sts)\n" +
		"Row 3: Ch 1, sc in next 12 sts; turn. (12 sc)\nFasten off.\n"
	found := lint.Analyze(source.New(mat + rows)).Findings
	if assert.Len(t, found, 1, listed(found)) {
		assert.Equal(t, "makes 11 sts, says 12; what comes after it fits 12, so the words are likely wrong: `sc in last 2 sts` leaves 1 st unworked", found[0].Message)
	}
}

// What is said of several rows is said of several.
func TestSeveralRowsAgree(t *testing.T) {
	const rounds = "Rnd 3: Ch 1, sc in each st around; join. (12 sc)\n"
	for pattern, want := range map[string]string{
		"Rnds 4 and 5: Ch 1, sc in each st around. (12 sc)\n": "Rnds 4 and 5 are not joined, and the rounds around it are",
		"Rnd 4: Ch 1, sc in each st around. (12 sc)\n":        "Rnd 4 is not joined, and the rounds around it are",
	} {
		said := ""
		for _, f := range lint.Analyze(source.New(disc + rounds + pattern + "Rnd 6: Ch 1, sc in each st around; join. (12 sc)\nRnds 7-9: Ch 1, sc in each st around; join. (12 sc)\nFasten off.\n")).Findings {
			if f.Rule == "join-missing" {
				said = f.Message
			}
		}
		assert.Equal(t, want, said, pattern)
	}
}
