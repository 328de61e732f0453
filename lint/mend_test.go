package lint_test

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lint"
)

// mended are the rules whose findings say what would put a row right.
var mended = []string{"branch-chain-left", "count-mismatch", "place-absent", "repeat-remainder", "row-over", "row-short", "stem-exhausted"}

// fixes are all the changes that a finding offers, the best first.
func fixes(f lint.Finding) []lint.Fix {
	if f.Fix == nil {
		return nil
	}
	return append([]lint.Fix{*f.Fix}, f.Alternatives...)
}

// fixed is a file after a fix.
func fixed(t *testing.T, text *source.Text, fix lint.Fix) *lint.Analysis {
	t.Helper()
	after, err := text.Apply(fix.Edits)
	require.NoError(t, err)
	return lint.Analyze(after)
}

// rowAt is the row that a place lies in, nil for none.
func rowAt(a *lint.Analysis, s source.Span) *fabric.Row {
	for row := range a.Fabric.Rows() {
		if row.Tree.Span().Covers(source.At(s.Start)) {
			return row
		}
	}
	return nil
}

// rowLike is the row of another reading of the file that stands in the same
// place.
func rowLike(a *lint.Analysis, row *fabric.Row) *fabric.Row {
	for _, p := range a.Fabric.Pieces {
		if p.Tree.Name == row.Piece.Tree.Name && row.Index < len(p.Rows) {
			return p.Rows[row.Index]
		}
	}
	return nil
}

// counts is what a row makes and states.
func counts(row *fabric.Row) [][]fabric.PartCount {
	var out [][]fabric.PartCount
	for i := range row.Tallies {
		t := &row.Tallies[i]
		parts := slices.Clone(t.Parts)
		for _, c := range t.Compared {
			parts = append(parts, fabric.PartCount{Name: "says " + c.Name, N: c.Stated})
		}
		out = append(out, parts)
	}
	return out
}

// restores tells whether a fix of a finding gives a row back the counts that it
// has in the good pattern.
func restores(t *testing.T, broken, good *lint.Analysis, f lint.Finding, fix lint.Fix) bool {
	t.Helper()
	row := rowLike(fixed(t, broken.Text, fix), rowAt(broken, f.Span))
	was := rowLike(good, rowAt(broken, f.Span))
	return row != nil && was != nil && row.Misfit() == 0 && assert.ObjectsAreEqual(counts(was), counts(row))
}

