package lsp

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

type hint struct {
	Position    protocol.Position `json:"position"`
	Label       string            `json:"label"`
	PaddingLeft bool              `json:"paddingLeft"`
}

// hinted is a text with its hints written into it: «12».
func hinted(c *client, text string, within protocol.Range) string {
	c.t.Helper()
	params := naming(file)
	params["range"] = span(within.Start, within.End, "")["range"]
	var hints []hint
	c.call("textDocument/inlayHint", params, &hints)
	assert.NotNil(c.t, hints, "null in the place of a list")
	converter := converter{source.New(text), source.UTF16}
	for i := len(hints) - 1; i >= 0; i-- {
		assert.True(c.t, hints[i].PaddingLeft)
		offset := converter.offset(hints[i].Position)
		text = text[:offset] + "«" + hints[i].Label + "»" + text[offset:]
	}
	return text
}

var everything = protocol.Range{End: protocol.Position{Line: 4294967295}}

// hints is the lines of a text that have hints, with them.
func hints(c *client, text string, within protocol.Range) []string {
	c.t.Helper()
	c.open(file, 1, text)
	var lines []string
	for line := range strings.Lines(hinted(c, text, within)) {
		if strings.Contains(line, "«") {
			lines = append(lines, strings.TrimRight(line, "\n"))
		}
	}
	return lines
}

func TestInlayHints(t *testing.T) {
	unknown := strings.Replace(acornCup, "2 sc in each st around", "2 wren in each acorn", 1)
	for _, test := range []struct {
		name, text string
		want       []string
	}{
		{"nothing to count", "Pattern: Acorn\n", nil},
		{"rounds", acornCup, []string{
			"Rnd 1: Ch 1, 6 sc in magic ring«6»; sl st in first sc to join. (6 sc)«= 6 sts»",
			"Rnd 2: Ch 1, 2 sc in each st around«12»; sl st in first sc to join. (12 sc)«= 12 sts»",
			"Rnd 3: Ch 1, *sc in next st, 2 sc in next st; rep from * around«18»; sl st in first sc to join. (18 sc)«= 18 sts»",
		}},
		{"sizes", twoSizes, []string{
			"Row 1 (RS): Sc in 2nd ch from hook and in each ch across«20 (22, 24)»; turn. (20 (22, 24) sc)«= 20 (22, 24) sts»",
			"Row 2: Ch 1, sc in first 4 (5, 6) sts«4 (5, 6)», dc in each st to last st«19 (21, 23)», sc in last st«20 (22, 24)». (20 (22, 24) sts)«= 20 (22, 24) sts»",
		}},
		{"a row that cannot be counted shows none", unknown, []string{
			"Rnd 1: Ch 1, 6 sc in magic ring«6»; sl st in first sc to join. (6 sc)«= 6 sts»",
			"Rnd 3: Ch 1, *sc in next st, 2 sc in next st; rep from * around«18»; sl st in first sc to join. (18 sc)«= 18 sts»",
		}},
	} {
		t.Run(test.name, func(t *testing.T) {
			bothWays(t, func(t *testing.T, c *client) {
				c.initialize(nil, nil)
				assert.Equal(t, test.want, hints(c, test.text, everything))
			})
		})
	}
}

func TestInlayHintsOfARange(t *testing.T) {
	c := inProcess(t, lint.Analyze)
	c.initialize(nil, nil)
	within := protocol.Range{Start: place(9, 0), End: place(9, 40)}
	assert.Equal(t, []string{"Rnd 2: Ch 1, 2 sc in each st around«12»; sl st in first sc to join. (12 sc)"},
		hints(c, acornCup, within))
	assert.Empty(t, hints(c, acornCup, protocol.Range{}))
}

const (
	running = "Rnd 1: 6 sc in magic ring«6». (6 sc)"
	total   = "Rnd 1: 6 sc in magic ring. (6 sc)«= 6 sts»"
	both    = "Rnd 1: 6 sc in magic ring«6». (6 sc)«= 6 sts»"
	ring    = "Rnd 1: 6 sc in magic ring. (6 sc)\n"
)

func TestHintsAreSwitchedAtTheStart(t *testing.T) {
	only := func(kind string, on bool) object { return object{"hints": object{kind: on}} }
	for _, test := range []struct {
		name    string
		options any
		want    []string
	}{
		{"nothing said", nil, []string{both}},
		{"no totals", only("totals", false), []string{running}},
		{"no running counts", only("running", false), []string{total}},
		{"neither", object{"hints": object{"running": false, "totals": false}}, nil},
		{"under the section's name", object{"stitchproof": only("totals", false)}, []string{running}},
		{"other things said", object{"hedgerow": true}, []string{both}},
		{"nonsense", []int{1}, []string{both}},
	} {
		t.Run(test.name, func(t *testing.T) {
			bothWays(t, func(t *testing.T, c *client) {
				c.initialize(nil, test.options)
				assert.Equal(t, test.want, hints(c, ring, everything))
			})
		})
	}
}

func TestHintsAreSwitchedByTheClient(t *testing.T) {
	c := inProcess(t, lint.Analyze)
	c.initialize(nil, nil)
	c.notify("workspace/didChangeConfiguration", object{"settings": object{"stitchproof": object{"hints": object{"running": false}}}})
	assert.Equal(t, []string{total}, hints(c, ring, everything))
	c.notify("workspace/didChangeConfiguration", object{"settings": []int{}})
	assert.Equal(t, []string{total}, hints(c, ring, everything))
}

func TestSettingsAreAskedFor(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(object{"workspace": object{
			"configuration":          true,
			"didChangeConfiguration": object{"dynamicRegistration": true},
			"inlayHint":              object{"refreshSupport": true},
		}}, object{"hints": object{"running": false}})
		m := c.asked("client/registerCapability", nil)
		assert.Contains(t, string(m.Params), "workspace/didChangeConfiguration")
		m = c.asked("workspace/configuration", []any{object{"hints": object{"totals": false}}})
		assert.JSONEq(t, `{"items":[{"section":"stitchproof"}]}`, string(m.Params))
		c.asked("workspace/inlayHint/refresh", nil)
		assert.Empty(t, hints(c, ring, everything))

		c.notify("workspace/didChangeConfiguration", object{"settings": nil})
		c.asked("workspace/configuration", []any{object{"hints": object{"totals": true}}})
		c.asked("workspace/inlayHint/refresh", nil)
		assert.Equal(t, []string{total}, hints(c, ring, everything))

		c.notify("workspace/didChangeConfiguration", object{"settings": nil})
		c.asked("workspace/configuration", []any{nil})
		c.asked("workspace/inlayHint/refresh", nil)
		assert.Equal(t, []string{total}, hints(c, ring, everything))
		assert.NoError(t, c.leave())
	})
}
