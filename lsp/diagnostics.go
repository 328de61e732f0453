package lsp

import (
	"context"
	"fmt"
	"reflect"
	"runtime/debug"
	"slices"
	"strings"
	"sync"

	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"

	"stitchproof/lint"
)

// publisher remembers which files want looking at and what the client was last
// told of each. One goroutine does the telling, so that a client hears of a
// file in the order in which things happened to it, and a burst of edits
// comes down to the first and the last of them.
type publisher struct {
	wake chan struct{} // holds a token while files are due

	mu    sync.Mutex
	files []dueFile // each file once
	told  map[uri.URI][]protocol.Diagnostic
}

type dueFile struct {
	key uri.URI
	uri uri.URI // as the client spells it
}

func newPublisher() publisher {
	return publisher{wake: make(chan struct{}, 1), told: map[uri.URI][]protocol.Diagnostic{}}
}

// due asks for a file to be looked at. It never waits.
func (p *publisher) due(key, spelled uri.URI) {
	p.mu.Lock()
	if !slices.ContainsFunc(p.files, func(f dueFile) bool { return f.key == key }) {
		p.files = append(p.files, dueFile{key, spelled})
	}
	p.mu.Unlock()
	select {
	case p.wake <- struct{}{}:
	default:
	}
}

// reset is due for a file that was opened or closed: what the client was told of it
// before no longer counts.
func (p *publisher) reset(key, spelled uri.URI) {
	p.mu.Lock()
	delete(p.told, key)
	p.mu.Unlock()
	p.due(key, spelled)
}

// next takes the file that has waited longest.
func (p *publisher) next() (dueFile, bool) {
	p.mu.Lock()
	defer p.mu.Unlock()
	if len(p.files) == 0 {
		return dueFile{}, false
	}
	f := p.files[0]
	p.files = slices.Delete(p.files, 0, 1)
	return f, true
}

// tell notes what the client is about to be told of an open file, and says
// whether that is news.
func (p *publisher) tell(key uri.URI, list []protocol.Diagnostic) bool {
	p.mu.Lock()
	defer p.mu.Unlock()
	if before, ok := p.told[key]; ok && reflect.DeepEqual(before, list) {
		return false
	}
	p.told[key] = list
	return true
}

// publishAll publishes findings until ctx ends.
func (s *server) publishAll(ctx context.Context) {
	for {
		select {
		case <-ctx.Done():
			return
		case <-s.publisher.wake:
		}
		for f, ok := s.publisher.next(); ok && ctx.Err() == nil; f, ok = s.publisher.next() {
			if err := s.publish(ctx, f); err != nil && ctx.Err() == nil {
				s.log.Printf("findings of %s: %v", f.uri, err)
			}
		}
	}
}

// publish tells the client what was found in a file's newest text, or that
// nothing is left to say of a closed one. What was found in a text that has been
// replaced meanwhile is not told: its replacement is due already.
func (s *server) publish(ctx context.Context, f dueFile) (err error) {
	defer func() {
		if broken := recover(); broken != nil {
			err = fmt.Errorf("telling of them broke down: %v\n%s", broken, debug.Stack())
		}
	}()
	if s.can.pulls {
		return nil
	}
	params := &protocol.PublishDiagnosticsParams{URI: f.uri}
	d := s.document(f.key)
	if d == nil {
		return s.client.PublishDiagnostics(ctx, params)
	}
	known, err := d.known(ctx)
	if err != nil {
		return err
	}
	params.Version = protocol.NewOptional(d.version)
	params.Diagnostics = diagnostics(s.view(d, known))
	if s.document(f.key) != d || !s.publisher.tell(f.key, params.Diagnostics) {
		return nil
	}
	return s.client.PublishDiagnostics(ctx, params)
}

// diagnostics are the findings of a document, in their order, and before them that nothing
// in it was read as a pattern.
func diagnostics(v *view) []protocol.Diagnostic {
	list := make([]protocol.Diagnostic, 0, len(v.Findings)+1)
	if v.NothingRead() {
		list = append(list, v.diagnostic(&lint.Finding{Rule: nothingRead, Span: v.FirstLine(), Message: "no instruction was found: " + lint.AnInstruction}))
	}
	for i := range v.Findings {
		list = append(list, v.diagnostic(&v.Findings[i]))
	}
	return list
}

// nothingRead is what a client is told under that a text was not read as a pattern. It is no
// rule: what is no pattern keeps and breaks none.
const nothingRead = "nothing-read"

// diagnostic is a finding as the client shows it.
func (v *view) diagnostic(f *lint.Finding) protocol.Diagnostic {
	d := protocol.Diagnostic{
		Range:    v.rangeOf(f.Span),
		Severity: severities[f.Severity],
		Code:     protocol.String(f.Rule),
		Source:   protocol.NewOptional("stitchproof"),
		Message:  protocol.String(f.Message),
	}
	if v.can.tags && strings.HasSuffix(f.Rule, "-unused") {
		d.Tags = protocol.NewDiagnosticTags(protocol.DiagnosticTagUnnecessary)
	}
	if _, known := lint.Find(f.Rule); v.can.pages && known {
		d.CodeDescription = protocol.CodeDescription{Href: rulePage(f.Rule)}
	}
	if v.can.related {
		for _, r := range f.Related {
			d.RelatedInformation = append(d.RelatedInformation, protocol.DiagnosticRelatedInformation{
				Location: v.location(v.uri, r.Span),
				Message:  r.Message,
			})
		}
	}
	return d
}

// severities are the protocol's words for ours. It has none above error, so a
// caution shares it.
var severities = [...]protocol.DiagnosticSeverity{
	lint.Info:    protocol.DiagnosticSeverityInformation,
	lint.Warning: protocol.DiagnosticSeverityWarning,
	lint.Error:   protocol.DiagnosticSeverityError,
	lint.Caution: protocol.DiagnosticSeverityError,
}
