package main

import (
	"bufio"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"strconv"
	"strings"
	"time"

	"stitchproof/lsp"
)

// editor is a client of a language server in this process, as far as its speed is
// to be seen.
type editor struct {
	to   io.WriteCloser
	from chan message
	last int // request
}

// message is what the server says.
type message struct {
	ID     *int
	Method string
	Params struct {
		URI         string
		Version     int
		Diagnostics []json.RawMessage
	}
}

const file = "file:///speed.crochet"

func newEditor() *editor {
	in, to := io.Pipe()
	from, out := io.Pipe()
	go lsp.Serve(context.Background(), in, out, io.Discard)
	e := &editor{to: to, from: make(chan message, 64)}
	go e.listen(bufio.NewReader(from))
	e.request("initialize", map[string]any{"processId": nil, "rootUri": nil, "capabilities": map[string]any{}})
	e.notify("initialized", map[string]any{})
	return e
}

// listen reads what the server says until it stops.
func (e *editor) listen(from *bufio.Reader) {
	defer close(e.from)
	for {
		length := 0
		for {
			line, err := from.ReadString('\n')
			if err != nil {
				return
			}
			line = strings.TrimSpace(line)
			if line == "" {
				break
			}
			if value, ok := strings.CutPrefix(strings.ToLower(line), "content-length:"); ok {
				length, _ = strconv.Atoi(strings.TrimSpace(value))
			}
		}
		body := make([]byte, length)
		if _, err := io.ReadFull(from, body); err != nil {
			return
		}
		var m message
		if json.Unmarshal(body, &m) == nil {
			e.from <- m
		}
	}
}

func (e *editor) send(message map[string]any) {
	message["jsonrpc"] = "2.0"
	body, err := json.Marshal(message)
	if err != nil {
		panic(err) // of our own maps
	}
	fmt.Fprintf(e.to, "Content-Length: %d\r\n\r\n%s", len(body), body)
}

func (e *editor) notify(method string, params any) {
	e.send(map[string]any{"method": method, "params": params})
}

// request asks and waits for the answer.
func (e *editor) request(method string, params any) {
	e.last++
	e.send(map[string]any{"id": e.last, "method": method, "params": params})
	for m := range e.from {
		if m.ID != nil && *m.ID == e.last && m.Method == "" {
			return
		}
	}
}

// ask is the time of a request about nothing: what any answer costs.
func (e *editor) ask() time.Duration {
	start := time.Now()
	e.request("speed/nothing", map[string]any{})
	return time.Since(start)
}

// open is the time from opening a text to what was found in it.
func (e *editor) open(text string) time.Duration {
	start := time.Now()
	e.notify("textDocument/didOpen", map[string]any{"textDocument": map[string]any{"uri": file, "languageId": "crochet", "version": 1, "text": text}})
	e.found(1)
	return time.Since(start)
}

// edit is the time from a keystroke to what was found after it.
func (e *editor) edit(version, line, from, to int, text string) time.Duration {
	at := func(column int) map[string]any { return map[string]any{"line": line, "character": column} }
	start := time.Now()
	e.notify("textDocument/didChange", map[string]any{
		"textDocument":   map[string]any{"uri": file, "version": version},
		"contentChanges": []any{map[string]any{"range": map[string]any{"start": at(from), "end": at(to)}, "text": text}},
	})
	e.found(version)
	return time.Since(start)
}

// found waits for what was found in a version.
func (e *editor) found(version int) {
	for m := range e.from {
		if m.Method == "textDocument/publishDiagnostics" && m.Params.Version == version {
			return
		}
	}
}

func (e *editor) close() {
	e.request("shutdown", nil)
	e.notify("exit", nil)
	e.to.Close()
}
