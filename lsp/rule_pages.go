package lsp

import (
	"context"
	"strings"

	"go.lsp.dev/jsonrpc2"
	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"

	"stitchproof/lint"
	"stitchproof/lint/report"
)

// scheme is that of the pages which the server itself can show.
const scheme = "stitchproof"

// rulePages is where those about rules begin.
const rulePages = scheme + ":/rules/"

// rulePage is the address of what is said of a rule.
func rulePage(rule string) uri.URI { return uri.URI(rulePages + rule + ".txt") }

// textDocumentContent is what a page of the server says.
func (s *server) textDocumentContent(_ context.Context, raw jsonrpc2.RawMessage) (any, error) {
	params, err := decode[protocol.TextDocumentContentParams](raw)
	if err != nil {
		return nil, err
	}
	key, err := keyOf(params.URI)
	if err != nil {
		return nil, err
	}
	name, ok := strings.CutPrefix(string(key), rulePages)
	rule, known := lint.Find(strings.TrimSuffix(name, ".txt"))
	if !ok || !known {
		return nil, jsonrpc2.Errorf(jsonrpc2.InvalidParams, "there is no page %q", params.URI)
	}
	var b strings.Builder
	if err := report.ExplainRule(&b, rule); err != nil {
		return nil, err
	}
	return &protocol.TextDocumentContentResult{Text: b.String()}, nil
}
