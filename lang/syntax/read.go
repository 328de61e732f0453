package syntax

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/stitch"
)

// maxClauseTokens bounds the words of one clause; a longer run is prose.
const maxClauseTokens = 120

// cache holds what each distinct clause was read as, and what the grammar made of
// each distinct form of one: it runs once for all numbers and all stitches.
type cache struct {
	nodes  memo[reading]
	shapes memo[shape]
}

// reading is what a clause's tokens were read as: a node, or nil and how many
// tokens from the beginning may still be a clause of their own.
type reading struct {
	node Node
	upTo int
}

// shape is what the grammar made of some tokens: nil and the index of the one that it
// did not expect, or a clause, which is never changed.
type shape struct {
	clause *gClause
	upTo   int
}

var clauses = cache{nodes: memo[reading]{most: mostClauses}, shapes: memo[shape]{most: mostClauses}}

// read gives the meaning of a clause's tokens, or nil for one that the
// grammar does not know.
func (c *cache) read(tokens []Token) Node { return c.try(tokens).node }

// try is read, with how far reading came.
func (c *cache) try(tokens []Token) reading {
	if len(tokens) > maxClauseTokens {
		return reading{upTo: maxClauseTokens}
	}
	var room [usualKey]byte
	return c.nodes.ofBytes(clauseKey(room[:0], tokens), func(string) reading {
		var room [usualKey]byte
		return readClause(tokens, c.shapes.ofBytes(shapeKey(room[:0], tokens), func(string) shape { return parse(tokens) }))
	})
}

// usualKey is the length of most keys.
const usualKey = 128

// shapeKey spells what the grammar sees of tokens, behind what is in b.
func shapeKey(b []byte, tokens []Token) []byte {
	for i := range tokens {
		t := &tokens[i]
		b = append(b, byte('a'+t.Kind))
		b = append(b, t.inGrammar()...)
		b = append(b, ' ')
	}
	return b
}

// clauseKey spells the tokens, behind what is in b, so that two clauses read alike
// exactly when their keys are equal.
func clauseKey(b []byte, tokens []Token) []byte {
	for i := range tokens {
		t := &tokens[i]
		b = append(b, byte('a'+t.Kind))
		b = append(b, t.Canon...)
		b = append(b, t.Written...)
		if t.Kind == Ordinal {
			for _, n := range t.Values.Vals {
				b = append(b, byte(n), byte(n>>8))
			}
		}
		if t.Canon == "once" {
			b = append(b, byte(t.Values.At(0)))
		}
		if t.Kind == Stitch {
			// a pattern may give a word a meaning of its own
			for _, k := range [...]*stitch.Stitch{t.Stitch.US, t.Stitch.UK} {
				b = append(b, '/')
				if k != nil {
					b = append(b, k.ID...)
				}
			}
		}
		b = append(b, ' ')
	}
	return b
}

// parse holds tokens against the grammar. The token that it did not expect stands in
// no shorter clause either.
func parse(tokens []Token) shape {
	clause, bad := clauseGrammar().Match(symbols(tokens))
	if clause == nil {
		return shape{upTo: min(len(tokens)-1, bad)}
	}
	return shape{clause: clause, upTo: len(tokens) - 1}
}

// readClause reads tokens as one clause.
func readClause(tokens []Token, s shape) reading {
	if putsOff(tokens) {
		return reading{node: &Remark{}}
	}
	failed := reading{upTo: s.upTo}
	if s.clause != nil {
		r := reader{tokens: tokens, upTo: failed.upTo}
		if node := r.clause(s.clause); node != nil && !r.refused {
			return reading{node: node}
		}
		failed.upTo = r.upTo
	}
	if node := loose(tokens); node != nil {
		return reading{node: node}
	}
	return failed
}

// reader turns what the grammar matched into what it means: many wordings,
// one node.
type reader struct {
	tokens []Token
	// refused is set where the words fit the grammar but say nothing sensible;
	// upTo is how many of them may still do.
	refused bool
	upTo    int
	passes  bool // the clause passes over places
}

// refuse finds that the token at an index does not go with those before it.
func (r *reader) refuse(at int) {
	r.refused, r.upTo = true, min(r.upTo, at)
}

func (r *reader) num(g *gNum) Num {
	if g == nil {
		return Num{}
	}
	return r.tokens[g.Pos.Offset].Values
}

func (r *reader) ordinal(g *gOrd) int { return r.tokens[g.Pos.Offset].Values.At(0) }

func (r *reader) stitch(g *gStitch) StitchRef {
	t := r.tokens[g.Pos.Offset]
	return StitchRef{Word: t.Canon, Meaning: t.Stitch}
}

// clause reads the form of a clause that the grammar found.
func (r *reader) clause(g *gClause) Node {
	switch {
	case g.RepFrom != nil:
		return r.repeatFrom(g.RepFrom)
	case g.RepAll != nil:
		return &RepeatFrom{Limit: ToEnd, Pattern: true}
	case g.Until != nil:
		return r.until(g.Until)
	case g.RepUntil != nil:
		return r.repeatUntil(g.RepUntil)
	case g.Alternate != nil:
		return r.alternate(g.Alternate)
	case g.Rows != nil:
		return r.rows(g.Rows)
	case g.Ending != nil:
		return r.ending(g.Ending)
	case g.Turn != nil:
		return r.turn(g.Turn)
	case g.Join != nil:
		return r.join(g.Join)
	case g.Branch != nil:
		r.refused = r.refused || r.tokens[g.Branch.Pos.Offset].Written == "branches" // nobody begins several at once
		return &Branch{Name: r.name(g.Branch.Name)}
	case g.RepBranch != nil:
		return r.repeatBranch(g.RepBranch)
	case g.Pass != nil:
		return &PassBranch{Name: g.Pass.Name}
	case g.Return != nil:
		return &Return{Told: r.tokens[g.Return.Pos.Offset].Written == homeToken, To: r.name(g.Return.To)}
	case g.Ring != nil:
		return r.ring(g.Ring)
	case g.Skip != nil:
		r.passes = true
		return r.skip(g.Skip)
	case g.Leave != nil:
		return r.leave(g.Leave)
	case g.Multiple != nil:
		return r.multiple(g.Multiple)
	case g.Chain != nil:
		return r.chain(g.Chain)
	case g.Counts != nil:
		return &CountsNote{Counts: r.counts(g.Counts)}
	case g.NoStitch != nil:
		return &CountsNote{Counts: Counts{Said: true}}
	case g.Bracketed != nil:
		return r.bracketed(g.Bracketed)
	case g.Shared != nil:
		return r.shared(g.Shared)
	case g.Even != nil:
		return r.even(g.Even)
	case g.Work != nil:
		return r.work(g.Work)
	case g.Striped != nil:
		return &Likewise{}
	case g.Total != nil:
		return r.total(g.Total)
	case g.Again != nil:
		return r.again(g.Again)
	case g.Shaping != nil:
		return r.shapingTimes(g.Shaping)
	case g.Back != nil:
		return r.back(g.Back)
	case g.Along != nil:
		return &Along{}
	case g.Place != nil:
		return r.placeFirst(g.Place)
	case g.Loop != nil:
		return r.loopNote(g.Loop)
	case g.Marker != nil:
		return r.marker(g.Marker)
	case g.Yarn != nil:
		return r.yarn(g.Yarn)
	case g.Side != nil:
		return &Side{Wrong: g.Side.Side == "ws"}
	case g.Remark != nil:
		return r.remark(g.Remark)
	case g.Finish != nil:
		return r.finish(g.Finish)
	case g.GoBack != nil:
		return &GoBack{Row: r.num(g.GoBack.Row)}
	case g.Spacing != nil:
		return r.spacing(g.Spacing)
	case g.For != nil:
		r.refused = g.For.stitch() != nil
		return &Remark{} // `dc in first sc, for last loop`
	case g.HeldBack != nil:
		return &HeldBack{}
	case g.Likewise != nil:
		return &Likewise{}
	case g.Motion != nil:
		return r.motion()
	case g.Comment != nil && g.Comment.Chains:
		return &Total{Chains: true}
	case g.Comment != nil:
		return &Remark{}
	case g.Start != nil:
		return r.start(g.Start)
	case g.Long != nil:
		return &Long{Rows: r.num(g.Long.Rows)}
	case g.YarnAt != nil:
		return r.yarnAt(g.YarnAt)
	case g.Into != nil:
		return r.into(g.Into)
	case g.At != nil:
		return r.workAt(g.At)
	}
	return nil
}

