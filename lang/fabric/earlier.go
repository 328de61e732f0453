package fabric

import (
	"slices"

	"stitchproof/lang/syntax"
)

// Work into rows that lie further down than the row below.

// onRow goes back to an earlier row to work along it.
func (h *hand) onRow(number int) bool {
	earlier, ok := h.done[number]
	if !ok && len(h.done) == 0 {
		h.lose() // of another piece: this one has none yet
		return false
	}
	if !ok {
		h.fault(Fault{Kind: RowUnknown, N: number})
		return false
	}
	h.standOn(earlier)
	return true
}

// alongRow goes along an earlier row, or on along it. It tells whether there is
// one.
func (h *hand) alongRow(number int) bool {
	earlier := h.done[number]
	if len(earlier) == 0 {
		return false
	}
	if len(h.base) != len(earlier) || h.base[0] != earlier[0] {
		h.standOn(earlier)
		h.loose = true
	}
	return true
}

// standOn makes places the ground that is worked on.
func (h *hand) standOn(places []int) {
	h.base = places
	h.toStart()
	h.loose, h.full, h.bySpaces, h.overSpaces = false, false, false, false
}

// inLoops works in one loop from here on: of the row below, or of an earlier
// row that still has it free.
func (h *hand) inLoops(n *syntax.LoopNote) {
	h.loop = n.Loop
	if !n.Row.Written() || !h.onRow(n.Row.At(h.size)) {
		return
	}
	free := h.free(n.Loop)
	if len(free) == 0 {
		h.fault(Fault{Kind: PlaceAbsent, Name: loopName(n.Loop), There: h.describe(), N: 1})
		return
	}
	h.standOn(free)
}

// free lists the stitches stood on that have a loop nobody worked into. With
// BothLoops either one will do.
func (h *hand) free(loop syntax.Loop) []int {
	used := map[int][]syntax.Loop{}
	for i := range h.made() {
		if s := h.stitch(i); s.Into >= 0 && !s.Post {
			used[s.Into] = append(used[s.Into], s.Loop)
		}
	}
	var out []int
	for _, i := range h.base {
		if h.stitch(i).IsSpace() || !leaves(used[i], loop) {
			continue
		}
		out = append(out, i)
	}
	return out
}

// leaves tells whether work into some loops of a stitch leaves a loop free.
func leaves(used []syntax.Loop, loop syntax.Loop) bool {
	front, back := true, true
	for _, u := range used {
		front = front && u == syntax.BackLoop
		back = back && u == syntax.FrontLoop
	}
	switch loop {
	case syntax.FrontLoop:
		return front
	case syntax.BackLoop:
		return back
	}
	return front || back
}

func loopName(l syntax.Loop) string {
	switch l {
	case syntax.FrontLoop:
		return "front loop"
	case syntax.BackLoop:
		return "back loop"
	}
	return "free loop"
}

// unworked stands on what was last left unworked on purpose, or on what the row
// named left so, where a skip or a join speaks of it. It tells whether there
// is any.
func (h *hand) unworked(p syntax.Place) bool {
	if p.Pick != syntax.PickRemaining && !p.Row.Written() {
		return false
	}
	return h.onLeft(h.leftAt(p)) || p.Pick == syntax.PickRemaining && h.cut && h.onShort(0)
}

// pastLeft stands on what was left unworked where a skip comes first after the yarn
// was fastened off, as the second side of a neck begins: nothing else is there
// to go on from. What was left without a word is meant only where the last row has too few.
func (h *hand) pastLeft(p syntax.Place) bool {
	if !h.cut || h.round || len(h.row) > 0 || p.Pick != syntax.PickNext {
		return false
	}
	n := p.Number.Or(h.size, 1)
	return h.onLeft(h.leftPast(p)) || h.count(syntax.Noun{}) <= n && h.onShort(n)
}

