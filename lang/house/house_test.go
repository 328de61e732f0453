package house_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/house"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

func work(t *source.Text) *fabric.Fabric { return fabric.Work(syntax.Read(t)) }

const (
	mittHead = "Pattern: Stile mitt\nTerms: US\n\nPiece: Cuff\n"
	mittFoot = "Fasten off.\n"
)

const mitt = mittHead + `With A,ch 21.
Row 1:Sc in 2nd ch from hook and in each ch across ; turn.  (20 sc)
Row 2: Ch 1, 5 sc, skip next 2 sts, sc in each of next 3 sts, single crochet in next 10 sts, turn. — 18 sts
Row 3: Ch 1, *sc in next 2 sts, 2 sc in next st; rep from * 5 times more, turn. (24 sc)
Rnd 4: Ch 1, [sc 3, inc] 6 times. {30 sts}
` + mittFoot

// TestFormat writes one pattern in the styles of several houses.
func TestFormat(t *testing.T) {
	for _, test := range []struct {
		name  string
		style house.Style
		want  string
	}{
		{"tidied only", house.Style{}, `Row 1: Sc in 2nd ch from hook and in each ch across; turn. (20 sc)
Row 2: Ch 1, 5 sc, skip next 2 sts, sc in each of next 3 sts, single crochet in next 10 sts, turn. — 18 sts
Row 3: Ch 1, *sc in next 2 sts, 2 sc in next st; rep from * 5 times more, turn. (24 sc)
Rnd 4: Ch 1, [sc 3, inc] 6 times. {30 sts}
`},
		{"places named, narrow", house.Style{Width: 44, Ways: map[string]string{
			"run": "sc in next 5 sts", "skip": "sk", "round": "round", "stitches": "short", "count": "(24 sts)", "repeat": "[sc, inc] 6 times",
		}}, `Row 1: Sc in 2nd ch from hook and in each ch
  across; turn. (20 sc)
Row 2: Ch 1, sc in next 5 sts, sk next
  2 sts, sc in next 3 sts, sc in next
  10 sts, turn. (18 sts)
Row 3: Ch 1, [sc in next 2 sts, 2 sc in next
  st] 6 times, turn. (24 sc)
Round 4: Ch 1, [sc in next 3 sts, inc]
  6 times. (30 sts)
`},
		{"short steps, stitches in full", house.Style{Ways: map[string]string{
			"run": "5 sc", "stitches": "in full", "count": "— 24 sts", "repeat": "*sc, inc; rep from * 5 more times",
		}}, `Row 1: Single crochet in 2nd ch from hook and in each ch across; turn. — 20 single crochet
Row 2: Ch 1, 5 single crochet, skip next 2 sts, 3 single crochet, 10 single crochet, turn. — 18 sts
Row 3: Ch 1, *2 single crochet, 2 single crochet in next st; rep from * 5 more times, turn. — 24 single crochet
Rnd 4: Ch 1, *3 single crochet, increase; rep from * 5 more times. — 30 sts
`},
	} {
		t.Run(test.name, func(t *testing.T) {
			got := house.Format(work(source.New(mitt)), test.style)
			assert.Equal(t, mittHead+"With A, ch 21.\n"+test.want+mittFoot, got.Text.String())
			assert.Empty(t, got.Kept)
		})
	}
}

// styles are one for each way of each aspect, with and without narrow lines.
func styles() []house.Style {
	var out []house.Style
	for _, a := range house.Aspects() {
		for i, way := range a.Ways {
			out = append(out, house.Style{Width: 60 * (i % 2), Ways: map[string]string{a.Name: way}})
		}
	}
	return out
}

type example struct{ name, text string }

// examples are the pattern files in a folder of testdata, * for all.
func examples(t testing.TB, folder string) []example {
	t.Helper()
	paths, err := filepath.Glob(filepath.Join("..", "..", "testdata", folder, "*.crochet"))
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	var out []example
	for _, path := range paths {
		text, err := os.ReadFile(path)
		require.NoError(t, err)
		out = append(out, example{filepath.Base(path), string(text)})
	}
	return out
}

// TestFormatKeepsTheWork formats every example in every style: what is worked is
// the same, a second time changes nothing, and the style is in force.
func TestFormatKeepsTheWork(t *testing.T) {
	all := styles()
	for i, e := range examples(t, "*") {
		name, was := e.name, work(source.New(e.text))
		style := all[(i+5*(i/len(all)))%len(all)] // each file in one of them, in turn
		got, is := formatted(t, name, was, style)
		if len(got.Kept) > 0 {
			continue
		}
		uses := house.UsesIn(is, house.Aspects())
		for _, piece := range is.Pieces {
			for _, u := range uses(piece) {
				if way := style.Ways[u.Aspect.Name]; way != "" && len(u.Edits(way)) > 0 {
					t.Errorf("%s in %v: %q is not written so", name, style, got.Text.Slice(u.At()))
				}
			}
		}
	}
}

