package lint

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/materials"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// styled is a text as the style rule mends it for a house.
func styled(t *testing.T, house Style, text string) string {
	t.Helper()
	for range 10 {
		file := syntax.Read(source.New(text))
		p := &Pass{File: file, Fabric: fabric.Work(file), Materials: materials.Read(file), House: house, rule: styleConsistency}
		checkStyleConsistency(p)
		if len(p.findings) == 0 {
			return text
		}
		fixed, err := source.New(text).Apply(p.findings[0].Fix.Edits)
		require.NoError(t, err)
		text = fixed.String()
	}
	require.Fail(t, "the fixes come to no end", text)
	return ""
}

const ways = "Pattern: Mat\nTerms: US\n\nPiece: Mat\nWith A, ch 14.\n" +
	"Row 1: Sc in 2nd ch from hook and in each ch across; turn. (13 sc)\n" +
	"Row 2: Ch 1, 5 sc, SKIP next st, Skip next st, sc 4, sc in next 2 sts; turn. [11 sc]\n" +
	"Row 3: Repeat Row 2.\n"

func TestHouseStyle(t *testing.T) {
	got := styled(t, Style{Skip: "miss", Repeat: "rep", Run: inNext, Count: "()"}, ways)
	assert.Contains(t, got, "Row 2: Ch 1, sc in next 5 sts, MISS next st, Miss next st, sc in next 4 sts, sc in next 2 sts; turn. (11 sc)\nRow 3: Rep Row 2.\n")
	got = styled(t, Style{Run: numberFirst, Count: "{}"}, ways)
	assert.Contains(t, got, "Row 2: Ch 1, 5 sc, SKIP next st, Skip next st, 4 sc, 2 sc; turn. {11 sc}\n")
}

// Without a house style a file is left alone where it has no clear habit.
func TestNoClearHabit(t *testing.T) {
	assert.Equal(t, ways, styled(t, Style{}, ways))
}

// Stitches that go in one place are not one in each of the next few.
func TestGroupsAreNoRuns(t *testing.T) {
	text := "Pattern: Mat\nTerms: US\n\nPiece: Mat\nWith A, ch 14.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (13 sc)\n" +
		"Row 2: Ch 1, sc in next 6 sts, (2 dc, ch 2, 2 dc) in next st, sc in next 6 sts. (16 sts)\n"
	assert.Equal(t, text, styled(t, Style{Run: inNext}, text))
}
