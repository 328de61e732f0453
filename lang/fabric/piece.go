package fabric

import (
	"maps"
	"slices"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// Work works a whole pattern in every size.
func Work(file *syntax.File) *Fabric {
	f := &Fabric{File: file}
	w, evidence := newWords(file)
	f.Dialect, f.Evidence = w.dialect, evidence
	var ends []worker
	for _, tree := range file.Pieces {
		var p *Piece
		p, ends = workPiece(f, &w, tree, ends)
		f.Pieces = append(f.Pieces, p)
	}
	return f
}

// worker works one piece in one size.
type worker struct {
	fabric *Fabric
	piece  *Piece
	size   int
	h      hand
	rows   map[int]unit // by number, as far as worked
	last   []unit       // in the order worked
	every  *unit        // the row that every other one is like, nil for none
	number int          // of the row worked last
	// headless is set while no row was worked of a piece whose beginning is not
	// here.
	headless bool
	side     syntax.SideKind // that faces now, as far as it is said
	turned   bool            // the last row ended with a turn
	// heal is what the last row stated, where it could not be counted or made
	// something else: later rows may show that it is right.
	heal []int
}

// unit is one row to be worked: the words of an instruction, without what
// they refer to.
type unit struct {
	tree *syntax.Row
	even bool // `work even`: the stitch of the row below in each stitch
}

// workPiece works a piece. before is how the pieces before it ended, one a
// size: rounds that go on with their numbers go on with their stitches.
func workPiece(f *Fabric, w *words, tree *syntax.Piece, before []worker) (*Piece, []worker) {
	p := &Piece{Tree: tree}
	for i, r := range tree.Rows {
		row := &Row{Tree: r, Piece: p, Index: i, Tallies: make([]Tally, f.Sizes()), Repeats: make([]int, f.Sizes())}
		row.Stated, row.StatedAt = statedIn(r.Clauses)
		row.Steps = make([]Step, len(r.Clauses))
		for k, c := range r.Clauses {
			row.Steps[k] = Step{Span: c.Span, Known: true}
		}
		p.Rows = append(p.Rows, row)
	}
	var ends []worker
	for size := range f.Sizes() {
		k := worker{fabric: f, piece: p, size: size, rows: map[int]unit{}}
		k.h = hand{words: w, size: size, sizes: f.Sizes(), budget: new(maxSteps), held: -1, known: true, done: map[int][]int{}}
		if first := firstNumber(tree, size); first > 1 {
			if before != nil && before[size].number == first-1 {
				k.goOn(&before[size])
			} else {
				k.h.adrift, k.headless = true, true
			}
		}
		for _, row := range p.Rows {
			k.instruction(row)
		}
		p.Stitches = append(p.Stitches, append(k.h.settled, k.h.fresh...))
		ends = append(ends, k)
	}
	return p, ends
}

// firstNumber is the number of a piece's first row, 0 where a line without
// one lays its beginning.
func firstNumber(tree *syntax.Piece, size int) int {
	for _, r := range tree.Rows {
		if r.Label.Kind == syntax.Numbered {
			return r.Label.First(size)
		}
		if worksOn(r.Clauses) || lays(r.Clauses) {
			return 0
		}
	}
	return 0
}

// lays tells whether a line lays a beginning: a chain or a ring.
func lays(clauses []syntax.Clause) bool {
	for _, c := range clauses {
		switch c.Node.(type) {
		case *syntax.Chain, *syntax.MagicRing, *syntax.Rows:
			return true
		}
	}
	return false
}

// goOn takes up the work where another piece left it.
func (k *worker) goOn(from *worker) {
	k.h = from.h
	k.h.settled = slices.Clone(from.h.settled)
	k.rows, k.last, k.number = maps.Clone(from.rows), slices.Clone(from.last), from.number
	k.h.done = maps.Clone(from.h.done)
}

// statedIn finds the count that an instruction states: the last one, or the
// parts of several that stand together.
func statedIn(clauses []syntax.Clause) (*syntax.Total, source.Span) {
	var found *syntax.Total
	var at source.Span
	for _, c := range clauses {
		if t, ok := c.Node.(*syntax.Total); ok && !(len(t.Parts) == 1 && t.Parts[0].Noun.Kind == syntax.NounRow) {
			found, at = t, c.Span
		}
	}
	return found, at
}

// instruction works one instruction: every row that its label names and its
// words refer to.
func (k *worker) instruction(row *Row) {
	if k.h.made() >= maxPiece {
		row.Tallies[k.size].Works = true // refused with the row that met the bound
		return
	}
	units, ok := k.units(row)
	row.Repeats[k.size] = len(units)
	if !ok {
		k.unknown(row)
		return
	}
	k.fill(row)
	k.h.goesOn = len(units) == 1 && k.followed(row)
	numbers := row.Tree.Label.Each(k.size)
	before := k.h.rowMade
	var o outcome
	for i, u := range units {
		var stated *syntax.Total
		if i == len(units)-1 {
			stated = row.Stated // the count holds for the last row, and for all if plain
		}
		o = k.row(u, row, stated)
		k.note(row, u, numbers, i, o.tally.Works)
		if len(o.tally.Faults) > 0 {
			break
		}
	}
	if ref := reference(row.Tree.Clauses); ref != nil {
		if ref.Limit == syntax.Measured && len(numbers) == 0 && before > 0 && o.tally.Made != before {
			k.unknown(row) // worked by measure, and every time makes another number
			return
		}
		o = said(o, row.Steps[0].Span)
	}
	k.record(row, o)
}

// fill works the rows that `Row 2 and all even rows` stands for, between the
// row worked last and this one.
func (k *worker) fill(row *Row) {
	label := row.Tree.Label
	if label.EveryOther {
		k.every = &unit{tree: row.Tree}
		return
	}
	if k.every == nil || len(label.Numbers) == 0 {
		return
	}
	first := k.every.tree.Label.First(k.size)
	for n := k.number + 1; n < label.First(k.size) && n-k.number <= maxUnits && (n-first)%2 == 0; n++ {
		o := k.row(*k.every, row, nil)
		k.note(row, *k.every, []int{n}, 0, o.tally.Works)
	}
}

// followed tells whether the next line has no label and works on.
func (k *worker) followed(row *Row) bool {
	if row.Index+1 >= len(k.piece.Rows) {
		return false
	}
	next := k.piece.Rows[row.Index+1].Tree
	if next.Label.Kind != syntax.Unlabelled || reference(next.Clauses) != nil || len(next.Clauses) == 0 {
		return false
	}
	switch n := next.Clauses[0].Node.(type) {
	case *syntax.Work, *syntax.Group, *syntax.Repeat:
		return true
	case *syntax.Turn:
		return n.OtherSide
	}
	return false
}

// said moves what was found in the words of another row to the clause that
// refers to it.
func said(o outcome, at source.Span) outcome {
	for i := range o.tally.Faults {
		o.tally.Faults[i].Span = at
	}
	if !o.tally.Known {
		o.tally.Blame = at
	}
	o.hand.steps = nil
	return o
}

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
		list, ok := k.referred(row, ref)
		if !ok || len(list) == 0 {
			return nil, false
		}
		total := named
		if named == 0 {
			total = len(list) * min(max(1, ref.Number.Or(k.size, 1)), maxRow)
		}
		return cycle(list, min(total, maxUnits)), true
	}
	u := unit{tree: tree}
	if even := evenOf(tree.Clauses); even != nil {
		u.even = true
		named = max(named, even.Number.Or(k.size, 1))
	}
	return cycle([]unit{u}, min(max(1, named), maxUnits)), true
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

