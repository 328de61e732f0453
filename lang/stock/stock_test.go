package stock

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/stitch"
	"stitchproof/lang/table"
)

// Each pair as the publication that is named prints it.
func TestHooksAsPublished(t *testing.T) {
	for _, c := range []struct {
		source, kind, letter, number string
		mm                           float64
	}{
		{"Spinrite", "US", "C", "2", 2.75}, {"Spinrite", "US", "D", "3", 3.25}, {"Spinrite", "US", "G", "6", 4},
		{"Spinrite", "US", "", "7", 4.5}, {"Spinrite", "US", "H", "8", 5}, {"Spinrite", "US", "I", "9", 5.5},
		{"Spinrite", "US", "K", "10.5", 6.5}, {"Spinrite", "US", "L", "11", 8}, {"Spinrite", "US", "N", "15", 10},
		{"crochetmethat", "US", "B", "1", 2.25}, {"matifs", "US", "B", "1", 2}, {"reference.com", "US", "B", "1", 2.5},
		{"homequestions", "US", "J", "10", 6}, {"Coats", "US", "P", "16", 11.5}, {"Paton's", "US", "P", "", 15},
		{"Crochet World", "US", "Q", "", 16}, {"snovej", "US", "E", "4", 3.5},
		{"matifs", "UK", "", "14", 2}, {"matifs", "UK", "", "8", 4}, {"matifs", "UK", "", "000", 10},
		{"homequestions", "US steel", "", "00", 3.5}, {"homequestions", "US steel", "", "14", 0.75},
		{"anniescatalog", "US steel", "", "7", 1.65},
	} {
		found := false
		for _, l := range Labels() {
			found = found || l.Kind == c.kind && l.Letter == c.letter && l.Number == c.number && l.MM == Range{c.mm, c.mm} && strings.Contains(l.Source, c.source)
		}
		assert.True(t, found, "%s prints %s %s%s as %v mm", c.source, c.kind, c.letter, c.number, c.mm)
	}
}

// A label that publications give two sizes means either; one without its owner
// means anybody's.
func TestLabelsThatDisagree(t *testing.T) {
	for _, mm := range []float64{10, 11.5, 15} {
		assert.True(t, AnyIs(Labelled("US", "P", ""), mm), "P is %v mm", mm)
	}
	for _, mm := range []float64{4.5, 1.65} {
		assert.True(t, AnyIs(Labelled("US", "", "7"), mm), "US 7 is %v mm", mm)
	}
	assert.True(t, AnyIs(Labelled("", "", "8"), 4), "the old UK 8")
	assert.True(t, AnyIs(Labelled("", "", "8"), 5), "the US 8")
	assert.False(t, AnyIs(Labelled("US", "G", "6"), 4.5))
	assert.Empty(t, Labelled("US", "G", "7"))
	usual, ok := UsualLabel("US", 6.5)
	assert.True(t, ok)
	assert.Equal(t, "US K-10 1/2", usual.String())
	_, ok = UsualLabel("US", 27)
	assert.False(t, ok, "T is anything from 25 to 30 mm: it tells no size")
}

// Crochet World (Annie's), October 2018, p. 64.
func TestWeightsAsPublished(t *testing.T) {
	for n, want := range []struct {
		name     string
		sc, hook Range
	}{
		{"lace", Range{32, 42}, Range{1.5, 2.25}}, {"super fine", Range{21, 32}, Range{2.25, 3.5}}, {"fine", Range{16, 20}, Range{3.5, 4.5}},
		{"light", Range{12, 17}, Range{4.5, 5.5}}, {"medium", Range{11, 14}, Range{5.5, 6.5}}, {"bulky", Range{8, 11}, Range{6.5, 9}},
		{"super bulky", Range{5, 9}, Range{9, 16}}, {"jumbo", Range{0, 5}, Range{16, 99}},
	} {
		w, ok := WeightNumbered(n)
		require.True(t, ok)
		assert.Equal(t, n, w.Number)
		assert.Equal(t, want.name, w.Name)
		assert.Equal(t, []Range{want.sc, want.hook}, []Range{w.SC, w.Hook}, w.Name)
	}
	assert.Len(t, WeightsNamed("4 ply"), 2, "knitsplease and Skein Queen disagree on 4 ply")
	assert.Len(t, WeightsNamed("dk"), 1)
}

