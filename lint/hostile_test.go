package lint_test

import (
	"flag"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lint"
)

const (
	hostileHead = "Pattern: Oak leaf\nTerms: US\n\nPiece: Leaf\nRow 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn. (10 sc)\n"
	// hostileSize is how large hostile texts are, in bytes; their quarter is what
	// they are held against.
	hostileSize = 24_000
	// forever is when a text is given up. What grows with the square of a text
	// takes longer at this size, and all others take a hundredth.
	forever = 60 * time.Second
)

// repeated is a text that says something thousands of times.
type repeated struct{ name, before, unit, after string }

func (r repeated) text(size int) string {
	var b strings.Builder
	b.WriteString(hostileHead + r.before)
	for i := 2; b.Len() < size; i++ {
		b.WriteString(strings.ReplaceAll(r.unit, "{i}", strconv.Itoa(i)))
	}
	return b.String() + r.after
}

func hostile(t *testing.T) []repeated {
	t.Helper()
	content, err := os.ReadFile("../testdata/hostile/repeated.tsv")
	require.NoError(t, err)
	var out []repeated
	for line := range strings.Lines(string(content)) {
		if strings.HasPrefix(line, "#") {
			continue
		}
		columns := strings.Split(strings.TrimSuffix(line, "\n"), "\t")
		require.Len(t, columns, 4, line)
		for i, c := range columns {
			columns[i], err = strconv.Unquote(`"` + strings.ReplaceAll(c, `"`, `\"`) + `"`)
			require.NoError(t, err, line)
		}
		out = append(out, repeated{columns[0], columns[1], columns[2], columns[3]})
	}
	return out
}

// What nobody writes is read, worked and checked to its end: four times as much of
// it takes about four times the memory on the way, and what is said of it stays
// few words.
func TestHostileTexts(t *testing.T) {
	for _, r := range hostile(t) {
		t.Run(r.name, func(t *testing.T) {
			few, _ := analyzed(t, r.text(hostileSize/4))
			text := r.text(hostileSize)
			many, a := analyzed(t, text)
			// what is small may be taken up by what is made once
			assert.Less(t, many, 12*few+16<<20, "from %d bytes to %d", few, many)
			assert.Less(t, many, uint64(2<<30))
			most := 60 + 3*strings.Count(text, "\n")
			assert.LessOrEqual(t, len(a.Findings), most)
			for _, f := range a.Findings {
				require.NotEqual(t, lint.InternalFailure, f.Rule, f.Message)
				assert.Less(t, len(f.Message), 1_500)
			}
		})
	}
}

// Rows of which each has more places than the one below, and each step of which looks for
// its place in all of them, are given up before long.
func TestGrowingRows(t *testing.T) {
	_, a := analyzed(t, `Terms: US

Ch 40.
Row 1: Sc in 8th ch from hook, *ch 3, skip 3 ch, sc in next ch; rep from * across; turn.
Row 2: Ch 4, 3 dc in first loop, *ch 1, 3 dc in next loop; rep from * across, ending with 4 dc; turn.
Row 3: Ch 4, sc under ch 1, *ch 3, sc under next; rep from * across; turn.
Repeat Rows 2 and 3 23 times.
Fasten off.
`)
	assert.Less(t, a.Fabric.Pieces[0].Rows[4].Spent, 1_000_000)
}

// analyzed analyzes a text and says how many bytes were taken on the way.
func analyzed(t *testing.T, text string) (uint64, *lint.Analysis) {
	t.Helper()
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	done := make(chan *lint.Analysis, 1)
	go func() { done <- lint.Analyze(source.New(text)) }()
	select {
	case a := <-done:
		runtime.ReadMemStats(&after)
		return after.TotalAlloc - before.TotalAlloc, a
	case <-time.After(forever):
		t.Fatalf("%d bytes are not read in %v", len(text), forever)
		return 0, nil
	}
}

var allCuts = flag.Bool("cuts", false, "cut the examples after each of their words, not after some")

// Cut off after any word, as while it is typed, a pattern breaks nothing, and what
// is said of it is little more than of the whole.
func TestHalfWrittenPatterns(t *testing.T) {
	paths, err := filepath.Glob("../testdata/patterns/*.crochet")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	cuts := 0
	for _, path := range paths {
		content, err := os.ReadFile(path)
		require.NoError(t, err)
		text := string(content)
		for i, token := range syntax.Lex(text, syntax.Standard()) {
			if !*allCuts && (i+len(text))%41 != 0 {
				continue
			}
			cuts++
			grave := 0
			for _, f := range lint.Analyze(source.New(text[:token.Span.End])).Findings {
				require.NotEqual(t, lint.InternalFailure, f.Rule, "%s, cut at %d: %s", path, token.Span.End, f.Message)
				if f.Severity >= lint.Warning {
					grave++
				}
			}
			assert.LessOrEqual(t, grave, 6, "%s, cut at %d", path, token.Span.End)
		}
	}
	t.Logf("cut %d times", cuts)
}

// Pieces that are worked as themselves, or as one another, have no rows to be looked up.
func TestRowsOfEachOther(t *testing.T) {
	const cup = "Terms: US\n\nPiece: Cup\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: (Sc in next st, inc) 2 times, sc in next st. (12 sc)\n"
	const saucer = "Fasten off.\n\nPiece: Saucer\nRnds 1-2: Work as Rnds 1-2 of the cup.\nRnds 3-4: Work as Rnds 3-4 of the cup.\n"
	for _, last := range []string{
		"Rnds 3-4: Work as Rnds 1-2 of the cup.\n",
		"Rnds 3-4: Work as for the cup.\n",
		"Rnds 3-4: Work as Rnds 3-4 of the saucer.\n" + saucer,
	} {
		found := lint.Analyze(source.New(cup + last + "Fasten off.\n")).Findings
		assert.True(t, slices.ContainsFunc(found, func(f lint.Finding) bool { return f.Rule == "count-mismatch" }), last)
	}
}
