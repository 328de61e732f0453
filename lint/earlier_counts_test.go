package lint_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// Where several rows told in one each have a count, none of them goes unchecked.
func TestEarlierCounts(t *testing.T) {
	const rows = "Terms: US\n\nPiece: Leaf\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (20 sc)\nRows 2-5: Ch 1, sc2tog, sc to last 2 sts, sc2tog; turn. "
	for said, told := range map[string][]string{
		"(18, 16, 14, 12 sc)":     nil,
		"(18, 16, 14 and 12 sts)": nil,
		"(18, 17, 14, 12 sc)":     {"row 3 makes 16 sc, says 17 at 17"},
		"(12, 16, 14, 12 sc)":     {"row 2 makes 18 sc, says 12 at 12"},
		"(18, 16, 14, 13 sc)":     {"makes 12 sc, says 13 at (18, 16, 14, 13 sc)"},
		"(19, 17, 14, 12)":        {"row 2 makes 18 sts, says 19 at 19", "row 3 makes 16 sts, says 17 at 17"},
	} {
		t.Run(said, func(t *testing.T) {
			text := rows + said + "\nFasten off.\n"
			var found []string
			for _, f := range lint.Analyze(source.New(text)).Findings {
				if f.Rule == "count-mismatch" {
					found = append(found, f.Message+" at "+text[f.Span.Start:f.Span.End])
				}
			}
			assert.Equal(t, told, found)
		})
	}
}
