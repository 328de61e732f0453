package lsp

import (
	"cmp"
	"context"
	"encoding/json"
	"fmt"
	"strings"
	"sync"

	"go.lsp.dev/jsonrpc2"
	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"

	"stitchproof/lang/names"
	"stitchproof/lang/source"
	"stitchproof/lint"
)

// document is an open file at one version. It never changes: an edit replaces
// it by another.
type document struct {
	uri     uri.URI // as the client spells it
	version int32
	shown   bool // the client has it open
	text    *source.Text

	analyze func(*source.Text) (*knowledge, error)
	used    func(*document)

	mu      sync.Mutex
	inquiry *inquiry // nil until it is asked for, and where it was put away

	memory *memory
}

// inquiry finds out what is known of a document.
type inquiry struct {
	done    chan struct{} // closed when result and failure are set
	result  *knowledge
	failure error
}

// knowledge is all that is known of a text.
type knowledge struct {
	*lint.Analysis
	names func() *names.Index // worked out when first asked for
}

func knowledgeOf(a *lint.Analysis) *knowledge {
	return &knowledge{a, sync.OnceValue(func() *names.Index { return names.Of(a.File) })}
}

// memory is what all versions of an open file share.
type memory struct {
	mu sync.Mutex
	// tokens are what the client was last given, so that only what changed need be
	// sent.
	tokens numbered[[]uint32]
	// version is the newest that is analyzed, and newest what is known of it, nil for
	// nothing: the next one is known the sooner.
	version int32
	newest  *knowledge
}

func (m *memory) known() *knowledge {
	m.mu.Lock()
	defer m.mu.Unlock()
	return m.newest
}

// know keeps what is known of a version, unless more is known of a newer one.
func (m *memory) know(version int32, k *knowledge) {
	m.mu.Lock()
	defer m.mu.Unlock()
	if m.newest == nil || version > m.version {
		m.version, m.newest = version, k
	}
}

// forget lets go of what is known of a version, if it is the newest.
func (m *memory) forget(version int32) {
	m.mu.Lock()
	defer m.mu.Unlock()
	if m.version == version {
		m.newest = nil
	}
}

// numbered is an answer with the number that it was given.
type numbered[T any] struct {
	id     int
	answer T
}

func (s *server) newDocument(file uri.URI, version int32, text *source.Text, of *memory) *document {
	d := &document{uri: file, version: version, shown: true, text: text, used: s.recent.use, memory: of}
	d.analyze = func(text *source.Text) (_ *knowledge, err error) {
		defer s.recovered(&err)
		var before *lint.Analysis
		if k := of.known(); k != nil {
			before = k.Analysis
		}
		analysis := s.analyze(s.settingsFor(file), before, text)
		if analysis != nil && analysis.Trace != "" {
			s.log.Printf("reading %s broke down: %s", file, analysis.Trace)
		}
		k := knowledgeOf(analysis)
		of.know(version, k)
		return k, nil
	}
	return d
}

// look begins to find out what is known of the document, where nobody has or where it
// was put away since then.
func (d *document) look() *inquiry {
	defer d.used(d)
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.inquiry == nil {
		f := &inquiry{done: make(chan struct{})}
		d.inquiry = f
		go func() {
			defer close(f.done)
			f.result, f.failure = d.analyze(d.text)
		}()
	}
	return d.inquiry
}

// putAway forgets what is known of the document. It gives false where that is being
// found out.
func (d *document) putAway() bool {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.inquiry == nil {
		return true
	}
	select {
	case <-d.inquiry.done:
		d.inquiry = nil
		d.memory.forget(d.version)
		return true
	default:
		return false
	}
}

// known is all that is known of the document. Whoever waits for it stops waiting when
// ctx ends.
func (d *document) known(ctx context.Context) (*knowledge, error) {
	f := d.look()
	select {
	case <-f.done:
		return f.result, f.failure
	case <-ctx.Done():
		return nil, ctx.Err()
	}
}

// keyOf is the one spelling of an address that documents are kept under. What has no
// scheme, such as an address that was left out, is none.
func keyOf(file uri.URI) (uri.URI, error) {
	key, err := uri.ParseStrict(string(file))
	if err != nil {
		return "", jsonrpc2.Errorf(jsonrpc2.InvalidParams, "%q is no address of a file: %v", file, err)
	}
	return uri.URI(strings.Clone(string(key))), nil
}

