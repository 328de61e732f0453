package fabric

import (
	"maps"
	"slices"

	"stitchproof/lang/syntax"
)

// A row that came out wrong can be tried in other words on the very work that
// it stood on, as a maker tries on a swatch what a row may mean.

// maxStages bounds the wrong rows of a piece that can be tried again: what
// came before is kept for each, and a piece with more of them has another
// trouble than a slip here and there.
const maxStages = 50

// stage is the state of the work before a row, one worker a size.
type stage []worker

// copied is a stage to go on from, which leaves this one as it is. Later rows
// may be noted already: they are forgotten.
func (g stage) copied() stage {
	out := slices.Clone(g)
	for i := range out {
		k := &out[i]
		k.last, k.h = slices.Clip(k.last), k.h.forked()
		rows, done, made := maps.Clone(k.rows), maps.Clone(k.h.done), len(k.h.earlier)
		maps.DeleteFunc(done, func(n int, base []int) bool {
			later := len(base) > 0 && base[0] >= made
			if later {
				delete(rows, n)
			}
			return later
		})
		k.rows, k.h.done = rows, done
	}
	return out
}

// keeper keeps the stage before the rows that come out wrong and before those that
// lie below them.
type keeper struct {
	kept        int
	here, below stage // before the row at work, and before the one below
	lower       *Row
}

// before looks at the work before a row.
func (g *keeper) before(row *Row, c crew) {
	if row.Index > 0 && g.lower == row.Piece.Rows[row.Index-1] {
		g.here, g.below = g.below, g.here
	}
	g.here = g.here[:0]
	for _, k := range c {
		g.here = append(g.here, *k)
	}
}

// after keeps it if the row came out wrong.
func (g *keeper) after(row *Row) {
	if g.kept < maxStages && row.Misfit() > 0 {
		g.kept++
		row.stage = g.here.copied()
		if g.lower != nil && g.lower.stage == nil {
			g.lower.stage = g.below.copied()
		}
	}
	if row.Works() || lays(row.Tree.Clauses) {
		g.lower = row
	}
}

// Swatch is the work before a row, to try words on. What is tried is no part of
// the fabric, and one trial follows the other: no two at a time.
type Swatch struct {
	row   *Row
	stage stage
}

// spare is room for the stitches of a trial; a longer one finds its own.
const spare = 512

// Swatch is the work before a row that came out wrong or lies below one that
// did, nil where it is not kept.
func (f *Fabric) Swatch(r *Row) *Swatch {
	if r.stage == nil {
		return nil
	}
	g := r.stage.copied()
	at := slices.Index(f.Pieces, r.Piece)
	for i := range g {
		g[i].fabric, g[i].piece = f, r.Piece
		if at > 0 {
			g[i].above = f.ends[at-1][i]
		}
		h := &g[i].h // its stitches are followed by others in the fabric
		h.earlier = slices.Grow(slices.Clone(h.earlier), spare)
	}
	return &Swatch{r, g}
}

// work works the row in some words, on a crew that goes on from there.
func (s *Swatch) work(tree *syntax.Row) (*Row, crew) {
	g := s.stage.copied()
	c := make(crew, len(g))
	for i := range g {
		c[i] = &g[i]
		c[i].h.earlier = s.stage[i].h.earlier // with its room: the stitches of the trial before are written over
		if every := g[i].every; every != nil {
			own := *every // how often it comes is counted as it is worked
			own.Repeats = slices.Clone(every.Repeats)
			g[i].every = &own
		}
	}
	row := newRow(s.row.Piece, s.row.Index, tree, len(c))
	c.instruction(row)
	return row, c
}

// linesAfter is how many lines after a row are asked whether it is right. The
// next row of most patterns can tell; a few lines may only tie or turn.
const linesAfter = 4

// after gives the lines of the piece that come after the row.
func (s *Swatch) after() []*Row {
	rest := s.row.Piece.Rows[s.row.Index+1:]
	return rest[:min(len(rest), linesAfter)]
}

// Try works the row in other words and, if it comes out right, goes on with the
// lines after it as long as none comes out worse than it did in the fabric. It
// gives the rows worked, the row itself first, and whether that was all of them.
func (s *Swatch) Try(tree *syntax.Row) (rows []*Row, all bool) {
	row, c := s.work(tree)
	rows = append(rows, row)
	if row.Misfit() > 0 {
		return rows, false
	}
	for _, was := range s.after() {
		next := newRow(was.Piece, was.Index, was.Tree, len(c))
		c.instruction(next)
		rows = append(rows, next)
		if next.Misfit() > was.Misfit() {
			return rows, false
		}
	}
	return rows, true
}

// Bearing is what the lines after a row show of it.
type Bearing uint8

