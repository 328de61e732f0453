package stitch_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/stitch"
)

// us and uk are the IDs that a spelling has in the dialects, empty for none.
func us(spelling string) string { return id(spelling, stitch.US) }
func uk(spelling string) string { return id(spelling, stitch.UK) }

func id(spelling string, d stitch.Dialect) string {
	m, _ := stitch.Find(spelling)
	if s := m.In(d); s != nil {
		return s.ID
	}
	return ""
}

func byID(t *testing.T, id string) *stitch.Stitch {
	t.Helper()
	s := stitch.ByID(id)
	require.NotNil(t, s, id)
	return s
}

// Craft Yarn Council, crochet master list: the stitches, in US terms.
func TestCouncilListStitches(t *testing.T) {
	for abbr, name := range map[string]string{
		"bo": "bobble stitch", "BPdc": "back post double crochet", "BPdtr": "back post double treble crochet",
		"BPhdc": "back post half double crochet", "BPsc": "back post single crochet", "BPtr": "back post treble crochet",
		"ch": "chain", "chs": "chain", "CL": "cluster", "dc": "double crochet", "dc2tog": "double crochet 2 together",
		"dec": "decrease", "dtr": "double treble crochet", "edc": "extended double crochet",
		"ehdc": "extended half double crochet", "esc": "extended single crochet", "etr": "extended treble crochet",
		"FPdc": "front post double crochet", "FPdtr": "front post double treble crochet",
		"FPhdc": "front post half double crochet", "FPsc": "front post single crochet", "FPtr": "front post treble crochet",
		"hdc": "half double crochet", "hdc2tog": "half double crochet 2 together", "inc": "increase",
		"pc": "popcorn stitch", "ps": "puff stitch", "puff": "puff stitch", "sc": "single crochet",
		"sc2tog": "single crochet 2 together", "sh": "shell stitch", "sl st": "slip stitch", "tr": "treble crochet",
		"trtr": "triple treble crochet",
	} {
		m, ok := stitch.Find(abbr)
		if assert.True(t, ok, abbr) && assert.NotNil(t, m.US, abbr) {
			assert.Equal(t, name, m.US.US.Name, abbr)
		}
	}
}

// Craft Yarn Council, crochet master list: everything else, and its measures
// and signs.
func TestCouncilListOtherAbbreviations(t *testing.T) {
	for short, long := range map[string]string{
		"alt": "alternate", "approx": "approximately", "beg": "begin", "bet": "between", "BL": "back loop",
		"BLO": "back loop only", "BP": "back post", "CC": "contrasting color", "ch-": "chain", "ch-sp": "chain space",
		"cont": "continue", "FL": "front loop", "FLO": "front loop only", "foll": "follow", "FP": "front post", "lp": "loop",
		"m": "marker", "MC": "main color", "pat": "pattern", "patt": "pattern", "pm": "place marker", "prev": "previous",
		"rem": "remain", "rep": "repeat", "rnd": "round", "rnds": "round", "RS": "right side", "sk": "skip",
		"sm": "slip marker", "sl m": "slip marker", "sp": "space", "st": "stitch", "sts": "stitch",
		"tbl": "through the back loop", "t-ch": "turning chain", "tch": "turning chain", "tog": "together",
		"WS": "wrong side", "yd": "yard", "yds": "yard", "yo": "yarn over", "yoh": "yarn over hook",
		`"`: "inch", "in": "inch", "cm": "centimetre", "mm": "millimetre", "g": "gram", "oz": "ounce",
		"*": "repeat", "**": "repeat", "[ ]": "times", "{ }": "times", "( )": "one stitch or space",
	} {
		a, ok := stitch.FindAbbreviation(short)
		if assert.True(t, ok, short) {
			assert.Contains(t, a.Long, long, short)
		}
	}
	_, ok := stitch.FindAbbreviation("hawthorn")
	assert.False(t, ok)
}

