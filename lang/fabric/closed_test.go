package fabric_test

import (
	"fmt"
	"strings"
	"testing"

	"stitchproof/lang/fabric"
)

// Pieces whose counts handbooks give as a formula. No row here states a
// count, so nothing but the words decides. A formula with no published source
// is marked as common practice, one worked out from another as derived.

// counted is one line of a pattern and what it must come to: so many
// stitches, and so many spaces of each length.
type counted struct {
	text     string
	stitches int
	spaces   map[int]int // by number of chains
}

// line writes a line that makes so many stitches.
func line(stitches int, format string, args ...any) counted {
	return counted{text: fmt.Sprintf(format, args...), stitches: stitches}
}

// with adds spaces of one length to a line.
func (c counted) with(spaces, chains int) counted {
	all := map[int]int{chains: spaces}
	for ch, n := range c.spaces {
		all[ch] += n
	}
	c.spaces = all
	return c
}

// silent is a line that works no stitch.
const silent = -1

// check works the lines and holds every row against its count.
func check(t *testing.T, name string, lines []counted) {
	t.Helper()
	var b strings.Builder
	b.WriteString("Terms: US\n\nPiece: Sampler\n")
	var want []counted
	for _, l := range lines {
		b.WriteString(l.text + "\n")
		if l.stitches != silent {
			want = append(want, l)
		}
	}
	rows := rowsOf(worked(b.String()))
	if len(rows) != len(want) {
		t.Fatalf("%s: %d rows worked, want %d\n%s", name, len(rows), len(want), b.String())
	}
	for i, w := range want {
		tally := &rows[i].Tallies[0]
		spaces := map[int]int{}
		for _, s := range rows[i].Piece.Stitches[0] {
			if s.Row == rows[i].Index && s.IsSpace() {
				spaces[s.Chains]++
			}
		}
		switch {
		case !tally.Known:
			t.Fatalf("%s: not counted: %s", name, w.text)
		case len(tally.Faults) > 0:
			t.Fatalf("%s: fault %+v: %s", name, tally.Faults[0], w.text)
		case tally.Made != w.stitches || fmt.Sprint(spaces) != fmt.Sprint(orNone(w.spaces)):
			t.Fatalf("%s: %d sts, spaces %v; want %d, %v: %s\n%s", name, tally.Made, spaces, w.stitches, w.spaces, w.text, b.String())
		}
	}
}

func orNone(m map[int]int) map[int]int {
	out := map[int]int{}
	for k, n := range m {
		if n > 0 {
			out[k] = n
		}
	}
	return out
}

// circle is a flat circle of n rounds, start stitches in the first and as many
// more in every other: round r has r x start stitches (derived).
func circle(stitch string, chains int, counts bool, start, n int) []counted {
	first, lead, join := start, fmt.Sprintf("ch %d (does not count as a st), ", chains), "join with sl st in first st"
	if counts {
		first, lead = start-1, fmt.Sprintf("ch %d (counts as %s), ", chains, stitch)
		join = fmt.Sprintf("join with sl st in top of beg ch-%d", chains)
	}
	lines := []counted{
		line(silent, "Make a magic ring."),
		line(start, "Rnd 1: %s%d %s in ring; %s.", lead, first, stitch, join),
	}
	for r := 2; r <= n; r++ {
		plain := ""
		if r > 2 {
			plain = fmt.Sprintf(", %s in next %d sts", stitch, r-2)
		}
		begin := fmt.Sprintf("2 %s in next st", stitch)
		if counts {
			begin = fmt.Sprintf("%s in same st", stitch)
		}
		lines = append(lines, line(r*start, "Rnd %d: %s%s%s, [2 %s in next st%s] %d times; %s.", r, lead, begin, plain, stitch, plain, start-1, join))
	}
	return lines
}

func TestFlatCircles(t *testing.T) {
	for n := 1; n <= 12; n++ {
		// 6 sc: Simply Crochet, 2020-10-22; craftymaria, 2009
		check(t, "circle, sc", circle("sc", 1, false, 6, n))
		// 8 hdc: craftymaria, 2009
		check(t, "circle, hdc", circle("hdc", 2, true, 8, n))
		check(t, "circle, hdc on a chain that does not count", circle("hdc", 2, false, 8, n))
		// 12 dc: craftymaria, 2009
		check(t, "circle, dc", circle("dc", 3, true, 12, n))
		// 16 tr: common practice
		check(t, "circle, tr", circle("tr", 4, true, 16, n))
		// 8 dc, as flat as it is small: boocoos, 2012
		check(t, "circle, 8 dc", circle("dc", 3, true, 8, n))
	}
}

