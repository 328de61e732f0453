package measure_test

import (
	"math"
	"os"
	"strings"
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

// Of a front of 20 rows whose armholes begin in Row 15, the lower rows tell.
func TestSteadyWidth(t *testing.T) {
	file := syntax.Read(source.New("Gauge: 10 sc and 10 rows = 10 cm\nTerms: US\n\nPiece: Front\nCh 31.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (30 sc)\n" +
		"Row 2: Ch 1, 2 sc in first st, sc in each st across to last st, 2 sc in last st; turn. (32 sc)\nRows 3-14: Ch 1, sc in each st across; turn. (32 sc)\n" +
		"Rows 15-20: Ch 1, sc in next 20 sts, leave remaining sts unworked; turn. (20 sc)\n"))
	worked := fabric.Work(file)
	s := measure.Of(materials.Read(file), worked, worked.Pieces[0], 0)
	assert.Equal(t, []float64{300, 320, 320}, []float64{s.First, s.Steady, s.Width})
}

// An armhole that is shaped in rows that are referred to is narrower than what lies
// below it only in the last of them, as far as is known.
func TestSteadyWidthBelowRepeatedShaping(t *testing.T) {
	file := syntax.Read(source.New("Gauge: 10 sc and 10 rows = 10 cm\nTerms: US\n\nPiece: Front\nCh 31.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (30 sc)\n" +
		"Rows 2-5: Ch 1, sc in each st across; turn. (30 sc)\nRow 6: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog; turn. (28 sc)\nRows 7-12: Rep Row 6. (16 sc)\n"))
	worked := fabric.Work(file)
	s := measure.Of(materials.Read(file), worked, worked.Pieces[0], 0)
	assert.Equal(t, []float64{300, 0, 300}, []float64{s.First, s.Steady, s.Width})
}

func TestNoSizeWithoutGauge(t *testing.T) {
	file := syntax.Read(source.New("Pattern: Mat\nTerms: US\n\nPiece: Mat\nWith A, ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)\n"))
	worked := fabric.Work(file)
	assert.Zero(t, measure.Of(materials.Read(file), worked, worked.Pieces[0], 0))
}

const strip = `Terms: US
Piece: Strip
With A, ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (20 sc)
Rows 2-10: Ch 1, sc in each st across; turn. (20 sc)
`

func yarnOf(t *testing.T, header, rows string) []measure.Yarn {
	t.Helper()
	file := syntax.Read(source.New("Pattern: Strip\n" + header + rows))
	worked := fabric.Work(file)
	require.Len(t, worked.Pieces, 1)
	return measure.YarnOf(materials.Read(file), worked, worked.Pieces[0], 0)
}

// A piece of as many stitches as the swatch weighs as much, and its chain.
func TestYarnFromSwatch(t *testing.T) {
	yarn := yarnOf(t, "Swatch: 20 sts x 10 rows of sc = 2.1 g\n", strip)
	require.Len(t, yarn, 1)
	assert.Equal(t, "a", yarn[0].Name)
	assert.Equal(t, "g", yarn[0].Unit())
	weight := 2.1 * (200 + 21*4.8/10.6) / 200
	assert.InDelta(t, weight*0.9, yarn[0].Low, 0.06, "ten in a hundred less")
	assert.InDelta(t, weight*1.1, yarn[0].High, 0.06)
}

// windchilde.com: 10.6 in of yarn for an inch of a row of sc, 20.4 for one of dc.
func TestYarnByEstimate(t *testing.T) {
	yarn := yarnOf(t, "Gauge: 20 sc and 20 rows = 10 cm\n", strip)
	require.Len(t, yarn, 1)
	assert.Equal(t, "m", yarn[0].Unit())
	metres := (200*10.6 + 21*4.8) * 0.005 // each stitch is 5 mm wide
	assert.InDelta(t, metres, (yarn[0].Low+yarn[0].High)/2, 0.15)
	assert.Less(t, yarn[0].Low, 0.65*metres)
}

// snovej.com: a birch leaf of 15 stitches and 5 chains took 65 in of worsted
// yarn on a 3.5 mm hook, at which 17 sc go to 10 cm (common practice).
func TestYarnOfTheBirchLeaf(t *testing.T) {
	yarn := yarnOf(t, "Terms: US\nGauge: 17 sc = 10 cm\n", "Piece: Leaf\nWith A, ch 6.\n"+
		"Rnd 1: Sl st in 2nd ch from hook, sc in next ch, hdc in next ch, dc in next ch, 7 dc in last ch, working along opposite side of foundation ch, dc in next ch, hdc in next ch, sc in next ch, sl st in next ch. (15 sts)\n")
	require.Len(t, yarn, 1)
	assert.Greater(t, 1.65, yarn[0].Low)
	assert.Less(t, 1.65, yarn[0].High)
}

func TestNoYarnWithoutSwatchAndGauge(t *testing.T) {
	assert.Empty(t, yarnOf(t, "", strip))
	assert.Empty(t, yarnOf(t, "Gauge: 20 sc = 10 cm\n", strings.Replace(strip, "(20 sc)", "(21 sc)", 1)), "a count that is wrong")
}

// An edging is in no figure of the piece: what it may add is told beside them.
func TestEdging(t *testing.T) {
	edged := func(name, rounds string) (measure.Size, float64) {
		file := syntax.Read(source.New("Gauge: 10 sc and 10 rows = 10 cm\nTerms: US\n\nPiece: Mat\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (10 sc)\n" +
			"\nPiece: " + name + "\n" + rounds))
		worked := fabric.Work(file)
		require.Len(t, worked.Pieces, 2)
		list := materials.Read(file)
		return measure.Of(list, worked, worked.Pieces[0], 0), measure.Edging(list, worked, worked.Pieces[1], 0)
	}
	s, border := edged("Border", "Ch 41; join.\nRnd 1: Ch 1, sc in each ch around; join. (41 sc)\nRnd 2: Ch 1, sc in each st around; join. (41 sc)\n")
	assert.InDelta(t, 100, s.Width, 0.01)
	assert.Zero(t, s.Edging)
	assert.Greater(t, border, 40.0, "two rounds of 1 cm on both sides")
	assert.Less(t, border, 130.0, "and no more than a picot each beside them")
	_, open := edged("Border", "Ch 41; join.\nRnd 1: Ch 1, sc in each ch around; join.\nRep Rnd 1 until the border is wide enough.\n")
	assert.True(t, math.IsInf(open, 1), "as wide as the maker likes")
	_, hung := edged("Fringe", "Ch 41.\nRow 1: Sc in 2nd ch from hook and in each ch across. (40 sc)\n")
	assert.True(t, math.IsInf(hung, 1), "nothing tells how long it hangs")
	file := syntax.Read(source.New("Gauge: 10 sc and 10 rows = 10 cm\nTerms: US\n\nPiece: Mat\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (10 sc)\n" +
		"Rows 2-10: Ch 1, sc in each st across; turn. (10 sc)\nEdging: Ch 1, sc in each st around; join.\n"))
	worked := fabric.Work(file)
	own := measure.Of(materials.Read(file), worked, worked.Pieces[0], 0)
	assert.InDelta(t, 100, own.Width, 0.01)
	assert.InDelta(t, 2*(40+10), own.Edging, 0.01, "a round, which nobody counts, of trebles, and a picot, on both sides")
	assert.True(t, measure.IsEdging("Shell border") && !measure.IsEdging("Hedge"))
}

// What is known of a piece is told though its height is not: the chain, the rows, and of the
// rows of another stitch how high they may be.
func TestReaches(t *testing.T) {
	reach := func(rest string) []measure.Reach {
		file := syntax.Read(source.New("Gauge: 10 sc and 10 rows = 10 cm\nTerms: US\n\nPiece: Strip\nCh 31.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (30 sc)\n" + rest))
		worked := fabric.Work(file)
		return measure.Reaches(materials.Read(file), worked, worked.Pieces, 0)
	}
	tall := func(all []measure.Reach) []float64 {
		for _, r := range all {
			if r.Way == measure.Tall {
				return []float64{r.Low, r.High}
			}
		}
		return nil
	}
	plain := reach("Rows 2-10: Ch 1, sc in each st across; turn. (30 sc)\n")
	assert.Equal(t, measure.Long, plain[0].Way)
	assert.Equal(t, []float64{300, 310}, []float64{plain[0].Low, plain[0].High})
	assert.Equal(t, []float64{100, 100}, tall(plain))
	assert.Equal(t, []float64{20, 25}, tall(reach("Row 2: Ch 2, hdc in each st across; turn. (30 hdc)\n")), "half as high again at most")
	assert.Nil(t, tall(reach("Row 2: Ch 1, sc in each st across; turn. (30 sc)\nRep Row 2 until it is long enough.\n")))
}
