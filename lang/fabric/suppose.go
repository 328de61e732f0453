package fabric

import "stitchproof/lang/syntax"

// A foundation of which only the multiple is given is laid over a supposed number
// of repeats, so that the rows on it can be counted and the multiple be held
// against the first of them.

// supposition is how a chain that is given as a multiple alone is laid.
type supposition struct {
	repeats int // 0 where it is not laid, and nothing on it is counted
	extra   int // chains to turn beyond the multiple, where that is one of stitches
	// misfit is set where no number of repeats fits the first row; takes is then
	// how much one repeat of that row takes, 0 where it does not show.
	misfit bool
	takes  int
}

// supposedRepeats is the number of repeats that a foundation is supposed to have,
// and mostExtra the most chains that turn its first row; common practice.
const (
	supposedRepeats = 10
	mostExtra       = 5
)

// suppose finds how the foundation of a piece is laid where only its multiple is
// given: so that the first row comes out, whatever the number of repeats.
func suppose(f *Fabric, w *words, tree *syntax.Piece, before []crew) supposition {
	ch := givenAsMultiple(tree)
	if ch == nil {
		return supposition{}
	}
	most := mostExtra
	if !ch.OfStitches {
		most = 0
	}
	none := supposition{misfit: true}
	for extra := 0; extra <= most; extra++ {
		fits := true
		for more := range 2 {
			p, _ := workPiece(f, w, tree, before, habit{suppose: supposition{repeats: supposedRepeats + more, extra: extra}})
			row := firstOn(p)
			if row == nil || !uneven(row, &none.takes) && row.Misfit() > 0 {
				return supposition{} // what is wrong with it is not the multiple
			}
			fits = fits && row.Misfit() == 0
		}
		if fits {
			return supposition{repeats: supposedRepeats, extra: extra}
		}
	}
	return none
}

// givenAsMultiple is the chain that a piece begins with where no number of it is
// given, nil for any other beginning.
func givenAsMultiple(tree *syntax.Piece) *syntax.Chain {
	var given *syntax.Chain
	for _, r := range tree.Rows {
		for _, c := range r.Clauses {
			switch n := c.Node.(type) {
			case *syntax.Chain:
				switch {
				case given == nil && n.Multiple.At(0) > 0 && !n.Number.Written():
					given = n
				case given == nil || n.Number.At(0) > MostTurning:
					return nil
				}
			case *syntax.Work, *syntax.Group, *syntax.Repeat, *syntax.Skip, *syntax.MagicRing, *syntax.Rows:
				return given
			}
		}
	}
	return nil
}

// firstOn is the first row that works into the foundation.
func firstOn(p *Piece) *Row {
	for _, row := range p.Rows {
		if row.Works() {
			return row
		}
	}
	return nil
}

// uneven tells whether all that is wrong with a row is that its repeats do not
// come out even, and notes how many places one takes.
func uneven(row *Row, takes *int) bool {
	for i := range row.Tallies {
		t := &row.Tallies[i]
		if !t.Known || t.Agrees() == Disagrees {
			return false
		}
		for _, f := range t.Faults {
			switch f.Kind {
			case RepeatRemainder, RowShort, RowOver:
				*takes = max(*takes, f.Unit)
			default:
				return false
			}
		}
	}
	return true
}

// layMultiple lays a foundation of which only the multiple is given.
func (h *hand) layMultiple(n *syntax.Chain) {
	unit, plus, s := n.Multiple.At(h.size), n.Plus.At(h.size), h.habit.suppose
	switch {
	case s.misfit:
		h.fault(Fault{Kind: MultipleMismatch, Unit: unit, Base: plus, Fits: []int{s.takes}})
		h.lose()
	case s.repeats == 0 || unit <= 0:
		h.lose()
	default:
		h.chains += unit*s.repeats + plus + s.extra
		h.supposed = h.chains
		h.fault(Fault{Kind: ChainSupposed, N: h.chains, Unit: s.repeats})
	}
}