// until reads a limit that stands by itself: a number of stitches, or a landmark.
func (r *reader) until(g *gUntil) Node {
	if g.Have != nil {
		return &Total{Parts: []Part{{Number: r.num(g.Have)}}, Reached: true}
	}
	return &RepeatFrom{Limit: Measured}
}

// ring reads a ring: of chains that are joined, or one to draw close.
func (r *reader) ring(g *gRing) Node {
	if g.N != nil {
		return &Join{Ring: true, Chains: r.num(g.N)}
	}
	return &MagicRing{}
}

// multiple reads a foundation of which no number is said, but a multiple of stitches or of chains
// at most.
func (r *reader) multiple(g *gMultiple) Node {
	return &Chain{Multiple: r.num(g.N), Plus: r.num(g.Plus), OfStitches: !g.Ch && !g.Of && !g.Of2}
}

// shared reads two stitches of one place, one into it and one around its post.
func (r *reader) shared(g *gShared) Node {
	p := r.place(g.Where)
	p.Prep = In
	return &Group{Body: []Clause{{Node: &Work{Stitch: r.stitch(g.In)}}, {Node: &Work{Stitch: r.stitch(g.Post)}}}, Places: []Place{p}}
}

// remark reads what may be said of work that is done: what it has become, or nothing that counts.
func (r *reader) remark(g *gRemark) Node {
	switch {
	case g.Made != nil:
		return &Made{Stitch: r.stitch(g.Made)}
	case g.Corner:
		return &Made{Stitch: StitchRef{Word: Corner}}
	}
	return &Remark{}
}

// yarnAt reads yarn that is joined to what no row made; where no yarn is named, the work is.
func (r *reader) yarnAt(g *gYarnAt) Node {
	there := Place{Elsewhere: true}
	if g.Name == nil {
		return &Join{Place: there}
	}
	return &Yarn{Action: YarnJoin, Yarn: r.yarnName(g.Name), Place: there}
}

// start reads where the first stitch goes as the skip of what lies before.
func (r *reader) start(g *gStart) Node {
	if g.Same || r.ordinal(g.At) == 1 {
		return &Remark{}
	}
	before := Place{Number: One(r.ordinal(g.At) - 1), Noun: oneChain, From: FromHook}
	if g.Stitch && !g.Hook {
		before.Noun, before.From = anyStitch, FromHere
	}
	return &Skip{Place: before}
}

// skip reads what is passed over; the chain nearest the hook is the first from it.
func (r *reader) skip(g *gSkip) *Skip {
	if g.Near {
		return &Skip{Place: Place{Pick: PickNth, Nth: 1, Noun: oneChain, From: FromHook}}
	}
	return &Skip{Place: r.onePlace(g.Where)}
}

// motion finds where the hook goes.
func (r *reader) motion() Node {
	for i, t := range r.tokens {
		if t.Kind != Word || t.Canon != "in" {
			continue
		}
		if first, ok := clauses.read(r.tokens[i:]).(*PlaceFirst); ok && first.First == nil {
			return &Motion{Place: &first.Place}
		}
	}
	return &Motion{}
}

// workAt reads stitches worked into what no row made: as many as are said, or,
// where they run along it, a number that is not known.
func (r *reader) workAt(g *gWorkAt) Node {
	named, runs := false, g.In == "around" || g.In == "across" || g.In == "up"
	for _, t := range r.tokens[g.Stitch.Pos.Offset+1:] {
		named = named || t.Kind == Name && parts[t.Canon]
		r.refused = r.refused || t.Kind == Name && !parts[t.Canon]
		runs = runs || t.Kind == Word && (t.Canon == "each" || t.Canon == "around" || t.Canon == "across" || t.Canon == "both" || t.Canon == "to")
	}
	r.refused = r.refused || !named
	if runs {
		return &Likewise{}
	}
	return &Work{Stitch: r.stitch(g.Stitch), Number: r.num(g.N), Places: []Place{{Elsewhere: true}}}
}

// name is the name of a branch, "" where it has none.
func (r *reader) name(g *gWordName) string {
	if g == nil {
		return ""
	}
	return r.tokens[g.Pos.Offset].Canon
}

// times reads how often; more tells `times more` from `times`.
func (r *reader) times(g *gTimesN) (n Num, more bool) {
	switch {
	case g == nil:
		return Num{}, false
	case g.Total != nil:
		return r.num(g.Total), false
	case g.N != nil:
		return r.num(g.N), false
	case g.Once != nil:
		return r.tokens[g.Once.Pos.Offset].Values, g.More4 || g.More5
	}
	return r.num(g.M), g.More1 || g.More2 || g.More3
}

