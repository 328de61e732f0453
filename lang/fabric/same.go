package fabric

import (
	"slices"

	"stitchproof/lang/stitch"
)

// Same tells whether two patterns come to the same work: every piece, and every
// branch that a word of the pattern's own stands for, the same stitches, each in the
// same place, in every size, with as much of it known. How the words are spread over
// lines, and how a stitch of the pattern's own, a yarn or a branch is called, is no
// part of that.
func Same(a, b *Fabric) bool {
	return slices.EqualFunc(a.Pieces, b.Pieces, samePiece) && slices.EqualFunc(a.Parts, b.Parts, samePiece)
}

func samePiece(p, q *Piece) bool {
	return slices.EqualFunc(p.Stitches, q.Stitches, func(s, t []Stitch) bool { return slices.EqualFunc(s, t, Stitch.Like) }) &&
		slices.Equal(p.known(), q.known())
}

// Like tells whether two stitches are worked alike and each in the same place,
// whichever instruction made them and whatever the pattern calls them.
func (s Stitch) Like(t Stitch) bool {
	return sameKind(s, t) && s.Chains == t.Chains && s.Into == t.Into && s.Over == t.Over && s.Apart == t.Apart &&
		s.Turning == t.Turning && s.Post == t.Post && s.Loop == t.Loop
}

// sameKind compares what was worked; of stitches that only the pattern knows, what
// they come to.
func sameKind(s, t Stitch) bool {
	if s.Kind == t.Kind || s.Kind == nil || t.Kind == nil {
		return s.Kind == t.Kind
	}
	return !traded(s.Kind) && !traded(t.Kind) && s.Kind.Class == t.Kind.Class && s.Kind.Makes == t.Kind.Makes
}

// traded tells a stitch of the trade from one that only the pattern knows.
func traded(k *stitch.Stitch) bool { return stitch.ByID(k.ID) == k }

// known is how many rows of the piece could be counted and how many could not,
// in each size.
func (p *Piece) known() [][2]int {
	out := make([][2]int, len(p.Stitches))
	for _, r := range p.Rows {
		for size := range r.Tallies {
			switch t := &r.Tallies[size]; {
			case !t.Works:
			case t.Known:
				out[size][0] += r.Repeats[size]
			default:
				out[size][1] += r.Repeats[size]
			}
		}
	}
	return out
}
