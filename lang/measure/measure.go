// Package measure tells how large the worked pieces come out by the pattern's
// gauge, and how much yarn they take by its swatch. It gives figures and how
// far they can be trusted, and judges nothing.
package measure

import (
	"math"
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/materials"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// Size is how large a piece comes out in one size, in millimetres. What cannot
// be told is 0.
type Size struct {
	// Width is that of the widest row; Around is the longest way round; Across is
	// the width of a disc worked from its middle; Height is that of all rows, where
	// it is said how many there are.
	Width, Around, Across, Height float64
	// Steady is the width, or the way round, of at least half of the rows, 0 where
	// the piece has no such part; First is that of the first row.
	Steady, First float64
	// Stitches and Rows are what they are reckoned from.
	Stitches, Rows int
	// Exact is set where all but a few rows are in the stitch that the gauge counts,
	// with no spaces between but those that stand over as many stitches.
	Exact bool
	// Plain is set where the widest row and at least half of all rows are: enough to
	// trust the width.
	Plain bool
	// Edging is what an edging, which is not in the figures, may add to a width or a
	// height at most: +Inf where that is not known.
	Edging float64
	// Gauge is the one reckoned with.
	Gauge materials.Gauge
}

// Round tells whether the piece is worked round.
func (s Size) Round() bool { return s.Around > 0 }

// Of reckons how large a piece comes out in one size. It tells nothing without
// a gauge, of a piece with branches, of one that is worked as another or goes on from
// it, or where a row could not be counted or is not what it states.
func Of(list *materials.List, worked *fabric.Fabric, piece *fabric.Piece, size int) Size {
	if piece.From != nil {
		return Size{}
	}
	return Widths(list, worked, piece, size)
}

// Widths does what Of does, of a piece that goes on from another as well: its height is
// then that of its own rows.
func Widths(list *materials.List, worked *fabric.Fabric, piece *fabric.Piece, size int) Size {
	r := reckoner{list: list, dialect: worked.Dialect, size: size, grows: true, widths: map[float64]int{}, open: saidToGoOn(worked.File, piece)}
	if len(list.Gauges) == 0 {
		return Size{}
	}
	flat := flatly(piece, size)
	for _, row := range piece.Rows {
		r.open = r.open || row.Measured() && !row.ToLength(size)
		switch {
		case !row.Works():
		case branched(row), row.Likeness() != "":
			return Size{} // how wide it was in between is not kept
		case row.Round == flat, IsEdging(row.Tree.Label.Text):
			r.out.Edging += 2 * r.highest(row)
		case !r.add(row):
			return Size{}
		}
	}
	return r.total(flat)
}

// edgingName is what a part is called that goes round or along others.
var edgingName = phrase.MustCompile(`\b(?:borders?|edgings?|edges?|trims?|ruffles?|fringes?|tassels?)\b`)

// IsEdging tells by its name a piece, or a row, that is an edging of others.
func IsEdging(name string) bool { return edgingName.MatchString(strings.ToLower(name)) }

// hung are edgings of no height that rows would tell of.
var hung = phrase.MustCompile(`\b(?:fringes?|tassels?)\b`)

// Edging is what a piece that is an edging may add to a width or a height of others at
// most: +Inf where that is not known.
func Edging(list *materials.List, worked *fabric.Fabric, piece *fabric.Piece, size int) float64 {
	r := reckoner{list: list, dialect: worked.Dialect, size: size}
	if hung.MatchString(strings.ToLower(piece.Tree.Name)) || saidToGoOn(worked.File, piece) {
		return math.Inf(1)
	}
	total := 0.0
	for _, row := range piece.Rows {
		total += 2 * r.highest(row)
	}
	return total
}

// What a row of an edging may be as high as: where it could not be counted, a treble;
// in any case a picot or a chain more than its stitches.
const (
	uncountedHeight = 4
	picotHeight     = 1
)

// highest is how high a row of an edging may be at most.
func (r *reckoner) highest(row *fabric.Row) float64 {
	if len(r.list.Gauges) == 0 || r.list.Gauges[0].Rows == 0 || uncounted(row) && !row.ToLength(r.size) {
		return math.Inf(1)
	}
	g := r.list.Gauges[0]
	counted := 1.0
	if of := gaugedStitch(g, r.dialect); of != nil && of.HeightInSC > 0 {
		counted = of.HeightInSC
	}
	high := 0.0
	for _, s := range row.Made(r.size) {
		if s.Kind != nil {
			high = max(high, s.Kind.Plain().HeightInSC)
		}
	}
	if !row.Tallies[r.size].Known {
		high = max(high, uncountedHeight)
	}
	return float64(row.Repeats[r.size]) * (high + picotHeight) / counted * g.Length / g.Rows
}

// toLength is how plain words say that rows go on to a length.
var toLength = phrase.MustCompile(`\b(?:until|till)\b[^.]*(?:\bmeasures?\b|\blong\b|\blength\b|\btall\b|\bdeep\b|\d ?(?:cm|in|inch|inches)\b)`)

// saidToGoOn tells whether a sentence between the rows of a piece, which was not read
// as an instruction, says that rows go on to a length.
func saidToGoOn(file *syntax.File, piece *fabric.Piece) bool {
	rows := piece.Tree.Rows
	if len(rows) == 0 {
		return false
	}
	worked := source.Span{Start: rows[0].At, End: rows[len(rows)-1].Span().End}
	return slices.ContainsFunc(file.Prose, func(s source.Span) bool {
		return worked.Covers(s) && toLength.MatchString(strings.ToLower(file.Text.Slice(s)))
	})
}

// branched tells whether a row leaves its own line for branches.
func branched(row *fabric.Row) bool {
	for _, step := range row.Steps {
		if len(step.Ledger) > 0 || len(step.Home) > 0 {
			return true
		}
	}
	return false
}

// flatly tells whether most rows of a piece are worked flat: the others are its
// edging.
func flatly(piece *fabric.Piece, size int) bool {
	flat, round := 0, 0
	for _, row := range piece.Rows {
		switch {
		case !row.Works():
		case row.Round:
			round += row.Repeats[size]
		default:
			flat += row.Repeats[size]
		}
	}
	return flat >= round
}

// reckoner adds up the rows of a piece in one size.
type reckoner struct {
	list    *materials.List
	dialect stitch.Dialect
	size    int
	out     Size
	widest  float64
	widths  map[float64]int // how many rows are so wide
	before  int
	solid   int  // stitches of the last row with no spaces, all of them the gauge's
	inexact int  // rows that are not in the gauge's stitch
	sharp   bool // the widest row is
	grows   bool // every round is longer than the one before it
	open    bool // some rows go on for as long as the maker likes
}

// add puts a row to the others. It is false where the row tells nothing.
func (r *reckoner) add(row *fabric.Row) bool {
	t := &row.Tallies[r.size]
	if !t.Works {
		return true // this size leaves the row out
	}
	if row.Branched() {
		return false // it is no strip
	}
	if !t.Known || len(t.Faults) > 0 || t.Agrees() == fabric.Disagrees {
		return false
	}
	main := MainStitch(row, r.size)
	g, ratio, exact := r.gaugeFor(main)
	n := t.Made + t.Chains
	if unit := gaugedStitch(g, r.dialect); unit != nil && unit.Class == stitch.Group {
		n = groups(row, r.size, unit.Abbreviation(r.dialect))
		exact = n > 0
	} else if t.Chains > 0 {
		exact = exact && n == r.solid
	} else if exact {
		r.solid = n
	}
	if g.Stitches == 0 || g.Length == 0 {
		return false
	}
	width := float64(n) * g.Length / g.Stitches
	if r.out.Rows == 0 {
		r.out.First = width
	}
	if width > r.widest {
		r.widest, r.sharp, r.out.Stitches, r.out.Gauge = width, exact, n, g
	}
	rows := row.Repeats[r.size]
	if g.Rows > 0 {
		r.out.Height += float64(rows) * g.Length / g.Rows * ratio
	}
	r.grows = r.grows && n > r.before && (rows == 1 || row.Index == 0)
	if r.out.Rows == 0 || n == r.before {
		r.widths[width] += rows
	} else {
		r.widths[width]++ // the rows before the last of them were wider or narrower
	}
	r.before = n
	r.out.Rows += rows
	if !exact {
		r.inexact += rows
	}
	return true
}

// fewOf is one row in how many may be in another stitch without making the
// height of a piece doubtful.
const fewOf = 10

// total is what the rows come to.
func (r *reckoner) total(flat bool) Size {
	if r.open {
		r.out.Height, r.grows = 0, false
	}
	r.out.Exact = r.sharp && fewOf*r.inexact <= r.out.Rows
	r.out.Plain = r.sharp && 2*r.inexact <= r.out.Rows
	for width, rows := range r.widths {
		if 2*rows >= r.out.Rows && width > r.out.Steady {
			r.out.Steady = width
		}
	}
	if flat {
		r.out.Width = r.widest
		return r.out
	}
	r.out.Around = r.widest
	if r.grows {
		r.out.Across = 2 * r.out.Height
	}
	return r.out
}

// gaugeFor is the gauge for rows of a stitch: that of the stitch, that of no
// stitch in particular, or another's with how much higher the rows are.
func (r *reckoner) gaugeFor(main *stitch.Stitch) (g materials.Gauge, ratio float64, exact bool) {
	for _, g := range r.list.Gauges {
		of := gaugedStitch(g, r.dialect)
		if of == nil || main != nil && of.Plain() == main.Plain() {
			return g, 1, true
		}
	}
	g = r.list.Gauges[0]
	of := gaugedStitch(g, r.dialect)
	if of.Class == stitch.Group {
		return g, 1, true
	}
	if main == nil || main.HeightInSC == 0 || of.HeightInSC == 0 {
		return g, 1, false
	}
	return g, main.Plain().HeightInSC / of.HeightInSC, false
}

// gaugedStitch is the stitch that a gauge counts, nil where it counts stitches
// of any kind.
func gaugedStitch(g materials.Gauge, d stitch.Dialect) *stitch.Stitch {
	m, _ := stitch.Find(g.Of)
	return m.In(d)
}

// groups counts the groups of a name in a row, shells or V-stitches, or in each
// of the rows that it stands for.
func groups(row *fabric.Row, size int, name string) int {
	seen := map[int]bool{}
	for _, s := range row.Made(size) {
		if s.Object > 0 && strings.EqualFold(s.Own, name) {
			seen[s.Object] = true
		}
	}
	return len(seen) / max(1, row.Repeats[size])
}

// MainStitch is the plain stitch that most stitches of a row are built on, nil
// for none.
func MainStitch(row *fabric.Row, size int) *stitch.Stitch {
	counts := map[*stitch.Stitch]int{}
	var main *stitch.Stitch
	for _, s := range row.Made(size) {
		if s.IsSpace() || s.Apart {
			continue
		}
		k := s.Kind.Plain()
		counts[k]++
		if main == nil || counts[k] > counts[main] {
			main = k
		}
	}
	return main
}
