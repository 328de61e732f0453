package syntax

import (
	"slices"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

// A row of a garment may say what is done at its ends: `htr2tog at each end of every row`, `sc across, sc2tog at the neck
// edge`. The rest of it is worked as before, or as it says.

// shapesEnds takes such words for so many stitches fewer, or more, where no other words of the row say where its stitches
// end; else for the stitch that comes there.
func shapesEnds(r *Instruction) {
	if !slices.ContainsFunc(r.Tokens, func(t Token) bool { return t.Kind == Word && t.Canon == "at" }) {
		return
	}
	var ends, others []int
	count := r.countsLast()
	for i, c := range r.Clauses {
		switch c.Node.(type) {
		case *Chain, *CountsNote, *Turn, *Total, *Remark, *Side, *Finish, *Join, *Yarn:
			continue
		}
		switch {
		case endsNamed(r.within(c.Span)) > 0:
			ends = append(ends, i)
		case i < len(r.Clauses)-1 || count == nil:
			others = append(others, i)
		}
	}
	if len(ends) == 0 {
		return
	}
	at := ends[0]
	said := r.within(r.Clauses[at].Span)
	n := endsNamed(said)
	switch {
	case len(ends) == 1 && len(others) == 0:
	case len(ends) == 1 && len(others) == 1 && others[0] < at && allAlongRow(r.Clauses[others[0]].Node):
	case len(ends) == 1 && len(others) == 1 && others[0] == at+1 && n == 2 && restBetween(r.within(r.Clauses[at+1].Span)):
		r.Clauses[at+1].Node = &Remark{}
	default:
		r.nextAtEnds(ends)
		return
	}
	r.Clauses[at].Node = &Shaping{Less: said[0].Stitch.In(stitch.Unsettled).Class != stitch.Increase, Number: One(n)}
	if last := len(r.Clauses) - 1; count != nil {
		r.Clauses[last].Node = count // `Dc2tog at each end of row. 24 dc.`
	}
}

// nextAtEnds takes stitches that stand at one end for those that come there: `sc2tog at beg of row, sc to last 2 sts, sc2tog
// at end of row`.
func (r *Instruction) nextAtEnds(ends []int) {
	for _, i := range ends {
		if w, works := r.Clauses[i].Node.(*Work); works && endsNamed(r.within(r.Clauses[i].Span)) == 1 {
			next := *w
			next.Places = nil
			r.Clauses[i].Node = &next
		}
	}
}

// countsLast is the count that the last sentence of an instruction may be, where it was read as work; nil for none.
func (r *Instruction) countsLast() *Total {
	last := len(r.Clauses) - 1
	if last < 1 || r.Clauses[last-1].Sep != SepStop {
		return nil
	}
	if _, works := r.Clauses[last].Node.(*Work); !works {
		return nil
	}
	return asTotal(r.within(r.Clauses[last].Span))
}

// within are the tokens of a clause, without the word `work` before them.
func (r *Instruction) within(at source.Span) []Token {
	var out []Token
	from, _ := slices.BinarySearchFunc(r.Tokens, at.Start, func(t Token, start int) int { return t.Span.Start - start })
	for _, t := range r.Tokens[from:] {
		if t.Span.Start >= at.End {
			break
		}
		if at.Covers(t.Span) && !(t.Kind == Word && t.Canon == "work") {
			out = append(out, t)
		}
	}
	return out
}

// allAlongRow tells work in each stitch to the end of the row.
func allAlongRow(n Node) bool {
	w, works := n.(*Work)
	return works && len(w.Places) == 1 && !w.Places[0].Number.Written() && (w.Places[0].To.Kind == ToTheEnd || w.Places[0].Each && w.Places[0].To.Kind == ToNothing)
}

// restBetween tells words for the stitches between the ends: `sc in each st between`, `sc in all other sts`.
func restBetween(said []Token) bool {
	if len(said) > 0 && said[0].Kind == Number && said[0].Values.Equal(One(1)) {
		said = said[1:]
	}
	return len(said) > 2 && said[0].Kind == Stitch && !holds(said, Number) && slices.ContainsFunc(said, func(t Token) bool {
		return t.Kind == Word && (t.Canon == "between" || t.Canon == "other") || t.Kind == Name && t.Canon == "rest"
	})
}

// endsNamed is at how many ends of a row the words work a stitch that takes two or makes two, 0 for anything else.
func endsNamed(said []Token) int {
	if len(said) < 3 || said[0].Kind != Stitch || said[1].Kind != Word || said[1].Canon != "at" {
		return 0
	}
	k := said[0].Stitch.In(stitch.Unsettled)
	if k == nil || k.Uses != 2 && k.Makes != 2 || k.Uses > 2 {
		return 0
	}
	ends, both := 0, false
	for i, t := range said[2:] {
		switch {
		case t.Kind == Name && parts[t.Canon]:
		case t.Kind != Word:
			return 0
		case t.Canon == "end", t.Canon == "beg", t.Canon == "rowend", t.Canon == "edge", t.Canon == "side":
			ends++
			both = both || said[i+1].Canon == "each" || said[i+1].Canon == "both"
		case !besideEnds[t.Canon]:
			return 0
		}
	}
	if both {
		return 2
	}
	return min(ends, 2)
}

// besideEnds are the other words that say at which ends, and of which rows.
var besideEnds = map[string]bool{"": true, "each": true, "both": true, "of": true, "and": true, "row": true, "rnd": true, "next": true, "front": true, "back": true}
