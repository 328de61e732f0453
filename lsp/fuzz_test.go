package lsp

import (
	"bufio"
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"log"
	"net/textproto"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// mostFuzzed bounds the texts that are edited while fuzzing.
const mostFuzzed = 1_000

// seeds are the heads of some of the examples: each is tried in every run of the
// tests.
func seeds(f *testing.F) []string {
	paths, err := filepath.Glob("../testdata/*/*.crochet")
	require.NoError(f, err)
	require.NotEmpty(f, paths)
	var out []string
	for i := 0; i < len(paths); i += 20 {
		content, err := os.ReadFile(paths[i])
		require.NoError(f, err)
		out = append(out, string(content[:min(len(content), mostFuzzed)]))
	}
	return out
}

// untold is a server whose client is told nothing.
func untold() *server {
	s := newServer(protocol.ClientDispatcher(nil), log.New(io.Discard, "", 0), lint.Settings.AnalyzeAfter)
	s.can.encoding = source.UTF16
	return s
}

// FuzzEdits edits a document: three bytes of the script say where from, how much
// and which words go there, each change being made on what the last one left.
// What is then known of the document is what is known of one opened afresh.
func FuzzEdits(f *testing.F) {
	for i, text := range seeds(f) {
		f.Add(text, []byte{byte(7 * i), 3, byte(i), 200, 0, 5, byte(i), 40, 2})
	}
	words := []string{"", "s", " ", ",", "1", "sc", "🌿", "\n", "\r\n", "é", "*", "\nRow 2: ", "\nPiece: Hip\n", "Special stitches\n", "// ", "dc in next st", "(", "]"}
	f.Fuzz(func(t *testing.T, text string, script []byte) {
		if len(text) > mostFuzzed || len(script) > 60 || !utf8.ValidString(text) {
			return // the protocol's texts are Unicode
		}
		s := untold()
		opened(t, s, file, text)
		for version := 1; len(script) >= 3; script = script[3:] {
			whole := converter{source.New(text), source.UTF16}
			start := whole.offset(whole.position(int(script[0]) * len(text) / 255))
			end := whole.offset(whole.position(min(start+int(script[1]), len(text))))
			with := words[int(script[2])%len(words)]
			change := span(whole.position(start), whole.position(end), with)
			told(t, s, "textDocument/didChange", object{
				"textDocument": object{"uri": file, "version": version}, "contentChanges": []any{change},
			})
			// the document is looked at on the way, as an editor does
			if version++; version%2 == 0 {
				known(t, s)
			}
			text = text[:start] + with + text[end:]
		}
		fresh := untold()
		opened(t, fresh, file, text)
		if is, was := known(t, s), known(t, fresh); is != was {
			t.Fatalf("edited, it is\n%s\nopened, it is\n%s", is, was)
		}
	})
}

func opened(t *testing.T, s *server, uri, text string) {
	t.Helper()
	told(t, s, "textDocument/didOpen", object{"textDocument": object{"uri": uri, "languageId": "crochet", "version": 0, "text": text}})
}

// told has the server take a message, outside any stream.
func told(t *testing.T, s *server, method string, params object) {
	t.Helper()
	raw, err := json.Marshal(params)
	require.NoError(t, err)
	_, err = s.inlines()[method](context.Background(), raw)
	require.NoError(t, err)
}

// known is what a server knows of the file: its text, what is found in it and
// what is shown beside it.
func known(t *testing.T, s *server) string {
	t.Helper()
	d := s.document(file)
	analysis, err := d.known(context.Background())
	require.NoError(t, err)
	v := s.view(d, analysis)
	all, err := protocol.Marshal(struct {
		Text     string
		Findings []protocol.Diagnostic
		Hints    []protocol.InlayHint
		Tokens   []uint32
		Symbols  any
	}{
		v.Text.String(), diagnostics(v), inlayHints(v, &protocol.InlayHintParams{Range: v.rangeOf(source.Span{End: v.Text.Len()})}),
		semanticTokens(v, nil).Data, documentSymbols(v, nil),
	})
	require.NoError(t, err)
	return string(all)
}

// FuzzMessages sends a server any stream, or any messages in sound frames, one a
// line. It ends when the stream does, and all that it says is sound.
func FuzzMessages(f *testing.F) {
	begin := `{"jsonrpc":"2.0","id":1,"method":"initialize","params":{"processId":null,"rootUri":null,"capabilities":{}}}`
	open := `{"jsonrpc":"2.0","method":"textDocument/didOpen","params":{"textDocument":{"uri":"file:///hedgerow/acorn.crochet","languageId":"crochet","version":1,"text":"Piece: Acorn\nRow 1: Ch 5, sc in 2nd ch from hook and in each ch across.\n"}}}`
	change := `{"jsonrpc":"2.0","method":"textDocument/didChange","params":{"textDocument":{"uri":"file:///hedgerow/acorn.crochet","version":2},"contentChanges":[{"range":{"start":{"line":1,"character":10},"end":{"line":1,"character":11}},"text":"9"}]}}`
	ask := `{"jsonrpc":"2.0","id":%d,"method":"%s","params":{"textDocument":{"uri":"file:///hedgerow/acorn.crochet"},"position":{"line":1,"character":9},"range":{"start":{"line":0,"character":0},"end":{"line":9,"character":0}},"context":{"diagnostics":[],"includeDeclaration":true},"positions":[{"line":1,"character":9}],"newName":"hip","options":{"tabSize":2,"insertSpaces":true}}}`
	end := `{"jsonrpc":"2.0","id":99,"method":"shutdown"}` + "\n" + `{"jsonrpc":"2.0","method":"exit"}`
	id := 2
	for method := range features {
		script := strings.Join([]string{begin, open, change, fmt.Sprintf(ask, id, method), end}, "\n")
		f.Add([]byte(script), true)
		f.Add([]byte(framed(script)), false)
		id++
	}
	f.Add([]byte("Content-Length: 2\r\n\r\n{}Content-Length: x\r\n\r\n{}hawthorn\r\n\r\n"+framed(begin+"\n"+end)), false)
	f.Fuzz(func(t *testing.T, script []byte, inFrames bool) {
		if len(script) > 4*mostFuzzed {
			return
		}
		stream := string(script)
		if inFrames {
			stream = framed(stream)
		}
		said, err := served(t, stream)
		if err != nil && !errors.Is(err, ErrNoShutdown) {
			t.Fatalf("the server ended with %v", err)
		}
		sound(t, said)
	})
}

// framed puts each line of a script in a frame of its own.
func framed(script string) string {
	var b strings.Builder
	for line := range strings.Lines(script) {
		if line = strings.TrimSuffix(line, "\n"); line != "" {
			fmt.Fprintf(&b, "Content-Length: %d\r\n\r\n%s", len(line), line)
		}
	}
	return b.String()
}

// served is what a server says to a stream of messages.
func served(t *testing.T, stream string) ([]byte, error) {
	t.Helper()
	var said bytes.Buffer
	done := make(chan error, 1)
	go func() {
		done <- serve(context.Background(), pipe{io.NopCloser(strings.NewReader(stream)), nopCloser{&said}}, io.Discard, lint.Settings.AnalyzeAfter, "")
	}()
	select {
	case err := <-done:
		return said.Bytes(), err
	case <-time.After(patience / 3):
		t.Fatalf("the server did not end with the stream")
		return nil, nil
	}
}

// sound holds what a server said to the protocol: whole frames, each with one
// message, and no answer given twice.
func sound(t *testing.T, said []byte) {
	t.Helper()
	in := bufio.NewReader(bytes.NewReader(said))
	for {
		header, err := textproto.NewReader(in).ReadMIMEHeader()
		if errors.Is(err, io.EOF) && len(header) == 0 {
			return
		}
		require.NoError(t, err)
		length, err := strconv.Atoi(header.Get("Content-Length"))
		require.NoError(t, err)
		body := make([]byte, length)
		_, err = io.ReadFull(in, body)
		require.NoError(t, err)
		var m message
		require.NoError(t, json.Unmarshal(body, &m), "%s", body)
		require.True(t, m.Method != "" || m.ID != nil, "%s", body)
	}
}

type nopCloser struct{ io.Writer }

func (nopCloser) Close() error { return nil }
