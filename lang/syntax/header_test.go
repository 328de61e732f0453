package syntax

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
)

func TestKeyWords(t *testing.T) {
	for key := range headerKeys {
		assert.LessOrEqual(t, len(strings.Fields(key)), mostKeyWords, key)
	}
}

// Fields as patterns lay them out: key, name and value of each.
func TestFieldLayouts(t *testing.T) {
	for text, want := range map[string]string{
		"Hook ........ 5.5 mm (US I-9)":                   "hook||5.5 mm (US I-9)",
		"Row by row ........ 4":                           "",
		"Colour motif ... starting with moss, ch 2":       "",
		"**Finished chest:** 88 (96) cm":                  "finished size|chest|88 (96) cm",
		"Pattern: Mat\n**Sole length:** 8 (9.5) cm":       "pattern||Mat; sole length||8 (9.5) cm",
		"What you’ll need: 4 mm hook":                     "materials||4 mm hook",
		"## Gauge\n\n16 hdc and 12 rounds = 10 cm (4 in)": "gauge||16 hdc and 12 rounds = 10 cm (4 in)",
		"GAUGE:\n18 sts = 4 inches\n3 rows = 1 inch":      "gauge||18 sts = 4 inches 3 rows = 1 inch",
		"SOCKS\n\nTERMS: US\nSIZES: S (M, L)":             "terms||US; sizes||S (M, L)",
		"Gauge\nWork loosely.":                            "",
		"Hook\n5.5 mm (US I-9)\n\n3 mm of felt":           "hook||5.5 mm (US I-9)",
		"Sizes\nS (M, L)":                                 "sizes||S (M, L)",
		"Sizes\nThe smallest fits a child.":               "",
		"Finished size\n- Width: 20 cm":                   "finished size||Width: 20 cm",
	} {
		var got []string
		for _, f := range Read(source.New(text + "\n")).Header {
			got = append(got, f.Key+"|"+f.Name+"|"+f.Value)
		}
		assert.Equal(t, want, strings.Join(got, "; "), text)
	}
}

// A heading may say which yarn its piece is in.
func TestHeadingsWithAYarn(t *testing.T) {
	for heading, want := range map[string]string{
		"Cup (make 8) - with A":  "Cup|8",
		"Leaf (make eleven)":     "Leaf|11",
		"Leaf (make thirty-six)": "Leaf|36",
		"Oak leaf – in colour B": "Oak leaf|",
		"Nut, with MC":           "Nut|",
		"Leaf (with C)":          "Leaf|",
		"Sleeve with A":          "Sleeve with A|",
		"Nut (make 3, colour A)": "Nut|3",
		"Cup - make 3 in K":      "Cup|3",
		"Leaf - make four in MC": "Leaf|4",
	} {
		f := Read(source.New("Acorns\n\n" + heading + "\nR1 6 sc in MR [6]\nR2 inc x6 [12]\n"))
		got := ""
		for _, p := range f.Pieces {
			if p.Name != "" {
				got = p.Name + "|" + p.Make.String()
				assert.Equal(t, p.Name, strings.TrimSpace(strings.Split(strings.Replace(f.Text.Slice(p.NameSpan), "- make", "(", 1), "(")[0]), heading)
			}
		}
		assert.Equal(t, want, got, heading)
	}
}
