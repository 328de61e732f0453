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

// How many stitches go along row ends, where nothing else says it, is what the row
// states; that proves nothing of the count, and the next row stands on it.
func TestRowEndsAreAsManyAsStated(t *testing.T) {
	const cuff = "Terms: US\n\nPiece: Cuff\nCh 7.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (6 sc)\nRows 2-30: Ch 1, sc in each st across; turn. (6 sc)\nRnd 1: "
	const next = "\nRnd 2: Ch 1, *sc in next 7 sts, sc2tog; rep from * around; join. (40 sc)\n"
	for row, want := range map[string]int{
		"Ch 1, working in row ends, hdc across; join. (45)":             45,
		"Ch 1, sc evenly along row ends; join. (45 sc)":                 45,
		"Ch 3 (counts as dc), dc evenly along row ends; join. (45 dc)":  45,
		"Ch 1, sc evenly along row ends; join.":                         -1,
		"Ch 1, 30 sc evenly along row ends; join. (30 sc)":              30,
		"Ch 1, sc evenly along row ends; join. (36 sc, 9 ch-2 sps)":     -1,
		"Ch 1, sc evenly along row ends, 2 sc in corner; join. (45 sc)": -1,
	} {
		rows := allRows(worked(cuff + row + next))
		edge, after := rows[len(rows)-2].Tallies[0], rows[len(rows)-1].Tallies[0]
		assert.Equal(t, want >= 0, edge.Known, row)
		if want >= 0 {
			assert.Equal(t, want, edge.Made, row)
		}
		if want == 45 {
			assert.Equal(t, fabric.Uncheckable, edge.Agrees(), row)
			assert.Equal(t, fabric.Agrees, after.Agrees(), row)
		}
	}
}
