package measure

import (
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/materials"
	"stitchproof/lang/phrase"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// Way is which way of a piece a length goes.
type Way int

// The ways.
const (
	Wide   Way = iota // along a row that is worked flat
	Around            // along a round
	Tall              // over all rows
	Long              // along the chain that a piece begins with
)

// Reach is a length in a piece, which lies between two, in millimetres, and of what it is:
// so many stitches, chains or rows.
type Reach struct {
	Way
	Low, High float64
	N         int
	Of        string // what they are: sts, squares, rows
	Rows      int    // how many rows are so wide
	Exact     bool   // they are what the gauge counts, and all of them are known
	Gauge     materials.Gauge
}

// Reaches are the lengths in some pieces, each of which goes on from the one before it, that can
// be told in a size whatever else of them cannot: rows that are known or say what they make,
// the chain at the beginning, and how high each piece reaches where all rows up to there are counted.
// [Of] tells of fewer pieces, and more exactly. Of pieces with branches only the chain is told.
func Reaches(list *materials.List, worked *fabric.Fabric, pieces []*fabric.Piece, size int) []Reach {
	if len(list.Gauges) == 0 {
		return nil
	}
	r := reckoner{list: list, dialect: worked.Dialect, size: size}
	stem := slices.ContainsFunc(pieces, func(p *fabric.Piece) bool { return slices.ContainsFunc(p.Rows, (*fabric.Row).Branched) })
	var out []Reach
	tall := Reach{Way: Tall, Of: "rows", Exact: true, Gauge: list.Gauges[0]}
	var heights []Reach
	begun, laid, chained, widest := false, false, 0, 0
	for _, piece := range pieces {
		r.open = r.open || saidToGoOn(worked.File, piece)
		for _, row := range piece.Rows {
			if laid = laid || begun && (more.MatchString(strings.ToLower(row.Tree.Text)) || laysMore(row)); laid {
				out = slices.DeleteFunc(out, func(r Reach) bool { return r.Way == Long })
			}
			if !begun && !row.Tallies[size].Works {
				chained = max(chained, chainOf(row, size))
			}
			if t := &row.Tallies[size]; t.Works && !begun {
				begun = true
				if n := max(t.Base, chained); piece.From == nil && n > 1 && list.Gauges[0].Stitches > 0 && (!row.Round || alongChain.MatchString(strings.ToLower(row.Tree.Text))) {
					out = append(out, along(Long, n-1, n, list.Gauges[0]))
				}
			}
			if !stem {
				out = append(out, r.ofRow(row)...)
			}
			if t := &row.Tallies[size]; t.Works && t.Known {
				if narrow*(t.Made+t.Chains) < widest {
					heights = append(heights, tall) // what follows is a strap of it
				}
				widest = max(widest, t.Made+t.Chains)
			}
			r.raise(&tall, row)
		}
		heights = append(heights, tall)
	}
	if r.open || tall.High == 0 {
		return out
	}
	return append(out, heights...)
}

// alongChain tells of a round that goes round a chain.
var alongChain = phrase.MustCompile(`\b(?:ch|chain) from (?:the )?hook\b`)

// chainOf is how many chains an instruction makes that does nothing else, 0 for none.
func chainOf(row *fabric.Row, size int) int {
	n := 0
	syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
		if chain, ok := c.Node.(*syntax.Chain); ok {
			n = max(n, chain.Number.At(size))
		}
	})
	return n
}

// laysMore tells a step that does nothing but chain, and says how many there are by then: `3. Ch 7. Stem: 17 ch.`
func laysMore(row *fabric.Row) bool {
	chains := false
	for _, c := range row.Tree.Clauses {
		switch c.Node.(type) {
		case *syntax.Chain:
			chains = true
		case *syntax.Remark, *syntax.Total:
		default:
			return false
		}
	}
	return chains
}

// more tells of chain that is laid when some of a piece is worked.
var more = phrase.MustCompile(`^[^.;,]*\b(?:(?:ch|chain) \d+|\d+ (?:ch|chains?))(?: ?\([^()]*\)|[.,;:] [^.;,\d]{1,30})?\W*$`)

// narrow is how many times narrower than another a row is that is no more of the same.
const narrow = 2

// along is the reach of so many stitches, or of more for chains between them.
func along(way Way, low, high int, g materials.Gauge) Reach {
	of, per := "sts", g.Stitches
	if per == 0 {
		of, per = "squares", g.Squares
	}
	if per == 0 || g.Length == 0 {
		return Reach{}
	}
	return Reach{Way: way, Low: float64(low) * g.Length / per, High: float64(high) * g.Length / per, N: low, Of: of, Rows: 1, Gauge: g}
}

