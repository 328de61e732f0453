package fabric

import (
	"iter"
	"math"
	"slices"
	"strings"
	"unicode"

	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// What an instruction refers to: the rows it stands for.

// units lists the rows that an instruction stands for, in the order worked.
func (k *worker) units(row *Row) ([]unit, bool) {
	label, tree := row.Tree.Label, row.Tree
	named := 0
	switch {
	case len(label.Numbers) > 0 && !label.EveryOther:
		named = len(label.Each(k.size))
	case label.Count.Written():
		named = max(1, label.Count.At(k.size))
	}
	if ref := reference(tree.Clauses); ref != nil {
		if list, last := k.onTo(ref); last > 0 && named == 0 {
			return k.numbered(cycle(list, min(last-k.number, maxUnits)), row), true
		}
		list, ok := k.referred(row, ref)
		if !ok || len(list) == 0 {
			return nil, false
		}
		if list[0].tree.Label.Step {
			once := ref.Number.Or(k.size, 1) == 1 && ref.Limit == syntax.Times
			return k.numbered([]unit{{tree: inOne(tree, list)}}, row), k.h.keeps && once
		}
		if ref.Piece != "" && list[len(list)-1].number == named && firstRows(label, k.size) {
			return list, true // with the lines between them
		}
		total := named
		switch {
		case named > 0:
		case ref.Long.Written():
			total = ref.Long.At(k.size)
			if ref.InAll {
				total = max(1, total-k.number)
			}
		case ref.Limit == syntax.Measured:
			total = k.rowsTo(row, len(list))
		default:
			total = len(list) * min(max(1, ref.Number.Or(k.size, 1)), maxRow)
		}
		return k.numbered(cycle(list, min(total, maxUnits)), row), true
	}
	if long := longOf(tree.Clauses); long != nil {
		named = max(named, long.Rows.At(k.size))
	}
	u := unit{tree: tree}
	if even := evenOf(tree.Clauses); even != nil {
		u.even = true
		named = max(named, even.Number.Or(k.size, 1))
	}
	return k.numbered(cycle([]unit{u}, min(max(1, named), maxUnits)), row), true
}

// onTo gives the rows, the last one among them, that are worked again up to another, and which
// that is, 0 where a reference names rows that are there: `Repeat Row 2 through Row 26`, said
// after row 2.
func (k *worker) onTo(ref *syntax.Rows) ([]unit, int) {
	n := len(ref.List) - 1
	if n < 0 || !ref.List[n].Each || ref.Piece != "" || ref.List[n].From.At(k.size) != k.number {
		return nil, 0
	}
	last := ref.List[n].To.At(k.size)
	if _, there := k.called(k.number + 1); there || last <= k.number {
		return nil, 0
	}
	var list []unit
	for _, s := range append(slices.Clone(ref.List[:n]), syntax.RowSpan{From: ref.List[n].From, To: ref.List[n].From}) {
		for number := range k.span(s) {
			u, ok := k.called(number)
			if !ok {
				return nil, 0
			}
			list = append(list, u)
		}
	}
	return list, last
}

// inOne is a step that does what several others do, `Step 9: as Steps 2 to 4`: they are no
// rows, and what it belongs to goes on.
func inOne(step *syntax.Row, others []unit) *syntax.Row {
	made := *step.Instruction
	made.Label.Limb, made.Clauses = "", nil
	for _, u := range others {
		if name := u.tree.Label.Limb; name != "" {
			made.Clauses = append(made.Clauses, syntax.Clause{Span: u.tree.Label.Span, Node: &syntax.Branch{Name: name, Labelled: true}})
		}
		made.Clauses = append(made.Clauses, u.tree.Clauses...)
	}
	return &syntax.Row{At: step.At, Instruction: &made}
}

// firstRows tells a label of the first rows of a piece.
func firstRows(l syntax.Label, size int) bool {
	return len(l.Numbers) == 1 && l.Numbers[0].From.At(size) == 1
}

// numbered gives rows the numbers that the label of their instruction names.
func (k *worker) numbered(units []unit, row *Row) []unit {
	numbers := row.Tree.Label.Each(k.size)
	if row.Tree.Label.EveryOther {
		numbers = numbers[:min(1, len(numbers))]
	}
	for i := range units {
		units[i].number = 0 // of the row that is referred to
		if i < len(numbers) {
			units[i].number = numbers[i]
		}
	}
	return units
}

// interleaved puts the rows that `Row 2 and all even rows` stands for between
// others, where their numbers leave room.
func (k *worker) interleaved(units []unit) []unit {
	if k.every == nil {
		return units
	}
	first, before := k.every.Tree.Label.First(k.size), k.number
	var out []unit
	for _, u := range units {
		for n := before + 1; n < u.number && len(out) < maxUnits; n++ {
			if (n-first)%2 == 0 {
				k.every.Repeats[k.size]++
				out = append(out, unit{tree: k.every.Tree, number: n, between: true})
			}
		}
		before = max(before, u.number)
		out = append(out, u)
	}
	return out
}

// rowsTo is how many rows more bring the piece to the length that an
// instruction names, by the gauge, in whole repeats of so many rows; one
// repeat where that cannot be told.
func (k *worker) rowsTo(row *Row, each int) int {
	gauge := k.h.words.gauge
	length := syntax.ParseLength(row.Tree.Text).At(k.size)
	if gauge.Rows == 0 || gauge.Length == 0 || length == 0 || !k.h.gaugedIn(gauge.Of) {
		return each
	}
	rows := length*gauge.Rows/gauge.Length - float64(k.h.rows)
	return each * max(1, int(math.Round(rows/float64(each))))
}

// ToLength tells whether rows are worked to a length in numbers, from which the gauge
// tells how many they are.
func (r *Row) ToLength(size int) bool {
	ref := reference(r.Tree.Clauses)
	return ref != nil && ref.Limit == syntax.Measured && syntax.ParseLength(r.Tree.Text).At(size) > 0
}

// gaugedIn tells whether the work is in the stitch that the gauge is counted
// in; plain stitches are those of the pattern, whatever they are.
func (h *hand) gaugedIn(word string) bool {
	meaning, named := stitch.Find(spelled(word))
	if !named {
		return true
	}
	k := meaning.In(h.words.dialect)
	return k != nil && k.Plain() == h.mainFor(nil)
}

// maxUnits bounds how many rows one instruction may stand for.
const maxUnits = 10_000

// cycle repeats a list until it is n long.
func cycle(list []unit, n int) []unit {
	out := make([]unit, n)
	for i := range out {
		out[i] = list[i%len(list)]
	}
	return out
}

// referred finds the rows that a reference names, in the order worked.
func (k *worker) referred(row *Row, ref *syntax.Rows) ([]unit, bool) {
	own := ref.Piece != "" && k.piece.Tree.Called(ref.Piece)
	if ref.Piece != "" && len(ref.List) > 0 && !own {
		return k.rowsOf(ref)
	}
	if ref.Piece != "" && !own {
		if u := k.calledAlike(row); u != nil {
			return []unit{*u}, true
		}
		if u := k.byLetter(ref.Piece); u != nil {
			return []unit{*u}, true
		}
		return k.ofPiece(row, ref)
	}
	if ref.Changed {
		return nil, false
	}
	if ref.Called != "" {
		return k.byName(row, ref.Called)
	}
	if ref.Last.Written() {
		n := ref.Last.At(k.size)
		if n > len(k.last) {
			k.refuse(row, Fault{Kind: RowUnknown, N: n, Name: "last"})
			return nil, false
		}
		return k.last[len(k.last)-n:], true
	}
	var out []unit
	for _, s := range ref.List {
		for n := range k.span(s) {
			u, ok := k.called(n)
			if !ok && goesOnFrom(row.Tree, ref, n, k.size) {
				return nil, false // `…; repeat from Row 7 until there are 40 rows`, said in Row 7
			}
			if !ok {
				step := k.stepOfEarlier(row, n)
				if step == nil {
					k.refuse(row, Fault{Kind: RowUnknown, N: n})
					return nil, false
				}
				u = *step
			}
			out = append(out, u)
		}
	}
	return out, true
}

// calledAlike is the step of an earlier piece with the name that this one has in its own, nil
// for none: `Vein: as for the large leaf`.
func (k *worker) calledAlike(row *Row) *unit {
	if row.Tree.Label.Kind != syntax.Named {
		return nil
	}
	for _, p := range slices.Backward(k.fabric.Pieces) {
		for _, r := range p.Rows {
			if p != k.piece && r.Tree.Label.Kind == syntax.Named && strings.EqualFold(r.Tree.Label.Text, row.Tree.Label.Text) {
				k.leans = true
				return &unit{tree: r.Tree}
			}
		}
	}
	return nil
}

// byLetter is the row that has a letter with its number, in this piece or an earlier one, nil for none: `As S3.`
func (k *worker) byLetter(name string) *unit {
	marked := func(s string) string { return strings.ReplaceAll(s, " ", "") }
	for _, p := range slices.Backward(append(slices.Clip(k.fabric.Pieces), k.piece)) {
		for _, r := range p.Rows {
			if l := r.Tree.Label; l.Kind == syntax.Numbered && strings.EqualFold(marked(l.Name()), marked(name)) {
				k.leans = k.leans || p != k.piece
				return &unit{tree: r.Tree}
			}
		}
	}
	return nil
}

// stepOfEarlier is the step of an earlier piece that has a number which the steps of this one do not reach, nil for none:
// `8. Work the stalk as in step 23.`
func (k *worker) stepOfEarlier(row *Row, number int) *unit {
	if l := row.Tree.Label; !l.Bare || l.First(k.size) >= number {
		return nil
	}
	for _, p := range slices.Backward(k.fabric.Pieces) {
		for _, r := range p.Rows {
			if l := r.Tree.Label; p != k.piece && l.Bare && slices.Contains(l.Each(k.size), number) {
				k.leans = true
				return &unit{tree: r.Tree}
			}
		}
	}
	return nil
}

// byName finds the last row of a name that stands above in the piece, `Dec row: …`, or in another: some tell the rows
// that all parts have before the first of them.
func (k *worker) byName(row *Row, name string) ([]unit, bool) {
	for i := row.Index - 1; i >= 0; i-- {
		tree := row.Piece.Rows[i].Tree
		if tree.Label.Called(name) {
			return []unit{{tree: tree}}, true
		}
	}
	for _, p := range slices.Backward(k.fabric.Pieces) {
		for _, r := range p.Rows {
			if p != k.piece && r.Tree.Label.Called(name) {
				k.leans = true
				return []unit{{tree: r.Tree}}, true
			}
		}
	}
	return nil, false
}

// span gives the numbers of a run of rows.
func (k *worker) span(s syntax.RowSpan) iter.Seq[int] {
	from, to := s.From.At(k.size), s.To.At(k.size)
	if to-from > maxRow {
		to = from
	}
	return func(yield func(int) bool) {
		for n := from; n <= max(from, to) && yield(n); n++ {
		}
	}
}

// second is another worker, who looks up rows of other pieces for this one.
func (k *worker) second() *worker {
	other := &worker{fabric: k.fabric, size: k.size, h: k.h, rows: map[int]unit{}}
	other.h.done = map[int][]int{}
	return other
}

// lookUp goes through rows of another piece for a worker, in the order worked, and notes each
// under its number, as far as upTo says; reached tells whether it did. It gives false where they
// cannot be told, or that worker is looking that piece up already: then it is told in its own words.
func (k *worker) lookUp(of *worker, p *Piece, rows []*Row, upTo func(unit) bool) (reached, ok bool) {
	if slices.Contains(of.lookedUp, p) {
		return false, false
	}
	k.piece, k.lookedUp = p, append(slices.Clip(of.lookedUp), p)
	for _, r := range rows {
		units, ok := k.units(r)
		if !ok {
			return false, false
		}
		for _, u := range units {
			k.note(r, u, r.Tallies[k.size].Works)
			if upTo(u) {
				return true, true
			}
		}
	}
	return false, true
}

// rowsOf finds the rows of another piece that `work as Rnds 1-2 of the cup` names. What is
// called so and is no piece is not looked up. What is laid before the first of them is of
// them where nothing is laid here.
func (k *worker) rowsOf(ref *syntax.Rows) ([]unit, bool) {
	if ref.Changed {
		return nil, false
	}
	k.leans = true
	other := k.second()
	var laid, out []unit
	for _, p := range k.fabric.called(ref.Piece) {
		if _, ok := other.lookUp(k, p, p.Rows, func(u unit) bool {
			if len(other.rows) == 0 && lays(u.tree.Clauses) {
				laid = append(laid, u)
			}
			return false
		}); !ok {
			return nil, false
		}
	}
	if k.h.chains == 0 && k.h.made() == 0 && ref.List[0].From.At(k.size) == 1 {
		out = laid
	}
	for _, s := range ref.List {
		for n := range k.span(s) {
			u, ok := other.rows[n]
			if !ok {
				return nil, false
			}
			out = append(out, u)
		}
	}
	return out, true
}

// goesOnFrom tells whether a row ends by saying that the work goes on from it, the
// row itself included, until some length: how many rows those are is not said.
func goesOnFrom(row *syntax.Row, ref *syntax.Rows, n, size int) bool {
	return ref.Limit == syntax.Measured && row.Clauses[0].Node != ref && slices.Contains(row.Label.Each(size), n)
}

// called finds the row of a number: of this piece or, where that has no heading
// and only numbers its rows anew, or goes on with the numbers, of what stands above it.
func (k *worker) called(n int) (unit, bool) {
	for at := k; at != nil; at = at.above {
		if u, ok := at.rows[n]; ok {
			return u, true
		}
		if at.piece.Tree.Name != "" && !goesOnNumbered(at.piece.Tree, k.size) {
			break
		}
		k.leans = true
	}
	return unit{}, false
}

// goesOnNumbered tells whether the first number of a piece's rows is not the first of any.
func goesOnNumbered(p *syntax.Piece, size int) bool {
	for _, r := range p.Rows {
		if r.Label.Kind == syntax.Numbered && !r.Label.Bare {
			return r.Label.First(size) > 1
		}
	}
	return false
}

// ofPiece finds the rows that `work as for Back to **` names: those of another
// piece up to a mark or to a numbered row.
func (k *worker) ofPiece(row *Row, ref *syntax.Rows) ([]unit, bool) {
	var out []unit
	k.leans = true
	ended := false
	pieces := k.fabric.called(ref.Piece)
	if ref.UpTo != "" {
		pieces = k.fabric.upTo(pieces, ref.UpTo)
		if len(pieces) == 0 {
			return nil, false // how far `until it measures 20 cm` is, is not known
		}
	}
	last := ref.PieceRow
	if !last.Written() && firstRows(row.Tree.Label, k.size) {
		last = row.Tree.Label.Numbers[0].To // `Rnds 1-3: Work as for first leaf.`
	}
	for _, p := range pieces {
		rows := k.worksAs(p)
		if !last.Written() {
			rows, ended = upToMark(rows)
		}
		other := k.second()
		reached, ok := other.lookUp(k, p, rows, func(u unit) bool {
			out = append(out, u)
			return last.Written() && (u.number >= last.At(k.size) || ref.PieceRow.Written() && other.number >= last.At(k.size))
		})
		if reached || !ok {
			return out, ok
		}
		if ended {
			break
		}
	}
	if len(out) > 0 {
		if n := ref.PieceRow.At(k.size); ref.PieceRow.Written() && !slices.ContainsFunc(pieces, (*Piece).measured) {
			k.refuse(row, Fault{Kind: RowUnknown, N: n, Name: "row " + itoa(n) + " of " + ref.Piece})
			return nil, false
		}
		if ref.Mark != "" && !ended {
			k.refuse(row, Fault{Kind: RowUnknown, Name: ref.Mark})
			return nil, false
		}
		return out, true
	}
	if !ref.Changed && !k.labels(ref.Piece) {
		k.refuse(row, Fault{Kind: RowUnknown, Name: ref.Piece}) // where more is said, it may be no name
	}
	return nil, false
}

// labels tells whether the label of a row of the piece begins with a name: `First tab, Row 1`. What is told there cannot be
// told apart.
func (k *worker) labels(name string) bool {
	return slices.ContainsFunc(k.piece.Rows, func(r *Row) bool {
		label := strings.TrimLeft(r.Tree.Label.Text, "*_ ")
		return len(label) >= len(name) && strings.EqualFold(label[:len(name)], name)
	})
}

// worksAs are the rows of another piece that this one works too: all but the beginning, where
// it has one of its own.
func (k *worker) worksAs(p *Piece) []*Row {
	if k.h.chains == 0 {
		return p.Rows
	}
	return slices.DeleteFunc(slices.Clone(p.Rows), func(r *Row) bool { return lays(r.Tree.Clauses) && !worksOn(r.Tree.Clauses) })
}

// upToMark are the rows as far as one with a mark that other pieces refer to, and whether
// there is one.
func upToMark(rows []*Row) ([]*Row, bool) {
	at := slices.IndexFunc(rows, func(r *Row) bool { return marked(r.Tree) })
	if at < 0 {
		return rows, false
	}
	return rows[:at+1], true
}

// measured tells whether some rows of the piece are worked by measure.
func (p *Piece) measured() bool { return slices.ContainsFunc(p.Rows, (*Row).Measured) }

// called finds the piece of a name or, where none has it, those that stand under
// a heading of that name, else the only one in whose name its words stand: `as right mitt` is
// as HAND, RIGHT MITT.
func (f *Fabric) called(name string) []*Piece {
	var under []*Piece
	for _, p := range f.Pieces {
		if p.Tree.Called(name) {
			return []*Piece{p}
		}
		if strings.EqualFold(p.Tree.Under, name) {
			under = append(under, p)
		}
	}
	if len(under) > 0 {
		return under
	}
	var holding []*Piece
	for _, p := range f.Pieces {
		if wordsStandIn(name, p.Tree.Name) {
			holding = append(holding, p)
		}
	}
	if len(holding) == 1 {
		return holding
	}
	return nil
}

// wordsStandIn tells whether all the words of a name stand in another.
func wordsStandIn(name, whole string) bool {
	words := func(s string) []string {
		return strings.FieldsFunc(strings.ToLower(s), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	}
	all := words(whole)
	return !slices.ContainsFunc(words(name), func(w string) bool { return !slices.Contains(all, w) })
}

// upTo is the first of some pieces and those after it, as far as one whose name has
// the same ideas; none where there is no such piece.
func (f *Fabric) upTo(of []*Piece, name string) []*Piece {
	if len(of) == 0 {
		return nil
	}
	from := slices.Index(f.Pieces, of[0])
	to := slices.IndexFunc(f.Pieces[from:], func(p *Piece) bool { return syntax.Ideas(p.Tree.Name) == name })
	return f.Pieces[from : from+max(0, to)]
}

// marked tells whether a mark that other pieces refer to stands in a row.
func marked(r *syntax.Row) bool {
	for _, c := range r.Clauses {
		if _, ok := c.Node.(*syntax.Mark); ok {
			return true
		}
	}
	return false
}

func (k *worker) refuse(row *Row, f Fault) {
	f.Size, f.Span = k.size, row.start()
	row.Tallies[k.size].Faults = append(row.Tallies[k.size].Faults, f)
}

// reference finds the clause by which an instruction works other rows.
func reference(clauses []syntax.Clause) *syntax.Rows {
	for _, c := range clauses {
		switch n := c.Node.(type) {
		case *syntax.Rows:
			return n
		case *syntax.Work, *syntax.Group, *syntax.Repeat, *syntax.Chain:
			return nil
		}
	}
	return nil
}

// Likeness is the name of another piece that the row is worked like, "" for a row of
// its own: `work as for Back to **`.
func (r *Row) Likeness() string {
	if ref := reference(r.Tree.Clauses); ref != nil {
		return ref.Piece
	}
	return ""
}

func longOf(clauses []syntax.Clause) *syntax.Long {
	for _, c := range clauses {
		if n, ok := c.Node.(*syntax.Long); ok {
			return n
		}
	}
	return nil
}

// evenOf finds that a row goes on without shaping; nil where it works something
// else first, after which that only tells of more such rows.
func evenOf(clauses []syntax.Clause) *syntax.Even {
	for i, c := range clauses {
		if n, ok := c.Node.(*syntax.Even); ok && !worksOn(clauses[:i]) {
			return n
		}
	}
	return nil
}

// evenRow writes `work even` as what it means: the stitch of the row below in
// each of its stitches.
func evenRow(clauses []syntax.Clause, main *stitch.Stitch) []syntax.Clause {
	out := make([]syntax.Clause, len(clauses))
	copy(out, clauses)
	for i, c := range out {
		if even, ok := c.Node.(*syntax.Even); ok && even.Stitch.Written() {
			out[i].Node = &syntax.Work{Stitch: even.Stitch, Places: []syntax.Place{syntax.AllAlong}}
		} else if ok {
			out[i].Node = &syntax.Work{
				Stitch: syntax.StitchRef{Word: main.ID, Meaning: stitch.Meaning{US: main, UK: main}},
				Places: []syntax.Place{syntax.AllAlong},
			}
		}
	}
	return out
}
