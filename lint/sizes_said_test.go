package lint_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// measured are what a text is told of sizes, and of pieces and counts in its prose.
func measured(text string) []string {
	var out []string
	for _, f := range lint.Analyze(source.New(text)).Findings {
		switch f.Rule {
		case "measure-mismatch", "pieces-mismatch", "count-mismatch":
			out = append(out, f.Message)
		}
	}
	return out
}

// Sizes in a writer's own words are held against the piece that they name, or against all that
// is made; each slip is one number of a text that is right.
func TestSizesSaid(t *testing.T) {
	const (
		gauge = "Gauge: 20 sc and 20 rows = 10 cm\n"
		band  = "\nBAND\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sc)\nRows 2-90: Ch 1, sc in each st across, turn. (8 sc)\nFasten off. Sew Row 90 to the foundation chain.\n"
		twig  = "\nTWIG\nCh 31.\nRow 1: Sl st in 2nd ch from hook and in next 5 ch; branch A: ch 5, sl st in 2nd ch from hook and in each ch of A, return to stem; sl st in each of last 24 ch. (34 sl sts)\nFasten off.\n"
		leaf  = "\nLEAF (make 3)\nCh 21.\nRnd 1: Sc in 2nd ch from hook, hdc in next 18 ch, 3 sc in last ch; working along the other side of the chain, hdc in next 18 ch, sc in last ch; sl st in first sc to join. (41 sts)\nFasten off.\n"
		base  = "\nBASE\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: 2 sc in each st around. (12 sc)\nRnd 3: *Sc in next st, 2 sc in next st; rep from * around. (18 sc)\n" +
			"Rnd 4: *Sc in next 2 sts, 2 sc in next st; rep from * around. (24 sc)\nRnd 5: *Sc in next 3 sts, 2 sc in next st; rep from * around. (30 sc)\nRnds 6-9: Sc in each st around. (30 sc)\nFasten off.\n"
		hat = "Sizes: S (M, L, XL)\nGauge: 20 sc and 20 rows = 10 cm\n"
	)
	hand := func(size string) string {
		return "Hedge mitts\nTerms: US\n" + hat + "Hand circumference: " + size + " cm\n\nHAND\nCh 36 (40, 44, 50), sl st in first ch to form a ring.\n" +
			"Rnd 1: Ch 1, sc in each ch around; sl st in first sc to join. (36 (40, 44, 50) sc)\nRnds 2-20: Ch 1, sc in each st around; sl st in first sc to join. (36 (40, 44, 50) sc)\nFasten off.\n"
	}
	panel := func(size string) string {
		return "Wren filet panel\nTerms: US\nGauge: 5 meshes and 5 rows = 10 cm\nFinished size: " + size + "\n\nSpecial stitches\nMesh: ch 2, sk next 2 sts or next ch-2 sp, dc in next dc.\n" +
			"Block: dc in next 2 sts, dc in next dc; or, over a mesh, 2 dc in next ch-2 sp, dc in next dc.\n\nPANEL\nCh 18.\n" +
			"Row 1: Dc in 4th ch from hook (skipped 3 ch count as dc), dc in each ch across, turn. (16 dc, 5 blocks)\nRow 2: Ch 3 (counts as dc), 1 block, 3 meshes, 1 block, turn. (2 blocks, 3 meshes)\n" +
			"Row 3: Ch 3, 5 blocks, turn. (5 blocks)\nRow 4: Ch 3, 1 block, 3 meshes, 1 block, turn. (2 blocks, 3 meshes)\nRow 5: Ch 3, 5 blocks. (5 blocks)\nFasten off.\n"
	}
	squares := func(one, all, laid string) string {
		return "Terms: US\nOne square = " + one + " cm; blanket " + all + " cm before its edging.\n\nSQUARE - make 24\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off.\n\nJOINING\nLay the squares out " + laid + ".\n"
	}
	rows := func(n, long string) string {
		return "Frost scarf\nTerms: US\n" + gauge + "\nSCARF\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\nRows 2-" + n + ": Ch 1, sc in each st across, turn. (20 sc) Piece measures " + long + " cm.\nFasten off.\n"
	}
	for _, test := range []struct{ name, good, bad, says string }{
		{"round a strip that is joined", "Terms: US\n" + gauge + "Finished size: band 45 cm around and 4 cm wide\n" + band, "Terms: US\n" + gauge + "Finished size: band 56 cm around and 4 cm wide\n" + band, "90 rows at 20 to 10 cm make 45 cm"},
		{"along a stem", "Terms: US\n" + gauge + "Finished size: stem about 15 cm long\n" + twig, "Terms: US\n" + gauge + "Finished size: stem about 27 cm long\n" + twig, "30 sts at 20 to 10 cm make"},
		{"along a chain with rows on both sides", "Terms: US\n" + gauge + "\nMEASUREMENTS\nEach leaf is about 10.5 cm long without its stalk\n" + leaf, "Terms: US\n" + gauge + "\nMEASUREMENTS\nEach leaf is about 14 cm long without its stalk\n" + leaf, "20 sts at 20 to 10 cm make"},
		{"across a round base", "Frost basket\nTerms: US\n" + gauge + "Finished size: 5 cm across\n" + base, "Frost basket\nTerms: US\n" + gauge + "Finished size: 9 cm across\n" + base, "30 sts at 20 to 10 cm make 4.5 cm (1 3/4 in) across"},
		{"one of several sizes", hand("18 (20, 22, 25)"), hand("18 (20, 23.2, 25)"), "size L: says 23 cm (9 1/4 in), and 44 sts at 20 to 10 cm make 22 cm (8 3/4 in), as they do in the other sizes"},
		{"squares of filet", panel("10 x 10 cm"), panel("14 x 10 cm"), "5 squares at 5 to 10 cm make 10 cm"},
		{"squares in rows", squares("12", "48 x 72", "4 across and 6 down"), squares("12", "60 x 72", "4 across and 6 down"), "says 60 cm (23 1/2 in), and 4 of 12 cm (4 3/4 in) in a row make 48 cm"},
		{"a list of pieces that come to what it says", "Terms: US\n" + leaf + "\nPIECES\n  3 leaves, 2 haws, 1 twig: 6 in all.\n\nHAW (make 2)\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off.\n", "Terms: US\n" + leaf + "\nPIECES\n  3 leaves, 2 haws, 1 twig: 7 in all.\n\nHAW (make 2)\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off.\n", "says 7, and the list comes to 6"},
		{"as many squares as are laid out", squares("12", "48 x 72", "4 across and 6 down"), squares("12", "60 x 72", "5 across and 6 down"), "takes 30 of `SQUARE`, and 24 are made"},
		{"behind the rows", rows("40", "20"), rows("40", "26"), "says 26 cm (10 1/4 in), and 40 rows at 20 to 10 cm make 20 cm"},
		{"beside its stitches", "Terms: US\n" + gauge + "Size: 30 sts, about 15 cm long\n" + twig, "Terms: US\n" + gauge + "Size: 30 sts, about 21 cm long\n" + twig, "30 sts at 20 to 10 cm make 15 cm"},
		{"beside its stitches by their name", "Terms: US\n" + gauge + "Size: 30 sc, 15 cm long\n" + twig, "Terms: US\n" + gauge + "Size: 30 sc, 21 cm long\n" + twig, "30 sts at 20 to 10 cm make 15 cm"},
		{"in brackets behind it", "Terms: US\n" + gauge + "Size: length about 15 cm (30 sts)\n" + twig, "Terms: US\n" + gauge + "Size: length about 19 cm (30 sts)\n" + twig, "30 sts at 20 to 10 cm make 15 cm"},
		{"each of some", "Terms: US\n" + leaf + "\nFINISHING\nSew a leaf to the tip of each of the 3 twigs.\n", "Terms: US\n" + leaf + "\nFINISHING\nSew a leaf to the tip of each of the 4 twigs.\n", "takes 4 of `LEAF`, and 3 are made"},
		{"shared out", "Terms: US\n" + leaf + "\nFINISHING\nSew one leaf to the tip of the stem, one to the branch and one to the foot.\n", "Terms: US\n" + leaf + "\nFINISHING\nSew two leaves to the tip of the stem, one to the branch and one to the foot.\n", "takes 4 of `LEAF`, and 3 are made"},
		{"a count told again by its parts", "Terms: US\n" + twig + "\nThe stem has 26 sl sts, the first branch 4 and the second branch 4.\n", "Terms: US\n" + twig + "\nThe stem has 26 sl sts, the first branch 6 and the second branch 4.\n", "makes 36 sl sts in all, and the row above has 34"},
		{"a count multiplied", "Terms: US\n" + twig + "\n17 x 2 = 34 sts.\n", "Terms: US\n" + twig + "\n17 x 3 = 34 sts.\n", "`17 x 3 = 34` is not right: it comes to 51"},
		{"a count added up", "Terms: US\n" + twig + "\n30 + 4 = 34 sts.\n", "Terms: US\n" + twig + "\n30 + 14 = 34 sts.\n", "`30 + 14 = 34` is not right: it comes to 44"},
	} {
		t.Run(test.name, func(t *testing.T) {
			assert.Empty(t, measured(test.good))
			assert.Contains(t, strings.Join(measured(test.bad), "\n"), test.says)
		})
	}
}

