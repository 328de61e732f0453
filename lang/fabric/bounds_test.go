package fabric_test

import (
	"fmt"
	"maps"
	"runtime"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
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
	"shells in one stitch":      "Row 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: 900000000 shell in next st.",
	"own stitches in one":       "Row 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: 900000000 leafa in next st.",
	"shells in a ring":          "Make a magic ring.\nRnd 1: 900000000 shell in ring.",
	"gaps":                      "Row 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: Sc between next 900000000 sts.",
	"stitches two rows below":   "Row 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: Sc in next 900000000 sts 2 rows below.",
	"groups":                    "Row 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: (Dc, ch 1, dc) in next 900000000 sts.",
}

// runsOut are the bombs that the row below stops before any bound does.
var runsOut = map[string]bool{"a long row": true, "repeats of a skip": true, "gaps": true, "groups": true}

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
			want := fabric.TooMany
			if runsOut[name] {
				want = fabric.RowOver
			}
			if !hasFault(f, want) {
				t.Errorf("not refused with fault %d", want)
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
	const (
		first = "Row 1: Ch 11, sc in 2nd ch from hook and in each ch across; turn.\n"
		depth = 20_000
		open  = 500 // stars and branches, each opened in the one before
	)
	rows := map[string]string{
		"stars":    "Row 2: " + strings.Repeat("*sc, ", open) + strings.Repeat("; rep from * across", open) + ".\n",
		"branches": "Row 2: Ch 1, sc in next st, " + strings.Repeat("branch A: ch 5, ", open) + strings.Repeat("return, ", open) + "turn.\n",
	}
	for _, pair := range []string{"[]", "()", "{}", "[)", "[", "]", "(("} {
		opened, closed := strings.Repeat(pair[:1], depth), ""
		if len(pair) > 1 {
			closed = strings.Repeat(pair[1:], depth)
		}
		rows[pair] = "Row 2: " + opened + "sc in next st" + closed + " 2 times.\n"
		rows[pair+" around nothing"] = "Row 2: " + opened + closed + " 2 times.\n"
	}
	for name, row := range rows {
		f := worked("Piece: Sampler\n" + first + row + "Row 3: Sc in each st across.\n")
		if made := rowsOf(f)[0].Tallies[0].Made; made != 10 {
			t.Errorf("%s: the row before makes %d, want 10", name, made)
		}
	}
}

// A repeat that comes home from a short branch ends further along than where it
// began ends; what is left is then left on the ground it came home to.
func TestRepeatEndsOnOtherGround(t *testing.T) {
	f := worked("Terms: US\n\nPiece: A\nWith A, ch 30; join.\n" +
		"Row 1: Ch 3, dc in 1st ch from hook. *Ch 1, dc in 2nd ch, dc in 3rd ch,* repeat from star and end row with sl st, leave remaining 3 sts unworked.\n")
	row := rowsOf(f)[0]
	if tally := row.Tallies[0]; tally.Made == 0 || tally.Left < 0 {
		t.Errorf("made %d, left %d: %s", tally.Made, tally.Left, row.Tree.Text)
	}
}

// Cut off anywhere, as while it is typed, a row changes nothing of the rows
// before it.
func TestHalfWrittenRows(t *testing.T) {
	for name, text := range patternFiles(t, "../../testdata/patterns") {
		whole := allRows(worked(text))
		words := 0
		for at, r := range text {
			// a few words of each pattern: the sum over all patterns meets each kind of clause
			if r != ' ' || at < whole[0].Tree.At {
				continue
			}
			if words++; words%37 != 0 {
				continue
			}
			end := len(text)
			if i := strings.IndexByte(text[at:], '\n'); i >= 0 {
				end = at + i
			}
			cut := allRows(worked(text[:at] + text[end:]))
			for i, row := range whole {
				if row.Tree.Span().End >= at {
					break
				}
				if i >= len(cut) || cut[i].Tallies[0].Made != row.Tallies[0].Made {
					t.Fatalf("%s: cut after %q, the row before it changes: %s", name, text[max(0, at-20):at], row.Tree.Text)
				}
			}
		}
	}
}

// mostFuzzed bounds the texts that are worked while fuzzing: what is found in a
// long one is found sooner in a short one.
const mostFuzzed = 1_000

// FuzzWork works any text: no tally falls below nothing, every stitch stands on
// an earlier one, and a second time gives the same.
func FuzzWork(f *testing.F) {
	for _, text := range patternFiles(f, "../../testdata/counted") {
		f.Add(text[:min(len(text), mostFuzzed)])
	}
	for _, text := range circles {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		if len(text) > mostFuzzed {
			return
		}
		out := worked(text)
		again := worked(text)
		for i, p := range out.Pieces {
			for size, list := range p.Stitches {
				if !slices.EqualFunc(list, again.Pieces[i].Stitches[size], alike) {
					t.Fatalf("%s is worked otherwise a second time", p.Tree.Name)
				}
			}
		}
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

// alike compares stitches of two readings of a text, each of which has its own
// stitches for itself.
func alike(a, b fabric.Stitch) bool {
	how, other := *a.Manner, *b.Manner
	if how.Kind != nil && other.Kind != nil && how.Kind.ID == other.Kind.ID {
		how.Kind = other.Kind
	}
	a.Manner = b.Manner
	return a == b && how == other
}

// TestBranchesGrowWithTheirNumber holds the ledger to work that grows with the
// branches: four times as many, about four times the memory on the way, and no
// chain lost among them.
func TestBranchesGrowWithTheirNumber(t *testing.T) {
	const branch = "sc in next 2 ch, branch %d: ch 5, sc in 2nd ch from hook and in each ch of branch %[1]d, return to stem, "
	work := func(n int) (uint64, *fabric.Fabric) {
		var row strings.Builder
		for i := range n {
			fmt.Fprintf(&row, branch, i+1)
		}
		tree := syntax.Read(source.New(fmt.Sprintf("Terms: US\n\nPiece: Root\nCh %d.\nRow 1: Sk first ch, %ssc in last ch.\n", 2*n+2, row.String())))
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		f := fabric.Work(tree)
		runtime.ReadMemStats(&after)
		return after.TotalAlloc - before.TotalAlloc, f
	}
	some, _ := work(1_000)
	many, f := work(4_000)
	assert.Less(t, many, 6*some)
	root := f.Pieces[0].Rows[1]
	assert.Equal(t, 4_000*6+1, root.Tallies[0].Made)
	assert.Empty(t, root.Tallies[0].Faults)
	home := 0
	for _, step := range root.Steps {
		for _, b := range step.Home {
			assert.Equal(t, []int{0}, b.Left, b.Name)
			home++
		}
	}
	assert.Equal(t, 4_000, home)
}
