package lint

import (
	"slices"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var turnMissing = &Rule{
	Name:     "turn-missing",
	Family:   "order",
	Severity: Warning,
	OfPiece:  true,
	Summary:  "In flat work whose rows turn, every row turns or says that it does not.",
	Why: "A maker who does not turn has the yarn at the wrong end and the wrong side in front. Where that is meant, " +
		"`do not turn` says so.",
	Bad: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in each st across; turn. (12 sc)
Row 3: Ch 1, sc in each st across. (12 sc)
Row 4: Ch 1, sc in each st across. (12 sc)
Fasten off.
`,
	Good: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in each st across; turn. (12 sc)
Row 3: Ch 1, sc in each st across; turn. (12 sc)
Row 4: Ch 1, sc in each st across. (12 sc)
Fasten off.
`,
	Check: checkTurnMissing,
}

func checkTurnMissing(p *Pass) {
	for _, piece := range p.Pieces {
		missing, atBegin := missingTurns(piece)
		for _, row := range missing {
			edit := addAtEnd(row.Tree, "; turn")
			if atBegin {
				edit = addBeforeWork(row.Tree, "turn, ")
			}
			p.Report(Finding{
				Span:    headSpan(row.Tree),
				Message: rowDoes(row.Tree, "does", "do") + " not say `turn`, and the rows around it do",
				Fix:     &Fix{Title: "write `turn`", Edits: []source.Edit{edit}},
			})
		}
	}
}

// addBeforeWork adds words before the first stitches of a row.
func addBeforeWork(r *syntax.Row, words string) source.Edit {
	first := slices.IndexFunc(r.Clauses, worksClause)
	place := source.At(r.Clauses[max(first, 0)].Span.Start)
	return source.Edit{Span: r.Abs(place), New: words}
}

// addAtEnd adds words to what a row works: before its count and its full stop.
func addAtEnd(r *syntax.Row, words string) source.Edit {
	end := 0
	for _, c := range r.Clauses {
		switch c.Node.(type) {
		case *syntax.Total, *syntax.Remark:
		default:
			end = c.Span.End
		}
	}
	place := source.At(end)
	return source.Edit{Span: r.Abs(place), New: words}
}
