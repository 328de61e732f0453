package syntax_test

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// The normal form writes a tree so that two wordings of one meaning read
// alike: what a wording leaves out is filled in (`sc` is one in each of the
// next one stitch), and how it is spelled is left out. It is what the wording
// tables under testdata/phrasing give as the meaning of a line.

// normal writes clauses one after the other.
func normal(list []syntax.Clause) string { return (&writer{}).list(list) }

// writer writes the normal form of clauses.
type writer struct {
	// here is set inside a group, where stitches with no place all go in the
	// place of the group.
	here bool
}

func (w *writer) list(list []syntax.Clause) string {
	out := make([]string, len(list))
	for i, c := range list {
		out[i] = w.node(c.Node)
		if yarn, ok := c.Node.(*syntax.Yarn); ok && yarn.Before && i > 0 {
			out[i-1], out[i] = out[i], out[i-1] // `sc in next 3 sts with B`: the yarn is taken up first
		}
	}
	return strings.Join(out, ", ")
}

func (w *writer) body(list []syntax.Clause) string { return "{" + w.list(list) + "}" }

func (w *writer) node(node syntax.Node) string {
	switch n := node.(type) {
	case *syntax.Work:
		return w.work(n)
	case *syntax.Chain:
		return normalChain(n)
	case *syntax.Skip:
		return "skip " + normalPlace(n.Place)
	case *syntax.Leave:
		if n.Told {
			return "left " + normalPlace(n.Place)
		}
		return "leave " + normalPlace(n.Place)
	case *syntax.Group:
		return words("group", when(n.Listed, "listed")) + " " + (&writer{here: true}).body(n.Body) + num(" ch between=", n.Between) + " in " + strings.Join(normalPlaces(n.Places), " and ") + when(n.Corner, " for a corner")
	case *syntax.Bracket:
		if n.Total != nil {
			return "steps " + w.body(n.Body) + " or " + w.node(n.Total)
		}
		return w.list(n.Body) // brackets that nothing is said of only hold their steps together
	case *syntax.Repeat:
		return w.repeat(n)
	case *syntax.Mark:
		return "mark " + n.Text
	case *syntax.RepeatFrom:
		return words("repeat from", n.From, after("to", n.To), normalLimit(n.Limit, n.Number, n.Last))
	case *syntax.Ending:
		step := ""
		if n.Step != nil {
			step = w.node(n.Step)
		}
		return words("ending", step, after("stop at", n.StopAt), when(n.Last, "instead"), when(n.Mirrored, "mirrored"))
	case *syntax.Join:
		return words("join", after("with", notSlip(n.With)), placed("at", n.Place), when(n.Ring, "into a ring"), num("of ", n.Chains))
	case *syntax.Turn:
		return words("turn", when(n.Not, "not"), when(n.Rotate && !n.OtherSide, "to the side"), when(n.OtherSide, "to the other side"), when(n.Foundation, "of the foundation"))
	case *syntax.NoJoin:
		return "leave open"
	case *syntax.Finish:
		return words("fasten off", n.Yarn, when(n.LongTail, "long tail"))
	case *syntax.MakeUp:
		return words("make up", when(n.LongTail, "long tail"))
	case *syntax.Yarn:
		return words("yarn", yarnActions[n.Action], n.Yarn, after("with", notSlip(n.With)), placed("at", n.Place))
	case *syntax.Marker:
		return words("marker", when(n.All, "all"), count("nth=", n.Nth), count("of last ", n.OfLast))
	case *syntax.MagicRing:
		return "ring"
	case *syntax.Rows:
		return normalRows(n)
	case *syntax.Long:
		return words("over so many rows", number(n.Rows))
	case *syntax.Even:
		return words("even", num("for ", n.Number))
	case *syntax.Branch:
		return words("branch", n.Name)
	case *syntax.Return:
		return words("return", n.To)
	case *syntax.RepeatBranch:
		return words("branch", n.Name, number(n.Number), "times")
	case *syntax.PassBranch:
		return words("pass branch", n.Name)
	case *syntax.GoBack:
		return words("back to row", number(n.Row))
	case *syntax.Total:
		return words("count", normalParts(n.Parts), when(n.Change > 0, "more"), when(n.Change < 0, "fewer"), when(n.Reached, "reached"))
	case *syntax.CountsNote:
		return "note" + normalCounts(n.Counts)
	case *syntax.LoopNote:
		return words("all in "+loops[n.Loop], num("of row ", n.Row))
	case *syntax.PlaceFirst:
		return "in " + normalPlace(n.Place) + " first " + w.node(n.First)
	case *syntax.Shaping:
		return words("shape", when(n.Less, "less"), num("by ", n.Number))
	case *syntax.Along:
		return "along"
	case *syntax.Made:
		return words(when(n.Defines, "define"), when(!n.Defines, "made"), normalStitch(n.Stitch), w.madeOf(n.Body))
	case *syntax.Side:
		return "side " + map[bool]string{false: "right", true: "wrong"}[n.Wrong]
	case *syntax.Likewise:
		return "likewise"
	case *syntax.Motion:
		return "motion"
	case *syntax.Remark:
		return "remark"
	case *syntax.Unread:
		return "unread"
	}
	panic(fmt.Sprintf("the normal form does not know %T", node))
}

