package lsp

import (
	"context"
	"io"
	"os/exec"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"

	"stitchproof/lint"
)

func TestEncodingFollowsTheClient(t *testing.T) {
	for _, test := range []struct {
		name  string
		offer []string
		want  protocol.PositionEncodingKind
	}{
		{"nothing offered", nil, "utf-16"},
		{"bytes first", []string{"utf-8", "utf-16"}, "utf-8"},
		{"UTF-16 first", []string{"utf-16", "utf-8"}, "utf-16"},
		{"code points first", []string{"utf-32", "utf-8", "utf-16"}, "utf-32"},
		{"unknown ones passed over", []string{"utf-7", "utf-8"}, "utf-8"},
		{"only unknown ones", []string{"utf-7"}, "utf-16"},
	} {
		t.Run(test.name, func(t *testing.T) {
			c := inProcess(t, lint.Analyze)
			capabilities := object{}
			if test.offer != nil {
				capabilities["general"] = object{"positionEncodings": test.offer}
			}
			assert.Equal(t, test.want, c.initialize(capabilities, nil).Capabilities.PositionEncoding)
		})
	}
}

func TestSessionInGoodOrder(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		result := c.initialize(nil, nil)
		assert.Equal(t, "stitchproof", result.ServerInfo.Name)
		sync, ok := result.Capabilities.TextDocumentSync.(*protocol.TextDocumentSyncOptions)
		require.True(t, ok)
		assert.Equal(t, protocol.TextDocumentSyncKindIncremental, *sync.Change)
		assert.NoError(t, c.leave())
	})
}

func TestDisorderlyParting(t *testing.T) {
	for _, test := range []struct {
		name  string
		part  func(*client)
		clean bool
	}{
		{"exit at once", func(c *client) { c.send(object{"method": "exit"}) }, false},
		{"exit without shutdown", func(c *client) {
			c.initialize(nil, nil)
			c.send(object{"method": "exit"})
		}, false},
		{"gone without a word", func(c *client) {
			c.initialize(nil, nil)
			_ = c.in.Close()
		}, false},
		{"gone after shutdown", func(c *client) {
			c.initialize(nil, nil)
			c.call("shutdown", nil, nil)
			_ = c.in.Close()
		}, true},
		{"exit twice", func(c *client) {
			c.initialize(nil, nil)
			c.call("shutdown", nil, nil)
			c.send(object{"method": "exit"})
		}, true},
		{"gone within a message", func(c *client) {
			c.initialize(nil, nil)
			_, err := c.in.Write([]byte("Content-Length: 100\r\n\r\n{"))
			require.NoError(c.t, err)
			_ = c.in.Close()
		}, false},
		{"gone within a header", func(c *client) {
			_, err := c.in.Write([]byte("hawthorn\r\n\r\nContent-Len"))
			require.NoError(c.t, err)
			_ = c.in.Close()
		}, false},
	} {
		t.Run(test.name, func(t *testing.T) {
			bothWays(t, func(t *testing.T, c *client) {
				test.part(c)
				err := c.wait()
				if test.clean {
					assert.NoError(t, err)
					return
				}
				if exit, ok := err.(*exec.ExitError); ok {
					assert.Positive(t, exit.ExitCode())
					return
				}
				assert.ErrorIs(t, err, ErrNoShutdown)
			})
		})
	}
}

func TestInterrupted(t *testing.T) {
	serverIn, clientOut := io.Pipe()
	clientIn, serverOut := io.Pipe()
	ctx, interrupt := context.WithCancel(context.Background())
	done := make(chan error, 1)
	go func() { done <- Serve(ctx, serverIn, serverOut, io.Discard) }()
	c := connect(t, clientOut, clientIn, func() error { return within(t, done) })
	c.initialize(nil, nil)
	interrupt()
	assert.ErrorIs(t, c.wait(), context.Canceled)
	_, err := clientOut.Write([]byte("Content"))
	assert.ErrorIs(t, err, io.ErrClosedPipe)
}

