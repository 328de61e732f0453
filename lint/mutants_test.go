package lint_test

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
	"stitchproof/lint"
)

// change is what is done to a pattern to make a mutant of it.
type change string

const (
	number       change = "number"
	statedCount  change = "stated count"
	swapStitch   change = "stitch"
	repeatCount  change = "repeat count"
	deleteClause change = "delete clause"
	doubleClause change = "double clause"
	dropReturn   change = "drop return"
	swapShaping  change = "increase/decrease swap"
)

var changes = []change{number, statedCount, swapStitch, repeatCount, deleteClause, doubleClause, dropReturn, swapShaping}

// mutant is a sound pattern with one thing changed in one row.
type mutant struct {
	change change
	row    *fabric.Row // of the sound pattern
	edit   source.Edit
}

// mutantsOf makes every mutant of a pattern. They are written into the text at
// places that the tree names, so each is a pattern as a maker might type it.
func mutantsOf(a *lint.Analysis) []mutant {
	var out []mutant
	for row := range a.Fabric.Rows() {
		m := mutator{dialect: a.Fabric.Dialect, row: row, stated: statedNumbers(row), made: map[source.Edit]bool{}}
		for i, t := range row.Tree.Tokens {
			m.token(i, t)
		}
		m.clauses(row.Tree.Clauses)
		out = append(out, m.out...)
	}
	return out
}

// mutator makes the mutants of one row.
type mutator struct {
	dialect stitch.Dialect
	row     *fabric.Row
	stated  []source.Span // the numbers of the stated count
	made    map[source.Edit]bool
	out     []mutant
}

// add makes the mutant that has other words at a place of the row, once.
func (m *mutator) add(c change, at source.Span, words string) {
	edit := source.Edit{Span: m.row.Tree.Abs(at), New: words}
	if m.made[edit] || m.row.Tree.Source(at) == words {
		return
	}
	m.made[edit] = true
	m.out = append(m.out, mutant{change: c, row: m.row, edit: edit})
}

func (m *mutator) token(i int, t syntax.Token) {
	row := m.row.Tree
	switch {
	case row.Label.Span.Covers(t.Span):
	case slices.Contains(m.stated, t.Span):
		m.number(statedCount, t, +1, -1)
	case m.row.StatedAt.Covers(t.Span):
	case t.Canon == "once":
		m.times(t)
	case t.Kind == syntax.Number && countsTimes(row.Tokens, i):
		m.number(repeatCount, t, +1, -1)
	case t.Kind == syntax.Number:
		m.number(number, t, +1, -1, t.Values.At(0))
	case t.Kind == syntax.Ordinal:
		m.ordinal(t)
	}
}

// statedNumbers are the places of the numbers that a stated count is made of:
// 12 and 4, not 2, in `(12 dc, 4 ch-2 sps)`.
func statedNumbers(row *fabric.Row) []source.Span {
	if row.Stated == nil {
		return nil
	}
	var out []source.Span
	for _, t := range row.Tree.Tokens {
		if len(out) < len(row.Stated.Parts) && t.Kind == syntax.Number && row.StatedAt.Covers(t.Span) &&
			t.Values.Equal(row.Stated.Parts[len(out)].Number) {
			out = append(out, t.Span)
		}
	}
	return out
}

// countsTimes tells whether a number says how often something is worked.
func countsTimes(tokens []syntax.Token, i int) bool {
	is := func(i int, words ...string) bool {
		return i >= 0 && i < len(tokens) && slices.Contains(words, tokens[i].Canon)
	}
	return is(i+1, "times", "x", "×") || is(i+1, "more") && is(i+2, "times") || is(i-1, "x", "×")
}

// times changes `once`, `twice` and `thrice`.
func (m *mutator) times(t syntax.Token) {
	words := map[int]string{1: "once", 2: "twice"}
	for _, n := range []int{t.Values.At(0) - 1, t.Values.At(0) + 1} {
		word, ok := words[n]
		if !ok {
			word = strconv.Itoa(n) + " times"
		}
		if n > 0 {
			m.add(repeatCount, t.Span, word)
		}
	}
}

// number changes a number, or each value of a list of sizes by itself.
func (m *mutator) number(c change, t syntax.Token, by ...int) {
	text := m.row.Tree.Source(t.Span)
	at := sizeValues.FindAllStringIndex(text, -1)
	switch {
	case !t.Values.PerSize():
		at = [][]int{{0, len(text)}} // a word, or one value for all sizes
	case len(at) != len(t.Values.Vals):
		return
	}
	for size, value := range t.Values.Vals {
		for _, d := range by {
			if value > 0 && value+d > 0 {
				m.add(c, t.Span, text[:at[size][0]]+strconv.Itoa(value+d)+text[at[size][1]:])
			}
		}
	}
}