// row works a row on what lies below.
func (k *worker) row(u unit, row *Row, stated *syntax.Total) outcome {
	k.h.startRow(row.Index, u.tree.Label)
	clauses := u.tree.Clauses
	if u.even {
		clauses = evenRow(clauses, k.h.mainFor(nil))
	}
	heal := k.heal
	k.heal = nil
	o := settled(k.h, clauses, stated)
	if heal != nil && (o.cost() > 0 || !o.tally.Known) {
		healed := k.h
		healed.rest(heal)
		if other := settled(healed, clauses, stated); other.cost() == 0 && other.tally.Known {
			o = other
		}
	}
	k.take(o, stated)
	return o
}

// take goes on from an outcome. A row that could not be counted, or that made
// something other than it states, leaves the stated count to be tried.
func (k *worker) take(o outcome, stated *syntax.Total) {
	k.h = o.hand
	k.h.settled, k.h.fresh = append(k.h.settled, k.h.fresh...), nil
	if k.h.keeps = k.h.continued(); k.h.keeps {
		return
	}
	if !o.tally.Works && len(k.h.row) == 0 {
		k.h.laid = k.h.laid && !k.h.turned
		return
	}
	if stated != nil && (!o.tally.Known || o.tally.Agrees() == Disagrees) {
		k.heal = k.h.imagined(stated)
	}
	k.h.settleOn(k.heal, o.tally.Known)
}

