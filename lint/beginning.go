package lint

import (
	"stitchproof/lang/fabric"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// beginning is how a row begins: its chain and what is worked after it.
type beginning struct {
	chain  *syntax.Chain
	clause syntax.Clause // the chain's
	first  *stitch.Stitch
	// low and high are the fewest and the most chains that a stitch of the row
	// stands high.
	low, high int
	// only is set where the row makes no other chains.
	only bool
}

// beginningChain is the clause of the chain that a row begins with, nil for
// none.
func beginningChain(row *fabric.Row) *syntax.Clause {
	for i, c := range row.Tree.Clauses {
		switch c.Node.(type) {
		case *syntax.Chain:
			return &row.Tree.Clauses[i]
		case *syntax.Turn, *syntax.Yarn, *syntax.Join, *syntax.Side, *syntax.LoopNote, *syntax.Marker, *syntax.Remark:
		default:
			return nil
		}
	}
	return nil
}

// beginningOf reads how a row begins. It gives false for one without a
// beginning chain, for the first row of a piece, whose chain may be its
// foundation, and where a stitch is not known.
func (p *Pass) beginningOf(row *fabric.Row) (beginning, bool) {
	c := beginningChain(row)
	if c == nil || row.Before() == nil {
		return beginning{}, false
	}
	b := beginning{clause: *c, chain: c.Node.(*syntax.Chain)}
	chains, known := 0, true
	syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
		switch n := c.Node.(type) {
		case *syntax.Chain:
			chains++
		case *syntax.Work:
			k := p.plain(n.Stitch)
			if k == nil || fromHook(n) {
				known = false
				return
			}
			if k.Class == stitch.Slip {
				return
			}
			if b.first == nil {
				b.first, b.low, b.high = k, k.Turning, k.Turning
			}
			b.low, b.high = min(b.low, k.Turning), max(b.high, k.Turning)
		case *syntax.Unread, *syntax.Rows, *syntax.Even, *syntax.Branch:
			known = false
		}
	})
	b.only = chains == 1
	return b, known && b.first != nil
}

func fromHook(w *syntax.Work) bool {
	for _, place := range w.Places {
		if place.From == syntax.FromHook {
			return true
		}
	}
	return false
}

// plain is the stitch that a word is built on: dc for FPdc and dc3tog. It is
// nil for the pattern's own stitches, for words no dictionary has, and for
// those of which nothing settles whose terms they are.
func (p *Pass) plain(ref syntax.StitchRef) *stitch.Stitch {
	if ref.Meaning.Ambiguous() && p.Fabric.Dialect == stitch.Unsettled {
		return nil
	}
	return ref.Meaning.In(p.Fabric.Dialect).Plain()
}

// turningSaid tells whether the pattern says anywhere whether its turning
// chains count.
func (p *Pass) turningSaid() bool {
	for _, f := range p.File.Header {
		if f.Key == "turning chains" {
			return true
		}
	}
	said := len(p.File.Turning) > 0
	for row := range p.Fabric.Rows() {
		syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
			switch n := c.Node.(type) {
			case *syntax.Chain:
				said = said || n.Counts.Said
			case *syntax.CountsNote:
				said = true
			}
		})
	}
	return said || says(p.notes(), "count as", "counts as", "not count", "n't count", "not a st", "n't a st")
}
