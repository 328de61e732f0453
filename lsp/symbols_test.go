package lsp

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"go.lsp.dev/protocol"

	"stitchproof/lint"
)

const nest = `Pattern: Wren nest
Terms: US

Piece: Egg (make 3)
Rnd 1: 6 sc in magic ring. (6 sc)
Rnd 2: Wren in each acorn. (12 sc)
Fasten off.

Piece: Twig
With A, ch 5.
Row 1: Sc in 2nd ch from hook and in each ch across.
`

// outlined writes symbols as an indented list with the lines they stand on.
func outlined(symbols []protocol.DocumentSymbol, indent string) string {
	var b strings.Builder
	for _, s := range symbols {
		detail := ""
		if s.Detail != nil {
			detail = " [" + *s.Detail + "]"
		}
		fmt.Fprintf(&b, "%s%d-%d: %s%s\n", indent, s.Range.Start.Line, s.Range.End.Line, s.Name, detail)
		b.WriteString(outlined(s.Children, indent+"  "))
	}
	return b.String()
}

func TestSymbolsWithinSymbols(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(object{"textDocument": object{"documentSymbol": object{"hierarchicalDocumentSymbolSupport": true}}}, nil)
		c.open(file, 1, nest)
		var symbols []protocol.DocumentSymbol
		c.call("textDocument/documentSymbol", naming(file), &symbols)
		assert.Equal(t, `3-6: Egg [make 3]
  4-4: Rnd 1 [6 sts]
  5-5: Rnd 2
  6-6: Fasten off.
8-10: Twig
  9-9: With A, ch 5.
  10-10: Row 1 [4 sts]
`, outlined(symbols, ""))
		assert.Equal(t, protocol.Range{Start: place(4, 0), End: place(4, 5)}, symbols[0].Children[0].SelectionRange)
		assert.Equal(t, place(4, 33), symbols[0].Children[0].Range.End)
	})
}

func TestFlatSymbols(t *testing.T) {
	c := inProcess(t, lint.Analyze)
	c.initialize(nil, nil)
	c.open(file, 1, nest)
	var symbols []protocol.SymbolInformation
	c.call("textDocument/documentSymbol", naming(file), &symbols)
	var lines []string
	for _, s := range symbols {
		assert.Equal(t, file, string(s.Location.URI))
		line := fmt.Sprintf("%d: %s", s.Location.Range.Start.Line, s.Name)
		if s.ContainerName != nil {
			line += " in " + *s.ContainerName
		}
		lines = append(lines, line)
	}
	assert.Equal(t, []string{
		"3: Egg", "4: Rnd 1: 6 sts in Egg", "5: Rnd 2 in Egg", "6: Fasten off. in Egg",
		"8: Twig", "9: With A, ch 5. in Twig", "10: Row 1: 4 sts in Twig",
	}, lines)
}
