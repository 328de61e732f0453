package fabric

import (
	"slices"

	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// Passing over places, and working several clauses in one.

// skip passes over places.
func (h *hand) skip(p syntax.Place) {
	if h.passesChain(p.Number.Or(h.size, 1)) {
		h.lose() // what the row is worked on is not said
		return
	}
	if h.passesTip(p) {
		return
	}
	h.lay()
	p = h.widened(p)
	p.Noun = h.openNoun(p)
	if p.Noun.Kind == syntax.NounTurning && !p.Noun.Length.Written() && h.turningTop() < 0 {
		return // a turning chain that is no stitch is skipped by itself
	}
	if h.passesJoin(p) {
		return
	}
	if h.unworked(p) || h.pastLeft(p) {
		p.Pick = syntax.PickNext
	}
	if len(h.base) > 0 && !h.begun && h.chains > 0 {
		if h.legsCome() {
			h.beginAfterChains()
		} else {
			h.settle(h.main)
		}
		h.loopFromFirst()
	}
	held := h.held
	h.skipped = h.at
	defer func() {
		h.held = held
		h.skippedRun(h.skipped, h.at)
		h.skippedFirst = h.skippedFirst || h.skipped == 0 && len(h.row) == 0 && len(h.base) > 0 && !h.round && slices.Contains(h.first, h.base[0])
	}()
	n := p.Number.Or(h.size, 1)
	if n <= 0 {
		return
	}
	switch {
	case p.Each && !p.Number.Written(), p.Pick == syntax.PickRemaining:
		h.at, h.full = h.end, true
		return
	case p.Pick == syntax.PickLast:
		h.at, h.full = h.end, true
		return
	case p.Pick == syntax.PickFirst && h.at == 1 && len(h.row) > 0 && h.stitch(h.row[0]).Turning:
		// the beginning chain stands on it already
		for range n - 1 {
			h.next(p.Noun)
		}
		return
	case p.Noun.Kind == syntax.NounSpace || p.Noun.Kind == syntax.NounTurning && p.Noun.Length.Written():
		p.Noun.Kind = syntax.NounSpace
		h.skipSpaces(n, p.Noun)
		return
	case p.Noun.OfAll():
		if h.at < h.end {
			if s := h.stitch(h.base[h.at]); s.IsSpace() && s.Chains == n {
				h.at, h.sub = h.at+1, 0
				return
			}
		}
	}
	if own := p.Noun.Kind == syntax.NounStitch && h.words.own[p.Noun.Stitch.Word] != nil; own || p.Noun.Kind == syntax.NounGroup {
		h.skipGroups(n, p)
		return
	}
	for i := range n {
		if h.next(p.Noun) < 0 {
			h.missing(p.Noun, n-i)
			return
		}
	}
}

// passesChain tells whether a row begins with chains and passes over n places, as
// many or more: the chains are no foundation, and nothing else lies below.
func (h *hand) passesChain(n int) bool {
	return h.base == nil && !h.ring && len(h.row) == 0 && len(h.branches) == 0 && h.chains > 0 && n >= h.chains
}

// passesTip begins a branch where the skip is of the chains on the hook, not of the
// row below: `ch 8, skip first ch, sc in next 7 ch`. It tells whether it is.
func (h *hand) passesTip(p syntax.Place) bool {
	n := p.Number.Or(h.size, 1)
	if b := h.innermost(); p.From == syntax.FromHook && h.chains > n && b != nil && b.chains == 0 {
		return h.chainFromHook(h.mainOf(h.coming), n+1) // `branch A: ch 8; from the 2nd ch, sc 7`
	}
	named := p.Noun.Kind == syntax.NounChain
	if len(h.base) == 0 || !named && (p.Noun.Kind != syntax.NounNone || p.Pick != syntax.PickFirst) || p.Of != nil || n >= h.chains {
		return false
	}
	if h.at < h.end && named {
		if s := h.stitch(h.base[h.at]); s.IsSpace() || s.Kind.Class == stitch.Chain {
			return false
		}
	}
	return h.worksBack(h.chains-n) && h.chainFromHook(h.mainOf(h.coming), n+1)
}

// worksBack tells whether what comes works along n chains, and no farther.
func (h *hand) worksBack(n int) bool {
	for _, c := range h.coming {
		switch at := c.Node.(type) {
		case *syntax.Work:
			switch {
			case len(at.Places) == 0:
				n -= at.Number.Or(h.size, 1)
			case len(at.Places) == 1 && at.Places[0].Noun.Kind == syntax.NounChain && at.Places[0].Each && !at.Places[0].Number.Written():
				return true
			case len(at.Places) == 1 && at.Places[0].Pick == syntax.PickNext:
				n -= at.Places[0].Number.Or(h.size, 1)
			default:
				return false
			}
		case *syntax.Remark:
		default:
			return false
		}
		if n <= 0 {
			return n == 0
		}
	}
	return false
}

// loopFromFirst passes over the first stitch of a round whose beginning chain makes
// a loop, where that stands on the stitch that the round was joined to: `ch 5, skip
// next sc, * sc in next sc, ch 5, skip next sc`.
func (h *hand) loopFromFirst() {
	if !h.round || h.at > 0 || len(h.row) != 1 || !h.stitch(h.row[0]).IsSpace() {
		return
	}
	h.met |= ReadLoopFromFirst
	if h.choose&ReadLoopFromFirst != 0 {
		h.next(syntax.Noun{})
	}
}

// skipSpaces passes over chain spaces. The stitches before one are passed with
// it only where the row is worked by spaces: else skipping names what lies
// next.
// passesJoin tells the slip stitch that closed the round below, which is none of its stitches: `turn, ch 1, skip the sl
// st`.
func (h *hand) passesJoin(p syntax.Place) bool {
	k, _ := h.words.stitch(p.Noun.Stitch)
	return p.Noun.Kind == syntax.NounStitch && k != nil && k.Class == stitch.Slip && len(h.row) == 0 && h.count(p.Noun) == 0 && p.Number.Or(h.size, 1) == 1
}

func (h *hand) skipSpaces(n int, noun syntax.Noun) {
	from := h.held
	for i := range n {
		at := h.at
		j := h.next(noun)
		if j < 0 {
			h.missing(noun, n-i)
			break
		}
		for k := at; k < j && !h.inSpaces; k++ {
			if s := h.stitch(h.base[k]); !s.IsSpace() && !h.sameGroup(s, from) {
				h.fault(Fault{Kind: PlaceAbsent, Name: h.nounName(noun), There: s.Name(h.words.dialect), N: 1})
				break
			}
		}
	}
}

// sameGroup tells whether a stitch is of the same group as a place worked into,
// which was found by a landmark: its other stitches are passed without a word.
func (h *hand) sameGroup(s *Stitch, place int) bool {
	return s.Object > 0 && place >= 0 && place < len(h.base) && h.stitch(h.base[place]).Object == s.Object
}

func (h *hand) skipGroups(n int, p syntax.Place) {
	h.loose = true
	for range n {
		i := h.groupAhead(p.Noun, p)
		if i < 0 {
			if p.Noun.Kind != syntax.NounStitch || !h.unnamedGroups(p.Noun.Stitch) {
				h.missing(p.Noun, 1) // what groups were worked without their name, their counts must tell
			}
			return
		}
		object := h.stitch(h.base[i]).Object
		corners := p.Noun.Kind == syntax.NounStitch && h.unnamedGroups(p.Noun.Stitch)
		for i < h.end && h.stitch(h.base[i]).Object == object && !(corners && h.stitch(h.base[i]).IsSpace()) {
			i++ // a corner of two groups is two
		}
		h.at, h.sub = i, 0
	}
}

// betweenGroups reads a space as the gap between two groups where the row below
// is made of groups and has chains, if any, only within its corners.
func (h *hand) betweenGroups(p syntax.Place) syntax.Place {
	n := p.Noun
	if n.Kind != syntax.NounSpace || n.Word == "loop" || n.Length.Written() || p.Prep != syntax.In || p.Pick == syntax.PickSame || h.ring {
		return p
	}
	if h.gapped() {
		p.Prep, p.Noun = syntax.Between, syntax.Noun{Kind: syntax.NounGroup, Word: "group"}
		return p
	}
	if n.Word != "corner" && h.nextGap() >= 0 {
		if h.met |= ReadSpaceIsGap; h.choose&ReadSpaceIsGap != 0 {
			p.Prep, p.Noun = syntax.Between, syntax.Noun{Kind: syntax.NounGroup, Word: gapWord}
		}
	}
	return p
}

// gapWord marks a place as the gap between any two groups that nothing parts.
const gapWord = "gap"

// nextGap finds the next gap between two groups that nothing parts, other than the
// one just worked into: the index of what comes after it, -1 for none. A round
// has one where it ends and begins.
func (h *hand) nextGap() int {
	for i := max(h.at, 1); i < h.end; i++ {
		if i != h.gap && h.parted(h.base[i-1], h.base[i]) {
			return i
		}
	}
	if n := len(h.base); n > 1 && h.round && h.end == n && h.gap != n && h.at <= n && h.parted(h.base[n-1], h.base[0]) {
		return n
	}
	return -1
}

// parted tells whether two neighbours belong to different groups, with no chain
// between those.
func (h *hand) parted(i, k int) bool {
	a, b := h.stitch(i), h.stitch(k)
	return !a.IsSpace() && !b.IsSpace() && a.Object != b.Object && (a.Object > 0 || a.Turning) && (b.Object > 0 || b.Turning)
}

// gapped tells whether the row below is made of groups that nothing parts, but for
// a stitch or two at its ends: most have no chains in them, and none stand between
// them.
func (h *hand) gapped() bool {
	with := map[int]bool{} // groups, and whether there are chains in them
	chains := 0
	for at, i := range h.base {
		s := h.stitch(i)
		switch {
		case s.Object == 0 && (s.IsSpace() || at > 1 && at < len(h.base)-2):
			return false
		case s.Object > 0:
			if s.IsSpace() && !with[s.Object] {
				chains++
			}
			with[s.Object] = with[s.Object] || s.IsSpace()
		}
	}
	return len(with) > 2*chains
}

// group works clauses all into one place, or into each of several.
func (h *hand) group(g *syntax.Group) {
	h.apart(g.Between, func() { h.groupAll(g) })
}

func (h *hand) groupAll(g *syntax.Group) {
	h.works = true
	if g.Listed && h.listApart() {
		h.list(apart(g))
		return
	}
	h.lastGroup = g.Body
	if g.Called.Written() {
		h.tell(g.Called.Word, 1)
	}
	if g.Corner || slices.ContainsFunc(g.Places, func(p syntax.Place) bool { return p.Noun.Kind == syntax.NounCorner }) {
		h.corner = g.Body
	}
	if len(g.Places) > 0 && g.Places[0].Noun.Kind == syntax.NounRing {
		h.ring, h.round, h.loose, h.full = true, true, true, true
	}
	if len(g.Places) > 0 && g.Places[0].From != syntax.FromHook {
		h.lay()
	}
	for _, p := range g.Places {
		h.groupIn(g, p)
	}
}

// listApart tells whether only the last of a list goes in the place named.
func (h *hand) listApart() bool {
	h.met |= ReadListApart
	return h.choose&ReadListApart != 0
}

// apart are the steps of a list, of which only the last goes in the place named.
func apart(g *syntax.Group) []syntax.Clause {
	out := slices.Clone(g.Body)
	last := &out[len(out)-1]
	w := *last.Node.(*syntax.Work)
	w.Places = g.Places
	last.Node = &w
	return out
}

// stitchesIn is how many stitches are told one by one in some clauses.
func stitchesIn(body []syntax.Clause, size int) int {
	n := 0
	for _, c := range body {
		if w, ok := c.Node.(*syntax.Work); ok {
			n += w.Number.Or(size, 1)
		}
	}
	return n
}

// groupIn works clauses all into a place, which is found as for a stitch of the pattern's
// own that makes them.
func (h *hand) groupIn(g *syntax.Group, p syntax.Place) {
	if p.From != syntax.FromHook {
		h.settleFor(g.Body)
	}
	p = h.inSameCorner(h.widened(p))
	p.Noun = h.openNoun(p)
	if h.risesIn(g.Body) {
		h.arrive()
		if p.Pick == syntax.PickNext && !p.Each && !p.Number.Written() && h.accepts(h.stitch(h.base[0]), p.Noun) && p.Noun.Kind != syntax.NounNone {
			p.Pick = syntax.PickSame // the one that it was slipped to
		}
	}
	if p.Prep == syntax.AroundPost && stitchesIn(g.Body, h.size) > 2 {
		h.loose = true // they lie along the side of that stitch
	}
	p = topOfChain(h.betweenGroups(p))
	switch {
	case p.From == syntax.FromHook:
		h.groupFromHook(g, p)
	case p.Elsewhere, p.Noun.Kind == syntax.NounRowEnd, p.Noun.Kind == syntax.NounEdge:
		h.lose() // how many such places there are is not looked up
	case h.other && p.Noun.Kind == syntax.NounTurning:
		h.worked(func() { h.inPlace(g.Body, -1) }) // the chains skipped at the beginning, from their other side
	case p.Noun.Kind == syntax.NounRing:
		h.inPlace(g.Body, -1)
	case h.fixed:
		h.list(g.Body)
		h.space()
	default:
		h.inRow(h.mainOf(g.Body), &ownStitch{body: g.Body, spans: 1}, 1, false, p, false)
	}
}

// inSameCorner reads the corner of `sl st to corner, ch 3, (2 dc, ch 2, 3 dc) in
// corner` as the one that the beginning chain stands in.
func (h *hand) inSameCorner(p syntax.Place) syntax.Place {
	if p.Noun.Kind != syntax.NounCorner || p.Pick != syntax.PickNext || p.Each || p.Number.Written() || h.nested || len(h.row) != 1 || !h.stitch(h.row[0]).Turning {
		return p
	}
	if h.held >= 0 && h.held < len(h.base) && h.accepts(h.stitch(h.base[h.held]), p.Noun) {
		p.Pick = syntax.PickSame
	}
	return p
}

// groupFromHook works several in the nth chain from the hook, with which the
// foundation or a branch begins.
func (h *hand) groupFromHook(g *syntax.Group, p syntax.Place) {
	if len(h.coming) > 0 {
		if note, ok := h.coming[0].Node.(*syntax.CountsNote); ok {
			h.counts = note.Counts
		}
	}
	if !h.chainFromHook(h.mainOf(g.Body), max(p.Nth, 1)) {
		return
	}
	i := h.next(syntax.Noun{})
	if i < 0 {
		h.missing(syntax.Noun{Kind: syntax.NounChain}, 1)
	}
	h.worked(func() { h.inPlace(g.Body, i) })
	h.closeDone()
}

// several works clauses in one place.
func (h *hand) several(body []syntax.Clause, place int) {
	if h.leadsIn(body) {
		h.row, h.rowMade, h.begun = nil, 0, false
		body = body[1:]
	}
	h.worked(func() { h.inPlace(body, place) })
}

// leadsIn tells whether a round's first group begins with the slip stitch that
// leads into its place, and the chain that stands for its first stitch:
// `(sl st, ch 3, dc, ch 2, 2 dc) in next sp`. A petal, which ends with a slip
// stitch too, does not.
func (h *hand) leadsIn(body []syntax.Clause) bool {
	if h.nested || !h.round || !h.onlySlips() || len(body) < 3 || !h.isSlip(body[0].Node) || slices.ContainsFunc(body[1:], func(c syntax.Clause) bool { return h.isSlip(c.Node) }) {
		return false
	}
	chain, ok := body[1].Node.(*syntax.Chain)
	k := h.firstStitch(body[2:])
	return ok && k != nil && k.Turning > 1 && k.Turning == chain.Number.At(h.size)
}

// risesIn tells whether a round's first group begins with the chain that stands
// for its first stitch, where slip stitches led to its place: `sl st to sp, (ch 3,
// dc, ch 2, 2 dc) in same sp`.
func (h *hand) risesIn(body []syntax.Clause) bool {
	if h.nested || h.fixed || !h.round || len(h.row) == 0 || !h.onlySlips() || h.held < 0 || len(body) < 2 {
		return false
	}
	chain, ok := body[0].Node.(*syntax.Chain)
	k := h.firstStitch(body[1:])
	return ok && k != nil && k.Turning > 1 && k.Turning == chain.Number.At(h.size)
}

// settleFor settles a beginning chain before a group by the group's stitch.
func (h *hand) settleFor(body []syntax.Clause) {
	if h.chains > 0 {
		h.settle(h.mainOf(body))
	}
}

// mainOf is the first plain stitch that clauses work; sc where there is none.
func (h *hand) mainOf(body []syntax.Clause) *stitch.Stitch {
	if k := h.firstStitch(body); k != nil {
		return k
	}
	return stitch.ByID("sc")
}

func (h *hand) firstStitch(body []syntax.Clause) *stitch.Stitch {
	for _, c := range body {
		switch n := c.Node.(type) {
		case *syntax.Work:
			k, own := h.words.stitch(n.Stitch)
			if own != nil && own.body != nil {
				if h.within++; h.within <= maxOwn {
					k = h.firstStitch(own.body)
				}
				h.within--
			}
			if k != nil {
				if p := k.Plain(); p.Class == stitch.Plain {
					return p
				}
			}
		case *syntax.Group:
			if k := h.firstStitch(n.Body); k != nil {
				return k
			}
		case *syntax.Repeat:
			if k := h.firstStitch(n.InOrder()); k != nil {
				return k
			}
		case *syntax.Bracket:
			if k := h.firstStitch(n.Body); k != nil {
				return k
			}
		}
	}
	return nil
}
