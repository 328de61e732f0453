package house

import (
	"stitchproof/lang/inflect"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// runs is how stitches are told that are worked one in each.
var runs = Aspect{
	Name: "run", About: "one stitch in each of several",
	Ways: []string{inNext, inEach, numberFirst, numberLast}, find: (*reader).runs,
}

// The ways to tell of one stitch in each of several.
const (
	inNext      = "sc in next 5 sts"
	inEach      = "sc in each of next 5 sts"
	numberFirst = "5 sc"
	numberLast  = "sc 5"
)

func (r *reader) runs() {
	begins := true
	var visit func([]syntax.Clause)
	visit = func(list []syntax.Clause) {
		for _, c := range list {
			switch n := c.Node.(type) {
			case *syntax.Work:
				r.run(c, n, begins)
			case *syntax.Repeat:
				visit(n.Body)
				visit(n.Ending)
			case *syntax.Bracket:
				visit(n.Body)
			}
			begins = c.Sep == syntax.SepStop
		}
	}
	visit(r.row.Tree.Clauses)
}

// run notes a clause that works stitches one in each, and says nothing else.
func (r *reader) run(c syntax.Clause, n *syntax.Work, begins bool) {
	number, only := n.InTurn()
	k := n.Stitch.Meaning.In(r.fabric.Dialect)
	if !only || k == nil || k.Class != stitch.Plain && k.Class != stitch.Slip && k.Class != stitch.Post {
		return
	}
	if r.row.Stated != nil && r.row.StatedAt.Covers(c.Span) {
		return // a count without brackets
	}
	bare := *n
	bare.Stitch, bare.Number, bare.Places = syntax.StitchRef{}, syntax.Num{}, nil
	if !bareStep(&bare) {
		return
	}
	name, ok := r.stitchName(c, number)
	if !ok {
		return
	}
	many := number.Written() && !number.Equal(syntax.One(1))
	first := r.row.Tree.Source(c.Span)[0]
	capital := begins && first >= '0' && first <= '9' || first >= 'A' && first <= 'Z'
	ways := make([]string, len(r.aspect.Ways))
	amount := r.amount(c, number)
	for i, way := range r.aspect.Ways {
		if ways[i] = inWay(way, name, amount, many); capital {
			ways[i] = inflect.Capital(ways[i])
		}
	}
	r.use(c.Span, ways...)
}

// bareStep tells whether nothing is said of how a step is worked.
func bareStep(n *syntax.Work) bool {
	return n.Loop == syntax.BothLoops && n.Yarn == "" && !n.Times.Written() && !n.Evenly && !n.Joins && !n.Picot && !n.HeldBack &&
		!n.Counts.Said && !n.Between.Chains.Written()
}

// stitchName is the stitch of a clause as the pattern writes it, in the singular.
// Words that are not its usual name are not understood well enough to move.
func (r *reader) stitchName(c syntax.Clause, number syntax.Num) (string, bool) {
	for _, t := range r.tokens(c.Span) {
		if t.Kind != syntax.Stitch {
			continue
		}
		term := t.Stitch.In(r.fabric.Dialect).Term(r.fabric.Dialect)
		switch word := lower(r.row.Tree.Source(t.Span)); word {
		case lower(term.Abbr):
			return term.Abbr, true
		case lower(term.Name), lower(term.Plural):
			return term.Name, true
		}
	}
	return "", false
}

// amount is a number of a clause in figures. One for some of the sizes has a value for
// them alone: it is as the pattern writes it.
func (r *reader) amount(c syntax.Clause, number syntax.Num) string {
	for _, t := range r.tokens(c.Span) {
		if t.Kind == syntax.Number && number.PerSize() && r.row.Tree.Only != nil {
			return r.row.Tree.Source(t.Span)
		}
	}
	return number.String()
}

// inWay writes a run of stitches in one way.
func inWay(way, name, number string, many bool) string {
	switch {
	case way == numberFirst && many:
		return number + " " + name
	case way == numberLast && many:
		return name + " " + number
	case way == numberFirst || way == numberLast:
		return name
	case !many:
		return name + " in next st"
	case way == inEach:
		return name + " in each of next " + number + " sts"
	}
	return name + " in next " + number + " sts"
}
