package lint

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/inflect"
	"stitchproof/lang/numeral"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// change is one number or one wording of a row, written otherwise.
type change struct {
	row   *fabric.Row
	edits []source.Edit // in the row, in their order
	size  changeSize
}

// changeSize is how much of a row a change alters: of two that put it right,
// the smaller is the likelier.
type changeSize uint8

// The sizes of a change, the smallest first.
const (
	byOne     changeSize = iota // a number, one more or one less
	byDigit                     // a number, with one digit another
	unwritten                   // a one that is not written
	byWord                      // a word or two
	byClause                    // a clause
	byFar                       // a number, by more than a slip of the pen
)

// text is the row's text after the change.
func (c *change) text() string {
	var b strings.Builder
	at := 0
	for _, e := range c.edits {
		b.WriteString(c.row.Tree.Text[at:e.Span.Start] + e.New)
		at = e.Span.End
	}
	b.WriteString(c.row.Tree.Text[at:])
	return b.String()
}

// inFile are the edits as edits of the file.
func (c *change) inFile() []source.Edit {
	out := make([]source.Edit, len(c.edits))
	for i, e := range c.edits {
		out[i] = source.Edit{Span: c.row.Tree.Abs(e.Span), New: e.New}
	}
	return out
}

// span is the part of the row that changes.
func (c *change) span() source.Span {
	return source.Span{Start: c.edits[0].Span.Start, End: c.edits[len(c.edits)-1].Span.End}
}

// words are the words that change, as they stand and as they would: all
// between the nearest commas and brackets. Where a clause is put in or left
// out, one of them is empty.
func (c *change) words() (before, after string) {
	around := c.span()
	if c.size != byClause {
		for _, phrase := range phrases(c.row.Tree) {
			if phrase.Covers(around) {
				around = phrase
				break
			}
		}
	}
	text := c.text()
	longer := len(text) - len(c.row.Tree.Text)
	return bare(c.row.Tree.Source(around)), bare(text[around.Start : around.End+longer])
}

// phrases cuts a row at its commas and brackets.
func phrases(r *syntax.Row) []source.Span {
	var out []source.Span
	at := 0
	for _, t := range r.Tokens {
		if parts(t.Kind) {
			out = append(out, source.Span{Start: at, End: t.Span.Start})
			at = t.Span.End
		}
	}
	return append(out, source.Span{Start: at, End: len(r.Text)})
}

// alike is how often a row says some words, and how often before a place.
func alike(r *syntax.Row, words string, at int) (all, before int) {
	for _, phrase := range phrases(r) {
		if strings.EqualFold(bare(r.Source(phrase)), words) {
			if all++; phrase.End <= at {
				before++
			}
		}
	}
	return all, before
}

// echoes tells whether the changed words stand elsewhere in the row as well.
func (c *change) echoes() bool {
	_, after := c.words()
	all, _ := alike(c.row.Tree, after, 0)
	return all > 0
}

// parts tells whether a token parts two clauses.
func parts(k syntax.Kind) bool {
	switch k {
	case syntax.Open, syntax.Close, syntax.Comma, syntax.Semi, syntax.Period, syntax.Star, syntax.Colon:
		return true
	}
	return false
}

// bare is a clause without the signs that part it from its neighbours.
func bare(s string) string { return strings.Trim(s, " \t\r\n,;.") }

// title is the change as an order: "write `6 times` instead of `5 times`".
func (c *change) title() string { return c.told("add ", "leave out ", "write ") }

// deed is the change as what is done: "`6 times` instead of `5 times`".
func (c *change) deed() string { return c.told("adding ", "leaving out ", "") }

// told words the change with verbs for what is put in, left out and written.
func (c *change) told(add, leave, write string) string {
	before, after := c.words()
	switch {
	case before == "":
		return add + quoted(after) + c.beside()
	case after == "":
		return leave + c.which(before)
	}
	return write + quoted(after) + " instead of " + c.which(before)
}

// which quotes words of the row and, where it says them more than once, tells
// which are meant.
func (c *change) which(words string) string {
	if all, earlier := alike(c.row.Tree, words, c.span().Start); all > 1 {
		return "the " + syntax.Nth(earlier+1) + " " + quoted(words)
	}
	return quoted(words)
}