// onShort stands on what a row left without a word, if that is more than so many places: it is
// worked on now, and was left on purpose.
func (h *hand) onShort(n int) bool {
	if len(h.short.places) <= n {
		return false
	}
	if row := h.shortIn; row != OfEarlier { // a piece is not changed by those after it
		h.resumed = &row
	}
	h.standOn(h.short.places)
	h.short = leftOut{}
	return true
}

// leftPast is a run of places left unworked that goes on behind what a skip passes over, -1
// for none.
func (h *hand) leftPast(p syntax.Place) int {
	n := p.Number.Or(h.size, 1)
	return slices.IndexFunc(h.left, func(l leftOut) bool { return len(l.places) > n })
}

// onLeft stands on a run of places left unworked, or on what nobody knows where a row left
// some of which that is so. It gives false for none.
func (h *hand) onLeft(i int) bool {
	if i < 0 {
		if i = slices.IndexFunc(h.left, func(l leftOut) bool { return l.unseen }); i < 0 {
			return false
		}
		h.left = slices.Delete(slices.Clone(h.left), i, i+1)
		h.standOn(nil)
		h.adrift = true
		h.lose()
		return true
	}
	left := h.left[i].places
	h.left = slices.Delete(slices.Clone(h.left), i, i+1)
	h.standOn(left)
	return true
}

// comeBack lays places left unworked by an earlier row at the end of the row
// at work, where a step speaks of them and fewer are left. It tells whether
// there are any.
func (h *hand) comeBack(p syntax.Place) bool {
	if !p.Row.Written() && h.remaining(p.Noun) >= p.Number.Or(h.size, 1) {
		return false
	}
	base, found := slices.Clone(h.base[:h.at]), false
	for i := h.leftAt(p); i >= 0; i = h.leftAt(p) {
		left := h.left[i]
		base, found = append(base, left.places...), true
		h.left = slices.Delete(slices.Clone(h.left), i, i+1)
		if want := h.at + p.Number.Or(h.size, 1); !p.Each && len(base) >= want {
			if rest := base[want:]; len(rest) > 0 {
				h.left = slices.Insert(h.left, i, leftOut{rest, left.turns, left.unseen})
			}
			base = base[:want:want]
			break
		}
	}
	if found {
		h.base, h.end = base, len(base)
	}
	return found
}

// leftAt finds the run of places that a step means: of the row it names, else
// the last one at the end of the work where this row ends too.
func (h *hand) leftAt(p syntax.Place) int {
	if p.Row.Written() {
		row := h.done[p.Row.At(h.size)]
		return slices.IndexFunc(h.left, func(l leftOut) bool { return len(l.places) > 0 && slices.Contains(row, l.places[0]) })
	}
	for _, sameEnd := range []bool{true, false} {
		i := slices.IndexFunc(h.left, func(l leftOut) bool {
			return len(l.places) > 0 && ((h.turns-l.turns)%2 == 0) == sameEnd
		})
		if i >= 0 {
			return i
		}
	}
	return -1
}

// mirrored is what a row began with, the other way round: `ending to
// correspond`. The chains and joins it begins with have no counterpart.
func mirrored(before []syntax.Clause) []syntax.Clause {
	var out []syntax.Clause
	for i := len(before) - 1; i >= 0; i-- {
		c := before[i]
		switch n := c.Node.(type) {
		case *syntax.Work:
			w := *n
			w.Places = slices.Clone(n.Places)
			for k := range w.Places {
				if w.Places[k].Pick == syntax.PickFirst {
					w.Places[k].Pick = syntax.PickNext
				}
			}
			c.Node = &w
		case *syntax.Group, *syntax.Skip, *syntax.Repeat, *syntax.Bracket:
		case *syntax.Chain:
			if len(out) == 0 && !worksOn(before[:i]) {
				continue
			}
		default:
			continue
		}
		out = append(out, c)
	}
	for len(out) > 0 {
		if _, chain := out[len(out)-1].Node.(*syntax.Chain); !chain {
			break
		}
		out = out[:len(out)-1] // the beginning chain
	}
	return out
}
