package materials_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/materials"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

func read(header string) *materials.List {
	return materials.Read(syntax.Read(source.New(header + "\nPiece: Mat\nCh 5.\n")))
}

func TestHooks(t *testing.T) {
	for value, want := range map[string]string{
		"3.25 mm (US D-3)":              "3.25 US D-3",
		"G/6 (4 mm)":                    "4 US G-6",
		"US 7 (4.5 mm)":                 "4.5 US -7",
		"4.5mm":                         "4.5",
		"US K/10½ (6.5 mm)":             "6.5 US K-10.5",
		"US K-10 1/2 (6.5 mm)":          "6.5 US K-10.5",
		"9 mm (M/N-13)":                 "9 US M-13",
		"10 mm (N/P-15)":                "10 US N-15",
		"9 mm (L/M-13)":                 "9 US M-13", // no L is a 13
		"4 mm (US G-6, UK 8)":           "4 US G-6 UK -8",
		"5 mm and 4 mm (H-8 and G-6)":   "5 US H-8; 4 US G-6",
		"5 mm and 4 mm (H-8)":           "5; 4",
		"1.65 mm (steel 7)":             "1.65 US steel -7",
		"size H":                        "0 US H-",
		"4 mm or size needed for gauge": "4",
	} {
		var found []string
		for _, h := range read("Hook: " + value).Hooks {
			words := []string{fmt.Sprint(h.MM)}
			for _, l := range h.Labels {
				words = append(words, l.Kind+" "+l.Letter+"-"+l.Number)
			}
			found = append(found, strings.Join(words, " "))
		}
		assert.Equal(t, want, strings.Join(found, "; "), value)
	}
}

func TestYarnWeights(t *testing.T) {
	for value, want := range map[string]string{
		"acorn tan, fingering (1), 12 m": "1",
		"gray, worsted (4)":              "4",
		"DK":                             "3",
		"#5 chunky":                      "5",
		"fingering":                      "", // two weights are called so
		"light blue cotton":              "",
		"light weight cotton":            "3",
		"super bulky, 100 g":             "6",
		"baby pink wool":                 "",
		"moss sock yarn":                 "", // for socks, of whatever weight
		"moss, sock weight":              "1",
	} {
		yarns := read("Yarn A: " + value).Yarns
		require.Len(t, yarns, 1, value)
		got := ""
		if w, ok := yarns[0].Weight(); ok {
			got = fmt.Sprint(w.Number)
		}
		assert.Equal(t, want, got, value)
	}
}

// A number of plies names a weight in the UK, and a name of the standard stands beside its
// number; what a yarn is called else is none.
func TestWeightsBesideNumbers(t *testing.T) {
	for value, want := range map[string]string{
		"4 ply wool (3)":                   "3: 1 2",
		"4-ply cotton (1)":                 "1: 1 2",
		"8 ply (5)":                        "5: 3",
		"crochet thread, lace (2), 45 m":   "2: 0",
		"size 10 crochet thread (3), 15 m": "3: 0",
		"light (4) wool":                   "4: 3",
		"sock (4) of many colours":         "4:",
	} {
		yarns := read("Yarn A: " + value).Yarns
		require.Len(t, yarns, 1, value)
		got := fmt.Sprint(*yarns[0].Number) + ":"
		for _, w := range append(yarns[0].Ply, yarns[0].Weights...) {
			got += fmt.Sprint(" ", w.Number)
		}
		assert.Equal(t, want, got, value)
	}
}

func TestListBelowAHeading(t *testing.T) {
	l := read("Pattern: Oak mat\nTerms: US\n\nMaterials\nA: bark brown, worsted (4)\n- Yarn B: leaf green\n5 mm hook\ntapestry needle\n")
	require.True(t, l.Given)
	var names []string
	for _, y := range l.Yarns {
		names = append(names, y.Name)
	}
	assert.ElementsMatch(t, []string{"A", "B"}, names)
	require.Len(t, l.Hooks, 1)
	assert.Equal(t, 5.0, l.Hooks[0].MM)
	assert.Contains(t, l.Text, "tapestry needle")
	assert.True(t, l.Named("b"))
	assert.True(t, l.Named("leaf green"))
	assert.False(t, l.Named("c"))
	assert.False(t, read("Pattern: Oak mat").Given)
}

