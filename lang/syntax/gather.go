package syntax

import (
	"slices"

	"stitchproof/lang/stitch"
)

// What a clause says of its neighbours: chains between stitches, loops held
// back. Folding gives it to the stitches it is said of.

// spaced gathers the stitches that chains are worked between, all in one
// place: `3 dc with ch 1 between in next st`.
func (f *folder) spaced(c Clause, w *Work) {
	if len(w.Places) == 0 || !w.Between.All && w.Number.Or(0, 1) == 1 {
		f.out = append(f.out, c)
		return
	}
	own := c.Span
	plain := *w
	plain.Between, plain.Places = Spacing{}, nil
	from := len(f.out)
	for w.Between.All && from > f.inside() && unplacedWork(f.out[from-1]) {
		from--
		c.Span = c.Span.Union(f.out[from].Span)
	}
	list := append([]Clause{}, f.out[from:]...)
	f.out = f.out[:from]
	list = append(list, Clause{Span: own, Sep: c.Sep, Node: &plain})
	c.Node = &Group{Body: list, Places: w.Places, Between: w.Between.Chains}
	f.out = append(f.out, c)
}

// listFrom finds where a list begins that all goes in the place named at its
// end: `3 dc, ch 1, 3 dc in next sp`. Its stitches are numbered and of one
// kind, with chains between. It gives len(f.out) for none.
func (f *folder) listFrom(w *Work) int {
	none := len(f.out)
	if len(w.Places) != 1 || !w.Number.Written() || !oneSpace(w.Places[0]) {
		return none
	}
	from := none
	for i := none - 1; i > f.inside(); i -= 2 {
		_, chain := f.out[i].Node.(*Chain)
		before, work := f.out[i-1].Node.(*Work)
		if !chain || f.out[i].Sep != SepComma || !work || !unplacedWork(f.out[i-1]) || !before.Number.Written() || before.Stitch.Word != w.Stitch.Word {
			break
		}
		from = i - 1
	}
	return from
}

// mixedFrom finds where a list of other shape begins that all goes in the space
// named at its end: `4 sc, picot, 4 sc in next loop`, `2 dc and 1 tr in next sp`.
// Two numbers of one stitch side by side are no such list. It gives len(f.out)
// for none.
func (f *folder) mixedFrom(w *Work) int {
	none := len(f.out)
	if len(w.Places) != 1 || w.Places[0].Prep == Between || w.Places[0].Number.Or(0, 1) != 1 || !plainStitch(w.Stitch.Meaning) {
		return none
	}
	if p := w.Places[0]; p.Noun.Kind != NounSpace && p.Noun.Kind != NounCorner || p.To.Kind != ToNothing && p.To.Kind != ToTheEnd {
		return none
	}
	from, next, mixed := none, w.Stitch.Word, w.Number.Written()
	for i := none - 1; i >= f.inside(); i-- {
		if f.out[i].Sep != SepComma {
			break
		}
		if _, chain := f.out[i].Node.(*Chain); chain {
			next = ""
			continue // it belongs to the list only with a stitch before it
		}
		before, work := f.out[i].Node.(*Work)
		if !work || len(before.Places) > 0 || before.Times.Written() || before.Stitch.Word == next || !plainStitch(before.Stitch.Meaning) {
			break
		}
		from, next = i, before.Stitch.Word
		mixed = mixed || before.Stitch.Word != w.Stitch.Word
	}
	if !mixed {
		return none // `sc, ch 3, sc in next sp` may work the first where it stands
	}
	return from
}

// allFrom finds where a list begins of which all is said to go in the one place that c names behind it: `1 hdc, 3 dc,
// 1 hdc all in last ch`. It gives len(f.out) for none.
func (f *folder) allFrom(c Clause) int {
	from := len(f.out)
	if from == 0 || !slices.ContainsFunc(f.b.within(c.Span), func(t Token) bool { return t.Canon == "in" && t.Written == "all" }) {
		return from
	}
	for i := from - 1; i >= f.inside() && f.out[i].Sep == SepComma; i-- {
		if unplacedWork(f.out[i]) {
			from = i
		} else if _, chain := f.out[i].Node.(*Chain); !chain {
			break
		}
	}
	return from
}