// beside tells where words are put in.
func (c *change) beside() string {
	at := c.span().Start
	for _, phrase := range phrases(c.row.Tree) {
		switch words := bare(c.row.Tree.Source(phrase)); {
		case words == "":
		case phrase.End == at:
			return " after " + quoted(words)
		case phrase.Covers(source.At(at)):
			return " before " + quoted(words)
		}
	}
	return ""
}

// writer writes the words of a row otherwise.
type writer struct {
	row    *fabric.Row
	wrong  []int          // the sizes that are wrong
	tokens []syntax.Token // of the words that work
}

// newWriter leaves out the label and what makes no stitch.
func newWriter(row *fabric.Row, wrong []int) *writer {
	idle := []source.Span{row.Tree.Label.Span}
	syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
		switch c.Node.(type) {
		case *syntax.Total, *syntax.CountsNote, *syntax.Remark, *syntax.Marker, *syntax.MakeUp:
			idle = append(idle, c.Span)
		}
	})
	if row.Stated != nil {
		idle = append(idle, row.StatedAt)
	}
	if c := chainAfter(row, preparesOrTravels); c != nil && row.Before() != nil && c.Node.(*syntax.Chain).Number.At(0) <= fabric.MostTurning {
		idle = append(idle, c.Span) // it gives the row its height, and is seldom what is wrong
	}
	w := &writer{row: row, wrong: wrong}
	for _, t := range row.Tree.Tokens {
		if !slices.ContainsFunc(idle, func(s source.Span) bool { return s.Covers(t.Span) }) {
			w.tokens = append(w.tokens, t)
		}
	}
	return w
}

// change makes a change of edits in their order.
func (w *writer) change(size changeSize, edits ...source.Edit) change {
	return change{row: w.row, edits: edits, size: size}
}

func (w *writer) source(t syntax.Token) string { return w.row.Tree.Source(t.Span) }

// is tells whether the ith token is one of some words, false beyond the ends.
func (w *writer) is(i int, canons ...string) bool {
	return i >= 0 && i < len(w.tokens) && w.tokens[i].Kind == syntax.Word && slices.Contains(canons, w.tokens[i].Canon)
}

func (w *writer) kind(i int, k syntax.Kind) bool {
	return i >= 0 && i < len(w.tokens) && w.tokens[i].Kind == k
}

// amount tells whether the ith token is a number of stitches, places, rows or
// times.
func (w *writer) amount(i int) bool { return w.kind(i, syntax.Number) || w.is(i, "once") }

// number tells whether the ith token is an amount, the chain from the hook that is
// worked into, or the stitch in which the yarn is joined.
func (w *writer) number(i int) bool {
	return w.amount(i) || w.kind(i, syntax.Ordinal) && (w.is(i+1, "ch") || w.joins(i))
}

// joins tells whether the ith token tells where the yarn is joined.
func (w *writer) joins(i int) bool {
	return slices.ContainsFunc(w.row.Tree.Clauses, func(c syntax.Clause) bool {
		n, ok := c.Node.(*syntax.Yarn)
		return ok && n.Action == syntax.YarnJoin && c.Span.Covers(w.tokens[i].Span)
	})
}

// renumbered writes the ith token, a number, as another in the sizes that are
// wrong. It gives false where the other number is none that a pattern has.
func (w *writer) renumbered(i int, other func(size, n int) int) (change, bool) {
	t := w.tokens[i]
	values := slices.Clone(t.Values.Vals)
	least := 1
	if t.Kind == syntax.Ordinal && w.is(i+1, "ch") {
		least = 2 // the loop on the hook is no place
	}
	if len(values) == 1 {
		values[0] = other(w.wrong[0], values[0])
	} else {
		for _, size := range w.wrong {
			if size < len(values) && values[size] >= 0 {
				values[size] = other(size, values[size])
			}
		}
	}
	for k, v := range values {
		if v < least && v != t.Values.Vals[k] || v > maxWritten {
			return change{}, false
		}
	}
	edits := w.written(i, values)
	return w.change(sizeOf(t.Values.Vals, values), edits...), !slices.Equal(values, t.Values.Vals)
}

