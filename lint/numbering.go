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

// slip is a row whose number is not the one that its place calls for.
type slip struct {
	row *fabric.Row
	// number is what it is called, due what it should be; earlier is the row
	// that has the number already, nil where none has.
	number, due int
	earlier     *fabric.Row
	// alone is set where the rows after it go on as if it were called due.
	alone bool
	// before is the row with the due number, which comes right after it: it stands in
	// another place than its number. nil for none.
	before *fabric.Row
}

// slips finds the rows of a piece whose numbers skip, go back or come twice.
// It follows the numbers as far as they can be followed: a row repeated an
// unknown number of times, a new yarn or another word for rows starts afresh.
func slips(piece *fabric.Piece) []slip {
	if interleaved(piece) {
		return nil
	}
	c := counter{rows: numberedRows(piece)}
	for i := range c.rows {
		c.next(i)
	}
	if n := len(c.found); n > c.regular && !exceptional(n, len(c.rows)-n) {
		return nil // this piece is numbered in a way of its own
	}
	return c.found
}

// counter follows the numbers of a piece's rows.
type counter struct {
	rows    []*fabric.Row
	due     int      // 0 for any number
	ahead   []rowRun // rows that stood before their place
	regular int      // numbers that go on from the one before
	found   []slip
}

// rowRun is the numbers of a row, or of several under one label.
type rowRun struct{ first, last int }

// next takes the ith row.
func (c *counter) next(i int) {
	row := c.rows[i]
	if i > 0 && afresh(c.rows[i-1], row) {
		c.due, c.ahead = 0, nil
	}
	if i > 0 {
		c.passItems(c.rows[i-1], row)
	}
	first, last := ends(row.Tree.Label, 0)
	c.regular += last - first
	switch {
	case i > 0 && row.Tree.Label.GoesOn(c.rows[i-1].Tree.Label):
		c.regular++
	case c.due == 0:
		c.due = last + 1
	case first == c.due:
		c.regular++
		c.goOn(last + 1)
	default:
		c.slip(i, first, last)
	}
}

// passItems counts in the items of a list between two rows that are no rows.
func (c *counter) passItems(above, row *fabric.Row) {
	for _, r := range row.Piece.Rows[above.Index+1 : row.Index] {
		if c.due > 0 && r.Tree.Label.Item == c.due {
			c.due++
		}
	}
}

// holder is the row before the ith that has a number already, nil for none: a round does not
// come again that only a step or a row is numbered like.
func (c *counter) holder(i, number int) *fabric.Row {
	return holder(slices.DeleteFunc(slices.Clone(c.rows[:i]), func(r *fabric.Row) bool { return r.Tree.Label.Round != c.rows[i].Tree.Label.Round }), number)
}

// goOn makes a number the one that is due, or, where a row with that number stood
// before its place, the one after it.
func (c *counter) goOn(due int) {
	c.due = due
	for _, rows := range c.ahead {
		if rows.first == due {
			c.due = rows.last + 1
		}
	}
}

// slip notes the ith row, whose number is not the one that is due.
func (c *counter) slip(i, first, last int) {
	s := slip{row: c.rows[i], number: first, due: c.due, earlier: c.holder(i, first)}
	var after *fabric.Row
	if i+1 < len(c.rows) {
		after = c.rows[i+1]
	}
	s.alone = after == nil || goesOn(after, c.due+last-first+1)
	if s.earlier == nil && after != nil && goesOn(after, c.due) && !afresh(s.row, after) {
		s.before = after
		c.ahead = append(c.ahead, rowRun{first, last})
		// where its number was missed, this is why
		c.found = slices.DeleteFunc(c.found, func(gap slip) bool { return gap.due == first && gap.number == last+1 })
	}
	if s.earlier == nil || !afreshSince(s.earlier, s.row) {
		c.found = append(c.found, s)
	}
	switch {
	case s.before != nil:
	case s.alone:
		c.due += last - first + 1
	default:
		c.due = last + 1
	}
}

