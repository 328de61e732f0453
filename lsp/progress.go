package lsp

import (
	"context"
	"fmt"

	"go.lsp.dev/protocol"
)

// progress tells the client how far a long work is.
type progress struct {
	tell func(value any)
}

// progress begins to tell under the token that the client gave, if it gave one.
func (s *server) progress(ctx context.Context, token protocol.ProgressToken, title string) progress {
	if token == nil {
		return progress{func(any) {}}
	}
	p := progress{func(value any) {
		content, err := protocol.Marshal(value)
		if err == nil {
			err = s.client.Progress(ctx, &protocol.ProgressParams{Token: token, Value: protocol.LSPAny(content)})
		}
		if err != nil && ctx.Err() == nil {
			s.log.Printf("progress: %v", err)
		}
	}}
	p.tell(&protocol.WorkDoneProgressBegin{Kind: "begin", Title: title, Cancellable: new(true), Percentage: new(uint32(0))})
	return p
}

func (p progress) report(done, of int) {
	p.tell(&protocol.WorkDoneProgressReport{
		Kind: "report", Message: new(fmt.Sprintf("%d of %d", done, of)), Percentage: new(uint32(100 * done / of)),
	})
}

func (p progress) end() { p.tell(&protocol.WorkDoneProgressEnd{Kind: "end"}) }
