package lint_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

const (
	mat = `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
`
	disc = `Pattern: Acorn
Terms: US

Piece: Acorn
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
`
	// turnedMat turns where its rows begin.
	turnedMat = "Terms: US\n\nWith A, ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across. (12 sc)\n" +
		"Row 2: Ch 1, turn, sc in each st across. (12 sc)\nRow 3: Ch 1, turn, sc in each st across. (12 sc)\n"

	plainRow = "Ch 1, sc in each st across; turn. (12 sc)\n"
	lostRow  = "Row 2: Ch 1, hedge in each st across; turn.\n" // nobody can count it
	tall2    = "Row 2: Ch 3, sk first st, dc in each st across; turn. (12 dc)\n"
	tall3    = "Row 3: Ch 3, sk first st, dc in each st across; turn. (12 dc)\n"
	head     = "Pattern: Dormouse\nTerms: US\n\nPiece: Head\nRnd 1: 6 sc in magic ring. (6 sc)\nRnds 2-9: Sc in each st around. (6 sc)\n"
	ring     = "Pattern: Mat\nTerms: US\n\nPiece: Mat\nCh 6, sl st in first ch to form ring.\nRnd 1: "
	twigs    = "Pattern: Twig\nTerms: US\n\nPiece: Twig\nCh 13.\nRow 1: Sc in 2nd ch from hook and in next 5 ch, branch A: ch 8, sc in 2nd ch from hook and in next 6 ch, return to stem, sc in next 6 ch. (19 sc)\nFasten off.\n"
	plainRnd = "Ch 1, sc in each st around; sl st in first sc to join. (12 sc)\n"
)

const (
	gradedHead = "Pattern: Hedge mitten\nTerms: US\nSizes: S (M, L, XL)\n\nPiece: Cuff\n"
	gradedRow  = "Row 1 (RS): Sc in 2nd ch from hook and in each ch across; turn. (20 (22, 24, 26) sc)\n"
	gradedNext = "Ch 1, sc in each st across; turn. (20 (22, 24, 26) sc)\n"
)

// leaves is a leaf that is made four times, and what is done with it.
func leaves(more string) string {
	return "Pattern: Hawthorn twig\nTerms: US\n\nPiece: Leaf (make 4)\nWith A, ch 5.\nRow 1: Sc in 2nd ch from hook and in each ch across. (4 sc)\n" +
		"Fasten off, leaving a long tail for sewing. " + more + "\n"
}

// square is a round of a square whose count stands behind its end.
func square(count string) string {
	return "Pattern: Hedge square\nTerms: US\n\nPiece: Square\nCh 4, sl st in first ch to form a ring.\nRnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times, " +
		"join with sl st in top of beg ch-3. Fasten off. " + count + "\n"
}

// stem is a stem that is chained in two steps, and how many chains the second says that it has.
func stem(chains string) string {
	return "Pattern: Twig\nTerms: US\n\nPiece: Twig\nStep 1: Ch 8. (8 stem ch)\nStep 2 (Branch A): Ch 6, sl st in 2nd ch from hook and in next 4 ch. (5 sl sts)\n" +
		"Step 3: Ch 6. (" + chains + " stem ch)\nStep 4: Sc in 2nd ch from hook and in next 4 ch, sc in each of next 8 ch. (13 sc)\nFasten off.\n"
}

// step is a stem worked in steps, one of which says how many chains are left for another, around a bud.
func step(left, asked int) string {
	return fmt.Sprintf("Pattern: Twig\nTerms: US\n\nPiece: Twig\n1. Ch 18.\n2. Sl st in 2nd ch from hook and in next 5 ch (%d ch left).\n3. Bud: ch 3, sl st in 2nd ch from hook and next ch. Back to the stem.\n"+
		"4. Sl st in next %d ch.\nFasten off.\n", left, asked)
}