// referred finds the rows that a reference names, in the order worked.
func (k *worker) referred(row *Row, ref *syntax.Rows) ([]unit, bool) {
	if ref.Piece != "" {
		return k.ofPiece(row, ref)
	}
	if ref.Changed {
		return nil, false
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
		from, to := s.From.At(k.size), s.To.At(k.size)
		if to-from > maxRow {
			to = from
		}
		for n := from; n <= max(from, to); n++ {
			u, ok := k.rows[n]
			if !ok {
				k.refuse(row, Fault{Kind: RowUnknown, N: n})
				return nil, false
			}
			out = append(out, u)
		}
	}
	return out, true
}

// ofPiece finds the rows that `work as for Back to **` names: those of another
// piece up to a mark or to a numbered row.
func (k *worker) ofPiece(row *Row, ref *syntax.Rows) ([]unit, bool) {
	for _, p := range k.fabric.Pieces {
		if !strings.EqualFold(p.Tree.Name, ref.Piece) {
			continue
		}
		other := worker{fabric: k.fabric, piece: p, size: k.size, h: k.h, rows: map[int]unit{}}
		var out []unit
		for _, r := range p.Rows {
			units, ok := other.units(r)
			if !ok {
				return nil, false
			}
			for i, u := range units {
				other.note(r, u, r.Tree.Label.Each(k.size), i, r.Tallies[k.size].Works)
			}
			out = append(out, units...)
			number := r.Tree.Label.First(k.size)
			if ref.PieceRow.Written() && number >= ref.PieceRow.At(k.size) || !ref.PieceRow.Written() && marked(r.Tree) {
				break
			}
		}
		if ref.Mark != "" && (len(out) == 0 || !marked(out[len(out)-1].tree)) {
			k.refuse(row, Fault{Kind: RowUnknown, Name: ref.Mark})
			return nil, false
		}
		return out, len(out) > 0
	}
	k.refuse(row, Fault{Kind: RowUnknown, Name: ref.Piece})
	return nil, false
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
	f.Size, f.Span = k.size, row.Steps[0].Span
	row.Tallies[k.size].Faults = append(row.Tallies[k.size].Faults, f)
}

// unknown records a row that cannot be counted; its stated count is trusted.
func (k *worker) unknown(row *Row) {
	k.h.startRow(row.Index, row.Tree.Label)
	k.h.works = true
	k.h.span = row.Steps[0].Span
	k.h.lose()
	o := outcome{hand: k.h}
	faults := row.Tallies[k.size].Faults
	o.tally = k.h.tally(row.Stated)
	o.tally.Faults = append(o.tally.Faults, faults...)
	o.tally.Works = true
	k.record(row, o)
	k.take(o, row.Stated)
	for i := range row.Tree.Label.Each(k.size) {
		k.note(row, unit{tree: row.Tree}, row.Tree.Label.Each(k.size), i, false)
	}
}

// record keeps what a row came to.
func (k *worker) record(row *Row, o outcome) {
	for i := range o.tally.Faults {
		if o.tally.Faults[i].Span.Start < 0 {
			o.tally.Faults[i].Span = lastWorking(row)
		}
	}
	row.Tallies[k.size] = o.tally
	if k.headless && o.tally.Works {
		k.headless = false
		row.Tallies[k.size].Blame = row.Steps[0].Span // said once
	}
	if row.Stated == nil && o.stated != nil && o.hand.said != (source.Span{}) {
		row.Stated, row.StatedAt = o.stated, o.hand.said
	}
	k.face(row, o.hand)
	row.Joined, row.Turned, row.Round = o.hand.joined, o.hand.turned || o.hand.turnedFirst, o.hand.round
	for i, s := range o.hand.steps {
		if i >= len(row.Steps) {
			break
		}
		step := &row.Steps[i]
		step.Used = append(step.Used, s.used)
		step.Made = append(step.Made, s.made)
		step.Total = append(step.Total, s.total)
		step.Left = append(step.Left, s.left)
		step.Known = step.Known && s.known
		if k.size == 0 {
			step.From, step.To, step.Ledger = s.from, s.to, s.ledger
		}
	}
}