// Craft Yarn Council, Tunisian list, and what Simply Crochet 144 and Craftsy
// write otherwise. All are recognised; ttr is an ordinary stitch's first.
func TestTunisianList(t *testing.T) {
	for _, spelling := range []string{
		"etss", "FwP", "RetP", "tdc", "tfs", "thdc", "tks", "tps", "trs", "tsc", "tss", "tsl st", "tes", "FwdP",
		"extended Tunisian simple stitch", "forward pass", "return pass", "Tunisian double crochet",
		"Tunisian full stitch", "Tunisian half double crochet", "Tunisian knit stitch", "Tunisian purl stitch",
		"Tunisian reverse stitch", "Tunisian single crochet", "Tunisian simple stitch", "Tunisian slip stitch",
		"Tunisian treble crochet",
	} {
		m, ok := stitch.Find(spelling)
		if assert.True(t, ok, spelling) {
			assert.Equal(t, stitch.Tunisian, m.In(stitch.Unsettled).Class, spelling)
			assert.False(t, m.Ambiguous(), spelling)
		}
	}
	assert.Equal(t, "trtr", us("ttr"))
	assert.Equal(t, "dtr", uk("ttr"))
}

// The anatomy of stitches: Hbk1918, Dillmont, Beeton and Coats & Clark
// RHC0101-021719M, with the heights of the turning-chain tables.
func TestAnatomy(t *testing.T) {
	for id, want := range map[string]struct {
		yarnOvers, loops, passes int
		height, inSC             float64
	}{
		"sl st": {0, 2, 0, 0.5, 0},
		"sc":    {0, 2, 1, 1, 1},
		"esc":   {0, 2, 2, 2, 1.5},
		"hdc":   {1, 3, 1, 2, 1.5},
		"dc":    {1, 3, 2, 3, 2},
		"edc":   {1, 3, 3, 3.5, 2.5},
		"tr":    {2, 4, 3, 4, 3},
		"dtr":   {3, 5, 4, 5, 4},
		"trtr":  {4, 6, 5, 6, 5},
		"qtr":   {5, 7, 6, 7, 6},
	} {
		s := byID(t, id)
		assert.Equal(t, want.yarnOvers, s.YarnOvers, "%s: yarn overs", id)
		assert.Equal(t, want.loops, s.Loops, "%s: loops", id)
		assert.Equal(t, want.passes, s.Passes, "%s: passes", id)
		assert.Equal(t, want.height, s.Height, "%s: height", id)
		assert.Equal(t, want.inSC, s.HeightInSC, "%s: height in sc", id)
	}
}

// For n yarn overs, n >= 1, a plain stitch other than hdc has n+2 loops drawn up
// and n+1 passes; a chart draws as many slashes as there are yarn overs.
func TestPlainStitchesFollowTheirYarnOvers(t *testing.T) {
	slashes := []string{1: "one slash", 2: "two slashes", 3: "three slashes", 4: "four slashes", 5: "five slashes"}
	rungs := 0
	for _, s := range stitch.All() {
		if s.Class != stitch.Plain {
			continue
		}
		assert.Nil(t, s.Base, s.ID)
		assert.Equal(t, []int{1, 1}, []int{s.Uses, s.Makes}, s.ID)
		if s.ID == "hdc" || s.YarnOvers == 0 {
			continue
		}
		rungs++
		assert.Equal(t, s.YarnOvers+2, s.Loops, s.ID)
		assert.Equal(t, s.YarnOvers+1, s.Passes, s.ID)
		assert.True(t, strings.HasSuffix(s.Symbol, slashes[s.YarnOvers]), "%s: %s", s.ID, s.Symbol)
	}
	assert.Equal(t, 5, rungs)
}

// Turning chains: dummies.com (0 to 5, all but sc count), Hbk1918 (one more for
// each extra draw); Spinrite's leaflets do both for hdc.
func TestTurningChains(t *testing.T) {
	for id, want := range map[string]struct {
		chains int
		counts stitch.Convention
	}{
		"sl st": {0, stitch.No}, "sc": {1, stitch.No}, "hdc": {2, stitch.Varies}, "dc": {3, stitch.Yes},
		"tr": {4, stitch.Yes}, "dtr": {5, stitch.Yes}, "trtr": {6, stitch.Yes}, "qtr": {7, stitch.Yes},
		"FPdc": {2, stitch.Yes}, "fdc": {0, stitch.No}, "dc3tog": {3, stitch.Yes}, "hdc2tog": {2, stitch.Varies},
	} {
		s := byID(t, id)
		assert.Equal(t, want.chains, s.Turning, id)
		assert.Equal(t, want.counts, s.TurningCounts, "%s counts %v", id, s.TurningCounts)
	}
}