// again reads a step that names no stitch: that of the step before is meant.
func (r *reader) again(g *gAgain) Node {
	switch {
	case g.More != nil:
		return &Work{Number: r.num(g.More)}
	case g.Tog != nil:
		return r.closed(g)
	case g.Closed != nil:
		return r.lastClosed(r.stitch(g.Closed))
	case g.Final:
		return &Work{Places: []Place{{Pick: PickLast, Number: r.num(g.Last), Noun: anyStitch}}}
	}
	w := &Work{Number: r.num(g.N), Places: r.places(g.Where)}
	if g.Twice != nil {
		w.Number = r.tokens[g.Twice.Pos.Offset].Values
	}
	if g.Loop != nil {
		w.Loop = loopNamed(g.Loop.Word)
	}
	return w
}

// lastClosed reads `work last 2 sc together`, where the stitch has a name of its own.
func (r *reader) lastClosed(s StitchRef) Node {
	k := s.Meaning.In(stitch.Unsettled)
	if k == nil || k.Class != stitch.Together {
		r.refused = true
		return nil
	}
	return &Work{Stitch: s, Places: []Place{{Pick: PickLast, Number: One(k.Uses), Noun: anyStitch}}}
}

// closed reads `work last 2 sts tog`: a decrease of the row's own stitch.
func (r *reader) closed(g *gAgain) Node {
	n := r.num(g.Tog)
	if n.PerSize() || n.At(0) != 2 {
		return &Likewise{} // no stitch of the row is named that so many are closed into
	}
	meaning, _ := stitch.Find("dec")
	w := &Work{Stitch: StitchRef{Word: "dec", Meaning: meaning}}
	if g.Last2 {
		w.Places = []Place{{Pick: PickLast, Number: n, Noun: anyStitch}}
	}
	return w
}

func (r *reader) even(g *gEven) Node {
	switch {
	case g.Not != nil:
		return r.unshaped(g.Not)
	case g.Of != nil:
		return &Even{Number: r.num(g.Rows), Stitch: r.stitch(g.Of)}
	case g.M != nil:
		return &Even{Number: r.num(g.M)}
	case g.Stitch != nil:
		return &Work{Stitch: r.stitch(g.Stitch), Places: []Place{AllAlong}}
	}
	return &Even{Number: r.num(g.N)}
}

func (r *reader) repeatFrom(g *gRepFrom) Node {
	out := &RepeatFrom{Limit: Unstated, Pattern: g.Pattern}
	if g.From != nil {
		out.From = g.From.Text
	}
	if g.From2 != nil {
		out.From = g.From2.Text
	}
	if g.To2 != nil {
		out.To = g.To2.Text
	}
	if g.To != nil {
		out.To = g.To.Text
	}
	if g.Marks {
		out.From = "*"
	}
	if g.Tail == nil && g.From == nil && !g.Rep && !g.Pattern {
		r.refused = true
	}
	if g.Tail == nil {
		return out
	}
	if g.Tail.Times != nil {
		n, more := r.times(g.Tail.Times)
		out.Number = n
		switch {
		case more:
			out.Limit = More
		case g.Tail.Times.All || g.Tail.Times.All2 || g.Tail.Times.Total != nil || !g.Rep:
			out.Limit = Times
		default:
			out.Limit = TimesOrAll
		}
		return out
	}
	out.Limit, out.Last = r.limit(g.Tail.To)
	return out
}

// alternate reads stitches that are worked by turns, which go along the row or round.
func (r *reader) alternate(g *gAlternate) Node {
	out := &Alternate{}
	for _, turn := range slices.Concat([]*gTurnWork{g.First, g.Last}, g.Then) {
		if turn != nil {
			w := Work{Stitch: r.stitch(turn.Stitch), Number: r.num(turn.N)}
			if turn.Next {
				w.Places = []Place{{Noun: anyStitch}}
			}
			out.Turns = append(out.Turns, w)
		}
	}
	for _, p := range r.places(g.Where) {
		if out.Limit != Unstated || p.Number.Written() || p.To.Kind == ToNothing || p.Noun.Kind != NounNone && p.Noun.Kind != NounAny {
			r.refused = true
		}
		out.Limit, out.Last = limitOf(p.To)
	}
	if g.Times != nil {
		out.Limit = Times
		out.Number, _ = r.times(g.Times)
	}
	return out
}

// repeatBranch reads how often a branch is made again: once, where nothing is said.
func (r *reader) repeatBranch(g *gRepBranch) Node {
	n, _ := r.times(g.Times)
	if !n.Written() {
		n = One(1)
	}
	return &RepeatBranch{Name: g.Name, Number: n}
}

// repeatUntil reads a repeat that goes on to a landmark.
func (r *reader) repeatUntil(g *gRepUntil) Node {
	out := &RepeatFrom{Limit: Measured}
	if g.From != nil {
		out.From = g.From.Text
	}
	if g.To != nil {
		out.To = g.To.Text
	}
	return out
}

// limit turns how far into the limit of a repeat.
func (r *reader) limit(g *gExtent) (Limit, Place) {
	to := r.extent(g)
	if g.Rest && to.Kind == ToTheEnd {
		return Measured, Place{}
	}
	return limitOf(to)
}

func (r *reader) extent(g *gExtent) ToLimit {
	switch {
	case g.Last:
		to := ToLimit{Kind: ToLastN, Number: r.num(g.N)}
		if g.Noun != nil {
			to.Noun = r.noun(g.Noun)
		}
		if !to.Number.Written() {
			to.Number = One(1)
		}
		to.Left = g.Except
		return to
	case g.M != nil:
		to := ToLimit{Kind: ToLastN, Number: r.num(g.M)}
		if g.MNoun != nil {
			to.Noun = r.noun(g.MNoun)
		}
		return to
	case g.Marker:
		return ToLimit{Kind: ToMarker, Number: r.num(g.Short)}
	case g.Corner || g.Middle:
		return ToLimit{Kind: ToNext, Noun: Noun{Kind: NounCorner}}
	case g.Space != nil:
		return ToLimit{Kind: ToNext, Noun: r.noun(&gNoun{Space: g.Space})}
	case g.Tch:
		return ToLimit{Kind: ToLastN, Number: One(1), Noun: Noun{Kind: NounTurning}}
	}
	return ToLimit{Kind: ToTheEnd}
}

// leave reads `leave next 2 sts unworked`. Unworked and remaining are one word
// to the grammar; where next is said, it names the places and no more.
func (r *reader) leave(g *gLeave) Node {
	if g.Called != nil { // whatever they are called, they are what is left
		return &Leave{Place: Place{Pick: PickRemaining, Number: r.num(g.Called)}}
	}
	p := r.onePlace(g.Where)
	if slices.ContainsFunc(g.Where.Mods, func(m *gMod) bool { return m.Word == "next" }) {
		p.Pick = PickNext
	}
	return &Leave{Place: p}
}