// Slips of the pen as writers make them, each in one row over rows that are
// right, and what is told of them.
func TestMends(t *testing.T) {
	const (
		six    = "Pattern: Haw\nTerms: US\n\nPiece: Haw\nRnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)\n"
		twelve = six + "Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)\n"
		flat   = "Pattern: Mat\nTerms: US\n\nPiece: Mat\nWith A, ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)\n"
		hedge  = "Pattern: Hedge\nTerms: US\n\nPiece: Hedge\nWith A, ch 4, sl st in first ch to form ring.\nRnd 1: Ch 1, [sc in ring, ch 2] 6 times; sl st in first sc to join. (6 sc, 6 ch-2 sps)\n"
		join   = "; sl st in first sc to join. "

		british = "Pattern: Haw\nTerms: UK\n\nPiece: Haw\nRnd 1: 6 dc in magic ring; ss in first dc to join. (6 dc)\n" +
			"Rnd 2: 1 ch, 2 dc in each st around; ss in first dc to join. (12 dc)\n"
	)
	tests := []struct{ name, rows, row, message, fix string }{
		{
			"a repeat too few", twelve, "Rnd 3: Ch 1, [sc in next st, 2 sc in next st] 5 times" + join + "(18 sc)\nRnd 4: Ch 1, sc in each st around" + join + "(18 sc)",
			"makes 15 sc, says 18; what comes after it fits 18, and `6 times` instead of `5 times` would make it",
			"write `6 times` instead of `5 times`",
		},
		{
			"a repeat too many", twelve, "Rnd 3: Ch 1, [sc in next st, 2 sc in next st] 7 times" + join + "(18 sc)",
			"", "write `6 times` instead of `7 times`",
		},
		{
			"more for in all", twelve, "Rnd 3: Ch 1, sc in next st, 2 sc in next st, [sc in next st, 2 sc in next st] 6 times" + join + "(18 sc)",
			"", "write `5 times` instead of `6 times`",
		},
		{
			"the count", twelve, "Rnd 3: Ch 1, [sc in next st, 2 sc in next st] 6 times" + join + "(17 sc)\nRnd 4: Ch 1, [sc in next 2 sts, 2 sc in next st] 6 times" + join + "(24 sc)",
			"makes 18 sc, says 17; what comes after it fits 18, so the count is likely wrong",
			"write 18 as the count",
		},
		{
			"two in each for one in each", flat, "Row 2: Ch 1, sc in next 5 sts, 2 sc in each of next 2 sts, sc in next 5 sts; turn. (12 sc)\nRow 3: Ch 1, sc in next 12 sts; turn. (12 sc)",
			"", "write `sc in each of next 2 sts` instead of `2 sc in each of next 2 sts`",
		},
		{
			"too many stitches", flat, "Row 2: Ch 1, sc in next 8 sts, hdc in next 5 sts; turn. (8 sc, 4 hdc)",
			"", "write `hdc in next 4 sts` instead of `hdc in next 5 sts`",
		},
		{
			"a British increase for a decrease", british, "Rnd 3: 1 ch, [1 dc in next st, htr inc] 4 times; ss in first dc to join. (8 sts)",
			"makes 12 sts, says 8; `dec` instead of `htr inc` would make 8", "write `dec` instead of `htr inc`",
		},
		{
			"a number too large by one digit", flat, "Row 2: Ch 1, sc in next 32 sts; turn. (12 sc)",
			"", "write `sc in next 12 sts` instead of `sc in next 32 sts`",
		},
		{
			"stitches left", flat, "Row 2: Ch 1, sc in next 8 sts; turn. (8 sc)",
			"turns with 4 sts of 12 unworked, as the counts have it, and does not say so",
			"add `leave remaining 4 sts unworked` after `sc in next 8 sts`",
		},
		{
			"one of each of several", flat, "Row 2: Ch 1, *sc in each of next 2 sts, 2 sc in next st; rep from * 5 times more; turn. (18 sc)",
			"", "write `sc in next st` instead of `sc in each of next 2 sts`",
		},
		{
			"a wide repeat", flat, "Row 2: Ch 1, *sc in next 5 sts, sc2tog; rep from * across; turn. (10 sts)",
			"", "write `sc in next 4 sts` instead of `sc in next 5 sts`",
		},
		{
			"a space of another length", hedge, "Rnd 2: Ch 1, [3 sc in next ch-3 sp] 6 times" + join + "(18 sc)",
			"", "write `3 sc in next ch-2 sp` instead of `3 sc in next ch-3 sp`",
		},
		{
			"a space of another length in the count", hedge[:len(hedge)-len("6 ch-2 sps)\n")] + "6 ch-3 sps)\n", "Rnd 2: Ch 1, [3 sc in next ch-2 sp] 6 times" + join + "(18 sc)",
			"", "write `6 ch-2 sps` instead of `6 ch-3 sps`",
		},
		{
			"a decrease lost at one end", flat, "Row 2: Ch 1, sc in each st to last 2 sts, sc2tog; turn. (10 sts)\nRow 3: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog; turn. (8 sts)",
			"makes 11 sts, says 10; what comes after it fits 10, and adding `sc2tog` before `sc in each st to last 2 sts` would make it",
			"add `sc2tog` before `sc in each st to last 2 sts`",
		},
		{
			"the chain below", "Pattern: Mat\nTerms: US\n\nPiece: Mat\nWith A, ch 12.\n", "Row 1: Sc in 2nd ch from hook and in next 11 ch; turn. (12 sc)",
			"", "write `ch 13` instead of `ch 12`",
		},
		{
			"dec for inc", twelve, "Rnd 3: Ch 1, [sc in next st, dec] 6 times" + join + "(18 sc)",
			"", "write `inc` instead of `dec`",
		},
		{
			"one stitch for another", flat, "Row 2: Ch 1, sc in next 4 sts, hdc in next 4 sts, hdc in next 4 sts; turn. (8 sc, 4 hdc)",
			"", "write 4 and 8 as the count",
		},
		{
			"one size", strings.Replace(flat, "Terms: US\n", "Terms: US\nSizes: S (M, L)\n", 1), "Row 2: Ch 1, sc in next 10 (11, 10) sts, leave remaining 2 (2, 2) sts unworked; turn. (10 (10, 10) sc)\nRow 3: Ch 1, sc in next 10 sts; turn. (10 sc)",
			"", "write `sc in next 10 (10, 10) sts` instead of `sc in next 10 (11, 10) sts`",
		},
		{
			"in words", twelve, "Rnd 3: Chain one, *single crochet in next stitch, two single crochet in next stitch; repeat from * six more times; slip stitch in first sc to join. (18 sc)",
			"", "write `five more times` instead of `six more times`",
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			found := lint.Analyze(source.New(test.rows + test.row + "\nFasten off.\n")).Findings
			require.NotEmpty(t, found)
			if test.message != "" {
				assert.Equal(t, test.message, found[0].Message)
			}
			require.NotNil(t, found[0].Fix, listed(found))
			assert.Equal(t, test.fix, found[0].Fix.Title)
			assert.False(t, found[0].Fix.Safe)
		})
	}
}

