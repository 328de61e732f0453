package terms_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
	"stitchproof/lang/terms"
)

func read(text string) *syntax.File { return syntax.Read(source.New(text)) }

// rewritten is a pattern in the words of a dialect.
func rewritten(t *testing.T, text string, to stitch.Dialect) string {
	t.Helper()
	file := read(text)
	edits, err := terms.Rewrite(file, stitch.Unsettled, to)
	require.NoError(t, err)
	out, err := file.Text.Apply(edits)
	require.NoError(t, err)
	return out.String()
}

// Every pattern of ours, whichever terms it is in, works to the same stitches in
// the other, and comes back byte for byte.
func TestPatternsThereAndBack(t *testing.T) {
	var paths []string
	for _, folder := range []string{"patterns", "worked"} {
		found, err := filepath.Glob("../../testdata/" + folder + "/*.crochet")
		require.NoError(t, err)
		require.NotEmpty(t, found)
		paths = append(paths, found...)
	}
	both := map[stitch.Dialect]int{}
	for _, path := range paths {
		t.Run(filepath.Base(path), func(t *testing.T) {
			content, err := os.ReadFile(path)
			require.NoError(t, err)
			text := string(content)
			home := terms.Find(read(text))
			if !home.Stated() {
				t.Skip("does not state its terms")
			}
			both[home.Dialect]++
			there := rewritten(t, text, home.Dialect.Other())
			assert.NotEqual(t, text, there)
			assert.Equal(t, home.Dialect.Other(), terms.Find(read(there)).Dialect)
			assert.Empty(t, terms.Find(read(there)).Strangers())
			assert.Equal(t, made(text), made(there))
			if home.Dialect == stitch.US || !strings.Contains(strings.ToLower(text), "trebles") { // see TestSpellingsThatComeBackOtherwise
				assert.Equal(t, strings.Split(text, "\n"), strings.Split(rewritten(t, there, home.Dialect), "\n"))
			}
		})
	}
	assert.Greater(t, both[stitch.US], 20)
	assert.Greater(t, both[stitch.UK], 2)
}

// made lists what a pattern comes to, a line for each row and size: the count and
// whether what the row states agrees, and the stitches and spaces.
func made(text string) []string {
	var out []string
	f := fabric.Work(read(text))
	for i, p := range f.Pieces {
		for size := range f.Sizes() {
			for _, r := range p.Rows {
				t := r.Tallies[size]
				out = append(out, fmt.Sprintf("%d %d %d: %v %d %v", i, size, r.Index, t.Known, t.Made, t.Agrees()))
			}
			for _, s := range p.Stitches[size] {
				kind := "space"
				if s.Kind != nil {
					kind = s.Kind.ID
				}
				out = append(out, fmt.Sprintf("%d %d %d: %s %d in %d", i, size, s.Row, kind, s.Chains, s.Into))
			}
		}
	}
	return out
}

// What is rewritten, in US and in UK terms, and what stays.
func TestWordsThereAndBack(t *testing.T) {
	const head = "Pattern: Haw\nTerms: %v\n\n"
	for _, pair := range [...][2]string{
		{"Rnd 1: Sc in next st, SC in next st, 2 dc's in next st.", "Rnd 1: Dc in next st, DC in next st, 2 tr's in next st."},
		{"Rnd 1: FPdc in next st, Fpdc in next st, FPDC in next st, dcfp in next st.", "Rnd 1: FPtr in next st, Fptr in next st, FPTR in next st, trfp in next st."},
		{"Rnd 1: Dc2tog, dc 2 tog, Half-Double Crochet in next st.", "Rnd 1: Tr2tog, tr 2 tog, Half-Treble Crochet in next st."},
		{"Rnd 1: 6 single crochet\n  in ring (6 single crochets).", "Rnd 1: 6 double crochet\n  in ring (6 double crochets)."},
		{"Rnd 1: Treble crochet in next st, 3-tr cluster in next st.", "Rnd 1: Double treble crochet in next st, 3-dtr cluster in next st."},
		{"Rnd 1: Skip 1 st, sc in skipped st, skipping 1 dc.", "Rnd 1: Miss 1 st, dc in missed st, missing 1 tr."},
		{"Rnd 1: Sk 1 st, sc in skipped st.", "Rnd 1: Sk 1 st, dc in missed st."},
		{"Work even in sc for 3 rows.", "Work straight in dc for 3 rows."},
		{"Gauge: 20 sc and 10 rows = 10 cm\nNotes\nCheck your gauge and keep an even tension.", "Tension: 20 dc and 10 rows = 10 cm\nNotes\nCheck your tension and keep an even tension."},
		{"Special stitches\nhaw: yo, insert hook, yo; the tr is tall.", "Special stitches\nhaw: yrh, insert hook, yrh; the dtr is tall."},
		{"Special stitches\nhaw: 3 dc in next st.\n\nRnd 1: Haw in next st.", "Special stitches\nhaw: 3 tr in next st.\n\nRnd 1: Haw in next st."},
		{"Abbreviations: dc = double crochet (UK tr), hdc = half double crochet", "Abbreviations: tr = treble crochet (US dc), htr = half treble crochet"},
		{"Notes\nDouble the yarn, as single yarn is triple the work; skip lunch. The double crochets follow.",
			"Notes\nDouble the yarn, as single yarn is triple the work; skip lunch. The treble crochets follow."},
		{"Notes\nUS terms are used. The hook is a US 7.", "Notes\nUK terms are used. The hook is a US 7."},
		{"Notes\nSome read (US terms: dc) and single crochets.", "Notes\nSome read (UK terms: tr) and double crochets."},
		{"Piece: Single crochet band\nRow 1: Sc in next st.\n\nPiece: Cuff\nWork as Single crochet band.", "Piece: Double crochet band\nRow 1: Dc in next st.\n\nPiece: Cuff\nWork as Double crochet band."},
		{"Rnd 1: Sc in the single dc, double loop in next st, working into single loop.", "Rnd 1: Dc in the single tr, double loop in next st, working into single loop."},
		{"Designer: Sc Hedge", "Designer: Sc Hedge"},
		{"// dc is short\nRnd 1: 6 sc in ring.", "// tr is short\nRnd 1: 6 dc in ring."},
		{"Hook: 4 mm (US G-6)\nYarn A: double knitting, dc gray", "Hook: 4 mm (US G-6)\nYarn A: double knitting, dc gray"},
		{"Rnd 1: Ch 3, sl st in first st, ss in next st, inc, shell in next sp.", "Rnd 1: Ch 3, sl st in first st, ss in next st, inc, shell in next sp."},
	} {
		american, british := fmt.Sprintf(head, "US")+pair[0]+"\n", fmt.Sprintf(head, "UK")+pair[1]+"\n"
		assert.Equal(t, british, rewritten(t, american, stitch.UK))
		assert.Equal(t, american, rewritten(t, british, stitch.US))
	}
}

