package lsp

import (
	"context"
	"encoding/json"
	"fmt"
	"io"
	"io/fs"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
	"stitchproof/lint"
	"stitchproof/lint/inputs"
)

// After what is no frame, the next one is found.
func TestBrokenFrames(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		for name, broken := range map[string]string{
			"words":                      "hawthorn\r\n\r\n",
			"no length":                  "Content-Type: x\r\n\r\n",
			"a length that is no number": "Content-Length: haw\r\n\r\n",
			"a length of nothing":        "Content-Length: 0\r\n\r\n",
			"a length below nothing":     "Content-Length: -5\r\n\r\n",
			"a length beyond reason":     "Content-Length: 99999999999999999999\r\n\r\n",
			"a length of a gigabyte":     "Content-Length: 1073741824\r\n\r\n",
			"a message too long for it":  "Content-Length: 10\r\n\r\n" + `{"jsonrpc":"2.0","method":"hedgerow/changed"}`,
			"no line end":                strings.Repeat("oak ", 100_000),
			"a stray body":               `{"jsonrpc":"2.0","method":"hedgerow/changed"}` + "\r\n\r\n",
			"zeros":                      "\x00\x00\x00\r\n\r\n",
		} {
			_, err := io.WriteString(c.in, broken)
			require.NoError(t, err)
			id := c.request("textDocument/documentSymbol", naming(file))
			m := c.await("a refusal after "+name, func(m message) bool { return m.Error != nil && string(m.ID) == "null" })
			assert.Equal(t, -32700, m.Error.Code, name)
			assert.Equal(t, -32602, c.answer(id).Error.Code, name)
		}
		assert.NoError(t, c.leave())
	})
}

// What a header claims takes no memory before it comes.
func TestClaimedLengthTakesNothing(t *testing.T) {
	in := io.NopCloser(strings.NewReader(fmt.Sprintf("Content-Length: %d\r\n\r\n{", maxMessage)))
	f := newFrames(pipe{in, nopCloser{io.Discard}}, nil)
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	_, _, err := f.Read(context.Background())
	runtime.ReadMemStats(&after)
	assert.ErrorIs(t, err, io.ErrUnexpectedEOF)
	assert.Less(t, after.TotalAlloc-before.TotalAlloc, uint64(1<<20))
}

// gate is a stream that can be held back.
type gate struct {
	io.Reader
	mu sync.Mutex
}

func (g *gate) Read(p []byte) (int, error) {
	n, err := g.Reader.Read(p)
	g.mu.Lock() // what was read stays here while the gate is shut
	defer g.mu.Unlock()
	return n, err
}

// A client that does not read while it sends ten thousand changes is told of the
// last, and the text is looked at a few times in all.
func TestFloodForASlowReader(t *testing.T) {
	var looks atomic.Int32
	serverIn, clientOut := io.Pipe()
	clientIn, serverOut := io.Pipe()
	shut := &gate{Reader: clientIn}
	done := make(chan error, 1)
	slow := make(chan struct{})
	go func() {
		done <- serve(context.Background(), pipe{serverIn, serverOut}, io.Discard, func(_ lint.Settings, _ *lint.Analysis, text *source.Text) *lint.Analysis {
			<-slow
			looks.Add(1)
			return spelled(text)
		}, "")
	}()
	c := connect(t, clientOut, shut, func() error { return within(t, done) })
	c.initialize(nil, nil)
	shut.mu.Lock()
	c.open(file, 1, "ch 5.")
	const flood = 10_000
	for version := 2; version <= flood; version++ {
		c.change(file, version, span(place(0, 3), place(0, 4), fmt.Sprint(version%10)))
	}
	asked := c.request("textDocument/documentSymbol", naming(file))
	close(slow)
	shut.mu.Unlock()
	assert.Contains(t, string(c.answer(asked).Result), "ch 0.")
	c.await("findings of the last version", func(m message) bool {
		var p struct{ Version int }
		return m.Method == "textDocument/publishDiagnostics" && json.Unmarshal(m.Params, &p) == nil && p.Version == flood
	})
	assert.LessOrEqual(t, looks.Load(), int32(4), "of ten thousand versions a few are looked at")
	assert.NoError(t, c.leave())
}

// Versions may skip and go back: what came last is what holds.
func TestVersionsSkip(t *testing.T) {
	c := inProcess(t, spelled)
	c.initialize(nil, nil)
	c.open(file, 5, "ch 5.")
	for _, version := range []int{6, 900, 7, 7, -3, 2147483647} {
		c.change(file, version, whole(fmt.Sprintf("ch %d.", version)))
		assert.Equal(t, fmt.Sprintf("ch %d.", version), seen(c, file))
	}
	c.open(file, 1, "ch 1.") // opened again without having been closed
	assert.Equal(t, "ch 1.", seen(c, file))
}