// TestSuppliesInAnyLayout reads hooks and yarns wherever a pattern lists them. What is
// no list of them gives none.
func TestSuppliesInAnyLayout(t *testing.T) {
	for header, want := range map[string]string{
		"Materials: worsted wool (4) in straw, 200 m; 5.5 mm hook (US I-9); tapestry needle":      "5.5 US I-9; worsted wool (4) in straw, 200 m",
		"Materials\n- US G-6 (4 mm) hook\n- stitch marker\n- Sport weight (2) cotton, 50 g":       "4 US G-6; Sport weight (2) cotton, 50 g",
		"## Materials\n\n- US G-6 (4 mm) hook\n- stitch marker":                                   "4 US G-6",
		"Yarn: DK\n5.5 mm hook (US I-9)":                                                          "5.5 US I-9; DK",
		"US terms. Fingering cotton. 2.75 mm hook (US C-2). Needle.":                              "2.75 US C-2",
		"3 mm hook, DK (3) cotton in cup brown and nut green, stuffing, darning needle":           "3; DK (3) cotton in cup brown and nut green",
		"4 ply yarn in dew, 2 x 50 g; crochet hook, 3.5 mm, US E-4; wool needle":                  "3.5 US E-4; 4 ply yarn in dew, 2 x 50 g",
		"4 mm hook; DK wool in white (A), pink (B) and green (C). Wool needle.":                   "4; A: white; B: pink; C: green",
		"Yarn: worsted (4): A (moss), B (frost)":                                                  "A: moss; B: frost",
		"Colors: A (moss), B (frost), C (straw)":                                                  "A: moss; B: frost; C: straw",
		"Yarn: DK, MC: moss, CC: frost":                                                           "MC: moss; CC: frost",
		"Materials: 5 mm hook for B, 4 mm hook for the brim":                                      "5; 4",
		"Materials: US size 10 crochet thread and a 1.65 mm hook (steel 7)":                       "1.65 US steel -7",
		"I used a 4 mm hook, but you may use 3.5 mm (US E-4).":                                    "4",
		"Materials: size H crochet hook":                                                          "0 US H-",
		"Materials: I hook (5.5 mm)":                                                              "5.5 US I-",
		"Notions: 2 hook and eye fasteners of 10 mm, 8 buttons":                                   "",
		"A mat of wool.\nInsert the hook and pull up a loop of 5 mm.":                             "",
		"Gauge of the mat: with a 5 mm hook, 14 sts = 10 cm":                                      "",
		"Materials\n- DK cotton in three colors: A (primrose), 300 m; B (moss), 200 m; C (frost)": "A: primrose; B: moss; C: frost",
		"Supplies\n- DK cotton (3): A haw red, 40 m; B frost, 60 m":                               "A: haw red; B: frost",
		"Materials\n4 ply wool (1) in Moss (A), 25 m, and in Blackberry (B), 10 m":                "A: Moss; B: Blackberry",
		"Materials\n4 ply wool (1) in Moss (A), 25 m":                                             "A: 4 ply wool (1) in Moss (A), 25 m",
		"Materials\nMoss DK wool (3), 25 m (A)\nFrost DK wool (3), 10 m (B)":                      "A: Moss DK wool (3), 25 m (A); B: Frost DK wool (3), 10 m (B)",
		"Materials\n- Moss (MC)\n- Frost (CC)":                                                    "MC: Moss (MC); CC: Frost (CC)",
		"A = bark brown DK (3), 30 m\nB = oak green DK (3), 60 m\nHook 3 mm":                      "3; A: bark brown DK (3), 30 m; B: oak green DK (3), 60 m",
		"What you'll need: 220 m of DK cotton (3), a 4.5 mm hook (US 7), a yarn needle":           "4.5 US -7; 220 m of DK cotton (3)",
		"HOOK 5.5 mm (US J-10)":                                                                   "5.5 US J-10",
		"Hook\n5.5 mm (US J-10)":                                                                  "5.5 US J-10",
		"Materials\n- 1.65 mm steel hook (US steel 5)":                                            "1.65 US steel -5",
		"Materials: 20 m of elastic; a ball of wool; B hook (2.25 mm)":                            "2.25 US B-",
		"Abbreviations\nA = decrease\nB = increase":                                               "",
		"Notes: boards A (large) and B (small) help with blocking":                                "",
	} {
		var found []string
		l := read(header)
		for _, h := range l.Hooks {
			words := []string{fmt.Sprint(h.MM)}
			for _, label := range h.Labels {
				words = append(words, label.Kind+" "+label.Letter+"-"+label.Number)
			}
			found = append(found, strings.Join(words, " "))
		}
		for _, y := range l.Yarns {
			found = append(found, strings.TrimPrefix(y.Name+": "+strings.TrimSpace(y.Text), ": "))
		}
		assert.Equal(t, want, strings.Join(found, "; "), header)
	}
}