// Loops before the last pull-through of stitches worked together, as published.
func TestTogetherAsPublished(t *testing.T) {
	for id, loops := range map[string]int{
		"sc2tog":  3, // Spinrite PAC0116-030195M
		"sc3tog":  4,
		"hdc2tog": 5, // the steps of Spinrite PAC0129-028028M
		"hdc3tog": 7,
		"dc2tog":  3, // vcrochetpatterns.com
		"dc3tog":  4, // Beeton, illustration 232
		"tr2tog":  3, // vcrochetpatterns.com
		"tr3tog":  4, // vcrochetpatterns.com; Dillmont
		"dc5tog":  6, // Spinrite PAC0129-028028M
		"dtr2tog": 3, // Coats & Clark RHC0101-021719M
	} {
		assert.Equal(t, loops, byID(t, id).Loops, id)
	}
}

// N stitches worked together use N, make one and hold N+1 loops, or 2N+1 where
// each leg keeps the loop of its yarn over.
func TestTogetherForEveryHeight(t *testing.T) {
	for _, base := range []string{"sc", "hdc", "dc", "tr", "dtr", "trtr"} {
		for n := 2; n <= 9; n++ {
			s := byID(t, fmt.Sprintf("%s%dtog", base, n))
			loops := n + 1
			if base == "hdc" {
				loops = 2*n + 1
			}
			assert.Equal(t, stitch.Together, s.Class, s.ID)
			assert.Same(t, stitch.ByID(base), s.Base, s.ID)
			assert.Equal(t, []int{n, n, 1, loops}, []int{s.Legs, s.Uses, s.Makes, s.Loops}, s.ID)
			assert.Equal(t, s.Base.Height, s.Height, s.ID)
		}
	}
}

func TestTogetherSpellings(t *testing.T) {
	for _, spelling := range []string{
		"dc3tog", "DC3TOG", "dc 3 tog", "dc3 tog", "dc-3-tog", "3 dc tog", "3dc tog", "3dctog", "3 dctog", "3 dc together",
		"3-dc-together", "dc 3 together", "dc3 together", "double crochet 3 together", "double crochet three together",
		"3 double crochet together", "three double crochets together", "3 double crochets together", "3 d c tog", "d. c. 3 tog",
	} {
		assert.Equal(t, "dc3tog", us(spelling), spelling)
		assert.Equal(t, "sc3tog", uk(spelling), spelling)
	}
	assert.Equal(t, "tr2tog", us("trc2tog"), "older US")
	assert.Empty(t, uk("trc2tog"))
	assert.Equal(t, "hdc2tog", us("2 half double crochets together"))
	assert.Equal(t, "hdc2tog", uk("htr2tog"))
	assert.Equal(t, "dc4tog", uk("four trebles together"))
}

// What crochetbouquet.co.uk, woolandcrafts.co.uk and the other conversion tables
// give: each US name is the UK name one rung lower.
func TestLadder(t *testing.T) {
	for _, rung := range []struct{ us, usName, uk, ukName string }{
		{"ch", "chain", "ch", "chain"},
		{"sl st", "slip stitch", "ss", "slip stitch"},
		{"sc", "single crochet", "dc", "double crochet"},
		{"hdc", "half double crochet", "htr", "half treble"},
		{"dc", "double crochet", "tr", "treble"},
		{"tr", "treble crochet", "dtr", "double treble"},
		{"dtr", "double treble crochet", "trtr", "triple treble"},
		{"trtr", "triple treble crochet", "qtr", "quadruple treble"},
		{"qtr", "quadruple treble crochet", "quintr", "quintuple treble"},
	} {
		s := byID(t, rung.us)
		assert.Equal(t, []string{rung.us, rung.usName}, []string{s.US.Abbr, s.US.Name})
		assert.Equal(t, []string{rung.uk, rung.ukName}, []string{s.UK.Abbr, s.UK.Name})
		assert.Equal(t, s.US, s.Term(stitch.US))
		assert.Equal(t, s.US, s.Term(stitch.Unsettled))
		assert.Equal(t, s.UK, s.Term(stitch.UK))
	}
	ladder := []string{"sc", "dc", "tr", "dtr", "trtr", "qtr"}
	for i, id := range ladder[1:] {
		assert.Equal(t, ladder[i], uk(id), "UK %s", id)
		assert.True(t, meaning(t, id).Ambiguous(), id)
	}
}

