package rework

import (
	"slices"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lang/units"
)

// Units gives the way to write the lengths on the line at a place in centimetres and
// in inches, those of yarn in metres and yards, where they stand in one system only.
func (p *Pattern) Units(at int) []Change {
	line := p.Text.Line(p.Text.LineOf(at))
	text := p.Text.Slice(line)
	other := units.Other
	if p.ofYarn(line) {
		other = units.OtherOfYarn
	}
	var alone []syntax.WrittenLength
	runs := units.Runs(text, p.lengths(line, text))
	for i, run := range runs {
		if i > 0 && told(text, runs[i-1], run) || i+1 < len(runs) && told(text, run, runs[i+1]) {
			continue
		}
		alone = append(alone, run...)
	}
	edits := units.Beside(text, line.Start, alone, other)
	title := "write every length of the line in the other units too"
	if len(edits) == 1 {
		title = "write" + edits[0].New + " beside " + text[alone[0].Span.Start:alone[len(alone)-1].Span.End]
	}
	return p.kept(Change{Title: title, Edits: edits})
}

// told tells whether one of two runs is the other in other units: nothing but signs,
// or an `or`, stands between them.
func told(text string, a, b []syntax.WrittenLength) bool {
	between := strings.Trim(text[a[len(a)-1].Span.End:b[0].Span.Start], " ()[]/=,~≈")
	return len(a) == len(b) && a[0].Metric() != b[0].Metric() && (between == "" || between == "or")
}

// ofYarn tells whether a line says how much yarn there is.
func (p *Pattern) ofYarn(line source.Span) bool {
	return slices.Contains(p.File.Supplies, line) ||
		slices.ContainsFunc(p.File.Header, func(f *syntax.Field) bool { return f.Key == "yarn" && f.Span.Overlaps(line) })
}

// place is what makes of `in` a word of an instruction: `6 in ring`.
var place = phrase.MustCompile(`^\s*\pL`)

// lengths are those of a line that are sizes: neither the millimetres of a hook nor,
// in an instruction, a number before the place that is worked into.
func (p *Pattern) lengths(line source.Span, text string) []syntax.WrittenLength {
	hook := strings.Contains(strings.ToLower(text), "hook")
	working := false
	for row := range p.Fabric.Rows() {
		working = working || row.Tree.Span().Overlaps(line)
	}
	return slices.DeleteFunc(syntax.FindLengths(text), func(l syntax.WrittenLength) bool {
		return hook && l.Unit == "mm" || working && strings.HasSuffix(text[:l.Span.End], "in") && place.MatchString(text[l.Span.End:])
	})
}
