package lsp

import (
	"bufio"
	"bytes"
	"encoding/json"
	"flag"
	"fmt"
	"maps"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/uri"
)

var update = flag.Bool("update", false, "write what the server says in the recorded sessions anew")

// A recorded session is blocks of a sign and a method, and of JSON below it: what the
// client says (>), what the server says (<) and what it refuses with (!). Which of
// them are requests, answers and notifications follows from the protocol. In the
// client's JSON, "«…»" stands for what is known only as the session runs.
type said struct {
	before []string // blank lines and comments
	sign   string
	method string
	body   string // empty for none
}

var saidLine = regexp.MustCompile(`^([<>!]) (\S+)$`)

// sessionOf reads a recorded session.
func sessionOf(t *testing.T, path string) []said {
	t.Helper()
	content, err := os.ReadFile(path)
	require.NoError(t, err)
	var out []said
	before := []string{}
	for line := range strings.Lines(strings.ReplaceAll(string(content), "\r\n", "\n")) {
		line = strings.TrimSuffix(line, "\n")
		m := saidLine.FindStringSubmatch(line)
		switch {
		case m != nil:
			out, before = append(out, said{before: before, sign: m[1], method: m[2]}), nil
		case line == "" || strings.HasPrefix(line, "#"):
			before = append(before, line)
		default:
			require.True(t, len(out) > 0 && before == nil, "%s: %q is of no block", path, line)
			last := &out[len(out)-1]
			last.body = strings.TrimPrefix(last.body+"\n"+line, "\n")
		}
	}
	require.NotEmpty(t, out)
	return out
}

func (s said) String() string {
	lines := append(slices.Clone(s.before), s.sign+" "+s.method)
	if s.body != "" {
		lines = append(lines, s.body)
	}
	return strings.Join(lines, "\n") + "\n"
}

// pretty writes JSON so that a person can read it: what fits on a line stands on one,
// and so do lists of numbers.
func pretty(value any, indent string) string {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(value); err != nil {
		panic(err) // it was JSON
	}
	line := strings.TrimSpace(b.String())
	if len(indent)+len(line) <= 120 {
		return line
	}
	inner := indent + "  "
	var parts []string
	switch v := value.(type) {
	case []any:
		if !slices.ContainsFunc(v, func(v any) bool { return !isOf[json.Number](v) }) {
			return line
		}
		for _, item := range v {
			parts = append(parts, inner+pretty(item, inner))
		}
		return "[\n" + strings.Join(parts, ",\n") + "\n" + indent + "]"
	case object:
		for _, k := range slices.Sorted(maps.Keys(v)) {
			parts = append(parts, fmt.Sprintf("%s%q: %s", inner, k, pretty(v[k], inner)))
		}
		return "{\n" + strings.Join(parts, ",\n") + "\n" + indent + "}"
	}
	return line
}

// A writer's session with a client that can do much, and one with a client that can do
// little, over both of the program's ways: what the server says is what is recorded.
// -update writes the record; the headings of its blocks are written by hand.
func TestRecordedSessions(t *testing.T) {
	for _, path := range sessions(t) {
		t.Run(filepath.Base(path), func(t *testing.T) {
			for name, way := range map[string]func(*testing.T) (*client, string){
				"stdio": func(t *testing.T) (*client, string) { return spawned(t), "" }, "socket": spawnedSocket,
			} {
				t.Run(name, func(t *testing.T) {
					record := sessionOf(t, path)
					c, token := way(t)
					replayed(t, c, token, record)
					if !*update {
						return
					}
					var b strings.Builder
					for _, s := range record {
						b.WriteString(s.String())
					}
					require.NoError(t, os.WriteFile(path, []byte(b.String()), 0o600))
				})
			}
		})
	}
}

func sessions(t *testing.T) []string {
	t.Helper()
	paths, err := filepath.Glob("testdata/session.*.txt")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	return paths
}