func meaning(t *testing.T, spelling string) stitch.Meaning {
	t.Helper()
	m, ok := stitch.Find(spelling)
	require.True(t, ok, spelling)
	return m
}

// Compound forms shift with the stitch they are built on.
func TestCompoundsShiftWithTheLadder(t *testing.T) {
	for inUS, inUK := range map[string]string{
		"sc2tog": "dc2tog", "dc2tog": "tr2tog", "hdc2tog": "htr2tog", "FPdc": "FPtr", "BPdc": "BPtr", "FPsc": "FPdc",
		"fsc": "fdc", "fdc": "ftr", "3-dc cl": "3-tr cl", "esc": "edc", "edc": "etr", "ehdc": "ehtr", "dc inc": "tr inc",
		"5-dc shell": "5-tr shell", "reverse sc": "reverse dc", "linked tr": "linked dtr", "spike sc": "spike dc",
		"crossed dc": "crossed tr", "5-dc bobble": "5-tr bobble", "4-hdc puff": "4-htr puff", "dc V-st": "tr V-st",
	} {
		assert.Equal(t, inUK, byID(t, inUS).UK.Abbr)
	}
	next := map[string]string{"sc": "dc", "dc": "tr", "tr": "dtr", "dtr": "trtr"}
	checked := 0
	for _, s := range stitch.All() {
		if s.Base == nil || next[s.Base.ID] == "" || !strings.Contains(s.US.Abbr, s.Base.ID) {
			continue
		}
		checked++
		assert.Equal(t, strings.Replace(s.US.Abbr, s.Base.ID, next[s.Base.ID], 1), s.UK.Abbr)
	}
	assert.Greater(t, checked, 100)
}

// Each way to write a stitch in a dialect leads back to it, so US to UK and back
// loses nothing.
func TestRoundTrip(t *testing.T) {
	for _, s := range stitch.All() {
		assert.Same(t, s, stitch.ByID(s.ID))
		assert.Equal(t, s.ID, s.US.Abbr)
		for _, d := range []stitch.Dialect{stitch.US, stitch.UK} {
			term := s.Term(d)
			assert.NotContains(t, term.Also, term.Abbr)
			for _, spelling := range append([]string{term.Abbr, term.Name, term.Plural}, term.Also...) {
				if spelling == "ttr" && s.Class == stitch.Tunisian {
					continue
				}
				assert.Equal(t, s.ID, id(spelling, d), "%v %q", d, spelling)
			}
		}
	}
}

// What each spelling proves of a pattern's dialect.
func TestWhatEachSpellingProves(t *testing.T) {
	for _, spelling := range []string{
		"sc", "single crochet", "hdc", "half double crochet", "triple crochet", "trc", "sc2tog", "hdc2tog", "fsc", "esc",
	} {
		m := meaning(t, spelling)
		assert.NotNil(t, m.US, spelling)
		assert.Nil(t, m.UK, spelling)
	}
	for _, spelling := range []string{"htr", "half treble", "htr2tog", "FPhtr", "long treble"} {
		m := meaning(t, spelling)
		assert.Nil(t, m.US, spelling)
		assert.NotNil(t, m.UK, spelling)
		assert.Same(t, m.UK, m.In(stitch.Unsettled), spelling)
		assert.Nil(t, m.In(stitch.US), spelling)
	}
	for _, spelling := range []string{
		"dc", "double crochet", "tr", "treble", "treble crochet", "dtr", "trtr", "ttr", "qtr", "quad tr", "dc2tog", "tr2tog",
		"dc3tog", "FPdc", "FPtr", "edc", "fdc", "double", "single", "3 dc cluster", "5 tr shell",
	} {
		m := meaning(t, spelling)
		assert.True(t, m.Ambiguous(), spelling)
		assert.Same(t, m.US, m.In(stitch.Unsettled), spelling)
	}
	for _, spelling := range []string{"ch", "sl st", "ss", "inc", "dec", "inv dec", "shell", "picot", "crab st", "2 tog", "tss"} {
		m := meaning(t, spelling)
		assert.NotNil(t, m.US, spelling)
		assert.Same(t, m.US, m.UK, spelling)
		assert.False(t, m.Ambiguous(), spelling)
	}
}

