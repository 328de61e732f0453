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

// ending is how a piece begins and ends.
type ending struct {
	works bool // it is no making up
	anew  bool // it begins on nothing that was there before
	open  bool // and is never fastened off
	// row is the place that stands for its last row, and end where that ends, in the section.
	row, end source.Span
}

var endings = &fact[ending]{func(p *Pass, s section) ending {
	if s.piece == nil {
		return ending{}
	}
	last := lastWorking(s.piece)
	if last == nil {
		return ending{}
	}
	finished := slices.ContainsFunc(s.piece.Rows, func(r *fabric.Row) bool { return has[*syntax.Finish](r.Tree) || asAnother(r.Tree) }) ||
		says(plainText(s.told), "fasten", "finish off", "cut ", "break ", "bind off", "cast off", "end off", "tie off", " fo.", " fo,")
	return ending{
		works: true, anew: p.startsAnew(s.piece), open: !finished,
		row: s.place(headSpan(last.Tree)), end: s.place(source.At(last.Tree.Written().End)),
	}
}}

// asAnother tells a line that works all of another piece, which has an ending.
func asAnother(r *syntax.Row) bool {
	return r.Label.Kind == syntax.Unlabelled && slices.ContainsFunc(clausesOf[*syntax.Rows](r), func(n *syntax.Rows) bool {
		return n.Piece != "" && !n.PieceRow.Written() && n.Mark == ""
	})
}

func checkEndingMissing(p *Pass) {
	lineEnd := p.File.Text.LineEnd()
	anew := true // what comes after begins on nothing that was there before, if anything does
	for _, s := range slices.Backward(p.sections.list) {
		e := endings.of(p, s)
		if !e.works {
			continue
		}
		if e.open && anew && !p.callsFor(s.abs(e.row)) {
			p.Report(Finding{
				Span:    s.abs(e.row),
				Message: "the piece ends here and is never fastened off",
				Fix:     &Fix{Title: "write `Fasten off.`", Safe: true, Edits: []source.Edit{{Span: s.abs(e.end), New: lineEnd + "Fasten off."}}},
			})
		}
		anew = e.anew
	}
}

// callsFor tells whether a place is in a part that steps of other pieces call for: those end it.
func (p *Pass) callsFor(at source.Span) bool {
	return slices.ContainsFunc(p.File.OwnParts, func(d *syntax.Definition) bool { return d.Span.Covers(at) })
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
