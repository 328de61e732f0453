package report

import (
	"math"

	"stitchproof/lang/fabric"
)

// CountStrip is how the shaping of a row bends what is worked along one chain,
// or along the row below.
type CountStrip struct {
	// Of is the name of the branch, or "stem".
	Of string `json:"of"`
	// Along is "chain" or "row".
	Along string `json:"along"`
	// Turn is in degrees, in each size, more than 0 where the work curls towards
	// what it is worked along; nil where it is not known.
	Turn []*int `json:"turn"`
}

// shape lists the strips of a row, those of all sizes by their order.
func shape(row *fabric.Row) []CountStrip {
	out := []CountStrip{}
	for size := range row.Tallies {
		for i, s := range row.Shape(size) {
			if i == len(out) {
				out = append(out, CountStrip{Of: stemName, Along: "row", Turn: make([]*int, len(row.Tallies))})
				if !s.Stem {
					out[i].Of = row.Tree.AsWritten(s.Branch)
				}
				if s.OnChain {
					out[i].Along = "chain"
				}
			}
			if turn := int(math.Round(s.Turn)); s.Known {
				out[i].Turn[size] = &turn
			}
		}
	}
	return out
}
