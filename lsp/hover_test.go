package lsp

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lint"
)

// acornCup is a sound pattern to hover over.
const acornCup = `Pattern: Acorn cup
Terms: US

Special stitches
knop: (sc, ch 3, sc) in next st.

Piece: Cup
With A, make a magic ring.
Rnd 1: Ch 1, 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Rnd 3: Ch 1, *sc in next st, 2 sc in next st; rep from * around; sl st in first sc to join. (18 sc)
Fasten off.
`

const twoSizes = `Pattern: Hedge mitten
Terms: US
Sizes: S (M, L)

Piece: Cuff
With A, ch 21 (23, 25).
Row 1 (RS): Sc in 2nd ch from hook and in each ch across; turn. (20 (22, 24) sc)
Row 2: Ch 1, sc in first 4 (5, 6) sts, dc in each st to last st, sc in last st. (20 (22, 24) sts)
Fasten off.
`

const twig = `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 3 ch, branch Thorn: ch 4, sl st in 2nd ch from hook and in next 2 ch, return to stem, sc in each ch across. (13 sts)
Fasten off.
`

const sizedTwig = `Pattern: Twig
Terms: US
Sizes: S (M)

Piece: Twig
Ch 11.
Row 1: Sc in 2nd ch from hook and in next 3 ch, branch A: ch 5 (7), sc in 2nd ch from hook and in next 2 (3) ch, sc in each rem ch of A, return to stem, sc in each ch across.
`

// mark puts the mark into a text within the first occurrence of some words: in
// front of what follows the bar in them.
func mark(t *testing.T, text, words string) string {
	t.Helper()
	plain := strings.Replace(words, "|", "", 1)
	require.Contains(t, text, plain)
	return strings.Replace(text, plain, strings.Replace(words, "|", "¦", 1), 1)
}

type hovered struct {
	Contents protocol.MarkupContent `json:"contents"`
	Range    protocol.Range         `json:"range"`
}

// hoverAt opens a text and hovers over its mark; nil is nothing.
func hoverAt(t *testing.T, c *client, text string, e source.Encoding) (*hovered, *source.Text) {
	t.Helper()
	text, p := marked(t, text, e)
	c.open(file, 1, text)
	var h *hovered
	c.call("textDocument/hover", at(file, p), &h)
	return h, source.New(text)
}

// dictionary is the part of a stitch's card that the dictionary words.
func dictionary(id string) string { return "How, in US terms: " + stitch.ByID(id).How }

