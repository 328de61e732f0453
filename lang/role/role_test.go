package role_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/names"
	"stitchproof/lang/role"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var spelled = map[role.Role]string{
	role.Comment: "comment", role.Key: "key", role.Value: "value", role.Heading: "heading", role.Label: "label", role.Stitch: "stitch",
	role.Number: "number", role.Place: "place", role.Action: "action", role.Mark: "mark", role.Count: "count", role.Branch: "branch",
	role.Yarn: "yarn", role.Marker: "marker",
}

func of(text string) (*source.Text, []role.Word) {
	t := source.New(text)
	file := syntax.Read(t)
	return t, role.Of(file, names.Of(file))
}

// told writes each word with its role: !for a declaration, + for the pattern's own.
func told(text string) []string {
	t, words := of(text)
	var out []string
	for _, w := range words {
		s := spelled[w.Role]
		if w.Own {
			s += "+"
		}
		if w.Declares {
			s += "!"
		}
		out = append(out, s+" "+t.Slice(w.Span))
	}
	return out
}

func TestRoles(t *testing.T) {
	const head = "Pattern: Hedge\nYarn A: bark\n\nSpecial stitches\nwst: (sc, ch 3) in next st.\n\nPiece: Twig (make 2)\n"
	before := told(head + "Ch 2.\n")
	assert.Equal(t, []string{
		"key Pattern", "value Hedge", "key Yarn", "yarn! A", "value bark", "stitch+! wst",
		"mark (", "stitch sc", "stitch ch", "number 3", "mark )", "place in", "place next", "place st", "heading! Twig", "stitch Ch", "number 2",
	}, before)
	before = before[:len(before)-2]
	for row, want := range map[string]string{
		"Rnd 1: 6 sc in ring. (6 sc)":                    "label! Rnd 1|number 6|stitch sc|place in|place ring|count (6 sc)",
		"Row 1 (RS): With A, ch 3, turn.":                "label! Row 1 (RS)|place With|yarn A|stitch ch|number 3|action turn",
		"Row 1: [2 wst in next st] twice.":               "label! Row 1|mark [|number 2|stitch+ wst|place in|place next|place st|mark ]|action twice",
		"Row 1: *sc in next st; rep from * across.":      "label! Row 1|mark *|stitch sc|place in|place next|place st|action rep|place from|mark *|place across",
		"Row 1: Ch 4, wibble the acorn, turn.":           "label! Row 1|stitch Ch|number 4|action turn",
		"Row 1: Ch 6, branch A: ch 4, return to stem.":   "label! Row 1|stitch Ch|number 6|action branch|branch! A|stitch ch|number 4|action return|place to|place stem",
		"Row 1: Sc in next 2 (3, 4) sts,\n  skip 1 st.":  "label! Row 1|stitch Sc|place in|place next|number 2 (3, 4)|place sts|action skip|number 1|place st",
		"Row 1: Ch 3.\nRow 2: Rep Row 1.\n// a note":     "label! Row 1|stitch Ch|number 3|label! Row 2|action Rep|place Row|label 1|comment // a note",
		"Row 1: Place marker in first st. (3 sc,\n2 dc)": "label! Row 1|action Place|marker! marker|place in|number first|place st|count (3 sc,|count 2 dc)",
	} {
		assert.Equal(t, append(before[:len(before):len(before)], strings.Split(want, "|")...), told(head+row+"\n"), row)
	}
}

// In every example, whole and cut off, words are in order, apart from each other and
// within a line, and what was not understood has none.
func TestRolesOfEveryExample(t *testing.T) {
	paths, err := filepath.Glob("../../testdata/*/*.crochet")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, path := range paths {
		content, err := os.ReadFile(path)
		require.NoError(t, err)
		for _, text := range []string{string(content), string(content[:len(content)*2/3])} {
			text, words := of(text)
			require.NotEmpty(t, words)
			end := 0
			for _, w := range words {
				if w.Span.Start < end || w.Span.Empty() || w.Role == role.None || strings.ContainsAny(text.Slice(w.Span), "\r\n") {
					t.Errorf("%s: %q at %v, after one that ends at %d", path, text.Slice(w.Span), w.Span, end)
				}
				end = w.Span.End
			}
			for _, piece := range syntax.Read(text).Pieces {
				for _, row := range piece.Rows {
					for _, unread := range row.Unread() {
						for _, w := range words {
							if row.Abs(unread).Covers(w.Span) {
								t.Errorf("%s: %q was not understood", path, text.Slice(w.Span))
							}
						}
					}
				}
			}
		}
	}
}