// normalWork fills in one in each of the next where no number or place is
// written: `5 sc`, `sc 5` and `sc in next 5 sts` are one.
func (w *writer) work(n *syntax.Work) string {
	each, places := num("each=", n.Number), normalPlaces(n.Places)
	switch {
	case len(n.Places) > 0:
	case w.here:
		places = []string{"here"}
	default:
		each, places = "", []string{normalPlace(syntax.Place{Number: n.Number})}
	}
	if each == "" {
		each = "each=1"
	}
	return words("work", normalStitch(n.Stitch), each, strings.Join(places, " + "), num("times ", n.Times),
		when(n.Loop != syntax.BothLoops, loops[n.Loop]), when(n.Evenly, "evenly"), when(n.Joins, "to join"), when(n.Picot, "for a picot"), after("yarn", n.Yarn), num("ch between=", n.Between.Chains), when(n.HeldBack, "closed together"), after("called", n.Called.Word), w.madeOf(n.Body)) + saidCounts(n.Counts)
}

// madeOf is what a stitch is said to be made of.
func (w *writer) madeOf(body []syntax.Clause) string {
	if len(body) == 0 {
		return ""
	}
	return "of " + (&writer{here: true}).body(body)
}

// saidCounts is what is said of the chains before a stitch, if anything is.
func saidCounts(c syntax.Counts) string {
	if !c.Said {
		return ""
	}
	return normalCounts(c)
}

func normalChain(n *syntax.Chain) string {
	return words("chain", num("", n.Number), num("multiple of ", n.Multiple), num("plus ", n.Plus), after("on", n.Piece)) + saidCounts(n.Counts)
}

// normalCounts leaves out the 1 of `counts as 1 dc`.
func normalCounts(c syntax.Counts) string {
	out := " counts not"
	if len(c.As) > 0 {
		parts := slices.Clone(c.As)
		for i, p := range parts {
			if p.Number.Equal(syntax.One(1)) {
				parts[i].Number = syntax.Num{}
			}
		}
		out = " counts as " + normalParts(parts)
	}
	return out + when(c.Always, " always") + when(!c.Said, " unsaid")
}

// normalRepeat leaves out whether stars or brackets mark the body, but for
// `rep from * 3 times`, which only the counts can settle.
func (w *writer) repeat(n *syntax.Repeat) string {
	out := words("repeat", when(n.Whole, "whole"), when(n.ByTurns, "by turns"), count("from step ", n.First), w.body(n.Body), normalLimit(n.Limit, n.Number, n.Last))
	if n.Limit == syntax.TimesOrAll && !n.Starred {
		out += " brackets"
	}
	if n.StopAt >= 0 {
		out += " mark before " + strconv.Itoa(n.StopAt)
	}
	if n.Mirrored {
		out += " mirrored"
	}
	if n.Stops {
		out += " last stops there"
	}
	if n.Omits != nil {
		out += " omitting last " + w.node(n.Omits)
	}
	if len(n.Ending) > 0 {
		out += when(!n.Replaces, " ending ") + when(n.Replaces, " ending instead ") + w.body(n.Ending)
	}
	return out
}

