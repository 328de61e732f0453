package lint

import (
	"fmt"
	"slices"
	"strconv"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var sizesMismatch = &Rule{
	Name:     "sizes-mismatch",
	Family:   "counts",
	Severity: Error,
	Summary:  "A list of numbers has one value for each size, measurements do not fall as the sizes grow, and no size is named that there is not.",
	Why: "A maker of the third size reads the third number. With one number missing, everybody after the gap works " +
		"another size's count and nothing looks wrong until the piece does not fit.",
	Bad: `Pattern: Hedge mitten
Terms: US
Sizes: S (M, L)

Piece: Cuff
With A, ch 21 (23, 25).
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (20 (22, 24) sc)
Row 2: Ch 1, sc in next 10 (11, 12, 13) sts, leave remaining sts unworked. (10 (11, 12) sc)
Fasten off.
`,
	Good: `Pattern: Hedge mitten
Terms: US
Sizes: S (M, L)

Piece: Cuff
With A, ch 21 (23, 25).
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (20 (22, 24) sc)
Row 2: Ch 1, sc in next 10 (11, 12) sts, leave remaining sts unworked. (10 (11, 12) sc)
Fasten off.
`,
	Check: checkSizesMismatch,
}

func checkSizesMismatch(p *Pass) {
	want := p.File.SizeCount()
	if want == 1 {
		return // what looks like a list of sizes may be anything
	}
	p.unknownSizes()
	lists := p.graded()
	for row := range p.Fabric.Rows() {
		for _, t := range missized(row.Tree, want) {
			lists = append(lists, valuesOf(t, row.Tree.Abs(t.Span)))
		}
	}
	for s, told := range listsTold.in(p) {
		for _, list := range told {
			if len(list.values) != want {
				list.span = s.abs(list.span)
				lists = append(lists, list)
			}
		}
	}
	named := p.sizesField()
	if length := p.otherwiseAgree(lists, want); length > 0 {
		p.Report(Finding{
			Span:    named[0].Span,
			Message: fmt.Sprintf("names %d sizes, and the lists of numbers in the pattern have %d values", want, length),
		})
		want, named = length, nil // a list of another length is wrong besides
	}
	for _, l := range lists {
		switch {
		case len(l.values) != want:
			p.Report(Finding{Span: l.span, Message: listLength(len(l.values), want), Related: named})
		case falls(l.values):
			p.Report(Finding{Span: l.span, Message: "a value that falls as the sizes grow: " + quoted(p.File.Text.Slice(l.span))})
		}
	}
}

// listsTold are the lists of numbers, one for each size, of things that are counted, in what a
// piece says between its rows: `count in 17 (18, 20) sts from each edge`. Their places are
// counted from where the section begins.
var listsTold = &fact[[]amounts]{func(p *Pass, s section) []amounts {
	if s.piece == nil {
		return nil
	}
	var out []amounts
	words := syntax.Standard().Defining(nil, p.File.Sizes) // not those of other pieces: it comes of this one alone
	for _, at := range s.those(p.File.Prose) {
		tokens := syntax.Lex(p.File.Text.Slice(at), words)
		for i, t := range tokens {
			if t.Kind == syntax.Number && len(t.Values.Vals) > 2 && i+1 < len(tokens) && countable(tokens[i+1]) {
				out = append(out, valuesOf(t, s.place(t.Span.Shift(at.Start))))
			}
		}
	}
	return out
}}

// valuesOf is a list of numbers of stitches or rows, which may well fall as the sizes grow: it
// only has so many values.
func valuesOf(t syntax.Token, at source.Span) amounts {
	return amounts{span: at, values: make([]float64, len(t.Values.Vals))}
}

// countable tells a word for what a pattern counts.
func countable(t syntax.Token) bool {
	switch t.Kind {
	case syntax.Stitch:
		return true
	case syntax.Word:
		return t.Canon == "st" || t.Canon == "row" || t.Canon == "rnd" || t.Canon == "ch" || t.Canon == "times"
	}
	return false
}

// graded are the lists of measurements that grow with the sizes: those of the header, and
// of the yarn wherever it is listed.
func (p *Pass) graded() []amounts {
	var out []amounts
	for _, f := range p.File.Header {
		if gradedFields[f.Key] || syntax.IsMeasure(f.Key) {
			out = append(out, measures(f.Value, f.ValueSpan.Start)...)
		}
	}
	for _, f := range p.Materials.Finished {
		if !slices.Contains(p.File.Header, f) {
			out = append(out, measures(f.Value, f.ValueSpan.Start)...) // a sentence says it
		}
	}
	for _, line := range p.Materials.Lines {
		for _, y := range p.Materials.Yarns {
			if line.Covers(y.Span) {
				out = append(out, measures(p.File.Text.Slice(line), line.Start)...)
				break
			}
		}
	}
	return out
}

// gradedFields are those of the header that grow with the sizes.
var gradedFields = map[string]bool{"finished size": true, "to fit": true, "yarn": true}

// fewLists is how many lists of another length than there are sizes show that it is the
// sizes that are wrong.
const fewLists = 3

// otherwiseAgree is the number of values that the lists of the pattern have where the header
// names another number of sizes, all of them but one in four at most; 0 where there is none.
func (p *Pass) otherwiseAgree(lists []amounts, want int) int {
	if len(lists) < fewLists || p.sizesField() == nil {
		return 0
	}
	lengths, length := map[int]int{}, 0
	for _, l := range lists {
		if n := len(l.values); n != want {
			if lengths[n]++; lengths[n] > lengths[length] {
				length = n
			}
		} else {
			return 0
		}
	}
	if 4*lengths[length] < 3*len(lists) {
		return 0
	}
	for row := range p.Fabric.Rows() {
		for _, t := range row.Tree.Tokens {
			if t.Kind == syntax.Number && t.Values.PerSize() && len(t.Values.Vals) == want {
				return 0
			}
		}
	}
	return length
}

// unknownSizes reports sizes that a line picks and the header does not name.
func (p *Pass) unknownSizes() {
	if p.sizesField() == nil {
		return
	}
	for i := range p.File.Text.Lines() {
		line := p.File.Text.Line(i)
		for _, name := range syntax.UnknownSizes(p.File.Text.Slice(line), p.File.Sizes) {
			at := name.Shift(line.Start)
			p.Report(Finding{Span: at, Message: "there is no size " + p.File.Text.Slice(at), Related: p.sizesField()})
		}
	}
}

// missized lists the numbers of a row that have another number of values than
// there are sizes. In a pattern of one size a list may be anything.
func missized(r *syntax.Row, sizes int) []syntax.Token {
	if sizes == 1 {
		return nil
	}
	var out []syntax.Token
	for _, t := range r.Tokens {
		if t.Kind == syntax.Number && t.Values.PerSize() && len(t.Values.Vals) != sizes {
			out = append(out, t)
		}
	}
	if t, ok := chainOfTwo(r); ok && sizes > 2 {
		out = append(out, t)
	}
	return out
}

// chainOfTwo is the number of a chain with another one in brackets after it, which reads as
// its count and is none: `Ch 40 (44)`.
func chainOfTwo(r *syntax.Row) (syntax.Token, bool) {
	for i, c := range r.Clauses {
		ch, ok := c.Node.(*syntax.Chain)
		if !ok || i+1 == len(r.Clauses) {
			continue
		}
		count, ok := r.Clauses[i+1].Node.(*syntax.Total)
		if !ok || len(count.Parts) != 1 || count.Parts[0].Noun.Kind != syntax.NounNone || ch.Number.PerSize() || !ch.Number.Written() {
			continue
		}
		if n := count.Parts[0].Number; !n.PerSize() && n.At(0) > ch.Number.At(0) {
			return syntax.Token{Kind: syntax.Number, Span: c.Span.Union(r.Clauses[i+1].Span), Values: syntax.Num{Vals: []int{ch.Number.At(0), n.At(0)}}}, true
		}
	}
	return syntax.Token{}, false
}

func listLength(have, want int) string {
	if have < want {
		return fmt.Sprintf("%d values for %d sizes: %d missing", have, want, want-have)
	}
	return fmt.Sprintf("%d values for %d sizes: %d too many", have, want, have-want)
}

// sizesField is the place where the pattern names its sizes.
func (p *Pass) sizesField() []Related {
	for _, f := range p.File.Header {
		if f.Key == "sizes" {
			return []Related{{f.Span, strconv.Itoa(p.File.SizeCount()) + " sizes"}}
		}
	}
	return nil
}
