package syntax

import (
	"slices"

	"stitchproof/lang/source"
)

// fold turns a flat run of clauses into what it means together: stars and
// `rep from *` become repeats, a remark in brackets joins the chain it speaks
// of, a place named first gathers its stitches.
func (b *builder) fold(list []Clause) []Clause {
	f := folder{b: b, in: list, out: make([]Clause, 0, len(list))}
	for f.at = 0; f.at < len(list); f.at++ {
		f.clause(list[f.at])
	}
	f.close()
	return f.out
}

type folder struct {
	b     *builder
	in    []Clause
	at    int
	out   []Clause
	open  []openMark
	wraps int // repeats without a mark, each of which holds all before it
	// handwork is set from a step that no stitch is counted in to the end of its
	// sentence: the rest of it is a remark.
	handwork bool
	// last is the body that the latest starred repeat had, for `rep from * once more`.
	last *Repeat
}

// openMark is a star whose repeat has not ended yet.
type openMark struct {
	text string
	at   int // index in out of the first clause of the body
	span source.Span
}

func (f *folder) clause(c Clause) {
	if f.at > 0 && f.in[f.at-1].Sep >= SepStop {
		f.handwork = false
	}
	switch c.Node.(type) {
	case *MakeUp, *Finish:
		f.handwork = true
	}
	switch n := c.Node.(type) {
	case *CountsNote:
		if f.attachCounts(c.Span, n.Counts) {
			return
		}
	case *Chain:
		if n.Counts.Said && f.countsFirst(c, n) {
			return
		}
	case *Bracket:
		if f.bracket(c, n) {
			return
		}
	case *Mark:
		f.mark(c, n.Text)
		return
	case *Repeat:
		if len(n.Body) == 0 && f.before(c, n) {
			return
		}
	case *RepeatFrom:
		f.repeat(c, n)
		return
	case *Alternate:
		f.alternate(c, n)
		return
	case *Ending:
		if f.ending(c, n) {
			return
		}
		c.Node = f.loneEnding(n)
	case *RepeatBranch:
		if body := f.branch(n.Name); body != nil {
			c.Node = &Repeat{Body: body, Limit: Times, Number: n.Number, StopAt: -1}
		}
	case *PlaceFirst:
		f.placeFirst(c, n)
		return
	case *Work:
		if f.tellsSpread(n) || len(f.out) == 0 && c.Sep == SepStop && !n.Number.Written() && len(n.Places) == 1 && n.Places[0].Elsewhere {
			c.Node = &Remark{} // `Thorns on the first side.` heads what comes
			break
		}
		if f.oddAndEven(c, n) {
			return
		}
		if f.shares(c, n) {
			return
		}
		if n = f.topOfIt(n); n != c.Node {
			c.Node = n
		}
		if f.countsHome(n) {
			c.Node = &Total{Parts: []Part{{Number: n.Number, Noun: Noun{Kind: NounStitch, Stitch: n.Stitch}}}}
			break
		}
		if n = f.spreadOver(n); n != c.Node {
			c.Node = n
		}
		if n.Between.Chains.Written() {
			f.spaced(c, n)
			return
		}
		if from := f.allFrom(c); from < len(f.out) && len(n.Places) == 1 {
			f.listed(from, c, n, false)
			return
		}
		if from := f.listFrom(n); from < len(f.out) {
			f.listed(from, c, n, n.Places[0].Noun.Kind == NounStitch)
			return
		}
		if from := f.mixedFrom(n); from < len(f.out) {
			f.listed(from, c, n, true)
			return
		}
	case *Skip:
		if f.startsIn(c, n.Place) {
			return
		}
		if f.turnsBack(n.Place) {
			f.workBack(c)
			return
		}
		if otherEach(n.Place) {
			c.Node = f.skipsOthers(n.Place)
		}
	case *Leave:
		f.leaves(n.Place)
	case *Join:
		if y := f.joinsIn(n); y != nil {
			f.out[len(f.out)-1] = Clause{Span: f.out[len(f.out)-1].Span.Union(c.Span), Sep: c.Sep, Node: y}
			return
		}
	case *Spacing:
		if f.spacing(c, n) {
			return
		}
		c.Node = &Unread{}
	case *HeldBack:
		if f.heldBack(c) {
			return
		}
		c.Node = &Unread{}
	case *Total:
		if n.Chains {
			f.countsChains(c)
			return
		}
	case *Even:
		if f.goneAround(n) {
			c.Node = &Remark{}
		}
	case *MakeUp:
		if k := len(f.out); k > 0 && n.LongTail {
			if _, ok := f.out[k-1].Node.(*Finish); ok {
				f.out[k-1] = Clause{Span: f.out[k-1].Span.Union(c.Span), Sep: c.Sep, Node: &Finish{LongTail: true}}
				return
			}
		}
	case *Likewise:
		if k := len(f.out); f.doneCounting() && f.out[k-1].Sep < SepStop {
			c.Node = &Remark{} // `34 dc, with 4 dc between the markers`
		}
	case *Unread:
		if f.handwork || f.doneCounting() {
			c.Node = &Remark{} // `embroider two eyes over Rnd 9, 4 sts apart`; `(12) the neck`
		}
	}
	f.out = append(f.out, c)
}

