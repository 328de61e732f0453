package fabric_test

import (
	"fmt"
	"slices"
)

// The oracle: a piece of crochet worked by plain loops over a list of stitch
// names. It shares nothing with the engine and imports nothing of this
// project; it is meant to be checked by reading. A pattern that asks for a
// place that is not there is a mistake in the test, so the oracle panics.

// sized is a number in a pattern: one value for every size, or one for each.
type sized []int

func (n sized) of(size int) int {
	if len(n) == 1 {
		return n[0]
	}
	return n[size]
}

// once is the number 1.
func once() sized { return sized{1} }

// verb is what a step does.
type verb int

const (
	work     verb = iota // n of the stitch in each of the next m places
	increase             // two of the stitch in the next place, m times
	together             // the next n places closed into one stitch, m times
	skip                 // passes over m places
	chain                // n chains, which are a space once a stitch follows
	group                // parts, all in the next place
	repeat               // parts, m times or to the limit
	each                 // n of the stitch in every place up to the limit
	turns                // parts, one a place by turns, up to the limit
)

// limit is how a repeat, or an each, ends.
type limit int

const (
	times  limit = iota // after m times in all
	toEnd               // when no place is left
	toLast              // when only the last so many places are left
)

// step is one thing done in a row.
type step struct {
	verb   verb
	stitch string // the US abbreviation
	n, m   sized
	space  bool // the place is a chain space, not a stitch
	parts  []step
	limit  limit
	last   sized // how many places toLast leaves
	// What is left tells only how the step may be worded. noun is what the
	// places are called: "st", "ch", "ring", a stitch, a space; place is
	// another name for the one place meant; own tells that the stitch is the
	// row's own, so that `inc` and `dec` name it.
	noun, place string
	own         bool
}

// row is one row or round, worked on what lies below it.
type row struct {
	// height is the chains of the beginning chain, 0 for none; stands is the
	// stitch it is worked for, and counts tells whether it counts as one.
	height int
	stands string
	counts bool
	// from is the chain from the hook that a foundation row's first stitch
	// goes into, 0 on anything else. The chains skipped count as counts says.
	from  int
	steps []step
	// again tells that the row is the one before once more, which a pattern
	// may say instead of writing it out.
	again bool
}

// shape is how the rows of a piece follow each other.
type shape int

const (
	flat   shape = iota // turned after every row
	joined              // rounds closed with a slip stitch
	spiral              // rounds that run on
)

// piece is a pattern of one piece.
type piece struct {
	sizes int
	shape shape
	// chains is the length of the foundation chain; nil where the first round
	// is worked into a ring.
	chains sized
	rows   []row
}

// stitches works the piece in one size and names the stitches and spaces of
// every row, in the order made.
func (p *piece) stitches(size int) [][]string {
	var out [][]string
	o := oracle{size: size, ring: p.chains == nil}
	if p.chains != nil {
		for range p.chains.of(size) {
			o.below = append(o.below, "ch")
		}
	}
	for _, r := range p.rows {
		o.row(r)
		out = append(out, o.made)
		o.below, o.made, o.ring = o.made, nil, false
		if p.shape == flat {
			o.below = slices.Clone(o.below)
			slices.Reverse(o.below)
		}
	}
	return out
}

// oracle is the work in one size: the row below, how far it is used, the row
// being made.
type oracle struct {
	size   int
	below  []string
	at     int
	ring   bool // every stitch goes into the ring, which is never used up
	made   []string
	chains int // on the hook since the last stitch
}

func (o *oracle) row(r row) {
	o.at = 0
	if r.from > 0 {
		o.at = r.from - 1
		if r.counts {
			o.make(r.stands)
		}
	} else if r.height > 0 && r.counts {
		o.use(false)
		o.make(r.stands)
	}
	o.list(r.steps)
	o.closeSpace()
	if o.at != len(o.below) {
		panic(fmt.Sprintf("%d of %d places left over", len(o.below)-o.at, len(o.below)))
	}
}

func (o *oracle) list(steps []step) {
	for _, s := range steps {
		o.step(s)
	}
}

func (o *oracle) step(s step) {
	switch s.verb {
	case work:
		for range s.m.of(o.size) {
			o.use(s.space)
			for range s.n.of(o.size) {
				o.make(s.stitch)
			}
		}
	case increase:
		for range s.m.of(o.size) {
			o.use(false)
			o.make(s.stitch)
			o.make(s.stitch)
		}
	case together:
		n := s.n.of(o.size)
		for range s.m.of(o.size) {
			for range n {
				o.use(false)
			}
			o.make(fmt.Sprintf("%s%dtog", s.stitch, n))
		}
	case skip:
		for range s.m.of(o.size) {
			o.use(s.space)
		}
	case chain:
		o.chains += s.n.of(o.size)
	case group:
		o.use(s.space)
		for _, part := range s.parts {
			if part.verb == chain {
				o.chains += part.n.of(o.size)
				continue
			}
			for range part.n.of(o.size) {
				o.make(part.stitch)
			}
		}
	case repeat:
		for done := 0; o.goesOn(s, done); done++ {
			o.list(s.parts)
		}
	case each:
		for done := 0; o.goesOn(s, done); done++ {
			o.use(false)
			for range s.n.of(o.size) {
				o.make(s.stitch)
			}
		}
	case turns:
		for done := 0; o.goesOn(s, done); done++ {
			o.use(false)
			o.make(s.parts[done%len(s.parts)].stitch)
		}
	}
}

// goesOn tells whether a repeat is worked once more.
func (o *oracle) goesOn(s step, done int) bool {
	left := len(o.below) - o.at
	switch s.limit {
	case toEnd:
		return left > 0
	case toLast:
		return left > s.last.of(o.size)
	}
	return done < s.m.of(o.size)
}

// use moves past the next place, which must be a space where the words say so.
func (o *oracle) use(space bool) {
	if o.ring {
		return
	}
	if o.at >= len(o.below) {
		panic("no place is left")
	}
	if isSpace(o.below[o.at]) != space {
		panic("the next place is " + o.below[o.at])
	}
	o.at++
}

func (o *oracle) make(stitch string) {
	o.closeSpace()
	o.made = append(o.made, stitch)
}

// closeSpace turns the chains since the last stitch into a space.
func (o *oracle) closeSpace() {
	if o.chains > 0 {
		o.made = append(o.made, spaceOf(o.chains))
		o.chains = 0
	}
}

// spaceOf is the name of a space of n chains.
func spaceOf(n int) string { return fmt.Sprintf("ch-%d sp", n) }

func isSpace(name string) bool { return len(name) > 3 && name[:3] == "ch-" }