// A fault planted in a sound pattern is one slip, and the changes that are
// offered undo most of them.
func TestPlantedFaultsAreMended(t *testing.T) {
	all, best, some := 0, 0, 0
	for _, p := range plantedFaults(t) {
		if !slices.Contains(mended, p.rule) {
			continue
		}
		all++
		name, _, _ := strings.Cut(p.file, "--")
		good := analyzeFile(t, filepath.Join("../testdata/patterns", name+".crochet"))
		broken := analyzeFile(t, filepath.Join("../testdata/broken", p.file))
		mended := -1
		for _, f := range broken.Findings {
			if f.Rule != p.rule || instructionLine(broken, f.Span) != p.line {
				continue
			}
			mended = slices.IndexFunc(fixes(f), func(fix lint.Fix) bool { return restores(t, broken, good, f, fix) })
		}
		switch {
		case mended == 0:
			best++
			some++
		case mended > 0:
			some++
			t.Logf("%s: by an alternative", p.file)
		default:
			t.Logf("%s: not mended", p.file)
		}
	}
	t.Logf("of %d planted faults the fix mends %d, it or an alternative %d", all, best, some)
	assert.GreaterOrEqual(t, best, 35, "by the fix itself, of %d", all)
	assert.GreaterOrEqual(t, some, 38, "by the fix or an alternative, of %d", all)
}

// slip is a sound pattern with one number changed.
type slip struct {
	text  *source.Text
	row   *fabric.Row // in the sound pattern
	count bool        // the number is of the stated count
}

// every is which of the numbers of the patterns are changed: all of them take a
// minute.
const every = 13

// slips changes some numbers of a sound pattern, one at a time, by one.
func slips(t *testing.T, path string) (*lint.Analysis, []slip) {
	t.Helper()
	numbers := 0
	content, err := os.ReadFile(path)
	require.NoError(t, err)
	sound := lint.Analyze(source.New(string(content)))
	var out []slip
	for row := range sound.Fabric.Rows() {
		for _, token := range row.Tree.Tokens {
			old := row.Tree.Source(token.Span)
			if token.Kind != syntax.Number || row.Tree.Label.Span.Covers(token.Span) || strings.Trim(old, "0123456789") != "" {
				continue
			}
			if numbers++; numbers%every != 0 {
				continue
			}
			n := token.Values.At(0) + 1
			edit := source.Edit{Span: row.Tree.Abs(token.Span), New: syntax.One(n).String()}
			text, err := sound.Text.Apply([]source.Edit{edit})
			require.NoError(t, err)
			out = append(out, slip{text, row, row.StatedAt.Covers(token.Span)})
		}
	}
	return sound, out
}

// Whatever number of a sound pattern is changed, each change that a finding in
// its row offers settles that finding, and nearly always one undoes the slip. A
// message that says who is at fault is never wrong.
func TestMendsOfChangedNumbers(t *testing.T) {
	paths, err := filepath.Glob("../testdata/patterns/*.crochet")
	require.NoError(t, err)
	found, undone := 0, 0
	for _, path := range paths {
		sound, list := slips(t, path)
		for _, s := range list {
			broken := lint.Analyze(s.text)
			for _, f := range findingsIn(broken, s.row) {
				found++
				all := fixes(f)
				if slices.ContainsFunc(all, func(fix lint.Fix) bool { return restores(t, broken, sound, f, fix) }) {
					undone++
				}
				for _, fix := range all {
					left := findingsIn(fixed(t, s.text, fix), s.row)
					assert.Empty(t, left, "%s: %s\nafter: %s", filepath.Base(path), f.Message, fix.Title)
				}
				if strings.Contains(f.Message, "the count is likely wrong") {
					assert.True(t, s.count, "%s: %s", filepath.Base(path), f.Message)
				}
				if strings.Contains(f.Message, "the words are likely wrong") {
					assert.False(t, s.count, "%s: %s", filepath.Base(path), f.Message)
				}
			}
		}
	}
	t.Logf("of %d findings %d are undone", found, undone)
	assert.NotZero(t, found)
	assert.GreaterOrEqual(t, 100*undone, 90*found, "%d of %d undone", undone, found)
}

// findingsIn are the findings of the mended rules in a row of another reading
// of the file.
func findingsIn(a *lint.Analysis, like *fabric.Row) []lint.Finding {
	var out []lint.Finding
	for _, f := range a.Findings {
		row := rowAt(a, f.Span)
		if slices.Contains(mended, f.Rule) && row != nil && row == rowLike(a, like) {
			out = append(out, f)
		}
	}
	return out
}

// A piece in which very much is wrong is answered as fast as another.
func TestMendsAreBounded(t *testing.T) {
	var b strings.Builder
	b.WriteString("Pattern: Hedge bank\nTerms: US\n\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)\n")
	const slips = 60
	for n := range 2 * slips {
		fmt.Fprintf(&b, "Row %d: Ch 1, sc in each st across; turn. (%d sc)\n", n+2, 12+n%2)
	}
	b.WriteString("Fasten off.\n")
	found, withFix := 0, 0
	for _, f := range lint.Analyze(source.New(b.String())).Findings {
		if f.Rule == "count-mismatch" {
			found++
			if f.Fix != nil {
				withFix++
			}
		}
	}
	assert.Equal(t, slips, found)
	assert.Equal(t, 50, withFix)
}
