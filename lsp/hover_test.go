package lsp

import (
	"encoding/json"
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

// acornCup is a sound pattern to hover over: NAME stands for what the tests replace.
const acornCup = `Pattern: Acorn cup
Terms: US

Special stitches
knop: (sc, ch 3, sc) in next st.

Piece: Cup
With A, make a magic ring.
Rnd 1: Ch 1, 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Rnd 3: Ch 1, *sc in next st, 2 sc in next st; rep from * around; sl st in first sc to join. (18 sc)
Fasten off.
`

const twoSizes = `Pattern: Hedge mitten
Terms: US
Sizes: S (M, L)

Piece: Cuff
With A, ch 21 (23, 25).
Row 1 (RS): Sc in 2nd ch from hook and in each ch across; turn. (20 (22, 24) sc)
Row 2: Ch 1, sc in first 4 (5, 6) sts, dc in each st to last st, sc in last st. (20 (22, 24) sts)
Fasten off.
`

const twig = `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 3 ch, branch thorn: ch 4, sl st in 2nd ch from hook and in next 2 ch, return to stem, sc in each ch across. (13 sts)
Fasten off.
`

// mark puts the mark into a text within the first occurrence of some words: in
// front of what follows the bar in them.
func mark(t *testing.T, text, words string) string {
	t.Helper()
	plain := strings.Replace(words, "|", "", 1)
	require.Contains(t, text, plain)
	return strings.Replace(text, plain, strings.Replace(words, "|", "¦", 1), 1)
}

type hovered struct {
	Contents protocol.MarkupContent `json:"contents"`
	Range    protocol.Range         `json:"range"`
}

// hoverAt opens a text and hovers over its mark; nil is nothing.
func hoverAt(t *testing.T, c *client, text string, e source.Encoding) (*hovered, *source.Text) {
	t.Helper()
	text, p := marked(t, text, e)
	c.open(file, 1, text)
	var h *hovered
	c.call("textDocument/hover", at(file, p), &h)
	return h, source.New(text)
}

func TestHover(t *testing.T) {
	for _, test := range []struct {
		name, text, words string
		over, want        string
	}{
		{"nothing in the header", acornCup, "Te|rms", "", ""},
		{"nothing between clauses", acornCup, "(6 sc)|\n", "", ""},
		{"row", acornCup, "R|nd 2", "Rnd 2", ""},
	} {
		t.Run(test.name, func(t *testing.T) {
			c := inProcess(t, lint.Analyze)
			c.initialize(nil, nil)
			h, text := hoverAt(t, c, mark(t, test.text, test.words), source.UTF16)
			if test.want == "" {
				assert.Nil(t, h)
				return
			}
			require.NotNil(t, h)
			assert.Equal(t, protocol.MarkupKindPlainText, h.Contents.Kind)
			assert.Equal(t, test.want, h.Contents.Value)
			assert.Equal(t, test.over, text.Slice(converter{text, source.UTF16}.span(h.Range)))
		})
	}
}

var _ = json.Marshal
var _ = os.Open
var _ = filepath.Join
