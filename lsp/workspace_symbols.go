package lsp

import (
	"context"
	"strings"
	"unicode/utf8"

	"go.lsp.dev/jsonrpc2"
	"go.lsp.dev/protocol"

	"stitchproof/lang/names"
	"stitchproof/lang/syntax"
)

// workspaceSymbols finds pieces and the patterns' own stitches, in every pattern of
// the workspace, by letters of their names.
func (s *server) workspaceSymbols(ctx context.Context, raw jsonrpc2.RawMessage) (any, error) {
	params, err := decode[protocol.WorkspaceSymbolParams](raw)
	if err != nil {
		return nil, err
	}
	found := protocol.SymbolInformationSlice{}
	for _, key := range s.patterns() {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		if d, err := s.open(key); err == nil {
			found = append(found, s.symbolsOf(d, params.Query)...)
		}
	}
	return found, nil
}

// symbolsOf are those of one file that a query finds.
func (s *server) symbolsOf(d *document, query string) []protocol.SymbolInformation {
	var out []protocol.SymbolInformation
	file := syntax.Read(d.text)
	converter := converter{d.text, s.can.encoding}
	for _, n := range names.Of(file).Names {
		kind := protocol.SymbolKindClass
		switch {
		case n.Kind == names.Stitch && n.Own:
			kind = protocol.SymbolKindFunction
		case n.Kind != names.Piece:
			continue
		}
		for _, m := range n.Declarations() {
			if name := d.text.Slice(m.Span); spells(name, query) {
				out = append(out, protocol.SymbolInformation{
					BaseSymbolInformation: protocol.BaseSymbolInformation{Name: name, Kind: kind, ContainerName: titleOf(file)},
					Location:              converter.location(d.uri, m.Span),
				})
			}
		}
	}
	return out
}

// titleOf is what a pattern is called, nil for nothing.
func titleOf(file *syntax.File) *string {
	for _, f := range file.Header {
		if f.Key == "pattern" {
			return &f.Value
		}
	}
	return nil
}

// spells tells whether a name has the letters of a query in their order.
func spells(name, query string) bool {
	name = strings.ToLower(name)
	for _, letter := range strings.ToLower(query) {
		i := strings.IndexRune(name, letter)
		if i < 0 {
			return false
		}
		name = name[i+utf8.RuneLen(letter):]
	}
	return true
}