func normalLimit(limit syntax.Limit, n syntax.Num, last syntax.Place) string {
	switch limit {
	case syntax.Unstated:
		return "to the end, unsaid"
	case syntax.Times:
		return number(n) + " in all"
	case syntax.More:
		return number(n) + " more"
	case syntax.TimesOrAll:
		return number(n) + " more or in all"
	case syntax.ToEnd:
		return "to the end"
	case syntax.ToLast:
		return "to " + normalPlace(last)
	case syntax.ToPlace:
		return "to next " + normalNoun(last.Noun)
	case syntax.Measured:
		return "as measured"
	}
	panic(fmt.Sprintf("the normal form does not know limit %d", limit))
}

func normalRows(n *syntax.Rows) string {
	spans := make([]string, len(n.List))
	for i, s := range n.List {
		spans[i] = number(s.From)
		if !s.To.Equal(s.From) {
			spans[i] += "-" + number(s.To)
		}
	}
	times := normalLimit(n.Limit, n.Number, syntax.Place{})
	return words("rows", strings.Join(spans, ","), num("last ", n.Last), after("of", n.Piece), num("to row ", n.PieceRow), after("to mark", n.Mark),
		when(times != "1 in all", times), num("over so many rows ", n.Long), when(n.InAll, "in all"), when(n.Changed, "changed"), after("up to", n.UpTo))
}

func normalParts(parts []syntax.Part) string {
	out := make([]string, len(parts))
	for i, p := range parts {
		all := ""
		switch {
		case p.Whole:
			all = "of the whole"
		case p.All:
			all = "in all"
		}
		out[i] = words(num("", p.Number), normalNoun(p.Noun), after("on", p.On), all)
	}
	return strings.Join(out, " + ")
}

// normalPlace fills in what a place leaves out: `next` is one, `in each st`
// runs to the end, no noun is any stitch.
func normalPlaces(list []syntax.Place) []string {
	out := make([]string, len(list))
	for i, p := range list {
		p.Loop = syntax.BothLoops // said of the stitch
		out[i] = normalPlace(p)
	}
	return out
}

func normalPlace(p syntax.Place) string {
	each := p.Each && !p.Number.Written()
	picked := picks[p.Pick]
	if p.To.Kind != syntax.ToNothing {
		each = each || p.Pick == syntax.PickNext && !p.Number.Written()
	}
	if each && p.Pick == syntax.PickNext {
		picked = "each"
	}
	size := num("", p.Number)
	switch p.Pick {
	case syntax.PickNext, syntax.PickLast, syntax.PickFirst:
		if size == "" && !each {
			size = "1"
		}
	}
	to := ""
	switch {
	case each && p.To.Kind == syntax.ToNothing && p.Pick == syntax.PickNext, p.To.Kind == syntax.ToTheEnd:
		to = "to the end"
	case p.To.Kind == syntax.ToLastN:
		to = words("to last", number(p.To.Number), orStitch(normalNoun(p.To.Noun)))
	case p.To.Kind == syntax.ToMarker:
		to = words("to", num("", p.To.Number), "marker")
	case p.To.Kind == syntax.ToNext:
		to = "to " + normalNoun(p.To.Noun)
	case p.To.Kind == syntax.ToMeasure:
		to = "as measured"
	}
	noun := orStitch(normalNoun(p.Noun))
	for _, also := range p.Also {
		noun += "&" + normalNoun(also)
	}
	of := ""
	if p.Of != nil {
		of = "of (" + normalPlace(*p.Of) + ")"
	}
	nth := p.Nth
	if p.Pick == syntax.PickFirst {
		nth = 0 // first says it
	}
	return words(picked, count("nth=", nth), when(p.Odd, "from the first"), size, when(each && p.Pick != syntax.PickNext && p.Pick != syntax.PickRemaining, "each"), when(p.Center, "center"),
		noun, preps[p.Prep], when(p.Loop != syntax.BothLoops, loops[p.Loop]), origins[p.From], of, after("of", p.Name),
		num("of row ", p.Row), count("rows below ", p.Below), when(p.Elsewhere, "elsewhere"), to)
}

// orStitch fills in any stitch where no noun is written.
func orStitch(noun string) string {
	if noun == "" {
		return "st"
	}
	return noun
}