// A text that breaks the reading down costs the answers about it and no other.
func TestPanicsCostOneAnswer(t *testing.T) {
	c := inProcess(t, func(text *source.Text) *lint.Analysis {
		if strings.Contains(text.String(), "thorn") {
			panic("a thorn")
		}
		a := spelled(text)
		if strings.Contains(text.String(), "bramble") {
			a.Fabric.Pieces[0].Tree = nil // what a feature breaks down over
		}
		return a
	})
	c.initialize(nil, nil)
	for _, text := range []string{"thorn", "bramble"} {
		c.open(file, 1, text)
		c.refused("textDocument/documentSymbol", naming(file))
		c.change(file, 2, whole("acorn"))
		assert.Equal(t, "acorn", seen(c, file))
	}
	assert.NoError(t, c.leave())
}

// What the command line does not check is not checked here.
func TestWhatIsNoPattern(t *testing.T) {
	c := inProcess(t, func(*source.Text) *lint.Analysis { panic("it was looked at") })
	c.initialize(nil, nil)
	for _, text := range []string{strings.Repeat("x", inputs.MaxSize+1), "Row 1:\x00 sc"} {
		c.open(file, 1, text)
		list := c.diagnostics().Diagnostics
		require.Len(t, list, 1)
		assert.Equal(t, protocol.String(lint.FileUnreadable), list[0].Code)
		c.close(file)
		c.diagnostics()
	}
}

// A server whose parent is gone goes too, although its input is still open.
func TestParentDies(t *testing.T) {
	parent := exec.Command("sleep", "60")
	if err := parent.Start(); err != nil {
		t.Skip("no process to be the parent: ", err)
	}
	c := spawned(t)
	m := c.answer(c.request("initialize", object{"processId": parent.Process.Pid, "rootUri": nil, "capabilities": object{}}))
	require.Nil(t, m.Error)
	require.NoError(t, parent.Process.Kill())
	_ = parent.Wait()
	assert.Error(t, c.wait(), "it did not ask to shut down")
}

// A parent that cannot be seen, as from within a container, is not missed.
func TestUnseenParent(t *testing.T) {
	gone := exec.Command("true")
	if err := gone.Run(); err != nil {
		t.Skip("no process to be the parent: ", err)
	}
	for _, id := range []int{gone.Process.Pid, 0, -1, 2147483647} {
		s := untold()
		s.followParent(context.Background(), new(int32(id)))
		select {
		case <-s.left:
			t.Errorf("process %d ended the session", id)
		case <-time.After(20 * time.Millisecond):
		}
	}
}

// listening is a socket that is served, and the way to it for a client.
func listening(t *testing.T, token string) func(t *testing.T) *client {
	t.Helper()
	socket, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	ctx, stop := context.WithCancel(context.Background())
	done := make(chan error, 1)
	go func() { done <- Listen(ctx, socket, token, io.Discard) }()
	t.Cleanup(func() {
		stop()
		assert.ErrorIs(t, within(t, done), context.Canceled)
	})
	return func(t *testing.T) *client {
		conn, err := net.Dial("tcp", socket.Addr().String())
		require.NoError(t, err)
		t.Cleanup(func() { _ = conn.Close() })
		return connect(t, conn, conn, func() error { return nil })
	}
}

func TestTwoClientsOfASocket(t *testing.T) {
	dial := listening(t, "hawthorn")
	one, two := dial(t), dial(t)
	for _, c := range []*client{one, two} {
		c.initialize(nil, object{"token": "hawthorn"})
	}
	one.open(file, 1, "Piece: Acorn\nWith A, ch 5.\n")
	two.open(file, 1, "Piece: Wren\nWith A, ch 5.\n")
	for c, name := range map[*client]string{one: "Acorn", two: "Wren"} {
		m := c.answer(c.request("textDocument/documentSymbol", naming(file)))
		assert.Contains(t, string(m.Result), name)
	}
	_ = one.in.Close() // without a word
	m := two.answer(two.request("textDocument/documentSymbol", naming(file)))
	assert.Contains(t, string(m.Result), "Wren", "the other is served on")
}

// Who has no token learns nothing; nor does a page in a browser that posts to the
// socket.
func TestSocketWantsTheToken(t *testing.T) {
	dial := listening(t, "hawthorn")
	for _, options := range []any{nil, object{}, object{"token": ""}, object{"token": "Hawthorn"}, object{"token": 3}, "hawthorn"} {
		c := dial(t)
		begin := object{"processId": nil, "rootUri": nil, "capabilities": object{}, "initializationOptions": options}
		assert.Equal(t, -32600, c.refused("initialize", begin), "%v", options)
		c.open(file, 1, "Piece: Acorn\nWith A, ch 5.\n")
		assert.Equal(t, -32002, c.refused("textDocument/documentSymbol", naming(file)))
	}
	c := dial(t)
	_, err := io.WriteString(c.in, "POST / HTTP/1.1\r\nHost: localhost\r\nOrigin: http://hedge.example\r\n\r\n")
	require.NoError(t, err)
	assert.Equal(t, -32002, c.refused("textDocument/documentSymbol", naming(file)))
}

