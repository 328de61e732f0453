package fabric

import (
	"cmp"
	"slices"
	"strconv"

	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

func itoa(n int) string { return strconv.Itoa(n) }

// do works one clause.
func (h *hand) do(c syntax.Clause) {
	if h.within == 0 { // what a stitch of the pattern's own is made of is told where it is worked
		h.span = c.Span
	}
	*h.budget--
	h.closeDone()
	h.node(c.Node)
}

// endsHere tells whether neither the way home comes, nor more of the row, in this line or the next.
func (h *hand) endsHere() bool {
	return !h.goesOn && len(h.branches) == 0 && !slices.ContainsFunc(h.after, readAsWork)
}

func (h *hand) node(node syntax.Node) {
	switch n := node.(type) {
	case *syntax.Work:
		h.work(n)
	case *syntax.Chain:
		h.chain(n)
	case *syntax.Skip:
		h.skip(n.Place)
	case *syntax.Leave:
		if !n.Told || h.endsHere() {
			h.leave(n.Place)
		}
	case *syntax.Marker:
		if !n.All {
			h.mark(n)
		}
	case *syntax.Shaping:
		h.shape(n)
	case *syntax.Along:
		h.works, h.edge, h.along, h.full = true, true, true, true
	case *syntax.Made:
		if n.Defines {
			return
		}
		h.tell(n.Stitch.Word, 1)
		if n.Stitch.Word == syntax.Corner {
			h.corner = h.lastGroup
		}
	case *syntax.Group:
		h.group(n)
	case *syntax.Bracket:
		h.bracket(n)
	case *syntax.Repeat:
		h.repeat(n, nil)
	case *syntax.Join:
		h.join(n)
	case *syntax.Turn:
		h.turn(n)
	case *syntax.Yarn:
		h.changeYarn(n)
	case *syntax.MagicRing:
		h.startRing()
	case *syntax.LoopNote:
		h.inLoops(n)
	case *syntax.GoBack:
		h.onRow(n.Row.At(h.size))
	case *syntax.Branch:
		if !n.Behind { // else it was opened with its chain
			h.openBranch(n)
		}
	case *syntax.Return:
		h.returnTo(n)
	case *syntax.Total:
		if n.Reached && h.rowMade != n.Parts[0].Number.At(h.size) {
			h.works = true
			h.lose() // after so many rounds as that takes
		}
		if n.Left.At(h.size) > 0 && h.endsHere() {
			h.leave(syntax.Place{Pick: syntax.PickRemaining, Number: n.Left, Noun: syntax.Noun{Kind: syntax.NounChain}})
		}
	case *syntax.RepeatBranch:
		h.fault(Fault{Kind: PlaceAbsent, Branch: n.Name, N: 1})
	case *syntax.PassBranch:
		h.passBranch(n.Name)
	case *syntax.NoJoin:
		h.round, h.unjoined = true, true
	case *syntax.Finish:
		if n.Yarn != "" && h.yarn != "" && n.Yarn != h.yarn {
			return // the work goes on in its own
		}
		h.ended, h.cut = true, true
	case *syntax.Motion:
		if !h.closing {
			h.lose() // a stitch told by its motions
		}
	case *syntax.Likewise:
		if h.ended {
			return // `fasten off, make 3 more squares in same manner`
		}
		h.works = h.works || !h.plainLine
		h.lose()
	case *syntax.Unread:
		h.works = h.works || !h.plainLine // a row is there, whatever it says
		h.lose()
	}
}

// list works clauses one after the other.
func (h *hand) list(clauses []syntax.Clause) {
	for i, c := range clauses {
		if h.stopped() {
			return
		}
		h.takeUp(clauses[i+1:])
		h.coming = clauses[i+1:]
		h.do(c)
		h.closeDone()
	}
}

// bracket works a bracketed run of steps. Where nothing at all is said of it
// and it is all there is, it may be meant to go on to the end of the row.
func (h *hand) bracket(n *syntax.Bracket) {
	if slices.ContainsFunc(n.Body, worksRows) {
		h.lose() // `{repeat step 4, 4 more times}`: it is a part of the row
		return
	}
	if h.works || h.nested || worksOn(h.coming) || h.fixed {
		h.list(n.Body)
		return
	}
	h.met |= ReadRunsOn
	if h.choose&ReadRunsOn == 0 {
		h.list(n.Body)
		return
	}
	h.repeat(&syntax.Repeat{Body: n.Body, StopAt: -1}, tailOf(nil))
}

// takeUp takes up the yarn that is named after the clause worked in it.
func (h *hand) takeUp(next []syntax.Clause) {
	if len(next) == 0 {
		return
	}
	if yarn, ok := next[0].Node.(*syntax.Yarn); ok && yarn.Before {
		h.yarn = yarn.Yarn
	}
}

func (h *hand) chain(n *syntax.Chain) {
	if len(h.coming) > 0 {
		if b, named := h.coming[0].Node.(*syntax.Branch); named && b.Behind {
			h.openBranch(b)
		}
	}
	h.arriveBy(n)
	if !n.Number.Written() && n.Multiple.Written() {
		h.layMultiple(n)
		return
	}
	if !n.Number.Written() || n.Unsaid && h.base == nil && !h.ring && h.chains == 0 && len(h.row) == 0 {
		h.lose() // a length to reach
		return
	}
	if n.Piece != "" {
		h.joinPieces(n.Number.At(h.size))
		return
	}
	if unit := n.Multiple.At(h.size); unit > 0 {
		h.multipleSaid = true
		made, plus := n.Number.At(h.size), n.Plus.At(h.size)
		if over := (made - plus) % unit; over != 0 || made < plus {
			low := made - (over+unit)%unit
			h.fault(Fault{Kind: MultipleMismatch, N: made, Unit: unit, Base: plus, Fits: []int{low, low + unit}})
		}
	}
	if h.supposed > 0 && h.supposed == h.chains && h.base == nil && !h.begun {
		h.chains = 0 // the number itself comes after an example of it
	}
	h.supposed = 0
	if n.Sample {
		h.supposed = n.Number.At(h.size)
	}
	if h.counts.Said && h.chains > 0 && !h.begun && h.base != nil {
		h.settle(h.main) // what is said of the chain before this one is not said of both
	}
	if v := n.Number.At(h.size); v > 0 {
		h.layBrought()
		h.chains += v
		h.inner = h.nested
		if n.Counts.Said {
			h.counts = n.Counts
		} else if h.chains == 2 && h.beginsMesh() {
			h.counts = syntax.Counts{Said: true, As: []syntax.Part{{Noun: syntax.Noun{Kind: syntax.NounSpace, Length: syntax.One(1)}}}}
		}
	}
}

// layBrought lays the foundation that a line of its own made, where the row begins with
// chains of its own and goes on in the next chain: `Row 1: Ch 1, sc in each ch across`.
// Those chains turn, and none of them is worked into.
func (h *hand) layBrought() {
	if h.plainLine || h.base != nil || h.ring || h.brought <= syntax.MostRising || h.chains != h.brought || len(h.branches) > 0 {
		return
	}
	for _, c := range h.after {
		places := placesOf(c.Node)
		if len(places) == 0 {
			if usesPlaces(c) {
				return
			}
			continue
		}
		if p := places[0]; p.From == syntax.FromHere && (p.Pick == syntax.PickNext || p.Pick == syntax.PickFirst) && p.Noun.Kind <= syntax.NounChain && p.Noun.Kind != syntax.NounStitch {
			h.foundation()
			h.laid, h.reversed = true, true
		}
		return
	}
}

// beginsMesh tells whether the chains that a row of low stitches begins with stand over
// its first stitch, as all others have a chain over them: `ch 2, *sc in next ch-1 sp, ch
// 1; rep from *`.
func (h *hand) beginsMesh() bool {
	if h.begun || h.nested || h.round || len(h.base) < 2 || h.stitch(h.base[0]).IsSpace() || len(h.coming) == 0 {
		return false
	}
	r, ok := h.coming[0].Node.(*syntax.Repeat)
	if !ok || len(r.Body) < 2 || !isChain(r.Body[1].Node) {
		return false
	}
	k, places := h.firstStitch(r.Body), placesOf(r.Body[0].Node)
	return k != nil && k.Class == stitch.Plain && k.Turning <= 1 && len(places) == 1 && places[0].Noun.Kind == syntax.NounSpace
}

// arriveBy begins the row where slip stitches have led, with the chain that
// rises there. It gives false where none has led anywhere.
func (h *hand) arriveBy(n *syntax.Chain) bool {
	if h.nested || h.fixed || len(h.row) == 0 || len(h.branches) > 0 || !h.onlySlips() || h.chains > 0 || !h.round && !h.risesBy(n.Number.At(h.size)) {
		return false
	}
	h.arrive()
	return true
}

// risesInto tells whether a beginning chain is the first of the stitches that are
// closed together with it, as the row's other clusters have one more each: `ch 3,
// dc2tog in same st, *ch 2, dc3tog in next st; rep from *`.
func (h *hand) risesInto(k *stitch.Stitch, places []syntax.Place) bool {
	if h.chains == 0 || h.begun || h.counts.Said || k.Class != stitch.Together || k.Plain().Turning < 2 || len(places) != 1 || places[0].Pick != syntax.PickSame {
		return false
	}
	found := false
	syntax.Walk(h.after, func(c syntax.Clause) {
		if w, ok := c.Node.(*syntax.Work); ok {
			other, _ := h.words.stitch(w.Stitch)
			found = found || other != nil && other.Class == stitch.Together && other.Uses == k.Uses+1
		}
	})
	return found
}

// arriveWith begins the row, where slip stitches have led, with one of the
// pattern's own stitches that rises there: `beg shell: ch 3, 4 dc in same sp`.
func (h *hand) arriveWith(own *ownStitch, places []syntax.Place) bool {
	if own == nil || len(places) > 1 || len(places) == 1 && places[0].Pick != syntax.PickSame {
		return false
	}
	if rise := riseOf(own.body); rise == nil || own.spans == 0 || !h.arriveBy(rise) {
		return false
	}
	h.worked(func() { h.own(own, h.held) })
	return true
}

// shape makes the row so many stitches more or fewer, wherever they fall.
func (h *hand) shape(n *syntax.Shaping) {
	count := n.Number.At(h.size)
	h.lay()
	switch {
	case !h.works && len(h.base) > 0:
		h.shapedRow(n)
	case !h.works || len(h.row) == 0:
		h.lose()
	case n.Less:
		for ; count > 0 && len(h.row) > 0; h.row = h.row[:len(h.row)-1] {
			if !h.stitch(h.row[len(h.row)-1]).IsSpace() {
				count--
				h.rowMade--
			}
		}
	default:
		h.make(h.main, "", count, -1, 0)
	}
}

// shapedRow works a row of which nothing is said but how many stitches it
// gains or loses.
func (h *hand) shapedRow(n *syntax.Shaping) {
	h.works = true
	shaped := stitch.ByID("inc")
	if n.Less {
		shaped = stitch.ByID("dec")
	}
	h.settle(h.main)
	h.nextPlaces(shaped, nil, 1, n.Number.At(h.size), syntax.Noun{})
	if h.remaining(syntax.Noun{}) > 0 {
		h.each(h.main, nil, 1, syntax.Place{Each: true})
	}
}

// effect is what one working of a stitch does: how many places it uses, and
// how many stitches of what kind it makes.
type effect struct {
	kind        *stitch.Stitch
	uses, makes int
}

// effectOf tells what a stitch does; inc and dec take the row's own stitch
// where they name none.
func (h *hand) effectOf(k *stitch.Stitch) effect {
	of := cmp.Or(k.Base, h.main)
	switch k.Class {
	case stitch.Increase:
		return effect{of, 1, max(k.Makes, 2)}
	case stitch.Decrease:
		together := stitch.ByID(of.ID + itoa(max(k.Uses, 2)) + "tog")
		if together == nil {
			together = k
		}
		return effect{together, max(k.Uses, 2), 1}
	case stitch.Picot:
		return effect{k, 0, 0}
	case stitch.Foundation:
		return effect{k, 0, 1} // it makes its own chain to stand on
	}
	return effect{k, max(k.Uses, 1), max(k.Makes, 1)}
}

// usesOf is the effect of a stitch that may be the pattern's own.
func (h *hand) usesOf(k *stitch.Stitch, own *ownStitch) effect {
	e := h.effectOf(k)
	switch {
	case own == nil:
	case own.spread:
		e.uses = 0
	case own.uses.Written():
		e.uses = own.uses.At(h.size)
	case own.body != nil:
		e.uses = own.spans
	}
	return e
}

func (h *hand) work(w *syntax.Work) {
	ref := w.Stitch
	if !ref.Written() {
		ref = h.lastStitch
	}
	h.lastStitch, h.closing = ref, false
	if legs := fromGround(w) && h.isLegs(w.Counts); legs {
		h.standAsLeg(w.Places[0])
		defer h.countAs(len(h.row), h.standsFor(h.main, w.Counts))
	} else if w.Counts.Said && h.chains > 0 {
		h.counts = w.Counts
	}
	k, own := h.words.stitch(ref)
	if k == nil && ref.Word == syntax.Corner && len(h.corner) > 0 {
		h.group(&syntax.Group{Body: h.corner, Places: h.cornersOr(w.Places)})
		return
	}
	if k == nil || k.Class == stitch.Tunisian {
		h.works = true
		h.lose()
		return
	}
	h.works = true
	if h.risesInto(k, w.Places) {
		h.beginAfterChains()
	}
	if h.arriveWith(own, w.Places) {
		return
	}
	if w.Loop != syntax.BothLoops {
		saved := h.loop
		h.loop = w.Loop
		defer func() { h.loop = saved }()
	}
	if w.Yarn != "" {
		h.yarn = w.Yarn
	}
	if w.Picot {
		h.chains, h.counts = max(0, h.chains-picotChains(w, h.chains)), syntax.Counts{}
		h.begun = true
		h.knot()
		return
	}
	if h.shapedAmong(w, k) {
		h.settle(k)
		return
	}
	h.closing = k.Class == stitch.Texture || k.Class == stitch.Together // how it is drawn up may follow
	if w.HeldBack {
		h.closing = true
		defer h.closeTogether(len(h.row))
	}
	h.apart(w.Between.Chains, func() { h.workTimes(w, k, own) })
}

// fromGround tells a stitch that is worked into the row below, not into the chain that hangs
// on the hook.
func fromGround(w *syntax.Work) bool { return len(w.Places) > 0 && w.Places[0].From == syntax.FromHere }

// isLegs tells whether chains and the stitch after them are said to be several stitches
// together: `2 ch, 1 tr in next tr (counts as tr2tog)`.
func (h *hand) isLegs(said syntax.Counts) bool {
	k := h.standsFor(h.main, said)
	return len(said.As) == 1 && k.Class == stitch.Together
}

// legsCome tells whether the stitch that comes next says so.
func (h *hand) legsCome() bool {
	if len(h.coming) == 0 {
		return false
	}
	w, ok := h.coming[0].Node.(*syntax.Work)
	return ok && fromGround(w) && h.isLegs(w.Counts)
}

// beginAfterChains begins the row behind the chains on the hook, which are no stitch of it.
func (h *hand) beginAfterChains() { h.chains, h.counts, h.begun = 0, syntax.Counts{}, true }

// standAsLeg makes the chains on the hook a leg of the stitch after them, over the first place
// where the stitch goes into the one after that.
func (h *hand) standAsLeg(p syntax.Place) {
	if h.chains == 0 {
		return // a skip before it has taken them so
	}
	h.beginAfterChains()
	if p.Pick == syntax.PickNext && !h.skippedFirst && h.at == 0 && h.toStitch() {
		h.at++
	}
}

// countAs makes the stitch with an index in the row, if there is one, of a kind that it is
// said to count as.
func (h *hand) countAs(i int, k *stitch.Stitch) {
	if i < len(h.row) {
		s := h.stitch(h.row[i])
		m := *s.Manner
		m.Kind = k
		s.Manner = &m
	}
}

// cornersOr is the places named or, where none is, the next corner; the next stitch
// where the row below has none left.
func (h *hand) cornersOr(places []syntax.Place) []syntax.Place {
	if len(places) > 0 {
		return places
	}
	if corner := (syntax.Noun{Kind: syntax.NounCorner}); h.remaining(corner) > 0 {
		return []syntax.Place{{Noun: corner}}
	}
	if h.loose && h.remaining(syntax.Noun{}) == 0 {
		return []syntax.Place{{Pick: syntax.PickSame}} // nobody can say where the last one is
	}
	return []syntax.Place{{}}
}

// apart does work with n chains between every two stitches of it.
func (h *hand) apart(n syntax.Num, do func()) {
	if !n.Written() {
		do()
		return
	}
	outer := h.spacing
	h.spacing = &spacing{chains: n.At(h.size)}
	do()
	h.spacing = outer
}

func (h *hand) workTimes(w *syntax.Work, k *stitch.Stitch, own *ownStitch) {
	times := w.Times.Or(h.size, 1)
	if times > 1 && inOneSpace(w) {
		all := *w
		all.Number, all.Times = syntax.One(times*w.Number.Or(h.size, 1)), syntax.Num{}
		h.workOnce(&all, k, own)
		return
	}
	for range times {
		if h.stopped() {
			return
		}
		h.workOnce(w, k, own)
	}
}

// inOneSpace tells `dc in next ch-2 sp twice`, which puts both in that one.
func inOneSpace(w *syntax.Work) bool {
	return len(w.Places) == 1 && w.Places[0].Pick == syntax.PickNext && w.Places[0].Noun.Kind == syntax.NounSpace && !w.Places[0].Each && !w.Places[0].Number.Written()
}

// picotChains is how many chains a stitch that closes a picot takes up: all
// since the last stitch, or those that it is counted back from the hook.
func picotChains(w *syntax.Work, chains int) int {
	if len(w.Places) == 1 && w.Places[0].From == syntax.FromHook {
		return max(w.Places[0].Nth, 1)
	}
	return chains
}

// closeTogether makes one stitch of those that the row holds from an index on.
// A beginning chain that stands there is one of them.
func (h *hand) closeTogether(from int) {
	for from < len(h.row) && h.stitch(h.row[from]).IsSpace() {
		from++
	}
	if over := len(h.row) - from - 1; over > 0 {
		h.row = h.row[: from+1 : from+1]
		h.rowMade -= over
	}
}

func (h *hand) workOnce(w *syntax.Work, k *stitch.Stitch, own *ownStitch) {
	n := w.Number.Or(h.size, 1)
	if n <= 0 || len(w.Places) > 0 && w.Places[0].Number.Written() && w.Places[0].Number.At(h.size) <= 0 {
		if !h.begun && len(h.base) > 0 {
			h.settle(k) // a step that this size skips still tells what the beginning chain is
		}
		return
	}
	if h.allAlong(w, k) {
		h.each(k, own, 1, syntax.AllAlong)
		return
	}
	if len(w.Places) == 0 {
		h.workHere(k, own, n, w.Evenly)
		return
	}
	if p := w.Places[0]; len(w.Places) == 1 && everyOne(p) && !h.nested {
		h.everyNth(k, own, n, p)
		return
	}
	if h.eachAndChains(k, own, n, w) {
		return
	}
	for i, p := range w.Places {
		if i > 0 {
			h.closeDone() // `sc in 2nd ch from hook and in next 2 ch, then in next 6 ch of the stem`
		}
		if h.joinsWith(w, k, p) {
			return
		}
		h.further = w.Places[i+1:]
		h.workAt(k, own, n, w.Number.Written(), p, w.Evenly)
	}
}

// shapedAmong tells whether a stitch worked all along only says what the increases
// after it stand among: `sc around, inc in every 4th st`.
func (h *hand) shapedAmong(w *syntax.Work, k *stitch.Stitch) bool {
	if len(h.coming) == 0 || k.Class != stitch.Plain || w.Number.Written() || len(w.Places) != 1 || w.Places[0].To.Kind != syntax.ToTheEnd || w.Places[0].Noun.Kind > syntax.NounAny {
		return false
	}
	next, ok := h.coming[0].Node.(*syntax.Work)
	if !ok || len(next.Places) != 1 || !everyOne(next.Places[0]) {
		return false
	}
	shaped, _ := h.words.stitch(next.Stitch)
	return shaped != nil && shaped.Class == stitch.Increase
}

// everyOne tells `in every 4th st`.
func everyOne(p syntax.Place) bool {
	return p.Each && p.Pick == syntax.PickNth && p.From == syntax.FromHere && p.Of == nil
}

// allAlong tells a row of which only the loop is said, `sc in BLO`: it goes all along.
func (h *hand) allAlong(w *syntax.Work, k *stitch.Stitch) bool {
	if w.Loop == syntax.BothLoops && !w.InLoops || w.Number.Written() || w.Times.Written() || len(w.Places) > 1 || k.Class != stitch.Plain {
		return false
	}
	if len(w.Places) == 1 && (!w.Places[0].Empty() || w.Places[0].Noun.Kind != syntax.NounNone) {
		return false
	}
	return h.lastWork && !h.nested && !h.fixed && len(h.row) == 0 && len(h.base) > 0
}

// everyNth works into every nth place. Between increases the row's own stitch is
// worked, between single stitches nothing; what several in one place or a
// decrease have between them is not said.
func (h *hand) everyNth(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	h.settle(k)
	increase := k.Class == stitch.Increase
	if !increase && n > 1 || k.Class == stitch.Decrease {
		h.lose()
		return
	}
	between := func(places int) {
		if increase {
			h.nextPlaces(h.main, nil, 1, places, p.Noun)
			return
		}
		for range places {
			h.next(p.Noun)
		}
	}
	if h.remaining(p.Noun) < p.Nth {
		h.missing(p.Noun, p.Nth-h.remaining(p.Noun))
	}
	if p.Odd && h.remaining(p.Noun) > 0 {
		h.nextPlaces(k, own, n, 1, p.Noun)
	}
	for h.remaining(p.Noun) >= p.Nth && !h.stopped() {
		between(p.Nth - 1)
		h.nextPlaces(k, own, n, 1, p.Noun)
	}
	between(h.remaining(p.Noun))
	h.toTheEnd()
}

// leave leaves places unworked on purpose: so many of the next, or all that
// remain. They can be come back to.
func (h *hand) leave(p syntax.Place) {
	to := h.end
	if p.Pick == syntax.PickNext && p.Noun.Kind != syntax.NounNone {
		if to = h.at + max(0, p.Number.Or(h.size, 1)); to > h.end {
			h.missing(p.Noun, to-h.end)
			to = h.end
		}
	} else {
		h.full = true
	}
	h.left = append([]leftOut{{h.base[h.at:to:to], h.turns, h.landed || !h.known}}, h.left...)
	h.at, h.sub = to, 0
}

// workHere works n times with no place named: one in each of the next n, or
// all in the place of the group.
func (h *hand) workHere(k *stitch.Stitch, own *ownStitch, n int, evenly bool) {
	switch {
	case own != nil && own.branches: // it grows from the hook
		h.into(k, own, n, h.held)
	case own != nil && h.unworkedStem():
		h.lose() // whether it grows there or goes into the stem is not known
	case h.pieces > 0:
		h.makeRest(k, own, n, h.effectOf(k))
	case k.Class == stitch.Slip && n == 1 && h.round && !h.nested && !h.fixed && len(h.row) > 0 && (h.remaining(syntax.Noun{}) == 0 || h.lastWork && h.apartFrom):
		h.join(&syntax.Join{}) // nothing is left for it to stand on, or it is a sentence of its own: it closes the round
	case h.along && !h.fixed:
		h.alongEdge(k, n, !evenly || n > 1, syntax.Place{})
	case h.ring && !h.fixed && len(h.base) > 0 && h.allInRing():
		h.intoRing(k, own, n)
	case h.fixed || h.ring && len(h.base) == 0:
		for range n {
			if h.stopped() {
				return
			}
			h.into(k, own, 1, h.held)
		}
	case evenly:
		h.settle(k)
		h.at, h.full = h.end, true
		h.make(k, "", n, -1, 1)
	case n > 1 && n <= mostInOne && h.nested && h.increases && own == nil && h.choose&ReadNumberInOne != 0:
		h.nextPlaces(k, own, n, 1, syntax.Noun{})
	default:
		h.nextPlaces(k, own, 1, n, syntax.Noun{})
	}
}

// mostInOne is the most stitches that a number alone may put in one stitch; common
// practice.
const mostInOne = 3

// mayIncrease tells whether a row that states its count repeats nothing but numbers of
// stitches: where only that comes out, they are increases.
func (h *hand) mayIncrease(clauses []syntax.Clause, stated *syntax.Total) bool {
	if stated == nil {
		return false
	}
	plain, repeats := true, false
	syntax.Walk(clauses, func(c syntax.Clause) {
		switch n := c.Node.(type) {
		case *syntax.Work:
			k, own := h.words.stitch(n.Stitch)
			plain = plain && own == nil && k != nil && k.Class == stitch.Plain && len(n.Places) == 0
		case *syntax.Repeat:
			repeats = true
		case *syntax.Group, *syntax.Skip, *syntax.Bracket:
			plain = false
		}
	})
	return plain && repeats
}

// allInRing tells whether the stitches of a first round go into the ring where
// no place is named for them, not into its chains.
func (h *hand) allInRing() bool {
	h.met |= ReadAllInRing
	return h.choose&ReadAllInRing != 0
}

// into works a stitch n times into one place.
func (h *hand) into(k *stitch.Stitch, own *ownStitch, n, place int) {
	if own != nil {
		for range n {
			if h.stopped() {
				return
			}
			h.own(own, place)
		}
		return
	}
	e := h.effectOf(k)
	if k.Class == stitch.Group {
		h.settle(k)
		h.tell(k.Term(h.words.dialect).Abbr, n)
		h.worked(func() { h.make(k.Plain(), k.Term(h.words.dialect).Abbr, n*e.makes, place, 1) })
		return
	}
	h.make(e.kind, "", n*e.makes, place, 1)
}

// tell counts n more of the pattern's own stitches or groups.
func (h *hand) tell(name string, n int) {
	told, _ := h.objects.get(name)
	h.objects = h.objects.with(name, told+n)
}

// worked runs do with all it makes marked as worked together in one place.
func (h *hand) worked(do func()) {
	outer := h.object
	if outer == 0 {
		h.object = h.made() + 1
	}
	do()
	h.object = outer
}

// own works one of the pattern's own stitches into a place, or several that have no name
// together.
func (h *hand) own(own *ownStitch, place int) {
	if own.name == "" {
		h.several(own.body, place)
		return
	}
	if h.within++; h.within > maxOwn {
		h.lose() // a stitch that is defined by itself
		h.within--
		return
	}
	defer func() { h.within-- }()
	h.tell(own.name, 1)
	switch {
	case own.spread:
		h.list(h.bodyOf(own))
		return
	case own.branches:
		h.worked(func() { h.outAndBack(own) })
		return
	}
	if own.body == nil {
		makes := own.makes.Or(h.size, max(own.kind.Makes, 1))
		h.worked(func() { h.make(own.kind, own.name, makes, place, 1) })
		return
	}
	h.settle(h.mainOf(own.body))
	h.part()
	outer := h.spacing
	h.spacing = nil
	defer func() { h.spacing = outer }()
	from := h.made()
	h.worked(func() { h.inPlace(own.body, place) })
	h.calledSince(from, own.name)
}

// bodyOf is what one of the pattern's own stitches is here, over stitches or over a space.
func (h *hand) bodyOf(own *ownStitch) []syntax.Clause {
	if own.overSpace != nil && h.at < h.end && h.stitch(h.base[h.at]).IsSpace() {
		return own.overSpace
	}
	return own.body
}

// calledSince marks what was made from an index on as one of the pattern's own stitches.
func (h *hand) calledSince(from int, name string) {
	for i := from; i < h.made(); i++ {
		s := h.stitch(i)
		m := *s.Manner
		m.Own = name
		s.Manner = h.mannerOf(m)
	}
}

// inPlace works clauses all into one place.
func (h *hand) inPlace(body []syntax.Clause, place int) {
	fixed, held := h.fixed, h.held
	h.fixed, h.held = true, place
	if h.spacing != nil {
		h.spacing = &spacing{chains: h.spacing.chains}
	}
	for _, c := range body {
		if g, ok := c.Node.(*syntax.Group); ok {
			h.list(g.Body) // `(2 dc, ch 2) in next st` as the text of a definition
			continue
		}
		if w, ok := c.Node.(*syntax.Work); ok && len(w.Places) > 0 && w.Places[0].From != syntax.FromHook {
			plainWork := *w
			plainWork.Places = nil
			h.node(&plainWork)
			continue
		}
		h.node(c.Node)
	}
	h.space()
	h.fixed, h.held = fixed, held
	if place >= 0 {
		h.held = place
	}
}

// nextPlaces works n into each of the next m places of a kind.
func (h *hand) nextPlaces(k *stitch.Stitch, own *ownStitch, n, m int, noun syntax.Noun) {
	e := h.usesOf(k, own)
	if in := own.space(); in != nil && noun.Kind == syntax.NounNone && h.spaceAhead() {
		noun = *in
	}
	switch {
	case own != nil && own.spread:
		h.settle(h.mainOf(own.body)) // its own chains are not those of the beginning
	case k.Class != stitch.Picot:
		h.settle(k)
	}
	for i := range m {
		if h.stopped() {
			return
		}
		place := h.held
		for u := range e.uses {
			j := h.next(noun)
			for j < 0 && (h.forgotReturn() || h.comesRound()) {
				j = h.next(noun)
			}
			if j < 0 && m-i == 1 && h.slipsToFirst(k, noun) {
				h.joined = true
				return
			}
			if j < 0 {
				h.missing(noun, (m-i)*e.uses-u)
				if m-i > maxRow {
					h.lose()
					return
				}
				h.makeRest(k, own, n*(m-i), e)
				return
			}
			if u == 0 {
				place = j
			}
		}
		h.placed(k, own, n, place, e)
	}
}

// space is the space in which a stitch of the pattern's own is always worked, nil for none: `corner = (dc, ch 2, dc) in
// ch-2 sp`.
func (own *ownStitch) space() *syntax.Noun {
	if own == nil || len(own.body) != 1 {
		return nil
	}
	places := placesOf(own.body[0].Node)
	if len(places) != 1 || places[0].Noun.Kind != syntax.NounSpace || places[0].Pick != syntax.PickNext || places[0].Of != nil {
		return nil
	}
	return &places[0].Noun
}

// spaceAhead tells whether the row still comes to a space.
func (h *hand) spaceAhead() bool {
	return slices.ContainsFunc(h.base[min(h.at, len(h.base)):], func(i int) bool { return h.stitch(i).IsSpace() })
}

// makeRest makes the stitches for which there was no place: the count goes on
// from what the words ask for.
func (h *hand) makeRest(k *stitch.Stitch, own *ownStitch, n int, e effect) {
	for range n {
		if h.stopped() {
			return
		}
		h.placed(k, own, 1, -1, e)
	}
}

func (h *hand) placed(k *stitch.Stitch, own *ownStitch, n, place int, e effect) {
	if own != nil || k.Class == stitch.Group {
		h.into(k, own, n, place)
		return
	}
	if n > 1 && e.uses == 1 {
		h.worked(func() { h.make(e.kind, "", n*e.makes, place, e.uses) })
		return
	}
	h.make(e.kind, "", n*e.makes, place, e.uses)
}

// worksRows tells a clause by which rows or steps are done again.
func worksRows(c syntax.Clause) bool { _, ok := c.Node.(*syntax.Rows); return ok }
