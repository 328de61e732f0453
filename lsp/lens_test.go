package lsp

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

type lens struct {
	Range   protocol.Range `json:"range"`
	Command struct {
		Title   string  `json:"title"`
		Command *string `json:"command"`
	} `json:"command"`
}

func TestTotalsOverHeadings(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		c.open(file, 1, nest)
		var lenses []lens
		c.call("textDocument/codeLens", naming(file), &lenses)
		require.Len(t, lenses, 2)
		assert.Equal(t, "total ? sts", lenses[0].Command.Title)
		assert.Equal(t, "total 4 sts · by kind: 4 sc · by yarn: A 4", lenses[1].Command.Title)
		assert.Equal(t, uint32(8), lenses[1].Range.Start.Line)
		require.NotNil(t, lenses[1].Command.Command, "the protocol wants it")

		c.notify("workspace/didChangeConfiguration", object{"settings": object{"stitchproof": object{"lenses": false}}})
		c.call("textDocument/codeLens", naming(file), &lenses)
		assert.Empty(t, lenses)
	})
}

func TestLinksToFiles(t *testing.T) {
	folder := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(folder, "leaf.crochet"), nil, 0o600))
	c := inProcess(t, lint.Analyze)
	c.initialize(nil, nil)
	text := "Pattern: Twig\nNotes: sew on the leaves of leaf.crochet and of gone.crochet.\n"
	at := string(uri.File(filepath.Join(folder, "twig.crochet")))
	c.open(at, 1, text)
	var links []struct {
		Range  protocol.Range
		Target string
	}
	c.call("textDocument/documentLink", naming(at), &links)
	require.Len(t, links, 1)
	assert.Equal(t, "2: leaf.crochet", placed(text, links[0].Range))
	assert.Equal(t, string(uri.File(filepath.Join(folder, "leaf.crochet"))), links[0].Target)
}

func TestHoverOnMaterialsAndBranches(t *testing.T) {
	const text = "Pattern: Twig\nTerms: US\nHook: 5.5 mm (US I-9)\nYarn A: bark brown, worsted (4), 7 m\n\nPiece: Twig\nWith A, ch 14.\n" +
		"Row 1: Sc in 2nd ch from hook and in next 4 ch, branch Thorn: ch 6, sc in 2nd ch from hook and in next 2 ch, return to stem.\n" +
		"// allow tail-missing: it is woven in\n"
	for words, want := range map[string][]string{
		"Hook: 5.|5":     {"Hook 5.5 mm", "US I-9: 5.5 mm"},
		"worst|ed":       {"Yarn A", "Weight: medium (4), 11-14 sc to 10 cm, hook 5.5-6.5 mm"},
		"With |A":        {"Yarn A", "Listed as: bark brown, worsted (4), 7 m"},
		"branch Th|orn:": {"Branch Thorn", "6 places"},
		"allow t|ail":    {"tail-missing\n"},
	} {
		c := inProcess(t, lint.Analyze)
		c.initialize(nil, nil)
		h, _ := hoverAt(t, c, mark(t, text, words), source.UTF16)
		require.NotNil(t, h, words)
		for _, w := range want {
			assert.Contains(t, h.Contents.Value, w)
		}
	}
}

func TestHoverOnAGauge(t *testing.T) {
	const text = "Pattern: Frost hat\nTerms: US\nHook: 5 mm\nYarn A: frost, light (3), 50 m\nYarn B: haw, DK, 10 m\nGauge: 16 sc and 20 rows = 10 cm (4 in); 15 dc = 4 in\n\nPiece: Hat\nCh 9.\n"
	const light = "Published for the yarn: light (3), 12-17 sc to 10 cm, hook 4.5-5.5 mm"
	for _, test := range []struct{ text, words, over, want string }{
		{text, "16 s|c", "16 sc and 20 rows = 10 cm (4 in)", "16 sc and 20 rows = 10 cm (4 in)\nOne stitch: 6.2 mm (0.25 in) wide\nOne row: 5.0 mm (0.20 in) high\n" + light},
		{text, "15 d|c", "15 dc = 4 in", "15 dc = 4 in\nOne stitch: 6.8 mm (0.27 in) wide\n" + light},
		{strings.NewReplacer("Terms: US", "Terms: UK", "16 sc", "16 dc", ", light (3)", "", ", DK", "").Replace(text), "16 d|c", "16 dc and 20 rows = 10 cm (4 in)",
			"16 dc and 20 rows = 10 cm (4 in)\nOne stitch: 6.2 mm (0.25 in) wide\nOne row: 5.0 mm (0.20 in) high"},
		{strings.Replace(text, "Terms: US", "Terms: UK", 1), "15 d|c", "15 dc = 4 in", "15 dc = 4 in\nOne stitch: 6.8 mm (0.27 in) wide\n" + strings.Replace(light, "sc", "dc", 1)},
	} {
		c := inProcess(t, lint.Analyze)
		c.initialize(nil, nil)
		h, plain := hoverAt(t, c, mark(t, test.text, test.words), source.UTF16)
		require.NotNil(t, h, test.words)
		assert.Equal(t, test.want, h.Contents.Value)
		assert.Equal(t, test.over, plain.Slice(converter{plain, source.UTF16}.span(h.Range)))
	}
	c := inProcess(t, lint.Analyze)
	c.initialize(nil, nil)
	h, _ := hoverAt(t, c, mark(t, strings.Replace(text, "16 sc and 20 rows = 10 cm (4 in); 15 dc = 4 in", "is not important", 1), "is n|ot"), source.UTF16)
	assert.Nil(t, h)
}

func TestSwatches(t *testing.T) {
	const text = "Pattern: Hedge\nTerms: US\nYarn A: Dark green, light (3), 50 m\nYarn B: bark brown-black, 10 m\nYarn C: redwing, bluebell and blue, linen, 5 m\n\nMaterials\nMC – pale haw, red\n\nPiece: Hedge\nWith red, ch 9.\n"
	bothWays(t, func(t *testing.T, c *client) {
		offer := c.initialize(nil, nil).Capabilities
		assert.Equal(t, protocol.Boolean(true), offer.ColorProvider)
		c.open(file, 1, text)
		var swatches []struct {
			Range protocol.Range
			Color struct{ Red, Green, Blue, Alpha float64 }
		}
		c.call("textDocument/documentColor", naming(file), &swatches)
		var got []string
		for _, s := range swatches {
			got = append(got, placed(text, s.Range)+fmt.Sprintf(" %.2f %.2f %.2f %g", s.Color.Red, s.Color.Green, s.Color.Blue, s.Color.Alpha))
			params := naming(file)
			params["range"], params["color"] = s.Range, s.Color
			var words []struct{ Label string }
			var raw []map[string]any
			c.call("textDocument/colorPresentation", params, &words)
			require.Len(t, words, 1)
			assert.Contains(t, placed(text, s.Range), ": "+words[0].Label)
			c.call("textDocument/colorPresentation", params, &raw)
			assert.Len(t, raw[0], 1, "nothing but the word")
		}
		assert.Equal(t, []string{
			"3: Dark green 0.00 0.39 0.00 1", "4: brown 0.65 0.16 0.16 1", "4: black 0.00 0.00 0.00 1", "5: blue 0.00 0.00 1.00 1", "8: red 1.00 0.00 0.00 1",
		}, got)
	})
}
