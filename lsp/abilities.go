package lsp

import (
	"slices"

	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
)

// abilities is what the client can do, as far as it matters here.
type abilities struct {
	encoding  source.Encoding
	markdown  bool // in hovers
	signs     bool // Markdown in what is told while a clause is written
	hierarchy bool // symbols within symbols
	related   bool // places beside the one of a diagnostic
	links     bool // a definition with where it was asked from
	versioned bool // edits of one version of a document
	annotates bool // edits that are asked about before they are made
	prepares  bool // to ask whether something can be renamed
	completes completing
	acts      acting
	pulls     bool     // it asks for diagnostics itself
	tags      bool     // diagnostics of what is not needed
	pages     bool     // it can show pages of the server
	watches   bool     // it can be asked to watch files
	retries   []string // requests that it makes again where a document changed meanwhile
	asked     bool     // it answers questions about its settings
	announces bool     // it can be asked to announce changed settings

	// What it can be told to ask for again.
	refreshes struct{ hints, tokens, lenses, diagnostics bool }
}

// abilitiesOf reads the client's capabilities. Every part of them may be missing.
func abilitiesOf(c *protocol.ClientCapabilities) abilities {
	can := abilities{encoding: source.UTF16} // what the protocol says where nothing is said
	if c.General != nil {
		can.retries = c.General.StaleRequestSupport.RetryOnContentModified
		for _, kind := range c.General.PositionEncodings {
			if e, ok := source.ParseEncoding(string(kind)); ok {
				can.encoding = e
				break
			}
		}
	}
	if t := c.TextDocument; t != nil {
		if t.Hover != nil {
			can.markdown = prefersMarkdown(t.Hover.ContentFormat)
		}
		if s := t.SignatureHelp; s != nil && s.SignatureInformation != nil {
			can.signs = prefersMarkdown(s.SignatureInformation.DocumentationFormat)
		}
		if t.DocumentSymbol != nil {
			can.hierarchy = is(t.DocumentSymbol.HierarchicalDocumentSymbolSupport)
		}
		if t.Completion != nil {
			can.completes = completingOf(t.Completion)
		}
		if t.CodeAction != nil {
			can.acts = actingOf(t.CodeAction)
		}
		can.links = t.Definition != nil && is(t.Definition.LinkSupport)
		can.prepares = t.Rename != nil && is(t.Rename.PrepareSupport)
		shows := protocol.DiagnosticsCapabilities{}
		if t.PublishDiagnostics != nil {
			shows = t.PublishDiagnostics.DiagnosticsCapabilities
		}
		if t.Diagnostic != nil {
			can.pulls = true
			if is(t.Diagnostic.RelatedInformation) || len(t.Diagnostic.TagSupport.ValueSet) > 0 {
				shows = t.Diagnostic.DiagnosticsCapabilities // since 3.18; others say it of those that are pushed only
			}
		}
		can.related = is(shows.RelatedInformation)
		can.tags = slices.Contains(shows.TagSupport.ValueSet, protocol.DiagnosticTagUnnecessary)
		can.pages = is(shows.CodeDescriptionSupport) && c.Workspace != nil && c.Workspace.TextDocumentContent != nil
	}
	if w := c.Workspace; w != nil {
		if e := w.WorkspaceEdit; e != nil {
			can.versioned = is(e.DocumentChanges)
			can.annotates = can.versioned && e.ChangeAnnotationSupport != nil
		}
		can.asked = is(w.Configuration)
		can.announces = w.DidChangeConfiguration != nil && is(w.DidChangeConfiguration.DynamicRegistration)
		can.watches = w.DidChangeWatchedFiles != nil && is(w.DidChangeWatchedFiles.DynamicRegistration)
		can.refreshes.diagnostics = w.Diagnostics != nil && is(w.Diagnostics.RefreshSupport)
		can.refreshes.lenses = w.CodeLens != nil && is(w.CodeLens.RefreshSupport)
		can.refreshes.hints = w.InlayHint != nil && is(w.InlayHint.RefreshSupport)
		can.refreshes.tokens = w.SemanticTokens != nil && is(w.SemanticTokens.RefreshSupport)
	}
	return can
}

func is(b *bool) bool { return b != nil && *b }

// prefersMarkdown tells whether the client would rather have Markdown than plain
// text. One that names neither has plain text.
func prefersMarkdown(formats []protocol.MarkupKind) bool {
	return slices.Index(formats, protocol.MarkupKindMarkdown) == 0 ||
		slices.Contains(formats, protocol.MarkupKindMarkdown) && !slices.Contains(formats, protocol.MarkupKindPlainText)
}
