package lsp

import (
	"strconv"

	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// edit is edits of the document as the client takes them: of the version they
// were made for, where it can tell.
func (v *view) edit(edits []source.Edit) *protocol.WorkspaceEdit {
	if !v.can.versioned {
		plain := make([]protocol.TextEdit, len(edits))
		for i, e := range edits {
			plain[i] = v.textEdit(e)
		}
		return &protocol.WorkspaceEdit{Changes: map[uri.URI][]protocol.TextEdit{v.uri: plain}}
	}
	change := v.versioned()
	for _, e := range edits {
		change.Edits = append(change.Edits, new(v.textEdit(e)))
	}
	return &protocol.WorkspaceEdit{DocumentChanges: []protocol.DocumentChange{change}}
}

// asking is changes that the client shows by their titles and asks about before it
// makes them, which it must be able to do.
func (v *view) asking(fixes []*lint.Fix) *protocol.WorkspaceEdit {
	change := v.versioned()
	labels := map[protocol.ChangeAnnotationIdentifier]protocol.ChangeAnnotation{}
	for i, fix := range fixes {
		id := protocol.ChangeAnnotationIdentifier(strconv.Itoa(i))
		labels[id] = protocol.ChangeAnnotation{Label: fix.Title, NeedsConfirmation: new(!fix.Safe)}
		for _, e := range fix.Edits {
			change.Edits = append(change.Edits, &protocol.AnnotatedTextEdit{TextEdit: v.textEdit(e), AnnotationID: id})
		}
	}
	return &protocol.WorkspaceEdit{DocumentChanges: []protocol.DocumentChange{change}, ChangeAnnotations: labels}
}

// versioned is no edits yet, of the document's version.
func (v *view) versioned() *protocol.TextDocumentEdit {
	return &protocol.TextDocumentEdit{TextDocument: protocol.OptionalVersionedTextDocumentIdentifier{
		TextDocumentIdentifier: protocol.TextDocumentIdentifier{URI: v.uri}, Version: new(v.version),
	}}
}

func (v *view) textEdit(e source.Edit) protocol.TextEdit {
	return protocol.TextEdit{Range: v.rangeOf(e.Span), NewText: e.New}
}
