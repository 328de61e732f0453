package fabric_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"stitchproof/lang/fabric"
)

// No text may make the engine run without end, run out of memory or panic.

// maxStitches is the most stitches of a piece that are kept, as the notation
// promises.
const maxStitches = 1_000_000

// bombs are rows that ask for more than anyone could crochet.
var bombs = map[string]string{
	"a long chain":              "Row 1: Ch 999999999, sc in 2nd ch from hook and in each ch across.",
	"a long row":                "Row 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: Sc in next 4000000000 sts.",
	"a number of twenty digits": "Row 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: 99999999999999999999 sc in next st.",
	"a ring":                    "Make a magic ring.\nRnd 1: 100001 sc in ring.",
	"nested repeats":            "Make a magic ring.\nRnd 1: " + nested("sc in ring", 6),
	"repeats of a group":        "Make a magic ring.\nRnd 1: 6 sc in ring.\nRnd 2: " + nested("(2 dc, ch 2, 2 dc) in same st", 6),
	"repeats of chains":         "Make a magic ring.\nRnd 1: 6 sc in ring.\nRnd 2: " + nested("ch 1", 6),
	"repeats of a skip":         "Make a magic ring.\nRnd 1: 6 sc in ring.\nRnd 2: " + nested("sk next st", 6),
	"repeats of a turn":         "Make a magic ring.\nRnd 1: 6 sc in ring.\nRnd 2: " + nested("turn", 6),
	"repeats of a branch":       "Row 1: Ch 11, sc in 2nd ch from hook and in next 8 ch, " + nested("ch 3, sc in 2nd ch from hook and in next ch", 6),
	"doubling rounds":           "Make a magic ring.\nRnd 1: 6 sc in ring.\nRnds 2-60: 2 sc in each st around.",
	"rounds without end":        "Make a magic ring.\nRnd 1: 6 sc in ring.\nRnds 2-999999999: 3 sc in each st around.",
	"rows by reference":         "Make a magic ring.\nRnd 1: 6 sc in ring.\nRnd 2: 2 sc in each st around.\nRep Rnd 2 999999999 times.",
	"work even":                 "Make a magic ring.\nRnd 1: 90000 sc in ring.\nRnds 2-999999999: Work even.",
	"stitches made of stitches": "Row 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: Leafh in next st.",
}

// nested is a step in brackets, each worked a thousand times, so deep.
func nested(step string, depth int) string {
	return strings.Repeat("[", depth) + step + strings.Repeat("] 1000 times", depth) + "."
}

// bombHead begins every bomb, with stitches of which each is ten of the one
// before.
const bombHead = `Terms: US

Special stitches
leafa: 10 sc in same st.
leafb: (leafa, leafa, leafa, leafa, leafa, leafa, leafa, leafa, leafa, leafa) in same st.
leafc: (leafb, leafb, leafb, leafb, leafb, leafb, leafb, leafb, leafb, leafb) in same st.
leafd: (leafc, leafc, leafc, leafc, leafc, leafc, leafc, leafc, leafc, leafc) in same st.
leafe: (leafd, leafd, leafd, leafd, leafd, leafd, leafd, leafd, leafd, leafd) in same st.
leaff: (leafe, leafe, leafe, leafe, leafe, leafe, leafe, leafe, leafe, leafe) in same st.
leafg: (leaff, leaff, leaff, leaff, leaff, leaff, leaff, leaff, leaff, leaff) in same st.
leafh: (leafg, leafg, leafg, leafg, leafg, leafg, leafg, leafg, leafg, leafg) in same st.

Piece: Sampler
`

func TestBombsAreRefused(t *testing.T) {
	for _, name := range slices.Sorted(maps.Keys(bombs)) {
		t.Run(name, func(t *testing.T) {
			f := worked(bombHead + bombs[name])
			if !hasFault(f, fabric.TooMany, fabric.RowOver) {
				t.Error("not refused")
			}
			for _, list := range f.Pieces[0].Stitches {
				if len(list) > maxStitches {
					t.Errorf("%d stitches kept", len(list))
				}
			}
		})
	}
}

func hasFault(f *fabric.Fabric, kinds ...fabric.FaultKind) bool {
	for _, r := range allRows(f) {
		for _, tally := range r.Tallies {
			for _, fault := range tally.Faults {
				if slices.Contains(kinds, fault.Kind) {
					return true
				}
			}
		}
	}
	return false
}

