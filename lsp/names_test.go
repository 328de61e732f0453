package lsp

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

const hedge = `Pattern: Hedge
Terms: US
Yarn A: bark brown

Special stitches
Wren stitch (wst): (sc, ch 3, sc) in next st.

Piece: Twig
With A, ch 9.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sts)
Row 2: Ch 1, 2 wst in first st, sc in next 6 sts, wst in last st, turn.
Row 3: With A, rep Row 1.

Piece: Bough (make 2)
Ch 12.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch Thorn: ch 4,
  sc in 2nd ch from hook and in each ch of Thorn, return to stem, sc in each rem ch.
`

// placed writes a place as its line, from 1, and its words.
func placed(text string, r protocol.Range) string {
	converter := converter{source.New(text), source.UTF16}
	return fmt.Sprintf("%d: %s", r.Start.Line+1, converter.text.Slice(converter.span(r)))
}

// asking opens hedge with the place that a test asks about: the bar in words.
func asking(t *testing.T, c *client, words string) object {
	t.Helper()
	text, p := marked(t, mark(t, hedge, words), source.UTF16)
	require.Equal(t, hedge, text)
	c.open(file, 1, hedge)
	return at(file, p)
}

func TestDefinition(t *testing.T) {
	for words, want := range map[string][]string{
		"2 w|st in first":     {"6: Wren stitch", "6: wst"},
		"With |A, rep":        {"3: A"},
		"ch of Th|orn":        {"16: Thorn"},
		"rep Row |1":          {"10: Row 1"},
		"Piece: T|wig":        {"8: Twig"},
		"sc |in next 6 sts":   {"10: Sc in 2nd ch from hook and in each ch across"},
		"Sc in |2nd ch":       {"9: ch 9"},
		"return to |stem, sc": {},
		"Pattern: |Hedge":     {},
	} {
		t.Run(words, func(t *testing.T) {
			c := inProcess(t, lint.Analyze)
			c.initialize(nil, nil)
			var found []protocol.Location
			c.call("textDocument/definition", asking(t, c, words), &found)
			got := []string{}
			for _, l := range found {
				assert.Equal(t, file, string(l.URI))
				got = append(got, placed(hedge, l.Range))
			}
			assert.Equal(t, want, got)
		})
	}
}

func TestDefinitionWithItsOrigin(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(object{"textDocument": object{"definition": object{"linkSupport": true}}}, nil)
		var found []struct {
			TargetURI            string         `json:"targetUri"`
			OriginSelectionRange protocol.Range `json:"originSelectionRange"`
			TargetRange          protocol.Range `json:"targetRange"`
			TargetSelectionRange protocol.Range `json:"targetSelectionRange"`
		}
		c.call("textDocument/definition", asking(t, c, "wst |in last"), &found)
		require.Len(t, found, 1)
		assert.Equal(t, file, found[0].TargetURI)
		assert.Equal(t, "11: wst in last st", placed(hedge, found[0].OriginSelectionRange))
		assert.Equal(t, "10: Sc in 2nd ch from hook and in each ch across", placed(hedge, found[0].TargetRange))
		assert.Equal(t, found[0].TargetRange, found[0].TargetSelectionRange)
	})
}

