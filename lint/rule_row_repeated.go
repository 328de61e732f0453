package lint

var rowRepeated = &Rule{
	Name:     "row-repeated",
	Family:   "order",
	Severity: Warning,
	OfPiece:  true,
	Summary:  "No two rows of a piece have the same number.",
	Why: "A maker who counts rows by their numbers takes the second one for a copy and leaves it out. `Rep Row 6` means one " +
		"of two rows, and nobody can say which.",
	Bad: `Pattern: Acorn
Terms: US

Piece: Acorn
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Rnd 2: Ch 1, sc in each st around; sl st in first sc to join. (12 sc)
Rnd 3: Ch 1, sc in each st around; sl st in first sc to join. (12 sc)
Fasten off.
`,
	Good: `Pattern: Acorn
Terms: US

Piece: Acorn
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Rnd 3: Ch 1, sc in each st around; sl st in first sc to join. (12 sc)
Rnd 4: Ch 1, sc in each st around; sl st in first sc to join. (12 sc)
Fasten off.
`,
	Check: checkRowRepeated,
}

func checkRowRepeated(p *Pass) {
	for _, piece := range p.Pieces {
		found := slips(piece)
		for i, s := range found {
			if s.earlier == nil {
				continue
			}
			p.Report(Finding{
				Span:    headSpan(s.row.Tree),
				Message: rowDoes(s.row.Tree, "comes", "come") + " twice, and " + s.dueName() + " is due here",
				Related: []Related{{headSpan(s.earlier.Tree), rowName(s.earlier.Tree) + " the first time"}},
				Fix:     renumber(found, i),
			})
		}
	}
}
