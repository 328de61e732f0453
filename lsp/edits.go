package lsp

import (
	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"

	"stitchproof/lang/source"
)

// edit is edits of the document as the client takes them: of the version they
// were made for, where it can tell.
func (v *view) edit(edits []source.Edit) *protocol.WorkspaceEdit {
	return v.annotated(edits, "")
}

// annotated is edits that the client shows under a label and asks about before it
// makes them, where there is a label and the client can.
func (v *view) annotated(edits []source.Edit, label string) *protocol.WorkspaceEdit {
	if !v.can.versioned {
		plain := make([]protocol.TextEdit, len(edits))
		for i, e := range edits {
			plain[i] = v.textEdit(e)
		}
		return &protocol.WorkspaceEdit{Changes: map[uri.URI][]protocol.TextEdit{v.uri: plain}}
	}
	var out protocol.WorkspaceEdit
	id := protocol.ChangeAnnotationIdentifier("choice")
	asks := label != "" && v.can.annotates
	if asks {
		out.ChangeAnnotations = map[protocol.ChangeAnnotationIdentifier]protocol.ChangeAnnotation{
			id: {Label: label, NeedsConfirmation: new(true)},
		}
	}
	change := &protocol.TextDocumentEdit{TextDocument: protocol.OptionalVersionedTextDocumentIdentifier{
		TextDocumentIdentifier: protocol.TextDocumentIdentifier{URI: v.uri}, Version: new(v.version),
	}}
	for _, e := range edits {
		if asks {
			change.Edits = append(change.Edits, &protocol.AnnotatedTextEdit{TextEdit: v.textEdit(e), AnnotationID: id})
		} else {
			change.Edits = append(change.Edits, new(v.textEdit(e)))
		}
	}
	out.DocumentChanges = []protocol.DocumentChange{change}
	return &out
}

func (v *view) textEdit(e source.Edit) protocol.TextEdit {
	return protocol.TextEdit{Range: v.rangeOf(e.Span), NewText: e.New}
}
