package lint

import (
	"stitchproof/lang/phrase"
	"stitchproof/lang/syntax"
)

var gaugeMissing = &Rule{
	Name:     "gauge-missing",
	Family:   "materials",
	Severity: Info,
	Summary:  "A pattern that promises a finished size gives a gauge, and a gauge says to what length it counts.",
	Why:      "The counts give the size only at one gauge. Without it a maker learns that hers differs when the piece is finished.",
	Bad: `Pattern: Oak leaf mat
Terms: US
Finished size: 9 cm x 2.5 cm (3 1/2 in x 1 in)

Piece: Mat
Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Fasten off.
`,
	Good: `Pattern: Oak leaf mat
Terms: US
Hook: 5 mm (US H-8)
Gauge: 13 sc and 14 rows = 10 cm (4 in)
Finished size: about 9 cm (3 1/2 in) wide

Piece: Mat
Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Fasten off.
`,
	Check: checkGaugeMissing,
}

// lengthWord is a unit or a word for one.
var lengthWord = phrase.MustCompile(`(?i)\d ?["”″]|\b(?:inch(?:es)?|ins?|cms?|mm|centimet(?:re|er)s?)\b`)

func checkGaugeMissing(p *Pass) {
	for _, f := range p.File.Header {
		if g := syntax.ParseGauge(f.Value); f.Key == "gauge" && g.Stitches > 0 && g.Rows > 0 && g.Length == 0 && !lengthWord.MatchString(f.Value) {
			p.Report(Finding{Span: f.ValueSpan, Message: "the gauge says how many stitches and rows, and not to what length"})
			return
		}
	}
	if len(p.Materials.Finished) == 0 || p.Materials.Finished[0].Value == "" || len(p.Materials.Gauges) > 0 {
		return
	}
	if p.says("gauge", "tension", "swatch") {
		return // it is told elsewhere, or said not to matter
	}
	at := p.Materials.Finished[0].KeySpan
	if at.Len() == 0 {
		at = p.Materials.Finished[0].ValueSpan // the key stands above it
	}
	p.Report(Finding{Span: at, Message: "a finished size is promised, and no gauge is given to reach it"})
}