// A spelling that only one dialect has counts as proof of it. So it must hold a
// word that is proof, not be one that the other dialect's table happens to lack.
func TestOneSidedSpellingsAreProof(t *testing.T) {
	american := []string{
		"sc", "single crochet", "hdc", "h d c", "half dc", "half double", "short double", "sdc", "s d c",
		"trc", "tr c", "triple crochet", "triple crochets", "triple", "triples", "tc", "t c", "s c",
		"linked d", "linked dc", // a UK dc has no yarn over for which a side bar could stand
	}
	british := []string{
		"htr", "h tr", "htc", "half tr", "half treble", "short treble", "long", "qtr", "quad tr", "quint", "quadruple", "quintuple",
		"trtr", "tr tr", "triple treble", // in families that the tables build no higher than US dtr
	}
	for _, s := range stitch.Spellings() {
		key, m := s.Words, s.Meaning
		proofs := american
		switch {
		case m.US != nil && m.UK != nil:
			continue
		case m.US == nil:
			proofs = british
		}
		proven := false
		for _, word := range proofs {
			proven = proven || strings.Contains(key, word)
		}
		assert.True(t, proven, "%q names only US %v, UK %v", key, m.US, m.UK)
	}
}

// Spaced and dotted forms and old names, as the books print them.
func TestVintageSpellings(t *testing.T) {
	for spelling, want := range map[string]string{ // American Thread, Star Book 98, 1953
		"s c": "sc", "s d c": "hdc", "d c": "dc", "tr c": "tr", "d tr c": "dtr", "tr tr c": "trtr", "sl st": "sl st",
		"half dc": "hdc", "trc": "tr", "short double crochet": "hdc", "cluster st": "cl",
	} {
		assert.Equal(t, want, us(spelling), spelling)
	}
	for spelling, want := range map[string]string{"s.c.": "sc", "d.c.": "dc", "t.c.": "tr", "S. C.": "sc", "d. c": "dc"} { // The Ladies' Work-Book
		assert.Equal(t, want, us(spelling), spelling)
	}
	for spelling, want := range map[string]string{ // Beeton; Handbook of 1918
		"double": "sc", "doubles": "sc", "long double": "hdc", "treble": "dc", "trebles": "dc", "long treble": "tr",
		"double long treble": "dtr", "single": "sl st", "half treble": "hdc", "short treble": "hdc", "long stitch": "dc",
	} {
		assert.Equal(t, want, uk(spelling), spelling)
	}
}

// Front and back post stitches: the list of the Craft Yarn Council, the forms of
// Spinrite's leaflets, and the raised stitches of the UK.
func TestPostSpellings(t *testing.T) {
	for _, spelling := range []string{
		"FPdc", "fp dc", "dcfp", "dc fp", "FP-dc", "front post dc", "front-post double crochet", "front post double crochets",
		"double crochet front post", "raised double crochet front", "raised double front crochet",
	} {
		assert.Equal(t, "FPdc", us(spelling), spelling)
		assert.Equal(t, "FPsc", uk(spelling), spelling)
	}
	for _, spelling := range []string{"BPtr", "trbp", "back post treble", "raised treble back", "rtrb"} {
		assert.Equal(t, "BPtr", us(spelling), spelling)
		assert.Equal(t, "BPdc", uk(spelling), spelling)
	}
	for _, s := range stitch.All() {
		if s.Class == stitch.Post {
			assert.Equal(t, []int{1, 1, s.Base.Loops}, []int{s.Uses, s.Makes, s.Loops}, s.ID)
		}
	}
}

