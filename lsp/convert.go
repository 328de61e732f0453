package lsp

import (
	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"

	"stitchproof/lang/source"
)

// converter turns places of a text into what the client calls them and back.
type converter struct {
	text     *source.Text
	encoding source.Encoding
}

// position is where an offset lies for the client.
func (c converter) position(offset int) protocol.Position {
	return toPosition(c.text.Position(offset, c.encoding))
}

// rangeOf is a span of the text for the client.
func (c converter) rangeOf(s source.Span) protocol.Range {
	r := c.text.Range(s, c.encoding)
	return protocol.Range{Start: toPosition(r.Start), End: toPosition(r.End)}
}

// location is a span of the file with this address.
func (c converter) location(file uri.URI, s source.Span) protocol.Location {
	return protocol.Location{URI: file, Range: c.rangeOf(s)}
}

// offset is the place the client means, clamped to the text.
func (c converter) offset(p protocol.Position) int {
	return c.text.Offset(fromPosition(p), c.encoding)
}

// span is the stretch the client means, clamped to the text.
func (c converter) span(r protocol.Range) source.Span {
	return c.text.Span(source.Range{Start: fromPosition(r.Start), End: fromPosition(r.End)}, c.encoding)
}

func toPosition(p source.Position) protocol.Position {
	return protocol.Position{Line: uint32(p.Line), Character: uint32(p.Character)}
}

func fromPosition(p protocol.Position) source.Position {
	return source.Position{Line: int(p.Line), Character: int(p.Character)}
}
