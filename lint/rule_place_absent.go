package lint

import (
	"strconv"

	"stitchproof/lang/fabric"
)

var placeAbsent = &Rule{
	Name:     "place-absent",
	Family:   "counts",
	Severity: Error,
	Summary:  "Every stitch, space or marker that is worked into is there.",
	Why: "`In next ch-3 sp` over a row of ch-2 spaces, or `in marked st` where no marker was placed, stops the maker at once. " +
		"What the row below really holds shows which of the two rows has the slip.",
	Bad: `Pattern: Frost edging
Terms: US

Piece: Edging
With A, ch 4, sl st in first ch to form ring.
Rnd 1: Ch 1, [sc in ring, ch 2] 6 times; sl st in first sc to join. (6 sc, 6 ch-2 sps)
Rnd 2: Sl st in next ch-2 sp, ch 1, [3 sc in next ch-3 sp] 6 times; sl st in first sc to join.
Fasten off.
`,
	Good: `Pattern: Frost edging
Terms: US

Piece: Edging
With A, ch 4, sl st in first ch to form ring.
Rnd 1: Ch 1, [sc in ring, ch 2] 6 times; sl st in first sc to join. (6 sc, 6 ch-2 sps)
Rnd 2: Ch 1, [3 sc in next ch-2 sp] 6 times; sl st in first sc to join. (18 sc)
Fasten off.
`,
	Check: checkPlaceAbsent,
}

func checkPlaceAbsent(p *Pass) {
	for _, f := range p.faults(fabric.PlaceAbsent) {
		p.reportFault(f, Finding{Message: "asks for " + quoted(f.Name) + " here, and " + there(f.There)})
	}
}

// there words what is in the stead of a place: the next stitch, what the row
// below is made of, or a number of places named.
func there(found string) string {
	_, err := strconv.Atoi(found)
	switch {
	case found == "":
		return "there is none"
	case err == nil:
		return found + " are named"
	case found[0] >= '0' && found[0] <= '9':
		return "the row below has " + found
	}
	return "the next is " + quoted(found)
}
