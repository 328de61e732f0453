package lsp

import (
	"go.lsp.dev/jsonrpc2"
	"go.lsp.dev/protocol"

	"stitchproof/lang/rework"
)

// prepareRename gives what stands at a place if it can be given another name.
func prepareRename(v *view, params *protocol.PrepareRenameParams) (protocol.PrepareRenameResult, error) {
	name, m := v.names().At(v.offset(params.Position))
	if name == nil {
		return nil, nil
	}
	if err := rework.Renamable(name, m); err != nil {
		return nil, refusal(err)
	}
	return &protocol.PrepareRenamePlaceholder{Range: v.rangeOf(m.Span), Placeholder: v.Text.Slice(m.Span)}, nil
}

// rename gives it another name wherever it is called by that one.
func rename(v *view, params *protocol.RenameParams) (*protocol.WorkspaceEdit, error) {
	name, m := v.names().At(v.offset(params.Position))
	if name == nil {
		return nil, jsonrpc2.NewError(requestFailed, "nothing here has a name")
	}
	edits, err := v.pattern().Rename(name, m, params.NewName)
	if err != nil {
		return nil, refusal(err)
	}
	return v.edit(edits), nil
}

// refusal is what a person is told who asks for what cannot be done.
func refusal(err error) error { return jsonrpc2.NewError(requestFailed, err.Error()) }

// pattern is the document as something to rewrite.
func (v *view) pattern() *rework.Pattern {
	return &rework.Pattern{Text: v.Text, File: v.File, Fabric: v.Fabric}
}
