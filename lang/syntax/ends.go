package syntax

import "stitchproof/lang/stitch"

// A row of a garment may say no more than what is done at its ends: `htr2tog at each end of every row`, `sc2tog at the neck
// edge`. The rest of it is worked as before.

// shapesEnds takes such a row for one that has so many stitches fewer, or more.
func shapesEnds(r *Instruction) {
	at := -1
	for i, c := range r.Clauses {
		switch c.Node.(type) {
		case *Chain, *CountsNote, *Turn, *Total, *Remark, *Side, *Finish:
		case *Work:
			if at >= 0 {
				return
			}
			at = i
		default:
			return
		}
	}
	if at < 0 {
		return
	}
	var said []Token
	for _, t := range r.Tokens {
		if r.Clauses[at].Span.Covers(t.Span) && !(t.Kind == Word && t.Canon == "work") {
			said = append(said, t)
		}
	}
	if ends := endsNamed(said); ends > 0 {
		k := said[0].Stitch.In(stitch.Unsettled)
		r.Clauses[at].Node = &Shaping{Less: k.Class != stitch.Increase, Number: One(ends)}
	}
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
var besideEnds = map[string]bool{"": true, "each": true, "both": true, "of": true, "and": true, "row": true, "next": true, "front": true, "back": true}