// The colour may stand behind a yarn's letter, before its amount.
func TestYarnWithItsColourInBrackets(t *testing.T) {
	list := materials.Read(syntax.Read(source.New("Terms: US\n## Materials\n\n- Cotton cord\n  - Color A (tan): 160 yards\n  - Color B (bark): 90 yards\n- 8 mm (US L-11) hook\n\n## Lid\nWith A, ch 2.\nRnd 1: 6 sc in 2nd ch from hook.\n")))
	var names []string
	for _, y := range list.Yarns {
		names = append(names, y.Name)
	}
	assert.Equal(t, []string{"A", "B"}, names)
}

// A notion on a line of its own is listed. It makes no list of materials, which may
// be told elsewhere.
func TestNotionOnALineOfItsOwn(t *testing.T) {
	l := read("Hook: 5 mm\nTapestry needle\n\nAbbreviations\nsc: single crochet; ch: chain")
	assert.Contains(t, l.Text, "tapestry needle")
	assert.False(t, read("5 mm hook, wool needle").Given)
	assert.True(t, read("A = oak green DK (3), 60 m\nHook 3 mm\nneedle").Given, "three lines are a list")
	assert.False(t, read("Hook 3 mm\n\nneedle\n\ntoy filling").Given)
	assert.NotContains(t, read("Hook: 5 mm\nNo needle is needed, but a good light.").Text, "needle")
}

// TestLastingNotions finds what a list names to become part of the piece: no tool, and
// nothing that is left to the maker.
func TestLastingNotions(t *testing.T) {
	for list, want := range map[string]string{
		"8 buttons of 20 mm":               "buttons buttons",
		"two 6 mm safety eyes":             "safety eyes safety eyes",
		"polyester stuffing":               "toy filling stuffing",
		"buttons, if you like":             "",
		"a button (optional)":              "",
		"stitch marker, tapestry needle":   "",
		"scraps of wool, waste yarn, felt": "",
	} {
		got := ""
		for _, n := range materials.Notions() {
			if at := n.LastsIn(list); at != nil {
				got += n.Name + " " + list[at[0]:at[1]]
			}
		}
		assert.Equal(t, want, got, list)
	}
}

func TestGaugesOfSeveralStitches(t *testing.T) {
	l := read("Gauge: 15 dc and 8 rows = 10 cm; 18 sc and 20 rows = 10 cm")
	require.Len(t, l.Gauges, 2)
	assert.Equal(t, []string{"dc", "sc"}, []string{l.Gauges[0].Of, l.Gauges[1].Of})
	assert.Len(t, read("Gauge: 7 rows = 10 cm; 14 sts = 10 cm").Gauges, 1)
	assert.Empty(t, read("Gauge: not important").Gauges)
}

func TestSwatch(t *testing.T) {
	s := read("Swatch: 20 sts x 10 rows of sc = 2.1 g").Swatch
	require.NotNil(t, s)
	assert.Equal(t, []float64{20, 10, 2.1}, []float64{s.Stitches, s.Rows, s.Grams})
	assert.Same(t, stitch.ByID("sc"), s.Stitch(stitch.US))
	assert.Nil(t, read("Swatch: please make one").Swatch)
}

func TestWearers(t *testing.T) {
	for header, want := range map[string]materials.Wearer{
		"Pattern: Hedge mat":                      materials.Nobody,
		"Pattern: Baby hat":                       materials.Baby,
		"Pattern: Hat\nFor: children of 3 to 6":   materials.Child,
		"Pattern: Baby-soft hat\nFor: women":      materials.Woman,
		"Pattern: Hat\nSizes: toddler (child)":    materials.Toddler,
		"Pattern: Hat\nFor: men":                  materials.Man,
		"Pattern: Hat\nFor: grown-ups":            materials.Adult,
		"Pattern: Mandarin mat\nFor: the kitchen": materials.Nobody,
	} {
		assert.Equal(t, want, read(header).For, header)
	}
}

