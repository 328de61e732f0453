package main

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"os/exec"
	"strconv"
	"strings"
	"time"
)

// editor is a client of a language server, which runs as an editor runs it: a program
// of its own, over pipes.
type editor struct {
	server *exec.Cmd
	to     io.WriteCloser
	from   chan message
	last   int // request
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

func newEditor(program string) (*editor, error) {
	server := exec.Command(program, "lsp")
	to, err := server.StdinPipe()
	if err != nil {
		return nil, err
	}
	from, err := server.StdoutPipe()
	if err != nil {
		return nil, err
	}
	if err := server.Start(); err != nil {
		return nil, err
	}
	e := &editor{server: server, to: to, from: make(chan message, 64)}
	go e.listen(bufio.NewReader(from))
	e.request("initialize", map[string]any{"processId": nil, "rootUri": nil, "capabilities": map[string]any{}})
	e.notify("initialized", map[string]any{})
	return e, nil
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
	panic(gone)
}

// gone is why nothing is measured any more: the time of what never came is none.
const gone = "the server left before it answered"

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
	panic(gone)
}

func (e *editor) close() {
	e.request("shutdown", nil)
	e.notify("exit", nil)
	e.to.Close()
	e.server.Wait()
}

// memory is what the server holds of the machine's memory, in MB; 0 where the system
// does not say.
func (e *editor) memory() float64 {
	status, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", e.server.Process.Pid))
	if err != nil {
		return 0
	}
	for line := range strings.Lines(string(status)) {
		if fields := strings.Fields(line); len(fields) > 1 && fields[0] == "VmRSS:" {
			kilobytes, _ := strconv.ParseFloat(fields[1], 64)
			return kilobytes / 1000
		}
	}
	return 0
}
