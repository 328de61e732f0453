package lsp

import (
	"context"
	"fmt"
	"io"
	"log"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// What is known is kept of the documents that were asked about last, and found out again
// of the others.
func TestRecent(t *testing.T) {
	analyses := 0
	s := newServer(protocol.ClientDispatcher(nil), log.New(io.Discard, "", 0), func(_ lint.Settings, _ *lint.Analysis, text *source.Text) *lint.Analysis {
		analyses++
		return lint.Analyze(text)
	})
	ask := func(n int) string {
		t.Helper()
		d := s.document(uri.URI(fmt.Sprintf("file:///hedge/%d.crochet", n)))
		k, err := d.known(context.Background())
		require.NoError(t, err)
		v := s.view(d, k)
		v.names()
		return v.Text.String()
	}
	note := strings.Repeat("Oak leaves lie below the hedge in autumn.\n", 500)
	most := mostKept / (len(note) + 20)
	text := func(n int) string { return fmt.Sprintf("Pattern: Oak leaf %02d\n\n%s", n, note) }
	for n := range most + 3 {
		key := uri.URI(fmt.Sprintf("file:///hedge/%d.crochet", n))
		s.keep(key, s.newDocument(key, 1, source.New(text(n)), &memory{}))
		assert.Equal(t, text(n), ask(n))
	}
	assert.Equal(t, most+3, analyses)
	ask(most + 2)
	ask(4)
	assert.Equal(t, most+3, analyses, "what was asked about last is known")
	assert.Equal(t, text(0), ask(0))
	assert.Equal(t, most+4, analyses, "what was asked about long ago is found out again")
	s.keep("file:///hedge/0.crochet", nil)
	assert.NotContains(t, s.recent.list, s.document("file:///hedge/0.crochet"))
	kept := 0
	for _, d := range s.recent.list {
		kept += d.text.Len()
	}
	assert.LessOrEqual(t, kept, mostKept)
}

// A document of any length is known while it is the latest.
func TestRecentOfAnyLength(t *testing.T) {
	var r recent
	for n := range 3 {
		d := &document{text: source.New(strings.Repeat("moss\n", mostKept)), used: r.use, memory: &memory{}, version: int32(n)}
		d.analyze = func(text *source.Text) (*knowledge, error) { return knowledgeOf(&lint.Analysis{Text: text}), nil }
		_, err := d.known(context.Background())
		require.NoError(t, err)
		require.Len(t, r.list, 1)
		assert.Same(t, d, r.list[0])
	}
}
