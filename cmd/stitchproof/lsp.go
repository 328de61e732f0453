package main

import (
	"context"
	"io"
	"os"
	"os/signal"

	"stitchproof/lsp"
)

type lspCommand struct{}

// Run serves an editor until it leaves or the process is interrupted.
func (lspCommand) Run(s *streams) error {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	return lsp.Serve(ctx, readCloser(s.in), writeCloser(s.out), s.err)
}

// readCloser lets the server close its input, where that can be closed, to
// end a read that waits.
func readCloser(r io.Reader) io.ReadCloser {
	if c, ok := r.(io.ReadCloser); ok {
		return c
	}
	return io.NopCloser(r)
}

func writeCloser(w io.Writer) io.WriteCloser {
	if c, ok := w.(io.WriteCloser); ok {
		return c
	}
	return nopCloser{w}
}

type nopCloser struct{ io.Writer }

func (nopCloser) Close() error { return nil }
