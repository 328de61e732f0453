package lsp

import (
	"fmt"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lint"
)

// spelled is an analyzer that knows nothing of a text but the text, and gives it
// as the name of a piece.
func spelled(text *source.Text) *lint.Analysis {
	analysis := lint.Analyze(source.New(""))
	analysis.Text = text
	analysis.Fabric.Pieces = []*fabric.Piece{{Tree: &syntax.Piece{Name: strconv.Quote(text.String())}}}
	return analysis
}

// seen is the text that the server of the analyzer spelled has of a document.
func seen(c *client, uri string) string {
	c.t.Helper()
	var symbols []protocol.SymbolInformation
	c.call("textDocument/documentSymbol", naming(uri), &symbols)
	require.Len(c.t, symbols, 1)
	text, err := strconv.Unquote(symbols[0].Name)
	require.NoError(c.t, err)
	return text
}

func span(from, to protocol.Position, text string) object {
	return object{"range": object{
		"start": object{"line": from.Line, "character": from.Character},
		"end":   object{"line": to.Line, "character": to.Character},
	}, "text": text}
}

func place(line, character uint32) protocol.Position {
	return protocol.Position{Line: line, Character: character}
}

func TestChanges(t *testing.T) {
	const before = "Piece: Wren 🐦 nest\r\nWith A, ch 5.\r\n"
	for _, test := range []struct {
		name    string
		changes []any
		after   string
	}{
		{"none", nil, before},
		{"whole", []any{whole("Piece: Acorn\n")}, "Piece: Acorn\n"},
		{"range of null", []any{object{"range": nil, "text": "Piece: Acorn\n"}}, "Piece: Acorn\n"},
		{"insertion", []any{span(place(0, 0), place(0, 0), "// nest\n")}, "// nest\n" + before},
		{"after a character of two units", []any{span(place(0, 14), place(0, 19), "")}, "Piece: Wren 🐦\r\nWith A, ch 5.\r\n"},
		{"each on what the last one left", []any{
			span(place(1, 11), place(1, 12), "12"), span(place(1, 13), place(1, 14), ";"), span(place(0, 0), place(1, 0), ""),
		}, "With A, ch 12;\r\n"},
		{"whole, then a part", []any{whole("ch 5."), span(place(0, 3), place(0, 4), "7")}, "ch 7."},
		{"beyond the line", []any{span(place(1, 99), place(1, 99), " Turn.")}, "Piece: Wren 🐦 nest\r\nWith A, ch 5. Turn.\r\n"},
		{"beyond the text", []any{span(place(99, 5), place(4294967295, 4294967295), "Turn.")}, before + "Turn."},
		{"ends the wrong way round", []any{span(place(1, 0), place(0, 0), "")}, "With A, ch 5.\r\n"},
		{"impossible range", []any{object{"range": object{"start": object{"line": -1, "character": 0}, "end": object{"line": 0, "character": 0}}, "text": "x"}}, before},
		{"no text", []any{object{}}, before},
	} {
		t.Run(test.name, func(t *testing.T) {
			c := inProcess(t, spelled)
			c.initialize(nil, nil)
			c.open(file, 1, before)
			changes := test.changes
			if changes == nil {
				changes = []any{}
			}
			c.change(file, 2, changes...)
			assert.Equal(t, test.after, seen(c, file))
		})
	}
}

func TestAddressIsSpelledInManyWays(t *testing.T) {
	c := inProcess(t, spelled)
	c.initialize(nil, nil)
	c.open("file:///c%3A/hedge/wren%20cap.crochet", 1, "ch 5.")
	c.change("file:///C:/hedge/wren cap.crochet", 2, whole("ch 6."))
	assert.Equal(t, "ch 6.", seen(c, "file:///c:/hedge/wren%20cap.crochet"))
	assert.Equal(t, "file:///c%3A/hedge/wren%20cap.crochet", c.diagnostics().URI, "the spelling it was opened with")
}

// What has no address is not opened: the client could not be told of it.
func TestOpenedWithoutAnAddress(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		for _, params := range []object{{}, {"textDocument": object{"languageId": "crochet", "version": 1, "text": "ch 5."}}} {
			c.notify("textDocument/didOpen", params)
			assert.Equal(t, -32602, c.refused("textDocument/documentSymbol", params))
		}
		assert.NoError(t, c.leave())
	})
}

