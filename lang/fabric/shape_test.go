package fabric_test

import (
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stitchproof/lang/fabric"
)

// Bends along a chain against closed forms: none of these tests knows how the
// turn is worked out, only what a strip of paper of the same edges would do.

// square is a gauge by which a single crochet is as wide as high.
const square = "Gauge: 20 sc and 20 rows = 10 cm\n"

// shaped works rows under a gauge and gives the strips of the last row.
func shaped(t require.TestingT, gauge, rows string) []fabric.Strip {
	all := rowsOf(worked("Terms: US\n" + gauge + "\nPiece: Sprig\n" + rows + "\n"))
	require.NotEmpty(t, all, rows)
	last := all[len(all)-1]
	require.Empty(t, last.Tallies[0].Faults, rows)
	return last.Shape(0)
}

// stripOf gives the only strip of the last row, of which the bend is known.
func stripOf(t require.TestingT, gauge, rows string) fabric.Strip {
	strips := shaped(t, gauge, rows)
	require.Len(t, strips, 1, rows)
	require.True(t, strips[0].Known, rows)
	return strips[0]
}

// knownStrips are the strips of a row in the first size of which the bend is known.
func knownStrips(r *fabric.Row) []fabric.Strip {
	var out []fabric.Strip
	for _, s := range r.Shape(0) {
		if s.Known {
			out = append(out, s)
		}
	}
	return out
}

// onChain writes one row along a chain that its stitches use up.
func onChain(chains int, steps string) string {
	return fmt.Sprintf("Ch %d.\nRow 1: Sl st in 2nd ch from hook, %s, sl st in last ch.", chains, steps)
}

const degree = math.Pi / 180

// TestRingCloses: a strip whose top is 2 pi times its height longer than its
// bottom bends into a ring, whatever the number of stitches and their height.
func TestRingCloses(t *testing.T) {
	for stitch, height := range map[string]float64{"sc": 1, "hdc": 1.5, "dc": 2, "tr": 3, "dtr": 4} {
		for _, more := range []int{4, 6, 12, 25} {
			// With S stitches and R rows of sc to a length L, a stitch is L/S wide
			// and height*L/R high: more*L/S = 2*pi*height*L/R.
			rows := 2 * math.Pi * height * 100 / float64(more)
			gauge := fmt.Sprintf("Gauge: 100 sc and %.10f rows = 50 cm\n", rows)
			s := stripOf(t, gauge, onChain(more+23, fmt.Sprintf("%s in next 7 ch, 2 %s in each of next %d ch, %s in next 13 ch", stitch, stitch, more, stitch)))
			assert.InDelta(t, 360, s.Turn, 1e-6, "%d %s more", more, stitch)
		}
	}
}

func TestStraightStripsTurnNowhere(t *testing.T) {
	for _, steps := range []string{
		"sc in next 12 ch",
		"sc in next 3 ch, hdc in next 3 ch, dc in next 3 ch, tr in next 3 ch", // height alone bends nothing
		"*dc in next ch, ch 1, sk next ch; rep from * 5 more times, dc in next ch, sc in next ch",
		"sk next 2 ch, 5 dc in next ch, sk next 2 ch, sc in next ch, sk next 2 ch, 5 dc in next ch, sk next 2 ch, sc in next ch",
		"dc in next 2 ch, sk next 2 ch, 3 dc in next ch, dc in next 2 ch", // what is passed over lies under the three
	} {
		rows := "Ch 40.\nRow 1: Sl st in 2nd ch from hook, " + steps + ", leave rem ch unworked."
		s := stripOf(t, square, rows)
		assert.Zero(t, s.Turn, steps)
		for _, b := range s.Bends {
			assert.Zero(t, b.Turn, steps)
		}
	}
}

