package plain

import (
	"strconv"
	"strings"

	"stitchproof/lang/syntax"
)

// group says where the clauses of a group go.
func (s *speaker) group(n *syntax.Group) string {
	where := make([]string, len(n.Places))
	for i, p := range n.Places {
		where[i] = s.in(p)
	}
	out := "all " + strings.Join(where, " and ")
	if n.Between.Written() {
		out += ", with " + amount(n.Between, "chain") + " between the stitches"
	}
	return out + when(n.Corner, ", which makes a corner")
}

func (s *speaker) bracket(n *syntax.Bracket) string {
	return "once, or " + s.total(n.Total)
}

// repeat says how often, and how it ends.
func (s *speaker) repeat(n *syntax.Repeat) string {
	out := when(n.ByTurns, "by turns"+when(n.First > 0, ", from step "+strconv.Itoa(n.First+1)+" on")+", ") + strings.TrimSpace(s.limit("", n.Limit, n.Number, n.Last))
	if n.Limit == syntax.TimesOrAll && !n.Starred {
		out += " (as brackets have it)"
	}
	if n.Whole {
		out += ", the whole of what stands before"
	}
	if n.StopAt >= 0 && n.Stops {
		out += ", the last time only as far as step " + strconv.Itoa(n.StopAt)
	} else if n.StopAt >= 0 {
		out += ", with a mark after step " + strconv.Itoa(n.StopAt)
	}
	if n.Omits != nil {
		out += ", the last time without the last " + s.clause(syntax.Clause{Node: n.Omits}).String()
	}
	return out + when(n.Mirrored, ", ending as the row began, the other way round")
}

func (s *speaker) ending(n *syntax.Ending) string {
	out := "end"
	switch {
	case n.Mirrored:
		out = "end as the row began, the other way round"
	case n.Last:
		out = "end the last repeat"
	case n.Omits:
		out = "leave out of the last repeat"
	}
	return out + after(" at ", n.StopAt) + when(n.Step != nil, " with")
}

// limit says how a repeat ends, behind a lead where it says anything.
func (s *speaker) limit(lead string, limit syntax.Limit, n syntax.Num, last syntax.Place) string {
	switch limit {
	case syntax.Unstated:
		return lead + "repeated to the end, as nothing else is said"
	case syntax.Times:
		return lead + n.Often() + " in all"
	case syntax.More:
		return lead + "once and then " + n.Often() + " more"
	case syntax.TimesOrAll:
		return lead + n.Often() + ", more or in all as the counts decide"
	case syntax.ToEnd:
		return lead + "repeated to the end"
	case syntax.ToPlace:
		return lead + "repeated as far as the next " + s.noun(last.Noun)
	case syntax.ToLast:
		return lead + "repeated as far as " + s.span(last)
	}
	return lead + "repeated until a length or a place is reached"
}
