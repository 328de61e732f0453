package lsp

import (
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// FEATURES.md names every request that is answered and no other, each with a test
// that is there.
func TestListOfFeatures(t *testing.T) {
	content, err := os.ReadFile("FEATURES.md")
	require.NoError(t, err)
	paths, err := filepath.Glob("*_test.go")
	require.NoError(t, err)
	var tests strings.Builder
	for _, path := range paths {
		code, err := os.ReadFile(path)
		require.NoError(t, err)
		tests.Write(code)
	}
	answered := slices.Concat(slices.Collect(maps.Keys(features)), slices.Collect(maps.Keys((&server{}).requests())))
	listed := each(string(content), "(?m)^\\| `([a-zA-Z/]+)` \\|[^|]+\\| `\\w+` \\|[^|]+\\|$")
	assert.ElementsMatch(t, answered, listed)
	for _, name := range each(string(content), "`(Test\\w+)`") {
		assert.Contains(t, tests.String(), "func "+name+"(t *testing.T)")
	}
}

// Every picture of what the server does is taken by the test of VS Code, is there,
// and is shown with words for those who do not see it: those of features in
// FEATURES.md, the moving one in README.md.
func TestPicturesOfFeatures(t *testing.T) {
	content, err := os.ReadFile("FEATURES.md")
	require.NoError(t, err)
	readme, err := os.ReadFile("../README.md")
	require.NoError(t, err)
	drives, err := os.ReadFile("../editors/vscode/features.mjs")
	require.NoError(t, err)
	shown := each(string(content), `!\[[^\]]{10,}\]\(pictures/([a-z-]+)\.png\)`)
	assert.ElementsMatch(t, each(string(drives), `(?:picture\(|\[)'([a-z-]+)', (?:'[a-z-]+\.crochet'|\[|'\.)`), shown)
	for _, linked := range each(string(content), `\]\(pictures/([a-z-]+)\.png\)`) {
		assert.Contains(t, shown, linked)
	}
	assert.Equal(t, []string{"live"}, each(string(readme), `!\[[^\]]{10,}\]\(lsp/pictures/([a-z-]+)\.gif\)`))
	there := []string{"live.gif"}
	for _, name := range shown {
		there = append(there, name+".png")
	}
	files, err := os.ReadDir("pictures")
	require.NoError(t, err)
	var kept []string
	for _, file := range files {
		kept = append(kept, file.Name())
	}
	assert.ElementsMatch(t, there, kept)
}

// each gives what the group of an expression is, wherever it matches.
func each(text, expression string) []string {
	var out []string
	for _, m := range regexp.MustCompile(expression).FindAllStringSubmatch(text, -1) {
		out = append(out, m[1])
	}
	return out
}
