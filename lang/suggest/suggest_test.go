package suggest_test

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/suggest"
	"stitchproof/lang/syntax"
)

func worked(text string) *fabric.Fabric { return fabric.Work(syntax.Read(source.New(text))) }

// at suggests at the bar of a text, each with what the text is then.
func at(t *testing.T, text string) (items []suggest.Item, texts []string) {
	t.Helper()
	before, after, ok := strings.Cut(text, "|")
	require.True(t, ok)
	known := worked(before + after)
	items = suggest.At(known, known.File.Text, len(before))
	for _, other := range []string{"", before, before + "x" + after, after} {
		assert.Equal(t, items, suggest.At(worked(other), known.File.Text, len(before)), "%q, known as %q", text, other)
	}
	for _, item := range items {
		assert.Equal(t, len(before), item.Replace.End)
		assert.True(t, strings.EqualFold(before[item.Replace.Start:], item.Text[:item.Replace.End-item.Replace.Start]), item.Text)
		for _, h := range item.Holes {
			assert.LessOrEqual(t, h.Span.End, len(item.Text))
		}
		texts = append(texts, item.Text)
	}
	return items, texts
}

const (
	rounds = "Pattern: Cup\nTerms: US\nYarn A: bark\nYarn B: haw\n\nPiece: Cup\nRnd 1: 6 sc in magic ring. (6 sc)\n"
	rows   = "Pattern: Leaf\nTerms: US\nSizes: S (M)\n\nPiece: Leaf\nCh 9 (13).\n"
	lace   = "Pattern: Cobweb\nTerms: US\n\nPiece: Cobweb\nRnd 1: Ch 1, [sc in ring, ch 2] 6 times, join.\n"
	twig   = "Pattern: Twig\nTerms: US\n\nPiece: Twig\nCh 14.\nRow 1: Sc in 2nd ch from hook and in next 4 ch, "
	fork   = twig + "branch A: ch 9, sc in 2nd ch from hook and in next 2 ch, "
)

func TestSuggestions(t *testing.T) {
	for _, test := range []struct {
		text     string
		has, not []string
	}{
		{"|", []string{"Pattern: ", "Terms: ", "Yarn A: "}, []string{"turn"}},
		{"Pattern: Cup\nT|", []string{"Terms: ", "Turning chains: "}, []string{"Pattern: ", "Yarn A: "}},
		{"Pattern: Cup\nYarn A: bark\nY|", []string{"Yarn B: "}, []string{"Yarn A: "}},
		{"Terms: |", []string{"US", "UK"}, []string{"easy"}},
		{"Hook: 5|", []string{"5 mm (US H-8)", "5.5 mm (US I-9)"}, []string{"4 mm (US G-6)"}},

		{rounds + "|", []string{"Rnd 2: ", "Fasten off."}, []string{"Rnd 1: ", "Row 2: "}},
		{rounds + "Rnds 2-4: Sc in each st around.\nR|", []string{"Rnds 5: "}, nil},
		{rounds + "\nPiece: Leaf\n|", []string{"Row 1: ", "Rnd 1: "}, []string{"Rnd 2: "}},
		{rounds + "Rnd 2: |", []string{"sc", "hdc", "inc", "ch"}, []string{"htr", "(6 sc)", "turn around"}},
		{strings.Replace(rounds, "US", "UK", 1) + "Rnd 2: |", []string{"dc", "htr"}, []string{"sc", "hdc"}},
		{rounds + "Rnd 2: sc |", []string{"in each st around", "in next st", "in first st", "in last 6 sts"}, []string{"in ring", "in next ch-2 sp", "in same st"}},
		{rounds + "Rnd 2: 2 sc in next 3 sts, sc in |", []string{"in last 3 sts", "in each st around"}, []string{"in first st", "in last 6 sts"}},
		{rounds + "Rnd 2: sc in next 5 sts, sc |", []string{"in last st", "in next st"}, []string{"in last 1 sts"}},
		{rounds + "Rnd 2: 2 sc in each st around; |", []string{"sl st in first sc to join"}, []string{"turn around"}},
		{rounds + "Rnd 2: 2 sc in each st around; sl st in first sc to join. |", []string{"(12 sc)"}, nil},
		{rounds + "Rnd 2: 2 sc in each st around. (1|", []string{"(12 sc)"}, nil},
		{rounds + "Rnd 2: 2 sc in each st around. (9|", nil, []string{"(12 sc)"}},
		{rounds + "Rnd 2: [sc in next st, inc] |", []string{"3 times", "around"}, []string{"6 stimes"}},
		{rounds + "Rnd 2: [sc in next 3 sts, inc] |", []string{"around"}, []string{"3 times"}},
		{rounds + "Rnd 2: With |", []string{"A", "B"}, []string{"sc"}},
		{rounds + "Rnd 2: Wibble the acorn, sc |", []string{"in next st"}, []string{"in last 6 sts"}},
		{rounds + "// note |", nil, []string{"sc"}},

		{rows + "Row 1: Sc |", []string{"in 2nd ch from hook", "in 2nd ch from hook and in each ch across"}, []string{"in next st", "in each st across"}},
		{rows + "Row 1: Dc |", []string{"in 4th ch from hook"}, []string{"in 2nd ch from hook"}},
		{rows + "Row 1: Sc in 2nd ch from hook and in each ch across, |", []string{"turn"}, []string{"sl st in first sc to join"}},
		{rows + "Row 1: Sc in 2nd ch from hook and in each ch across. |", []string{"(8 (12) sts)"}, nil},
		{rows + "Row 1: Sc in 2nd ch from hook and in next 4 ch, sc |", []string{"in last 3 (7) ch", "in next ch"}, []string{"in last 3 ch"}},
		{rows + "Row 1: Sc in 2nd ch from hook and in next 4 ch, skip |", []string{"next ch", "last 3 (7) ch"}, nil},

		{lace + "Rnd 2: Sl st in |", []string{"in next ch-2 sp", "in next sc"}, []string{"in next ch-3 sp", "in ring"}},
		{lace + "Rnd 2: (2 dc, ch 2, 2 dc) in |", []string{"in next ch-2 sp"}, nil},

		{"Pattern: Cup\n|\nYarn A: bark\n\nPiece: Cup\n", []string{"Yarn B: ", "Terms: "}, []string{"Yarn A: ", "Pattern: "}},
		{"Pattern: Cup\nYarn |A: bark\n", nil, []string{"Yarn B: "}},
		{rounds + "R|\nRnd 3: Sc in each st around. (6 sc)\n", []string{"Rnd 2: "}, []string{"Rnd 4: "}},
		{rounds + "Rnd 2: sc in next 2 sts, sc |\nRnd 3: Sc in each st around. (6 sc)\n", []string{"in last 4 sts"}, nil},
		{strings.Replace(rounds, "Terms: US\n", "", 1) + "Rnd 2: |\nRnd 3: Hdc in each st around.\nRnd 4: Sc in each st around.\n", []string{"sc"}, nil},

		{twig, nil, nil},
		{fork + "|", []string{"return to stem"}, []string{"return to A", "turn to A"}},
		{fork + "sc |", []string{"in each rem ch of A", "in last 5 ch"}, nil},
		{fork + "branch B: ch 5, sc in 2nd ch from hook and in each ch of B, ret|", []string{"return to A", "return to stem"}, nil},
		{fork + "br|", []string{"branch B: ch 6, sc in 2nd ch from hook and in each ch of B, return to A"}, nil},
	} {
		if !strings.Contains(test.text, "|") {
			test.text += "|"
		}
		_, got := at(t, test.text)
		for _, want := range test.has {
			assert.Contains(t, got, want, test.text)
		}
		for _, no := range test.not {
			assert.NotContains(t, got, no, test.text)
		}
	}
}

