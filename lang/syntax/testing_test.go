package syntax_test

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var update = flag.Bool("update", false, "rewrite what is generated from the code: goldens and the marked parts of NOTATION.md")

func read(text string) *syntax.File { return syntax.Read(source.New(text)) }

// readRow reads a wording as the only row of a file.
func readRow(t *testing.T, wording string) *syntax.Row {
	t.Helper()
	rows := rowsOf(read("Row 1: " + wording + "\n"))
	if len(rows) != 1 {
		t.Fatalf("%q reads as %d rows, want 1", wording, len(rows))
	}
	return rows[0]
}

// rowsOf lists the rows of a file, piece by piece.
func rowsOf(f *syntax.File) []*syntax.Row {
	var out []*syntax.Row
	for _, p := range f.Pieces {
		out = append(out, p.Rows...)
	}
	return out
}

// examples gives the example patterns in folders of testdata, by their files'
// names: "patterns", which are right, and "broken".
func examples(t testing.TB, folders ...string) map[string]string {
	t.Helper()
	out := map[string]string{}
	for _, folder := range folders {
		files, err := filepath.Glob(filepath.Join("..", "..", "testdata", folder, "*.crochet"))
		if err != nil || len(files) == 0 {
			t.Fatalf("no example patterns in testdata/%s: %v", folder, err)
		}
		for _, name := range files {
			out[filepath.Base(name)] = readFile(t, name)
		}
	}
	return out
}

func readFile(t testing.TB, name string) string {
	t.Helper()
	text, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// golden compares got with a file under testdata, or rewrites the file.
func golden(t *testing.T, name, got string) {
	t.Helper()
	path := filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	if want := readFile(t, path); got != want {
		t.Errorf("%s is out of step: run the test with -update and look at the change", path)
	}
}

// blank tells what may stand between tokens: white space, quotes, what word
// processors slip in unseen, and the bullets and pictures of a page.
func blank(r rune) bool {
	if strings.ContainsRune("_`\\\"“”„«»•·●▪◦\ufe0f", r) {
		return true
	}
	return unicode.IsSpace(r) || unicode.Is(unicode.Cf, r) || unicode.Is(unicode.So, r)
}
