package lint

import (
	"cmp"
	"fmt"
	"strconv"

	"stitchproof/lang/fabric"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// A row that branches says on the way how many stitches it has just made: `ch 4, sl st in 2nd ch
// from hook and in next 2 ch (3 sl sts)`. From where such a count counts is not said: from the
// last one, from the chain, from where a branch left. It is right where it fits any of them.

// holdCountsOnWay holds those counts of a row against the stitches before them.
func (p *Pass) holdCountsOnWay(row *fabric.Row) {
	clauses := row.Tree.Clauses
	for i, c := range clauses {
		total, ok := c.Node.(*syntax.Total)
		if !ok || c.Span == row.StatedAt || total.Change != 0 || len(total.Parts) != 1 || i == 0 {
			continue
		}
		part := total.Parts[0]
		if part.On != "" || part.Number.PerSize() || part.Noun.Kind != syntax.NounStitch && part.Noun.Kind != syntax.NounNone && part.Noun.Kind != syntax.NounAny {
			continue
		}
		said := part.Number.At(0)
		noun := cmp.Or(part.Noun.Stitch.Word, "st")
		if made := nearestTo(said, madeUpTo(row, i, part.Noun)); made > 0 && made != said {
			p.Report(Finding{
				Span:    row.Tree.Abs(c.Span),
				Message: fmt.Sprintf("makes %s, says %d", counted(strconv.Itoa(made), noun), said),
			})
		}
	}
}

// madeUpTo are how many stitches that a count may mean were made before clause i of a row, from
// each place on that it may count from, the nearest first; nothing where no chain is worked
// back along before it.
func madeUpTo(row *fabric.Row, i int, noun syntax.Noun) []int {
	var out []int
	made, hook := 0, false
	counted := func() []int {
		if !hook {
			return nil
		}
		return out
	}
	for j := i - 1; j >= 0; j-- {
		step := &row.Steps[j]
		switch n := row.Tree.Clauses[j].Node.(type) {
		case *syntax.Work:
			if !step.Known || len(n.Places) == 0 || len(step.Made) == 0 || !plainly(n.Stitch, noun) {
				return counted()
			}
			if noun.Kind != syntax.NounStitch || n.Stitch.Meaning == noun.Stitch.Meaning {
				made += step.Made[0]
			}
			hook = hook || n.Places[0].From == syntax.FromHook
		case *syntax.Remark, *syntax.Chain, *syntax.Branch, *syntax.Return, *syntax.Total:
			if made > 0 {
				out = append(out, made)
			}
		default:
			return counted()
		}
	}
	out = append(out, made)
	return counted()
}

// plainly tells whether it can be told which stitches of a step a count means: all, or those of
// the one stitch that it names, which no shaping makes.
func plainly(s syntax.StitchRef, noun syntax.Noun) bool {
	if noun.Kind != syntax.NounStitch {
		return true
	}
	return s.Meaning.Is(stitch.Plain, stitch.Slip)
}

// nearestTo is the number that is nearest to one, 0 for none.
func nearestTo(n int, all []int) int {
	best := 0
	for _, other := range all {
		if best == 0 || max(other-n, n-other) < max(best-n, n-best) {
			best = other
		}
	}
	return best
}
