package lsp

import "go.lsp.dev/protocol"

// capabilities are what the server offers this client.
func (s *server) capabilities() protocol.ServerCapabilities {
	return protocol.ServerCapabilities{
		PositionEncoding: protocol.PositionEncodingKind(s.can.encoding.String()),
		TextDocumentSync: &protocol.TextDocumentSyncOptions{
			OpenClose: new(true),
			Change:    new(protocol.TextDocumentSyncKindIncremental),
		},
		HoverProvider:          protocol.Boolean(true),
		InlayHintProvider:      protocol.Boolean(true),
		DocumentSymbolProvider: protocol.Boolean(true),
		SemanticTokensProvider: &protocol.SemanticTokensOptions{
			Legend: legend,
			Full:   &protocol.SemanticTokensFullDelta{Delta: new(true)},
			Range:  protocol.Boolean(true),
		},
	}
}