// topOfIt reads the `it` of `to the turning ch, 3 dc in the top of it` as that chain, which is what the work has come to.
func (f *folder) topOfIt(w *Work) *Work {
	if len(f.out) == 0 || len(w.Places) != 1 {
		return w
	}
	place := w.Places[0]
	if place.Of == nil || place.Of.Pick != PickSame || place.Of.Noun.Kind != NounNone {
		return w
	}
	var left Noun
	switch n := f.out[len(f.out)-1].Node.(type) {
	case *Repeat:
		left = n.Last.Noun
	case *Work:
		if len(n.Places) == 1 {
			left = n.Places[0].To.Noun
		}
	}
	if left.Kind != NounTurning {
		return w
	}
	place.Of = &Place{Noun: left}
	onIt := *w
	onIt.Places = []Place{place}
	return &onIt
}

// countsChains takes `counting each ch as a st` with the count before it; with none it is a remark.
func (f *folder) countsChains(c Clause) {
	if k := len(f.out); k > 0 {
		if total, ok := f.out[k-1].Node.(*Total); ok {
			with := *total
			with.Chains = true
			f.out[k-1] = Clause{Span: f.out[k-1].Span.Union(c.Span), Sep: c.Sep, Node: &with}
			return
		}
	}
	f.out = append(f.out, Clause{Span: c.Span, Sep: c.Sep, Node: &Remark{}})
}

// tellsSpread tells how the stitches go that the clause before spreads, or that a list has:
// `36 sc evenly around the cuff, 1 in each row end`, `sc, hdc, sc, 1 in each ch`.
func (f *folder) tellsSpread(w *Work) bool {
	if len(f.out) == 0 || w.Stitch.Written() || len(w.Places) != 1 || !w.Places[0].Each {
		return false
	}
	before, ok := f.out[len(f.out)-1].Node.(*Work)
	if !ok || !before.Stitch.Written() {
		return false
	}
	listed := len(f.out) > 1 && unplacedWork(f.out[len(f.out)-1]) && unplacedWork(f.out[len(f.out)-2])
	return before.Evenly && before.Number.Written() || listed && w.Number.Written() && w.Number.At(0) == 1
}

// leaves ends the stitches that go to the end of the row before those that are then
// said to be left: `sc in each st across, leaving last 3 sts unworked`.
func (f *folder) leaves(p Place) {
	k := len(f.out)
	if k == 0 || f.starred() || !p.Number.Written() {
		return
	}
	w, ok := f.out[k-1].Node.(*Work)
	if !ok || len(w.Places) == 0 || w.Places[len(w.Places)-1].To.Kind != ToTheEnd {
		return
	}
	with := *w
	with.Places = slices.Clone(w.Places)
	with.Places[len(with.Places)-1].To = ToLimit{Kind: ToLastN, Number: p.Number, Noun: p.Noun}
	f.out[k-1].Node = &with
}

// goneAround tells words that say again of the stitches before them that they keep the
// number below: `sc in each st, without increasing`, `no increase, no decrease`.
func (f *folder) goneAround(e *Even) bool {
	k := len(f.out)
	if k == 0 || e.Number.Written() {
		return false
	}
	switch before := f.out[k-1].Node.(type) {
	case *Even:
		return true
	case *Work:
		return len(before.Places) > 0 && before.Places[len(before.Places)-1].To.Kind == ToTheEnd
	}
	return false
}

// joinsIn reads `with Rust, join with sc in any st` as joining that yarn: a round
// is closed in no stitch that the maker chooses. It gives nil for any other joining.
func (f *folder) joinsIn(n *Join) *Yarn {
	k := len(f.out)
	if k == 0 || n.Ring || n.Place.Pick != PickAny {
		return nil
	}
	y, ok := f.out[k-1].Node.(*Yarn)
	if !ok || y.Action == YarnDrop || y.Action == YarnCarry {
		return nil
	}
	return &Yarn{Action: YarnJoin, Yarn: y.Yarn, Place: n.Place, With: n.With}
}

// doneCounting tells whether the row has stated its count and nothing more is worked:
// what else is said is a remark.
func (f *folder) doneCounting() bool {
	k := len(f.out)
	if k == 0 {
		return false
	}
	switch n := f.out[k-1].Node.(type) {
	case *Total:
	case *Leave:
		if !n.Told {
			return false
		}
	default:
		return false
	}
	return !slices.ContainsFunc(f.in[f.at:], func(c Clause) bool { return steps(c.Node) })
}

// steps tells a clause that makes or passes stitches.
func steps(n Node) bool {
	switch n.(type) {
	case *Work, *Group, *Repeat, *RepeatFrom, *Skip, *Chain, *Bracket:
		return true
	}
	return false
}

// before takes `rep ( ) 10 more times`, which speaks of the bracket before it.
func (f *folder) before(c Clause, n *Repeat) bool {
	for i := len(f.out) - 1; i >= 0; i-- {
		switch br := f.out[i].Node.(type) {
		case *Bracket:
			n.Body = br.Body
			f.out = append(f.out[:i], Clause{Span: f.out[i].Span.Union(c.Span), Sep: c.Sep, Node: n})
			return true
		case *Remark:
		default:
			return false
		}
	}
	return false
}

// starred tells whether a star stands right before: what follows it belongs to
// its repeat.
func (f *folder) starred() bool {
	return len(f.open) > 0 && f.open[len(f.open)-1].at == len(f.out)
}

