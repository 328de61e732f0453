package measure_test

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/materials"
	"stitchproof/lang/measure"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// sizeOf measures the first piece of one of our patterns.
func sizeOf(t *testing.T, name string, size int) measure.Size {
	t.Helper()
	content, err := os.ReadFile("../../testdata/patterns/" + name + ".crochet")
	require.NoError(t, err)
	file := syntax.Read(source.New(string(content)))
	worked := fabric.Work(file)
	return measure.Of(materials.Read(file), worked, worked.Pieces[0], size)
}

// By hand: stitches over stitches to 10 cm, rows over rows to 10 cm.
func TestSizes(t *testing.T) {
	for name, want := range map[string][]float64{ // width or way round, height in mm
		"rose-hip-pot-mat":       {25 / 13. * 100, 26 / 14. * 100},
		"bramble-stripe-cushion": {48 / 12. * 100, 28 / 7. * 100},
		"wren-cap":               {30 / 14. * 100, 85 / 16. * 100},
		"hedge-walker-hat":       {56 / 12. * 100, 18 / 9. * 100},
		"plowed-field-ripple":    {141 / 14. * 90, 84 / 7. * 100},
		"frost-v-stitch-cowl":    {12 / 5. * 100, 48 / 8. * 100},
	} {
		s := sizeOf(t, name, 0)
		assert.InDelta(t, want[0], s.Width+s.Around, 0.01, name)
		assert.InDelta(t, want[1], s.Height, 0.01, name)
		assert.True(t, s.Exact, name)
	}
	assert.InDelta(t, 68/12.*100, sizeOf(t, "hedge-walker-hat", 3).Around, 0.01, "the largest size")
	assert.False(t, sizeOf(t, "dog-rose-and-bramble-flower", 0).Exact, "petals of several stitches")
}

func TestNoSizeWithoutGauge(t *testing.T) {
	file := syntax.Read(source.New("Pattern: Mat\nTerms: US\n\nPiece: Mat\nWith A, ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)\n"))
	worked := fabric.Work(file)
	assert.Zero(t, measure.Of(materials.Read(file), worked, worked.Pieces[0], 0))
}
