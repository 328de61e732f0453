package fabric

import (
	"slices"
	"strconv"

	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

func itoa(n int) string { return strconv.Itoa(n) }

// do works one clause.
func (h *hand) do(c syntax.Clause) {
	h.span = c.Span
	*h.budget--
	h.closeDone()
	h.node(c.Node)
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
		if h.at < h.end {
			h.left = append(h.base[h.at:h.end:h.end], h.left...)
		}
		h.at, h.full = h.end, true
	case *syntax.Marker:
		h.mark(n)
	case *syntax.Shaping:
		h.shape(n)
	case *syntax.Along:
		h.works = true
		h.lose() // how many stitches go along row ends is the maker's choice
	case *syntax.Made:
		h.objects = append(slices.Clip(h.objects), n.Stitch.Word)
	case *syntax.Group:
		h.group(n)
	case *syntax.Bracket:
		h.list(n.Body)
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
		h.loop = n.Loop
	case *syntax.Branch:
		h.openBranch(n)
	case *syntax.Return:
		h.returnTo(n)
	case *syntax.NoJoin:
		h.round = true
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
		h.do(c)
	}
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

// mark puts a marker in one of the stitches made.
func (h *hand) mark(n *syntax.Marker) {
	of := h.row
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

// marked finds the next place that carries a marker, -1 for none.
func (h *hand) marked() int {
	for i := h.at; i < h.end; i++ {
		if slices.Contains(h.marks, h.base[i]) {
			return i
		}
	}
	return -1
}

func (h *hand) chain(n *syntax.Chain) {
	if !h.nested && len(h.row) > 0 && h.onlySlips() && h.round && h.chains == 0 {
		h.arrive()
	}
	if !n.Number.Written() && n.Multiple.Written() {
		h.lose()
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
	if v := n.Number.At(h.size); v > 0 {
		h.chains += v
		h.inner = h.nested
		if n.Counts.Said {
			h.counts = n.Counts
		}
	}
}

// shape makes the row so many stitches more or fewer, wherever they fall.
func (h *hand) shape(n *syntax.Shaping) {
	count := n.Number.At(h.size)
	switch {
	case !h.works || len(h.row) == 0:
		h.lose()
	case n.Less:
		count = min(count, len(h.row))
		h.row = h.row[:len(h.row)-count]
		h.rowMade -= count
	default:
		h.make(h.main, "", count, -1, 0)
	}
}

// effect is what one working of a stitch does: how many places it uses, and
// how many stitches of what kind it makes.
type effect struct {
	kind        *stitch.Stitch
	uses, makes int
}

// effectOf tells what a stitch does; inc and dec take the row's own stitch.
func (h *hand) effectOf(k *stitch.Stitch) effect {
	switch k.Class {
	case stitch.Increase:
		return effect{h.main, 1, max(k.Makes, 2)}
	case stitch.Decrease:
		together := stitch.ByID(h.main.ID + itoa(max(k.Uses, 2)) + "tog")
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
	h.lastStitch = ref
	if w.Counts.Said && h.chains > 0 {
		h.counts = w.Counts
	}
	k, own := h.words.stitch(ref)
	if k == nil || k.Class == stitch.Tunisian {
		h.works = true
		h.lose()
		return
	}
	h.works = true
	if w.Loop != syntax.BothLoops {
		saved := h.loop
		h.loop = w.Loop
		defer func() { h.loop = saved }()
	}
	times := w.Times.Or(h.size, 1)
	for range times {
		if h.stopped() {
			return
		}
		h.workOnce(w, k, own)
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
	if len(w.Places) == 0 {
		h.workHere(k, own, n, w.Evenly)
		return
	}
	for _, p := range w.Places {
		if h.joinsWith(w, k, p) {
			return
		}
		h.workAt(k, own, n, w.Number.Written(), p, w.Evenly)
	}
}

// workHere works n times with no place named: one in each of the next n, or
// all in the place of the group.
func (h *hand) workHere(k *stitch.Stitch, own *ownStitch, n int, evenly bool) {
	switch {
	case h.fixed || h.ring && len(h.base) == 0:
		for range n {
			h.into(k, own, 1, h.held)
		}
	case evenly:
		h.settle(k)
		h.at, h.full = h.end, true
		h.make(k, "", n, -1, 1)
	default:
		h.nextPlaces(k, own, 1, n, syntax.Noun{})
	}
}

// into works a stitch n times into one place.
func (h *hand) into(k *stitch.Stitch, own *ownStitch, n, place int) {
	if own != nil {
		for range n {
			h.own(own, place)
		}
		return
	}
	e := h.effectOf(k)
	if k.Class == stitch.Group {
		h.settle(k)
		for range n {
			h.objects = append(slices.Clip(h.objects), k.Term(h.words.dialect).Abbr)
		}
		h.worked(func() { h.make(plainOrSelf(k), k.Term(h.words.dialect).Abbr, n*e.makes, place, 1) })
		return
	}
	h.make(e.kind, "", n*e.makes, place, 1)
}

func plainOrSelf(k *stitch.Stitch) *stitch.Stitch {
	if k.Base != nil {
		return k.Base
	}
	return k
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

// own works one of the pattern's own stitches into a place.
func (h *hand) own(own *ownStitch, place int) {
	if h.within++; h.within > maxOwn {
		h.lose() // a stitch that is defined by itself
		h.within--
		return
	}
	defer func() { h.within-- }()
	h.objects = append(slices.Clip(h.objects), own.name)
	if own.body == nil {
		makes := own.makes.Or(h.size, max(own.kind.Makes, 1))
		h.worked(func() { h.make(own.kind, own.name, makes, place, 1) })
		return
	}
	h.settle(h.mainOf(own.body))
	from := h.made()
	h.worked(func() { h.inPlace(own.body, place) })
	for i := from; i < h.made(); i++ {
		h.stitch(i).Own = own.name
	}
}

// inPlace works clauses all into one place.
func (h *hand) inPlace(body []syntax.Clause, place int) {
	fixed, held := h.fixed, h.held
	h.fixed, h.held = true, place
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
	h.settle(k)
	for i := range m {
		if h.stopped() {
			return
		}
		place := h.held
		for u := range e.uses {
			j := h.next(noun)
			for j < 0 && h.forgotReturn() {
				j = h.next(noun)
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

// workAt works n stitches at a place that is named.
func (h *hand) workAt(k *stitch.Stitch, own *ownStitch, n int, numbered bool, p syntax.Place, evenly bool) {
	switch {
	case p.From == syntax.FromHook:
		h.fromHook(k, own, n, p)
		return
	case p.Noun.Kind == syntax.NounRing, p.Noun.Kind == syntax.NounSpace && h.ring && h.count(p.Noun) == 0:
		h.intoRing(k, own, n)
		return
	case p.Noun.Kind == syntax.NounOther || p.Of != nil && p.Of.Noun.Kind == syntax.NounOther:
		h.otherSide()
		p.Noun, p.Of = syntax.Noun{}, nil
		if p.Pick == syntax.PickNext && !p.Number.Written() && numbered && n > 1 {
			h.nextPlaces(k, own, 1, n, syntax.Noun{})
			return
		}
	case p.Noun.Kind == syntax.NounRowEnd || p.Noun.Kind == syntax.NounEdge:
		h.alongEdge(k, n*p.Number.Or(h.size, 1), numbered || p.Number.Written())
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
	switch {
	case p.Prep == syntax.Between:
		h.between(k, own, n, p)
	case p.Noun.Kind == syntax.NounMarker:
		h.inMarked(k, own, n)
	case p.Below > 0 || p.Row.Written():
		h.loose = true
		for range p.Number.Or(h.size, 1) {
			h.into(k, own, n, -1)
		}
	case p.Pick == syntax.PickSame, p.Noun.Kind == syntax.NounBase:
		h.sameAgain(k, own, n, p)
	case p.Pick == syntax.PickPrevious:
		h.into(k, own, n, max(h.skipped, 0))
	case p.Of != nil && p.Of.Each:
		h.eachLandmark(k, own, n, p)
	case p.Center, p.Of != nil && p.Of.Noun.Kind == syntax.NounStitch:
		h.landmark(k, own, n, p)
	case p.Each && p.Pick == syntax.PickNext && !p.Number.Written(), p.Pick == syntax.PickRemaining && !p.Number.Written(), p.To.Kind != syntax.ToNothing:
		h.each(k, own, n, p)
	case p.Pick == syntax.PickFirst || p.Pick == syntax.PickLast || p.Pick == syntax.PickNth:
		h.jump(k, own, n, p)
	case p.Noun.Kind == syntax.NounTurning && p.Pick == syntax.PickNext:
		h.jump(k, own, n, p)
	default:
		h.nextNamed(k, own, n, p)
	}
}

// inMarked works into the next marked stitch.
func (h *hand) inMarked(k *stitch.Stitch, own *ownStitch, n int) {
	i := h.marked()
	if i < 0 {
		h.noMarker()
		h.into(k, own, n, -1)
		return
	}
	h.goTo(i)
	h.worked(func() { h.placed(k, own, n, i, h.effectOf(k)) })
}

// eachLandmark works at every group of the row: `3 dc in ch-1 sp of each V-st`.
func (h *hand) eachLandmark(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	end := h.end
	if r := h.reserved(); r > 0 {
		h.end = max(h.at, h.end-r)
	}
	worked := false
	for h.groupAhead(p.Of.Noun, p) >= 0 && !h.stopped() {
		h.landmark(k, own, n, p)
		worked = true
	}
	if !worked {
		h.missing(p.Of.Noun, 1)
	}
	h.at, h.sub, h.full = h.end, 0, true
	h.upTo(end)
}

// reserved is how many places at the end the rest of the row works into by
// name: an `each st across` before `dc in top of tch` leaves it alone.
func (h *hand) reserved() int {
	if h.nested {
		return 0
	}
	for _, c := range h.after {
		var places []syntax.Place
		switch n := c.Node.(type) {
		case *syntax.Work:
			places = n.Places
			if n.Joins {
				continue
			}
		case *syntax.Group:
			places = []syntax.Place{n.Place}
		}
		for _, p := range places {
			if p.Noun.Kind == syntax.NounTurning || p.Of != nil && p.Of.Noun.Kind == syntax.NounTurning {
				return 1
			}
		}
	}
	return 0
}

// between works into the gaps between stitches: one gap for each pair named,
// or for each stitch.
func (h *hand) between(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	h.loose = true
	h.settle(k)
	gaps, each := 1, 1
	switch {
	case p.Each || p.To.Kind != syntax.ToNothing:
		gaps = h.remaining(syntax.Noun{})
	case p.Noun.Kind == syntax.NounStitch || p.Noun.Kind == syntax.NounAny:
		each = p.Number.Or(h.size, 1)
	}
	for range gaps {
		for range each {
			if h.next(syntax.Noun{}) < 0 {
				h.missing(syntax.Noun{}, 1)
			}
		}
		h.into(k, own, n, -1)
	}
}

// nextNamed works at `next N` of something.
func (h *hand) nextNamed(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	m := p.Number.Or(h.size, 1)
	if m <= 0 {
		return
	}
	if p.Pick == syntax.PickRemaining && h.remaining(p.Noun) < m && len(h.left) > 0 {
		h.base = append(slices.Clip(h.base[:h.at]), h.left...) // stitches left unworked come back
		h.end, h.left = len(h.base), nil
	}
	if p.Noun.Kind == syntax.NounSpace || p.Noun.Kind == syntax.NounCorner || p.Noun.Kind == syntax.NounGroup {
		h.loose = true
	}
	uses := h.usesOf(k, own).uses
	if uses > 1 {
		// `dc3tog over next 3 sts` is one; `sc2tog over next 8 sts` is four
		times := max(1, m/uses)
		if m > 1 && m%uses != 0 {
			h.fault(Fault{Kind: PlaceAbsent, Name: itoa(uses) + " sts for each " + h.wordFor(k), There: itoa(m), N: m})
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
	h.nextPlaces(k, own, n, m, p.Noun)
}

func (h *hand) wordFor(k *stitch.Stitch) string {
	if t := k.Term(h.words.dialect); t.Abbr != "" {
		return t.Abbr
	}
	return k.ID
}

// sameAgain works into the place that was worked into last.
func (h *hand) sameAgain(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	h.settle(k)
	if h.held < 0 && h.at < len(h.base) {
		if i := h.next(p.Noun); i < 0 {
			h.next(syntax.Noun{})
		}
	}
	h.worked(func() { h.into(k, own, n, h.held) })
}

// each works into every place of a kind, or into each up to a limit.
func (h *hand) each(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	h.settle(k)
	if h.ring && len(h.base) == 0 {
		h.intoRing(k, own, n)
		return
	}
	end := h.end
	if r := h.reserved(); r > 0 && p.To.Kind != syntax.ToLastN {
		h.end = max(h.at, h.end-r)
	}
	switch p.To.Kind {
	case syntax.ToLastN:
		if limit := h.limit(p.To.Number.At(h.size), p.To.Noun); limit < h.end {
			h.end = max(limit, h.at)
		}
	case syntax.ToMarker, syntax.ToCorner:
		h.eachToLandmark(k, own, n, p)
		return
	}
	count := h.remainingAny(p)
	if p.Number.Written() {
		count = min(count, p.Number.At(h.size))
	}
	e := h.usesOf(k, own)
	if count == 0 && p.To.Kind != syntax.ToLastN {
		h.missing(p.Noun, 1)
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
	if p.To.Kind == syntax.ToTheEnd || !p.Number.Written() && p.To.Kind == syntax.ToNothing {
		h.closeEach(p)
	}
	h.upTo(end)
}

// closeEach ends an `each … across`: what it names none of is passed over.
// In solid work every stitch must be named.
func (h *hand) closeEach(p syntax.Place) {
	if over := h.remaining(syntax.Noun{}); over > 0 && h.whole() && !h.loose && h.end == len(h.base) {
		h.fault(Fault{Kind: RowShort, N: over, Base: len(h.base), There: h.describe(), Name: h.nounName(p.Noun)})
	}
	h.at, h.sub, h.full = h.end, 0, true
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
	for i := h.at; i < h.end; i++ {
		s := h.stitch(h.base[i])
		ok := h.accepts(s, p.Noun)
		for _, also := range p.Also {
			ok = ok || h.accepts(s, also)
		}
		if ok {
			h.at, h.sub, h.held = i+1, 0, i
			return i
		}
	}
	return -1
}

// eachToLandmark works up to the next corner; how far a marker is cannot be
// known here.
func (h *hand) eachToLandmark(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	h.loose = true
	stop := -1
	if p.To.Kind == syntax.ToMarker {
		if stop = h.marked(); stop < 0 {
			h.noMarker()
			return
		}
	}
	e := h.effectOf(k)
	for h.at < h.end && h.at != stop {
		s := h.stitch(h.base[h.at])
		if stop < 0 && s.IsSpace() && s.Object > 0 {
			return
		}
		if s.IsSpace() {
			h.at++
			continue
		}
		h.held = h.at
		h.at++
		h.placed(k, own, n, h.held, e)
	}
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
	case h.nested && h.origin > 0 && (p.Pick == syntax.PickFirst || p.Pick == syntax.PickNth && p.From == syntax.FromHere):
		// `1 dc in the first, 2 dc in the second, repeat`: counted anew each time
		i = h.ahead(max(p.Nth, 1), p.Noun)
	case p.Pick == syntax.PickFirst:
		i = h.nth(1, p.Noun, false)
		if p.Of != nil || p.From == syntax.FromEnd {
			i = h.nth(1, p.Noun, p.From == syntax.FromEnd)
		}
	case p.Pick == syntax.PickNth && p.Of != nil && p.Of.Noun.Kind == syntax.NounTurning:
		i = h.turningTop()
	case p.Pick == syntax.PickNth:
		i = h.nthAhead(p)
	case p.Noun.Kind == syntax.NounTurning:
		i = h.turningTop()
	default:
		i = h.limit(m, p.Noun)
		if m == 1 {
			i = h.nth(1, p.Noun, true)
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
	if i < h.at && p.Pick == syntax.PickLast && !h.full && m == 1 && !h.loose && h.whole() {
		h.missing(p.Noun, 1) // the last place is worked already
		h.makeRest(k, own, n, h.effectOf(k))
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
	if h.whole() && !h.loose && i > h.at {
		h.fault(Fault{Kind: RowShort, N: i - h.at, Base: len(h.base)})
	}
	h.at, h.sub = i, 0
	if e.uses > 1 && m >= e.uses {
		m = m / e.uses
	}
	h.nextPlaces(k, own, n, m, p.Noun)
}

// ahead finds the nth place of a kind since the repeat at work began.
func (h *hand) ahead(n int, noun syntax.Noun) int {
	for i := min(h.origin, h.end); i < h.end; i++ {
		if h.accepts(h.stitch(h.base[i]), noun) {
			if n--; n == 0 {
				return i
			}
		}
	}
	return -1
}

// nthAhead finds `the 3rd st`: counted from the row's beginning while that
// lies ahead, else from where the work is.
func (h *hand) nthAhead(p syntax.Place) int {
	if p.From == syntax.FromEnd {
		return h.nth(p.Nth, p.Noun, true)
	}
	if h.at > 1 || len(h.row) > 1 {
		skip := h.at
		for i := skip; i < h.end; i++ {
			if h.accepts(h.stitch(h.base[i]), p.Noun) {
				if p.Nth--; p.Nth == 0 {
					h.loose = true
					return i
				}
			}
		}
		return -1
	}
	h.loose = true
	return h.nth(p.Nth, p.Noun, false)
}

// turningTop finds the turning chain of the row below; where none counts, the
// last place.
func (h *hand) turningTop() int {
	for i := len(h.base) - 1; i >= 0; i-- {
		if h.stitch(h.base[i]).Turning {
			return i
		}
	}
	return -1
}

// landmark works at a place found by what it belongs to: `in center dc of
// next shell`. What is passed on the way may be left.
func (h *hand) landmark(k *stitch.Stitch, own *ownStitch, n int, p syntax.Place) {
	h.loose = true
	h.settle(k)
	group := p.Noun
	if p.Of != nil && p.Of.Noun.Kind != syntax.NounNone {
		group = p.Of.Noun
	}
	i := h.groupAhead(group, p)
	if i < 0 {
		i = h.next(p.Noun)
	}
	if i < 0 {
		h.missing(p.Noun, 1)
	} else {
		h.at, h.sub, h.held = max(i+1, h.at), 0, i
	}
	h.worked(func() { h.into(k, own, n, i) })
}

// groupAhead finds the middle of the next group of stitches that were worked
// together in one place.
func (h *hand) groupAhead(group syntax.Noun, p syntax.Place) int {
	for i := h.at; i < h.end; i++ {
		s := h.stitch(h.base[i])
		if s.Object == 0 || i > 0 && h.stitch(h.base[i-1]).Object == s.Object || group.Kind == syntax.NounStitch && s.Own == "" && !h.isStitch(s, group.Stitch) {
			continue
		}
		j := i
		for j < h.end && h.stitch(h.base[j]).Object == s.Object {
			j++
		}
		if p.Noun.Kind == syntax.NounSpace {
			for m := i; m < j; m++ {
				if h.accepts(h.stitch(h.base[m]), p.Noun) {
					return m
				}
			}
		}
		return (i + j - 1) / 2
	}
	return -1
}

// intoRing works n stitches into a ring, which has room for any number.
func (h *hand) intoRing(k *stitch.Stitch, own *ownStitch, n int) {
	if h.base == nil && h.chains == 0 && !h.ring || !h.begun && len(h.row) == 0 && !h.ring {
		if h.base == nil {
			h.ring = true
		}
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

// alongEdge works along row ends: a number where the pattern gives one,
// otherwise nobody can know.
func (h *hand) alongEdge(k *stitch.Stitch, n int, numbered bool) {
	h.loose, h.full = true, true
	h.settle(k)
	if !numbered {
		h.begun = true
		h.lose()
		return
	}
	h.make(k, "", n, -1, 1)
}

// lay makes the chains on the hook the foundation when a row is worked into
// them without `from hook`.
func (h *hand) lay() {
	if h.base == nil && !h.ring && h.known && h.chains > 0 && len(h.row) == 0 {
		h.foundation()
	}
}

// skip passes over places.
func (h *hand) skip(p syntax.Place) {
	h.lay()
	if len(h.base) > 0 && !h.begun {
		h.settle(h.main)
	}
	held := h.held
	h.skipped = h.at
	defer func() { h.held = held }()
	n := p.Number.Or(h.size, 1)
	if n <= 0 {
		return
	}
	switch {
	case p.Each || p.Pick == syntax.PickRemaining:
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
	case p.Noun.Kind == syntax.NounNone || p.Noun.Kind == syntax.NounAny:
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

// skipSpaces passes over chain spaces. The stitches before one are never
// passed with it: skipping names what lies next.
func (h *hand) skipSpaces(n int, noun syntax.Noun) {
	for i := range n {
		at := h.at
		j := h.next(noun)
		if j < 0 {
			h.missing(noun, n-i)
			break
		}
		for k := at; k < j; k++ {
			if s := h.stitch(h.base[k]); !s.IsSpace() {
				h.fault(Fault{Kind: PlaceAbsent, Name: h.nounName(noun), There: h.nameOf(s), N: 1})
				break
			}
		}
	}
	h.loose = true
}

func (h *hand) skipGroups(n int, p syntax.Place) {
	h.loose = true
	for range n {
		i := h.groupAhead(p.Noun, p)
		if i < 0 {
			h.missing(p.Noun, 1)
			return
		}
		object := h.stitch(h.base[i]).Object
		for i < h.end && h.stitch(h.base[i]).Object == object {
			i++
		}
		h.at, h.sub = i, 0
	}
}

// group works clauses all into one place, or into each of several.
func (h *hand) group(g *syntax.Group) {
	h.works = true
	p := g.Place
	h.lay()
	h.settleFor(g.Body)
	switch {
	case h.fixed || p.Noun.Kind == syntax.NounRing:
		if h.base == nil {
			h.ring, h.round = true, true
		}
		h.loose, h.full = true, true
		h.list(g.Body)
		h.space()
	case p.Pick == syntax.PickSame:
		if h.held < 0 && h.at < len(h.base) {
			h.next(p.Noun)
		}
		h.worked(func() { h.inPlace(g.Body, h.held) })
	case p.Prep == syntax.Between:
		h.loose = true
		h.next(syntax.Noun{})
		h.worked(func() { h.inPlace(g.Body, -1) })
	case p.Each && !p.Number.Written() || p.To.Kind == syntax.ToTheEnd || p.Pick == syntax.PickRemaining:
		if p.Noun.Kind == syntax.NounSpace || p.Noun.Kind == syntax.NounCorner {
			h.loose = true
		}
		if h.remainingAny(p) == 0 {
			h.missing(p.Noun, 1)
		}
		for h.remainingAny(p) > 0 && !h.stopped() {
			i := h.nextAny(p)
			if i < 0 {
				break
			}
			h.worked(func() { h.inPlace(g.Body, i) })
		}
		h.closeEach(p)
	default:
		h.groupAt(g, p)
	}
}

func (h *hand) groupAt(g *syntax.Group, p syntax.Place) {
	if p.Noun.Kind != syntax.NounNone && p.Noun.Kind != syntax.NounAny && p.Noun.Kind != syntax.NounStitch && p.Noun.Kind != syntax.NounChain {
		h.loose = true
	}
	for range max(0, p.Number.Or(h.size, 1)) {
		i := -1
		switch {
		case p.Center || p.Of != nil && p.Of.Noun.Kind == syntax.NounStitch:
			h.loose = true
			group := p.Noun
			if p.Of != nil {
				group = p.Of.Noun
			}
			if i = h.groupAhead(group, p); i >= 0 {
				h.at, h.sub, h.held = max(h.at, i+1), 0, i
			}
		case p.Pick == syntax.PickFirst:
			if i = h.nth(1, p.Noun, false); i >= h.at {
				h.goTo(i)
			}
		case p.Pick == syntax.PickLast:
			if i = h.nth(1, p.Noun, true); i >= h.at {
				h.goTo(i)
			}
		case p.Noun.Kind == syntax.NounTurning:
			if i = h.turningTop(); i >= h.at {
				h.goTo(i)
			}
		default:
			i = h.next(p.Noun)
		}
		if i < 0 {
			h.missing(p.Noun, 1)
		}
		h.worked(func() { h.inPlace(g.Body, i) })
	}
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
				if p := plain(k); p.Class == stitch.Plain {
					return p
				}
			}
		case *syntax.Group:
			if k := h.firstStitch(n.Body); k != nil {
				return k
			}
		case *syntax.Repeat:
			if k := h.firstStitch(n.Body); k != nil {
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