func (r *reader) rows(g *gRows) Node {
	out := &Rows{Limit: Times, Number: One(1), List: r.rowSpans(g)}
	if g.Last || g.Row && len(g.List) == 0 {
		out.Last = One(1)
		if g.LastN != nil {
			out.Last = r.num(g.LastN)
		}
	}
	if g.Piece != nil && (slices.Contains(g.Piece.Words, "follows") || slices.Contains(g.Piece.Words, "chart") || g.Piece.Words[0] == "far") {
		r.refused = true // how it goes is told next, or drawn, or `as far as the foot of the branch`
	}
	r.refused = r.refused || g.GoOn && len(g.List) < 2 && g.Times == nil && !g.Until // it may go on to it
	if g.Called != nil {
		out.Called = ideas(r.tokens[g.Called.Pos.Offset:g.Called.Pos.Offset+len(g.Called.Words)], nil)
	}
	if g.Piece != nil {
		out.Piece, out.PieceRow, out.Mark = r.written(g.Piece), r.num(g.PieceN), g.Mark
	}
	for _, of := range [...]*gPiece{g.Part, g.Of} {
		if of != nil {
			out.Piece = r.written(of)
		}
	}
	if g.Times != nil {
		n, more := r.times(g.Times)
		out.Number = n
		out.Limit = TimesOrAll
		if more {
			out.Limit = More
		}
	}
	for _, all := range [...]*gNum{g.AllN, g.UntilN} {
		if all != nil {
			out.Long, out.InAll = r.num(all), true
		}
	}
	if g.Long != nil {
		out.Long = r.num(g.Long)
	}
	switch {
	case g.Until && slices.ContainsFunc(r.tokens[g.Pos.Offset:], func(t Token) bool { return t.Kind == Star }):
		out.Changed = true // `repeat Row 3 to *`: how much of it that is, is not looked up
	case g.Until:
		out.Limit = Measured
	case len(g.Rest) > 0:
		out.Changed = true
	}
	if g.Until && g.Piece != nil {
		out.UpTo = ideas(r.tokens[g.Piece.Pos.Offset:], func(t *Token) bool {
			return t.Canon == "to" || t.Canon == "until" || t.Canon == "for" || t.Canon == "across"
		})
	}
	if bySteps := slices.ContainsFunc(r.tokens, func(t Token) bool { return t.Kind == Word && t.Canon == "step" }); bySteps && (out.Changed || len(out.List) == 0) {
		r.refused = true // steps are done again as they are, or it is not known how
	}
	return out
}

// rowSpans are the rows that are named by their numbers: `Rows 2-5 and 8`, `the 2nd to 5th rows`.
func (r *reader) rowSpans(g *gRows) []RowSpan {
	var out []RowSpan
	for _, s := range g.List {
		from := r.num(s.From)
		to := from
		if s.To != nil {
			to = r.num(s.To)
		}
		out = append(out, RowSpan{From: from, To: to, Each: s.Each})
	}
	for _, o := range g.Nth {
		from := One(r.ordinal(o.From))
		to := from
		if o.To != nil {
			to = One(r.ordinal(o.To))
		}
		out = append(out, RowSpan{From: from, To: to})
	}
	return out
}

// loopNote reads whose loops are worked: those of the row below, or the ones
// that an earlier row still has free.
func (r *reader) loopNote(g *gLoop) Node {
	out := &LoopNote{Row: r.num(g.Free)}
	if g.Loop != nil {
		out.Loop = loopNamed(g.Loop.Word)
	}
	if g.Of != nil {
		var p Place
		r.ofNamed(&p, g.Of)
		out.Row = p.Row
		r.refused = r.refused || !p.Row.Written()
	}
	return out
}

func (r *reader) ending(g *gEnding) Node {
	out := &Ending{Mirrored: g.Mirror, Last: g.Last}
	switch {
	case g.Omit != nil:
		out.Omits, out.Step = true, &Skip{Place: r.onePlace(g.Omit)}
	case g.Joined:
		out.Omits, out.Step = true, &Skip{} // `the last sc is the join`
	case g.Rest != nil:
		out.Step = &Work{Places: []Place{{Number: r.num(g.Rest), Noun: anyStitch}}}
	case g.OmitCh != nil:
		out.Omits, out.Step = true, r.chain(g.OmitCh)
	case g.At != nil:
		out.StopAt = g.At.Text
	case g.Chain != nil:
		out.Step = r.chain(g.Chain)
	case g.Skip != nil:
		out.Step = r.skip(g.Skip)
	case g.Group != nil:
		out.Step = r.bracketed(g.Group)
	case g.Falls != nil:
		return &Remark{} // that stitch is made already
	case g.Where != nil:
		out.Step = &Work{Places: []Place{r.onePlace(g.Where)}} // the last step's stitch goes there
	case g.Work != nil:
		out.Step = r.work(g.Work)
	}
	return out
}

func (r *reader) turn(g *gTurn) Node {
	if g.NoJoin || g.Spiral {
		return &NoJoin{}
	}
	other := g.Over || g.Other || g.Base
	return &Turn{Not: g.Not, Rotate: g.Rotate || other, OtherSide: other, OfStart: other && g.Start, Foundation: g.Base}
}

// marker reads which of the stitches made is marked: the last one where
// nothing is said.
func (r *reader) marker(g *gMarker) Node {
	m := &Marker{All: slices.ContainsFunc(r.tokens, func(t Token) bool { return t.Written == "markers" })}
	for _, at := range g.Rest {
		switch {
		case at.Ordinal != nil:
			m.Nth = r.ordinal(at.Ordinal)
		case at.Number != nil && m.Nth > 0:
			m.OfLast = r.num(at.Number).At(0)
		case at.Skipped:
			m.Skipped = true
		case at.Last && m.Nth == 0:
			m.Nth, m.OfLast = 1, 1
		}
	}
	m.All = m.All && m.Nth == 0 && !m.Skipped
	return m
}

func (r *reader) join(g *gJoin) Node {
	places := r.places(g.Where)
	place := Place{}
	if len(places) > 0 {
		place = places[0]
	}
	var with StitchRef
	for _, s := range [...]*gStitch{g.Stitch, g.After} {
		if s != nil {
			with = r.stitch(s)
		}
	}
	name := g.Yarn
	if name == nil {
		name = g.Yarn2
	}
	if name != nil {
		return &Yarn{Action: YarnJoin, Yarn: r.yarnName(name), Place: place, With: with}
	}
	if place.Noun.Kind == NounRing {
		return &Join{Ring: true, With: with}
	}
	place.Elsewhere = place.Elsewhere || place.Number.Written() && elsewhere(place) // `join 3 blocks`
	return &Join{Place: place, Ring: g.Ring || g.Form, With: with}
}