// maxWritten bounds the numbers that are suggested.
const maxWritten = 9999

// sizeOf is how large a change from some values to others is: that of the one
// that changes most.
func sizeOf(from, to []int) changeSize {
	size := byOne
	for i := range from {
		was, is := strconv.Itoa(from[i]), strconv.Itoa(to[i])
		differ := 0
		for k := 0; k < min(len(was), len(is)); k++ {
			if was[k] != is[k] {
				differ++
			}
		}
		switch d := to[i] - from[i]; {
		case d >= -1 && d <= 1:
		case len(was) == len(is) && differ <= 1:
			size = max(size, byDigit) // 31 for 21
		default:
			size = byFar
		}
	}
	return size
}

// written puts values in the place of the ith token, in its manner: figures or
// words, and the noun it counts as the number asks.
func (w *writer) written(i int, values []int) []source.Edit {
	t := w.tokens[i]
	one := len(values) == 1 && values[0] == 1
	switch {
	case t.Kind == syntax.Ordinal:
		return []source.Edit{{Span: t.Span, New: syntax.Nth(values[0])}}
	case w.is(i, "once"):
		return []source.Edit{{Span: t.Span, New: syntax.One(values[0]).Often()}}
	case one && w.is(i+1, "times"):
		return []source.Edit{{Span: t.Span.Union(w.tokens[i+1].Span), New: syntax.One(1).Often()}}
	case one && (w.kind(i+1, syntax.Stitch) || w.is(i-1, "next", "last")) && i+1 < len(w.tokens):
		// a one is left unwritten: `sc in next st`
		edits := []source.Edit{{Span: source.Span{Start: t.Span.Start, End: w.tokens[i+1].Span.Start}}}
		if w.is(i-2, "of") && w.is(i-3, "each") { // `each of next 3 sts` for `next st`
			edits = slices.Insert(edits, 0, source.Edit{Span: source.Span{Start: w.tokens[i-3].Span.Start, End: w.tokens[i-1].Span.Start}})
		}
		return append(edits, w.agreeing(i, 1)...)
	}
	text := rewritten(w.source(t), values)
	if len(values) == 1 && w.source(t)[0] > '9' {
		text = cmp.Or(numeral.Words(values[0]), text)
	}
	return append([]source.Edit{{Span: t.Span, New: text}}, w.agreeing(i, slices.Max(values))...)
}

// agreeing makes the noun that the ith token counts agree with a number: `next
// st`, `next 2 sts`, `2 more times`, `3 ch-2 sps`.
func (w *writer) agreeing(i, n int) []source.Edit {
	if w.kind(i-1, syntax.Hyphen) {
		return nil // the length of a `ch-3 sp`
	}
	k := i + 1
	if w.is(k, "more") {
		k++
	}
	if w.is(k, "ch") && w.kind(k+1, syntax.Hyphen) {
		k += 3
	}
	if !w.is(k, "st", "sp", "times", "loop", "group") {
		return nil
	}
	noun := w.source(w.tokens[k])
	agreed := singular(noun)
	if n != 1 {
		agreed = several(agreed)
	}
	if agreed == noun {
		return nil
	}
	return []source.Edit{{Span: w.tokens[k].Span, New: agreed}}
}

// singular and several write a noun of the trade for one thing and for more.
func singular(noun string) string {
	if strings.HasSuffix(noun, "ches") {
		return strings.TrimSuffix(noun, "es")
	}
	return strings.TrimSuffix(noun, "s")
}

func several(noun string) string {
	if strings.HasSuffix(noun, "ch") {
		return noun + "es"
	}
	return noun + "s"
}

// wordings are the changes of a word or a clause that writers make by
// mistake. Each is small, and each is something that a pattern says.
func (w *writer) wordings() []change {
	var out []change
	for i := range w.tokens {
		out = append(out, w.wordsAt(i)...)
	}
	return append(append(out, w.instead()...), w.clauses()...)
}

