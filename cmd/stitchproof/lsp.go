package main

import (
	"context"
	"crypto/rand"
	"errors"
	"fmt"
	"io"
	"net"
	"os"
	"os/signal"

	"stitchproof/lint"
	"stitchproof/lsp"
)

type lspCommand struct {
	Listen string `placeholder:"HOST:PORT" help:"Serve editors over a socket of this machine instead, such as 127.0.0.1:0 for any free port; where it is and the token that an editor must send are printed. ${tokenVariable} may give the token."`
}

// tokenVariable is the variable of the environment that a token may come from:
// arguments can be seen by everyone on the machine.
const tokenVariable = "STITCHPROOF_TOKEN"

// Run serves an editor until it leaves or the process is interrupted.
func (c *lspCommand) Run(s *streams) error {
	lint.ForServer()
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	if c.Listen != "" {
		return c.listen(ctx, s)
	}
	return lsp.Serve(ctx, readCloser(s.in), writeCloser(s.out), s.err)
}

// listen serves all editors that come, until the process is interrupted.
func (c *lspCommand) listen(ctx context.Context, s *streams) error {
	at, err := net.ResolveTCPAddr("tcp", c.Listen)
	if err != nil {
		return err
	}
	if !at.IP.IsLoopback() {
		return lsp.ErrNotLocal // before anyone can come
	}
	socket, err := net.ListenTCP("tcp", at)
	if err != nil {
		return err
	}
	fmt.Fprintf(s.out, "listening on %s\n", socket.Addr())
	token := os.Getenv(tokenVariable)
	if token == "" {
		token = rand.Text()
		fmt.Fprintf(s.out, "token %s\n", token)
	}
	if err := lsp.Listen(ctx, socket, token, s.err); !errors.Is(err, context.Canceled) {
		return err
	}
	return nil // as it was told to end
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
