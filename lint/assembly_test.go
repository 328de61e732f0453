package lint_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// wren is a bird in pieces and what is said of putting it together.
func wren(finishing string) string {
	return `Pattern: Hedge wren
Terms: US

## Head
Rnd 1: 6 sc in magic ring. (6 sc)
Rnd 2: 2 sc in each st around. (12 sc)
Rnds 3-12: Sc in each st around. (12 sc)
Stuff firmly. Fasten off, leaving a long tail for sewing.

## Body
Rnd 1: 6 sc in magic ring. (6 sc)
Rnd 2: 2 sc in each st around. (12 sc)
Rnd 3: [Sc in next st, 2 sc in next st] 6 times. (18 sc)
Rnds 4-18: Sc in each st around. (18 sc)
Rnd 19: [Sc in next st, sc2tog] 6 times. (12 sc)
Rnd 20: Sc2tog 6 times. (6 sc)
Fasten off.

## Right wing
Ch 7.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (6 sc)
Row 2: Ch 1, sc in each st across. (6 sc)
Fasten off, leaving a long tail for sewing.

## Foot (make 2)
Rnd 1: 6 sc in magic ring. (6 sc)
Rnds 2-4: Sc in each st around. (6 sc)
Fasten off, leaving a long tail for sewing.

## Feather (make 10)
Ch 6.
Row 1: Sc in 2nd ch from hook and in each ch across. (5 sc)
Fasten off, leaving a long tail for sewing.

## Panel (make 3)
Ch 9.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (8 sc)
Rows 2-8: Ch 1, sc in each st across; turn. (8 sc)
Fasten off, leaving a long tail for sewing.

## Square 1
Ch 5.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (4 sc)
Rows 2-4: Ch 1, sc in each st across; turn. (4 sc)
Fasten off, leaving a long tail for sewing.

## Square 2
Ch 5.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (4 sc)
Rows 2-4: Ch 1, sc in each st across; turn. (4 sc)
Fasten off, leaving a long tail for sewing.

## Cuff
Ch 6.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (5 sc)
Rows 2-20: Ch 1, sc in each st across; turn. (5 sc)
Do not fasten off. Rotate to work along the row ends.
Rnd 1: Ch 1, sc in each of next 20 row ends; sl st in first sc to join. (20 sc)
Fasten off.

## Finishing
` + finishing + "\n"
}

// What is said of putting pieces together, in the words of many patterns, where all that is
// named is there.
func TestAssemblyOfWhatIsThere(t *testing.T) {
	for _, finishing := range []string{
		"Sew the head to the body.",
		"Sew the right wing to the body between Rnds 6 and 9.",
		"Using the long tail, whipstitch the wing onto the side of the body over Rnds 5-10.",
		"Pin both feet under the body, 4 sts apart, then sew.",
		"Sew the two feet to the bottom of the body.",
		"Attach the feet to Rnd 2 of the body.",
		"Arrange the 10 feathers behind the wing and sew them on.",
		"Sew 4 of the feathers to the right wing and the remaining 6 to the body.",
		"Sew five feathers to each foot.",
		"Place the feathers in two rows of five along the back.",
		"Sew the first panel to the second, and the second to the third.",
		"With wrong sides together, join the third panel to the first along the 8 row ends.",
		"Sew Square 1 to Square 2.",
		"Join square 2 cm above the hem, then square 1 beside it.",
		"Sew the left side of the panel to the right side of the next panel.",
		"Sew the left edge of the cuff to the right edge.",
		"Stitch every third feather to the one beside it.",
		"Weave the tail through the 5 sts of the cuff and pull tight.",
		"Sew along the 20 sts of the cuff.",
		"Pick up yarn and sew through the 6 sts of the last rnd of the foot.",
		"Sew the head on, matching the 12 sts of the head.",
		"Embroider the eyes between Rnds 7 and 8 of the head.",
		"Sew the eyes (or embroider them) at Rnd 8 of the head.",
		"Embroider a beak over Rnds 6\nand 7 of the head.",
		"Sew the side seams. Sew the opening closed.",
		"Sew the crown of the hat to the brim at Rnd 30 of the hat.",
		"Sew a button to the body. Sew the felt tail to the body.",
		"Fold the cuff and sew the short ends together over the 5 sts of Row 20 of the cuff.",
		"Fix the eyes between Rnds 7 and 8, one on each side of the foot.",
		"Sew in all ends. Join the panels in the order shown in the chart, Rows 30-40.",
		"Row by row, sew the panels together.",
		"Sew the head to the body. 12 sts should show below the seam.",
		"Skip the next line if you made no squares. Sew the squares to the panels.",
		"Pin the right wing on at a slant, the upper edge at Rnd. 5 and the lower at Rnd. 9 of the body.",
		"Sew the wing in place as you like it. // allow nothing: sew the left wing to Rnd 40",
	} {
		t.Run(finishing, func(t *testing.T) { assert.Empty(t, assemblyFindings(wren(finishing))) })
	}
}

