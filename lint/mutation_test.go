package lint_test

import (
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lint"
)

var (
	survivors   = flag.Bool("survivors", false, "list each change to a sound pattern that nothing is said about")
	everyMutant = flag.Bool("mutants", false, "make every change to the sound patterns that can be made, not only those drawn")
)

// drawnOf is out of how many changes one is drawn, the same ones in every run,
// so that the tests stay quick. Of a kind that is rare, every one is.
const drawnOf = 10

// outcome is what became of a mutant.
type outcome uint8

const (
	garbled    outcome = iota // no pattern: words that are not understood, or brackets that do not pair
	equivalent                // the piece is the same, stitch for stitch
	killed                    // an error or warning tells of it in time
	elsewhere                 // one does, but too late or in another place
	silent                    // nothing does, and no count and no place shows it: a taller stitch where only stitches are counted
	survived                  // nothing does, and something shows it
	outcomes
)

// unnoticed names the outcomes that are listed on request.
var unnoticed = map[outcome]string{elsewhere: "told elsewhere", silent: "nothing states it", survived: "not noticed"}

// tried is a mutant and what became of it.
type tried struct {
	mutant
	outcome outcome
	where   string // file and line
	was     string // the words that were changed
	row     string // what the changed row then makes
}

// floors are how many of a hundred changes of each kind are noticed at least.
// Of those that something shows, the floor is what is reached. Of all that alter
// the piece, it stands a few below: that share also moves with how much the
// patterns happen to state.
var floors = map[change]struct{ altering, knowable float64 }{
	number:       {89, 96},
	statedCount:  {99, 99},
	swapStitch:   {70, 99},
	repeatCount:  {98, 99},
	deleteClause: {92, 96},
	doubleClause: {93, 97},
	dropReturn:   {100, 100},
	swapShaping:  {98, 99},
}

// One thing is changed in each sound pattern, everywhere and in turn: a reader
// of the findings must be told of it on that row or at the first that can know.
func TestMutation(t *testing.T) {
	all, possible := tryFiles(t)
	got := scores(all)
	t.Logf("%d of %d changes\n%s", len(all), possible, scoreTable(got))
	for _, c := range changes {
		s, floor := got[c], floors[c]
		assert.NotZero(t, s[killed], "%s: nothing is tried", c)
		assert.GreaterOrEqual(t, s.share(s.altering()), floor.altering, "%s: fewer are noticed than before", c)
		assert.GreaterOrEqual(t, s.share(s.knowable()), floor.knowable, "%s: fewer are noticed than before", c)
	}
	if !*survivors {
		return
	}
	for _, m := range all {
		if name, ok := unnoticed[m.outcome]; ok {
			fmt.Printf("%s: %s: %s: %s\n\t%s\n", m.where, m.change, name, m.was, m.row)
		}
	}
}

// tryFiles tries the mutants of every sound pattern, a file at a time on each
// processor, and tells how many could be made.
func tryFiles(t *testing.T) (all []tried, possible int) {
	t.Helper()
	var paths []string
	for _, dir := range []string{"patterns", "worked"} {
		list, err := filepath.Glob(filepath.Join("../testdata", dir, "*.crochet"))
		require.NoError(t, err)
		require.NotEmpty(t, list)
		paths = append(paths, list...)
	}
	out, made := make([][]tried, len(paths)), make([]int, len(paths))
	var wait sync.WaitGroup
	next := make(chan int)
	for range runtime.GOMAXPROCS(0) {
		wait.Add(1)
		go func() {
			defer wait.Done()
			for i := range next {
				out[i], made[i] = tryFile(t, paths[i])
			}
		}()
	}
	for i := range paths {
		next <- i
	}
	close(next)
	wait.Wait()
	for i := range paths {
		all, possible = append(all, out[i]...), possible+made[i]
	}
	return all, possible
}

func tryFile(t *testing.T, path string) (out []tried, possible int) {
	content, err := os.ReadFile(path)
	if err != nil {
		t.Error(err)
		return nil, 0
	}
	sound := lint.Analyze(source.New(string(content)))
	known := map[finding]bool{}
	for _, f := range alarms(sound, 0, 0) {
		known[f] = true
	}
	mutants, draw := mutantsOf(sound), rand.New(rand.NewPCG(1, 1))
	for _, m := range mutants {
		if draw.IntN(drawnOf) > 0 && m.change != dropReturn && !*everyMutant {
			continue
		}
		out = append(out, try(sound, known, m, filepath.Base(path)))
	}
	return out, len(mutants)
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
	if result.outcome == survived && !changesSkip(m) && slices.Equal(shown(a.Fabric, near, m.edit.Span.End, grown), shown(sound.Fabric, near, 0, 0)) {
		result.outcome = silent
	}
	return result
}