// sameFile tells whether two addresses are of one file or folder, however they are
// spelled.
func sameFile(a, b uri.URI) bool {
	one, err := keyOf(a)
	other, otherErr := keyOf(b)
	return err == nil && otherErr == nil && one == other
}

// documentOf is the open document that a request's parameters name, or that an
// answer of which more is asked was about.
func (s *server) documentOf(raw jsonrpc2.RawMessage) (*document, error) {
	var params struct {
		TextDocument struct{ URI uri.URI }
		Data         struct{ URI uri.URI }
	}
	if err := json.Unmarshal(raw, &params); err != nil {
		return nil, jsonrpc2.NewError(jsonrpc2.InvalidParams, err.Error())
	}
	key, err := keyOf(cmp.Or(params.TextDocument.URI, params.Data.URI))
	if err != nil {
		return nil, err
	}
	d := s.document(key)
	if d == nil {
		return nil, jsonrpc2.Errorf(jsonrpc2.InvalidParams, "%s is not open", key)
	}
	return d, nil
}

// document is the newest of a file, nil where it is not open.
func (s *server) document(key uri.URI) *document {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.documents[key]
}

// outdated tells whether a document has been replaced by a newer one, or closed.
func (s *server) outdated(d *document) bool {
	key, err := keyOf(d.uri)
	return err == nil && s.document(key) != d
}

// keep makes d, nil for none, the newest document of a file.
func (s *server) keep(key uri.URI, d *document) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if old := s.documents[key]; old != nil {
		s.recent.drop(old)
	}
	if d == nil {
		delete(s.documents, key)
		return
	}
	s.documents[key] = d
}

func (s *server) didOpen(_ context.Context, params *protocol.DidOpenTextDocumentParams) error {
	item := &params.TextDocument
	key, err := keyOf(item.URI)
	if err != nil {
		return err
	}
	// The parameters share one copy of the message, text included; what is kept of
	// them must not keep the rest.
	file := uri.URI(strings.Clone(string(item.URI)))
	s.keep(key, s.newDocument(file, item.Version, source.New(item.Text), &memory{}))
	lint.ForServer()
	s.publisher.reset(key, file)
	return nil
}

// change is one change of a document. The library's own type is not used: it
// takes a range of null for an insertion at the head of the text, and what
// has an impossible range for a new text.
type change struct {
	Range *protocol.Range // nil for the whole text
	Text  *string
}

func (s *server) didChange(_ context.Context, raw jsonrpc2.RawMessage) (any, error) {
	var params struct {
		TextDocument struct {
			URI     uri.URI
			Version int32
		}
		ContentChanges []change
	}
	if err := json.Unmarshal(raw, &params); err != nil {
		return nil, jsonrpc2.NewError(jsonrpc2.InvalidParams, err.Error())
	}
	key, err := keyOf(params.TextDocument.URI)
	if err != nil {
		return nil, err
	}
	old := s.document(key)
	if old == nil {
		return nil, fmt.Errorf("%s is not open", key)
	}
	text := old.text
	for _, c := range params.ContentChanges {
		if text, err = c.apply(text, s.can.encoding); err != nil {
			return nil, fmt.Errorf("%s from version %d to %d: %w", key, old.version, params.TextDocument.Version, err)
		}
	}
	s.keep(key, s.newDocument(old.uri, params.TextDocument.Version, text, old.memory))
	s.publisher.due(key, old.uri)
	return nil, nil
}

func (c change) apply(text *source.Text, encoding source.Encoding) (*source.Text, error) {
	switch {
	case c.Text == nil:
		return nil, fmt.Errorf("a change has no text")
	case c.Range == nil:
		return source.New(*c.Text), nil
	}
	span := converter{text, encoding}.span(*c.Range)
	return text.Apply([]source.Edit{{Span: span, New: *c.Text}})
}

func (s *server) didClose(_ context.Context, params *protocol.DidCloseTextDocumentParams) error {
	key, err := keyOf(params.TextDocument.URI)
	if err != nil {
		return err
	}
	old := s.document(key)
	if old == nil {
		return fmt.Errorf("%s is not open", key)
	}
	s.keep(key, nil)
	lint.ForServer()
	s.publisher.reset(key, old.uri)
	return nil
}