// The client that can do much asks for all that is answered and tells all that is
// listened to.
func TestRecordedSessionIsComplete(t *testing.T) {
	var told []string
	for _, s := range sessionOf(t, "testdata/session.able.txt") {
		if s.sign == ">" {
			told = append(told, s.method)
		}
	}
	s := &server{}
	for _, known := range [][]string{
		slices.Collect(maps.Keys(features)), slices.Collect(maps.Keys(s.requests())), slices.Collect(maps.Keys(s.inlines())),
	} {
		assert.Subset(t, told, known)
	}
}

// What does not belong into a recorded answer is noticed wherever it is put, but for
// what the server keeps there for itself.
func TestThornsInAnswersAreNoticed(t *testing.T) {
	m := modelOf(t)
	tried := 0
	for _, path := range sessions(t) {
		for _, s := range sessionOf(t, path) {
			e := m.requests[s.method]
			if s.sign != "<" || !e.goes(toServer) {
				continue
			}
			value, err := decoded([]byte(s.body))
			require.NoError(t, err, s.method)
			require.Nil(t, m.misfit(e.Result, value, s.method))
			thorned(value, s.method, func(at string) {
				tried++
				assert.NotNil(t, m.misfit(e.Result, value, ""), at)
			})
		}
	}
	assert.NotZero(t, tried)
}

// thorned puts a thorn into each object of a value, and into the place of each thing
// in it, one after the other.
func thorned(value any, at string, look func(at string)) {
	thorn := object{"thorn": true}
	switch v := value.(type) {
	case object:
		v["thorn"] = true
		look(at)
		delete(v, "thorn")
		for _, name := range slices.Sorted(maps.Keys(v)) {
			kept := v[name]
			if name == "data" && isOf[object](kept) {
				continue // anything may be there
			}
			v[name] = thorn
			look(at + "/" + name)
			v[name] = kept
			thorned(kept, at+"/"+name, look)
		}
	case []any:
		for i, kept := range v {
			v[i] = thorn
			look(at + "/" + strconv.Itoa(i))
			v[i] = kept
			thorned(kept, at+"/"+strconv.Itoa(i), look)
		}
	}
}

// spawnedSocket serves over a socket in a process of its own, which says where it
// listens and for which token.
func spawnedSocket(t *testing.T) (*client, string) {
	t.Helper()
	command := exec.Command(binary(t), "lsp", "--listen", "127.0.0.1:0")
	command.Env = slices.DeleteFunc(os.Environ(), func(v string) bool { return strings.HasPrefix(v, "STITCHPROOF_TOKEN=") })
	out, err := command.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, command.Start())
	t.Cleanup(func() {
		_ = command.Process.Kill()
		_ = command.Wait()
	})
	var address, token string
	lines := bufio.NewReader(out)
	_, err = fmt.Fscanf(lines, "listening on %s\ntoken %s\n", &address, &token)
	require.NoError(t, err)
	conn, err := net.Dial("tcp", address)
	require.NoError(t, err)
	return connect(t, conn, conn, func() error { return nil }), token
}

// replay is a session as it runs again.
type replay struct {
	t       *testing.T
	c       *client
	token   string
	folder  string                     // where the patterns lie, as an address
	asked   map[string]int             // the newest request of the client, by method
	asking  map[string]json.RawMessage // and the server's
	answers map[string]any             // the newest, by method
}

// recordedFolder is what the record calls the folder of the patterns.
const recordedFolder = "file:///hedge"

// replayed says again what the client said. What the server says then is held against
// the record or, to update it, put into it.
func replayed(t *testing.T, c *client, token string, record []said) {
	t.Helper()
	folder := t.TempDir()
	require.NoError(t, os.CopyFS(folder, os.DirFS("testdata/session.hedge")))
	r := &replay{t, c, token, string(uri.File(folder)), map[string]int{}, map[string]json.RawMessage{}, map[string]any{}}
	for i := range record {
		if s := &record[i]; s.sign == ">" {
			r.say(*s)
		} else {
			r.hear(s)
		}
	}
	assert.NoError(t, c.wait())
	c.untilEnd()
	assert.Empty(t, c.inbox, "the record has not all that the server said")
}