func TestSocketIsOfThisMachine(t *testing.T) {
	socket, err := net.Listen("tcp", ":0")
	require.NoError(t, err)
	assert.ErrorIs(t, Listen(context.Background(), socket, "hawthorn", io.Discard), ErrNotLocal)
	_, err = socket.Accept()
	assert.ErrorIs(t, err, net.ErrClosed)
}

// Whatever is asked, and by whatever address, nothing on the disk changes, and
// what is read lies where the client pointed.
func TestNothingIsWritten(t *testing.T) {
	root := t.TempDir()
	hedge := filepath.Join(root, "hedge")
	require.NoError(t, os.MkdirAll(filepath.Join(hedge, "inner"), 0o755))
	for name, text := range map[string]string{
		"outside.txt": "a secret", "hedge/acorn.crochet": "Piece: Acorn\n// see ../outside.txt, inner/../../outside.txt, inner/leaf.txt\nRow 1: Ch 5,sc in 2nd ch from hook and in each ch across. (5 sc)\n",
		"hedge/inner/leaf.txt": "leaf", "outside.crochet": "Piece: Outside\nWith A, ch 5.\n",
	} {
		require.NoError(t, os.WriteFile(filepath.Join(root, name), []byte(text), 0o644))
	}
	before := tree(t, root)
	c := inProcessWith(t, lint.Settings.AnalyzeAfter)
	m := c.answer(c.request("initialize", object{"processId": nil, "capabilities": object{}, "rootUri": "file://" + filepath.ToSlash(hedge)}))
	require.Nil(t, m.Error)
	base := "file://" + filepath.ToSlash(hedge)
	for _, uri := range []string{base + "/acorn.crochet", base + "/../other.crochet", base + "/%2e%2e/other.crochet", base + "/%00.crochet", "file:///", "file:", "untitled:x", "stitchproof:/rules/../../other", "http://hedge.example/x"} {
		c.open(uri, 1, string(must(os.ReadFile(filepath.Join(hedge, "acorn.crochet")))))
		for method := range features {
			params := naming(uri)
			params["position"], params["newName"] = place(2, 9), "hip"
			params["range"] = span(place(0, 0), place(9, 0), "")["range"]
			params["context"] = object{"diagnostics": []any{}, "includeDeclaration": true}
			params["positions"], params["options"] = []any{place(2, 9)}, object{"tabSize": 2, "insertSpaces": true}
			m := c.answer(c.request(method, params))
			for _, secret := range []string{"a secret", "Outside"} {
				assert.NotContains(t, string(m.Result), secret, "%s of %s", method, uri)
			}
			if method == "textDocument/documentLink" && strings.HasSuffix(uri, "hedge/acorn.crochet") {
				assert.Contains(t, string(m.Result), "leaf.txt")
				assert.NotContains(t, string(m.Result), "outside.txt")
			}
		}
	}
	for _, method := range []string{"workspace/symbol", "workspace/diagnostic"} {
		m := c.answer(c.request(method, object{"query": "", "previousResultIds": []any{}}))
		assert.NotContains(t, string(m.Result), "Outside")
	}
	assert.NoError(t, c.leave())
	assert.Equal(t, before, tree(t, root))
}

func must(content []byte, err error) []byte {
	if err != nil {
		panic(err)
	}
	return content
}

// tree is all that lies in a folder.
func tree(t *testing.T, root string) map[string]string {
	t.Helper()
	out := map[string]string{}
	require.NoError(t, filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		content, err := os.ReadFile(path)
		out[path] = string(content)
		return err
	}))
	return out
}

// A hundred sessions, however they part, leave nothing running.
func TestNothingRunsOn(t *testing.T) {
	sessions := func(n int) {
		for i := range n {
			serverIn, clientOut := io.Pipe()
			clientIn, serverOut := io.Pipe()
			done := make(chan error, 1)
			go func() { done <- Serve(context.Background(), serverIn, serverOut, io.Discard) }()
			c := connect(t, clientOut, clientIn, func() error { return within(t, done) })
			m := c.answer(c.request("initialize", object{"processId": os.Getpid(), "rootUri": nil, "capabilities": object{"workspace": object{"configuration": true}}}))
			require.Nil(t, m.Error)
			c.notify("initialized", object{})
			c.open(file, 1, "Piece: Acorn\nWith A, ch 5.\n")
			switch i % 3 {
			case 0:
				_ = c.leave()
			case 1:
				c.send(object{"method": "exit"})
				_ = c.wait()
			default:
				_ = clientOut.Close()
				_ = c.wait()
			}
		}
	}
	sessions(3) // what starts once and stays
	before := runtime.NumGoroutine()
	sessions(100)
	for range 200 {
		if runtime.NumGoroutine() <= before+2 {
			return
		}
		time.Sleep(20 * time.Millisecond)
	}
	stacks := make([]byte, 1<<16)
	t.Errorf("%d things run on:\n%s", runtime.NumGoroutine()-before, stacks[:runtime.Stack(stacks, true)])
}