func (r *reader) yarnName(g *gName) string {
	if g.N != nil {
		return r.num(g.N).String()
	}
	return strings.TrimSpace(strings.TrimPrefix(strings.Join(g.Words, " "), "yarn"))
}

func (r *reader) yarn(g *gYarn) Node {
	out := &Yarn{}
	switch g.Let {
	case "drop":
		out.Action = YarnDrop
	case "carry":
		out.Action = YarnCarry
	}
	if g.Name != nil {
		out.Yarn = r.yarnName(g.Name)
	}
	if places := r.places(slices.Concat(g.Where, g.Where2)); len(places) > 0 {
		out.Place = places[0]
	}
	return out
}

func (r *reader) chain(g *gChain) Node {
	out := &Chain{}
	switch {
	case g.N != nil:
		out.Number = r.num(g.N)
	case g.M != nil:
		out.Number = r.num(g.M)
	default:
		out.Number, out.Unsaid = One(1), true
	}
	if g.Plus != nil {
		out.Number = out.Number.plus(r.num(g.Plus)) // `ch 30 + 1`
	}
	if g.On != nil {
		out.Piece = r.pieceName(g.On)
	}
	if g.For != nil { // `ch 5 for a tr`
		out.Counts = Counts{Said: true, As: []Part{{Noun: Noun{Kind: NounStitch, Stitch: r.stitch(g.For)}}}}
	}
	if g.Counts != nil {
		out.Counts = r.counts(g.Counts)
	}
	return out
}

func (r *reader) counts(g *gCounts) Counts {
	c := Counts{Said: true, Always: g.Always}
	if g.Not || g.Not2 {
		return c
	}
	for _, p := range g.Parts {
		c.As = append(c.As, r.part(p))
	}
	if len(c.As) == 0 {
		c.As = []Part{{Noun: Noun{Kind: NounAny}}}
	}
	return c
}

func (r *reader) part(g *gPart) Part {
	p := Part{Number: r.num(g.N), On: g.On, All: g.All}
	if g.Bare != nil {
		p.Number = r.num(g.Bare)
		next := r.tokens[g.Pos.Offset+1]
		told := next.Canon == "remaining" || next.Kind == Semi            // `3 sts, 10 left`, `16; 37 in all`
		r.refused = r.refused || g.On == "" && !g.Some && !g.All && !told // `12 on each side`
		return p
	}
	p.Noun = r.noun(g.Noun)
	if p.Noun.Kind == NounTurning && p.Noun.Length.Written() {
		p.Noun.Kind = NounSpace // `dc and ch 2` counts as `dc and ch-2 sp`
	}
	return p
}

// shareNoun completes the `4 long` of `4 long and 4 short sprays`, where the pattern makes
// short sprays: no stitch is meant.
func shareNoun(parts []Part) {
	for i := 0; i+1 < len(parts); i++ {
		ref, next := &parts[i].Noun.Stitch, parts[i+1].Noun.Stitch
		if _, noun, several := strings.Cut(next.Word, " "); several && ref.Word == "long" && next.Meaning == (stitch.Meaning{}) {
			*ref = StitchRef{Word: "long " + noun}
		}
	}
}

func (r *reader) total(g *gTotal) Node {
	out := &Total{}
	switch cmp.Or(g.Change, g.How, g.Than) {
	case "increased", "more":
		out.Change = 1
	case "decreased", "less":
		out.Change = -1
	}
	i := slices.IndexFunc(r.tokens, func(t Token) bool { return t.Kind != Word })
	switch first := r.tokens[i]; {
	case first.Kind == Sign && first.Canon == "+":
		out.Change = 1 // `(+2)`
	case first.Kind == Hyphen:
		out.Change = -1 // `(-2)`
		r.refused = r.refused || r.tokens[i+1].Kind != Number
	}
	if g.Shaped != nil { // `(dec 2 sts)`
		switch shaped := r.stitch(g.Shaped).Meaning; {
		case shaped.Is(stitch.Increase):
			out.Change = 1
		case shaped.Is(stitch.Decrease):
			out.Change = -1
		}
		r.refused = r.refused || !g.Have || out.Change == 0
		out.Parts = []Part{{Number: r.num(g.By), Noun: anyStitch}}
		return out
	}
	if g.Grown != nil {
		out.Parts = []Part{{Number: r.num(g.Grown), Noun: anyStitch}} // `4 more sts than the row below`
		return out
	}
	if g.Bare != nil {
		if !g.Have {
			r.refused = true // a bare number counts only in brackets or after a sign
		}
		out.Parts = []Part{{Number: r.num(g.Bare)}}
		return out
	}
	if g.Of && r.eachSide() || len(g.Parts) == 1 && g.Parts[0].Some {
		return &Remark{} // `(22 dc on each side)`: the row has several
	}
	for _, p := range g.Parts {
		part := r.part(p)
		if p.Some && len(g.Parts) > 1 {
			continue // `8 shells, 3 dc at each end`: there may be others
		}
		if !part.Number.Written() && len(out.Parts) > 0 && p.Noun != nil && p.Noun.Space != nil && p.Noun.Space.Sp == "" || part.Noun.Kind == NounTurning {
			part = Part{Number: One(1), Noun: Noun{Kind: NounTurning}} // `(25 dc + ch 3)`
		}
		if !part.Number.Written() {
			r.refused = true
		}
		out.Parts = append(out.Parts, part)
	}
	if n := len(out.Parts) - 1; g.Of && n > 0 && slices.ContainsFunc(out.Parts[:n], func(p Part) bool {
		return p.Noun.Kind == out.Parts[n].Noun.Kind && p.Noun.Stitch.Word == out.Parts[n].Noun.Stitch.Word
	}) {
		out.Parts = out.Parts[:n] // `(34 sc; 4 sc between markers)`: those are among the others
	}
	for i := range out.Parts {
		out.Parts[i].Whole = r.tokens[g.Pos.Offset].Written == wholeToken
	}
	last := len(out.Parts) - 1
	left := g.Left && !g.Of && (out.Parts[last].Noun.Kind == NounChain || out.Parts[last].Noun.Kind == NounNone)
	switch {
	case left && last == 0:
		return &Leave{Place: Place{Pick: PickRemaining, Number: out.Parts[0].Number, Noun: oneChain}, Told: true}
	case left:
		out.Left, out.Parts = out.Parts[last].Number, out.Parts[:last] // those are not made
	}
	shareNoun(out.Parts)
	return out
}