// exchanged are words of one place that stand in each other's stead.
var exchanged = map[string]string{"each": "next", "same": "next", "next": "same"}

func (w *writer) wordsAt(i int) []change {
	t := w.tokens[i]
	var out []change
	put := func(size changeSize, span source.Span, text string) {
		out = append(out, w.change(size, source.Edit{Span: span, New: text}))
	}
	switch {
	case t.Kind == syntax.Stitch && !w.number(i-1) && !t.Stitch.Is(stitch.Slip):
		// `sc in next st` for `2 sc in next st`
		out = append(out, w.change(unwritten, source.Edit{Span: source.At(t.Span.Start), New: "2 "}))
	case w.is(i, "next", "last") && w.is(i+1, "st", "sp", "ch"):
		// `sc in next st` for `sc in next 2 sts`
		more := []source.Edit{{Span: source.At(t.Span.End), New: " 2"}}
		out = append(out, w.change(unwritten, append(more, w.agreeing(i, 2)...)...))
	case w.is(i, "times") && w.kind(i-1, syntax.Number):
		put(byWord, source.At(t.Span.Start), "more ") // `5 times` for `5 more times`
	case w.is(i, "more") && (w.is(i+1, "times") || w.is(i-1, "times", "once")):
		end := len(w.row.Tree.Text)
		if i+1 < len(w.tokens) {
			end = w.tokens[i+1].Span.Start
		}
		put(byWord, source.Span{Start: t.Span.Start, End: end}, "")
	}
	if other := exchanged[t.Canon]; t.Kind == syntax.Word && other != "" {
		if _, one := w.noun(i + 1); one && !(other == "same" && w.increases(i)) {
			put(byWord, t.Span, other)
		}
	}
	if t.Kind == syntax.Stitch && !t.Stitch.Is(stitch.Slip) && !w.is(i-1, "between") {
		out = append(out, w.stitchesFor(i)...)
	}
	return out
}

// increases tells whether the ith token begins the place of several stitches, `2 sc in next
// st`: they have it to themselves.
func (w *writer) increases(i int) bool { return w.kind(i-2, syntax.Stitch) && w.number(i-3) }

// stitchesFor writes other stitches for the ith token: a decrease over more or
// fewer, a plain stitch for an increase or a decrease, and what else the row
// states that it makes.
func (w *writer) stitchesFor(i int) []change {
	t := w.tokens[i]
	var out []change
	put := func(text string, more ...source.Edit) {
		out = append(out, w.change(byWord, append([]source.Edit{{Span: t.Span, New: text}}, more...)...))
	}
	word := w.source(t)
	if at := strings.IndexAny(word, "23456789"); at > 0 && strings.HasSuffix(strings.ToLower(word), "tog") {
		n := int(word[at] - '0')
		for _, other := range []int{n - 1, n + 1} {
			if other < 2 || other > 9 {
				continue
			}
			var over []source.Edit
			if k := i + 3; w.is(i+1, "over") && w.kind(k, syntax.Number) && w.tokens[k].Values.Equal(syntax.One(n)) {
				over = w.written(k, []int{other})
			}
			put(word[:at]+strconv.Itoa(other)+word[at+1:], over...)
		}
	}
	names := w.names()
	if t.Stitch.Shapes() {
		names = append(names, "inc", "dec")
	}
	for _, name := range names {
		if !strings.EqualFold(name, word) {
			put(name)
		}
	}
	return out
}

// names are the stitches that the row works or states, as it spells them.
func (w *writer) names() []string {
	var out []string
	for _, t := range w.row.Tree.Tokens {
		if name := strings.ToLower(w.source(t)); t.Kind == syntax.Stitch && !t.Stitch.Is(stitch.Slip) && !slices.Contains(out, name) {
			out = append(out, name)
		}
	}
	return out
}

// closing is the slip stitch that closes the row's round: it makes nothing that is counted.
func (w *writer) closing() source.Span {
	for _, c := range slices.Backward(w.row.Tree.Clauses) {
		if _, ok := c.Node.(*syntax.Work); ok {
			if w.row.Round && preparesOrTravels(c.Node) {
				return c.Span
			}
			break
		}
	}
	return source.Span{}
}

