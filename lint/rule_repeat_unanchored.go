package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var repeatUnanchored = &Rule{
	Name:     "repeat-unanchored",
	Family:   "order",
	Severity: Warning,
	Summary:  "Every `rep from *` has its star.",
	Why:      "Without the star nobody knows where the repeat begins, and every guess gives another row.",
	Bad: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in next st, 2 sc in next st; rep from * across. (18 sc)
Fasten off.
`,
	Good: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, *sc in next st, 2 sc in next st; rep from * across. (18 sc)
Fasten off.
`,
	Check: checkRepeatUnanchored,
}

// goesBack tells of a section that goes back to a mark which may not be there: what it goes
// back to may stand in another one.
var goesBack = &fact[bool]{func(p *Pass, s section) bool {
	unanchored := func(r *syntax.Row) bool {
		return slices.ContainsFunc(r.Problems, func(problem syntax.Problem) bool { return problem.Kind == syntax.RepeatUnanchored })
	}
	return strings.Contains(s.text, "**") || slices.ContainsFunc(s.rows(), func(r *fabric.Row) bool { return unanchored(r.Tree) }) ||
		s.piece == nil && slices.ContainsFunc(p.Definitions, func(d *syntax.Definition) bool { return d.Row != nil && unanchored(d.Row) })
}}

func checkRepeatUnanchored(p *Pass) {
	if !anywhere(p, goesBack) {
		return
	}
	p.checkDoubleStars()
	for _, s := range p.problems(syntax.RepeatUnanchored) {
		if m := mark(s.row.Source(s.Span)); m != "*" && p.marksAbove(m, s.row) {
			continue // `repeat from ** of the first point`: the mark stands in another row
		}
		p.Report(Finding{
			Span:    s.row.Abs(s.Span),
			Message: quoted(s.row.Source(s.Span)) + " goes back to a mark that is not there: no " + mark(s.row.Source(s.Span)) + " stands before it",
		})
	}
}

// checkDoubleStars finds repeats from a double star where only single ones stand before. One
// `of` another part stands there.
func (p *Pass) checkDoubleStars() {
	stands := false // in this row or one above
	for row := range p.rows() {
		single := false
		for i, t := range row.Tree.Tokens {
			from := i > 0 && row.Tree.Tokens[i-1].Canon == "from"
			switch text := row.Tree.Source(t.Span); {
			case t.Kind != syntax.Star:
			case text == "*":
				single = single || !from
			case text == "**" && !from:
				stands = true
			case text == "**" && single && !stands && !(i+1 < len(row.Tree.Tokens) && row.Tree.Tokens[i+1].Canon == "of"):
				p.Report(Finding{
					Span:    row.Tree.Abs(t.Span),
					Message: "goes back to a mark that is not there: only * stands before it",
					Fix:     &Fix{Title: "write *", Edits: []source.Edit{{Span: row.Tree.Abs(t.Span), New: "*"}}},
				})
			}
		}
	}
}

// marksAbove tells whether a mark other than the common star stands in some line
// above a row.
func (p *Pass) marksAbove(mark string, row *syntax.Row) bool {
	return strings.Contains(p.File.Text.Slice(source.Span{End: row.At}), mark)
}

// mark is the repeat mark that words of a pattern speak of.
func mark(words string) string {
	if strings.Contains(words, "**") {
		return "**"
	}
	for _, m := range []string{"*", "†", "‡", "+"} {
		if strings.Contains(words, m) {
			return m
		}
	}
	return "mark"
}
