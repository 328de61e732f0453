package lint

import (
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// rowsSaid is how many rows a row's words work, where they say how often: `Rep Rows 2 and 3
// 28 times`, `work even for 6 rows`. at is the index of the clause, each how many rows go
// with one of its number. Rows repeated once may fill any number of labels in turn.
func rowsSaid(r *syntax.Row, size int) (total, each, at int) {
	works := false
	for i, c := range r.Clauses {
		switch n := c.Node.(type) {
		case *syntax.Work, *syntax.Group, *syntax.Repeat:
			works = true
		case *syntax.Rows:
			switch {
			case works || n.InAll || n.Piece != "" || n.Limit == syntax.Measured || refersTo(r, size, r.Label.Numbers):
				return 0, 0, 0
			case n.Long.Written():
				return n.Long.At(size), 1, i
			case n.Number.At(size) > 1:
				each = rowsNamed(n, size)
				return each * n.Number.At(size), each, i
			}
		case *syntax.Long:
			return n.Rows.At(size), 1, i
		case *syntax.Even:
			if !works && n.Number.At(size) > 1 {
				return n.Number.At(size), 1, i
			}
		}
	}
	return 0, 0, 0
}

// timesOff is a row whose label numbers other than as many rows as its words work.
type timesOff struct {
	numbered, worked int
}

// checkTimes holds the rows that a label numbers against the times that its words say.
func (p *Pass) checkTimes(row *fabric.Row) {
	if len(row.Tree.Label.Numbers) == 0 || row.Tree.Label.EveryOther || row.Tree.Only != nil {
		return
	}
	var off sized[timesOff]
	var at, each int
	for size := range row.Tallies {
		numbered := len(row.Tree.Label.Each(size))
		worked, of, i := rowsSaid(row.Tree, size)
		if numbered > 1 && of > 0 && worked != numbered {
			off.add(size, timesOff{numbered, worked})
			at, each = i, of
		}
	}
	if len(off.sizes) == 0 || inAll.MatchString(row.Tree.Text) {
		return
	}
	numbered := off.num(func(t timesOff) int { return t.numbered })
	p.inSizes(off.sizes, Finding{
		Span: row.Tree.Abs(row.Tree.Clauses[at].Span),
		Message: "works " + counted(off.num(func(t timesOff) int { return t.worked }), "row") + ", and " + rowName(row.Tree) +
			" are " + numbered,
		Fix: retimed(row, row.Tree.Clauses[at].Span, each),
	})
}

// inAll says that a number counts the rows that were worked before, too.
var inAll = phrase.MustCompile(`(?i)\bin (?:all|total)\b|\baltogether\b|\btotal\b`)

// retimed is the fix that says the times which fill the label, where the pattern has one
// size and says them in digits; nil else.
func retimed(row *fabric.Row, clause source.Span, each int) *Fix {
	numbered := len(row.Tree.Label.Each(0))
	was, _, _ := rowsSaid(row.Tree, 0)
	if len(row.Tallies) > 1 || numbered%each != 0 {
		return nil
	}
	i := slices.IndexFunc(row.Tree.Tokens, func(t syntax.Token) bool {
		return t.Kind == syntax.Number && clause.Covers(t.Span) && t.Values.At(0) == was/each && row.Tree.Source(t.Span) == strconv.Itoa(was/each)
	})
	if i < 0 || namesRow(row.Tree.Tokens[:i]) {
		return nil
	}
	times := strconv.Itoa(numbered / each)
	return &Fix{Title: "write " + times, Edits: []source.Edit{{Span: row.Tree.Abs(row.Tree.Tokens[i].Span), New: times}}}
}

// checkTotal holds a number of rows that a line states against those that it works, and
// against all of the piece as far as it goes: `Repeat Rows 2 to 7 five more times. (37 rows)`.
func (p *Pass) checkTotal(row *fabric.Row) {
	if len(row.Tree.Clauses) == 0 {
		return
	}
	stated, at := rowsStated(row.Tree)
	if !stated.Written() || row.Piece.From != nil || !has[*syntax.Rows](row.Tree) {
		return
	}
	var off sized[int]
	for size := range row.Tallies {
		here, all := row.Repeats[size], 0
		for _, above := range row.Piece.Rows[:row.Index+1] {
			if above.Measured() || !above.Tallies[size].Known || above.Tree.Only != nil {
				return // how many rows it is nobody says
			}
			if above.Tallies[size].Works && (above.Tree.Label.Kind != syntax.Unlabelled || has[*syntax.Rows](above.Tree)) {
				all += above.Repeats[size]
			}
		}
		if n := stated.At(size); n != here && n != all {
			off.add(size, all)
		}
	}
	if len(off.sizes) > 0 {
		p.inSizes(off.sizes, Finding{
			Span:    row.Tree.Abs(at),
			Message: "the piece has " + counted(off.num(func(n int) int { return n }), "row") + " by then, and " + stated.String() + " are said",
		})
	}
}

// rowsStated is the number of rows that a line states as a count, in brackets at its end,
// with its place.
func rowsStated(r *syntax.Row) (syntax.Num, source.Span) {
	last := r.Clauses[len(r.Clauses)-1]
	if t, ok := last.Node.(*syntax.Total); ok && len(t.Parts) == 1 && t.Parts[0].Noun.Kind == syntax.NounRow && strings.ContainsAny(r.Source(last.Span)[:1], "([{") {
		return t.Parts[0].Number, last.Span
	}
	return syntax.Num{}, source.Span{}
}
