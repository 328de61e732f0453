package lint

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/stock"
	"stitchproof/lang/syntax"
)

// inches writes a length in millimetres as patterns give inches, to the
// quarter: 9 1/2. Ten centimetres are four inches.
func inches(mm float64) string {
	switch {
	case mm == 100:
		return "4"
	case mm < 0:
		return "-" + inches(-mm)
	}
	quarters := int(math.Round(mm / stock.MMPerInch * 4))
	whole, part := quarters/4, [...]string{"", "1/4", "1/2", "3/4"}[quarters%4]
	if whole == 0 && part != "" {
		return part
	}
	return strings.TrimSpace(strconv.Itoa(whole) + " " + part)
}

// centimetres writes a length in millimetres to half a centimetre: 23.5. Four
// inches are ten centimetres.
func centimetres(mm float64) string {
	return strconv.FormatFloat(math.Round(mm/5)/2, 'f', -1, 64)
}

// inBothUnits writes a length of some facts, one for each, in centimetres and
// inches.
func inBothUnits[T any](facts []T, get func(T) float64) string {
	cm, in := make([]string, len(facts)), make([]string, len(facts))
	for i, f := range facts {
		cm[i], in[i] = centimetres(get(f)), inches(get(f))
	}
	return syntax.PerSize(cm) + " cm (" + syntax.PerSize(in) + " in)"
}

// lengthsIn are the lengths of a field that are sizes of the work: the
// millimetres of a hook are none.
func (p *Pass) lengthsIn(f *syntax.Field) []syntax.WrittenLength {
	text := p.File.Text.Slice(f.ValueSpan)
	all := syntax.FindLengths(text)
	if !strings.Contains(strings.ToLower(text), "hook") {
		return all
	}
	return slices.DeleteFunc(all, func(l syntax.WrittenLength) bool { return l.Unit == "mm" })
}
