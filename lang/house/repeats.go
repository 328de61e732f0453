package house

import (
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// repeats is how a repeat is marked.
var repeats = Aspect{
	Name: "repeat", About: "marking a repeat",
	Ways: []string{inSquare, inRound, inStars}, find: (*reader).repeats,
}

// The ways to mark a repeat.
const (
	inSquare = "[sc, inc] 6 times"
	inRound  = "(sc, inc) 6 times"
	inStars  = "*sc, inc; rep from * 5 more times"
)

func (r *reader) repeats() {
	for _, c := range r.row.Tree.Clauses {
		if n, ok := c.Node.(*syntax.Repeat); ok && !n.Whole && !n.ByTurns && !n.Mirrored && n.StopAt < 0 && len(n.Ending) == 0 && len(n.Body) > 0 {
			r.repeat(c, n)
		}
	}
}

// repeat notes a repeat whose limit each way can say, and within which no other
// stands.
func (r *reader) repeat(c syntax.Clause, n *syntax.Repeat) {
	nested := false
	syntax.Walk(n.Body, func(c syntax.Clause) {
		switch c.Node.(type) {
		case *syntax.Repeat, *syntax.Bracket, *syntax.Group:
			nested = true
		}
	})
	body := source.Span{Start: n.Body[0].Span.Start, End: n.Body[len(n.Body)-1].Span.End}
	whole, more, ok := r.limits(n)
	if nested || !ok || !c.Span.Covers(body) {
		return
	}
	steps := r.row.Tree.Source(body)
	r.use(c.Span, "["+steps+"] "+whole, "("+steps+") "+whole, "*"+steps+"; rep from * "+more)
}

// limits says how a repeat ends behind brackets, and behind a star, whose steps
// are worked once before they are repeated.
func (r *reader) limits(n *syntax.Repeat) (whole, more string, ok bool) {
	times := n.Number
	switch n.Limit {
	case syntax.Times:
	case syntax.More:
		times = syntax.Num{Vals: make([]int, len(n.Number.Vals))}
		for i, v := range n.Number.Vals {
			times.Vals[i] = v + 1
		}
	case syntax.ToEnd:
		if r.row.Round {
			return "around", "around", true
		}
		return "across", "across", true
	default:
		return "", "", false
	}
	again := syntax.Num{Vals: make([]int, len(times.Vals))}
	for i, v := range times.Vals {
		if v < 2 {
			return "", "", false // a star is worked at least once, and once more
		}
		again.Vals[i] = v - 1
	}
	return times.Often(), moreOften(again), len(times.Vals) > 0
}

func moreOften(n syntax.Num) string {
	if n.Equal(syntax.One(1)) {
		return "once more"
	}
	return n.String() + " more times"
}
