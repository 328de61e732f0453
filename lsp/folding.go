package lsp

import (
	"slices"

	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
)

// foldingRanges gives what can be folded away: the header, runs of comments, each
// piece, and each row of several lines.
func foldingRanges(v *view, _ *protocol.FoldingRangeParams) []protocol.FoldingRange {
	out := []protocol.FoldingRange{}
	fold := func(s source.Span, kind protocol.FoldingRangeKind) {
		first, last := v.Text.LineOf(s.Start), v.Text.LineOf(max(s.Start, s.End-1))
		if last > first {
			out = append(out, protocol.FoldingRange{StartLine: uint32(first), EndLine: uint32(last), Kind: kind})
		}
	}
	if head, ok := v.head(); ok {
		fold(head, protocol.FoldingRangeKindRegion)
	}
	for _, run := range v.commentRuns() {
		fold(run, protocol.FoldingRangeKindComment)
	}
	for _, piece := range v.Fabric.Pieces {
		fold(wholePiece(piece), protocol.FoldingRangeKindRegion)
		for _, row := range piece.Rows {
			fold(row.Tree.Written(), "")
		}
	}
	slices.SortStableFunc(out, func(a, b protocol.FoldingRange) int { return int(a.StartLine) - int(b.StartLine) })
	return out
}

// head is the file from its first field to the last part before its pieces.
func (v *view) head() (source.Span, bool) {
	if len(v.File.Header) == 0 {
		return source.Span{}, false
	}
	head, first := v.File.Header[0].Span, v.Text.Len()
	for _, p := range v.File.Pieces {
		first = min(first, p.Span.Start)
	}
	for _, part := range v.File.Parts() {
		if part.Start >= head.Start && part.End <= first {
			head = head.Union(part)
		}
	}
	return head, true
}

// commentRuns are comments on lines that follow each other.
func (v *view) commentRuns() []source.Span {
	var out []source.Span
	for _, c := range v.File.Comments {
		if last := len(out) - 1; last >= 0 && v.Text.LineOf(c.Span.Start) == v.Text.LineOf(out[last].End)+1 {
			out[last] = out[last].Union(c.Span)
			continue
		}
		out = append(out, c.Span)
	}
	return out
}