// 6, 12, 18 … 6m, as many rounds even, and down again: common practice. The
// counts by round of such a spiral: bubri.blogspot.com, 2021; the bear of sdklord.
func TestSphereUpAndDown(t *testing.T) {
	for m := 2; m <= 8; m++ {
		lines := []counted{
			line(silent, "Make a magic ring."),
			line(6, "Rnd 1: 6 sc in magic ring; do not join."),
			line(12, "Rnd 2: Inc x 6."),
		}
		rnd := 2
		add := func(stitches int, format string, args ...any) {
			rnd++
			lines = append(lines, line(stitches, fmt.Sprintf("Rnd %d: ", rnd)+format, args...))
		}
		for r := 3; r <= m; r++ {
			add(6*r, "[Sc in next %d sts, inc] 6 times.", r-2)
		}
		for range m {
			add(6*m, "Sc in each st around.")
		}
		for r := m - 1; r >= 2; r-- {
			add(6*r, "(%d sc, dec) x 6.", r-1)
		}
		add(6, "[Sc2tog] 6 times.")
		check(t, "sphere", lines)
	}
}

// Fewer than 6 more in a round make a cone: 3 in every round, spread evenly
// (common practice).
func TestCone(t *testing.T) {
	lines := []counted{line(silent, "Make a magic ring."), line(6, "Rnd 1: 6 sc in ring; do not join.")}
	for r := 2; r <= 12; r++ {
		lines = append(lines, line(3*r+3, "Rnd %d: [Sc in next %d sts, 2 sc in next st] 3 times.", r, r-1))
	}
	check(t, "cone", lines)
}

// Round n of a granny square has 12n dc, 4 corner spaces and 4(n-1) side
// spaces: crochetbouquet.co.uk, rigsbystudio.com and coffeeandvanilla.com for
// the first round, derived for the others.
func TestGrannySquare(t *testing.T) {
	const rounds = 9
	moved := []counted{line(silent, "Ch 4, join with sl st to form a ring.")}
	joined := []counted{line(silent, "Make a magic ring.")}
	first := line(12, "Rnd 1: Ch 3 (counts as dc here and throughout), 2 dc in ring, ch 2, [3 dc in ring, ch 2] 3 times; join with sl st in top of beg ch-3.").with(4, 2)
	moved, joined = append(moved, first), append(joined, first)
	for n := 2; n <= rounds; n++ {
		side := "ch 1, "
		if n == 3 {
			side = "ch 1, 3 dc in next ch-1 sp, ch 1, "
		} else if n > 3 {
			side = fmt.Sprintf("ch 1, [3 dc in next ch-1 sp, ch 1] %d times, ", n-2)
		}
		// a star holds what stands in brackets, so the sides may be repeats
		rest := fmt.Sprintf("(2 dc, ch 2, 3 dc) in same sp, %s*(3 dc, ch 2, 3 dc) in next ch-2 sp, %srep from * twice more; join with sl st in top of beg ch-3.", side, side)
		rest = strings.ReplaceAll(rest, ", rep from", "; rep from")
		moved = append(moved, line(12*n, "Rnd %d: Sl st in next 2 dc and in next ch-2 sp, ch 3, %s", n, rest).with(4, 2).with(4*(n-1), 1))
		joined = append(joined, line(silent, "Fasten off."),
			line(12*n, "Rnd %d: Join B with sl st in any ch-2 sp, ch 3, %s", n, rest).with(4, 2).with(4*(n-1), 1))
	}
	check(t, "granny square", moved)
	check(t, "granny square, a new color each round", joined)
}

// A solid dc square of (2 dc, ch 2, 2 dc) in each corner grows by 16: 12, 28,
// 44, 60. Sides of 7, 11, 15: octojellycrochet, 2021.
func TestSolidSquare(t *testing.T) {
	lines := []counted{
		line(silent, "Make a magic ring."),
		line(12, "Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, [3 dc in ring, ch 2] 3 times; join with sl st in top of beg ch-3.").with(4, 2),
	}
	corner := "(2 dc, ch 2, 2 dc) in next ch-2 sp"
	for n := 2; n <= 8; n++ {
		// the round begins on a side: 2n-2 of its stitches come behind the
		// beginning chain, the others at the end
		last := ""
		if n > 2 {
			last = fmt.Sprintf("dc in last %d sts; ", 2*n-4)
		}
		lines = append(lines, line(16*n-4, "Rnd %d: Ch 3 (counts as dc), dc in next %d sts, %s, [dc in next %d sts, %s] 3 times; %sjoin with sl st in top of beg ch-3.",
			n, 2*n-2, corner, 4*n-5, corner, last).with(4, 2))
	}
	check(t, "solid square", lines)
}