// Spinrite prints these busts of women and chests of children.
func TestBodiesAsPublished(t *testing.T) {
	for size, want := range map[string]Range{"M": {36, 38}, "L": {40, 42}, "XL": {44, 46}} {
		require.NotEmpty(t, Bodies("woman", size, "bust"), size)
		assert.Equal(t, want, Bodies("woman", size, "bust")[0].Inches, size)
	}
	for size, want := range map[string]float64{"2": 21, "4": 23, "6": 25, "8": 26.5, "10": 28} {
		assert.Equal(t, Range{want, want}, Bodies("child", size, "bust")[0].Inches, size)
	}
	var at12 []Range
	for _, b := range Bodies("child", "12 months", "bust") {
		at12 = append(at12, b.Inches)
	}
	assert.Equal(t, Range{18, 19}, Hull(at12), "Craft Yarn Council 18, Bernat 19")
}

// windchilde.com measured three stitches; the ratio is about that of heights.
func TestYarnUse(t *testing.T) {
	use := func(id string) float64 { return YarnUse(stitch.ByID(id)) }
	assert.Equal(t, []float64{10.6, 15.7, 20.4}, []float64{use("sc"), use("hdc"), use("dc")})
	assert.Equal(t, 4.8, ChainUse())
	assert.InDelta(t, 3*10.6, use("tr"), 0.01)
	assert.Equal(t, use("dc"), use("FPdc"))
	assert.Equal(t, 3*use("dc"), use("dc3tog"))
	assert.Zero(t, YarnUse(nil))
}

func TestRanges(t *testing.T) {
	for text, want := range map[string]Range{"4": {4, 4}, "2.75-3": {2.75, 3}, "-4--2": {-4, -2}, "-2-0": {-2, 0}} {
		records, err := table.Read("t", "a\n"+text+"\n", "a")
		require.NoError(t, err)
		got, err := readRange(records[0], "a")
		require.NoError(t, err)
		assert.Equal(t, want, got, text)
	}
	for _, text := range []string{"x", "3-2", "1-2-3"} {
		records, err := table.Read("t", "a\n"+text+"\n", "a")
		require.NoError(t, err)
		_, err = readRange(records[0], "a")
		assert.ErrorContains(t, err, `t:2: a is a number or a range of two`)
	}
	assert.Equal(t, "2.75-3", Range{2.75, 3}.String())
}

// Figures that cautions name, as their sources state them.
func TestSafetyAsPublished(t *testing.T) {
	for key, want := range map[string]struct {
		figure       float64
		unit, source string
	}{
		"small-parts": {36, "months", "16 CFR 1500.18(a)(9)"}, "small-cylinder": {31.7, "mm", "16 CFR"}, "soft-toy": {36, "months", "EN 71-1"},
		"hood-neck": {0, "mm", "CPSC"}, "waist-string": {75, "mm", "F1816-18"}, "belt": {360, "mm", "EN 14682"}, "toy-cord": {220, "mm", "EN 71-1"},
		"toy-loop": {380, "mm", "EN 71-1"}, "soother": {220, "mm", "EN 12586"}, "soother-us": {0, "mm", "16 CFR 1511.6"}, "sleep": {12, "months", "Pediatrics"},
	} {
		l := SafetyLimit(key)
		assert.Equal(t, want.figure, l.Figure, key)
		assert.Equal(t, want.unit, l.Unit, key)
		assert.Contains(t, l.Source, want.source, key)
	}
	assert.Len(t, SafetyLimits(), 11, "a figure without a test")
	assert.Panics(t, func() { SafetyLimit("none") })
}

func TestColours(t *testing.T) {
	seen := map[string][3]uint8{}
	for _, c := range Colours() {
		assert.NotContains(t, seen, c.Name, "twice")
		seen[c.Name] = c.RGB
	}
	assert.Equal(t, [3]uint8{165, 42, 42}, seen["brown"])
	assert.Equal(t, [3]uint8{0, 100, 0}, seen["dark green"])
	for name, rgb := range seen {
		if other, ok := seen[strings.Replace(name, "gray", "grey", 1)]; assert.True(t, ok, name) {
			assert.Equal(t, other, rgb, "however it is spelt")
		}
	}
}

// Every table reads, every line has its source, and every source is cited and
// says how it was had.
func TestSources(t *testing.T) {
	require.NotEmpty(t, Heads("woman"))
	require.NotEmpty(t, Fits())
	tables := hookTable + weightTable + useTable + bodyTable + headTable + easeTable + safetyTable + colourTable
	var cited []string
	for line := range strings.Lines(tables) {
		if line[0] != '#' {
			cells := strings.Split(strings.TrimSpace(line), "\t")
			cited = append(cited, strings.Fields(cells[len(cells)-1])...)
		}
	}
	records, err := table.Read("sources.tsv", sourceTable, "key", "citation")
	require.NoError(t, err)
	for _, r := range records {
		key, citation := r.Text("key"), r.Text("citation")
		assert.Contains(t, cited, key, "not cited")
		assert.True(t, key == "practice" || strings.Contains(citation, "(read") || strings.Contains(citation, "(memory"), "%s does not say how it was had", key)
	}
}
