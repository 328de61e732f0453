package lint

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/nearest"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var countUnknown = &Rule{
	Name:     "count-unknown",
	Family:   "counts",
	Severity: Info,
	OfPiece:  true,
	Summary:  "Every row can be counted; where one cannot, the clause that is to blame is named.",
	Why: "What is not counted is not checked. A slip of the pen is the usual cause; a wording that only a person can " +
		"follow, such as a length to reach, is another, and then the row's stated count is all that a maker has.",
	Bad: `Pattern: Wren's nest
Terms: US

Piece: Nest
With A, ch 11.
Row 1: Sc in 2nd ch from hook, sc lightly as moss over 9 ch. (10 sc)
Fasten off.
`,
	Good: `Pattern: Wren's nest
Terms: US

Piece: Nest
With A, ch 11.
Row 1: Sc in 2nd ch from hook, sc in next 9 ch. (10 sc)
Fasten off.
`,
	Check: checkCountUnknown,
}

func checkCountUnknown(p *Pass) {
	for _, f := range p.faults(fabric.ChainSupposed) {
		p.reportFault(f, Finding{Message: "gives no number of chains: the rows are counted over " + strconv.Itoa(f.Unit) + " repeats, ch " + f.num(func(f fabric.Fault) int { return f.N })})
	}
	for row := range p.rows() {
		if miswritten(row.Tree) {
			continue // another rule says what is amiss
		}
		if idle(row) && unreadAll(row.Piece) {
			p.Report(Finding{Span: row.Tree.Written(), Message: "states a count, and no stitch is understood in it, so the row is not counted"})
			continue
		}
		var lost sized[*fabric.Tally]
		for size := range row.Tallies {
			if t := &row.Tallies[size]; !t.Known && !explained(t) {
				lost.add(size, t)
			}
		}
		if len(lost.sizes) == 0 {
			continue
		}
		if f, ok := blamed(row, lost.sizes[0]); ok && !p.misnames(row.Tree, f.Span) {
			p.inSizes(lost.sizes, f)
		}
	}
}

// explained tells whether another rule says why a row has no count.
func explained(t *fabric.Tally) bool {
	return hasFault(t, misfits...) || hasFault(t, fabric.RowUnknown, fabric.MultipleMismatch)
}

// misnames tells whether a part of a row holds a word that another rule says no
// stitch is called by.
func (p *Pass) misnames(r *syntax.Row, part source.Span) bool {
	return slices.ContainsFunc(p.unknownNames(r), func(t syntax.Token) bool { return part.Covers(r.Abs(t.Span)) })
}

// blamed words why a row has no count: words that are not understood, if there
// are any, else the clause that the count stops at. A row that has none only
// because the one below has none is not blamed.
func blamed(row *fabric.Row, size int) (f Finding, ok bool) {
	t := &row.Tallies[size]
	for _, f := range t.Faults {
		if f.Kind == fabric.TooMany {
			return Finding{Span: row.Tree.Abs(f.Span), Message: fmt.Sprintf("asks for more than %d sts, which is more than is counted", f.N)}, true
		}
	}
	if t.Blame.Empty() {
		return Finding{}, false
	}
	for _, s := range row.Tree.Unread() {
		if t.Blame.Covers(s) {
			return Finding{Span: row.Tree.Abs(s), Message: quoted(row.Tree.Source(s)) + " is not understood, so the row is not counted" + maybeMeant(row.Tree, s)}, true
		}
	}
	return Finding{Span: row.Tree.Abs(t.Blame), Message: quoted(row.Tree.Source(t.Blame)) + " cannot be counted" + whyUncounted(row, size) + ", so the row is not"}, true
}

// plainWords are words of instructions, besides stitches, that are told from a slip of them.
var plainWords = []string{"across", "around", "first", "chain", "stitch", "stitches", "repeat", "working", "together", "evenly", "through", "between", "beginning", "remaining"}

// maybeMeant names the word that one in a part of a row may be a slip of, "" for none.
func maybeMeant(r *syntax.Row, part source.Span) string {
	for _, t := range r.Tokens {
		if t.Kind != syntax.Name || !part.Covers(t.Span) {
			continue
		}
		for _, word := range plainWords {
			if nearest.Slips(strings.ToLower(r.Source(t.Span)), word) == 1 {
				return ": " + quoted(r.Source(t.Span)) + " may be " + quoted(word)
			}
		}
	}
	return ""
}

// whyUncounted words why the work of a row has no count where that lies below it, "" where
// it lies in the words.
func whyUncounted(row *fabric.Row, size int) string {
	below := row.Below(size)
	switch {
	case below != nil && !below.Tallies[size].Known:
		return ", as it is not known what " + rowDoes(below.Tree, "makes", "make")
	case below == nil && row.Piece.From == nil && row.Tallies[size].Base == 0 && row.Tree.Label.First(size) > 1:
		return ", as the row below it is not here"
	case row.Index > 0 && !row.Piece.Rows[row.Index-1].Tallies[size].Known:
		return ", as the line above it is not"
	}
	return ""
}
