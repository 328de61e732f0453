package lsp

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// Every feature is asked at every place of every example, sound and broken, whole
// and cut off in the middle. What comes back lies in the text and says something.
func TestEveryPlaceOfEveryExample(t *testing.T) {
	paths, err := filepath.Glob("../testdata/*/*.crochet")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, path := range paths {
		t.Run(filepath.Base(path), func(t *testing.T) {
			content, err := os.ReadFile(path)
			require.NoError(t, err)
			for _, text := range []string{string(content), string(content[:len(content)*2/3])} {
				v := viewOf(source.New(text))
				cards := 0
				for offset := range len(text) + 1 {
					h := hover(v, &protocol.HoverParams{TextDocumentPositionParams: protocol.TextDocumentPositionParams{Position: v.position(offset)}})
					if h == nil {
						continue
					}
					cards++
					s := v.span(*h.Range)
					if !s.Contains(offset) || strings.TrimSpace(h.Contents.(*protocol.MarkupContent).Value) == "" {
						t.Fatalf("at %d the hover is of %v: %v", offset, s, h.Contents)
					}
				}
				assert.NotZero(t, cards)
				for _, symbol := range documentSymbols(v, nil).(protocol.DocumentSymbolSlice) {
					checkSymbol(t, v, &symbol, source.Span{End: v.Text.Len()})
				}
				whole := v.rangeOf(source.Span{End: v.Text.Len()})
				for _, h := range inlayHints(v, &protocol.InlayHintParams{Range: whole}) {
					assert.NotEmpty(t, h.Label)
				}
				checkPlaces(t, v)
				painted := semanticTokens(v, nil).Data
				assert.NotEmpty(t, painted)
				assert.Equal(t, painted, semanticTokensRange(v, &protocol.SemanticTokensRangeParams{Range: whole}).Data)
				for _, d := range diagnostics(v) {
					assert.NotEmpty(t, d.Message)
				}
			}
		})
	}
}

func viewOf(text *source.Text) *view {
	return &view{
		knowledge: knowledgeOf(lint.Analyze(text)), converter: converter{text, source.UTF16}, uri: file,
		can: abilities{hierarchy: true, markdown: true, related: true}, hints: defaults.hints, lenses: true,
		memory: &memory{},
	}
}

func checkSymbol(t *testing.T, v *view, s *protocol.DocumentSymbol, within source.Span) {
	t.Helper()
	all, head := v.span(s.Range), v.span(s.SelectionRange)
	assert.NotEmpty(t, strings.TrimSpace(s.Name))
	assert.True(t, within.Covers(all), "%s: %v is not within %v", s.Name, all, within)
	assert.True(t, all.Covers(head), "%s: %v is not within %v", s.Name, head, all)
	for i := range s.Children {
		checkSymbol(t, v, &s.Children[i], all)
	}
}

// checkPlaces asks at every name, and at every seventh place besides.
func checkPlaces(t *testing.T, v *view) {
	t.Helper()
	text := source.Span{End: v.Text.Len()}
	for offset := range v.Text.Len() + 1 {
		if name, _ := v.names().At(offset); name == nil && offset%7 != 0 {
			continue
		}
		place := protocol.TextDocumentPositionParams{Position: v.position(offset)}
		if help := signatureHelp(v, &protocol.SignatureHelpParams{TextDocumentPositionParams: place}); help != nil {
			assert.Contains(t, help.Signatures[0].Label, string(help.Signatures[0].Parameters[1].Label.(protocol.String)))
		}
		from, to := v.origin(offset)
		for _, s := range to {
			assert.True(t, text.Covers(s) && !s.Empty(), "at %d: %v leads to %v", offset, from, s)
		}
		nested := v.around(offset)
		for i, s := range nested {
			assert.True(t, s.Start <= offset && offset <= s.End && (i == 0 || nested[i-1].Covers(s)), "at %d: %v", offset, nested)
		}
	}
	for share := range 3 {
		offset := v.Text.Len() * (3*share + 2) / 10
		at := protocol.TextDocumentPositionParams{Position: v.position(offset)}
		for _, item := range completion(v, &protocol.CompletionParams{TextDocumentPositionParams: at}).Items {
			edit := item.TextEdit.(*protocol.TextEdit)
			assert.True(t, v.span(edit.Range).End == v.offset(at.Position) && edit.Range.Start.Line == edit.Range.End.Line && item.Label != "")
		}
	}
	for _, c := range documentColor(v, nil) {
		label := colorPresentation(v, &protocol.ColorPresentationParams{Range: c.Range})[0].Label
		assert.True(t, label != "" && label == strings.TrimSpace(label))
	}
	for _, l := range codeLens(v, nil) {
		assert.Contains(t, l.Command.Title, "total")
	}
	for _, f := range foldingRanges(v, nil) {
		assert.Less(t, f.StartLine, f.EndLine)
		assert.Less(t, int(f.EndLine), v.Text.Lines())
	}
}
