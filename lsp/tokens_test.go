package lsp

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

type tokens struct {
	ResultID string   `json:"resultId"`
	Data     []uint32 `json:"data"`
	Edits    []struct {
		Start       int      `json:"start"`
		DeleteCount int      `json:"deleteCount"`
		Data        []uint32 `json:"data"`
	} `json:"edits"`
}

// shown writes tokens out with the text that each lies over.
func shown(t *testing.T, text string, e source.Encoding, l protocol.SemanticTokensLegend, data []uint32) []string {
	t.Helper()
	require.Zero(t, len(data)%5)
	converter := converter{source.New(text), e}
	var out []string
	var at protocol.Position
	for token := range slices.Chunk(data, 5) {
		if at.Line += token[0]; token[0] > 0 {
			at.Character = 0
		}
		at.Character += token[1]
		end := protocol.Position{Line: at.Line, Character: at.Character + token[2]}
		s := fmt.Sprintf("%s %s", l.TokenTypes[token[3]], converter.text.Slice(converter.span(protocol.Range{Start: at, End: end})))
		for i, m := range l.TokenModifiers {
			if token[4]>>i&1 != 0 {
				s += " " + m
			}
		}
		out = append(out, s)
	}
	return out
}

const nestRound = "Pattern: Nest\n\nPiece: 🌰 Egg\nRnd 1: 6 sc in magic ring, wibble it. (6 sc)\n"

var nestTokens = strings.Split(`property Pattern
string Nest
class Egg declaration
method Rnd 1 declaration
number 6
function sc defaultLibrary
parameter in
parameter magic ring
enumMember (6 sc)`, "\n")

func TestSemanticTokens(t *testing.T) {
	for _, e := range []source.Encoding{source.UTF8, source.UTF16, source.UTF32} {
		t.Run(e.String(), func(t *testing.T) {
			bothWays(t, func(t *testing.T, c *client) {
				offer := c.initialize(object{"general": object{"positionEncodings": []string{e.String()}}}, nil).Capabilities.SemanticTokensProvider
				l := offer.(*protocol.SemanticTokensOptions).Legend
				c.open(file, 1, nestRound)
				var all, part tokens
				c.call("textDocument/semanticTokens/full", naming(file), &all)
				assert.Equal(t, nestTokens, shown(t, nestRound, e, l, all.Data))

				params := naming(file)
				params["range"] = span(place(2, 0), place(3, 8), "")["range"]
				c.call("textDocument/semanticTokens/range", params, &part)
				assert.Equal(t, nestTokens[2:5], shown(t, nestRound, e, l, part.Data))
			})
		})
	}
}

// applied is token data after the edits of a delta.
func (d tokens) applied(data []uint32) []uint32 {
	for _, e := range d.Edits {
		data = slices.Concat(data[:e.Start], e.Data, data[e.Start+e.DeleteCount:])
	}
	return data
}

func TestSemanticTokensDelta(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		c.open(file, 1, acornCup)
		var before tokens
		c.call("textDocument/semanticTokens/full", naming(file), &before)
		for version, line := range []string{"", "Rnd 1: 5 sc in ring.\n", "// a note\n", "Piece: Leaf\nCh 3.\n"} {
			text := strings.Replace(acornCup, "Fasten off", line+"Fasten off", 1)
			c.change(file, version+2, whole(text))
			params := naming(file)
			params["previousResultId"] = before.ResultID
			var delta, after tokens
			c.call("textDocument/semanticTokens/full/delta", params, &delta)
			assert.Nil(t, delta.Data)
			assert.Equal(t, line == "", len(delta.Edits) == 0, "nothing changed, so nothing is sent")
			c.call("textDocument/semanticTokens/full", naming(file), &after)
			assert.Equal(t, after.Data, delta.applied(before.Data))
			before = after
		}
		params := naming(file)
		params["previousResultId"] = "of long ago"
		var again tokens
		c.call("textDocument/semanticTokens/full/delta", params, &again)
		assert.Equal(t, before.Data, again.Data)
	})
}

func TestTokensAreAskedForAgain(t *testing.T) {
	c := inProcess(t, lint.Analyze)
	c.initialize(object{"workspace": object{"semanticTokens": object{"refreshSupport": true}}}, nil)
	c.asked("workspace/semanticTokens/refresh", nil)
	c.notify("workspace/didChangeConfiguration", object{"settings": nil})
	c.asked("workspace/semanticTokens/refresh", nil)
	assert.NoError(t, c.leave())
}