// numberedRows are the rows that have numbers of their own, which begin the same in all
// sizes.
func numberedRows(piece *fabric.Piece) []*fabric.Row {
	var out []*fabric.Row
	for _, row := range piece.Rows {
		if row.Tree.Label.Kind == syntax.Numbered && !row.Tree.Label.Lettered && row.Tree.Only == nil && !slices.ContainsFunc(row.Tree.Label.Numbers, beginsBySize) {
			out = append(out, row)
		}
	}
	return out
}

func bySize(s syntax.RowSpan) bool       { return s.From.PerSize() || s.To.PerSize() }
func beginsBySize(s syntax.RowSpan) bool { return s.From.PerSize() }

// ends are the first and the last number of a label in a size.
func ends(l syntax.Label, size int) (first, last int) {
	return l.Numbers[0].From.At(size), l.Numbers[len(l.Numbers)-1].To.At(size)
}

// sizeSlip is a row whose number goes on from the row before it in some sizes and
// not in others.
type sizeSlip struct {
	row         *fabric.Row
	sizes       []int // in which it does not
	number, due int   // in the first of them
}

// sizeSlips finds the slips in labels that have a number for each size: `Rnd 19 (21, 24)`
// after `Rnds 10-18 (20, 22)`.
func sizeSlips(piece *fabric.Piece, sizes int) []sizeSlip {
	var out []sizeSlip
	if interleaved(piece) {
		return nil
	}
	var before *fabric.Row
	for _, row := range piece.Rows {
		if row.Tree.Label.Kind != syntax.Numbered {
			continue
		}
		if before != nil && followsBySize(before, row, sizes) {
			if s := slipInSizes(before, row, sizes); len(s.sizes) > 0 && len(s.sizes) < sizes {
				out = append(out, s)
			}
		}
		before = row
	}
	return out
}

// followsBySize tells whether the number of a row is to go on from that of another, and
// one of them has a number for each size.
func followsBySize(a, b *fabric.Row, sizes int) bool {
	lists := slices.Concat(a.Tree.Label.Numbers, b.Tree.Label.Numbers)
	short := func(n syntax.Num) bool { return n.PerSize() && len(n.Vals) != sizes }
	return a.Tree.Only == nil && b.Tree.Only == nil && slices.ContainsFunc(lists, bySize) && a.Tree.Label.Round == b.Tree.Label.Round &&
		!slices.ContainsFunc(lists, func(s syntax.RowSpan) bool { return short(s.From) || short(s.To) }) &&
		!slices.ContainsFunc(between(a, b), restarts) && !unlabelledWork(a, b)
}

// slipInSizes compares the numbers of two rows in every size. A size may leave out a
// row: its number is 0 then, or ends before it begins.
func slipInSizes(a, b *fabric.Row, sizes int) sizeSlip {
	s := sizeSlip{row: b}
	for size := range sizes {
		from, to := ends(a.Tree.Label, size)
		number, end := ends(b.Tree.Label, size)
		due := max(to, from-1) + 1
		if from == 0 || to == 0 || number == 0 || end < number || number == due {
			continue
		}
		if len(s.sizes) == 0 {
			s.number, s.due = number, due
		}
		s.sizes = append(s.sizes, size)
	}
	return s
}

// scattered tells a label such as `Rows 7, 11 and 15` from one that names a run.
func scattered(l syntax.Label) bool {
	for i, span := range l.Numbers {
		if span.To.At(0) < span.From.At(0) || i > 0 && span.From.At(0) != l.Numbers[i-1].To.At(0)+1 {
			return true
		}
	}
	return false
}

// interleaved tells a piece whose rows are listed by kind rather than by
// number: `Row 2 and all even rows`, `Rows 7, 11 and 15`, `Row 3 (large)`,
// `Rep Row 3 for all odd rows`.
func interleaved(piece *fabric.Piece) bool {
	return slices.ContainsFunc(piece.Rows, func(row *fabric.Row) bool {
		r := row.Tree
		switch {
		case r.Label.EveryOther || r.Label.Kind == syntax.Parity || remarked(r.Label) && numberedTwice(piece, row):
			return true
		case len(r.Label.Numbers) > 0:
			return scattered(r.Label)
		}
		return has[*syntax.Rows](r) && slices.ContainsFunc(r.Tokens, everySecond)
	})
}

