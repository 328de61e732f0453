package lsp

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"net/textproto"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
)

// patience is how long a test waits for a message before it gives the server up.
const patience = 20 * time.Second

// file is the document that most tests speak of.
const file = "file:///hedgerow/acorn.crochet"

// message is any message of the protocol.
type message struct {
	ID     json.RawMessage `json:"id,omitempty"`
	Method string          `json:"method,omitempty"`
	Params json.RawMessage `json:"params,omitempty"`
	Result json.RawMessage `json:"result,omitempty"`
	Error  *struct {
		Code    int    `json:"code"`
		Message string `json:"message"`
	} `json:"error,omitempty"`
}

// client is a scripted client: it writes frames and keeps what comes back.
type client struct {
	t    *testing.T
	in   io.WriteCloser
	wait func() error // how the server ended
	next int
	ear  *ear

	mu    sync.Mutex
	inbox []message
	ended bool
	news  chan struct{} // holds a token after anything arrived
}

// connect starts the client of a server that reads in and writes out. All that the
// server sends until it ends has to have the shapes of the protocol.
func connect(t *testing.T, in io.WriteCloser, out io.Reader, wait func() error) *client {
	c := &client{t: t, in: in, wait: wait, ear: newEar(modelOf(t)), news: make(chan struct{}, 1)}
	go c.read(bufio.NewReader(out))
	t.Cleanup(func() {
		_ = in.Close()
		c.untilEnd()
		c.ear.mu.Lock()
		defer c.ear.mu.Unlock()
		for _, fault := range c.ear.faults {
			t.Error("the server sent what has not the shape that the protocol gives it: " + fault)
		}
	})
	return c
}

// untilEnd waits until the server sends no more.
func (c *client) untilEnd() {
	c.t.Helper()
	deadline := time.After(patience)
	for {
		c.mu.Lock()
		ended := c.ended
		c.mu.Unlock()
		if ended {
			return
		}
		select {
		case <-c.news:
		case <-deadline:
			c.t.Errorf("the server did not end within %v", patience)
			return
		}
	}
}

func (c *client) read(out *bufio.Reader) {
	for {
		header, err := textproto.NewReader(out).ReadMIMEHeader()
		var m message
		if err == nil {
			length, _ := strconv.Atoi(header.Get("Content-Length"))
			body := make([]byte, length)
			if _, err = io.ReadFull(out, body); err == nil {
				c.ear.heard(body)
				err = json.Unmarshal(body, &m)
			}
		}
		c.mu.Lock()
		if err != nil {
			c.ended = true
		} else {
			c.inbox = append(c.inbox, m)
		}
		c.mu.Unlock()
		select {
		case c.news <- struct{}{}:
		default:
		}
		if err != nil {
			return
		}
	}
}

// await takes the first message that fits out of what has come or will come.
func (c *client) await(what string, fits func(message) bool) message {
	c.t.Helper()
	deadline := time.After(patience)
	for {
		c.mu.Lock()
		for i, m := range c.inbox {
			if fits(m) {
				c.inbox = append(c.inbox[:i:i], c.inbox[i+1:]...)
				c.mu.Unlock()
				return m
			}
		}
		ended, rest := c.ended, c.inbox
		c.mu.Unlock()
		if ended {
			c.t.Fatalf("the server ended before %s came; it had sent %v", what, rest)
		}
		select {
		case <-c.news:
		case <-deadline:
			c.t.Fatalf("%s did not come within %v; the server had sent %v", what, patience, rest)
		}
	}
}

// raw sends a body as it is.
func (c *client) raw(body string) {
	c.t.Helper()
	c.ear.said(body)
	_, err := fmt.Fprintf(c.in, "Content-Length: %d\r\n\r\n%s", len(body), body)
	require.NoError(c.t, err)
}

func (c *client) send(fields map[string]any) {
	c.t.Helper()
	fields["jsonrpc"] = "2.0"
	body, err := json.Marshal(fields)
	require.NoError(c.t, err)
	c.raw(string(body))
}

func (c *client) notify(method string, params any) {
	c.t.Helper()
	c.send(map[string]any{"method": method, "params": params})
}

// request sends a request and gives its id.
func (c *client) request(method string, params any) int {
	c.t.Helper()
	c.next++
	c.send(map[string]any{"id": c.next, "method": method, "params": params})
	return c.next
}

