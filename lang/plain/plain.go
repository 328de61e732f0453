// Package plain says in plain words what each clause of an instruction was read
// as, so that a writer can see whether the words were understood as meant:
// `sc 5` is "5 sc, one in each of the next 5 stitches". It says only what the
// tree holds; what the clause then makes is the engine's to say.
package plain

import (
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// Reading is what one clause was read as.
type Reading struct {
	// Span is the clause's, relative to its row.
	Span source.Span
	// Words say it, without a full stop.
	Words string
	// Steps are the clauses within it, of a repeat, a group or brackets, in the
	// order worked.
	Steps []Reading
}

// Of reads clauses of a row, naming stitches in a dialect's words.
func Of(row *syntax.Row, clauses []syntax.Clause, d stitch.Dialect) []Reading {
	return (&speaker{row: row, dialect: d}).list(clauses)
}

// Line says readings in one line, "" for none.
func Line(readings []Reading) string {
	said := make([]string, len(readings))
	for i, r := range readings {
		said[i] = r.String()
	}
	return strings.Join(said, "; ")
}

// String is the reading in one line, its steps in brackets.
func (r Reading) String() string {
	if len(r.Steps) == 0 {
		return r.Words
	}
	return r.Words + " [" + Line(r.Steps) + "]"
}

// speaker says clauses.
type speaker struct {
	row     *syntax.Row
	dialect stitch.Dialect
	// here is set inside a group, whose stitches all go in one place.
	here bool
}

func (s *speaker) list(clauses []syntax.Clause) []Reading {
	var out []Reading
	for _, c := range clauses {
		if b, ok := c.Node.(*syntax.Bracket); ok && b.Total == nil {
			out = append(out, s.list(b.Body)...) // brackets that nothing is said of only hold their steps together
			continue
		}
		r := s.clause(c)
		if yarn, ok := c.Node.(*syntax.Yarn); ok && yarn.Before && len(out) > 0 {
			last := out[len(out)-1]
			out = append(out[:len(out)-1], r, last) // `sc in next 3 sts with B`: the yarn is taken up first
			continue
		}
		out = append(out, r)
	}
	return out
}

// within reads what a group holds.
func (s *speaker) within(clauses []syntax.Clause) []Reading {
	inside := *s
	inside.here = true
	return inside.list(clauses)
}

func (s *speaker) clause(c syntax.Clause) Reading {
	r := Reading{Span: c.Span}
	switch n := c.Node.(type) {
	case *syntax.Group:
		r.Words, r.Steps = s.group(n), s.within(n.Body)
	case *syntax.Work:
		r.Words, r.Steps = s.work(n), s.within(n.Body)
	case *syntax.Bracket:
		r.Words, r.Steps = s.bracket(n), s.list(n.Body)
	case *syntax.Repeat:
		r.Words, r.Steps = s.repeat(n), s.list(n.Body)
		if len(n.Ending) > 0 {
			ending := "after the last time"
			if n.Replaces {
				ending = "the last time, in the place of its last step"
			}
			r.Steps = append(r.Steps, Reading{Span: c.Span, Words: ending, Steps: s.list(n.Ending)})
		}
	case *syntax.Ending:
		r.Words = s.ending(n)
		if n.Step != nil {
			r.Steps = []Reading{s.clause(syntax.Clause{Span: c.Span, Node: n.Step})}
		}
	case *syntax.PlaceFirst:
		r.Words = "all " + s.in(n.Place)
		r.Steps = []Reading{s.clause(syntax.Clause{Span: c.Span, Node: n.First})}
	default:
		r.Words = s.step(c.Node)
	}
	return r
}
