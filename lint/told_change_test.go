package lint_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// What a row says of its change is held against the row below, in whatever words.
func TestToldChanges(t *testing.T) {
	const rows = "Terms: US\n\nPiece: Leaf\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (8 sc)\nRow 2: "
	for said, told := range map[string]string{
		"Ch 1, 2 sc in first st, sc in next 6 sts, 2 sc in last st; turn. 2 sts more than before.":            "",
		"Ch 1, 2 sc in first st, sc in next 6 sts, 2 sc in last st; turn. 3 sts more than before.":            "makes 2 more than the row below, says 3",
		"Ch 1, 2 sc in first st, sc in next 6 sts, 2 sc in last st; turn. (2 more sts than the row below)":    "",
		"Ch 1, 2 sc in first st, sc in next 6 sts, 2 sc in last st; turn. (10 sts, +2)":                       "",
		"Ch 1, 2 sc in first st, sc in next 6 sts, 2 sc in last st; turn. (+3)":                               "makes 2 more than the row below, says 3",
		"Ch 1, sc2tog, sc in next 4 sts, sc2tog; turn. 2 sts fewer than in the last row.":                     "",
		"Ch 1, sc2tog, sc in next 4 sts, sc2tog; turn. (-3)":                                                  "makes 2 fewer than the row below, says 3",
		"Ch 1, sc in next st, *ch 1, skip next st, sc in next st; rep from * to last st, sc in last st. (+0)": "",
	} {
		t.Run(said, func(t *testing.T) {
			found := ""
			for _, f := range lint.Analyze(source.New(rows + said + "\nFasten off.\n")).Findings {
				if f.Rule == "count-mismatch" {
					found += f.Message
				}
			}
			assert.Equal(t, told, found)
		})
	}
}
