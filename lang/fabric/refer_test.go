package fabric_test

import (
	"testing"

	"stitchproof/lang/fabric"
)

// What rows can be referred to, and what is said of a name that is none.
func TestReferences(t *testing.T) {
	const foundation = "Terms: US\n\nPiece: Bank\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn.\n"
	const second = "Row 2: Ch 1, sc in each sc across; turn.\n"
	for name, c := range map[string]struct {
		text    string
		unknown bool
	}{
		"a row that a fault kept from being worked": {foundation + second + "Rows 3-5: Ch 1, sc in next 14 sc; turn.\nRow 6: Same as 5th row.\n", false},
		"a row before the numbers begin anew":       {"Terms: US\n\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn.\n" + second + "Row 3: Ch 1, hdc in each sc across; turn.\nRow 1: Ch 1, sc in each hdc across; turn.\nRow 2: Work as the 3rd row.\n", false},
		"a row of a piece with another heading":     {foundation + second + "Row 3: Ch 1, sc in each sc across; turn.\n\nPiece: Hedge\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn.\nRow 2: Repeat Row 3.\n", true},
		"a row that is not there":                   {foundation + second + "Row 3: Repeat Row 7.\n", true},
		"a piece that is not there":                 {foundation + "Row 2: Work as for Ditch.\n", true},
		"words that go on and may be no name":       {foundation + "Row 2: Repeat these 3 green twigs 3 times more.\n", false},
	} {
		t.Run(name, func(t *testing.T) {
			found := false
			for _, r := range allRows(worked(c.text)) {
				for _, f := range r.Tallies[0].Faults {
					found = found || f.Kind == fabric.RowUnknown
				}
			}
			if found != c.unknown {
				t.Errorf("told as unknown: %t, want %t", found, c.unknown)
			}
		})
	}
}