// spreadOver reads a place behind the last of several stitches that is that of them all, one in each: `1 dc, 1 htr, 3 tr, 1
// htr, 1 dc in the next 7 ch`. Their numbers come to that of the places.
func (f *folder) spreadOver(w *Work) *Work {
	if len(w.Places) != 1 || w.Number.PerSize() || !oneInEach(w.Stitch.Meaning) {
		return w
	}
	p := w.Places[0]
	if p.Pick != PickNext || p.Each || p.From != FromHere || p.Of != nil || p.Noun.Kind > NounChain || p.Number.PerSize() {
		return w
	}
	all, listed, i := max(1, w.Number.At(0)), 0, len(f.out)-1
	for ; i >= f.inside() && f.out[i].Sep == SepComma && unplacedWork(f.out[i]); i-- {
		before := f.out[i].Node.(*Work)
		if before.Number.Written() != w.Number.Written() || before.Number.PerSize() || before.Times.Written() || !oneInEach(before.Stitch.Meaning) {
			break
		}
		all, listed = all+max(1, before.Number.At(0)), listed+1
	}
	if i > f.inside() && f.out[i].Sep == SepComma && all == p.Number.At(0)-1 && worksAlong(f.out[i-1:]) {
		all++ // the first goes in the chain next to the one missed
	}
	if listed < 2 || all != p.Number.At(0) {
		return w
	}
	last := *w
	last.Places = []Place{{Number: One(max(1, w.Number.At(0))), Noun: p.Noun}}
	last.Number = One(1)
	return &last
}

// oneInEach tells a stitch that takes one place and makes one of it: a rung of the ladder, or a slip stitch.
func oneInEach(m stitch.Meaning) bool { return m.Is(stitch.Plain, stitch.Slip) }

// plainStitch tells a stitch, or a picot, from what shapes or stands for several.
func plainStitch(m stitch.Meaning) bool { return m.Is(stitch.Plain, stitch.Picot) }

// oneSpace tells a single space or each of several, or what is worked into like
// one.
func oneSpace(p Place) bool {
	if p.Each && p.Noun.Kind != NounSpace && p.Noun.Kind != NounCorner || p.Number.Or(0, 1) != 1 || p.To.Kind != ToNothing {
		return false
	}
	return p.Noun.Kind == NounSpace || p.Noun.Kind == NounCorner || p.Noun.Kind == NounStitch || p.Center ||
		p.Noun.Kind == NounChain && p.Pick == PickLast
}

// listed gathers the clauses from index from on, and c, in the place of c, which may be
// that of c alone.
func (f *folder) listed(from int, c Clause, w *Work, alone bool) {
	last := *w
	last.Places = nil
	last.Called = StitchRef{}
	g := &Group{Body: append([]Clause{}, f.out[from:]...), Places: w.Places, Listed: alone, Called: w.Called}
	g.Body = append(g.Body, Clause{Span: c.Span, Sep: c.Sep, Node: &last})
	f.out = append(f.out[:from], Clause{Span: f.out[from].Span.Union(c.Span), Sep: c.Sep, Node: g})
}

// inside is the index of the first clause of the starred repeat that stands
// open, 0 for none: what a list gathers does not reach past its star.
func (f *folder) inside() int {
	if len(f.open) == 0 {
		return 0
	}
	return f.open[len(f.open)-1].at
}

// unplacedWork tells a clause of a list that goes on: `2 tr, 3 dtr,`.
func unplacedWork(c Clause) bool {
	w, ok := c.Node.(*Work)
	return ok && len(w.Places) == 0 && c.Sep == SepComma
}

