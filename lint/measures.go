package lint

import (
	"strconv"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
)

// amounts is a list of measurements or counts, one for each size:
// `46.5 (50, 53.5, 56.5)`, `18 1/4 (19 3/4, 21)`.
type amounts struct {
	span   source.Span
	values []float64
}

const amountExpr = `\d+(?:\.\d+)?(?:\s\d+/\d+)?`

// amountList matches two or more values in brackets after one before them. One
// alone in brackets is a conversion, `5 cm (2 in)`, unless the unit follows
// it: `20 (30) m`.
var (
	amountList = phrase.MustCompile(amountExpr + `\s?[(\[]\s?` + amountExpr + `(?:(?:\s?[,:]\s?` + amountExpr + `)+|\s?[)\]]\s?(?:mm|cm|m|in|inch|inches|yd|yds|yards|g|oz)\b)`)
	oneValue   = phrase.MustCompile(amountExpr)
)

// measures finds such lists in a text that stands at an offset of the file.
func measures(text string, from int) []amounts {
	var out []amounts
	for _, at := range amountList.FindAllStringIndex(text, -1) {
		m := amounts{span: source.Span{Start: at[0], End: at[1]}.Shift(from)}
		for _, text := range oneValue.FindAllString(text[at[0]:at[1]], -1) {
			m.values = append(m.values, value(text))
		}
		out = append(out, m)
	}
	return out
}

// value reads `18`, `18.5` and `18 1/4`.
func value(text string) float64 {
	whole, fraction, _ := strings.Cut(text, " ")
	v, _ := strconv.ParseFloat(whole, 64) // the pattern lets only numbers through
	if over, under, found := strings.Cut(fraction, "/"); found {
		a, _ := strconv.ParseFloat(over, 64)
		if b, _ := strconv.ParseFloat(under, 64); b > 0 {
			v += a / b
		}
	}
	return v
}

// falls tells whether a value is less than the one before it.
func falls(values []float64) bool {
	for i := 1; i < len(values); i++ {
		if values[i] < values[i-1] {
			return true
		}
	}
	return false
}
