package terms_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/stitch"
	"stitchproof/lang/terms"
)

const (
	us   = stitch.US
	uk   = stitch.UK
	none = stitch.Unsettled
)

// What settles a pattern's terms, from the strongest evidence to what settles
// nothing. The ranks are those of beautybady.com and foxcreations.com.au.
func TestWhatSettlesTheTerms(t *testing.T) {
	for _, test := range []struct {
		name, pattern string
		want          stitch.Dialect
		shown         []terms.Kind
	}{
		{"the header says it", "Pattern: Haw\nTerms: UK (British)\nRnd 1: 6 sc in ring.\n", uk, []terms.Kind{terms.Statement, terms.Stitch}},
		{"a note says it", "Pattern: Haw\nNotes\nWritten in UK terms.\n\nRnd 1: 6 dc in ring.\n", uk, []terms.Kind{terms.Statement}},
		{"a note says it of the terms", "Pattern: Haw\nNotes\nCrochet terms used in this pattern are UK.\n\nRnd 1: 6 dc in ring.\n", uk, []terms.Kind{terms.Statement}},
		{"a note says it behind a colon", "Haw\n\nNotes on terms: US\n\nRnd 1: 6 dc in ring.\n", us, []terms.Kind{terms.Statement}},
		{"a note says it of the names of stitches", "Haw\n\nNotes\nThe stitch names are the American ones.\n\nRnd 1: 6 dc in ring.\n", us, []terms.Kind{terms.Statement}},
		{"a note calls them English", "Haw\n\n(English stitch names; take care)\n\nRnd 1: 6 dc in ring.\n", uk, []terms.Kind{terms.Statement}},
		{"a language of a country", "Haw\n\nNotes\nAll names of stitches are given in US English.\n\nRnd 1: 6 dc in ring.\n", us, []terms.Kind{terms.Statement}},
		{"a language alone", "Haw\n\nNotes\nThe names of the birds are in English.\n\nRnd 1: 6 dc in ring.\n", none, nil},
		{"the heading of the list says it", "Haw\n\nAbbreviations and terms (USA)\nch = chain\ndc = double crochet\n\nRnd 1: 6 dc in ring.\n", us, []terms.Kind{terms.Statement}},
		{"the key of a list in one paragraph says it", "Haw\n\nAbbreviations (British): ch, chain; dc, double crochet\n\nRnd 1: 6 dc in ring.\n", uk, []terms.Kind{terms.Statement}},
		{"a comment says it, which no maker sees", "// terms: UK\nRnd 1: 6 dc in ring.\n", none, nil},
		{"a note says both", "Pattern: Haw\nNotes\nWritten in US and UK terms.\n\nRnd 1: 6 dc in ring.\n", none, nil},
		{"what a stitch is called elsewhere", "Haw\n\nNotes\nA flat circle of tr (dtr in UK terms).\n\nRnd 1: 6 sc in ring.\n", us, []terms.Kind{terms.Stitch}},
		{"a table of patterns", "| file | what | counts |\n|---|---|---|\n| tam | tam in UK terms | 7, 14 |\n| haw | ball of sc | 6, 12 |\n\nRnd 1: 6 sc in ring.\n", us, []terms.Kind{terms.Stitch, terms.Mention}},
		{"a cell of a table", "| Haw | by the hedge | UK terms |\n|---|---|---|\n\nRnd 1: 6 dc in ring.\n", uk, []terms.Kind{terms.Statement}},
		{"a hook says nothing", "Pattern: Haw\nHook: 4 mm (US G-6)\nRnd 1: 6 dc in ring.\n", none, nil},
		{"sc", "Rnd 1: 6 sc in ring.\nRnd 2: 2 dc in each st around.\n", us, []terms.Kind{terms.Stitch}},
		{"htr", "Rnd 1: 6 htr in ring.\nRnd 2: 2 dc in each st around.\n", uk, []terms.Kind{terms.Stitch}},
		{"the list alone", "Abbreviations: dc = double crochet, htr = half treble, tr = treble\n\nRnd 1: 6 dc in ring.\n", uk, []terms.Kind{terms.Stitch, terms.Stitch}},
		{"a name in brackets is the other's", "Abbreviations: dc = double crochet (US sc), tr = treble (US dc)\n\nRnd 1: 6 tr in ring.\n", none, nil},
		{"a note about htr", "Pattern: Haw\nNotes\nThe htr lies flat.\n\nRnd 1: 6 dc in ring.\n", uk, []terms.Kind{terms.Mention}},
		{"3 chains before tr", "Ch 9.\nRow 1: Tr in 4th ch from hook and in each ch across.\n", uk, []terms.Kind{terms.Height}},
		{"4 chains before tr", "Ch 9.\nRow 1: Tr in 5th ch from hook and in each ch across.\n", us, []terms.Kind{terms.Height}},
		{"a turning chain", "6 dc in ring.\nRow 2: Ch 1, dc in each st across.\n", uk, []terms.Kind{terms.Height}},
		{"miss and tension", "Tension: 20 dc = 10 cm\n\nRnd 1: 6 dc in ring, miss 1 st.\n", uk, []terms.Kind{terms.Word, terms.Word}},
		{"miss so many, in words", "Rnd 1: 6 dc in ring, miss eleven sts.\n", none, []terms.Kind{terms.Word}},
		{"miss alone", "Rnd 1: 6 dc in ring, miss 1 st.\n", none, []terms.Kind{terms.Word}},
		{"yrh is proof", "Rnd 1: 6 dc in ring, miss 1 st.\nNote: yrh once.\n", uk, []terms.Kind{terms.Word, terms.Word}},
		{"words that disagree", "Gauge: 20 dc = 10 cm\n\nRnd 1: 6 dc in ring, miss 1 st, yrh.\n", none, []terms.Kind{terms.Word, terms.Word, terms.Word}},
		{"colour and grey", "Yarn A: grey\nNotes\nChoose any colour.\n\nRnd 1: 6 dc in ring.\n", none, []terms.Kind{terms.Spelling, terms.Spelling}},
		{"an even tension is the hand's", "Notes\nKeep an even tension and miss nothing.\n\nRnd 1: 6 dc in ring.\n", none, nil},
	} {
		t.Run(test.name, func(t *testing.T) {
			found := terms.Find(read(test.pattern))
			assert.Equal(t, test.want, found.Dialect, "%+v", found.Evidence)
			var kinds []terms.Kind
			for _, e := range found.Evidence {
				kinds = append(kinds, e.Kind)
				assert.Equal(t, e.Text, test.pattern[e.Span.Start:e.Span.End])
			}
			assert.Equal(t, test.shown, kinds)
		})
	}
}

