package lsp

import (
	"fmt"
	"log"
	"runtime/debug"
	"sync"

	"go.lsp.dev/jsonrpc2"
	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"

	"stitchproof/lang/source"
	"stitchproof/lint"
	"stitchproof/lint/config"
	"stitchproof/lint/inputs"
)

// server is one session with one client.
type server struct {
	client  protocol.Client
	log     *log.Logger
	analyze analyzer

	// phase belongs to the inline handlers; can is theirs until initialize has
	// been answered and read only from then on.
	phase phase
	can   abilities
	once  sync.Once
	left  chan struct{} // closed once, when the session is to end
	token string        // that a client must give, "" for none

	publisher publisher
	recent    recent

	mu        sync.Mutex
	documents map[uri.URI]*document // by address, in its one spelling
	folders   []uri.URI             // of the workspace
	house     *config.Finder        // the settings of files
	// generation counts how often those may have changed.
	generation int
	settings   settings
}

func newServer(client protocol.Client, logger *log.Logger, analyze analyzer) *server {
	return &server{
		client: client, log: logger, analyze: fitting(analyze),
		left:      make(chan struct{}),
		publisher: newPublisher(),
		documents: map[uri.URI]*document{}, house: config.NewFinder(),
		settings: defaults,
	}
}

// fitting looks at no text that is none for the command line.
func fitting(analyze analyzer) analyzer {
	return func(chosen lint.Settings, before *lint.Analysis, text *source.Text) *lint.Analysis {
		if err := inputs.Fit(text.String()); err != nil {
			return lint.Unread(text, lint.FileUnreadable, "the file "+err.Error())
		}
		return analyze(chosen, before, text)
	}
}

// recovered makes an error of a panic: a text that cannot be looked at costs the answers
// about it and nothing else.
func (s *server) recovered(err *error) {
	if broken := recover(); broken != nil {
		s.log.Printf("reading a text broke down: %v\n%s", broken, debug.Stack())
		*err = fmt.Errorf("reading the text broke down: %v", broken)
	}
}

// view is what a feature sees: a document with all that is known of it or, for one
// that is early, of an earlier text of it; and for whom it is looked at. It never
// changes.
type view struct {
	*knowledge
	converter
	uri     uri.URI
	version int32
	can     abilities
	hints   hintKinds
	lenses  bool
	// generation is that of the settings.
	generation int
	memory     *memory
}

func (s *server) view(d *document, known *knowledge) *view {
	s.mu.Lock()
	defer s.mu.Unlock()
	return &view{
		knowledge: known,
		converter: converter{d.text, s.can.encoding},
		uri:       d.uri,
		version:   d.version,
		can:       s.can,
		hints:     s.settings.hints,
		lenses:    s.settings.lenses,

		generation: s.generation,
		memory:     d.memory,
	}
}

// feature answers one kind of request about a document.
type feature func(*view, jsonrpc2.RawMessage) (any, error)

// features are the requests about a document, one line for each.
var features = map[string]feature{
	protocol.MethodCodeActionResolve:                   trying(codeActionResolve),
	protocol.MethodCompletionItemResolve:               about(completionResolve),
	protocol.MethodTextDocumentCodeAction:              about(codeActions),
	protocol.MethodTextDocumentCodeLens:                about(codeLens),
	protocol.MethodTextDocumentDocumentLink:            about(documentLinks),
	protocol.MethodTextDocumentCompletion:              about(completion),
	protocol.MethodTextDocumentColorPresentation:       about(colorPresentation),
	protocol.MethodTextDocumentDefinition:              about(definition),
	protocol.MethodTextDocumentDiagnostic:              about(documentDiagnostic),
	protocol.MethodTextDocumentDocumentColor:           about(documentColor),
	protocol.MethodTextDocumentDocumentHighlight:       about(documentHighlight),
	protocol.MethodTextDocumentDocumentSymbol:          about(documentSymbols),
	protocol.MethodTextDocumentFoldingRange:            about(foldingRanges),
	protocol.MethodTextDocumentFormatting:              about(formatting),
	protocol.MethodTextDocumentRangeFormatting:         about(rangeFormatting),
	protocol.MethodTextDocumentRangesFormatting:        about(rangesFormatting),
	protocol.MethodTextDocumentOnTypeFormatting:        about(onTypeFormatting),
	protocol.MethodTextDocumentHover:                   about(hover),
	protocol.MethodTextDocumentInlayHint:               about(inlayHints),
	protocol.MethodTextDocumentLinkedEditingRange:      about(linkedEditing),
	protocol.MethodTextDocumentPrepareRename:           trying(prepareRename),
	protocol.MethodTextDocumentReferences:              about(references),
	protocol.MethodTextDocumentRename:                  trying(rename),
	protocol.MethodTextDocumentSelectionRange:          about(selectionRanges),
	protocol.MethodTextDocumentSemanticTokensFull:      about(semanticTokens),
	protocol.MethodTextDocumentSemanticTokensFullDelta: about(semanticTokensDelta),
	protocol.MethodTextDocumentSignatureHelp:           about(signatureHelp),
	protocol.MethodTextDocumentSemanticTokensRange:     about(semanticTokensRange),
}

// early are the features that a person waits for while typing: they make do with
// what is known of an earlier text.
var early = map[string]bool{protocol.MethodTextDocumentCompletion: true}

// about makes a feature of what takes decoded parameters.
func about[P, R any](answer func(*view, *P) R) feature {
	return trying(func(v *view, params *P) (R, error) { return answer(v, params), nil })
}

// trying makes a feature of what takes decoded parameters and may refuse.
func trying[P, R any](answer func(*view, *P) (R, error)) feature {
	return func(v *view, raw jsonrpc2.RawMessage) (any, error) {
		params, err := decode[P](raw)
		if err != nil {
			return nil, err
		}
		return answer(v, params)
	}
}

// requests are those that are not about one document.
func (s *server) requests() map[string]inline {
	return map[string]inline{
		protocol.MethodWorkspaceDiagnostic:          s.workspaceDiagnostic,
		protocol.MethodWorkspaceSymbol:              s.workspaceSymbols,
		protocol.MethodWorkspaceTextDocumentContent: s.textDocumentContent,
	}
}
