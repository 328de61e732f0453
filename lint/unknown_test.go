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
