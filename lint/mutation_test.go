package lint_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lint"
)

var survivors = flag.Bool("survivors", false, "list each change to a sound pattern that nothing is said about")

// outcome is what became of a mutant.
type outcome uint8

const (
	garbled    outcome = iota // no pattern: words that are not understood, or brackets that do not pair
	equivalent                // the piece is the same, stitch for stitch
	killed                    // an error or warning tells of it in time
	elsewhere                 // one does, but too late or in another place
	survived
)

// tried is a mutant and what became of it.
type tried struct {
	mutant
	outcome outcome
	where   string // file and line
	was     string // the words that were changed
	row     string // what the changed row then makes
}

func TestMutation(t *testing.T) {
	var all []tried
	for _, list := range tryFiles(t) {
		all = append(all, list...)
	}
	t.Log("\n" + scoreTable(all))
	if *survivors {
		for _, m := range all {
			if m.outcome == survived || m.outcome == elsewhere {
				fmt.Printf("%s: %s: %s\n\t%s\n", m.where, m.change, m.was, m.row)
			}
		}
	}
}

// tryFiles tries the mutants of every sound pattern, a file at a time on each
// processor.
func tryFiles(t *testing.T) [][]tried {
	t.Helper()
	var paths []string
	for _, dir := range []string{"patterns", "worked"} {
		list, err := filepath.Glob(filepath.Join("../testdata", dir, "*.crochet"))
		require.NoError(t, err)
		require.NotEmpty(t, list)
		paths = append(paths, list...)
	}
	out := make([][]tried, len(paths))
	var wait sync.WaitGroup
	next := make(chan int)
	for range runtime.GOMAXPROCS(0) {
		wait.Add(1)
		go func() {
			defer wait.Done()
			for i := range next {
				out[i] = tryFile(t, paths[i])
			}
		}()
	}
	for i := range paths {
		next <- i
	}
	close(next)
	wait.Wait()
	return out
}

func tryFile(t *testing.T, path string) []tried {
	content, err := os.ReadFile(path)
	if err != nil {
		t.Error(err)
		return nil
	}
	sound := lint.Analyze(source.New(string(content)))
	known := map[finding]bool{}
	for _, f := range alarms(sound, 0, 0) {
		known[f] = true
	}
	var out []tried
	for _, m := range mutantsOf(sound) {
		out = append(out, try(sound, known, m, filepath.Base(path)))
	}
	return out
}

// try analyses a mutant and tells what became of it.
func try(sound *lint.Analysis, known map[finding]bool, m mutant, file string) tried {
	text, err := sound.Text.Apply([]source.Edit{m.edit})
	if err != nil {
		panic(err)
	}
	a := lint.Analyze(text)
	result := tried{
		mutant:  m,
		where:   fmt.Sprintf("%s:%d", file, 1+sound.Text.LineOf(m.edit.Span.Start)),
		was:     fmt.Sprintf("%q -> %q", sound.Text.Slice(m.edit.Span), m.edit.New),
		outcome: survived,
	}
	grown := text.Len() - sound.Text.Len()
	switch {
	case unread(a) > unread(sound):
		result.outcome = garbled
		return result
	case m.change != statedCount && sameFabric(a.Fabric, sound.Fabric):
		result.outcome = equivalent
		return result
	}
	near := canKnow(sound.Fabric, m.row)
	for _, f := range alarms(a, m.edit.Span.End, grown) {
		if known[f] {
			continue
		}
		result.outcome = elsewhere
		if slices.ContainsFunc(near, func(s source.Span) bool { return s.Contains(f.at) }) {
			result.outcome = killed
			return result
		}
		result.row += " [" + f.rule + " at " + fmt.Sprint(1+sound.Text.LineOf(f.at)) + "]"
	}
	result.row = rowThen(a.Fabric, m.row) + result.row
	return result
}