func TestHover(t *testing.T) {
	singleCrochet := `US: sc, single crochet
UK: dc, double crochet
` + dictionary("sc") + `
Uses: 1 st
Makes: 1 st
Yarn overs before the hook goes in: 0
Loops on the hook before it is finished: 2
Height: 1 ch; 1 of the US sc
Turning chain: ch 1, which does not count as a stitch`
	for _, test := range []struct {
		name, text, words string
		over, want        string
	}{
		{"header", acornCup, "Te|rms", "", ""},
		{"between clauses", acornCup, "(6 sc)|\n", "", ""},
		{"heading", acornCup, "Piece: C|up", "", ""},

		{"row", acornCup, "R|nd 2", "Rnd 2", `Rnd 2
Makes: 12 sts
sc: 12
Change: +6 from Rnd 1
The row below offered: 6 places, of which 0 left unworked
Stated: (12 sc), which agrees`},
		{"first row", acornCup, "Rnd |1", "Rnd 1", `Rnd 1
Makes: 6 sts
sc: 6
Stated: (6 sc), which agrees`},
		{"row along a chain", twig, "R|ow 1", "Row 1", `Row 1
Makes: 13 sts
sc: 10
sl st: 3
The row below offered: 11 places, of which 0 left unworked
Stated: (13 sts), which agrees
Shape: lies straight along every chain`},
		{"row that bends", strings.Replace(twig, "sc in each ch across. (13 sts)", "2 hdc in next ch, sc in each ch across. (14 sts)", 1), "R|ow 1", "Row 1", `Row 1
Makes: 14 sts
sc: 9
sl st: 3
hdc: 2
The row below offered: 11 places, of which 0 left unworked
Stated: (14 sts), which agrees
Shape: the stem bends about 40° towards the chain, at sts 5 to 6`},
		{"row in every size", twoSizes, "|Row 2", "Row 2", `Row 2
Sizes: S (M, L)
Makes: 20 (22, 24) sts
sc: 5 (6, 7)
dc: 15 (16, 17)
Change: 0 from Row 1 (RS)
The row below offered: 20 (22, 24) places, of which 0 left unworked
Stated: (20 (22, 24) sts), which agrees
Facing: wrong side`},
		{"row that stands for many", strings.Replace(acornCup, "Fasten off", "Rnds 4-7: Ch 1, sc in each st around; sl st in first sc to join", 1), "Rnds |4-7", "Rnds 4-7", `Rnds 4-7
Makes: 18 sts
sc: 18
Change: 0 from Rnd 3
The row below offered: 18 places, of which 0 left unworked
Stands for: 4 rows`},
		{"row that says too much", strings.Replace(acornCup, "12 sc", "13 sc", 1), "R|nd 2", "Rnd 2", `Rnd 2
Makes: 12 sts
sc: 12
Change: +6 from Rnd 1
The row below offered: 6 places, of which 0 left unworked
Stated: (13 sc), which does not agree`},
		{"row that cannot be counted", strings.Replace(acornCup, "2 sc in each st around", "2 wren in each acorn", 1), "R|nd 2", "Rnd 2", `Rnd 2
Cannot be counted: 2 wren in each acorn
Stated: (12 sc), which cannot be checked`},

		{"clause", acornCup, "2 sc in |each st around", "2 sc in each st around", `2 sc in each st around
Read as: 2 sc in each stitch to the end
Makes: 12 sts
By kind: 12 sc
Uses: 6 places
Worked into: 6 sc of Rnd 1
Count after it: 12 sts
Left to work into: 0 places`},
		{"clause in every size", twoSizes, "sc in |first", "sc in first 4 (5, 6) sts", `sc in first 4 (5, 6) sts
Read as: 1 sc in each of the first 4 (5, 6) stitches
Sizes: S (M, L)
Makes: 4 (5, 6) sts
By kind in S: 4 sc
Uses: 4 (5, 6) places
Worked into in S: 4 sc of Row 1 (RS)
Count after it: 4 (5, 6) sts
Left to work into: 16 (17, 18) places`},
		{"repeat", acornCup, "|*sc in next", "*sc in next st, 2 sc in next st; rep from * around", `*sc in next st, 2 sc in next st; rep from * around
Read as: repeated to the end [1 sc in the next stitch; 2 sc in the next stitch]
Makes: 18 sts
By kind: 18 sc
Uses: 12 places
Worked into: 12 sc of Rnd 2
Count after it: 18 sts
Left to work into: 0 places`},
		{"clause on another piece", strings.Replace(acornCup, "Fasten off", "\nPiece: Nut\nRnd 4: Sc in each st around", 1), "Sc in |each st", "Sc in each st around", `Sc in each st around
Read as: 1 sc in each stitch to the end
Makes: 18 sts
By kind: 18 sc
Uses: 18 places
Worked into: 18 sc of the piece before
Count after it: 18 sts
Left to work into: 0 places`},
		{"clause on what is only stated", strings.Replace(acornCup, "2 sc in each st around", "2 wren in each acorn", 1), "|*sc in next", "*sc in next st, 2 sc in next st; rep from * around", `*sc in next st, 2 sc in next st; rep from * around
Read as: repeated to the end [1 sc in the next stitch; 2 sc in the next stitch]
Makes: 18 sts
By kind: 18 sc
Uses: 12 places
Worked into: 12 sc that the row below states
Count after it: 18 sts
Left to work into: 0 places`},
		{"clause that works nothing", acornCup, "With |A", "With A", `With A
Read as: go on with A`},
		{"end of the piece", acornCup, "|Fasten", "Fasten off", `Fasten off`},
		{"clause of a branch", twig, "sl st in |2nd", "sl st in 2nd ch from hook and in next 2 ch", `sl st in 2nd ch from hook and in next 2 ch
Read as: 1 sl st in the 2nd chain from the hook and in each of the next 2 chains
Makes: 3 sts
By kind: 3 sl st
Uses: 4 places
Worked into: 3 ch
Count after it: 7 sts
Left to work into: 0 places
Stem: 11 places, 1 skipped, 4 worked, 6 left
Branch Thorn: 4 places, 1 skipped, 3 worked, 0 left`},
		{"return from a branch", twig, "|return", "return to stem", `return to stem
Read as: come back to the stem
Count after it: 7 sts
Left to work into: 6 places
Branch Thorn, closed: 4 places, 1 skipped, 3 worked, 0 left`},
		{"clause of a branch in sizes", sizedTwig, "sc in |2nd ch from hook and in next 2", "sc in 2nd ch from hook and in next 2 (3) ch", `sc in 2nd ch from hook and in next 2 (3) ch
Read as: 1 sc in the 2nd chain from the hook and in each of the next 2 (3) chains
Sizes: S (M)
Makes: 3 (4) sts
By kind in S: 3 sc
Uses: 4 (5) places
Worked into in S: 3 ch
Count after it: 7 (8) sts
Left to work into: 1 (2) places
Stem: 11 places, 1 skipped, 4 worked, 6 left
Branch A: 5 (7) places, 1 skipped, 3 (4) worked, 1 (2) left`},
		{"clause after what was not understood", strings.Replace(acornCup, "6 sc in magic ring", "6 wren in acorn", 1), "sl st in first |sc", "sc", "sc\n" + singleCrochet},
		{"unread clause", strings.Replace(acornCup, "6 sc in magic ring", "6 wren in acorn", 1), "6 |wren", "6 wren in acorn", `6 wren in acorn
Read as: not understood, so the row is not counted from here on`},

		{"stitch", acornCup, "6 |sc in", "sc", "sc\n" + singleCrochet},
		{"stitch at its last letter", acornCup, "6 s|c in", "sc", "sc\n" + singleCrochet},
		{"stitch in the other dialect", strings.NewReplacer("US", "UK", "sc", "dc", "sl st", "ss").Replace(acornCup), "6 |dc in", "dc", "dc\n" + singleCrochet},
		{"stitch in full", strings.Replace(acornCup, "6 sc in", "6 single crochet in", 1), "6 single |crochet", "single crochet", "single crochet\n" + singleCrochet},
		{"stitch of nobody's terms", "Piece: Cup\nRow 1: Ch 4, turn, dc in each ch.\n", "|dc", "dc", `dc
US and UK patterns mean different stitches by this word, and nothing here shows which terms are used.
As a US term: dc, double crochet, 3 ch high
As a UK term: sc, single crochet, 1 ch high`},
		{"stitch of the pattern's own", strings.Replace(acornCup, "6 sc in", "6 knop in", 1), "6 |knop", "knop", `knop
Defined by the pattern: (sc, ch 3, sc) in next st.`},
		{"definition", acornCup, "k|nop:", "knop", `knop
Defined by the pattern: (sc, ch 3, sc) in next st.`},
		{"stitch in a definition", acornCup, "knop: (|sc", "sc", "sc\n" + singleCrochet},
	} {
		t.Run(test.name, func(t *testing.T) {
			c := inProcess(t, lint.Analyze)
			c.initialize(nil, nil)
			h, text := hoverAt(t, c, mark(t, test.text, test.words), source.UTF16)
			if test.want == "" {
				assert.Nil(t, h)
				return
			}
			require.NotNil(t, h)
			assert.Equal(t, protocol.MarkupKindPlainText, h.Contents.Kind)
			assert.Equal(t, test.want, h.Contents.Value)
			assert.Equal(t, test.over, text.Slice(converter{text, source.UTF16}.span(h.Range)))
		})
	}
}