// eachSide tells words that end `on each side`.
func (r *reader) eachSide() bool {
	n := len(r.tokens)
	return n > 1 && r.tokens[n-2].Canon == "each" && (r.tokens[n-1].Canon == "side" || r.tokens[n-1].Canon == "edge")
}

func (r *reader) bracketed(g *gBracketed) Node {
	b := &Bracket{}
	n, more := r.times(g.Times)
	if g.Lead != nil {
		n = r.num(g.Lead)
	}
	if len(g.Where) == 0 && !n.Written() {
		return b
	}
	places := r.places(g.Where)
	corner := g.For != nil && g.For.Corner
	if n.Written() && len(g.Where) == 1 && len(g.Where[0].Mods) == 1 && g.Where[0].Mods[0].Word == "evenly" {
		return &Shaping{Number: n} // of what kind, its bracket tells
	}
	if n.Written() {
		rep := &Repeat{Limit: Times, Number: n, StopAt: -1}
		if more {
			rep.Limit = More
		}
		if len(places) == 0 {
			return rep
		}
		return &Group{Body: []Clause{{Node: rep}}, Places: places, Corner: corner}
	}
	p := places[0]
	if p.Noun.Kind == NounNone && p.To.Kind != ToNothing && (!p.Each || g.Where[0].Prep == "to") {
		rep := &Repeat{StopAt: -1}
		rep.Limit, rep.Last = limitOf(p.To)
		return rep
	}
	return &Group{Places: places, Corner: corner}
}

func limitOf(to ToLimit) (Limit, Place) {
	switch to.Kind {
	case ToLastN:
		return ToLast, Place{Pick: PickLast, Number: to.Number, Noun: to.Noun}
	case ToNext:
		return ToPlace, Place{Noun: to.Noun}
	case ToMarker:
		return Measured, Place{}
	}
	return ToEnd, Place{}
}

func (r *reader) placeFirst(g *gPlace1st) Node {
	out := &PlaceFirst{Place: r.firstPlace(g.Where)}
	if p := out.Place; g.Work != nil && p.Loop != BothLoops && p.Pick == PickNext && !p.Each && !p.Number.Written() && p.Noun.OfAll() {
		if w, ok := r.work(g.Work).(*Work); ok { // `in back loops work sc in each st`
			with := *w
			with.Loop = p.Loop
			return &with
		}
	}
	switch {
	case g.Chain != nil:
		out.First = r.chain(g.Chain)
	case g.Group != nil:
		out.First = r.bracketed(g.Group)
	default:
		out.First = r.work(g.Work)
	}
	return out
}

// into reads a place that stands before the stitches worked there. `Into the 4
// chain` is into the space, and `into successive loops` only says what a bare
// number of stitches means.
func (r *reader) into(g *gInto) Node {
	out := &PlaceFirst{Place: r.firstPlace(g.Where)}
	if successive(g.Where[0]) {
		return &Remark{}
	}
	p := &out.Place
	if p.Noun.Kind == NounNone && p.Pick == PickNext && p.Of == nil && p.Prep != AroundPost {
		r.refused = true
	}
	if p.Noun.Kind == NounChain && p.Number.Written() && !p.Each {
		p.Noun, p.Number = Noun{Kind: NounSpace, Length: p.Number}, Num{}
	}
	return out
}

// successive tells `successive loops`, and the chain that stitches are worked
// along (`22 sc on ch`), from loops and chains of any other kind.
func successive(g *gWhere) bool {
	if g.Prep == "on" && g.Mods[0].Noun != nil && g.Mods[0].Noun.Word == "ch" && (len(g.Mods) == 1 || g.Mods[1].Of != nil && g.Mods[1].Of.Here) {
		return true
	}
	return slices.ContainsFunc(g.Mods, func(m *gMod) bool { return m.Word == "successive" })
}

func (r *reader) finish(g *gFinish) Node {
	long := false
	for _, w := range g.Rest {
		if w == "tail" || w == "leave long" {
			long = true
		}
	}
	if g.Verb == "fasten" {
		out := &Finish{LongTail: long}
		if g.Yarn != nil {
			if name := r.yarnName(g.Yarn); lettersYarn(name) {
				out.Yarn = name
			}
		}
		return out
	}
	return &MakeUp{LongTail: long}
}

func loopNamed(word string) Loop {
	switch word {
	case "blo":
		return BackLoop
	case "flo":
		return FrontLoop
	case "thirdloop":
		return ThirdLoop
	}
	return BothLoops
}

func (r *reader) work(g *gWork) Node {
	out := &Work{HeldBack: g.HeldBack != nil}
	r.howMany(g, out)
	out.Places = r.places(g.Where)
	r.oneOnEach(g, out)
	oneAfterAnother(g, out)
	r.loops(g, out)
	if len(g.Where) > 0 && g.Each {
		out.Places[0].Each = true
	}
	if g.Together {
		r.together(out)
	}
	r.nextTogether(g, out)
	r.along(g, out)
	r.colour(g, out)
	for _, s := range [...]*gSpacing{g.Spacing, g.Spacing2} {
		if s != nil {
			out.Between = *r.spacing(s)
		}
	}
	if g.For != nil && g.For.stitch() != nil {
		out.Picot = r.stitch(g.For.stitch()).Meaning.Is(stitch.Picot)
		r.refused = r.refused || !out.Picot
	}
	if s := r.shaping(g, out); s != nil {
		return s
	}
	switch {
	case closesPicot(g, out):
		out.Picot, out.Places = true, nil
	case len(g.Where) > 0 && goesBack(g.Where[0]):
		backAlong(out)
	}
	return r.slip(g, out)
}

// howMany reads what is worked, how many of it and how often.
func (r *reader) howMany(g *gWork, w *Work) {
	if g.Stitch != nil {
		w.Stitch = r.stitch(g.Stitch)
	} else {
		w.Stitch = r.named(g)
	}
	switch {
	case g.N != nil:
		w.Number = r.num(g.N)
	case g.M != nil:
		w.Number = r.num(g.M)
	}
	if g.Of != nil {
		r.madeOf(g.Of, w)
	}
	if g.Once1 != nil {
		w.Times = r.tokens[g.Once1.Pos.Offset].Values
	}
	for _, t := range [...]*gTimesN{g.Times, g.Times2} {
		if t != nil {
			w.Times, _ = r.times(t)
		}
	}
	if g.Times != nil && g.Times.N != nil && len(g.Where) > 0 && !w.Number.Written() {
		w.Number, w.Times = w.Times, Num{} // `dc x 3 in next ch`
	}
}

