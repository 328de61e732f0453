package syntax

import (
	"regexp"
	"strconv"
	"strings"
)

// Length is a length as a pattern gives it, in millimetres, one value for all
// sizes or one for each.
type Length struct{ Vals []float64 }

// At is the length for a size, counted from 0; a list that is too short gives
// its last value, and no length is 0.
func (l Length) At(size int) float64 {
	if len(l.Vals) == 0 {
		return 0
	}
	return l.Vals[min(size, len(l.Vals)-1)]
}

// Written tells whether there is a length at all.
func (l Length) Written() bool { return len(l.Vals) > 0 }

// millimetres are those of each unit. The inch is 25.4 mm by definition.
var millimetres = map[string]float64{"mm": 1, "cm": 10, "m": 1000, "in": 25.4}

// A length is a number, or a list of them, before a unit: `20 cm`, `8½ in`,
// `20 (22, 24) cm`, `4"`.
var (
	lengthText = regexp.MustCompile(`(?i)((?:[\d½¼¾.,/()\[\]{} -]*[\d½¼¾)\]}])?)\s*[-–]?\s*(mm|cms?|m|inch(?:es)?|ins?|centimet(?:re|er)s?|met(?:re|er)s?|["”″])(?:[^a-z]|$)`)
	valueText  = regexp.MustCompile(`(\d+(?:[.,]\d+)?)?(?: ?(\d)/(\d)| ?([½¼¾]))?`)
)

// ParseLength finds the first metric length in a text, else the first one. It
// gives no length where there is none.
func ParseLength(text string) Length {
	var first Length
	for _, m := range lengthText.FindAllStringSubmatch(text, -1) {
		unit := unitOf(m[2])
		var l Length
		for _, v := range values(m[1]) {
			l.Vals = append(l.Vals, v*millimetres[unit])
		}
		switch {
		case !l.Written():
		case unit != "in":
			return l
		case !first.Written():
			first = l
		}
	}
	return first
}

func unitOf(word string) string {
	word = strings.ToLower(word)
	switch {
	case strings.HasPrefix(word, "cm"), strings.HasPrefix(word, "cent"):
		return "cm"
	case word == "mm":
		return "mm"
	case strings.HasPrefix(word, "m"):
		return "m"
	}
	return "in"
}

// values reads the numbers of a list, with decimals or vulgar fractions.
func values(text string) []float64 {
	var out []float64
	for _, m := range valueText.FindAllStringSubmatch(text, -1) {
		if m[0] == "" {
			continue
		}
		v, _ := strconv.ParseFloat(strings.Replace(m[1], ",", ".", 1), 64) // "" is 0: a fraction alone
		if m[2] != "" {
			top, _ := strconv.ParseFloat(m[2], 64)
			bottom, _ := strconv.ParseFloat(m[3], 64)
			if bottom > 0 {
				v += top / bottom
			}
		}
		out = append(out, v+map[string]float64{"½": 0.5, "¼": 0.25, "¾": 0.75}[m[4]])
	}
	return out
}

// Gauge is how many stitches and rows go to a length, in millimetres.
type Gauge struct {
	Stitches, Rows float64 // over Length; 0 where not said
	Length         float64
	Of             string // the stitch that is counted, as written: "sc", "sts"
}

var (
	gaugeRows     = regexp.MustCompile(`(?i)(\d+(?:[.,]\d+)?(?: ?\d/\d)?[½¼¾]?)\s*(?:rows?|rnds?|rounds?)\b`)
	gaugeStitches = regexp.MustCompile(`(?i)(\d+(?:[.,]\d+)?(?: ?\d/\d)?[½¼¾]?)\s*([a-z][a-z -]*)`)
)

// ParseGauge reads `24 sc and 28 rows = 10 cm`, `10 cm = 20 sts x 10 rows`,
// `7 sts and 6 rows = 2 inches`, `14 sts = 9 cm, 7 rows = 10 cm`. What it does
// not find is 0.
func ParseGauge(text string) Gauge {
	g := Gauge{Length: ParseLength(text).At(0)}
	rowsOver := 0.0
	if m := gaugeRows.FindStringSubmatchIndex(text); m != nil {
		g.Rows = values(text[m[2]:m[3]])[0]
		rowsOver = ParseLength(text[m[1]:]).At(0)
	}
	for _, at := range gaugeStitches.FindAllStringSubmatchIndex(text, -1) {
		number, after := text[at[2]:at[3]], text[at[4]:at[5]]
		word := strings.ToLower(strings.Fields(after)[0])
		if _, unit := millimetres[word]; unit || strings.HasPrefix(word, "row") || strings.HasPrefix(word, "rnd") || strings.HasPrefix(word, "round") || strings.HasPrefix(word, "inch") {
			continue
		}
		g.Stitches, g.Of = values(number)[0], word
		if over := ParseLength(text[at[4]:]).At(0); over > 0 && rowsOver > 0 {
			g.Length, g.Rows = over, g.Rows*over/rowsOver // each has a length of its own
		}
		break
	}
	return g
}
