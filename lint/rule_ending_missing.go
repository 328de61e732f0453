package lint

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

var endingMissing = &Rule{
	Name:     "ending-missing",
	Family:   "order",
	Severity: Info,
	Summary:  "Every piece is fastened off, or goes on into the next.",
	Why: "A maker who finds no end looks for rows that got lost. The words also say whether a tail is needed and whether the " +
		"yarn goes on to the edging.",
	Bad: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in each st across. (12 sc)
`,
	Good: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in each st across. (12 sc)
Fasten off.
`,
	Check: checkEndingMissing,
}

func checkEndingMissing(p *Pass) {
	lineEnd := p.File.Text.LineEnd()
	for i, piece := range p.Fabric.Pieces {
		last := lastWorking(piece)
		if last == nil || slices.ContainsFunc(piece.Rows, func(r *fabric.Row) bool { return has[*syntax.Finish](r.Tree) }) || says(p.wordsOf(piece), "fasten", "finish off", "cut ", "break ", "bind off", "cast off", "end off", "tie off", " fo.", " fo,") {
			continue
		}
		after := p.Fabric.Pieces[i+1:]
		next := slices.IndexFunc(after, func(other *fabric.Piece) bool { return lastWorking(other) != nil }) // not the making up
		if next >= 0 && !p.startsAnew(after[next]) {
			continue
		}
		p.Report(Finding{
			Span:    headSpan(last.Tree),
			Message: "the piece ends here and is never fastened off",
			Fix:     &Fix{Title: "write `Fasten off.`", Safe: true, Edits: []source.Edit{{Span: source.At(last.Tree.Written().End), New: lineEnd + "Fasten off."}}},
		})
	}
}

func lastWorking(piece *fabric.Piece) *fabric.Row {
	for i := len(piece.Rows) - 1; i >= 0; i-- {
		if piece.Rows[i].Works() {
			return piece.Rows[i]
		}
	}
	return nil
}

// startsAnew tells whether a piece begins with a ring, a chain or foundation
// stitches of its own rather than on the piece before it.
func (p *Pass) startsAnew(piece *fabric.Piece) bool {
	anew := false
	for _, row := range piece.Rows {
		syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
			switch n := c.Node.(type) {
			case *syntax.MagicRing:
				anew = true
			case *syntax.Yarn:
				anew = anew || n.Action == syntax.YarnJoin && n.Place.Elsewhere
			case *syntax.Work:
				k := n.Stitch.Meaning.In(p.Fabric.Dialect)
				anew = anew || fromHook(n) || k != nil && k.Class == stitch.Foundation
				for _, place := range n.Places {
					anew = anew || place.Noun.Kind == syntax.NounRing
				}
			}
		})
		if row.Works() {
			break
		}
	}
	return anew
}
