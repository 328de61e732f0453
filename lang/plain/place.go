package plain

import (
	"strings"

	"stitchproof/lang/inflect"
	"stitchproof/lang/syntax"
)

// in says where stitches go.
func (s *speaker) in(p syntax.Place) string {
	switch p.Prep {
	case syntax.AroundPost:
		return "around the post of " + s.place(p)
	case syntax.Between:
		return "between " + s.place(p)
	case syntax.Under:
		return "under " + s.place(p)
	}
	return "in " + s.place(p)
}

// span names places that are taken together.
func (s *speaker) span(p syntax.Place) string { return strings.TrimPrefix(s.place(p), "each of ") }

// place names a place, or each of several.
func (s *speaker) place(p syntax.Place) string {
	each := p.Each && !p.Number.Written() || p.Pick == syntax.PickNext && !p.Number.Written() && p.To.Kind != syntax.ToNothing
	noun := s.nouns(p, each)
	out := s.picked(p, each, noun)
	out += origins[p.From]
	if p.Of != nil {
		out += " of " + s.place(*p.Of)
	}
	if p.Noun.Kind != syntax.NounMarker {
		out += after(" of ", s.row.AsWritten(p.Name))
	} else {
		out += after(" ", s.row.AsWritten(p.Name))
	}
	out += numbered(" of row ", p.Row)
	switch {
	case p.Below == 1:
		out += " of the row below"
	case p.Below > 1:
		out += " " + amount(syntax.One(p.Below), "row") + " below"
	}
	out += when(p.Elsewhere, " of other work")
	if p.Loop != syntax.BothLoops {
		out += ", " + loops[p.Loop]
	}
	return out + s.extent(p, each)
}

// picked says which of a thing are meant.
func (s *speaker) picked(p syntax.Place, each bool, noun string) string {
	number := p.Number.String()
	several := func(pick string) string {
		if p.Number.Written() && !p.Number.Equal(syntax.One(1)) {
			if p.Prep == syntax.Between {
				return "the " + pick + number + " " + noun
			}
			return "each of the " + pick + number + " " + noun
		}
		return strings.TrimSpace("the "+pick) + " " + noun
	}
	switch p.Pick {
	case syntax.PickSame:
		return several("same ")
	case syntax.PickFirst:
		return several("first ")
	case syntax.PickLast:
		return several("last ")
	case syntax.PickNth:
		if p.Each && p.From == syntax.FromHere && p.Of == nil {
			return "every " + syntax.Nth(p.Nth) + " " + noun + when(p.Odd, ", from the first on")
		}
		return several(syntax.Nth(max(p.Nth, 1)) + " ")
	case syntax.PickAny:
		return "any " + noun
	case syntax.PickRemaining:
		return "each of the remaining " + strings.TrimSpace(number+" "+noun)
	case syntax.PickPrevious:
		return several("skipped ")
	}
	if each {
		return "each " + noun
	}
	if oneOfAKind[p.Noun.Kind] && !p.Number.Written() {
		return "the " + noun
	}
	return several("next ")
}

// oneOfAKind are the things of which work has but one: no next one is meant.
var oneOfAKind = map[syntax.NounKind]bool{
	syntax.NounRing: true, syntax.NounEdge: true, syntax.NounOther: true, syntax.NounTurning: true, syntax.NounBase: true, syntax.NounJoin: true,
	syntax.NounTip: true, syntax.NounMarker: true,
}

// nouns names what a place is of.
func (s *speaker) nouns(p syntax.Place, each bool) string {
	one := !plural(p.Number) && p.Pick != syntax.PickRemaining
	name := func(n syntax.Noun) string {
		if one {
			return s.noun(n)
		}
		return inflect.Plural(s.noun(n))
	}
	out := name(p.Noun)
	for _, also := range p.Also {
		out += " and " + name(also)
	}
	if p.Center {
		out = "middle " + out
	}
	return out
}

// extent says how far an `each` goes.
func (s *speaker) extent(p syntax.Place, each bool) string {
	switch p.To.Kind {
	case syntax.ToTheEnd:
		return " to the end"
	case syntax.ToLastN:
		return " before the last " + s.things(p.To.Number, p.To.Noun)
	case syntax.ToMarker:
		if p.To.Number.Written() {
			return " to " + amount(p.To.Number, "stitch") + " before the marker"
		}
		return " before the marker"
	case syntax.ToNext:
		return " before the next " + s.noun(p.To.Noun)
	case syntax.ToMeasure:
		return " until a length is reached"
	}
	return when(each && p.Pick == syntax.PickNext, " to the end")
}

// noun names one thing.
func (s *speaker) noun(n syntax.Noun) string {
	switch n.Kind {
	case syntax.NounStitch:
		return s.stitch(n.Stitch)
	case syntax.NounSpace:
		out := "space"
		if n.Length.Written() {
			out = "ch-" + n.Length.String() + " space"
		}
		return when(n.Word == "corner", "corner ") + out
	case syntax.NounTurning:
		return "turning chain" + numbered(" of ", n.Length)
	case syntax.NounGroup:
		if n.Word != "" {
			return n.Word
		}
	}
	return nounNames[n.Kind]
}

// things counts things of a kind; a number that is not written is one.
func (s *speaker) things(n syntax.Num, noun syntax.Noun) string {
	return amount(n, s.noun(noun))
}

var (
	loops   = map[syntax.Loop]string{syntax.BothLoops: "both loops", syntax.BackLoop: "in the back loop only", syntax.FrontLoop: "in the front loop only", syntax.ThirdLoop: "in the third loop"}
	origins = map[syntax.From]string{
		syntax.FromHook: " from the hook", syntax.FromBeginning: " from the beginning", syntax.FromEnd: " from the end",
	}
	nounNames = map[syntax.NounKind]string{
		syntax.NounNone: "stitch", syntax.NounAny: "stitch", syntax.NounChain: "chain", syntax.NounCorner: "corner",
		syntax.NounRing: "ring", syntax.NounRowEnd: "row end", syntax.NounEdge: "edge",
		syntax.NounOther: "other side", syntax.NounGroup: "group", syntax.NounMarker: "marked stitch", syntax.NounBase: "base",
		syntax.NounRow: "row", syntax.NounJoin: "joining stitch", syntax.NounTip: "top",
	}
)
