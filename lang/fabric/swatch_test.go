package fabric

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

const mat = "Pattern: Mat\nTerms: US\n\nPiece: Mat\nWith A, ch 13.\n" +
	"Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)\n"

// swatchOf works rows over the mat and gives the work before its second row.
func swatchOf(t *testing.T, rows string) (*syntax.File, *Fabric, *Row) {
	t.Helper()
	file := syntax.Read(source.New(mat + rows))
	f := Work(file)
	row := f.Pieces[0].Rows[2]
	require.NotNil(t, f.Swatch(row), "the row came out right")
	return file, f, row
}

func TestTryLeavesTheFabricAsItIs(t *testing.T) {
	file, f, row := swatchOf(t, "Row 2: Ch 1, sc in next 10 sts; turn. (12 sc)\nRow 3: Rep Row 2. (12 sc)\nRow 4: Ch 1, sc in next 12 sts. (12 sc)\n")
	again := Work(file)
	swatch := f.Swatch(row)
	for range 3 {
		rows, all := swatch.Try(file.Reread(row.Tree, "Row 2: Ch 1, sc in next 12 sts; turn. (12 sc)"))
		assert.True(t, all)
		require.Len(t, rows, 3, "the row and those after it")
		for _, r := range rows {
			assert.Zero(t, r.Misfit())
		}
		rows, all = swatch.Try(file.Reread(row.Tree, "Row 2: Ch 1, sc in next 11 sts; turn. (12 sc)"))
		assert.False(t, all)
		assert.Len(t, rows, 1)
	}
	for i, r := range f.Pieces[0].Rows {
		assert.Equal(t, again.Pieces[0].Rows[i].Tallies, r.Tallies)
	}
	assert.Equal(t, again.Pieces[0].Stitches, f.Pieces[0].Stitches)
}

// What is tried works the rows that `all even rows` stands for as well, and does
// not count them.
func TestTryCountsNoRowsBetween(t *testing.T) {
	file := syntax.Read(source.New(mat + "Row 2 and all even rows: Ch 1, sc in each st across; turn. (12 sc)\n" +
		"Row 3: Ch 1, sc in next 10 sts; turn. (12 sc)\nRow 5: Ch 1, sc in each st across; turn. (12 sc)\nRow 7: Ch 1, sc in each st across; turn. (12 sc)\n"))
	f := Work(file)
	rows := f.Pieces[0].Rows
	require.NotNil(t, f.Swatch(rows[3]))
	f.Swatch(rows[3]).Try(file.Reread(rows[3].Tree, "Row 3: Ch 1, sc in next 12 sts; turn. (12 sc)"))
	assert.Equal(t, []int{3}, rows[2].Repeats, "rows 2, 4 and 6")
}

// A row that is tried may name itself or a later row, which is not there yet.
func TestTryKnowsNoLaterRow(t *testing.T) {
	file, f, row := swatchOf(t, "Row 2: Ch 1, sc in next 10 sts; turn. (12 sc)\nRow 3: Ch 1, sc in next 12 sts. (12 sc)\n")
	swatch := f.Swatch(row)
	for _, words := range []string{"Row 2: Rep Row 2. (12 sc)", "Row 2: Rep Row 3. (12 sc)"} {
		for range 2 {
			rows, all := swatch.Try(file.Reread(row.Tree, words))
			assert.False(t, all)
			require.Len(t, rows, 1)
			assert.Equal(t, RowUnknown, rows[0].Tallies[0].Faults[0].Kind)
		}
	}
}

func TestSwatchIsOfWrongRowsAndThoseBelow(t *testing.T) {
	_, f, _ := swatchOf(t, "Row 2: Ch 1, sc in next 10 sts; turn. (12 sc)\nRow 3: Ch 1, sc in next 12 sts; turn. (12 sc)\nRow 4: Ch 1, sc in each st across. (12 sc)\n")
	var kept []bool
	for _, r := range f.Pieces[0].Rows {
		kept = append(kept, f.Swatch(r) != nil)
	}
	assert.Equal(t, []bool{false, true, true, false, false}, kept)
}

func TestSwatchesAreBounded(t *testing.T) {
	var rows strings.Builder
	for n := range 2 * maxStages {
		fmt.Fprintf(&rows, "Row %d: Ch 1, sc in each st across; turn. (%d sc)\n", n+2, 13+n%2)
	}
	_, f, _ := swatchOf(t, rows.String())
	kept := 0
	for _, r := range f.Pieces[0].Rows {
		if r.Misfit() > 0 && f.Swatch(r) != nil {
			kept++
		}
	}
	assert.Equal(t, maxStages, kept)
}

func TestBears(t *testing.T) {
	const ten = "Row 2: Ch 1, sc in next 10 sts, leave remaining 2 sts unworked; turn. (%d sc)\n"
	for _, test := range []struct {
		name, rows string
		want       Bearing
	}{
		{"what is made", fmt.Sprintf(ten, 11) + "Row 3: Ch 1, sc in next 10 sts. (10 sc)\n", BearsMade},
		{"what is stated", fmt.Sprintf(ten, 11) + "Row 3: Ch 1, sc in next 11 sts. (11 sc)\n", BearsStated},
		{"both", fmt.Sprintf(ten, 11) + "Row 3: Ch 1, sc in each st across.\n", BearsNeither},
		{"neither", fmt.Sprintf(ten, 11) + "Row 3: Ch 1, sc in next 14 sts. (14 sc)\n", BearsNeither},
		{"a later row", fmt.Sprintf(ten, 11) + "Row 3: Ch 1, sc in each st across; turn.\nRow 4: Ch 1, sc in next 11 sts. (11 sc)\n", BearsStated},
		{"nothing after", fmt.Sprintf(ten, 11), BearsNeither},
		{"spaces", "Row 2: Ch 1, *sc in next st, ch 1, sk next st; rep from * across; turn. (6 sc, 7 ch-1 sps)\nRow 3: Ch 1, sc in each st and ch-1 sp across. (12 sc)\n", BearsNeither},
	} {
		t.Run(test.name, func(t *testing.T) {
			_, f, row := swatchOf(t, test.rows)
			assert.Equal(t, test.want, f.Swatch(row).Bears())
		})
	}
}
