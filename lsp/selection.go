package lsp

import (
	"slices"

	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// selectionRanges gives, for each place, what it lies in, ever wider: the word, the
// clause, the group, the row, the piece, the file.
func selectionRanges(v *view, params *protocol.SelectionRangeParams) []protocol.SelectionRange {
	out := make([]protocol.SelectionRange, len(params.Positions))
	for i, p := range params.Positions {
		at := v.offset(p)
		var wider *protocol.SelectionRange
		for _, s := range v.around(at) {
			wider = &protocol.SelectionRange{Range: v.rangeOf(s), Parent: wider}
		}
		out[i] = *wider
	}
	return out
}

// around lists the parts of the file that a place lies in, each within the one
// before.
func (v *view) around(at int) []source.Span {
	all := []source.Span{{End: v.Text.Len()}}
	if head, ok := v.head(); ok {
		all = append(all, head)
	}
	for _, f := range v.File.Header {
		all = append(all, f.Span, f.KeySpan, f.ValueSpan)
	}
	for _, d := range v.File.Definitions {
		all = append(all, d.Span, d.NameSpan)
		if d.Row != nil {
			all = append(all, inRow(d.Row, at)...)
		}
	}
	for _, piece := range v.Fabric.Pieces {
		all = append(all, wholePiece(piece), piece.Tree.NameSpan)
		for _, row := range piece.Tree.Rows {
			all = append(all, inRow(row, at)...)
		}
	}
	for _, c := range v.File.Comments {
		all = append(all, c.Span)
	}
	all = append(all, v.File.Prose...)
	all = slices.DeleteFunc(all, func(s source.Span) bool { return at < s.Start || at > s.End })
	slices.SortStableFunc(all, func(a, b source.Span) int { return b.Len() - a.Len() })
	nested := all[:1]
	for _, s := range all[1:] {
		if last := nested[len(nested)-1]; last.Covers(s) && s != last {
			nested = append(nested, s)
		}
	}
	return append(nested, narrowest(nested, at)...)
}

// narrowest is the place itself, where nothing that it lies in is that narrow.
func narrowest(nested []source.Span, at int) []source.Span {
	if len(nested) == 1 && !nested[0].Empty() {
		return []source.Span{source.At(at)}
	}
	return nil
}

// inRow lists the parts of a row at a place: the row, its label, clauses, words.
func inRow(row *syntax.Row, at int) []source.Span {
	whole := row.Written()
	if at < whole.Start || at > whole.End {
		return nil
	}
	out := []source.Span{whole, row.Abs(row.Label.Span)}
	syntax.Walk(row.Clauses, func(c syntax.Clause) { out = append(out, row.Abs(c.Span)) })
	for _, t := range row.Tokens {
		out = append(out, row.Abs(t.Span))
	}
	return out
}