// face follows which side of the work faces: what the first row says of it,
// turned at each turn.
func (k *worker) face(row *Row, h hand) {
	if !row.Tallies[k.size].Works {
		return
	}
	if h.turnedFirst && k.side != syntax.NoSide && !k.turned {
		k.side = other(k.side)
	}
	if k.side == syntax.NoSide || joinsAnew(row.Tree.Clauses) && row.Tree.Label.Side != syntax.NoSide {
		k.side = row.Tree.Label.Side
	}
	row.Side = k.side
	k.turned = h.turned
	if k.side != syntax.NoSide && row.Repeats[k.size]%2 == 1 && (h.turned || !h.round && !h.notTurned) {
		k.side = other(k.side)
	}
}

// joinsAnew tells whether a row begins by joining yarn: then its side is what
// it says.
func joinsAnew(clauses []syntax.Clause) bool {
	for _, c := range clauses {
		switch n := c.Node.(type) {
		case *syntax.Yarn:
			if n.Action == syntax.YarnJoin {
				return true
			}
		case *syntax.Work, *syntax.Chain, *syntax.Repeat, *syntax.Group:
			return false
		}
	}
	return false
}

func other(s syntax.SideKind) syntax.SideKind {
	if s == syntax.RightSide {
		return syntax.WrongSide
	}
	return syntax.RightSide
}

// lastWorking is the clause at which a row stops working.
func lastWorking(row *Row) source.Span {
	for i := len(row.Tree.Clauses) - 1; i >= 0; i-- {
		if worksOn(row.Tree.Clauses[i : i+1]) {
			return row.Tree.Clauses[i].Span
		}
	}
	return row.Steps[0].Span
}

// note remembers a worked row under its number: the ith of an instruction.
func (k *worker) note(row *Row, u unit, numbers []int, i int, works bool) {
	label := row.Tree.Label
	switch {
	case i < len(numbers):
		k.number = numbers[i]
	case label.Kind == syntax.Setup || label.Kind == syntax.Named || label.Kind == syntax.Unlabelled && !works:
		return
	default:
		k.number++
	}
	k.rows[k.number] = u
	k.last = append(k.last, u)
	k.h.done[k.number] = k.h.base
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

func evenOf(clauses []syntax.Clause) *syntax.Even {
	for _, c := range clauses {
		if n, ok := c.Node.(*syntax.Even); ok {
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
		if _, ok := c.Node.(*syntax.Even); ok {
			out[i].Node = &syntax.Work{
				Stitch: syntax.StitchRef{Word: main.ID, Meaning: stitch.Meaning{US: main, UK: main}},
				Places: []syntax.Place{{Each: true, To: syntax.ToLimit{Kind: syntax.ToTheEnd}}},
			}
		}
	}
	return out
}

// rest lays places in the stead of those below.
func (h *hand) rest(places []int) {
	h.base = places
	h.at, h.sub, h.held, h.end = 0, 0, -1, len(places)
}

// imagined makes the stitches that a row states, for the next row to be
// tried on. They are no part of what the row made.
func (h *hand) imagined(stated *syntax.Total) []int {
	var out []int
	for _, p := range stated.Parts {
		n := min(max(0, p.Number.At(h.size)), maxRow)
		switch p.Noun.Kind {
		case syntax.NounNone, syntax.NounAny, syntax.NounStitch, syntax.NounSpace, syntax.NounTurning:
		default:
			return nil
		}
		k := h.main
		if p.Noun.Kind == syntax.NounStitch {
			if named, _ := h.words.stitch(p.Noun.Stitch); named != nil {
				k = named
			}
		}
		for range n {
			if h.made() >= maxPiece {
				return nil
			}
			s := Stitch{Kind: k, Into: -1, Row: -1}
			if p.Noun.Kind == syntax.NounSpace || p.Noun.Kind == syntax.NounTurning {
				s.Kind, s.Chains = nil, p.Noun.Length.Or(h.size, 1)
			}
			h.settled = append(h.settled, s)
			out = append(out, h.made()-1)
		}
	}
	return out
}

// settleOn makes what the row made the ground of the next; where it is not known,
// what it stated.
func (h *hand) settleOn(stated []int, known bool) {
	h.base, h.adrift = h.row, false
	if !known {
		h.base, h.adrift = stated, stated == nil
	}
	h.ring, h.laid, h.reversed = false, false, false
	h.at, h.sub, h.held, h.end = 0, 0, -1, len(h.base)
}
