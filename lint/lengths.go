package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/syntax"
	"stitchproof/lang/units"
)

// inBothUnits writes a length of some facts, one for each, in centimetres and
// inches.
func inBothUnits[T any](facts []T, get func(T) float64) string {
	cm, in := make([]string, len(facts)), make([]string, len(facts))
	for i, f := range facts {
		cm[i], in[i] = units.Centimetres(get(f)), units.Inches(get(f))
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
