package lint

import (
	"slices"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lang/units"
)

var unitsSingle = &Rule{
	Name:     "units-single",
	Family:   "materials",
	Severity: Info,
	Summary:  "Gauge and finished size are given in centimetres and in inches.",
	Why:      "A maker measures with the tape she has. What is given in one system only she has to convert, and rounds as she likes.",
	Bad: `Pattern: Oak leaf mat
Terms: US
Hook: 5 mm (US H-8)
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
Hook: 5 mm (US H-8)
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
		edits = append(edits, units.Beside(written, f.ValueSpan.Start, lengths, units.Other)...)
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