// alternate repeats stitches by turns. One that stands before them already has had its turn.
func (f *folder) alternate(c Clause, n *Alternate) {
	turns, k, first := f.named(c, n.Turns), len(f.out), 0
	switch {
	case len(n.Body) > 0:
		turns = n.Body
	case len(turns) == 0:
		turns = f.begunTurns()
	case len(turns) == 1:
		for k > f.inside() && takesATurn(f.out[k-1]) {
			k--
			turns = slices.Insert(turns, 0, f.out[k])
		}
	default:
		if last := f.lastTurn(k); last != nil && n.Limit != Times {
			first = (1 + turnOf(turns, last)) % len(turns)
		}
	}
	if len(turns) < 2 || !worksAll(turns) {
		f.out = append(f.out, Clause{Span: c.Span, Sep: c.Sep, Node: &Likewise{}})
		return
	}
	if k < len(f.out) {
		c.Span = c.Span.Union(f.out[k].Span)
	}
	c.Node = &Repeat{Body: turns, Limit: n.Limit, Number: n.Number, Last: n.Last, StopAt: -1, ByTurns: n.Limit != Times, First: first}
	f.out = append(f.out[:k], c)
}

// oddAndEven takes stitches in odd places and others in even ones, which go by turns:
// `sc in odd sts, dc in even sts`.
func (f *folder) oddAndEven(c Clause, n *Work) bool {
	k := len(f.out)
	if len(n.Places) != 1 || !f.othersBefore(n.Places[0]) {
		return false
	}
	r := &Repeat{StopAt: -1, ByTurns: true}
	r.Limit, r.Last = limitOf(n.Places[0].To)
	if n.Places[0].Odd {
		r.First = 1
	}
	for _, turn := range [...]Clause{f.out[k-1], c} {
		w := *turn.Node.(*Work)
		w.Places = []Place{{Noun: w.Places[0].Noun}}
		r.Body = append(r.Body, Clause{Span: turn.Span, Sep: turn.Sep, Node: &w})
	}
	f.out[k-1] = Clause{Span: f.out[k-1].Span.Union(c.Span), Sep: c.Sep, Node: r}
	return true
}

// skipsOthers is what skipping every other place says: nothing new where the others
// were just worked, else how, which is not known.
func (f *folder) skipsOthers(p Place) Node {
	if f.othersBefore(p) {
		return &Remark{}
	}
	return &Likewise{}
}

// othersBefore tells whether the clause before works just those places that are not
// among every other one.
func (f *folder) othersBefore(p Place) bool {
	k := len(f.out)
	if k == f.inside() || f.out[k-1].Sep != SepComma || !otherEach(p) {
		return false
	}
	before, ok := f.out[k-1].Node.(*Work)
	return ok && len(before.Places) == 1 && otherEach(before.Places[0]) && before.Places[0].Odd != p.Odd
}

// otherEach tells every other place, be they the odd ones or the even ones.
func otherEach(p Place) bool { return p.Each && p.Pick == PickNth && p.Nth == 2 }

// takesATurn tells a stitch of a list that goes on, wherever it goes next.
func takesATurn(c Clause) bool {
	w, ok := c.Node.(*Work)
	return unplacedWork(c) || ok && c.Sep == SepComma && len(w.Places) == 1 && w.Places[0].Pick == PickNext && plainPlace(w.Places[0])
}

// plainPlace tells a single place that any stitch goes into.
func plainPlace(p Place) bool {
	return p.Number.Or(0, 1) == 1 && !p.Each && p.To.Kind == ToNothing && p.Prep == In && p.Loop == BothLoops
}

// worksAll tells whether every step is a stitch.
func worksAll(steps []Clause) bool {
	return !slices.ContainsFunc(steps, func(c Clause) bool { _, ok := c.Node.(*Work); return !ok })
}

// named are the stitches that a clause names, each where it stands in it.
func (f *folder) named(c Clause, turns []Work) []Clause {
	var out []Clause
	for _, t := range f.b.within(c.Span) {
		if t.Kind == Stitch && len(out) < len(turns) {
			out = append(out, Clause{Span: t.Span, Node: &turns[len(out)]})
		}
	}
	return out
}

