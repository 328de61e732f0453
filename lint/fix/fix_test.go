package fix

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

func check(text *source.Text) []lint.Finding { return lint.Analyze(text).Findings }

// patterns are the rules' bad examples and the broken twins of our own patterns.
func patterns(t *testing.T) map[string]string {
	t.Helper()
	out := map[string]string{}
	for _, r := range lint.Rules() {
		out[r.Name] = r.Bad
	}
	names, err := filepath.Glob("../../testdata/broken/*.crochet")
	require.NoError(t, err)
	require.NotEmpty(t, names)
	for _, name := range names {
		text, err := os.ReadFile(name)
		require.NoError(t, err)
		out[filepath.Base(name)] = string(text)
	}
	return out
}

// Fixing settles, never adds a finding, does nothing when done again, and keeps
// line ends.
func TestFixingSettles(t *testing.T) {
	made := 0
	for name, pattern := range patterns(t) {
		for _, ends := range []string{"\n", "\r\n"} {
			for _, risky := range []bool{false, true} {
				if twin := strings.Contains(name, "--"); twin && (!risky || ends != "\n") {
					continue // which are long, and have the same fixes as the examples
				}
				text := source.New(strings.ReplaceAll(pattern, "\n", ends))
				made += settles(t, name, text, Choice{Risky: risky})
			}
		}
	}
	assert.Greater(t, made, 40)
}

// settles fixes a text, holds the outcome to what fixing promises, and gives how
// many fixes were made.
func settles(t *testing.T, name string, text *source.Text, c Choice) int {
	t.Helper()
	r := Fix(text, c, check)
	before, after := check(text), check(r.Text)
	assert.LessOrEqual(t, len(after)+r.Applied, len(before), "%s: each fix settles a finding and none adds one", name)
	assert.GreaterOrEqual(t, cautions(after), cautions(before), "%s: what can hurt somebody is told of still", name)
	assert.Equal(t, r.Applied == 0, r.Text.String() == text.String(), name)
	again := Fix(r.Text, c, check)
	assert.Equal(t, r.Text.String(), again.Text.String(), "%s: fixed twice is fixed once", name)
	assert.Equal(t, r.Unsettled, len(c.wanted(after)) > 0, name)
	assert.Equal(t, mixed(text), mixed(r.Text), "%s: line ends stay as they are", name)
	return r.Applied
}

// mostFuzzed bounds the texts that are fixed while fuzzing.
const mostFuzzed = 500

// FuzzFix fixes any text, with the safe fixes alone and with all.
func FuzzFix(f *testing.F) {
	for i, r := range lint.Rules() {
		f.Add(r.Bad[:min(len(r.Bad), mostFuzzed)], i%2 == 0)
	}
	f.Fuzz(func(t *testing.T, text string, risky bool) {
		if len(text) <= mostFuzzed {
			settles(t, "the text", source.New(text), Choice{Risky: risky})
		}
	})
}

func mixed(t *source.Text) int {
	for _, d := range t.Damage() {
		if d.Kind == source.MixedLineEnds {
			return d.Count
		}
	}
	return 0
}

// word is a check that finds words and offers to change them.
func word(changes map[string]string, safe bool) func(*source.Text) []lint.Finding {
	return func(t *source.Text) []lint.Finding {
		var out []lint.Finding
		for at := range t.Len() {
			for old, now := range changes {
				if strings.HasPrefix(t.String()[at:], old) {
					span := source.Span{Start: at, End: at + len(old)}
					out = append(out, lint.Finding{Rule: old, Span: span, Fix: &lint.Fix{Safe: safe, Edits: []source.Edit{{Span: span, New: now}}}})
				}
			}
		}
		return out
	}
}

// Of two insertions at one place the second waits for the next look: which of them
// should come first, nobody said.
func TestInsertionsAtOnePlace(t *testing.T) {
	at := func(n int, now string) *lint.Fix {
		return &lint.Fix{Edits: []source.Edit{{Span: source.At(n), New: now}}}
	}
	a, b, c := at(3, "haw"), at(3, "hip"), at(4, "oak")
	assert.Equal(t, []*lint.Fix{a, c}, apart([]*lint.Fix{a, b, c}))
}

func TestChoice(t *testing.T) {
	changes := map[string]string{"haw": "oak", "hip": "ash"}
	fixed := func(c Choice, safe bool) string {
		return Fix(source.New("haw hip haw"), c, word(changes, safe)).Text.String()
	}
	assert.Equal(t, "oak ash oak", fixed(Choice{}, true))
	assert.Equal(t, "oak hip oak", fixed(Choice{Only: []string{"haw"}}, true))
	assert.Equal(t, "haw hip haw", fixed(Choice{}, false))
	assert.Equal(t, "oak ash oak", fixed(Choice{Risky: true}, false))
}

func TestWhatNeverSettlesIsLeft(t *testing.T) {
	r := Fix(source.New("haw"), Choice{}, word(map[string]string{"haw": "hip", "hip": "haw"}, true))
	assert.Equal(t, Result{Text: r.Text, Unsettled: true}, r)
	assert.Equal(t, "haw", r.Text.String(), "a fix that brings as much as it settles is not made")
}

// A fix that would take a caution away is not made, whatever else it settles.
func TestCautionsStay(t *testing.T) {
	check := func(t *source.Text) []lint.Finding {
		out := word(map[string]string{"haw": "oak", "hip": "ash"}, true)(t)
		if strings.Contains(t.String(), "haw") {
			out = append(out, lint.Finding{Rule: "small-parts"})
		}
		return out
	}
	r := Fix(source.New("haw hip"), Choice{Risky: true}, check)
	assert.Equal(t, "haw ash", r.Text.String())
	assert.Equal(t, 1, r.Applied)
	assert.True(t, r.Unsettled)
}

func TestOneBadFixDoesNotHinderTheOthers(t *testing.T) {
	r := Fix(source.New("haw hip sloe"), Choice{}, word(map[string]string{"haw": "oak", "hip": "hip hip", "sloe": "elm"}, true))
	assert.Equal(t, "oak hip elm", r.Text.String())
	assert.Equal(t, 2, r.Applied)
	assert.True(t, r.Unsettled)
}

func TestFixesThatCollide(t *testing.T) {
	r := Fix(source.New("abc"), Choice{}, word(map[string]string{"ab": "x", "bc": "y"}, true))
	assert.Equal(t, "xc", r.Text.String(), "the first finding's fix is made")
	assert.False(t, r.Unsettled)
}

func TestPassesAreBounded(t *testing.T) {
	many := strings.Repeat("ab", maxPasses+5) // each fix uncovers the next
	var looks int
	r := Fix(source.New(many), Choice{}, func(t *source.Text) []lint.Finding {
		looks++
		span := source.Span{Start: 0, End: 2}
		rest := strings.Count(t.String(), "ab")
		out := make([]lint.Finding, rest)
		if rest > 0 {
			out[0].Fix = &lint.Fix{Safe: true, Edits: []source.Edit{{Span: span}}}
		}
		return out
	})
	assert.Equal(t, maxPasses, r.Applied)
	assert.True(t, r.Unsettled)
	assert.Equal(t, maxPasses+1, looks)
}
