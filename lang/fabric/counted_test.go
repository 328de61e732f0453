package fabric_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/fabric"
)

const countedDir = "../../testdata/counted"

// Small pieces of one construction each, whose counts were worked by hand.
func TestConstructionsAreCounted(t *testing.T) {
	for name, text := range patternFiles(t, countedDir) {
		t.Run(name, func(t *testing.T) {
			if !strings.HasPrefix(text, "// ") {
				t.Error("the file does not say what it shows")
			}
			comesOut(t, text)
		})
	}
}

// A count by kind that is what each repeat makes is no count of the round; one that
// is neither disagrees.
func TestCountOfOneRepeat(t *testing.T) {
	const brim = "Terms: US\n\nPiece: Brim\nRnd 1: 15 sc in magic ring. (15 sc)\nRnd 2: "
	for row, want := range map[string]fabric.Agreement{
		"(dc in next 2 sts, FPdc around next st) 5 times (2 dc, 1 FPdc)":           fabric.Uncheckable,
		"*dc in next 2 sts, FPdc around next st; rep from * around (2 dc, 1 FPdc)": fabric.Uncheckable,
		"(dc in next 2 sts, FPdc around next st) 5 times (10 dc, 5 FPdc)":          fabric.Agrees,
		"(dc in next 2 sts, FPdc around next st) 5 times (8 dc, 4 FPdc)":           fabric.Disagrees,
		"(dc in next 2 sts, FPdc around next st) 5 times (2 dc)":                   fabric.Disagrees,
		"(dc in next 2 sts, FPdc around next st) 5 times (3 dc, 1 FPdc)":           fabric.Disagrees,
		"dc in next 10 sts, FPdc around each of next 5 sts (2 dc, 1 FPdc)":         fabric.Disagrees,
	} {
		rows := allRows(worked(brim + row + "\n"))
		assert.Equal(t, want, rows[len(rows)-1].Tallies[0].Agrees(), row)
	}
}
