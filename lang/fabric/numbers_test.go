package fabric_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/fabric"
)

// A row that numbers all that it works is counted though nobody knows what it is worked
// on, and so are the rows on it.
func TestRowsOfNumbersAreCountedOnWhatIsNotKnown(t *testing.T) {
	const lost = "Terms: US\n\nPiece: Vest\nCh 31.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (30 sc)\nRow 2: Ch 1, hedge in each st across; turn.\n"
	for row, want := range map[string]int{
		"Ch 1, sc in next 12 sts, leave remaining sts unworked; turn. (12 sc)":  12,
		"Ch 1, sc2tog, sc in next 4 sts, 2 sc in each of next 2 sts. (9 sc)":    9,
		"Ch 1, (sc in next 3 sts, sc2tog) 4 times; turn. 16 sc":                 16,
		"Ch 1, sc in next 3 sc, 2 sc in next sc, sc in last 3 sc; turn. (8 sc)": 8,
		"Ch 1, sc in each st across; turn. (30 sc)":                             -1, // it does not say how many
		"Ch 1, sc in next 12 sts; turn.":                                        -1, // it states nothing to go by
		"Ch 2, hdc in next 12 sts; turn. (12 hdc)":                              -1, // the chain may stand for one
	} {
		rows := allRows(worked(lost + "Row 3: " + row + "\nRow 4: Ch 1, sc in each st across.\n"))
		on, after := rows[len(rows)-2].Tallies[0], rows[len(rows)-1].Tallies[0]
		assert.Equal(t, want >= 0, on.Known, row)
		if want >= 0 {
			assert.Equal(t, fabric.Agrees, on.Agrees(), row)
			assert.Empty(t, on.Faults, row)
			assert.Equal(t, want, after.Made, row)
		}
	}
}

// Of what such a row leaves unworked nobody knows how much it is: what is worked on it
// is not counted on the stitches of the row.
func TestWhatIsLeftOfWhatIsNotKnownIsNotKnown(t *testing.T) {
	rows := allRows(worked(`Terms: US

Piece: Vest
Ch 31.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (30 sc)
Row 2: Ch 1, hedge in each st across; turn.
Row 3: Ch 1, sc in next 12 sts, leave remaining sts unworked; turn. (12 sc)
Row 4: Ch 1, sc in each st across. (12 sc)
Fasten off.
Skip next 8 sts and rejoin yarn with a sl st in next st.
Next row: Ch 1, sc in each st across. (10 sc)
`))
	last := rows[len(rows)-1].Tallies[0]
	assert.False(t, last.Known)
	assert.Empty(t, last.Faults)
}

// A step of a list that is not understood may work something: the step after it is not held against what stood before.
func TestStepsAfterOneNotUnderstood(t *testing.T) {
	const leaf = "Terms: US\n\nPiece: Leaf\n1. Ch 9.\n2. Sc in 2nd ch from hook and in next 2 ch. (3 sc)\n"
	for more, over := range map[string]bool{
		"3. Turn, sc in next 5 sts. (5 sc)\n":                    true,
		"3. Dock and grow.\n4. Turn, sc in next 5 sts. (5 sc)\n": false,
	} {
		rows := allRows(worked(leaf + more))
		last := rows[len(rows)-1].Tallies[0]
		assert.Equal(t, over, len(last.Faults) > 0, more)
	}
}
