package fabric_test

import (
	"os"
	"path"
	"path/filepath"
	"regexp"
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
	for _, file := range paths {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		out[strings.TrimSuffix(filepath.Base(file), ".crochet")] = string(text)
	}
	return out
}

func TestWorkedExamplesAgree(t *testing.T) {
	for name, text := range patternFiles(t, workedDir) {
		t.Run(name, func(t *testing.T) {
			if !strings.HasPrefix(text, "// Source: ") {
				t.Error("the file names no source")
			}
			comesOut(t, text)
		})
	}
}

// comesOut checks that a pattern is counted to its end, that nothing is wrong
// with it, and that every count it states is met: at least one. That a branch
// could be called one is no fault.
func comesOut(t *testing.T, text string) {
	t.Helper()
	stated := 0
	f := worked(text)
	rows := allRows(f)
	for _, p := range f.Parts {
		rows = append(rows, p.Rows...)
	}
	for _, r := range rows {
		for _, p := range r.Tree.Problems {
			t.Errorf("%s: %+v", r.Tree.Text, p)
		}
		for size, tally := range r.Tallies {
			if !tally.Known {
				t.Errorf("not counted: %s", r.Tree.Text)
			}
			for _, fault := range tally.Faults {
				if fault.Kind != fabric.BranchUnmarked {
					t.Errorf("fault %+v: %s", fault, r.Tree.Text)
				}
			}
			if r.Stated == nil || !r.Tree.HasSize(size) {
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
}

// TestWorkedExamplesAreListed holds the table of the folder's README.md against
// the files: each is in it once, under words of its own source line.
func TestWorkedExamplesAreListed(t *testing.T) {
	sources := map[string]string{}
	for _, dir := range []string{"", "slips"} {
		for name, text := range patternFiles(t, filepath.Join(workedDir, dir)) {
			line, _, _ := strings.Cut(text, "\n")
			sources[path.Join(dir, name)] = line
		}
	}
	readme, err := os.ReadFile(filepath.Join(workedDir, "README.md"))
	if err != nil {
		t.Fatal(err)
	}
	listed := regexp.MustCompile("(?m)^\\| `(.+?)` \\| (.+) \\| (.+) \\| (.+) \\|$").FindAllStringSubmatch(string(readme), -1)
	for _, row := range listed {
		name, source := row[1], row[3]
		if line, ok := sources[name]; !ok {
			t.Errorf("%s is listed twice, or is no file", name)
		} else if !strings.Contains(line, source) {
			t.Errorf("%s is listed under %q, and its first line is %q", name, source, line)
		}
		delete(sources, name)
	}
	for name := range sources {
		t.Errorf("%s is not listed", name)
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
