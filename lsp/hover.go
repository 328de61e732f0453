package lsp

import (
	"slices"

	"go.lsp.dev/protocol"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// hover says what stands at a place: a stitch, a yarn, a branch, a row by its label,
// a clause, what the header lists, a rule in a comment. Elsewhere it says nothing.
func hover(v *view, params *protocol.HoverParams) *protocol.Hover {
	at := v.offset(params.Position)
	for _, look := range [...]func(int) (*card, source.Span){v.hoverRule, v.hoverStitch, v.hoverName, v.hoverRow, v.hoverDefinition, v.hoverMaterials} {
		if c, span := look(at); c != nil {
			return &protocol.Hover{Contents: c.markup(v.can.markdown), Range: new(v.rangeOf(span))}
		}
	}
	return nil
}

// hoverStitch is the card of a stitch's word in an instruction or in the reading of a
// definition.
func (v *view) hoverStitch(at int) (*card, source.Span) {
	row := v.instructionAt(at)
	if row == nil {
		return nil, source.Span{}
	}
	for _, t := range row.Tokens {
		if t.Kind == syntax.Stitch && t.Span.Contains(at-row.At) {
			return v.stitchCard(row.Source(t.Span), t.Stitch), row.Abs(t.Span)
		}
	}
	return nil, source.Span{}
}

// instructionAt is the instruction at a place, a definition's included, nil for none.
func (v *view) instructionAt(at int) *syntax.Row {
	if row := v.rowAt(at); row != nil {
		return row.Tree
	}
	for _, d := range v.File.Definitions {
		if d.Row != nil && d.Row.Span().Contains(at) {
			return d.Row
		}
	}
	return nil
}

// rowAt is the row at a place, nil for none.
func (v *view) rowAt(at int) *fabric.Row {
	for row := range v.Fabric.Rows() {
		if row.Tree.Span().Contains(at) {
			return row
		}
	}
	return nil
}

// clauseAt is the row at a place and the index of its clause there, -1 for none.
func (v *view) clauseAt(at int) (row *fabric.Row, clause int) {
	row = v.rowAt(at)
	if row == nil {
		return nil, -1
	}
	return row, slices.IndexFunc(row.Tree.Clauses, func(c syntax.Clause) bool { return c.Span.Contains(at - row.Tree.At) })
}

// hoverRow is the card of a row at its label, and of a clause elsewhere in it.
func (v *view) hoverRow(at int) (*card, source.Span) {
	row, clause := v.clauseAt(at)
	if row == nil {
		return nil, source.Span{}
	}
	if label := row.Tree.Label.Span; label.Contains(at - row.Tree.At) {
		return v.rowCard(row), row.Tree.Abs(label)
	}
	if clause < 0 {
		return nil, source.Span{}
	}
	return v.clauseCard(row, clause), row.Tree.Abs(row.Tree.Clauses[clause].Span)
}

// hoverDefinition is the card of the stitch that a line of the pattern's list names.
func (v *view) hoverDefinition(at int) (*card, source.Span) {
	for _, d := range v.File.Definitions {
		if !d.NameSpan.Contains(at) {
			continue
		}
		name := v.Text.Slice(d.NameSpan)
		if meaning, ok := stitch.Find(name); ok || d.Special {
			return v.stitchCard(name, meaning), d.NameSpan
		}
	}
	return nil, source.Span{}
}