// TestStraightOverSpaces: two stitches in a space of two chains.
func TestStraightOverSpaces(t *testing.T) {
	s := stripOf(t, square, "Ch 62.\nRow 1: Dc in 4th ch from hook, *ch 2, sk next 2 ch, dc in next ch; rep from * to last ch, dc in last ch, turn.\n"+
		"Row 2: Ch 1, sc in first 2 sts, *2 sc in next ch-2 sp, sc in next dc; rep from * to last st, sc in last st.")
	for _, b := range s.Bends {
		assert.Zero(t, b.Turn)
	}
}

// shaping is a run of shaping along a chain, for random strips.
type shaping struct {
	stitch  string
	used    int
	made    int
	repeats int
}

func (s shaping) steps() string {
	switch {
	case s.made > 1 && s.repeats == 1:
		return fmt.Sprintf("%d %s in next ch", s.made, s.stitch)
	case s.made > 1:
		return fmt.Sprintf("%d %s in each of next %d ch", s.made, s.stitch, s.repeats)
	case s.used > 1:
		return fmt.Sprintf("[%s%dtog over next %d ch] %d times", s.stitch, s.used, s.used, s.repeats)
	}
	return fmt.Sprintf("%s in next %d ch", s.stitch, s.repeats)
}

// mirrored increases where the other decreases.
func (s shaping) mirrored() shaping { s.used, s.made = s.made, s.used; return s }

func drawShaping(t *rapid.T) []shaping {
	return rapid.SliceOfN(rapid.Custom(func(t *rapid.T) shaping {
		s := shaping{stitch: rapid.SampledFrom([]string{"sc", "hdc", "dc", "tr"}).Draw(t, "stitch"), used: 1, made: 1, repeats: rapid.IntRange(1, 5).Draw(t, "repeats")}
		*rapid.SampledFrom([]*int{&s.used, &s.made}).Draw(t, "way") = rapid.IntRange(1, 3).Draw(t, "n")
		return s
	}), 1, 6).Draw(t, "shaping")
}

// written writes shaping as the row of a strip with plain ends.
func written(list []shaping) string {
	var steps []string
	used := 0
	for _, s := range list {
		steps = append(steps, s.steps())
		used += s.used * s.repeats
	}
	return onChain(used+3, strings.Join(steps, ", "))
}

func TestTurnsAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawShaping(t), drawShaping(t)
		whole := stripOf(t, square, written(append(append([]shaping{}, a...), b...))).Turn
		parts := stripOf(t, square, written(a)).Turn + stripOf(t, square, written(b)).Turn
		if math.Abs(whole-parts) > 1e-9 {
			t.Fatalf("%v, in two parts %v: %v %v", whole, parts, a, b)
		}
	})
}

func TestMirroredShapingCancels(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		there := drawShaping(t)
		var back []shaping
		for i := len(there) - 1; i >= 0; i-- {
			back = append(back, there[i].mirrored())
		}
		s := stripOf(t, square, written(append(append([]shaping{}, there...), back...)))
		out, in := stripOf(t, square, written(there)).Turn, stripOf(t, square, written(back)).Turn
		if math.Abs(s.Turn) > 1e-9 || math.Abs(out+in) > 1e-9 {
			t.Fatalf("turns %v, its halves %v and %v: %v", s.Turn, out, in, there)
		}
	})
}

// TestTurnFollowsTheEdges works the turn out from the lengths of the edges in
// millimetres, by a gauge drawn at random.
func TestTurnFollowsTheEdges(t *testing.T) {
	heights := map[string]float64{"sc": 1, "hdc": 1.5, "dc": 2, "tr": 3}
	rapid.Check(t, func(t *rapid.T) {
		list := drawShaping(t)
		of := rapid.SampledFrom([]string{"sc", "hdc", "dc", "tr"}).Draw(t, "of")
		sts, rows := rapid.IntRange(8, 40).Draw(t, "sts"), rapid.IntRange(4, 40).Draw(t, "rows")
		wide, high := 100/float64(sts), 100/float64(rows)/heights[of]
		want := 0.0
		for _, s := range list {
			top, bottom := float64(s.made*s.repeats)*wide, float64(s.used*s.repeats)*wide
			if per := (top - bottom) / (heights[s.stitch] * high) / float64(s.repeats); math.Abs(per) > math.Pi {
				t.Skip("more than half a circle in one place")
			}
			want += (top - bottom) / (heights[s.stitch] * high)
		}
		got := stripOf(t, fmt.Sprintf("Gauge: %d %s and %d rows = 10 cm\n", sts, of, rows), written(list)).Turn
		if math.Abs(got*degree-want) > 1e-9 {
			t.Fatalf("turns %v, want %v: %v", got*degree, want, list)
		}
	})
}

