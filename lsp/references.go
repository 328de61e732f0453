package lsp

import (
	"go.lsp.dev/protocol"

	"stitchproof/lang/names"
)

// references lists where the thing at a place is called by a name.
func references(v *view, params *protocol.ReferenceParams) []protocol.Location {
	out := []protocol.Location{}
	v.mentions(params.Position, func(m names.Mention) {
		if !m.Declares || params.Context.IncludeDeclaration {
			out = append(out, v.location(v.uri, m.Span))
		}
	})
	return out
}

// documentHighlight lists where the thing at a place is named: written where it
// is declared, read elsewhere.
func documentHighlight(v *view, params *protocol.DocumentHighlightParams) []protocol.DocumentHighlight {
	out := []protocol.DocumentHighlight{}
	v.mentions(params.Position, func(m names.Mention) {
		kind := protocol.DocumentHighlightKindRead
		if m.Declares {
			kind = protocol.DocumentHighlightKindWrite
		}
		out = append(out, protocol.DocumentHighlight{Range: v.rangeOf(m.Span), Kind: kind})
	})
	return out
}

// linkedEditing lists where the name at a place is written the same, to be typed
// over in all places at once.
func linkedEditing(v *view, params *protocol.LinkedEditingRangeParams) *protocol.LinkedEditingRanges {
	name, at := v.names().At(v.offset(params.Position))
	if name == nil || name.Kind != names.Branch {
		return nil
	}
	out := &protocol.LinkedEditingRanges{}
	for _, m := range name.Mentions {
		if v.Text.Slice(m.Span) == v.Text.Slice(at.Span) {
			out.Ranges = append(out.Ranges, v.rangeOf(m.Span))
		}
	}
	return out
}

// mentions visits where the thing at a place is named, each stretch of text once.
func (v *view) mentions(at protocol.Position, visit func(names.Mention)) {
	name, _ := v.names().At(v.offset(at))
	if name == nil {
		return
	}
	for i, m := range name.Mentions {
		if i == 0 || m.Span != name.Mentions[i-1].Span {
			visit(m)
		}
	}
}