func TestAges(t *testing.T) {
	for text, want := range map[string]materials.Wearer{
		"Hooded jacket, sizes 2 (4, 6) years":      materials.Toddler,
		"4 (6) 8 (10) yrs":                         materials.Child,
		"0-3 (3-6, 6-12) months":                   materials.Baby,
		"12-18 months":                             materials.Toddler,
		"2T (3T, 4T)":                              materials.Toddler,
		"Hat for children of 5 years":              materials.Child,
		"ages 12 to 16 years":                      materials.Child,
		"16 (18, 20) years":                        materials.Nobody,
		"A blanket that took me 2 years":           materials.Nobody,
		"The 12 months blanket":                    materials.Nobody,
		"Sizes 2 (4, 6)":                           materials.Nobody,
		"99999999999999999999 (4) years old sizes": materials.Nobody,
	} {
		assert.Equal(t, want, materials.AgedIn(text), text)
	}
}

// TestFinishedSize finds the size of the piece, and not that of its wearer, wherever it
// stands above the work.
func TestFinishedSize(t *testing.T) {
	for header, want := range map[string]string{
		"Finished size: 20 cm wide":                              "20 cm wide",
		"Size: 40 cm x 17 cm":                                    "40 cm x 17 cm",
		"Size: 29 cm x 32 cm (11 x 12 in)":                       "29 cm x 32 cm (11 x 12 in)",
		"Size: 40 cm":                                            "",
		"Size: to fit 40 cm x 17 cm":                             "",
		"Size: child (adult)":                                    "",
		"To fit bust 91 cm\nFinished chest 100 cm; length 50 cm": "chest 100 cm; length 50 cm",
		"Finished size 21 cm x 150 cm. Blocked.":                 "21 cm x 150 cm",
		"Finished measurements: about 60 cm wide":                "about 60 cm wide",
		"It was finished in 20 days and 3 cm of frost.":          "",
	} {
		got := ""
		if f := read(header).Finished; f != nil {
			require.Len(t, f, 1, header)
			got = f[0].Value
		}
		assert.Equal(t, want, got, header)
	}
}

// In millimetres; the first metric length counts.
func TestExtents(t *testing.T) {
	extent := func(e *materials.Extent) string {
		if e == nil {
			return ""
		}
		return fmt.Sprintf("%.0f %.0f", e.Low.Vals, e.High.Vals)
	}
	for value, want := range map[string]string{
		"bust 81 (91, 101) cm":  "[810 910 1010] [810 910 1010]",
		"32 in (81 cm)":         "[810] [810]",
		"bust 81-86 (91-96) cm": "[810 910] [860 960]",
		"chest 81 to 86 cm":     "[810] [860]",
		"bust 81–86 cm":         "[810] [860]",
		"28 in":                 "[711] [711]",
		"most grown-ups":        "",
		"2 1/2-4 in":            "[64] [102]",
		"bust of 86 cm, shown on a body of 81-86 cm": "[860] [860]",
	} {
		assert.Equal(t, want, extent(read("To fit: "+value).ToFit), value)
	}
	for value, want := range map[string]string{
		"5 cm (2 in) of positive ease":     "[50] [50]",
		"5-10 cm of negative ease":         "[-100] [-50]",
		"-5 cm":                            "[-50] [-50]",
		"10 cm less than your own bust":    "[-100] [-100]",
		"none":                             "[0] [0]",
		"Zero ease":                        "[0] [0]",
		"0":                                "[0] [0]",
		"0.5 cm":                           "[5] [5]",
		"loose":                            "[102] [152]",
		"very close-fitting":               "[-102] [0]",
		"from 2 in negative to 2 positive": "",
		"as you like it":                   "",
		"5 (5, 7.5) cm at the bust":        "[50 50 75] [50 50 75]",
	} {
		assert.Equal(t, want, extent(read("Ease: "+value).Ease), value)
	}
}