func TestStrangers(t *testing.T) {
	for pattern, want := range map[string][]string{
		"Rnd 1: 6 sc in ring, htr in next st, sc in next st.\n":            {"htr"},
		"Rnd 1: 6 htr in ring, sc in next st, htr in next st.\n":           {"sc"},
		"Terms: US\nRnd 1: 6 htr in ring, dc in next st.\n":                {"htr"},
		"Rnd 1: 6 sc in ring, htr in next st.\n":                           {"htr"},
		"Rnd 1: 6 sc in ring, hdc (UK htr) in next st.\n":                  nil,
		"Terms: US\nNotes\nUK makers: the htr is a hdc.\n\nRnd 1: 6 sc.\n": nil,
		"Rnd 1: 6 sc in ring, long st in next st.\n":                       nil,
	} {
		var got []string
		for _, e := range terms.Find(read(pattern)).Strangers() {
			got = append(got, e.Text)
		}
		assert.Equal(t, want, got, pattern)
	}
}

// A word that comes often is one piece of evidence.
func TestEvidenceIsCounted(t *testing.T) {
	found := terms.Find(read("Rnd 1: 6 sc in ring, Sc in next st, " + strings.Repeat("sc in next st, ", 7) + "sc in next st.\n"))
	if assert.Len(t, found.Evidence, 1) {
		assert.Equal(t, 10, found.Evidence[0].Times)
	}
}
