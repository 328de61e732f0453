package stitch

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/table"
)

// header is the head of a small stitch table for the tests of faults in tables.
const header = "key\tclass\tbase\tlegs\tuses\tmakes\tyo\tloops\tpasses\theight\theight sc\tturning\tcounts\tdefined\thow\tsymbol\tsources\n"

const (
	someNames    = "stitch\tdialect\tshort\tname\tplural\talso\nfr\tboth\tfr\tfrond\tfronds\t-\n"
	someSources  = "key\tcitation\nbook\tA book (read)\n"
	oneStitch    = "fr\tplain\t-\t-\t1\t1\t1\t3\t2\t3\t2\t3\tyes\tno\tHow.\tA T.\tbook\n"
	noFamilies   = header
	familyOfOne  = "fronds\ttogether\tfr\t2-3\tn\t1\tbase\t2n+1\t0\tbase+0.5\tbase\tbase\tbase\tno\t{n} of {name}.\t{abbr}.\tbook\n"
	familyNaming = "fronds\tboth\t{abbr}{n}tog\t{n} {name}\t{n} {plural}\t{short} {word}\n"
)

func TestReadDictionary(t *testing.T) {
	d, err := readDictionary(header+"# a comment\n\n"+oneStitch, header+familyOfOne, someNames+familyNaming, someSources)
	require.NoError(t, err)
	require.Len(t, d.stitches, 3)
	last := d.byID["fr3tog"]
	require.NotNil(t, last)
	assert.Same(t, d.byID["fr"], last.Base)
	assert.Equal(t, []int{3, 3, 1, 1, 7, 0, 3}, []int{last.Legs, last.Uses, last.Makes, last.YarnOvers, last.Loops, last.Passes, last.Turning})
	assert.Equal(t, []float64{3.5, 2}, []float64{last.Height, last.HeightInSC})
	assert.Equal(t, Yes, last.TurningCounts)
	assert.Equal(t, []string{"3 of frond.", "fr."}, []string{last.How, last.Symbol})
	assert.Equal(t, Term{Abbr: "fr3tog", Name: "3 frond", Plural: "3 fronds", Also: []string{"fr three"}, proper: []string{"fr3tog", "3 frond", "3 fronds"}}, last.UK)
	assert.Equal(t, []string{"A book (read)"}, last.Sources)
}

// A slip in a table is told with the table, the line and what is wrong there.
func TestFaultsInTables(t *testing.T) {
	swap := strings.NewReplacer
	for _, c := range []struct{ name, stitches, families, names, sources, want string }{
		{"header", "key\tclass\n", noFamilies, someNames, someSources, `stitches.tsv:1: the header must be`},
		{"too few cells", header + "# why\nfrond\tplain\n", noFamilies, someNames, someSources, `stitches.tsv:3: 2 cells for 17 columns`},
		{"empty cell", header + swap("How.", "").Replace(oneStitch), noFamilies, someNames, someSources, `stitches.tsv:2: an empty cell under "how"; write a dash for none`},
		{"class", header + swap("plain", "plane").Replace(oneStitch), noFamilies, someNames, someSources, `stitches.tsv:2: no class is called "plane"`},
		{"counts", header + swap("yes", "maybe").Replace(oneStitch), noFamilies, someNames, someSources, `not "maybe"`},
		{"figure", header + swap("\t3\t2\t", "\t3x\t2\t").Replace(oneStitch), noFamilies, someNames, someSources, `stitches.tsv:2: loops is a sum of numbers, base and n, not "3x"`},
		{"source", header + swap("book", "boke").Replace(oneStitch), noFamilies, someNames, someSources, `stitches.tsv:2: no source has the key "boke"`},
		{"no source", header + swap("book", "-").Replace(oneStitch), noFamilies, someNames, someSources, `stitches.tsv:2: no source`},
		{"slot", header + swap("How.", "{who}").Replace(oneStitch), noFamilies, someNames, someSources, `stitches.tsv:2: there is no slot {who}`},
		{"base", header + oneStitch, header + swap("\tfr\t", "\tfern\t").Replace(familyOfOne), someNames + familyNaming, someSources, `families.tsv:2: no stitch above has the abbreviation "fern"`},
		{"legs", header + oneStitch, header + swap("2-3", "two").Replace(familyOfOne), someNames + familyNaming, someSources, `families.tsv:2: legs is a range within 2-9, not "two"`},
		{"too many legs", header + oneStitch, header + swap("2-3", "2-10").Replace(familyOfOne), someNames + familyNaming, someSources, `families.tsv:2: legs is a range within 2-9, not "2-10"`},
		{"defined", header + swap("\tno\tHow", "\tnever\tHow").Replace(oneStitch), noFamilies, someNames, someSources, `stitches.tsv:2: defined is yes or no, not "never"`},
		{"no name", header + oneStitch, header + familyOfOne, someNames, someSources, `families.tsv:2: names.tsv must give "fronds" an abbreviation, a name and a plural in US terms`},
		{"name of nothing", header + oneStitch, noFamilies, someNames + familyNaming, someSources, `names.tsv: there is no stitch or family "fronds"`},
		{"dialect", header + oneStitch, noFamilies, swap("both", "AU").Replace(someNames), someSources, `names.tsv:2: the dialect is US, UK or both, not "AU"`},
		{"named twice", header + oneStitch, noFamilies, someNames + "fr\tUK\tfd\tfrond\tfronds\t-\n", someSources, `names.tsv:3: "fr" is named twice in UK terms`},
		{"two lists", header + oneStitch, noFamilies, swap("\t-\n", "\t{short} {name}\n").Replace(someNames), someSources, `names.tsv:2: {short} and {name} cannot stand together`},
		{"clash", header + oneStitch + swap("fr\t", "lf\t").Replace(oneStitch), noFamilies, someNames + "lf\tboth\tlf\tfrond\tfronds\t-\n", someSources, `stitches.tsv:3: "frond" is US for both fr and lf`},
		{"twice", header + oneStitch + oneStitch, noFamilies, someNames, someSources, `stitches.tsv:3: "fr" is there twice`},
		{"base without names", header + oneStitch, header + familyOfOne + swap("\tfr\t", "\tfr2tog\t").Replace(familyOfOne), someNames + familyNaming, someSources, `families.tsv:3: names.tsv has no line "fr2tog" to build names on`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := readDictionary(c.stitches, c.families, c.names, c.sources)
			assert.ErrorContains(t, err, c.want)
		})
	}
}