// 3 sc in every corner of a polygon: 8 more in a round of a square, 12 of a
// hexagon (Dillmont, Encyclopedia of Needlework, about 1886, fig. 441 and 442),
// 6 of a triangle, 10 of a pentagon, 16 of an octagon (derived).
func TestPolygons(t *testing.T) {
	for _, corners := range []int{3, 4, 5, 6, 8} {
		lines := []counted{
			line(silent, "Make a magic ring."),
			line(2*corners, "Rnd 1: %d sc in ring; do not join.", 2*corners),
		}
		for r := 2; r <= 9; r++ {
			lines = append(lines, line(2*corners*r, "Rnd %d: [Sc in next %d sts, 3 sc in next st] %d times.", r, 2*r-3, corners))
		}
		check(t, fmt.Sprintf("polygon of %d corners", corners), lines)
	}
}

// N chains give N-1 sc, N-2 hdc that no chain stands for or N-1 with it, N-2
// dc, N-3 tr: dummies.com; Handbook of Wool Knitting and Crochet, Needlecraft
// Publishing, 1918.
func TestFoundationRow(t *testing.T) {
	for n := 8; n <= 40; n++ {
		for _, row := range []struct {
			made int
			text string
		}{
			{n - 1, "sc in 2nd ch from hook"},
			{n - 2, "hdc in 3rd ch from hook (skipped 2 ch do not count as a st)"},
			{n - 1, "hdc in 3rd ch from hook (skipped 2 ch count as hdc)"},
			{n - 2, "dc in 4th ch from hook"},
			{n - 3, "tr in 5th ch from hook"},
			{n - 4, "dtr in 6th ch from hook"},
		} {
			kind, _, _ := strings.Cut(row.text, " ")
			ways := [...]string{"%s and in each ch across", "%s, " + kind + " in each ch across", "%s, [" + kind + " in next ch] to end", "%s, " + kind + " in each remaining ch"}
			for _, way := range ways {
				check(t, row.text, []counted{line(row.made, "Row 1: Ch %d, "+way+"; turn.", n, row.text)})
			}
		}
	}
}

// Foundation stitches make their own chain: n of them are n stitches.
// ktandthesquid.com, 2013; ravenscrochet.com.
func TestFoundationStitches(t *testing.T) {
	for _, stitch := range []string{"fsc", "fhdc", "fdc"} {
		check(t, stitch, []counted{
			line(24, "Row 1: 24 %s; turn.", stitch),
			line(24, "Row 2: Ch 1, sc in each st across."),
		})
	}
}