// clauses leaves out and doubles single steps, says at both ends of the row
// what is said at one, and says that what is left stays unworked.
func (w *writer) clauses() []change {
	var out []change
	put := func(at int, words string) {
		out = append(out, w.change(byClause, source.Edit{Span: source.At(at), New: words}))
	}
	closing := w.closing()
	syntax.Walk(w.row.Tree.Clauses, func(c syntax.Clause) {
		if c.Span == closing {
			return
		}
		switch c.Node.(type) {
		case *syntax.Work, *syntax.Group, *syntax.Skip, *syntax.Chain:
			out = append(out, w.change(byClause, source.Edit{Span: w.separate(c.Span)}))
			put(c.Span.Start, w.step(c.Span)+", ")
		}
	})
	first, last := w.ends()
	if first != last {
		put(first.Start, w.step(last)+", ")
		put(last.End, ", "+w.step(first))
	}
	if n := w.left(); n != "" {
		put(last.End, ", leave remaining "+counted(n, "st")+" unworked")
	}
	return out
}

// step is a clause as it stands within a row.
func (w *writer) step(s source.Span) string {
	words := bare(w.row.Tree.Source(s))
	return strings.ToLower(words[:1]) + words[1:]
}

// ends are the first and the last step of the row.
func (w *writer) ends() (first, last source.Span) {
	for _, c := range w.row.Tree.Clauses {
		switch c.Node.(type) {
		case *syntax.Work, *syntax.Group, *syntax.Skip, *syntax.Repeat:
			if last = c.Span; first.Empty() {
				first = c.Span
			}
		}
	}
	return first, last
}

// left is how many stitches the row leaves without a word, "" for none.
func (w *writer) left() string {
	var short sized[fabric.Fault]
	for _, size := range w.wrong {
		for _, f := range w.row.Tallies[size].Faults {
			if f.Kind == fabric.RowShort && f.Name == "" {
				short.add(size, f)
			}
		}
	}
	return short.num(func(f fabric.Fault) int { return f.N })
}

// separate is a clause with the sign that parts it from its neighbour.
func (w *writer) separate(s source.Span) source.Span {
	const signs = " ,;\t"
	before, after := w.row.Tree.Text[:s.Start], w.row.Tree.Text[s.End:]
	if rest := strings.TrimLeft(after, signs); strings.ContainsAny(after[:len(after)-len(rest)], ",;") {
		return source.Span{Start: s.Start, End: len(w.row.Tree.Text) - len(rest)}
	}
	return source.Span{Start: len(strings.TrimRight(before, signs)), End: s.End}
}

// instead are places that are there, in the stead of one that is not.
func (w *writer) instead() []change {
	var names []string
	for _, size := range w.wrong {
		for _, f := range w.row.Tallies[size].Faults {
			if f.Kind != fabric.PlaceAbsent {
				continue
			}
			for _, name := range strings.Split(f.There, ", ") {
				if name = strings.TrimLeft(name, "0123456789 "); name != "" && !slices.Contains(names, name) {
					names = append(names, name)
				}
			}
		}
	}
	var out []change
	for i := range w.tokens {
		span, ok := w.noun(i + 1)
		if !ok || !w.is(i, "next", "any", "each", "same") {
			continue
		}
		for _, name := range names {
			out = append(out,
				w.change(byWord, source.Edit{Span: span, New: name}),
				w.change(byWord, source.Edit{Span: span, New: "2 " + inflect.Plural(name)}))
		}
	}
	return out
}

// noun is what a place is named by, from the ith token on: `st`, `dc`, `ch-2
// sp`.
func (w *writer) noun(i int) (source.Span, bool) {
	switch {
	case w.is(i, "ch") && w.kind(i+1, syntax.Hyphen) && w.is(i+3, "sp", "loop"):
		return w.tokens[i].Span.Union(w.tokens[i+3].Span), true
	case w.is(i, "st", "sp", "loop", "ch"), w.kind(i, syntax.Stitch):
		return w.tokens[i].Span, true
	}
	return source.Span{}, false
}
