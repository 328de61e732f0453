package lint_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// headed is a sound mat below some header.
func headed(header string) string {
	return "Pattern: Hedge mat\nTerms: US\n" + header + "\nPiece: Mat\nWith A, ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)\n" +
		"Rows 2-14: " + plainRow + "Fasten off.\n"
}

// titled is the same under another name, with more said below it.
func titled(name, more string) string {
	return "Pattern: " + name + "\nTerms: US\n\nPiece: Mat\nWith A, ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)\nFasten off.\n" + more
}

// bordered is the mat of 10 by 10 cm, of which some width is said, with a piece beside it.
func bordered(width, name, rows string) string {
	return headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: "+width+" wide\n") + "\nPiece: " + name + "\n" + rows + "Fasten off.\n"
}

// meshed is a mat of 12 sc with a row of spaces among solid ones.
func meshed(width, row string) string {
	return "Pattern: Hedge mat\nTerms: US\nGauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: " + width + " wide\n\nPiece: Mat\nCh 13.\n" +
		"Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)\nRow 2: Ch 1, " + row + "\nFasten off.\n"
}

// shells is a strip whose first row repeats over six chains, and what follows it.
func shells(header string, chains int, more string) string {
	return fmt.Sprintf("Pattern: Hedge strip\nTerms: US\n%s\nStrip\nCh %d.\n", header, chains) +
		"Row 1: Sc in 2nd ch from hook, *skip 2 ch, 5 dc in next ch, skip 2 ch, sc in next ch; rep from * across. (17 sc, 80 dc)\nFasten off.\n\n" + more
}

// sized is the same mat in sizes.
func sized(sizes, more string) string {
	return strings.Replace(titled("Hedge jacket", more), "Terms: US\n", "Terms: US\nSizes: "+sizes+"\n", 1)
}

// around is a sound tube below some header.
func around(header string) string {
	return "Pattern: Hedge cuff\nTerms: US\n" + header + "\nPiece: Cuff\nWith A, ch 24; join.\nRnd 1: Ch 1, sc in each ch around; join. (24 sc)\n" +
		"Rnds 2-9: Ch 1, sc in each st around; join. (24 sc)\nFasten off.\n"
}

// pair is two of the same tube.
func pair(header string) string {
	return strings.Replace(around(header), "Piece: Cuff", "Piece: Cuff (make 2)", 1)
}

// going is a scarf of 10 by 100 cm whose last rows are as a line says.
func going(on string) string {
	return "Pattern: Hedge scarf\nTerms: US\nGauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 10 cm x 100 cm (4 in x 39 1/2 in)\n\n" +
		"Piece: Scarf\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)\nRow 2: " + plainRow + on + "\nFasten off.\n"
}

// cupped is a disc of sc that grows by so few stitches that it cups, and what
// follows it.
func cupped(name, more string) string {
	return "Pattern: " + name + "\nTerms: US\nTurning chains: ch 1 does not count as a st.\n\nPiece: Middle\n" +
		"Rnd 1: 4 sc in magic ring; sl st in first sc to join. (4 sc)\nRnd 2: Ch 1, [sc in next st, 2 sc in next st] 2 times; join. (6 sc)\n" +
		"Rnd 3: Ch 1, [sc in next 2 sts, 2 sc in next st] 2 times; join. (8 sc)\nRnd 4: Ch 1, [sc in next 3 sts, 2 sc in next st] 2 times; join. (10 sc)\n" + more + "Fasten off.\n"
}

// pieces is a pattern of two pieces whose headings name something beside how many are made.
func pieces(mat, star string) string {
	const piece = "\n\nCh 3.\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\nFasten off.\n\n"
	return "# Mat\n\nTerms: US\n\n## Materials\n- Moss DK wool (3), 25 m\n- Frost DK wool (3), 5 m\n- 4 mm hook\n\n## Mat (" + mat + ", make 1)" + piece + "## Star (make 2, " + star + ")" + piece
}