// oneAfterAnother reads so many stitches in successive places as one in each.
func oneAfterAnother(g *gWork, w *Work) {
	for i, where := range g.Where {
		if successive(where) && i < len(w.Places) {
			p := &w.Places[i]
			p.Number, p.Each, w.Number = w.Number, true, Num{}
			if p.Noun.Word == "loop" {
				p.Noun = anyStitch // the top of any stitch
			}
		}
	}
}

// loops reads which loops are worked, as it is said of the stitch or of its place.
func (r *reader) loops(g *gWork, w *Work) {
	for _, l := range [...]*gLoopIn{g.Loop1, g.Loop2, g.Loop3} {
		if l != nil {
			w.Loop, w.InLoops = loopNamed(l.Word), true
		}
	}
	for _, p := range w.Places {
		if p.Loop != BothLoops {
			w.Loop = p.Loop
		}
	}
}

// along reads stitches whose places are not named one by one: they are spread evenly, or go
// along an edge, to the end, as far as a landmark.
func (r *reader) along(g *gWork, w *Work) {
	where := false // it is said, and not only how
	for _, said := range g.Where {
		for _, m := range said.Mods {
			w.Evenly, where = w.Evenly || m.Word == "evenly", where || m.Word != "evenly"
		}
	}
	if g.Along && !where {
		w.Places, w.Evenly = []Place{{Noun: Noun{Kind: NounEdge}}}, true // `74 sc around armhole`
	}
	if g.In && len(w.Places) == 0 {
		r.refused = r.refused || w.Number.Written()
		w.Places = []Place{AllAlong} // `work in sc`
	}
	if g.Until {
		if len(w.Places) == 0 {
			w.Places = []Place{{}}
		}
		last := &w.Places[len(w.Places)-1]
		last.Each, last.To = true, ToLimit{Kind: ToMeasure}
	}
}

// colour reads the yarn that stitches are worked in.
func (r *reader) colour(g *gWork, w *Work) {
	if g.Yarn != nil {
		w.Yarn = r.yarnName(g.Yarn)
	}
	if g.Coloured != nil {
		w.Yarn = g.Coloured.Name
		r.refused = r.refused || g.N == nil || !r.namesYarn(g.Coloured.Pos.Offset)
	}
}

// madeOf reads `shell of 5 dc` as the 5 dc that it is, by that name; stitches that are
// closed together keep theirs.
func (r *reader) madeOf(g *gStitchOf, w *Work) {
	if !w.Stitch.Meaning.Is(stitch.Group, stitch.Together, stitch.Texture) || w.Number.Or(0, 1) != 1 {
		r.refused = true
		return
	}
	if w.Stitch.Meaning.Is(stitch.Group) {
		w.Called, w.Stitch, w.Number = w.Stitch, r.stitch(g.Stitch), r.num(g.N)
	}
}

// closesPicot reads `sl st in sc just made`, `sl st in last sc made`: the chains before
// it become a picot.
func closesPicot(g *gWork, w *Work) bool {
	if !w.Stitch.Meaning.Is(stitch.Slip) || len(w.Places) != 1 || len(g.Where) != 1 || w.Places[0].Pick != PickNext && w.Places[0].Pick != PickLast {
		return false
	}
	of := w.Places[0]
	if of.Of != nil {
		of = *of.Of // `in top of sc just made`
	}
	made := slices.ContainsFunc(g.Where[0].Mods, func(m *gMod) bool { return m.Word == "made" })
	return made && (of.Noun.Kind == NounStitch || of.Noun.Kind == NounAny)
}

// back reads `work back along the chain with sl st`.
func (r *reader) back(g *gBack) Node {
	w := &Work{Stitch: r.stitch(g.Stitch), Places: []Place{{Number: r.num(g.N), Noun: oneChain}}}
	backAlong(w)
	return w
}

func goesBack(g *gWhere) bool {
	return slices.ContainsFunc(g.Mods, func(m *gMod) bool { return m.Word == "back" || m.Word == "down the chain" })
}

// backAlong reads stitches that go back over the chains before them: slip stitches whose
// number is not said make a cord of them, which is an ornament as a picot is; others go
// into so many of them, or into all but those that are skipped for their height.
func backAlong(w *Work) {
	k := w.Stitch.Meaning.In(stitch.Unsettled)
	if k == nil || k.Class != stitch.Slip && k.Class != stitch.Plain || len(w.Places) != 1 || w.Loop != BothLoops {
		return
	}
	p := w.Places[0]
	if p.Noun.Kind != NounChain && !(p.Noun.Kind == NounNone && k.Class == stitch.Slip) || p.From != FromHere || p.Of != nil || p.Name != "" {
		return
	}
	n := p.Number
	if !n.Written() {
		n = w.Number
	}
	if k.Class == stitch.Slip && !n.Written() {
		w.Picot, w.Places = true, nil
		return
	}
	noun := oneChain
	rest := Place{Pick: PickRemaining, Noun: noun}
	if n.Written() {
		rest.Pick, rest.Number, w.Number = PickNext, n.plus(One(-1)), Num{}
	}
	w.Places = []Place{{Pick: PickNth, Nth: max(2, k.Turning+1), Noun: noun, From: FromHook}, rest}
}

// stitch is what is made, nil for none: `for picot`, `to form picot`.
func (g *gFor) stitch() *gStitch {
	if g.What != nil {
		return g.What
	}
	return g.Shape
}

// named reads a stitch that no dictionary has: `rice st`, `4 open meshes`. Its
// words stand together.
func (r *reader) named(g *gWork) StitchRef {
	switch {
	case g.Named.Step != "":
		return StitchRef{Word: g.Named.Step}
	case g.Named.Loop:
		return StitchRef{Word: "loop st"}
	}
	to := g.Named.Pos.Offset + len(g.Named.Names)
	noun := r.tokens[to].Canon
	if noun != "st" && (noun != "sp" || g.N == nil || !filet[g.Named.Names[0]]) {
		r.refused = true
	}
	return StitchRef{Word: strings.Join(g.Named.Names, " ") + " " + noun}
}

// written is a piece as its words call it: of those that name a counted thing, a hexagon or
// a leaf, which one it is.
func (r *reader) written(g *gPiece) string {
	var out []string
	for _, t := range r.tokens[g.Pos.Offset:] {
		if len(out) == len(g.Words) {
			break
		}
		switch {
		case t.Kind == Word && t.Canon == "":
		case t.Canon == "group" && t.Written != "":
			out = append(out, t.Written)
		case t.Kind == Number:
			out = append(out, strconv.Itoa(t.Values.At(0)))
		default:
			out = append(out, t.Canon)
		}
	}
	return strings.Join(out, " ")
}