// Places that are suggested at the beginning of the places of our own patterns are
// there: with one of them in the row, as far as it goes then, no place is missing
// and no more are asked for than there are.
func TestSuggestedPlacesAreThere(t *testing.T) {
	paths, err := filepath.Glob("../../testdata/patterns/*.crochet")
	require.NoError(t, err)
	tried := 0
	for _, path := range paths {
		content, err := os.ReadFile(path)
		require.NoError(t, err)
		text := string(content)
		known := worked(text)
		for i, at := range regexp.MustCompile(`(?m)^(?:Rnd|Row) [^\n]*?[:,] (?:\d )?(?:sc|dc|hdc) in `).FindAllStringIndex(text, -1) {
			if i%5 != 0 {
				continue
			}
			for _, item := range suggest.At(known, known.File.Text, at[1]) {
				if item.Kind != suggest.Place {
					continue
				}
				pieces := worked(text[:item.Replace.Start] + item.Text).Pieces
				piece := pieces[len(pieces)-1]
				tried++
				for _, tally := range piece.Rows[len(piece.Rows)-1].Tallies {
					for _, f := range tally.Faults {
						if f.Kind == fabric.PlaceAbsent || f.Kind == fabric.RowOver || f.Kind == fabric.StemExhausted {
							t.Errorf("%s: %s: %q is not there", path, text[at[0]:item.Replace.Start]+item.Text, f.Name)
						}
					}
				}
			}
		}
	}
	assert.Greater(t, tried, 100)
}

// Where a pattern is long, only the piece that is being written is worked again.
func TestSuggestionsInALongPattern(t *testing.T) {
	var b strings.Builder
	b.WriteString("Pattern: Hedge\nTerms: US\n")
	for range 60 {
		b.WriteString("\nPiece: Twig\nCh 14.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (13 sc)\n")
		for row := 2; row <= 30; row++ {
			fmt.Fprintf(&b, "Row %d: Ch 1, sc in each st across; turn. (13 sc)\n", row)
		}
	}
	b.WriteString("Row 31: Ch 1, [sc in next 4 sts, sc ")
	begun := time.Now()
	known := worked(b.String())
	whole := time.Since(begun)
	shortest := whole
	for range 3 { // whatever else the machine does meanwhile
		begun = time.Now()
		items := suggest.At(known, known.File.Text, b.Len())
		shortest = min(shortest, time.Since(begun))
		assert.True(t, slices.ContainsFunc(items, func(i suggest.Item) bool { return i.Text == "in last 9 sts" }))
	}
	assert.Less(t, shortest, whole/5)
}
