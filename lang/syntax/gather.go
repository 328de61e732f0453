package syntax

// What a clause says of its neighbours: chains between stitches, loops held
// back. Folding gives it to the stitches it is said of.

// spaced gathers the stitches that chains are worked between, all in one
// place: `3 dc with ch 1 between in next st`.
func (f *folder) spaced(c Clause, w *Work) {
	if len(w.Places) == 0 || !w.Between.All && w.Number.Or(0, 1) == 1 {
		f.out = append(f.out, c)
		return
	}
	plain := *w
	plain.Between, plain.Places = Spacing{}, nil
	list := []Clause{{Span: c.Span, Sep: c.Sep, Node: &plain}}
	for w.Between.All && len(f.out) > 0 && !f.starred() && unplacedWork(f.out[len(f.out)-1]) {
		last := f.out[len(f.out)-1]
		f.out = f.out[:len(f.out)-1]
		list = append([]Clause{last}, list...)
		c.Span = c.Span.Union(last.Span)
	}
	c.Node = &Group{Body: list, Places: w.Places, Between: w.Between.Chains}
	f.out = append(f.out, c)
}

// unplacedWork tells a clause of a list that goes on: `2 tr, 3 dtr,`.
func unplacedWork(c Clause) bool {
	w, ok := c.Node.(*Work)
	return ok && len(w.Places) == 0 && c.Sep == SepComma
}

// spacing gives what is said of the chains between stitches to the stitches
// before it: `a dc in each st, ch 1 between`.
func (f *folder) spacing(c Clause, n *Spacing) bool {
	k := len(f.out)
	if k == 0 || f.starred() || f.out[k-1].Sep > SepComma {
		return false
	}
	w, ok := f.out[k-1].Node.(*Work)
	if !ok {
		return false
	}
	with := *w
	with.Between = *n
	c.Span, c.Node = c.Span.Union(f.out[k-1].Span), &with
	f.out = f.out[:k-1]
	f.spaced(c, &with)
	return true
}

// heldBack closes stitches together: those that come next, where work does,
// else those before.
func (f *folder) heldBack(c Clause) bool {
	if w, ok := f.peek().(*Work); ok && c.Sep <= SepComma {
		f.at++
		next := f.in[f.at]
		f.out = append(f.out, held(Clause{Span: c.Span.Union(next.Span), Sep: next.Sep}, w))
		return true
	}
	k := len(f.out)
	if k == 0 || f.starred() || f.out[k-1].Sep > SepComma {
		return false
	}
	w, ok := f.out[k-1].Node.(*Work)
	if ok {
		f.out[k-1] = held(Clause{Span: f.out[k-1].Span.Union(c.Span), Sep: c.Sep}, w)
	}
	return ok
}

func held(c Clause, w *Work) Clause {
	with := *w
	with.HeldBack = true
	c.Node = &with
	return c
}
