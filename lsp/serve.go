// Package lsp is the editor's face of the tool: the Language Server Protocol over
// a stream. It knows no craft of its own. What a text means is asked of packages
// lang and lint; here answers are only chosen, worded for an editor and given
// the editor's positions.
//
// Invariants:
//
//   - Messages that change anything are handled in the order they were sent, before
//     the next one is read. Requests run beside them, each on the document as
//     it was when the request was sent.
//   - A document never changes; an edit makes a new one. So no feature locks anything.
//   - Only convert.go makes positions of the protocol.
package lsp

import (
	"context"
	"errors"
	"io"
	"log"

	"go.lsp.dev/jsonrpc2"
	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// ErrNoShutdown says that the client went away, or told the server to exit, without
// having asked it to shut down. The protocol wants exit code 1 for it.
var ErrNoShutdown = errors.New("the client left without asking to shut down")

// Serve talks to one client until it leaves or ctx ends. It closes in and out.
// What a person may want to know of the server's own troubles goes to notes,
// which is never part of the protocol.
//
// It returns nil after an orderly shutdown, [ErrNoShutdown] after any other
// parting, and the context's error where ctx ended first.
func Serve(ctx context.Context, in io.ReadCloser, out io.WriteCloser, notes io.Writer) error {
	return serve(ctx, stdio{in, out}, notes, lint.Settings.AnalyzeAfter, "")
}

// analyzer reads a text under some settings and says all that is known of it; what is
// known of an earlier text of the file, nil for nothing, may help it.
type analyzer func(lint.Settings, *lint.Analysis, *source.Text) *lint.Analysis

func serve(ctx context.Context, pipe io.ReadWriteCloser, notes io.Writer, analyze analyzer, token string) error {
	logger := log.New(notes, "stitchproof: ", log.LstdFlags|log.Lmsgprefix)
	stream := newFrames(pipe, logger)
	defer stream.Close()
	conn := jsonrpc2.NewConn(stream, jsonrpc2.WithCodec(codec{}))
	s := newServer(protocol.ClientDispatcher(conn), logger, analyze)
	s.token = token

	running, stop := context.WithCancel(ctx)
	defer stop()
	go s.publishAll(running)
	conn.Go(running, s.handler())

	select {
	case <-ctx.Done():
		return ctx.Err()
	case <-s.left:
	case <-conn.Done():
		if err := conn.Err(); err != nil {
			logger.Printf("the connection broke: %v", err)
		}
	}
	if s.phase != shutDown {
		return ErrNoShutdown
	}
	return nil
}

// stdio makes one stream of the two that a program has.
type stdio struct {
	io.ReadCloser
	io.WriteCloser
}

// Close closes both.
func (s stdio) Close() error { return errors.Join(s.ReadCloser.Close(), s.WriteCloser.Close()) }

// codec writes and reads the contents of messages the way the protocol's types
// need; without it values of several possible types are decoded wrongly.
type codec struct{}

// Marshal encodes v; what is encoded already stays as it is.
func (codec) Marshal(v any) ([]byte, error) {
	if raw, ok := v.(jsonrpc2.RawMessage); ok && raw != nil {
		return raw, nil
	}
	return protocol.Marshal(v)
}

// Unmarshal decodes data into v; an undecoded message gets a copy of it.
func (codec) Unmarshal(data []byte, v any) error {
	if raw, ok := v.(*jsonrpc2.RawMessage); ok {
		*raw = append(jsonrpc2.RawMessage(nil), data...)
		return nil
	}
	return protocol.Unmarshal(data, v)
}
