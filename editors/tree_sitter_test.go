package editors_test

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"sort"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The tree-sitter grammar colours the example patterns as the one of TextMate does.
// It needs the program tree-sitter; editors/test tree-sitter-crochet brings it.
func TestTreeSitterColours(t *testing.T) {
	program, err := exec.LookPath("tree-sitter")
	if err != nil {
		t.Skip("there is no tree-sitter")
	}
	g := readGrammar(t)
	paths, err := filepath.Glob("../testdata/*/*.crochet")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, path := range paths {
		path, err := filepath.Abs(path)
		require.NoError(t, err)
		content, err := os.ReadFile(path)
		require.NoError(t, err)
		query := exec.Command(program, "query", "queries/highlights.scm", path)
		query.Dir = "tree-sitter-crochet"
		said, err := query.Output()
		require.NoError(t, err)
		var coloured []string
		for _, m := range regexp.MustCompile(`capture: \d+ - ([a-z.]+), start: \((\d+), (\d+)\), end: \((\d+), (\d+)\)`).FindAllStringSubmatch(string(said), -1) {
			require.Equal(t, m[2], m[4], "what is coloured ends on its line")
			coloured = append(coloured, fmt.Sprintf("%04s:%03s-%03s %s", m[2], m[3], m[5], m[1]))
		}
		sort.Strings(coloured)
		assert.Equal(t, g.coloured(string(content)), coloured, filepath.Base(path))
	}
}

// coloured lists what the grammar colours in a text, in the words of the query.
func (g grammar) coloured(text string) []string {
	var out []string
	for n, line := range strings.Split(text, "\n") {
		for at := 0; at < len(line); {
			first, found := []int(nil), ""
			for i, p := range g.Patterns {
				if at > 0 && strings.HasPrefix(bare(p.Match), "^") {
					continue
				}
				m := g.compiled[i].FindStringIndex(line[at:])
				if m != nil && (first == nil || m[0] < first[0]) {
					first, found = m, shown[p.Name].capture
				}
			}
			if first == nil {
				break
			}
			words := line[at+first[0] : at+first[1]]
			space := len(words) - len(strings.TrimLeft(words, " \t"))
			out = append(out, fmt.Sprintf("%04d:%03d-%03d %s", n, at+first[0]+space, at+first[1], found))
			at += first[1]
		}
	}
	sort.Strings(out)
	return out
}
