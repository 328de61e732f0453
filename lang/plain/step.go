package plain

import (
	"cmp"
	"strconv"
	"strings"

	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// step says a clause that holds no others.
func (s *speaker) step(node syntax.Node) string {
	switch n := node.(type) {
	case *syntax.Work:
		return s.work(n)
	case *syntax.Chain:
		return s.chain(n)
	case *syntax.Skip:
		return "skip " + s.span(n.Place)
	case *syntax.Leave:
		if n.Told {
			return "how many chains are left by now: " + n.Place.Number.String()
		}
		return "leave " + s.span(n.Place) + " unworked"
	case *syntax.Join:
		return s.join(n)
	case *syntax.Turn:
		return turn(n)
	case *syntax.Yarn:
		return s.yarn(n)
	case *syntax.Marker:
		return marker(n)
	case *syntax.Rows:
		return s.rows(n)
	case *syntax.Total:
		return s.total(n)
	case *syntax.CountsNote:
		return "the beginning chain is " + s.counts(n.Counts)
	case *syntax.LoopNote:
		return "what follows is worked in " + loops[n.Loop] + numbered(" of row ", n.Row)
	case *syntax.Shaping:
		return shaping(n)
	case *syntax.Finish:
		return "fasten off" + after(" yarn ", s.row.AsWritten(n.Yarn)) + when(n.LongTail, ", leaving a long tail")
	case *syntax.MakeUp:
		return "handwork, in which no stitch is counted" + when(n.LongTail, ", with the long tail")
	case *syntax.Even:
		return s.even(n)
	case *syntax.Long:
		return "so for " + amount(n.Rows, "row")
	case *syntax.Branch:
		return "begin a branch" + after(" called ", s.row.AsWritten(n.Name))
	case *syntax.Return:
		return s.comeBack(n)
	case *syntax.RepeatBranch:
		return "make branch " + s.row.AsWritten(n.Name) + " again, " + n.Number.Often()
	case *syntax.PassBranch:
		if n.Name == "" {
			return "leave the branches unworked"
		}
		return "leave branch " + s.row.AsWritten(n.Name) + " unworked"
	case *syntax.GoBack:
		return "go back and work along row " + n.Row.String()
	case *syntax.Made:
		return "what was just worked is 1 " + s.stitch(n.Stitch)
	case *syntax.Spacing:
		return "with " + amount(n.Chains, "chain") + " between" + when(n.All, " all of them")
	case *syntax.Mark:
		return "the mark " + n.Text + ", from which nothing is repeated"
	case *syntax.RepeatFrom:
		return "repeat from " + n.From + after(" to ", n.To) + s.limit(" ", n.Limit, n.Number, n.Last)
	case *syntax.Side:
		if n.Wrong {
			return "the wrong side faces"
		}
		return "the right side faces"
	}
	return said(node)
}

// said says the clauses that are always said alike.
func said(node syntax.Node) string {
	switch node.(type) {
	case *syntax.NoJoin:
		return "leave the round open"
	case *syntax.MagicRing:
		return "make a ring to work into"
	case *syntax.Along:
		return "what follows goes along the row ends"
	case *syntax.HeldBack:
		return "close the stitches together into one"
	case *syntax.Likewise:
		return "go on in the same way: nothing is counted"
	case *syntax.Motion:
		return "how the hook and the yarn move"
	case *syntax.Remark:
		return "a remark: nothing is counted"
	}
	return "not understood, so the row is not counted from here on"
}

// work says stitches: how many, in how many places.
func (s *speaker) work(n *syntax.Work) string {
	name := s.stitch(n.Stitch)
	out := s.stitches(n, name)
	out += when(n.Loop != syntax.BothLoops, ", "+loops[n.Loop])
	out += after(", in ", s.row.AsWritten(n.Yarn))
	out += when(n.Evenly, ", spread evenly")
	out += when(n.HeldBack, ", closed together into one")
	if n.Between.Chains.Written() {
		out += ", with " + amount(n.Between.Chains, "chain") + " between" + when(n.Between.All, " all of them")
	}
	if n.Times.Written() {
		out = n.Times.Often() + ": " + out
	}
	out += when(n.Joins, ", which joins the round")
	out += when(n.Picot, ", which closes a picot")
	if n.Counts.Said {
		out += "; the chains skipped before it are " + s.counts(n.Counts)
	}
	return out
}

// stitches says how many stitches are worked where. Where no place is named
// each goes in the next one, and over as many as it takes.
func (s *speaker) stitches(n *syntax.Work, name string) string {
	figure := cmp.Or(n.Number.String(), "1") + " " + name
	if len(n.Places) == 0 && s.here {
		return figure
	}
	if run, ok := n.InTurn(); ok {
		return s.inTurn(run, name, s.takes(n.Stitch))
	}
	where := make([]string, len(n.Places))
	for i, p := range n.Places {
		p.Loop = syntax.BothLoops // said of the stitch
		where[i] = s.in(p)
		if s.takes(n.Stitch) > 1 && plural(p.Number) {
			where[i] = "over " + s.span(p)
		}
	}
	return figure + " " + strings.Join(where, " and ")
}

// inTurn says a run of stitches.
func (s *speaker) inTurn(n syntax.Num, name string, takes int) string {
	switch {
	case takes > 1 && !plural(n):
		return "1 " + name + " over the next " + strconv.Itoa(takes) + " stitches"
	case takes > 1:
		return n.String() + " " + name + ", each over the next " + strconv.Itoa(takes) + " stitches"
	case plural(n):
		return n.String() + " " + name + ", one in each of the next " + n.String() + " stitches"
	}
	return "1 " + name + " in the next stitch"
}

// takes is how many stitches of the row below one stitch takes, 1 where that
// is not known.
func (s *speaker) takes(r syntax.StitchRef) int {
	if k := r.Meaning.In(s.dialect); k != nil {
		return k.Uses
	}
	return 1
}

// stitch names a stitch in the dialect's words, the pattern's own in its own.
func (s *speaker) stitch(r syntax.StitchRef) string {
	k := r.Meaning.In(s.dialect)
	switch {
	case k != nil:
		return k.Abbreviation(s.dialect)
	case r.Written():
		return s.row.AsWritten(r.Word)
	}
	return "more of the stitch before"
}

func (s *speaker) chain(n *syntax.Chain) string {
	out := amount(n.Number, "chain")
	if !n.Number.Written() {
		out = "chains, as many as it takes"
	}
	out += after(" to the ", n.Piece)
	out += numbered(", a multiple of ", n.Multiple) + numbered(" plus ", n.Plus)
	if n.Counts.Said {
		out += ", " + s.counts(n.Counts)
	}
	return out
}

// even says rows that go on without shaping: in the stitch that is named, else in whichever it is.
func (s *speaker) even(n *syntax.Even) string {
	out := "one stitch in each"
	if n.Stitch.Written() {
		out = "one " + s.stitch(n.Stitch) + " in each"
	}
	return out + numbered(" for ", n.Number) + when(n.Number.Written(), " rows") + ", without shaping"
}

// counts says what a beginning chain counts as.
func (s *speaker) counts(c syntax.Counts) string {
	out := "not counted"
	if len(c.As) > 0 {
		out = "counted as " + s.parts(c.As)
	}
	return out + when(c.Always, ", here and everywhere")
}

func (s *speaker) parts(parts []syntax.Part) string {
	out := make([]string, len(parts))
	for i, p := range parts {
		out[i] = s.things(p.Number, p.Noun)
		if p.Noun.Kind == syntax.NounNone {
			out[i] = p.Number.String() // of what is not said
		}
		out[i] += after(" on ", s.row.AsWritten(p.On)) + when(p.All, " in all") + when(p.Whole, " on all of the piece")
	}
	return strings.Join(out, " and ")
}

func (s *speaker) total(n *syntax.Total) string {
	switch {
	case n.Reached:
		return "the count that the work goes on to: " + s.parts(n.Parts)
	case n.Change > 0:
		return "the count it should come to: " + s.parts(n.Parts) + " more than the row below"
	case n.Change < 0:
		return "the count it should come to: " + s.parts(n.Parts) + " fewer than the row below"
	}
	return "the count it should come to: " + s.parts(n.Parts)
}

func (s *speaker) join(n *syntax.Join) string {
	if n.Ring {
		return "close " + ring(n) + " into a ring" + when(!n.Place.Empty(), " "+s.in(n.Place))
	}
	out := "close the round"
	if n.With.Written() && !s.slips(n.With) {
		out += " with 1 " + s.stitch(n.With)
	}
	if !n.Place.Empty() {
		out += " " + s.in(n.Place)
	}
	return out
}

// ring says what is closed into a ring.
func ring(n *syntax.Join) string {
	if n.Chains.Written() {
		return amount(n.Chains, "chain")
	}
	return "the chain"
}

func (s *speaker) slips(r syntax.StitchRef) bool {
	k := r.Meaning.In(s.dialect)
	return k != nil && k.Class == stitch.Slip
}

func turn(n *syntax.Turn) string {
	switch {
	case n.Not:
		return "do not turn"
	case n.OtherSide:
		return "go on along the other side" + when(n.Foundation, " of the foundation chain")
	case n.Rotate:
		return "turn the work to its side"
	}
	return "turn the work over"
}

func (s *speaker) yarn(n *syntax.Yarn) string {
	out := yarnActions[n.Action] + " " + cmp.Or(s.row.AsWritten(n.Yarn), "the yarn")
	if n.With.Written() && !s.slips(n.With) {
		out += " with 1 " + s.stitch(n.With)
	}
	if !n.Place.Empty() {
		out += " " + s.in(n.Place)
	}
	return out
}

var yarnActions = map[syntax.YarnAction]string{
	syntax.YarnUse: "go on with", syntax.YarnJoin: "join", syntax.YarnDrop: "drop", syntax.YarnCarry: "carry along",
}

func marker(n *syntax.Marker) string {
	which := "the last stitch made"
	switch {
	case n.All:
		return "move the markers up"
	case n.Nth == 1 && n.OfLast == 1:
	case n.Nth > 0 && n.OfLast > 0:
		which = "the " + syntax.Nth(n.Nth) + " of the last " + strconv.Itoa(n.OfLast) + " made"
	case n.Nth > 0:
		which = "the " + syntax.Nth(n.Nth) + " stitch of the row"
	case n.Skipped:
		which = "the stitch just skipped"
	}
	return "mark " + which
}

func shaping(n *syntax.Shaping) string {
	way := "more"
	if n.Less {
		way = "fewer"
	}
	return cmp.Or(n.Number.String(), "some") + " stitches " + way + ", at places left to the maker"
}

func (s *speaker) comeBack(n *syntax.Return) string {
	switch n.To {
	case "":
		return "come back to where the branch left"
	case "stem":
		return "come back to the stem"
	}
	return "come back to " + s.row.AsWritten(n.To)
}

// rows says which rows are worked again.
func (s *speaker) rows(n *syntax.Rows) string {
	spans := make([]string, len(n.List))
	for i, r := range n.List {
		spans[i] = r.From.String()
		if !r.To.Equal(r.From) {
			spans[i] += " to " + r.To.String()
		}
	}
	out := "work again"
	if len(spans) > 0 {
		several := len(spans) > 1 || !n.List[0].To.Equal(n.List[0].From)
		out += " row" + when(several, "s") + " " + strings.Join(spans, " and ")
	}
	out += numbered(" the last ", n.Last) + when(n.Last.Written(), " rows")
	if len(spans) > 0 {
		out += after(" of ", n.Piece)
	} else {
		out += after(" what was said of ", n.Piece)
	}
	out += numbered(" as far as row ", n.PieceRow) + after(" as far as ", n.Mark)
	if n.Long.Written() {
		out += ", one after the other, " + when(n.InAll, "until there are ") + when(!n.InAll, "for ") + amount(n.Long, "row")
	}
	if n.Limit != syntax.Times || !n.Number.Equal(syntax.One(1)) {
		out += s.limit(", ", n.Limit, n.Number, syntax.Place{})
	}
	return out + when(n.Changed, ", with the changes that are named")
}