func TestExtendedLinkedFoundationReverse(t *testing.T) {
	for spelling, want := range map[string]string{
		"extended single crochet": "esc", "ext sc": "esc", "Esc": "esc", "linked double crochet": "linked dc", "linked trc": "linked tr",
		"foundation single crochets": "fsc", "foundation dc": "fdc", "rev sc": "reverse sc", "rsc": "reverse sc",
		"crab stitch": "reverse sc", "reverse single crochet": "reverse sc", "cross st": "crossed st", "spike st": "spike st",
	} {
		assert.Equal(t, want, us(spelling), spelling)
	}
	assert.Equal(t, "reverse sc", uk("crab stitch"))
	for id, passes := range map[string]int{"esc": 2, "edc": 3, "fsc": 2, "fdc": 3} {
		assert.Equal(t, passes, byID(t, id).Passes, id)
	}
}

// Amigurumi shorthand: inc is two in one stitch, dec two joined; an invisible
// decrease still takes two and makes one (copy of a reindeer pattern).
func TestIncreasesAndDecreases(t *testing.T) {
	for spelling, want := range map[string][3]int{
		"inc": {int(stitch.Increase), 1, 2}, "increases": {int(stitch.Increase), 1, 2}, "inc'd": {int(stitch.Increase), 1, 2},
		"inc’d": {int(stitch.Increase), 1, 2}, "hdc inc": {int(stitch.Increase), 1, 2},
		"dec": {int(stitch.Decrease), 2, 1}, "decreased": {int(stitch.Decrease), 2, 1}, "2tog": {int(stitch.Decrease), 2, 1},
		"inv dec": {int(stitch.Decrease), 2, 1}, "invdec": {int(stitch.Decrease), 2, 1}, "invisible decrease": {int(stitch.Decrease), 2, 1},
		"sc dec": {int(stitch.Decrease), 2, 1}, "inv sc dec": {int(stitch.Decrease), 2, 1},
		"5togs": {int(stitch.Decrease), 5, 1}, "three together": {int(stitch.Decrease), 3, 1},
	} {
		s := meaning(t, spelling).US
		if assert.NotNil(t, s, spelling) {
			assert.Equal(t, want, [3]int{int(s.Class), s.Uses, s.Makes}, spelling)
		}
	}
	assert.Same(t, stitch.ByID("hdc"), meaning(t, "hdc inc").US.Base)
	assert.Same(t, stitch.ByID("sc"), meaning(t, "dc dec").UK.Base)
}

// Texture stitches and groups: usual meanings, and loops as vcrochetpatterns.com
// (a puff of four pulls has 9) and Spinrite PAC0129-028028M (a bobble of five
// has 6) give them. All must be defined by the pattern.
func TestTextureAndGroups(t *testing.T) {
	for spelling, want := range map[string]struct {
		class              stitch.Class
		uses, makes, loops int
	}{
		"bobble": {stitch.Texture, 1, 1, 6}, "5 dc bobble": {stitch.Texture, 1, 1, 6}, "5-dc bobbles": {stitch.Texture, 1, 1, 6},
		"4 hdc puff": {stitch.Texture, 1, 1, 9}, "3-dc puff st": {stitch.Texture, 1, 1, 7}, "puffs": {stitch.Texture, 1, 1, 0},
		"popcorn": {stitch.Texture, 1, 1, 0}, "4-dc popcorn": {stitch.Texture, 1, 1, 0}, "dc popcorn": {stitch.Texture, 1, 1, 0},
		"cl": {stitch.Texture, 1, 1, 0}, "3-dc cluster": {stitch.Texture, 1, 1, 4}, "3-dc cl": {stitch.Texture, 1, 1, 4},
		"dc3tog cluster": {stitch.Texture, 1, 1, 4}, "3dc cluster": {stitch.Texture, 1, 1, 4}, "2-hdc cl": {stitch.Texture, 1, 1, 5},
		"shell": {stitch.Group, 1, 5, 0}, "5-dc shell": {stitch.Group, 1, 5, 0}, "8 dc shells": {stitch.Group, 1, 8, 0},
		"fan": {stitch.Group, 1, 5, 0}, "V-st": {stitch.Group, 1, 2, 0}, "V st": {stitch.Group, 1, 2, 0},
		"V-stitches": {stitch.Group, 1, 2, 0}, "tr V-st": {stitch.Group, 1, 2, 0},
		"picot": {stitch.Picot, 0, 0, 0}, "ch-3 picot": {stitch.Picot, 0, 0, 0}, "5 ch picot": {stitch.Picot, 0, 0, 0},
		"crossed st": {stitch.Crossed, 2, 2, 3},
	} {
		s := meaning(t, spelling).US
		if assert.NotNil(t, s, spelling) {
			assert.Equal(t, want.class, s.Class, spelling)
			assert.Equal(t, []int{want.uses, want.makes, want.loops}, []int{s.Uses, s.Makes, s.Loops}, spelling)
			assert.True(t, s.Defined, spelling)
		}
	}
	assert.False(t, byID(t, "dc3tog").Defined)
	assert.Equal(t, []int{0, 1}, []int{byID(t, "fsc").Uses, byID(t, "fsc").Makes})
}

