package lsp

import "go.lsp.dev/protocol"

// capabilities are what the server offers this client.
func (s *server) capabilities() protocol.ServerCapabilities {
	var renames protocol.RenameProvider = protocol.Boolean(true)
	if s.can.prepares {
		renames = &protocol.RenameOptions{PrepareProvider: new(true)}
	}
	return protocol.ServerCapabilities{
		PositionEncoding: protocol.PositionEncodingKind(s.can.encoding.String()),
		TextDocumentSync: &protocol.TextDocumentSyncOptions{
			OpenClose: new(true),
			Change:    new(protocol.TextDocumentSyncKindIncremental),
		},
		CodeActionProvider:               actionOptions(s.can),
		CodeLensProvider:                 &protocol.CodeLensOptions{},
		DocumentLinkProvider:             &protocol.DocumentLinkOptions{},
		ColorProvider:                    protocol.Boolean(true),
		CompletionProvider:               completionOptions(),
		DefinitionProvider:               protocol.Boolean(true),
		DocumentHighlightProvider:        protocol.Boolean(true),
		DocumentSymbolProvider:           protocol.Boolean(true),
		DocumentFormattingProvider:       protocol.Boolean(true),
		DocumentRangeFormattingProvider:  &protocol.DocumentRangeFormattingOptions{RangesSupport: new(true)},
		DocumentOnTypeFormattingProvider: protocol.DocumentOnTypeFormattingOptions{FirstTriggerCharacter: "\n"},
		FoldingRangeProvider:             protocol.Boolean(true),
		HoverProvider:                    protocol.Boolean(true),
		InlayHintProvider:                protocol.Boolean(true),
		LinkedEditingRangeProvider:       protocol.Boolean(true),
		ReferencesProvider:               protocol.Boolean(true),
		RenameProvider:                   renames,
		SelectionRangeProvider:           protocol.Boolean(true),
		SignatureHelpProvider:            signatureOptions(),
		WorkspaceSymbolProvider:          protocol.Boolean(true),
		DiagnosticProvider:               &protocol.DiagnosticOptions{Identifier: new("stitchproof"), WorkspaceDiagnostics: true},
		Workspace: &protocol.WorkspaceOptions{
			WorkspaceFolders: &protocol.WorkspaceFoldersServerCapabilities{
				Supported: new(true), ChangeNotifications: protocol.Boolean(true),
			},
			TextDocumentContent: &protocol.TextDocumentContentOptions{Schemes: []string{scheme}},
		},
		SemanticTokensProvider: &protocol.SemanticTokensOptions{
			Legend: legend,
			Full:   &protocol.SemanticTokensFullDelta{Delta: new(true)},
			Range:  protocol.Boolean(true),
		},
	}
}