// Wordings that a rule might take for a slip and that are none, and beside
// them the nearest ones that are.
func TestWhereRulesAreSilent(t *testing.T) {
	tests := []struct {
		name, rule, pattern string
		found               int
	}{
		{"eyes beyond the head", "handwork-place", head + "Set the eyes between Rnds 18 and 19, 4 sts apart.\nFasten off.\n", 1},
		{"eyes on the head", "handwork-place", head + "Set the eyes between Rnds 8 and 9, 4 sts apart.\nFasten off.\n", 0},
		{"eyes on a head of rounds without numbers", "handwork-place", head + "Rep Rnd 9 until head measures 9 cm.\nSet the eyes between Rnds 18 and 19.\nFasten off.\n", 0},
		{"more rows said than there are", "row-order", mat + "Row 2: " + plainRow + "Rep Row 2 five times. (9 rows)\nFasten off.\n", 1},
		{"as many rows said as there are", "row-order", mat + "Row 2: " + plainRow + "Rep Row 2 five times. (7 rows)\nFasten off.\n", 0},
		{"as many rows said as are worked again", "row-order", mat + "Row 2: " + plainRow + "Rep Row 2 five times. (5 rows)\nFasten off.\n", 0},
		{"fewer rounds said than the label numbers", "row-order", strings.Replace(head, "Sc in each st around. (6 sc)\n", "Sc in each st around (7 rnds). (6 sc)\n", 1) + "Fasten off.\n", 1},
		{"fewer rounds said in the label than it numbers", "row-order", strings.Replace(head, "Rnds 2-9:", "Rnds 2-9 (7 rnds):", 1) + "Fasten off.\n", 1},
		{"as many rounds said as the label numbers", "row-order", strings.Replace(head, "Rnds 2-9: Sc in each st around. (6 sc)\n", "Rnds 2-9 (8 rnds): Sc in each st around, 8 rnds. (6 sc)\n", 1) + "Fasten off.\n", 0},
		{"as many rounds said as there are with the first", "row-order", strings.Replace(head, "Sc in each st around. (6 sc)\n", "Sc in each st around. (6 sc) (9 rnds)\n", 1) + "Fasten off.\n", 0},
		{"a stem that is gone on with by its name", "branch-unreturned", "Terms: US\n\nPiece: Spray\nMain stem: ch 30.\nBranch 1: ch 8, sl st in 2nd ch from hook and in next 6 ch. (7 sl sts)\nMain stem: ch 6.\nBranch 2: ch 8, sl st in 2nd ch from hook and in next 6 ch. (7 sl sts)\nStem tip: ch 4, sl st in 2nd ch from hook and in next 2 ch. (3 sl sts)\nSl st in each of next 36 ch. (39 sl sts)\nFasten off.\n", 0},
		{"as many rows said as the label numbers, behind a count", "row-over", mat + "Rows 2-9: Ch 1, sc in each st across; turn. (12 sc) (8 rows)\nFasten off.\n", 0},
		{"a line that only leads to where a shoulder begins", "count-missing", mat + "Row 2: " + plainRow + "Row 3: Ch 1, sc in next 4 sts; turn. (4 sc)\nFasten off.\nLeft shoulder: skip next 4 sts of Row 2, join yarn in next st.\nRow 3: Ch 1, sc in each of 4 sts. (4 sc)\nFasten off.\n", 0},
		{"rows of each colour among those of the label", "row-order", mat + "Rows 2-9: Rep Row 1, working 2 rows with each color in turn. (12 sc)\nFasten off.\n", 0},
		{"a shoulder begun in a part of the row", "row-short", mat + "Shape right shoulder: Next row: Ch 1, sc in first 5 sts, turn.\nNext row: Ch 1, sc2tog, sc in each st across. (4 sc)\nFasten off.\n", 0},
		{"a part of the row, the rest of which is gone on with in a piece of its own", "row-short", mat + "Row 2: " + plainRow + "Row 3: " + plainRow + "Row 4: Ch 1, sc in first 4 sts, turn. (4 sc)\nFasten off.\n\nPiece: Second Side\nRow 5: Skip next 3 sts, join yarn in next st, ch 1, sc in same st, sc in next 4 sts. (5 sc)\nFasten off.\n", 1},
		{"a part of the row, and no word why", "row-short", mat + "Next row: Ch 1, sc in first 5 sts, turn.\nNext row: Ch 1, sc2tog, sc in each st across. (4 sc)\nFasten off.\n", 1},
		{"chains that a count takes for stitches, in a row as long as the one below", "count-mismatch", mat + "Row 2: Ch 1, sc in first 2 sts, *ch 1, sk next st, sc in next st; rep from * across; turn. (12 sts)\n" +
			"Row 3: Ch 1, sc in first st, *sc in next ch-1 sp, ch 1, sk next st; rep from * to last 3 sts, sc in next ch-1 sp, sc in last 2 sts; turn. (12 sts)\nFasten off.\n", 0},
		{"one stitch more than stitches and chains", "count-mismatch", mat + "Row 2: Ch 1, sc in first 2 sts, *ch 1, sk next st, sc in next st; rep from * across; turn. (13 sts)\nFasten off.\n", 1},
		{"a count that says it takes chains for stitches", "count-mismatch", mat + "Row 2: Ch 1, sc in first 3 sts, ch 2, sk next 4 sts, sc in last 5 sts; turn. 10 sts, counting each ch as a st.\nFasten off.\n", 0},
		{"a wrong count that says it takes chains for stitches", "count-mismatch", mat + "Row 2: Ch 1, sc in first 3 sts, ch 2, sk next 4 sts, sc in last 5 sts; turn. 11 sts, counting each ch as a st.\nFasten off.\n", 1},
		{"how many stand on each side, beside the count", "count-mismatch", square("(12 dc, 3 on each side; 4 ch-2 corner sps)"), 0},
		{"a wrong count beside how many stand on each side", "count-mismatch", square("(13 dc, 3 on each side; 4 ch-2 corner sps)"), 1},
		{"a strap of what is no toy", "cord-length", "Pattern: Forage bag\nTerms: US\n\nPiece: Strap\nCh 150.\nRow 1: Sl st in 2nd ch from hook and in each ch across. (149 sl sts)\nFasten off.\n\nNot a toy. Keep the strap away from babies.\n", 0},
		{"a strap of a toy", "cord-length", "Pattern: Toy bag\nTerms: US\n\nPiece: Strap\nCh 150.\nRow 1: Sl st in 2nd ch from hook and in each ch across. (149 sl sts)\nFasten off.\n", 1},
		{"stitches left without a word, and skipped in the row above them", "row-short", mat + "Row 2: Ch 1, sc in next 9 sts. (9 sc)\nRow 3: Ch 1, turn, sc in each st across. (9 sc)\nFasten off.\n" +
			"Row 4: Skip next 2 sts, join yarn in next st, ch 1, sc in same st, sc in next 3 sts, leave remaining 3 sts unworked. (4 sc)\nFasten off.\n", 1},
		{"an arm closed through both of its layers", "count-mismatch", head + "Fold flat and sc through both layers across. (3 sc)\nFasten off.\n", 0},
		{"an arm closed in each stitch through both layers", "count-mismatch", head + "Flatten the opening and sc in each st across through both layers. (3 sc)\nFasten off.\n", 0},
		{"fewer stitches through both layers than are said", "count-mismatch", head + "Fold flat and sc in each of next 2 sts through both sides. (3 sc)\nFasten off.\n", 1},
		{"as many stitches through both layers as are said", "count-mismatch", head + "Fold flat and sc in each of next 3 sts through both sides. (3 sc)\nFasten off.\n", 0},
		{"other chains said than are laid", "count-mismatch", strings.Replace(mat, "ch 13.", "ch 13. (12 ch)", 1), 1},
		{"as many chains said as are laid", "count-mismatch", strings.Replace(mat, "ch 13.", "ch 13. (13 ch)", 1), 0},
		{"chains said that are not laid, in one of two sizes", "count-mismatch", gradedHead + "Ch 21 (23, 25, 27). (21 (23, 26, 27) ch)\n" + gradedRow, 1},
		{"other chains of a stem said than two steps lay", "count-mismatch", stem("16"), 1},
		{"as many chains of a stem said as two steps lay", "count-mismatch", stem("14"), 0},
		{"one chain of a stem less said than two steps lay, from which it grows on", "count-mismatch", strings.Replace(stem("13"), "Step 4: Sc", "Step 4: Ch 3. (17 stem ch)\nStep 5: Sc", 1), 1},
		{"a chain to turn with left out of those of a stem", "count-mismatch", stem("13"), 0},
		{"more stitches of a round said than it has, by its letter", "handwork-place", head + "Fasten off.\n\nPiece: Tail\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off. Sew the tail to the 8 sts of R9 of the head.\n", 1},
		{"as many stitches of a round said as it has, by its letter", "handwork-place", head + "Fasten off.\n\nPiece: Tail\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off. Sew the tail to the 6 sts of R9 of the head.\n", 0},
		{"a number that comes twice, of which one says what is made there", "row-order", mat + "Row 3: " + plainRow + "Row 3 (thumb opening): " + plainRow + "Fasten off.\n", 1},
		{"two readings of a number", "row-order", mat + "Row 3 (large): " + plainRow + "Row 3 (small): " + plainRow + "Fasten off.\n", 0},
		{"a round numbered like the next, and like a step", "row-order", "Pattern: Spray\nTerms: US\n\nPiece: Spray\n1. Ch 6.\n2. Sc in 2nd ch from hook and in each ch across. (5 sc)\n3. Ch 1, turn, sc in each st across. (5 sc)\nFasten off.\nRnd 1: 6 sc in magic ring. (6)\nRnd 3: Sc in each st around. (6)\nRnd 3: Sc in each st around. (6)\nFasten off.\n", 1},
		{"fewer gusset stitches missed than there are", "row-short", disc + "Rnd 3: Ch 1, sc in next 4 sts, ch 1, skip the 3 thumb sts, sc in last 4 sts; sl st in first sc to join. (8 sc)\nFasten off.\n", 1},
		{"as many gusset stitches missed as there are", "row-short", disc + "Rnd 3: Ch 1, sc in next 4 sts, ch 1, skip the 4 thumb sts, sc in last 4 sts; sl st in first sc to join. (8 sc)\nFasten off.\n", 0},
		{"a round that closes before words that nobody understands", "place-absent", disc + "Rnd 3: Ch 1, sc in each st around; sl st in first sc. Bramble the hedgings quite merrily. (12 sc)\nFasten off.\n", 0},
		{"a stitch asked for before words that nobody understands", "place-absent", disc + "Rnd 3: Ch 1, sc in each st around; sl st in next dc. Bramble the hedgings quite merrily. (12 sc)\nFasten off.\n", 1},
		{"the last row on to a row that is to come", "reference-unknown", mat + "Row 2: " + plainRow + "Repeat Row 2 through Row 12.\nFasten off.\n", 0},
		{"rows of which some are to come", "reference-unknown", mat + "Row 2: " + plainRow + "Repeat Rows 2-12.\nFasten off.\n", 1},
		{"rows of which some are to come, from one before the last", "reference-unknown", mat + "Row 2: " + plainRow + "Repeat Row 1 through Row 12.\nFasten off.\n", 1},
		{"chains of a branch that are left", "row-short", strings.Replace(twigs, "in next 6 ch, return", "in next 2 ch (4 ch left), branch B: ch 3, sl st in 2nd ch from hook and in next ch, return to branch A, sc in next 4 ch, return", 1), 0},
		{"other chains of a branch said than are left", "row-short", strings.Replace(twigs, "in next 6 ch, return", "in next 2 ch (5 ch left), branch B: ch 3, sl st in 2nd ch from hook and in next ch, return to branch A, sc in next 4 ch, return", 1), 1},
		{"chains that are left", "row-short", strings.Replace(mat, "each ch across; turn. (12 sc)", "next 9 ch; 2 ch are left", 1), 0},
		{"other chains said than are left", "row-short", strings.Replace(mat, "each ch across; turn. (12 sc)", "next 9 ch; 3 ch are left", 1), 1},
		{"chains that are left are no count", "count-mismatch", strings.Replace(mat, "each ch across; turn. (12 sc)", "next 9 ch (2 ch left)", 1), 0},
		{"a ring around one chain, under no label", "count-mismatch", "Terms: US\n\nPiece: Ear\nCh 2, 7 sc in 2nd ch from hook, sl st in first sc. (7 sc)\nFasten off.\n", 0},
		{"a wrong count of a ring around one chain, under no label", "count-mismatch", "Terms: US\n\nPiece: Ear\nCh 2, 7 sc in 2nd ch from hook, sl st in first sc. (8 sc)\nFasten off.\n", 1},
		{"chains left in a step before a branch", "stem-exhausted", step(11, 11), 0},
		{"other chains said than are left in a step before a branch", "row-short", step(12, 11), 1},
		{"more chains asked for than a step has left", "stem-exhausted", step(11, 12), 1},
		{"stitches made and chains left in one", "count-mismatch", strings.Replace(step(11, 11), "(11 ch left)", "(6 sl sts, 11 ch left)", 1), 0},
		{"rows in turn on to a row that is to come", "reference-unknown", mat + "Row 2: " + plainRow + "Row 3: " + plainRow + "Repeat Rows 2 and 3 through Row 7.\nRow 8: " + plainRow + "Fasten off.\n", 0},
		{"a ring around the last of some chains, closed at the top of those skipped", "place-absent", "Terms: US\n\nPiece: Ear\nCh 4, 11 dc in 4th ch from hook (skipped 3 ch count as dc), sl st in top of ch-3. (12 dc)\nFasten off.\n", 0},
		{"a ring around the last of some chains, closed at the top of more", "place-absent", "Terms: US\n\nPiece: Ear\nCh 4, 11 dc in 4th ch from hook (skipped 3 ch count as dc), sl st in top of ch-5. (12 dc)\nFasten off.\n", 1},
		{"what a chain stands for, between dashes", "count-mismatch", "Terms: UK\n\nPiece: Square\nMake a ring of 4 ch.\nRnd 1: 3 ch – this is the first tr – 2 tr in ring, 2 ch, (3 tr, 2 ch) 3 times in ring; ss in top of 3 ch. (12 tr, 4 ch-2 sps)\nFasten off.\n", 0},
		{"a row lost before rows of each size", "row-order", strings.Replace(mat, "Terms: US\n", "Terms: US\nSizes: S (L)\n", 1) + "Row 2: " + plainRow + "Rows 4-8 (10): " + plainRow + "Fasten off.\n", 1},
		{"rows of each size that go on", "row-order", strings.Replace(mat, "Terms: US\n", "Terms: US\nSizes: S (L)\n", 1) + "Row 2: " + plainRow + "Rows 3-8 (10): " + plainRow + "Fasten off.\n", 0},
		{"a turn lost before rows that turn again and again", "turn-missing", strings.Replace(mat, "; turn. (12 sc)", ". (12 sc)", 1) + "Row 2: " + plainRow + "Rows 3-8: Rep Row 2.\nFasten off.\n", 1},
		{"a yarn whose letter only a branch has", "yarn-unused", strings.NewReplacer("Terms: US\n", "Terms: US\nYarn C: bark, dk (3), 10 m\nYarn B: moss, dk (3), 10 m\n", "Ch 13.", "With C, ch 13.", "return to stem, sc in next 6 ch. (19 sc)", "return to stem, branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, return to stem, sc in next 6 ch. (22 sc)").Replace(twigs) + "Sew a leaf to the tips of branches A and B.\n", 1},
		{"a round lost at a heading", "row-order", head + "\nPiece: Neck\nRnd 11: Sc in each st around. (6 sc)\nFasten off.\n", 1},
		{"rounds that go on under a heading", "row-order", head + "\nPiece: Neck\nRnd 10: Sc in each st around. (6 sc)\nFasten off.\n", 0},
		{"numbers of another piece under a heading", "row-order", head + "Fasten off.\n\nPiece: Ear\nRnd 21: Sc in each st around. (6 sc)\nFasten off.\n", 0},
		{"a branch that is not there, in a list", "handwork-place", twigs + "Sew a leaf to the tips of branches A and B.\n", 1},
		{"a branch that is not there, under a heading of its own", "handwork-place", twigs + "\nFINISHING\nSew a leaf to the tips of branches A, B and C.\n", 2},
		{"branches that are there, in a list", "handwork-place", strings.Replace(twigs, "sc in next 6 ch. (19 sc)", "branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, return to stem, sc in next 6 ch. (22 sc)", 1) + "Sew a leaf to the tips of branches A and B.\n", 0},
		{"eyes at a row, and a nose on another piece", "handwork-place", head + "Fasten off.\n\nMUZZLE\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off.\n\nMAKING UP\nSew the muzzle to the head. Embroider the eyes level with Rnd 8 and a nose at Rnd 1 of the muzzle.\n", 0},
		{"eyes beyond the head, and a nose on another piece", "handwork-place", head + "Fasten off.\n\nMUZZLE\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off.\n\nMAKING UP\nSew the muzzle to the head. Embroider the eyes level with Rnd 18 and a nose at Rnd 1 of the muzzle.\n", 1},
		{"rows of one piece in a list", "handwork-place", head + "Fasten off.\n\nTAIL\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off.\n\nMAKING UP\nSew the tail over Rnds 1 and 12 of the head.\n", 1},
		{"slip stitches of a seam", "count-mismatch", mat + "Repeat Row 1 until there are 8 rows. Hold the last row against the foundation ch and join with sl st, taking one stitch from each edge (12 sl sts). Fasten off.\n", 0},
		{"as many pieces as are made in two yarns", "pieces-mismatch", "Terms: US\n\nSquare (make 24 with A and 24 with B for Rnd 1)\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off.\n\nJOINING\nLay the squares out 6 across and 8 down.\n", 0},
		{"fewer pieces than are laid out, made in two yarns", "pieces-mismatch", "Terms: US\n\nSquare (make 24 with A and 20 with B for Rnd 1)\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off.\n\nJOINING\nLay the squares out 6 across and 8 down.\n", 1},
		{"an abbreviation that is listed, in the plural", "abbreviation-unknown", "Terms: US\n\nAbbreviations\nblk = block; ch = chain; dc = double crochet; sp = open space\n\nPiece: Panel\nCh 18.\nRow 1: 3 blks, 2 sp, turn.\nFasten off.\n", 0},
		{"one that is not listed, in the plural", "abbreviation-unknown", "Terms: US\n\nAbbreviations\nbk = block; ch = chain; dc = double crochet; sp = open space\n\nPiece: Panel\nCh 18.\nRow 1: 3 blks, 2 sp, turn.\nFasten off.\n", 1},
		{"sewn beyond the body", "handwork-place", head + "Fasten off.\n\nPiece: Tail\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off. Sew the tail to Rnd 12 of the head.\n", 1},
		{"sewn on the body", "handwork-place", head + "Fasten off.\n\nPiece: Tail\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off. Sew the tail to Rnd 7 of the head.\n", 0},
		{"sewn on a body that is not here", "handwork-place", head + "Fasten off. Sew the head to Rnd 12 of the body.\n", 0},
		{"a loop on a row that is not there", "handwork-place", mat + "Fasten off.\n\nPiece: Loop\nCh 12, sl st in last sc of Row 35.\nFasten off.\n", 1},
		{"a loop on the last row", "handwork-place", mat + "Fasten off.\n\nPiece: Loop\nCh 12, sl st in last sc of Row 1.\nFasten off.\n", 0},
		{"a branch that is not there", "handwork-place", twigs + "Join B with sl st in tip of branch Q, ch 3. Fasten off.\n", 1},
		{"a branch that is there", "handwork-place", twigs + "Join B with sl st in tip of branch A, ch 3. Fasten off.\n", 0},
		{"a stitch beyond the branch", "handwork-place", twigs + "Join B with sl st in 12th st of branch A, ch 3. Fasten off.\n", 1},
		{"a stitch of the branch", "handwork-place", twigs + "Join B with sl st in 5th st of branch A, ch 3. Fasten off.\n", 0},
		{"fewer left than are said", "row-short", mat + "Row 2: Ch 1, sc in next 8 sts, turn, leaving remaining 3 sts unworked. (8 sc)\nFasten off.\n", 1},
		{"as many left as are said", "row-short", mat + "Row 2: Ch 1, sc in next 8 sts, turn, leaving remaining 4 sts unworked. (8 sc)\nFasten off.\n", 0},
		{"the last of those left", "row-short", mat + "Row 2: Sl st in first 3 sts, ch 1, sc in same st, sc in each st to last 2 sts, turn, leaving last 2 sts unworked. (8 sc)\nFasten off.\n", 0},
		{"left of groups and spaces", "row-short", mat + "Row 2: Ch 1, sc in first st, [ch 1, sk next st, sc in next st] 5 times, sc in last st; turn. (7 sc, 5 ch-1 sps)\nRow 3: Ch 1, sc in next 5 sts and sps, leave remaining 7 sts unworked. (5 sc)\nFasten off.\n", 0},
		{"a longer chain than it began with", "place-absent", ring + "Ch 5 (counts as dc and ch 2), [dc in ring, ch 2] 7 times; sl st in 4th ch of beg ch-6 to join. (8 dc, 8 ch-2 sps)\nFasten off.\n", 1},
		{"the chain that it began with", "place-absent", ring + "Ch 5 (counts as dc and ch 2), [dc in ring, ch 2] 7 times; sl st in 3rd ch of beg ch-5 to join. (8 dc, 8 ch-2 sps)\nFasten off.\n", 0},
		{"the stitch that it stands for", "place-absent", ring + "Ch 5 (counts as dc and ch 2), [dc in ring, ch 2] 7 times; sl st in top of beg ch-3 to join. (8 dc, 8 ch-2 sps)\nFasten off.\n", 0},
		{"a chain of two parts", "place-absent", ring + "Ch 3, ch 2, [dc in ring, ch 2] 7 times; sl st in 3rd ch of beg ch-5 to join. (8 dc, 8 ch-2 sps)\nFasten off.\n", 0},
		{"a chain after the ring", "place-absent", "Pattern: Mat\nTerms: US\n\nPiece: Mat\nRnd 1: Ch 6, sl st in first ch to form ring, ch 3 (counts as dc), 11 dc in ring; sl st in top of ch-3 to join. (12 dc)\nFasten off.\n", 0},
		{"the chain of the row below", "place-absent", mat + "Row 2: Ch 3 (counts as dc), sk first st, dc in next 11 sts; turn. (12 dc)\nRow 3: Ch 3 (counts as dc), sk first st, dc in next 10 sts, dc in top of turning ch-3; turn. (12 dc)\nFasten off.\n", 0},
		{"another chain of the row below", "place-absent", mat + "Row 2: Ch 3 (counts as dc), sk first st, dc in next 11 sts; turn. (12 dc)\nRow 3: Ch 3 (counts as dc), sk first st, dc in next 10 sts, dc in top of turning ch-4; turn. (12 dc)\nFasten off.\n", 1},
		{"a gap", "row-order", mat + "Row 2: " + plainRow + "Row 4: " + plainRow + "Row 5: " + plainRow + "Fasten off.\n", 1},
		{"repeated at the end of a numbered row", "row-order", mat + "Row 2: " + plainRow + "Row 3: Ch 1, sc in each st across; turn. Rep last 2 rows 3 times.\nRow 10: " + plainRow + "Row 11: " + plainRow + "Fasten off.\n", 0},
		{"two gaps", "row-order", mat + "Row 2: " + plainRow + "Row 4: " + plainRow + "Row 5: " + plainRow + "Row 7: " + plainRow + "Fasten off.\n", 2},
		{"two gaps between runs", "row-order", mat + "Rows 3-5: " + plainRow + "Row 7: " + plainRow + "Fasten off.\n", 2},
		{"odd numbers", "row-order", mat + "Row 3: " + plainRow + "Row 5: " + plainRow + "Row 7: " + plainRow + "Fasten off.\n", 0},
		{"two rows that changed places", "row-order", mat + "Row 2: " + plainRow + "Row 4: " + plainRow + "Row 3: " + plainRow + "Row 5: " + plainRow + "Fasten off.\n", 1},
		{"two rows that changed places at first", "row-order", mat + "Row 3: " + plainRow + "Row 2: " + plainRow + "Row 4: " + plainRow + "Row 5: " + plainRow + "Fasten off.\n", 1},
		{"a row far from its place", "row-order", mat + "Row 3: " + plainRow + "Row 4: " + plainRow + "Row 5: " + plainRow + "Row 2: " + plainRow + "Row 6: " + plainRow + "Fasten off.\n", 1},
		{"fewer times than numbers", "row-order", mat + "Row 2: " + plainRow + "Row 3: " + plainRow + "Rows 4-61: Rep Rows 2 and 3 28 times.\nFasten off.\n", 1},
		{"as many times as numbers", "row-order", mat + "Row 2: " + plainRow + "Row 3: " + plainRow + "Rows 4-61: Rep Rows 2 and 3 29 times.\nFasten off.\n", 0},
		{"a row of a repeat more", "row-order", mat + "Row 2: " + plainRow + "Row 3: " + plainRow + "Rows 4-8: Rep Rows 2 and 3.\nFasten off.\n", 0},
		{"times in all", "row-order", mat + "Row 2: " + plainRow + "Row 3: " + plainRow + "Rows 4-61: Rep Rows 2 and 3 until there are 61 rows in all.\nFasten off.\n", 0},
		{"one number for all the times", "row-order", mat + "Row 2: " + plainRow + "Row 3: Rep Row 2 four times.\nFasten off.\n", 0},
		{"other rows than numbers", "row-order", mat + "Rows 2-7: Ch 1, sc in each st across for 5 rows; turn.\nFasten off.\n", 1},
		{"times by size", "row-order", "Sizes: S (M)\n" + mat + "Row 2: " + plainRow + "Rows 3-8 (10): Rep Row 2 6 (7) times.\nFasten off.\n", 1},
		{"a gap before rows that end by size", "row-order", "Sizes: S (M)\n" + mat + "Row 2: " + plainRow + "Row 4: " + plainRow + "Rows 5-9 (11): " + plainRow + "Fasten off.\n", 1},
		{"a gap in one size", "row-order", "Sizes: S (M, L)\n" + mat + "Row 2: " + plainRow + "Rows 3-9 (11, 13): " + plainRow + "Row 10 (12, 15): " + plainRow + "Fasten off.\n", 1},
		{"run on in every size", "row-order", "Sizes: S (M, L)\n" + mat + "Row 2: " + plainRow + "Rows 3-9 (11, 13): " + plainRow + "Row 10 (12, 14): " + plainRow + "Fasten off.\n", 0},
		{"numbers one by one", "row-order", "Sizes: S (L)\n" + mat + "Row 2: " + plainRow + "3rd, 4th (5th, 6th) rows: " + plainRow + "5th (7th) row: " + plainRow + "Fasten off.\n", 0},
		{"left out in a size", "row-order", "Sizes: S (M, L)\n" + mat + "Row 2: " + plainRow + "Rows 3-2 (4, 6): " + plainRow + "Row 3 (5, 7): " + plainRow + "Fasten off.\n", 0},
		{"counted anew in every size", "row-order", "Sizes: S (M, L)\n" + mat + "Row 2: " + plainRow + "Rows 3-9 (11, 13): " + plainRow + "Rows 1-4 (5, 6): " + plainRow + "Fasten off.\n", 0},
		{"odd rows said elsewhere", "row-order", mat + "Row 2: " + plainRow + "Rep Row 2 for all odd rows.\nRow 4: " + plainRow + "Row 6: " + plainRow + "Fasten off.\n", 0},
		{"even rows in one label", "row-order", mat + "Row 2 and all even rows: " + plainRow + "Row 3: " + plainRow + "Row 5: " + plainRow + "Row 9: " + plainRow + "Fasten off.\n", 0},
		{"rows by kind", "row-order", mat + "Row 2: " + plainRow + "Rows 3, 5 and 7: " + plainRow + "Rows 4 and 6: " + plainRow + "Fasten off.\n", 0},
		{"repeated until a length", "row-order", mat + "Row 2: " + plainRow + "Rep Row 2 until piece measures 10 cm.\nRow 40: " + plainRow + "Fasten off.\n", 0},
		{"rounds after rows", "row-order", mat + "Row 2: " + plainRow + "Rnd 1: " + plainRnd + "Rnd 2: " + plainRnd + "Fasten off.\n", 0},
		{"going on from another number", "row-order", mat + "Fasten off.\nJoin B with sl st in first st.\nRow 9: " + plainRow + "Row 10: " + plainRow + "Fasten off.\n", 0},

		{"an odd stitch", "repeat-remainder", mat + "Row 2: [Sc in next 4 sts, 2 sc in next st] across; turn.\nFasten off.\n", 1},
		{"an odd stitch, and what to do with it", "repeat-remainder", mat + "Row 2: [Sc in next 4 sts, 2 sc in next st] across; turn. If you are left with an odd stitch, put a sc in it.\nFasten off.\n", 0},

		{"a join in words that are not understood", "marker-missing", "Terms: US\nCh 4; join.\nRnd 1: Ch 3, 11 dc in rng, sl st top of ch 3. (12 dc)\nRnd 2: 2 dc in each st around. (24 dc)\nRnd 3: Dc in each st around. (24 dc)\nRnd 4: Sc in each st around. (24 sc)\nFasten off.\n", 0},

		{"round one post", "row-short", mat + "Row 2: Ch 1, (3 sc, hdc, 3 sc) around post of next st; turn.\nFasten off.\n", 0},
		{"a word that is misspelt along a branch", "branch-chain-left", mat + "Row 2: Ch 1, sc in next 6 sts, branch A: ch 6, sc in 2nd ch from hook, csd in next 4 ch, return to row, sc in next 6 sts.\nFasten off.\n", 0},
		{"a branch at its foot", "branch-at-tip", mat + "Row 2: Ch 1, sc in next 6 sts, branch A: ch 6, sc in 2nd ch from hook and in next 4 ch, turn, sc in next 5 sts, turn, sc in next 5 sts, return to row, sc in next 6 sts.\nFasten off.\n", 0},
		{"a branch at its tip", "branch-at-tip", mat + "Row 2: Ch 1, sc in next 6 sts, branch A: ch 6, sc in 2nd ch from hook and in next 4 ch, turn, sc in next 5 sts, return to row, sc in next 6 sts.\nFasten off.\n", 1},

		{"twice", "row-repeated", mat + "Row 2: " + plainRow + "Row 2: " + plainRow + "Row 3: " + plainRow + "Fasten off.\n", 1},
		{"one for each size", "row-repeated", mat + "Row 2 (small): " + plainRow + "Row 2 (large): " + plainRow + "Row 3: " + plainRow + "Fasten off.\n", 0},
		{"a second shoulder", "row-repeated", mat + "Row 2: " + plainRow + "Fasten off.\nJoin A with sl st in first st.\nRow 2: " + plainRow + "Fasten off.\n", 0},

		{"a turn lost in the one row that is worked over and over", "turn-missing", mat + "Row 2: Ch 1, BLO sc in each st across. (12 sc)\nRep Row 2 until you have 32 rows in all.\nFasten off.\n", 1},
		{"a turn said once of the row that is worked over and over", "turn-missing", mat + "Row 2: Ch 1, BLO sc in each st across; turn. (12 sc)\nRep Row 2 until you have 32 rows in all.\nFasten off.\n", 0},
		{"rows in words that are not understood", "count-mismatch", mat + "Row 2: 3 open, 5 full. (12 sc)\nRow 3: 4 open, 4 full. (12 sc)\nRow 4: 5 open, 3 full. (12 sc)\nFasten off.\n", 0},
		{"one row that has lost its steps", "count-mismatch", mat + "Row 2: Ch 1; turn. (12 sc)\nRow 3: " + plainRow + "Fasten off.\n", 1},
		{"turns as the notes say", "turn-missing", strings.Replace(strings.ReplaceAll(mat, "; turn", ""), "\n\n", "\nNotes: Turn at the end of every row.\n\n", 1) + "Row 2: Ch 1, sc in each st across. (12 sc)\nRows 3-8: Rep Row 2, turn.\nFasten off.\n", 0},
		{"no turn", "turn-missing", mat + "Row 2: " + plainRow + "Row 3: Ch 1, sc in each st across. (12 sc)\nRow 4: " + plainRow + "Row 5: " + plainRow + "Fasten off.\n", 1},
		{"said not to turn", "turn-missing", mat + "Row 2: " + plainRow + "Row 3: Ch 1, sc in each st across; do not turn. (12 sc)\nRow 4: " + plainRow + "Row 5: " + plainRow + "Fasten off.\n", 0},
		{"the turn begins the row", "turn-missing", mat + "Row 2: " + plainRow + "Row 3: Ch 1, sc in each st across. (12 sc)\nRow 4: Ch 1, turn, sc in each st across; turn. (12 sc)\nRow 5: " + plainRow + "Fasten off.\n", 0},
		{"the last row", "turn-missing", mat + "Row 2: " + plainRow + "Row 3: " + plainRow + "Row 4: Ch 1, sc in each st across. (12 sc)\nFasten off.\n", 0},
		{"the yarn is cut", "turn-missing", mat + "Row 2: " + plainRow + "Row 3: Ch 1, sc in each st across. Fasten off. (12 sc)\nRow 4: " + plainRow + "Row 5: " + plainRow + "Fasten off.\n", 0},

		{"along the chain of another piece", "count-mismatch", mat + "Fasten off.\n\nEdge\nWith RS facing, join yarn with sl st in first ch of the starting chain.\nRow 1: Ch 1, sc in each of the 12 ch across. (12 sc)\nFasten off.\n", 0},
		{"as another piece to a row by name", "count-mismatch", mat + "Fasten off.\n\nEdge\nWork as for Mat to the end of the first ribbed row. (9 sc)\nFasten off.\n", 0},
		{"a sentence on what is made", "ending-missing", strings.Replace(mat, "Terms: US\n", "Terms: US\nA wild rose. Twelve squares make a cushion front, three across and four down.\n", 1) + "Fasten off.\n", 0},
		{"a note that says not to turn", "turn-missing", strings.Replace(mat, "Terms: US\n", "Terms: US\nNote: Do not turn at the end of each row unless it says so.\n", 1) + "Row 2: " + plainRow + "Row 3: Ch 1, sc in each st across. (12 sc)\nRow 4: " + plainRow + "Row 5: " + plainRow + "Fasten off.\n", 1},
		{"words before a colon are no stitch", "row-over", strings.Replace(mat, "Terms: US\n", "Terms: US\nSpecial stitches\nShell: work as follows: 5 dc in next st.\n\n", 1) + "Row 2: Ch 1, work as follows: sc in next 11 sts, 2 sc in next st; turn. (13 sc)\nFasten off.\n", 0},
		{"a caption in square brackets", "count-mismatch", mat + "[Photo 3]\nRow 2: " + plainRow + "Fasten off.\n", 0},
		{"a yarn and a number of stitches", "count-mismatch", mat + "Row 2: Ch 1, with yarn 3 sc in first st, sc in each st across; turn. (14 sc)\nFasten off.\n", 0},
		{"no join", "join-missing", disc + "Rnd 3: Ch 1, sc in each st around. (12 sc)\nRnd 4: " + plainRnd + "Fasten off.\n", 1},
		{"joined in other words", "join-missing", disc + "Rnd 3: Ch 1, sc in each st around; join as before. (12 sc)\nRnd 4: " + plainRnd + "Fasten off.\n", 0},
		{"said not to join", "join-missing", disc + "Rnd 3: Ch 1, sc in each st around; do not join. (12 sc)\nRnd 4: " + plainRnd + "Fasten off.\n", 0},
		{"a spiral up to there", "join-missing", "Terms: US\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: 2 sc in each st. (12 sc)\nRnd 3: Sc in each st. (12 sc)\nRnd 4: " + plainRnd + "Rnd 5: " + plainRnd + "Fasten off.\n", 0},
		{"the last round", "join-missing", disc + "Rnd 3: " + plainRnd + "Rnd 4: Ch 1, sc in each st around. (12 sc)\nFasten off.\n", 0},
		{"a round whose yarn is cut, which ends in a slip stitch", "join-missing", disc + "Rnd 3: Ch 1, (sc in next st, sl st in next st) 6 times. Fasten off. (12 sts)\nRnd 4: Join A in any st, " + strings.ToLower(plainRnd) + "Fasten off.\n", 0},
		{"a round that is closed with a needle", "join-missing", disc + "Rnd 3: Ch 1, sc in each st around. Fasten off with an invisible join. (12 sc)\nRnd 4: Join A in any st, " + strings.ToLower(plainRnd) + "Fasten off.\n", 0},
		{"part of a round whose yarn is cut", "join-missing", disc + "Rnd 3: Ch 1, sc in next 6 sts, leave remaining sts unworked. Fasten off.\nRnd 4: Join A in first st, " + strings.ToLower(plainRnd) + "Fasten off.\n", 0},
		{"a round whose yarn is cut", "join-missing", disc + "Rnd 3: Ch 1, sc in each st around. Fasten off. (12 sc)\nRnd 4: Join A in any st, " + strings.ToLower(plainRnd) + "Fasten off.\n", 1},
		{"a round before slip stitches to the next place", "join-missing", disc + "Rnd 3: Ch 1, sc in each st around. (12 sc)\nRnd 4: Sl st in next st, " + strings.ToLower(plainRnd) + "Fasten off.\n", 1},
		{"a spiral from there on", "join-missing", disc + "Rnd 3: Ch 1, sc in each st around. (12 sc)\nRnd 4: Sc in each st around. (12 sc)\nRnd 5: Sc in each st around. (12 sc)\nFasten off.\n", 0},

		{"too high", "turning-chain-height", mat + "Row 2: Ch 4, sc in each st across; turn. (12 sc)\nRow 3: " + plainRow + "Fasten off.\n", 1},
		{"too low", "turning-chain-height", mat + "Row 2: Ch 1, dc in each st across; turn. (12 dc)\nFasten off.\n", 1},
		{"too low and said not to count", "turning-chain-height", mat + "Row 2: Ch 1 (does not count as a st), dc in each st across; turn. (12 dc)\nFasten off.\n", 0},
		{"one for each of two heights", "turning-chain-height", mat + "Row 2: Ch 3 (counts as dc), sk first st, *sc in next st, dc in next st; rep from * to last st, sc in last st; turn. (12 sts)\nRow 3: Ch 3, sk first st, *sc in next st, dc in next st; rep from * to last st, sc in last st; turn. (12 sts)\nFasten off.\n", 0},
		{"a stitch and a space", "turning-chain-height", mat + "Row 2: Ch 5 (counts as dc and ch 2), sk first 3 sts, dc in next st, [ch 2, sk next 2 sts, dc in next st] twice, ch 2, sk next st, dc in last st. (5 dc, 4 ch-2 sps)\nFasten off.\n", 0},
		{"typed twice", "turning-chain-height", mat + "Row 2: " + plainRow + "Row 3: " + plainRow + "Row 4: Ch 1, ch 1, sc in each st across; turn. (12 sc)\nFasten off.\n", 1},
		{"counted twice", "turning-chain-height", mat + "Row 2: Ch 3 (counts as dc), ch 3 (counts as dc), dc in next 11 sts; turn. (12 dc)\nFasten off.\n", 1},
		{"counted, and a space", "turning-chain-height", mat + "Row 2: Ch 3 (counts as dc), ch 2, sk next 2 sts, [dc in next st, ch 2, sk next 2 sts] 3 times; turn. (4 dc, 4 ch-2 sps)\nFasten off.\n", 0},
		{"a loop that no count has", "turning-chain-height", mat + tall2 + tall3 + "Row 4: Ch 4, sk first st, dc in next 10 sts, ch 2, dc in last st; turn. (12 dc, 1 ch-2 sp)\nFasten off.\n", 1},
		{"a space like the others", "turning-chain-height", mat + tall2 + tall3 + "Row 4: Ch 4, sk first 2 sts, [dc in next st, ch 1, sk next st] 4 times, dc in next 2 sts; turn. (7 dc, 5 ch-1 sps)\nFasten off.\n", 0},
		{"too low for a stitch and a space", "turning-chain-height", mat + "Row 2: Ch 2 (counts as dc and ch 1), sk first 2 sts, [dc in next st, ch 1, sk next st] 4 times, dc in next st, dc in last st; turn. (7 dc, 5 ch-1 sps)\nFasten off.\n", 1},
		{"high enough for a stitch and a space", "turning-chain-height", mat + "Row 2: Ch 4 (counts as dc and ch 1), sk first 2 sts, [dc in next st, ch 1, sk next st] 4 times, dc in next st, dc in last st; turn. (7 dc, 5 ch-1 sps)\nFasten off.\n", 0},
		{"too high and said not to count", "turning-chain-height", mat + "Row 2: Ch 4 (does not count as a st), hdc in each st across; turn. (12 hdc)\nFasten off.\n", 1},
		{"not too high and said not to count", "turning-chain-height", mat + "Row 2: Ch 2 (does not count as a st), hdc in each st across; turn. (12 hdc)\nFasten off.\n", 0},
		{"said to count, and the count says not", "turning-chain-height", "Turning chains: ch 2 counts as a st\n" + disc + "Rnd 3: Ch 2, dc in each st around; sl st in first dc to join. (12 dc)\nFasten off.\n", 1},
		{"said not to count, and it does not", "turning-chain-height", "Turning chains: ch 2 does not count as a st\n" + disc + "Rnd 3: Ch 2, dc in each st around; sl st in first dc to join. (12 dc)\nFasten off.\n", 0},
		{"said to count, and another chain", "turning-chain-height", "Turning chains: ch 3 counts as a st\n" + disc + "Rnd 3: Ch 2, dc in each st around; sl st in first dc to join. (12 dc)\nFasten off.\n", 0},
		{"UK terms", "turning-chain-height", "Pattern: Mat\nTerms: UK\n\nPiece: Mat\nWith A, ch 13.\nRow 1: Dc in 2nd ch from hook and in each ch across; turn. (12 dc)\nRow 2: Ch 1, dc in each st across. (12 dc)\nFasten off.\n", 0},

		{"not said", "turning-chain-unstated", mat + "Row 2: Ch 2, hdc in each st across; turn. (12 hdc)\nFasten off.\n", 1},
		{"said in the header", "turning-chain-unstated", "Turning chains: ch 2 does not count as a st\n" + mat + "Row 2: Ch 2, hdc in each st across; turn. (12 hdc)\nFasten off.\n", 0},
		{"said in a note", "turning-chain-unstated", "Note: The ch 2 isn’t a stitch.\n" + mat + "Row 2: Ch 2, hdc in each st across; turn. (12 hdc)\nFasten off.\n", 0},

		{"no end", "ending-missing", mat + "Row 2: " + plainRow, 1},
		{"the edging goes on", "ending-missing", mat + "Row 2: " + plainRow + "\nPiece: Edging\nRow 1: Ch 1, 2 sc in each st across. (24 sc)\nFasten off.\n", 0},
		{"the yarn is cut in a note", "ending-missing", mat + "Row 2: " + plainRow + "Note: Cut the yarn and hide its end.\n", 0},

		{"cut short", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Sew the mat to the base.\n", 1},
		{"sewn each", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Sew a mat to each side of the base.\n", 1},
		{"sewn on", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Sew on the mats.\n", 1},
		{"sewn on, the other way round", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Sew the mats on.\n", 1},
		{"whipstitched", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Whipstitch the mat to the base.\n", 1},
		{"stitched", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Stitch the mat to the base.\n", 1},
		{"stitched at the end of a sentence", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Fold the base, then stitch the mat to it.\n", 1},
		{"attached", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Attach the mat to the base.\n", 1},
		{"sewn as the second thing", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Sew the loop to the back and the mat to the base.\n", 1},
		{"sewn round something", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Sew the loop to the back and the mats round the base.\n", 1},
		{"sewn with the needle", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Sew a mat on each base with the needle.\n", 1},
		{"sewn with the tail", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. With the tail, sew the mat to the base.\n", 1},
		{"sewn at its last row", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Sew the last row of the mat to the base.\n", 1},
		{"sewn first with another yarn", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. With B, sew the mat to the base.\n", 0},
		{"sewn using another yarn", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Sew the mat to the base, using new yarn.\n", 0},
		{"glued", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Glue or sew the mat to the base with glue.\n", 0},
		{"a stitch of it", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. In each stitch of the mat, work a loop.\n", 0},
		{"yarn that is attached", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Attach yarn to the mat.\n", 0},
		{"nothing sewn of it", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Sew the loop to the mat.\n", 0},
		{"a tail that is not left", "tail-missing", mat + "Fasten off. Fold it and, using the tail, sew the first 3 sts together.\n", 1},
		{"a tail that is left at the beginning", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nLeaving a tail, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Fold it and, using the tail, sew the first 3 sts together.\n", 0},
		{"a tail of the beginning that is not left", "tail-missing", mat + "Fasten off, leaving a tail. With the tail from the beginning, sew on the button.\n", 1},
		{"a tail of the beginning that is left", "tail-missing", strings.Replace(mat, "With A, ch", "Leaving a 15 cm tail, with A, ch", 1) + "Fasten off, leaving a tail. With the tail from the beginning, sew on the button.\n", 0},
		{"a tail that closes a hole", "tail-missing", mat + "Fasten off. Close the hole with the tail.\n", 0},
		{"a tail of no said length", "tail-missing", mat + "Fasten off, leaving a tail.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Sew the mat to the base.\n", 0},
		{"sewn with another yarn", "tail-missing", mat + "Fasten off.\n\nPiece: Base\nWith A, ch 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off. Sew the mat to the base with B.\n", 0},

		{"no marker", "marker-missing", "Pattern: Acorn\nTerms: US\n\nPiece: Acorn\nRnd 1: 6 sc in magic ring. (6 sc)\nRnds 2-9: Sc in each st around. (6 sc)\nFasten off.\n", 1},
		{"marked once for all", "marker-missing", "Pattern: Acorn\nTerms: US\nNote: Mark the first stitch of every round.\n\nPiece: Acorn\nRnd 1: 6 sc in magic ring. (6 sc)\nRnds 2-9: Sc in each st around. (6 sc)\nFasten off.\n", 0},
		{"two rounds", "marker-missing", "Pattern: Acorn\nTerms: US\n\nPiece: Acorn\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: Sc in each st around. (6 sc)\nFasten off.\n", 0},

		{"a count of no stitches", "count-mismatch", mat + "Row 2: Ch 1; turn. (12 sc)\nRow 3: " + plainRow + "Fasten off.\n", 1},
		{"a count of no stitches at first", "count-mismatch", "Pattern: Acorn\nTerms: US\n\nPiece: Acorn\nRnd 1: Place marker in first st. (6 sc)\nRnd 2: 2 sc in each st around. (12 sc)\nFasten off.\n", 1},
		{"a count of chains", "count-mismatch", "Pattern: Mat\nTerms: US\n\nPiece: Mat\nRow 1: With A, ch 13. (13 ch)\nRow 2: Sc in 2nd ch from hook and in each ch across. (12 sc)\nFasten off.\n", 0},
		{"a long chain in the middle", "count-mismatch", mat + "Row 2: " + plainRow + "Row 3: Ch 20; turn. (20 sts)\nFasten off.\n", 0},
		{"a count said again", "count-mismatch", disc + "Rnd 3: Change to B. (12 sc)\nRnd 4: " + plainRnd + "Fasten off.\n", 0},

		{"no chain", "place-absent", "Pattern: Mat\nTerms: US\n\nPiece: Mat\nWith A.\nRow 1: Sc in 2nd ch from hook and in each ch across. (12 sc)\nFasten off.\n", 1},
		{"no chain for the second piece", "place-absent", mat + "Fasten off.\n\nPiece: Tie\nWith A.\nRow 1: Sl st in 2nd ch from hook and in each ch across. (30 sts)\nFasten off.\n", 1},
		{"the chain is in a note", "place-absent", "Pattern: Mat\nTerms: US\n\nPiece: Mat\nNote: Begin with a loose chain of 13.\nRow 1: Sc in 2nd ch from hook and in each ch across. (12 sc)\nFasten off.\n", 0},
		{"one chain that goes without saying", "place-absent", "Pattern: Acorn\nTerms: US\n\nPiece: Acorn\nRnd 1: 6 sc in 2nd ch from hook. (6 sc)\nFasten off.\n", 0},

		{"no count", "count-missing", disc + "Rnd 3: Ch 1, [sc in next st, 2 sc in next st] 6 times; sl st in first sc to join.\nFasten off.\n", 1},
		{"none stated", "count-missing", mat + "Row 2: Ch 1, 2 sc in each st across; turn.\nRow 3: Ch 1, sc in each st across; turn.\nFasten off.\n", 0},
		{"the same count", "count-missing", disc + "Rnd 3: Ch 1, sc in each st around; sl st in first sc to join.\nFasten off.\n", 0},

		{"a double star where one stands", "repeat-unanchored", mat + "Row 2: Ch 1, *sc in next st, 2 sc in next st; rep from ** across; turn. (18 sc)\nFasten off.\n", 1},
		{"a double star", "repeat-unanchored", mat + "Row 2: Ch 1, sc in next 2 sts, **sc in next st, 2 sc in next st; rep from ** across; turn. (17 sc)\nFasten off.\n", 0},
		{"a double star in a row above", "repeat-unanchored", mat + "Row 2: Ch 1, *sc in next st, **2 sc in next st; rep from * across, ending last rep at **; turn.\nRow 3: Ch 1, *sc in next st; rep from ** of Row 2 across; turn.\nFasten off.\n", 0},
		{"another shape", "bracket-unclosed", mat + "Row 2: Ch 1, (sc in next st, 2 sc in next st] 6 times; turn. (18 sc)\nFasten off.\n", 1},
		{"a shape within another", "bracket-unclosed", mat + "Row 2: Ch 1, [sc in next st, (sc, ch 1, sc) in next st] 6 times; turn. (18 sc, 6 ch-1 sps)\nFasten off.\n", 0},
		{"no end of a repeat", "repeat-unended", mat + "Row 2: Ch 1, *sc in next st, 2 sc in next st. (18 sc)\nFasten off.\n", 1},
		{"stars on both sides", "repeat-unended", mat + "Row 2: Ch 1, *sc in next st, 2 sc in next st* 6 times. (18 sc)\nFasten off.\n", 0},

		{"a conversion", "sizes-mismatch", "Sizes: S (M, L)\nFinished size: 20 (22, 24) cm around, 5 cm (2 in) deep\n" + mat + "Fasten off.\n", 0},
		{"a chain that lacks a value", "sizes-mismatch", "Pattern: Cuff\nTerms: US\nSizes: S (M, L)\n\nPiece: Cuff\nCh 21 (23).\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (20 (22, 24) sc)\nFasten off.\n", 1},
		{"what follows from a chain that lacks a value", "count-mismatch", "Pattern: Cuff\nTerms: US\nSizes: S (M, L)\n\nPiece: Cuff\nCh 21 (23).\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (20 (22, 24) sc)\nFasten off.\n", 0},
		{"a chain and its count", "sizes-mismatch", "Pattern: Cuff\nTerms: US\nSizes: S (M, L)\n\nPiece: Cuff\nCh 21. (21)\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (20 sc)\nFasten off.\n", 0},
		{"what follows from a value short", "count-mismatch", gradedHead + "Ch 21 (23, 25).\n" + gradedRow + "Fasten off.\n", 0},
		{"numbers on a row that is not counted", "count-mismatch", mat + lostRow + "Row 3: Ch 1, sc in next 5 sts, 2 sc in next st, sc in next 6 sts; turn. (14 sc)\nFasten off.\n", 1},
		{"right numbers on a row that is not counted", "count-mismatch", mat + lostRow + "Row 3: Ch 1, sc in next 5 sts, 2 sc in next st, sc in next 6 sts; turn. (13 sc)\nFasten off.\n", 0},
		{"what lies on numbers", "count-mismatch", mat + lostRow + "Row 3: Ch 1, sc in next 5 sts, 2 sc in next st, sc in next 6 sts; turn. (13 sc)\nRow 4: Ch 1, sc in each st across; turn. (12 sc)\nFasten off.\n", 1},
		{"words of UK alone, by number", "count-mismatch", strings.NewReplacer("US", "UK", "sc", "dc").Replace(mat) + lostRow + "Row 3: Ch 1, htr in next 5 sts, 2 htr in next st, htr in next 6 sts; turn. (14 htr)\nFasten off.\n", 1},
		{"a chain that may stand for one of the numbers", "count-mismatch", mat + lostRow + "Row 3: Ch 3, dc in next 11 sts; turn. (11 dc)\nFasten off.\n", 0},
		{"a fresh chain behind a row that is not counted", "count-mismatch", mat + lostRow + "With B, ch 9.\nRow 3: Sc in 2nd ch from hook and in each ch across. (9 sc)\nFasten off.\n", 1},
		{"a last sentence of several kinds", "count-mismatch", mat + "Row 2: Ch 1, sc in next 4 sts, ch 3, sk next 3 sts, sc in next 5 sts; turn. 9 sc and 1 ch-3 sp.\nFasten off.\n", 0},
		{"a wrong last sentence of several kinds", "count-mismatch", mat + "Row 2: Ch 1, sc in next 4 sts, ch 3, sk next 3 sts, sc in next 5 sts; turn. 8 sc and 1 ch-3 sp.\nFasten off.\n", 1},
		{"a size that comes to the other side", "side-by-size", gradedHead + "Ch 21 (23, 25, 27).\n" + gradedRow + "Next 3 (4, 5, 6) rows: " + gradedNext + "Next row (RS): " + gradedNext + "Fasten off.\n", 1},
		{"told of sizes is not told of all", "side-parity", gradedHead + "Ch 21 (23, 25, 27).\n" + gradedRow + "Next 3 (4, 5, 6) rows: " + gradedNext + "Next row (RS): " + gradedNext + "Fasten off.\n", 0},
		{"one turn and no side", "turn-missing", mat + "Row 2: Ch 1, sc in each st across. (12 sc)\nRow 3: " + plainRow + "Fasten off.\n", 1},
		{"a turn lost before rows that are repeated", "turn-missing", mat + "Row 2: " + plainRow + "Row 3: Ch 1, BLO sc in each st across. (12 sc)\nRep Rows 2 and 3 four times more.\nFasten off.\n", 1},
		{"turns at the begin", "turn-missing", turnedMat + "Row 4: As Row 2. (12 sc)\nFasten off.\n", 0},
		{"a turn lost at the begin", "turn-missing", strings.Replace(turnedMat, "Row 3: Ch 1, turn", "Row 3: Ch 1", 1) + "Row 4: As Row 2. (12 sc)\nFasten off.\n", 1},
		{"one turn alone", "turn-missing", strings.Replace(mat, "Row 1", "Row 1 (RS)", 1) + "Row 2: Ch 1, sc in each st across. (12 sc)\nRow 3: Ch 1, sc in each st across. (12 sc)\nFasten off.\n", 0},
		{"one turn, and sides that alternate", "turn-missing", strings.Replace(mat, "Row 1", "Row 1 (RS)", 1) + "Row 2 (WS): Ch 1, sc in each st across. (12 sc)\nRow 3 (RS): Ch 1, sc in each st across. (12 sc)\nFasten off.\n", 1},
		{"one turn, and the same side again", "turn-missing", strings.Replace(mat, "Row 1", "Row 1 (RS)", 1) + "Row 2 (WS): Ch 1, sc in each st across. (12 sc)\nRow 3 (WS): Ch 1, sc in each st across. (12 sc)\nFasten off.\n", 0},
		{"a side after a turn that is not said", "side-parity", strings.Replace(mat, "Row 1", "Row 1 (RS)", 1) + "Row 2 (WS): Ch 1, sc in each st across. (12 sc)\nRow 3 (RS): " + plainRow + "Row 4 (RS): " + plainRow + "Fasten off.\n", 1},
		{"the other side in every size", "side-parity", gradedHead + "Ch 21 (23, 25, 27).\n" + gradedRow + "Next 4 (4, 6, 6) rows: " + gradedNext + "Next row (RS): " + gradedNext + "Fasten off.\n", 1},
		{"joined round with the other side out", "side-by-size", gradedHead + "Ch 21 (23, 25, 27).\n" + gradedRow + "Next 4 (5, 6, 7) rows: " + gradedNext + "Sl st in first st to join.\nRnd 1 (RS): " + strings.NewReplacer("across; turn", "around; join").Replace(gradedNext) + "Fasten off.\n", 1},
		{"joined anew", "side-by-size", gradedHead + "Ch 21 (23, 25, 27).\n" + gradedRow + "Next 4 (5, 6, 7) rows: " + gradedNext + "Fasten off.\nJoin A with sl st in first st.\nNext row (RS): " + gradedNext + "Fasten off.\n", 0},
		{"a value short", "sizes-mismatch", "Sizes: S (M, L, XL)\nFinished size: 20 (22, 24) cm around\n" + mat + "Fasten off.\n", 1},
		{"a value alone with its unit behind it", "sizes-mismatch", "Sizes: S (M, L)\nYarn: oat, 20 (30) m\n" + mat + "Fasten off.\n", 1},
		{"yarn in both units", "sizes-mismatch", "Sizes: S (M, L)\nYarn: oat, DK (3), 20 m (22 yd)\n" + mat + "Fasten off.\n", 0},
		{"a value short, in a list of materials", "sizes-mismatch", "Sizes: S (M, L)\n\nMaterials\n- DK yarn (3) in sloe, 140 [165] m\n- 4 mm hook\n\n" + mat + "Fasten off.\n", 1},
		{"a value too many of a measure of its own", "sizes-mismatch", "Sizes: S (M)\nSole length: 8 (9.5, 11) cm\n" + mat + "Fasten off.\n", 1},
		{"a measure of its own that falls", "sizes-mismatch", "Sizes: S (M, L, XL)\n**Length:** 49 (50, 63, 54) cm\n" + mat + "Fasten off.\n", 1},
		{"one size too many, told of once", "sizes-mismatch", "Sizes: S (M, L, XL)\nTo fit: hand 17 (19, 21) cm\nFinished size: 17 (19, 21) cm around\nYarn: moss, 20 (30, 40) m\n" + mat + "Fasten off.\n", 1},
		{"one size too many, and a list short besides", "sizes-mismatch", "Sizes: S (M, L, XL)\nTo fit: hand 17 (19, 21) cm\nFinished size: 17 (19, 21) cm around\nYarn: moss, 20 (30, 40) m\nLength: 17 (19, 21) cm\nSole length: 9 (10) cm\n" + mat + "Fasten off.\n", 2},
		{"one size too many, or not", "sizes-mismatch", "Sizes: S (M, L, XL)\nTo fit: hand 17 (19, 21) cm\nFinished size: 17 (19, 21) cm around\nYarn: moss, 20 (30, 40, 50) m\n" + mat + "Fasten off.\n", 2},
		{"a size that there is not", "sizes-mismatch", "Sizes: S (M, L)\n" + mat + "Size Extra Large only:\nRow 30: " + plainRow + "Fasten off.\n", 1},
		{"a size that there is", "sizes-mismatch", "Sizes: S (M, XL)\n" + mat + "Size Extra Large only:\nRow 30: " + plainRow + "Fasten off.\n", 0},
		{"an entry of the list with a comma for its mark", "abbreviation-unlisted", "Terms: US\n\nAbbreviations: sc, single crochet; sc2tog, work 2 sc together; ch, chain; st, stitch.\n\n" + mat[strings.Index(mat, "Piece"):] + "Row 2: Ch 1, sc2tog, sc in next 9 sts.\nFasten off.\n", 0},
		{"an entry of the list that reads as work", "abbreviation-unlisted", "Terms: US\n\nAbbreviations\nch chain\nsc single crochet\nsc2tog single crochet 2 sts together\nst stitch\n\n" + mat[strings.Index(mat, "Piece"):] + "Row 2: Ch 1, sc2tog, sc in next 9 sts.\nFasten off.\n", 0},
		{"an abbreviation that the list lacks", "abbreviation-unlisted", "Terms: US\n\nAbbreviations: ch, chain; sc, single crochet; st, stitch.\n\n" + mat[strings.Index(mat, "Piece"):] + "Row 2: Ch 1, sc in next 10 sts, dc in next st.\nFasten off.\n", 1},
		{"embroidery floss", "abbreviation-unlisted", "Terms: US\n\nAbbreviations: ch, chain; sc, single crochet; st, stitch.\n\n" + mat[strings.Index(mat, "Piece"):] + "Row 2: Ch 1, sc in next 11 sts. Embroider a nose with the floss.\nFasten off.\n", 0},
		{"two letters of an abbreviation changed over, between marks", "abbreviation-unknown", mat + "Row 2: Ch 1, sc in next 10 sts, dce; turn.\nFasten off.\n", 1},
		{"a stitch of the pattern's own with a slip, between marks", "abbreviation-unknown", "Terms: US\n\nSpecial stitches\nhaw: work 4 dc in next st\n\n" + mat[strings.Index(mat, "Piece"):] + "Row 2: Ch 1, sc in next 11 sts, hawt; turn.\nFasten off.\n", 1},
		{"a word of English between marks", "abbreviation-unknown", mat + "Row 2: Ch 1, sc in next 10 sts, slowly, sc in next 2 sts; turn.\nFasten off.\n", 0},
		{"fastened off twice", "words-doubled", mat + "Fasten off. Fasten off.\n", 1},
		{"fastened off twice, a line each", "words-doubled", mat + "Fasten off.\nFasten off.\n", 1},
		{"a word twice", "words-doubled", mat + "Row 2: Ch 1, sc in each of the the 12 sts; turn. (12 sc)\nFasten off.\n", 1},
		{"a stitch twice", "words-doubled", mat + "Row 2: Ch 1, sc sc, sc in next 10 sts; turn. (12 sc)\nFasten off.\n", 0},
		{"a step twice", "words-doubled", mat + "Row 2: Ch 1. Sc in next 6 sts. Sc in next 6 sts. Turn. (12 sc)\nFasten off.\n", 0},
		{"a yarn and an article", "words-doubled", mat + "With A, a needle and care, sew it to the base.\nFasten off.\n", 0},
		{"fastened off in two pieces", "words-doubled", mat + "Fasten off.\n\nPiece: Base\nCh 3. Fasten off.\n", 0},
		{"more leaves than are made", "pieces-mismatch", leaves("Sew the 6 leaves to the twig."), 1},
		{"as many leaves as are made", "pieces-mismatch", leaves("Sew the four leaves to the twig."), 0},
		{"many more leaves than are made", "pieces-mismatch", leaves("Sew all eleven leaves to the twig."), 1},
		{"more leaves than are made, of two words", "pieces-mismatch", leaves("Sew the twenty-four leaves to the twig."), 1},
		{"many more leaves in rows", "pieces-mismatch", leaves("Lay the leaves out in thirteen rows of two."), 1},
		{"fewer leaves than are made", "pieces-mismatch", leaves("Sew all 3 leaves to the twig."), 1},
		{"fewer leaves than are made, and the others", "pieces-mismatch", leaves("Sew the 3 leaves to the twig. Sew the remaining leaf to the cord."), 0},
		{"fewer leaves than are made, twice", "pieces-mismatch", leaves("Sew the 2 leaves to the twig. Sew the 2 leaves to the cord."), 0},
		{"leaves at tips", "pieces-mismatch", leaves("Sew a leaf to the tips of branches A, B and D."), 1},
		{"a leaf for each tip", "pieces-mismatch", leaves("Sew a leaf at the tips of branches A, B, D and E and the haws along the stem."), 0},
		{"leaves in rows", "pieces-mismatch", leaves("Lay the leaves out in 2 rows of 3."), 1},
		{"as many leaves in rows", "pieces-mismatch", leaves("Lay the leaves out in two rows of two."), 0},
		{"a leaf for each of more nuts", "pieces-mismatch", leaves("Sew a leaf on each nut.\n\nPiece: Nut (make 6)\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off."), 1},
		{"a leaf for each nut", "pieces-mismatch", leaves("Sew a leaf on each nut.\n\nPiece: Nut (make 4)\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off."), 0},
		{"leaves of which kind", "pieces-mismatch", leaves("Sew the 6 leaves to the twig.\n\nPiece: Small leaf (make 2)\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off."), 0},
		{"stitches, and no leaves", "pieces-mismatch", leaves("Sew the 6 stitches of the leaf together."), 0},
		{"a value that falls", "sizes-mismatch", "Sizes: S (M, L)\nFinished size: 20 (22, 21) cm around\n" + mat + "Fasten off.\n", 1},
	}
	for _, test := range tests {
		t.Run(test.rule+"/"+test.name, func(t *testing.T) {
			n := 0
			all := lint.Analyze(source.New(test.pattern)).Findings
			for _, f := range all {
				if f.Rule == test.rule {
					n++
				}
			}
			assert.Equal(t, test.found, n, "%s\n%s", listed(all), test.pattern)
		})
	}
}

// A row that is wrong whatever the row below makes or states has a slip of its own.
func TestEachSlipIsAFinding(t *testing.T) {
	said13 := mat + "Row 2: Ch 1, sc in each st across; turn. (13 sc)\n"
	tests := []struct {
		name, pattern string
		found         []string
	}{
		{"more than it makes or says", said13 + "Row 3: Ch 1, sc in next 25 sts; turn. (25 sc)\nFasten off.\n", []string{"count-mismatch", "row-over"}},
		{"as many as it says", said13 + "Row 3: Ch 1, sc in next 13 sts; turn. (13 sc)\nFasten off.\n", []string{"count-mismatch"}},
		{"as many as it makes", said13 + "Row 3: Ch 1, sc in next 12 sts; turn. (12 sc)\nFasten off.\n", []string{"count-mismatch"}},
		{"a row between that fits both", said13 + "Row 3: Ch 1, sc in each st across; turn.\nRow 4: Ch 1, sc in next 13 sts; turn.\nFasten off.\n", []string{"count-mismatch"}},
		{"a row between, and neither", said13 + "Row 3: Ch 1, sc in each st across; turn.\nRow 4: Ch 1, sc in next 14 sts; turn.\nFasten off.\n", []string{"count-mismatch", "row-over"}},
		{"a count that neither gives", said13 + "Row 3: Ch 1, sc in each st across; turn. (15 sc)\nFasten off.\n", []string{"count-mismatch", "count-mismatch"}},
		{"no count to stand on", mat + "Row 2: Ch 1, sc in next 15 sts; turn.\nRow 3: Ch 1, sc in next 12 sts; turn. (12 sc)\nFasten off.\n", []string{"row-over"}},
		{"too many, and its count says so", mat + "Row 2: Ch 1, sc in next 15 sts; turn. (15 sc)\nRow 3: Ch 1, sc in next 20 sts; turn. (20 sc)\nFasten off.\n", []string{"row-over", "row-over"}},
		{"spaces, of which a number does not tell", mat + "Row 2: Ch 1, sc in next 6 sts, [ch 2, sk next st, sc in next st] 3 times; turn. (10 sc, 3 ch-2 sps)\n" +
			"Row 3: Ch 1, [sc in next 4 sts, 2 sc in next ch-2 sp] 4 times; turn. (24 sc)\nFasten off.\n", []string{"count-mismatch"}},
		{"the wrong row again", mat + "Row 2: Ch 1, sc in next 15 sts; turn. (12 sc)\nRow 3: Rep Row 2.\nRow 4: Ch 1, sc in next 14 sts; turn. (14 sc)\nFasten off.\n", []string{"row-over"}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			var found []string
			all := lint.Analyze(source.New(test.pattern)).Findings
			for _, f := range all {
				if f.Severity >= lint.Error {
					found = append(found, f.Rule)
				}
			}
			assert.Equal(t, test.found, found, "%s\n%s", listed(all), test.pattern)
		})
	}
}

// A row that turns back early is no more than a remark where all counts have it so.
func TestTurnedEarly(t *testing.T) {
	flap := mat + "Row 2: Ch 1, sc in next 5 sts; turn. (5 sc)\n"
	tests := []struct {
		name, pattern string
		severity      lint.Severity
	}{
		{"and worked on", flap + "Row 3: Ch 1, sc in each st across; turn. (5 sc)\nFasten off.\n", lint.Info},
		{"and worked on by numbers", flap + "Row 3: Ch 1, sc in next 5 sts; turn. (5 sc)\nFasten off.\n", lint.Info},
		{"and early again", flap + "Row 3: Ch 1, sc in next 3 sts; turn. (3 sc)\nFasten off.\n", lint.Info},
		{"and nothing after it", flap + "Fasten off.\n", lint.Info},
		{"and the next row has more", flap + "Row 3: Ch 1, sc in next 12 sts; turn. (12 sc)\nFasten off.\n", lint.Error},
		{"without a count", mat + "Row 2: Ch 1, sc in next 5 sts; turn.\nRow 3: Ch 1, sc in each st across; turn.\nFasten off.\n", lint.Error},
		{"after repeats that come short", mat + "Row 2: Ch 1, [sc in next st, sc] 4 times; turn. (8 sc)\nRow 3: Ch 1, sc in each st across; turn. (8 sc)\nFasten off.\n", lint.Error},
		{"without a turn", mat + "Row 2: Ch 1, sc in next 5 sts. (5 sc)\nFasten off.\n", lint.Error},
		{"with one left", mat + "Row 2: Ch 1, sc in next 11 sts; turn. (11 sc)\nRow 3: Ch 1, sc in each st across; turn. (11 sc)\nFasten off.\n", lint.Error},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			all := lint.Analyze(source.New(test.pattern)).Findings
			i := slices.IndexFunc(all, func(f lint.Finding) bool { return f.Rule == "row-short" })
			if assert.GreaterOrEqual(t, i, 0, listed(all)) {
				assert.Equal(t, test.severity, all[i].Severity, listed(all))
			}
		})
	}
}

// One slip is one finding, however many rows stand on the one that has it.
func TestOneSlipIsOneFinding(t *testing.T) {
	tests := map[string]string{
		"a wrong count": mat + "Row 2: Ch 1, sc in each st across; turn. (13 sc)\nRow 3: " + plainRow + "Fasten off.\n",
		"a lost increase": disc + "Rnd 3: Ch 1, [sc in next st, 2 sc in next st] 5 times; sl st in first sc to join. (18 sc)\n" +
			"Rnd 4: Ch 1, [sc in next 2 sts, 2 sc in next st] 6 times; sl st in first sc to join. (24 sc)\nFasten off.\n",
		"a row that is repeated": mat + "Row 2: Ch 1, sc in next 15 sts; turn. (12 sc)\nRow 3: Rep Row 2. (12 sc)\nRow 4: Rep Row 2. (12 sc)\nFasten off.\n",
		"a slip of the pen":      mat + "Row 2: Ch 1, zc in each st across; turn.\nRow 3: Ch 1, sc in each st across; turn.\nRow 4: " + plainRow + "Fasten off.\n",
	}
	for name, pattern := range tests {
		t.Run(name, func(t *testing.T) {
			found := lint.Analyze(source.New(pattern)).Findings
			assert.Len(t, found, 1, "%s\n%s", listed(found), pattern)
		})
	}
}