// The same with something named that is not there.
func TestAssemblyOfWhatIsNotThere(t *testing.T) {
	const named = "Sew the panels, the squares, feathers, feet, right wing and cuff to the body, and the head on top. "
	for finishing, message := range map[string]string{
		"Sew the left wing to the body.":                                            "no piece is called `left wing`",
		"Pin the Left Wing\nopposite the right wing and sew.":                       "no piece is called `left wing`",
		"Whipstitch the fourth panel to the first.":                                 "`fourth panel` is not made: 3 of `Panel` are",
		"Sew Square 2 to Square 3.":                                                 "no piece is called `square 3`",
		"Join panel 5 to panel 1.":                                                  "`panel 5` is not made: 3 of `Panel` are",
		named + "Sew head, ears and feet to the body.":                              "no piece of the pattern makes `ears`",
		named + "Attach the tail to the body at the back.":                          "no piece of the pattern makes `tail`",
		named + "Sew the horns between Rnds 4 and 6 of the head.":                   "no piece of the pattern makes `horns`",
		"Sew the right wing to the body between Rnds 22 and 26.":                    "there is no row or round 26 of the body: the last one is 20",
		"Sew the feet between Rnds 14 and 16 of the head.":                          "there is no row or round 16 of the head: the last one is 12",
		"Sew the feet to the head, between Rnd 11 and Rnd 13, leaving a gap.":       "there is no row or round 13 of the head: the last one is 12",
		"Embroider the eyes between Rnds 14\nand 16 with black.":                    "there is no row or round 16 of the head: the last one is 12",
		"Attach the wing to the body\nat the 24th round.":                           "there is no row or round 24 of the body: the last one is 20",
		"Pin the wing over Rnds 30-34.":                                             "there is no row or round 34: the last one is 20",
		"Sew the 12 feathers around the body.":                                      "takes 12 of `Feather`, and 10 are made",
		"Arrange all eleven of the feathers along the wing and sew.":                "takes 11 of `Feather`, and 10 are made",
		"Sew the three\nfeet to the body.":                                          "takes 3 of `Foot`, and 2 are made",
		"Pin 12 feathers to the wing.":                                              "takes 12 of `Feather`, and 10 are made",
		"Sew 6 feathers to each foot.":                                              "takes 12 of `Feather`, 6 for each of `Foot`, and 10 are made",
		"Lay the feathers out in three rows of four.":                               "takes 12 of `Feather`, and 10 are made",
		"Sew along the 24 sts of the cuff.":                                         "speaks of 24 sts, and no row of `Cuff` has as many: the last has 20",
		"Sew the head to the body, matching the 18 sts of the head.":                "speaks of 18 sts, and no row of `Head` has as many: the last has 12",
		"Graft the head on along the 16 sts of Rnd 19 of the body.":                 "speaks of 16 sts, and there are 12",
		"Weave the tail through the 8 sts of the last rnd of the body, pull tight.": "speaks of 8 sts, and there are 6",
	} {
		t.Run(finishing, func(t *testing.T) { assert.Equal(t, []string{message}, assemblyFindings(wren(finishing))) })
	}
}

