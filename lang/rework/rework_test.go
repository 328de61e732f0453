package rework_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/names"
	"stitchproof/lang/rework"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

func patternOf(text string) *rework.Pattern {
	t := source.New(text)
	file := syntax.Read(t)
	return &rework.Pattern{Text: t, File: file, Fabric: fabric.Work(file)}
}

// examples are our own patterns.
func examples(t *testing.T) map[string]*rework.Pattern {
	t.Helper()
	paths, err := filepath.Glob("../../testdata/patterns/*.crochet")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	out := map[string]*rework.Pattern{}
	for _, path := range paths {
		content, err := os.ReadFile(path)
		require.NoError(t, err)
		out[filepath.Base(path)] = patternOf(string(content))
	}
	return out
}

// checked is a pattern after edits, which must leave the work as it is.
func checked(t *testing.T, p *rework.Pattern, edits []source.Edit) *rework.Pattern {
	t.Helper()
	after, err := p.Text.Apply(edits)
	require.NoError(t, err)
	out := patternOf(after.String())
	assert.True(t, fabric.Same(p.Fabric, out.Fabric), "another work:\n%s", after)
	return out
}

// What can be renamed in an example, one in three of it, can be renamed and named
// back.
func TestRenameThereAndBack(t *testing.T) {
	renamed := 0
	for name, p := range examples(t) {
		index := names.Of(p.File)
		for i, n := range index.Names {
			m := n.Mentions[0]
			if i%3 > 0 || rework.Renamable(n, m) != nil {
				continue
			}
			to := strings.Repeat("z", i+2) + "w"
			edits, err := p.Rename(n, m, to)
			require.NoError(t, err, "%s: %s", name, p.Text.Slice(m.Span))
			after := checked(t, p, edits)
			assert.NotContains(t, p.Text.String(), to)
			assert.Equal(t, len(edits), strings.Count(strings.ToLower(after.Text.String()), to)) // a heading stays in its capitals
			back, at := names.Of(after.File).At(m.Span.Start)
			edits, err = after.Rename(back, at, p.Text.Slice(m.Span))
			require.NoError(t, err)
			assert.True(t, strings.EqualFold(p.Text.String(), checked(t, after, edits).Text.String()))
			renamed++
		}
	}
	assert.Greater(t, renamed, 15)
}

func TestRenameIsRefused(t *testing.T) {
	p := patternOf("Pattern: Cup\nTerms: US\nYarn A: bark\nYarn B: haw\n\nPiece: Cup\nWith A, ch 5.\nRow 1: With B, sc in each ch.\n")
	index := names.Of(p.File)
	at := func(words string) (*names.Name, names.Mention) {
		return index.At(strings.Index(p.Text.String(), words))
	}
	for words, to := range map[string]string{"A: bark": "B", "A, ch": "sc", "B: haw": "\n", "Row 1": "2", "sc in": "dc"} {
		name, m := at(words)
		require.NotNil(t, name, words)
		_, err := p.Rename(name, m, to)
		assert.Error(t, err, "%s as %s", words, to)
	}
}

const cup = `Pattern: Cup
Terms: US

Piece: Cup
Rnd 1: 6 sc in magic ring. (6 sc)
Rnd 2: 2 sc in each st around. (12 sc)
Rnd 3: Sc in each st around.
Rnd 4: Sc in each st around.
Rnd 7: Sc in each st
  around.
Rnd 9: Rep Rnd 2.
Rnds 10-11: Rep Rnd 4.
`

// offered gives a pattern after each change offered at some words of it, by title.
func offered(t *testing.T, text, words string, of func(*rework.Pattern, int) []rework.Change) map[string]string {
	t.Helper()
	p := patternOf(text)
	at := strings.Index(text, words)
	require.GreaterOrEqual(t, at, 0)
	out := map[string]string{}
	for _, c := range of(p, at) {
		out[c.Title] = checked(t, p, c.Edits).Text.String()
	}
	return out
}

