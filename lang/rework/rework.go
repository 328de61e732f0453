// Package rework rewrites a pattern without changing what a maker makes of it:
// other names, other numbers of rows, other ways to write the same work. Each
// change is a function from what is known of the pattern to edits of its text, and
// is offered only where the pattern comes to the same work after it.
package rework

import (
	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// Pattern is what is known of a pattern that is to be rewritten.
type Pattern struct {
	Text   *source.Text
	File   *syntax.File
	Fabric *fabric.Fabric
}

// Change is one way to rewrite a pattern.
type Change struct {
	Title string // what it does, as an order: "number the rows from 1"
	Edits []source.Edit
}

// Keeps tells whether the pattern comes to the same work after some edits.
func (p *Pattern) Keeps(edits []source.Edit) bool {
	text, err := p.Text.Apply(edits)
	return err == nil && fabric.Same(p.Fabric, fabric.WorkIn(syntax.Read(text), p.Fabric.Dialect))
}

// kept is a change as it is offered: nothing where it has nothing to do or would
// change the work.
func (p *Pattern) kept(c Change) []Change {
	if len(c.Edits) == 0 || !p.Keeps(c.Edits) {
		return nil
	}
	return []Change{c}
}
