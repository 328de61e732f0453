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
