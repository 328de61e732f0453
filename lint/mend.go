package lint

import (
	"slices"
	"strconv"

	"stitchproof/lang/fabric"
)

// Which single change of a number or a wording would put a wrong row right:
// each slip that a writer may have made is undone, the row read and worked
// again, and the lines after it with it. A change that puts the row right and
// makes no later line worse is a mend, and the smallest mends are told.

const (
	// maxTries bounds the changes tried of one row.
	maxTries = 200
	// maxMended bounds the rows of a piece that are looked at so closely. A piece with
	// more wrong rows is wrong in another way than by slips of the pen, and is to be
	// answered as fast as any other.
	maxMended = 50
	// maxEffort bounds what one try may make, its tenfold the clauses that it may
	// work, and maxSpent what all the tries of a piece may: then the other rows are
	// told without a mend.
	maxEffort = 5_000
	maxSpent  = 10_000_000
	// maxNamed bounds the mends told of a row: more that are equally small tell a
	// maker nothing.
	maxNamed = 3
)

// mending is what would put a row right.
type mending struct {
	// bears is what the lines after the row show, as far as no mend is at odds
	// with it.
	bears fabric.Bearing
	// count is the change of the stated count, nil where that would not do.
	count *mend
	// words are the smallest changes of the words; none where too many are equally
	// small.
	words []mend
}

// mend is a change that puts a row right.
type mend struct {
	change
	title, deed string
	left        int // how badly the lines after it fit then
}

// mendings are those of a piece's rows, each looked for once, and what was spent
// on them.
type mendings struct {
	of    map[*fabric.Row]*mending
	spent int
}

// mending finds what would put a row right in which something is wrong.
func (p *Pass) mending(row *fabric.Row) *mending {
	if m, ok := p.mendings.of[row]; ok {
		return m
	}
	m := &mending{}
	if len(p.mendings.of) < maxMended && effort(row) <= maxEffort && row.Spent <= 10*maxEffort {
		m = p.seekMending(row)
	}
	p.mendings.of[row] = m
	return m
}

// effort is about what a try of a row costs: its words, the stitches it makes, in
// every size and as often as it is worked, and a look at the piece's rows.
func effort(row *fabric.Row) int {
	total := len(row.Piece.Rows) + len(row.Tree.Tokens)
	for size := range row.Tallies {
		total += row.Tallies[size].Made * max(1, row.Repeats[size])
	}
	return total
}

func (p *Pass) seekMending(row *fabric.Row) *mending {
	m := &mending{}
	swatch := p.Fabric.Swatch(row)
	if swatch == nil {
		return m
	}
	s := seeker{Pass: p, row: row, effort: effort(row) + row.Spent, tried: map[string]bool{}}
	if row.Agrees() == fabric.Disagrees {
		m.bears = swatch.Bears()
		s.recount(swatch)
	}
	counts := s.mends
	s.mends = nil
	w := newWriter(row, wrongSizes(row))
	if at, ok := chainAmiss(row); ok {
		m.words = s.alongChain(w, swatch, at)
		return m
	}
	s.numbers(w, swatch)
	s.numbersBelow()
	if !slices.ContainsFunc(s.mends, slight) {
		for _, c := range w.wordings() {
			s.try(swatch, c, c.title())
		}
	}
	m.choose(counts, s.mends)
	return m
}

// slight tells a mend that no change of words can better.
func slight(m mend) bool { return m.left == 0 && m.size <= byDigit }

// below is the row below one with the work before it, if its numbers may be at
// fault: no count of its own bears them out.
func (p *Pass) below(row *fabric.Row) (*fabric.Row, *fabric.Swatch) {
	for i := row.Index - 1; i >= 0; i-- {
		r := row.Piece.Rows[i]
		if r.Agrees() == fabric.Agrees {
			break
		}
		if swatch := p.Fabric.Swatch(r); swatch != nil {
			return r, swatch
		}
	}
	return nil, nil
}

// choose keeps the mends after which the later lines fit best, and of those the
// smallest.
func (m *mending) choose(counts, words []mend) {
	counts, words = best(counts, words)
	if len(counts) > 0 {
		m.count = &counts[0]
	}
	// the lines after fit the stated count as well if other words make it, and the
	// count made if it may be written
	if m.bears == fabric.BearsMade && (m.count == nil || len(words) > 0) || m.bears == fabric.BearsStated && m.count != nil {
		m.bears = fabric.BearsNeither
	}
	smallest := byFar
	if m.count != nil {
		smallest = byWord // one number of the count is less than a clause
	}
	for _, w := range words {
		smallest = min(smallest, w.size)
	}
	m.words = slices.DeleteFunc(words, func(w mend) bool { return w.size > smallest })
	m.narrow()
}

// best keeps of all mends those after which the later lines fit best.
func best(counts, words []mend) (_, _ []mend) {
	all := slices.Concat(counts, words)
	if len(all) == 0 {
		return nil, nil
	}
	least := slices.MinFunc(all, func(a, b mend) int { return a.left - b.left }).left
	worse := func(m mend) bool { return m.left > least }
	return slices.DeleteFunc(counts, worse), slices.DeleteFunc(words, worse)
}

// narrow puts first what the row says elsewhere too, and keeps no more than can
// be told.
func (m *mending) narrow() {
	var echoes, others []mend
	for _, w := range m.words {
		if w.echoes() {
			echoes = append(echoes, w)
		} else {
			others = append(others, w)
		}
	}
	for _, list := range [][]mend{slices.Concat(echoes, others), echoes, nil} {
		if m.words = list; len(list) <= maxNamed {
			return
		}
	}
}

// seeker looks for the mends of a row.
type seeker struct {
	*Pass
	row    *fabric.Row
	effort int // of one try
	tried  map[string]bool
	mends  []mend
}