// formatted formats a pattern: its edits make the text, what is worked is the
// same, and a second time changes nothing.
func formatted(t *testing.T, name string, was *fabric.Fabric, style house.Style) (house.Formatted, *fabric.Fabric) {
	t.Helper()
	got := house.Format(was, style)
	edited, err := was.File.Text.Apply(got.Edits)
	require.NoError(t, err)
	require.Equal(t, got.Text.String(), edited.String(), "%s in %v, by its edits", name, style)
	is := work(got.Text)
	require.Equal(t, made(was), made(is), "%s in %v", name, style)
	again := house.Format(is, style)
	require.Equal(t, got.Text.String(), again.Text.String(), "%s in %v, a second time", name, style)
	return got, is
}

// mostFuzzed bounds the texts that are formatted while fuzzing.
const mostFuzzed = 500

// FuzzFormat formats any text in any style.
func FuzzFormat(f *testing.F) {
	for i, e := range examples(f, "counted") {
		f.Add(e.text[:min(len(e.text), mostFuzzed)], uint8(i))
	}
	all := styles()
	f.Fuzz(func(t *testing.T, text string, style uint8) {
		if len(text) <= mostFuzzed {
			formatted(t, "the text", work(source.New(text)), all[int(style)%len(all)])
		}
	})
}

// made lists, for each size of each row, how many stitches it makes and states.
func made(f *fabric.Fabric) [][4]int {
	var out [][4]int
	for row := range f.Rows() {
		for size := range row.Tallies {
			tally := &row.Tallies[size]
			known := 0
			if tally.Known {
				known = 1
			}
			stated := 0
			for _, c := range tally.Compared {
				stated += c.Stated
			}
			out = append(out, [4]int{known, tally.Made, tally.Chains, stated})
		}
	}
	return out
}

// TestFormatKeepsTheFile keeps a file's line ends, its mark at the head and its
// white space outside the instructions.
func TestFormatKeepsTheFile(t *testing.T) {
	text := "\ufeffTerms: US\r\n\r\nNote:  two  spaces.\r\n\r\nPiece: Cuff\r\n// mine  own\r\nCh 6.\r\nRow 1: Sc in 2nd ch from hook and in\r\n  next 4 ch .\r\n"
	got := house.Format(work(source.New(text)), house.Style{})
	assert.Equal(t, strings.Replace(text, "ch .", "ch.", 1), got.Text.String())
	got = house.Format(work(source.New(text)), house.Style{Width: 30})
	assert.Equal(t, strings.Replace(text, "hook and in\r\n  next 4 ch .", "hook\r\n  and in next 4 ch.", 1), got.Text.String())
}

// TestFormatKeepsWhatIsNoWord keeps a bullet between words, and a byte that is no
// letter, where lines are broken anew.
func TestFormatKeepsWhatIsNoWord(t *testing.T) {
	text := "Terms: US\n\nPiece: Cuff\nCh 11.\nRow 1: Sc in 2nd ch from hook • sc in next ch \xb0, sc in each ch across.\n"
	for _, width := range []int{0, 30, 200} {
		got := house.Format(work(source.New(text)), house.Style{Width: width}).Text.String()
		for _, kept := range []string{"•", "\xb0"} {
			assert.Contains(t, got, kept, "%d wide", width)
		}
	}
}

// TestFormatLeavesWhatIsNoUse leaves what only looks like a use: a count without brackets
// is no run, and what is worked once no repeat.
func TestFormatLeavesWhatIsNoUse(t *testing.T) {
	text := "Terms: US\n\nPiece: Ring\nRnd 1: 6 sc in magic ring. 6 sc.\nRnd 2: [2 sc in next st, inc] 1 time, 2 sc in each of next 4 sts. 12 sc.\n"
	for _, style := range styles() {
		if style.Ways["run"] != "" || style.Ways["repeat"] != "" {
			style.Width = 0
			got := house.Format(work(source.New(text)), style)
			assert.Contains(t, got.Text.String(), "ring. 6 sc.", style.Ways)
			assert.Contains(t, got.Text.String(), "sts. 12 sc.", style.Ways)
			assert.Contains(t, got.Text.String(), "[2 sc in next st, inc] 1 time", style.Ways)
		}
	}
}

// TestFormatLeavesWhatWouldChange leaves an instruction as it was where the house's
// way would be worked otherwise: in a ring, `5 sc` all go into it.
func TestFormatLeavesWhatWouldChange(t *testing.T) {
	text := "Terms: US\n\nPiece: Ring\nMake a magic ring.\nRnd 1: 6 sc. (6 sc)\nRnd 2: 2 sc in each st around. (12 sc)\n"
	got := house.Format(work(source.New(text)), house.Style{Ways: map[string]string{"run": "sc in next 5 sts"}})
	assert.Equal(t, text, got.Text.String())
	assert.Equal(t, []source.Span{{Start: strings.Index(text, "Rnd 1"), End: strings.Index(text, "Rnd 2") - 1}}, got.Kept)
}
