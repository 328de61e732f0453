package lint

import (
	"fmt"
	"math"
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/measure"
	"stitchproof/lang/source"
	"stitchproof/lang/units"
)

// dimensionOf is a length that a body comes to, in millimetres, between two, and what makes it.
type dimensionOf struct {
	low, high float64
	measure.Reach
	how string // what is done to come to it
}

// per is how many go to the length of the gauge.
func (d dimensionOf) per() float64 {
	switch {
	case d.Way == measure.Tall && d.Gauge.Rows > 0:
		return d.Gauge.Rows
	case d.Gauge.Stitches > 0:
		return d.Gauge.Stitches
	}
	return d.Gauge.Squares
}

// seenAs is what is seen of a reach where it is so many times as long.
func seenAs(r measure.Reach, low, high float64, how string) dimensionOf {
	return dimensionOf{r.Low * low, r.High * high, r, how}
}

// How many times its width the way round a piece is: of one that lies flat with corners or
// without, four times at most, and of a tube twice.
const (
	ofSquare = 4
	ofLeast  = 2.8
	ofTube   = 2
)

// shape is what is known of the lengths of a body.
type shape struct {
	all   []measure.Reach
	most  map[measure.Way]int
	grown bool // rounds grow from a middle
	rows  int
	// loose is set where a round has so many more stitches than the one before it that they
	// do not lie along it: petals, a frill.
	loose bool
	// lengthwise is set where only the chain that a body begins with tells of its length: it has
	// branches, or its rows go round the chain.
	lengthwise bool
}

func shapeOf(all []measure.Reach) shape {
	s := shape{all: all, most: map[measure.Way]int{}}
	least, last, first := math.MaxInt, 0, 0
	for _, r := range all {
		s.most[r.Way] = max(s.most[r.Way], r.N)
		if first == 0 && (r.Way == measure.Around || r.Way == measure.Wide) {
			first = r.N
		}
		switch r.Way {
		case measure.Around:
			least = min(least, r.N)
			s.rows++
			s.loose = s.loose || last > 0 && float64(r.N) > frill*float64(last)
			last = r.N
		case measure.Wide:
			s.rows++
		}
	}
	s.lengthwise = s.most[measure.Long] > 0 && (first == 0 || float64(first) > bothSides*float64(s.most[measure.Long]))
	s.grown = s.most[measure.Around] > 2*least
	return s
}

const (
	// bothSides is how much longer than its chain a row is that goes round that.
	bothSides = 1.7
	// offStem is how much longer a branched piece may be than its stem.
	offStem = 1.3
	// frill is how many times the stitches of the round before it lie along a round.
	frill = 2.1
	// muchLonger is how many times as long as another a length is that is surely one of another way. Our own figure.
	muchLonger = 1.5
	// bulge is one row in how many may be longer than the way round something: a gusset.
	bulge = 6
)

// seenOf are the dimensions of a body that a size may be, none where one of them is not known.
func (s saidSize) seenOf(of shape) []dimensionOf {
	switch {
	case of.loose && (s.either || s.side == across):
		return nil
	case s.either, s.side == along && !of.lengthwise:
		if of.most[measure.Tall] == 0 {
			return nil
		}
	case s.side == along && s.shallow:
		return nil
	case s.side == along:
		return of.lengths()
	case s.side == round && of.most[measure.Around] > 0:
		return of.rounds()
	case s.side == across && of.most[measure.Around] > 0:
		return s.widths(of)
	case s.side == round && slices.ContainsFunc(s.of.pieces, worksRounds):
		return nil // none of which is known
	case of.most[measure.Tall] == 0:
		if s.side == across && s.beside != nil {
			return s.widths(of) // of which the length is none, see holdSize
		}
		return nil
	}
	out := s.widths(of)
	for _, r := range of.all {
		if r.Way != measure.Tall {
			continue
		}
		out = append(out, seenAs(r, 1, 1, ""))
		if of.most[measure.Around] == 0 {
			out = append(out, seenAs(r, .5, .5, "folded"), seenAs(r, 2, 2, "to both sides"))
		}
	}
	return out
}

// worksRounds tells whether a piece has rounds.
func worksRounds(piece *fabric.Piece) bool {
	return slices.ContainsFunc(piece.Rows, func(r *fabric.Row) bool { return r.Round && r.Works() })
}