func TestReferences(t *testing.T) {
	for words, want := range map[string][]string{
		"2 w|st in first": {"6: Wren stitch!", "6: wst!", "11: wst", "11: wst"},
		"Yarn |A":         {"3: A!", "9: A", "12: A"},
		"branch |Thorn":   {"16: Thorn!", "17: Thorn"},
		"R|ow 1: Sc in 2nd ch from hook and in each": {"10: Row 1!", "12: 1"},
		"Terms: |US": {},
	} {
		t.Run(words, func(t *testing.T) {
			c := inProcess(t, lint.Analyze)
			c.initialize(nil, nil)
			params := asking(t, c, words)
			for _, declared := range []bool{true, false} {
				params["context"] = object{"includeDeclaration": declared}
				var found []protocol.Location
				c.call("textDocument/references", params, &found)
				got, all := []string{}, []string{}
				for _, l := range found {
					got = append(got, placed(hedge, l.Range))
				}
				for _, w := range want {
					if name, isDeclared := strings.CutSuffix(w, "!"); declared || !isDeclared {
						all = append(all, name)
					}
				}
				assert.Equal(t, all, got)
			}
			var lights []struct {
				Range protocol.Range `json:"range"`
				Kind  int            `json:"kind"`
			}
			c.call("textDocument/documentHighlight", params, &lights)
			got := []string{}
			for _, l := range lights {
				got = append(got, placed(hedge, l.Range)+map[int]string{2: "", 3: "!"}[l.Kind])
			}
			assert.Equal(t, want, got)
		})
	}
}

func TestRename(t *testing.T) {
	for _, test := range []struct{ words, to, before, after string }{
		{"2 w|st in first", "nest", "wst", "nest"},
		{"|Wren stitch", "Nest stitch", "Wren stitch", "Nest stitch"},
		{"With |A, rep", "B", "A", "B"},
		{"ch of Th|orn", "Haw", "Thorn", "Haw"},
		{"Piece: Tw|ig", "Sprig", "Twig", "Sprig"},
	} {
		t.Run(test.words, func(t *testing.T) {
			bothWays(t, func(t *testing.T, c *client) {
				c.initialize(nil, nil)
				params := asking(t, c, test.words)
				var offer struct {
					Range       protocol.Range
					Placeholder string
				}
				c.call("textDocument/prepareRename", params, &offer)
				assert.Equal(t, test.before, offer.Placeholder)
				params["newName"] = test.to
				var edit edited
				c.call("textDocument/rename", params, &edit)
				want := hedge
				for _, around := range []string{"%s in", "%s)", "%s (", "%s,", "%s:", "%s\n"} {
					want = strings.ReplaceAll(want, fmt.Sprintf(around, test.before), fmt.Sprintf(around, test.after))
				}
				assert.Equal(t, want, edit.applied(t, hedge))
			})
		})
	}
}

// edited is a WorkspaceEdit of one document.
type edited struct {
	Changes         map[string][]textEdit `json:"changes"`
	DocumentChanges []struct {
		TextDocument struct {
			URI     string `json:"uri"`
			Version *int   `json:"version"`
		} `json:"textDocument"`
		Edits []textEdit `json:"edits"`
	} `json:"documentChanges"`
	ChangeAnnotations map[string]struct {
		Label             string `json:"label"`
		NeedsConfirmation bool   `json:"needsConfirmation"`
	} `json:"changeAnnotations"`
}

type textEdit struct {
	Range        protocol.Range `json:"range"`
	NewText      string         `json:"newText"`
	AnnotationID string         `json:"annotationId"`
}

// applied is a text after the edits of its document.
func (e edited) applied(t *testing.T, text string) string {
	t.Helper()
	list := e.Changes[file]
	for _, d := range e.DocumentChanges {
		require.Equal(t, file, d.TextDocument.URI)
		list = append(list, d.Edits...)
	}
	return spliced(t, text, list)
}

func spliced(t *testing.T, text string, list []textEdit) string {
	t.Helper()
	converter := converter{source.New(text), source.UTF16}
	var edits []source.Edit
	for _, edit := range list {
		edits = append(edits, source.Edit{Span: converter.span(edit.Range), New: edit.NewText})
	}
	after, err := converter.text.Apply(edits)
	require.NoError(t, err)
	return after.String()
}

