package lint

import (
	"fmt"
	"slices"
	"strconv"

	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// multiple is what a foundation chain is a multiple of.
type multiple struct {
	unit, plus int
	// ofStitches is set where stitches are counted, to which chains to turn may be
	// added, turning of them at most; counted where the engine holds the foundation
	// against it.
	ofStitches, counted bool
	turning             int
}

// fits tells whether so many chains are a multiple.
func (m multiple) fits(chains int) bool {
	for extra := range m.turning + 1 {
		if (chains-extra-m.plus)%m.unit == 0 {
			return true
		}
	}
	return false
}

// longestTurn is how many chains turn a first row that does not tell, at most; common
// practice.
const longestTurn = 5

// turningChains are those of a foundation that a first row turns with: what lies before
// the chain that its first stitch goes into.
func turningChains(row *syntax.Row) int {
	turning := longestTurn
	syntax.Walk(row.Clauses, func(c syntax.Clause) {
		if w, ok := c.Node.(*syntax.Work); ok && len(w.Places) > 0 && w.Places[0].From == syntax.FromHook && w.Places[0].Nth > 0 {
			turning = w.Places[0].Nth - 1
		}
	})
	return turning
}

func (m multiple) String() string { return fmt.Sprintf("%d + %d", m.unit, m.plus) }

var (
	multipleText  = phrase.MustCompile(`^(\d+)(?: ?(?:\+|,? ?plus) ?(\d+))?`)
	multipleOfSts = phrase.MustCompile(`(?i)\bst(?:s|itch|itches)?\b|[(\[]`)
)

// statedMultiple is the one that the pattern states apart from the foundation chain, in
// its header or in a sentence of its own.
func (p *Pass) statedMultiple() (multiple, bool) {
	for _, f := range p.File.Header {
		if f.Key != "stitch multiple" {
			continue
		}
		if m := multipleText.FindStringSubmatch(f.Value); m != nil {
			unit, _ := strconv.Atoi(m[1]) // the pattern lets only digits through
			plus, _ := strconv.Atoi(m[2]) // "" is 0
			return multiple{unit: unit, plus: plus, ofStitches: multipleOfSts.MatchString(f.Value), counted: len(p.File.Pieces) == 1}, unit > 0
		}
	}
	if ch := p.File.Multiple; ch != nil {
		return multiple{unit: ch.Multiple.At(0), plus: ch.Plus.Or(0, 0), ofStitches: ch.OfStitches}, ch.Multiple.At(0) > 0
	}
	return multiple{}, false
}

// holdMultiple holds the foundation of a piece, and the repeats of the row on it,
// against what the pattern states.
func (p *Pass) holdMultiple(m multiple, piece *fabric.Piece) {
	first := slices.IndexFunc(piece.Rows, (*fabric.Row).Works)
	if first < 0 || miswritten(piece.Rows[first].Tree) {
		return
	}
	for _, row := range piece.Rows[:first+1] {
		for _, c := range row.Tree.Clauses {
			ch, ok := c.Node.(*syntax.Chain)
			if !ok || ch.Number.At(0) <= fabric.MostTurning {
				continue
			}
			if ch.Multiple.Written() {
				return // that one holds
			}
			if m.ofStitches {
				m.turning = turningChains(piece.Rows[first].Tree)
			}
			if !m.counted || m.ofStitches {
				p.holdFoundation(m, ch, row.Tree.Abs(c.Span))
			}
			p.holdRepeats(m, piece.Rows[first])
			return
		}
	}
}

// holdFoundation reports the sizes in which a foundation chain does not fit.
func (p *Pass) holdFoundation(m multiple, ch *syntax.Chain, at source.Span) {
	var off sized[int]
	for size := range p.Fabric.Sizes() {
		if n := ch.Number.At(size); n > 0 && !m.fits(n) {
			off.add(size, n)
		}
	}
	if len(off.facts) == 0 {
		return
	}
	message := fmt.Sprintf("ch %s is not a multiple of %s", off.num(func(n int) int { return n }), m)
	if m.ofStitches {
		message += ", with chains to turn or without"
	}
	if len(off.facts) == 1 && !m.ofStitches {
		low := off.facts[0] - ((off.facts[0]-m.plus)%m.unit+m.unit)%m.unit
		message += ": " + either(itoas([]int{low, low + m.unit})) + " would fit"
	}
	p.inSizes(off.sizes, Finding{Span: at, Message: message})
}

// holdRepeats reports a repeat of the first row that takes another number of chains
// than the multiple allows for.
func (p *Pass) holdRepeats(m multiple, row *fabric.Row) {
	if t := &row.Tallies[0]; !t.Known || len(t.Faults) > 0 {
		return
	}
	for i, c := range row.Tree.Clauses {
		rep, ok := c.Node.(*syntax.Repeat)
		if !ok || rep.Number.Written() || i >= len(row.Steps) {
			continue
		}
		step := row.Steps[i]
		if takes := period(row.Piece.Stitches[0][step.From:step.To]); takes > 0 && m.unit%takes != 0 {
			p.Report(Finding{
				Span:    row.Tree.Abs(c.Span),
				Message: fmt.Sprintf("each repeat takes %d, and the pattern says that the foundation is a multiple of %s", takes, m),
			})
			return
		}
	}
}

// period is after how many places the same stitches come again, 0 where they do not.
// It may be less than what a repeat takes, but is never more.
func period(made []fabric.Stitch) int {
	for n := 1; 2*n <= len(made); n++ {
		takes := made[n].Into - made[0].Into
		again := takes != 0
		for i := n; again && i < len(made); i++ {
			a, b := &made[i-n], &made[i]
			again = a.Kind == b.Kind && a.Own == b.Own && a.Chains == b.Chains && (b.Into-a.Into == takes || a.IsSpace())
		}
		if again {
			return max(takes, -takes)
		}
	}
	return 0
}
