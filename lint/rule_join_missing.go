package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

var joinMissing = &Rule{
	Name:     "join-missing",
	Family:   "order",
	Severity: Warning,
	OfPiece:  true,
	Summary:  "Where rounds are joined, a round that others follow is joined or says that it is not.",
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

// joinExpected tells whether a round should be joined: the next one begins as after a join,
// or the round itself does and its yarn is cut before that, and nothing makes up for it.
func (p *Pass) joinExpected(row *fabric.Row) bool {
	if row.Turned || len(row.Tree.Unread()) > 0 || has[*syntax.NoJoin](row.Tree) || has[*syntax.Likewise](row.Tree) || p.endsInSlip(row) || p.inSpiral(row) {
		return false
	}
	if slices.ContainsFunc(clausesOf[*syntax.Rows](row.Tree), func(r *syntax.Rows) bool { return r.Changed }) {
		return false // how it ends is told with the row that it is like
	}
	if slices.ContainsFunc(clausesOf[*syntax.Repeat](row.Tree), func(r *syntax.Repeat) bool { return r.Omits != nil }) {
		return false // `the last sc is the join`
	}
	next := row.After()
	switch {
	case next == nil:
		return false // what ends a piece is drawn up, sewn on or closed in many ways
	case interrupted(row, next):
		return beginsJoined(row) && len(row.Work().Faults) == 0 && !has[*syntax.Leave](row.Tree) && !closedOtherwise.MatchString(strings.ToLower(afterWork(row.Tree)))
	}
	return next.Round && next.Joined && beginsJoined(next)
}

// closedOtherwise tells of a round whose yarn is cut that it is closed by hand.
var closedOtherwise = phrase.MustCompile(`\b(?:join|invisib|needle|clos(?:e|ing)|gather|draw|pull|tight|through)`)

// afterWork are the words of a row behind its last stitches.
func afterWork(r *syntax.Row) string {
	end := 0
	for _, c := range r.Clauses {
		if worksClause(c) {
			end = c.Span.End
		}
	}
	return r.Text[end:]
}

// beginsJoined tells whether a round begins as one after a join: with a chain, where need
// be after slip stitches to it.
func beginsJoined(row *fabric.Row) bool { return chainAfter(row, preparesOrTravels) != nil }

// inSpiral tells whether the round before one is open as well, where rounds begin with no
// chain: what comes of a spiral that is joined later.
func (p *Pass) inSpiral(row *fabric.Row) bool {
	before := row.Before()
	return before != nil && before.Round && !before.Joined && beginningChain(row) == nil && beginningChain(before) == nil && !p.endsInSlip(before)
}

// endsInSlip tells whether the last stitch of a round is a slip stitch, which
// joins it without the word.
func (p *Pass) endsInSlip(row *fabric.Row) bool {
	w := lastWork(row.Tree.Clauses)
	if w == nil {
		return false
	}
	k := w.Stitch.Meaning.In(p.Fabric.Dialect)
	return k != nil && k.Class == stitch.Slip
}

// lastWork is what is worked last of some clauses, also at the end of a repeat; nil where
// those are no stitches.
func lastWork(clauses []syntax.Clause) *syntax.Work {
	for _, c := range slices.Backward(clauses) {
		if !worksClause(c) {
			continue
		}
		switch n := c.Node.(type) {
		case *syntax.Work:
			return n
		case *syntax.Bracket:
			return lastWork(n.Body)
		case *syntax.Group:
			return lastWork(n.Body)
		case *syntax.Repeat:
			if len(n.Ending) > 0 {
				return lastWork(n.Ending)
			}
			return lastWork(n.InOrder())
		}
		return nil
	}
	return nil
}
