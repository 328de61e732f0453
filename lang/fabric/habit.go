package fabric

import (
	"slices"

	"stitchproof/lang/syntax"
)

// A writer who leaves something unsaid leaves it unsaid in every row. What is
// meant shows over a whole piece, so a piece that does not come out under the
// trade's defaults is worked again under each other habit that would explain
// it.

// habit is what a writer is taken to mean throughout a piece, against the
// default.
type habit struct {
	readings Reading
	turning  map[turningKey]bool // beginning chains that are, or are not, a stitch
	suppose  supposition
}

// turningKey is a beginning chain: so many chains before a stitch.
type turningKey struct {
	stitch string
	chains int
}

// maxHabits bounds how often a piece is worked again.
const maxHabits = 8

// workedByHabit works a piece under the habit that explains its counts best,
// the default where it does.
func workedByHabit(f *Fabric, w *words, tree *syntax.Piece, before []crew) (*Piece, crew) {
	of := habit{suppose: suppose(f, w, tree, before)}
	best, ends := workPiece(f, w, tree, before, of)
	tries := 0
	for best.misfit() > 0 {
		was := best
		for _, other := range ends.habits(of) {
			if tries++; tries > maxHabits {
				break
			}
			if p, c := workPiece(f, w, tree, before, other); p.misfit() < best.misfit() && !contradicts(p, best) {
				best, ends, of = p, c, other
			}
		}
		if best == was {
			break
		}
	}
	decideLater(f, w, best, before, of)
	return best, ends
}

// decideLater looks whether later rows decide what a row leaves undecided: they
// would not fit if it were taken the other way.
func decideLater(f *Fabric, w *words, p *Piece, before []crew, of habit) {
	var open Reading
	for _, row := range p.Rows {
		for i := range row.Tallies {
			open |= row.Tallies[i].Undecided
		}
	}
	for _, flip := range flips(open) {
		other, _ := workPiece(f, w, p.Tree, before, habit{of.readings ^ flip, of.turning, of.suppose})
		if other.misfit() <= p.misfit() {
			continue
		}
		for _, row := range p.Rows {
			for i := range row.Tallies {
				row.Tallies[i].Undecided &^= flip
			}
		}
	}
}

// habits lists those that differ from a habit in one thing that the piece met.
func (c crew) habits(of habit) []habit {
	var out []habit
	for _, key := range c.tall() {
		out = append(out, habit{of.readings, with(of.turning, key, !of.turning[key]), of.suppose})
	}
	for _, flip := range flips(c.taken()) {
		out = append(out, habit{of.readings ^ flip, of.turning, of.suppose})
	}
	return out
}

// tall lists the beginning chains met of which nothing says whether they count.
func (c crew) tall() []turningKey {
	var out []turningKey
	for _, k := range c {
		for _, key := range k.h.tall {
			if !slices.Contains(out, key) {
				out = append(out, key)
			}
		}
	}
	return out
}

// taken are the readings that rows of the piece took against the default, and
// the ways of counting that would explain what two rows or more state, or that they
// come out by alone: one may be a slip.
func (c crew) taken() Reading {
	var met, once, twice Reading
	for i := range c[0].piece.Rows {
		var explained Reading
		for _, k := range c {
			t := &k.piece.Rows[i].Tallies[k.size]
			met |= t.Readings &^ wholePiece
			explained |= t.Explained | t.Readings&ReadCountsChains
		}
		twice |= once & explained
		once |= explained
	}
	if c[0].h.saysTurning() {
		twice &^= ReadOmitsTurning // a chain that is said to count is counted
	}
	return met | twice
}

// saysTurning tells whether some row said that its beginning chain counts.
func (h *hand) saysTurning() bool {
	for _, rule := range h.rules.all() {
		if rule.counts {
			return true
		}
	}
	return false
}

// misfit is how badly a piece fits what it says of itself.
func (p *Piece) misfit() int {
	total := 0
	for _, row := range p.Rows {
		total += row.Misfit()
	}
	return total
}

// Misfit is how badly the row fits what it says of itself and what lies below,
// in all sizes together; 0 where it comes out right.
func (r *Row) Misfit() int {
	total := 0
	for i := range r.Tallies {
		total += r.Tallies[i].Misfit()
	}
	return total
}

// Misfit is how badly the row fits in one size. One that works and cannot be counted does
// not fit, though nothing in it is wrong.
func (t *Tally) Misfit() int {
	total := t.cost()
	if !t.Known && t.Works {
		total++
	}
	return total
}

// contradicts tells whether a count that agrees under one habit does not
// under another.
func contradicts(other, p *Piece) bool {
	for r, row := range p.Rows {
		for i := range row.Tallies {
			if row.Tallies[i].Agrees() == Agrees && other.Rows[r].Tallies[i].Agrees() != Agrees {
				return true
			}
		}
	}
	return false
}
