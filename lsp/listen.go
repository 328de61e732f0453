package lsp

import (
	"context"
	"crypto/subtle"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net"
	"sync"
	"time"

	"go.lsp.dev/jsonrpc2"

	"stitchproof/lint"
)

// ErrNotLocal says that an address could be reached from other machines.
var ErrNotLocal = errors.New("the server is for this machine alone: listen on an address such as 127.0.0.1:0")

// breath is how long what the machine was short of has to come back before another
// client is let in.
const breath = time.Second

// Listen serves every client that comes to a socket, each in a session of its own,
// until ctx ends, and closes the socket. A client has to give the token as
// `token` among the initializationOptions of its initialize: other programs of
// this machine, and pages in its browser, can reach the socket too. A client that
// cannot be let in, as when too many files are open, is noted, and the next
// one is waited for.
//
// It returns [ErrNotLocal] where the socket is not of this machine alone, and the
// context's error where ctx ended.
func Listen(ctx context.Context, socket net.Listener, token string, notes io.Writer) error {
	defer socket.Close()
	if at, ok := socket.Addr().(*net.TCPAddr); !ok || !at.IP.IsLoopback() {
		return ErrNotLocal
	}
	stop := context.AfterFunc(ctx, func() { _ = socket.Close() })
	defer stop()
	var sessions sync.WaitGroup
	defer sessions.Wait()
	for {
		client, err := socket.Accept()
		if ctx.Err() != nil {
			return ctx.Err()
		}
		if errors.Is(err, net.ErrClosed) {
			return err
		}
		if err != nil {
			fmt.Fprintf(notes, "stitchproof: a client could not be let in: %v\n", err)
			select {
			case <-ctx.Done():
			case <-time.After(breath):
			}
			continue
		}
		sessions.Go(func() { _ = serve(ctx, client, notes, lint.Settings.AnalyzeAfter, token) }) // how one left is no matter of the others
	}
}

// welcome tells whether a client may be served, by what it sent with initialize.
func (s *server) welcome(options []byte) error {
	if s.token == "" {
		return nil
	}
	var given struct{ Token string }
	_ = json.Unmarshal(options, &given) // what is no object holds no token
	if subtle.ConstantTimeCompare([]byte(given.Token), []byte(s.token)) != 1 {
		return jsonrpc2.NewError(jsonrpc2.InvalidRequest, "initializationOptions do not hold the token that the server was started with")
	}
	return nil
}
