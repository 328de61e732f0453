package fabric

import (
	"cmp"
	"slices"

	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// How a stitch finds the place it is worked into.

// mark puts a marker in one of the stitches made.
func (h *hand) mark(n *syntax.Marker) {
	if h.chains > 0 && h.base == nil && len(h.row) == 0 {
		h.markedChain = cmp.Or(n.Nth, h.chains) // `Ch 22. Place a marker in the first ch.`
		return
	}
	of := h.row
	if n.Skipped {
		of = h.run
		if len(of) == 0 && len(h.openings) > 0 {
			of = h.openings[len(h.openings)-1].places
		}
	}
	if n.OfLast > 0 {
		of = of[max(0, len(of)-n.OfLast):]
	}
	at := len(of) - 1
	if n.Nth > 0 {
		at = n.Nth - 1
	}
	if at >= 0 && at < len(of) {
		h.marks = append(slices.Clip(h.marks), of[at])
	}
}

// moveMarkers moves the markers of a gusset or a yoke up into the first stitch that stands on
// each marked one, as is done in every row whether it is said or not. One alone tells where
// rounds begin.
func (h *hand) moveMarkers() {
	if h.marksIn(h.base) < 2 || h.marksIn(h.row) > 0 || slices.ContainsFunc(h.base, func(i int) bool { return slices.Contains(h.marks, i) && h.stitch(i).IsSpace() }) {
		return
	}
	moved := map[int]bool{}
	for _, i := range h.row {
		if into := h.stitch(i).Into; slices.Contains(h.marks, into) && !moved[into] {
			moved[into] = true
			h.marks = append(slices.Clip(h.marks), i)
		}
	}
}

// marksIn is how many of some places carry a marker.
func (h *hand) marksIn(places []int) int {
	n := 0
	for _, i := range places {
		if slices.Contains(h.marks, i) {
			n++
		}
	}
	return n
}

// marked finds the next place that carries a marker, -1 for none.
func (h *hand) marked() int {
	for i := h.at; i < h.end; i++ {
		if slices.Contains(h.marks, h.base[i]) {
			return i
		}
	}
	return -1
}

// workAt works n stitches at a place that is named.
func (h *hand) workAt(k *stitch.Stitch, own *ownStitch, n int, numbered bool, p syntax.Place, evenly bool) {
	if h.edge && numbered && n > 1 && (p.Each || p.To.Kind == syntax.ToTheEnd) && !p.Number.Written() && (p.Noun.Kind == syntax.NounOther || p.Noun.Kind == syntax.NounTurning) {
		h.alongEdge(k, n, numbered, p) // `20 sc along the starting ch, 42 sc up the other side`
		return
	}
	p = h.meant(p)
	if h.beginsInFirst(n, p) {
		p.From, p.Pick, p.Nth = syntax.FromHook, syntax.PickNth, h.chains
	}
	p, done := h.offRow(k, own, n, numbered, p)
	switch {
	case done:
		return
	case h.edge && p.Noun.Kind == syntax.NounCorner && h.count(p.Noun) == 0:
		h.worked(func() { h.into(k, own, n, -1) }) // of the piece, not of a row
		return
	case h.edge && p.Noun.Kind == syntax.NounChain && p.Number.Written() && p.Pick == syntax.PickNext && p.Of == nil && h.count(p.Noun) == 0:
		h.worked(func() { h.into(k, own, n*p.Number.At(h.size), -1) }) // those of the foundation, on the way round the piece
		return
	case evenly && numbered:
		h.workHere(k, own, n, true)
		return
	}
	h.lay()
	if h.fixed && p.Pick != syntax.PickNext {
		h.into(k, own, n, h.held)
		return
	}
	h.inRow(k, own, n, numbered, p, evenly)
}

// meant is the place that a writer means by the words for it, as the work stands.
func (h *hand) meant(p syntax.Place) syntax.Place {
	p = h.betweenGroups(h.widened(h.spelledOut(p)))
	p.Noun = h.openNoun(p)
	p = topOfChain(h.upToComing(h.theLast(p)))
	if h.countsFromHook(p) {
		p.From = syntax.FromHook // `ch 6, dc in 4th ch`
	}
	if p.Pick == syntax.PickLast && p.Of == nil && h.turnedFirst && len(h.row) == 0 && worksOn(h.coming) {
		p.Pick = syntax.PickFirst // `ch 1, turn, sc in last sc, sc in next 4 sc`: the last one made
	}
	return p
}

// catches tells whether a place is one of the foundation, along which an edging that is worked
// across it is fastened stitch by stitch: `sl st in each of next 2 dc of the foundation`.
func (h *hand) catches(p syntax.Place) bool {
	return p.Of != nil && p.Of.Noun.Word == "foundation" && len(h.row) > 0 && h.known && h.stitch(h.row[len(h.row)-1]).Row == h.rowIndex && h.remaining(syntax.Noun{}) == 0
}

// hooksOn tells whether a place is one of the work that an edging goes along, to which a row is fastened at its end: `ss in
// each of next 2 dc of the shawl`. No branch has that name.
func (h *hand) hooksOn(p syntax.Place) bool {
	named := p.Number.Written() && (p.Name != "" && p.Of == nil || p.Of != nil && p.Of.Noun.Kind == syntax.NounEdge)
	free := h.hooks && p.Noun.Kind == syntax.NounStitch // `sl st in the last free dc`
	if !named && !free || len(h.limbs.names) > 0 || len(h.row) == 0 || !h.known {
		return false
	}
	return h.stitch(h.row[len(h.row)-1]).Row == h.rowIndex && (named || h.remaining(syntax.Noun{}) == 0)
}

// offRow works where the place is none of the row below: on another piece, on the hook, in
// a ring, along an edge. Where it is of that row, seen from this side, done is false.
func (h *hand) offRow(k *stitch.Stitch, own *ownStitch, n int, numbered bool, p syntax.Place) (of syntax.Place, done bool) {
	switch {
	case p.Elsewhere && p.Name != "":
		h.joinPieces(h.chains)
		h.onPieces(k, own, n, numbered || p.Pick == syntax.PickNth || p.Pick == syntax.PickFirst, p)
		return p, true
	case p.Elsewhere:
		h.elsewhere(k)
		return p, true
	case p.Name == "half":
		h.lose() // `to last st of this half`: where the halves meet is not kept
		return p, true
	case k.Class == stitch.Slip && h.hooksOn(p):
		h.hooks = true
		h.onPieces(k, own, n, numbered, p)
		return p, true
	case k.Class == stitch.Slip && h.catches(p):
		h.lose() // how many of its stitches the next row passes over is not kept
		return p, true
	case h.pieces > 0 && p.From != syntax.FromHook:
		h.onPieces(k, own, n, numbered, p)
		return p, true
	case n == 1 && len(h.row) > 0 && h.closesOwnChain(p) && h.picot(k, n, h.chains):
		return p, true
	case p.From == syntax.FromHook, h.onHook(p):
		h.fromHook(k, own, n, p)
		return p, true
	case h.closesKnot(k, n, p):
		return p, true
	case h.closesChain(k, n, p):
		h.join(&syntax.Join{})
		return p, true
	case p.Name != "" && h.aside(k, n, p):
		return p, true
	case p.Name != "" && (p.Noun.Kind == syntax.NounTip || p.Noun.Kind == syntax.NounBase) && k.Class == stitch.Slip && n == 1 && len(h.row) > 0:
		h.full = true // it fastens the end at a part that has a name, `in top of the quill`, wherever that is
		return p, true
	case p.Grown && k.Class == stitch.Slip && n == 1 && h.fastensPart():
		return p, true
	case p.Noun.Kind == syntax.NounRing, p.Noun.Kind == syntax.NounSpace && h.ring && h.count(p.Noun) == 0:
		h.intoRing(k, own, n)
		return p, true
	case h.offFoundation(p), p.Noun.Kind == syntax.NounOther || p.Of != nil && p.Of.Noun.Kind == syntax.NounOther:
		if h.opened {
			p.Noun, p.Of = syntax.Noun{Kind: syntax.NounChain}, nil // those over the opening, from below
			break
		}
		h.otherSide()
		p.Noun, p.Of = syntax.Noun{}, nil
		if p.Pick == syntax.PickNext && !p.Number.Written() && numbered && n > 1 {
			h.nextPlaces(k, own, 1, n, syntax.Noun{})
			return p, true
		}
	case p.Noun.Kind == syntax.NounRowEnd || p.Noun.Kind == syntax.NounEdge:
		h.alongEdge(k, n, numbered, p)
		return p, true
	case h.along && p.Noun.Kind == syntax.NounNone:
		h.alongEdge(k, n, numbered, p)
		return p, true
	case p.Noun.Kind != syntax.NounCorner:
		h.along = false // a place of another kind is named
	}
	return p, false
}

// inRow works at a place of the row below, found in the first way that fits its words.
func (h *hand) inRow(k *stitch.Stitch, own *ownStitch, n int, numbered bool, p syntax.Place, evenly bool) {
	switch {
	case p.Prep == syntax.Between:
		h.between(k, own, n, p)
	case p.Noun.Kind == syntax.NounMarker:
		h.inMarked(k, own, n)
	case p.Pick == syntax.PickRemaining && h.comeBack(p):
		p.Pick, p.Row = syntax.PickNext, syntax.Num{}
		h.workAt(k, own, n, numbered, p, evenly)
	case p.Prep == syntax.AroundPost && p.Row.Written() && h.alongRow(p.Row.At(h.size)):
		p.Row = syntax.Num{}
		h.workAt(k, own, n, numbered, p, evenly)
	case p.Below > 0 || p.Row.Written():
		h.rowsBelow(k, own, n, p)
	case p.Pick == syntax.PickSame, p.Noun.Kind == syntax.NounBase, h.comesHome(k) && onLast(p), len(h.row) <= 1 && h.closed != nil && h.onCloser(p):
		h.sameAgain(k, own, n, p)
	case p.Pick == syntax.PickPrevious && h.opened:
		p.Pick = syntax.PickNext
		h.nextNamed(k, own, n, p)
	case p.Pick == syntax.PickPrevious:
		h.full = h.full || p.Noun.Kind == syntax.NounChain && k.Class == stitch.Slip // it fastens the end at the tip
		h.inSkipped(k, own, n, p)
	case p.Of != nil && p.Of.Each:
		h.eachLandmark(k, own, n, p)
	case h.chainOfSpace(p) && p.Of.Pick == syntax.PickSame:
		h.sameAgain(k, own, n, *p.Of)
	case h.byLandmark(p):
		h.landmark(k, own, n, p)
	case h.alongOwnChain(p):
		h.leaveUnmarked(k, 1)
		h.each(k, own, n, p)
		h.closeDone()
	case p.Each && p.Pick == syntax.PickNext && !p.Number.Written(), p.Pick == syntax.PickRemaining && !p.Number.Written(), p.To.Kind != syntax.ToNothing:
		h.each(k, own, n, p)
	case p.Pick == syntax.PickFirst || p.Pick == syntax.PickLast || p.Pick == syntax.PickNth:
		h.jump(k, own, n, p)
	case p.Noun.Kind == syntax.NounTurning && p.Pick == syntax.PickNext:
		h.jump(k, own, n, p)
	case p.Pick == syntax.PickRemaining && p.Noun.Kind == syntax.NounChain && len(h.branches) == 0 && h.remaining(p.Noun) == 0:
		h.lose() // `in each of the 4 free ch`, which an earlier part left
	default:
		h.nextNamed(k, own, n, p)
	}
}

// fastensPart tells whether a part of its own is done, so that it is fastened to what it grew from, which is not this one:
// it stands on its own chain, or nothing more is worked.
func (h *hand) fastensPart() bool {
	if len(h.branches) > 0 || len(h.base) == 0 {
		return false
	}
	return len(h.row) == 0 && h.chains == 0 || len(h.row) > 0 && slices.Contains(h.first, h.base[0])
}

// onLast tells a place on the stitch made last: `top of the last sc`.
func onLast(p syntax.Place) bool {
	return p.Noun.Kind == syntax.NounTip && p.Of != nil && p.Of.Pick == syntax.PickLast && !p.Of.Number.Written()
}

// closesOwnChain tells whether a place is the first of the chains on the hook: `ch 4,
// sl st in 1st of the 4 ch`, `ch 4, sl st in first ch of ch-4`.
func (h *hand) closesOwnChain(p syntax.Place) bool {
	of := p.Number
	if p.Of != nil && p.Of.Noun.Length.Written() {
		of = p.Of.Noun.Length
	}
	return h.chains > 0 && p.Noun.Kind == syntax.NounChain && p.Pick == syntax.PickFirst && of.At(h.size) == h.chains
}

// offFoundation tells whether a place is of the foundation chain while another row is
// stood on: its other side is free.
func (h *hand) offFoundation(p syntax.Place) bool {
	const word = "foundation"
	named := p.Noun.Word == word || p.Of != nil && p.Of.Noun.Word == word
	return named && p.Noun.Kind == syntax.NounChain && !h.other && len(h.first) > 0 && len(h.base) > 0 && !slices.Contains(h.first, h.base[0])
}

// alongOwnChain tells whether `each` is of the chains just made, partway through a
// row: `ch 15, sc in each ch`. Nothing else is left, or they are named.
func (h *hand) alongOwnChain(p syntax.Place) bool {
	return p.Each && !p.Number.Written() && p.To.Kind == syntax.ToNothing && len(p.Also) == 0 && len(h.row) > 0 && h.chains > MostTurning+1 && !h.fixed &&
		(p.Noun.Kind == syntax.NounChain || p.Noun.Kind == syntax.NounNone) && h.remaining(p.Noun) == 0
}

// closesKnot tells the slip stitch that holds several picots together, in the
// first of their chains.
func (h *hand) closesKnot(k *stitch.Stitch, n int, p syntax.Place) bool {
	return k.Class == stitch.Slip && n == 1 && p.Noun.Kind == syntax.NounChain && p.Pick == syntax.PickFirst && !p.Number.Written() &&
		h.chains == 0 && len(h.row) > 0 && h.stitch(h.row[len(h.row)-1]).IsPicot()
}

// closesChain tells the slip stitch that makes a ring of the foundation chain: `ch
// 40, sl st in 1st ch`.
func (h *hand) closesChain(k *stitch.Stitch, n int, p syntax.Place) bool {
	return k.Class == stitch.Slip && n == 1 && p.Pick == syntax.PickFirst && p.From == syntax.FromHere && p.Of == nil && !p.Number.Written() &&
		(p.Noun.Kind == syntax.NounChain || p.Noun.Kind == syntax.NounAny) && h.base == nil && !h.ring && !h.fixed && !h.nested &&
		len(h.row) == 0 && len(h.branches) == 0 && h.chains > 0
}

// upToComing ends an `each` within a repeat where the step after it is worked: `*sc
// in each sc, 3 sc in next corner; rep from *`.
func (h *hand) upToComing(p syntax.Place) syntax.Place {
	if !h.nested || h.fixed || !p.Each || p.Number.Written() || p.Pick != syntax.PickNext || p.To.Kind != syntax.ToNothing || p.Noun.Kind == syntax.NounSpace || p.Noun.Kind == syntax.NounCorner || len(h.coming) == 0 {
		return p
	}
	next := placesOf(h.coming[0].Node)
	if len(next) != 1 || next[0].Each || next[0].Pick != syntax.PickNext || next[0].Of != nil {
		return p
	}
	if k := next[0].Noun.Kind; k == syntax.NounSpace || k == syntax.NounCorner {
		p.To = syntax.ToLimit{Kind: syntax.ToNext, Noun: next[0].Noun}
	}
	return p
}

// comesNext tells whether the next place is one of a kind.
func (h *hand) comesNext(n syntax.Noun) bool {
	return h.at < h.end && h.accepts(h.stitch(h.base[h.at]), n)
}

// theLast reads the `same loop` behind a repeat that went `to last loop`, or the `that sp` behind
// stitches that went `to the next sp`, as that one: it was named, and nothing has been worked in it.
func (h *hand) theLast(p syntax.Place) syntax.Place {
	switch {
	case !h.namedNext:
	case p.Pick == syntax.PickSame && h.comesNext(p.Noun):
		p.Pick = syntax.PickNext
	case p.Of != nil && p.Of.Pick == syntax.PickSame && h.comesNext(p.Of.Noun):
		owner := *p.Of
		owner.Pick, p.Of = syntax.PickNext, &owner
	}
	return p
}

// countsFromHook tells whether a numbered chain is counted from the hook though
// nobody says so: a row begins with it, and the chains were only just made.
func (h *hand) countsFromHook(p syntax.Place) bool {
	if p.Pick != syntax.PickNth || p.From != syntax.FromHere || p.Of != nil || len(h.row) > 0 || h.chains < p.Nth {
		return false
	}
	founds := h.base == nil && !h.ring && len(h.branches) == 0
	return p.Noun.Kind == syntax.NounChain && (len(h.base) > 0 || founds) || p.Noun.Kind == syntax.NounAny && founds
}

// beginsInFirst tells whether n stitches are worked in the chain made first, with which the
// piece begins, so that those beyond it are passed: `ch 4 (3 skipped ch count as dc), 11 dc
// in first ch`, `ch 2, 6 sc in first ch`.
func (h *hand) beginsInFirst(n int, p syntax.Place) bool {
	return h.base == nil && !h.ring && len(h.branches) == 0 && len(h.row) == 0 && h.chains > 1 && h.chains <= MostTurning+1 && (n > 1 || h.counts.Said) &&
		p.Pick == syntax.PickFirst && p.Noun.Kind == syntax.NounChain && !p.Number.Written() && p.From == syntax.FromHere && p.Of == nil
}

// onHook tells whether a numbered chain is one of those on the hook, partway through
// a row: `ch 7, dc in 3rd ch`.
func (h *hand) onHook(p syntax.Place) bool {
	return p.Noun.Kind == syntax.NounChain &&
		(p.Pick == syntax.PickNth || p.Pick == syntax.PickFirst || p.Pick == syntax.PickLast) && p.Nth > 1 && p.Nth <= h.chains &&
		p.From == syntax.FromHere && p.Of == nil && p.Name == "" && len(h.row) > 0
}

// rowsBelow works into stitches further down, each in the stead of the one
// that lies above it: that one is passed over, by a word or without.
func (h *hand) rowsBelow(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	h.settle(k)
	passes := p.Below > 0 && p.Pick == syntax.PickNext
	if passes {
		h.met |= ReadBehindPassed
		passes = h.skipFollows() == (h.choose&ReadBehindPassed != 0)
	}
	h.loose = h.loose || !passes
	for range p.Number.Or(h.size, 1) {
		if h.stopped() {
			return
		}
		if passes {
			h.next(syntax.Noun{})
		}
		h.into(k, own, n, -1)
	}
}

// inSkipped goes back into places that were passed over before.
func (h *hand) inSkipped(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	h.settle(k)
	at, m := h.at, p.Number.Or(h.size, 1)
	for i := range m {
		if h.stopped() {
			return
		}
		h.into(k, own, n, min(max(h.skipped, 0)+i, len(h.base)-1))
	}
	h.at = at
}

// skipFollows tells whether the next clause skips.
func (h *hand) skipFollows() bool {
	if len(h.coming) == 0 {
		return false
	}
	_, skips := h.coming[0].Node.(*syntax.Skip)
	return skips
}

// topOfChain reads the top of a turning or beginning chain as the place that it stands
// for.
func topOfChain(p syntax.Place) syntax.Place {
	if p.Noun.Kind == syntax.NounTip && p.Of != nil && (p.Of.Noun.Kind == syntax.NounTurning || p.Of.Noun.Kind == syntax.NounChain) {
		p.Noun, p.Of = syntax.Noun{Kind: syntax.NounTurning}, nil
	}
	return p
}

// elsewhere joins to another piece. A slip stitch stands on the chains around
// it and is none of the row's; what another stitch is here, nobody can say.
func (h *hand) elsewhere(k *stitch.Stitch) {
	if k.Class != stitch.Slip {
		h.lose()
	}
}

// joinPieces begins, or goes on with, a round that joins pieces worked before:
// the legs of a toy, with so many chains between them.
func (h *hand) joinPieces(chains int) {
	h.pieces++
	h.works, h.loose, h.full = true, true, true
	h.bridge = max(h.bridge, chains)
	h.chains, h.counts = 0, syntax.Counts{}
}

// onPieces works as many stitches as are said into joined pieces and the chains
// between them. How many each piece has is not looked up: where no number is said,
// the row cannot be counted.
func (h *hand) onPieces(k *stitch.Stitch, own *ownStitch, n int, numbered bool, p syntax.Place) {
	switch chains := p.Noun.Kind == syntax.NounChain || p.Noun.Kind == syntax.NounOther; {
	case p.Number.Written():
		n *= p.Number.At(h.size)
	case p.Each && !chains && h.comingCount() > 0:
		n *= h.comingCount()
	case numbered && !(p.Each && (p.Noun.Kind == syntax.NounAny || p.Noun.Kind == syntax.NounStitch)), p.Pick == syntax.PickSame, p.Pick == syntax.PickLast, p.Pick == syntax.PickFirst, p.Pick == syntax.PickNext && !p.Each && p.To.Kind == syntax.ToNothing:
	case chains && h.bridge > 0:
		n *= h.bridge
	default:
		h.lose()
		return
	}
	h.makeRest(k, own, n, h.effectOf(k))
}

// comingCount is the number of stitches that the next words state, 0 where they state
// none: `sc around first leg (12), ch 3`.
func (h *hand) comingCount() int {
	if len(h.coming) == 0 {
		return 0
	}
	t, ok := h.coming[0].Node.(*syntax.Total)
	if !ok || len(t.Parts) != 1 || len(h.coming) == 1 {
		return 0
	}
	return t.Parts[0].Number.At(h.size)
}

// inMarked works into the next marked stitch.
func (h *hand) inMarked(k *stitch.Stitch, own *ownStitch, n int) {
	i := h.marked()
	if i < 0 {
		if passed := h.marksIn(h.base[:h.at]); passed > 0 {
			h.fault(Fault{Kind: RowOver, N: 1, Base: passed, Name: h.nounName(syntax.Noun{Kind: syntax.NounMarker})})
		} else {
			h.noMarker()
		}
		h.into(k, own, n, -1)
		return
	}
	h.goTo(i)
	h.worked(func() { h.placed(k, own, n, i, h.effectOf(k)) })
}

// eachLandmark works at every group of the row: `3 dc in ch-1 sp of each V-st`.
func (h *hand) eachLandmark(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	end := h.end
	h.end = h.reserved()
	worked := false
	for h.groupAhead(p.Of.Noun, p) >= 0 && !h.stopped() {
		h.landmark(k, own, n, p)
		worked = true
	}
	if !worked {
		h.missing(p.Of.Noun, 1)
	}
	h.toTheEnd()
	h.upTo(end)
}

// reserved gives the index of the first place that the rest of the row works
// into by name: an `each st across` leaves the turning chain alone before
// `dc in top of tch`, and the last stitch before `2 dc in last st`.
func (h *hand) reserved() int {
	end := h.end
	if b := h.innermost(); h.nested || b != nil && !b.marked {
		return end
	}
	for _, p := range h.further {
		end = h.before(p, end)
	}
	for _, c := range h.after {
		if leavesGround(c.Node) {
			return max(h.at, end) // what comes then is worked on other ground
		}
		if h.isSlip(c.Node) {
			continue // it closes the round
		}
		for _, p := range placesOf(c.Node) {
			end = h.before(p, end)
		}
	}
	return max(h.at, end)
}

// before is the end that leaves a place to what is worked there by name.
func (h *hand) before(p syntax.Place, end int) int {
	switch {
	case p.Noun.Kind == syntax.NounTurning || p.Of != nil && p.Of.Noun.Kind == syntax.NounTurning:
		return min(end, h.end-1)
	case p.Pick == syntax.PickLast && p.Of == nil && p.From == syntax.FromHere:
		return min(end, h.limit(p.Number.Or(h.size, 1), p.Noun))
	}
	return end
}

// leavesGround tells whether what follows a clause is worked on other ground: a
// branch, what it came from, or the other side of the chain.
func leavesGround(node syntax.Node) bool {
	switch n := node.(type) {
	case *syntax.Return, *syntax.Branch:
		return true
	case *syntax.Turn:
		return n.OtherSide || !n.Not && !n.Rotate
	}
	return slices.ContainsFunc(placesOf(node), func(p syntax.Place) bool {
		return p.Noun.Kind == syntax.NounOther || p.Of != nil && p.Of.Noun.Kind == syntax.NounOther
	})
}

// isSlip tells whether a clause works a slip stitch, in no number of places.
func (h *hand) isSlip(node syntax.Node) bool {
	w, ok := node.(*syntax.Work)
	if !ok || len(w.Places) > 0 && w.Places[0].Number.Written() {
		return false
	}
	return h.slips(w.Stitch)
}

// slips tells whether a word names a slip stitch.
func (h *hand) slips(ref syntax.StitchRef) bool {
	k, _ := h.words.stitch(ref)
	return k != nil && k.Class == stitch.Slip
}

// placesOf lists the places that a clause works into; a join is no work.
func placesOf(node syntax.Node) []syntax.Place {
	switch n := node.(type) {
	case *syntax.Work:
		if !n.Joins {
			return n.Places
		}
	case *syntax.Group:
		return n.Places
	}
	return nil
}

// between works into gaps between stitches: one, or all that are left.
func (h *hand) between(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	h.settle(k)
	if m := p.Number.At(h.size); p.Each && p.Number.Written() && p.Noun.Kind == syntax.NounGroup {
		for range m { // `3 dc in each of the next 2 spaces`, which are gaps
			h.toGap(p)
			h.inGap(k, own, n)
		}
		return
	}
	if p.Each || p.To.Kind != syntax.ToNothing {
		if p.Noun.Kind == syntax.NounGroup {
			h.eachGroupGap(k, own, n, p)
			return
		}
		h.eachGap(k, own, n)
		return
	}
	if p.Noun.Kind == syntax.NounGroup && p.Noun.Word != gapWord && p.Pick != syntax.PickNth && h.groupAhead(p.Noun, p) < 0 {
		if i := h.next(syntax.Noun{Kind: syntax.NounSpace}); i >= 0 { // chains part the groups
			h.held = i
			h.into(k, own, n, i)
			return
		}
	}
	h.toGap(p)
	h.inGap(k, own, n)
}

func (h *hand) inGap(k *stitch.Stitch, own *ownStitch, n int) {
	if n > 1 {
		h.worked(func() { h.into(k, own, n, -1) })
	} else {
		h.into(k, own, n, -1)
	}
	h.gap = h.at
}

// eachGap works into the gap before every stitch that is left. In a row there
// is none before the first.
func (h *hand) eachGap(k *stitch.Stitch, own *ownStitch, n int) {
	if h.gap == h.at || !h.round && h.at == 0 {
		h.pass(1)
	}
	for h.remaining(syntax.Noun{}) > 0 && !h.stopped() {
		h.inGap(k, own, n)
		h.pass(1)
	}
	h.toTheEnd()
}

// inCorners tells whether a clause works into all corners.
func inCorners(node syntax.Node) bool {
	return slices.ContainsFunc(placesOf(node), func(p syntax.Place) bool { return p.Noun.Kind == syntax.NounCorner && p.Each })
}

// eachGroupGap works after every group that is left.
func (h *hand) eachGroupGap(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	for p.Noun.Word == gapWord && h.nextGap() >= 0 || p.Noun.Word != gapWord && h.groupAhead(p.Noun, p) >= 0 {
		if h.stopped() {
			return
		}
		h.toGap(p)
		h.inGap(k, own, n)
	}
	h.toTheEnd()
}

// toGap moves to the next gap: past both stitches of a pair, past the next
// group, or to where the next stitch begins.
func (h *hand) toGap(p syntax.Place) {
	number := p.Number.Or(h.size, 1)
	switch {
	case p.Noun.Word == gapWord, p.Noun.Kind == syntax.NounGroup && p.Pick != syntax.PickNth && h.nextGap() >= 0:
		i := h.nextGap()
		if h.loose = true; i < 0 {
			h.missing(syntax.Noun{Kind: syntax.NounSpace}, 1)
			return
		}
		h.at, h.sub = i, 0
	case p.Pick == syntax.PickNth && p.Of != nil:
		h.withinGroup(p)
	case p.Noun.Kind == syntax.NounStitch && h.groups(p.Noun.Stitch) && number == 2 && h.inGroup():
		for object := h.stitch(h.base[h.at]).Object; h.at < h.end && h.stitch(h.base[h.at]).Object == object; h.at++ {
		}
		h.loose, h.sub = true, 0 // `shell in next shell, sc between this shell and the next`
	case p.Noun.Kind == syntax.NounGroup || p.Noun.Kind == syntax.NounStitch && h.groups(p.Noun.Stitch):
		h.skipGroups(1, p)
	case number == 2 && p.Pick == syntax.PickFirst && p.Of != nil:
		p.Pick, p.Nth = syntax.PickNth, 1
		h.withinGroup(p) // `between first 2 tr of pineapple`
		h.pass(1)
		if h.at > 0 {
			h.gapIn = h.stitch(h.base[h.at-1]).Object
		}
	case number == 2:
		h.pair()
	case number > 2:
		h.pass(number)
	default:
		h.loose = true // found by landmark, whatever lies before it
		if h.gap == h.at {
			h.pass(1)
		}
	}
}

// inGroup tells whether the last place was within a group of the row below.
func (h *hand) inGroup() bool {
	if h.at < 1 || h.at >= h.end {
		return false
	}
	object := h.stitch(h.base[h.at]).Object
	return object > 0 && h.stitch(h.base[h.at-1]).Object == object
}

// withinGroup moves to the gap after the nth stitch of the next group: `between
// 3rd and 4th dc of next 6-dc group`.
func (h *hand) withinGroup(p syntax.Place) {
	h.loose = true
	i := h.groupAhead(p.Of.Noun, p)
	if i < 0 {
		h.missing(p.Of.Noun, 1)
		return
	}
	object := h.stitch(h.base[i]).Object
	for i > h.at && h.stitch(h.base[i-1]).Object == object {
		i--
	}
	h.at, h.sub = min(i+p.Nth, h.end), 0
}

// pair passes two stitches. The first may be the one that ended the pair
// before.
func (h *hand) pair() {
	stitches := 2
	switch {
	case h.gap != h.at:
	case h.gapIn > 0 && h.at < h.end && h.stitch(h.base[h.at-1]).Object == h.gapIn && h.objectAhead() == h.gapIn:
		stitches = 1 // one gap of the group after the other
	default:
		h.met |= ReadGapsAdjoin
		if h.choose&ReadGapsAdjoin != 0 {
			stitches = 1
		}
	}
	h.pass(stitches)
}

// objectAhead is the group that the next stitch belongs to, 0 for none.
func (h *hand) objectAhead() int {
	for i := h.at; i < h.end; i++ {
		if s := h.stitch(h.base[i]); !s.IsSpace() {
			return s.Object
		}
	}
	return 0
}

// pass goes past so many stitches.
func (h *hand) pass(n int) {
	for i := range n {
		if h.next(syntax.Noun{}) >= 0 {
			continue
		}
		if !h.round || i == 0 {
			h.missing(syntax.Noun{}, n-i)
		}
		return // the gap lies where the round ends and begins
	}
}

// groups tells whether a word names several stitches worked together.
func (h *hand) groups(ref syntax.StitchRef) bool {
	k, own := h.words.stitch(ref)
	return h.groupName(k, own) != ""
}

// nextNamed works at `next N` of something.
func (h *hand) nextNamed(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	m := p.Number.Or(h.size, 1)
	if m <= 0 {
		return
	}
	if h.startsBehindJoin(p.Noun) {
		h.standOn(append(slices.Clone(h.base[1:]), h.base[0]))
	}
	if h.isJoin(p.Noun) && h.leadingSlips() >= m && m > 1 {
		h.row = h.row[m:] // `…, sc in the 2 sl sts at beg of rnd`: they are covered then
		h.rowMade -= m
		h.makeRest(k, own, n*m, h.effectOf(k))
		return
	}
	if h.isJoin(p.Noun) {
		h.settle(k)
		p.Noun = syntax.Noun{Kind: syntax.NounAny} // the stitch that the joining slip stitch stands on
		if len(h.row) == 1 && h.held >= 0 {
			h.sameAgain(k, own, n, p)
			return
		}
	}
	uses := h.usesOf(k, own).uses
	if k.Class == stitch.Decrease && p.Prep == syntax.Under && n == 1 && m > uses && m%uses != 0 {
		h.nextPlaces(gathering(k, m), own, 1, 1, p.Noun) // `dec over 5`
		return
	}
	if uses > 1 && m == 1 && h.closedInOne(k, uses, p) {
		h.nextPlaces(closed(k), own, 1, n, p.Noun)
		return
	}
	if uses > 1 {
		// `dc3tog over next 3 sts` is one; `sc2tog over next 8 sts` is four
		times := max(1, m/uses)
		if m > 1 && m%uses != 0 {
			h.fault(Fault{Kind: PlaceAbsent, Name: itoa(uses) + " sts for each " + k.Abbreviation(h.words.dialect), There: itoa(m), N: m})
		}
		h.nextPlaces(k, own, 1, n*times, p.Noun)
		return
	}
	if n > 1 && m > 1 && !p.Each && n == m {
		h.met |= ReadOneInEach
		if h.choose&ReadOneInEach == 0 {
			n = 1 // `3 sc in next 3 sts`
		}
	}
	h.inBlocks = p.Of != nil && p.Of.Noun.Kind == syntax.NounGroup || k.Class == stitch.Slip && p.Noun.Length.Written()
	h.nextPlaces(k, own, n, m, p.Noun)
	h.inBlocks = false
}

// startsBehindJoin tells a round that begins, with no chain, in the stitch after the one that the last was joined to:
// `dc in each of next 3 tr` where a dc and then a shell lie below. It ends in that one.
func (h *hand) startsBehindJoin(n syntax.Noun) bool {
	if !h.round || h.spiral || h.at > 0 || len(h.row) > 0 || h.chains > 0 || n.Kind != syntax.NounStitch || len(h.base) < 2 {
		return false
	}
	first := h.stitch(h.base[0])
	return !first.IsSpace() && !h.accepts(first, n) && h.accepts(h.stitch(h.base[1]), n)
}

// spelledOut reads `the 5 chain` as so many single chains where no space of that
// length lies below.
func (h *hand) spelledOut(p syntax.Place) syntax.Place {
	if n := p.Noun; n.Kind == syntax.NounSpace && n.Word == "ch" && h.count(n) == 0 {
		p.Noun, p.Number = syntax.Noun{Kind: syntax.NounChain, Word: "ch"}, n.Length
	}
	return p
}

// closedInOne tells whether stitches that are closed together all stand in the place
// named, as clusters in a space do, rather than one in each place from there on.
func (h *hand) closedInOne(k *stitch.Stitch, uses int, p syntax.Place) bool {
	switch {
	case k.Class != stitch.Together || p.Prep == syntax.Under:
		return false
	case p.Noun.Kind == syntax.NounSpace:
		return true
	case p.Noun.Kind != syntax.NounAny && p.Noun.Kind != syntax.NounStitch:
		return false
	}
	tall := uses > 2 && k.Plain().Turning > 2
	h.met |= ReadClosedInOne
	return tall == (h.choose&ReadClosedInOne == 0)
}

// closed is a stitch of several that are closed together, all of them in one place.
func closed(k *stitch.Stitch) *stitch.Stitch {
	one := *k
	one.Uses = 1
	return &one
}

// gathering is a decrease of so many stitches into one.
func gathering(k *stitch.Stitch, n int) *stitch.Stitch {
	wider := *k
	wider.Uses = n
	return &wider
}

// openNoun is what a place names. Where the row below has no spaces, a `loop`
// may be that of any stitch or chain: the older use of the word.
func (h *hand) openNoun(p syntax.Place) syntax.Noun {
	n := p.Noun
	if n.Kind != syntax.NounSpace || n.Word != "loop" || n.Length.Written() || p.Pick == syntax.PickSame {
		return n
	}
	if h.words.tops && p.Of == nil {
		return syntax.Noun{Kind: syntax.NounAny}
	}
	if h.count(n) > 0 {
		return n
	}
	every := p.Each || p.Number.Written()
	if h.ring && len(h.base) > 0 && every {
		return syntax.Noun{Kind: syntax.NounAny} // of the chains that the ring is made of
	}
	h.met |= ReadLoopOfStitch
	if h.choose&ReadLoopOfStitch == 0 {
		return n
	}
	return syntax.Noun{Kind: syntax.NounAny}
}

// isJoin tells whether a place is called by the slip stitch that joined the
// round below, which is no stitch of it.
func (h *hand) isJoin(n syntax.Noun) bool {
	return n.Kind == syntax.NounStitch && h.round && h.count(n) == 0 && h.slips(n.Stitch)
}

// leadingSlips is how many slip stitches the row begins with.
func (h *hand) leadingSlips() int {
	n := 0
	for n < len(h.row) && !h.stitch(h.row[n]).IsSpace() && h.stitch(h.row[n]).Kind.Class == stitch.Slip {
		n++
	}
	return n
}

// sameAgain works into the place that was worked into last.
func (h *hand) sameAgain(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	h.settle(k)
	if h.held < 0 && h.gap >= 0 && h.gap == h.at {
		h.worked(func() { h.inGap(k, own, n) })
		return
	}
	if h.held < 0 && h.at < len(h.base) {
		if i := h.next(p.Noun); i < 0 {
			h.next(syntax.Noun{})
		}
	}
	h.sameKind(p.Noun)
	from, home := len(h.row), h.comesHome(k)
	h.worked(func() { h.into(k, own, n, h.held) })
	if home {
		h.leaving = h.leaving.and(run{from: from, to: len(h.row)})
	}
}

// sameKind sees that the `same sp` is a space, where the row below has any: else
// it is the same place. Where a round has only just begun, it is the one that
// the round below closed with.
func (h *hand) sameKind(n syntax.Noun) {
	if n.Kind != syntax.NounSpace || h.held < 0 || h.held >= len(h.base) || h.stitch(h.base[h.held]).IsSpace() || h.count(syntax.Noun{Kind: syntax.NounSpace}) == 0 {
		return
	}
	if h.stitch(h.base[h.held]).Turning && len(h.row) > 1 {
		return // a beginning chain that was called a space
	}
	if last := len(h.base) - 1; h.round && len(h.row) <= 1 && h.stitch(h.base[last]).IsSpace() {
		h.held = last
		return
	}
	h.fault(Fault{Kind: PlaceAbsent, Name: h.nounName(n), There: h.stitch(h.base[h.held]).Name(h.words.dialect), N: 1})
}

// each works into every place of a kind, or into each up to a limit.
func (h *hand) each(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	h.settle(k)
	if h.ring && len(h.base) == 0 {
		h.intoRing(k, own, n)
		return
	}
	if h.spare && h.held >= 0 && h.held < len(h.base) && h.at == h.held+1 && h.acceptsAny(h.stitch(h.base[h.held]), p) {
		h.at = h.held // nothing stands yet in the place that the row was led to
	}
	if with := h.alongside(p); with != nil {
		h.eachWith(k, own, n, p, with)
		return
	}
	end := h.end
	switch p.To.Kind {
	case syntax.ToLastN:
		if limit := h.limit(p.To.Number.At(h.size), p.To.Noun); limit < h.end {
			h.end = max(limit, h.at)
		}
	case syntax.ToMarker, syntax.ToNext:
		h.eachToLandmark(k, own, n, p)
		h.namedNext = k.Class != stitch.Slip
		return
	case syntax.ToMeasure:
		h.lose()
		return
	default:
		h.end = h.reserved()
	}
	h.eachAhead(k, own, n, p)
	if p.To.Kind == syntax.ToLastN && !h.nested && (p.To.Left && h.lastWork || p.To.Number.At(h.size) > mostShaped && h.turnsNext()) {
		h.at = h.end
		h.upTo(end)
		h.leave(syntax.Place{Pick: syntax.PickRemaining}) // `sc in each st to last 4 sts, turn` says that they are left
		return
	}
	if p.To.Kind == syntax.ToTheEnd || !p.Number.Written() && p.To.Kind == syntax.ToNothing {
		h.closeEach(p)
	}
	h.upTo(end)
	h.namedNext = p.To.Kind == syntax.ToLastN
}

// eachAhead works into the places of a kind that lie ahead, or so many of them as are said: a
// stitch that takes several, into each such run.
func (h *hand) eachAhead(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	count := h.remainingAny(p)
	if p.Number.Written() {
		count = min(count, p.Number.At(h.size))
	}
	e := h.usesOf(k, own)
	if count == 0 && p.To.Kind != syntax.ToLastN && p.Pick != syntax.PickRemaining && h.sizes == 1 {
		h.missing(p.Noun, 1) // in one size of several, the steps before may take all
	}
	units := count / max(e.uses, 1)
	if over := count - units*e.uses; over > 0 && e.uses > 1 {
		h.fault(Fault{Kind: RepeatRemainder, N: over, Unit: e.uses, Base: count, Fits: []int{count - over, count - over + e.uses}})
	}
	for range units {
		place := -1
		for u := range e.uses {
			i := h.nextAny(p)
			if u == 0 {
				place = i
			}
		}
		h.placed(k, own, n, place, e)
		if h.stopped() {
			break
		}
	}
}

// alongside finds the next clause where it names other places of the same way
// round: `sc in each dc around, working 3 sc in each corner sp`.
func (h *hand) alongside(p syntax.Place) syntax.Node {
	if h.nested || len(h.after) == 0 || p.Number.Written() || p.To.Kind != syntax.ToTheEnd && p.To.Kind != syntax.ToNothing {
		return nil
	}
	places := placesOf(h.after[0].Node)
	if len(places) != 1 || places[0].Number.Written() {
		return nil
	}
	q := h.widened(places[0])
	if all := q.Each || q.To.Kind == syntax.ToTheEnd; !all && (q.Pick != syntax.PickNext || h.remaining(q.Noun) != 1) {
		return nil // `sc in each sc, and 2 sc in ch-2 sp`: the only one there is
	}
	if q.Noun.Kind != syntax.NounSpace && q.Noun.Kind != syntax.NounCorner {
		return nil
	}
	for i := h.at; i < h.end; i++ {
		if s := h.stitch(h.base[i]); h.accepts(s, q.Noun) && !h.acceptsAny(s, p) {
			return h.after[0].Node
		}
	}
	return nil
}

// eachWith works into every place of a kind, and what is worked alongside into
// those that it names.
func (h *hand) eachWith(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place, with syntax.Node) {
	e := h.usesOf(k, own)
	q := h.widened(placesOf(with)[0])
	for h.at < h.end && !h.stopped() {
		i, s := h.at, h.stitch(h.base[h.at])
		h.at, h.sub = i+1, 0
		switch {
		case h.acceptsAny(s, p):
			h.held = i
			h.placed(k, own, n, i, e)
		case h.accepts(s, q.Noun):
			h.held = i
			h.worked(func() { h.inPlace(bodyOf(with), i) })
		}
	}
	h.full, h.together = true, true
}

// eachAndChains works into every stitch and, where it comes to them, into the chains over an
// opening: `hdc in each hdc and in each of the 2 ch`. It gives false for other places, and where
// no opening has as many.
func (h *hand) eachAndChains(k *stitch.Stitch, own *ownStitch, n int, w *syntax.Work) bool {
	if len(w.Places) == 0 || h.nested || !w.Places[0].Each || w.Places[0].Number.Written() || w.Places[0].To.Kind != syntax.ToNothing {
		return false
	}
	rest, next := w.Places[1:], false
	if len(rest) == 0 && len(h.after) > 0 {
		if also, ok := h.after[0].Node.(*syntax.Work); ok && also.Stitch == w.Stitch && also.Number.Or(h.size, 1) == n {
			rest, next = also.Places, true
		}
	}
	if len(rest) != 1 || !rest[0].Each || rest[0].Noun.Kind != syntax.NounChain || !rest[0].Number.Written() || rest[0].Of != nil {
		return false
	}
	h.lay()
	over := rest[0].Number.At(h.size)
	opening := func(i int) bool { s := h.stitch(i); return s.IsSpace() && s.Chains == over }
	if !slices.ContainsFunc(h.base[h.at:h.end], opening) {
		return false
	}
	h.settle(k)
	e := h.usesOf(k, own)
	for h.at < h.end && !h.stopped() {
		i, times := h.at, 0
		switch {
		case opening(h.base[i]):
			times = over
		case h.acceptsAny(h.stitch(h.base[i]), w.Places[0]):
			times = 1
		}
		h.at, h.sub = i+1, 0
		for range times {
			h.held = i
			h.placed(k, own, n, i, e)
		}
	}
	h.full, h.together = true, next
	return true
}

// bodyOf is what a clause works, without where.
func bodyOf(node syntax.Node) []syntax.Clause {
	switch n := node.(type) {
	case *syntax.Group:
		return n.Body
	case *syntax.Work:
		here := *n
		here.Places = nil
		return []syntax.Clause{{Node: &here}}
	}
	return nil
}

// mostShaped is the most stitches at a row's end that its last step is likely to
// work, in shaping, if a writer forgot it; common practice.
const mostShaped = 2

// turnsNext tells whether the row turns after the clause at work.
func (h *hand) turnsNext() bool {
	if len(h.after) == 0 {
		return false
	}
	turn, ok := h.after[0].Node.(*syntax.Turn)
	return ok && !turn.Not && !turn.Rotate
}

// closeEach ends an `each … across`: what it names none of is passed over.
// In solid work every stitch must be named.
func (h *hand) closeEach(p syntax.Place) {
	if over := h.remaining(syntax.Noun{}); over > 0 && !h.loose && h.whole() && h.end == len(h.base) && !h.onOneChain() {
		h.fault(Fault{Kind: RowShort, N: over, Base: len(h.base), There: h.describe(), Name: h.nounName(p.Noun)})
	}
	h.toTheEnd()
}

// remainingAny and nextAny take account of `each dc and ch-1 sp`.
func (h *hand) remainingAny(p syntax.Place) int {
	total := h.remaining(p.Noun)
	for _, also := range p.Also {
		total += h.remaining(also)
	}
	return total
}

func (h *hand) nextAny(p syntax.Place) int {
	if len(p.Also) == 0 {
		return h.next(p.Noun)
	}
	chains := slices.ContainsFunc(append([]syntax.Noun{p.Noun}, p.Also...), func(n syntax.Noun) bool { return n.Kind == syntax.NounChain })
	for i := h.at; i < h.end; i++ {
		s := h.stitch(h.base[i])
		if chains && s.IsSpace() && !s.IsPicot() {
			h.at = i
			return h.nextOfSpace(s)
		}
		if h.acceptsAny(s, p) {
			h.past(i)
			return i
		}
	}
	return -1
}

func (h *hand) acceptsAny(s *Stitch, p syntax.Place) bool {
	return h.accepts(s, p.Noun) || slices.ContainsFunc(p.Also, func(n syntax.Noun) bool { return h.accepts(s, n) })
}

// eachToLandmark works up to the next marker, corner or space that is named.
func (h *hand) eachToLandmark(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	stop := h.landmarkOf(p.To)
	if stop < 0 && k.Class == stitch.Slip && h.round && h.onlySlips() {
		h.loose = true // it leads to a gap that the row below does not count as a space
		return
	}
	if stop < 0 {
		if p.To.Kind == syntax.ToMarker {
			h.noMarker()
		} else {
			h.missing(p.To.Noun, 1)
		}
		return
	}
	e := h.effectOf(k)
	for h.at < stop && !h.stopped() {
		if i := h.at; h.acceptsAny(h.stitch(h.base[i]), p) {
			h.past(i)
			h.placed(k, own, n, i, e)
			continue
		}
		h.at, h.sub = h.at+1, 0
	}
	if k.Class == stitch.Slip && p.To.Kind == syntax.ToNext {
		h.past(stop)
		h.placed(k, own, 1, stop, e) // slip stitches lead along and into it
	}
}

// landmarkOf is the place that an extent ends before, -1 for none.
func (h *hand) landmarkOf(to syntax.ToLimit) int {
	if to.Kind == syntax.ToMarker {
		i := h.marked()
		if short := to.Number.At(h.size); i >= 0 && short > 0 {
			i = max(h.at, i-short) // `to within 2 sts of marker`
		}
		return i
	}
	if i := h.find(1, to.Noun, h.at, h.end); i >= 0 {
		return i
	}
	if h.round && h.end == len(h.base) && h.end > 0 && h.accepts(h.stitch(h.base[0]), to.Noun) {
		return h.end // the one that the round began in
	}
	return -1
}

// jump works at a place counted from an end of the row below.
func (h *hand) jump(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	h.settle(k)
	m := p.Number.Or(h.size, 1)
	if m <= 0 {
		return
	}
	var i int
	switch {
	case p.Pick == syntax.PickLast && p.Noun.Kind != syntax.NounTurning && m > 1 && h.lastBeforeSlips(m):
		i, h.end = h.at, h.at+m
	case p.Pick == syntax.PickLast && p.Noun.Kind != syntax.NounTurning && m > 1:
		i = h.limit(m, p.Noun)
		h.loose = h.loose || len(h.row) == 0 && h.at < i && !h.round // the last ones alone: `1 htr in each of the last 20 sts`, of a front
	default:
		i, _ = h.picked(p)
	}
	if i < 0 && h.atBeginningSpace(p) {
		i, p.Noun = len(h.base)-1, syntax.Noun{Kind: syntax.NounSpace}
		if i < h.at {
			i = -1 // it is worked into already
		}
	}
	if i < 0 && h.other && p.Noun.Kind == syntax.NounTurning {
		h.into(k, own, n, -1) // the chains skipped at the beginning, from their other side
		return
	}
	if i < 0 || i >= len(h.base) {
		h.missing(p.Noun, m)
		h.makeRest(k, own, n*m, h.effectOf(k))
		return
	}
	e := h.effectOf(k)
	if i < h.at && p.Pick == syntax.PickLast && !h.full && (!h.loose && h.whole() || h.ending && h.stated == nil && h.held == i) {
		h.missing(p.Noun, min(m, h.at-i)) // they are worked already
		h.makeRest(k, own, n*m, h.effectOf(k))
		return
	}
	if i < h.at {
		// the first place again, as after a beginning chain that stands on it
		h.held = i
		h.worked(func() { h.placed(k, own, n, i, e) })
		if m > 1 {
			h.nextPlaces(k, own, n, m-1, p.Noun)
		}
		return
	}
	if p.Pick == syntax.PickFirst && p.Noun.Kind == syntax.NounSpace {
		h.loose = true // a space is found by landmark
	} else if leadsIn := k.Class == stitch.Slip && h.round && h.onlySlips(); !leadsIn && (!h.nested || h.at != h.origin) {
		h.leap(i) // `* dc in 2nd st, repeat` says itself what it passes over
	}
	h.at, h.sub = i, 0
	if e.uses > 1 && m >= e.uses {
		m = m / e.uses
	}
	h.nextPlaces(k, own, n, m, p.Noun)
}

// lastBeforeSlips tells whether so many stitches are left, behind which nothing but the slip stitches lie with which the
// row below began, as those of a quill do: they are the last ones.
func (h *hand) lastBeforeSlips(n int) bool {
	end := h.end
	for end > h.at && !h.stitch(h.base[end-1]).IsSpace() && h.stitch(h.base[end-1]).Kind.Class == stitch.Slip {
		end--
	}
	return end < h.end && end-h.at == n && !slices.ContainsFunc(h.base[h.at:end], func(i int) bool { return h.stitch(i).IsSpace() })
}

// picked finds a place that is told by where it stands in the row below; ok is false for
// any other, which is the next one of its kind.
func (h *hand) picked(p syntax.Place) (i int, ok bool) {
	switch {
	case h.nested && (p.Pick == syntax.PickFirst && h.origin > 0 || p.Pick == syntax.PickNth && p.From == syntax.FromHere && p.Of == nil):
		// `1 dc in the first, 2 dc in the second, repeat`: counted anew each time
		return h.find(max(p.Nth, 1), p.Noun, h.origin, h.end), true
	case p.Pick == syntax.PickFirst:
		return h.nth(1, p.Noun, p.From == syntax.FromEnd), true
	case p.Pick == syntax.PickNth && (p.Of == nil || p.Of.Noun.Kind != syntax.NounTurning):
		return h.nthAhead(p), true
	case p.Pick == syntax.PickNth, p.Noun.Kind == syntax.NounTurning:
		return h.turningTop(), true
	case p.Pick == syntax.PickLast:
		return h.nth(1, p.Noun, true), true
	}
	return -1, false
}

// nthAhead finds `the 3rd st`: counted from the row's beginning while that
// lies ahead, else from where the work is.
func (h *hand) nthAhead(p syntax.Place) int {
	if p.From == syntax.FromEnd {
		return h.nth(p.Nth, p.Noun, true)
	}
	if i := h.nth(p.Nth, p.Noun, false); i >= 0 && i == h.at {
		return i // `sc in each of first 5 sts, 2 sc in the 6th`
	}
	if len(h.row) > 1 || h.at >= p.Nth {
		i := h.find(p.Nth, p.Noun, h.at, h.end)
		h.loose = h.loose || i >= 0
		return i
	}
	h.loose = true
	return h.nth(p.Nth, p.Noun, false)
}

// atBeginningSpace tells whether a place is the space that the chains at the beginning
// of the row below make, however many they are: `sc in turning ch`, `sc in last ch-2 sp`.
func (h *hand) atBeginningSpace(p syntax.Place) bool {
	named := p.Noun.Kind == syntax.NounTurning || p.Noun.Kind == syntax.NounSpace && p.Pick == syntax.PickLast
	if n := len(h.base); !named || h.round || n == 0 {
		return false
	}
	s := h.stitch(h.base[len(h.base)-1])
	return s.IsSpace() && !s.IsPicot() && s.Into < 0
}

// turningTop finds the turning chain of the row below, -1 where none counts.
func (h *hand) turningTop() int {
	for i := len(h.base) - 1; i >= 0; i-- {
		if h.stitch(h.base[i]).Turning {
			return i
		}
	}
	return -1
}

// byLandmark tells whether a place is found by what it belongs to.
func (h *hand) byLandmark(p syntax.Place) bool {
	return p.Center || p.Of != nil && p.Of.Noun.Kind == syntax.NounStitch || h.chainOfSpace(p)
}

// chainOfSpace tells whether a place is one chain of a space that lies ahead, or is the
// one worked into last: `3rd ch of next ch-5 sp`.
func (h *hand) chainOfSpace(p syntax.Place) bool {
	if p.Of == nil || p.Of.Noun.Kind != syntax.NounSpace || p.Noun.Kind != syntax.NounChain || p.Number.Or(h.size, 1) != 1 {
		return false
	}
	told := p.Pick == syntax.PickNth || p.Pick == syntax.PickFirst || p.Pick == syntax.PickLast
	return told && (p.Of.Pick == syntax.PickSame || h.remaining(p.Of.Noun) > 0)
}

// landmark works at a place found by what it belongs to: `in center dc of
// next shell`.
func (h *hand) landmark(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	h.settle(k)
	i := h.toLandmark(p)
	h.worked(func() { h.into(k, own, n, i) })
}

// toLandmark moves to a place found by what it belongs to. What is passed on the way
// may be left.
func (h *hand) toLandmark(p syntax.Place) int {
	h.loose = true
	group := p.Noun
	if p.Of != nil && p.Of.Noun.Kind != syntax.NounNone {
		group = p.Of.Noun
	}
	i := -1
	if group.Kind != syntax.NounSpace {
		i = h.groupAhead(group, p)
	} else if p.Of != nil {
		p.Noun = group // the middle of a loop is in the loop
	}
	if i < 0 && (p.Of == nil || !h.hasGroups(group, p)) {
		h.inBlocks = true
		i = h.next(p.Noun)
		h.inBlocks = false
	}
	if i < 0 {
		h.missing(p.Noun, 1)
	} else {
		h.overSpaces = h.overSpaces || slices.ContainsFunc(h.base[min(h.at, i):i], func(passed int) bool { return h.stitch(passed).IsSpace() })
		h.at, h.sub, h.held = max(i+1, h.at), 0, i
	}
	return i
}

// groupAhead finds the middle of the next group of stitches that were worked
// together in one place.
func (h *hand) groupAhead(group syntax.Noun, p syntax.Place) int {
	unnamed := group.Kind == syntax.NounStitch && h.unnamedGroups(group.Stitch)
	for i := h.at; i < h.end; i++ {
		s := h.stitch(h.base[i])
		if s.Object == 0 || group.Kind == syntax.NounStitch && s.Own == "" && !h.isStitch(s, group.Stitch) && !unnamed {
			continue
		}
		from, j := i, i
		for j < h.end && h.stitch(h.base[j]).Object == s.Object {
			j++
		}
		for from > 0 && h.stitch(h.base[from-1]).Object == s.Object {
			from--
		}
		before, after := h.comingRound(from, j)
		middle := from + (j-from+after-before-1)/2
		if middle < h.at || middle >= len(h.base) {
			i = j - 1
			continue // the hook is past its middle: the next one is meant
		}
		if p.Noun.Kind == syntax.NounSpace {
			if m := h.find(1, p.Noun, i, j); m >= 0 {
				return m
			}
			if p.Noun.Length.Written() {
				i = j - 1
				continue // there is none in this one
			}
		}
		return middle
	}
	return -1
}

// hasGroups tells whether the row below has any of the groups that a place names, also
// where the hook is past them.
func (h *hand) hasGroups(group syntax.Noun, p syntax.Place) bool {
	if group.Kind == syntax.NounSpace {
		return false
	}
	start := *h
	start.at = 0
	return start.groupAhead(group, p) >= 0
}

// comingRound is how many stitches of a group that fills the places from one to another
// stand before the first and after the last of them, where a round begins within it.
func (h *hand) comingRound(from, to int) (before, after int) {
	n := len(h.base)
	if !h.round || from > 0 && to < n || from == 0 && to == n {
		return 0, 0
	}
	object := h.stitch(h.base[from]).Object
	for from == 0 && before < n && h.stitch(h.base[n-1-before]).Object == object {
		before++
	}
	for to == n && after < n && h.stitch(h.base[after]).Object == object {
		after++
	}
	return before, after
}

// unnamedGroups tells whether a word names groups, and the row below was not worked
// by name: its groups are meant.
func (h *hand) unnamedGroups(ref syntax.StitchRef) bool {
	k, own := h.words.stitch(ref)
	group := own != nil && len(own.body) > 0 || own == nil && k != nil && k.Class == stitch.Group
	return group && !slices.ContainsFunc(h.base, func(i int) bool { return h.isStitch(h.stitch(i), ref) })
}

// intoRing works n stitches into a ring, which has room for any number.
func (h *hand) intoRing(k *stitch.Stitch, own *ownStitch, n int) {
	if h.base == nil && (h.chains == 0 || !h.begun && len(h.row) == 0) {
		h.ring = true
	}
	h.round, h.loose, h.full = true, true, true
	h.settle(k)
	held := h.held
	for range n {
		if h.stopped() {
			return
		}
		h.into(k, own, 1, -1)
	}
	h.held = held
}

// alongEdge works along row ends: so many as the pattern says, or one in each. How
// many `evenly` is, only the count can tell that the row states.
func (h *hand) alongEdge(k *stitch.Stitch, n int, numbered bool, p syntax.Place) {
	h.edge, h.full = true, true
	h.settle(k)
	switch {
	case p.Number.Written():
		n *= p.Number.At(h.size)
	case p.Each && p.Noun.Kind == syntax.NounRowEnd && h.rows > 0:
		n *= h.rows
	case !numbered && h.lastWork && !h.nested && h.plainlyStated() > h.rowMade:
		n, h.trusting = h.plainlyStated()-h.rowMade, true
	case !numbered:
		h.begun = true
		h.lose()
		return
	}
	h.make(k, "", n, -1, 1)
}

// plainlyStated is how many stitches the row says it makes, whatever kind they are
// of, 0 where it counts several kinds or none.
func (h *hand) plainlyStated() int {
	if h.stated == nil || len(h.stated.Parts) != 1 || h.stated.Change != 0 {
		return 0
	}
	switch h.stated.Parts[0].Noun.Kind {
	case syntax.NounNone, syntax.NounAny, syntax.NounStitch:
		return min(h.stated.Parts[0].Number.At(h.size), maxRow)
	}
	return 0
}

// lay makes the chains on the hook the foundation when a row is worked into
// them without `from hook`.
func (h *hand) lay() {
	if h.base == nil && !h.ring && h.known && h.chains > 0 && len(h.row) == 0 {
		h.foundation()
	}
}
