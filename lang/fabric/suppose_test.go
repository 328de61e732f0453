package fabric_test

import (
	"testing"

	"stitchproof/lang/fabric"
)

// A foundation that is given as a multiple alone is counted over ten repeats where
// the first row fits it, with chains to turn where it is one of stitches. Where no
// number of repeats would fit, the multiple is at fault.
func TestMultiplesAloneAreHeldAgainstTheFirstRow(t *testing.T) {
	const shells = "Row 1: Sc in 2nd ch from hook, *sk next 2 ch, 5 dc in next ch, sk next 2 ch, sc in next ch; rep from * across, turn.\n"
	const ripple = "Row 1: Dc in 4th ch from hook, *dc in next 5 ch, sk next 2 ch, dc in next 5 ch, 3 dc in next ch; rep from * across to last ch, dc in last ch.\n"
	for name, c := range map[string]struct {
		text           string
		supposed, made int // chains, and stitches of the first row; 0 for none
		takes          int // that one repeat takes, where the multiple is at fault
		fault          bool
	}{
		"of chains":                         {"Ch a multiple of 6 + 2.\n" + shells, 62, 61, 0, false},
		"of stitches, with chains to turn":  {"Multiple of 6 + 1.\n" + shells, 62, 61, 0, false},
		"of stitches, with the chains said": {"Work over a multiple of 6 sts + 1 (+ 1 for the base chain).\n" + shells, 62, 61, 0, false},
		"of another length":                 {"Multiple of 5 + 2.\n" + shells, 0, 0, 6, true},
		"of another rest":                   {"Ch a multiple of 6 + 3.\n" + shells, 0, 0, 6, true},
		"of a ripple":                       {"Multiple of 12.\n" + ripple, 0, 0, 13, true},
		"with the number after it":          {"Multiple of 6 + 2.\nCh 26.\n" + shells, 0, 25, 0, false},
		"of a row that is not understood":   {"Multiple of 6 + 2.\nRow 1: Sc in 2nd ch from hook, zigzag across.\n", 0, 0, 0, false},
	} {
		t.Run(name, func(t *testing.T) {
			f := worked("Terms: US\n\nPiece: Runner\n" + c.text)
			var supposed, takes int
			fault := false
			for _, r := range allRows(f) {
				for _, found := range r.Tallies[0].Faults {
					switch found.Kind {
					case fabric.ChainSupposed:
						supposed = found.N
					case fabric.MultipleMismatch:
						fault, takes = true, found.Fits[0]
					default:
						t.Errorf("fault %v", found)
					}
				}
			}
			made := 0
			if rows := rowsOf(f); len(rows) > 0 && rows[0].Tallies[0].Known {
				made = rows[0].Tallies[0].Made
			}
			if supposed != c.supposed || made != c.made || fault != c.fault || takes != c.takes {
				t.Errorf("supposed %d ch, made %d, at fault %t with %d a repeat; want %d, %d, %t, %d", supposed, made, fault, takes, c.supposed, c.made, c.fault, c.takes)
			}
		})
	}
}