// changesSkip tells whether a mutant skips other places: either the count shows
// it, or the row passes over places without a word.
func changesSkip(m mutant) bool {
	found := false
	syntax.Walk(m.row.Tree.Clauses, func(c syntax.Clause) {
		at := m.row.Tree.Abs(c.Span)
		if _, ok := c.Node.(*syntax.Skip); ok {
			found = found || max(at.Start, m.edit.Span.Start) < min(at.End, m.edit.Span.End) || m.edit.Span == source.At(at.End)
		}
	})
	return found
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
		if f.Severity >= lint.Warning {
			out = append(out, finding{f.Rule, f.Message, soundPlace(f.Span.Start, place, grown)})
		}
	}
	return out
}

// soundPlace is a place of a mutant in the pattern that it was made of.
func soundPlace(at, place, grown int) int {
	if at >= place+grown {
		return at - grown
	}
	return at
}

// usedBy is how many places of the row below a row uses.
func usedBy(row *fabric.Row, size int) int {
	used := 0
	for _, step := range row.Steps {
		if size < len(step.Used) {
			used += step.Used[size]
		}
	}
	return used
}

// spaces are the chain spaces that a row makes, where its stated count has any.
func spaces(t fabric.Tally) []fabric.PartCount {
	if !slices.ContainsFunc(t.Compared, func(c fabric.Compared) bool { return strings.HasSuffix(c.Name, " sp") }) {
		return nil
	}
	return slices.DeleteFunc(slices.Clone(t.Parts), func(p fabric.PartCount) bool { return !strings.HasSuffix(p.Name, " sp") })
}

// shown is what the rows in some places of the sound pattern let a maker see
// against the words: their stated counts, their spaces where those count any,
// and the places that they have and leave.
func shown(f *fabric.Fabric, near []source.Span, place, grown int) []string {
	var out []string
	for row := range f.Rows() {
		at := soundPlace(row.Tree.At, place, grown)
		if !slices.ContainsFunc(near, func(s source.Span) bool { return s.Contains(at) }) {
			continue
		}
		for size, t := range row.Tallies {
			line := fmt.Sprint(t.Known, t.Compared, spaces(t))
			if used := usedBy(row, size); used > 0 { // a ring is worked into as a whole
				line += fmt.Sprint(used, t.Left)
			}
			out = append(out, line)
		}
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
func worked(s fabric.Stitch) (seen struct {
	fabric.Stitch
	how fabric.Manner
}) {
	seen.Stitch, seen.how = s, *s.Manner
	seen.Row, seen.Clause, seen.Object, seen.Manner = min(s.Row, 0), 0, 0, nil
	seen.how.Turning, seen.how.Yarn = false, ""
	return seen
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

// score counts the mutants of one kind by their outcomes.
type score [outcomes]int

func scores(all []tried) map[change]score {
	out := map[change]score{}
	for _, m := range all {
		s := out[m.change]
		s[m.outcome]++
		out[m.change] = s
	}
	return out
}

func (s score) plus(t score) score {
	for i := range s {
		s[i] += t[i]
	}
	return s
}

// made counts all mutants, altering those that make another piece, knowable
// those of them that something shows.
func (s score) made() int     { return s.altering() + s[garbled] + s[equivalent] }
func (s score) altering() int { return s.knowable() + s[silent] }
func (s score) knowable() int { return s[killed] + s[elsewhere] + s[survived] }

// share is how many of a hundred mutants are killed.
func (s score) share(of int) float64 { return 100 * float64(s[killed]) / float64(max(of, 1)) }

func scoreTable(got map[change]score) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%-24s%7s%9s%12s%8s%11s%19s%13s%14s%14s\n", "change", "made", "garbled", "equivalent", "killed", "elsewhere",
		"nothing states it", "not noticed", "of altering", "of knowable")
	line := func(name string, s score) {
		fmt.Fprintf(&b, "%-24s%7d%9d%12d%8d%11d%19d%13d%13.1f%%%13.1f%%\n", name, s.made(), s[garbled], s[equivalent], s[killed],
			s[elsewhere], s[silent], s[survived], s.share(s.altering()), s.share(s.knowable()))
	}
	all := score{}
	for _, c := range changes {
		line(string(c), got[c])
		all = all.plus(got[c])
	}
	line("all", all)
	return b.String()
}