// attachCounts gives what is said of a chain to the chain it is said of.
func (f *folder) attachCounts(span source.Span, counts Counts) bool {
	n := len(f.out)
	if n == 0 || f.starred() {
		return false
	}
	ch, ok := f.out[n-1].Node.(*Chain)
	if !ok {
		return false
	}
	counts.Span = span
	with := *ch
	with.Counts = counts
	f.out[n-1].Node = &with
	f.out[n-1].Span = f.out[n-1].Span.Union(span)
	return true
}

// countsFirst gives what is said in the end of the chain that the row begins with to that chain:
// `12 dc. The ch 2 counts as a dc.` A chain to turn for the next row is made there, and not
// only spoken of.
func (f *folder) countsFirst(c Clause, said *Chain) bool {
	n := len(f.out)
	if n == 0 || said.Counts.Span != (source.Span{}) || slices.ContainsFunc(f.in[f.at+1:], goesOnAfter) {
		return false
	}
	_, ofCount := f.out[n-1].Node.(*Total)
	first := slices.IndexFunc(f.out, func(c Clause) bool { return steps(c.Node) })
	if first >= 0 && first < n-1 && (ofCount || f.out[n-1].Sep >= SepStop) {
		if ch, ok := f.out[first].Node.(*Chain); ok && !ch.Counts.Said && ch.Number.Equal(said.Number) {
			with := *ch
			with.Counts = said.Counts
			with.Counts.Span = c.Span
			f.out[first].Node, ofCount = &with, true
		}
	}
	if ofCount {
		c.Node = &Remark{}
		f.out = append(f.out, c)
	}
	return ofCount
}

// goesOnAfter tells a clause that works or turns, and does not only count.
func goesOnAfter(c Clause) bool {
	switch n := c.Node.(type) {
	case *Turn:
		return true
	case *Bracket:
		return n.Total == nil
	}
	return steps(c.Node)
}

// bracket decides what a bracket with nothing said after it is: a remark on
// the chain before it, a stated count, a comment, or a run of clauses.
func (f *folder) bracket(c Clause, n *Bracket) bool {
	if len(n.Body) == 1 {
		if note, ok := n.Body[0].Node.(*CountsNote); ok && f.attachCounts(c.Span, note.Counts) {
			f.out[len(f.out)-1].Sep = c.Sep
			return true
		}
		if left, ok := n.Body[0].Node.(*Leave); ok && left.Told {
			f.out = append(f.out, Clause{Span: c.Span, Sep: c.Sep, Node: left})
			return true
		}
	}
	if counts, ok := f.standsFor(n); ok && f.attachCounts(c.Span, counts) {
		f.out[len(f.out)-1].Sep = c.Sep
		return true
	}
	if oneOfSo(f.b.within(c.Span)) {
		f.out = append(f.out, Clause{Span: c.Span, Sep: c.Sep, Node: &Remark{}})
		return true
	}
	if f.timesOf(c, n) || f.multipleOf(c, n) || f.names(c, n) || f.worksOver(c, n) || f.sharesOut(c, n) {
		return true
	}
	if rep, ok := f.peek().(*RepeatFrom); ok && rep.From == "" && len(f.open) == 0 {
		return false // `(…), repeat around`
	}
	if f.glosses(n) || f.restates(n) || f.passedOver(c) {
		c.Node = &Remark{}
		f.out = append(f.out, c)
		return true
	}
	switch {
	case n.Total != nil && (f.countStands() || plainCount(n.Total)):
		c.Node = n.Total
	case unread(n.Body) && madeFirst(n.Body):
		c.Node = &Bracket{Body: n.Body[:1]} // `(a corner made, and this is how …)`
	case unread(n.Body):
		c.Node = &Remark{}
	default:
		return false
	}
	f.out = append(f.out, c)
	return true
}

// oneOfSo tells a bracket that says which of so many was made: `(thorn 1 of 5)`, `(2 of 5)`.
func oneOfSo(bracket []Token) bool {
	n := len(bracket)
	if n < 5 || n > 6 || bracket[0].Kind != Open || bracket[n-1].Kind != Close {
		return false
	}
	said := bracket[n-4 : n-1]
	return said[0].Kind == Number && said[1].Kind == Word && said[1].Canon == "of" && said[2].Kind == Number && (n == 5 || bracket[1].Kind == Name || bracket[1].Kind == Stitch)
}

// standsFor reads a bracket behind the chain that a row begins with that says, without the word, what it counts as: `4 ch
// (1 tr and 1 ch)`.
func (f *folder) standsFor(n *Bracket) (Counts, bool) {
	if len(f.out) != 1 || n.Total == nil || len(n.Total.Parts) != 2 {
		return Counts{}, false
	}
	ch, ok := f.out[0].Node.(*Chain)
	first, rest := n.Total.Parts[0], n.Total.Parts[1]
	if !ok || ch.Counts.Said || first.Noun.Kind != NounStitch || first.Number.At(0) != 1 || rest.Noun.Kind != NounChain || ch.Number.At(0) <= rest.Number.At(0)+1 {
		return Counts{}, false
	}
	return Counts{Said: true, As: n.Total.Parts}, true
}

// glosses tells a bracket that only names the shaping just worked: `2 dc in next
// dc (an increase)`.
func (f *folder) glosses(n *Bracket) bool {
	k := len(f.out)
	if k == 0 || len(n.Body) != 1 || f.out[k-1].Sep != SepNone || f.starred() {
		return false
	}
	w, ok := n.Body[0].Node.(*Work)
	if !ok || w.Number.Written() || w.Times.Written() || len(w.Places) > 0 {
		return false
	}
	if !w.Stitch.Meaning.Shapes() {
		return false
	}
	switch before := f.out[k-1].Node.(type) {
	case *Bracket:
		return true
	case *Work:
		return len(before.Places) > 0
	}
	return false
}

