package fabric_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/fabric"
)

// What a writer leaves unsaid is inferred over a whole piece, never excused in
// a single row.
func TestHabitsAreInferredOverAPiece(t *testing.T) {
	for name, c := range map[string]struct {
		rows  string
		made  []int
		taken fabric.Reading // by the rows with a count
		wrong int            // rows whose stated count is not met
	}{
		"beginning chains do not count": {
			rows: `Ch 20.
Row 1: Dc in 4th ch from hook and in each ch across; turn.
Row 2: Ch 3, dc in each st across; turn. (17 dc)
Row 3: Ch 3, dc in each st across; turn.
Row 4: Ch 3, dc in each st across; turn. (17 dc)`,
			made: []int{17, 17, 17, 17}, taken: fabric.ReadTurningCounts,
		},
		"beginning chains count, as custom has it": {
			rows: `Ch 20.
Row 1: Dc in 4th ch from hook and in each ch across; turn.
Row 2: Ch 3, dc in next 17 sts; turn. (18 dc)
Row 3: Ch 3, dc in next 17 sts; turn. (18 dc)`,
			made: []int{18, 18, 18},
		},
		"one count that differs from its neighbours is wrong": {
			rows: `Ch 20.
Row 1: Dc in 4th ch from hook and in each ch across; turn. (18 dc)
Row 2: Ch 3, dc in next 17 sts; turn. (17 dc)
Row 3: Ch 3, dc in next 17 sts; turn. (18 dc)`,
			made: []int{18, 18, 18}, wrong: 1,
		},
		"short hdc chains count where stitches in their tops prove it": {
			rows: `Ch 17.
Row 1: Hdc in 3rd ch from hook and in each ch across; turn. (16 hdc)
Row 2: Ch 2, sk first st, hdc in next 14 sts, hdc in top of tch; turn. (16 hdc)
Row 3: Ch 2, sk first st, hdc in next 14 sts, hdc in top of tch; turn. (16 hdc)`,
			made: []int{16, 16, 16}, taken: fabric.ReadTurningCounts,
		},
		"counts that count chains": {
			rows: `Ch 21.
Row 1: Sc in 2nd ch from hook, *ch 1, sk next ch, sc in next ch; rep from * to last ch, sc in last ch; turn. (20 sts)
Row 2: Ch 1, sc in first sc, sc in next sc, *ch 1, sk next ch-1 sp, sc in next sc; rep from * across; turn. (20 sts)`,
			made: []int{11, 11}, taken: fabric.ReadCountsChains,
		},
		"one count that would fit with its chains is wrong": {
			rows: `Ch 21.
Row 1: Sc in 2nd ch from hook, *ch 1, sk next ch, sc in next ch; rep from * to last ch, sc in last ch; turn. (11 sts)
Row 2: Ch 1, sc in first sc, sc in next sc, *ch 1, sk next ch-1 sp, sc in next sc; rep from * across; turn. (20 sts)`,
			made: []int{11, 11}, wrong: 1,
		},
		"counts that leave the turning chain out": {
			rows: `Ch 22.
Row 1: Dc in 4th ch from hook and in each ch across; turn. (19 dc)
Row 2: Ch 3, dc in next 18 sts, dc in top of tch; turn. (19 dc)
Row 3: Ch 3, dc in next 18 sts, dc in top of tch; turn. (19 dc)`,
			made: []int{20, 20, 20}, taken: fabric.ReadOmitsTurning,
		},
		"a chain that is said to count is counted": {
			rows: `Ch 22.
Row 1: Dc in 4th ch from hook (skipped 3 ch count as dc) and in each ch across; turn. (19 dc)
Row 2: Ch 3 (counts as dc), dc in next 18 sts, dc in top of tch; turn. (19 dc)`,
			made: []int{20, 20}, wrong: 2,
		},
	} {
		t.Run(name, func(t *testing.T) {
			f := worked("Terms: US\n\nPiece: A\n" + c.rows + "\nFasten off.\n")
			var made []int
			wrong := 0
			for _, r := range rowsOf(f) {
				if !strings.HasPrefix(r.Tree.Text, "Row") {
					continue
				}
				tally := r.Tallies[0]
				made = append(made, tally.Made)
				if tally.Agrees() == fabric.Disagrees {
					wrong++
				}
				if r.Stated != nil && c.taken != 0 {
					assert.Equal(t, c.taken, tally.Readings, r.Tree.Text)
				}
			}
			assert.Equal(t, c.made, made)
			assert.Equal(t, c.wrong, wrong)
		})
	}
}

// A wording with two meanings has one of them in all sizes.
func TestReadingsHoldForAllSizes(t *testing.T) {
	f := worked(`Terms: US
Sizes: S (M)

Piece: A
Ch 13 (17).
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 (16) sc)
Row 2: Ch 1, *sc in next 2 sts, sk next st, 2 sc in next st; rep from * 3 (4) times; turn. (12 (16) sts)
Fasten off.
`)
	row := rowsOf(f)[1]
	for size, tally := range row.Tallies {
		assert.Equal(t, fabric.ReadTimesInAll, tally.Readings, "size %d", size)
		assert.Equal(t, fabric.Agrees, tally.Agrees(), "size %d", size)
	}
}

// Rows worked to a length are so many as the gauge tells.
func TestRowsByMeasure(t *testing.T) {
	f := worked(`Terms: US
Gauge: 20 sc and 24 rows = 10 cm

Piece: A
Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (20 sc)
Row 2: Ch 1, sc in each st across; turn. (20 sc)
Rep Row 2 until piece measures 10 cm.
Row 25: Ch 1, sc in each st across. (20 sc)
Fasten off.
`)
	assert.Equal(t, []int{22}, rowsOf(f)[2].Repeats)
}

// A note that speaks of every beginning chain settles what the rows leave
// open.
func TestNotesOfBeginningChains(t *testing.T) {
	for note, want := range map[string]int{
		"Each beginning ch-2 counts as an hdc.":                  12,
		"The ch 2 that begins a round never counts as a stitch.": 11,
		"The hedge is green.":                                    11, // by custom
	} {
		rows := allRows(worked("Terms: US\n\n" + note + "\n\nPiece: Haw\nCh 4, join with sl st to form ring.\nRnd 1: Ch 2, 11 hdc in ring, join.\n"))
		if got := rows[len(rows)-1].Tallies[0].Made; got != want {
			t.Errorf("%q: makes %d hdc, want %d", note, got, want)
		}
	}
}
