package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/rework"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

var countMissing = &Rule{
	Name:     "count-missing",
	Family:   "counts",
	Severity: Warning,
	OfPiece:  true,
	Summary:  "In a piece that states its counts, a row that changes the count states the new one.",
	Why: "Increases and decreases are where makers go wrong, so the row after them is where a count is looked for. A piece " +
		"that states counts elsewhere has promised one.",
	Bad: `Pattern: Acorn
Terms: US

Piece: Acorn
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join.
Rnd 3: Ch 1, [sc in next st, 2 sc in next st] 6 times; sl st in first sc to join. (18 sc)
Fasten off.
`,
	Good: `Pattern: Acorn
Terms: US

Piece: Acorn
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Rnd 3: Ch 1, [sc in next st, 2 sc in next st] 6 times; sl st in first sc to join. (18 sc)
Fasten off.
`,
	Check: checkCountMissing,
}

func checkCountMissing(p *Pass) {
	for _, piece := range p.Pieces {
		if !statesCounts(piece) {
			continue
		}
		for _, row := range piece.Rows {
			below := row.Before()
			if row.Stated != nil || !row.Works() || has[*syntax.Total](row.Tree) || below == nil || row.Continued || !labelled(row) || fastensFirst(row.Tree) || miswritten(row.Tree) || leavesAllBut(row.Tree) || closesAlone(row) || countsInWords(row.Tree) || !changes(row, below) {
				continue
			}
			p.Report(Finding{
				Span:    headSpan(row.Tree),
				Message: "goes from " + plainMade(below) + " to " + madeText(row) + " and states no count",
				Fix:     &Fix{Title: "write the count", Safe: true, Edits: []source.Edit{{Span: source.At(row.Tree.Written().End), New: " " + rework.Count(row)}}},
			})
		}
	}
}

// fastensFirst tells a line that fastens off before it goes on: what it makes hangs from the work.
func fastensFirst(tree *syntax.Row) bool {
	if len(tree.Clauses) == 0 {
		return false
	}
	_, fastens := tree.Clauses[0].Node.(*syntax.Finish)
	return fastens
}

// closesAlone tells a line that is one slip stitch, which closes what is worked: `9. Sl st in the missed ch. Fasten off.`
func closesAlone(row *fabric.Row) bool {
	works := clausesOf[*syntax.Work](row.Tree)
	return len(works) == 1 && works[0].Stitch.Meaning.Is(stitch.Slip) && row.Tallies[0].Made == 1
}

// countsInWords tells a row that counts in words which say more than can be held against what it makes: `(45 sts, counting
// the joining sl st)`.
func countsInWords(tree *syntax.Row) bool {
	return slices.ContainsFunc(tree.Clauses, func(c syntax.Clause) bool {
		if _, remark := c.Node.(*syntax.Remark); !remark {
			return false
		}
		at := slices.IndexFunc(tree.Tokens, func(t syntax.Token) bool { return c.Span.Covers(t.Span) && t.Kind != syntax.Open })
		return at >= 0 && at+1 < len(tree.Tokens) && tree.Tokens[at].Kind == syntax.Number && (tree.Tokens[at+1].Kind == syntax.Stitch || tree.Tokens[at+1].Canon == "st")
	})
}

// leavesAllBut tells a row that says how many stitches it works in its only step, and leaves the
// rest: its number is its count.
func leavesAllBut(tree *syntax.Row) bool {
	if !has[*syntax.Leave](tree) || has[*syntax.Repeat](tree) || has[*syntax.Group](tree) {
		return false
	}
	works := clausesOf[*syntax.Work](tree)
	return len(works) == 1 && len(works[0].Places) == 1 && works[0].Places[0].Number.Written()
}

// labelled tells a row that makers count by from a line such as `Sl st in next st.`.
func labelled(row *fabric.Row) bool { return row.Tree.Label.Kind != syntax.Unlabelled }

// statesCounts tells whether a piece's rows state a count as a rule: two of
// three, and at least two.
func statesCounts(piece *fabric.Piece) bool {
	stated, all := 0, 0
	for _, row := range piece.Rows {
		if !row.Works() || !labelled(row) {
			continue
		}
		all++
		if row.Stated != nil {
			stated++
		}
	}
	return stated >= 2 && 3*stated >= 2*all
}

// changes tells whether a row makes, for certain, another number of stitches
// than the one below in every size. Lace is left alone: its spaces and shells
// are counted, or nothing is.
func changes(row, below *fabric.Row) bool {
	for size := range row.Tallies {
		a, b := &below.Tallies[size], &row.Tallies[size]
		if !a.Known || !b.Known || a.Made == b.Made || a.Chains > 0 || b.Chains > 0 || hasFault(b, misfits...) || hasFault(b, fabric.RowShort) {
			return false
		}
	}
	return true
}

func plainMade(row *fabric.Row) string {
	number, _, _ := strings.Cut(madeText(row), " st")
	return number
}