func TestRenameIsRefused(t *testing.T) {
	for _, test := range []struct{ words, to, why string }{
		{"|Sc in 2nd ch from hook and in each", "dc", "word of the trade"},
		{"rep Row |1", "9", "numbered anew"},
		{"ch of Th|orn", "stem", "meaning already"},
		{"2 w|st in first", "dc", "meaning already"},
		{"2 w|st in first", " ", "at least a letter"},
		{"Terms: |US", "UK", "nothing here has a name"},
	} {
		t.Run(test.words, func(t *testing.T) {
			c := inProcess(t, lint.Analyze)
			c.initialize(nil, nil)
			params := asking(t, c, test.words)
			params["newName"] = test.to
			m := c.answer(c.request("textDocument/rename", params))
			require.NotNil(t, m.Error, string(m.Result))
			assert.Equal(t, int(requestFailed), m.Error.Code)
			assert.Contains(t, m.Error.Message, test.why)
		})
	}
}

func TestRenameOfOneVersion(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		offer := c.initialize(object{
			"workspace":    object{"workspaceEdit": object{"documentChanges": true}},
			"textDocument": object{"rename": object{"prepareSupport": true}},
		}, nil)
		assert.True(t, *offer.Capabilities.RenameProvider.(*protocol.RenameOptions).PrepareProvider)
		params := asking(t, c, "branch |Thorn")
		params["newName"] = "Haw"
		var edit edited
		c.call("textDocument/rename", params, &edit)
		require.Len(t, edit.DocumentChanges, 1)
		assert.Equal(t, 1, *edit.DocumentChanges[0].TextDocument.Version)
		assert.Nil(t, edit.Changes)
		assert.Equal(t, strings.ReplaceAll(hedge, "Thorn", "Haw"), edit.applied(t, hedge))
	})
}

func TestLinkedEditing(t *testing.T) {
	c := inProcess(t, lint.Analyze)
	c.initialize(nil, nil)
	var found struct{ Ranges []protocol.Range }
	c.call("textDocument/linkedEditingRange", asking(t, c, "branch |Thorn"), &found)
	require.Len(t, found.Ranges, 2)
	assert.Equal(t, "17: Thorn", placed(hedge, found.Ranges[1]))
	var none *struct{}
	c.call("textDocument/linkedEditingRange", asking(t, c, "With |A, rep"), &none)
	assert.Nil(t, none)
}

func TestFolding(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		c.open(file, 1, "// one\n// two\n"+hedge)
		var found []protocol.FoldingRange
		c.call("textDocument/foldingRange", naming(file), &found)
		var got []string
		for _, f := range found {
			got = append(got, fmt.Sprintf("%d-%d %s", f.StartLine+1, f.EndLine+1, f.Kind))
		}
		assert.Equal(t, []string{"1-2 comment", "3-8 region", "10-14 region", "16-19 region", "18-19 "}, got)
	})
}

func TestSelection(t *testing.T) {
	type selection struct {
		Range  protocol.Range `json:"range"`
		Parent *selection     `json:"parent"`
	}
	for words, want := range map[string][]string{
		"2 w|st in first": {"wst", "2 wst in first st", "Row 2: Ch 1, 2 wst in first st, sc in next 6 sts, wst in last st, turn.", "Piece: Twig", "Pattern: Hedge"},
		"(sc, ch |3, sc)": {"3", "ch 3", "(sc, ch 3, sc) in next st", "(sc, ch 3, sc) in next st.", "Wren stitch (wst): (sc, ch 3, sc) in next st.", "Pattern: Hedge", "Pattern: Hedge"},
		"Yarn A: b|ark":   {"bark brown", "Yarn A: bark brown", "Pattern: Hedge", "Pattern: Hedge"},
	} {
		t.Run(words, func(t *testing.T) {
			c := inProcess(t, lint.Analyze)
			c.initialize(nil, nil)
			p := asking(t, c, words)["position"]
			params := naming(file)
			params["positions"] = []any{p, p}
			var found []*selection
			c.call("textDocument/selectionRange", params, &found)
			require.Len(t, found, 2)
			var got []string
			for s := found[1]; s != nil; s = s.Parent {
				_, text, _ := strings.Cut(placed(hedge, s.Range), ": ")
				first, _, _ := strings.Cut(text, "\n")
				got = append(got, first)
			}
			assert.Equal(t, want, got)
		})
	}
}
