package fabric

import (
	"slices"

	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// Some rows number all that they work: `2 sc in first st, 5 sc, (2 sc in next st) 3
// times`. What they make and how many places they take shows in their own words,
// whatever lies below them.

// NumbersAll tells whether every step of a row is worked so many times, whatever
// lies below it, and how many stitches its own words leave open: one where it begins
// with chains that may stand for a stitch.
func NumbersAll(steps []syntax.Clause) (open int, all bool) {
	n := numbered{}
	all = n.steps(withoutCounts(steps)) && n.works
	return n.open, all
}

// withoutCounts are the steps of a row without those that only state its count.
func withoutCounts(steps []syntax.Clause) []syntax.Clause {
	if total, _ := statedIn(steps); total != nil {
		return steps
	}
	return steps[:countsFrom(steps)]
}

// numbered is what steps that number all their work come to in one size.
type numbered struct {
	size   int
	works  bool
	open   int         // stitches of which the words do not tell whether they are made
	places int         // that they take
	first  bool        // the first of them goes in the place where the yarn is
	noun   syntax.Noun // what the places are called, where that is one stitch
	apart  bool        // they do not only take one stitch after the other
}

// steps takes up some steps. It gives false where one of them is not worked so many times.
func (n *numbered) steps(list []syntax.Clause) bool {
	for i, c := range list {
		switch node := c.Node.(type) {
		case *syntax.Work:
			if n.works && closesRound(node) && !worksOn(list[i+1:]) {
				continue
			}
			if !n.work(node) {
				return false
			}
		case *syntax.Repeat:
			if !n.repeat(node) {
				return false
			}
		case *syntax.Chain:
			if n.works || node.Number.PerSize() || node.Number.At(0) > MostTurning {
				return false
			}
			if node.Number.At(0) != 1 || node.Counts.Said {
				n.apart = true // it may stand for a stitch
			}
			if node.Number.At(0) != 1 && !node.Counts.Said {
				n.open = 1
			}
		case *syntax.Skip:
			n.pass(node.Place)
		case *syntax.Leave:
			if node.Place.Pick == syntax.PickNext && node.Place.Noun.Kind != syntax.NounNone {
				n.pass(node.Place)
			}
		case *syntax.Yarn:
			if k := node.With.Meaning.In(stitch.Unsettled); k != nil && k.Class != stitch.Slip {
				return false // `join with sc`
			}
			n.apart = n.apart || !node.Place.Empty()
		case *syntax.Turn:
			n.apart = n.apart || node.OtherSide || node.Rotate
		case *syntax.Total, *syntax.Remark, *syntax.Join, *syntax.NoJoin, *syntax.Marker, *syntax.Side, *syntax.LoopNote, *syntax.Finish:
		default:
			return false
		}
	}
	return true
}

func (n *numbered) work(w *syntax.Work) bool {
	k := w.Stitch.Meaning.In(stitch.Unsettled)
	if k == nil || !slices.Contains(singly, k.Class) || w.Joins || w.HeldBack || w.Times.Written() {
		return false
	}
	begins := !n.works
	n.works = true
	if len(w.Places) == 0 {
		n.places += takes(k) * w.Number.Or(n.size, 1)
		return w.Number.Written() || k.Class != stitch.Plain
	}
	for _, p := range w.Places {
		switch {
		case (p.Noun.Kind == syntax.NounEdge || p.Noun.Kind == syntax.NounRowEnd) && w.Number.Written() && !p.Each && !p.Number.Written():
			n.apart = true // `34 dc evenly along the edge`, `10 sc down the row ends`
			continue
		case p.To.Kind != syntax.ToNothing || p.Each && !p.Number.Written():
			return false
		case (p.Noun.Kind == syntax.NounSpace || p.Noun.Kind == syntax.NounCorner) && w.Number.Written() && (p.Each || !p.Number.Written()):
			n.apart = true // `8 sc in ch-8 sp`
			continue
		case p.From == syntax.FromHook && p.Nth == 2 && k.Turning <= 1:
			n.apart = true
			continue
		case p.From != syntax.FromHere || p.Noun.Kind > syntax.NounChain:
			return false
		case !w.Number.Written() && !p.Number.Written() && k.Class == stitch.Plain && len(w.Places) == 1 && p.Pick == syntax.PickNext && p.Noun.Kind == syntax.NounNone:
			return false
		}
		if p.Pick == syntax.PickSame {
			n.first = n.first || begins
			continue
		}
		n.pass(p)
		if !p.Number.Written() {
			n.places += takes(k) - 1
		}
	}
	return true
}

// takes is how many places one working of a stitch takes.
func takes(k *stitch.Stitch) int {
	if k.Class == stitch.Decrease {
		return max(k.Uses, 2)
	}
	return max(k.Uses, 1)
}

// singly are the classes of stitches of which so many are so many in the count, or
// twice as many.
var singly = []stitch.Class{stitch.Plain, stitch.Increase, stitch.Decrease, stitch.Together, stitch.Post}

func (n *numbered) repeat(r *syntax.Repeat) bool {
	if r.Limit != syntax.Times && r.Limit != syntax.More || len(r.Ending) > 0 || r.Stops || r.Omits != nil {
		return false
	}
	body := numbered{size: n.size}
	if !body.steps(r.Body) || !body.works {
		return false
	}
	times := r.Number.At(n.size)
	if r.Limit == syntax.More {
		times++
	}
	n.works, n.apart = true, n.apart || body.apart || body.first
	n.call(body.noun)
	n.places += times * body.places
	return true
}

// pass goes over places, worked into or not.
func (n *numbered) pass(p syntax.Place) {
	n.apart = n.apart || p.Noun.Kind > syntax.NounStitch || p.To.Kind != syntax.ToNothing || p.Each && !p.Number.Written() ||
		p.From != syntax.FromHere || p.Of != nil || p.Row.Written() || p.Pick == syntax.PickNth
	n.call(p.Noun)
	n.places += p.Number.Or(n.size, 1)
}

// call notes what places are called.
func (n *numbered) call(noun syntax.Noun) {
	if noun.Kind != syntax.NounStitch {
		return
	}
	n.apart = n.apart || n.noun.Kind == syntax.NounStitch && n.noun.Stitch.Word != noun.Stitch.Word
	n.noun = noun
}

// closesRound tells the slip stitch into the first stitch that joins a round.
func closesRound(w *syntax.Work) bool {
	return w.Stitch.Meaning.Is(stitch.Slip) && len(w.Places) == 1 && w.Places[0].Pick == syntax.PickFirst && w.Places[0].Nth == 1
}

// landOn gives a row of which nobody knows what it is worked on as many stitches as it
// takes, where it numbers all that it works: its own words show what lies below.
func (h *hand) landOn(clauses []syntax.Clause) {
	n := numbered{size: h.size}
	if !h.adrift || h.plainLine || h.chains > 1 || !n.steps(withoutCounts(clauses)) || !n.works || n.apart {
		return
	}
	if n.first {
		n.places++
	}
	if n.places < 1 || n.places > maxRow {
		return
	}
	h.main = h.mainFor(clauses)
	h.standOn(h.imagined(&syntax.Total{Parts: []syntax.Part{{Number: syntax.One(n.places), Noun: n.noun}}}))
	h.adrift, h.known, h.laid, h.landed, h.chains = false, true, true, true, 0
	if n.first {
		h.at, h.held = 1, 0
	}
}