// sizeValues finds each value of a list, the dash of a size that skips the step
// among them.
var sizeValues = regexp.MustCompile(`\d+|[-–—]`)

// ordinal changes `4th`, not `first`, which is no slip of a finger.
func (m *mutator) ordinal(t syntax.Token) {
	text := m.row.Tree.Source(t.Span)
	if !strings.ContainsAny(text, "0123456789") {
		return
	}
	for _, n := range []int{t.Values.At(0) - 1, t.Values.At(0) + 1} {
		if n > 0 {
			m.add(number, t.Span, strconv.Itoa(n)+ordinalEnding(n))
		}
	}
}

func ordinalEnding(n int) string {
	endings := map[int]string{1: "st", 2: "nd", 3: "rd"}
	if end, ok := endings[n%10]; ok && n/10%10 != 1 {
		return end
	}
	return "th"
}

// clauses changes each clause of a list and those within them. The clauses of
// a row are told apart from those in brackets, of which one must be left.
func (m *mutator) clauses(list []syntax.Clause) {
	steps := 0
	for _, c := range list {
		if !isTotal(c) {
			steps++
		}
	}
	for i, c := range list {
		if isTotal(c) {
			continue
		}
		if at, ok := m.without(list, i); ok && steps > 1 {
			kind := deleteClause
			if _, ok := c.Node.(*syntax.Return); ok {
				kind = dropReturn
			}
			m.add(kind, at, "")
		}
		m.add(doubleClause, source.At(c.Span.End), ", "+m.row.Tree.Source(c.Span))
		switch n := c.Node.(type) {
		case *syntax.Work:
			m.work(c, n)
		case *syntax.Group:
			m.clauses(n.Body)
		case *syntax.Bracket:
			m.clauses(n.Body)
		case *syntax.Repeat:
			m.clauses(n.Body)
			m.clauses(n.Ending)
		}
	}
}

func isTotal(c syntax.Clause) bool {
	_, ok := c.Node.(*syntax.Total)
	return ok
}

// without is the place of a clause with what separates it from the next one
// or from the one before: the weaker of the two. What stands between two
// clauses and is no separator, a star, stays.
func (m *mutator) without(list []syntax.Clause, i int) (source.Span, bool) {
	at := list[i].Span
	before, after := source.At(at.Start), source.At(at.End)
	if i > 0 {
		before.Start = list[i-1].Span.End
	}
	if i+1 < len(list) {
		after.End = list[i+1].Span.Start
	}
	gapBefore, gapAfter := i > 0 && m.separates(before), i+1 < len(list) && m.separates(after)
	switch {
	case gapAfter && (!gapBefore || list[i].Sep <= list[i-1].Sep):
		return at.Union(after), true
	case gapBefore:
		return at.Union(before), true
	}
	return at, false
}

// separates tells whether a place between two clauses holds no mark and no bracket.
func (m *mutator) separates(at source.Span) bool {
	return !slices.ContainsFunc(m.row.Tree.Tokens, func(t syntax.Token) bool {
		return at.Covers(t.Span) && slices.Contains([]syntax.Kind{syntax.Star, syntax.Open, syntax.Close}, t.Kind)
	})
}

// work changes the stitch of a clause.
func (m *mutator) work(c syntax.Clause, n *syntax.Work) {
	tokens := m.row.Tree.Tokens
	i := slices.IndexFunc(tokens, func(t syntax.Token) bool {
		return t.Kind == syntax.Stitch && t.Canon == n.Stitch.Word && c.Span.Covers(t.Span)
	})
	kind := n.Stitch.Meaning.In(m.dialect)
	if i < 0 || kind == nil {
		return
	}
	at := tokens[i].Span
	switch kind.Class {
	case stitch.Plain:
		for _, other := range plainStitches {
			if other != kind.ID {
				m.add(swapStitch, at, stitch.ByID(other).Abbreviation(m.dialect))
			}
		}
		if many := m.severalInOne(tokens[i-1:i+1], n); many {
			m.add(swapShaping, source.Span{Start: tokens[i-1].Span.Start, End: at.Start}, "")
		}
	case stitch.Increase:
		m.add(swapShaping, at, "dec")
	case stitch.Decrease:
		m.add(swapShaping, at, "inc")
	case stitch.Together:
		m.add(swapShaping, at, kind.Base.Abbreviation(m.dialect))
	}
}

// plainStitches are those that get typed for one another.
var plainStitches = []string{"sc", "hdc", "dc", "tr"}

// severalInOne tells whether the clause is like `2 sc in next st`, in which the
// number can be forgotten.
func (m *mutator) severalInOne(at []syntax.Token, n *syntax.Work) bool {
	return at[0].Kind == syntax.Number && n.Number.Written() && n.Number.Equal(at[0].Values) && len(n.Places) > 0
}
