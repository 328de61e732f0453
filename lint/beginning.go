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
	// length is how many chains that makes, with those of a chain typed right after it.
	length int
	first  *stitch.Stitch
	// low and high are the fewest and the most chains that a stitch of the row
	// stands high.
	low, high int
	// only is set where the row makes no other chains; post where a stitch of it goes
	// around a post, and so stands lower.
	only, post bool
}

// beginningChain is the clause of the chain that a row begins with, nil for
// none.
func beginningChain(row *fabric.Row) *syntax.Clause { return chainAfter(row, prepares) }

// chainAfter is the clause of the chain that a row begins with after steps of
// some kinds, nil for none.
func chainAfter(row *fabric.Row, passed func(syntax.Node) bool) *syntax.Clause {
	for i, c := range row.Tree.Clauses {
		if _, ok := c.Node.(*syntax.Chain); ok {
			return &row.Tree.Clauses[i]
		}
		if !passed(c.Node) {
			return nil
		}
	}
	return nil
}

// prepares tells whether a step may come before a row's beginning chain.
func prepares(n syntax.Node) bool {
	switch n.(type) {
	case *syntax.Turn, *syntax.Yarn, *syntax.Join, *syntax.Side, *syntax.LoopNote, *syntax.Marker, *syntax.Remark:
		return true
	}
	return false
}

// preparesOrTravels also passes slip stitches, which move to where a round begins.
func preparesOrTravels(n syntax.Node) bool {
	w, ok := n.(*syntax.Work)
	if !ok {
		return prepares(n)
	}
	return w.Stitch.Meaning.Is(stitch.Slip)
}

// spans tells whether a chain goes over stitches that are skipped, or to another
// piece: it is no beginning.
func spans(r *syntax.Row, chain *syntax.Clause) bool {
	for i := range r.Clauses {
		if &r.Clauses[i] != chain || i+1 == len(r.Clauses) {
			continue
		}
		switch n := r.Clauses[i+1].Node.(type) {
		case *syntax.Skip:
			return n.Place.Number.At(0) > 1
		case *syntax.Yarn:
			return n.Action == syntax.YarnJoin
		case *syntax.Join:
			return true
		}
	}
	return false
}

// beginningOf reads how a row begins. It gives false for one without a
// beginning chain, for the first row of a piece, whose chain may be its
// foundation, and where a stitch is not known.
func (p *Pass) beginningOf(row *fabric.Row) (beginning, bool) {
	c := chainAfter(row, preparesOrTravels)
	if c == nil || row.Before() == nil || !c.Node.(*syntax.Chain).Counts.Said && spans(row.Tree, c) {
		return beginning{}, false // what is said to count begins the row, whatever it passes over
	}
	b := beginning{clause: *c, chain: c.Node.(*syntax.Chain)}
	run := chainsFrom(row.Tree, c)
	for _, ch := range run {
		b.length += ch.Number.At(0)
	}
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
				known = known && !n.Counts.Said // the chain is a leg of it: `2 ch, 1 tr in next tr (counts as tr2tog)`
			}
			low := k.Turning
			if worked := n.Stitch.Meaning.In(p.Fabric.Dialect); worked != nil && worked.Class == stitch.Post {
				low-- // common practice
				b.post = true
			}
			b.low, b.high = min(b.low, low), max(b.high, k.Turning)
		case *syntax.Unread, *syntax.Likewise, *syntax.Rows, *syntax.Even, *syntax.Branch:
			known = false
		}
	})
	b.only = chains == len(run)
	return b, known && b.first != nil
}

// chainsFrom are the chains that stand one after the other from a clause on.
// One that is said to count ends them: what follows it is a space.
func chainsFrom(r *syntax.Row, first *syntax.Clause) []*syntax.Chain {
	var run []*syntax.Chain
	for i := range r.Clauses {
		c := &r.Clauses[i]
		ch, ok := c.Node.(*syntax.Chain)
		switch {
		case c == first:
			run = append(run, ch)
		case len(run) == 0:
		case !ok || run[len(run)-1].Counts.Said || ch.Number.PerSize():
			return run
		default:
			run = append(run, ch)
		}
	}
	return run
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
func turningSaid(f *syntax.File, notes string) bool {
	for _, field := range f.Header {
		if field.Key == "turning chains" {
			return true
		}
	}
	return len(f.Turning) > 0 || f.Traits&syntax.CountsChains != 0 || says(notes, "count as", "counts as", "not count", "n't count", "not a st", "n't a st")
}