// numberedTwice tells whether another row of a piece has a number of this one: they are
// several readings of it, unless only what is made there is said of the one: `Rnd 13 (thumb
// opening)`.
func numberedTwice(piece *fabric.Piece, row *fabric.Row) bool {
	return slices.ContainsFunc(numberedRows(piece), func(other *fabric.Row) bool {
		return other != row && holder([]*fabric.Row{other}, row.Tree.Label.First(0)) != nil && (remarked(other.Tree.Label) || !tellsWork.MatchString(row.Tree.Label.Text))
	})
}

// tellsWork finds what is made in a row, in the brackets of its label.
var tellsWork = phrase.MustCompile(`(?i)\([^()]*\b(?:opening|hole|slit|increase|decrease|inc|dec|joining|edging|turning|set-?up|fold(?:ing)?|shaping)\b[^()]*\)`)

// remarked tells a label that says more of its row than its side: a size, a
// piece, a variant. Brackets of `Rnds 5-9 (11, 13)` hold its numbers, and those of a step
// what it makes: `Step 8 (Twig 3)`.
func remarked(l syntax.Label) bool {
	return !l.Step && l.Side == syntax.NoSide && !slices.ContainsFunc(l.Numbers, bySize) && strings.Contains(l.Text, "(")
}

func everySecond(t syntax.Token) bool {
	return t.Kind == syntax.Word && (t.Canon == "odd" || t.Canon == "even" || t.Canon == "alternate" || t.Canon == "other")
}

// afresh tells whether numbers may start anew between two rows that follow
// each other in the list of numbered ones.
func afresh(a, b *fabric.Row) bool {
	if a.Tree.Label.Round != b.Tree.Label.Round || slices.ContainsFunc(a.Tree.Label.Numbers, bySize) || thenRepeats(a.Tree) {
		return true
	}
	return slices.ContainsFunc(between(a, b), restarts) || restartsBy(b, beginsBySize) || unlabelledWork(a, b)
}

// thenRepeats tells a row that works stitches and then repeats rows without numbers of
// their own: `Row 9: Sc in each st, turn. Rep last 2 rows twice.`
func thenRepeats(r *syntax.Row) bool {
	works := false
	for _, c := range r.Clauses {
		switch n := c.Node.(type) {
		case *syntax.Work, *syntax.Repeat, *syntax.Group:
			works = true
		case *syntax.Rows:
			if works && (n.Last.Written() || n.Number.Written() || n.Limit == syntax.Measured) {
				return true
			}
		}
	}
	return false
}

func afreshSince(a, b *fabric.Row) bool { return slices.ContainsFunc(between(a, b), restarts) }

// restarts tells a line after which nobody can say what the next number is:
// it ends or joins a yarn, works rows without numbering them, or is of some sizes only.
func restarts(row *fabric.Row) bool { return restartsBy(row, bySize) }

func restartsBy(row *fabric.Row, bySize func(syntax.RowSpan) bool) bool {
	r := row.Tree
	if r.Only != nil || r.Label.Kind == syntax.NextRow || r.Label.Kind == syntax.Numbered && slices.ContainsFunc(r.Label.Numbers, bySize) {
		return true
	}
	if r.Label.Kind == syntax.Unlabelled && (has[*syntax.Rows](r) || has[*syntax.Even](r) || has[*syntax.Finish](r)) {
		return true
	}
	return false
}

// unlabelledWork tells whether a line without a label works stitches between
// two rows: it may be counted as a row or not.
func unlabelledWork(a, b *fabric.Row) bool {
	return slices.ContainsFunc(between(a, b), func(row *fabric.Row) bool { return row.Works() })
}

// holder is the row that has a number already, nil for none.
func holder(rows []*fabric.Row, number int) *fabric.Row {
	for i := len(rows) - 1; i >= 0; i-- {
		if first, last := ends(rows[i].Tree.Label, 0); first <= number && number <= last {
			return rows[i]
		}
	}
	return nil
}

func goesOn(row *fabric.Row, due int) bool {
	first, _ := ends(row.Tree.Label, 0)
	return first == due
}

