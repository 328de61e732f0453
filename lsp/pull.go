package lsp

import (
	"context"
	"fmt"
	"hash/fnv"

	"go.lsp.dev/jsonrpc2"
	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"
)

// documentDiagnostic gives the findings of a document to a client that asks for
// them, or says that they are those it has.
func documentDiagnostic(v *view, params *protocol.DocumentDiagnosticParams) protocol.DocumentDiagnosticReport {
	id := fingerprint(v.Text.String(), v.generation)
	if params.PreviousResultID != nil && *params.PreviousResultID == id {
		return &protocol.RelatedUnchangedDocumentDiagnosticReport{UnchangedDocumentDiagnosticReport: unchanged(id)}
	}
	return &protocol.RelatedFullDocumentDiagnosticReport{FullDocumentDiagnosticReport: full(v, id)}
}

// fingerprint names a text under the settings of a generation: the same text has the
// same findings there.
func fingerprint(text string, generation int) string {
	h := fnv.New64a()
	_, _ = h.Write([]byte(text)) // it cannot fail
	return fmt.Sprintf("%d-%x", generation, h.Sum64())
}

func unchanged(id string) protocol.UnchangedDocumentDiagnosticReport {
	return protocol.UnchangedDocumentDiagnosticReport{Kind: "unchanged", ResultID: id}
}

func full(v *view, id string) protocol.FullDocumentDiagnosticReport {
	return protocol.FullDocumentDiagnosticReport{Kind: "full", ResultID: &id, Items: diagnostics(v)}
}

// workspaceDiagnostic gives the findings of every pattern in the folders that the
// client has open, and tells meanwhile how far it is.
func (s *server) workspaceDiagnostic(ctx context.Context, raw jsonrpc2.RawMessage) (any, error) {
	params, err := decode[protocol.WorkspaceDiagnosticParams](raw)
	if err != nil {
		return nil, err
	}
	known := map[uri.URI]string{}
	for _, p := range params.PreviousResultIds {
		if key, err := keyOf(p.URI); err == nil {
			known[key] = p.Value
		}
	}
	files, generation := s.patterns(), s.settingsGeneration()
	told := s.progress(ctx, params.WorkDoneToken, "Checking patterns")
	defer told.end()
	report := &protocol.WorkspaceDiagnosticReport{Items: []protocol.WorkspaceDocumentDiagnosticReport{}}
	for i, key := range files {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		told.report(i, len(files))
		if item := s.reported(ctx, key, known[key], generation); item != nil {
			report.Items = append(report.Items, item)
		}
		delete(known, key)
	}
	for gone := range known { // nothing is left to say of a file that is no more
		report.Items = append(report.Items, &protocol.WorkspaceFullDocumentDiagnosticReport{
			URI: gone, FullDocumentDiagnosticReport: protocol.FullDocumentDiagnosticReport{Kind: "full"},
		})
	}
	return report, nil
}

// reported is what is told of one file, nil where it cannot be read.
func (s *server) reported(ctx context.Context, key uri.URI, known string, generation int) protocol.WorkspaceDocumentDiagnosticReport {
	d, err := s.open(key)
	if err != nil {
		s.log.Printf("%s: %v", key, err)
		return nil
	}
	var version *int32
	if d.shown {
		version = &d.version
	}
	id := fingerprint(d.text.String(), generation)
	if id == known {
		return &protocol.WorkspaceUnchangedDocumentDiagnosticReport{URI: d.uri, Version: version, UnchangedDocumentDiagnosticReport: unchanged(id)}
	}
	now, err := d.known(ctx)
	if err != nil {
		s.log.Printf("%s: %v", key, err)
		return nil
	}
	return &protocol.WorkspaceFullDocumentDiagnosticReport{URI: d.uri, Version: version, FullDocumentDiagnosticReport: full(s.view(d, now), id)}
}