// S squares of 2-ch mesh stand on 3S+1: the Ladies' Work-Book, London, about
// 1850 ("divisible by three leaving one over"); 9 squares on 28: bitsandbobs,
// 2008. The turning chain may be counted on top of them, or stand in the place
// of the chain under it (derived).
func TestFiletMesh(t *testing.T) {
	for s := 3; s <= 20; s++ {
		open := func(row int) counted {
			return line(s+1, "Row %d: Ch 5 (counts as dc and ch 2), sk next ch-2 sp, dc in next dc, [ch 2, sk next ch-2 sp, dc in next dc] %d times; turn.", row, s-1).with(s, 2)
		}
		filled := func(row int) counted {
			return line(3*s+1, "Row %d: Ch 3 (counts as dc), [2 dc in next ch-2 sp, dc in next dc] %d times; turn.", row, s)
		}
		opened := func(row int) counted {
			return line(s+1, "Row %d: Ch 5 (counts as dc and ch 2), sk next 2 dc, dc in next dc, *ch 2, sk next 2 dc, dc in next dc; rep from * across; turn.", row).with(s, 2)
		}
		rest := []counted{open(2), filled(3), opened(4), open(5)}
		for _, way := range []struct {
			name          string
			chains, first int
		}{{"counted on top", 3*s + 6, 9}, {"in the place of a chain", 3*s + 5, 8}} {
			check(t, "filet, open, turning chain "+way.name, append([]counted{
				line(silent, "Ch %d.", way.chains),
				line(s+1, "Row 1: Dc in %s ch from hook, [ch 2, sk next 2 ch, dc in next ch] across; turn.", ordinal(way.first)).with(s, 2),
			}, rest...))
		}
		solid := []counted{opened(2), open(3), filled(4)}
		check(t, "filet, closed, turning chain counted on top", append([]counted{
			line(silent, "Ch %d.", 3*s+4),
			line(3*s+1, "Row 1: Dc in 5th ch from hook (skipped 4 ch count as dc) and in each ch across; turn."),
		}, solid...))
		check(t, "filet, closed, turning chain in the place of a chain", append([]counted{
			line(silent, "Ch %d.", 3*s+3),
			line(3*s+1, "Row 1: Dc in 4th ch from hook and in each ch across; turn."),
		}, solid...))
		// 1-ch mesh on 2S+1: jahodnett.tripod.com; bellaonline art30448
		check(t, "filet, 1-ch mesh", []counted{
			line(silent, "Ch %d.", 2*s+3),
			line(2*s+1, "Row 1: Dc in 4th ch from hook and in each ch across; turn."),
			line(s+1, "Row 2: Ch 4 (counts as dc and ch 1), sk next dc, dc in next dc, [ch 1, sk next dc, dc in next dc] across; turn.").with(s, 1),
			line(2*s+1, "Row 3: Ch 3 (counts as dc), *dc in next ch-1 sp, dc in next dc; rep from * across; turn."),
		})
	}
}

// Shells of 5 dc between single crochets take 6 stitches each and two edge
// chains, the turning chain with them (derived; a shell of 5 is common
// practice). Rows of whole and of half shells alternate.
func TestShellMultiple(t *testing.T) {
	for k := 2; k <= 15; k++ {
		whole := func(row int, end string) counted {
			return line(6*k+1, "Row %d: Ch 1, sc in first dc, [sk next 2 dc, 5 dc in next sc, sk next 2 dc, sc in next dc] %s", row, end)
		}
		halved := func(row int) counted {
			return line(6*k+1, "Row %d: Ch 3 (counts as dc), 2 dc in first sc, *sk next 2 dc, sc in next dc, sk next 2 dc, 5 dc in next sc; rep from * %d more times, sk next 2 dc, sc in next dc, sk next 2 dc, 3 dc in last sc; turn.",
				row, k-2)
		}
		lines := []counted{
			line(silent, "Ch %d.", 6*k+2),
			line(6*k+1, "Row 1: Sc in 2nd ch from hook, *sk next 2 ch, 5 dc in next ch, sk next 2 ch, sc in next ch; rep from * across; turn."),
			halved(2), whole(3, fmt.Sprintf("%d times; turn.", k)), halved(4), whole(5, "across; turn."),
		}
		check(t, "shells", lines)
	}
}

// A ripple whose increases and decreases balance keeps its width. Chains of
// 11k + 13 give 11k + 11 dc: 68 and 66 in Paton's Comfy Chevron, PAC0125-002711M.
func TestRippleKeepsItsWidth(t *testing.T) {
	for k := 1; k <= 12; k++ {
		row := func(number int) counted {
			return line(11*k+11, "Row %d: Ch 2 (does not count as a st), dc2tog, dc in next 3 sts, 3 dc in next st, [dc in next 4 sts, sk next 2 sts, dc in next 4 sts, 3 dc in next st] to last 5 sts, dc in next 3 sts, dc2tog; turn.", number)
		}
		check(t, "ripple", []counted{
			line(silent, "Ch %d.", 11*k+13),
			line(11*k+11, "Row 1: Dc in 4th ch from hook (skipped 3 ch do not count as a st), dc in next 3 ch, 3 dc in next ch, [dc in next 4 ch, sk next 2 ch, dc in next 4 ch, 3 dc in next ch] to last 5 ch, dc in next 3 ch, dc2tog; turn."),
			row(2), row(3), row(4),
		})
	}
}