// mitt is a tube that leaves stitches for a thumb, and what is done with them.
func mitt(thumb string) string {
	return "Pattern: Stile mitt\nTerms: US\n\n## Mitt\nCh 24; sl st in first ch to join.\nRnd 1: Ch 1, sc in each ch around; sl st in first sc to join. (24 sc)\n" +
		"Rnd 2: Ch 1, sc in next 18 sts, sk next 6 sts; sl st in first sc to join. (18 sc)\nRnd 3: Ch 1, sc in each st around; sl st in first sc to join. (18 sc)\n" + thumb + "\nFasten off.\n"
}

func TestAssemblyOfStitchesLeft(t *testing.T) {
	for thumb, found := range map[string][]string{
		"Sew the 6 free sts to those opposite.":                         nil,
		"Skip the 6 unworked sts and close the gap.":                    nil,
		"Join B in the first of the 6 skipped sts.":                     nil,
		"Weave the tail through the remaining 18 sts.":                  nil,
		"Sew the gap closed, from the 2 free loops on.":                 nil,
		"Skip the 8 free sts and sew the gap closed.":                   {"speaks of 8 sts, and rows leave 6"},
		"Join B in the first of the 5 unworked sts.":                    {"speaks of 5 sts, and rows leave 6"},
		"Sew the 8 skipped sts\nto those opposite.":                     {"speaks of 8 sts, and rows leave 6"},
		"Weave the tail through the remaining 12 sts and pull tight.":   {"speaks of 12 sts, and the last row has 18"},
		"Thread the needle and gather the 6 remaining sts of the mitt.": {"speaks of 6 sts, and the last row has 18"},
	} {
		t.Run(thumb, func(t *testing.T) { assert.Equal(t, found, assemblyFindings(mitt(thumb))) })
	}
}

func assemblyFindings(pattern string) []string {
	var out []string
	for _, f := range lint.Analyze(source.New(pattern)).Findings {
		if f.Rule == "handwork-place" || f.Rule == "pieces-mismatch" {
			out = append(out, f.Message)
		}
	}
	return out
}

// A list of all pieces comes to what it says, and has as many of each as are made.
func TestInventories(t *testing.T) {
	for finishing, found := range map[string][]string{
		"You should have 17 pieces: 1 head, 1 body, 1 wing, 2 feet, 10 feathers and 2 squares.":     nil,
		"You should have 16 pieces: 1 head, 1 body, 1 wing, 2 feet, 10 feathers and 2 squares.":     {"says 16, and the list comes to 17"},
		"You have **15 pieces**: head, body, right wing, 2 feet and 10 feathers.":                   nil,
		"You have **16 pieces**: head, body, right wing, 2 feet and 10 feathers.":                   {"says 16, and the list comes to 15"},
		"That's 1 head, 2 feet and 10 feathers, 13 pieces in all.":                                  nil,
		"That's 1 head, 2 feet and 9 feathers, 12 pieces in all.":                                   {"lists 9 of `Feather`, and 10 are made"},
		"Piece count: 1 Head, 1 Body, 3 Feet, 10 Feathers = 15.":                                    {"lists 3 of `Foot`, and 2 are made"},
		"Check off: 1 head with its stuffing, 1 body, 2 feet, 10 feathers – 14 parts to see.":       nil,
		"Check off: 1 head with its stuffing, 1 body, 2 feet, 10 feathers – 15 parts to see.":       {"says 15, and the list comes to 14"},
		"You have 5 parts: the head, the body, the feet and a wing.":                                nil, // feet are as many as they are
		"Lay out the 3 pieces: they are not sewn yet.":                                              nil,
		"There are 3 parts: work the first in Straw, the second in Moss, and the third in Heather.": nil,
	} {
		t.Run(finishing, func(t *testing.T) { assert.Equal(t, found, assemblyFindings(wren(finishing))) })
	}
}
