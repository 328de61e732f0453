package main

import (
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// layers are the packages in the order of the table of DEVELOPERS.md, with their places.
func layers(t *testing.T) map[string]int {
	t.Helper()
	content, err := os.ReadFile("../../DEVELOPERS.md")
	require.NoError(t, err)
	out := map[string]int{}
	for _, row := range regexp.MustCompile("(?m)^\\| ((?:`[a-z/]+`(?:, )?)+) \\|").FindAllStringSubmatch(string(content), -1) {
		for _, name := range regexp.MustCompile("[a-z/]+").FindAllString(row[1], -1) {
			if info, err := os.Stat(filepath.Join("../..", name)); err == nil && info.IsDir() {
				out[name] = len(out)
			}
		}
	}
	return out
}

// Text goes one way: a package imports only those that stand before it in the table.
// Tests may look further on.
func TestPackagesImportOnlyThoseBeforeThem(t *testing.T) {
	order := layers(t)
	placeOf := func(name string) (int, bool) { // that of the folder which the table names
		for ; name != "."; name = path.Dir(name) {
			if at, ok := order[name]; ok {
				return at, true
			}
		}
		return 0, false
	}
	imports := 0
	look := func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() || filepath.Ext(name) != ".go" || strings.HasSuffix(name, "_test.go") {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		name = strings.TrimPrefix(filepath.ToSlash(name), "../../")
		own, ok := placeOf(path.Dir(name))
		assert.True(t, ok, "%s is in no package of the table", name)
		for _, i := range file.Imports {
			written, err := strconv.Unquote(i.Path.Value)
			require.NoError(t, err)
			imported, ours := strings.CutPrefix(written, "stitchproof/")
			if !ours {
				continue
			}
			at, ok := placeOf(imported)
			assert.True(t, ok && at <= own, "%s imports %s, which does not stand before it", name, imported)
			imports++
		}
		return nil
	}
	for _, top := range []string{"lang", "lint", "lsp", "cmd"} {
		require.NoError(t, filepath.WalkDir(filepath.Join("../..", top), look))
	}
	assert.Greater(t, imports, 300)
}
