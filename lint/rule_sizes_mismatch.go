package lint

import (
	"fmt"
	"strconv"

	"stitchproof/lang/syntax"
)

var sizesMismatch = &Rule{
	Name:     "sizes-mismatch",
	Family:   "counts",
	Severity: Error,
	Summary:  "A list of numbers has one value for each size, and measurements do not fall as the sizes grow.",
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
	for row := range p.Fabric.Rows() {
		for _, t := range missized(row.Tree, want) {
			p.Report(Finding{
				Span:    row.Tree.Abs(t.Span),
				Message: listLength(len(t.Values.Vals), want),
				Related: p.sizesField(),
			})
		}
	}
	for _, f := range p.File.Header {
		if !gradedFields[f.Key] {
			continue
		}
		for _, l := range measures(f) {
			switch {
			case len(l.values) != want:
				p.Report(Finding{Span: l.span, Message: listLength(len(l.values), want), Related: p.sizesField()})
			case falls(l.values):
				p.Report(Finding{Span: l.span, Message: "a value that falls as the sizes grow: " + quoted(p.File.Text.Slice(l.span))})
			}
		}
	}
}

// gradedFields are those of the header that grow with the sizes.
var gradedFields = map[string]bool{"finished size": true, "to fit": true, "yarn": true}

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