// passedOver tells a bracket that says which stitch was just skipped: `skip next sc
// (sc behind the dc just made)`.
func (f *folder) passedOver(c Clause) bool {
	k := len(f.out)
	if k == 0 || f.starred() {
		return false
	}
	if _, skips := f.out[k-1].Node.(*Skip); !skips {
		return false
	}
	return slices.ContainsFunc(f.b.within(c.Span), func(t Token) bool { return t.Canon == "behind" })
}

// restates tells a bracket after the join that says again what each repeat made:
// `join (3 dc, 1 fpdc, 12 times)`.
func (f *folder) restates(n *Bracket) bool {
	k := len(f.out)
	if k == 0 || n.Total != nil || f.peek() != nil {
		return false
	}
	if _, joined := f.out[k-1].Node.(*Join); !joined {
		return false
	}
	return numbered(n.Body)
}

// numbered tells steps that are all so many stitches, whose place is not said.
func numbered(body []Clause) bool {
	return len(body) > 0 && !slices.ContainsFunc(body, func(c Clause) bool {
		switch n := c.Node.(type) {
		case *Work:
			return len(n.Places) > 0 || !n.Number.Written()
		case *Repeat:
			return !numbered(n.Body)
		}
		return true
	})
}

// multipleOf takes `ch 56 (a multiple of 6 + 2)` and `ch a multiple of 6 + 2 (56
// here)`; with no chain before it the bracket only says on what a row goes.
func (f *folder) multipleOf(c Clause, n *Bracket) bool {
	if len(n.Body) == 0 {
		return false
	}
	said, ok := n.Body[0].Node.(*Chain)
	bare := ok && len(n.Body) == 1 && said.Multiple.Written() && !said.Number.Written()
	k := len(f.out)
	if k == 0 || !isChain(f.out[k-1].Node) {
		if bare {
			f.out = append(f.out, Clause{Span: c.Span, Sep: c.Sep, Node: &Remark{}})
		}
		return bare
	}
	with := *f.out[k-1].Node.(*Chain)
	switch {
	case with.Multiple.Written() && !with.Number.Written():
		with.sampled(n.Body)
	case bare:
		with.Multiple, with.Plus = said.Multiple, said.Plus
	default:
		return false
	}
	f.out[k-1] = Clause{Span: f.out[k-1].Span.Union(c.Span), Sep: c.Sep, Node: &with}
	return true
}

// sampled takes the number that a remark on a multiple works out, `(6 x 4 = 24, +
// 3 = 27)`: the last one. What is no such multiple counts stitches, to which
// chains to turn were added.
func (c *Chain) sampled(remark []Clause) {
	for _, r := range remark {
		t, ok := r.Node.(*Total)
		if !ok || len(t.Parts) != 1 {
			continue
		}
		if k := t.Parts[0].Noun.Kind; k == NounNone || k == NounAny || k == NounChain {
			c.Number, c.Sample = t.Parts[0].Number, true
		}
	}
	if c.Sample && c.Number.At(0) < c.Multiple.At(0) {
		c.Plus, c.Number, c.Sample = c.Plus.plus(c.Number), Num{}, false // `(+ 2 for the base chain)`
		return
	}
	if unit := c.Multiple.At(0); c.Sample && unit > 0 && (c.Number.At(0)-c.Plus.At(0))%unit != 0 {
		c.Multiple, c.Plus = Num{}, Num{}
	}
}

// timesOf takes `fan [4 (5, 6) times]`: the bracket says how often the stitch
// before it is worked.
func (f *folder) timesOf(c Clause, n *Bracket) bool {
	k := len(f.out)
	rep := timesIn(n)
	if k == 0 || rep == nil || f.starred() {
		return false
	}
	node := &f.out[k-1].Node
	if r, ok := (*node).(*Repeat); ok && r.Limit == Unstated {
		r.Limit, r.Number = Times, rep.Number // `*4 sc, dec* (6 times)`
		f.out[k-1].Span, f.out[k-1].Sep = f.out[k-1].Span.Union(c.Span), c.Sep
		return true
	}
	if f.timesOfAll(c) {
		f.whole(c, &Repeat{Limit: Times, Number: rep.Number})
		return true
	}
	if r, ok := (*node).(*Repeat); ok && len(r.Ending) > 0 {
		node = &r.Ending[len(r.Ending)-1].Node // `rep from * twice, end fan [4 times]`
	}
	work, ok := (*node).(*Work)
	if !ok {
		return false
	}
	w := *work
	w.Times, *node = rep.Number, &w
	f.out[k-1].Span, f.out[k-1].Sep = f.out[k-1].Span.Union(c.Span), c.Sep
	return true
}

// timesIn gives the words in a bracket that only say how often, nil for any other.
func timesIn(n *Bracket) *RepeatFrom {
	if len(n.Body) != 1 {
		return nil
	}
	rep, ok := n.Body[0].Node.(*RepeatFrom)
	if !ok || rep.From != "" || !rep.Number.Written() {
		return nil
	}
	return rep
}

