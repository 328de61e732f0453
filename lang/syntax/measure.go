package syntax

import (
	"strconv"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
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

// millimetres are those of each unit. The inch is 25.4 mm by definition, and
// the foot and the yard are so many inches.
var millimetres = map[string]float64{"mm": 1, "cm": 10, "m": 1000, "in": 25.4, "ft": 12 * 25.4, "yd": 36 * 25.4}

// A length is a number, or a list of them, before a unit: `20 cm`, `8½ in`,
// `20 (22, 24) cm`, `20 (22: 24) cm`, `4"`.
var (
	lengthText = phrase.MustCompile(`(?i)((?:(?:[\d½¼¾⅓⅔⅛⅜⅝⅞.,/()\[\]{} -]|\d(?::\d)+|[(\[]\d[\d½¼¾⅓⅔⅛⅜⅝⅞.,/ ]*(?:: ?\d[\d½¼¾⅓⅔⅛⅜⅝⅞.,/ ]*)+)*[\d½¼¾⅓⅔⅛⅜⅝⅞)\]}])?)\s*[-–]?\s*(mm|cms?|m|inch(?:es)?|ins?|centimet(?:re|er)s?|met(?:re|er)s?|yds?|yards?|ft|feet|["”″])(?:[^a-z]|$)`)
	valueText  = phrase.MustCompile(`(\d+(?:[.,]\d+)?)?(?: ?(\d)/(\d)| ?([½¼¾⅓⅔⅛⅜⅝⅞]))?`)
)

// WrittenLength is a length with the place where it stands in a text and the
// unit it is given in: mm, cm, m, in, ft or yd.
type WrittenLength struct {
	Length
	Unit string
	Span source.Span
}

// Metric tells a length in metric units from one in inches, feet or yards.
func (l WrittenLength) Metric() bool { return l.Unit == "mm" || l.Unit == "cm" || l.Unit == "m" }

// FindLengths finds every length in a text, in order.
func FindLengths(text string) []WrittenLength {
	var out []WrittenLength
	for _, m := range lengthText.FindAllStringSubmatchIndex(text, -1) {
		l := WrittenLength{Unit: unitOf(text[m[4]:m[5]]), Span: source.Span{Start: m[2], End: m[5]}}
		if at := aside.FindStringIndex(text[m[2]:m[3]]); at != nil && at[1] < m[3]-m[2] {
			m[2] += at[1]
			l.Span.Start = m[2]
		}
		number := text[m[2]:m[3]]
		l.Span.Start += len(number) - len(strings.TrimLeft(number, " ,.()[]{}-/"))
		for _, v := range values(number) {
			l.Vals = append(l.Vals, v*millimetres[l.Unit])
		}
		if l.Written() {
			out = append(out, l.bare(text)...)
			out = append(out, l)
		}
	}
	return out
}

// aside is a number in brackets that goes with what stands before it, and not with
// the list of sizes after it: `light (3), 50 m`.
var aside = phrase.MustCompile(`^[^\d½¼¾⅓⅔⅛⅜⅝⅞]*\([^()]*\)[ ,]+`)

// bareText takes a number that has its unit from the length after it: `15 x 10 cm`.
var bareText = phrase.MustCompile(`(?i)((?:\d[\d½¼¾⅓⅔⅛⅜⅝⅞.,/() ]*)?[\d½¼¾⅓⅔⅛⅜⅝⅞)])\s*(?:x|×|by)\s*$`)

// bare are the numbers before a length that are given in its unit.
func (l WrittenLength) bare(text string) []WrittenLength {
	m := bareText.FindStringSubmatchIndex(text[:l.Span.Start])
	if m == nil {
		return nil
	}
	first := WrittenLength{Unit: l.Unit, Span: source.Span{Start: m[2], End: m[3]}}
	for _, v := range values(text[m[2]:m[3]]) {
		first.Vals = append(first.Vals, v*millimetres[l.Unit])
	}
	return append(first.bare(text), first)
}

// ParseLength finds the first metric length in a text, else the first one. It
// gives no length where there is none.
func ParseLength(text string) Length {
	all := FindLengths(text)
	for _, l := range all {
		if l.Metric() {
			return l.Length
		}
	}
	if len(all) > 0 {
		return all[0].Length
	}
	return Length{}
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
	case strings.HasPrefix(word, "y"):
		return "yd"
	case strings.HasPrefix(word, "f"):
		return "ft"
	}
	return "in"
}

