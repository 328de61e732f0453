package terms_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
	"stitchproof/lang/terms"
)

func read(text string) *syntax.File { return syntax.Read(source.New(text)) }

// rewritten is a pattern in the words of a dialect.
func rewritten(t *testing.T, text string, to stitch.Dialect) string {
	t.Helper()
	file := read(text)
	edits, err := terms.Rewrite(file, to)
	require.NoError(t, err)
	out, err := file.Text.Apply(edits)
	require.NoError(t, err)
	return out.String()
}

// Every pattern of ours, whichever terms it is in, works to the same stitches in
// the other, and comes back byte for byte.
func TestPatternsThereAndBack(t *testing.T) {
	var paths []string
	for _, folder := range []string{"patterns", "worked"} {
		found, err := filepath.Glob("../../testdata/" + folder + "/*.crochet")
		require.NoError(t, err)
		require.NotEmpty(t, found)
		paths = append(paths, found...)
	}
	both := map[stitch.Dialect]int{}
	for _, path := range paths {
		t.Run(filepath.Base(path), func(t *testing.T) {
			content, err := os.ReadFile(path)
			require.NoError(t, err)
			text := string(content)
			home := terms.Find(read(text))
			if !home.Stated() {
				t.Skip("does not state its terms")
			}
			both[home.Dialect]++
			there := rewritten(t, text, home.Dialect.Other())
			assert.NotEqual(t, text, there)
			assert.Equal(t, home.Dialect.Other(), terms.Find(read(there)).Dialect)
			assert.Empty(t, terms.Find(read(there)).Strangers())
			assert.Equal(t, made(text), made(there))
			if !strings.Contains(text, "half trebles") { // see TestSpellingsThatComeBackOtherwise
				assert.Equal(t, strings.Split(text, "\n"), strings.Split(rewritten(t, there, home.Dialect), "\n"))
			}
		})
	}
	assert.Greater(t, both[stitch.US], 20)
	assert.Greater(t, both[stitch.UK], 2)
}

// made lists what a pattern comes to, a line for each row and size: the count and
// whether what the row states agrees, and the stitches and spaces.
func made(text string) []string {
	var out []string
	f := fabric.Work(read(text))
	for i, p := range f.Pieces {
		for size := range f.Sizes() {
			for _, r := range p.Rows {
				t := r.Tallies[size]
				out = append(out, fmt.Sprintf("%d %d %d: %v %d %v", i, size, r.Index, t.Known, t.Made, t.Agrees()))
			}
			for _, s := range p.Stitches[size] {
				kind := "space"
				if s.Kind != nil {
					kind = s.Kind.ID
				}
				out = append(out, fmt.Sprintf("%d %d %d: %s %d in %d", i, size, s.Row, kind, s.Chains, s.Into))
			}
		}
	}
	return out
}
