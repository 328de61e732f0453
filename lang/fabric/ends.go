package fabric

import (
	"slices"

	"stitchproof/lang/phrase"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// startRing makes a ring to work into, with room for any number.
func (h *hand) startRing() {
	h.ring, h.round, h.loose = true, true, true
	h.base, h.at, h.end, h.held = nil, 0, 0, -1
}

// join closes a ring or a round, or moves along to where the next round
// begins.
func (h *hand) join(n *syntax.Join) {
	h.chains += n.Chains.At(h.size)
	switch {
	case n.Place.Name != "" && len(h.branches) > 0 && h.aside(stitch.ByID("sl st"), 1, n.Place):
	case n.Place.Elsewhere && n.Place.Name != "":
		h.joinPieces(h.chains)
		if k, own := h.words.stitch(n.With); k != nil && k.Class != stitch.Slip {
			h.makeRest(k, own, 1, h.effectOf(k)) // `join to second leg with sc`
		}
	case n.Place.Elsewhere:
		h.lose() // what goes on from there is not said
	case len(h.row) == 0 && !h.begun && (n.Place.Row.Written() || !n.Ring && h.base == nil && h.chains == 0 && h.alongSides(h.after)):
		h.changeYarn(&syntax.Yarn{Action: syntax.YarnJoin, Place: n.Place}) // `join in the first dc of Row 21`
	case len(h.row) == 0 && !h.begun && h.base == nil && h.chains > 0:
		// `ch 4, sl st in first ch to form ring`
		first := h.chainNodes(h.chains)
		h.chains = 0
		h.ring, h.round = true, true
		h.first = first
		h.base = first
		h.toStart()
		h.joined = true
	case len(h.row) == 0 && !h.begun && h.chains == 0 && len(h.base) > 0 && n.Place.Noun.Kind != syntax.NounNone:
		h.travel(n.Place)
	case len(h.row) > 0 && nextStitch(n.Place) && h.remaining(syntax.Noun{}) > 0:
		h.nextPlaces(stitch.ByID("sl st"), nil, 1, 1, n.Place.Noun) // `sl st to next st`, on the way
	case h.nested && h.chains > 0 && worksOn(h.coming):
		h.lose() // a ring of its own, made on the way
	default:
		h.closeDone()
		h.space()
		h.joined, h.round = true, true
	}
}

// nextStitch tells whether a place is just the next stitch.
func nextStitch(p syntax.Place) bool {
	n := p.Noun.Kind
	return p.Pick == syntax.PickNext && p.From == syntax.FromHere && (n == syntax.NounStitch || n == syntax.NounAny)
}

// travel moves to a place without making stitches: slip stitches at a
// round's beginning, or yarn joined somewhere. The round begins there.
func (h *hand) travel(p syntax.Place) {
	if p.Elsewhere {
		h.loose = true
		h.lose()
		return
	}
	h.lay()
	if p = h.betweenGroups(h.widened(p)); p.Prep == syntax.Between {
		h.skipGroups(1, p)
		h.base = rotated(h.base, h.at)
		h.toStart()
		h.gap = 0
		return
	}
	if h.offFoundation(p) || p.Noun.Kind == syntax.NounOther || p.Of != nil && p.Of.Noun.Kind == syntax.NounOther {
		h.otherSide()
	}
	if p.Noun.Kind == syntax.NounMarker {
		i := h.marked()
		if i < 0 {
			h.noMarker()
			return
		}
		p.Pick, p.Nth, p.Noun = syntax.PickNth, i+1, syntax.Noun{}
	}
	i := -1
	switch {
	case h.chainOfSpace(p):
		i = h.next(p.Of.Noun) // `sl st in 3rd ch of next ch-5 sp`
	case p.Of != nil && p.Of.Noun.Kind == syntax.NounSpace && p.Of.Pick == syntax.PickAny:
		if h.next(p.Of.Noun) >= 0 {
			i = h.next(p.Noun) // `in first sc after any ch-2 sp`
		}
	case p.Center && p.Of != nil && p.Of.Pick != syntax.PickLast && p.Of.Noun.Kind != syntax.NounSpace:
		i = h.groupAhead(p.Of.Noun, p) // `sl st to center dc of first petal`
	case p.Pick == syntax.PickNth:
		i = h.nth(p.Nth, p.Noun, p.From == syntax.FromEnd)
	case p.Pick == syntax.PickLast:
		i = h.nth(1, p.Noun, true)
	case p.Pick == syntax.PickFirst:
		i = h.nth(1, p.Noun, false)
	default:
		i = h.next(p.Noun)
	}
	switch {
	case i < 0 && p.Pick == syntax.PickNth && h.base != nil:
		h.fault(Fault{
			Kind: PlaceAbsent, Name: "st " + itoa(p.Nth), N: 1, Base: max(0, p.Row.At(h.size)),
			There: itoa(h.count(p.Noun)) + " sts",
		})
		return
	case i < 0:
		h.missing(p.Noun, 1)
		return
	}
	if h.round {
		h.base = rotated(h.base, i)
		i = 0
		h.end = len(h.base)
	}
	h.past(i)
	h.spare = true
}

// noMarker gives up on a marked stitch: none was ever marked, or it is in
// another piece.
func (h *hand) noMarker() {
	h.loose = true
	if !h.words.marks {
		h.fault(Fault{Kind: PlaceAbsent, Name: "marked st", N: 1})
	}
	h.lose()
}

// arrive ends the slip stitches that lead to where a round begins: they are
// no stitches of it.
func (h *hand) arrive() {
	h.row, h.rowMade, h.begun = nil, 0, false
	if h.held < 0 || h.held >= len(h.base) {
		return
	}
	if !h.round {
		return // the stitches travelled over stay behind
	}
	h.base = rotated(h.base, h.held)
	h.toStart()
	h.past(0)
	h.spare = true
}

// risesBy tells whether so many chains may rise to the stitch that the row goes on
// with, as many writers give hdc one only: the slip stitches before them only led there.
func (h *hand) risesBy(chains int) bool {
	k := h.firstStitch(h.after)
	return k != nil && k.Plain().Class == stitch.Plain && chains > 0 && chains <= k.Plain().Turning
}

// slipsToFirst tells whether a slip stitch in the next place comes round to the first of the round, where yarn was joined
// and the first petal began: `join with sl st in any sc, *(ch 2, 2 dc) in same sc, (2 dc, ch 2, sl st) in next sc, sl st in
// next sc; rep from * 4 more times`.
func (h *hand) slipsToFirst(k *stitch.Stitch, n syntax.Noun) bool {
	return k.Class == stitch.Slip && h.round && !h.spare && h.nested && h.at == h.end && h.end == len(h.base) && h.whole() && h.accepts(h.stitch(h.base[0]), n)
}

// comesFull comes back to the place that the round was led to, which is its
// last where nothing was worked there at first.
func (h *hand) comesFull(n syntax.Noun) bool {
	if !h.spare || !h.round || h.end < len(h.base) || !h.accepts(h.stitch(h.base[0]), n) || h.closesByStitch() {
		return false
	}
	h.base = append(slices.Clip(h.base), h.base[0])
	h.end, h.spare = len(h.base), false
	return true
}

// closesByStitch tells whether the round, which began with chains where it was
// led to, ends with fewer of them and the stitch that brings the hook back there:
// `ch 5, sc in next loop, …, ch 2, dc in first ch`.
func (h *hand) closesByStitch() bool {
	if len(h.row) == 0 || !h.stitch(h.row[0]).IsSpace() || len(h.after) < 2 {
		return false
	}
	_, chain := h.after[0].Node.(*syntax.Chain)
	if _, joins := h.after[1].Node.(*syntax.Join); chain && joins {
		return true // `…, ch 3, join`: the chains come back there
	}
	w, stitches := h.after[1].Node.(*syntax.Work)
	return chain && stitches && !h.slips(w.Stitch) && len(w.Places) == 1 && (closing(w.Places[0]) || h.onCloser(w.Places[0])) && !worksOn(h.after[2:])
}

// closing tells a place at which a round is closed: its first stitch, or what
// stands for that.
func closing(p syntax.Place) bool {
	return p.Pick == syntax.PickFirst || topOfChain(p).Noun.Kind == syntax.NounTurning || p.Of != nil && p.Of.Noun.Kind == syntax.NounTurning ||
		p.Noun.Kind == syntax.NounTip && p.Of != nil && p.Of.Pick == syntax.PickFirst // the top of the first cluster
}

// onCloser tells a place that is the stitch which closed the round below into its
// last space, or the slip stitch that led on from there: this round began in it,
// `…, ending with ch 2, hdc in hdc`.
func (h *hand) onCloser(p syntax.Place) bool {
	if p.Noun.Kind != syntax.NounStitch || h.count(p.Noun) > 0 {
		return false
	}
	k, _ := h.words.stitch(p.Noun.Stitch)
	return k != nil && (k == h.closed || k.Class == stitch.Slip && p.Pick == syntax.PickLast)
}

// onBeginner tells a place that is the pattern's own stitch which begins its rounds, where this one
// has it: `sl st in top of beg cluster`.
func (h *hand) onBeginner(p syntax.Place) bool {
	if p.Noun.Kind == syntax.NounTip && p.Of != nil {
		p = *p.Of
	}
	if p.Noun.Kind != syntax.NounStitch {
		return false
	}
	_, own := h.words.stitch(p.Noun.Stitch)
	if own == nil || !begins.MatchString(own.name) {
		return false
	}
	_, made := h.objects.get(own.name)
	return made
}

// begins takes the name of a stitch that begins a round.
var begins = phrase.MustCompile(`(?i)^beg(?:inning)?[ -]`)

// joinsWith takes a stitch that closes the round instead of standing on it:
// `ch 2, dc in first sc to join` makes the last space.
func (h *hand) joinsWith(w *syntax.Work, k *stitch.Stitch, p syntax.Place) bool {
	last := h.begun && (h.round || h.other || k.Class == stitch.Slip && h.roundOne()) && (closing(p) || h.onCloser(p) || h.onBeginner(p)) && h.lastRead && (!w.Number.Written() || k.Class == stitch.Slip && w.Number.At(h.size) == 1)
	closes := w.Joins || last && (h.chains > 0 || k.Class == stitch.Slip) || h.slipsOn(k, p)
	if !closes || len(h.row) == 0 || h.fixed || h.closesOwnChain(p) {
		return false
	}
	if h.chains > 0 || w.Joins {
		h.closingSpace(k)
	}
	h.joined, h.round = true, true
	return true
}

// roundOne tells whether the row fills a chain with so many stitches that they stand in a ring:
// `2 ch, 6 dc in 2nd ch from hook, ss in first dc`.
func (h *hand) roundOne() bool {
	return len(h.row) >= fewestInRing && len(h.row) >= 2*len(h.base) && h.remaining(syntax.Noun{}) == 0
}

// fewestInRing is the least number of stitches that are closed to a ring around a chain.
const fewestInRing = 4

// joinShows tells what the end of a round shows of the chain that began it: one
// that is joined in its `first dc` does not take the chain for one, one that is
// joined in the top of the chain does.
func (h *hand) joinShows(k *stitch.Stitch) (counts, ok bool) {
	for i := len(h.after) - 1; i >= 0; i-- {
		var p syntax.Place
		switch n := h.after[i].Node.(type) {
		case *syntax.Join:
			p = n.Place
		case *syntax.Work:
			if !h.slips(n.Stitch) || len(n.Places) != 1 {
				return false, false
			}
			p = n.Places[0]
		case *syntax.Repeat, *syntax.Group, *syntax.Skip:
			return false, false
		default:
			continue
		}
		if topOfChain(p).Noun.Kind == syntax.NounTurning || p.Of != nil && p.Of.Noun.Kind == syntax.NounTurning {
			return true, true
		}
		if p.Noun.Kind == syntax.NounTip && p.Of != nil {
			p = *p.Of
		}
		named, _ := h.words.stitch(p.Noun.Stitch)
		return false, p.Pick == syntax.PickFirst && p.Noun.Kind == syntax.NounStitch && named != nil && named.Plain() == k
	}
	return false, false
}

// slipsOn tells whether a step slips from a round that is joined or full into
// the next: `sc in each st around, sl st in next 2 sts`, `join, sl st to next
// sp`. What it stands on is the round itself.
func (h *hand) slipsOn(k *stitch.Stitch, p syntax.Place) bool {
	if k.Class == stitch.Slip && h.joined && p.To.Kind == syntax.ToNext {
		return true
	}
	return k.Class == stitch.Slip && h.round && h.lastWork && !h.nested && h.chains == 0 && h.remaining(syntax.Noun{}) == 0 &&
		p.Pick == syntax.PickNext && p.From == syntax.FromHere && p.Prep == syntax.In && p.Noun.Kind != syntax.NounSpace
}

// closingSpace makes the round's last space of the chains on the hook and the
// stitch that closes it, which is worked as long as the others are: what each
// writer takes a stitch to be in chains differs by one or two.
func (h *hand) closingSpace(k *stitch.Stitch) {
	if k.Class == stitch.Slip {
		h.space() // it adds nothing to the chains
		return
	}
	h.chains += k.Plain().Turning
	for _, i := range h.row {
		if n := h.stitch(i).Chains; n > 0 && max(n-h.chains, h.chains-n) <= 2 {
			h.chains = n
			break
		}
	}
	h.space()
	h.inLast, h.closer = true, k
}

// turn turns the work, or goes on along the other side of a chain.
func (h *hand) turn(n *syntax.Turn) {
	b := h.innermost()
	switch {
	case n.Not:
		h.notTurned = true
	case n.Foundation && len(h.base) > 0 && slices.Contains(h.first, h.base[0]):
		// it is what is worked along
	case n.OtherSide && len(h.row) > 0 && len(h.base) > len(h.first) && !slices.Contains(h.first, h.base[0]) && h.bothSidesWorked():
		// the row below goes round both sides: this one goes on along it
	case n.OfStart && b != nil && b.chains > 0 && len(h.row) > b.row:
		h.comeHome(0) // from what grows at its end
		h.otherSide()
	case n.OtherSide:
		h.otherSide()
	case n.Rotate, h.unworkedStem(): // of a stem that is all chained, the way home begins
	case b != nil && b.chains > 0 && len(h.row) > b.row:
		h.turnBranch()
	case len(h.row) == 0 && !h.begun:
		if !h.reversed && h.base != nil {
			h.base, h.outline = reverse(h.base), reverse(h.outline)
			h.reversed = true
		}
		h.turnedFirst = true
		h.turns++
	default:
		h.turned = true
		h.turns++
	}
}

// joinUnseen takes up a yarn on something that this piece did not make: what follows can be
// counted where it is so many stitches along sides and in corners.
func (h *hand) joinUnseen() {
	if !h.alongSides(h.after) {
		h.lose()
		return
	}
	h.adrift = true
}

// alongSides tells whether all that some clauses work is so many stitches along sides.
func (h *hand) alongSides(list []syntax.Clause) bool {
	sides := 0
	for _, c := range list {
		if w, ok := c.Node.(*syntax.Work); ok && h.alongSide(w) {
			sides++
		} else if usesPlaces(c) && asCount(c.Node) == nil {
			return false
		}
	}
	return sides > 0
}

// alongSide tells so many stitches along a side, or in a corner.
func (h *hand) alongSide(w *syntax.Work) bool {
	if closesRound(w) {
		return true
	}
	if !w.Number.Written() || len(w.Places) != 1 {
		return false
	}
	kind := w.Places[0].Noun.Kind
	return kind == syntax.NounEdge || kind == syntax.NounCorner || w.Number.At(h.size) > 1 && (kind == syntax.NounOther || kind == syntax.NounTurning)
}

// joinAhead leaves what lies before the place where a line of its own joined the
// yarn: the row that follows begins there.
func (h *hand) joinAhead() {
	if h.cut && !h.round && h.held > 0 && h.held < len(h.base) {
		h.base = h.base[h.held:]
	}
}

func (h *hand) changeYarn(n *syntax.Yarn) {
	if n.Action == syntax.YarnDrop || n.Action == syntax.YarnCarry {
		return
	}
	h.yarn = n.Yarn
	if n.Action == syntax.YarnJoin && h.ended && len(h.row) > 0 {
		h.lose() // another row begins in the same line
		return
	}
	if n.Action != syntax.YarnJoin || len(h.row) > 0 || h.begun {
		return
	}
	h.joinYarn(n)
	if n.Place.Pick == syntax.PickNth || n.Place.Row.Written() {
		h.attached, h.full = true, true // it ends where it ends
	}
}

// joinYarn takes up a yarn where it is joined, and the row begins there.
func (h *hand) joinYarn(n *syntax.Yarn) {
	if n.Place.Noun.Kind == syntax.NounMarker && h.marked() < 0 || n.Place.Pick == syntax.PickPrevious {
		if h.atOpening(n.Place) {
			if h.beginsSame() {
				h.at, h.held = 1, 0
			}
			return
		}
	}
	if len(h.base) == 0 {
		if n.Place.Noun.Kind == syntax.NounMarker && !h.words.marks {
			h.noMarker()
			return
		}
		if !n.Place.Empty() && h.chains == 0 && !h.ring {
			h.joinUnseen()
		}
		return
	}
	if !h.unworked(n.Place) && n.Place.Row.Written() {
		h.onRow(n.Place.Row.At(h.size))
	}
	if len(h.around) > 0 && len(h.row) == 0 && !n.Place.Empty() && !n.Place.Row.Written() {
		h.standOn(h.around) // an edging goes round both sides
	}
	if n.Place.Noun.Kind == syntax.NounNone && n.Place.Pick == syntax.PickNext {
		h.loose = h.loose || n.Place.Elsewhere // `join B in the first dc after the quill` says what it passes over
		return
	}
	h.travel(n.Place)
	h.joinedAt = h.held
	if k, _ := h.words.stitch(n.With); k != nil && k.Plain().Turning == 1 {
		h.works = true
		h.make(k, "", 1, h.held, 1)
	}
}
