package fabric

import (
	"slices"

	"stitchproof/lang/syntax"
)

// opening is a run of stitches that a row passed over with chains above it: a
// thumb hole, an armhole, a handle. Work may come back to it, along the
// stitches and then along the chains from below.
type opening struct {
	places []int
	space  int
}

// skippedRun notes the places passed over by a skip. Skips that follow each
// other are one run, which ends with the next stitch.
func (h *hand) skippedRun(from, to int) {
	if to > from && to <= len(h.base) {
		h.run = append(h.run, h.base[from:to]...)
	}
}

// overRun takes chains just made as those over the run skipped last.
func (h *hand) overRun(space int) {
	if len(h.run) > 1 {
		h.openings = append(h.openings, opening{h.run, space})
	}
}

// beginsSame tells whether the row goes on in the place that the yarn is joined
// in.
func (h *hand) beginsSame() bool {
	for _, c := range h.after {
		if places := placesOf(c.Node); len(places) > 0 {
			return places[0].Pick == syntax.PickSame
		}
	}
	return false
}

// ofRow tells whether a row made the chains over an opening, or the stitches below it:
// either may be named.
func ofRow(row []int, o opening) bool {
	return slices.Contains(row, o.space) || slices.Contains(row, o.places[0])
}

// atOpening stands on an opening that a step speaks of: that of the row named,
// else the one with a marker in it, else the last one made. It tells whether
// there is one.
func (h *hand) atOpening(p syntax.Place) bool {
	for i := len(h.openings) - 1; i >= 0; i-- {
		o := h.openings[i]
		first := 0
		switch {
		case p.Noun.Kind == syntax.NounMarker:
			if first = slices.IndexFunc(o.places, func(s int) bool { return slices.Contains(h.marks, s) }); first < 0 {
				continue
			}
		case p.Row.Written() && !ofRow(h.done[p.Row.At(h.size)], o):
			continue
		}
		round := append(slices.Clone(o.places), o.space)
		h.standOn(rotated(round, first))
		h.opened, h.round, h.laid = true, true, true
		return true
	}
	return false
}