// What is not tied to a piece, or may be meant otherwise, is not held against anything.
func TestSizesLeftAlone(t *testing.T) {
	const scarf = "\nSCARF\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\nRows 2-40: Ch 1, sc in each st across, turn. (20 sc)\nFasten off.\n"
	for name, size := range map[string]string{
		"of a body":             "Size: to fit a head of 56 cm around",
		"stretched":             "Size: 60 cm long when stretched",
		"hung below it":         "Size: drops hang 6 cm long",
		"after blocking":        "Size: 60 cm long after blocking",
		"by no way it goes":     "Size: 60 cm",
		"of the yarn":           "Yarn: wool, 60 cm long ends",
		"of what is added":      "Size: fringe 35 cm long",
		"of the material":       "Notions: ribbon, 60 cm long",
		"along a slanting edge": "Size: 60 cm along the top edge",
	} {
		t.Run(name, func(t *testing.T) {
			assert.Empty(t, measured("Frost scarf\nTerms: US\nGauge: 20 sc and 20 rows = 10 cm\n"+size+"\n"+scarf))
		})
	}
	t.Run("rows as long as the maker likes", func(t *testing.T) {
		assert.Empty(t, measured("Frost scarf\nTerms: US\nGauge: 20 sc and 20 rows = 10 cm\nSize: 90 cm long\n"+strings.Replace(scarf, "Rows 2-40: Ch 1, sc in each st across, turn. (20 sc)", "Row 2: Ch 1, sc in each st across, turn. (20 sc)\nRep Row 2 until it is long enough.", 1)))
	})
}