// TestWiderStitchesTurnMore: half as many stitches to the length are twice as
// wide and turn twice as far.
func TestWiderStitchesTurnMore(t *testing.T) {
	row := onChain(20, "2 dc in each of next 3 ch, sc in next 5 ch, hdc3tog, sc in next 6 ch")
	narrow := stripOf(t, "Gauge: 40 sc and 20 rows = 10 cm\n", row)
	wide := stripOf(t, "Gauge: 20 sc and 20 rows = 10 cm\n", row)
	require.NotZero(t, narrow.Turn)
	assert.InDelta(t, 2*narrow.Turn, wide.Turn, 1e-9)
	for i, b := range narrow.Bends {
		assert.InDelta(t, 2*b.Turn, wide.Bends[i].Turn, 1e-9)
	}
}

// TestGaugeOfAnotherStitch: 20 sc and 24 rows of sc are 20 dc and 12 rows of dc.
func TestGaugeOfAnotherStitch(t *testing.T) {
	row := onChain(12, "2 dc in each of next 3 ch, sc in next 6 ch")
	want := stripOf(t, "Gauge: 20 sc and 24 rows = 10 cm\n", row).Turn
	for _, gauge := range []string{
		"Gauge: 20 dc and 12 rows = 10 cm\n", "Gauge: 12 rows and 20 dc = 4 in\n", "Gauge: 10 dc = 5 cm, 12 rows = 10 cm\n", "Gauge: 20 hdc and 16 rows = 10 cm\n",
	} {
		assert.InDelta(t, want, stripOf(t, gauge, row).Turn, 1e-9, gauge)
	}
	usual := stripOf(t, "", row).Turn // 6.25 by 5.75 for as many stitches as rows
	assert.InDelta(t, 3/2.0*6.25/5.75/degree, usual, 1e-9)
	for _, gauge := range []string{"Gauge: 20 sts and 24 rows = 10 cm\n", "Gauge: 20 sc = 10 cm\n", "Gauge: 4 shells and 24 rows = 10 cm\n"} {
		assert.InDelta(t, usual, stripOf(t, gauge, row).Turn, 1e-9, gauge)
	}
}

func TestShapeDoesNotDependOnTheWording(t *testing.T) {
	want := stripOf(t, square, "Ch 13.\nRow 1: Sc in 2nd ch from hook, 2 dc in each of next 3 ch, sc in next 3 ch, sc2tog over next 2 ch, sc in next 3 ch.")
	require.InDelta(t, (3/2.0-1)/degree, want.Turn, 1e-9)
	for _, row := range []string{
		"Ch 13.\nRow 1: Sc in 2nd ch from hook, [2 dc in next ch] 3 times, sc in next 3 ch, sc2tog, sc in each rem ch.",
		"Chain 13.\nRow 1: Single crochet in second chain from hook, *2 double crochet in next chain; repeat from * 2 more times, 3 sc, sc2tog, sc in each chain across.",
		"Ch 13.\nRow 1: 1 sc in 2nd ch from hook, (dc, dc) in each of next 3 ch, sc in each of next 3 ch, sc 2 tog, 3 sc.",
		"Ch 13.\nRow 1: Sk 1 ch, sc in next ch, dc inc 3 times, sc 3, dec, sc to end.",
	} {
		assert.Equal(t, want, stripOf(t, square, row), row)
	}
	uk := rowsOf(worked("Terms: UK\nTension: 20 dc and 20 rows = 10 cm\n\nPiece: Sprig\nCh 13.\nRow 1: Dc in 2nd ch from hook, 2 tr in each of next 3 ch, dc in next 3 ch, dc2tog over next 2 ch, dc in next 3 ch.\n"))[0].Shape(0)
	require.Len(t, uk, 1)
	assert.Equal(t, want, uk[0], "UK")
}

