package fabric

import (
	"cmp"
	"maps"
	"slices"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// Work works a whole pattern in every size.
func Work(file *syntax.File) *Fabric { return WorkIn(file, stitch.Unsettled) }

// WorkIn works a pattern that is in the terms of a house where nothing in it
// shows whose they are.
func WorkIn(file *syntax.File, house stitch.Dialect) *Fabric { return WorkAfter(nil, file, house) }

// worker works one piece in one size.
type worker struct {
	fabric *Fabric
	piece  *Piece
	size   int
	h      hand
	rows   map[int]unit // by number, as far as worked
	// lookedUp are the pieces whose rows are being looked up for an instruction that is worked as
	// they are.
	lookedUp []*Piece
	above    *worker // of the piece before, nil for the first
	leans    bool    // another piece decides what this one comes to
	last     []unit  // in the order worked
	every    *Row    // the instruction that every other row is like, nil for none
	number   int     // of the row worked last
	// headless is set while no row was worked of a piece whose beginning is not
	// here.
	headless bool
	side     syntax.SideKind // that faces now, as far as it is said
	turned   bool            // the last row ended with a turn
	faced    bool            // the side of the instruction at work is known
	// heal is what the last row stated, where it could not be counted or made
	// something else: later rows may show that it is right. nil for none.
	heal *syntax.Total
}

// unit is one row to be worked: the words of an instruction, without what
// they refer to.
type unit struct {
	tree   *syntax.Row
	even   bool // `work even`: the stitch of the row below in each stitch
	number int  // that its label gives, 0 where it follows the row before
	// between is set for a row that another instruction told of: `Row 2 and all
	// even rows`.
	between bool
}

// crew works a piece in all its sizes, one worker a size: words with two
// meanings are taken the same way in each.
type crew []*worker

// workPiece works a piece. before is how the pieces before it ended: rounds
// that go on with their numbers go on with their stitches, and what a piece
// left unworked may be worked on as a piece of its own.
func workPiece(f *Fabric, w *words, tree *syntax.Piece, before []crew, of habit) (*Piece, crew) {
	p := &Piece{Tree: tree, proportion: proportionOf(w.gauge, w.dialect)}
	for i, r := range tree.Rows {
		p.Rows = append(p.Rows, newRow(p, i, r, f.Sizes()))
	}
	var c crew
	limbs := limbsOf(tree)
	for size := range f.Sizes() {
		k := &worker{fabric: f, piece: p, size: size, rows: map[int]unit{}}
		k.h = hand{words: w, size: size, sizes: f.Sizes(), habit: &of, limbs: limbs, choose: of.readings, budget: new(maxSteps), ground: ground{held: -1}, rowAtWork: rowAtWork{known: true}, done: map[int][]int{}}
		if len(before) > 0 {
			k.above = before[len(before)-1][size]
			k.h.rules = k.above.h.rules
		}
		k.takeUp(tree, before)
		c = append(c, k)
	}
	var keep keeper
	for _, row := range p.Rows {
		if w.onlyTold(tree, row.Index) {
			row.worksNothing()
			continue
		}
		keep.before(row, c)
		c.instruction(row)
		keep.after(row)
	}
	for _, k := range c {
		k.h.earlier = append(make([]Stitch, 0, k.h.made()), k.h.earlier...) // no room is left: all is done
		k.h.laidBy()
		p.Stitches = append(p.Stitches, k.h.earlier)
	}
	return p, c
}

// onlyTold tells a row that is not worked where it stands, for it has a name by which rows with numbers call for it:
// `PLAIN ROW. …`, where another says `Row 12. Plain row.` One whose number the rows around it leave out is worked there as well.
func (w *words) onlyTold(tree *syntax.Piece, row int) bool {
	l := tree.Rows[row].Label
	if l.Kind != syntax.Named || !slices.ContainsFunc(w.called, l.Called) {
		return false
	}
	numbered := func(r *syntax.Row) bool { return r.Label.Kind == syntax.Numbered && !r.Label.Bare }
	after := slices.IndexFunc(tree.Rows[row:], numbered)
	for before := row - 1; before >= 0 && after > 0; before-- {
		if each := tree.Rows[before].Label.Each(0); numbered(tree.Rows[before]) && len(each) > 0 {
			return tree.Rows[row+after].Label.First(0) != each[len(each)-1]+2
		}
	}
	return true
}

// worksNothing says of a row that it is not worked where it stands: what it counts holds where it is.
func (r *Row) worksNothing() {
	r.Stated, r.StatedAt = nil, source.Span{}
	for size := range r.Tallies {
		r.Tallies[size].Known = true
	}
}

// takeUp begins a piece where an earlier one stopped, if it says that it goes
// on there.
func (k *worker) takeUp(tree *syntax.Piece, before []crew) {
	first := firstNumber(tree, k.size)
	k.leans = first > 1
	if left := beginsOn(tree); left != nil {
		k.leans = true
		for i := len(before) - 1; i >= 0; i-- {
			if from := before[i][k.size]; left(&from.h) {
				k.goOn(from)
				k.number = max(0, first-1)
				if first == 1 && tree.Name != "" {
					clear(k.rows) // a thumb numbers its rounds anew, and means those
				}
				return
			}
		}
	}
	edge := first <= 1 && onEdge(tree)
	laid := first <= 1 && !edge && len(before) > 0 && before[len(before)-1][k.size].onlyLaid() && !lays(firstLine(tree))
	k.leans = k.leans || edge || laid
	switch {
	case laid:
		k.goOn(before[len(before)-1][k.size])
	case edge && len(before) > 0 && !before[len(before)-1][k.size].finished():
		k.goOn(before[len(before)-1][k.size])
		k.number = 0
	case first <= 1:
		k.h.adrift = alongOther(tree, k.size)
		k.headless = k.h.adrift
	case len(before) > 0 && before[len(before)-1].reached() == first-1: // whatever rows this size has of it
		k.goOn(before[len(before)-1][k.size])
	default:
		k.h.adrift, k.headless = true, true
	}
}

// onlyLaid tells whether a piece is no more than a foundation chain: `Foundation`, above the piece
// that is worked on it.
func (k *worker) onlyLaid() bool {
	rows := k.piece.Tree.Rows
	return len(rows) == 1 && laysAlone(rows[0].Clauses, k.size)
}

// firstLine is the first line of a piece.
func firstLine(tree *syntax.Piece) []syntax.Clause {
	if len(tree.Rows) == 0 {
		return nil
	}
	return tree.Rows[0].Clauses
}

// reached is the highest number of a row that a piece came to in any size.
func (c crew) reached() int {
	number := 0
	for _, k := range c {
		number = max(number, k.number)
	}
	return number
}

// beginsOn tells what an earlier piece must have left for a piece that begins
// on it: stitches unworked, an opening, a marker; nil for a piece with its own
// beginning.
func beginsOn(tree *syntax.Piece) func(*hand) bool {
	for _, r := range tree.Rows {
		for _, c := range r.Clauses {
			switch n := c.Node.(type) {
			case *syntax.Skip:
				if n.Place.Pick == syntax.PickNext && joinsAnew(r.Clauses) {
					return func(h *hand) bool { return h.cut && h.leftPast(n.Place) >= 0 }
				}
				return leftFor(n.Place)
			case *syntax.Yarn:
				if n.Action == syntax.YarnJoin {
					return leftFor(n.Place)
				}
			case *syntax.Chain, *syntax.MagicRing, *syntax.Work, *syntax.Repeat, *syntax.Group:
				return nil
			}
		}
	}
	return nil
}

func leftFor(p syntax.Place) func(*hand) bool {
	switch {
	case p.Noun.Kind == syntax.NounMarker:
		return func(h *hand) bool { return len(h.marks) > 0 }
	case p.Pick == syntax.PickPrevious:
		return func(h *hand) bool { return len(h.openings) > 0 }
	case p.Pick == syntax.PickRemaining, p.Row.Written():
		return func(h *hand) bool { return len(h.left) > 0 }
	}
	return nil
}

// newRow is a row before it is worked.
func newRow(p *Piece, index int, tree *syntax.Row, sizes int) *Row {
	row := &Row{Tree: tree, Piece: p, Index: index, Tallies: make([]Tally, sizes), Repeats: make([]int, sizes), laid: make([]stretch, sizes)}
	row.Stated, row.StatedAt = statedIn(tree.Clauses)
	row.Steps = make([]Step, len(tree.Clauses))
	for k, c := range tree.Clauses {
		row.Steps[k] = Step{Span: c.Span, Known: true}
	}
	return row
}

// onEdge tells whether a piece begins with a stitch that needs work below it: an
// edging under a heading of its own.
func onEdge(tree *syntax.Piece) bool {
	for _, r := range tree.Rows {
		clauses := r.Clauses
		if r.Label.Kind == syntax.NextRow { // whatever its yarn, it goes on
			clauses = slices.DeleteFunc(slices.Clone(clauses), func(c syntax.Clause) bool { _, yarn := c.Node.(*syntax.Yarn); return yarn })
		}
		if needs, told := needsBelow(clauses); told {
			return needs
		}
	}
	return false
}

// needsBelow tells whether the first stitch of some clauses needs work below it, and
// whether they have any that tells.
func needsBelow(clauses []syntax.Clause) (needs, told bool) {
	for _, c := range clauses {
		switch n := c.Node.(type) {
		case *syntax.Chain:
			if n.Number.At(0) > MostTurning {
				return false, true
			}
		case *syntax.Work, *syntax.Group:
			places := placesOf(n)
			return len(places) > 0 && places[0].From != syntax.FromHook && places[0].Noun.Kind != syntax.NounRing &&
				places[0].Noun.Kind != syntax.NounChain && places[0].Noun.Kind != syntax.NounSpace, true
		case *syntax.Repeat:
			if needs, told := needsBelow(n.Body); told {
				return needs, true
			}
		case *syntax.MagicRing, *syntax.Yarn, *syntax.Join, *syntax.Rows, *syntax.Branch, *syntax.Likewise, *syntax.Unread:
			return false, true
		}
	}
	return false, false
}

// alongOther tells whether a piece begins along more places than it lays: chains of another
// piece, `join with a ss in the first ch of the starting chain`, or stitches where the yarn is
// joined to what is there.
func alongOther(tree *syntax.Piece, size int) bool {
	laid, joined := 0, false
	for _, r := range tree.Rows {
		for _, c := range r.Clauses {
			switch n := c.Node.(type) {
			case *syntax.Chain:
				laid += n.Number.At(size)
				continue
			case *syntax.Yarn:
				joined = joined || n.Action == syntax.YarnJoin
				continue
			case *syntax.Join:
				if n.Ring || laid > 0 {
					return false
				}
				joined = true
				continue
			}
			if places := placesOf(c.Node); len(places) > 0 {
				p := places[0]
				if p.Row.Written() && laid <= MostTurning && p.Each {
					return true // of a row of what is there
				}
				if laid > MostTurning || p.From != syntax.FromHere || p.Noun.Kind > syntax.NounChain {
					return false
				}
				if joined || laid == 0 && p.Noun.Kind == syntax.NounChain {
					return p.Each || p.Number.At(size) > laid
				}
				return p.Noun.Kind == syntax.NounChain && p.Each && p.Number.At(size) > MostTurning
			}
			if usesPlaces(c) {
				return false
			}
		}
	}
	return false
}

// MostTurning is the most chains that a row begins with to reach its height, which
// is that of tr; a foundation has more. Common practice.
const MostTurning = 4

// finished tells whether a piece is fastened off, and not only a yarn that it was worked in
// before its last.
func (k *worker) finished() bool {
	named := false
	for _, r := range k.piece.Tree.Rows {
		for _, c := range r.Clauses {
			if n, ok := c.Node.(*syntax.Finish); ok && n.Yarn == "" {
				return true
			} else if ok {
				named = true
			}
		}
	}
	return named && k.h.cut
}

func fastensOff(clauses []syntax.Clause) bool {
	return slices.ContainsFunc(clauses, func(c syntax.Clause) bool {
		_, ok := c.Node.(*syntax.Finish)
		return ok
	})
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

// laysAlone tells whether a line is a foundation chain and no more.
func laysAlone(clauses []syntax.Clause, size int) bool {
	chains := 0
	for _, c := range clauses {
		switch n := c.Node.(type) {
		case *syntax.Chain:
			chains = max(chains, n.Number.At(size))
		case *syntax.Yarn, *syntax.Remark, *syntax.Marker, *syntax.Total:
		default:
			return false
		}
	}
	return chains > syntax.MostRising
}

// unseen tells whether of what lies below nobody knows more than its number, if that.
func (h *hand) unseen() bool {
	return h.adrift || len(h.base) > 0 && h.stitch(h.base[0]).Row == OfStated
}

// goOn takes up the work where another piece left it.
func (k *worker) goOn(from *worker) {
	k.piece.From = from.piece
	own := k.h.limbs
	k.h = from.h.forked()
	k.h.limbs = own
	k.h.earlier = slices.Clone(from.h.earlier)
	for i := range k.h.earlier {
		k.h.earlier[i].Row = OfEarlier
	}
	k.h.shortIn = OfEarlier
	k.rows, k.last, k.number = maps.Clone(from.rows), slices.Clone(from.last), from.number
	k.h.done = maps.Clone(from.h.done)
}

// statedIn finds the count that an instruction states: the last one. By how many it
// changes is told beside it, `30 sts (+6)`, or alone.
func statedIn(clauses []syntax.Clause) (*syntax.Total, source.Span) {
	var found *syntax.Total
	var at source.Span
	for i, c := range clauses {
		if t, ok := c.Node.(*syntax.Total); ok && !onTheWay(clauses, i) && !ofSeam(clauses[:i], t) && !(len(t.Parts) == 1 && t.Parts[0].Noun.Kind == syntax.NounRow) && !(t.Change != 0 && found != nil) {
			if i > 0 && found != nil && clauses[i-1].Node == found && inAllBeside(found, t) {
				t, c.Span = &syntax.Total{Parts: append(slices.Clone(found.Parts), t.Parts...)}, at.Union(c.Span)
			}
			found, at = t, c.Span
		}
		if r, ok := c.Node.(*syntax.Repeat); ok && r.Limit == syntax.Unstated {
			if t, inside := statedIn(r.Body); t != nil {
				found, at = t, inside // no second star parts it from the repeat
			}
		}
	}
	if last := len(clauses) - 1; found == nil && last > 0 && reference(clauses) != nil {
		return asCount(clauses[last].Node), clauses[last].Span // `As Row 2. 21 sc.`
	}
	return found, at
}

// inAllBeside tells a count of all stitches from the count of some kind right before it: `9 shells. (43)`.
func inAllBeside(some, all *syntax.Total) bool {
	return some.Change == 0 && len(all.Parts) == 1 && all.Change == 0 && all.Parts[0].Noun.OfAll() &&
		!slices.ContainsFunc(some.Parts, func(p syntax.Part) bool { return p.Noun.OfAll() })
}

// ofSeam tells a count of the slip stitches with which worked rows are joined to something, as the
// clauses before it say: `rep Row 2 until there are 32 rows; join to the first with sl st (12 sl sts)`.
func ofSeam(before []syntax.Clause, t *syntax.Total) bool {
	if reference(before) == nil || len(t.Parts) != 1 || t.Parts[0].Noun.Kind != syntax.NounStitch {
		return false
	}
	return t.Parts[0].Noun.Stitch.Meaning.Is(stitch.Slip) && slices.ContainsFunc(before, func(c syntax.Clause) bool {
		switch c.Node.(type) {
		case *syntax.Join, *syntax.MakeUp:
			return true
		}
		return false
	})
}

// onTheWay tells a count, clause i of a row, after which the row goes on with a branch, or comes
// home from one: it counts what was worked last.
func onTheWay(clauses []syntax.Clause, i int) bool {
	branches := slices.ContainsFunc(clauses[i:], func(c syntax.Clause) bool {
		switch c.Node.(type) {
		case *syntax.Branch, *syntax.Return:
			return true
		}
		return false
	})
	return (branches || syntax.BackAlongChain(clauses[:i])) && worksOn(clauses[i+1:])
}

// job is an instruction being worked in one size.
type job struct {
	*worker
	units  []unit
	worked int // how many of them are worked
	before int // stitches of the row below
	out    outcome
	// earlier are the counts of the rows before the last, each against what it made.
	earlier []Compared
}

// instruction works one instruction: every row that its label names and its
// words refer to.
func (c crew) instruction(row *Row) {
	var jobs []*job
	for _, k := range c {
		row.laid[k.size].from = k.h.made()
		if j := k.begin(row); j != nil {
			jobs = append(jobs, j)
		}
	}
	for i, going := 0, jobs; len(going) > 0; i++ {
		going = workUnit(going, row, i)
	}
	for _, j := range jobs {
		j.finish(row)
	}
	for _, k := range c {
		row.laid[k.size].to = k.h.made()
	}
}

// begin makes ready to work an instruction, nil where its rows cannot be
// told.
func (k *worker) begin(row *Row) *job {
	if !row.Tree.HasSize(k.size) || countsNone(row.Stated, k.size) {
		row.Tallies[k.size] = skipped(row.Stated)
		return nil
	}
	if k.h.made() >= maxPiece {
		row.Tallies[k.size].Works = true // refused with the row that met the bound
		return nil
	}
	units, ok := k.units(row)
	row.Repeats[k.size] = rowsIn(units)
	if !ok {
		k.unknown(row)
		return nil
	}
	if row.Tree.Label.EveryOther {
		k.every = row
	}
	units = k.interleaved(units)
	if row.Tree.GoesAround() && !k.h.round && len(k.h.base) > 0 {
		k.unknown(row) // a border of rows has their ends for places, too
		return nil
	}
	k.faced = false
	if k.stepsUnread(row) {
		k.h.adrift = true
	}
	if laysAlone(row.Tree.Clauses, k.size) && k.h.unseen() || k.h.cut && row.Tree.Label.Kind == syntax.Unlabelled && goesOutAndBack(afterRemark(row.Tree.Clauses), k.size) {
		k.h.standOn(nil)
		k.h.adrift, k.h.laid, k.h.chains = false, false, 0
		k.h.regrown = k.h.regrown || k.h.twigged
	}
	if !row.Tree.CountsAlone() { // what comes after the line above it comes after a count
		k.h.goesOn, k.h.goesRound = k.followed(row)
		k.h.goesOn = k.h.goesOn && len(units) == 1
	}
	k.h.homeward = row.Tree.Label.Homeward || k.titledNext(row)
	return &job{worker: k, units: units, before: k.h.rowMade}
}

// stepsUnread tells a step whose number does not follow that of the step before it: what stands between in the list is not
// understood, and may work something.
func (k *worker) stepsUnread(row *Row) bool {
	label := row.Tree.Label
	if !label.Bare || label.Kind != syntax.Numbered {
		return false
	}
	for _, before := range slices.Backward(k.piece.Rows[:row.Index]) {
		if l := before.Tree.Label; l.Kind == syntax.Numbered {
			return l.Bare && label.First(k.size) > l.Numbers[len(l.Numbers)-1].To.At(k.size)+1
		}
	}
	return false
}

// lastRow is the last of some units that works, or the last of all: a line that fastens off
// may come after it.
func lastRow(units []unit) int {
	for i := len(units) - 1; i >= 0; i-- {
		if units[i].even || worksOn(units[i].tree.Clauses) || reference(units[i].tree.Clauses) != nil {
			return i
		}
	}
	return len(units) - 1
}

// countsNone tells a count that has a dash for a size, which skips the row: `- (46, 50) sts`.
func countsNone(stated *syntax.Total, size int) bool {
	return stated != nil && slices.ContainsFunc(stated.Parts, func(p syntax.Part) bool {
		return p.Number.PerSize() && p.Number.At(size) == syntax.None
	})
}

// rowsIn is how many rows some units are: of those of a piece, the lines between its rows are
// none.
func rowsIn(units []unit) int {
	numbered := 0
	for _, u := range units {
		if u.number > 0 {
			numbered++
		}
	}
	return cmp.Or(numbered, len(units))
}

// skipped is what a row comes to in a size that does not have it.
func skipped(stated *syntax.Total) Tally {
	t := Tally{Known: true}
	if stated != nil {
		for range stated.Parts {
			t.Compared = append(t.Compared, Compared{Result: Uncheckable})
		}
	}
	return t
}

// workUnit works the ith row that an instruction stands for, in every size
// that has so many, and gives the sizes that go on.
func workUnit(jobs []*job, row *Row, i int) (on []*job) {
	trials := make([]trial, len(jobs))
	for n, j := range jobs {
		var stated *syntax.Total
		if i == lastRow(j.units) {
			stated = row.Stated // the count holds for the last row, and for all if plain
		}
		trials[n] = j.trial(j.units[i], row, stated)
	}
	for n, o := range decided(trials) {
		j, u := jobs[n], jobs[n].units[i]
		row.Spent += maxSteps - *trials[n].hand.budget
		o = j.mended(trials[n], o)
		o.tally.Faults = j.withoutTold(o.tally.Faults, u.tree)
		if trials[n].stated == nil && o.hand.travelled() {
			o.tally.Works, o.tally.Made, o.tally.Parts = false, 0, nil
			o.hand.row = o.hand.row[:0:0] // its stitches are apart: no row counts them
			o.hand.goOnFrom()
		}
		j.holdEarlier(row.Stated, i, &o)
		j.take(o, trials[n].stated)
		j.note(row, u, o.tally.Works)
		j.worked++
		j.face(row, u, &o)
		if !u.between && (o.tally.Works || !j.out.tally.Works) {
			j.out = o
		}
		if i+1 < len(j.units) && (u.between || len(o.tally.Faults) == 0) {
			on = append(on, j)
		}
	}
	return on
}

// holdEarlier compares the ith row with its own count, where the last of them is not the only
// one to have one.
func (j *job) holdEarlier(stated *syntax.Total, i int, o *outcome) {
	if stated == nil || i >= len(stated.Before) || len(stated.Before) != len(j.units)-1 {
		return
	}
	p := stated.Parts[0]
	p.Number = stated.Before[i]
	j.earlier = append(j.earlier, o.hand.check(p, &o.tally, stated))
}

// withoutTold leaves out the faults that a row has in the earlier piece from which it is
// worked again: they are told there.
func (k *worker) withoutTold(faults []Fault, tree *syntax.Row) []Fault {
	if len(faults) == 0 {
		return faults
	}
	for _, p := range k.fabric.Pieces {
		for _, row := range p.Rows {
			if row.Tree != tree || p == k.piece {
				continue
			}
			was := row.Tallies[k.size].Faults
			return slices.DeleteFunc(slices.Clone(faults), func(f Fault) bool {
				return slices.ContainsFunc(was, func(w Fault) bool { return w.Kind == f.Kind && w.N == f.N && w.Name == f.Name })
			})
		}
	}
	return faults
}

// finish records what the instruction came to.
func (j *job) finish(row *Row) {
	o := j.out
	o.tally.Earlier = j.earlier
	for _, u := range j.units[j.worked:] {
		j.note(row, u, o.tally.Works) // rows that a fault kept from being worked can be referred to
	}
	if ref := reference(row.Tree.Clauses); ref != nil {
		if ref.Limit == syntax.Measured && row.Tree.Label.Each(j.size) == nil && j.before > 0 && o.tally.Made != j.before {
			j.unknown(row) // worked by measure, and every time makes another number
			return
		}
		o = said(o, row.start())
		j.h.cut = j.h.cut || fastensOff(row.Tree.Clauses)
	}
	j.record(row, o)
}

// followed tells whether the next line works on and has no label, or one that only
// numbers the steps of a row; and whether it goes round to the other side of the
// chain.
func (k *worker) followed(row *Row) (on, round bool) {
	rows := k.piece.Rows[row.Index+1:]
	for len(rows) > 0 && (rows[0].Tree.CountsAlone() || tellsOnly(rows[0].Tree)) {
		rows = rows[1:]
	}
	if len(rows) == 0 {
		return false, false
	}
	next := rows[0].Tree
	if k.inItems(row, next) {
		return true, false
	}
	steps := k.stepping(next) || next.Label.Kind == syntax.Unlabelled && byStep(k.piece.Tree)
	if next.Label.Limb != "" {
		return len(k.h.limbs.homes) > 0 || steps, false
	}
	if steps && lays(next.Clauses) && !worksOn(next.Clauses) {
		return true, false // more of the stem
	}
	if next.Label.Item > 0 && goesAcross(next.Clauses) {
		return true, true
	}
	first := firstStep(next.Clauses)
	switch {
	case reference(next.Clauses) != nil:
		return next.Label.Step || steps, false
	case first == nil, next.Label.Kind != syntax.Unlabelled && !steps && !k.secondHalf(row, next) && !(next.Label.Kind == syntax.Named && (alongChain(first) || k.goesOnAlong(row, first))):
		return false, false
	}
	switch n := first.(type) {
	case *syntax.Return, *syntax.Branch:
		return true, false
	case *syntax.Work, *syntax.Group, *syntax.Repeat, *syntax.Skip, *syntax.Bracket, *syntax.Unread, *syntax.Likewise:
		return true, false // what is not understood may go on with it
	case *syntax.Turn:
		return n.OtherSide || steps && k.h.growing, n.OtherSide
	case *syntax.Join:
		return nextStitch(n.Place), false
	case *syntax.Chain:
		if k.tellsLeft(row) && goesOutAndBack(afterRemark(next.Clauses), k.size) {
			return true, false // a branch grows where it stopped, and the rest comes after that
		}
		return steps && (goesOutAndBack(afterRemark(next.Clauses), k.size) || k.h.branchesIn(next.Clauses) || !worksStitches(next.Clauses)), false // more of the stem, and what grows there
	}
	return false, false
}

// tellsOnly tells a line without a label that says no more than what is left and how many there are: `One ch is left.
// Side One now has 23 sts.`
func tellsOnly(r *syntax.Row) bool {
	if r.Label.Kind != syntax.Unlabelled || len(r.Clauses) == 0 {
		return false
	}
	left, ok := r.Clauses[0].Node.(*syntax.Leave)
	return ok && left.Told && !slices.ContainsFunc(r.Clauses[1:], func(c syntax.Clause) bool {
		switch c.Node.(type) {
		case *syntax.Total, *syntax.Remark:
			return false
		}
		return true
	})
}

// goesAcross tells turns by which the work comes to the other side of its chain: `Do not turn; rotate the leaf and go on along
// the unused loops of the same ch.`
func goesAcross(clauses []syntax.Clause) bool {
	for _, c := range clauses {
		switch n := c.Node.(type) {
		case *syntax.Turn:
			if n.OtherSide {
				return true
			}
		case *syntax.Marker, *syntax.Remark:
		default:
			return false
		}
	}
	return false
}

// secondHalf tells the second half of a row, which has its number: `Row 1, second side:` behind a `Row 1, first side:`
// and what else was worked until then.
func (k *worker) secondHalf(row *Row, next *syntax.Row) bool {
	for _, r := range slices.Backward(k.piece.Rows[:row.Index+1]) {
		if r.Tree.Label.Kind == syntax.Numbered {
			return next.Label.GoesOn(r.Tree.Label)
		}
	}
	return false
}

// goesOnWith tells what is of one row with the line above it.
func (k *worker) goesOnWith(row *Row, next *syntax.Row) bool {
	return k.secondHalf(row, next) || row.Tallies[k.size].Works && k.inItems(row, next)
}

// inItems tells a step that is an item of the list in which a numbered row is told: `- sc in first 8 sc`
// below `Row 3: ch 1, turn, then:`
func (k *worker) inItems(row *Row, next *syntax.Row) bool {
	if !next.Listed() {
		return false
	}
	for _, r := range slices.Backward(k.piece.Rows[:row.Index+1]) {
		if !r.Tree.Listed() {
			return r.Tree.Label.Kind == syntax.Numbered && strings.HasSuffix(r.Tree.Text, ":")
		}
	}
	return false
}

// tellsLeft tells whether a row says at its end that chains are left to work into: `7 ch are left.`
func (k *worker) tellsLeft(row *Row) bool {
	if len(row.Tree.Clauses) == 0 {
		return false
	}
	switch last := row.Tree.Clauses[len(row.Tree.Clauses)-1].Node.(type) {
	case *syntax.Leave:
		return last.Told
	case *syntax.Total:
		return last.Left.At(k.size) > 0
	}
	return false
}

// goesOnAlong tells a step under a name that goes on where the line above it, which no number labels, leaves off:
// `Upper lobe: 1 sc, 1 hdc`, `Lower lobe: 2 dc`; along a chain it need not say where.
func (k *worker) goesOnAlong(above *Row, first syntax.Node) bool {
	switch l := above.Tree.Label; {
	case l.Part == syntax.FirstSide:
		return worksStitches([]syntax.Clause{{Node: first}})
	case l.Kind != syntax.Named && l.Kind != syntax.Unlabelled:
		return false
	}
	if r, repeats := first.(*syntax.Repeat); repeats {
		first = firstStep(r.Body)
	}
	w, ok := first.(*syntax.Work)
	switch {
	case !ok:
		return false
	case len(w.Places) == 1:
		return nextStitch(w.Places[0])
	}
	skip, begins := firstStep(above.Tree.Clauses).(*syntax.Skip)
	begins = begins && skip.Place.From == syntax.FromHook
	return len(w.Places) == 0 && (len(k.h.first) > 0 || begins)
}

// titledNext tells whether the next line is a step with a name of its own that goes on along a chain: a branch that this
// one works to its end is come home from.
func (k *worker) titledNext(row *Row) bool {
	if row.Index+1 >= len(k.piece.Rows) {
		return false
	}
	next := k.piece.Rows[row.Index+1].Tree
	return next.Label.Kind == syntax.Named && next.Label.Limb == "" && alongChain(firstStep(next.Clauses))
}

// alongChain tells a step that goes on along the chain below, `Tip: 3 sc in last ch`.
func alongChain(n syntax.Node) bool {
	places := placesOf(n)
	return len(places) > 0 && places[0].Noun.Kind == syntax.NounChain && places[0].From != syntax.FromHook
}

// worksStitches tells whether some clauses are read as work on stitches.
func worksStitches(clauses []syntax.Clause) bool {
	return slices.ContainsFunc(clauses, func(c syntax.Clause) bool {
		switch c.Node.(type) {
		case *syntax.Work, *syntax.Group, *syntax.Repeat, *syntax.Skip, *syntax.Bracket:
			return true
		}
		return false
	})
}

// branchesIn tells whether some clauses work a branch.
func (h *hand) branchesIn(clauses []syntax.Clause) bool {
	return slices.ContainsFunc(clauses, func(c syntax.Clause) bool {
		switch n := c.Node.(type) {
		case *syntax.Branch:
			return true
		case *syntax.Work:
			_, own := h.words.stitch(n.Stitch)
			return own != nil && own.branches
		}
		return false
	})
}

// firstStep is the first clause that is no remark, nil for none.
func firstStep(clauses []syntax.Clause) syntax.Node {
	for _, c := range clauses {
		if _, remark := c.Node.(*syntax.Remark); !remark {
			return c.Node
		}
	}
	return nil
}

// leavesFor tells a line that leaves for a branch first of all, or names the branch behind its chain.
func leavesFor(clauses []syntax.Clause) bool {
	first := firstStep(clauses)
	if _, chain := first.(*syntax.Chain); chain && len(clauses) > 1 {
		first = clauses[1].Node
	}
	_, branches := first.(*syntax.Branch)
	return branches
}

// byStep tells whether a piece's lines, with bare numbers before them, names or none, are its steps,
// not its rows: the first of them only lays the chain, or one leaves for a branch or
// comes home, or goes on along the chain where another began from the hook. Lines without numbers must all be so, and several leave; of those with names, one
// lays, and several go out and back or one has the name of a branch.
func byStep(tree *syntax.Piece) bool {
	first, leaves, laid, back := true, 0, 0, 0
	began := false // a numbered line along the chain, from the hook
	for _, r := range tree.Rows {
		if r.Label.Kind == syntax.Unlabelled {
			switch {
			case leavesFor(r.Clauses):
				leaves++
			case (first || laid > 0) && lays(r.Clauses) && !worksOn(r.Clauses):
				laid++
			}
			first = false
			continue
		}
		if r.Label.Kind == syntax.Named {
			switch {
			case r.Label.Limb != "":
				back += 2 // the name of a branch says as much as two
			case goesOutAndBack(r.Clauses, 0):
				back++
			case (first || laid > 0) && lays(r.Clauses) && !worksOn(r.Clauses):
				laid++
			}
			first = false
			continue
		}
		if !r.Label.Bare {
			leaves, back = -len(tree.Rows), -len(tree.Rows)
			continue
		}
		switch n := firstStep(r.Clauses).(type) {
		case *syntax.Branch:
			return true
		case *syntax.Return:
			if n.Told {
				return true
			}
		default:
			if began && alongChain(n) {
				return true
			}
			places := placesOf(n)
			began = began || len(places) > 0 && places[0].From == syntax.FromHook
		}
		if first && lays(r.Clauses) && !worksOn(r.Clauses) {
			return true
		}
		first = false
	}
	return leaves > 1 || laid > 0 && back > 0 && laid+back > 2
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

// trial makes ready to work a row on what lies below.
func (k *worker) trial(u unit, row *Row, stated *syntax.Total) trial {
	k.h.startRow(row.Index, u.tree.Label)
	if u.tree.Label.Part == syntax.FirstSide && row.Index > 0 && k.secondHalf(k.piece.Rows[row.Index-1], u.tree) {
		k.h.leaveFoot()
	}
	k.h.referred = u.tree != row.Tree
	k.h.heads = u.tree.Label.Bare || k.stepping(u.tree)
	k.h.tells = u.tree.CountsAlone()
	clauses := u.tree.Clauses
	name := u.tree.Label.Limb
	leaves := name != "" && (k.h.keeps || k.stepping(u.tree) && (k.h.base == nil || k.h.unworkedStem())) || k.growsHere(u.tree)
	if leaves {
		k.h.span = u.tree.Label.Span
		k.h.openBranch(&syntax.Branch{Name: name, Labelled: true})
	}
	if leaves || k.h.keeps && k.h.unworkedStem() && k.h.growStem() { // the chains of a step of their own are the stem's
		k.h.setApart()
		k.h.laidBy() // each reading adds stitches of its own to the stem that it left
	}
	if u.even {
		clauses = evenRow(clauses, k.h.mainFor(nil))
	}
	if row.Stated != nil && !row.Tree.Label.Step {
		k.h.landOn(clauses)
	}
	return trial{k.h, clauses, stated}
}

// stepping tells whether an instruction is a step of a row.
func (k *worker) stepping(r *syntax.Row) bool {
	return r.Label.Step || (r.Label.Bare || r.Label.Kind == syntax.Named) && byStep(k.piece.Tree)
}

// growsHere tells whether a step makes a chain of its own on a stem that earlier steps chain, and
// goes back along it: nothing else would be told in two steps.
func (k *worker) growsHere(step *syntax.Row) bool {
	return k.h.stemChains() > 0 && goesOutAndBack(step.Clauses, k.size) && k.stepping(step)
}

// afterRemark are some clauses without a remark before them: `Stem tip: ch 12, …`.
func afterRemark(clauses []syntax.Clause) []syntax.Clause {
	if len(clauses) > 0 {
		if _, remark := clauses[0].Node.(*syntax.Remark); remark {
			return clauses[1:]
		}
	}
	return clauses
}

// goesOutAndBack tells whether some clauses make a chain first and go back along it, whatever is
// counted in between.
func goesOutAndBack(clauses []syntax.Clause, size int) bool {
	clauses = slices.DeleteFunc(slices.Clone(clauses), func(c syntax.Clause) bool {
		_, total := c.Node.(*syntax.Total)
		return total
	})
	if len(clauses) < 2 {
		return false
	}
	chain, out := clauses[0].Node.(*syntax.Chain)
	first := placesOf(clauses[1].Node)
	return out && len(first) > 0 && first[0].From == syntax.FromHook && max(first[0].Nth, 1) <= chain.Number.At(size)
}

// mended works a row that did not come out on what the row below states, where
// that made something else. It takes that if it comes out whole.
func (k *worker) mended(t trial, o outcome) outcome {
	heal := k.heal
	k.heal = nil
	if heal == nil || o.fits() {
		return o
	}
	stated := t.hand.imagined(heal)
	if stated == nil {
		return o
	}
	t.hand.standOn(stated)
	if other := decided([]trial{t})[0]; other.fits() {
		return other
	}
	return o
}

// take goes on from an outcome. A row that could not be counted, or that made
// something other than it states, leaves the stated count to be tried.
func (k *worker) take(o outcome, stated *syntax.Total) {
	k.h = o.hand
	k.forgive()
	k.h.setApart()
	k.h.laidBy()
	if k.h.keeps = k.h.continued(); k.h.keeps {
		return
	}
	if !o.tally.Works && len(k.h.row) == 0 {
		k.h.laid = k.h.laid && !k.h.turned
		k.h.joinAhead()
		return
	}
	k.h.cut = o.hand.ended
	k.h.grew(o.tally.Known)
	var ground []int
	if !o.tally.Known && stated != nil {
		ground = k.h.imagined(stated)
	}
	if stated != nil && (!o.tally.Known || o.tally.Agrees() == Disagrees) {
		k.heal = stated
	}
	k.h.settleOn(ground, o.tally.Known)
}

// forgive takes back that a row of the piece came short, where what it left is gone on with.
func (k *worker) forgive() {
	if k.h.resumed == nil {
		return
	}
	t := &k.piece.Rows[*k.h.resumed].Tallies[k.size]
	t.Faults = slices.DeleteFunc(slices.Clone(t.Faults), func(f Fault) bool { return f.Kind == RowShort })
	k.h.resumed = nil
}

// laidBy puts what the instruction made with what was made before it. A piece may grow
// long: the room for it doubles.
func (h *hand) laidBy() {
	if len(h.earlier)+len(h.fresh) > cap(h.earlier) {
		h.earlier = slices.Grow(h.earlier, len(h.earlier)+len(h.fresh))
	}
	h.earlier, h.fresh = append(h.earlier, h.fresh...), nil
}

// leaveFoot makes the stitches of a quill or a stalk, with which a row began, no part of it: the next row is worked on the
// sides alone.
func (h *hand) leaveFoot() {
	h.earlier = slices.Clone(h.earlier) // others see them
	for _, i := range h.row {
		if i < len(h.earlier) {
			h.earlier[i].Apart = true
		}
	}
	h.row, h.rowMade, h.stepFrom = nil, 0, 0
}

// setApart marks what the instruction made that is no part of its row.
func (h *hand) setApart() {
	for i := range h.fresh {
		h.fresh[i].Apart = true
	}
	for _, i := range h.row {
		if i >= len(h.earlier) {
			h.fresh[i-len(h.earlier)].Apart = false
		}
	}
}

// unknown records a row that cannot be counted; its stated count is trusted.
func (k *worker) unknown(row *Row) {
	k.h.startRow(row.Index, row.Tree.Label)
	k.h.works = true
	k.side = syntax.NoSide // how often it turns is not known
	k.heal = nil
	k.h.span = row.start()
	k.h.lose()
	o := outcome{hand: k.h}
	faults := row.Tallies[k.size].Faults
	o.tally = k.h.tally(row.Stated)
	o.tally.Faults = append(o.tally.Faults, faults...)
	o.tally.Works = true
	k.record(row, o)
	k.take(o, row.Stated)
	for _, number := range row.Tree.Label.Each(k.size) {
		k.note(row, unit{tree: row.Tree, number: number}, false)
	}
}

// lost tells whether some step before a row could not be counted.
func (k *worker) lost(row *Row) bool {
	return slices.ContainsFunc(k.piece.Rows[:row.Index], func(r *Row) bool {
		t := &r.Tallies[k.size]
		return t.Works && !t.Known
	})
}

// record keeps what a row came to.
func (k *worker) record(row *Row, o outcome) {
	for i := range o.tally.Faults {
		if o.tally.Faults[i].Span.Start < 0 {
			o.tally.Faults[i].Span = lastWorking(row)
		}
	}
	if row.Tree.Has(syntax.RepeatUnanchored) {
		for i, c := range o.tally.Compared {
			if c.Result == Disagrees { // how far back it repeats is a guess
				o.tally.Compared[i].Result = Uncheckable
			}
		}
	}
	if row.Stated != nil && row.Stated.OfChains() && k.lost(row) {
		for i := range o.tally.Compared {
			o.tally.Compared[i].Result = Uncheckable // what the stem has is what all steps lay
		}
	}
	row.Tallies[k.size] = o.tally
	if k.headless && o.tally.Works {
		k.headless = false
		row.Tallies[k.size].Blame = firstWorking(row) // said once
	}
	if o.stated != nil && o.hand.said != (source.Span{}) {
		row.Stated, row.StatedAt = o.stated, o.hand.said
	}
	row.Continued = o.hand.keeps
	row.Joined, row.Turned, row.Round = o.hand.joined, o.hand.turned || o.hand.turnedFirst, o.hand.round
	for i, s := range o.hand.steps {
		if i >= len(row.Steps) {
			break
		}
		step := &row.Steps[i]
		if step.Used == nil {
			n := len(row.Tallies)
			room := make([]int, 4*n) // of all four at once: there is a step for each clause of a pattern
			step.Used, step.Made, step.Total, step.Left = room[:0:n], room[n:n:2*n], room[2*n:2*n:3*n], room[3*n:3*n]
		}
		step.Used = append(step.Used, s.used)
		step.Made = append(step.Made, s.made)
		step.Total = append(step.Total, s.total)
		step.Left = append(step.Left, s.left)
		step.Known = step.Known && s.known
		step.Ledger = told(step.Ledger, k.size, len(row.Tallies), s.ledger)
		step.Home = told(step.Home, k.size, len(row.Tallies), s.home)
		if k.size == 0 {
			step.From, step.To = s.from, s.to
		}
	}
}

// face follows which side of the work faces: what the first row says of it,
// turned at each turn. An instruction faces as its first row does.
func (k *worker) face(row *Row, u unit, o *outcome) {
	if !o.tally.Works {
		return
	}
	h := &o.hand
	if row.Index > 0 && k.turned && k.side != syntax.NoSide && k.goesOnWith(k.piece.Rows[row.Index-1], row.Tree) {
		k.side, k.turned = other(k.side), false // nobody turns within a row
	}
	if h.turnedFirst && k.side != syntax.NoSide && !k.turned {
		k.side = other(k.side)
	}
	if !u.between && !k.faced {
		if k.side == syntax.NoSide || joinsAnew(row.Tree.Clauses) && row.Tree.Label.Side != syntax.NoSide {
			k.side = row.Tree.Label.Side
		}
		if k.faced = true; k.size == 0 {
			row.Side = k.side
		} else if row.Side != k.side {
			row.Side = syntax.NoSide
		}
	}
	k.turned = h.turned || !h.round && !h.notTurned
	if k.side != syntax.NoSide && k.turned {
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
		if usesPlaces(row.Tree.Clauses[i]) {
			return row.Tree.Clauses[i].Span
		}
	}
	return row.start()
}

// firstWorking is the first clause of a row that works on what lies below, the first of all
// where none does.
func firstWorking(row *Row) source.Span {
	for i, c := range row.Tree.Clauses {
		if _, chain := c.Node.(*syntax.Chain); !chain && usesPlaces(row.Tree.Clauses[i]) {
			return c.Span
		}
	}
	return row.start()
}

// note remembers a worked row under its number.
func (k *worker) note(row *Row, u unit, works bool) {
	label := row.Tree.Label
	switch {
	case u.number > 0:
		k.number = u.number
	case label.Kind == syntax.Setup || label.Kind == syntax.Named || label.Kind == syntax.Unlabelled && !works:
		return
	default:
		k.number++
	}
	k.rows[k.number] = u
	k.last = append(k.last, u)
	k.h.rows++
	k.h.done[k.number] = k.h.base
	if len(k.h.outline) > 0 {
		k.h.done[k.number] = k.h.outline // an edging counts along the branches too
	}
}

// imagined makes the stitches that a row states, for the next row to be
// tried on. They are no part of what the row made.
func (h *hand) imagined(stated *syntax.Total) []int {
	if len(stated.Parts) == 1 && stated.Parts[0].Noun.Kind == syntax.NounSpace && !stated.Parts[0].Noun.Length.Written() {
		return nil // what lies between the buttonholes is not counted
	}
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
		if p.Noun.Kind == syntax.NounSpace {
			k = nil
		}
		manner := h.mannerOf(Manner{Kind: k})
		for range n {
			if h.made() >= maxPiece {
				return nil
			}
			s := Stitch{Manner: manner, Into: -1, Row: OfStated}
			if p.Noun.Kind == syntax.NounSpace {
				s.Chains = p.Noun.Length.Or(h.size, 1)
			}
			h.earlier = append(h.earlier, s)
			out = append(out, h.made()-1)
		}
	}
	return out
}

// settleOn makes what the row made the ground of the next; where it is not known,
// what it stated.
func (h *hand) settleOn(stated []int, known bool) {
	places := h.offBranches()
	h.outline = nil
	switch {
	case !known:
		places = stated
	case len(places) < len(h.row):
		h.outline = h.row
	}
	h.adrift = !known && stated == nil
	h.ring, h.laid, h.reversed = false, false, false
	h.standOn(places)
}
