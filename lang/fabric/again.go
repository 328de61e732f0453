package fabric

import (
	"maps"
	"reflect"
	"slices"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
	"stitchproof/lang/terms"
)

// An edit changes one piece of a pattern, or what holds for all of them. A piece
// that says what it said, in words that mean what they meant, on work that is what
// it was, comes to what it came to.

// WorkAfter works a pattern, as WorkIn does, in less time where an earlier text of it
// was worked: the pieces are taken from there that an edit left as they were. before
// is nil for none.
func WorkAfter(before *Fabric, file *syntax.File, house stitch.Dialect) *Fabric {
	var known terms.Terms
	if before != nil {
		known = before.Terms
	}
	f := &Fabric{File: file, Terms: terms.FindAfter(known, file).Or(house)}
	f.words = newWords(file, f.Dialect)
	a := again{of: f}
	if before != nil && before.Sizes() == f.Sizes() && reflect.DeepEqual(before.words, f.words) {
		f.words = before.words
		a.compare(before)
	}
	for i, tree := range file.Pieces {
		p, ends := a.piece(i)
		if p == nil {
			p, ends = workedByHabit(f, f.words, tree, f.ends)
			p.letGo(ends)
		}
		f.Pieces = append(f.Pieces, p)
		f.ends = append(f.ends, ends)
	}
	f.Parts = a.parts()
	return f
}

// parts are those of the pattern, taken from the earlier work where their words and what these mean are as they
// were.
func (a *again) parts() []*Piece {
	type told struct { // in the same words two may be told, each with its name in what is said of it
		name  string
		words *syntax.Instruction
	}
	known := map[told]*Piece{}
	if a.before != nil {
		for _, p := range a.before.Parts {
			known[told{p.Tree.Name, p.Rows[0].Tree.Instruction}] = p
		}
	}
	var out []*Piece
	for _, d := range a.of.File.Definitions {
		if own := a.of.words.own[spelled(d.Names[0])]; own == nil || !own.branches || d.Row == nil {
			continue
		}
		tree := &syntax.Piece{Name: d.Names[0], Span: d.Span, NameSpan: d.NameSpan, Rows: []*syntax.Row{d.Row}}
		if p := known[told{d.Names[0], d.Row.Instruction}]; p != nil {
			out = append(out, p.at(tree))
			continue
		}
		p, ends := workedByHabit(a.of, a.of.words, tree, nil)
		p.letGo(ends)
		p.asBranch()
		out = append(out, p)
	}
	return out
}

// asBranch says of a part what would be said of the branch that it is.
func (p *Piece) asBranch() {
	chain, _ := p.Tree.Rows[0].Clauses[0].Node.(*syntax.Chain) // with which each of them begins
	for size := range p.Rows[0].Tallies {
		for i := range p.Rows[0].Tallies[size].Faults {
			if f := &p.Rows[0].Tallies[size].Faults[i]; f.Kind == RowShort {
				f.Kind, f.Name, f.Base = BranchChainLeft, p.Tree.Name, chain.Number.At(size)
			}
		}
	}
}

// Keeps tells whether the pattern comes to the same work after some edits of its
// text.
func (f *Fabric) Keeps(edits []source.Edit) bool {
	text, err := f.File.Text.Apply(edits)
	return err == nil && Same(f, WorkAfter(f, syntax.ReadAfter(f.File, text), f.Dialect))
}

// KeepsIn tells whether one of the pieces comes to the same work after some edits of
// its rows, and whether it is sure of that: not where they reach out of them, or where
// more than the piece may come of them. What shows the dialect is taken to stay.
func (f *Fabric) KeepsIn(p *Piece, edits []source.Edit) (same, sure bool) {
	left := slices.Clone(edits)
	slices.SortStableFunc(left, func(a, b source.Edit) int { return a.Span.Start - b.Span.Start })
	tree, other := *p.Tree, false
	tree.Rows = slices.Clone(tree.Rows)
	for j, row := range tree.Rows {
		var own []source.Edit
		for len(left) > 0 && row.Span().Covers(left[0].Span) {
			own = append(own, source.Edit{Span: left[0].Span.Shift(-row.At), New: left[0].New})
			left = left[1:]
		}
		if len(own) == 0 {
			continue
		}
		text, err := source.New(row.Text).Apply(own)
		if err != nil {
			return false, true
		}
		tree.Rows[j] = f.File.Reread(row, text.String())
		if definesInPassing(row) || definesInPassing(tree.Rows[j]) {
			return false, false
		}
		other = other || !tree.Rows[j].Means(row)
	}
	switch i := slices.Index(f.Pieces, p); {
	case len(left) > 0:
		return false, false
	case !other:
		return true, true
	default:
		before := &Fabric{File: f.File, Terms: f.Terms, Pieces: f.Pieces[:i]}
		q, _ := workedByHabit(before, f.words, &tree, f.ends[:i])
		return samePiece(p, q), true
	}
}