// fractionSigns are the fractions that stand in one sign.
var fractionSigns = map[string]float64{"½": 1. / 2, "¼": 1. / 4, "¾": 3. / 4, "⅓": 1. / 3, "⅔": 2. / 3, "⅛": 1. / 8, "⅜": 3. / 8, "⅝": 5. / 8, "⅞": 7. / 8}

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
		out = append(out, v+fractionSigns[m[4]])
	}
	return out
}

// Gauge is how many stitches and rows go to a length, in millimetres.
type Gauge struct {
	Stitches, Rows float64 // over Length; 0 where not said
	Length         float64
	// Squares are those of filet that go to it, where they are counted and no stitches.
	Squares float64
	Of      string // the stitch that is counted, as written: "sc", "sts"
}

var (
	gaugeRows     = phrase.MustCompile(`(?i)(\d+(?:[.,]\d+)?(?: ?\d/\d)?[½¼¾]?)\s*(?:(?:post[ -]?stitch|ribbed|rib|pattern) )?(?:rows?|rnds?|rounds?)\b`)
	gaugeStitches = phrase.MustCompile(`(?i)(\d+(?:[.,]\d+)?(?: ?\d/\d)?[½¼¾]?)\s*([a-z][a-z -]*)`)
)

// ParseGauge reads `24 sc and 28 rows = 10 cm`, `10 cm = 20 sts x 10 rows`,
// `7 sts and 6 rows = 2 inches`, `14 sts = 9 cm, 7 rows = 10 cm`. What it does
// not find is 0.
func ParseGauge(text string) Gauge {
	text = ofHook.ReplaceAllString(text, " ")
	g := Gauge{Length: ParseLength(text).At(0)}
	rowsOver, rowsAt := 0.0, -1
	if m := gaugeRows.FindStringSubmatchIndex(text); m != nil {
		g.Rows, rowsAt = values(text[m[2]:m[3]])[0], m[2]
		rowsOver = ParseLength(text[m[1]:]).At(0)
	}
	for _, at := range gaugeStitches.FindAllStringSubmatchIndex(text, -1) {
		number, after := text[at[2]:at[3]], text[at[4]:at[5]]
		word := gauged(after)
		if ofSquares[word] && g.Squares == 0 {
			g.Squares = values(number)[0]
		}
		if _, unit := millimetres[word]; unit || at[2] == rowsAt || ofRepeat[word] || strings.HasPrefix(word, "row") || strings.HasPrefix(word, "rnd") || strings.HasPrefix(word, "round") || strings.HasPrefix(word, "inch") {
			continue
		}
		g.Stitches, g.Of = values(number)[0], word
		if over := ParseLength(text[at[4]:]).At(0); over > 0 && rowsOver > 0 {
			g.Length, g.Rows = over, g.Rows*over/rowsOver // each has a length of its own
		}
		g.Squares = 0
		break
	}
	return g
}

// ofRepeat are what a gauge gives the width of where it counts no stitch: `1 repeat of 13 sts`,
// `4 meshes and 4 rows`.
var ofRepeat = map[string]bool{
	"rep": true, "repeat": true, "repeats": true, "pattern": true,
	"square": true, "squares": true, "mesh": true, "meshes": true, "block": true, "blocks": true,
}

// ofSquares are those that are squares of filet.
var ofSquares = map[string]bool{"square": true, "squares": true, "mesh": true, "meshes": true, "block": true, "blocks": true}

// ofHook is the size of the hook that a gauge is worked with.
var ofHook = phrase.MustCompile(`(?i)\b(?:(?:with|on|using) (?:an? |the )?)?(?:hook (?:size )?\d+(?:[.,]\d+)? ?mm\b|\d+(?:[.,]\d+)? ?mm (?:crochet )?hook\b)`)

// gauged is the stitch that a gauge counts: the longest run of words that names
// one, else the first word.
func gauged(after string) string {
	words := strings.Fields(strings.ToLower(after))
	for n := len(words); n > 1; n-- {
		name := strings.Join(words[:n], " ")
		if _, is := stitch.Find(name); is {
			return name
		}
	}
	return words[0]
}