func TestRows(t *testing.T) {
	rows := func(p *rework.Pattern, at int) []rework.Change { return p.Rows(at) }
	got := offered(t, cup, "Rnd 4: Sc", rows)
	assert.Equal(t, strings.Replace(cup, "Rnd 3: Sc in each st around.\nRnd 4: Sc", "Rnds 3-4: Sc", 1), got["write rows 3-4 as one"])
	renumbered := strings.NewReplacer("Rnd 7:", "Rnd 5:", "Rnd 9:", "Rnd 6:", "10-11", "7-8").Replace(cup)
	assert.Equal(t, renumbered, got["number the rows from 1"])
	assert.Len(t, got, 2)

	told := strings.Replace(cup, "around.\nRnd 4", "around.\n\nThe rim begins to turn in.\n\nRnd 4", 1)
	assert.NotContains(t, offered(t, told, "Rnd 4: Sc", rows), "write rows 3-4 as one", "what stands between would be lost")

	got = offered(t, cup, "Rnds 10-11", rows)
	assert.Equal(t, strings.Replace(cup, "Rnds 10-11: Rep Rnd 4.", "Rnd 10: Rep Rnd 4.\nRnd 11: Rep Rnd 4.", 1), got["write rows 10 to 11 one by one"])

	got = offered(t, "Terms: US\n\nPiece: Cup\nRnd 1: 6 sc in ring.\nRnd 5: 2 sc in each st around.\nRnd 6: Rep Rnd 5.\n", "Rnd 5:", rows)
	assert.Equal(t, "Terms: US\n\nPiece: Cup\nRnd 1: 6 sc in ring.\nRnd 2: 2 sc in each st around.\nRnd 3: Rep Rnd 2.\n", got["number the rows from 1"])
	assert.Empty(t, offered(t, cup, "Pattern", rows))

	const runs = "Terms: US\n\nPiece: Cup\nRnd 1: 6 sc in ring.\nRnd 3: Sc around.\nRnd 4: 2 sc in each st around.\nRnd 5: Sc around.\nRnds 6-8: Rep Rnds 3-5.\n"
	got = offered(t, runs, "Rnd 3:", rows)
	assert.Contains(t, got["number the rows from 1"], "Rnds 5-7: Rep Rnds 2-4.", "Rnd 4 lies within the run and is not written in it")

	assert.Empty(t, offered(t, "Terms: US\n\nPiece: Cup\nRnd 1: 6 sc in ring.\nRnds 2-90: Sc around.\n", "Rnds 2-90", rows), "so many lines nobody wants")
}

func TestWriteCounts(t *testing.T) {
	all := func(p *rework.Pattern, _ int) []rework.Change { return p.WriteCounts() }
	got := offered(t, strings.Split(cup, "Rnd 9")[0], "", all)
	assert.Equal(t, strings.ReplaceAll(strings.Split(cup, "Rnd 9")[0], "around.\n", "around. (12 sc)\n"), got["write the count into every row that lacks one"])
	sized := "Terms: US\nSizes: S (M)\n\nPiece: Cup\nRnd 1: 6 (8) sc in magic ring.\nRnd 2: [Sc in next st, ch 1] around. [6 (8) sts, 6 (8) ch-1 sps]\n"
	got = offered(t, sized, "", all)
	assert.Contains(t, got["write the count into every row that lacks one"], "magic ring. [6 (8) sts]\n")
}

func TestDefine(t *testing.T) {
	define := func(p *rework.Pattern, at int) []rework.Change { return p.Define(at) }
	const lace = `Terms: US

Piece: Cobweb
Rnd 1: Ch 1, [sc in ring, ch 2] 6 times, join.
Rnd 2: Sl st in next ch-2 sp, ch 1, [(sc, ch 3, sc) in next ch-2 sp] around.
Rnd 3: Ch 1, [(sc, ch 3, sc) in next ch-3 sp] around.
`
	got := offered(t, lace, "(sc, ch 3", define)
	want := strings.ReplaceAll(lace, "(sc, ch 3, sc) in", "special in")
	want = strings.Replace(want, "Piece:", "Special stitches\nspecial: (sc, ch 3, sc) in next st.\n\nPiece:", 1)
	assert.Equal(t, map[string]string{"call (sc, ch 3, sc) a stitch of its own": want}, got)
	assert.Empty(t, offered(t, lace, "sc in ring", define))
}

// Every change that is offered in an example leaves its work as it is.
func TestChangesOfEveryExample(t *testing.T) {
	changes := 0
	for _, p := range examples(t) {
		for _, piece := range p.Fabric.Pieces {
			for _, row := range piece.Rows {
				for _, c := range append(p.Rows(row.Tree.At), p.Define(row.Tree.At+len(row.Tree.Text)/2)...) {
					checked(t, p, c.Edits)
					changes++
				}
			}
		}
		for _, c := range p.WriteCounts() {
			checked(t, p, c.Edits)
			changes++
		}
	}
	assert.Greater(t, changes, 20)
}