// again finds the pieces that need not be worked again.
type again struct {
	of, before *Fabric // before is nil for none
	head, tail int     // how many pieces at the beginning and at the end say what they said
}

func (a *again) compare(before *Fabric) {
	a.before = before
	now, was := a.of.File.Pieces, before.File.Pieces
	most := min(len(now), len(was))
	for a.head < most && alike(now[a.head], was[a.head]) {
		a.head++
	}
	for a.tail < most-a.head && alike(now[len(now)-1-a.tail], was[len(was)-1-a.tail]) {
		a.tail++
	}
}

// alike tells whether two pieces say the same, wherever they stand.
func alike(a, b *syntax.Piece) bool {
	if a == b {
		return true // nothing before it has moved
	}
	if a.Name != b.Name || a.Under != b.Under || a.Again != b.Again || !a.Make.Equal(b.Make) || len(a.Rows) != len(b.Rows) {
		return false
	}
	for i := range a.Rows {
		if a.Rows[i].Instruction != b.Rows[i].Instruction {
			return false
		}
	}
	return true
}

// piece is the work of a piece as it was, nil where it must be worked.
func (a *again) piece(i int) (*Piece, crew) {
	f, was := a.of, i
	if a.before == nil {
		return nil, nil
	}
	switch behind := len(f.File.Pieces) - i; {
	case i < a.head:
	case behind <= a.tail || len(f.File.Pieces) == len(a.before.Pieces) && alike(f.File.Pieces[i], a.before.Pieces[i].Tree):
		was = len(a.before.Pieces) - behind
		if a.before.ends[was].leans() || !sameRules(f.ends, a.before.ends[:was]) {
			return nil, nil
		}
	default:
		return nil, nil
	}
	p, ends := a.before.Pieces[was], a.before.ends[was]
	if moved := p.at(f.File.Pieces[i]); moved != p {
		for j, from := range a.before.Pieces[:min(was, a.head)] {
			if moved.From == from {
				moved.From = f.Pieces[j]
			}
		}
		p = moved
	}
	return p, ends.on(p, f.ends)
}

// at is the piece where it stands now.
func (p *Piece) at(tree *syntax.Piece) *Piece {
	if p.Tree.Span == tree.Span && (len(tree.Rows) == 0 || p.Tree.Rows[0].At == tree.Rows[0].At && p.Tree.Rows[len(tree.Rows)-1].At == tree.Rows[len(tree.Rows)-1].At) {
		return p
	}
	q := *p
	rows := make([]Row, len(p.Rows))
	q.Tree, q.Rows = tree, make([]*Row, len(p.Rows))
	for i, row := range p.Rows {
		rows[i] = *row
		rows[i].Tree, rows[i].Piece = tree.Rows[i], &q
		q.Rows[i] = &rows[i]
	}
	return &q
}

// on is the crew that worked a piece, below the crews that worked those before.
func (c crew) on(p *Piece, before []crew) crew {
	if c[0].piece == p && (len(before) == 0 && c[0].above == nil || len(before) > 0 && c[0].above == before[len(before)-1][0]) {
		return c
	}
	out := make(crew, len(c))
	for size, k := range c {
		moved := *k
		moved.piece, moved.above = p, nil
		if len(before) > 0 {
			moved.above = before[len(before)-1][size]
		}
		out[size] = &moved
	}
	return out
}

// leans tells whether the piece is worked on another, or in the words of another.
func (c crew) leans() bool {
	for _, k := range c {
		if k.leans {
			return true
		}
	}
	return false
}

// sameRules tells whether the pieces before have said the same of beginning chains.
func sameRules(now, was []crew) bool {
	said := func(before []crew, size int) map[string]turningSaid {
		if len(before) == 0 {
			return nil
		}
		return maps.Collect(before[len(before)-1][size].h.rules.all())
	}
	sizes := 1
	if len(now) > 0 {
		sizes = len(now[0])
	}
	for size := range sizes {
		if !maps.Equal(said(now, size), said(was, size)) {
			return false
		}
	}
	return true
}

// letGo parts the work of a piece from the pattern that it was worked for, so that
// it does not keep that one alive.
func (p *Piece) letGo(ends crew) {
	for _, k := range ends {
		k.fabric = nil
	}
	for _, row := range p.Rows {
		for i := range row.stage {
			row.stage[i].fabric, row.stage[i].above = nil, nil
		}
	}
}
