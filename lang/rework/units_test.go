package rework_test

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestUnits(t *testing.T) {
	const head = "Pattern: Frost hat\nTerms: US\nSizes: S (M)\n"
	const piece = "\nPiece: Hat\nCh 9.\n"
	for line, want := range map[string]string{
		"Gauge: 16 sc and 20 rows = 10 cm":                   "Gauge: 16 sc and 20 rows = 10 cm (4 in)",
		"Gauge: 16 sc and 20 rows = 4 in":                    "Gauge: 16 sc and 20 rows = 4 in (10 cm)",
		"Finished size: 52 (56) cm x 20 cm":                  "Finished size: 52 (56) cm x 20 cm (20 1/2 (22) in x 7 3/4 in)",
		"Finished size: 52 cm around, 8 in high":             "Finished size: 52 cm (20 1/2 in) around, 8 in (20.5 cm) high",
		"Finished size: 52 cm (20 1/2 in) around, 8 in high": "Finished size: 52 cm (20 1/2 in) around, 8 in (20.5 cm) high",
		"Yarn A: frost, light (3), 50 m":                     "Yarn A: frost, light (3), 50 m (55 yd)",
		"Yarn A: frost, light (3), 100 yards":                "Yarn A: frost, light (3), 100 yards (91 m)",
		"The cord is 1.5 m long.":                            "The cord is 1.5 m (59 in) long.",
		"Row 1: Sc in each ch until piece measures 8 cm.":    "Row 1: Sc in each ch until piece measures 8 cm (3 1/4 in).",
		"Row 1: Sc in each ch until piece measures 8 in.":    "Row 1: Sc in each ch until piece measures 8 in (20.5 cm).",

		"Gauge: 16 sc and 20 rows = 10 cm (4 in)":  "",
		"Gauge: 16 sc and 20 rows = 4 in / 10 cm":  "",
		"Gauge: 16 sc and 20 rows = 4 in or 10 cm": "",
		"Yarn A: frost, light (3), 50 m (55 yd)":   "",
		"Hook: 5 mm (US H-8)":                      "",
		"Rnd 1: Work 6 in magic ring.":             "",
		"Rnd 1: 6 sc in magic ring. (6 sc)":        "",
	} {
		text := head + line + piece
		if strings.HasPrefix(line, "R") || strings.HasPrefix(line, "The") {
			text = head + piece + line + "\n"
		}
		p := patternOf(text)
		got := p.Units(strings.Index(text, line) + 3)
		if want == "" {
			assert.Empty(t, got, line)
			continue
		}
		if !assert.Len(t, got, 1, line) {
			continue
		}
		after, err := p.Text.Apply(got[0].Edits)
		require.NoError(t, err)
		assert.Equal(t, strings.Replace(text, line, want, 1), after.String())
		assert.Empty(t, patternOf(after.String()).Units(strings.Index(text, line)+3), "nothing is left to add")
	}
	one := patternOf(head + "Gauge: 16 sc = 10 cm\n").Units(len(head) + 3)
	assert.Equal(t, "write (4 in) beside 10 cm", one[0].Title)
}

var inInches = regexp.MustCompile(` \([\d /]+ (?:in|yd)\)`)

// Our own patterns give every length in both units; without their inches and yards,
// those that are added leave the work as it is, and nothing more is to be added then.
func TestUnitsOfTheExamples(t *testing.T) {
	added := 0
	for name, p := range examples(t) {
		without := patternOf(inInches.ReplaceAllString(p.Text.String(), ""))
		for line := range without.Text.Lines() {
			at := without.Text.Line(line).Start
			for _, c := range without.Units(at) {
				after := checked(t, without, c.Edits)
				assert.Empty(t, after.Units(at), "%s: %s", name, after.Text.Slice(after.Text.Line(line)))
				added++
			}
		}
	}
	assert.Greater(t, added, 50)
}
