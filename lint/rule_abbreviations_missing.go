package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/source"
)

var abbreviationsMissing = &Rule{
	Name:     "abbreviations-missing",
	Family:   "terms",
	Severity: Info,
	Summary:  "A pattern that uses abbreviations explains them in a list.",
	Why: "A beginner knows none of them, and a maker from elsewhere knows other ones. Magazines print the list once for all their " +
		"patterns, so only a house that wants it in each asks for it.",
	Bad: `Pattern: Acorn cup
Terms: UK

Piece: Cup
6 dc in magic ring; ss in first st to join. (6 dc)
Fasten off.
`,
	Good: `Pattern: Acorn cup
Terms: UK

Abbreviations
dc = double crochet
ss = slip stitch
st(s) = stitch(es)

Piece: Cup
6 dc in magic ring; ss in first st to join. (6 dc)
Fasten off.
`,
	Sources: []string{"what abbreviations stand for: Craft Yarn Council, Standards & Guidelines, and the lists that `lang/stitch/data/sources.tsv` names"},
	Asked:   true,
	Check:   checkAbbreviationsMissing,
}

func checkAbbreviationsMissing(p *Pass) {
	l := listOf(p.File)
	if len(l.entries) > 0 || len(p.File.Pieces) == 0 || says(p.around.notes, "abbreviations") {
		return // they are explained, or said to be elsewhere
	}
	used := slices.DeleteFunc(p.abbreviationsUsed(), func(a abbreviated) bool { return l.explains(bareWords(a.short)) })
	if len(used) == 0 {
		return
	}
	p.Report(Finding{
		Span:    used[0].span,
		Message: "no list explains " + quoted(used[0].short) + " and the other abbreviations",
		Fix:     &Fix{Title: "list what is used", Safe: true, Edits: []source.Edit{p.listing(used)}},
	})
}

// listing is the edit that lists abbreviations by the alphabet, above the first
// piece.
func (p *Pass) listing(used []abbreviated) source.Edit {
	slices.SortFunc(used, func(a, b abbreviated) int { return strings.Compare(strings.ToLower(a.short), strings.ToLower(b.short)) })
	lines := []string{"Abbreviations"}
	for _, a := range used {
		lines = append(lines, a.short+" = "+a.long)
	}
	end := p.File.Text.LineEnd()
	text := strings.Join(lines, end) + end + end
	first := p.firstPieceLine()
	if first > 0 && strings.TrimSpace(p.File.Text.Slice(p.File.Text.Line(first-1))) != "" {
		text = end + text
	}
	return source.Edit{Span: source.At(p.File.Text.Line(first).Start), New: text}
}

// firstPieceLine is the line where the first piece begins, with the heading that
// it may stand under.
func (p *Pass) firstPieceLine() int {
	piece := p.File.Pieces[0]
	begins := p.File.Text.LineOf(piece.Span.Start)
	for line := begins - 1; line >= 0 && piece.Under != ""; line-- {
		if strings.Contains(p.File.Text.Slice(p.File.Text.Line(line)), piece.Under) {
			return line
		}
	}
	return begins
}