// The bearings.
const (
	BearsNeither Bearing = iota // they fit both counts alike, or it cannot be told
	BearsMade                   // they fit what the row makes
	BearsStated                 // they fit what the row states
)

// Bears tells which count the lines after a row fit, where the row makes another
// number of some stitch than it states. The stated number is tried with the
// stitches that it has more or fewer spread over the row, and all at its end:
// nobody knows where they belong.
func (s *Swatch) Bears() Bearing {
	part := s.disagreeing()
	if part < 0 {
		return BearsNeither
	}
	made, _ := s.misfitOn(func(*worker) bool { return true })
	stated := -1
	for _, spread := range []bool{true, false} {
		misfit, ok := s.misfitOn(func(k *worker) bool { return k.recount(s.row, part, spread) })
		if !ok {
			return BearsNeither
		}
		if stated < 0 || misfit < stated {
			stated = misfit
		}
	}
	switch {
	case made < stated:
		return BearsMade
	case stated < made:
		return BearsStated
	}
	return BearsNeither
}

// disagreeing is the one part of the stated count that disagrees, -1 where it
// is not one or counts no stitches.
func (s *Swatch) disagreeing() int {
	found := -1
	for size := range s.row.Tallies {
		for i, c := range s.row.Tallies[size].Compared {
			switch {
			case c.Result != Disagrees || i == found:
			case found >= 0:
				return -1
			default:
				found = i
			}
		}
	}
	if found < 0 {
		return -1
	}
	switch s.row.Stated.Parts[found].Noun.Kind {
	case syntax.NounNone, syntax.NounAny, syntax.NounStitch:
		return found
	}
	return -1
}

// misfitOn is how badly the lines after the row fit on some ground laid in the
// stead of the row; false where it cannot be laid.
func (s *Swatch) misfitOn(lay func(*worker) bool) (int, bool) {
	c := s.laid(lay)
	if c == nil {
		return 0, false
	}
	total := 0
	for _, was := range s.after() {
		next := newRow(was.Piece, was.Index, was.Tree, len(c))
		c.instruction(next)
		total += next.Misfit()
	}
	return total, true
}

// laid works the row and lays some ground in its stead, nil where it cannot be laid.
func (s *Swatch) laid(lay func(*worker) bool) crew {
	_, c := s.work(s.row.Tree)
	for _, k := range c {
		k.heal = nil
		if !lay(k) {
			return nil
		}
	}
	return c
}

// OnStated gives a later line as it comes out where the row makes the number of
// stitches that it states: those that it has more or fewer spread over the row, and
// all at its end. It gives nothing where that number cannot be laid, where the line is
// far away, and where not all that it is worked on are stitches: of spaces a number
// does not tell where they are.
func (s *Swatch) OnStated(line *Row) []*Row {
	part := s.disagreeing()
	if at := line.Index - s.row.Index; part < 0 || at < 1 || at > linesAfter {
		return nil
	}
	var out []*Row
	for _, spread := range []bool{true, false} {
		c := s.laid(func(k *worker) bool { return k.recount(s.row, part, spread) })
		if c == nil {
			return nil
		}
		for _, was := range s.after() {
			if was == line && slices.ContainsFunc(c, (*worker).onSpaces) {
				return nil
			}
			next := newRow(was.Piece, was.Index, was.Tree, len(c))
			c.instruction(next)
			if was == line {
				out = append(out, next)
				break
			}
		}
	}
	return out
}

// onSpaces tells whether the row at work lies over spaces.
func (k *worker) onSpaces() bool {
	return slices.ContainsFunc(k.h.base, func(i int) bool { return k.h.stitch(i).IsSpace() })
}

// recount makes the stitches of the row below as many as a part of its stated
// count says.
func (k *worker) recount(row *Row, part int, spread bool) bool {
	compared := row.Tallies[k.size].Compared
	if part >= len(compared) {
		return false // the row was not counted in this size
	}
	c := compared[part]
	var of []int // places that are counted
	for i, at := range k.h.base {
		if s := k.h.stitch(at); !s.IsSpace() && k.h.accepts(s, row.Stated.Parts[part].Noun) {
			of = append(of, i)
		}
	}
	more := c.Stated - c.Made
	if more > len(of) || -more >= len(of) {
		return false
	}
	change := make([]int, len(k.h.base)) // how many more of each place
	for n := range max(more, -more) {
		i := len(of) - 1 - n
		if spread {
			i = n * len(of) / max(more, -more)
		}
		change[of[i]] = 1
		if more < 0 {
			change[of[i]] = -1
		}
	}
	var base []int
	for i, at := range k.h.base {
		for range 1 + change[i] {
			base = append(base, at)
		}
	}
	k.h.standOn(base)
	return true
}