func TestOutOfOrder(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		assert.Equal(t, -32002, c.refused("textDocument/hover", at(file, protocol.Position{})))
		assert.Equal(t, -32002, c.refused("shutdown", nil))
		c.open(file, 1, "Row 1: ch 5.") // ignored
		c.send(object{"method": "initialize", "params": object{"capabilities": object{}}})
		c.initialize(nil, nil)
		assert.Equal(t, -32600, c.refused("initialize", object{"capabilities": object{}}))
		assert.Equal(t, -32602, c.refused("textDocument/documentSymbol", naming(file)), "opened before initialize")
		c.call("shutdown", nil, nil)
		assert.Equal(t, -32600, c.refused("textDocument/documentSymbol", naming(file)))
		assert.Equal(t, -32600, c.refused("initialize", object{"capabilities": object{}}))
		c.send(object{"method": "exit"})
		assert.NoError(t, c.wait())
	})
}

func TestWhatNobodyKnows(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		c.open(file, 1, "Piece: Acorn\nWith A, ch 5.\n")
		for _, method := range []string{"hedgerow/count", "textDocument/moniker", "workspace/executeCommand", "$/hedgerow"} {
			assert.Equal(t, -32601, c.refused(method, object{}), method)
		}
		for _, method := range []string{"$/hedgerow", "hedgerow/changed", "textDocument/didSave", "textDocument/hover", "workspace/didChangeWatchedFiles"} {
			c.notify(method, object{})
			c.send(object{"method": method})
		}
		for _, params := range []any{nil, object{}, object{"id": nil}, object{"id": 99}, object{"id": "wren"}, object{"id": object{}}} {
			c.notify("$/cancelRequest", params)
		}
		c.send(object{"id": 12, "result": nil}) // an answer to nothing
		assert.NoError(t, c.leave())
	})
}

func TestMalformedParameters(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		c.open(file, 1, "Piece: Acorn\nWith A, ch 5.\n")
		for _, method := range []string{"textDocument/hover", "textDocument/inlayHint", "textDocument/documentSymbol"} {
			for _, params := range []any{nil, object{}, []int{1}, object{"textDocument": 3}, object{"textDocument": object{"uri": 7}},
				object{"textDocument": object{"uri": "file:///hedgerow/unopened"}}, object{"textDocument": object{"uri": "%"}}} {
				assert.Equal(t, -32602, c.refused(method, params), "%s %v", method, params)
			}
		}
		place := naming(file)
		for _, position := range []any{object{"line": -1, "character": 0}, object{"line": 0.5, "character": 0}, object{"line": "x"}, 3} {
			place["position"] = position
			assert.Equal(t, -32602, c.refused("textDocument/hover", place), "%v", position)
		}
		for _, method := range []string{"textDocument/didOpen", "textDocument/didChange", "textDocument/didClose", "workspace/didChangeConfiguration"} {
			for _, params := range []any{nil, object{}, []int{1}, object{"textDocument": 3}, object{"settings": 3}, object{"contentChanges": "x"}} {
				c.notify(method, params)
			}
		}
		c.call("textDocument/documentSymbol", naming(file), nil)
		assert.NoError(t, c.leave())
	})
}

func TestMalformedMessages(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		for body, code := range map[string]int{
			`{`:             -32700,
			`hawthorn`:      -32700,
			`3`:             -32700,
			`{}`:            -32600,
			`[]`:            -32600,
			`{"id":1}`:      -32600,
			`{"jsonrpc":1}`: -32600,
			`{"jsonrpc":"2.0","id":{},"method":"shutdown"}`: -32600,
		} {
			c.raw(body)
			m := c.await("the answer to "+body, func(m message) bool { return m.Error != nil })
			assert.Equal(t, code, m.Error.Code, body)
			assert.Contains(t, []string{"", "null"}, string(m.ID), body)
		}
		assert.NoError(t, c.leave())
	})
}