// Spellings of which the other dialect has fewer, or for which it has a better word,
// and words that a pattern has of both: they are rewritten, and come back otherwise
// or stay.
func TestSpellingsThatComeBackOtherwise(t *testing.T) {
	for text, want := range map[string]string{
		"Terms: UK\nRnd 1: 6 trebles in ring.\n":                    "Terms: US\nRnd 1: 6 double crochets in ring.\n",
		"Terms: UK\nRnd 1: Half treble in ring, skip 1 st.\n":       "Terms: US\nRnd 1: Half double crochet in ring, skip 1 st.\n",
		"Terms: UK\nSpecial stitches\nhaw: wrh, wool round hook.\n": "Terms: US\nSpecial stitches\nhaw: yo, yarn over.\n",
		"Terms: UK\nRnd 1: Skip 1 st, miss 1 st, 6 dc in ring.\n":   "Terms: US\nRnd 1: Skip 1 st, miss 1 st, 6 sc in ring.\n",
	} {
		assert.Equal(t, want, rewritten(t, text, stitch.US))
	}
	assert.Equal(t, "Terms: UK\nRnd 1: Dtr in ring.\n", rewritten(t, "Terms: US\nRnd 1: Trc in ring.\n", stitch.UK))
}

// A pattern that does not state its terms is given a line that does, where its
// header begins, with the file's own line ends.
func TestTermsAreStated(t *testing.T) {
	for text, want := range map[string]string{
		"Pattern: Haw\nHook: 4 mm\n\nRnd 1: 6 sc in ring.\n":       "Pattern: Haw\nTerms: UK\nHook: 4 mm\n\nRnd 1: 6 dc in ring.\n",
		"Hook: 4 mm\r\n\r\nRnd 1: 6 sc in ring.\r\n":               "Terms: UK\r\nHook: 4 mm\r\n\r\nRnd 1: 6 dc in ring.\r\n",
		"\ufeffRnd 1: 6 sc in ring.\n":                             "\ufeffTerms: UK\n\nRnd 1: 6 dc in ring.\n",
		"Gauge: 20 sc = 10 cm\n\nRnd 1: 6 sc in ring.\n":           "Terms: UK\nTension: 20 dc = 10 cm\n\nRnd 1: 6 dc in ring.\n",
		"Rnd 1: 6 sc in ring.":                                     "Terms: UK\n\nRnd 1: 6 dc in ring.",
		"Haw\nNotes\nUS terms are used.\n\nRnd 1: 6 sc in ring.\n": "Haw\nNotes\nUK terms are used.\n\nRnd 1: 6 dc in ring.\n",
	} {
		there := rewritten(t, text, stitch.UK)
		assert.Equal(t, want, there)
		assert.True(t, terms.Find(read(there)).Stated(), there)
	}
}

func TestWhatIsNotRewritten(t *testing.T) {
	for text, want := range map[string]string{
		"Rnd 1: 6 dc in ring.\n":                        "nothing in the pattern settles",
		"Rnd 1: 6 sc in ring, htr in next st.\n":        "mixes US and UK terms: `htr` is a word of UK terms only",
		"Terms: UK\nRnd 1: 6 dc in ring, sc in ring.\n": "mixes US and UK terms: `sc` is a word of US terms only",
	} {
		edits, err := terms.Rewrite(read(text), stitch.Unsettled, stitch.UK)
		assert.ErrorContains(t, err, want)
		var unsettled *terms.UnsettledError
		assert.ErrorAs(t, err, &unsettled)
		assert.Empty(t, edits)
	}
	for text, usual := range map[string]stitch.Dialect{
		"Terms: UK\nRnd 1: 6 dc in ring.\n": stitch.US, // what it says goes before what is usual
		"Rnd 1: 6 dc in ring.\n":            stitch.UK,
	} {
		edits, err := terms.Rewrite(read(text), usual, stitch.UK)
		assert.NoError(t, err)
		assert.Empty(t, edits)
	}
	edits, err := terms.Rewrite(read("Rnd 1: 6 dc in ring.\n"), stitch.UK, stitch.US)
	assert.NoError(t, err)
	assert.Len(t, edits, 2, "the stitch and the line that states the terms")
}
