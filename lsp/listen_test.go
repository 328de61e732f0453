package lsp

import (
	"bytes"
	"context"
	"errors"
	"net"
	"testing"
	"testing/synctest"
	"time"

	"github.com/stretchr/testify/assert"
)

// narrow is a socket that lets nobody in at first, then one client.
type narrow struct {
	net.Listener
	shut int // how often nobody is let in
	then net.Conn
	end  context.Context
}

func (n *narrow) Addr() net.Addr { return &net.TCPAddr{IP: net.IPv4(127, 0, 0, 1)} }

func (n *narrow) Close() error { return nil }

func (n *narrow) Accept() (net.Conn, error) {
	switch {
	case n.shut > 0:
		n.shut--
		return nil, errors.New("too many open files")
	case n.then != nil:
		conn := n.then
		n.then = nil
		return conn, nil
	}
	<-n.end.Done()
	return nil, net.ErrClosed
}

// What hinders one client from coming in does not end the others' sessions.
func TestNobodyCanBeLetIn(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		ctx, stop := context.WithCancel(t.Context())
		near, far := net.Pipe()
		socket := &narrow{shut: 3, then: far, end: ctx}
		var notes bytes.Buffer
		done := make(chan error, 1)
		began := time.Now()
		go func() { done <- Listen(ctx, socket, "hawthorn", &notes) }()
		c := connect(t, near, near, func() error { return nil })
		c.initialize(nil, object{"token": "hawthorn"})
		assert.Equal(t, 3*breath, time.Since(began))
		stop()
		assert.ErrorIs(t, <-done, context.Canceled)
		assert.Equal(t, 3, bytes.Count(notes.Bytes(), []byte("too many open files")))
		_ = near.Close()
	})
}
