package lint

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

var joinMissing = &Rule{
	Name:     "join-missing",
	Family:   "order",
	Severity: Warning,
	OfPiece:  true,
	Summary:  "Where rounds are joined, a round in the middle of them is joined or says that it is not.",
	Why: "A round that is left open makes the next one a spiral: its first stitch stands in another place and the count of " +
		"every later round is started one stitch off.",
	Bad: `Pattern: Acorn
Terms: US

Piece: Acorn
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Rnd 3: Ch 1, sc in each st around. (12 sc)
Rnd 4: Ch 1, sc in each st around; sl st in first sc to join. (12 sc)
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
	Check: checkJoinMissing,
}

func checkJoinMissing(p *Pass) {
	for _, piece := range p.Pieces {
		var open []*fabric.Row
		joined := 0
		for _, row := range piece.Rows {
			switch {
			case !row.Works() || !row.Round:
			case row.Joined:
				joined++
			case p.joinExpected(row):
				open = append(open, row)
			}
		}
		if !exceptional(len(open), joined) {
			continue
		}
		for _, row := range open {
			p.Report(Finding{
				Span:    headSpan(row.Tree),
				Message: rowDoes(row.Tree, "is", "are") + " not joined, and the rounds around it are",
				Fix:     &Fix{Title: "write `join`", Edits: []source.Edit{addAtEnd(row.Tree, "; join")}},
			})
		}
	}
}

// joinExpected tells whether the round after an open one begins as after a
// join, and nothing makes up for it.
func (p *Pass) joinExpected(row *fabric.Row) bool {
	next := row.After()
	if next == nil || !next.Round || !next.Joined || row.Turned || len(row.Tree.Unread()) > 0 || has[*syntax.NoJoin](row.Tree) || has[*syntax.Likewise](row.Tree) {
		return false
	}
	if slices.ContainsFunc(clausesOf[*syntax.Rows](row.Tree), func(r *syntax.Rows) bool { return r.Changed }) {
		return false // how it ends is told with the row that it is like
	}
	return !interrupted(row, next) && beginningChain(next) != nil && !p.endsInSlip(row) && !p.inSpiral(row)
}

// inSpiral tells whether the round before one is open as well, where rounds begin with no
// chain: what comes of a spiral that is joined later.
func (p *Pass) inSpiral(row *fabric.Row) bool {
	before := row.Before()
	return before != nil && before.Round && !before.Joined && beginningChain(row) == nil && beginningChain(before) == nil && !p.endsInSlip(before)
}

// endsInSlip tells whether the last stitch of a round is a slip stitch, which
// joins it without the word.
func (p *Pass) endsInSlip(row *fabric.Row) bool {
	var last syntax.Node
	for _, c := range row.Tree.Clauses {
		if worksClause(c) {
			last = c.Node
		}
	}
	w, ok := last.(*syntax.Work)
	if !ok {
		return false
	}
	k := w.Stitch.Meaning.In(p.Fabric.Dialect)
	return k != nil && k.Class == stitch.Slip
}