// namesYarn tells a word that can only be a yarn: a colour, a single letter, how
// light it is.
func (r *reader) namesYarn(at int) bool {
	t := r.tokens[at]
	return callsYarn(t) && t.Canon != "x"
}

// callsYarn tells the name of a yarn: one that the pattern lists, a colour, how light it is,
// or the letters that yarns go by.
func callsYarn(t Token) bool {
	return t.Written == colourToken || lightness[t.Canon] || lettersYarn(t.Canon)
}

// lettersYarn tells the letters that yarns go by.
func lettersYarn(name string) bool {
	return len(name) == 1 || name == "mc" || strings.TrimRight(name, "0123456789") == "cc"
}

var lightness = map[string]bool{"light": true, "dark": true, "contrasting": true, "medium": true, "bright": true, "pale": true}

// filet are the words that name the meshes of filet work.
var filet = map[string]bool{"open": true, "solid": true, "closed": true, "close": true, "filled": true}

func (r *reader) spacing(g *gSpacing) *Spacing {
	out := &Spacing{Chains: r.num(g.N), All: g.Each}
	if g.M != nil {
		out.Chains = r.num(g.M)
	}
	return out
}

// oneOnEach reads `5 dc over 5 dc` and `5 dc on 5` as one on each.
func (r *reader) oneOnEach(g *gWork, w *Work) {
	if len(g.Where) != 1 || len(w.Places) != 1 || g.Where[0].Prep != "on" && g.Where[0].Prep != "over" {
		return
	}
	if p := &w.Places[0]; w.Number.Written() && w.Number.Equal(p.Number) {
		w.Number, p.Each, p.Prep = Num{}, true, In
	}
}

// together reads `hdc next 2 sts together` as hdc2tog.
func (r *reader) together(w *Work) {
	if len(w.Places) == 0 || !w.Places[0].Number.Written() {
		r.refused = true
		return
	}
	word := w.Stitch.Word + strconv.Itoa(w.Places[0].Number.At(0)) + "tog"
	meaning, ok := stitch.Find(word)
	r.refused = r.refused || !ok
	w.Stitch = StitchRef{Word: word, Meaning: meaning}
}

// nextTogether reads `sc next 2 tog` and `sc next 2 dc tog`, whose end is the name of a
// stitch too, as sc2tog.
func (r *reader) nextTogether(g *gWork, w *Work) {
	if len(w.Places) != 1 || len(g.Where) != 1 || g.Where[0].Prep != "" || w.Places[0].Pick != PickNext || w.Places[0].Number.Written() {
		return
	}
	k := w.Places[0].Noun.Stitch.Meaning.In(stitch.Unsettled)
	if k == nil || k.Class != stitch.Together && k.Class != stitch.Decrease {
		return
	}
	word := w.Stitch.Word + strconv.Itoa(max(k.Uses, 2)) + "tog"
	if meaning, ok := stitch.Find(word); ok {
		w.Stitch, w.Places = StitchRef{Word: word, Meaning: meaning}, nil
	}
}

// shaping reads `dec 1 st at each end` and `inc 6 sts evenly` as what they
// are: so many fewer or more in the row.
func (r *reader) shaping(g *gWork, w *Work) Node {
	if !w.Stitch.Meaning.Shapes() || len(g.Where) == 0 {
		return nil
	}
	less := w.Stitch.Meaning.Is(stitch.Decrease)
	if n := w.Number; w.Evenly && (n.Written() || w.Times.Written()) {
		if !n.Written() {
			n = w.Times // `inc 6 times evenly`
		}
		return &Shaping{Less: less, Number: n}
	}
	if w.Evenly && len(w.Places) > 0 {
		return &Likewise{} // `dec evenly around to 18 sts`: how often is not said
	}
	if g.Where[0].Prep != "at" {
		return nil
	}
	twice := One(2)
	if r.oneEnd(g.Where[0]) {
		twice = One(1)
	}
	if w.Number.Written() {
		twice = w.Number.times(twice)
	}
	return &Shaping{Less: less, Number: twice}
}

// oneEnd tells `at end`, `at the beginning of the row` from both ends.
func (r *reader) oneEnd(g *gWhere) bool {
	for _, t := range r.tokens[g.Pos.Offset:] {
		if t.Kind == Word && (t.Canon == "each" || t.Canon == "both" || t.Canon == "and" || t.Canon == "side" || t.Canon == "edge") {
			return false
		}
	}
	return slices.ContainsFunc(r.tokens[g.Pos.Offset:], func(t Token) bool {
		return t.Kind == Word && (t.Canon == "end" || t.Canon == "beg" || t.Canon == "rowend")
	})
}

// unshaped reads `without increasing or decreasing`.
func (r *reader) unshaped(list []*gShaper) Node {
	for _, g := range list {
		if g.Stitch != nil && !r.stitch(g.Stitch).Meaning.Shapes() {
			r.refused = true
			return nil
		}
	}
	return &Even{}
}

// shapingTimes reads `decreasing 6 evenly`, and `decrease 4x1 st at each side in
// every 2nd row`.
func (r *reader) shapingTimes(g *gShaping) Node {
	if g.Kind == nil {
		return &Shaping{Less: g.Less, Number: r.num(g.N)}
	}
	kind := r.stitch(g.Kind).Meaning
	if !kind.Shapes() {
		r.refused = true
		return nil
	}
	n := r.num(g.Times).times(r.num(g.Each))
	if g.Both {
		n = n.times(One(2))
	}
	return &Shaping{Less: kind.Is(stitch.Decrease), Number: n}
}

// slip tells the slip stitch that joins from one that is a stitch of the row.
func (r *reader) slip(g *gWork, w *Work) Node {
	if !w.Stitch.Meaning.Is(stitch.Slip) {
		w.Joins = g.ToJoin
		return w
	}
	leads := len(g.Where) == 2 && len(w.Places) == 2 && w.Places[0].Noun.Kind == NounNone && w.Places[0].To.Kind == ToTheEnd && g.Where[1].Prep == "to"
	if leads {
		w.Places = w.Places[1:] // `sl st around to the sp`
	}
	joins := g.ToJoin || leads || len(g.Where) > 0 && g.Where[0].Prep == "to"
	if !joins || travels(w.Places) {
		return w
	}
	j := &Join{Ring: g.Ring, With: w.Stitch}
	if len(w.Places) > 0 {
		j.Place = w.Places[0]
	}
	if to := j.Place.To; to.Kind == ToNext {
		j.Place = Place{Noun: to.Noun} // `sl st to next sp` leads to it
	}
	return j
}

// travels tells slip stitches that go along to a space, where the next round
// begins, from one that joins.
func travels(places []Place) bool { return len(places) == 1 && places[0].To.Kind == ToNext }