// rowThen is the row of a mutant with what it makes.
func rowThen(f *fabric.Fabric, row *fabric.Row) string {
	for r := range f.Rows() {
		if r.Tree.At == row.Tree.At {
			return fmt.Sprintf("%s | makes %d %v left %d", strings.Join(strings.Fields(r.Tree.Text), " "), r.Tallies[0].Made, r.Tallies[0].Parts, r.Tallies[0].Left)
		}
	}
	return "the row is gone"
}

// finding is an error or a warning of a mutant; at is its place in the sound
// pattern.
type finding struct {
	rule, message string
	at            int
}

// alarms are the errors and warnings of a pattern that was made grown bytes
// longer at a place.
func alarms(a *lint.Analysis, place, grown int) []finding {
	var out []finding
	for _, f := range a.Findings {
		if f.Severity < lint.Warning {
			continue
		}
		at := f.Span.Start
		if at >= place+grown {
			at -= grown
		}
		out = append(out, finding{f.Rule, f.Message, at})
	}
	return out
}

// unread counts what is not understood in a pattern, and brackets and stars
// that do not pair.
func unread(a *lint.Analysis) int {
	n := 0
	for row := range a.Fabric.Rows() {
		n += len(row.Tree.Unread()) + len(row.Tree.Problems)
	}
	return n
}

// sameFabric tells whether two patterns are the same stitches, each in the same
// place, in every size.
func sameFabric(a, b *fabric.Fabric) bool {
	return slices.EqualFunc(a.Pieces, b.Pieces, func(p, q *fabric.Piece) bool {
		return slices.EqualFunc(p.Stitches, q.Stitches, func(s, t []fabric.Stitch) bool {
			return slices.EqualFunc(s, t, func(x, y fabric.Stitch) bool { return worked(x) == worked(y) })
		})
	})
}

// worked is what a maker sees of a stitch: not which words it was made by.
func worked(s fabric.Stitch) fabric.Stitch {
	s.Row, s.Clause, s.Object, s.Turning, s.Yarn = min(s.Row, 0), 0, 0, false, ""
	return s
}

// canKnow are the places where a change of a row can show at the earliest: the
// row, those after it as far as the next one that states a count, and the pieces
// that name its piece.
func canKnow(f *fabric.Fabric, changed *fabric.Row) []source.Span {
	rows := changed.Piece.Rows[changed.Index:]
	if i := slices.IndexFunc(rows[1:], func(r *fabric.Row) bool { return r.Stated != nil }); i >= 0 {
		rows = rows[:i+2]
	}
	out := []source.Span{changed.Tree.Span().Union(rows[len(rows)-1].Tree.Span())}
	for _, piece := range f.Pieces {
		if piece == changed.Piece || !names(piece, changed.Piece.Tree) || len(piece.Rows) == 0 {
			continue
		}
		out = append(out, piece.Rows[0].Tree.Span().Union(piece.Rows[len(piece.Rows)-1].Tree.Span()))
	}
	return out
}

// names tells whether a piece is worked on another, or as another.
func names(piece *fabric.Piece, other *syntax.Piece) bool {
	return other.Name != "" && slices.ContainsFunc(piece.Rows, func(r *fabric.Row) bool {
		return strings.Contains(strings.ToLower(r.Tree.Text), strings.ToLower(other.Name))
	})
}

func scoreTable(all []tried) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%-24s %6s %8s %11s %7s %10s %9s %6s\n", "change", "made", "garbled", "equivalent", "killed", "elsewhere", "survived", "score")
	total := [survived + 1]int{}
	for _, c := range changes {
		n := [survived + 1]int{}
		for _, m := range all {
			if m.change == c {
				n[m.outcome]++
				total[m.outcome]++
			}
		}
		line(&b, string(c), n)
	}
	line(&b, "all", total)
	return b.String()
}

func line(b *strings.Builder, name string, n [survived + 1]int) {
	alter := n[killed] + n[elsewhere] + n[survived]
	fmt.Fprintf(b, "%-24s %6d %8d %11d %7d %10d %9d %6.1f\n", name, alter+n[garbled]+n[equivalent], n[garbled], n[equivalent], n[killed], n[elsewhere], n[survived], 100*float64(n[killed])/float64(max(alter, 1)))
}
