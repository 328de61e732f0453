package fabric

import (
	"cmp"
	"math"
	"slices"

	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// A Strip is what a row works along one chain, or along the row below where the
// piece is one narrow strip, and how its shaping bends it.
//
// The foot of the strip is the chain: as long as the chains used are many. Its
// top is as long as the stitches made are many. Where the top is longer, it
// takes the outside of a bend and the work curls towards the chain; where it is
// shorter, away from it. Over a stretch in which the stitches are h high and
// each is w wide,
//
//	turn = (stitches made - chains used) * w / h
//
// in radians: the angle between the stitches at both ends of the stretch, as of
// spokes. Turns along a chain add up; 360 degrees are a full curl, a ring where
// the ends meet.
//
// That holds for a thin strip that lies flat and is worked at one tension: for
// bends that are spread over some stitches, in work that is long against its
// height, and as long as the edge does not ruffle. All stitches are taken as
// wide as each other and as a chain. What is worked into the first and the last
// place leans out over a free end and bends nothing, so no turn is given there.
type Strip struct {
	// Branch is the name of the branch whose chain is worked along, "" where it
	// has none and for the stem; Stem tells the two apart.
	Branch string
	Stem   bool
	// OnChain is set for work along a chain, and not set along stitches.
	OnChain bool
	// Known is false where no bend can be told: of rounds, of work on both sides
	// of its chain, of loops that hang free, of rows of a broad piece, of a place
	// that alone turns more than half a circle, and of what was not counted.
	Known bool
	Bends []Bend
	// Turn is the sum of the bends in degrees, positive where the work curls
	// towards the chain.
	Turn float64
}

// Bend is one place along a strip with what stands on it.
type Bend struct {
	// Place is the first chain or stitch used, counted from 1 in the order met.
	Place int
	// Used is how many chains or stitches of the foot are taken up here, those
	// passed over included; Made is how many stitches stand on them, of which
	// the first is number First of the strip.
	Used, Made, First int
	// Height is the mean of the stitches here, in single crochets.
	Height float64
	// Turn is in degrees, 0 where the work goes straight on.
	Turn float64

	from, to int  // along the foot
	bridged  bool // chains lead here from the place before
}

// The limits of what is told of a strip.
const (
	// minBends is how many places a strip has at least: two are its ends.
	minBends = 3
	// halfTurn is the most that one place may turn: the work on both sides of it
	// would meet.
	halfTurn = 180.0
	// thinness is how many times as long as high a piece of several rows must be
	// to bend as one strip; common practice.
	thinness = 4
)

// scProportion is the width of a single crochet by the height of its row where
// no gauge tells: a published square of 20 sc by 20 rows measures 6.25 by 5.75
// inches.
const scProportion = 6.25 / 5.75

// footing is the edge that a strip stands on: a chain or the row below, in the
// order met. It leads to the one stood on before.
type footing struct {
	branch string
	stem   bool
	places []int
	before *footing
}

// is tells whether a footing is this edge, and not only an equal one.
func (f *footing) is(places []int) bool {
	return f != nil && len(f.places) == len(places) && &f.places[0] == &places[0]
}

// stands notes what the hook works along now.
func (h *hand) stands() {
	if len(h.base) == 0 || h.footing.is(h.base) {
		return
	}
	b := h.innermost()
	f := &footing{stem: b == nil, places: h.base, before: h.footing}
	if b != nil {
		f.branch = b.name
	}
	h.footing = f
}

// proportionOf is the width of a single crochet by its row's height, by a gauge
// that names a stitch of the dictionary.
func proportionOf(g syntax.Gauge, d stitch.Dialect) float64 {
	meaning, _ := stitch.Find(spelled(g.Of))
	k := meaning.In(d)
	if k == nil || k.Class != stitch.Plain || g.Stitches == 0 || g.Rows == 0 {
		return scProportion
	}
	return g.Rows / g.Stitches * k.HeightInSC
}

// heightOf is how high a stitch stands, in single crochets. A slip stitch has
// no figure of its own there; a chain is as high as a single crochet, so its
// figure in chains does.
func heightOf(k *stitch.Stitch) float64 { return cmp.Or(k.HeightInSC, k.Height) }

// Shape gives the strips that a row works in a size, in the order begun. A line
// that stands for several rows gives those of the last.
func (r *Row) Shape(size int) []Strip {
	t := &r.Tallies[size]
	if !t.Works || !t.Known {
		return nil
	}
	var out []Strip
	b := r.bind(size)
	for _, s := range b.strips {
		known := !b.lost && !s.broken && !(s.Stem && r.Round)
		if !s.OnChain {
			known = known && r.Piece.thin(size, len(s.ends)) && r.onFlat(size)
		}
		if s.made > 0 {
			out = append(out, s.bent(r.Piece.proportion, known))
		}
	}
	return out
}

// thin tells whether all rows of a piece together are one strip over an edge of
// so many stitches. Of rows taken over from another piece the height is not told.
func (p *Piece) thin(size, long int) bool {
	high := 0.0
	for _, row := range p.Rows {
		t := &row.Tallies[size]
		switch {
		case !t.Works:
			continue
		case !t.Known, row.Measured():
			return false
		}
		high += meanHeight(p.Stitches[size], t.row) * float64(row.Repeats[size])
		if high*thinness > float64(long)*p.proportion {
			return false
		}
	}
	return p.From == nil
}

// Measured tells whether rows are worked by measure, so many as nobody says.
func (r *Row) Measured() bool {
	found := false
	syntax.Walk(r.Tree.Clauses, func(c syntax.Clause) {
		switch n := c.Node.(type) {
		case *syntax.Rows:
			found = found || n.Limit == syntax.Measured
		case *syntax.Even:
			found = found || !n.Number.Written() && r.Tree.Label.Kind == syntax.Unlabelled
		case *syntax.Likewise:
			found = true
		}
	})
	return found
}

// onFlat tells whether the row below is one to work along: it goes not round,
// and nothing of it hangs in loops.
func (r *Row) onFlat(size int) bool {
	below := r.Before()
	if below == nil {
		return true
	}
	b := below.bind(size)
	return !below.Round && !slices.ContainsFunc(b.strips, func(s *strip) bool { return b.lost || s.broken })
}

// meanHeight is how high the stitches of a row stand, in single crochets.
func meanHeight(stitches []Stitch, row []int) float64 {
	sum, n := 0.0, 0
	for _, i := range row {
		if s := &stitches[i]; !s.IsSpace() {
			sum += heightOf(s.Kind)
			n++
		}
	}
	return sum / float64(max(n, 1))
}

// binder sorts the stitches of a row on to the edges that they stand on.
type binder struct {
	stitches []Stitch
	strips   []*strip
	spots    map[int]spot
	chains   int  // of the spaces since the last stitch
	lost     bool // a stitch stands on none of the edges
}

// spot is where a place lies: in a strip's foot, so far along.
type spot struct {
	on *strip
	at int
}

// strip is a strip in the making.
type strip struct {
	Strip
	foot   *footing
	ends   []int // how long the foot is up to the end of each place
	made   int
	broken bool
}

// bind sorts the stitches that a row made.
func (r *Row) bind(size int) binder {
	t := &r.Tallies[size]
	b := binder{stitches: r.Piece.Stitches[size], spots: map[int]spot{}}
	b.lay(t.footing)
	for _, i := range t.row {
		b.stand(i)
	}
	return b
}

// lay makes strips over the edges that were stood on, the first ones first.
func (b *binder) lay(f *footing) {
	if f == nil {
		return
	}
	b.lay(f.before)
	if known, ok := b.spots[f.places[0]]; ok && known.on.foot.is(f.places) {
		return // back from a branch
	}
	s := &strip{Strip: Strip{Branch: f.branch, Stem: f.stem, OnChain: true}, foot: f}
	long := 0
	for at, place := range f.places {
		below := &b.stitches[place]
		long += max(1, below.Chains)
		s.ends = append(s.ends, long)
		s.OnChain = s.OnChain && !below.IsSpace() && below.Kind.Class == stitch.Chain
		if other, taken := b.spots[place]; taken {
			other.on.broken, s.broken = true, true // each side holds what the other would bend
		}
		b.spots[place] = spot{s, at}
	}
	b.strips = append(b.strips, s)
}

// stand puts a stitch or space of the row on its strip.
func (b *binder) stand(i int) {
	st := &b.stitches[i]
	if st.IsSpace() {
		b.chains += st.Chains
		return
	}
	place, ok := b.spots[st.Into]
	if !ok {
		b.lost = true
		return
	}
	place.on.stand(st, place.at, b.chains)
	b.chains = 0
}

// stand puts a stitch on the strip at a place, after so many chains.
func (s *strip) stand(st *Stitch, at, chains int) {
	s.made++
	from, to := 0, s.ends[min(at+max(st.Over, 1), len(s.ends))-1]
	if at > 0 {
		from = s.ends[at-1]
	}
	last := &Bend{}
	if n := len(s.Bends); n > 0 {
		last = &s.Bends[n-1]
	}
	hangs := chains > 0 && (last.Place == 0 || chains != from-last.to)
	s.broken = s.broken || hangs || at+1 < last.Place
	if last.Place != at+1 {
		s.Bends = append(s.Bends, Bend{Place: at + 1, First: s.made, Used: max(0, to-max(from, last.to)), from: from, to: to, bridged: chains > 0})
		last = &s.Bends[len(s.Bends)-1]
	} else {
		last.to = max(last.to, to)
		last.Used = last.to - last.from
	}
	last.Made++
	last.Height += (heightOf(st.Kind) - last.Height) / float64(last.Made)
}

// bent works out the bends of a strip, if they can be known.
func (s *strip) bent(proportion float64, known bool) Strip {
	out := s.Strip
	n := len(out.Bends)
	if out.Known = known && n >= minBends; !out.Known {
		out.Bends = nil
		return out
	}
	for i := 1; i < n; i++ {
		share(&out.Bends[i-1], &out.Bends[i])
	}
	for i := 1; i < n-1; i++ {
		b := &out.Bends[i]
		if b.Made != b.Used {
			b.Turn = float64(b.Made-b.Used) * proportion / b.Height * 180 / math.Pi
		}
		out.Known = out.Known && math.Abs(b.Turn) <= halfTurn
		out.Turn += b.Turn
	}
	if !out.Known {
		out.Bends, out.Turn = nil, 0
	}
	return out
}

// share gives the places passed over between two bends to those that spread
// over them; what is over is drawn in by the second.
func share(a, b *Bend) {
	passed := b.from - a.to
	if b.bridged || passed <= 0 {
		return
	}
	taken := min(passed, max(0, a.Made-a.Used))
	a.Used += taken
	b.Used += passed - taken
}
