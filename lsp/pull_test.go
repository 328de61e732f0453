package lsp

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/uri"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// pulled is a report on one document.
type pulled struct {
	Kind     string `json:"kind"`
	URI      string `json:"uri"`
	Version  *int   `json:"version"`
	ResultID string `json:"resultId"`
	Items    []struct {
		Code            string `json:"code"`
		Tags            []int  `json:"tags"`
		CodeDescription *struct{ Href string }
	} `json:"items"`
}

func (p pulled) codes() string {
	var out []string
	for _, d := range p.Items {
		out = append(out, d.Code)
	}
	return strings.Join(out, " ")
}

var pulling = object{"diagnostic": object{}, "publishDiagnostics": object{"tagSupport": object{"valueSet": []int{1}}, "codeDescriptionSupport": true}}

func TestDiagnosticsArePulled(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(object{"textDocument": pulling}, nil)
		c.open(file, 1, cup("13"))
		var first, second, third pulled
		c.call("textDocument/diagnostic", naming(file), &first)
		assert.Equal(t, "full", first.Kind)
		assert.Equal(t, "count-mismatch", first.codes())
		assert.Nil(t, first.Items[0].CodeDescription, "the client shows no pages of the server")

		params := naming(file)
		params["previousResultId"] = first.ResultID
		c.call("textDocument/diagnostic", params, &second)
		assert.Equal(t, "unchanged", second.Kind)
		assert.Equal(t, first.ResultID, second.ResultID)

		c.change(file, 2, whole(cup("12")))
		c.call("textDocument/diagnostic", params, &third)
		assert.Equal(t, "full", third.Kind)
		assert.NotNil(t, third.Items)
		assert.Empty(t, third.codes())
		c.mu.Lock()
		defer c.mu.Unlock()
		for _, m := range c.inbox {
			assert.NotEqual(t, "textDocument/publishDiagnostics", m.Method, "who pulls is not pushed to")
		}
	})
}

func TestRulePages(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(object{"textDocument": pulling, "workspace": object{"textDocumentContent": object{}}}, nil)
		c.open(file, 1, cup("13"))
		var report pulled
		c.call("textDocument/diagnostic", naming(file), &report)
		require.Len(t, report.Items, 1)
		var page struct{ Text string }
		c.call("workspace/textDocumentContent", object{"uri": report.Items[0].CodeDescription.Href}, &page)
		assert.Contains(t, page.Text, "count-mismatch")
		assert.Equal(t, -32602, c.refused("workspace/textDocumentContent", object{"uri": "stitchproof:///rules/wren.txt"}))
	})
}

func TestWhatIsNotNeededIsTagged(t *testing.T) {
	c := inProcess(t, chosen(lint.Finding{Rule: "yarn-unused", Span: source.Span{End: 1}, Message: "A is not used"}, lint.Finding{Rule: "row-short", Message: "short"}))
	c.initialize(object{"textDocument": pulling}, nil)
	c.open(file, 1, "Yarn A: bark\n")
	var report pulled
	c.call("textDocument/diagnostic", naming(file), &report)
	require.Len(t, report.Items, 2)
	assert.Equal(t, []int{1}, report.Items[0].Tags)
	assert.Empty(t, report.Items[1].Tags)
}

// hedgeFolder is a folder with patterns, one of them in what is no part of it, and a text that is none.
func hedgeFolder(t *testing.T) (string, func(name string) string) {
	t.Helper()
	folder := t.TempDir()
	for name, text := range map[string]string{
		"acorn.crochet": cup("13"), "spring/wren.crochet": strings.Replace(cup("12"), "Piece: Cup", "Piece: Wren nest", 1),
		".git/leaf.crochet": cup("14"), "notes.txt": "Piece: Nothing\n",
	} {
		require.NoError(t, os.MkdirAll(filepath.Dir(filepath.Join(folder, name)), 0o755))
		require.NoError(t, os.WriteFile(filepath.Join(folder, name), []byte(text), 0o600))
	}
	return folder, func(name string) string { return string(uri.File(filepath.Join(folder, name))) }
}

// enter begins a session in a folder.
func (c *client) enter(folder string, capabilities object) {
	c.t.Helper()
	c.call("initialize", object{
		"processId": nil, "rootUri": nil, "capabilities": capabilities,
		"workspaceFolders": []object{{"uri": string(uri.File(folder)), "name": "hedge"}},
	}, nil)
	c.notify("initialized", object{})
}

