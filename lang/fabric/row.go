package fabric

import (
	"maps"
	"math/bits"
	"slices"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// startRow makes the hand ready for an instruction.
func (h *hand) startRow(index int, label syntax.Label) {
	switch {
	case label.Round:
		h.round = true
	case h.turned && !h.joined:
		h.round = false // rows from a ring, as a half circle is
	}
	if h.base != nil && !h.laid && !h.keeps {
		if !h.round && !h.turned && !h.notTurned || h.turned {
			h.base, h.outline = reverse(h.base), reverse(h.outline)
			h.reversed = true
		}
		h.laid = true
	}
	h.budget = new(maxSteps)
	h.rowIndex, h.clause, h.plainLine = index, 0, label.Kind == syntax.Unlabelled || label.Limb != ""
	if h.keeps {
		h.stepFrom = len(h.row)
		h.home, h.faults, h.steps, h.blame = nil, nil, nil, source.Span{}
		return
	}
	h.footing = nil
	switch {
	case h.other && len(h.beyond) > 0:
		h.around = append(slices.Clip(h.beyond), h.row...)
	case len(h.row) > 0:
		h.around = nil
	}
	onlyJoined := h.opened && !h.works // `Join yarn in first skipped st.` in a line of its own
	spiral := h.unjoined || h.spiral && h.round && !h.joined
	h.rowAtWork = rowAtWork{known: !h.adrift, loop: label.Loop, opened: onlyJoined, skipped: -1, gap: -1, brought: h.chains,
		turning: h.words.turns && label.Kind == syntax.Numbered && !label.Round && !label.Bare}
	h.spiral, h.unjoined = spiral, false
	h.toStart()
	h.other, h.full, h.loose, h.bySpaces, h.overSpaces, h.beyond = false, false, false, false, false, nil
	h.standInLast()
	h.closed, h.closer = h.closer, nil
}

// standInLast begins a round in the last space of the one below, where a stitch
// closed that into it.
func (h *hand) standInLast() {
	if n := len(h.base); h.inLast && h.round && n > 0 && h.stitch(h.base[n-1]).IsSpace() {
		h.base = append([]int{h.base[n-1]}, h.base[:n-1]...)
		h.at, h.held, h.spare = 1, 0, true
	}
	h.inLast = false
}

// endRow closes what the row left open and counts what it made.
func (h *hand) endRow() {
	h.closeDone()
	if b := h.innermost(); b != nil && h.homeward && h.workedOut(b) {
		h.pop()
	}
	if h.chains > 0 && !h.turned && len(h.row) > 0 && (h.inner || h.round && !h.joined) {
		h.space() // the last chains of a repeat or a round are its last space
	}
	if !h.goesOn {
		h.closeBranches()
	}
	if h.unworkedStem() && len(h.row) > 0 && !h.goesOn {
		h.lose() // the next row goes along it: what grows there is passed over in some way
	}
	fastens := h.onlySlips() && (h.plainLine || len(h.row) == 1) // one slip stitch is no row
	if h.works && h.known && !h.full && len(h.row) > 0 && !fastens && !h.continued() {
		h.leftOver()
	}
	if h.attached && h.known {
		h.edgePlaces()
	}
	h.moveMarkers()
	if h.turning && h.works && !h.joined && !h.turned && !h.notTurned && !h.goesOn {
		h.turned = true
		h.turns++
	}
}

// edgePlaces notes the places of an edging, and reports those that are another's.
func (h *hand) edgePlaces() {
	places := maps.Clone(h.edged)
	if places == nil {
		places = map[edged]int{}
	}
	f := Fault{Kind: EdgingOverlaps, Span: source.Span{Start: -1}}
	seen := map[int]bool{}
	for _, i := range h.row {
		s := h.stitch(i)
		if s.Into < 0 || seen[s.Into] {
			continue
		}
		seen[s.Into] = true
		at := edged{s.Into, s.Loop}
		if row, taken := places[at]; taken && row != h.rowIndex {
			f.N, f.Base = f.N+1, row
		}
		places[at] = h.rowIndex
	}
	if f.N > 0 {
		f.Fits = h.freeShift(seen)
		h.fault(f)
	}
	h.edged = places
}

// freeShift is by how many places an edging could be moved so that it shares none,
// the joining included: the nearest such number, none where there is no room.
func (h *hand) freeShift(used map[int]bool) []int {
	free := func(by int) bool {
		for i, place := range h.base {
			if !used[place] && i != h.joinedAt {
				continue
			}
			if i+by < 0 || i+by >= len(h.base) || h.edgedByOther(h.base[i+by]) {
				return false
			}
		}
		return true
	}
	for by := 1; by < len(h.base); by++ {
		for _, way := range [...]int{by, -by} {
			if free(way) {
				return []int{way}
			}
		}
	}
	return nil
}

// edgedByOther tells whether another edging is worked into a place.
func (h *hand) edgedByOther(place int) bool {
	for at := range h.edged {
		if at.place == place {
			return true
		}
	}
	return false
}

// leftOver reports what a row leaves of the row below: stitches, where none
// was passed over on the way to a landmark; else the spaces it is worked by.
func (h *hand) leftOver() {
	f := Fault{Kind: RowShort, Span: source.Span{Start: -1}}
	switch {
	case !h.loose:
		f.N, f.Base = h.remaining(syntax.Noun{}), h.count(syntax.Noun{})-h.stemSkipped
	case h.bySpaces && !h.overSpaces:
		sp := syntax.Noun{Kind: syntax.NounSpace}
		f.N, f.Base, f.Name = h.remaining(sp), h.count(sp), h.nounName(sp)
	}
	if f.N == 0 || h.other && h.tipFull && f.N == 1 || h.closesOver(f) || h.allInOneChain() || h.partOfRing() || h.leavesSlips() || h.onOneChain() || h.onlyBranches() {
		return
	}
	if h.filling != nil && f.Name == "" && h.whole() {
		f = *h.filling
		f.N = h.remaining(syntax.Noun{})
		f.Fits = fitting(len(h.base), f.N, f.Unit)
	}
	if f.Name == "" && h.count(syntax.Noun{Kind: syntax.NounChain}) > 0 && h.stitch(h.base[0]).Kind == chainStitch() {
		f.Name = "ch"
	}
	h.short, h.shortIn = leftOut{places: slices.Clip(h.unreached()), turns: h.turns}, h.rowIndex
	h.fault(f)
}

// closesOver tells whether the chains that close a round pass over what it
// leaves, as the chains before each of its stitches did: nobody says so.
func (h *hand) closesOver(f Fault) bool {
	if h.joined && f.Name == "" && f.N == h.leadSkip {
		return true // `*skip 1, shell in next st; rep from * around, join`: the first shell stood before the star
	}
	if !h.joined || len(h.row) == 0 || !h.stitch(h.row[len(h.row)-1]).IsSpace() {
		return false
	}
	stitches, spaces := 0, 0
	for _, i := range h.passedRun {
		if h.stitch(i).IsSpace() {
			spaces++
		} else {
			stitches++
		}
	}
	if f.Name != "" {
		return f.N <= spaces
	}
	return f.N <= stitches
}

// onlyBranches tells whether a row is nothing but branches that are fastened where they grew: `Antennae: [ch 9, sl st in
// 2nd ch from hook and in next 7 ch, sl st in same st] twice`.
func (h *hand) onlyBranches() bool {
	into, along := -1, 0
	for _, i := range h.row {
		switch s := h.stitch(i); {
		case !slices.Contains(h.base, s.Into):
			along++
		case into >= 0 && s.Into != into:
			return false
		default:
			into = s.Into
		}
	}
	return along > 1 && h.leaving != nil
}

// leavesSlips tells whether a row leaves nothing but the slip stitches that led to
// where the one below began: `sl st in first 3 sts, sc in next 14 sts`, turned.
func (h *hand) leavesSlips() bool {
	return !h.round && h.at > 0 && !slices.ContainsFunc(h.base[h.at:h.end], func(i int) bool {
		s := h.stitch(i)
		return s.IsSpace() || s.Kind.Class != stitch.Slip
	})
}

// partOfRing tells whether a row is worked along the chains of a ring and turned,
// as a fan or the beginning of an edging is: it need not go all round.
func (h *hand) partOfRing() bool {
	return h.ring && h.turned && !h.joined && len(h.first) > 0 && slices.Contains(h.first, h.base[0])
}

// allInOneChain tells whether a piece begins with all its stitches in one chain,
// which are then its centre: the others hold it together.
func (h *hand) allInOneChain() bool {
	if !h.round || h.stitch(h.base[0]).IsSpace() || h.stitch(h.base[0]).Kind.Class != stitch.Chain {
		return false
	}
	into := -1
	for _, i := range h.row {
		s := h.stitch(i)
		if s.Turning {
			continue // the chains passed over
		}
		if into >= 0 && s.Into >= 0 && s.Into != into {
			return false
		}
		into = max(into, s.Into)
	}
	return into >= 0
}

// continued tells whether the row is left open and the next line goes on with
// it: a leaf told one stitch a line is one row.
func (h *hand) continued() bool {
	open := h.goesRound || !h.full && h.remaining(syntax.Noun{}) > 0 || len(h.branches) > 0
	begun := h.works && len(h.row)+len(h.branches) > 0 || h.skippedFirst // `Begin in the 2nd ch from hook.`
	return h.goesOn && open && begun && h.known && !h.turned && !h.joined
}

// onlySlips tells whether the row is nothing but slip stitches, which close a
// spiral or travel and leave the rest alone.
func (h *hand) onlySlips() bool {
	for _, i := range h.row {
		if s := h.stitch(i); s.IsSpace() || s.Kind.Class != stitch.Slip {
			return false
		}
	}
	return true
}

// travelled tells whether a line without a label is no row: it goes along the row below in
// slip stitches and leaves the rest of it (`Sl st in next st.` at the end of a spiral).
func (h *hand) travelled() bool {
	return h.plainLine && h.works && h.known && len(h.row) > 0 && h.onlySlips() && h.chains == 0 && !h.turned && !h.joined && !h.twigged &&
		!h.full && len(h.row) < h.remaining(syntax.Noun{})
}

// goOnFrom leaves the ground to the next row from where the hook has come to.
func (h *hand) goOnFrom() {
	places := slices.Clone(h.base[h.at:])
	if h.round {
		places = append(places, h.base[:h.at]...)
	}
	h.standOn(places)
	h.rowMade = 0
	for _, i := range places {
		if !h.stitch(i).IsSpace() {
			h.rowMade++
		}
	}
}

// outcome is what an instruction came to under one choice of readings.
type outcome struct {
	hand   hand
	tally  Tally
	stated *syntax.Total
}

// workRow works an instruction's clauses under the readings chosen in h.
func (h *hand) workRow(clauses []syntax.Clause, stated *syntax.Total) outcome {
	last := -1
	for i := range clauses[:countsFrom(clauses)] {
		if usesPlaces(clauses[i]) {
			last = i
		}
	}
	h.stated = stated
	clauses = h.wholeRow(clauses)
	h.overBranches()
	if h.increases = h.mayIncrease(clauses, stated); h.increases {
		h.met |= ReadNumberInOne
	}
	h.main = h.mainFor(clauses)
	from := h.lineRepeats(clauses, last)
	h.steps = slices.Grow(h.steps, len(clauses))
	counted := 0 // where the counts end that stand as a sentence of their own
	for i, c := range clauses {
		h.clause, h.lastWork, h.after = i, i == last, clauses[i+1:]
		h.lastRead = i == last || c.Sep == syntax.SepStop && !slices.ContainsFunc(h.after, readAsWork)
		h.apartFrom = i > 0 && clauses[i-1].Sep >= syntax.SepSemi
		if said, end := h.bareCount(clauses, i); said != nil {
			if !h.referred && (stated == nil || len(clauses)-i > 1) {
				stated, h.said = said, c.Span.Union(clauses[end-1].Span)
			}
			counted = end
		}
		if i < counted || h.countsSoFar(clauses, i) {
			h.step(h.standsAt())
			continue
		}
		h.takeUp(h.after)
		h.coming = h.after
		before := h.standsAt()
		switch {
		case h.together:
			h.together = false
			h.step(before)
			continue
		case from >= 0 && i >= from && i < last:
			h.step(before)
			continue
		case from >= 0 && i == last:
			c.Node = &syntax.Repeat{Body: onceEach(clauses[from : last+1]), StopAt: -1}
		}
		if r, ok := c.Node.(*syntax.Repeat); ok {
			h.span = c.Span
			h.repeat(ending(r, clauses[:i]), tailOf(clauses[i+1:]))
		} else {
			h.do(c)
		}
		h.closeDone()
		h.step(before)
	}
	ahead := h.parts(h.unreached())
	h.endRow()
	o := outcome{hand: *h}
	o.tally = h.tally(stated)
	o.tally.Ahead = ahead
	o.stated = stated
	return o
}

// wholeRow reads a row whose only step is a stitch, with no number and no place, as one
// in each stitch: `Rnd 6: sc (36)`.
func (h *hand) wholeRow(clauses []syntax.Clause) []syntax.Clause {
	only := -1
	for i := range clauses {
		if !usesPlaces(clauses[i]) {
			continue
		}
		w, ok := clauses[i].Node.(*syntax.Work)
		if k := h.firstStitch(clauses[i : i+1]); only >= 0 || !ok || k == nil || k.Class != stitch.Plain || !isBare(w) {
			return clauses
		}
		only = i
	}
	if only < 0 || h.plainLine || len(h.base) < 2 || h.at > 0 {
		return clauses
	}
	out := slices.Clone(clauses)
	w := *clauses[only].Node.(*syntax.Work)
	w.Places = []syntax.Place{syntax.AllAlong}
	out[only].Node = &w
	return out
}

// isBare tells a stitch of which nothing more is said.
func isBare(w *syntax.Work) bool {
	return len(w.Places) == 0 && !w.Number.Written() && !w.Times.Written() && !w.Joins && !w.HeldBack && !w.Between.Chains.Written()
}

// lineRepeats gives the clause from which a row is repeated where its last
// step says `around` and may say it of all: `sc in next 2 sts, inc around`. It
// gives -1 where each step stands for itself.
func (h *hand) lineRepeats(clauses []syntax.Clause, last int) int {
	first, skips := -1, false
	for i := range last + 1 {
		switch n := clauses[i].Node.(type) {
		case *syntax.Skip:
			if p := n.Place; i == last || p.Pick != syntax.PickNext || p.Each || p.Of != nil || p.Noun.Kind > syntax.NounStitch {
				return -1
			}
			skips = true
			if first < 0 {
				first = i
			}
		case *syntax.Work:
			toEnd := len(n.Places) == 1 && n.Places[0].To.Kind == syntax.ToTheEnd && !n.Places[0].Each
			if toEnd != (i == last) || n.Joins || len(n.Places) > 0 && (n.Places[0].Pick != syntax.PickNext || n.Places[0].From != syntax.FromHere) {
				return -1
			}
			if first < 0 {
				first = i
			}
		case *syntax.Chain, *syntax.Turn, *syntax.Yarn, *syntax.LoopNote, *syntax.Marker, *syntax.Remark, *syntax.CountsNote:
		default:
			return -1
		}
	}
	if first < 0 || first == last {
		return -1
	}
	if skips {
		if placesOf(clauses[last].Node)[0].Noun.Kind == syntax.NounNone {
			return -1 // `skip 1, sc across`
		}
		return first // `skip 1, sc in next st around`: what is skipped is skipped each time
	}
	h.met |= ReadLineRepeats
	one := placesOf(clauses[last].Node)[0].Noun.Kind != syntax.NounNone // `sc in next 2 sts, 2 sc in next st around`
	if one == (h.choose&ReadLineRepeats != 0) {
		return -1
	}
	return first
}

// onceEach are steps of which the last is worked once, not to the end.
func onceEach(steps []syntax.Clause) []syntax.Clause {
	out := slices.Clone(steps)
	last := &out[len(out)-1]
	w := *last.Node.(*syntax.Work)
	w.Places = slices.Clone(w.Places)
	w.Places[0].To = syntax.ToLimit{}
	last.Node = &w
	return out
}

// bareCount reads counts that stand as a sentence of their own behind which nothing is
// worked (`6 sc in ring. 6 sc. Mark the first.`): they are counts where nothing is left to
// work. It also gives where they end.
func (h *hand) bareCount(clauses []syntax.Clause, i int) (all *syntax.Total, end int) {
	if i == 0 || !h.works || asCount(clauses[i].Node) == nil {
		return nil, 0
	}
	if clauses[i-1].Sep != syntax.SepStop && !h.countsItself(clauses, i) {
		return nil, 0
	}
	if !h.full && !h.joined && !h.turned && h.remaining(syntax.Noun{}) > 0 {
		return nil, 0
	}
	all, end = countsFor(clauses, i)
	if !h.onlyCloses(clauses[end:], all) {
		return nil, 0
	}
	return all, end
}

// countsFor is what clauses count from one on, and where that ends.
func countsFor(clauses []syntax.Clause, from int) (all *syntax.Total, end int) {
	all = &syntax.Total{}
	for end = from; end < len(clauses); end++ {
		count, _ := clauses[end].Node.(*syntax.Total)
		if count == nil {
			count = asCount(clauses[end].Node)
		}
		switch {
		case count != nil && count.Change != 0: // `12 sc (+6)`
		case count != nil:
			all.Parts = append(all.Parts, count.Parts...)
		case !saysMore(clauses[end].Node):
			return all, end
		}
	}
	return all, end
}

// saysMore tells what may stand among counts.
func saysMore(n syntax.Node) bool {
	switch n.(type) {
	case *syntax.Remark, *syntax.CountsNote:
		return true
	}
	return false
}

// onlyCloses tells whether steps behind a count work nothing more: they end the row, where
// the count is sure to be one.
func (h *hand) onlyCloses(rest []syntax.Clause, count *syntax.Total) bool {
	sure := h.known && len(h.base) > 0 && h.remaining(syntax.Noun{}) == 0 || count.Parts[0].Number.At(h.size) == h.rowMade
	for _, c := range rest {
		switch n := c.Node.(type) {
		case *syntax.Join, *syntax.Chain:
			if !sure {
				return false
			}
		case *syntax.Work:
			if !sure || !closesRound(n) {
				return false
			}
		default:
			if !afterCount(n) {
				return false
			}
		}
	}
	return true
}

// afterCount tells what may still be done where a row is worked and counted.
func afterCount(n syntax.Node) bool {
	switch n.(type) {
	case *syntax.Finish, *syntax.MakeUp, *syntax.Turn, *syntax.NoJoin, *syntax.Yarn, *syntax.Marker, *syntax.Side:
		return true
	}
	return false
}

// countsFrom is where the counts begin that may stand as a last sentence of their own, the
// number of the clauses where there are none.
func countsFrom(clauses []syntax.Clause) int {
	from, last := len(clauses), len(clauses)-1
	for last > 0 && afterCount(clauses[last].Node) {
		last--
	}
	for i := last; i > 0; i-- {
		if _, total := clauses[i].Node.(*syntax.Total); !total && asCount(clauses[i].Node) == nil {
			break
		}
		if clauses[i-1].Sep == syntax.SepStop {
			from = i
		}
	}
	return from
}

// readAsWork tells a clause that uses places and is understood.
func readAsWork(c syntax.Clause) bool {
	_, unread := c.Node.(*syntax.Unread)
	return !unread && usesPlaces(c)
}

// countsItself tells whether the last step, behind a comma, is no step: so many
// stitches the row has made, and there is no place for more (`2 sc in each st around,
// 24 sc`).
func (h *hand) countsItself(clauses []syntax.Clause, i int) bool {
	return i == len(clauses)-1 && h.known && len(h.base) > 0 && h.remaining(syntax.Noun{}) == 0 && asCount(clauses[i].Node).Parts[0].Number.At(h.size) == h.rowMade
}

// countsSoFar tells a sentence that is as many of a stitch as there are, on the branch that is
// worked out or on the stem, in a row with branches: `3 sl sts. Back on the twig, …`, `(3 sl sts) Then …`.
func (h *hand) countsSoFar(clauses []syntax.Clause, i int) bool {
	if i == 0 || !h.known {
		return false
	}
	count := asCount(clauses[i].Node)
	inBracket, bracket := clauses[i].Node.(*syntax.Bracket)
	if bracket {
		count = inBracket.Total
	} else if clauses[i-1].Sep != syntax.SepStop {
		return false
	}
	if count == nil || len(count.Parts) != 1 || count.Parts[0].Noun.Kind != syntax.NounStitch {
		return false
	}
	n := count.Parts[0].Number
	k, _ := h.words.stitch(count.Parts[0].Noun.Stitch)
	var own []int
	switch b := h.innermost(); {
	case bracket && b == nil && len(h.base) > 0 && h.remaining(syntax.Noun{}) == 0:
		own = h.row // there is no place for more
	case bracket && (b == nil || !h.heads || !h.justHome()):
		return false // other brackets are told from work with the row
	case bracket, h.justHome() && (b == nil || !h.workedOut(b)):
		own = h.lastHome
	case b != nil && h.workedOut(b):
		own = h.ownOf(b)
	case b != nil || !h.branched && !h.branchesIn(clauses[i+1:]):
		return false
	default:
		own = h.without(h.leaving.inOrder(), 0, len(h.row))
	}
	return k != nil && len(own) == n.At(h.size) && !slices.ContainsFunc(own, func(i int) bool { return h.stitch(i).Kind != k })
}

// justHome tells whether the last stitch of the row is the last of a branch that came home.
func (h *hand) justHome() bool {
	return len(h.row) > 0 && len(h.lastHome) > 0 && latest(h.lastHome) == h.row[len(h.row)-1]
}

// asCount reads a step that is only a number of a stitch as a count, nil where
// it is more.
func asCount(node syntax.Node) *syntax.Total {
	w, ok := node.(*syntax.Work)
	if !ok || len(w.Places) > 0 || !w.Number.Written() || w.Times.Written() || !w.Stitch.Written() {
		return nil
	}
	return &syntax.Total{Parts: []syntax.Part{{Number: w.Number, Noun: syntax.Noun{Kind: syntax.NounStitch, Stitch: w.Stitch}}}}
}

// ending gives a repeat that ends as the row began the ending that mirrors it.
func ending(r *syntax.Repeat, before []syntax.Clause) *syntax.Repeat {
	if !r.Mirrored {
		return r
	}
	whole := *r
	whole.Ending = mirrored(before)
	return &whole
}

// tailOf is what follows a repeat; never nil, so that the repeat knows it is
// the row's own.
func tailOf(rest []syntax.Clause) []syntax.Clause {
	if rest == nil {
		return []syntax.Clause{}
	}
	return rest
}

// mainFor is the stitch that inc and dec mean in a row: the row's own where
// it works any, else that of the row below, else sc.
func (h *hand) mainFor(clauses []syntax.Clause) *stitch.Stitch {
	if k := h.firstStitch(clauses); k != nil && k.Class == stitch.Plain {
		return k
	}
	for _, c := range clauses {
		ch, ok := c.Node.(*syntax.Chain)
		if !ok {
			continue
		}
		for _, part := range ch.Counts.As {
			if k, _ := h.words.stitch(part.Noun.Stitch); k != nil && k.Class == stitch.Plain {
				return k // `ch 3 (counts as dc), inc` increases in dc
			}
		}
	}
	for _, i := range h.base {
		if s := h.stitch(i); !s.IsSpace() {
			if k := s.Kind.Plain(); k.Class == stitch.Plain {
				return k
			}
		}
	}
	return stitch.ByID("sc")
}

// mark remembers where the row stands before a clause.
type mark struct{ at, made, from, branches int }

func (h *hand) standsAt() mark { return mark{h.at, h.rowMade, h.made(), len(h.branches)} }

func (h *hand) step(before mark) {
	used := max(0, h.at-before.at)
	if len(h.branches) != before.branches {
		used = 0 // it stands on other ground now
	}
	h.steps = append(h.steps, step{
		used: used, made: h.rowMade - before.made, total: h.rowMade,
		left: h.remaining(syntax.Noun{}), known: h.known, from: before.from, to: h.made(),
		ledger: h.ledger(), home: h.arrived(before.branches),
	})
	h.home = nil
}

// unreached lists the places of the ground that are not reached.
func (h *hand) unreached() []int {
	from := min(h.at, len(h.base))
	return h.base[from:max(from, min(h.end, len(h.base)))]
}

// tally counts the row and compares it with what it states.
func (h *hand) tally(stated *syntax.Total) Tally {
	t := Tally{
		Known: h.known, Blame: h.blame, Works: h.works && len(h.row) > 0 || h.works && !h.known, Made: h.rowMade,
		Base: h.count(syntax.Noun{}), Left: h.remaining(syntax.Noun{}), Faults: h.faults,
		Parts: h.parts(h.row), Readings: h.choose&h.met | h.against,
		row: h.row, footing: h.footing,
	}
	t.Chains, _ = h.spaceChains()
	if stated != nil {
		of, said := h.speaksOf(stated), &t
		if of != h {
			then := t
			then.Made = of.rowMade
			said = &then
		}
		switch {
		case !h.works && h.chains > 0 && stated.OfChains():
			t.Compared = h.compareLaid(stated.Parts[0], stated)
		case t.Works || of != h:
			for _, p := range stated.Parts {
				t.Compared = append(t.Compared, of.check(p, said, stated))
			}
		}
	}
	if h.trusting || h.ofOneRepeat(t.Compared) {
		for i := range t.Compared {
			t.Compared[i].Result = Uncheckable
		}
	}
	return t
}

// check holds one part of a stated count against what the row made, in the writer's way of counting.
func (h *hand) check(p syntax.Part, t *Tally, stated *syntax.Total) Compared {
	return h.counted(h.compareOn(p, t, stated), p.Noun, stated, t)
}

// spaceChains is how many chains lie in the row's spaces, and how many of them are a space each.
func (h *hand) spaceChains() (all, single int) {
	for _, i := range h.row {
		n := h.stitch(i).Chains
		all += n
		if n == 1 {
			single++
		}
	}
	return all, single
}

// ofOneRepeat tells whether a count by kind is what each repeat makes, `(4 dc, 1
// fpdc)`, rather than the round: all of it, so many times, is what was made.
func (h *hand) ofOneRepeat(parts []Compared) bool {
	return len(parts) > 1 && h.repeated > 1 && !slices.ContainsFunc(parts, func(c Compared) bool {
		return c.Result != Disagrees || c.Stated*h.repeated != c.Made
	})
}

// parts counts the stitches of a row by kind.
func (h *hand) parts(row []int) []PartCount {
	made := make([]*Stitch, len(row))
	for k, i := range row {
		made[k] = h.stitch(i)
	}
	return Kinds(made, h.words.dialect)
}

// compare holds one part of a stated count against what the row made.
func (h *hand) compare(p syntax.Part, t *Tally, stated *syntax.Total) Compared {
	c := Compared{Stated: p.Number.At(h.size), Result: Uncheckable}
	switch p.Noun.Kind {
	case syntax.NounNone, syntax.NounAny:
		c.Made = t.Made
	case syntax.NounStitch:
		c.Name = p.Noun.Stitch.Word
		made, known := h.countOf(p, stated)
		if _, own := h.words.stitch(p.Noun.Stitch); !known || made == 0 && own != nil {
			return c // the row may make what the pattern calls so in other words
		}
		c.Made = made
		if slices.ContainsFunc(stated.Parts, func(other syntax.Part) bool { return other.Noun.Kind == syntax.NounTurning }) {
			c.Made -= h.turningOf(p.Noun)
		}
	case syntax.NounTurning:
		c.Name, c.Made = h.nounName(p.Noun), h.turningOf(syntax.Noun{})
	case syntax.NounSpace, syntax.NounChain:
		c.Name = h.nounName(syntax.Noun{Kind: syntax.NounSpace, Length: p.Noun.Length})
		c.Made = h.countSpaces(p.Noun, false)
		if apart := h.countSpaces(p.Noun, true); apart == c.Stated && h.namesGroups(stated) {
			c.Made = apart
		}
		if c.Made == 0 && p.Noun.Kind == syntax.NounSpace && !p.Noun.Length.Written() {
			c.Made = h.picots() // which are called loops
		}
		if p.Noun.Kind == syntax.NounChain && !p.Noun.Length.Written() {
			c.Name = h.nounName(p.Noun)
			c.Made, _ = h.spaceChains()
			if h.limbs.isStem(p.On) && h.stemChains() > 0 {
				c.Made = h.stemChains()
				if h.unworkedStem() && h.rowIndex == h.limbs.turns && c.Made == c.Stated+1 {
					return c // the last may only be there to turn with
				}
			} else if left := h.remaining(syntax.Noun{}); left > 0 && len(h.branches) > 0 {
				c.Made = left // `5 ch of this branch are left`
			}
		}
	default:
		c.Name = p.Noun.Word
		return c // petals, blocks, points: what one is made of is not known
	}
	if !t.Known || stated.Change != 0 || p.Noun.Word == "corner" && !p.Noun.Length.Written() ||
		p.Number.PerSize() && len(p.Number.Vals) != h.sizes || stated.Reached && c.Made != c.Stated {
		return c
	}
	switch {
	case c.Made == c.Stated, h.words.halved && c.Made == 2*c.Stated:
		c.Result = Agrees
	case !h.words.halved: // what lies between the sides may count or not
		c.Result = Disagrees
	}
	return c
}

// compareLaid compares the chains that a line only lays with how many it says there are: its
// own, or those of the stem that it goes on with.
func (h *hand) compareLaid(p syntax.Part, stated *syntax.Total) []Compared {
	laid := h.stemChains()
	switch {
	case len(h.branches) > 0:
		laid = h.chains
	case laid == h.chains && h.made() > 0:
		return nil // what was made before it may be a stem that is not known
	}
	if !h.known || laid == 0 || stated.Change != 0 || stated.Reached || p.Number.PerSize() && len(p.Number.Vals) != h.sizes {
		return nil
	}
	c := Compared{Name: h.nounName(p.Noun), Stated: p.Number.At(h.size), Made: laid, Result: Disagrees}
	toTurn := h.rowIndex == h.limbs.turns && laid == c.Stated+1 // the last may only be there to turn with
	if c.Stated == laid || c.Stated == h.chains || toTurn {
		c.Result = Agrees
	}
	return []Compared{c}
}

// compareEither compares a part of a stated count that may count the stitches of
// the row's branches, and the space that the chains before its first short stitch make,
// or leave them out: both are common practice. In steps it may be of the branch that came home, or of the one that is worked along.
func (h *hand) compareEither(p syntax.Part, t *Tally, stated *syntax.Total) Compared {
	c := h.compare(p, t, stated)
	if c.Result == Disagrees && (p.All || p.Whole || h.tells) {
		beside := slices.ContainsFunc(stated.Parts, func(other syntax.Part) bool { return !other.All && other.On == "" }) // a count of the row
		c = h.compareInAll(c, p, !beside)
	}
	if c.Result != Disagrees {
		return c
	}
	rows := [][]int{h.row[min(h.stepFrom, len(h.row)):], h.offBranches(), h.afterFirstSpace()}
	if h.other && h.keeps {
		rows = append(rows, h.row[min(h.sideFrom, len(h.row)):]) // `Side Two now has 14 sts.`
	}
	if h.heads && h.cameInStep() {
		rows = append(rows, h.lastHome)
	}
	if b := h.innermost(); h.heads && b != nil {
		rows = append(rows, h.ownOf(b))
	}
	near := c
	for _, row := range rows {
		if len(row) == len(h.row) {
			continue
		}
		switch own := h.compareAlong(row, p, t, stated); {
		case own.Result == Agrees:
			return own
		case own.Result == Disagrees && h.heads && away(own) < away(near):
			near = own // which of them a step counts is not said
		}
	}
	return near
}

// cameInStep tells whether the last stitch of the branch that came home last is one of the step, which may make none.
func (h *hand) cameInStep() bool {
	step := h.row[min(h.stepFrom, len(h.row)):]
	return len(h.lastHome) > 0 && (len(step) == 0 || slices.Contains(step, latest(h.lastHome)))
}

// away is how far a count is from what was made.
func away(c Compared) int { return max(c.Made-c.Stated, c.Stated-c.Made) }

// compareInAll compares what is counted in all, or in a line of its own, with all that was made so far. A number alone,
// in all, may be the row's; along the two sides of a chain nothing but both can be meant beside the row's.
func (h *hand) compareInAll(c Compared, p syntax.Part, alone bool) Compared {
	made := 0
	for i := range h.made() {
		if s := h.stitch(i); s.Row >= 0 && !s.Apart && !s.IsSpace() && s.Into >= 0 && h.accepts(s, p.Noun) {
			made++
		}
	}
	switch inAll := p.Whole || p.All && !alone; {
	case made == c.Stated:
		c.Made, c.Result = made, Agrees
	case inAll && h.other:
		c.Made = made
	case inAll, h.tells && c.Made == 0: // or the line above only joins or fastens
		c.Result = Uncheckable
	}
	return c
}

// afterFirstSpace lists the row's stitches without a space that it begins with.
func (h *hand) afterFirstSpace() []int {
	if len(h.row) > 0 && !h.round && h.stitch(h.row[0]).IsSpace() && !h.stitch(h.row[0]).IsPicot() {
		return h.row[1:]
	}
	return h.row
}

// compareAlong compares with some of the row's stitches alone.
func (h *hand) compareAlong(own []int, p syntax.Part, t *Tally, stated *syntax.Total) Compared {
	part, along := *h, *t
	part.row, along.Made = own, 0
	for _, i := range own {
		if !h.stitch(i).IsSpace() {
			along.Made++
		}
	}
	return part.compare(p, &along, stated)
}

// turningOf is how many stitches of a kind are turning or beginning chains: a count
// may name them beside the others, `(25 dc + ch 3)`.
func (h *hand) turningOf(n syntax.Noun) int {
	return h.turningWhere(n, func(*Stitch) bool { return true })
}

// turningWhere is how many of them are as told.
func (h *hand) turningWhere(n syntax.Noun, is func(*Stitch) bool) int {
	total := 0
	for _, i := range h.row {
		if s := h.stitch(i); s.Turning && h.accepts(s, n) && is(s) {
			total++
		}
	}
	return total
}

// counted takes a part of a stated count that disagrees as the writer is taken
// to count, and notes which other ways of counting would explain it.
func (h *hand) counted(c Compared, n syntax.Noun, stated *syntax.Total, t *Tally) Compared {
	if c.Result != Disagrees {
		return c
	}
	chains, single := h.spaceChains() // where spaces of a corner or a spine are longer, the single ones alone may count
	if n.Kind == syntax.NounStitch {
		chains, single = 0, 0
	}
	for _, way := range []struct {
		reading Reading
		more    int
	}{{ReadCountsChains, chains}, {ReadCountsChains, single}, {ReadOmitsTurning, -h.turningFor(n)}} {
		if way.more == 0 || c.Made+way.more != c.Stated {
			continue
		}
		if h.choose&way.reading != 0 || way.reading == ReadCountsChains && (stated.Chains || h.bridges() == way.more) {
			c.Made, c.Result = c.Stated, Agrees
			t.Readings |= way.reading
			return c
		}
		t.Explained |= way.reading
	}
	return c
}

// bridges is how many chains of the row stand over as many stitches passed over:
// a thumb hole leaves the row as long as it was, and most count it so.
func (h *hand) bridges() int {
	total := 0
	for _, o := range h.openings {
		if s := h.stitch(o.space); s.Chains == len(o.places) && slices.Contains(h.row, o.space) {
			total += s.Chains
		}
	}
	return total
}

// turningFor is how many turning chains a count of a kind may leave out: those
// that nobody said to count.
func (h *hand) turningFor(n syntax.Noun) int {
	return h.turningWhere(n, func(s *Stitch) bool { return !h.turningSaid(s.Kind) })
}

// turningSaid tells whether the pattern says of a stitch's beginning chain
// whether it counts.
func (h *hand) turningSaid(k *stitch.Stitch) bool {
	_, row := h.rules.get(k.Plain().ID)
	_, header := h.words.turning[k.Plain().ID]
	_, all := h.words.turning[""]
	return row || header || all
}

// countOf counts a kind of stitch. Where the count also names one of the
// pattern's own groups, the stitches inside those are not counted again, but where it
// says of what the groups consist.
// It gives false for groups of which nobody can tell what one is.
func (h *hand) countOf(p syntax.Part, stated *syntax.Total) (int, bool) {
	n, total := p.Noun, 0
	k, own := h.words.stitch(n.Stitch)
	if own == nil && k != nil && k.Class == stitch.Picot {
		return h.picots(), true
	}
	if own != nil && own.overSpace != nil {
		return h.squares(own)
	}
	if name := h.groupName(k, own); name != "" {
		if n := h.named(name); n > 0 {
			return n + h.beginsAs(name, n), true
		}
		if own != nil {
			if n := h.groupsOf(own); n > 0 {
				return n, true
			}
		}
		n := h.alike()
		return n, n > 0
	}
	grouped, exact := h.namesGroups(stated), false
	for _, p := range stated.Parts {
		if p.Noun.Kind != syntax.NounStitch {
			continue
		}
		other, _ := h.words.stitch(p.Noun.Stitch)
		exact = exact || other != nil && other != k && other.Plain() == k
	}
	for _, i := range h.row {
		s := h.stitch(i)
		if exact && s.Kind != k || grouped && p.Inside != (s.Own != "" || p.Inside && s.Object > 0) {
			continue
		}
		if h.isStitch(s, n.Stitch) {
			total++
		}
	}
	if made := h.told(k); total == 0 && made > 0 {
		return made, true
	}
	if k != nil && k.Class == stitch.Texture && h.hasClass(stitch.Together) {
		return 0, false // stitches worked together may be what the count calls clusters
	}
	return total, true
}

// squares counts those of a filet, however they came to be: open ones by their spaces, and
// solid ones by what is left of the row's stitches, of which one stands at the end of each
// square and one at the row's beginning. It gives false where no whole squares are left.
func (h *hand) squares(own *ownStitch) (int, bool) {
	for _, c := range own.body {
		if chain, open := c.Node.(*syntax.Chain); open {
			if n := h.countSpaces(syntax.Noun{Kind: syntax.NounSpace, Length: chain.Number}, false); n > 0 {
				return n, true
			}
			return h.named(own.name), true
		}
	}
	solid, width := h.rowMade-1-h.countSpaces(syntax.Noun{Kind: syntax.NounSpace, Word: "sp"}, false), placesAlong(own.body)
	if width == 0 || solid < 0 || solid%width != 0 {
		return 0, false
	}
	return solid / width, true
}

// beginsAs is 1 where the row begins, from its beginning chain on, with what one
// of the pattern's own stitches is made of, and nobody calls it so: all that are
// told of are worked by that name.
func (h *hand) beginsAs(name string, told int) int {
	first, objects := -1, map[int]bool{}
	for k, i := range h.row {
		if s := h.stitch(i); s.Own == name {
			objects[s.Object] = true
			if first < 0 {
				first = k
			}
		}
	}
	if first < 0 || len(objects) != told {
		return 0
	}
	one, last := h.stitch(h.row[first]).Object, first
	for last < len(h.row) && h.stitch(h.row[last]).Object == one {
		last++
	}
	made := h.row[first:last]
	if len(made) > first || !h.stitch(h.row[0]).Turning {
		return 0
	}
	for k, i := range made {
		begun, of := h.stitch(h.row[k]), h.stitch(i)
		if begun.Kind != of.Kind || begun.Chains != of.Chains || begun.Own != "" {
			return 0
		}
	}
	return 1
}

// namesGroups tells whether a count names groups of stitches beside others: what
// is inside them is counted with them.
func (h *hand) namesGroups(stated *syntax.Total) bool {
	return slices.ContainsFunc(stated.Parts, func(p syntax.Part) bool {
		if p.Noun.Kind != syntax.NounStitch {
			return false
		}
		k, own := h.words.stitch(p.Noun.Stitch)
		return h.groupName(k, own) != ""
	})
}

// told is how many stitches of a kind the row says that it has made: `(cluster
// made)`.
func (h *hand) told(k *stitch.Stitch) int {
	n := 0
	for word, made := range h.objects.all() {
		if meaning, ok := stitch.Find(word); ok && meaning.In(h.words.dialect) == k {
			n += made
		}
	}
	return n
}

// picots is how many picots the row makes.
func (h *hand) picots() int {
	n := 0
	for _, i := range h.row {
		if h.stitch(i).IsPicot() {
			n++
		}
	}
	return n
}

// named counts the pattern's own stitches of a name, and those that begin a
// round in their stead.
func (h *hand) named(name string) int {
	n := 0
	for own, made := range h.objects.all() {
		if own == name || standsForFirst(own, name) {
			n += made
		}
	}
	return n
}

// hasClass tells whether the row makes a stitch of a class.
func (h *hand) hasClass(c stitch.Class) bool {
	return slices.ContainsFunc(h.row, func(i int) bool { s := h.stitch(i); return !s.IsSpace() && s.Kind.Class == c })
}

// alike is how many groups of stitches in one place the row is made of, where
// all are alike: the shells of a pattern that does not call them so as it goes.
func (h *hand) alike() int {
	total, last := 0, 0
	var kinds, first []*stitch.Stitch
	done := func() bool {
		switch {
		case last == 0:
		case total == 0:
			first, total = kinds, 1
		case !slices.Equal(first, kinds):
			return false
		default:
			total++
		}
		return true
	}
	for _, i := range h.row {
		s := h.stitch(i)
		if s.Object != last {
			if !done() {
				return 0
			}
			kinds, last = nil, s.Object
		}
		kinds = append(kinds, s.Kind)
	}
	if !done() {
		return 0
	}
	return total
}

// groupsOf is how many groups of a defined size the row is made of, 0 where it is
// not made of such groups alone: `block = 3 dc in one space`. A beginning chain
// is the first stitch of a group, which the round's last stitches may complete.
func (h *hand) groupsOf(own *ownStitch) int {
	size := groupSize(own.body)
	if size < 2 {
		return 0
	}
	var runs []int
	open, last := false, 0
	for _, i := range h.row {
		s := h.stitch(i)
		if s.IsSpace() {
			open = false
			continue
		}
		if !open || s.Object != last {
			runs = append(runs, 0)
		}
		runs[len(runs)-1]++
		open, last = true, s.Object
	}
	return groupsIn(runs, size)
}

// groupsIn counts the groups of a size that runs of stitches make; the first and
// the last run may be a group between them.
func groupsIn(runs []int, size int) int {
	n := len(runs)
	if n > 2 && runs[0]+runs[1] == size {
		runs = append([]int{size}, runs[2:]...) // the beginning chain, and the stitches beside it
	} else if n > 2 && runs[0]+runs[n-1] == size {
		runs = append([]int{size}, runs[1:n-1]...)
	}
	for _, run := range runs {
		if run != size {
			return 0
		}
	}
	return len(runs)
}

// groupSize is how many stitches a definition works in one place, 0 where there
// is more to it.
func groupSize(body []syntax.Clause) int {
	if len(body) != 1 {
		return 0
	}
	w, ok := body[0].Node.(*syntax.Work)
	if !ok || w.Times.Written() {
		return 0
	}
	return w.Number.At(0)
}

// groupName is the word under which a stitch that is made of several is
// counted, "" for a plain one.
func (h *hand) groupName(k *stitch.Stitch, own *ownStitch) string {
	switch {
	case own != nil && (own.body != nil || own.makes.At(h.size) > 1):
		return own.name
	case own == nil && k != nil && k.Class == stitch.Group:
		return k.Term(h.words.dialect).Abbr
	}
	return ""
}

// countSpaces counts spaces, of the length that is named, or only those apart
// from the pattern's own groups. Loops and arches are the long ones, where there
// are others.
func (h *hand) countSpaces(n syntax.Noun, apart bool) int {
	total, long := 0, 0
	for _, i := range h.row {
		if s := h.stitch(i); !(apart && s.Own != "") && s.IsSpace() && !s.IsPicot() && (!n.Length.Written() || s.Chains == n.Length.At(h.size)) {
			total++
			if s.Chains >= longSpace {
				long++
			}
		}
	}
	if long > 0 && n.Word != "sp" && !n.Length.Written() {
		return long
	}
	return total
}

// longSpace is the fewest chains that make a loop or an arch; common practice.
const longSpace = 3

// cost is how badly an outcome fits.
func (o *outcome) cost() int { return o.tally.cost() }

// cost is how much is wrong that the row tells of: faults that stop a maker, and stated
// counts that are not met.
func (t *Tally) cost() int {
	cost := 0
	for _, f := range t.Faults {
		if f.Kind != BranchUnmarked && f.Kind != BranchAtTip && f.Kind != EdgingOverlaps && f.Kind != ChainSupposed {
			cost++
		}
	}
	for _, c := range t.Compared {
		if c.Result == Disagrees {
			cost += 2
		}
	}
	return cost
}

// fits tells whether an outcome is whole: counted, without a fault, and of
// the count that is stated.
func (o *outcome) fits() bool { return o.cost() == 0 && o.tally.Known }

// trial is a row about to be worked in one size.
type trial struct {
	hand    hand
	clauses []syntax.Clause
	stated  *syntax.Total
}

// work works the row under readings that differ from the habitual ones by
// flip.
func (t trial) work(flip Reading) outcome {
	h := t.hand
	h.fresh, h.openings = nil, slices.Clip(h.openings) // another try may not write into this one's memory
	h.choose ^= flip
	o := h.workRow(t.clauses, t.stated)
	o.hand.choose = t.hand.choose
	return o
}

// decided works a row in several sizes under the default readings and, where
// that does not come out, under each other reading of its ambiguous words.
// The first is taken that fits where the default does not, and nowhere worse.
func decided(trials []trial) []outcome {
	first, met, fit, known := make([]outcome, len(trials)), Reading(0), true, true
	for i, t := range trials {
		first[i] = t.work(0)
		met |= first[i].hand.met
		fit = fit && first[i].cost() == 0
		known = known && (first[i].tally.Known || t.stated == nil || first[i].hand.over)
	}
	if !fit || !known {
		for _, flip := range flips(met) {
			if other := otherwise(trials, first, flip); other != nil {
				return other
			}
		}
	}
	if fit {
		noteUndecided(trials, first, met&counted)
	}
	return first
}

// noteUndecided notes of a row that fits which of its readings could as well be
// taken the other way, with another count.
func noteUndecided(trials []trial, first []outcome, met Reading) {
	for _, flip := range flips(met) {
		fit, differs := true, false
		for i, t := range trials {
			o := t.work(flip)
			fit = fit && o.fits()
			differs = differs || o.tally.Made != first[i].tally.Made
		}
		if !fit || !differs {
			continue
		}
		for i := range first {
			first[i].tally.Undecided |= flip
		}
	}
}

// otherwise works a row under a reading against the default, nil where that is
// no better in any size, or worse in one.
func otherwise(trials []trial, first []outcome, flip Reading) []outcome {
	out, better := make([]outcome, len(trials)), false
	for i, t := range trials {
		o := t.work(flip)
		was := &first[i]
		if !was.tally.Known && was.cost() == 0 && o.fits() && o.tally.Agrees() == Agrees {
			out[i], better = o, true // only so is it counted, and as it says
			continue
		}
		if o.tally.Known != was.tally.Known || o.cost() > was.cost() || o.cost() > 0 && was.cost() != o.cost() {
			return nil
		}
		better = better || o.cost() < was.cost()
		out[i] = o
	}
	if !better {
		return nil
	}
	return out
}

// flips lists the sets of readings to try, single ones first.
func flips(met Reading) []Reading {
	var single []Reading
	for m := uint(met); m != 0; m &= m - 1 {
		single = append(single, Reading(1<<bits.TrailingZeros(m)))
	}
	out := append([]Reading{}, single...)
	for i := range single {
		for _, other := range single[i+1:] {
			out = append(out, single[i]|other)
		}
	}
	return out
}