func TestHoverMarkup(t *testing.T) {
	const markdown = "**`*sc in next st, 2 sc in next st; rep from * around`**\n\n- Read as: `repeated to the end [1 sc in the next stitch; 2 sc in the next stitch]`\n- Makes: 18 sts\n- By kind: 18 sc\n"
	for _, test := range []struct {
		formats []string
		kind    protocol.MarkupKind
	}{
		{nil, protocol.MarkupKindPlainText},
		{[]string{"plaintext", "markdown"}, protocol.MarkupKindPlainText},
		{[]string{"markdown", "plaintext"}, protocol.MarkupKindMarkdown},
		{[]string{"markdown"}, protocol.MarkupKindMarkdown},
		{[]string{"html"}, protocol.MarkupKindPlainText},
	} {
		t.Run(strings.Join(test.formats, ","), func(t *testing.T) {
			bothWays(t, func(t *testing.T, c *client) {
				capabilities := object{}
				if test.formats != nil {
					capabilities = object{"textDocument": object{"hover": object{"contentFormat": test.formats}}}
				}
				c.initialize(capabilities, nil)
				h, _ := hoverAt(t, c, mark(t, acornCup, "|*sc in next"), source.UTF16)
				require.NotNil(t, h)
				assert.Equal(t, test.kind, h.Contents.Kind)
				assert.Equal(t, test.kind == protocol.MarkupKindMarkdown, strings.HasPrefix(h.Contents.Value, markdown), h.Contents.Value)
			})
		})
	}
}

func TestHoverInEachEncoding(t *testing.T) {
	text := mark(t, strings.Replace(acornCup, "Rnd 2:", "Rnd 2 (🌰 é):", 1), "2 sc in |each")
	for _, e := range []source.Encoding{source.UTF8, source.UTF16, source.UTF32} {
		t.Run(e.String(), func(t *testing.T) {
			bothWays(t, func(t *testing.T, c *client) {
				c.initialize(object{"general": object{"positionEncodings": []string{e.String()}}}, nil)
				h, plain := hoverAt(t, c, text, e)
				require.NotNil(t, h)
				assert.Contains(t, h.Contents.Value, "Uses: 6 places")
				assert.Equal(t, "2 sc in each st around", plain.Slice(converter{plain, e}.span(h.Range)))
			})
		})
	}
}

func TestPositionsOutsideTheText(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		text := strings.TrimSuffix(acornCup, ".\n")
		c.open(file, 1, text)
		var h *hovered
		for _, p := range []protocol.Position{place(9, 4294967295), place(4294967295, 0), place(4294967295, 4294967295)} {
			c.call("textDocument/hover", at(file, p), &h)
			assert.Nil(t, h, "%v is after the last character", p)
		}
		assert.NoError(t, c.leave())
	})
}

func TestWordsInMarkdown(t *testing.T) {
	for words, want := range map[string]string{
		"sc in next 3 sts":  "sc in next 3 sts",
		"[sc, inc] 6 times": "`[sc, inc] 6 times`",
		"sc_inc":            "`sc_inc`",
		"let `a` be":        "``let `a` be``",
		"`a`":               "`` `a` ``",
		"a ``b`` c`":        "``` a ``b`` c` ```",
	} {
		assert.Equal(t, want, literally(words))
	}
}