func TestUnsavedDocument(t *testing.T) {
	c := inProcess(t, lint.Analyze)
	c.initialize(nil, nil)
	c.open("untitled:Untitled-1", 1, "Piece: Acorn\nWith A, ch 5.\n")
	assert.Equal(t, "untitled:Untitled-1", c.diagnostics().URI)
}

func TestEditsOfWhatIsNotOpen(t *testing.T) {
	c := inProcess(t, lint.Analyze)
	c.initialize(nil, nil)
	c.change(file, 2, whole("ch 5."))
	c.close(file)
	assert.Equal(t, -32602, c.refused("textDocument/documentSymbol", naming(file)))
	c.open(file, 3, "ch 5.")
	assert.Equal(t, int32(3), *c.diagnostics().Version)
}

// typist makes edits at random, the same ones in every run, and splices them into
// the text in the most naive way there is.
type typist struct {
	*rand.Rand
	text string
}

func newTypist(text string) *typist {
	return &typist{rand.New(rand.NewPCG(1, 2)), text}
}

// edit gives a change in UTF-16 positions and makes it in t.text.
func (t *typist) edit() object {
	letters := []rune(t.text)
	start := t.IntN(len(letters) + 1)
	end := min(start+t.IntN(4), len(letters))
	words := []string{"", "", "s", " ", ",", "1", "sc", "🌿", "\n", "é", "*", "Row 2: "}
	if len(letters) > 400 {
		words = words[:2]
		end = min(start+20, len(letters))
	}
	with := words[t.IntN(len(words))]
	from, to := utf16Place(letters[:start]), utf16Place(letters[:end])
	t.text = string(letters[:start]) + with + string(letters[end:])
	return span(from, to, with)
}

// utf16Place is where a text ends, counted unit by unit.
func utf16Place(before []rune) protocol.Position {
	var p protocol.Position
	for _, r := range before {
		switch {
		case r == '\n':
			p.Line, p.Character = p.Line+1, 0
		case r > 0xffff:
			p.Character += 2
		default:
			p.Character++
		}
	}
	return p
}

const edits = 5000

func TestManyEditsKeepTheirOrder(t *testing.T) {
	c := inProcess(t, spelled)
	c.initialize(nil, nil)
	hand := newTypist("Piece: Acorn 🌰\nRow 1: ch 5, sc in 2nd ch from hook.\n")
	c.open(file, 0, hand.text)
	for version := range edits {
		c.change(file, version+1, hand.edit())
	}
	assert.Equal(t, hand.text, seen(c, file))
}

// The binary cannot be looked into, so what it says of the edited document is held
// against what it says of the same text opened afresh.
func TestManyEditsOfTheBinary(t *testing.T) {
	c := spawned(t)
	c.initialize(nil, nil)
	hand := newTypist("Piece: Acorn 🌰\nRow 1: ch 5, sc in 2nd ch from hook.\n")
	c.open(file, 0, hand.text)
	for version := range edits {
		c.change(file, version+1, hand.edit())
	}
	tail := "\nPiece: Cup\nRow 1: ch 5, sc in 2nd ch from hook and in each ch across. (4 sc)\nRow 2: Ch 1, sc in each st.\n"
	end := utf16Place([]rune(hand.text))
	c.change(file, edits+1, span(end, end, tail))
	fresh := strings.Replace(file, "acorn", "afresh", 1)
	c.open(fresh, 1, hand.text+tail)
	for _, method := range []string{"textDocument/documentSymbol", "textDocument/inlayHint"} {
		var answers [2]string
		for i, uri := range []string{file, fresh} {
			params := naming(uri)
			params["range"] = span(place(0, 0), place(99999, 0), "")["range"]
			m := c.answer(c.request(method, params))
			require.Nil(t, m.Error)
			answers[i] = strings.ReplaceAll(string(m.Result), fresh, file)
		}
		assert.Contains(t, answers[0], fmt.Sprintf(`"line":%d`, end.Line+2))
		assert.Equal(t, answers[1], answers[0], method)
	}
	assert.NoError(t, c.leave())
}