// Words that a pattern uses otherwise, and letters that stand for sizes, yarns
// and branches, are no stitches.
func TestOrdinaryWordsAreNoStitches(t *testing.T) {
	for _, word := range []string{
		"l", "x", "v", "a", "b", "p", "t", "f", "k", "m", "long", "slip", "plain", "star", "bean", "cross", "crossed", "spike",
		"back", "front", "raised", "fp", "bp", "post", "reverse", "foundation", "extended", "linked", "invisible", "tog",
		"together", "work", "st", "stitch", "loop", "ring", "magic ring", "group", "half", "short", "point", "turn", "oak leaf",
		"5", "three", "dc3", "",
	} {
		_, ok := stitch.Find(word)
		assert.False(t, ok, word)
	}
}

// The reader of patterns cuts a run of letters and digits that no spelling begins
// with, and reads number and word apart where digits come first. A spelling that
// began with dc3 alone would swallow the 3 of "dc3".
func TestSpellingsFitTheReader(t *testing.T) {
	all := map[string]bool{}
	for _, s := range stitch.Spellings() {
		all[s.Words] = true
	}
	for key := range all {
		assert.Equal(t, strings.Join(strings.Fields(strings.ToLower(key)), " "), key)
		assert.NotContains(t, key, "-")
		assert.NotContains(t, key, ".")
		assert.NotContains(t, key, "{")
		for i, word := range strings.Fields(key) {
			digits := strings.ContainsAny(word, "0123456789")
			letters := strings.ContainsAny(word, "abcdefghijklmnopqrstuvwxyz")
			if digits && letters {
				assert.Zero(t, i, key)
				assert.NotContains(t, "0123456789", word[:1], key)
				assert.Contains(t, all, word, key)
			}
		}
	}
}

func TestEveryStitchIsTold(t *testing.T) {
	for _, s := range stitch.All() {
		assert.NotEmpty(t, s.How, s.ID)
		assert.NotContains(t, s.How+s.Symbol, "{", s.ID)
		assert.NotEmpty(t, s.Sources, s.ID)
		if s.Class != stitch.Tunisian {
			assert.NotEmpty(t, s.Symbol, s.ID)
		}
		for _, term := range []stitch.Term{s.US, s.UK} {
			assert.NotEmpty(t, term.Name, s.ID)
			assert.NotEmpty(t, term.Plural, s.ID)
		}
	}
	for _, a := range stitch.Abbreviations() {
		assert.NotEmpty(t, a.Long, a.Short)
		assert.NotEmpty(t, a.Source, a.Short)
	}
}

// What the words beside stitches tell of a pattern's dialect, and the other
// dialect's word for each.
func TestDifferingWords(t *testing.T) {
	type side struct {
		dialect stitch.Dialect
		force   stitch.Force
		other   string
		swap    stitch.Swap
	}
	for word, want := range map[string]side{
		"skip": {stitch.US, stitch.Lean, "miss", stitch.SwapAlways}, "sk": {stitch.US, stitch.Lean, "miss", stitch.SwapIfListed},
		"missed": {stitch.UK, stitch.Lean, "skipped", stitch.SwapAlways}, "yo": {stitch.US, stitch.Lean, "yrh", stitch.SwapAlways},
		"yarn round hook": {stitch.UK, stitch.Proof, "yarn over", stitch.SwapAlways}, "wrh": {stitch.UK, stitch.Proof, "yo", stitch.SwapAlways},
		"yoh": {stitch.US, stitch.Nothing, "yoh", stitch.Keep}, "gauge": {stitch.US, stitch.Lean, "tension", stitch.SwapAlways},
		"tension": {stitch.UK, stitch.Lean, "gauge", stitch.SwapAlways}, "colour": {stitch.UK, stitch.Hint, "color", stitch.Keep},
		"work even": {stitch.US, stitch.Hint, "work straight", stitch.SwapAlways},
	} {
		found := false
		for _, w := range stitch.DifferingWords() {
			own, force := w.In(want.dialect)
			other, _ := w.In(want.dialect.Other())
			if i := slices.Index(own, word); i >= 0 && !found {
				found = true
				assert.Equal(t, want, side{want.dialect, force, other[i], w.Swap}, word)
			}
		}
		assert.True(t, found, word)
	}
	for _, w := range stitch.DifferingWords() {
		assert.NotEmpty(t, w.Sources)
		assert.Equal(t, len(w.US), len(w.UK), "%v and %v are not pairs", w.US, w.UK)
	}
}

