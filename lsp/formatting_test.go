package lsp

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

const untidy = `Terms: US

Piece: Cup 🌰
Make a magic ring .
Rnd 1 :  6 sc in ring, place marker. (6 sc)
Rnd 2: 2 sc in each st around ,do not join. (12 sc)
`

func TestFormatting(t *testing.T) {
	first := protocol.TextEdit{Range: protocol.Range{Start: place(3, 0), End: place(3, 19)}, NewText: "Make a magic ring."}
	second := protocol.TextEdit{Range: protocol.Range{Start: place(4, 0), End: place(4, 43)}, NewText: "Rnd 1: 6 sc in ring, place marker. (6 sc)"}
	third := protocol.TextEdit{Range: protocol.Range{Start: place(5, 0), End: place(5, 51)}, NewText: "Rnd 2: 2 sc in each st around, do not join. (12 sc)"}
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		c.open(file, 1, untidy)
		options := object{"tabSize": 2, "insertSpaces": true}
		ask := func(method string, params object) (edits []protocol.TextEdit) {
			params["textDocument"], params["options"] = object{"uri": file}, options
			c.call("textDocument/"+method, params, &edits)
			return edits
		}
		assert.Equal(t, []protocol.TextEdit{first, second, third}, ask("formatting", object{}))
		in := protocol.Range{Start: place(4, 3), End: place(4, 9)}
		assert.Equal(t, []protocol.TextEdit{second}, ask("rangeFormatting", object{"range": in}))
		head := protocol.Range{Start: place(0, 0), End: place(3, 2)}
		assert.Equal(t, []protocol.TextEdit{first, second}, ask("rangesFormatting", object{"ranges": []protocol.Range{head, in}}))
	})
}

func TestFormattingOnType(t *testing.T) {
	const head = "Terms: US\n\nPiece: Cup\nRnd 1 :  6 sc in ring .\n"
	for text, want := range map[string]string{
		head + "Rnd 2 :  2 sc in each st around .\n|":                                        "Rnd 2: 2 sc in each st around.",
		head + "Rnd 2 :  2 sc in each st\n  around ,join .\n|\nRnd 3: Sc in each st around.": "Rnd 2: 2 sc in each st around, join.",
		head + "Rnd 2 :  2 sc in next 3 sts ,\n|sc in next 3 sts.\n":                         "",
		head + "Rnd 2: 2 sc in each st around.\n|":                                           "",
		"|Rnd 1 :  6 sc in ring .\n":                                                         "",
	} {
		c := inProcess(t, lint.Analyze)
		offer := c.initialize(nil, nil).Capabilities
		assert.Equal(t, "\n", offer.DocumentOnTypeFormattingProvider.FirstTriggerCharacter)
		plain, p := marked(t, strings.Replace(text, "|", "¦", 1), source.UTF16)
		c.open(file, 1, plain)
		params := at(file, p)
		params["ch"], params["options"] = "\n", object{"tabSize": 2, "insertSpaces": true}
		var edits []textEdit
		c.call("textDocument/onTypeFormatting", params, &edits)
		require.NotNil(t, edits, "an empty list is no null")
		if want == "" {
			assert.Empty(t, edits, text)
			continue
		}
		require.Len(t, edits, 1, text)
		assert.Equal(t, want, strings.Join(strings.Fields(edits[0].NewText), " "), text)
		assert.Less(t, edits[0].Range.End.Line, p.Line, "the cursor is left alone")
	}
}