// answer waits for the answer to a request.
func (c *client) answer(id int) message {
	c.t.Helper()
	return c.await(fmt.Sprintf("the answer to request %d", id), func(m message) bool {
		return m.Method == "" && string(m.ID) == strconv.Itoa(id)
	})
}

// call sends a request, waits for its answer and decodes that into result, which
// may be nil.
func (c *client) call(method string, params, result any) {
	c.t.Helper()
	m := c.answer(c.request(method, params))
	require.Nil(c.t, m.Error, method)
	if result != nil {
		require.NoError(c.t, json.Unmarshal(m.Result, result))
	}
}

// refused sends a request and gives the code it is refused with.
func (c *client) refused(method string, params any) int {
	c.t.Helper()
	m := c.answer(c.request(method, params))
	require.NotNil(c.t, m.Error, "%s was answered with %s", method, m.Result)
	return m.Error.Code
}

// asked waits for a request of the server and answers it.
func (c *client) asked(method string, result any) message {
	c.t.Helper()
	m := c.await(method, func(m message) bool { return m.Method == method })
	c.send(map[string]any{"id": m.ID, "result": result})
	return m
}

type object = map[string]any

// initialize begins a session; capabilities may be nil.
func (c *client) initialize(capabilities object, options any) protocol.InitializeResult {
	c.t.Helper()
	if capabilities == nil {
		capabilities = object{}
	}
	m := c.answer(c.request("initialize", object{
		"processId": nil, "rootUri": nil, "capabilities": capabilities, "initializationOptions": options,
	}))
	require.Nil(c.t, m.Error)
	var result protocol.InitializeResult
	require.NoError(c.t, protocol.Unmarshal(m.Result, &result))
	c.notify("initialized", object{})
	return result
}

func (c *client) open(uri string, version int, text string) {
	c.t.Helper()
	c.notify("textDocument/didOpen", object{
		"textDocument": object{"uri": uri, "languageId": "crochet", "version": version, "text": text},
	})
}

// change sends changes, each as the protocol writes it.
func (c *client) change(uri string, version int, changes ...any) {
	c.t.Helper()
	c.notify("textDocument/didChange", object{
		"textDocument": object{"uri": uri, "version": version}, "contentChanges": changes,
	})
}

func whole(text string) object { return object{"text": text} }

func (c *client) close(uri string) {
	c.t.Helper()
	c.notify("textDocument/didClose", naming(uri))
}

func naming(uri string) object { return object{"textDocument": object{"uri": uri}} }

func at(uri string, p protocol.Position) object {
	params := naming(uri)
	params["position"] = object{"line": p.Line, "character": p.Character}
	return params
}

// published is what the server says of a file.
type published struct {
	URI         string                `json:"uri"`
	Version     *int32                `json:"version"`
	Diagnostics []protocol.Diagnostic `json:"diagnostics"`
}

// diagnostics waits for the next that the server says of a file.
func (c *client) diagnostics() published {
	c.t.Helper()
	m := c.await("textDocument/publishDiagnostics", func(m message) bool {
		return m.Method == "textDocument/publishDiagnostics"
	})
	var raw struct {
		URI         string            `json:"uri"`
		Version     *int32            `json:"version"`
		Diagnostics []json.RawMessage `json:"diagnostics"`
	}
	require.NoError(c.t, json.Unmarshal(m.Params, &raw))
	require.NotNil(c.t, raw.Diagnostics, "null in the place of a list")
	p := published{URI: raw.URI, Version: raw.Version, Diagnostics: make([]protocol.Diagnostic, len(raw.Diagnostics))}
	for i, d := range raw.Diagnostics {
		require.NoError(c.t, protocol.Unmarshal(d, &p.Diagnostics[i]))
	}
	return p
}

// leave ends the session in good order and says how the server ended.
func (c *client) leave() error {
	c.t.Helper()
	c.call("shutdown", nil, nil)
	c.send(object{"method": "exit"})
	return c.wait()
}

// marked takes the mark ¦ out of a text and gives its place in an encoding.
func marked(t *testing.T, text string, e source.Encoding) (string, protocol.Position) {
	t.Helper()
	before, after, ok := strings.Cut(text, "¦")
	require.True(t, ok, "the text has no mark")
	text = before + after
	return text, converter{source.New(text), e}.position(len(before))
}
