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
// against all of the piece as far as it goes: `Repeat Rows 2 to 7 five more times. (37 rows)`,
// `Rnds 7-13: Sc in each st (7 rnds)`.
func (p *Pass) checkTotal(row *fabric.Row) {
	stated, at := rowsStated(row.Tree)
	if !stated.Written() || row.Tree.Only != nil || row.Tree.Label.EveryOther {
		return
	}
	run, goesOn := len(row.Tree.Label.Numbers) > 0, row.Piece.From != nil
	if !run && (goesOn || !has[*syntax.Rows](row.Tree)) {
		return
	}
	var off sized[int]
	for size := range row.Tallies {
		n, here := stated.At(size), row.Repeats[size]
		if run {
			here = len(row.Tree.Label.Each(size))
		}
		all, known := rowsUntil(row, size)
		switch {
		case run && here < 2, n == here:
		case run && n < here:
			off.add(size, here)
		case !known || goesOn:
			return // it may be all of them
		case n != all && run:
			off.add(size, here)
		case n != all:
			off.add(size, all)
		}
	}
	if len(off.sizes) == 0 {
		return
	}
	rows := off.num(func(n int) int { return n })
	message := "the piece has " + counted(rows, "row") + " by then, and " + stated.String() + " are said"
	if run {
		message = "says " + counted(stated.String(), "row") + ", and " + rowDoes(row.Tree, "is", "are") + " " + rows
	}
	p.inSizes(off.sizes, Finding{Span: row.Tree.Abs(at), Message: message})
}

// rowsUntil is how many rows a piece has up to one of them. known is false where nobody says.
func rowsUntil(row *fabric.Row, size int) (all int, known bool) {
	for _, above := range row.Piece.Rows[:row.Index+1] {
		if above.Measured() || !above.Tallies[size].Known || above.Tree.Only != nil {
			return 0, false
		}
		if above.Tallies[size].Works && (above.Tree.Label.Kind != syntax.Unlabelled || has[*syntax.Rows](above.Tree)) {
			all += above.Repeats[size]
		}
	}
	return all, true
}

// rowsStated is the number of rows that a line states as a count, or in the brackets of its
// label, with its place: `Rnds 7-13 (7 rnds)`. It is unwritten where the line goes on to say
// which rows they are: `2 rows with each color`.
func rowsStated(r *syntax.Row) (syntax.Num, source.Span) {
	for i, t := range r.Tokens {
		if !r.Label.Span.Covers(t.Span) {
			break
		}
		if i > 1 && t.Kind == syntax.Word && (t.Canon == "row" || t.Canon == "rnd") && r.Tokens[i-1].Kind == syntax.Number && r.Tokens[i-2].Kind == syntax.Open {
			return r.Tokens[i-1].Values, r.Tokens[i-1].Span.Union(t.Span)
		}
	}
	for i, c := range r.Clauses {
		t, ok := c.Node.(*syntax.Total)
		if !ok || t.Change != 0 || !endsThere(r, i) {
			continue
		}
		for _, part := range t.Parts {
			if part.Noun.Kind == syntax.NounRow && part.On == "" {
				return part.Number, c.Span
			}
		}
	}
	return syntax.Num{}, source.Span{}
}

// endsThere tells whether the words about a count end with it: in its brackets, with the line, or
// before another count.
func endsThere(r *syntax.Row, i int) bool {
	if i+1 == len(r.Clauses) || strings.ContainsAny(r.Source(r.Clauses[i].Span)[:1], "([{") {
		return true
	}
	_, another := r.Clauses[i+1].Node.(*syntax.Total)
	return another
}
