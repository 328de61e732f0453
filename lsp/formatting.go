package lsp

import (
	"slices"

	"go.lsp.dev/protocol"

	"stitchproof/lang/house"
	"stitchproof/lang/source"
)

// formatting writes the instructions in the style of the house.
func formatting(v *view, _ *protocol.DocumentFormattingParams) []protocol.TextEdit {
	return v.styled(func(source.Span) bool { return true })
}

// rangeFormatting writes those in the style that lie in a part of the document,
// or begin or end there.
func rangeFormatting(v *view, params *protocol.DocumentRangeFormattingParams) []protocol.TextEdit {
	return v.styled(v.within(params.Range))
}

// rangesFormatting does so for several parts at once.
func rangesFormatting(v *view, params *protocol.DocumentRangesFormattingParams) []protocol.TextEdit {
	return v.styled(func(s source.Span) bool {
		return slices.ContainsFunc(params.Ranges, func(r protocol.Range) bool { return v.within(r)(s) })
	})
}

// onTypeFormatting writes the instruction in the style that a line break has just
// ended, not one that goes on behind the break.
func onTypeFormatting(v *view, params *protocol.DocumentOnTypeFormattingParams) []protocol.TextEdit {
	at := v.offset(params.Position)
	line := v.Text.LineOf(at)
	if line == 0 {
		return []protocol.TextEdit{}
	}
	ended := v.Text.Line(line - 1)
	return v.styled(func(s source.Span) bool { return ended.Start <= s.End && s.End <= ended.End })
}

// within tells which spans have a part in a range.
func (v *view) within(r protocol.Range) func(source.Span) bool {
	return v.span(r).Touches
}

// styled are the edits that write the instructions that are wanted in the style.
func (v *view) styled(wanted func(source.Span) bool) []protocol.TextEdit {
	out := []protocol.TextEdit{}
	for _, e := range house.Format(v.Fabric, v.Settings.Style).Edits {
		if wanted(e.Span) {
			out = append(out, v.textEdit(e))
		}
	}
	return out
}