// timesOfAll tells a bracket that says how often the steps before it are worked, not
// the last of them alone: `5 sc, inc (x6)`, `5 sc, inc (repeat 6 times)`.
func (f *folder) timesOfAll(c Clause) bool {
	k := len(f.out)
	if k < 2 || f.out[k-2].Sep > SepComma || !steps(f.out[k-2].Node) || !steps(f.out[k-1].Node) || len(f.open) > 0 {
		return false
	}
	return slices.ContainsFunc(f.b.within(c.Span), func(t Token) bool { return t.Canon == "rep" || t.Canon == "x" || t.Canon == "×" })
}

func (f *folder) peek() Node {
	if f.at+1 < len(f.in) {
		return f.in[f.at+1].Node
	}
	return nil
}

// countStands tells whether a stated count may stand here: at the end, or
// before what ends a row.
func (f *folder) countStands() bool {
	if f.branches() || BackAlongChain(f.out) {
		return true // what was worked along a branch is counted as it is done
	}
	switch n := f.peek().(type) {
	case nil, *Join, *Turn, *Finish, *NoJoin, *Yarn, *MakeUp, *Total, *Remark, *Unread, *Mark, *Branch, *Return:
		return true
	case *Leave:
		return n.Told
	case *Bracket: // `(12 sc) (8 rows)`, `(28 tr) (7 each side)`
		return n.Total != nil && n.Total.Parts[0].Noun.Kind == NounRow || n.Total == nil && unread(n.Body)
	case *Marker: // `(6 sc) Place marker in first st.`
		return !slices.ContainsFunc(f.in[f.at+2:], func(c Clause) bool { return steps(c.Node) })
	case *Chain:
		if f.at+2 < len(f.in) {
			_, turns := f.in[f.at+2].Node.(*Turn)
			return turns
		}
		return true
	}
	return false
}

// BackAlongChain tells whether clauses go out by a chain after the row has begun, and those after
// it only back along that: `sc in next 3 sts, ch 4, sc in 2nd ch from hook and in next 2 ch`.
func BackAlongChain(clauses []Clause) bool {
	for i := len(clauses) - 1; i > 0; i-- {
		w, ok := clauses[i].Node.(*Work)
		if !ok || len(w.Places) == 0 {
			return false
		}
		if w.Places[0].From == FromHook {
			_, chained := clauses[i-1].Node.(*Chain)
			return chained && slices.ContainsFunc(clauses[:i-1], worksPlaced)
		}
	}
	return false
}

// branches tells whether a branch has left the row.
func (f *folder) branches() bool {
	return slices.ContainsFunc(f.out, func(c Clause) bool { _, ok := c.Node.(*Branch); return ok })
}

// plainCount tells a count that cannot be an instruction: a number alone, or
// so many stitches.
func plainCount(t *Total) bool {
	for _, p := range t.Parts {
		if (p.Noun.Kind == NounStitch || p.Noun.Kind == NounChain) && p.On == "" {
			return false
		}
	}
	return true
}

// unread tells whether most of a bracket is not understood: then it is a
// comment.
func unread(body []Clause) bool {
	n := 0
	for _, c := range body {
		switch c.Node.(type) {
		case *Unread, *Remark, *Side, *CountsNote, *MakeUp, *Motion:
			n++
		}
	}
	return n > 0 && 2*n >= len(body) || len(body) == 0
}

func madeFirst(body []Clause) bool {
	if len(body) == 0 {
		return false
	}
	_, ok := body[0].Node.(*Made)
	return ok
}

// mark takes a star that stands by itself.
func (f *folder) mark(c Clause, text string) {
	if n := len(f.out); n > 0 && len(f.open) == 0 {
		if rep, ok := f.peek().(*RepeatFrom); ok && rep.From == "" {
			if _, ok := f.out[n-1].Node.(*Bracket); ok {
				return // `(…)* repeat 15 times`
			}
		}
	}
	for i := len(f.open) - 1; i >= 0; i-- {
		if f.open[i].text != text {
			continue
		}
		if f.closes() {
			if _, ok := f.peek().(*RepeatFrom); !ok {
				f.wrap(i, &Repeat{Limit: Unstated, Starred: true}, c)
			}
			return
		}
		break
	}
	if n := len(f.open); n > 0 && text != f.open[n-1].text && !(text == "*" && f.open[n-1].text == "**") {
		f.out = append(f.out, c) // a stopping mark inside the repeat
		return
	}
	if len(f.open) >= maxDepth {
		f.b.problems = append(f.b.problems, Problem{TooDeep, c.Span})
		f.out = append(f.out, Clause{Span: c.Span, Sep: c.Sep, Node: &Remark{}})
		return
	}
	f.open = append(f.open, openMark{text, len(f.out), c.Span})
}

// closes tells whether what follows a star shows that it ends a repeat.
func (f *folder) closes() bool {
	switch n := f.peek().(type) {
	case nil, *RepeatFrom, *Total, *Join, *Turn, *Finish, *Ending, *NoJoin:
		return true
	case *Bracket:
		return n.Total != nil || timesIn(n) != nil
	case *Unread, *Mark:
		return false
	}
	return f.at > 0 && f.in[f.at-1].Sep == SepNone && f.in[f.at].Sep >= SepComma
}

