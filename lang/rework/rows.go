package rework

import (
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/names"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// Rows gives the ways to write the rows at a place otherwise: equal ones folded
// into a range, a range unfolded, all of the piece numbered from 1.
func (p *Pattern) Rows(at int) []Change {
	for row := range p.Fabric.Rows() {
		if row.Tree.Span().Contains(at) {
			return append(append(p.fold(row), p.unfold(row)...), p.renumber(row.Piece)...)
		}
	}
	return nil
}

// numbered is the one run of numbers that a row's label names, with their places
// in the file; false for a label of another form, or with a number for each size.
func numbered(row *fabric.Row) (names.Reference, bool) {
	label := row.Tree.Label
	if label.Kind != syntax.Numbered || label.EveryOther || len(label.Numbers) != 1 || label.Numbers[0].From.PerSize() || label.Numbers[0].To.PerSize() {
		return names.Reference{}, false
	}
	var tokens []syntax.Token
	for _, t := range row.Tree.Tokens {
		if label.Span.Covers(t.Span) {
			tokens = append(tokens, t)
		}
	}
	refs := names.References(tokens)
	if len(refs) != 1 || refs[0].From != label.First(0) || refs[0].To-refs[0].From+1 != len(label.Each(0)) {
		return names.Reference{}, false
	}
	ref := refs[0]
	ref.At, ref.ToAt = row.Tree.Abs(ref.At), row.Tree.Abs(ref.ToAt)
	return ref, true
}

// body is what a row says after its label, its spaces made equal.
func body(row *fabric.Row) string {
	return strings.Join(strings.Fields(row.Tree.Text[row.Tree.Label.Span.End:]), " ")
}

// fold writes the row and those around it that say the same as one.
func (p *Pattern) fold(row *fabric.Row) []Change {
	rows := row.Piece.Rows
	first, last := row.Index, row.Index
	for first > 0 && p.alike(rows[first-1], rows[first]) {
		first--
	}
	for last+1 < len(rows) && p.alike(rows[last], rows[last+1]) {
		last++
	}
	if first == last {
		return nil
	}
	from, _ := numbered(rows[first])
	to, _ := numbered(rows[last])
	run := strconv.Itoa(from.From) + "-" + strconv.Itoa(to.To)
	return p.kept(Change{
		Title: "write rows " + run + " as one",
		Edits: []source.Edit{
			p.noun(rows[first], true), {Span: from.At.Union(from.ToAt), New: run},
			{Span: source.Span{Start: rows[first].Tree.Written().End, End: rows[last].Tree.Written().End}},
		},
	})
}

// alike tells whether a row follows another with the next number, the same words
// and nothing between.
func (p *Pattern) alike(a, b *fabric.Row) bool {
	one, ok := numbered(a)
	next, also := numbered(b)
	between := source.Span{Start: a.Tree.Written().End, End: b.Tree.At}
	return ok && also && next.From == one.To+1 && a.Tree.Label.Side == b.Tree.Label.Side && body(a) == body(b) &&
		strings.TrimSpace(p.Text.Slice(between)) == ""
}

// mostUnfolded bounds the rows that a range is unfolded into.
const mostUnfolded = 60

// unfold writes each row that a range stands for by itself.
func (p *Pattern) unfold(row *fabric.Row) []Change {
	ref, ok := numbered(row)
	if !ok || ref.From == ref.To || ref.To-ref.From >= mostUnfolded {
		return nil
	}
	text := row.Tree.Written()
	noun := p.noun(row, false)
	var lines []string
	for n := ref.From; n <= ref.To; n++ {
		one, err := p.Text.Apply([]source.Edit{noun, {Span: ref.At.Union(ref.ToAt), New: strconv.Itoa(n)}})
		if err != nil {
			return nil
		}
		end := text.End + one.Len() - p.Text.Len()
		lines = append(lines, one.Slice(source.Span{Start: text.Start, End: end}))
	}
	return p.kept(Change{
		Title: "write rows " + strconv.Itoa(ref.From) + " to " + strconv.Itoa(ref.To) + " one by one",
		Edits: []source.Edit{{Span: text, New: strings.Join(lines, p.Text.LineEnd())}},
	})
}

// noun puts the word for a row, where its label begins with one, in the plural or
// the singular.
func (p *Pattern) noun(row *fabric.Row, plural bool) source.Edit {
	for _, t := range row.Tree.Tokens {
		if t.Kind != syntax.Word || t.Canon != "row" && t.Canon != "rnd" {
			continue
		}
		word := strings.TrimSuffix(row.Tree.Source(t.Span), "s")
		if plural {
			word += "s"
		}
		return source.Edit{Span: row.Tree.Abs(t.Span), New: word}
	}
	return source.Edit{Span: source.At(row.Tree.At)}
}

// renumber numbers the rows of a piece from 1 on, and those that are referred to
// with them.
func (p *Pattern) renumber(piece *fabric.Piece) []Change {
	c := Change{Title: "number the rows from 1"}
	anew := map[int]int{} // where the label begins, to how much its number changes
	next := 1
	for _, row := range piece.Rows {
		if row.Tree.Label.Kind != syntax.Numbered {
			continue
		}
		ref, ok := numbered(row)
		if !ok {
			return nil
		}
		anew[row.Tree.Abs(row.Tree.Label.Span).Start] = next - ref.From
		c.Edits = append(c.Edits, p.shifted(ref, next-ref.From)...)
		next += ref.To - ref.From + 1
	}
	if len(c.Edits) == 0 {
		return nil
	}
	for _, n := range names.Of(p.File).Names {
		declared := n.Declarations()
		if n.Kind != names.Row || len(declared) == 0 {
			continue
		}
		by, ok := anew[declared[0].Span.Start]
		for _, m := range n.Mentions {
			if was, err := strconv.Atoi(m.Word); ok && err == nil && !m.Declares && !m.Between && by != 0 {
				c.Edits = append(c.Edits, source.Edit{Span: m.Span, New: strconv.Itoa(was + by)})
			}
		}
	}
	return p.kept(c)
}

// shifted writes the numbers of a label by so much higher.
func (p *Pattern) shifted(ref names.Reference, by int) []source.Edit {
	if by == 0 {
		return nil
	}
	edits := []source.Edit{{Span: ref.At, New: strconv.Itoa(ref.From + by)}}
	if ref.ToAt != ref.At {
		edits = append(edits, source.Edit{Span: ref.ToAt, New: strconv.Itoa(ref.To + by)})
	}
	return edits
}
