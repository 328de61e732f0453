package lint_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// band is a piece whose second row is given.
func band(row string) *source.Text {
	return source.New("Terms: US\n\nPiece: Band\nCh 14.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (13 sc)\n" + row + "\nFasten off.\n")
}

// ambiguous are the findings of wording with two meanings.
func ambiguous(a *lint.Analysis) []lint.Finding {
	var out []lint.Finding
	for _, f := range a.Findings {
		if f.Rule == "wording-ambiguous" {
			out = append(out, f)
		}
	}
	return out
}

func TestAmbiguousWordingIsMadePlain(t *testing.T) {
	for row, want := range map[string]string{
		"Row 2: Ch 1, *sc in next 2 sts, 2 sc in next st; rep from * 4 times, sc in last st. (17 sc)": "Row 2: Ch 1, *sc in next 2 sts, 2 sc in next st; rep from * 3 more times, sc in last st. (17 sc)",
		"Row 2: Ch 1, *sc in next 5 sts, 2 sc in next st; rep from * 2 times, sc in last st. (15 sc)": "Row 2: Ch 1, *sc in next 5 sts, 2 sc in next st; rep from * 1 more time, sc in last st. (15 sc)",
		"Row 2: Sc in next 3 sts, 2 sc in next st, repeat from beg 2 times, sc in last st. (16 sc)":   "Row 2: Sc in next 3 sts, 2 sc in next st, repeat from beg 2 more times, sc in last st. (16 sc)",
		"Row 2: Ch 1, sc in first st, (sc, 2 sc in next st) 6 times. (19 sc)":                         "",
		"Row 2: (sc in next st, sk next st, 2 sc in next st, sk next st, sc in next 9 sts). (12 sc)":  "",
	} {
		a := lint.Analyze(band(row))
		found := ambiguous(a)
		if want == "" {
			assert.Empty(t, found, row)
			continue
		}
		require.Len(t, found, 1, row)
		require.NotNil(t, found[0].Fix, row)
		assert.True(t, found[0].Fix.Safe, row)
		after := fixed(t, a.Text, *found[0].Fix)
		assert.Equal(t, band(want).String(), after.Text.String(), row)
		assert.Empty(t, ambiguous(after), row)
	}
}
