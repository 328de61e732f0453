package fabric_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"stitchproof/lang/fabric"
)

// Published pieces, worded anew, with the counts that their sources print.
// Each file names its source.

const workedDir = "../../testdata/worked"

// patternFiles reads the patterns in a folder, by name.
func patternFiles(t testing.TB, dir string) map[string]string {
	t.Helper()
	paths, err := filepath.Glob(filepath.Join(dir, "*.crochet"))
	if err != nil || len(paths) == 0 {
		t.Fatalf("no patterns in %s: %v", dir, err)
	}
	out := map[string]string{}
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		out[strings.TrimSuffix(filepath.Base(path), ".crochet")] = string(text)
	}
	return out
}

func TestWorkedExamplesAgree(t *testing.T) {
	for name, text := range patternFiles(t, workedDir) {
		t.Run(name, func(t *testing.T) {
			if !strings.HasPrefix(text, "// Source: ") {
				t.Error("the file names no source")
			}
			stated := 0
			for _, r := range allRows(worked(text)) {
				for _, p := range r.Tree.Problems {
					t.Errorf("%s: %+v", r.Tree.Text, p)
				}
				for _, tally := range r.Tallies {
					if !tally.Known {
						t.Errorf("not counted: %s", r.Tree.Text)
					}
					for _, fault := range tally.Faults {
						t.Errorf("fault %+v: %s", fault, r.Tree.Text)
					}
					if r.Stated == nil {
						continue
					}
					stated++
					if tally.Agrees() != fabric.Agrees {
						t.Errorf("stated count not met, %+v: %s", tally.Compared, r.Tree.Text)
					}
				}
			}
			if stated == 0 {
				t.Error("the file states no count")
			}
		})
	}
}

// allRows are the rows of every piece.
func allRows(f *fabric.Fabric) []*fabric.Row {
	var out []*fabric.Row
	for _, p := range f.Pieces {
		out = append(out, p.Rows...)
	}
	return out
}

// slips are the published pieces that contradict themselves: the line of the
// file where that shows, what it states and what it makes.
var slips = map[string]struct{ line, stated, made int }{
	"e37d-nine-spaces":  {line: 7, stated: 8, made: 9},
	"e39a-thin-corners": {line: 8, stated: 24, made: 21},
	"e44-six-rays":      {line: 7, stated: 8, made: 6},
}

func TestPrintedSlipsAreFound(t *testing.T) {
	files := patternFiles(t, filepath.Join(workedDir, "slips"))
	if len(files) != len(slips) {
		t.Errorf("%d files, %d slips known", len(files), len(slips))
	}
	for name, text := range files {
		t.Run(name, func(t *testing.T) {
			want := slips[name]
			for _, r := range allRows(worked(text)) {
				line := 1 + strings.Count(text[:r.Tree.At], "\n")
				tally := &r.Tallies[0]
				switch {
				case line == want.line:
					if tally.Agrees() != fabric.Disagrees || tally.Compared[0].Stated != want.stated || tally.Compared[0].Made != want.made {
						t.Errorf("line %d: %+v, want %d stated and %d made", line, tally.Compared, want.stated, want.made)
					}
				case line < want.line && (tally.Agrees() == fabric.Disagrees || len(tally.Faults) > 0):
					t.Errorf("line %d: %+v %+v, want nothing before line %d", line, tally.Compared, tally.Faults, want.line)
				}
			}
		})
	}
}