// TestEndsBendNothing: what is worked into the first and the last place leans
// out over a free end.
func TestEndsBendNothing(t *testing.T) {
	assert.Zero(t, stripOf(t, square, "Ch 11.\nRow 1: 3 sc in 2nd ch from hook, sc in next 8 ch, 3 sc in last ch.").Turn)
	assert.Zero(t, stripOf(t, square, "Ch 31.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog.").Turn)
}

func TestShapeOfBranches(t *testing.T) {
	strips := shaped(t, square, "Ch 12.\nRow 1: Sc in 2nd ch from hook and in next 4 ch, branch Thorn: ch 8, sc in 2nd ch from hook, 2 sc in next ch, "+
		"branch Spur: ch 4, sl st in 2nd ch from hook and in next 2 ch, return to Thorn, sc in each rem ch of Thorn, return to stem, 2 sc in next ch, sc in next ch, sc3tog, sc in next ch.")
	require.Len(t, strips, 3)
	type known struct {
		branch      string
		stem, known bool
		made        int
	}
	var got []known
	for _, s := range strips {
		made := 0
		for _, b := range s.Bends {
			made += b.Made
		}
		assert.True(t, s.OnChain)
		got = append(got, known{s.Branch, s.Stem, s.Known, made})
	}
	assert.Equal(t, []known{{"", true, true, 10}, {"thorn", false, true, 8}, {"spur", false, true, 3}}, got)
	assert.InDelta(t, -1/degree, strips[0].Turn, 1e-9) // one more, then two fewer
	assert.InDelta(t, 1/degree, strips[1].Turn, 1e-9)
	assert.Zero(t, strips[2].Turn)
}

// TestShapeIsNotGuessed: where a bend cannot be told, none is.
func TestShapeIsNotGuessed(t *testing.T) {
	broad := "Ch 12.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRows 2-9: Ch 1, sc in each st across, turn.\n"
	for name, rows := range map[string]string{
		"round":                 "Ch 12.\nRnd 1: Sc in 2nd ch from hook, 2 sc in next ch, sc in each ch across; sl st in first sc to join.",
		"both sides of a chain": "Ch 12.\nRow 1: Sc in 2nd ch from hook, 2 sc in next ch, sc in each ch across, working along opposite side of foundation ch, sc in each ch across.",
		"broad piece":           broad + "Row 10: Ch 1, sc in next 4 sts, 2 sc in next st, sc in each st across.",
		"free loops":            "Ch 14.\nRow 1: Sc in 2nd ch from hook, *ch 5, sk next 3 ch, sc in next ch; rep from * across.",
		"on free loops":         "Ch 30.\nRow 1: Sc in 2nd ch from hook, *ch 5, sk next 3 ch, sc in next ch; rep from * across, turn.\nRow 2: Ch 1, sc in first sc, *5 sc in next ch-5 sp, 2 sc in next sc; rep from * across.",
		"crossed":               "Ch 12.\nRow 1: Sc in 2nd ch from hook, 2 sc in next ch, sk next ch, dc in next ch, dc in skipped ch, sc in each ch across.",
		"spike":                 "Ch 32.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in next 4 sts, 2 sc in next st, sc in next st 1 row below, sc in each st across.",
		"by measure":            "Ch 42.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in each st across, turn.\nRow 3: Rep Row 2 until piece is as long as desired.\nRow 4: Ch 1, sc in next 4 sts, 2 sc in next st, sc in each st across.",
		"half a circle":         "Ch 12.\nRow 1: Sc in 2nd ch from hook, sc in next 3 ch, 5 sc in next ch, sc in each ch across.",
		"two places":            "Ch 3.\nRow 1: 2 sc in 2nd ch from hook, 2 sc in last ch.",
		"wherever":              "Ch 12.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, work 14 sc evenly across.",
	} {
		strips := shaped(t, square, rows)
		assert.Equal(t, name == "wherever", len(strips) == 0, name)
		for _, s := range strips {
			assert.False(t, s.Known, name)
			assert.Zero(t, s.Turn, name)
			assert.Empty(t, s.Bends, name)
		}
	}
	row := "Ch 1, sc in next 4 sts, 2 sc in next st, sc in each st across, turn.\n"
	pieces := worked("Terms: US\n\nPiece: Sprig\nCh 31.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: " + row + "\nPiece: Tip\nRow 3: " + row).Pieces
	assert.NotZero(t, pieces[0].Rows[2].Shape(0)[0].Turn)
	assert.False(t, pieces[1].Rows[0].Shape(0)[0].Known, "on another piece")
	lost := rowsOf(worked("Terms: US\n\nPiece: Sprig\nCh 12.\nRow 1: Sc in 2nd ch from hook, wren in next ch, sc in each ch across.\n"))
	assert.Empty(t, lost[0].Shape(0))
}