// ofRow is how far a row reaches, nothing where that is not known.
func (r *reckoner) ofRow(row *fabric.Row) []Reach {
	t := &row.Tallies[r.size]
	if !t.Works || len(r.list.Gauges) == 0 || t.Agrees() == fabric.Disagrees {
		return nil
	}
	g, _, exact := r.gaugeFor(MainStitch(row, r.size))
	way := Wide
	if row.Round {
		way = Around
	}
	low, high := t.Made, t.Made+t.Chains
	exact = exact && t.Chains == 0
	if unit := gaugedStitch(g, r.dialect); unit != nil && unit.Class == stitch.Group {
		low = groups(row, r.size, unit.Abbreviation(r.dialect))
		high = low
	} else if g.Stitches == 0 {
		low = statedSquares(row, r.size)
		high, exact = low, true
	} else if !t.Known || len(t.Faults) > 0 {
		low = statedStitches(row, r.size)
		high, exact = low, false
	}
	out := along(way, low, high, g)
	if out.Low == 0 {
		return nil
	}
	out.Rows, out.Exact = row.Repeats[r.size], exact
	return []Reach{out}
}

// statedSquares are the squares of filet that a row says it has: what it counts but stitches and
// spaces.
func statedSquares(row *fabric.Row, size int) int {
	if row.Stated == nil {
		return 0
	}
	n := 0
	for _, part := range row.Stated.Parts {
		if part.Noun.Kind == syntax.NounGroup || part.Noun.Kind == syntax.NounStitch && part.Noun.Stitch.Meaning == (stitch.Meaning{}) {
			n += part.Number.At(size)
		}
	}
	return n
}

// statedStitches are those that a row says it has, 0 where it says none or has spaces between
// them.
func statedStitches(row *fabric.Row, size int) int {
	if row.Stated == nil || row.Stated.Change != 0 {
		return 0
	}
	n := 0
	for _, part := range row.Stated.Parts {
		if part.On != "" || part.Noun.Kind != syntax.NounStitch && part.Noun.Kind != syntax.NounAny && part.Noun.Kind != syntax.NounNone {
			return 0
		}
		n += part.Number.At(size)
	}
	return n
}

// goesOn tells of rows in words that were not read.
var goesOn = phrase.MustCompile(`\b(?:\d+ (?:more )?(?:rows|rnds|rounds)|until|rep|repeat|even|straight|continue|go on|as (?:for|before))\b`)

// How low and how high a row may be, in widths of a stitch, where no gauge says it.
const (
	lowest  = .5
	highest = 4
)

// raise adds a row to the height of all. Of rows of another stitch than the gauge's it is between
// what the gauge says and what that stitch is higher or lower.
func (r *reckoner) raise(tall *Reach, row *fabric.Row) {
	t := &row.Tallies[r.size]
	unread := !t.Works && !t.Known
	labelled := row.Tree.Label.Kind != syntax.Unlabelled
	if row.Likeness() != "" || uncounted(row) && !row.ToLength(r.size) || unread && !labelled && goesOn.MatchString(strings.ToLower(row.Tree.Text)) || row.Branched() {
		r.open = true
	}
	if !t.Works && !(unread && labelled) {
		return
	}
	g, ratio, exact := r.gaugeFor(MainStitch(row, r.size))
	tall.Exact = tall.Exact && (exact || g.Squares > 0)
	rows := row.Repeats[r.size]
	if rows == 0 {
		rows = numbered(row, r.size)
	}
	tall.N += rows
	switch {
	case rows == 0, g.Stitches+g.Squares == 0:
		r.open = true
		return
	case g.Rows == 0:
		tall.Exact = false
		tall.Low += lowest * float64(rows) * g.Length / g.Stitches
		tall.High += highest * float64(rows) * g.Length / g.Stitches
		return
	}
	high := float64(rows) * g.Length / g.Rows
	tall.Low += high * min(1, ratio)
	tall.High += high * max(1, ratio)
}

// HeightTo is how high a piece is when a row of it is worked. It is not known where some row up to
// there is not counted, or the piece goes on from another.
func HeightTo(list *materials.List, worked *fabric.Fabric, row *fabric.Row, size int) (Reach, bool) {
	r := reckoner{list: list, dialect: worked.Dialect, size: size}
	if len(list.Gauges) == 0 || list.Gauges[0].Rows == 0 || row.Piece.From != nil {
		return Reach{}, false
	}
	tall := Reach{Way: Tall, Of: "rows", Exact: true, Gauge: list.Gauges[0]}
	for _, of := range row.Piece.Rows[:row.Index+1] {
		r.raise(&tall, of)
	}
	return tall, !r.open && tall.High > 0
}

// numbered is how many rows the label of an instruction names.
func numbered(row *fabric.Row, size int) int {
	n := 0
	for _, span := range row.Tree.Label.Numbers {
		n += max(span.To.At(size), span.From.At(size)) - span.From.At(size) + 1
	}
	return n
}

// uncounted tells of rows that go on for so long as nobody says: no number names them.
func uncounted(row *fabric.Row) bool {
	return row.Measured() && row.Tree.Label.Kind == syntax.Unlabelled
}

// ReachesInSizes are the rows of a piece whose width is known in all sizes, a value for each.
func ReachesInSizes(list *materials.List, worked *fabric.Fabric, piece *fabric.Piece) [][]Reach {
	var out [][]Reach
	for _, row := range piece.Rows {
		var all []Reach
		for size := range worked.Sizes() {
			r := reckoner{list: list, dialect: worked.Dialect, size: size}
			all = append(all, r.ofRow(row)...)
		}
		if len(all) == worked.Sizes() {
			out = append(out, all)
		}
	}
	return out
}
