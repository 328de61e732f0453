package lint

import (
	"stitchproof/lang/fabric"
	"stitchproof/lang/syntax"
)

var sideParity = &Rule{
	Name:     "side-parity",
	Family:   "order",
	Severity: Warning,
	OfPiece:  true,
	Summary:  "RS and WS follow from the turns.",
	Why: "A maker looks at the label to see which side should be in front. A wrong one puts bobbles on the back and sends " +
		"the next rows after it.",
	Bad: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 13.
Row 1 (RS): Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2 (RS): Ch 1, sc in each st across; turn. (12 sc)
Row 3: Ch 1, sc in each st across. (12 sc)
Fasten off.
`,
	Good: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 13.
Row 1 (RS): Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2 (WS): Ch 1, sc in each st across; turn. (12 sc)
Row 3: Ch 1, sc in each st across. (12 sc)
Fasten off.
`,
	Check: checkSideParity,
}

func checkSideParity(p *Pass) {
	for _, piece := range p.Pieces {
		for _, row := range piece.Rows {
			said := row.Tree.Label.Side
			if said == syntax.NoSide || row.Side == syntax.NoSide || said == row.Side {
				continue
			}
			p.Report(Finding{
				Span:    headSpan(row.Tree),
				Message: rowDoes(row.Tree, "is", "are") + " called " + sideName(said) + ", and by the turns the " + sideName(row.Side) + " faces",
				Related: sideBefore(row),
			})
			break // every later one follows from this one
		}
	}
}

func sideName(s syntax.SideKind) string {
	if s == syntax.WrongSide {
		return "WS"
	}
	return "RS"
}

// sideBefore is the nearest row above that names its side.
func sideBefore(row *fabric.Row) []Related {
	for i := row.Index - 1; i >= 0; i-- {
		if above := row.Piece.Rows[i]; above.Tree.Label.Side != syntax.NoSide {
			return []Related{{headSpan(above.Tree), rowDoes(above.Tree, "is", "are") + " called " + sideName(above.Tree.Label.Side)}}
		}
	}
	return nil
}