// begunTurns are the stitches that were worked last, one of each, as they go on by turns.
func (f *folder) begunTurns() []Clause {
	var turns []Clause
	for k := len(f.out); ; k-- {
		w := f.lastTurn(k)
		if w == nil || turnOf(turns, w) >= 0 {
			return turns
		}
		turns = slices.Insert(turns, 0, Clause{Span: f.out[k-1].Span, Node: &Work{Stitch: w.Stitch}})
	}
}

// turnOf is the turn in which a stitch is worked, -1 for none.
func turnOf(turns []Clause, w *Work) int {
	return slices.IndexFunc(turns, func(t Clause) bool { return t.Node.(*Work).Stitch.Meaning == w.Stitch.Meaning })
}

// lastTurn is the clause before the kth where it works one stitch in one place, nil for any
// other.
func (f *folder) lastTurn(k int) *Work {
	if k == f.inside() {
		return nil
	}
	w, ok := f.out[k-1].Node.(*Work)
	if !ok || w.Number.Or(0, 1) != 1 || w.Times.Written() || w.Loop != BothLoops || len(w.Places) > 1 {
		return nil
	}
	if len(w.Places) == 1 && !plainPlace(w.Places[0]) {
		return nil
	}
	return w
}

// spacing gives what is said of the chains between stitches to the stitches
// before it: `a dc in each st, ch 1 between`.
func (f *folder) spacing(c Clause, n *Spacing) bool {
	k := len(f.out)
	if k == 0 || f.starred() || f.out[k-1].Sep > SepComma {
		return false
	}
	w, ok := f.out[k-1].Node.(*Work)
	if !ok {
		return false
	}
	with := *w
	with.Between = *n
	c.Span, c.Node = c.Span.Union(f.out[k-1].Span), &with
	f.out = f.out[:k-1]
	f.spaced(c, &with)
	return true
}

// heldBack closes stitches together: those that come next, where work does,
// else those before.
func (f *folder) heldBack(c Clause) bool {
	if w, ok := f.peek().(*Work); ok && c.Sep <= SepComma {
		f.at++
		next := f.in[f.at]
		f.out = append(f.out, held(Clause{Span: c.Span.Union(next.Span), Sep: next.Sep}, w))
		return true
	}
	k := len(f.out)
	if k == 0 || f.starred() || f.out[k-1].Sep > SepComma {
		return false
	}
	w, ok := f.out[k-1].Node.(*Work)
	if ok {
		f.out[k-1] = held(Clause{Span: f.out[k-1].Span.Union(c.Span), Sep: c.Sep}, w)
	}
	return ok
}

func held(c Clause, w *Work) Clause {
	with := *w
	with.HeldBack = true
	c.Node = &with
	return c
}

// turnsBack tells whether the chain that is skipped right behind some is the nearest to the hook, because the stitches
// that follow go along those: `7 ch, miss 1 ch, 1 dc in each of the next 6 ch`. They may be one too many or too few.
func (f *folder) turnsBack(skipped Place) bool {
	k := len(f.out)
	if k == 0 || skipped.Noun.Kind != NounChain || skipped.From != FromHere || skipped.Number.Or(0, 1) != 1 || skipped.Of != nil || skipped.Name != "" || f.at+1 == len(f.in) {
		return false
	}
	if f.saidHome() || f.ofBranch() {
		return alongChain(f.in[f.at+1], false) > 0
	}
	chain, ok := f.out[k-1].Node.(*Chain)
	if !ok || chain.Number.PerSize() || !chain.Number.Written() || alongChain(f.in[f.at+1], f.out[k-1].Sep == SepStop) == 0 {
		return false
	}
	along := 0
	for _, c := range f.in[f.at+1:] {
		n := alongChain(c, true)
		if n == 0 {
			break
		}
		if w := c.Node.(*Work); len(w.Places) > 0 && w.Number.Written() && along > 1 && along+w.Number.At(0) == n {
			along = 0 // the place is that of them all
		}
		if along += n; along == chain.Number.At(0)-1 {
			break // what follows is on what it grew from
		}
	}
	left := chain.Number.At(0) - 1 - along
	return along >= leastBack && len(f.open) == 0 && (left == 0 || left*left == 1 && f.out[k-1].Sep < SepStop)
}