// circles are patterns that refer to themselves.
var circles = map[string]string{
	"rows by each other":     "Piece: Sampler\nRow 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: Rep Row 3.\nRow 3: Rep Row 2.\nRow 4: Sc in each st across.\n",
	"a row by itself":        "Piece: Sampler\nRow 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: Rep Row 2.\n",
	"rows among themselves":  "Piece: Sampler\nRow 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRows 2-9: Rep Rows 2-9.\n",
	"pieces by each other":   "Piece: Front\nWork as for Back to Row 3.\n\nPiece: Back\nWork as for Front to Row 3.\n",
	"a piece by itself":      "Piece: Front\nWork as for Front to Row 3.\nRow 3: Sc in each st across.\n",
	"a stitch by itself":     "Special stitches\nfrond: (dc, frond, dc) in same st.\n\nPiece: Sampler\nRow 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: Frond in next st.\n",
	"stitches by each other": "Special stitches\nbud: sprig in same st.\nsprig: bud in same st.\n\nPiece: Sampler\nRow 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: Bud in next 2 sts.\n",
}

func TestCirclesAreTold(t *testing.T) {
	for _, name := range slices.Sorted(maps.Keys(circles)) {
		t.Run(name, func(t *testing.T) {
			f := worked("Terms: US\n\n" + circles[name])
			told := hasFault(f, fabric.RowUnknown, fabric.TooMany)
			for _, r := range allRows(f) {
				told = told || !r.Tallies[0].Known
			}
			if !told {
				t.Error("worked as if there were no circle")
			}
		})
	}
}

func TestDeepBrackets(t *testing.T) {
	const depth = 20_000
	const open = 500 // stars and branches, each opened in the one before
	for _, pair := range []string{"[]", "()", "{}", "[)", "[", "]", "(("} {
		open, shut := strings.Repeat(pair[:1], depth), ""
		if len(pair) > 1 {
			shut = strings.Repeat(pair[1:], depth)
		}
		for _, inside := range []string{"sc in next st", ""} {
			worked(fmt.Sprintf("Piece: Sampler\nRow 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: %s%s%s 2 times.\nRow 3: Sc in each st across.\n", open, inside, shut))
		}
	}
	worked("Piece: Sampler\nRow 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: " +
		strings.Repeat("*sc, ", open) + strings.Repeat("; rep from * across", open) + ".\n")
	worked("Piece: Sampler\nRow 1: Ch 11, " + strings.Repeat("branch A: ch 5, ", open) + strings.Repeat("return, ", open) + "turn.\n")
}

// Cut off anywhere, as while it is typed, a row may be anything but a panic,
// and the rows around it are still worked.
func TestHalfWrittenRows(t *testing.T) {
	for _, text := range patternFiles(t, "../../testdata/patterns") {
		words := 0
		for at, r := range text {
			if r != ' ' {
				continue
			}
			// a few words of each pattern: the sum over all patterns meets each kind of clause
			if words++; words%37 != 0 {
				continue
			}
			rest := text[at:]
			if i := strings.IndexByte(rest, '\n'); i >= 0 {
				rest = rest[i:]
			}
			worked(text[:at] + rest)
		}
	}
}

func FuzzWork(f *testing.F) {
	for _, dir := range []string{"../../testdata/patterns", "../../testdata/broken", workedDir} {
		for _, text := range patternFiles(f, dir) {
			f.Add(text)
		}
	}
	f.Fuzz(func(t *testing.T, text string) {
		out := worked(text)
		for _, p := range out.Pieces {
			if len(p.Stitches) != out.Sizes() {
				t.Fatalf("%d sizes worked of %d", len(p.Stitches), out.Sizes())
			}
			for _, r := range p.Rows {
				for size := range r.Tallies {
					if tally := &r.Tallies[size]; tally.Made < 0 || tally.Left < 0 || tally.Base < 0 {
						t.Fatalf("row %q, size %d: %+v", r.Tree.Text, size+1, tally)
					}
				}
			}
			for _, list := range p.Stitches {
				for i, s := range list {
					if s.Into >= i && s.Into >= 0 {
						t.Fatalf("stitch %d is worked into %d, which is made later", i, s.Into)
					}
				}
			}
		}
	})
}