// lengths are those of a body that is worked along a chain.
func (of shape) lengths() []dimensionOf {
	for _, r := range of.all {
		if r.Way == measure.Long {
			d := seenAs(r, 1, 1, "")
			if of.rows > 0 {
				d.high += (float64(of.rows) - 0.5) * r.High / float64(r.N) // the rounds at its end
			} else {
				d.high *= offStem
			}
			return []dimensionOf{d}
		}
	}
	return nil
}

// rounds are the ways round a body, but for those of few rounds between shorter ones.
func (of shape) rounds() []dimensionOf {
	rows, last := map[int]int{}, 0
	for _, r := range of.all {
		if r.Way == measure.Around {
			rows[r.N] += r.Rows
			last = r.N
		}
	}
	total := 0
	for _, n := range rows {
		total += n
	}
	longest := 0
	for n, times := range rows {
		if bulge*times >= total || n == last {
			longest = max(longest, n)
		}
	}
	var out []dimensionOf
	for _, r := range of.all {
		if r.Way == measure.Around && r.N <= longest && 2*r.N >= longest {
			out = append(out, seenAs(r, 1, 1, ""))
		}
	}
	return out
}

// widths are those of rows and rounds, of which the first of a piece that grows are none.
func (s saidSize) widths(of shape) []dimensionOf {
	var out []dimensionOf
	for _, r := range of.all {
		if r.Way == measure.Tall || 2*r.N < of.most[r.Way] || r.Way == measure.Wide && of.lengthwise {
			continue
		}
		if r.Way != measure.Around {
			out = append(out, seenAs(r, 1, 1, ""), seenAs(r, .5, .5, "folded"))
			continue
		}
		out = append(out, seenAs(r, 1./ofSquare, 1./ofLeast, "across"))
		if s.flat || !of.grown {
			out = append(out, seenAs(r, 1./ofTube, 1./ofTube, "folded flat"))
		}
	}
	return out
}

// How far a size may be from what can be told of a body, of which not all is known, or what is
// measured may not be what the gauge counts.
const (
	generous = .1
	exactly  = .03
)

// misses tells by how much a size is off a dimension, 0 where it is not; an edging may add to it.
func (s saidSize) misses(d dimensionOf, size int, edging float64) float64 {
	says := s.length.At(size)
	per, share := d.per(), generous
	if d.Exact {
		share = exactly
	}
	give := 0.5/per*d.high + imperialGive
	if s.length.Metric() {
		give += metricGive - imperialGive
	}
	low, high := d.low*(1-share)-give, d.high*(1+share)+give+edging
	switch {
	case says < low:
		return low / says
	case says > high:
		return says / high
	}
	return 0
}

// outOfLine is by how much, in millimetres, the size of one is off what the others keep.
const outOfLine = 10

// outlier is the one of several sizes that is not what stitches come to, where those of all
// others are, as often as times over; -1 where none is, or all are.
func (s saidSize) outlier(stitches []measure.Reach, times float64) int {
	at, seen := -1, map[float64]bool{}
	for size, r := range stitches {
		by := math.Abs(s.length.At(size) - times*r.Low)
		give := metricGive / 1.25
		if !s.length.Metric() {
			give = imperialGive
		}
		if inches := r.Gauge.Length / 25.4; s.length.Metric() == (math.Abs(inches-math.Round(inches)) < .01) {
			give += conversionShare * s.length.At(size)
		}
		switch {
		case by <= give:
			seen[s.length.At(size)] = true
		case at >= 0 || by < max(outOfLine, 2*give):
			return noOutlier
		default:
			at = size
		}
	}
	if at < 0 {
		return -1
	}
	if len(seen) < 2 {
		return noOutlier
	}
	return at
}

// noOutlier stands for sizes that are off in more than one place.
const noOutlier = -2