// TestShapeOfOurAppliques holds shapes that our patterns mean against sums made
// by hand. Both have 20 sc and 22 rows to 10 cm: a stitch is 1.1 times as wide
// as a row of sc is high, so one stitch more in sc turns 1.1 radians, 63 degrees.
func TestShapeOfOurAppliques(t *testing.T) {
	const one = 22.0 / 20 / degree
	for _, test := range []struct {
		pattern, piece string
		row            int
		want           float64
	}{
		// 2 tr in each of 3 ch: 3 more, 3 high. tr5tog: 4 fewer, 3 high. 2 dc in
		// one ch: 1 more, 2 high. dc3tog: 2 fewer, 2 high.
		{"bracken-crozier", "Frond", 0, (3/3.0 - 4/3.0 + 1/2.0 - 2/2.0) * one},
		// hdc2tog: 1 fewer, 1.5 high. 3 dc in one: 2 more, 2 high. dc2tog: 1 fewer, 2 high.
		{"bracken-crozier", "Frond", 1, (-1/1.5 + 2/2.0 - 1/2.0) * one},
		// 3 sc in each of 10 ch, the first of them at the end: 9 times 2 more.
		// 2 sc in one: 1 more. sc2tog: 1 fewer. More than three curls, as the
		// pattern means it: it rolls up.
		{"bracken-crozier", "Curl", 0, (9*2 + 1 - 1) * one},
		// 2 hdc twice: 1 more each, 1.5 high. dc, tr, dc: 2 more, 7/3 high.
		{"bracken-crozier", "Leaflet", 0, (2*1/1.5 + 2/(7/3.0)) * one},
		// The stalk of the oak leaf: slip stitches back along 6 ch. The leaf
		// itself is worked round, on both sides of its chain.
		{"oak-and-ivy-leaves", "Oak leaf", 0, 0},
	} {
		text, err := os.ReadFile("../../testdata/patterns/" + test.pattern + ".crochet")
		require.NoError(t, err)
		for _, p := range worked(string(text)).Pieces {
			if p.Tree.Name != test.piece {
				continue
			}
			var rows []*fabric.Row
			for _, r := range p.Rows {
				if r.Works() {
					rows = append(rows, r)
				}
			}
			known := 0
			for _, s := range rows[test.row].Shape(0) {
				if s.Known {
					known++
					assert.InDelta(t, test.want, s.Turn, 1e-9, test.piece)
				}
			}
			assert.Equal(t, 1, known, test.piece)
		}
	}
}
