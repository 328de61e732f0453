package syntax_test

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"stitchproof/lang/syntax"
)

// wording is one line of the tables under testdata/phrasing: a way of writing
// something, and what it means in the normal form.
type wording struct {
	at            string // file and line
	table         string // what the table is about, as its first line says
	kind          string
	wording, mean string
}

// tables are the tables under testdata/phrasing, in the order of the reference.
var tables = []string{
	"label", "start", "work", "place", "chain", "skip", "group", "repeat", "count", "join", "yarn", "marker", "rows", "branch", "note",
}

// labelKinds are the kinds of wording that begin a row; the others stand in
// one.
var labelKinds = map[string]bool{"row label": true, "several rows": true, "row in turn": true, "row by name": true}

// document is the wording in the smallest file that it is read in.
func (w wording) document() string {
	if labelKinds[w.kind] {
		return "Row 1: ch 3, turn.\n" + w.wording + " sc in next 2 sts\n"
	}
	return "Row 1: " + w.wording + "\n"
}

// wordings reads every table of wordings.
func wordings(t testing.TB) []wording {
	t.Helper()
	files, err := filepath.Glob(filepath.Join("..", "..", "testdata", "phrasing", "*.tsv"))
	if err != nil || len(files) != len(tables) {
		t.Fatalf("%d tables in testdata/phrasing, want %d: %v", len(files), len(tables), err)
	}
	var out []wording
	for _, name := range tables {
		name += ".tsv"
		lines := strings.Split(readFile(t, filepath.Join("..", "..", "testdata", "phrasing", name)), "\n")
		about := strings.TrimPrefix(lines[0], "# ")
		for i, line := range lines {
			if line == "" || strings.HasPrefix(line, "#") {
				continue
			}
			at := fmt.Sprintf("%s:%d", name, i+1)
			column := strings.Split(line, "\t")
			if len(column) != 3 {
				t.Fatalf("%s: %d columns, want kind, wording, meaning", at, len(column))
			}
			out = append(out, wording{at, about, column[0], column[1], column[2]})
		}
	}
	return out
}

// TestPhrasing reads every accepted wording: it means what the table says,
// and nothing in it is left unread or found fault with.
func TestPhrasing(t *testing.T) {
	seen := map[string]string{}
	for _, w := range wordings(t) {
		if at, again := seen[w.kind+w.wording]; again {
			t.Errorf("%s: %q stands in %s already", w.at, w.wording, at)
		}
		seen[w.kind+w.wording] = w.at
		rows := rowsOf(read(w.document()))
		if len(rows) == 0 {
			t.Errorf("%s: %q is not read as an instruction", w.at, w.wording)
			continue
		}
		row := rows[len(rows)-1]
		got := normal(row.Clauses)
		if labelKinds[w.kind] {
			got = normalLabel(row.Label) + ": " + got
		}
		if got != w.mean {
			t.Errorf("%s: %q\n\tmeans %s\n\twant  %s", w.at, w.wording, got, w.mean)
		}
		if len(row.Problems) > 0 {
			t.Errorf("%s: %q has problems %v", w.at, w.wording, row.Problems)
		}
	}
}

// TestPhrasingKinds holds the tables to every kind of clause of the notation:
// each kind of node that a reader can meet stands in some meaning.
func TestPhrasingKinds(t *testing.T) {
	met := map[string]bool{}
	var meet func([]syntax.Clause)
	meet = func(list []syntax.Clause) {
		for _, c := range list {
			met[fmt.Sprintf("%T", c.Node)] = true
			for _, inner := range bodies(c.Node) {
				meet(inner)
			}
		}
	}
	for _, w := range wordings(t) {
		for _, r := range rowsOf(read(w.document())) {
			meet(r.Clauses)
		}
	}
	for _, n := range []syntax.Node{
		&syntax.Work{}, &syntax.Chain{}, &syntax.Skip{}, &syntax.Leave{}, &syntax.Group{}, &syntax.Bracket{}, &syntax.Repeat{},
		&syntax.Join{}, &syntax.Turn{}, &syntax.NoJoin{}, &syntax.Finish{}, &syntax.MakeUp{}, &syntax.Yarn{}, &syntax.Marker{},
		&syntax.MagicRing{}, &syntax.Rows{}, &syntax.Even{}, &syntax.Branch{}, &syntax.Return{}, &syntax.Total{}, &syntax.CountsNote{},
		&syntax.Long{}, &syntax.LoopNote{}, &syntax.Shaping{}, &syntax.Along{}, &syntax.Made{}, &syntax.Side{}, &syntax.Remark{}, &syntax.Mark{}, &syntax.Likewise{},
	} {
		if name := fmt.Sprintf("%T", n); !met[name] {
			t.Errorf("no wording gives %s", name)
		}
	}
}
