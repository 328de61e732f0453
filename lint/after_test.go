package lint

import (
	"fmt"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stitchproof/lang/source"
	"stitchproof/lang/source/sourcetest"
)

// Analyzing after any edits finds what analyzing the text afresh finds.
func TestAnalyzeAfter(t *testing.T) {
	texts := sourcetest.Manuscripts(t, "..")
	rapid.Check(t, func(t *rapid.T) {
		text := source.New(rapid.SampledFrom(texts).Draw(t, "text"))
		a := Analyze(text)
		for range rapid.IntRange(1, 6).Draw(t, "edits") {
			text = sourcetest.Edit(t, text, texts)
			a = Settings{}.AnalyzeAfter(a, text)
			require.Equal(t, Analyze(text).Findings, a.Findings, text.String())
		}
	})
}

// Several analyses may go on from one at once: an editor asks of a text while the next
// one is looked at. Each edit makes a habit clear, so that the slip in the piece that
// stays is looked at anew; and the edging goes on from that piece.
func TestAnalyzeAfterTogether(t *testing.T) {
	const mat = "Pattern: Mat\nTerms: US\n\n## Mat\nCh 14.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (13 sc)\n" +
		"Row 2: Ch 1, sc in first st, *ch 1, sk next st, sc in next st; rep from * across; turn. (7 sc, 6 ch-1 sps)\n" +
		"Row 3: Ch 1, sc in first sc, *ch 1, skip next sp, sc in next sc; rep from * across; turn. (7 sc, 6 ch-1 sps)\n\n## Edging\n" +
		"Row 4: Ch 1, sc in each sc and ch-1 sp across; turn. (13 sc)\nRow 5: Ch 1, sc in each sc across; turn. (13 sc)\n" +
		"Row 6: Ch 1, sc in each sc across; turn. (13 sc)\nRow 7: Ch 1, sc in each sc across; turn. (13 sc)\n"
	a := Analyze(source.New(mat + "Row 8: Ch 1, sc in next 13 sts; turn. (13 sc)\nFasten off.\n"))
	var after [16]*source.Text
	var found [len(after)][]Finding
	var all sync.WaitGroup
	for i := range after {
		after[i] = source.New(mat + "Row 8: Ch 1, sc in first sc, " + strings.Repeat("ch 1, sk next sc, sc in next sc, ", 5) + fmt.Sprintf("ch %d, sk next sc, sc in last sc; turn. (7 sc)\nFasten off.\n", i+1))
		all.Go(func() { found[i] = Settings{}.AnalyzeAfter(a, after[i]).Findings })
	}
	all.Wait()
	for i := range after {
		want := Analyze(after[i]).Findings
		require.Equal(t, want, found[i], after[i].String())
		require.True(t, slices.ContainsFunc(want, func(f Finding) bool { return f.Rule == styleConsistency.Name }), want)
	}
}

// What is found of branches that words of the pattern's own stand for is found anew where a
// definition changes, and goes with it where it moves.
func TestAnalyzeAfterOfParts(t *testing.T) {
	const sprig = "Pattern: Sprig\nTerms: US\n\nSpecial stitches\nBud: ch 3, sc in 2nd ch from hook and in next ch. (2 sc)\n" +
		"Leaf: ch 7, sc in 2nd ch from hook and in next ch, bud, sc in next 3 ch. (8 sc)\n\nPiece: Sprig\nCh 11.\n" +
		"Row 1: Sl st in 2nd ch from hook and in next 3 ch, leaf, sl st in last 6 ch.\nFasten off.\n"
	for _, edit := range [][2]string{
		{"Leaf: ch 7", "Leaf: ch 6"}, {"Leaf: ch 7", "Leaf: ch 5"}, {"(8 sc)", "(7 sc)"}, {"Bud: ch 3", "Bud: ch 4"}, {"Bud: ch 3", "Bud: ch 2"},
		{"Pattern: Sprig", "Pattern: Hawthorn sprig"}, {"Terms: US\n", "Terms: US\nHook: 3 mm\n"}, {"Terms: US", "Terms: UK"}, {"leaf, ", ""}, {"Ch 11", "Ch 12"},
	} {
		before, after := source.New(sprig), source.New(strings.Replace(sprig, edit[0], edit[1], 1))
		there := Settings{}.AnalyzeAfter(Analyze(before), after)
		require.Equal(t, Analyze(after).Findings, there.Findings, after.String())
		require.Equal(t, Analyze(before).Findings, Settings{}.AnalyzeAfter(there, before).Findings, after.String())
	}
	const twins = "Pattern: Sprig\nTerms: US\n\nSpecial stitches\nLeaf: ch 7, sc in 2nd ch from hook and in next 4 ch.\nFrond: ch 7, sc in 2nd ch from hook and in next 4 ch.\n\n" +
		"Piece: Sprig\nCh 11.\nRow 1: Sl st in 2nd ch from hook and in next 3 ch, leaf, sl st in next 3 ch, frond, sl st in last 3 ch.\nFasten off.\n"
	after := source.New(strings.Replace(twins, "Sprig", "Spray", 1))
	found := Settings{}.AnalyzeAfter(Analyze(source.New(twins)), after).Findings
	require.Equal(t, Analyze(after).Findings, found)
	require.Len(t, found, 2)
	require.Contains(t, found[0].Message, "branch Leaf")
	require.Contains(t, found[1].Message, "branch Frond")
}
