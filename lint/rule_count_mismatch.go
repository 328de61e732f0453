package lint

import (
	"fmt"
	"slices"
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
	OfPiece:  true,
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
	p.holdToldSums()
	p.holdAdditions()
	for row := range p.worked() {
		if miswritten(row.Tree) {
			continue
		}
		p.holdCountsOnWay(row)
		p.holdChanges(row)
		if idle(row) {
			if !unreadAll(row.Piece) {
				p.Report(Finding{Span: row.Tree.Abs(row.StatedAt), Message: "works no stitch, and states a count"})
			}
			continue
		}
		p.holdEarlier(row)
		var off sized[*fabric.Tally]
		for size := range row.Tallies {
			if t := &row.Tallies[size]; t.Agrees() == fabric.Disagrees && p.doubts.counts(row, size) {
				off.add(size, t)
			}
		}
		if len(off.sizes) == 0 {
			continue
		}
		m := p.mending(row)
		f := m.offered(Finding{Span: row.Tree.Abs(row.StatedAt), Message: madeAndSaid(row, &off, m)})
		if r := leftOver(row, off.sizes[0]); r != nil {
			f.Related = append(f.Related, *r)
		}
		if below := row.Below(off.sizes[0]); below != nil && below.Tallies[off.sizes[0]].Known {
			f.Related = append(f.Related, Related{headSpan(below.Tree), "the row below makes " + madeText(below) + alsoSaid(below)})
		}
		p.inSizes(off.sizes, f)
	}
}

// holdEarlier holds the counts of the rows before the last, where each of several that are told
// in one has its own.
func (p *Pass) holdEarlier(row *fabric.Row) {
	if row.Stated == nil || len(row.Stated.Before) == 0 {
		return
	}
	numbers := statedNumbers(row)
	for i := range row.Stated.Before {
		var off sized[fabric.Compared]
		for size := range row.Tallies {
			if t := &row.Tallies[size]; i < len(t.Earlier) && t.Earlier[i].Result == fabric.Disagrees && p.doubts.counts(row, size) {
				off.add(size, t.Earlier[i])
			}
		}
		if len(off.sizes) == 0 {
			continue
		}
		made, said := off.num(func(c fabric.Compared) int { return c.Made }), off.num(func(c fabric.Compared) int { return c.Stated })
		f := Finding{Span: row.Tree.Abs(row.StatedAt), Message: fmt.Sprintf("%s %d makes %s, says %s", rowNoun(row), row.Tree.Label.Each(off.sizes[0])[i], counted(made, statedNoun(row, off.facts[0])), said)}
		if numbers != nil {
			f.Span = row.Tree.Abs(numbers[i].Span)
		}
		p.inSizes(off.sizes, f)
	}
}

// fewestUnread is how many rows of a piece show that it is told in words that are not
// understood, where no stitch is read in any of them: so many do not lose their steps. Our own
// figure.
const fewestUnread = 3

// unreadAll tells whether a piece is told in words that are not understood: as many of its rows
// are idle as are not, and several.
func unreadAll(piece *fabric.Piece) bool {
	lost, works := 0, 0
	for _, row := range piece.Rows {
		switch {
		case idle(row):
			lost++
		case row.Works():
			works++
		}
	}
	return lost >= max(fewestUnread, works)
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
	if chain > 0 && (row.Tree.Label.Step || row.Stated.OfChains()) || len(clausesOf[*syntax.Total](row.Tree)) > 1 {
		return false // more of a stem; squares of a chart: `3 sp, 2 bl, 3 sp`
	}
	if below == nil {
		return chain == 0
	}
	return chain == 0 && !statesCountOf(row, below) || chain > 0 && chain <= syntax.MostRising
}

func longestChain(r *syntax.Row) int {
	longest := 0
	for _, ch := range clausesOf[*syntax.Chain](r) {
		longest = max(longest, ch.Number.Or(0, 1))
	}
	return longest
}

