package lsp

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
)

// A text that was not read as a pattern says so once, and one that is only begun does not.
func TestNothingRead(t *testing.T) {
	const header = "Pattern: Acorn cup\nTerms: US\nHook: 3 mm\nYarn A: bark brown, DK (3), 30 m\n"
	for _, test := range []struct {
		name, text string
		told       bool
	}{
		{"nothing", "", false},
		{"blank lines", "\n\n  \n", false},
		{"a title", "Acorn cup\n", false},
		{"a title as Markdown has it", "# Acorn cup\n", false},
		{"a header", header, false},
		{"a header that is being written", "Pattern: Acorn cup\nTerms: US\nHo", false},
		{"a title and a list", "Acorn cup\n\nMaterials\n- DK yarn (3), 30 m\n- 3 mm hook\n- tapestry needle\n- 2 safety eyes of 6 mm\n", false},
		{"a list of abbreviations", header + "\nAbbreviations\nch = chain\nsc = single crochet\nst(s) = stitch(es)\n", false},
		{"an introduction", header + "\nA cup for the first acorns of September, 4 cm high.\nIt is worked from the stalk down.\n", false},
		{"a heading", header + "\n## Cup\n", false},
		{"comments", "// to be written\n// 3 sizes\n// 2 yarns\n", false},
		{"a first row", header + "\nCup\nRnd 1: 6 sc in magic ring.\n", false},
		{"a row that is being written", header + "\nA cup.\nTwo lines.\nThree.\nFour.\nFive.\nSix.\n\nRnd 1: 6 s", false},
		{"a pattern", cup("12"), false},

		{"in German", "Eichelbecher\n\nReihe 1: 5 fM in die 2. Lm ab der Nadel.\nReihe 2: 5 fM, wenden.\n", true},
		{"in French, with a header", header + "\nRang 1 : 6 ms dans un cercle magique.\nRang 2 : 2 ms dans chaque maille.\n", true},
		{"in Spanish", "Copa\n\nVuelta 1: 6 pb en anillo mágico.\nVuelta 2: 12 pb.\nVuelta 3: 18 pb.\n", true},
		{"a recipe", "Acorn bread\n\n500 g of acorn flour\n300 ml of water\nBake it for 40 minutes.\n", true},
		{"a shopping list", "To buy\n2 loaves of bread\n3 apples\n1 kg of flour\n", true},
		{"a letter", "Dear Hazel,\n\nthank you for the acorns.\nThey lie on the sill.\nThe dormouse has had two.\nThe wren looks in.\nThe frost is early.\nCome soon.\nYours, Rowan\n", true},
		{"a table", "A,B\n1,2\n3,4\n5,6\n", true},
		{"code", "package cup\n\nfunc main() {\n\tx := 12\n\ty := 13\n}\n", true},
		{"notes in short", "notes\n\n6 in the ring, then 12\n18 and 24\n", true},
		{"a text of numbers behind blank lines", "\n\nKelch\n\nRunde 1: 6 fM\nRunde 2: 12 fM\n", true},
	} {
		t.Run(test.name, func(t *testing.T) {
			list := diagnostics(viewOf(source.New(test.text)))
			told := 0
			for _, d := range list {
				if d.Code == protocol.String(nothingRead) {
					told++
					assert.Equal(t, protocol.DiagnosticSeverityInformation, d.Severity)
					assert.Equal(t, d.Range.Start.Line, d.Range.End.Line)
					assert.Contains(t, string(d.Message.(protocol.String)), "no instruction was found: one is a line such as")
				}
			}
			if !test.told {
				assert.Zero(t, told)
				return
			}
			require.Equal(t, 1, told)
			assert.Equal(t, protocol.String(nothingRead), list[0].Code)
		})
	}
}

// It is told of a file that is opened, and no longer once there is a row.
func TestNothingReadIsTold(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		c.open(file, 1, "Becher\n\nRunde 1: 6 fM\nRunde 2: 12 fM\n")
		assert.Contains(t, codes(c.diagnostics()), nothingRead)
		c.change(file, 2, whole(cup("12")))
		assert.Empty(t, c.diagnostics().Diagnostics)
		assert.NoError(t, c.leave())
	})
}
