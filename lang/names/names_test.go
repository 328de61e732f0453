package names_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/names"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

const hedge = `Pattern: Hedge
Terms: US
Yarn A: bark brown
Yarn B: haw red

Special stitches
Wren stitch (wst): (sc, ch 3, sc) in next st.

Piece: Twig
With A, ch 9.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sts)
Row 2: Ch 1, wst in first st, sc in next 6 sts, wst in last st, turn.
Rows 3-5: Ch 1, sc in each sc across, turn.
Row 6: With B, rep Row 1.
Row 7: Rep Rows 2-5.

Piece: Bough (make 2)
Row 1: Ch 12, sc in 2nd ch from hook and in next 4 ch, branch Thorn: ch 4,
  sc in 2nd ch from hook and in each ch of Thorn, return to stem, sc in each rem ch.
Rnd 2: Work as for Twig to Row 3, place marker in first st, sc in marked st.
`

// told lists names with the lines and words of their mentions: ! where one is
// declared, ~ where it lies between others.
func told(text *source.Text, index *names.Index, kind names.Kind) []string {
	var out []string
	for _, n := range index.Names {
		if n.Kind != kind {
			continue
		}
		var words []string
		for _, m := range n.Mentions {
			word := fmt.Sprintf("%d:%s", text.LineOf(m.Span.Start)+1, text.Slice(m.Span))
			if m.Declares {
				word += "!"
			}
			if m.Between {
				word += "~"
			}
			words = append(words, word)
		}
		out = append(out, strings.Join(words, " "))
	}
	return out
}

func TestNames(t *testing.T) {
	text := source.New(hedge)
	index := names.Of(syntax.Read(text))
	for kind, want := range map[names.Kind][]string{
		names.Stitch: {"7:Wren stitch! 7:wst! 12:wst 12:wst", "7:sc 7:sc 11:Sc 12:sc 13:sc 13:sc 18:sc 19:sc 19:sc 20:sc"},
		names.Yarn:   {"3:A! 10:A", "4:B! 14:B"},
		names.Branch: {"18:Thorn! 19:Thorn"},
		names.Marker: {"20:marker! 20:marked"},
		names.Piece:  {"9:Twig! 20:Twig", "17:Bough!"},
		names.Row: {
			"11:Row 1! 14:1", "12:Row 2! 15:2", "13:Rows 3-5! 15:2-5~ 15:2-5~ 15:5 20:3", "14:Row 6!", "15:Row 7!", "18:Row 1!", "20:Rnd 2!",
		},
	} {
		assert.Equal(t, want, told(text, index, kind), kind)
	}
}

func TestNameAtAPlace(t *testing.T) {
	text := source.New(hedge)
	index := names.Of(syntax.Read(text))
	for words, want := range map[string]string{
		"With |A, ch": "A", "With A|, ch": "A", "ch of Th|orn": "Thorn", "With A,| ch": "", "|wst in last": "wst", "rep Row |1": "1",
		"Piece: T|wig": "Twig", "|Row 7": "Row 7",
	} {
		at := strings.Index(hedge, strings.Replace(words, "|", "", 1)) + strings.Index(words, "|")
		name, m := index.At(at)
		if want == "" {
			assert.Nil(t, name, words)
			continue
		}
		require.NotNil(t, name, words)
		assert.Equal(t, want, text.Slice(m.Span), words)
	}
}

// In every example each mention lies in the text and is written out, and of
// those that are written no two overlap.
func TestNamesOfEveryExample(t *testing.T) {
	paths, err := filepath.Glob("../../testdata/*/*.crochet")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, path := range paths {
		content, err := os.ReadFile(path)
		require.NoError(t, err)
		text := source.New(string(content))
		index := names.Of(syntax.Read(text))
		require.NotEmpty(t, index.Names, path)
		end := 0
		index.Within(source.Span{End: text.Len()}, func(n *names.Name, m names.Mention) {
			if m.Span.Start < end || m.Span.Empty() || m.Span.End > text.Len() {
				t.Errorf("%s: %q at %v, after one that ends at %d", path, text.Slice(m.Span), m.Span, end)
			}
			end = m.Span.End
			if at, _ := index.At(m.Span.Start); at != n {
				t.Errorf("%s: %q is not found at its own place", path, text.Slice(m.Span))
			}
		})
	}
}