func normalNoun(n syntax.Noun) string {
	out := nounNames[n.Kind]
	switch n.Kind {
	case syntax.NounStitch:
		out = normalStitch(n.Stitch)
	case syntax.NounSpace:
		if n.Length.Written() {
			out = "ch-" + number(n.Length) + " sp"
		}
		if n.Word == "corner" {
			out = "corner " + out
		}
	case syntax.NounTurning:
		out += num(" ", n.Length)
	case syntax.NounGroup:
		out += " " + n.Word
	}
	return out
}

// normalStitch names a stitch by what it is in US terms; a word that only UK
// patterns have is marked so, the pattern's own stand in quotes.
func normalStitch(r syntax.StitchRef) string {
	switch {
	case r.Meaning.US != nil:
		return abbreviation(r.Meaning.US, stitch.US)
	case r.Meaning.UK != nil:
		return "uk:" + abbreviation(r.Meaning.UK, stitch.UK)
	case r.Word != "":
		return strconv.Quote(r.Word)
	}
	return "as before"
}

func abbreviation(s *stitch.Stitch, d stitch.Dialect) string {
	if t := s.Term(d); t.Abbr != "" {
		return t.Abbr
	}
	return s.ID
}

// notSlip leaves out the stitch that a join is worked with by default.
func notSlip(r syntax.StitchRef) string {
	if !r.Written() {
		return ""
	}
	if m := r.Meaning.In(stitch.US); m != nil && m.Class == stitch.Slip {
		return ""
	}
	return normalStitch(r)
}

// number writes one value, or one for each size; a dash is a size that skips.
func number(n syntax.Num) string {
	out := make([]string, len(n.Vals))
	for i, v := range n.Vals {
		out[i] = strconv.Itoa(v)
		if v == syntax.None {
			out[i] = "-"
		}
	}
	return strings.Join(out, "/")
}

func num(label string, n syntax.Num) string {
	if !n.Written() {
		return ""
	}
	return label + number(n)
}

func count(label string, n int) string {
	if n == 0 {
		return ""
	}
	return label + strconv.Itoa(n)
}

func after(label, s string) string {
	if s == "" {
		return ""
	}
	return label + " " + s
}

func when(b bool, s string) string {
	if b {
		return s
	}
	return ""
}

func placed(label string, p syntax.Place) string {
	if p.Empty() {
		return ""
	}
	return label + " " + normalPlace(p)
}

// words joins what is not empty.
func words(parts ...string) string {
	kept := parts[:0]
	for _, p := range parts {
		if p != "" {
			kept = append(kept, p)
		}
	}
	return strings.Join(kept, " ")
}

var (
	loops = map[syntax.Loop]string{syntax.BothLoops: "both loops", syntax.BackLoop: "blo", syntax.FrontLoop: "flo", syntax.ThirdLoop: "third loop"}
	picks = map[syntax.Pick]string{
		syntax.PickNext: "next", syntax.PickSame: "same", syntax.PickFirst: "first", syntax.PickLast: "last",
		syntax.PickNth: "", syntax.PickAny: "any", syntax.PickRemaining: "remaining", syntax.PickPrevious: "previous",
	}
	preps   = map[syntax.Prep]string{syntax.In: "", syntax.AroundPost: "around post", syntax.Between: "between", syntax.Under: "over"}
	origins = map[syntax.From]string{
		syntax.FromHere: "", syntax.FromHook: "from hook", syntax.FromBeginning: "from beginning", syntax.FromEnd: "from end",
	}
	yarnActions = map[syntax.YarnAction]string{
		syntax.YarnUse: "use", syntax.YarnJoin: "join", syntax.YarnDrop: "drop", syntax.YarnCarry: "carry",
	}
	nounNames = map[syntax.NounKind]string{
		syntax.NounNone: "", syntax.NounAny: "st", syntax.NounChain: "ch", syntax.NounSpace: "sp", syntax.NounCorner: "corner",
		syntax.NounRing: "ring", syntax.NounRowEnd: "row end", syntax.NounEdge: "edge", syntax.NounTurning: "turning chain",
		syntax.NounOther: "other side", syntax.NounGroup: "group", syntax.NounMarker: "marker", syntax.NounBase: "base",
		syntax.NounRow: "row", syntax.NounJoin: "join", syntax.NounTip: "top",
	}
)