// renumber is the fix for the slip at index i of a piece: its own number where
// it stands alone, else, for the first slip, the numbers from there on and the
// references to them. It is not safe: a row may be missing instead. It gives nil
// where a number is written as a word.
func renumber(found []slip, i int) *Fix {
	s := found[i]
	if s.before != nil {
		return exchange(s)
	}
	shift := s.due - s.number
	if s.alone {
		edits := shiftLabel(s.row.Tree, shift)
		if edits == nil {
			return nil
		}
		return &Fix{Title: "number it " + s.dueName(), Edits: edits}
	}
	if i > 0 {
		return nil // the first one moves these numbers too
	}
	from := s.number
	if s.earlier != nil {
		from++ // which of the two rows a reference means cannot be told
	}
	var edits []source.Edit
	for _, row := range s.row.Piece.Rows[s.row.Index:] {
		label := shiftLabel(row.Tree, shift)
		if label == nil && row.Tree.Label.Kind == syntax.Numbered {
			return nil
		}
		edits = append(edits, label...)
		edits = append(edits, shiftReferences(row.Tree, from, shift)...)
	}
	return &Fix{Title: "renumber from here on, starting with " + strconv.Itoa(s.due), Edits: edits}
}

// exchange is the fix that gives a row and the one that is due before it the numbers by
// which they stand; nil where more rows lie between them.
func exchange(s slip) *Fix {
	first, last := ends(s.row.Tree.Label, 0)
	from, to := ends(s.before.Tree.Label, 0)
	a, b := shiftLabel(s.row.Tree, from-first), shiftLabel(s.before.Tree, last-first+1)
	if first != to+1 || a == nil || b == nil {
		return nil
	}
	return &Fix{Title: "number them as they stand", Edits: slices.Concat(a, b)}
}

// dueName is the number, or run of numbers, that a row should have.
func (s slip) dueName() string {
	first, last := ends(s.row.Tree.Label, 0)
	return runName(s.due, s.due+last-first)
}

func runName(first, last int) string {
	if last <= first {
		return strconv.Itoa(first)
	}
	return strconv.Itoa(first) + "-" + strconv.Itoa(last)
}

// shiftLabel moves the numbers of a row's label; nil where it has none in digits.
func shiftLabel(r *syntax.Row, shift int) []source.Edit {
	var edits []source.Edit
	for _, t := range r.Tokens {
		if r.Label.Kind == syntax.Numbered && t.Kind == syntax.Number && !t.Values.PerSize() && r.Label.Span.Covers(t.Span) {
			edits = append(edits, shifted(r, t, shift))
		}
	}
	return edits
}

// shiftReferences moves the row numbers, from a number on, that a row's words
// refer to.
func shiftReferences(r *syntax.Row, from, shift int) []source.Edit {
	var edits []source.Edit
	for i, t := range r.Tokens {
		if t.Kind == syntax.Number && !t.Values.PerSize() && t.Values.At(0) >= from && t.Span.Start >= r.Label.Span.End && namesRow(r.Tokens[:i]) {
			edits = append(edits, shifted(r, t, shift))
		}
	}
	return edits
}

// namesRow tells whether a number after these tokens is a row's: they end in
// `Row`, or in a list of row numbers that goes on.
func namesRow(tokens []syntax.Token) bool {
	i := len(tokens) - 1
	for i >= 0 && joint(tokens[i]) {
		for i >= 0 && joint(tokens[i]) {
			i--
		}
		if i < 0 || tokens[i].Kind != syntax.Number {
			return false
		}
		i--
	}
	return i >= 0 && tokens[i].Kind == syntax.Word && (tokens[i].Canon == "row" || tokens[i].Canon == "rnd")
}

// joint tells what may stand between the numbers of a list of rows.
func joint(t syntax.Token) bool {
	return t.Kind == syntax.Dash || t.Kind == syntax.Hyphen || t.Kind == syntax.Comma ||
		t.Kind == syntax.Word && (t.Canon == "and" || t.Canon == "to")
}

func shifted(r *syntax.Row, t syntax.Token, shift int) source.Edit {
	return source.Edit{Span: r.Abs(t.Span), New: strconv.Itoa(t.Values.At(0) + shift)}
}