// say sends what the client says: a request, a notification or, where the server has
// asked by that method, an answer.
func (r *replay) say(s said) {
	r.t.Helper()
	_, request := r.c.ear.model.requests[s.method]
	fields := object{"jsonrpc": "2.0"}
	shape := r.c.ear.model.spoken(s.method, toServer, request)
	if id, answers := r.asking[s.method]; answers {
		fields["id"], fields["result"] = id, r.filled(s.body)
		shape = r.c.ear.model.answered(s.method)
		delete(r.asking, s.method)
	} else {
		fields["method"] = s.method
		if s.body != "" {
			fields["params"] = r.filled(s.body)
		}
		if request {
			r.c.next++
			r.asked[s.method], fields["id"] = r.c.next, r.c.next
		}
	}
	body, err := json.Marshal(fields)
	require.NoError(r.t, err, s.body)
	require.NotNil(r.t, shape, "no client says %s", s.method)
	value, err := decoded(body)
	require.NoError(r.t, err)
	require.Nil(r.t, r.c.ear.model.misfit(shape, value, ""), s.method)
	r.c.raw(string(body))
}

var gap = regexp.MustCompile(`"«([^»]+)»"`)

// filled is a body with what is known only now: the token, the process, the text of a
// pattern, and parts of earlier answers, which are named by method and JSON pointer.
func (r *replay) filled(body string) json.RawMessage {
	r.t.Helper()
	body = gap.ReplaceAllStringFunc(body, func(found string) string {
		name := gap.FindStringSubmatch(found)[1]
		switch {
		case name == "token":
			return pretty(r.token, "")
		case name == "process":
			return strconv.Itoa(os.Getpid())
		case strings.HasSuffix(name, ".crochet"):
			return pretty(string(must(os.ReadFile(filepath.Join("testdata/session.hedge", name)))), "")
		}
		method, pointer, _ := strings.Cut(name, " ")
		value, known := r.answers[method]
		require.True(r.t, known, "%s was not answered", method)
		return pretty(pointed(r.t, value, pointer), "")
	})
	return json.RawMessage(strings.ReplaceAll(body, recordedFolder, r.folder))
}

// pointed is what a JSON pointer leads to.
func pointed(t *testing.T, value any, pointer string) any {
	t.Helper()
	for _, step := range strings.Split(pointer, "/")[1:] {
		switch v := value.(type) {
		case object:
			require.Contains(t, v, step, pointer)
			value = v[step]
		case []any:
			i, err := strconv.Atoi(step)
			require.NoError(t, err, pointer)
			require.Less(t, i, len(v), pointer)
			value = v[i]
		default:
			require.Fail(t, "nothing is there", "%s in %v", pointer, value)
		}
	}
	return value
}

// hear waits for what the server says next by a method.
func (r *replay) hear(s *said) {
	r.t.Helper()
	var m message
	var content json.RawMessage
	if id, ok := r.asked[s.method]; ok {
		m = r.c.answer(id)
		content = m.Result
		if m.Error != nil {
			require.Equal(r.t, "!", s.sign, "%s was refused: %v", s.method, m.Error)
			content, _ = json.Marshal(m.Error) // it was JSON
		} else {
			require.Equal(r.t, "<", s.sign, "%s was not refused", s.method)
		}
		delete(r.asked, s.method)
	} else {
		m = r.c.await(s.method, func(m message) bool { return m.Method == s.method })
		content = m.Params
		if len(m.ID) > 0 {
			r.asking[s.method] = m.ID
		}
	}
	body := ""
	if len(content) > 0 {
		value, err := decoded([]byte(strings.ReplaceAll(string(content), r.folder, recordedFolder)))
		require.NoError(r.t, err)
		if result, ok := value.(object); ok && s.method == "initialize" {
			result["serverInfo"].(object)["version"] = "«version»"
		}
		r.answers[s.method] = value
		body = pretty(value, "")
	}
	if *update {
		s.body = body
		return
	}
	assert.Equal(r.t, s.body, body, s.method)
}