// saidHome tells whether the way home is said to come next, behind a chain: `9 ch. Come home: miss 1 ch, …`.
func (f *folder) saidHome() bool {
	k := len(f.out) - 1
	if home, ok := f.out[k].Node.(*Return); !ok || home.To != "" {
		return false
	}
	for k--; k >= 0; k-- {
		switch f.out[k].Node.(type) {
		case *Remark, *Total:
		case *Chain:
			return true
		default:
			return false
		}
	}
	return false
}

// ofBranch tells whether the last clause lays the chain of a branch: `**Branch C.** 10 ch. Miss 1 ch, …`.
func (f *folder) ofBranch() bool {
	k := len(f.out) - 1
	if k < 1 || !isChain(f.out[k].Node) {
		return false
	}
	_, branch := f.out[k-1].Node.(*Branch)
	return branch
}

// leastBack is along how many chains stitches come back at least: fewer may lie under a mesh, `ch 2, sk 1 ch, dc in next ch`.
const leastBack = 3

// alongChain is in how many chains a clause works, 0 where it goes along none; bare is set where it need not name them.
func alongChain(c Clause, bare bool) int {
	w, ok := c.Node.(*Work)
	switch {
	case !ok || w.Number.PerSize() || w.Times.Written():
		return 0
	case len(w.Places) == 0:
		if bare {
			return w.Number.At(0)
		}
		return 0
	case len(w.Places) > 1:
		return 0
	}
	p := w.Places[0]
	if p.Of != nil || p.Name != "" || p.From != FromHere || p.Pick != PickNext && p.Pick != PickLast || p.Noun.Kind > NounChain || !bare && p.Noun.Kind != NounChain {
		return 0
	}
	return p.Number.Or(0, 1)
}

// workBack takes the stitches behind a chain that is skipped so from the 2nd chain from the hook on.
func (f *folder) workBack(c Clause) {
	f.at++
	next := f.in[f.at]
	back := *next.Node.(*Work)
	rest := Place{Number: back.Number, Noun: oneChain}
	if len(back.Places) > 0 {
		rest = back.Places[0]
	} else {
		back.Number = One(1)
	}
	back.Places = []Place{{Pick: PickNth, Nth: 2, Noun: oneChain, From: FromHook}}
	if n := rest.Number.Or(0, 1); n > 1 {
		rest.Number = One(n - 1)
		back.Places = append(back.Places, rest)
	}
	f.out = append(f.out, Clause{Span: c.Span.Union(next.Span), Sep: next.Sep, Node: &back})
}

// startsIn gives the chain that stitches begin in to those it is said of after them:
// `sc in each ch across, starting in 2nd ch from hook`.
func (f *folder) startsIn(c Clause, skipped Place) bool {
	k := len(f.out)
	if skipped.From != FromHook || k == 0 || f.starred() || f.out[k-1].Sep != SepComma {
		return false
	}
	w, ok := f.out[k-1].Node.(*Work)
	if !ok || len(w.Places) != 1 || !w.Places[0].Each || w.Places[0].From != FromHere {
		return false
	}
	with := *w
	first := Place{Pick: PickNth, Nth: skipped.Number.At(0) + 1, Noun: skipped.Noun, From: FromHook}
	with.Places = []Place{first, w.Places[0]}
	f.out[k-1] = Clause{Span: f.out[k-1].Span.Union(c.Span), Sep: c.Sep, Node: &with}
	return true
}
