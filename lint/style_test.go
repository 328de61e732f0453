package lint

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/house"
	"stitchproof/lang/source"
)

// styled is a text as the style rule mends it for a house.
func styled(t *testing.T, style house.Style, text string) string {
	t.Helper()
	for range 10 {
		found := slices.DeleteFunc(Settings{Style: style}.Analyze(source.New(text)).Findings, func(f Finding) bool { return f.Rule != styleConsistency.Name })
		if len(found) == 0 {
			return text
		}
		fixed, err := source.New(text).Apply(found[0].Fix.Edits)
		require.NoError(t, err)
		text = fixed.String()
	}
	require.Fail(t, "the fixes come to no end", text)
	return ""
}

const ways = "Pattern: Mat\nTerms: US\n\nPiece: Mat\nWith A, ch 14.\n" +
	"Row 1: Sc in 2nd ch from hook and in each ch across; turn. (13 sc)\n" +
	"Row 2: Ch 1, 5 sc, skip next st, Skip next st, sc 4, sc in next 2 sts; turn. [11 sc]\n"

func TestHouseStyle(t *testing.T) {
	got := styled(t, house.Style{Ways: map[string]string{"skip": "miss", "run": "sc in next 5 sts", "count": "(24 sts)"}}, ways)
	assert.Contains(t, got, "Row 2: Ch 1, sc in next 5 sts, miss next st, Miss next st, sc in next 4 sts, sc in next 2 sts; turn. (11 sc)\n")
}

// Without a house style a file is left alone where it has no clear habit.
func TestNoClearHabit(t *testing.T) {
	assert.Equal(t, ways, styled(t, house.Style{}, ways))
}

// A number for some sizes only is written in the same way as the others, and a count without
// brackets is no stitch to be worked.
func TestOneWayInSomeSizesAndCounts(t *testing.T) {
	const graded = "Pattern: Mitten\nTerms: US\nSizes: child (woman, man)\n\nPiece: Cuff\nCh 21.\n" +
		"Row 1: Sc in 2nd ch from hook and in next 19 ch, turn. (20 sc)\n" +
		"Row 2: Ch 1, sc in next 5 sts, sc in next 15 sts, turn. (20 sc)\n" +
		"Row 3: Ch 1, sc in next 6 sts, sc in next 14 sts, turn. (20 sc)\n" +
		"Sizes woman (man) only:\n" +
		"Row 4 (4): Ch 1, [sc in next 1 (2) sts, sc in next 4 (3) sts] 4 times, turn. (20 (20) sc)\n" +
		"Row 5: Ch 1, sc in next 7 sts, sc in next 13 sts, turn. (20 sc)\nFasten off.\n"
	assert.Equal(t, graded, styled(t, house.Style{}, graded))
	const repeated = "Pattern: Mat\nTerms: US\n\nPiece: Mat\nCh 21.\n" +
		"Row 1: Sc in 2nd ch from hook and in next 19 ch, turn. (20 sc)\n" +
		"Row 2: Ch 1, sc in next 20 sts, turn. (20 sc)\n" +
		"Row 3: Rep Row 2. 20 sc\nRow 4: Rep Row 2. 20 sc\nRow 5: Rep Row 2. 20 sc\nFasten off.\n"
	assert.Equal(t, repeated, styled(t, house.Style{}, repeated))
}
