package lint

import (
	"stitchproof/lang/fabric"
	"stitchproof/lang/syntax"
)

var sideBySize = &Rule{
	Name:     "side-by-size",
	Family:   "order",
	Severity: Warning,
	OfPiece:  true,
	Summary:  "A row that names its side faces that side in every size.",
	Why: "A size with one row more comes to the next part with the other side of the work in front. What is shaped or joined there " +
		"is the wrong way round for that size only.",
	Bad: `Pattern: Hedge mitten
Terms: US
Sizes: S (M, L)

Piece: Cuff
With A, ch 21.
Row 1 (RS): Sc in 2nd ch from hook and in each ch across; turn. (20 sc)
Next 3 (4, 5) rows: Ch 1, sc in each st across; turn. (20 sc)
Next row (RS): Ch 1, sc in next 10 sts, leave remaining sts unworked. (10 sc)
Fasten off.
`,
	Good: `Pattern: Hedge mitten
Terms: US
Sizes: S (M, L)

Piece: Cuff
With A, ch 21.
Row 1 (RS): Sc in 2nd ch from hook and in each ch across; turn. (20 sc)
Next 3 (5, 7) rows: Ch 1, sc in each st across; turn. (20 sc)
Next row (RS): Ch 1, sc in next 10 sts, leave remaining sts unworked. (10 sc)
Fasten off.
`,
	Check: checkSideBySize,
}

func checkSideBySize(p *Pass) {
	for _, piece := range p.Pieces {
		turns := make([]int, p.Fabric.Sizes())
		var above *fabric.Row // the last row that turned a different number of times
		for _, row := range piece.Rows {
			if joinsYarn(row) {
				clear(turns) // it is joined anew, on whichever side the words say
				above = nil
			}
			if other := otherSide(turns); other != nil && row.Tree.Label.Side != syntax.NoSide && row.Works() {
				p.inSizes(other, Finding{
					Span:    headSpan(row.Tree),
					Message: rowDoes(row.Tree, "is", "are") + " called " + sideName(row.Tree.Label.Side) + ", and by the rows before it the other side faces",
					Related: []Related{{headSpan(above.Tree), "not the same number of rows in every size"}},
				})
				break
			}
			if !row.Turned && !has[*syntax.Even](row.Tree) || row.Round {
				continue
			}
			for size := range turns {
				if row.Tallies[size].Works {
					turns[size] += row.Repeats[size]
				}
			}
			if otherSide(row.Repeats) != nil {
				above = row
			}
		}
	}
}

// otherSide lists the sizes that have turned an odd number of times more or less
// than the first, nil for none.
func otherSide(turns []int) []int {
	var out []int
	for size, n := range turns {
		if (n-turns[0])%2 != 0 {
			out = append(out, size)
		}
	}
	return out
}
