package fabric

import (
	"slices"

	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// repeat works a repeat. tail is what the row says after it, which a repeat
// that runs to the end must leave room for; nil where nobody knows.
func (h *hand) repeat(r *syntax.Repeat, tail []syntax.Clause) {
	h.works = h.works || len(r.Body) > 0
	if r.First > 0 {
		turned := *r
		turned.Body, turned.First = r.InOrder(), 0
		r = &turned
	}
	if turnsWithin(r.Body) && len(h.branches) == 0 {
		h.lose() // each time is a row of its own
		return
	}
	defer func() { h.leadSkip = leadingSkip(r, h.size) }()
	if !h.nested && h.chains == 0 && len(h.row) > 0 && h.round && h.onlySlips() && !h.slipsAlong(r.Body) {
		h.arrive()
	}
	switch {
	case h.chains == 0:
		h.begun = true // chains inside a repeat are no beginning chain
	case h.spare && !h.counts.Said && closedTogether(r.Body):
		h.chains, h.begun = 0, true // it only rises to where the first of the clusters is worked
	case !h.begun && (h.base != nil || h.ring) && h.firstStitch(r.Body) != nil:
		h.settle(h.mainOf(r.Body)) // nor do they make one longer
	}
	nested := h.nested
	h.nested = true
	defer func() { h.nested = nested }()
	switch r.Limit {
	case syntax.Times, syntax.More, syntax.TimesOrAll:
		h.times(r)
	default:
		h.toEnd(r, tail)
	}
}

// slipsAlong tells whether a repeat works slip stitches, and picots between them, as all the round does: those before it
// lead nowhere.
func (h *hand) slipsAlong(body []syntax.Clause) bool {
	slips := false
	for i, c := range body {
		if isChain(c.Node) && i+1 < len(body) && len(placesOf(body[i+1].Node)) == 1 && placesOf(body[i+1].Node)[0].From == syntax.FromHook {
			continue // `ch 3, sl st in 3rd ch from hook`
		}
		w, works := c.Node.(*syntax.Work)
		if !works {
			return false
		}
		k, _ := h.words.stitch(w.Stitch)
		if k == nil || k.Class != stitch.Slip && k.Class != stitch.Picot {
			return false
		}
		slips = slips || k.Class == stitch.Slip
	}
	return slips
}

// closedTogether tells whether what a repeat works first is closed into one.
func closedTogether(body []syntax.Clause) bool {
	for _, c := range body {
		switch n := c.Node.(type) {
		case *syntax.Chain, *syntax.Remark:
		case *syntax.Work:
			return n.HeldBack
		default:
			return false
		}
	}
	return false
}

// turnsWithin tells whether a repeat turns the work and then works on.
func turnsWithin(body []syntax.Clause) bool {
	for i, c := range body {
		if turn, ok := c.Node.(*syntax.Turn); ok && !turn.Not && !turn.Rotate && !turn.OtherSide {
			return worksOn(body[i+1:])
		}
	}
	return false
}

// leadingSkip is how many places a repeat passes over before anything else.
func leadingSkip(r *syntax.Repeat, size int) int {
	if len(r.Body) == 0 {
		return 0
	}
	if skip, ok := r.Body[0].Node.(*syntax.Skip); ok {
		return skip.Place.Number.Or(size, 1)
	}
	return 0
}

// times works a repeat that says how often.
func (h *hand) times(r *syntax.Repeat) {
	n := r.Number.Or(h.size, 1)
	switch r.Limit {
	case syntax.More:
		n++
	case syntax.TimesOrAll:
		if r.Starred || r.Whole {
			h.met |= ReadTimesInAll
			if r.Starred == (h.choose&ReadTimesInAll == 0) {
				n++ // without a star it is N in all, unless only N more comes out
			}
		}
	}
	span := h.span
	for i := range max(n, 0) {
		if h.stopped() {
			return
		}
		before := len(h.faults)
		h.origin = h.at
		h.list(h.lastTime(r, i == n-1))
		if len(h.faults) > before && h.ranOut(before) {
			// name the repeat, with what the row below had for it
			h.faults[before].Span = span
			if rest := n - 1 - i; rest > 0 {
				h.overrun(r, rest, before)
				return
			}
		}
	}
	h.span, h.repeated = span, n
	if !h.replaces(r) {
		h.workEnding(r)
	}
	if r.Mirrored && h.remaining(syntax.Noun{}) > 0 {
		h.lose() // what it ends with is not said
	}
}

// lastTime is the body as the last repeat works it.
func (h *hand) lastTime(r *syntax.Repeat, last bool) []syntax.Clause {
	switch {
	case !last:
	case r.Stops && r.StopAt >= 0:
		return r.Body[:r.StopAt]
	case r.Omits != nil:
		for i := len(r.Body) - 1; i >= 0; i-- {
			if _, chain := r.Omits.(*syntax.Chain); chain == isChain(r.Body[i].Node) && (chain || usesPlaces(r.Body[i])) {
				return r.Body[:i]
			}
		}
	case h.replaces(r):
		for i := len(r.Body) - 1; i >= 0; i-- {
			if usesPlaces(r.Body[i]) {
				return append(slices.Clone(r.Body[:i]), r.Ending...)
			}
		}
	}
	return r.Body
}

func isChain(n syntax.Node) bool {
	_, ok := n.(*syntax.Chain)
	return ok
}

// replaces tells whether the ending stands in the stead of the last repeat's
// last step.
func (h *hand) replaces(r *syntax.Repeat) bool {
	if len(r.Ending) == 0 || r.Replaces {
		return r.Replaces
	}
	h.met |= ReadEndingReplaces
	return h.choose&ReadEndingReplaces != 0
}

// ranOut tells whether a fault since index from means that places ran out. A branch that comes home
// may have taken some back.
func (h *hand) ranOut(from int) bool {
	for _, f := range h.faults[min(from, len(h.faults)):] {
		if f.Kind == RowOver || f.Kind == PlaceAbsent || f.Kind == StemExhausted {
			return true
		}
	}
	return false
}

// overrun works the rest of a repeat for which there are no places, adding
// what it lacks to the fault that was already found.
func (h *hand) overrun(r *syntax.Repeat, rest, fault int) {
	lacking := 0
	for range rest {
		if h.stopped() {
			return
		}
		from := len(h.faults)
		h.list(r.Body)
		for _, f := range h.faults[from:] {
			if f.Kind == RowOver {
				lacking += f.N
			}
		}
		h.faults = h.faults[:from]
	}
	h.faults[fault].N += lacking
}

// toEnd works a repeat that goes on until the places are used up.
func (h *hand) toEnd(r *syntax.Repeat, tail []syntax.Clause) {
	if h.ring && len(h.base) == 0 || len(r.Body) == 0 {
		h.list(r.Body)
		if r.ByTurns {
			h.lose() // a ring has no end to go to
		}
		return
	}
	if len(tail) > 0 && inCorners(tail[0].Node) && h.count(syntax.Noun{Kind: syntax.NounCorner}) > 0 {
		h.lose() // how many there are up to each corner is not said
	}
	end := h.end
	if r.Limit == syntax.ToPlace {
		to := *r
		to.Limit = syntax.ToLast
		if stop := h.landmarkOf(syntax.ToLimit{Kind: syntax.ToNext, Noun: r.Last.Noun}); stop >= h.at {
			h.end = stop
		} else {
			to.Limit = syntax.Measured // it is no place of the row below
		}
		r = &to
	} else if r.Limit == syntax.ToLast {
		if limit := h.limit(r.Last.Number.At(h.size), r.Last.Noun); limit < h.end {
			h.end = max(limit, h.at)
		}
	}
	if h.passesChain(leadingSkip(r, h.size)) {
		h.lose()
	}
	h.lay()
	h.standAtFirst(r, tail)
	span, from, made := h.span, h.at, h.rowMade
	after := h.after
	h.after = append(slices.Clone(r.Ending), after...)
	attempts := h.attempts(r)
	for i := range attempts {
		attempts[i].hand.after = after
	}
	h.after = after
	if len(attempts) == 1 && r.Limit != syntax.ToLast && h.at < h.end {
		h.list(r.Body) // not even one fits: what is missing is said where it runs out
		h.upTo(end)
		h.full = true
		return
	}
	best := h.choosing(r, attempts, tail, end)
	*h = best
	h.span = span
	if !h.ring && h.at == from && h.end > from && worksOn(r.Body) {
		h.lose() // it uses none of the row below: how often it is worked is not said
	}
	if r.Limit == syntax.Measured || r.Mirrored && len(r.Ending) == 0 && h.remaining(syntax.Noun{}) > 0 {
		h.lose()
	}
	h.endAtBeginning(r, from, made, tail)
	h.remainder(r, from, attempts[len(attempts)-1].times, !worksOn(tail) && len(r.Ending) == 0)
	h.upTo(end)
	h.namedNext = r.Limit == syntax.ToLast
	if r.Limit == syntax.ToEnd || r.Limit == syntax.Unstated {
		h.full = h.full || tail != nil && !worksOn(tail) && len(r.Ending) == 0
	}
	if !r.Stops && !h.replaces(r) {
		h.workEnding(r)
	}
}

// standAtFirst begins a round on its first stitch where the round closes with chains
// from the last stitch of a repeat that begins with them: `*ch 3, sc in next sc;
// rep from * around, ch 3, join`.
func (h *hand) standAtFirst(r *syntax.Repeat, tail []syntax.Clause) {
	if !h.round || h.ring || h.at > 0 || len(h.base) == 0 || len(h.row) > 0 || len(tail) < 2 || !isChain(r.Body[0].Node) || !isChain(tail[0].Node) || len(r.Ending) > 0 {
		return
	}
	if _, joins := tail[1].Node.(*syntax.Join); joins && !h.stitch(h.base[0]).IsSpace() {
		h.next(syntax.Noun{})
	}
}

// endAtBeginning works as much of a last repeat as there is room for, where the
// rest of it is what the round began with: `sc in first 3 sts, *ch 3, skip 1, sc in
// next 3 sts; rep from * around, join`, over what is skipped last.
func (h *hand) endAtBeginning(r *syntax.Repeat, from, made int, tail []syntax.Clause) {
	if made == 0 || from == 0 || h.repeated == 0 || h.at >= h.end || !h.round || !h.known || h.worksIn(tail) || h.worksIn(r.Ending) || r.Stops || r.Limit == syntax.ToLast {
		return
	}
	if len(tail) > 0 && isChain(tail[0].Node) {
		return // it says itself how the round closes
	}
	for k := len(r.Body) - 1; k > 0; k-- {
		trial := *h
		trial.list(r.Body[:k])
		if trial.ranOut(len(h.faults)) {
			continue
		}
		again := trial
		again.list(r.Body[k:])
		solid := h.whole() && !h.loose
		if worksOn(r.Body[:k]) && again.rowMade-trial.rowMade == made && (!solid || trial.at == trial.end && h.placesOf(r.Body[k:]) == from) {
			*h = trial
		}
		return
	}
}

// worksIn tells whether steps work more than the slip stitch that joins.
func (h *hand) worksIn(steps []syntax.Clause) bool {
	return slices.ContainsFunc(steps, func(c syntax.Clause) bool { return usesPlaces(c) && !h.isSlip(c.Node) })
}

// placesOf is how many places some steps use, told by where the repeat at work was
// worked last.
func (h *hand) placesOf(steps []syntax.Clause) int {
	trial := *h
	trial.at = trial.origin
	trial.list(steps)
	return trial.at - h.origin
}

// workEnding works the ending that follows a last repeat.
func (h *hand) workEnding(r *syntax.Repeat) {
	h.ending = true
	h.list(r.Ending)
	h.ending = false
}

// attempt is the state after so many whole repeats.
type attempt struct {
	hand  hand
	times int
}

// maxBack is how many repeats fewer than the most are tried, to leave room
// for what follows.
const maxBack = 3

// copied is how many stitches are copied in the time that a clause is worked.
const copied = 16

// attempts works the body as often as it fits and keeps the last few states.
func (h *hand) attempts(r *syntax.Repeat) []attempt {
	kept := append(make([]attempt, 0, maxBack+2), attempt{*h, 0})
	for n := 1; !h.stopped(); n++ {
		at, sub, faults, open := h.at, h.sub, len(h.faults), len(h.branches)
		h.origin = at
		h.list(round(r, n))
		h.closeDone()
		if h.ranOut(faults) || n > 1 && !h.known && !kept[len(kept)-1].hand.known {
			break
		}
		if h.at == at && h.sub == sub || len(h.branches) > open {
			if n == 1 {
				kept = append(kept, attempt{*h, n}) // it uses no place, or comes home nowhere: worked once
			}
			break
		}
		h.repeated = n
		kept = append(kept, attempt{*h, n})
		if len(kept) > maxBack+1 {
			kept = slices.Delete(kept, 0, 1)
		}
		if h.at >= h.end {
			break
		}
	}
	for i := range kept {
		kept[i].hand.met |= h.met // also what the attempt that failed met
	}
	// slices grown past a kept state may share its memory: cut them to length, so
	// that who goes on copies them
	*h.budget -= len(kept) * len(h.fresh) / copied
	for i := range kept {
		k := &kept[i].hand
		k.fresh = k.fresh[:len(k.fresh):len(k.fresh)]
		k.row = k.row[:len(k.row):len(k.row)]
		k.faults = k.faults[:len(k.faults):len(k.faults)]
		k.steps = k.steps[:len(k.steps):len(k.steps)]
		k.openings, k.run = slices.Clip(k.openings), slices.Clip(k.run)
	}
	return kept
}

// round is what a repeat works for the nth time: its body, or the one step of it whose turn
// it is.
func round(r *syntax.Repeat, n int) []syntax.Clause {
	if !r.ByTurns {
		return r.Body
	}
	turn := (n - 1) % len(r.Body)
	return r.Body[turn : turn+1]
}

// choosing picks how many repeats leave room for what the row says next.
func (h *hand) choosing(r *syntax.Repeat, tries []attempt, tail []syntax.Clause, end int) hand {
	most := tries[len(tries)-1].hand
	if r.Stops && r.StopAt >= 0 || r.Omits != nil || h.replaces(r) {
		return h.stopping(r, tries, end)
	}
	after := append(slices.Clone(r.Ending), tail...)
	if r.Limit == syntax.ToLast || !worksOn(after) {
		return most
	}
	best, bestCost := most, -1
	for i := len(tries) - 1; i >= 0; i-- {
		trial := tries[i].hand
		trial.nested = false
		trial.upTo(end)
		cost := trial.cost(after)
		best.met |= trial.met
		if bestCost < 0 || cost < bestCost {
			met := best.met
			best, bestCost = tries[i].hand, cost
			best.met |= met
		}
		if cost == 0 {
			break
		}
	}
	return best
}

// stopping works a last repeat that ends otherwise than the others.
func (h *hand) stopping(r *syntax.Repeat, tries []attempt, end int) hand {
	for i := len(tries) - 1; i >= 0; i-- {
		trial := tries[i].hand
		from := len(trial.faults)
		trial.upTo(end)
		trial.list(h.lastTime(r, true))
		if !trial.ranOut(from) {
			return trial
		}
	}
	return tries[len(tries)-1].hand
}

// cost is how badly the rest of a row fits: faults, and places left over.
func (h *hand) cost(rest []syntax.Clause) int {
	from := len(h.faults)
	h.list(rest)
	cost := len(h.faults) - from
	if !h.full && h.whole() {
		cost += h.remaining(syntax.Noun{})
	}
	return cost
}

// worksOn tells whether clauses use places.
func worksOn(list []syntax.Clause) bool { return slices.ContainsFunc(list, usesPlaces) }

// usesPlaces tells whether a clause uses places of what lies below. One that is not counted may
// use what is left.
func usesPlaces(c syntax.Clause) bool {
	switch n := c.Node.(type) {
	case *syntax.Work, *syntax.Group, *syntax.Skip, *syntax.Repeat, *syntax.Likewise, *syntax.Unread:
		return true
	case *syntax.Bracket:
		return worksOn(n.Body)
	}
	return false
}

// remainder reports a repeat to the end that leaves places over.
func (h *hand) remainder(r *syntax.Repeat, from, times int, last bool) {
	over := h.remaining(syntax.Noun{})
	if over == 0 || !h.whole() || h.loose || !h.known || h.closesPast(r, over) {
		return
	}
	base := h.end - from
	if r.Limit != syntax.ToLast && !last {
		// the rest of the row uses them, or the row's end reports them
		if times > 0 && base > over && !r.ByTurns {
			h.filling = &Fault{Kind: RepeatRemainder, Unit: (base - over) / times, Base: base, Span: h.span}
		}
		return
	}
	if r.ByTurns {
		h.lose() // a turn of several stitches is cut short, and how is not said
		return
	}
	unit := 0
	if times > 0 {
		unit = (base - over) / times
	}
	if unit == 0 {
		unit = h.unitOf(r)
	}
	if unit == 0 {
		return
	}
	h.fault(Fault{Kind: RepeatRemainder, N: over, Unit: unit, Base: base, Fits: fitting(len(h.base), over, unit), Span: h.span})
	h.at, h.sub = h.end, 0
}

// closesPast tells whether a round closes with chains over the places that the
// next repeat would have skipped: `sc in first st, ch 3, *skip 1, sc in next st,
// ch 3; rep from * around, join`, or `*ch 3, skip 1, sc in next st; rep from *
// around, ch 3, join`.
func (h *hand) closesPast(r *syntax.Repeat, over int) bool {
	body, rest := r.Body, h.after
	if !h.round || len(rest) == 0 {
		return false
	}
	chains := h.chains > 0
	if isChain(rest[0].Node) && len(body) > 1 && isChain(body[0].Node) {
		body, rest, chains = body[1:], rest[1:], true
	}
	if !chains || len(rest) == 0 {
		return false
	}
	_, joins := rest[0].Node.(*syntax.Join)
	skip, skips := body[0].Node.(*syntax.Skip)
	return joins && skips && skip.Place.Number.Or(h.size, 1) == over
}

// unitOf is how many places one repeat asks for, where not even one fits.
func (h *hand) unitOf(r *syntax.Repeat) int {
	trial := *h
	trial.base = slices.Clone(h.base)
	for len(trial.base)-trial.at < 64 {
		trial.base = append(trial.base, trial.base...)
	}
	trial.end = len(trial.base)
	trial.list(r.Body)
	return trial.at - h.at
}

// fitting gives the nearest counts of the row below that a repeat fits.
func fitting(base, over, unit int) []int {
	low, high := base-over, base-over+unit
	if low < unit {
		return []int{high}
	}
	return []int{low, high}
}
