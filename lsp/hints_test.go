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

// A branch is told after each clause that works along it, and where the work comes
// home to after it.
func TestInlayHintsOfBranches(t *testing.T) {
	only := object{"hints": object{"running": false, "totals": false}}
	const (
		head   = "Pattern: Twig\nTerms: US\n"
		forked = head + `
Piece: Twig
Ch 14.
Row 1: Sc in 2nd ch from hook and in next 4 ch,
branch A: ch 9, sc in 2nd ch from hook and in next 3 ch,
branch B: ch 5, sc in 2nd ch from hook and in each ch of B, return to A,
sc in each rem ch of A, return to stem,
sc in each rem ch. (25 sts)
`
		sized = head + `Sizes: S (M)

Piece: Twig
Ch 11 (13).
Row 1: Sc in 2nd ch from hook and in next 4 (5) ch,
ch 6 (8), sc in 2nd ch from hook,
sc in next 4 (6) ch,
sc in each rem ch.
`
	)
	for _, test := range []struct {
		name, text string
		options    any
		want       []string
	}{
		{"forked", forked, only, []string{
			"branch A: ch 9, sc in 2nd ch from hook and in next 3 ch«A 4/8»,",
			"branch B: ch 5, sc in 2nd ch from hook and in each ch of B«B 4/4», return to A«A 4/8»,",
			"sc in each rem ch of A«A 8/8», return to stem«stem 5/13»,",
		}},
		{"without a word, in sizes", sized, only, []string{
			"ch 6 (8), sc in 2nd ch from hook«branch 1/5 (1/7)»,",
			"sc in next 4 (6) ch«branch 5/5 (7/7)»,",
		}},
		{"no branches", acornCup, only, nil},
		{"switched off", forked, object{"hints": object{"running": false, "totals": false, "branches": false}}, nil},
		{"with the running count", twig, nil, []string{
			"Row 1: Sc in 2nd ch from hook and in next 3 ch«4», branch Thorn: ch 4, sl st in 2nd ch from hook and in next 2 ch«7»" +
				"«Thorn 3/3», return to stem«stem 4/10», sc in each ch across«13». (13 sts)«= 13 sts»",
		}},
	} {
		t.Run(test.name, func(t *testing.T) {
			c := inProcess(t, lint.Analyze)
			c.initialize(nil, test.options)
			assert.Equal(t, test.want, hints(c, test.text, everything))
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
