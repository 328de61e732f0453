package lint

import (
	"fmt"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var countMismatch = &Rule{
	Name:     "count-mismatch",
	Family:   "counts",
	Severity: Error,
	Summary:  "The count that a row states is the count that its words make, part by part and in every size.",
	Why: "The count at the end of a row is what a maker checks the work against. Where it is wrong, a maker who did " +
		"everything right rips back; where the words are wrong, nobody can get the count.",
	Bad: `Pattern: Haw
Terms: US

Piece: Haw
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (14 sc)
Fasten off.
`,
	Good: `Pattern: Haw
Terms: US

Piece: Haw
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Fasten off.
`,
	Check: checkCountMismatch,
}

func checkCountMismatch(p *Pass) {
	for row := range p.Fabric.Rows() {
		if miswritten(row.Tree) {
			continue
		}
		if idle(row) {
			p.Report(Finding{Span: row.Tree.Abs(row.StatedAt), Message: "works no stitch, and states a count"})
			continue
		}
		var off sized[*fabric.Tally]
		for size := range row.Tallies {
			if t := &row.Tallies[size]; t.Agrees() == fabric.Disagrees && !hasFault(t, misfits...) && !p.doubts[row][size] {
				off.add(size, t)
			}
		}
		if len(off.sizes) == 0 {
			continue
		}
		f := Finding{Span: row.Tree.Abs(row.StatedAt), Message: madeAndSaid(row, &off) + likelyCause(row, off.sizes[0]), Fix: restate(row)}
		if r := leftOver(row, off.sizes[0]); r != nil {
			f.Related = append(f.Related, *r)
		}
		if below := row.Before(); below != nil && below.Tallies[off.sizes[0]].Known {
			f.Related = append(f.Related, Related{headSpan(below.Tree), "the row below makes " + madeText(below)})
		}
		p.inSizes(off.sizes, f)
	}
}

// idle tells whether a row is written as one to be worked and has no words that
// work a stitch: a step is lost, or all of them. A count of chains is met by
// the chain, and the count of the row below may be said again where the yarn
// changes.
func idle(row *fabric.Row) bool {
	kind := row.Tree.Label.Kind
	if row.Stated == nil || row.Works() || kind != syntax.Numbered && kind != syntax.NextRow || len(row.Tree.Clauses) < 2 || worksUnseen(row.Tree) {
		return false
	}
	chain, below := longestChain(row.Tree), row.Before()
	if below == nil {
		return chain == 0
	}
	return chain == 0 && !statesCountOf(row, below) || chain > 0 && chain <= tallest
}

// tallest is the most chains that a row is begun with; more are a foundation.
const tallest = 6

func longestChain(r *syntax.Row) int {
	longest := 0
	syntax.Walk(r.Clauses, func(c syntax.Clause) {
		if ch, ok := c.Node.(*syntax.Chain); ok {
			longest = max(longest, ch.Number.Or(0, 1))
		}
	})
	return longest
}

// worksUnseen tells whether a row may work stitches in words that are not
// counted, or says that it is no row to be worked.
func worksUnseen(r *syntax.Row) bool {
	return has[*syntax.Unread](r) || has[*syntax.Rows](r) || has[*syntax.Even](r) || has[*syntax.Shaping](r) ||
		has[*syntax.Finish](r) || has[*syntax.MakeUp](r)
}

// statesCountOf tells whether a row states what the row below makes.
func statesCountOf(row, below *fabric.Row) bool {
	if len(row.Stated.Parts) != 1 {
		return false
	}
	for size := range below.Tallies {
		if t := &below.Tallies[size]; t.Known && t.Made != row.Stated.Parts[0].Number.At(size) {
			return false
		}
	}
	return true
}

// madeAndSaid words the parts that disagree: "makes 12 dc and 3 ch-2 sps, says 11 and 4".
func madeAndSaid(row *fabric.Row, off *sized[*fabric.Tally]) string {
	var made, said []string
	for i, c := range off.facts[0].Compared {
		disagree := false
		for _, t := range off.facts {
			disagree = disagree || i < len(t.Compared) && t.Compared[i].Result == fabric.Disagrees
		}
		if !disagree {
			continue
		}
		made = append(made, counted(off.num(func(t *fabric.Tally) int { return t.Compared[i].Made }), statedNoun(row, c)))
		said = append(said, off.num(func(t *fabric.Tally) int { return t.Compared[i].Stated }))
	}
	return "makes " + both(made) + ", says " + both(said)
}

// statedNoun is what a part of a stated count is a number of, in the words of
// the count.
func statedNoun(row *fabric.Row, c fabric.Compared) string {
	if c.Name == "" {
		return "st"
	}
	for _, t := range row.Tree.Tokens {
		if t.Kind == syntax.Stitch && t.Canon == c.Name && row.StatedAt.Covers(t.Span) {
			return row.Tree.Source(t.Span)
		}
	}
	return c.Name
}

// madeText is what a row makes, in all sizes: "24 (28, 32) sts".
func madeText(row *fabric.Row) string {
	var all sized[int]
	for size := range row.Tallies {
		all.add(size, row.Tallies[size].Made)
	}
	return counted(all.num(func(n int) int { return n }), "st")
}

// leftOver tells of the places of the row below that the row leaves unworked
// without a word: the same slip, seen from below.
func leftOver(row *fabric.Row, size int) *Related {
	for _, f := range row.Tallies[size].Faults {
		if f.Kind == fabric.RowShort {
			return &Related{row.Tree.Abs(f.Span), counted(strconv.Itoa(f.N), leftNoun(f)) + " of the row below left unworked"}
		}
	}
	return nil
}

// likelyCause looks for the one repeat that, worked another number of times,
// would make the stated count of the very places there are.
func likelyCause(row *fabric.Row, size int) string {
	t := &row.Tallies[size]
	if len(t.Compared) != 1 || t.Compared[0].Name != "" && len(t.Parts) != 1 {
		return ""
	}
	missing := t.Compared[0].Stated - t.Compared[0].Made
	found := ""
	for i, c := range row.Tree.Clauses {
		r, ok := c.Node.(*syntax.Repeat)
		if !ok || i >= len(row.Steps) || !row.Steps[i].Known || (r.Limit != syntax.Times && r.Limit != syntax.More) {
			continue
		}
		times := r.Number.At(size)
		if r.Limit == syntax.More {
			times++
		}
		made, used := row.Steps[i].Made[size], row.Steps[i].Used[size]
		if times <= 0 || made <= 0 || made%times != 0 || used%times != 0 || missing%(made/times) != 0 {
			continue
		}
		more := missing / (made / times)
		if times+more < 1 || t.Left != more*(used/times) {
			continue
		}
		if found != "" {
			return ""
		}
		found = fmt.Sprintf("; worked %s in all, %s would make %d",
			counted(strconv.Itoa(times+more), "time"), quoted(body(row.Tree.Source(c.Span))), t.Compared[0].Stated)
	}
	return found
}

// body is what a repeat repeats: its words up to the bracket that closes it.
func body(words string) string {
	if end := strings.LastIndexAny(words, ")]}"); end > 0 {
		return words[:end+1]
	}
	return words
}

// restate is the fix that writes the counts made in the place of those stated.
// It is not safe: the words may be at fault instead.
func restate(row *fabric.Row) *Fix {
	numbers := statedNumbers(row)
	if numbers == nil {
		return nil
	}
	fix := &Fix{}
	var titles []string
	for i, token := range numbers {
		values := make([]int, len(row.Tallies))
		changed := false
		for size := range row.Tallies {
			c := row.Tallies[size].Compared
			if i >= len(c) {
				return nil
			}
			values[size] = c[i].Stated
			if c[i].Result == fabric.Disagrees {
				values[size], changed = c[i].Made, true
			}
		}
		if !changed {
			continue
		}
		text := rewritten(row.Tree.Source(token.Span), values)
		fix.Edits = append(fix.Edits, source.Edit{Span: row.Tree.Abs(token.Span), New: text})
		titles = append(titles, text)
	}
	if len(fix.Edits) == 0 {
		return nil
	}
	fix.Title = "write " + both(titles) + " as the count"
	return fix
}

// statedNumbers finds the number of each part of the stated count, nil where
// they cannot all be told.
func statedNumbers(row *fabric.Row) []syntax.Token {
	if row.Stated == nil {
		return nil
	}
	var out []syntax.Token
	for _, t := range row.Tree.Tokens {
		if len(out) == len(row.Stated.Parts) {
			break
		}
		if t.Kind == syntax.Number && row.StatedAt.Covers(t.Span) && t.Values.Equal(row.Stated.Parts[len(out)].Number) {
			out = append(out, t)
		}
	}
	if len(out) < len(row.Stated.Parts) {
		return nil
	}
	return out
}

// rewritten writes values in the place of those in text, in the same brackets
// or strokes, where there is one for each size.
func rewritten(text string, values []int) string {
	isDigit := func(r rune) bool { return r >= '0' && r <= '9' }
	if runs := strings.FieldsFunc(text, func(r rune) bool { return !isDigit(r) }); len(runs) != len(values) || len(values) == 1 {
		return syntax.Num{Vals: values}.String()
	}
	var b strings.Builder
	next, inside := 0, false
	for _, r := range text {
		switch {
		case !isDigit(r):
			b.WriteRune(r)
		case !inside:
			b.WriteString(strconv.Itoa(values[next]))
			next++
		}
		inside = isDigit(r)
	}
	return b.String()
}