func TestFaultsInTheGlossary(t *testing.T) {
	const head = "short\tlong\talso\tsources\n"
	for line, want := range map[string]string{
		"lf\tleaf\t-\tboke\n":                           `abbreviations.tsv:2: no source has the key "boke"`,
		"lf\tleaf\t-\tbook\nLF\tlower frond\t-\tbook\n": `abbreviations.tsv:3: "LF" already stands for "leaf"`,
	} {
		_, err := readGlossary(head+line, someSources)
		assert.ErrorContains(t, err, want)
	}
}

func TestFaultsInTheWordsOfDialects(t *testing.T) {
	const head = "us\tuk\tus shows\tuk shows\tswap\tsources\n"
	for line, want := range map[string]string{
		"leaf\tfrond\tlean\tsure\tyes\tbook\n":   `dialects.tsv:2: a word shows one of`,
		"leaf\tfrond\tlean\tlean\toften\tbook\n": `dialects.tsv:2: swap is one of ["no" "yes" "listed"], not "often"`,
		"leaf\t-\tlean\tlean\tyes\tbook\n":       `dialects.tsv:2: there is no word to swap`,
		"leaf\tfrond\tlean\tlean\tyes\tboke\n":   `dialects.tsv:2: no source has the key "boke"`,
	} {
		_, err := readDiffering(head+line, someSources)
		assert.ErrorContains(t, err, want)
	}
}

// Every work listed is cited, and says how it was had.
func TestSources(t *testing.T) {
	records, err := table.Read("sources.tsv", sourceTable, "key", "citation")
	require.NoError(t, err)
	var cited []string
	for _, text := range []string{stitchTable, familyTable, abbreviationTable, dialectTable} {
		for line := range strings.Lines(text) {
			if line[0] != '#' {
				cells := strings.Split(strings.TrimSpace(line), "\t")
				cited = append(cited, strings.Fields(cells[len(cells)-1])...)
			}
		}
	}
	for _, r := range records {
		key, citation := r.Text("key"), r.Text("citation")
		assert.True(t, slices.Contains(cited, key), "%s is not cited", key)
		known := key == "practice" || key == "derived" || strings.Contains(citation, "(read)") || strings.Contains(citation, "(memory")
		assert.True(t, known, "%s does not say how it was had", key)
	}
}

func TestFold(t *testing.T) {
	for in, want := range map[string]string{
		"sl st": "sl st", " Sl  St. ": "sl st", "s.c.": "s c", "FPdc": "fpdc", "V‑st": "v st", "3-DC cl": "3 dc cl",
		"inc’d": "inc'd", "-": "", "tab\tbed": "tab bed",
	} {
		assert.Equal(t, want, fold(in), "%q", in)
	}
	assert.Equal(t, "dc 3 tog", spread("dc3 tog"))
	assert.Equal(t, "5 togs", spread("5togs"))
}
