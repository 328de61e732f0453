// Package units writes lengths in centimetres and in inches as patterns do, and the
// one beside the other.
package units

import (
	"math"
	"strconv"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/stock"
	"stitchproof/lang/syntax"
)

// Inches writes a length in millimetres as patterns give inches, to the
// quarter: 9 1/2.
func Inches(mm float64) string {
	if mm < 0 {
		return "-" + Inches(-mm)
	}
	quarters := int(math.Round(mm / stock.MMPerInch * 4))
	whole, part := quarters/4, [...]string{"", "1/4", "1/2", "3/4"}[quarters%4]
	if whole == 0 && part != "" {
		return part
	}
	return strings.TrimSpace(strconv.Itoa(whole) + " " + part)
}

// Centimetres writes a length in millimetres to half a centimetre: 23.5.
func Centimetres(mm float64) string {
	return strconv.FormatFloat(math.Round(mm/5)/2, 'f', -1, 64)
}

// Other writes a length in the other system, one value a size: centimetres in
// inches, inches in centimetres.
func Other(l syntax.WrittenLength) string {
	if l.Metric() {
		return perSize(l, Inches) + " in"
	}
	return perSize(l, Centimetres) + " cm"
}

// mmPerYard is by definition: 36 inches.
const mmPerYard = 36 * stock.MMPerInch

// OtherOfYarn writes a length of yarn in the other system: metres in yards, yards in
// metres, to the whole one; what is given in smaller units as Other does.
func OtherOfYarn(l syntax.WrittenLength) string {
	whole := func(unit float64) func(float64) string {
		return func(mm float64) string { return strconv.Itoa(int(math.Round(mm / unit))) }
	}
	switch l.Unit {
	case "m":
		return perSize(l, whole(mmPerYard)) + " yd"
	case "yd":
		return perSize(l, whole(1000)) + " m"
	}
	return Other(l)
}

func perSize(l syntax.WrittenLength, write func(mm float64) string) string {
	words := make([]string, len(l.Vals))
	for i, v := range l.Vals {
		words[i] = write(v)
	}
	return syntax.PerSize(words)
}

// Beside writes lengths of a text that begins at offset at again in the other system,
// behind those that belong together: `9 cm x 2.5 cm` (3 1/2 in x 1 in). The places
// of the lengths are in the text, in order.
func Beside(text string, at int, lengths []syntax.WrittenLength, other func(syntax.WrittenLength) string) []source.Edit {
	var out []source.Edit
	for _, run := range Runs(text, lengths) {
		words := make([]string, len(run))
		for i, l := range run {
			words[i] = other(l)
		}
		out = append(out, source.Edit{Span: source.At(at + run[len(run)-1].Span.End), New: " (" + strings.Join(words, " x ") + ")"})
	}
	return out
}

// Runs are lengths of a text by those that belong together: a width and a height.
func Runs(text string, lengths []syntax.WrittenLength) [][]syntax.WrittenLength {
	var out [][]syntax.WrittenLength
	for i, l := range lengths {
		if i > 0 && Crossed(text[lengths[i-1].Span.End:l.Span.Start]) {
			out[len(out)-1] = append(out[len(out)-1], l)
			continue
		}
		out = append(out, []syntax.WrittenLength{l})
	}
	return out
}

// Crossed tells whether what stands between two lengths makes them a width and
// a height.
func Crossed(between string) bool {
	switch strings.TrimSpace(between) {
	case "x", "×", "by":
		return true
	}
	return false
}