// repeat takes the words that say how often.
func (f *folder) repeat(c Clause, n *RepeatFrom) {
	r := &Repeat{Limit: n.Limit, Number: n.Number, Last: n.Last, Starred: true}
	i := f.opened(n.From)
	if i < 0 && n.From == "**" {
		i = f.opened("*") // `repeat between **`
	}
	if i >= 0 {
		f.wrap(i, r, c)
		return
	}
	switch {
	case n.From != "" && f.last != nil:
		f.again(c, n, r)
		return
	case n.From != "":
		f.b.problems = append(f.b.problems, Problem{RepeatUnanchored, c.Span})
		if len(f.out) == 0 {
			f.out = append(f.out, Clause{Span: c.Span, Sep: c.Sep, Node: &Likewise{}}) // the star stands in another row
			return
		}
	}
	if k := len(f.out); k > 0 {
		if br, ok := f.out[k-1].Node.(*Bracket); ok {
			r.Body, r.Starred, r.StopAt = br.Body, false, -1
			if r.Limit == TimesOrAll && n.From == "" {
				r.Limit = Times
			}
			f.out[k-1] = Clause{Span: f.out[k-1].Span.Union(c.Span), Sep: c.Sep, Node: r}
			return
		}
		if rows, ok := f.out[k-1].Node.(*Rows); ok && n.From == "" && !n.Pattern && n.Number.Written() && rows.Limit == Times && len(rows.List) > 0 {
			again := *rows // `go on with Rows 2 and 3, 8 more times each`
			again.Limit, again.Number = n.Limit, n.Number
			f.out[k-1] = Clause{Span: f.out[k-1].Span.Union(c.Span), Sep: c.Sep, Node: &again}
			return
		}
		if rep, ok := f.out[k-1].Node.(*Repeat); ok && n.From == "" && rep.Limit == Unstated {
			rep.Limit, rep.Number, rep.Last = n.Limit, n.Number, n.Last
			f.out[k-1].Span, f.out[k-1].Sep = f.out[k-1].Span.Union(c.Span), c.Sep
			return
		}
	}
	if k := len(f.out); k > 0 && c.Span.Len() == 0 && len(f.open) > 0 {
		f.out[k-1].Node = &Unread{} // how often was said before a star that has no end
		return
	}
	if n.Pattern || n.From != "" && len(f.open) > 0 {
		f.out = append(f.out, Clause{Span: c.Span, Sep: c.Sep, Node: &Likewise{}}) // what is repeated is not said, or another mark stands open
		return
	}
	f.whole(c, r)
}

// opened finds the star a repeat goes back to: the latest open one of that
// text, or of any where the words name none. It gives -1 for none.
func (f *folder) opened(from string) int {
	for i := len(f.open) - 1; i >= 0; i-- {
		if from == "" || f.open[i].text == from {
			return i
		}
	}
	return -1
}

// wrap makes the clauses since open mark i the body of r.
func (f *folder) wrap(i int, r *Repeat, c Clause) {
	m := f.open[i]
	f.open = f.open[:i]
	r.StopAt = -1
	for _, inner := range f.out[m.at:] {
		if _, ok := inner.Node.(*Mark); ok {
			if r.StopAt < 0 {
				r.StopAt = len(r.Body)
			}
			continue
		}
		r.Body = append(r.Body, inner)
	}
	f.out = append(f.out[:m.at], Clause{Span: m.span.Union(c.Span), Sep: c.Sep, Node: r})
	f.last = r
}

// again repeats the body of an earlier repeat: `then from * to ** once`.
func (f *folder) again(c Clause, n *RepeatFrom, r *Repeat) {
	if c.Span.Empty() {
		return // the number before the next mark was all of it
	}
	r.Body, r.StopAt = f.last.Body, -1
	if n.To != "" && f.last.StopAt >= 0 {
		r.Body = f.last.Body[:f.last.StopAt]
	}
	if r.Limit == TimesOrAll || r.Limit == More {
		r.Limit = Times
	}
	f.out = append(f.out, Clause{Span: c.Span, Sep: c.Sep, Node: r})
}

// whole repeats everything after the row's beginning, where no mark says what, or after a semicolon so many times what
// several steps behind it do, or what the word `work` begins: `1 dc in first tr; 1 dc in next sp and 1 dc in next tr, 48 times`.
func (f *folder) whole(c Clause, r *Repeat) {
	r.Whole, r.Starred, r.StopAt = true, false, -1
	from := 0
	for from < len(f.out) && begins(f.out[from].Node) && !worksAlong(f.out[from:]) {
		from++
	}
	if rows, ok := f.peek().(*Rows); ok && from == len(f.out) && r.Limit == Measured {
		measured := *rows
		measured.Limit = Measured
		f.at++
		f.out = append(f.out, Clause{Span: c.Span.Union(f.in[f.at].Span), Sep: f.in[f.at].Sep, Node: &measured})
		return // `until long enough, rep Row 3`
	}
	if f.wraps++; from == len(f.out) || f.wraps > maxDepth {
		c.Node = &Unread{}
		f.out = append(f.out, c)
		return
	}
	for i := len(f.out) - 1; i > from; i-- {
		if f.out[i-1].Sep != SepSemi {
			continue
		}
		if r.Limit == Times && len(f.out)-i > 1 || f.saysWork(f.out[i].Span) {
			from = i
		}
		break
	}
	r.Body = append(r.Body, f.out[from:]...)
	f.open = nil // a star before this repeat has no part in it
	f.out = append(f.out[:from], Clause{Span: r.Body[0].Span.Union(c.Span), Sep: c.Sep, Node: r})
}