// An oval on N chains has 2N sc in its first round and 6 more in each: 14,
// 20, 26, 32 on 7 (offthehookcrochetdesign.com), 12, 18, 24, 30 on 6
// (krazykabbage.com), 10 on 5 (esbelotta.blogspot.com, 2012).
func TestOval(t *testing.T) {
	for n := 5; n <= 16; n++ {
		straight := n - 3
		lines := []counted{
			line(silent, "Ch %d.", n),
			line(2*n, "Rnd 1: Sc in 2nd ch from hook, sc in next %d ch, 3 sc in last ch; working along opposite side of foundation ch, sc in next %d ch, 2 sc in next ch; do not join.", straight, straight),
			line(2*n+6, "Rnd 2: 2 sc in next st, sc in next %d sts, 2 sc in each of next 3 sts, sc in next %d sts, 2 sc in each of next 2 sts.", straight, straight),
		}
		for r := 3; r <= 6; r++ {
			lines = append(lines, line(2*n+6*(r-1), "Rnd %d: 2 sc in next st, sc in next %d sts, sc in next %d sts, [2 sc in next st, sc in next %d sts] 3 times, sc in next %d sts, [2 sc in next st, sc in next %d sts] twice.",
				r, r-2, straight, r-2, straight, r-2))
		}
		check(t, "oval", lines)
	}
}

// A leaf up one side of N chains, 7 in the tip and down the other: 2(N-2) + 7,
// 15 on 6 (snovej.com, birch leaf).
func TestLeafOnBothSides(t *testing.T) {
	for n := 6; n <= 20; n++ {
		middle := n - 5 // chains between the half double crochet and the tip
		check(t, "leaf", []counted{
			line(silent, "Ch %d.", n),
			line(2*(n-2)+7, "Rnd 1: Sl st in 2nd ch from hook, sc in next ch, hdc in next ch, dc in next %d ch, 7 dc in last ch; working along opposite side of foundation ch, dc in next %d ch, hdc in next ch, sc in next ch, sl st in next ch.", middle, middle),
		})
	}
}

// A triangle of n rows, one stitch more in each, has n in the last; with one
// more at both ends 2n-1: common practice.
func TestTriangle(t *testing.T) {
	one := []counted{line(1, "Row 1: Ch 2, sc in 2nd ch from hook; turn.")}
	two := []counted{line(1, "Row 1: Ch 2, sc in 2nd ch from hook; turn."), line(3, "Row 2: Ch 1, 3 sc in next st; turn.")}
	one = append(one, line(2, "Row 2: Ch 1, 2 sc in next st; turn."))
	for r := 3; r <= 20; r++ {
		one = append(one, line(r, "Row %d: Ch 1, 2 sc in first st, sc in each st across; turn.", r))
		two = append(two, line(2*r-1, "Row %d: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st; turn.", r))
	}
	check(t, "triangle, one side", one)
	check(t, "triangle, both sides", two)
	var down []counted
	down = append(down, line(21, "Row 1: Ch 22, sc in 2nd ch from hook and in each ch across; turn."))
	for r := 2; r <= 10; r++ {
		down = append(down, line(23-2*r, "Row %d: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog; turn.", r))
	}
	check(t, "triangle, narrowing", down)
}

// A ruffle with two in every k-th stitch grows by (k+1)/k in a row: 10, 15 for
// k = 2 (fatcatcrochet.com).
func TestRuffle(t *testing.T) {
	for k := 1; k <= 4; k++ {
		stitches := 24
		lines := []counted{line(24, "Row 1: Ch 25, sc in 2nd ch from hook and in each ch across; turn.")}
		for r := 2; r <= 4 && stitches%k == 0; r++ {
			stitches += stitches / k
			body := "2 sc in next st"
			if k > 1 {
				body = fmt.Sprintf("sc in next %d sts, 2 sc in next st", k-1)
			}
			lines = append(lines, line(stitches, "Row %d: Ch 1, [%s] across; turn.", r, body))
		}
		check(t, "ruffle", lines)
	}
}

// What a remainder leaves is said with the numbers that would fit: 26 stitches
// and a repeat of 6 leave 2; 24 or 30 would fit (derived).
func TestRepeatThatLeavesARemainder(t *testing.T) {
	f := worked("Terms: US\n\nPiece: Sampler\nRow 1: Ch 27, sc in 2nd ch from hook and in each ch across; turn.\nRow 2: Ch 1, [sc in next 5 sts, 2 sc in next st] across; turn.\n")
	faults := rowsOf(f)[1].Tallies[0].Faults
	if len(faults) != 1 {
		t.Fatalf("faults %+v, want one", faults)
	}
	got := faults[0]
	if got.Kind != fabric.RepeatRemainder || got.N != 2 || got.Unit != 6 || got.Base != 26 || fmt.Sprint(got.Fits) != "[24 30]" {
		t.Errorf("fault %+v; want RepeatRemainder of 2, unit 6, base 26, fits 24 and 30", got)
	}
}