// reports asks for those of the whole workspace, by address.
func (c *client) reports(previous []object, token any) map[string]pulled {
	c.t.Helper()
	if previous == nil {
		previous = []object{}
	}
	params := object{"previousResultIds": previous}
	if token != nil {
		params["workDoneToken"] = token
	}
	var report struct{ Items []pulled }
	c.call("workspace/diagnostic", params, &report)
	out := map[string]pulled{}
	for _, p := range report.Items {
		out[p.URI] = p
	}
	return out
}

func TestWorkspaceDiagnostics(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		folder, at := hedgeFolder(t)
		c.enter(folder, object{"textDocument": pulling})
		all := c.reports(nil, nil)
		require.Len(t, all, 2)
		assert.Equal(t, "count-mismatch", all[at("acorn.crochet")].codes())
		assert.Empty(t, all[at("spring/wren.crochet")].codes())
		assert.Nil(t, all[at("acorn.crochet")].Version)

		// what is open goes before what is on the disk
		c.open(at("acorn.crochet"), 5, cup("12"))
		all = c.reports([]object{
			{"uri": at("acorn.crochet"), "value": all[at("acorn.crochet")].ResultID},
			{"uri": at("spring/wren.crochet"), "value": all[at("spring/wren.crochet")].ResultID},
			{"uri": at("gone.crochet"), "value": "7"},
		}, "token")
		assert.Equal(t, "full", all[at("acorn.crochet")].Kind)
		assert.Empty(t, all[at("acorn.crochet")].codes())
		assert.Equal(t, 5, *all[at("acorn.crochet")].Version)
		assert.Equal(t, "unchanged", all[at("spring/wren.crochet")].Kind)
		assert.Equal(t, "full", all[at("gone.crochet")].Kind)
		var kinds []string
		for range 4 {
			m := c.await("progress", func(m message) bool { return m.Method == "$/progress" })
			var p struct{ Value struct{ Kind string } }
			require.NoError(t, json.Unmarshal(m.Params, &p))
			kinds = append(kinds, p.Value.Kind)
		}
		assert.Equal(t, []string{"begin", "report", "report", "end"}, kinds)

		c.notify("workspace/didChangeWorkspaceFolders", object{"event": object{"added": []any{}, "removed": []object{{"uri": string(uri.File(folder)), "name": "hedge"}}}})
		assert.Len(t, c.reports(nil, nil), 1, "only what is open is left")
	})
}

func TestWorkspaceSymbols(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		folder, at := hedgeFolder(t)
		c.enter(folder, object{})
		var found []struct {
			Name, ContainerName string
			Location            struct{ URI string }
		}
		c.call("workspace/symbol", object{"query": "wnest"}, &found)
		require.Len(t, found, 1)
		assert.Equal(t, "Wren nest", found[0].Name)
		assert.Equal(t, "Acorn cup", found[0].ContainerName)
		assert.Equal(t, at("spring/wren.crochet"), found[0].Location.URI)
		c.call("workspace/symbol", object{"query": ""}, &found)
		assert.Len(t, found, 2)
	})
}

func TestFilesAreWatched(t *testing.T) {
	c := inProcess(t, lint.Analyze)
	folder, _ := hedgeFolder(t)
	c.enter(folder, object{"textDocument": pulling, "workspace": object{
		"didChangeWatchedFiles": object{"dynamicRegistration": true}, "diagnostics": object{"refreshSupport": true},
	}})
	m := c.asked("client/registerCapability", nil)
	assert.Contains(t, string(m.Params), "**/*.crochet")
	c.asked("workspace/diagnostic/refresh", nil)
	c.notify("workspace/didChangeWatchedFiles", object{"changes": []any{}})
	c.asked("workspace/diagnostic/refresh", nil)
	assert.NoError(t, c.leave())
}

// An answer about a text that is no more is refused to a client that then asks
// again by itself, and given to any other.
func TestAnswersAboutAnOldText(t *testing.T) {
	for _, retries := range []bool{true, false} {
		going := make(chan struct{})
		c := inProcess(t, func(text *source.Text) *lint.Analysis {
			if text.String() == "ch 5." {
				<-going
			}
			return lint.Analyze(text)
		})
		capabilities := object{}
		if retries {
			capabilities["general"] = object{"staleRequestSupport": object{"cancel": true, "retryOnContentModified": []string{"textDocument/semanticTokens/full"}}}
		}
		c.initialize(capabilities, nil)
		c.open(file, 1, "ch 5.")
		id := c.request("textDocument/semanticTokens/full", naming(file))
		c.change(file, 2, whole("ch 6."))
		c.call("textDocument/documentSymbol", naming(file), nil)
		close(going)
		if m := c.answer(id); retries {
			require.NotNil(t, m.Error)
			assert.Equal(t, -32801, m.Error.Code)
		} else {
			assert.Nil(t, m.Error)
		}
	}
}