// saysWork tells whether the words at a place begin with `work`.
func (f *folder) saysWork(at source.Span) bool {
	i, found := slices.BinarySearchFunc(f.b.tokens, at.Start, func(t Token, start int) int { return t.Span.Start - start })
	return found && f.b.tokens[i].Kind == Word && f.b.tokens[i].Canon == "work"
}

// worksAlong tells a chain that is worked along from the hook: `ch 3, sl st in 2nd ch from hook`.
func worksAlong(list []Clause) bool {
	if len(list) < 2 || !isChain(list[0].Node) {
		return false
	}
	return fromHook(list[1].Node)
}

// fromHook tells work, or a skip, that begins so many chains from the hook.
func fromHook(n Node) bool {
	switch n := n.(type) {
	case *Work:
		return len(n.Places) > 0 && n.Places[0].From == FromHook
	case *Skip:
		return n.Place.From == FromHook
	}
	return false
}

// MostRising is the most chains that a row begins with: the height of a tr and a space.
// More are worked again with what a row repeats, or are a foundation; common practice.
const MostRising = 6

// begins tells whether a clause belongs to a row's beginning rather than to
// what it repeats.
func begins(n Node) bool {
	switch n := n.(type) {
	case *Chain:
		return n.Number.At(0) <= MostRising
	case *GoBack, *Turn, *Yarn, *Join, *Side, *LoopNote, *Marker, *Remark, *CountsNote:
		return true
	case *Work:
		return len(n.Places) == 1 && n.Places[0].Pick == PickSame && n.Places[0].Noun.Kind == NounJoin
	}
	return false
}

// branch gives the clauses that make a branch, from its name to its return; nil
// where the row has none of that name that is done.
func (f *folder) branch(name string) []Clause {
	from := -1
	var open []string
	for i, c := range f.out {
		switch n := c.Node.(type) {
		case *Branch:
			if from < 0 && n.Name == name {
				from, open = i, nil
			}
			open = append(open, n.Name)
		case *Return:
			if open = n.Leaves(open); from >= 0 && len(open) == 0 {
				return slices.Clone(f.out[from : i+1])
			}
		}
	}
	return nil
}

// ending gives the end of the last repeat to the repeat it ends.
func (f *folder) ending(c Clause, n *Ending) bool {
	if i := len(f.out) - 1; i >= 0 && !f.starred() {
		r, ok := f.out[i].Node.(*Repeat)
		if !ok {
			return false
		}
		if n.Omits {
			r.Omits = n.Step
			f.out[i].Span, f.out[i].Sep = f.out[i].Span.Union(c.Span), c.Sep
			return true
		}
		if n.Step != nil {
			r.Ending = append(r.Ending, Clause{Span: c.Span, Node: n.Step})
			r.Replaces = n.Last
		}
		r.Mirrored = r.Mirrored || n.Mirrored
		if n.StopAt != "" {
			r.Stops = true
			if r.StopAt < 0 {
				f.b.problems = append(f.b.problems, Problem{RepeatUnanchored, c.Span})
			}
		}
		f.out[i].Span = f.out[i].Span.Union(c.Span)
		f.out[i].Sep = c.Sep
		return true
	}
	return false
}

// loneEnding is an ending with no repeat before it: the step it names, or a
// remark on the rows that are worked again.
func (f *folder) loneEnding(n *Ending) Node {
	if k := len(f.out); n.Step != nil && k > 0 && isEven(f.out[k-1].Node) {
		return &Remark{} // `work even, ending with sl st in last 3 sts`
	}
	if n.Step != nil {
		return n.Step
	}
	if n.Mirrored {
		return &Likewise{}
	}
	for k := len(f.out) - 1; k >= 0; k-- {
		switch f.out[k].Node.(type) {
		case *Rows, *Likewise, *Even:
			return &Remark{}
		case *Remark, *Bracket, *Total:
		default:
			return &Unread{}
		}
	}
	return &Unread{}
}

func isEven(n Node) bool { _, ok := n.(*Even); return ok }

// placeFirst gathers the stitches that go in a place named before them.
func (f *folder) placeFirst(c Clause, n *PlaceFirst) {
	g := &Group{Places: []Place{n.Place}}
	switch first := n.First.(type) {
	case nil:
	case *Bracket:
		g.Body = first.Body
	case *Group:
		g.Body = first.Body
	default:
		g.Body = []Clause{{Span: c.Span, Sep: c.Sep, Node: n.First}}
	}
	if p, ok := f.goesOnIn(n); ok {
		c.Node = &Work{Places: []Place{p}}
		f.out = append(f.out, c)
		return
	}
	for c.Sep < SepSemi && f.at+1 < len(f.in) && unplaced(f.in[f.at+1].Node) {
		f.at++
		next := f.in[f.at]
		g.Body = append(g.Body, next)
		c.Span, c.Sep = c.Span.Union(next.Span), next.Sep
	}
	if n, ok := f.peek().(*Spacing); ok && len(g.Body) > 0 {
		f.at++
		g.Between, c.Span, c.Sep = n.Chains, c.Span.Union(f.in[f.at].Span), f.in[f.at].Sep
	}
	if w, ok := n.First.(*Work); ok && n.Place.Noun.Kind == NounOther && (w.Number.Written() || len(w.Places) > 0) {
		at := f.b.worksFrom(c.Span)
		f.out = append(f.out, Clause{Span: source.Span{Start: c.Span.Start, End: at}, Node: &Turn{Rotate: true, OtherSide: true}})
		g.Body[0].Span.Start = at
		f.out = append(f.out, g.Body...) // `on other side of ch work 8 sc and 9 hdc`: one after the other
		return
	}
	if k := len(f.out); len(g.Body) == 0 && n.Place.Pick == PickSame && k > 0 {
		if _, ok := f.out[k-1].Node.(*Group); ok {
			c.Node = &Remark{} // `(sc, dc, sc) in next sp, all in the same one`
			f.out = append(f.out, c)
			return
		}
	}
	if c.Node = g; len(g.Body) == 0 {
		if f.putInto(c, n.Place) {
			return
		}
		c.Node = &Unread{}
	}
	f.out = append(f.out, c)
}

