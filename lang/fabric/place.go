package fabric

import (
	"slices"
	"strings"

	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// accepts tells whether a stitch or space is a thing of the kind named.
func (h *hand) accepts(s *Stitch, n syntax.Noun) bool {
	if s.IsPicot() {
		return n.Kind == syntax.NounStitch && h.isPicot(n.Stitch)
	}
	switch n.Kind {
	case syntax.NounNone, syntax.NounAny, syntax.NounBase, syntax.NounJoin, syntax.NounMarker, syntax.NounTip, syntax.NounRow:
		return !s.IsSpace()
	case syntax.NounChain:
		return s.IsSpace() || s.Kind.Class == stitch.Chain
	case syntax.NounStitch:
		return h.isStitch(s, n.Stitch)
	case syntax.NounSpace:
		if !s.IsSpace() {
			return false
		}
		return !n.Length.Written() || s.Chains == n.Length.At(h.size)
	case syntax.NounCorner:
		return s.IsSpace() && (s.Object > 0 || s.Chains >= h.longestSpace())
	case syntax.NounTurning:
		return s.Turning
	case syntax.NounGroup:
		return s.Object > 0
	}
	return !s.IsSpace()
}

// longestSpace is the length of the row's longest chain space of at least two
// chains, or of one where few of them lie between many stitches: the corners, where
// none is worked in one place.
func (h *hand) longestSpace() int {
	longest, spaces := 0, 0
	for _, i := range h.base {
		if s := h.stitch(i); s.IsSpace() && !s.IsPicot() {
			longest, spaces = max(longest, s.Chains), spaces+1
		}
	}
	if longest == 1 && spaces*apartCorners <= len(h.base) {
		return 1
	}
	return max(longest, 2)
}

// apartCorners is how many stitches lie between corners at least where a chain of one makes them.
const apartCorners = 4

// isStitch tells whether s is what the pattern calls by a word: itself, one of
// its family, or a stitch of one of the pattern's own groups.
func (h *hand) isStitch(s *Stitch, ref syntax.StitchRef) bool {
	if s.IsSpace() {
		return false
	}
	if s.Own != "" && s.Own == ref.Word {
		return true
	}
	k, own := h.words.stitch(ref)
	if own != nil {
		return s.Own == ref.Word || s.Own == own.name || standsForFirst(s.Own, own.name)
	}
	return k != nil && sameStitch(s.Kind, k)
}

// isPicot tells whether a word names a picot.
func (h *hand) isPicot(ref syntax.StitchRef) bool {
	k, _ := h.words.stitch(ref)
	return k != nil && k.Class == stitch.Picot
}

// standsForFirst tells whether one of the pattern's own stitches begins a round
// in the stead of another: a beg shell is a shell.
func standsForFirst(own, name string) bool {
	first := begins.FindString(own)
	return first != "" && strings.EqualFold(own[len(first):], name)
}

// sameStitch tells whether a stitch made may be called by a name: `dc` also
// names FPdc and dc2tog, which end in a dc's top; a bobble is not called so.
func sameStitch(made, named *stitch.Stitch) bool {
	if made == named || made.ID == named.ID {
		return true
	}
	return named.Base == nil && made.Class != stitch.Texture && made.Plain() == named
}

// whole tells whether the row below is all single stitches, so that each can
// be accounted for.
func (h *hand) whole() bool {
	for _, i := range h.base {
		if s := h.stitch(i); !s.IsPicot() && s.IsSpace() || s.Own != "" {
			return false
		}
	}
	return len(h.base) > 0
}

// widened is what a place means in this size and, in a row that is worked like
// another, here: where the row
// below has none of the stitches or spaces that the other row's words name, those
// that stand in their stead.
func (h *hand) widened(p syntax.Place) syntax.Place {
	if p.Nths.Written() {
		p.Nth = p.Nths.At(h.size)
	}
	if !h.referred || slices.ContainsFunc(h.base, func(i int) bool { return h.accepts(h.stitch(i), p.Noun) }) {
		return p
	}
	switch n := &p.Noun; n.Kind {
	case syntax.NounStitch:
		if k, own := h.words.stitch(n.Stitch); own == nil && k != nil && k.Class == stitch.Plain {
			*n = syntax.Noun{Kind: syntax.NounAny}
		}
	case syntax.NounSpace:
		n.Length = syntax.Num{}
	}
	return p
}

// next finds the next place of a kind and moves past it. It gives -1 where
// there is none.
func (h *hand) next(n syntax.Noun) int {
	if n.Kind == syntax.NounChain {
		if i, ok := h.nextChain(); ok {
			return i
		}
	}
	if h.startsInJoined(n) {
		return h.held
	}
	stitches, spaces := 0, 0
	for i := h.at; i < h.end; i++ {
		s := h.stitch(h.base[i])
		if h.accepts(s, n) {
			if stitches > 0 && n.Kind == syntax.NounStitch && !s.IsPicot() && !h.loose && h.whole() {
				h.fault(Fault{Kind: PlaceAbsent, Name: n.Stitch.Word, There: h.stitch(h.base[h.at]).Name(h.words.dialect), N: stitches})
			}
			h.passed(stitches, spaces, s.IsSpace())
			if i > 0 && h.round && h.at == 0 && h.held < 0 && h.end == len(h.base) {
				// a round begins where its first stitch goes: what lies before comes last
				h.base = rotated(h.base, i)
				i = 0
			}
			h.past(i)
			return i
		}
		switch {
		case s.IsPicot():
		case s.IsSpace():
			spaces++
		default:
			stitches++
		}
	}
	if h.comesFull(n) {
		return h.next(n)
	}
	if n.Kind == syntax.NounSpace && h.inBlocks {
		return h.underTurning(n)
	}
	return -1
}

// startsInJoined tells whether the first step of a round goes in the place that the
// round was led to: `join B with sl st in any ch-2 sp, ch 1, *3 sc in ch-2 sp, …`.
func (h *hand) startsInJoined(n syntax.Noun) bool {
	if !h.spare || h.held < 0 || h.at != h.held+1 || len(h.row) > 0 || !h.accepts(h.stitch(h.base[h.held]), n) {
		return false
	}
	h.met |= ReadStartsInJoined
	if h.choose&ReadStartsInJoined == 0 {
		return false
	}
	h.spare = false
	return true
}

// underTurning finds the next beginning chain of so many chains, which a writer
// may call a space though it stands for a stitch.
func (h *hand) underTurning(n syntax.Noun) int {
	for i := h.at; i < h.end; i++ {
		if s := h.stitch(h.base[i]); s.Turning && s.Kind.Turning == n.Length.At(h.size) {
			h.passed(i-h.at, 0, true)
			h.past(i)
			return i
		}
	}
	return -1
}

// passed notes what was passed over without a word on the way to a place.
func (h *hand) passed(stitches, spaces int, toSpace bool) {
	h.loose = h.loose || stitches > 0
	h.overSpaces = h.overSpaces || spaces > 0
	h.bySpaces = h.bySpaces || toSpace
}

// nextChain finds the next single chain: of the foundation, or one of those
// that a chain space is made of.
func (h *hand) nextChain() (int, bool) {
	for h.at < h.end && h.stitch(h.base[h.at]).IsPicot() {
		h.at++
	}
	if h.at >= h.end {
		return -1, false
	}
	i, s := h.at, h.stitch(h.base[h.at])
	switch {
	case s.IsSpace():
		return h.nextOfSpace(s), true
	case s.Turning || s.Kind.Class == stitch.Chain:
		h.past(i)
		return i, true
	}
	return -1, false
}

// nextOfSpace takes the next chain of the space that is reached.
func (h *hand) nextOfSpace(s *Stitch) int {
	i := h.at
	h.held = i
	if h.sub++; h.sub >= s.Chains {
		h.at, h.sub = i+1, 0
	}
	return i
}

// missing reports that there is no next place of a kind: too many were asked
// for, or there never was one.
func (h *hand) missing(n syntax.Noun, want int) {
	b := h.innermost()
	switch {
	case b != nil && b.short:
		return // it is told already
	case b != nil && !b.marked && b.row > 0 && n.Kind == syntax.NounSpace:
		h.lose() // that it is a branch is not said: the space may be one of this row
		return
	case want == 1 && h.spiral && n.Kind == syntax.NounSpace && b == nil && slices.ContainsFunc(h.row, func(i int) bool { return h.stitch(i).IsSpace() }):
		return // a round that is not joined goes on into its own first loop
	case h.base == nil:
		if b != nil && b.marked && h.known {
			h.fault(Fault{Kind: BranchEmpty, Name: b.name, Related: b.span})
		}
		h.lose() // nothing lies below that this piece made
		return
	}
	if h.onOther(n) || h.inPassing(n) || b == nil && h.onOneChain() {
		h.lose()
		return
	}
	if n.Kind != syntax.NounNone && n.Kind != syntax.NounAny && n.Kind != syntax.NounChain {
		found := h.nth(1, n, false) >= 0
		if !found && n.Kind == syntax.NounCorner && h.count(syntax.Noun{Kind: syntax.NounSpace}) == 0 {
			h.lose() // a corner of the piece, of which the row below knows nothing
			return
		}
		if !found {
			h.fault(Fault{Kind: PlaceAbsent, Name: h.nounName(n), There: h.describe(), N: want})
			return
		}
	}
	if n.Kind == syntax.NounChain && want > 1 && h.rowMade == 0 && b == nil && !h.goesRound && h.count(n) <= h.passedAtTip() {
		h.lose() // the row begins along a chain, which lies elsewhere than this piece's rows tell
		return
	}
	if h.regrown && b == nil && (h.stepFrom > 0 || slices.ContainsFunc(h.steps, func(s step) bool { return s.made > 0 })) {
		h.lose() // beyond the last chain, of which alone all is known
		return
	}
	kind := RowOver
	if h.branched && len(h.branches) == 0 {
		kind = StemExhausted
	}
	h.fault(Fault{Kind: kind, N: want, Base: h.count(n) - h.passedAtTip(), Name: h.nounName(n)})
}

// onOneChain tells whether the row stands on a single chain, which raises the hook and founds nothing: it lies on work that is
// told elsewhere.
func (h *hand) onOneChain() bool {
	return len(h.base) == 1 && h.stitch(h.base[0]).Kind == chainStitch()
}

// passedAtTip is how many chains are passed before the first stitch of the chain
// that is worked along.
func (h *hand) passedAtTip() int {
	switch b := h.innermost(); {
	case b == nil:
		return h.stemSkipped
	case b.along == nil:
		return b.skipped
	}
	return 0
}

// count is how many places of a kind the row below has.
func (h *hand) count(n syntax.Noun) int {
	h.look(len(h.base))
	total := 0
	for _, i := range h.base {
		if h.accepts(h.stitch(i), n) {
			total++
		}
	}
	return total
}

// look charges a look at so many places to the row's budget: a step that looks at all of a
// huge row costs as much as many steps.
func (h *hand) look(places int) { *h.budget -= places / lookedAtOnce }

// lookedAtOnce is how many places are looked at in the time of a step.
const lookedAtOnce = 500

// headway is what was last known of a ground: so many stitches lay between
// two of its places.
type headway struct {
	base          *int // tells grounds apart
	at, end, left int
}

// stitchesLeft is how many stitches are not reached yet. It is asked after every
// clause, so only those passed since it was last asked are counted.
func (h *hand) stitchesLeft() int {
	end := min(h.end, len(h.base))
	if h.at >= end {
		return 0
	}
	was := h.headway
	if was.base != &h.base[0] || was.end != end {
		was = headway{base: &h.base[0], at: end, end: end}
	}
	left := was.left + h.stitches(h.at, was.at) - h.stitches(was.at, h.at)
	h.headway = headway{was.base, h.at, end, left}
	return left
}

// stitches counts those from one place of the ground to before another.
func (h *hand) stitches(from, to int) int {
	n := 0
	for i := from; i < to; i++ {
		if !h.stitch(h.base[i]).IsSpace() {
			n++
		}
	}
	return n
}

// remaining is how many places of a kind are not reached yet.
func (h *hand) remaining(n syntax.Noun) int {
	if n.Kind == syntax.NounNone {
		return h.stitchesLeft()
	}
	total := 0
	for i := h.at; i < h.end && i < len(h.base); i++ {
		s := h.stitch(h.base[i])
		switch {
		case n.Kind == syntax.NounChain && s.IsSpace():
			total += s.Chains
			if i == h.at {
				total -= h.sub
			}
		case h.accepts(s, n):
			total++
		}
	}
	return total
}

// limit gives the index of the first place that `to last n` leaves.
func (h *hand) limit(n int, noun syntax.Noun) int {
	if noun.Kind == syntax.NounTurning {
		noun, n = syntax.Noun{}, 1
	}
	if noun.Kind == syntax.NounStitch && h.groups(noun.Stitch) {
		return h.limitOfGroups(n, noun)
	}
	i := len(h.base)
	for i > 0 && n > 0 {
		i--
		switch s := h.stitch(h.base[i]); {
		case h.accepts(s, noun):
			n--
		case s.IsSpace() && noun.Kind == syntax.NounAny:
			if h.met |= ReadCountsChains; h.choose&ReadCountsChains != 0 {
				n -= s.Chains // the last 2 sts are `ch 1, sc`
			}
		}
	}
	return i
}

// limitOfGroups is limit for groups of stitches, each of which is left whole. Where
// there are not so many, how far is not known.
func (h *hand) limitOfGroups(n int, noun syntax.Noun) int {
	unnamed := h.unnamedGroups(noun.Stitch)
	i, object := len(h.base), 0
	for ; i > 0; i-- {
		s := h.stitch(h.base[i-1])
		if n == 0 && s.Object != object {
			return i
		}
		if s.Object > 0 && s.Object != object && (unnamed || h.accepts(s, noun)) {
			object, n = s.Object, n-1
		}
	}
	if n > 0 {
		h.lose()
	}
	return i
}

// find finds the nth place of a kind from one place of the ground to before another, -1
// for none.
func (h *hand) find(n int, noun syntax.Noun, from, to int) int {
	for i := from; i < to; i++ {
		if h.accepts(h.stitch(h.base[i]), noun) {
			if n--; n == 0 {
				return i
			}
		}
	}
	return -1
}

// nth finds the nth place of a kind, counted from one end of the base.
func (h *hand) nth(n int, noun syntax.Noun, fromEnd bool) int {
	if !fromEnd {
		return h.find(n, noun, 0, len(h.base))
	}
	for i := range slices.Backward(h.base) {
		if h.accepts(h.stitch(h.base[i]), noun) {
			if n--; n == 0 {
				return i
			}
		}
	}
	return -1
}

// upTo lets places before index end be used again, as far as the ground that
// is stood on now goes: a repeat may end on other ground than it began on, and
// further along.
func (h *hand) upTo(end int) { h.end = max(h.at, min(end, len(h.base))) }

// goTo moves to a place out of turn. Stitches passed over on the way are a
// fault in solid work: nobody said to leave them.
func (h *hand) goTo(i int) {
	h.leap(i)
	h.past(i)
}

// leap reports the stitches that a step out of turn passes over, where none
// was passed by landmark before.
func (h *hand) leap(to int) {
	if h.loose {
		return
	}
	passed := 0
	for i := h.at; i < to && i < len(h.base); i++ {
		if !h.stitch(h.base[i]).IsSpace() {
			passed++
		}
	}
	if passed > 0 {
		h.fault(Fault{Kind: RowShort, N: passed, Base: h.count(syntax.Noun{})})
	}
}

// onOther tells a place that no foundation chain has, where only that lies below: the
// work is on something that this piece did not make.
func (h *hand) onOther(n syntax.Noun) bool {
	if n.Kind != syntax.NounStitch && n.Kind != syntax.NounSpace {
		return false
	}
	for _, i := range h.base {
		if s := h.stitch(i); s.IsSpace() || s.Kind == nil || s.Kind.Class != stitch.Chain {
			return false
		}
	}
	return true
}

// inPassing tells a group or picot of which the row below has none: it is made there
// in steps, to which the pattern gave that name in passing.
func (h *hand) inPassing(n syntax.Noun) bool {
	k := n.Stitch.Meaning.In(h.words.dialect)
	return n.Kind == syntax.NounStitch && k != nil && (k.Class == stitch.Group || k.Class == stitch.Picot) && h.count(n) == 0
}

func (h *hand) nounName(n syntax.Noun) string {
	switch n.Kind {
	case syntax.NounStitch:
		return n.Stitch.Word
	case syntax.NounSpace:
		if n.Length.Written() {
			return "ch-" + itoa(n.Length.At(h.size)) + " sp"
		}
		return "sp"
	case syntax.NounChain:
		return "ch"
	case syntax.NounCorner:
		return "corner"
	case syntax.NounTurning:
		return "turning ch"
	case syntax.NounMarker:
		return "marked st"
	}
	return "st"
}

// describe lists what kinds the row below is made of, the commonest first.
func (h *hand) describe() string {
	parts := h.parts(h.base)
	out := ""
	for i, p := range parts {
		if i == 3 {
			break
		}
		if i > 0 {
			out += ", "
		}
		out += itoa(p.N) + " " + p.Name
	}
	return out
}
