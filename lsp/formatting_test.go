package lsp

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"go.lsp.dev/protocol"
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
