package fabric

import (
	"slices"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// branch is a piece of work that left its parent along a new chain and has
// not come home.
type branch struct {
	name     string
	marked   bool // opened by the word, or by a label
	labelled bool
	span     source.Span
	chains   int // the chain's length, 0 while it is not made
	skipped  int
	row      int // stitches the row had when it left
	turned   int // stitches the row had when the branch was last turned, 0 for never
	parent   ground
	along    *ground    // the chain as it was left for other ground, nil while it is worked along
	short    bool       // it was turned before its chain was used up
	passes   int        // how often it was turned, or gone round: where that is odd, its tip is at hand
	inner    *past[run] // what branches that left it have made of the row
}

// run is a run of a row's stitches.
type run struct {
	from, to int
	tip      bool // they grow from the end of a stem of which nothing was worked, or of which they are the end
}

// ground is what lies below the hook: a row, or a chain.
type ground struct {
	base       []int // its places, in the order they are met
	at         int   // the next place
	sub        int   // chains of the space at `at` that are used already
	end        int   // no place from here on may be used (`to last 3 sts`)
	held       int   // the place worked into last, -1 for none
	growing    bool  // it is a stem of which more may be chained before any of it is worked
	loose      bool  // stitches were passed over on the way to a landmark: that is no fault
	full       bool  // the work went to its end by words that say so
	bySpaces   bool  // spaces were worked into or skipped by name
	overSpaces bool  // spaces were passed over without a word
	first      []int // the chain that is worked along, in the order made
	other      bool  // its other side is being worked
	beyond     []int // what is met past the end of that side: the row below, or the side worked first
	headway    headway
}

// toStart goes to the first of the places, with all of them before the hook.
func (g *ground) toStart() { g.at, g.sub, g.held, g.end = 0, 0, -1, len(g.base) }

// past works into a place, and goes on behind it.
func (g *ground) past(i int) { g.at, g.sub, g.held = i+1, 0, i }

// toTheEnd goes to the end of the places, as the words say.
func (g *ground) toTheEnd() { g.at, g.sub, g.full = g.end, 0, true }

// rotated are places as they are met from one of them on, where they go round.
func rotated(places []int, from int) []int {
	return append(slices.Clone(places[from:]), places[:from]...)
}

// innermost is the branch that is worked on, nil while there is none.
func (h *hand) innermost() *branch {
	if n := len(h.branches); n > 0 {
		return &h.branches[n-1]
	}
	return nil
}

// changing is the innermost branch, to be changed: copies of the hand keep it as it was. It is
// nil while there is none.
func (h *hand) changing() *branch {
	h.branches = slices.Clone(h.branches)
	return h.innermost()
}

// workedOut tells whether a branch, which is the innermost, is worked along its whole chain.
func (h *hand) workedOut(b *branch) bool { return b.chains > 0 && h.at >= h.end }

// openBranch leaves the work along a new chain.
func (h *hand) openBranch(n *syntax.Branch) {
	h.closeUnmarked()
	h.chainOf()
	name := n.Name
	if name != "" {
		if at, taken := h.used.get(name); taken && at != h.span && !n.Labelled {
			h.fault(Fault{Kind: BranchNameReused, Name: name, Related: at})
		} else {
			h.used = h.used.with(name, h.span)
		}
	}
	h.branched = true
	h.push(branch{name: name, marked: true, labelled: n.Labelled || h.heads && h.clause == 0, span: h.span})
	h.base, h.at, h.sub, h.end, h.held = nil, 0, 0, 0, -1
}

func (h *hand) push(b branch) {
	if len(h.branches) >= maxOpen {
		*h.budget = 0
		h.stopped()
		return
	}
	b.row, b.parent = len(h.row), h.ground
	h.beyond = nil
	h.branches = append(slices.Clip(h.branches), b)
	h.begun, h.works = true, true
}

// chainOf lays the chains on the hook as the chain of the innermost branch,
// where that has none yet: a branch may leave another before any of it is
// worked back.
func (h *hand) chainOf() {
	if h.chains == 0 {
		return
	}
	b := h.innermost()
	switch {
	case b != nil && b.chains == 0:
		h.setChain(0)
	case b != nil && h.growBranch(b), h.growStem():
	default:
		h.space()
	}
}

// growBranch lays the chains on the hook for an open branch that is chained on after each of those that it grows, before
// any of it is worked back. It gives false where they belong to something else.
func (h *hand) growBranch(b *branch) bool {
	if b.turned > 0 || b.skipped > 0 || h.at > 0 || len(h.base) != b.chains || len(h.first) != b.chains || h.base[0] != h.first[b.chains-1] {
		return false
	}
	h.first = append(slices.Clip(h.first), h.chainNodes(h.chains)...)
	h.changing().chains += h.chains
	h.standOn(reverse(h.first))
	h.chains, h.counts = 0, syntax.Counts{}
	return true
}

// growStem lays the chains on the hook for a stem that is drawn in one go with what branches
// from it: chained on after each of them, and worked on the way home. It gives false where
// they belong to something else.
func (h *hand) growStem() bool {
	begins := h.base == nil && len(h.row) == 0 && !h.ring
	if len(h.branches) > 0 || h.chains == 0 || !begins && !h.unworkedStem() {
		return false
	}
	chain := h.first
	if begins {
		chain = nil
	}
	chain = append(slices.Clip(chain), h.chainNodes(h.chains)...)
	h.ground = ground{base: reverse(chain), first: chain, held: -1, end: len(chain), growing: true}
	h.chains, h.counts = 0, syntax.Counts{}
	return true
}

// stemChains is how many chains a stem has that is still being chained, 0 for none.
func (h *hand) stemChains() int {
	switch {
	case len(h.branches) > 0:
		return 0
	case h.unworkedStem():
		return len(h.base) + h.chains
	case h.base == nil && len(h.row) == 0 && !h.ring:
		return h.chains
	}
	return 0
}

// unworkedStem tells whether the work stands on a stem that is still being chained.
func (h *hand) unworkedStem() bool { return h.growing && h.at == 0 }

// setChain gives the innermost branch the chains on the hook, of which skip
// are passed before the first stitch.
func (h *hand) setChain(skip int) {
	b := h.changing()
	b.chains, b.skipped = h.chains, min(skip, h.chains)
	h.first, h.other = h.chainNodes(h.chains), false
	h.standOn(reverse(h.first))
	h.at = min(skip, len(h.base))
	h.chains, h.counts = 0, syntax.Counts{}
}

// turnBranch works a branch back along itself: what it made last is the ground
// of what comes.
func (h *hand) turnBranch() {
	b := h.changing()
	if left := h.remaining(syntax.Noun{}); left > 0 && b.turned == 0 {
		b.short = true
		h.fault(Fault{Kind: BranchChainLeft, Name: b.name, N: left, Base: b.chains, Related: b.span})
	}
	made := h.row[max(b.row, b.turned):]
	b.turned = len(h.row)
	b.passes++
	b.leaveChain(h.ground)
	h.standOn(reverse(made))
	h.begun = false
}

// leaveChain notes the chain as it is left, the first time.
func (b *branch) leaveChain(g ground) {
	if b.along == nil {
		b.along = &g
	}
}

// aside works at a place that is named as another branch's, or as the stem's,
// while this one is open: the work is joined there. It gives false where the
// place is one to go on along.
func (h *hand) aside(k *stitch.Stitch, n int, p syntax.Place) bool {
	h.closeUnmarked()
	own, done := h.grownAs(p.Name)
	open := h.openAt(p.Name)
	switch {
	case open == len(h.branches):
		return false // its own ground
	case open >= 0 && (p.Noun.Kind == syntax.NounChain || p.Pick != syntax.PickNth && p.Pick != syntax.PickFirst && p.Pick != syntax.PickLast):
		h.comeHome(open)
		return false
	case open >= 0:
		own = h.ownUpTo(open)
	case !done && !h.branched:
		return false // it names no branch
	case !done:
		misnamed := func(f Fault) bool { return f.Kind == BranchNameReused }
		if slices.ContainsFunc(h.faults, misnamed) {
			return false // it may be the name that is meant
		}
		h.fault(Fault{Kind: PlaceAbsent, Branch: p.Name, N: 1})
		return p.Noun.Kind != syntax.NounChain
	}
	h.joinTo(k, n, p, own)
	return true
}

// openAt is how many branches are open with one of a name, which is the innermost
// of them: 0 for the stem, -1 where it is not open.
func (h *hand) openAt(name string) int {
	if name == "stem" {
		return 0
	}
	for _, called := range [...]func(b, name string) bool{func(b, name string) bool { return b == name }, syntax.CalledBy} {
		for i := len(h.branches); i > 0; i-- {
			if b := &h.branches[i-1]; b.marked && called(b.name, name) {
				return i
			}
		}
	}
	for i := len(h.branches); i > 0; i-- {
		if h.nameless(&h.branches[i-1]) && h.limbs.homes[name] == 0 && h.progressOf(i-1).left > 0 {
			return i // it has no other name
		}
	}
	if h.limbs.isStem(name) {
		return 0
	}
	return -1
}

// nameless tells a branch that the words around it may call by any noun: none names it, or one
// of the pattern's own stitches is made of it.
func (h *hand) nameless(b *branch) bool {
	return b.name == "" || h.words.own[spelled(b.name)] != nil
}

// comeHome goes on along a branch that others are still open on: they are over,
// and nobody said so.
func (h *hand) comeHome(open int) {
	for len(h.branches) > open {
		b := h.innermost()
		if b.marked && h.at >= h.end {
			if !b.labelled && h.owes(b) {
				h.fault(Fault{Kind: BranchUnreturned, Name: b.name, Span: b.span})
			}
			h.pop()
			continue
		}
		h.closeBranch()
	}
}

// joinTo works into one of the stitches of a branch. A slip stitch there joins
// the work, and is no stitch of the row; more of them go along the branch. No
// place of the ground is used up.
func (h *hand) joinTo(k *stitch.Stitch, n int, p syntax.Place, own []int) {
	if !h.chainsOn() {
		h.chainOf()
	}
	if len(own) == 0 {
		return // that nothing is worked along it is told where it came home
	}
	if p.Noun.Kind != syntax.NounChain { // of a chain that is worked, its stitches are meant
		own = slices.DeleteFunc(slices.Clone(own), func(i int) bool { return !h.accepts(h.stitch(i), p.Noun) })
	}
	m, nth := p.Number.Or(h.size, 1), max(p.Nth, 1)
	if p.Pick == syntax.PickLast {
		nth = len(own) - m + 1
	}
	if last := nth + m - 1; nth < 1 || last > len(own) {
		at, _ := h.used.get(p.Name)
		h.fault(Fault{
			Kind: PlaceAbsent, Name: "st " + itoa(max(last, 1)), Branch: p.Name, OnBranch: true,
			There: itoa(len(own)) + " sts", N: 1, Related: at,
		})
		return
	}
	if k.Class == stitch.Slip && m == 1 {
		return
	}
	for i := range m {
		for range n {
			h.add(Stitch{Into: own[nth-1+i], Over: 1}, Manner{Kind: k})
		}
	}
}

// chainsOn tells whether the chain of a branch goes on past where it is joined:
// `ch 4, sl st in 3rd st of branch A, ch 4`.
func (h *hand) chainsOn() bool {
	b := h.innermost()
	if b == nil || b.chains > 0 || len(h.coming) == 0 {
		return false
	}
	_, chains := h.coming[0].Node.(*syntax.Chain)
	return chains
}

// ownUpTo lists the stitches of an open branch, 0 for the stem, that others have
// left since, or are about to.
func (h *hand) ownUpTo(open int) []int {
	from, inner := 0, h.leaving
	if open > 0 {
		from, inner = h.branches[open-1].row, h.branches[open-1].inner
	}
	return h.without(inner.inOrder(), from, h.branches[open].row)
}

// passBranch leaves a branch, or all where no name is given, alone, as a row does
// with those below it without a word.
func (h *hand) passBranch(name string) {
	if _, made := h.grown.get(name); !made && (name != "" || !h.twigged) {
		h.fault(Fault{Kind: PlaceAbsent, Branch: name, OnBranch: name == "", N: 1})
	}
}

// fromHook works into the nth chain from the hook.
func (h *hand) fromHook(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	nth := max(p.Nth, 1)
	if p.Noun.Kind != syntax.NounChain && len(h.run) > 0 {
		h.pass(nth - 1 - len(h.run)) // `skip next st, sc in the 2nd from the hook`: of the row
		h.nextPlaces(k, own, n, 1, syntax.Noun{})
		return
	}
	if h.picot(k, n, nth) || !h.chainFromHook(k, nth) {
		return
	}
	m, e := p.Number.Or(h.size, 1), h.effectOf(k)
	if k.Class == stitch.Together && m == 1 && h.remaining(syntax.Noun{}) < e.uses {
		k = closed(k) // `ch 4, tr3tog in 4th ch from hook`
	}
	if n > 1 && m == 1 && e.uses == 1 {
		i := h.next(syntax.Noun{})
		if i < 0 {
			h.missing(syntax.Noun{Kind: syntax.NounChain}, 1)
		}
		h.placed(k, own, n, i, e)
	} else {
		h.nextPlaces(k, own, n, m, syntax.Noun{})
	}
	h.closeDone()
}

// chainFromHook stands on the nth chain from the hook, where the foundation or
// a branch begins. It tells whether there is such a chain.
func (h *hand) chainFromHook(k *stitch.Stitch, nth int) bool {
	b := h.innermost()
	switch {
	case h.chains == 0 && len(h.base) > 0:
		// `in 2nd ch from hook` of a chain that is already laid
		h.at = max(h.at, min(nth-1, len(h.base)))
		h.skippedFirst = h.skippedFirst && h.at == nth-1
	case h.base == nil && b == nil && len(h.row) == 0 && !h.ring:
		h.begin(k, nth)
	case b != nil && b.chains == 0:
		h.shortChain(nth)
		h.leaveTip(k, nth)
	case h.chains > 0:
		h.leaveUnmarked(k, nth)
	default:
		h.lose()
		return false
	}
	return true
}

// leaveUnmarked begins a branch that no word announces.
func (h *hand) leaveUnmarked(k *stitch.Stitch, nth int) {
	h.closeUnmarked()
	fresh := len(h.row) == 0
	if !fresh {
		h.fault(Fault{Kind: BranchUnmarked, N: h.chains})
	}
	h.push(branch{span: h.span})
	h.shortChain(nth)
	h.leaveTip(k, nth)
}

// leaveTip begins to work back along the chain of a branch. What is skipped at its
// tip stands for what it does at the beginning of a piece.
func (h *hand) leaveTip(k *stitch.Stitch, nth int) {
	said := h.counts
	h.setChain(nth - 1)
	h.counts = said
	h.skippedStands(k, nth)
}

// shortChain reports a chain that ends before the place named.
func (h *hand) shortChain(nth int) {
	if nth > h.chains && h.referred {
		h.lose() // the row that this one is like was worked on the foundation
		return
	}
	if nth > h.chains {
		h.fault(Fault{Kind: PlaceAbsent, Name: "ch " + itoa(nth) + " from hook", There: itoa(h.chains) + " ch", N: 1})
	}
}

// begin lays the foundation chain for the first row.
func (h *hand) begin(k *stitch.Stitch, nth int) {
	if h.adrift {
		h.adrift, h.known = false, true // a new beginning
	}
	if h.chains == 0 {
		h.lose() // the chain was never given a number
		return
	}
	h.shortChain(nth)
	if m := h.words.multiple; m.unit > 0 && !h.multipleSaid && (h.chains-m.plus)%m.unit != 0 {
		low := h.chains - ((h.chains-m.plus)%m.unit+m.unit)%m.unit
		h.fault(Fault{Kind: MultipleMismatch, N: h.chains, Unit: m.unit, Base: m.plus, Fits: []int{low, low + m.unit}})
	}
	counts := h.counts
	h.counts = syntax.Counts{}
	h.foundation()
	h.counts = counts
	h.at = min(nth-1, len(h.base))
	h.stemSkipped = h.at
	h.skippedStands(k, nth)
}

// skippedStands puts on the row what the chains skipped at its beginning
// stand for.
func (h *hand) skippedStands(k *stitch.Stitch, nth int) {
	skipped := nth - 1
	said := h.counts
	h.counts = syntax.Counts{}
	base := k.Plain()
	h.begun = true
	if !said.Said && (base.Class == stitch.Slip || base.Turning <= 1) {
		switch {
		case skipped >= 4:
			h.addSpace(skipped)
		case skipped == 3 && h.meshes():
			h.addSpace(1) // one lies under it, one is the height of the stitch
		}
		return
	}
	counts, extra := h.turningCounts(k, skipped, said)
	if !counts {
		if said.Said && extra > 0 {
			h.addSpace(extra) // `skipped 3 ch count as ch-3 sp`
		}
		return
	}
	into := -1
	if h.at > 0 && h.at <= len(h.base) {
		into = h.base[h.at-1]
	}
	h.add(Stitch{Into: into, Over: 1}, Manner{Kind: h.standsFor(k, said), Turning: true})
	if !said.Said {
		extra /= 2 // half of them lie under the space
	}
	if extra > 0 {
		h.addSpace(extra)
	}
}

// meshes tells whether the row goes on with a chain over each place that it skips.
func (h *hand) meshes() bool {
	found := false
	syntax.Walk(h.after, func(c syntax.Clause) {
		r, ok := c.Node.(*syntax.Repeat)
		if !ok || len(r.Body) < 3 {
			return
		}
		ch, chain := r.Body[0].Node.(*syntax.Chain)
		_, skip := r.Body[1].Node.(*syntax.Skip)
		found = found || chain && skip && ch.Number.At(h.size) == 1
	})
	return found
}

// picot recognises chains closed at once into one of them: no branch, and no
// stitch of the row.
func (h *hand) picot(k *stitch.Stitch, n, nth int) bool {
	if k.Plain().Turning > 1 || h.chains == 0 || nth > h.chains || nth < h.chains && !h.overSpace(nth) || nth > maxPicot || h.base == nil && len(h.row) == 0 && !h.ring {
		return false // a foundation, or no chain that is closed at once
	}
	if b := h.innermost(); b != nil && b.chains == 0 && b.marked {
		return false
	}
	h.chains, h.counts = h.chains-nth, syntax.Counts{}
	h.begun = true
	if n == 1 {
		h.knot() // several in one chain are a beginning told in another way
	}
	return true
}

// overSpace tells whether a picot of the last n chains on the hook stands on a
// chain space: `ch 7, sl st in 4th ch from hook, ch 3, sc in next sp`. A branch
// is worked back along what is left of its chain.
func (h *hand) overSpace(n int) bool {
	if n < 3 {
		return false
	}
	if h.within > 0 {
		return true // the pattern's own picot, within a chain
	}
	for i, c := range h.coming {
		switch at := c.Node.(type) {
		case *syntax.Chain, *syntax.Remark, *syntax.Made:
		case *syntax.Work:
			if len(at.Places) == 1 && at.Places[0].From == syntax.FromHook && i > 0 {
				continue // another picot
			}
			return i > 0 && len(at.Places) > 0 && at.Places[0].Noun.Kind != syntax.NounChain || len(at.Places) > 0 && at.Places[0].Noun.Kind == syntax.NounSpace
		case *syntax.Group, *syntax.Skip:
			return true
		default:
			return false
		}
	}
	return len(h.coming) > 0
}

// maxPicot is the most chains that a picot is made of; common practice.
const maxPicot = 8

// closeDone ends an unmarked branch whose chains are all worked.
func (h *hand) closeDone() {
	for b := h.innermost(); b != nil; b = h.innermost() {
		if h.owes(b) || !h.workedOut(b) || h.chains > 0 {
			return
		}
		h.pop()
		h.cameHome = len(h.row)
		if b.span == h.span && b.chains <= maxSpike {
			h.isSpike(b.span)
		}
	}
}

// maxSpike is the most chains of a spike; common practice.
const maxSpike = 5

// isSpike takes back that a branch is not called one, where a single step works
// it all: it is an ornament of the row, as a picot is.
func (h *hand) isSpike(span source.Span) {
	h.faults = slices.DeleteFunc(slices.Clone(h.faults), func(f Fault) bool { return f.Kind == BranchUnmarked && f.Span == span })
}

// closeUnmarked ends unmarked branches before a new one begins elsewhere.
func (h *hand) closeUnmarked() {
	for b := h.innermost(); b != nil; b = h.innermost() {
		if h.owes(b) || !h.workedOut(b) {
			return
		}
		h.pop()
	}
}

// pop goes back to where the innermost branch left.
func (h *hand) pop() branch {
	n := len(h.branches)
	b := h.branches[n-1]
	h.home = h.home.and(arrival{n, h.progressOf(n - 1)})
	h.branches = h.branches[: n-1 : n-1]
	made := run{min(b.row, len(h.row)), len(h.row), n == 1 && !b.marked && b.parent.growing && b.parent.at == 0}
	h.lastHome = h.ownOf(&b)
	if b.marked {
		h.grown = h.grown.with(b.name, h.lastHome)
	}
	h.twigged = true
	if parent := h.changing(); parent != nil {
		if !b.marked && b.parent.at == 0 { // chains before its first stitch make it longer
			for _, r := range b.inner.inOrder() {
				parent.inner = parent.inner.and(r)
			}
		} else {
			parent.inner = parent.inner.and(made)
		}
	} else if b.marked || b.row > 0 { // those of a row do too
		h.leaving = h.leaving.and(made)
	}
	h.ground = b.parent
	return b
}

// overBranches lets a row go over the branches of the row below, where that is
// how its words are read.
func (h *hand) overBranches() {
	if len(h.outline) == 0 {
		return
	}
	h.met |= ReadOverBranches
	if h.choose&ReadOverBranches != 0 {
		h.standOn(h.outline)
	}
}

// comesHome tells the slip stitch that fastens a branch where it left: `…, sl st in
// same st`. It belongs to the branch.
func (h *hand) comesHome(k *stitch.Stitch) bool {
	return k.Class == stitch.Slip && len(h.branches) == 0 && h.leaving != nil && h.leaving.last.to == len(h.row)
}

// offBranches lists the row's stitches that stand on none of its branches, which
// only hang from it; all of them where it is nothing but branches.
func (h *hand) offBranches() []int {
	if h.leaving == nil {
		return h.row
	}
	runs := h.leaving.inOrder()
	if i := h.tipOf(runs); i >= 0 {
		runs = slices.Delete(runs, i, i+1)
	}
	if own := h.without(runs, 0, len(h.row)); len(own) > 0 {
		return own
	}
	return h.row
}

// tipOf is the run that ends the stem itself, of those that branches made: the last before any
// stitch stands on the stem, where its chain went on to there. It gives -1 for none.
func (h *hand) tipOf(runs []run) int {
	from, tip := 0, -1
	for i, r := range runs {
		if r.from > from {
			break
		}
		if from = r.to; r.tip {
			tip = i
		}
	}
	if from == len(h.row) {
		return -1 // its chain may go on
	}
	return tip
}

// ownOf lists the stitches of a branch, without those of the branches that left
// it.
func (h *hand) ownOf(b *branch) []int { return h.without(b.inner.inOrder(), b.row, len(h.row)) }

// without lists the row's stitches between two, but for some runs of them.
func (h *hand) without(runs []run, from, to int) []int {
	var out []int
	from, to = min(from, len(h.row)), min(to, len(h.row))
	for _, r := range append(slices.Clip(runs), run{from: to, to: to}) {
		out = append(out, h.row[from:max(from, min(r.from, to))]...)
		from = max(from, min(r.to, to))
	}
	return out
}

// fromHookComes tells whether what comes first is worked along the chains on the hook.
func (h *hand) fromHookComes() bool {
	if len(h.coming) == 0 {
		return false
	}
	places := placesOf(h.coming[0].Node)
	return len(places) > 0 && places[0].From == syntax.FromHook
}

// returnTo comes home from a branch.
func (h *hand) returnTo(n *syntax.Return) {
	if n.To == "" && h.chains > 0 && h.fromHookComes() {
		return // `come back: sl st in 2nd ch from hook` says how it goes
	}
	depth := h.depthOf(n)
	if h.cameHome > 0 && h.cameHome == len(h.row) && h.chains == 0 {
		h.cameHome = 0
		if depth < 0 || n.To == "" && h.remaining(syntax.Noun{}) > 0 || n.To != "" && h.openAt(n.To) == len(h.branches) {
			return // the branch was at an end, and this is the way home from it
		}
	}
	if depth < 0 && (n.Told && h.openAt(n.To) == 0 || h.unworkedStem()) {
		return // where the work is already
	}
	if _, done := h.grownAs(n.To); n.Told && done && h.openAt(n.To) <= 0 && !saysStem(n) {
		return // as far as a branch that is done
	}
	if depth < 0 && n.To == "" && h.unread {
		h.lose() // from what began in words that are not understood
		return
	}
	if depth < 0 {
		h.fault(Fault{Kind: ReturnUnknown, Name: n.To})
		return
	}
	if h.chains > 0 {
		h.chainOf()
	}
	for before := len(h.faults); len(h.branches) > depth; {
		if len(h.faults) == before {
			h.closeBranch()
		} else {
			h.pop() // that the first is left too soon says all
		}
	}
}

// saysStem tells a way home that names the stem by the word for it: `back on the main stem`.
func saysStem(n *syntax.Return) bool {
	return n.ToStem() || strings.HasSuffix(n.To, " stem")
}

// forgotReturn comes home from a branch whose chains are used up while the row
// goes on and has no return of its own for it any more.
func (h *hand) forgotReturn() bool {
	b := h.innermost()
	if b == nil || !h.owes(b) || !h.workedOut(b) || h.chains > 0 || h.returnsLater() {
		return false
	}
	h.pop()
	h.fault(Fault{Kind: BranchUnreturned, Name: b.name, Span: b.span})
	return true
}

// returnsLater tells whether the rest of the row comes home from the innermost
// branch, and from no other in the same step.
func (h *hand) returnsLater() bool {
	var open []string
	for i := range h.branches {
		open = append(open, h.branches[i].name)
	}
	if h.goesOn && h.innermost().labelled {
		return true // or the next line does
	}
	depth := len(open)
	for _, c := range h.after {
		switch n := c.Node.(type) {
		case *syntax.Branch:
			open = append(open, n.Name)
		case *syntax.Return:
			from := len(open)
			if open = n.Leaves(open); len(open) < depth {
				return from == depth && len(open) == depth-1
			}
		}
	}
	return false
}

// depthOf is how many branches stay open after a return, -1 where the name is
// of none that is open.
func (h *hand) depthOf(n *syntax.Return) int {
	open := len(h.branches)
	switch {
	case open == 0:
		return -1
	case n.To == "":
		return open - 1
	case n.ToStem():
		return 0
	}
	if at := h.openAt(n.To); at < open {
		return at
	}
	return open - 1 // `return A` said of the innermost: it comes home
}

// closeBranch ends the innermost branch and checks that nothing of it is
// left.
func (h *hand) closeBranch() {
	left := h.remaining(syntax.Noun{})
	at := h.at
	b := h.pop()
	switch {
	case h.lostOn(&b):
	case len(h.row) == b.row || at == b.skipped && b.chains > 0 && left == b.chains-b.skipped:
		h.fault(Fault{Kind: BranchEmpty, Name: b.name, N: b.chains, Related: b.span})
	case left > 0 && b.turned == 0:
		h.fault(Fault{Kind: BranchChainLeft, Name: b.name, N: left, Base: b.chains, Related: b.span})
	case b.passes%2 == 1:
		h.fault(Fault{Kind: BranchAtTip, Name: b.name, N: b.passes + 1, Related: b.span})
	}
}

// lostOn tells whether the row could not be counted any more from somewhere along
// a branch: how far that is worked is not known then.
func (h *hand) lostOn(b *branch) bool { return !h.known && h.blame.Start >= b.span.Start }

// closeBranches ends the branches that a row leaves open.
func (h *hand) closeBranches() {
	for b := h.innermost(); b != nil; b = h.innermost() {
		if h.lostOn(b) {
			h.pop()
			continue
		}
		if h.owes(b) {
			h.fault(Fault{Kind: BranchUnreturned, Name: b.name, Span: b.span, N: h.remaining(syntax.Noun{})})
		} else if left := h.remaining(syntax.Noun{}); left > 0 && (b.row > 0 || b.marked) && h.known {
			h.fault(Fault{Kind: BranchChainLeft, Name: b.name, N: left, Base: b.chains, Span: b.span})
		}
		h.pop()
	}
}

// progress is how far a branch, or the stem, is worked in one size.
type progress struct {
	name                          string
	chains, skipped, worked, left int
}

// arrival is a branch that came home: how many were open with it, and how far
// it was worked.
type arrival struct {
	open int
	progress
}

// ledger is the state of the stem and of every open branch, the stem first.
func (h *hand) ledger() []progress {
	if len(h.branches) == 0 {
		return nil
	}
	stem := h.branches[0].parent
	out := []progress{{name: "stem"}}
	if !h.edge { // row ends are not counted
		out[0] = stem.progress("stem", len(stem.base), h.stemSkipped)
	}
	for i := range h.branches {
		out = append(out, h.progressOf(i))
	}
	return out
}

// progressOf is the state of an open branch: of its chain, whatever ground it
// is worked on now.
func (h *hand) progressOf(i int) progress {
	b := &h.branches[i]
	last := i == len(h.branches)-1
	switch {
	case b.along != nil:
		return b.along.progress(b.name, b.chains, b.skipped)
	case !last:
		return h.branches[i+1].parent.progress(b.name, b.chains, b.skipped)
	case b.chains == 0:
		return progress{name: b.name, chains: h.chains, left: h.chains}
	}
	return h.ground.progress(b.name, b.chains, b.skipped)
}

// progress is how far the places of the ground are worked.
func (g *ground) progress(name string, chains, skipped int) progress {
	return progress{name, chains, skipped, max(0, g.at-skipped), max(0, len(g.base)-g.at)}
}

// arrived gives the branches that came home since so many were open, the
// innermost first. One that was opened since is none of them.
func (h *hand) arrived(open int) []progress {
	var out []progress
	for _, a := range h.home.inOrder() {
		if a.open == open {
			out = append(out, a.progress)
			open--
		}
	}
	return out
}

// told writes the states of one size into those of all.
func told(all []BranchState, size, sizes int, now []progress) []BranchState {
	for i, p := range now {
		if i == len(all) {
			all = append(all, newBranchState(p.name, sizes))
		}
		if s := &all[i]; s.Name == p.name {
			s.Chains[size], s.Skipped[size], s.Worked[size], s.Left[size] = p.chains, p.skipped, p.worked, p.left
		}
	}
	return all
}

// otherSide turns to the unused loops of the foundation chain, or of the
// chain that this row was worked along.
func (h *hand) otherSide() {
	if h.other || len(h.first) == 0 {
		return
	}
	h.other, h.sideFrom = true, len(h.row)
	used := map[int]int{}
	for i := range h.made() {
		if s := h.stitch(i); !s.Turning {
			used[s.Into]++
		}
	}
	var worked []int
	for _, chain := range h.first {
		if used[chain] > 0 {
			worked = append(worked, chain)
		}
	}
	h.tipFull = len(worked) > 0 && used[worked[len(worked)-1]] > 1
	if len(h.base) > 0 && !slices.Contains(h.first, h.base[0]) {
		h.beyond = h.base // the row below, which comes after
	}
	if len(h.base) > 0 && len(worked) > 0 {
		h.met |= ReadTipShared
		if shared := used[worked[0]] > 1; shared != (h.choose&ReadTipShared != 0) {
			worked = worked[1:] // several stitches turn round the tip: both sides share it
		}
	}
	if b := h.changing(); b != nil {
		b.leaveChain(h.ground)
		b.passes++
		h.beyond = h.ownOf(b) // round the tip, and down the side worked first
	} else {
		h.stemSkipped = 0
	}
	h.standOn(worked)
}

// bothSidesWorked tells whether most chains of the one that is worked along have stitches on both sides.
func (h *hand) bothSidesWorked() bool {
	used, twice := map[int]int{}, 0
	for i := range h.made() {
		used[h.stitch(i).Into]++
	}
	for _, chain := range h.first {
		if used[chain] > 1 {
			twice++
		}
	}
	return 2*twice > len(h.first)
}

// comesRound goes on where the other side of a chain is worked to its end: into
// the row below, where a round began with it, or round a branch's tip.
func (h *hand) comesRound() bool {
	if h.beyond == nil || h.at < h.end {
		return false
	}
	h.standOn(h.beyond)
	h.beyond = nil
	if b := h.changing(); b != nil {
		b.passes++
	}
	return true
}