// recount tries the count made in the stead of the one stated.
func (s *seeker) recount(swatch *fabric.Swatch) {
	for _, c := range respaced(s.row) {
		s.try(swatch, c, c.title())
	}
	if c, title := recounted(s.row); c != nil {
		s.try(swatch, *c, title)
	}
}

// wrongSizes are the sizes in which a row is wrong.
func wrongSizes(row *fabric.Row) []int {
	var out []int
	for size := range row.Tallies {
		if row.Tallies[size].Misfit() > 0 {
			out = append(out, size)
		}
	}
	return out
}

// numbersBelow tries other numbers in the row below, for a row that is right as
// it stands.
func (s *seeker) numbersBelow() {
	if below, swatch := s.below(s.row); below != nil {
		s.numbers(newWriter(below, wrongSizes(s.row)), swatch)
	}
}

// numbers tries other numbers for each that a row has: of the one that is wrong,
// or of the one below it.
func (s *seeker) numbers(w *writer, swatch *fabric.Swatch) {
	for i := range w.tokens {
		if w.number(i) {
			s.number(w, i, swatch)
		}
	}
}

// number tries other numbers for one: its neighbours, and what the difference
// that one more makes shows to be wanted.
func (s *seeker) number(w *writer, i int, swatch *fabric.Swatch) {
	by := func(n int) *fabric.Row {
		if c, ok := w.renumbered(i, func(_, was int) int { return was + n }); ok {
			return s.try(swatch, c, c.title())
		}
		return nil
	}
	more, matters := by(1), false
	for _, gap := range s.gaps() {
		c, ok := w.renumbered(i, func(size, n int) int {
			if more == nil {
				return n
			}
			was, then := &s.row.Tallies[size], &more.Tallies[size]
			now := gap(was)
			closed := now - gap(then)
			matters = matters || closed != 0
			if closed == 0 || now%closed != 0 || now/closed > 1 && places(then) > max(0, places(was)) {
				return n // what one more has no place for, several more have none for
			}
			return n + now/closed
		})
		if ok {
			s.try(swatch, c, c.title())
		}
	}
	by(-1)
	if matters {
		by(2)
		by(-2)
	}
}

// gaps measure what a row lacks: of each part of its count, and of places.
func (s *seeker) gaps() []func(*fabric.Tally) int {
	out := []func(*fabric.Tally) int{places}
	for i := range s.row.Tallies[0].Compared {
		counted := func(t *fabric.Tally) int {
			if i >= len(t.Compared) {
				return 0
			}
			return t.Compared[i].Stated - t.Compared[i].Made
		}
		// the stitches for which there are no places are made all the same
		placed := func(t *fabric.Tally) int { return counted(t) + places(t) }
		out = append(out, counted, placed)
	}
	return out
}

// places is how many places a row asks for beyond those there are, less those
// that it leaves, of its branches too.
func places(t *fabric.Tally) int {
	total := 0
	for _, f := range t.Faults {
		switch f.Kind {
		case fabric.RowOver, fabric.StemExhausted:
			total += f.N
		case fabric.RowShort, fabric.RepeatRemainder, fabric.BranchChainLeft:
			total -= f.N
		}
	}
	return total
}

// try works the row again after a change, notes it if it is a mend, and gives
// the row as it came out; nil where it was not worked.
func (s *seeker) try(swatch *fabric.Swatch, c change, title string) *fabric.Row {
	text := c.text()
	key := strconv.Itoa(c.row.Index) + text
	if s.tried[key] || len(s.tried) >= maxTries || s.mendings.spent > maxSpent {
		return nil
	}
	s.tried[key] = true
	s.mendings.spent += s.effort
	tree := s.File.Reread(c.row.Tree, text)
	if miswritten(tree) {
		return nil
	}
	rows, all := swatch.Try(tree)
	at := s.row.Index - c.row.Index
	if at >= len(rows) {
		return nil
	}
	if all && right(rows[at], s.row) && right(rows[0], c.row) {
		m := mend{change: c, title: title, deed: c.deed()}
		for _, r := range rows[at+1:] {
			m.left += r.Misfit()
		}
		s.mends = append(s.mends, m)
	}
	return rows[at]
}

// right tells whether a row came out right, states no less of what it makes than it
// did, and calls nothing by a number that is not there.
func right(row, was *fabric.Row) bool {
	if row.Misfit() > 0 || row.Works() != was.Works() || leavesOtherwise(row) || len(chainsMisnamed(row)) > 0 {
		return false
	}
	for size := range row.Tallies {
		before := was.Tallies[size].Agrees()
		if (before == fabric.Agrees || before == fabric.Disagrees) && row.Tallies[size].Agrees() != fabric.Agrees {
			return false
		}
	}
	return true
}

// deeds lists what changes of words would do it.
func (m *mending) deeds() string {
	var out []string
	for _, w := range m.words {
		out = append(out, w.deed)
	}
	return either(out)
}

// offered gives a finding the changes that would settle it.
func (m *mending) offered(f Finding) Finding {
	all := slices.Clone(m.words)
	if m.count != nil {
		all = slices.Insert(all, 0, *m.count)
	}
	var fixes []Fix
	for _, mend := range all {
		fixes = append(fixes, Fix{Title: mend.title, Edits: mend.inFile()})
	}
	if len(fixes) > 0 {
		f.Fix, f.Alternatives = &fixes[0], fixes[1:]
	}
	return f
}

// fitted is offered, for a row that does not fit the one below or its own
// branches, in the message's words too.
func (m *mending) fitted(f Finding) Finding {
	if deeds := m.deeds(); deeds != "" {
		f.Message += "; " + deeds + " would put it right"
	}
	return m.offered(f)
}