// What the rules on materials, shape and caution take for a slip or a danger,
// and beside it the nearest thing that is none.
func TestWhereRulesOnMaterialsAreSilent(t *testing.T) {
	tests := []struct {
		name, rule, pattern string
		found               int
	}{
		{"a yarn that is not listed", "yarn-undeclared", headed("Yarn B: green\nYarn C: red\n"), 1},
		{"a yarn that is only a hook's letter", "yarn-undeclared", strings.Replace(headed("Hook: 2.75 mm (US C-2)\nYarn A: green\nYarn B: red\n"), "With A", "With C", 1), 1},
		{"a yarn that is only a hook's letter, with a stroke", "yarn-undeclared", strings.Replace(headed("Hook: US C/2 (2.75 mm)\nYarn A: green\nYarn B: red\n"), "With A", "With C", 1), 1},
		{"yarns by their colours", "yarn-undeclared", headed("Yarn: green, red\n"), 0},
		{"no list at all", "yarn-undeclared", headed(""), 0},
		{"a yarn too many", "yarn-unused", headed("Yarn A: brown\nYarn B: green\n"), 1},
		{"named in a note", "yarn-unused", headed("Yarn A: brown\nYarn B: green\nNote: Sew on the label with B.\n"), 0},
		{"only one yarn", "yarn-unused", headed("Yarn B: green\n"), 0},

		{"a needle to sew with", "notion-unlisted", headed("Notions: pins\n") + "Sew the mat to its lining.\n", 1},
		{"no list to stand in", "notion-unlisted", headed("") + "Sew the mat to its lining.\n", 0},
		{"not needed", "notion-unlisted", headed("Notions: pins\n") + "No sewing is needed.\n", 0},
		{"another word for it", "notion-unlisted", headed("Notions: darning needle\n") + "Sew the mat to its lining.\n", 0},

		{"filling, of a list below no heading", "notion-unlisted", headed("A = moss DK (3), 30 m\nHook 3 mm\nneedle\n") + "Fill with toy filling.\n", 1},
		{"buttons by their number", "notion-unlisted", headed("Notions: pins\n") + "Fasten it with 3 buttons.\n", 1},
		{"holes for buttons that are listed", "notion-unlisted", headed("Notions: three buttons\n") + "Push the buttons through.\n", 0},

		{"a yarn that is not in one description of several", "yarn-undeclared", strings.Replace(headed("Yarn: DK: A (moss), B (frost)\n"), "With A", "With C", 1), 1},
		{"a yarn that is not in a list of several", "yarn-undeclared", strings.Replace(headed("Materials\n- DK cotton in two colors: A (moss), 300 m; B (frost), 20 m\n\n"), "With A", "With C", 1), 1},
		{"one that is in a list of several", "yarn-undeclared", strings.Replace(headed("Materials\n- DK cotton in two colors: A (moss), 300 m; B (frost), 20 m\n\n"), "With A", "With B", 1), 0},
		{"one that is not, where one has a letter", "yarn-undeclared", strings.Replace(headed("Materials\n- Moss DK wool (3), 25 m (A)\n\n"), "With A", "With B", 1), 1},
		{"a yarn beside how many are made", "yarn-undeclared", pieces("Bark", "Frost"), 1},
		{"one that the list has", "yarn-undeclared", pieces("Moss", "Frost"), 0},
		{"what is no yarn beside how many are made", "yarn-undeclared", pieces("both sizes", "Frost"), 0},
		{"a yarn of a heading", "yarn-undeclared", strings.Replace(strings.Replace(headed("Yarn: DK: A (moss), B (frost)\n"), "With A, c", "C", 1), "Piece: Mat", "Mat (make 2) - with C", 1), 1},
		{"a yarn of a heading that is listed", "yarn-unused", strings.Replace(headed("Yarn: DK: A (moss), B (frost)\n"), "Piece: Mat", "Mat (make 2) - with B", 1), 0},
		{"strands of a yarn", "yarn-undeclared", headed("Yarn: DK: A (moss), B (frost)\n") + "With two strands of C, sew a line.\n", 1},
		{"a colour by its letter", "yarn-undeclared", headed("Yarn: DK: A (moss), B (frost)\n") + "Using colour D: embroider a star.\n", 1},
		{"many strands of a yarn", "yarn-undeclared", headed("Yarn: DK: A (moss), B (frost)\n") + "With six strands of C, sew a line.\n", 1},
		{"strands of a yarn that is listed", "yarn-unused", headed("Yarn: DK: A (moss), B (frost)\n") + "With two strands of B, sew a line.\n", 0},
		{"each colour in turn", "yarn-unused", headed("Colors: A (moss), B (frost)\nNote: Work one row of each color in turn.\n"), 0},
		{"a yarn not in a list with letters in bold", "yarn-undeclared", headed("Materials\n- DK wool: **A** Bark, 20 m; **B** Haw, 5 m\n\n") + "With one strand of C, sew a line.\n", 1},
		{"a yarn not in a list with letters in words", "yarn-undeclared", headed("Materials\nCotton, 1 x 50 g ball in each of Russet (yarn A) and Fawn (yarn B)\n\n") + "Using C, sew a line.\n", 1},
		{"a yarn not in a list of shades", "yarn-undeclared", headed("Materials\nCotton, 50 g balls:\nShade A (Loam) 5\nShade B (Haw) 2\n\n") + "With E, sew a line.\n", 1},
		{"a yarn not in a list of other letters", "yarn-undeclared", strings.Replace(headed("Materials\nDK cotton in moss (M) and bark (K): about 20g of each\n\n"), "With A", "With M", 1) + "With two strands of G, sew a line.\n", 1},
		{"yarns in a list with letters in bold", "yarn-undeclared", headed("Materials\n- DK wool: **A** Bark, 20 m; **B** Haw, 5 m\n\n") + "With one strand of B, sew a line.\n", 0},
		{"a yarn not in a list of numbers", "yarn-undeclared", strings.Replace(headed("Materials\nFine wool, 1 skein in green (color 1), leftovers in plum (color 2)\n\n"), "With A", "With color 1", 1) + "With color 3, sew a line.\n", 1},
		{"letters of a list that no row uses", "yarn-undeclared", headed("Materials\nDK wool, 50 g (M)\n\n"), 0},
		{"several in one description", "yarn-undeclared", headed("Colors: A (moss), B (frost)\n"), 0},
		{"one too many of several in one description", "yarn-unused", headed("Colors: A (moss), B (frost)\n"), 1},
		{"a yarn not in a list with a mark before each", "yarn-undeclared", headed("Materials\nCotton cord, 250 g / 150 m per cone:\n • Yarn A (Straw), 2 cones\n • Yarn B (Sloe), 1 cone\n5 mm hook\n\n") + "With one strand of C, sew a line.\n", 1},
		{"a yarn in a list with a mark before each", "yarn-undeclared", headed("Materials\nCotton cord, 250 g / 150 m per cone:\n • Yarn A (Straw), 2 cones\n • Yarn B (Sloe), 1 cone\n5 mm hook\n\n") + "With one strand of B, sew a line.\n", 0},
		{"yarns as items of an item", "notion-unlisted", headed("## Materials\n\n- DK cotton:\n  - Color A: Rust, 20 m\n  - Color B: Loam, 5 m\n- Hook\n- Needle\n- Stitch marker\n\n") + "Place marker in last st. Weave in ends.\n", 0},
		{"a needle that is called by the yarn", "notion-unlisted", headed("Materials\nDK cotton, 50 g\nYarn needle\n4 mm hook\n\n") + "Weave in ends.\n", 0},
		{"what stands in a list behind a needle that is called by the yarn", "notion-unlisted", headed("Materials\nDK cotton, 50 g\nYarn needle\nPins\n\n") + "Place marker in last st. Weave in ends.\n", 1},
		{"a list that goes on behind a blank line", "notion-unlisted", headed("**You will need**\n\nDK wool, 50 g:\n* Moss\n* Bark\n\nA hook of 4 mm.\nBrown sewing cotton for the eyes.\nA large needle.\n\n") + "Sew the eyes with the sewing cotton.\n", 0},
		{"thread beside a needle", "notion-unlisted", headed("Materials\nDK cotton, 50 g\nSewing needle and thread\n\n") + "Sew it on with sewing thread.\n", 0},
		{"a tail that serves as filling", "notion-unlisted", headed("Notions: needle\n") + "Push the tail inside as stuffing.\n", 0},
		{"filling that is asked for beside what serves as some", "notion-unlisted", headed("Notions: needle\n") + "Push the tail inside as stuffing. Stuff the rest.\n", 1},
		{"buttons for nothing", "notion-unused", headed("Notions: 8 buttons, stitch marker\n"), 1},
		{"a needle among other things", "notion-unlisted", headed("Hook: 4 mm\nSundries: a wool needle\n") + "Sew the mat to its lining.\n", 0},
		{"no needle among other things", "notion-unlisted", headed("Hook: 4 mm\nSundries: pins\n") + "Sew the mat to its lining.\n", 1},
		{"a needle in a sentence", "notion-unlisted", headed("Hook: 4 mm\nA blunt needle and a few pins\n") + "Sew the mat to its lining.\n", 0},
		{"a hook in a table", "hook-size", headed("| Hook | 4 mm (G-6) |\n"), 0},
		{"another hook in a table", "hook-size", headed("| Hook | 4 mm (J-10) |\n"), 1},
		{"a steel hook", "hook-size", headed("Hook: steel, 1.25 mm\n"), 0},
		{"a hook too thick for steel", "hook-size", headed("Hook: steel, 6.5 mm\n"), 1},
		{"a hook of steel or another stuff", "hook-size", headed("Hook: 6.5 mm, steel or wood\n"), 0},
		{"a measure that lacks a size", "sizes-mismatch", headed("Sizes: S (M, L)\nFront edge: 11 (12) cm\n"), 1},
		{"a measure of each size", "sizes-mismatch", headed("Sizes: S (M, L)\nFront edge: 11 (12, 13) cm\n"), 0},
		{"a list of abbreviations in brackets", "turn-missing", headed("Letters: ch (chain), sc (single crochet), st(s) (stitch(es))\n"), 0},
		{"a list of abbreviations, each on a line", "turn-missing", headed("ch...chain\nsc...single crochet\n"), 0},
		{"a word with dots whose meaning is not read whole", "row-short", strings.Replace(headed("Abbreviations\nhw .... haw: ch 2, skip 2 sts or whatever space is there, sc in next sc\n"), "Rows 2-14: "+plainRow, "Row 2: Ch 1, sc in first sc, 3 hw, turn.\n", 1), 0},
		{"a word with dots that the list explains", "abbreviation-unknown", strings.Replace(headed("Abbreviations\nhw .... haw: ch 2, skip 2 sts or whatever space is there, sc in next sc\n"), "Rows 2-14: "+plainRow, "Row 2: Ch 1, sc in first sc, 3 hw, turn.\n", 1), 0},
		{"a word with dots whose meaning is read", "row-short", strings.Replace(headed("Abbreviations\nhw .... haw: skip 2 sts, sc in next st\n"), "Rows 2-14: "+plainRow, "Row 2: Ch 1, sc in first sc, 3 hw, turn.\n", 1), 1},
		{"buttons for nothing, on a line of their own", "notion-unused", headed("Hook: 4 mm\n8 buttons\n"), 1},
		{"buttons for nothing, in a list", "notion-unused", headed("Materials\n- 8 buttons\n- stitch marker\n\n"), 1},
		{"buttons to sew on", "notion-unused", headed("Notions: 8 buttons\n") + "Sew on the buttons.\n", 0},
		{"buttons to wear or not", "notion-unused", headed("Notions: 8 buttons (optional)\n"), 0},
		{"eyes and filling for nothing", "notion-unused", headed("Notions: two 6 mm safety eyes, stuffing\n"), 2},
		{"a tool that is told of nowhere", "notion-unused", headed("Notions: stitch marker, tapestry needle, pins\n"), 0},
		{"a ribbon that is a bow", "notion-unused", headed("Notions: 1 m of ribbon\n") + "Tie a bow.\n", 0},
		{"a needle to sew with, below another heading", "notion-unlisted", headed("What you'll need: 4 mm hook\n") + "Sew the mat to its lining.\n", 1},
		{"a needle to sew with, below supplies", "notion-unlisted", headed("Supplies\n- 4 mm hook\n\n") + "Sew the mat to its lining.\n", 1},
		{"a needle that stands below supplies", "notion-unlisted", headed("Supplies\n- 4 mm hook\n- wool needle\n\n") + "Sew the mat to its lining.\n", 0},
		{"a needle on a line of its own", "notion-unlisted", headed("Hook: 4 mm\nTapestry needle\n") + "Sew the mat to its lining.\n", 0},
		{"a number that is not the name's, in a list", "yarn-weight", headed("Materials\n- Sport weight (5) cotton, 50 g\n\n"), 1},
		{"a number that is not the name's, of several yarns", "yarn-weight", headed("Yarn: sport (5): A (moss), B (frost)\n"), 1},

		{"wrong letter in a list", "hook-size", headed("Materials: wool, 200 m; 5.5 mm hook (US G-6); needle\n"), 1},
		{"wrong letter on a line of its own", "hook-size", headed("5.5 mm hook (US G-6)\n"), 1},
		{"right letter on a line of its own", "hook-size", headed("5.5 mm hook (US I-9)\n"), 0},
		{"a yarn's letter beside a hook", "hook-size", headed("Materials: 5 mm hook for B, wool in moss (A) and frost (B)\n"), 0},
		{"wrong letter below a heading", "hook-size", headed("\nHook\n5.5 mm (US J-10)\n\n"), 1},
		{"right letter below a heading", "hook-size", headed("\nHook\n5.5 mm (US I-9)\n\n"), 0},
		{"wrong letter behind dots", "hook-size", headed("Hook ........ 5.5 mm (US J-10)\n"), 1},
		{"wrong letter behind a heading in capitals", "hook-size", headed("HOOK 5.5 mm (US J-10)\n"), 1},
		{"wrong number of a steel hook", "hook-size", headed("Supplies\n- 1.65 mm steel hook (US steel 5)\n"), 1},
		{"wrong number of a steel hook behind it", "hook-size", headed("Materials: steel hook 1.65 mm (US steel 5)\n"), 1},
		{"right number of a steel hook", "hook-size", headed("Materials: steel hook 1.65 mm (US steel 7)\n"), 0},
		{"wrong letter", "hook-size", headed("Hook: 4 mm (US H-8)\n"), 1},
		{"a letter of three sizes", "hook-size", headed("Hook: 11.5 mm (US P-16)\n"), 0},
		{"another of them", "hook-size", headed("Hook: 15 mm (US P)\n"), 0},
		{"none of them", "hook-size", headed("Hook: 13 mm (US P)\n"), 1},
		{"a letter of three sizes alone", "hook-size", headed("Hook: US P\n"), 1},
		{"a steel hook of a yarn hook's number", "hook-size", headed("Hook: 1.65 mm (US steel 7)\n"), 0},
		{"the old UK number", "hook-size", headed("Hook: 4 mm (UK 8)\n"), 0},
		{"a letter with another's number", "hook-size", headed("Hook: US G-8\n"), 1},

		{"plies in the UK", "yarn-weight", strings.Replace(headed("Yarn A: 4 ply wool (3)\n"), "Terms: US", "Terms: UK", 1), 1},
		{"plies in the UK, of the weight", "yarn-weight", strings.Replace(headed("Yarn A: 4 ply wool (1)\n"), "Terms: US", "Terms: UK", 1), 0},
		{"plies in the US", "yarn-weight", headed("Yarn A: 4 ply wool (4)\n"), 0},
		{"thread of another number", "yarn-weight", headed("Yarn A: crochet thread size 10, lace (2)\n"), 1},
		{"gauge of a yarn half as thick", "yarn-weight", headed("Yarn A: worsted (4)\nGauge: 26 sc and 28 rows = 10 cm (4 in)\n"), 1},
		{"a toy, worked tightly", "yarn-weight", headed("Yarn A: worsted (4)\nGauge: 26 sc and 28 rows = 10 cm (4 in)\nNotions: toy filling\n"), 0},
		{"near the next weight", "yarn-weight", headed("Yarn A: worsted (4)\nGauge: 16 sc and 18 rows = 10 cm (4 in)\n"), 0},
		{"two strands", "yarn-weight", headed("Yarn A: lace (0), two strands held together\nGauge: 13 sc = 10 cm (4 in)\n"), 0},
		{"a name of two weights", "yarn-weight", headed("Yarn A: fingering (0)\n"), 0},
		{"a hook for a dense mat", "yarn-weight", headed("Hook: 4 mm\nYarn A: worsted (4)\n"), 0},
		{"a hook for an airy shawl", "yarn-weight", headed("Hook: 5 mm\nYarn A: fingering (1)\n"), 0},
		{"a steel hook for the finest thread", "yarn-weight", headed("Hook: 0.75 mm\nYarn A: thread (0)\n"), 0},
		{"a hook too thick for any of it", "yarn-weight", headed("Hook: 8 mm\nYarn A: fingering (1)\n"), 1},
		{"a hook of no such yarn", "yarn-weight", headed("Hook: 2 mm\nYarn A: worsted (4)\n"), 1},

		{"a size half as wide", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 5 cm x 10 cm (2 in x 4 in)\n"), 1},
		{"the same on its side", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 10 cm x 10 cm (4 in x 4 in)\n"), 0},
		{"rounded", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 10.5 cm x 10 cm (4 1/4 in x 4 in)\n"), 0},
		{"of something folded", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 5 cm x 10 cm (2 in x 4 in), folded\n"), 0},
		{"one unit for both", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 15 x 10 cm (6 x 4 in)\n"), 1},
		{"one unit for both, as it comes out", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 10 x 10 cm (4 x 4 in)\n"), 0},
		{"a width and a height", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 15 cm (6 in) wide and 10 cm (4 in) tall\n"), 1},
		{"a width and a height, as they come out", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 10 cm (4 in) wide and 10 cm (4 in) tall\n"), 0},
		{"a width alone", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: width 15 cm (6 in)\n"), 1},
		{"a width of half as much", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: width 5 cm (2 in)\n"), 0},
		{"a square", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 15 cm (6 in) square\n"), 2},
		{"a square, as it comes out", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 10 cm (4 in) square\n"), 0},
		{"the word before the length", "measure-mismatch", around("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: circumference 15 cm (6 in)\n"), 1},
		{"the word behind the length", "measure-mismatch", around("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 15 cm (6 in) around\n"), 1},
		{"around, as it comes out", "measure-mismatch", around("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: circumference 20 cm (8 in)\n"), 0},
		{"around one of two", "measure-mismatch", pair("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 15 cm (6 in) around\n"), 1},
		{"around one of two, as it comes out", "measure-mismatch", pair("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 20 cm (8 in) around\n"), 0},
		{"as long as the maker likes", "measure-mismatch", going("Rep Row 2 until the scarf is long enough."), 0},
		{"so many rows in all", "measure-mismatch", going("Rep Row 2 until you have 140 rows."), 0},
		{"in plain words to a length", "measure-mismatch", going("Work even until piece measures 100 cm."), 0},
		{"plain words of something else", "measure-mismatch", going("Put it aside until the frost is over."), 1},
		{"to the length that is promised", "measure-mismatch", going("Rep Row 2 until piece measures 100 cm."), 0},
		{"to another length", "measure-mismatch", going("Rep Row 2 until piece measures 80 cm."), 1},
		{"as wide as nothing of it, and as long as the maker likes", "measure-mismatch",
			strings.Replace(going("Rep Row 2 until the scarf is long enough."), "10 cm x 100 cm (4 in", "16 cm x 100 cm (6 1/4 in", 1), 1},
		{"a size by another name", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nSize: 15 cm x 10 cm (6 x 4 in)\n"), 1},
		{"a size by another name, as it comes out", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nSize: 10 cm x 10 cm (4 x 4 in)\n"), 0},
		{"the size of a head", "measure-mismatch", around("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nSize: fits a head of 54 cm around\n"), 0},
		{"a sentence", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size 15 cm wide.\n"), 1},
		{"a sentence, as it comes out", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size 10 cm wide.\n"), 0},
		{"a border beside it", "measure-mismatch", bordered("16 cm", "Border", "Rnd 1: Ch 1, sc evenly around; join.\n"), 1},
		{"as much as the border may add", "measure-mismatch", bordered("13 cm", "Border", "Rnd 1: Ch 1, sc evenly around; join.\n"), 0},
		{"a border of nobody knows how many rounds", "measure-mismatch", bordered("16 cm", "Border", "Rnd 1: Ch 1, sc evenly around; join.\nRep Rnd 1 until the border is wide enough.\n"), 0},
		{"less than it is without the border, folded or not", "measure-mismatch", bordered("4 cm", "Border", "Rnd 1: Ch 1, sc evenly around; join.\n"), 1},
		{"folded to a bag", "measure-mismatch", bordered("16 cm", "Strap", "Ch 60.\n") + "Fold the mat in half and sew the sides.\n", 0},
		{"not folded", "measure-mismatch", bordered("16 cm", "Strap", "Ch 60.\n") + "Sew on the strap.\n", 1},
		{"one of many squares", "measure-mismatch", bordered("16 cm", "Loop", "Ch 6.\n") + "Make 19 squares and sew the squares together.\n", 0},
		{"before felting", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished size: 15 cm (6 in) wide before felting\n"), 0},
		{"a loop beside it", "measure-mismatch", bordered("13 cm", "Hanging loop", "Ch 12.\n"), 1},
		{"another piece beside it", "measure-mismatch", bordered("16 cm", "Pocket", "Ch 12.\n"), 0},
		{"mesh over as many stitches", "measure-mismatch", meshed("15 cm", "sc in first st, *ch 1, skip next st, sc in next st; rep from * to last st, sc in last st; turn. (7 sc, 5 ch-1 sps)"), 1},
		{"mesh over as many stitches, as it comes out", "measure-mismatch", meshed("10 cm", "sc in first st, *ch 1, skip next st, sc in next st; rep from * to last st, sc in last st; turn. (7 sc, 5 ch-1 sps)"), 0},
		{"lace that opens out", "measure-mismatch", meshed("15 cm", "sc in first st, *ch 4, skip next st, sc in next st; rep from * to last st, sc in last st; turn. (7 sc, 5 ch-4 sps)"), 0},

		{"a multiple in another key", "multiple-mismatch", shells("Pattern multiple: 6 + 3\n", 98, ""), 1},
		{"a multiple that fits", "multiple-mismatch", shells("Pattern multiple: 6 + 2\n", 98, ""), 0},
		{"a multiple with a border beside it", "multiple-mismatch", shells("Stitch multiple: 6 + 3\n", 98, "Border\nRnd 1: Ch 1, sc evenly around; join.\n"), 1},
		{"a multiple that fits with a border beside it", "multiple-mismatch", shells("Stitch multiple: 6 + 2\n", 98, "Border\nRnd 1: Ch 1, sc evenly around; join.\n"), 0},
		{"a multiple of which piece", "multiple-mismatch", shells("Stitch multiple: 6 + 3\n", 98, "Pocket\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\n"), 0},
		{"a repeat of another length", "multiple-mismatch", shells("Stitch multiple: 8 + 2\n", 98, ""), 1},
		{"a repeat of half the length", "multiple-mismatch", shells("Stitch multiple: 12 + 2\n", 98, ""), 0},
		{"a multiple in a sentence", "multiple-mismatch", shells("", 98, ""), 0},
		{"a multiple in a sentence that does not fit", "multiple-mismatch", strings.Replace(shells("", 98, ""), "Ch 98", "Multiple of 6 + 3.\nCh 98", 1), 1},
		{"a multiple in a sentence, of stitches", "multiple-mismatch", strings.Replace(shells("", 98, ""), "Ch 98", "Multiple of 6 + 1.\nCh 98", 1), 0},
		{"a multiple in a sentence, of chains", "multiple-mismatch", strings.Replace(shells("", 98, ""), "Ch 98", "Multiple of 6 + 2.\nCh 98", 1), 0},
		{"a sentence on the multiple is no step", "count-unknown", strings.Replace(shells("", 98, ""), "Ch 98", "Multiple of 6 + 2.\nCh 98", 1), 0},

		{"inches that are not the centimetres", "measure-mismatch", headed("Finished size: 10 cm x 12 cm (4 in x 7 in)\n"), 1},
		{"inches that are not the centimetres of a size by another name", "measure-mismatch", headed("Size: 10 cm x 12 cm (4 in x 7 in)\n"), 1},
		{"inches that are not the centimetres of a gauge below its heading", "measure-mismatch", headed("\n## Gauge\n\n12 sc and 14 rows = 10 cm (3 in)\n\n"), 1},
		{"inches that are the centimetres of a gauge below its heading", "measure-mismatch", headed("\n## Gauge\n\n12 sc and 14 rows = 10 cm (4 in)\n\n"), 0},
		{"yards that are not the metres", "measure-mismatch", headed("Yarn: wool in moss, 480 m (425 yd)\n"), 1},
		{"yards that are the metres", "measure-mismatch", headed("Yarn: wool in moss, 480 m (525 yd)\n"), 0},
		{"yards that are the metres, rounded", "measure-mismatch", headed("Yarn: wool in moss, 2 m (2 yd)\n"), 0},
		{"yards that are not the metres, in a list", "measure-mismatch", headed("Supplies\n- wool in moss, 480 (520) m / 425 (569) yd\n"), 1},
		{"yards of another yarn", "measure-mismatch", headed("Supplies\n- wool in moss, 480 m, and in frost, 40 yd\n"), 0},
		{"a size behind dots", "measure-mismatch", headed("Gauge ........ 12 sc and 14 rows = 10 cm (4 in)\nFinished size ... 5 cm x 10 cm\nSize ........ 5 cm x 10 cm (2 in x 4 in)\n"), 1},
		{"a width of its own", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\n**Finished width:** 15 cm (6 in)\n"), 1},
		{"a width of its own, as it comes out", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\n**Finished width:** 10 cm (4 in)\n"), 0},
		{"a width and a length of their own", "measure-mismatch", headed("Gauge: 12 sc and 14 rows = 10 cm (4 in)\nFinished length: 10 cm (4 in)\nFinished width: 15 cm (6 in)\n"), 1},
		{"the size of a hook in the gauge", "measure-mismatch", headed("Gauge: 12 sc = 4 in with a 5 mm hook\n"), 0},

		{"no head so small", "fit-doubtful", headed("For: women\nGauge: 12 sc and 14 rnds = 10 cm (4 in)\nFinished size: hat 38 cm (15 in) around\n"), 0},

		{"abbreviations behind their meanings", "count-unknown", headed("\nAbbreviations\nchain (ch)\nsingle crochet (sc)\n"), 0},
		{"a gauge of no length", "gauge-missing", headed("Gauge: 12 sc and 14 rows\n"), 1},
		{"a gauge in words", "gauge-missing", headed("Gauge: 3 sc and 4 rows to the inch\n"), 0},
		{"a gauge that does not matter", "gauge-missing", headed("Gauge: not important\nFinished size: 10 cm (4 in) square\n"), 0},
		{"one system", "units-single", headed("Gauge: 12 sc and 14 rows = 4\"\n"), 1},
		{"both systems", "units-single", headed("Gauge: 12 sc and 14 rows = 10 cm / 4 inches square\n"), 0},
		{"both systems of a square", "units-single", headed("Gauge: 12 sc x 14 rows = 10 x 10 cm (4 x 4 in)\n"), 0},
		{"yarn in yards", "units-single", headed("Yarn: green, 100 yd\n"), 0},
		{"no bust so small", "fit-doubtful", headed("Sizes: S (M, L)\nFor: women\nFinished size: bust 62 (92, 102) cm\n"), 1},
		{"busts as published", "fit-doubtful", headed("Sizes: S (M, L)\nFor: women\nFinished size: bust 82 (92, 102) cm\n"), 0},
		{"children by their years", "fit-doubtful", headed("Sizes: 4 (6, 8)\nFor: children\nFinished size: chest 40 (71, 76) cm\n"), 1},
		{"a width of one side", "fit-doubtful", headed("Sizes: S (M, L)\nFor: women\nFinished size: width 46 (51, 56) cm\n"), 0},
		{"a bust for nobody in particular", "fit-doubtful", headed("Sizes: S (M, L)\nFinished size: bust 40 (44, 48) cm\n"), 0},
		{"ease of a hand", "ease-mismatch", headed("To fit: hand 17 cm around\nFinished size: 17 cm around\nEase: 5 cm\n"), 1},
		{"ease of a hand, as it comes out", "ease-mismatch", headed("To fit: hand 17 cm around\nFinished size: 17 cm around\nEase: none\n"), 0},
		{"ease of a bust of its own", "ease-mismatch", headed("To fit: bust 80 cm\n**Finished chest:** 88 cm\n**Ease:** 14 cm\n"), 1},
		{"ease of a bust of its own, as it comes out", "ease-mismatch", headed("To fit: bust 80 cm\n**Finished chest:** 88 cm\n**Ease:** 8 cm\n"), 0},
		{"a body that falls as sizes grow", "sizes-mismatch", headed("Sizes: S (M, L)\nTo fit bust: 81 (91, 89) cm\n"), 1},

		{"a button on a cozy", "small-parts", titled("Mug cozy", "Sew on the button.\n"), 0},
		{"a button for a baby", "small-parts", titled("Baby jacket", "Sew on the button.\n"), 1},
		{"buttons that are crocheted", "small-parts", titled("Baby jacket", "\nPiece: Button\nCh 4.\n"), 0},
		{"a button in sizes of the smallest", "small-parts", sized("2T (3T)", "Sew on the button.\n"), 1},
		{"a button in sizes of older children", "small-parts", sized("8 (10) years", "Sew on the button.\n"), 0},
		{"eyes, with the pattern's own advice", "small-parts", titled("Dormouse toy", "Attach the safety eyes.\n\nNote: The eyes are small parts. For a child under three years embroider them instead.\n"), 0},
		{"eyes, with advice on all parts", "small-parts", titled("Dormouse toy", "Attach the safety eyes.\n\nNote: Not suitable for children under three: small parts can be swallowed. Leave them off for a baby.\n"), 0},
		{"eyes that are said not to be safe", "small-parts", titled("Dormouse toy", "Attach the safety eyes.\n\nNote: Safety eyes are not safe for children under 3. For a baby, leave them out and embroider the eyes.\n"), 0},
		{"eyes of which only that is said", "small-parts", titled("Dormouse toy", "Attach the safety eyes.\n\nNote: Safety eyes are not safe.\n"), 1},
		{"a list with arrows for marks", "notion-unlisted", "Terms: US\n\nMATERIALS\n> 2 safety eyes\n> yarn needle\n\nHEAD\nRnd 1: 6 sc in magic ring. (6 sc)\nAttach the safety eyes. Weave in ends.\n", 0},
		{"yarns cut by a letter that none has", "yarn-undeclared", "Terms: US\nYarn A: bark\nYarn B: leaf\n\nHEAD\nWith A, 6 sc in magic ring. (6 sc)\nRnd 2: With B, 2 sc in each st around. (12 sc)\nFasten off C.\n", 1},
		{"a yarn in the number of a heading", "yarn-undeclared", "Terms: US\nYarn A: bark\nYarn B: leaf\n\nHead (make 2 in C)\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off.\n\nTail (make 1 in B)\nRnd 1: 6 sc in magic ring. (6 sc)\nFasten off.\n", 1},
		{"beads, with advice on eyes", "small-parts", titled("Dormouse toy", "Attach the safety eyes. Sew on the beads.\n\nNote: The eyes are small parts. For a child under three years embroider them instead.\n"), 1},
		{"eyes, with the danger alone", "small-parts", titled("Dormouse toy", "Attach the safety eyes.\n\nNote: The eyes are small parts. Buy two of them.\n"), 1},
		{"eyes, for any child", "small-parts", titled("Dormouse toy", "Attach the safety eyes.\n\nNote: A toy for babies. Do not stuff it firmly.\n"), 1},
		{"eyes, with advice far apart", "small-parts", titled("Dormouse toy", "Attach the safety eyes.\n\nNote: The eyes are small parts. Sew with care. A gift for a baby. Do not wash it hot.\n"), 1},
		{"embroidered eyes instead", "small-parts", titled("Dormouse toy", "Embroider the eyes instead of using safety eyes.\n"), 0},
		{"eyes, and thread to embroider with", "small-parts", strings.Replace(titled("Dormouse toy", ""), "Terms: US\n", "Terms: US\nMaterials: black embroidery thread, 9 mm safety eyes\n", 1), 1},
		{"eyes in a list below thread to embroider with", "small-parts", strings.Replace(titled("Dormouse toy", ""), "Terms: US\n", "Terms: US\n\nMaterials\n- embroidery floss\n- 9 mm safety eyes\n\n", 1), 1},
		{"eyes in a list above thread to embroider with", "small-parts", strings.Replace(titled("Dormouse toy", ""), "Terms: US\n", "Terms: US\n\nMaterials\n- 9 mm safety eyes\n- embroidery floss\n\n", 1), 1},
		{"eyes, and a nose that is embroidered", "small-parts", titled("Dormouse toy", "Attach the safety eyes and embroider the nose.\n"), 1},
		{"embroidered eyes, or others", "small-parts", titled("Dormouse toy", "Embroider the eyes or use safety eyes.\n"), 1},
		{"eyes instead of embroidered ones", "small-parts", titled("Dormouse toy", "Attach safety eyes instead of embroidering them.\n"), 1},
		{"buttons, and arms that are not stuffed", "small-parts", titled("Dormouse toy", "Do not stuff the arms and sew on the buttons.\n"), 1},
		{"buttons that are sewn on without a gap", "small-parts", titled("Dormouse toy", "Sew on the buttons without leaving a gap.\n"), 1},
		{"beads by their number", "small-parts", titled("Dormouse toy", "Thread the no 6 beads.\n"), 1},
		{"not only buttons", "small-parts", titled("Dormouse toy", "Use not only buttons.\n"), 1},
		{"eyes that are not glued", "small-parts", titled("Dormouse toy", "The safety eyes are not glued.\n"), 1},
		{"buttons that are not used", "small-parts", titled("Dormouse toy", "Buttons are not used.\n"), 0},
		{"buttons that are kept out", "small-parts", titled("Dormouse toy", "Do not use buttons, beads or plastic eyes.\n"), 0},
		{"buttons that are kept out, on the next line", "small-parts", titled("Dormouse toy", "\nNotes\nDo not use beads or\nbuttons.\n"), 0},
		{"eyes in a list below what has none", "small-parts", strings.Replace(titled("Dormouse toy", ""), "Terms: US\n", "Terms: US\n\nMaterials\n- yarn without sheen\n- 9 mm safety eyes\n\n", 1), 1},
		{"buttons that are kept out among others", "small-parts", titled("Dormouse toy", "The toy has no small parts such as buttons or beads.\n"), 0},
		{"eyes, with advice, for children of all ages", "small-parts", strings.Replace(titled("Dormouse toy", "Attach the safety eyes.\n\nNote: The eyes are small parts. For a child under three years embroider them instead.\n"), "Terms: US\n", "Terms: US\nFor: children from 12 months\n", 1), 1},
		{"eyes, with advice, for children of three", "small-parts", strings.Replace(titled("Dormouse toy", "Attach the safety eyes.\n\nNote: The eyes are small parts. For a child under three years embroider them instead.\n"), "Terms: US\n", "Terms: US\nFor: children from 3 years\n", 1), 0},
		{"baby yarn", "small-parts", titled("Coat in baby yarn", "Sew on the button.\n"), 0},

		{"a blanket", "sleep-loose", titled("Sofa blanket", ""), 0},
		{"for a cot", "sleep-loose", titled("Cot blanket", ""), 1},
		{"for a cot, with the pattern's own advice", "sleep-loose", titled("Cot blanket", "\nNote: Never leave a blanket in the cot with a sleeping baby.\n"), 0},
		{"for a cot, to be taken out of it", "sleep-loose", titled("Cot blanket", "\nNote: Take it out of the cot before the baby sleeps.\n"), 0},
		{"for a cot, with advice on something else", "sleep-loose", titled("Cot blanket", "\nNote: Do not wash it hot. A baby sleeps well in a cot.\n"), 1},
		{"for a cot, and not for the floor", "sleep-loose", titled("Cot blanket", "\nNote: Do not use the cot blanket as a rug.\n"), 1},
		{"for a cot, with praise", "sleep-loose", titled("Cot blanket", "\nNote: Keeps a baby warm in its cot.\n"), 1},
		{"in baby blue", "sleep-loose", titled("Baby blue blanket", ""), 0},

		{"ties for a child", "cord-length", titled("Child's bonnet", "\nPiece: Ties\nCh 60.\n"), 1},
		{"for grown-ups", "cord-length", titled("Woman's bonnet", "\nPiece: Ties\nCh 60.\n"), 0},
		{"a toy of no age with a cord", "cord-length", titled("Dormouse toy", "\nPiece: Cord\nCh 60.\n"), 1},
		{"a toy with a cord, of an age in words", "cord-length", titled("Dormouse toy, seven years and over", "\nPiece: Cord\nCh 60.\n"), 0},
		{"a toy with a cord, for children over an age in words", "cord-length", titled("Dormouse toy", "\nPiece: Cord\nCh 60.\n\nNotes\nDo not give it to children under three.\n"), 0},
		{"tying off", "cord-length", titled("Child's scarf", "Tie off the ends.\n"), 0},
		{"a cord in sizes by years", "cord-length", titled("Hooded jacket, sizes 2 (4, 6) years", "Drawstring: Ch 120. Fasten off.\n"), 1},
		{"a cord in sizes by months", "cord-length", sized("3-6 (6-12) months", "Drawstring: Ch 120. Fasten off.\n"), 1},
		{"a cord in sizes of grown-ups", "cord-length", sized("16 (18) years", "Drawstring: Ch 120. Fasten off.\n"), 0},
		{"a cord, and years of work", "cord-length", titled("The work of 2 years", "Drawstring: Ch 120. Fasten off.\n"), 0},
		{"a soother clip", "cord-length", titled("Soother clip", ""), 1},

		{"too few to lie flat", "round-cups", cupped("Hedge mat", ""), 1},
		{"one more as an edging", "round-cups", cupped("Hedge mat", "Rnd 5: Ch 1, sc in each st around; join. (10 sc)\n"), 1},
		{"a vessel", "round-cups", cupped("Hedge mat", "Rnds 5-9: Ch 1, sc in each st around; join. (10 sc)\n"), 0},
		{"a hat", "round-cups", cupped("Hedge hat", ""), 0},
	}
	for _, test := range tests {
		t.Run(test.rule+"/"+test.name, func(t *testing.T) {
			found := 0
			a := lint.Analyze(source.New(test.pattern))
			for _, f := range a.Findings {
				if f.Rule == test.rule {
					found++
				}
			}
			assert.Equal(t, test.found, found, "%s", listed(a.Findings))
		})
	}
}
