package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// between gives the rows of a piece that stand between two of its rows.
func between(a, b *fabric.Row) []*fabric.Row {
	return slices.Clone(a.Piece.Rows[a.Index+1 : max(a.Index+1, b.Index)])
}

// rowName is how a row is called in a message: as the pattern labels it.
func rowName(r *syntax.Row) string {
	text, _, _ := strings.Cut(r.Label.Text, "(")
	if text = strings.Trim(text, "*_: "); text == "" {
		return "this line"
	}
	return text
}

// rowNoun is what a row is, by the way it goes.
func rowNoun(row *fabric.Row) string {
	if row.Round {
		return "round"
	}
	return "row"
}

// rowDoes is what a row does, by name: `Row 5 comes next`, `Rows 5-7 come next`.
func rowDoes(r *syntax.Row, one, several string) string {
	if len(r.Label.Each(0)) > 1 {
		return rowName(r) + " " + several
	}
	return rowName(r) + " " + one
}

// clausesOf gives the clauses of a kind that a row holds.
func clausesOf[N syntax.Node](r *syntax.Row) []N {
	var out []N
	syntax.Walk(r.Clauses, func(c syntax.Clause) {
		if n, ok := c.Node.(N); ok {
			out = append(out, n)
		}
	})
	return out
}

// has tells whether a row holds a clause of a kind.
func has[N syntax.Node](r *syntax.Row) bool { return len(clausesOf[N](r)) > 0 }

// headSpan is the place in the file that stands for a whole row: its label, or
// its first words.
func headSpan(r *syntax.Row) source.Span {
	switch {
	case !r.Label.Span.Empty():
		return r.Abs(r.Label.Span)
	case len(r.Clauses) > 0:
		return r.Abs(r.Clauses[0].Span)
	}
	return r.Span()
}

// wordsOf is the text of a piece in the file, from its heading to the next
// piece's, prose included, as plain text. What no clause shows may be said in it.
func (p *Pass) wordsOf(piece *fabric.Piece) string {
	end := p.File.Text.Len()
	for _, other := range p.File.Pieces {
		if start := other.Span.Start; start > piece.Tree.Span.Start && start < end {
			end = start
		}
	}
	return plainText(toldIn(p.File, source.Span{Start: piece.Tree.Span.Start, End: end}))
}

// toldIn is what a stretch of a file tells a maker: its text without comments, in which
// the names of rules may stand.
func toldIn(f *syntax.File, at source.Span) string {
	var b strings.Builder
	from, _ := slices.BinarySearchFunc(f.Comments, at.Start, func(c *syntax.Comment, at int) int { return c.Span.Start - at })
	for _, c := range f.Comments[from:] {
		if c.Span.Start >= at.End {
			break
		}
		if at.Covers(c.Span) {
			b.WriteString(f.Text.Slice(source.Span{Start: at.Start, End: c.Span.Start}))
			at.Start = c.Span.End
		}
	}
	b.WriteString(f.Text.Slice(at))
	return b.String()
}

// notesOf is what a pattern says outside its instructions, in lower case and
// with every run of white space as one space.
func notesOf(file *syntax.File) string {
	var b strings.Builder
	for _, f := range file.Header {
		if f.Key == "notes" {
			b.WriteString(f.Value + " ")
		}
	}
	for _, span := range file.Prose {
		b.WriteString(file.Text.Slice(span) + " ")
	}
	return plainText(b.String())
}

// plainText is text in lower case, with straight apostrophes and every run of
// white space as one space.
func plainText(s string) string {
	return strings.ReplaceAll(strings.ToLower(strings.Join(strings.Fields(s), " ")), "’", "'")
}

// says tells whether a text holds one of some words.
func says(text string, words ...string) bool {
	for _, w := range words {
		if strings.Contains(text, w) {
			return true
		}
	}
	return false
}
