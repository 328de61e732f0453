package lint

import (
	"fmt"
	"slices"

	"stitchproof/lang/source"
)

var abbreviationUnused = &Rule{
	Name:     "abbreviation-unused",
	Family:   "terms",
	Severity: Info,
	Summary:  "The pattern uses every abbreviation that its list explains.",
	Why: "A list taken over from another pattern promises stitches that never come, and makes the pattern look harder than it " +
		"is.",
	Bad: `Pattern: Acorn cup
Terms: US

Abbreviations
sc = single crochet
sl st = slip stitch
st(s) = stitch(es)
tr = treble crochet

Piece: Cup
6 sc in magic ring; sl st in first st to join. (6 sc)
Fasten off.
`,
	Good: `Pattern: Acorn cup
Terms: US

Abbreviations
sc = single crochet
sl st = slip stitch
st(s) = stitch(es)

Piece: Cup
6 sc in magic ring; sl st in first st to join. (6 sc)
Fasten off.
`,
	Check: checkAbbreviationUnused,
}

func checkAbbreviationUnused(p *Pass) {
	l := listOf(p.File)
	if len(l.entries) == 0 || !p.hasInstructions() {
		return
	}
	text := l.elsewhere()
	for i, d := range l.entries {
		names := namesIn(d)
		if len(names) == 0 || slices.ContainsFunc(names, func(name string) bool { return writes(text, name) }) {
			continue
		}
		f := Finding{Span: d.NameSpan, Message: fmt.Sprintf("%s is explained and used nowhere", quoted(p.File.Text.Slice(d.NameSpan)))}
		if len(l.entries) > 1 {
			f.Fix = &Fix{Title: "take it out of the list", Safe: true, Edits: []source.Edit{{Span: l.extent(i)}}}
		}
		p.Report(f)
	}
}

// hasInstructions tells a pattern from a part of one that only explains it.
func (p *Pass) hasInstructions() bool {
	for range p.Fabric.Rows() {
		return true
	}
	return false
}

// extent is all that an entry takes up in its list: its line, or its part of a
// paragraph with one of the separators beside it.
func (l listing) extent(i int) source.Span {
	d := l.entries[i]
	switch {
	case !d.Listed:
		first, last := l.file.Text.LineOf(d.Span.Start), l.file.Text.LineOf(d.Span.End)
		return l.file.Text.LineWithEnd(first).Union(l.file.Text.LineWithEnd(last))
	case i+1 < len(l.entries) && l.entries[i+1].Listed:
		return source.Span{Start: d.Span.Start, End: l.entries[i+1].Span.Start}
	case i > 0 && l.entries[i-1].Listed:
		return source.Span{Start: l.entries[i-1].Span.End, End: d.Span.End}
	}
	return d.Span
}