// A shell of n dc has n - 1 gaps (Handbook of Wool Knitting and Crochet,
// Needlecraft Publishing, 1918: 7 in a shell of 8), and an edging that works
// one gap fewer or one more must be told. Pairs told apart, as in a row of
// V's, still take two dc each.
func TestGapsOfAShell(t *testing.T) {
	edged := func(n, gaps int) string {
		return fmt.Sprintf("Terms: US\n\nPiece: Sampler\nCh 18.\n"+
			"Row 1: Sc in 2nd ch from hook and in each ch across; turn. (17 sc)\n"+
			"Row 2: Ch 1, sc in first sc, [sk next 3 sc, %d dc in next sc, sk next 3 sc, sc in next sc] twice; do not turn.\n"+
			"Row 3: Sc in first sc, [sc between next 2 dc, (ch 2, sc between next 2 dc) %d times, sc in next sc] twice. (%d sc)\n",
			n, gaps-1, 3+2*gaps)
	}
	for n := 5; n <= 14; n++ {
		for gaps := n/2 + 1; gaps <= n; gaps++ {
			rows := rowsOf(worked(edged(n, gaps)))
			tally := &rows[len(rows)-1].Tallies[0]
			if found := len(tally.Faults) > 0 || tally.Agrees() == fabric.Disagrees; found != (gaps != n-1) {
				t.Errorf("%d gaps of %d dc: %+v %+v", gaps, n, tally.Faults, tally.Compared)
			}
		}
		check(t, "pairs", []counted{
			line(silent, "Ch %d.", 2*n+2),
			line(2*n, "Row 1: Dc in 4th ch from hook (skipped 3 ch count as dc) and in each ch across; turn."),
			line(2*n, "Row 2: Ch 2 (does not count as a st), [2 dc between next 2 dc] across; turn."),
			line(2*n, "Row 3: Ch 2 (does not count as a st), [2 dc between next 2 dc] %d times; turn.", n),
		})
	}
}

// Steps whose meaning hangs on one word (common practice): places left in the
// middle of a row are not the rest of it, and rows repeated until so many
// stitches are left come to no number that the words alone give.
func TestLeavingAndRepeatingUntil(t *testing.T) {
	const head = "Terms: US\n\nPiece: Sampler\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (10 sc)\n"
	for _, test := range []struct {
		rows  string
		fault bool
	}{
		{"Row 2: Ch 1, leave next 4 sts unworked, sc in next 6 sts; turn. (6 sc)\n", false},
		{"Row 2: Ch 1, leave next 4 sts unworked, sc in next 5 sts; turn. (5 sc)\n", true},
		{"Row 2: Ch 1, leave next 4 sts unworked, sc in next 7 sts; turn. (7 sc)\n", true},
		{"Row 2: Ch 1, sc in next 9 sts, leave next st unworked; turn. (9 sc)\n", false},
		{"Row 2: Ch 1, sc in next 8 sts, leave next st unworked; turn. (8 sc)\n", true},
		{"Row 2: Ch 1, sc in next 6 sts, leave remaining sts unworked; turn. (6 sc)\n", false},
		{"Row 2: Ch 1, sc2tog, sc to last 2 sts, sc2tog; turn. (8 sc)\nRep Row 2 until 4 sts remain.\nNext row: Ch 1, sc in each st across. (4 sc)\n", false},
		{"Row 2: Ch 1, sc in each st across; turn. (10 sc)\nRep Row 2 until piece measures 9 cm.\nNext row: Ch 1, sc in each st across. (10 sc)\n", false},
		{"Row 2: Ch 1, sc in each st across; turn. (10 sc)\nRep Row 2 until piece measures 9 cm.\nNext row: Ch 1, sc in each st across. (9 sc)\n", true},
	} {
		found := false
		for _, r := range rowsOf(worked(head + test.rows)) {
			found = found || len(r.Tallies[0].Faults) > 0 || r.Tallies[0].Agrees() == fabric.Disagrees
		}
		if found != test.fault {
			t.Errorf("fault told: %v, want %v\n%s", found, test.fault, test.rows)
		}
	}
}
