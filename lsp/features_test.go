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
// that is there, and with a picture only where one is taken.
func TestListOfFeatures(t *testing.T) {
	content, err := os.ReadFile("FEATURES.md")
	require.NoError(t, err)
	drives, err := os.ReadFile("../editors/vscode/test.mjs")
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
	var listed []string
	for _, m := range regexp.MustCompile("(?m)^\\| `([a-zA-Z/]+)` \\|[^|]+\\| `\\w+` \\| (?:`([a-z-]+)` )?\\|$").FindAllStringSubmatch(string(content), -1) {
		listed = append(listed, m[1])
		if m[2] != "" {
			assert.Contains(t, string(drives), "picture('"+m[2]+"')", m[1])
		}
	}
	assert.ElementsMatch(t, answered, listed)
	for _, name := range regexp.MustCompile("`(Test\\w+)`").FindAllStringSubmatch(string(content), -1) {
		assert.Contains(t, tests.String(), "func "+name[1]+"(t *testing.T)")
	}
}