// countsHome tells stitches that only count those before them, as they come home: `sl st in each of last 8 ch, 10 sl sts,
// and you are on the twig again`.
func (f *folder) countsHome(w *Work) bool {
	k := len(f.out)
	home, ok := f.peek().(*Return)
	if !ok || !home.Told || k == f.inside() || len(w.Places) > 0 || !w.Number.Written() || w.Times.Written() || f.out[k-1].Sep != SepComma {
		return false
	}
	before, works := f.out[k-1].Node.(*Work)
	return works && len(before.Places) > 0 && before.Places[0].Noun.Kind == NounChain && (before.Stitch.Meaning == w.Stitch.Meaning || !before.Stitch.Written())
}

// goesOnIn gives the chains that the stitches before them go on in, where only words for how far they have come stand
// between: `sl st in next 4 ch, to the thorn, and in each of last 7 ch, 11 sl sts`.
func (f *folder) goesOnIn(n *PlaceFirst) (Place, bool) {
	p := n.Place
	if many := p.Noun.Length; p.Noun.Kind == NounSpace && p.Noun.Word == "" && many.Written() && !p.Number.Written() {
		p.Noun, p.Number = oneChain, many // `last 7 ch`
	}
	if n.First != nil || p.Noun.Kind != NounChain || p.Number.Or(0, 1) < 2 && !p.Each {
		return p, false
	}
	for _, c := range slices.Backward(f.out[f.inside():]) {
		if c.Sep > SepComma {
			break
		}
		switch before := c.Node.(type) {
		case *Remark:
			continue
		case *Return:
			if before.Told {
				continue // as far as a branch
			}
		case *Work:
			return p, len(before.Places) > 0 && before.Places[0].Noun.Kind == NounChain
		}
		break
	}
	return p, false
}

// worksFrom is where the words of a span that name a place end and those that work
// there begin.
func (b *builder) worksFrom(span source.Span) int {
	end := span.Start
	for _, t := range b.within(span) {
		if t.Kind == Stitch || t.Kind == Number || t.Kind == Word && t.Canon == "work" {
			break
		}
		end = t.Span.End
	}
	return end
}

// putInto gives a place that stands behind a comma to the stitches before it:
// `1 dc, in the next st of Rnd 1`.
func (f *folder) putInto(c Clause, p Place) bool {
	k := len(f.out)
	if k == 0 || f.starred() || !unplacedWork(f.out[k-1]) {
		return false
	}
	w := *f.out[k-1].Node.(*Work)
	if many := p.Noun.Length; p.Noun.Kind == NounSpace && w.Number.Written() && many.Equal(w.Number) {
		p.Noun, p.Number, w.Number = oneChain, many, Num{} // `4 sl sts, into the last 4 ch`
	}
	w.Places = []Place{p}
	c.Span = f.out[k-1].Span.Union(c.Span)
	from := f.allFrom(c)
	f.out = f.out[:k-1]
	if from < k-1 {
		f.listed(from, c, &w, false)
		return true
	}
	c.Node = &w
	f.out = append(f.out, c)
	return true
}

// unplaced tells whether a clause may go on in the place named before it.
func unplaced(n Node) bool {
	switch n := n.(type) {
	case *Work:
		return len(n.Places) == 0 || n.Places[0].Pick == PickSame
	case *Chain:
		return true
	}
	return false
}

// close reports the stars and repeats that found no partner.
func (f *folder) close() {
	for i := len(f.open) - 1; i >= 0; i-- {
		m := f.open[i]
		if n := len(f.out); n > 0 && m.at >= n && f.out[n-1].Span.Covers(m.span) {
			f.b.problems = append(f.b.problems, Problem{StarUnused, m.span})
			continue // `inc* (7 times)`: what stands around the star has become one
		}
		if m.at >= len(f.out) && m.text != "*" {
			// a mark after everything else is one that other pieces refer to
			f.out = append(f.out, Clause{Span: m.span, Node: &Mark{Text: m.text}})
			continue
		}
		if m.at >= len(f.out) {
			f.b.problems = append(f.b.problems, Problem{StarUnused, m.span})
			f.out = append(f.out, Clause{Span: m.span, Node: &Remark{}})
			continue
		}
		// `*6 sc, dec` with nothing after it runs to the end all the same
		f.b.problems = append(f.b.problems, Problem{StarUnused, m.span})
		f.wrap(i, &Repeat{Limit: Unstated, Starred: true}, Clause{Span: m.span.Union(f.out[len(f.out)-1].Span)})
	}
	for i := range f.out {
		if _, ok := f.out[i].Node.(*Mark); ok && i < len(f.out)-1 {
			f.b.problems = append(f.b.problems, Problem{StarUnused, f.out[i].Span})
			f.out[i].Node = &Remark{}
		}
	}
}
