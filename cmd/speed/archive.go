package main

import (
	"fmt"
	"math/rand/v2"
	"strings"
)

// archive makes distinct patterns as a house might have them: rounds and rows whose
// counts are right, in the words of many writers. The same seed makes the same ones.
type archive struct{ rand *rand.Rand }

func newArchive(seed uint64) *archive { return &archive{rand.New(rand.NewPCG(seed, seed))} }

func (a *archive) one(of ...string) string { return of[a.rand.IntN(len(of))] }

func (a *archive) between(low, high int) int { return low + a.rand.IntN(high-low+1) }

// pattern is a whole pattern of some pieces.
func (a *archive) pattern(n, pieces int) string {
	var b strings.Builder
	thing := a.one("acorn", "bramble leaf", "hawthorn twig", "wren's nest", "dormouse", "oak leaf", "frost star", "hedge rose")
	fmt.Fprintf(&b, "Pattern: %s %d\nTerms: US\nHook: %s\nYarn A: moss green, dk (3), %d m\nYarn B: bark brown, dk (3), %d m\nNotions: stitch marker, tapestry needle\n\n",
		thing, n, a.one("3.5 mm (US E-4)", "4 mm (US G-6)", "5 mm (US H-8)"), a.between(20, 200), a.between(10, 90))
	if a.rand.IntN(2) == 0 {
		b.WriteString("Notes\n" + a.one("Worked in joined rounds with the right side out.", "The pieces are sewn together at the end.", "Made on walks, and none of it is hard.") + "\n\n")
	}
	for i := range pieces {
		fmt.Fprintf(&b, "%s %d\n", a.one("## Piece", "## Part", "## Motif"), i+1)
		if a.rand.IntN(2) == 0 {
			a.rounds(&b)
		} else {
			a.rows(&b)
		}
		b.WriteByte('\n')
	}
	return b.String()
}

// rounds is a circle, then a tube.
func (a *archive) rounds(b *strings.Builder) {
	label := a.one("Rnd", "Round", "R")
	yarn := a.one("A", "B")
	base := a.between(5, 8)
	grown := a.between(2, 9)
	fmt.Fprintf(b, "With %s, %s.\n", yarn, a.one("make a magic ring", "magic ring"))
	fmt.Fprintf(b, "%s 1: %s%s.%s\n", label, a.one(fmt.Sprintf("%d sc in ring", base), fmt.Sprintf("Ch 1, work %d sc in ring", base)),
		a.one(", join with sl st in first sc", "; join"), a.count(base, "sc"))
	n := base
	for r := 2; r <= grown; r++ {
		n = base * r
		plain := r - 2
		step := "2 sc in next st"
		switch {
		case plain == 0:
		case a.rand.IntN(3) == 0:
			step = fmt.Sprintf("%d sc, inc", plain)
		default:
			step = fmt.Sprintf("sc in next %s, 2 sc in next st", sts(plain))
		}
		words := "Ch 1, 2 sc in each st around"
		if plain > 0 {
			words = "Ch 1, " + a.one(fmt.Sprintf("[%s] %d times", step, base), fmt.Sprintf("(%s) %d times", step, base), fmt.Sprintf("*%s; rep from * around", step))
		}
		fmt.Fprintf(b, "%s %d: %s; join.%s\n", label, r, words, a.count(n, "sc"))
	}
	last := grown + a.between(1, 12)
	several := label + "s"
	if label == "R" {
		several = label // R4-6
	}
	fmt.Fprintf(b, "%s %d-%d: Ch 1, %s; join.%s\n", several, grown+1, last, a.one("sc in each st around", "sc around", "1 sc in each st"), a.count(n, "sc"))
	b.WriteString(a.one("Fasten off.", "Fasten off and weave in ends.", "Cut yarn and fasten off, leaving a long tail for sewing.") + "\n")
}

// rows is a flat piece with edges that grow or stay.
func (a *archive) rows(b *strings.Builder) {
	n := a.between(12, 60)
	fmt.Fprintf(b, "With %s, ch %d.\n", a.one("A", "B"), n+1)
	fmt.Fprintf(b, "Row 1: Sc in 2nd ch from hook and in each ch across%s.%s\n", a.one("; turn", ", turn"), a.count(n, "sc"))
	last := a.between(5, 24)
	for r := 2; r <= last; r++ {
		turn := a.one("; turn", ", turn")
		kind := a.rand.IntN(5)
		if n < 10 && kind == 2 {
			kind = 1 // it is narrow enough
		}
		switch kind {
		case 0:
			at := a.between(1, n-1)
			fmt.Fprintf(b, "Row %d: Ch 1, sc in next %s, hdc in next %s%s.%s\n", r, sts(at), sts(n-at), turn, a.count(n, "sts"))
		case 1:
			n += 2
			fmt.Fprintf(b, "Row %d: Ch 1, 2 sc in first st, sc in next %s, 2 sc in last st%s.%s\n", r, sts(n-4), turn, a.count(n, "sc"))
		case 2:
			n -= 2
			fmt.Fprintf(b, "Row %d: Ch 1, sc2tog, sc in next %s, sc2tog%s.%s\n", r, sts(n-2), turn, a.count(n, "sc"))
		case 3:
			at := a.between(1, n-2)
			fmt.Fprintf(b, "Row %d: Ch 1, sc in next %s, sk next st, 2 dc in next st, sc in next %s%s.%s\n", r, sts(at), sts(n-at-2), turn, a.count(n, "sts"))
		default:
			fmt.Fprintf(b, "Row %d: Ch 1, %s%s.%s\n", r, a.one("sc in each st across", "hdc in each st across", "sc across"), turn, a.count(n, "sts"))
		}
	}
	b.WriteString(a.one("Fasten off.", "Fasten off and weave in ends.") + "\n")
}

// count states a count, in one of the ways that it is stated.
func (a *archive) count(n int, noun string) string {
	return fmt.Sprintf(a.one(" (%d %s)", " — %d %s", " [%d %s]"), n, noun)
}

func sts(n int) string {
	if n == 1 {
		return "st"
	}
	return fmt.Sprintf("%d sts", n)
}