// Each stitch's names in the other dialect, built alike, lead back.
func TestCounterparts(t *testing.T) {
	for us, uk := range map[string]string{
		"sc": "dc", "single crochet": "double crochet", "single crochets": "double crochets", "s c": "d c",
		"hdc": "htr", "half dc": "half tr", "half double crochet": "half treble crochet", "dc": "tr", "double crochet": "treble crochet",
		"tr": "dtr", "treble": "double treble", "treble crochets": "double treble crochets", "dtr": "trtr", "trtr": "qtr",
		"fpdc": "fptr", "front post double crochet": "front post treble crochet", "dcfp": "trfp", "bphdc": "bphtr", "dc2tog": "tr2tog",
		"2 dc tog": "2 tr tog", "double crochet 2 together": "treble crochet 2 together", "esc": "edc", "edc": "etr", "ehdc": "ehtr",
		"fsc": "fdc", "fdc": "ftr", "3 dc cluster": "3 tr cluster", "5 dc shell": "5 tr shell", "inv sc dec": "inv dc dec",
		"linked tr": "linked dtr", "foundation single crochets": "foundation double crochets",
	} {
		there, ok := stitch.Counterpart(us, stitch.US)
		assert.True(t, ok, us)
		assert.Equal(t, uk, there, us)
		back, ok := stitch.Counterpart(uk, stitch.UK)
		assert.True(t, ok, uk)
		assert.Equal(t, us, back, uk)
	}
	for uk, us := range map[string]string{ // a US pattern does not say "double" for short where a name is due
		"treble": "double crochet", "half treble": "half double crochet", "trebles": "double crochets", "double": "single crochet",
	} {
		there, _ := stitch.Counterpart(uk, stitch.UK)
		assert.Equal(t, us, there, uk)
	}
	for _, alike := range []string{"ch", "sl st", "inc", "shell", "picot", "plain st", "crab st", "tss", "oak leaf"} {
		_, ok := stitch.Counterpart(alike, stitch.US)
		assert.False(t, ok, alike)
	}
}

// Whatever spelling a stitch has, its counterpart is that stitch in the other
// dialect.
func TestEveryCounterpartIsTheSameStitch(t *testing.T) {
	for _, s := range stitch.Spellings() {
		spelling, m := s.Words, s.Meaning
		for d, s := range map[stitch.Dialect]*stitch.Stitch{stitch.US: m.US, stitch.UK: m.UK} {
			if s == nil || m.US == m.UK {
				continue
			}
			there, ok := stitch.Counterpart(spelling, d)
			if assert.True(t, ok, "%q in %v terms", spelling, d) {
				assert.Same(t, s, meaning(t, there).In(d.Other()), "%q in %v terms became %q", spelling, d, there)
			}
		}
	}
}

func TestNames(t *testing.T) {
	assert.Equal(t, []string{"unsettled", "US", "UK"}, []string{stitch.Unsettled.String(), stitch.US.String(), stitch.UK.String()})
	assert.Equal(t, []string{"plain", "texture", "tunisian"}, []string{stitch.Plain.String(), stitch.Texture.String(), stitch.Tunisian.String()})
	assert.Equal(t, []string{"no", "varies", "yes"}, []string{stitch.No.String(), stitch.Varies.String(), stitch.Yes.String()})
}