// holdInLine holds sizes against each other: where all of them but one are what some row of a
// piece comes to, that one is a slip. Of three sizes the piece has to be known.
func (p *Pass) holdInLine(s saidSize, pieces []*fabric.Piece) {
	sizes := p.Fabric.Sizes()
	if len(s.length.Vals) != sizes || sizes < 3 {
		return
	}
	var found []measure.Reach
	slip, often := 0, 0.
	for _, piece := range pieces {
		for _, row := range measure.ReachesInSizes(p.Materials, p.Fabric, piece) {
			for _, times := range [...]float64{1, 2} {
				switch at := s.outlier(row, times); {
				case at == -1:
					return // this row gives them all
				case at >= 0 && found == nil:
					found, slip, often = row, at, times
				}
			}
		}
	}
	if found == nil {
		return
	}
	r := found[slip]
	made := "make"
	if often > 1 {
		made = "twice make"
	}
	says := []float64{s.length.At(slip)}
	comes := []float64{often * r.Low}
	self := func(v float64) float64 { return v }
	p.inSizes([]int{slip}, Finding{
		Span: s.at,
		Message: fmt.Sprintf("says %s, and %d sts at %s to %s cm %s %s, as they do in the other sizes", inBothUnits(says, self), r.N, trimmed(r.Gauge.Stitches),
			units.Centimetres(r.Gauge.Length), made, inBothUnits(comes, self)),
		Related: []Related{{r.Gauge.Span, "the gauge"}},
	})
}

// holdSaid holds what is said of sizes against what pieces can come to, but for what was told.
func (p *Pass) holdSaid(told func(source.Span) bool) {
	if len(p.Materials.Gauges) == 0 {
		return
	}
	all := p.saidSizes()
	for _, s := range all {
		for _, l := range all {
			switch {
			case l.side != along || s.of.pieces == nil:
			case s.side == along:
				same := l.of.first() == s.of.first() || l.of.pieces == nil && p.File.Text.LineOf(l.at.Start) == p.File.Text.LineOf(s.at.Start)
				s.shallow = s.shallow || same && l.length.At(0) > muchLonger*s.length.At(0)
			case s.side == across && l.of.first() == s.of.first():
				s.beside = &l.length
			}
		}
		if !told(s.at) && s.of.pieces != nil {
			p.holdSize(s)
		}
		if pieces := s.of.pieces; !told(s.at) && s.side != along && (pieces != nil || p.Fabric.Sizes() > 3) {
			if pieces == nil {
				pieces = p.Fabric.Pieces
			}
			p.holdInLine(s, pieces)
		}
	}
}

// otherThan are the dimensions that a size may be whose other one is known: where that is
// along the rows alone, over all rows, and the other way round.
func (s saidSize) otherThan(all []dimensionOf, size int, edging float64) []dimensionOf {
	other := s
	other.length = *s.other
	kept := map[bool]bool{} // by whether it is over all rows
	for _, d := range all {
		tall := d.Way == measure.Tall
		kept[tall] = kept[tall] || other.misses(d, size, edging) == 0
	}
	if kept[true] == kept[false] {
		return all
	}
	return slices.DeleteFunc(slices.Clone(all), func(d dimensionOf) bool { return (d.Way == measure.Tall) == kept[true] })
}

// lengthFits tells whether the length beside a width is along the rows, which may go either way.
func (s saidSize) lengthFits(all []dimensionOf, size int, edging float64) bool {
	s.length = *s.beside
	return slices.ContainsFunc(all, func(d dimensionOf) bool { return s.misses(d, size, edging) == 0 })
}

// missed is a size that nothing of a body comes to, with what comes nearest.
type missed struct {
	says float64
	dimensionOf
}

func (p *Pass) holdSize(s saidSize) {
	var off sized[missed]
	for size := range p.Fabric.Sizes() {
		edging := 0.0
		if s.trimmed && s.side != round {
			edging = p.edgings(s.of.pieces[0], size)
		}
		of := shapeOf(measure.Reaches(p.Materials, p.Fabric, s.of.pieces, size))
		all := s.seenOf(of)
		flat := of.most[measure.Around] == 0
		if s.either && flat {
			all = s.otherThan(all, size, edging)
		}
		var nearest dimensionOf
		least := math.Inf(1)
		for _, d := range all {
			if by := s.misses(d, size, edging); by < least {
				least, nearest = by, d
			}
		}
		if len(all) == 0 || least == 0 || flat && s.beside != nil && of.most[measure.Tall] == 0 && s.lengthFits(all, size, edging) {
			continue
		}
		off.add(size, missed{s.length.At(size), nearest})
	}
	p.tellMissed(off, s.at, s.of.first())
}
