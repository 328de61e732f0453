package report

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const weighed = `Pattern: Hedge band
Terms: US
Sizes: S (M)
Gauge: 20 sc and 20 rows = 10 cm
Swatch: 20 sts x 10 rows of sc = 2 g

Piece: Band (make 2)
With A, ch 21 (41).
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (20 (40) sc)
Rows 2-10: Ch 1, sc in each st across; turn. (20 (40) sc)
Fasten off.
`

func TestMeasuresOfEachSize(t *testing.T) {
	c := countOf("band.crochet", weighed)
	require.Len(t, c.Pieces, 1)
	// 200 (400) sc at 0.01 g, and a chain of 21 (41) at 4.8/10.6 of that.
	assert.Equal(t, []string{
		"size by the gauge: 10 (20) cm wide, 5 cm high",
		"yarn by the swatch: A 1.8-2.4 (3.7-4.7) g",
	}, c.Pieces[0].measures())
	require.NotNil(t, c.Needs)
	assert.InDelta(t, 3.6, c.Needs.Yarns["A"][0].Low, 1e-9, "two bands")
}

func TestNoNeedsWhereAPieceIsNotKnown(t *testing.T) {
	c := countOf("band.crochet", weighed+"\nPiece: Tab\nWith A, ch 5.\nRow 1: Sc in 2nd ch from hook and in each ch across. (9 sc)\nFasten off.\n")
	require.Len(t, c.Pieces, 2)
	assert.NotNil(t, c.Pieces[0].Needs)
	assert.Nil(t, c.Pieces[1].Needs)
	assert.Nil(t, c.Needs)
	assert.Empty(t, c.Pieces[1].sizeLine())
}
