package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var unitsSingle = &Rule{
	Name:     "units-single",
	Family:   "materials",
	Severity: Info,
	Summary:  "Gauge and finished size are given in centimetres and in inches.",
	Why:      "A maker measures with the tape she has. What is given in one system only she has to convert, and rounds as she likes.",
	Bad: `Pattern: Oak leaf mat
Terms: US
Gauge: 13 sc and 14 rows = 10 cm
Finished size: 9 cm x 2.5 cm

Piece: Mat
Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Rows 2-3: Ch 1, sc in each st across; turn. (12 sc)
Fasten off.
`,
	Good: `Pattern: Oak leaf mat
Terms: US
Gauge: 13 sc and 14 rows = 10 cm (4 in)
Finished size: 9 cm x 2.5 cm (3 1/2 in x 1 in)

Piece: Mat
Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Rows 2-3: Ch 1, sc in each st across; turn. (12 sc)
Fasten off.
`,
	Sources: []string{"Conversions as pattern publishers round them: to half a centimetre and quarter of an inch, 4 in = 10 cm (Spinrite sheets, read)"},
	Check:   checkUnitsSingle,
}

// checkUnitsSingle reports once, at the first field, and mends them all.
func checkUnitsSingle(p *Pass) {
	var at []*syntax.Field
	var edits []source.Edit
	for _, f := range p.File.Header {
		if f.Key != "gauge" && f.Key != "finished size" {
			continue
		}
		written := p.File.Text.Slice(f.ValueSpan)
		lengths := p.lengthsIn(f)
		metric := func(l syntax.WrittenLength) bool { return l.Metric() }
		if len(lengths) == 0 || slices.ContainsFunc(lengths, metric) && !allOf(lengths, metric) {
			continue
		}
		at = append(at, f)
		edits = append(edits, inOtherUnits(written, f.ValueSpan.Start, lengths)...)
	}
	if len(at) == 0 {
		return
	}
	lengths := p.lengthsIn(at[0])
	only, missing := "in inches", "centimetres"
	if lengths[0].Metric() {
		only, missing = "in centimetres", "inches"
	}
	p.Report(Finding{
		Span:    at[0].ValueSpan,
		Message: quoted(at[0].Value) + " is given " + only + " only",
		Fix:     &Fix{Title: "add " + missing, Safe: true, Edits: edits},
	})
}

func allOf[T any](list []T, is func(T) bool) bool {
	return !slices.ContainsFunc(list, func(v T) bool { return !is(v) })
}

// inOtherUnits writes the lengths of a text that begins at offset at again in the
// other system, behind those that belong together: `9 cm x 2.5 cm` (3 1/2 in x 1 in).
func inOtherUnits(text string, at int, lengths []syntax.WrittenLength) []source.Edit {
	var out []source.Edit
	for i := 0; i < len(lengths); {
		words, last := []string{converted(lengths[i])}, i
		for ; last+1 < len(lengths) && crossed(text[lengths[last].Span.End:lengths[last+1].Span.Start]); last++ {
			words = append(words, converted(lengths[last+1]))
		}
		out = append(out, source.Edit{
			Span: source.At(at + lengths[last].Span.End),
			New:  " (" + strings.Join(words, " x ") + ")",
		})
		i = last + 1
	}
	return out
}

// crossed tells whether what stands between two lengths makes them a width and
// a height.
func crossed(between string) bool {
	switch strings.TrimSpace(between) {
	case "x", "×", "by":
		return true
	}
	return false
}

// converted is a length in the other system, one value a size.
func converted(l syntax.WrittenLength) string {
	words := make([]string, len(l.Vals))
	for i, v := range l.Vals {
		if l.Metric() {
			words[i] = inches(v)
		} else {
			words[i] = centimetres(v)
		}
	}
	if l.Metric() {
		return syntax.PerSize(words) + " in"
	}
	return syntax.PerSize(words) + " cm"
}