// worksUnseen tells whether a row may work stitches in words that are not
// counted, or says that it is no row to be worked.
func worksUnseen(r *syntax.Row) bool {
	return has[*syntax.Unread](r) || has[*syntax.Likewise](r) || has[*syntax.Rows](r) || has[*syntax.Even](r) || has[*syntax.Shaping](r) ||
		has[*syntax.Finish](r) || has[*syntax.MakeUp](r) || has[*syntax.Along](r)
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

// madeAndSaid words the parts that disagree: "makes 12 dc and 3 ch-2 sps, says 11
// and 4", which of the two later rows bear out, and what would bring them together.
func madeAndSaid(row *fabric.Row, off *sized[*fabric.Tally], m *mending) string {
	var made, said, numbers []string
	for i, c := range off.facts[0].Compared {
		disagree := false
		for _, t := range off.facts {
			disagree = disagree || i < len(t.Compared) && t.Compared[i].Result == fabric.Disagrees
		}
		if !disagree {
			continue
		}
		n := off.num(func(t *fabric.Tally) int { return t.Compared[i].Made })
		numbers = append(numbers, n)
		made = append(made, counted(n, statedNoun(row, c))+onWhat(row, c))
		said = append(said, off.num(func(t *fabric.Tally) int { return t.Compared[i].Stated }))
	}
	text := "makes " + both(made) + ", says " + both(said)
	deeds := m.deeds()
	switch {
	case m.bears == fabric.BearsMade:
		return text + "; what comes after it fits " + both(numbers) + ", so the count is likely wrong"
	case m.bears == fabric.BearsStated && deeds != "":
		return text + "; what comes after it fits " + both(said) + ", and " + deeds + " would make it"
	case m.bears == fabric.BearsStated:
		return text + "; what comes after it fits " + both(said) + ", so the words are likely wrong" + stopsShort(row, off.sizes[0])
	case deeds != "":
		return text + "; " + deeds + " would make " + both(said)
	}
	return text
}

// stopsShort says which stitches the words leave, where that is what is wrong with them.
func stopsShort(row *fabric.Row, size int) string {
	for _, f := range row.Tallies[size].Faults {
		if f.Kind == fabric.RowShort {
			return ": " + quoted(row.Tree.Source(f.Span)) + " leaves " + counted(strconv.Itoa(f.N), leftNoun(f)) + " unworked"
		}
	}
	return ""
}

// onWhat says what a part of a stated count names that its stitches stand on.
func onWhat(row *fabric.Row, c fabric.Compared) string {
	switch {
	case c.On == "":
		return ""
	case len(c.On) <= 2:
		return " on branch " + row.Tree.AsWritten(c.On)
	}
	return " on the " + row.Tree.AsWritten(c.On)
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

// alsoSaid is what a row states, where it is one number and not the one that it makes.
func alsoSaid(row *fabric.Row) string {
	if row.Agrees() != fabric.Disagrees || len(row.Stated.Parts) != 1 {
		return ""
	}
	var all sized[int]
	for size := range row.Tallies {
		all.add(size, row.Stated.Parts[0].Number.At(size))
	}
	return " and says " + all.num(func(n int) int { return n })
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

// recounted writes the counts made in the place of those stated, and says so as
// an order; nil where the numbers stated cannot be told.
func recounted(row *fabric.Row) (*change, string) {
	c := &change{row: row}
	var texts []string
	numbers := statedNumbers(row)
	if numbers == nil {
		return nil, ""
	}
	for i, token := range numbers[len(row.Stated.Before):] {
		values := make([]int, len(row.Tallies))
		changed := false
		for size := range row.Tallies {
			compared := row.Tallies[size].Compared
			if i >= len(compared) {
				return nil, ""
			}
			values[size] = compared[i].Stated
			if compared[i].Result == fabric.Disagrees {
				values[size], changed = compared[i].Made, true
			}
		}
		if changed {
			if slices.Contains(values, 0) {
				return nil, "" // nobody counts what is not there
			}
			text := rewritten(row.Tree.Source(token.Span), values)
			c.edits = append(c.edits, source.Edit{Span: token.Span, New: text})
			texts = append(texts, text)
		}
	}
	if len(c.edits) == 0 {
		return nil, ""
	}
	return c, "write " + both(texts) + " as the count"
}

// respaced writes the lengths of spaces that the row makes in the place of those
// that its count names.
func respaced(row *fabric.Row) []change {
	var out []change
	tokens := row.Tree.Tokens
	for i, t := range tokens {
		if i == 0 || tokens[i-1].Kind != syntax.Hyphen || t.Kind != syntax.Number || !row.StatedAt.Covers(t.Span) {
			continue
		}
		for _, part := range row.Tallies[0].Parts {
			var length int
			if _, err := fmt.Sscanf(part.Name, "ch-%d sp", &length); err == nil {
				out = append(out, change{row: row, edits: []source.Edit{{Span: t.Span, New: strconv.Itoa(length)}}})
			}
		}
	}
	return out
}

// statedNumbers finds the number of each part of the stated count, after those of the rows
// before the last, nil where they cannot all be told.
func statedNumbers(row *fabric.Row) []syntax.Token {
	if row.Stated == nil {
		return nil
	}
	stated := slices.Clone(row.Stated.Before)
	for _, p := range row.Stated.Parts {
		stated = append(stated, p.Number)
	}
	var out []syntax.Token
	for _, t := range row.Tree.Tokens {
		if len(out) == len(stated) {
			break
		}
		if t.Kind == syntax.Number && row.StatedAt.Covers(t.Span) && t.Values.Equal(stated[len(out)]) {
			out = append(out, t)
		}
	}
	if len(out) < len(stated) {
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
