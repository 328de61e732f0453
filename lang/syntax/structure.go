package syntax

import (
	"cmp"
	"slices"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

// maxDepth bounds nested brackets; deeper ones are left unread.
const maxDepth = 60

// Problem is a fault of writing that no single clause shows.
type Problem struct {
	Kind ProblemKind
	Span source.Span
}

// ProblemKind is the kind of a problem.
type ProblemKind uint8

// The problems of writing.
const (
	BracketUnclosed  ProblemKind = iota // a bracket opened and never closed
	BracketUnopened                     // a bracket closed and never opened
	RepeatUnanchored                    // `rep from *` with no star before it
	StarUnused                          // a star that no repeat speaks of
	TooDeep                             // brackets nested beyond reason
)

// builder cuts an instruction into clauses: brackets, stars and separators
// first, then the words between them.
type builder struct {
	tokens   []Token
	match    []int      // for each bracket the index of its partner, else -1
	groups   [][]Clause // the insides of bracketed groups, by Token.Group
	totals   []*Total   // what each inside reads as, taken for a stated count
	worked   int        // the index behind the last stitch
	problems []Problem
}

// build reads the tokens of one instruction.
func build(tokens []Token) ([]Clause, []Problem) {
	b := &builder{tokens: tokens}
	b.pair()
	clauses := b.list(0, len(tokens), 0)
	return clauses, b.problems
}

// settled are the tokens of an instruction, with the marks that follow its label of n
// tokens read as the whole of it tells.
func settled(tokens []Token, n int) []Token {
	if !slices.ContainsFunc(tokens[n:], unsettled) {
		return tokens
	}
	tokens = slices.Clone(tokens) // others see them
	crosses(tokens[n:])
	setApart(tokens[n:])
	emphasis(tokens[n:])
	roundabout(tokens[n:])
	return tokens
}

// unsettled tells a mark that may be read as another.
func unsettled(t Token) bool {
	return t.Kind == Star || t.Kind == Sign || t.Kind == Dash || t.Kind == Name && t.Canon == "x" || t.Kind == Word && t.Canon == "rnd"
}

// roundabout reads the `round` that says how far a repeat goes, where British patterns
// have no `around`: `rep from * round; ss in first dc`.
func roundabout(tokens []Token) {
	for i := 1; i < len(tokens); i++ {
		if t := tokens[i]; t.Kind == Word && t.Canon == "rnd" && (tokens[i-1].Kind == Star || tokens[i-1].Kind == Close) &&
			(i+1 == len(tokens) || separates(tokens[i+1])) {
			tokens[i].Canon = "around"
		}
	}
}

// crosses reads the X of some old books as the star it stands for: `X 2 dc, 3
// ch, X 8 times`. The first begins a clause and is no number of times.
func crosses(tokens []Token) {
	var marks []int
	for i, t := range tokens {
		if t.Kind == Name && t.Canon == "x" && (i == 0 || separates(tokens[i-1]) || tokens[i-1].Kind == Word && tokens[i-1].Canon == "work") {
			marks = append(marks, i)
		}
	}
	if len(marks) < 2 || marks[0]+2 >= len(tokens) {
		return
	}
	if after := tokens[marks[0]+1]; after.Kind == Number {
		if next := tokens[marks[0]+2]; next.Kind != Stitch && next.Kind != Name && next.Canon != "ch" {
			return
		}
	}
	for _, i := range marks {
		tokens[i].Kind = Star
	}
}

// separates tells a token that ends a clause.
func separates(t Token) bool {
	switch t.Kind {
	case Comma, Semi, Period, Colon, Dash:
		return true
	}
	return false
}

// pair finds each bracket's partner, and the last stitch. Brackets of different shapes pair with
// each other, as slips of the pen do.
func (b *builder) pair() {
	b.match = make([]int, len(b.tokens))
	var open []int
	for i := range b.tokens {
		b.match[i] = -1
		switch b.tokens[i].Kind {
		case Stitch:
			b.worked = i + 1
		case Open:
			open = append(open, i)
		case Close:
			if len(open) == 0 {
				b.problem(BracketUnopened, i)
				continue
			}
			o := open[len(open)-1]
			open = open[:len(open)-1]
			b.match[o], b.match[i] = i, o
		}
	}
	for _, o := range open {
		b.problem(BracketUnclosed, o)
	}
}

// worksBehind tells whether a stitch stands at a token or behind it. It is asked at every full stop and bracket, so it must not
// look through all that follows.
func (b *builder) worksBehind(i int) bool { return i < b.worked }

// within are the tokens of a span.
func (b *builder) within(span source.Span) []Token {
	byStart := func(t Token, at int) int { return t.Span.Start - at }
	from, _ := slices.BinarySearchFunc(b.tokens, span.Start, byStart)
	to, _ := slices.BinarySearchFunc(b.tokens, span.End, byStart)
	return b.tokens[from:max(from, to)]
}

func (b *builder) problem(kind ProblemKind, token int) {
	b.problems = append(b.problems, Problem{kind, b.tokens[token].Span})
}

// list reads the clauses of tokens lo to hi.
func (b *builder) list(lo, hi, depth int) []Clause {
	if depth == 0 {
		if side := sideAlone(b.tokens[lo:hi]); side != nil {
			return side
		}
	}
	l := lister{b: b, depth: depth}
	for i := lo; i < hi; i++ {
		i = l.token(i, hi)
	}
	if n := len(l.out); depth == 0 && len(l.flat) == 1 && l.flat[0].Kind == Number && n > 0 && l.out[n-1].Sep == SepStop {
		l.counting = true // `… 6 times. 24`
	}
	l.flush(SepNone)
	l.endLead()
	if depth > 0 && len(l.out) == 1 {
		if _, times := l.out[0].Node.(*RepeatFrom); times {
			return l.out // `fan [4 (5, 6) times]`
		}
	}
	return b.fold(l.out)
}

// lister collects the clauses of one level of brackets.
type lister struct {
	b     *builder
	depth int
	flat  []Token // the clause being collected, groups as single tokens
	out   []Clause
	// counting is set after a dash or an equals sign: what follows is a count
	// if it can be.
	counting  bool
	beside    bool          // a cell of a table that works something stands before this one
	leavesOut bool          // the clause before this one counts what may not be all
	telling   bool          // the sentence began with the word for how many there are
	stars     int           // single stars that stand open
	times     Num           // how often the steps up to the end of the sentence are worked, as was said before them
	note      Counts        // what a bracket within the clause says of skipped chains
	told      []source.Span // brackets within the clause that say again what it says, or how its stitch is drawn
	called    StitchRef     // what a bracket within the clause calls what is worked
	body      []Clause      // what a bracket within the clause says that its stitch is made of
	each      string        // what each of the branches is called that the repeat to come makes
}

// collect adds a token to the clause.
func (l *lister) collect(t Token) {
	if l.flat == nil {
		l.flat = make([]Token, 0, 8) // most clauses have no more
	}
	l.flat = append(l.flat, t)
}

// set ends the clause so far, which says no more than a node, with what brackets within it say.
func (l *lister) set(node Node, sep Separator) {
	l.say(l.flat, node, sep)
	l.flat = nil
}

// say takes words for a clause that says no more than a node, with what brackets within them say.
func (l *lister) say(flat []Token, node Node, sep Separator) {
	l.out = append(l.out, Clause{Span: spanOf(flat), Sep: sep, Node: node})
	l.dropNote()
}

// sayBeside takes words for a count, and those from rest on for what is only remarked beside it.
func (l *lister) sayBeside(flat []Token, rest int, total *Total, sep Separator) {
	l.out = append(l.out, Clause{Span: spanOf(flat[:rest]), Node: total})
	l.say(flat[rest:], &Remark{}, sep)
}

// aside finds where a sentence ends that begins with token i and tells of all rows, or of how stitches are closed, what none of its
// numbers asks for: `Every row has 6 tr more than the row before: 18 tr in row 3, 60 tr in row 10.` It gives i for any other.
func (l *lister) aside(i, hi int) int {
	tokens := l.b.tokens[:hi]
	if l.depth > 0 || len(l.out) == 0 || len(l.flat) > 0 || tokens[i-1].Kind != Period || i+2 >= hi {
		return i
	}
	is := func(t Token, canons ...string) bool { return t.Kind == Word && slices.Contains(canons, t.Canon) }
	switch {
	case is(tokens[i], "each") && is(tokens[i+1], "row", "rnd", "side") && is(tokens[i+2], "have"):
	case tokens[i].Written == "the" && is(tokens[i+1], "last") && is(tokens[i+2], "loop"): // `The last loop of each is drawn through in B.`
	default:
		return i
	}
	return i + len(sentence(tokens[i:]))
}

// token takes the token at i and returns the index of the last one taken.
func (l *lister) token(i, hi int) int {
	if end := l.aside(i, hi); end > i {
		l.out = append(l.out, Clause{Span: spanOf(l.b.tokens[i:end]), Sep: SepStop, Node: &Remark{}})
		return end - 1
	}
	if l.secondSide(i, hi) {
		return i
	}
	switch l.b.tokens[i].Kind {
	case Open:
		if end := l.b.match[i]; end > 0 && end < hi {
			return l.bracket(i, end)
		}
		l.flush(SepNone)
	case Close:
		l.flush(SepNone)
	case Comma:
		l.comma(i, hi)
	case Semi:
		l.flush(SepSemi)
		l.endLead()
	case Colon:
		l.colon(i, hi)
	case Period:
		return l.period(i, hi)
	case Dash:
		return l.dash(i, hi)
	case Sign:
		return l.sign(i, hi)
	case Star:
		l.star(i)
	default:
		l.word(i, hi)
	}
	return i
}

// comma takes a comma, which ends a clause or stands within one.
func (l *lister) comma(i, hi int) {
	switch {
	case l.further(i, hi):
	case l.listing(i) || l.tallying(i) || l.placing(i) || l.adding(i) || l.byTurns(i):
		l.collect(l.b.tokens[i])
	case !l.part(i, hi):
		l.flush(SepComma)
	}
}

// colon takes a colon: what stands before it may head what comes, place it, or be counted by it.
func (l *lister) colon(i, hi int) {
	if len(l.flat) == 1 && l.flat[0].Kind == Word && (l.flat[0].Canon == "have" || l.flat[0].Canon == "count") {
		l.flat = []Token{{Kind: Word, Canon: "have", Span: l.flat[0].Span}}
		l.counting = true // `total: 28 sts`, `count: 24 dc`
		return
	}
	if held := l.held(); countUnderName(held) != nil && asTotal(sentence(l.b.tokens[i+1:hi])) != nil {
		holder, has, end := held[0], held[1], l.b.tokens[i].Span.End
		l.flush(SepComma)
		holder.Span, has.Span = source.At(end), source.At(end)
		l.flat = []Token{holder, has} // `stem has 28 sts: 2 sl st and 26 sc`
		return
	}
	if l.lead() || l.heading() {
		return
	}
	if l.ends() && asTotal(l.b.tokens[i+1:hi]) != nil {
		l.flush(SepComma)
		l.counting = true // `join: 16 sc and 16 ch-5 sps`
		return
	}
	if n := len(l.out); n > 0 && len(l.flat) > 0 && l.out[n-1].Sep == SepComma && !holds(l.flat, Stitch) && !holds(l.flat, Number) && isBranchNode(l.out[n-1].Node) {
		l.set(&Remark{}, SepStop) // `branch D, on the other side from B: …`
		return
	}
	if tellsOtherSide(l.flat) {
		l.set(&Turn{Rotate: true, OtherSide: true}, SepStop) // `down the other side of the chain it's the same backwards: …`
		return
	}
	if n := len(l.flat); n > 0 && len(l.out) == 0 && l.flat[n-1].Kind == Word && l.flat[n-1].Canon == "ring" && chainsNext(l.b.tokens[i+1:hi]) {
		l.set(&Remark{}, SepNone) // `Ring: ch 4, sl st in first ch` says what comes
		return
	}
	if len(l.flat) == 1 && l.flat[0].Canon == "corner" && l.flat[0].Kind == Word {
		l.set(&Remark{}, SepNone) // `corner: …` says how it goes
		return
	}
	if len(l.flat) > 1 && (l.flat[0].Canon == "in" || l.flat[0].Canon == "at") && named(l.flat[1:]) {
		l.set(&Remark{}, SepNone) // `in the dip: …` says where it comes
		return
	}
	if len(l.flat) > 0 && l.flat[0].Canon == "in" && i+1 < hi && l.b.tokens[i+1].Kind == Open && !l.makes() {
		return // `in last ch: (sc, ch 2, sc)`
	}
	if len(l.flat) > 0 && (l.flat[0].Canon == "in" || l.flat[0].Canon == "around") {
		l.flush(SepComma) // `in next sp make: 2 dc`
		return
	}
	if n := len(l.out); len(l.flat) == 2 && l.flat[0].Kind == Name && numbersPart(l.flat[1]) && len(l.flat[0].Canon) > 2 && (n == 0 || l.out[n-1].Sep >= SepSemi) {
		l.set(&Remark{}, SepStop) // `Lobe 2: …`
		return
	}
	if len(l.flat) == 1 && l.flat[0].Kind == Name {
		var says Node = &Remark{} // `shoot: …` says what comes
		if callsYarn(l.flat[0]) {
			says = &Yarn{Yarn: l.flat[0].Canon} // `B: sc 3` works in yarn B
		}
		l.set(says, SepNone)
		return
	}
	l.flush(SepStop)
}

// chainsNext tells whether chains come first.
func chainsNext(tokens []Token) bool {
	return len(tokens) > 1 && (tokens[0].Canon == "ch" || tokens[0].Kind == Number && tokens[1].Canon == "ch")
}

// period ends a sentence. The next may be what a row counts that ends here.
func (l *lister) period(i, hi int) int {
	l.flush(SepStop)
	l.endLead()
	counts := l.complete(i + 1)
	if l.closes() || countShared(sentence(l.b.tokens[i+1:hi])) != nil {
		return l.countBehind(i, hi, counts)
	}
	l.counting = counts
	return i
}

// dash takes a dash, which ends a clause or stands within one.
func (l *lister) dash(i, hi int) int {
	if l.ranging(i) {
		l.collect(l.b.tokens[i])
		return i
	}
	if l.heading() {
		return i
	}
	l.flush(SepComma)
	item := len(l.out) == 0 && l.depth == 0 // it may mark an item of a list
	return l.countBehind(i, hi, !item || asTotal(l.b.tokens[i+1:hi]) != nil)
}

// sign takes a sign: one before a count, one between cells, or a word of the clause.
func (l *lister) sign(i, hi int) int {
	switch t := l.b.tokens[i]; t.Canon {
	case "=":
		if addsUp(l.flat) {
			l.set(&Remark{}, SepComma) // `23 + 5 + 23 = 51 sts`
		} else {
			l.flush(SepComma)
		}
		return l.countBehind(i, hi, true)
	case "|": // the next cell of a table
		l.counting = l.counting || len(l.out) == 0 && asTotal(l.flat) != nil && instructsIn(l.b.tokens[i+1:hi])
		l.flush(SepStop)
		l.counting = len(l.out) > 0
		l.beside = l.beside || slices.ContainsFunc(l.out, func(c Clause) bool { return steps(c.Node) })
	default:
		l.collect(t)
	}
	return i
}

// word takes a word, a number or a stitch, before which a clause may end without a sign.
func (l *lister) word(i, hi int) {
	t := l.b.tokens[i]
	if t.Kind == Name && (t.Written == limbToken || t.Written == limbsToken) {
		l.limb(t)
		return
	}
	if t.Kind == Name && t.Written == behindToken {
		l.flush(SepNone)
		l.out = append(l.out, Clause{Span: t.Span, Sep: SepStop, Node: &Branch{Name: t.Canon, Labelled: true, Behind: true}})
		return
	}
	if t.Canon == "and" && t.Kind == Word && !(l.held() != nil && i+1 < hi && l.b.tokens[i+1].Kind == Number) && l.splits(i, hi) {
		l.flush(SepComma)
		return
	}
	if t.Written == "working" && (l.inEach() || l.numbersStitches()) && l.lastOnes(i+1, hi) {
		l.flush(SepComma) // `1 dc in each tr to end working last dc in top of 3 ch`
		return
	}
	if l.hookTaken() && beginsStep(t) {
		l.takeHook() // `using the 5 mm hook make 90 ch`
	}
	if l.sideTaken() && (beginsStep(t) || t.Kind == Word && t.Canon == "join") {
		l.flush(SepComma) // `with RS facing join B in first st`
	}
	if t.Kind == Word && t.Canon == "beg" && l.startsIn(i, hi) {
		l.flush(SepComma) // `sc in each ch across starting with 2nd ch from hook`
	}
	if t.Kind == Word && t.Canon == "until" && l.goesOn() && i+1 < hi && l.b.tokens[i+1].Canon == "have" {
		l.flush(SepComma) // `continue in this manner until there are 60 sts`
	}
	if t.Kind == Word && len(l.flat) > 0 && (t.Canon == "ending" || t.Canon == "omit" && l.flat[0].Canon == "rep" || t.Canon == "rep" && i+1 < hi && l.b.tokens[i+1].Canon == "from") && !slices.ContainsFunc(l.flat, excepts) {
		l.flush(SepNone)
	}
	if t.Kind == Number && l.depth == 0 && i == hi-1 && i > 0 && t.Span.Start-l.b.tokens[i-1].Span.End >= columnGap {
		l.flush(SepStop) // the count in the last column of a table
		l.counting = len(l.out) > 0
	}
	l.collect(t)
}

// further tells a comma, at i, behind which the stitch of the words collected goes on in other
// places: `sc in each of next 8 ch, then in each of next 12 ch`. Without it they are read as one clause.
func (l *lister) further(i, hi int) bool {
	if len(l.flat) == 0 || i+2 >= hi {
		return false
	}
	and, in := l.b.tokens[i+1], l.b.tokens[i+2]
	if and.Kind != Word || and.Canon != "and" || in.Kind != Word || in.Canon != "in" {
		return false
	}
	to := i + 1
	for to < hi && !separates(l.b.tokens[to]) && l.b.tokens[to].Kind != Open && l.b.tokens[to].Kind != Star {
		to++
	}
	if to < hi && (l.b.tokens[to].Kind == Colon || l.b.tokens[to].Kind == Open && (l.b.match[to] < 0 || asTotal(l.b.tokens[to+1:l.b.match[to]]) == nil)) {
		return false // what is worked there follows
	}
	if _, works := clauses.read(l.flat).(*Work); !works {
		return false
	}
	_, works := clauses.read(slices.Concat(l.flat, l.b.tokens[i+1:to])).(*Work)
	return works
}

// columnGap is the least number of blanks between the columns of a table.
const columnGap = 2

// limb takes the label of a branch, or of several that are told in one.
func (l *lister) limb(t Token) {
	l.flush(SepComma)
	if t.Written == limbsToken {
		l.out = append(l.out, Clause{Span: t.Span, Sep: SepStop, Node: &Remark{}})
		l.each = OneOf(t.Canon)
		return
	}
	l.out = append(l.out, Clause{Span: t.Span, Sep: SepStop, Node: &Branch{Name: t.Canon, Labelled: true}})
}

func isStar(n Node) bool { _, ok := n.(*Mark); return ok }

// ends tells whether the words collected end a row: it is joined, turned or left open.
func (l *lister) ends() bool {
	if len(l.flat) == 0 {
		return false
	}
	return comesLast(clauses.read(l.flat))
}

// comesLast tells a clause that comes when a row is worked.
func comesLast(n Node) bool {
	switch n.(type) {
	case *Join, *Turn, *NoJoin, *Finish:
		return true
	}
	return false
}

// complete tells whether the row is worked to its end, and the sentence that begins with token i, behind
// which nothing is worked, is what it counts: `… to end, turn. 6 shells, 7 dc`.
// Where the row is not closed, one number alone may be work, of which the places
// left tell.
func (l *lister) complete(i int) bool {
	n := len(l.out)
	if l.depth > 0 || n == 0 {
		return false
	}
	parts := l.b.countsOnly(i)
	if parts == 0 {
		return false
	}
	switch last := l.lastStep().(type) {
	case *Join:
		return !last.Ring && slices.ContainsFunc(l.out[:n-1], worksPlaced)
	case *Turn:
		return !last.Rotate && slices.ContainsFunc(l.out[:n-1], worksPlaced)
	case *NoJoin, *Leave:
		return slices.ContainsFunc(l.out[:n-1], worksPlaced)
	case *RepeatFrom:
		return last.Limit == ToEnd && parts > 1
	case *Ending:
		return last.Step != nil && parts > 1
	case *Finish:
		return parts > 1
	case *Work:
		if len(last.Places) == 0 || parts < 2 {
			return false
		}
		if countsSpaces(sentence(l.b.tokens[i:])) {
			return true
		}
		end := last.Places[len(last.Places)-1]
		return end.To.Kind == ToTheEnd || end.Pick == PickLast || last.Stitch.Meaning.Is(stitch.Slip)
	}
	return false
}

// worksPlaced tells a clause that works stitches into places, or works others again.
func worksPlaced(c Clause) bool {
	switch n := c.Node.(type) {
	case *Work:
		return len(n.Places) > 0
	case *Group, *Repeat, *RepeatFrom:
		return true
	}
	return false
}

// lead takes words before a colon that say how often what comes is worked: `4 times: sc
// in next 5 sts, dec`.
func (l *lister) lead() bool {
	if len(l.flat) == 0 || l.stars > 0 || l.times.Written() {
		return false
	}
	rep, ok := clauses.read(l.flat).(*RepeatFrom)
	if !ok || rep.From != "" || !rep.Number.Written() || rep.Limit == More {
		return false
	}
	l.out = append(l.out, Clause{Span: spanOf(l.flat), Node: &Mark{Text: "*"}})
	l.flat, l.times = nil, rep.Number
	return true
}

// endLead ends the steps whose number of times was said before them.
func (l *lister) endLead() {
	if !l.times.Written() {
		return
	}
	k := len(l.out)
	for k > 0 && !repeats(l.out[k-1].Node) {
		k-- // the count, the join
	}
	rep := &RepeatFrom{From: "*", Number: l.times, Limit: Times}
	l.times = Num{}
	if _, empty := l.out[k-1].Node.(*Mark); empty {
		l.out[k-1].Node = &Unread{}
		return
	}
	last := l.out[k-1]
	l.out = slices.Insert(l.out, k, Clause{Span: source.Span{Start: last.Span.End, End: last.Span.End}, Sep: last.Sep, Node: rep})
}

// repeats tells a clause that may be worked again, or the mark that it is worked from.
func repeats(n Node) bool {
	if b, ok := n.(*Bracket); ok {
		return b.Total == nil
	}
	_, mark := n.(*Mark)
	return mark || steps(n)
}

// named tells words that only name a part of the work, none of which is known to
// the trade.
func named(tokens []Token) bool {
	for _, t := range tokens {
		if t.Kind != Name && (t.Kind != Word || t.Canon != "") {
			return false
		}
	}
	return true
}

// hookTaken tells whether the clause so far says with which hook, and which yarn, the work
// goes on, and no more.
func (l *lister) hookTaken() bool {
	n := len(l.flat)
	if n < 2 || l.flat[0].Kind != Word || l.flat[0].Canon != "with" || holds(l.flat, Stitch) {
		return false
	}
	return isHook(l.flat[n-1]) || l.flat[n-1].Kind == Name && slices.ContainsFunc(l.flat, isHook)
}

// takeHook ends a clause that says with which hook, and which yarn, the work goes on.
func (l *lister) takeHook() {
	c := Clause{Span: spanOf(l.flat), Sep: SepComma, Node: &Remark{}}
	if last := l.flat[len(l.flat)-1]; last.Kind == Name {
		c.Node = &Yarn{Yarn: last.Canon}
	}
	l.out, l.flat = append(l.out, c), nil
}

// sideTaken tells whether the clause so far says which side faces, and no more.
func (l *lister) sideTaken() bool {
	side := l.flat
	if len(side) > 1 && side[0].Kind == Word && side[0].Canon == "with" {
		side = side[1:]
	}
	if len(side) == 0 || side[0].Kind != Word || side[0].Canon != "rs" && side[0].Canon != "ws" {
		return false
	}
	return !slices.ContainsFunc(side[1:], func(t Token) bool { return t.Kind != Name })
}

// beginsStep tells a word that a step may begin with: `make`, `ch`, a stitch.
func beginsStep(t Token) bool {
	return t.Kind == Stitch || t.Kind == Word && (t.Canon == "work" || t.Canon == "ch")
}

// startsIn tells whether the words from token i on say in which chain the stitches
// before them begin.
func (l *lister) startsIn(i, hi int) bool {
	end := i
	for end < hi && !separates(l.b.tokens[end]) {
		end++
	}
	if len(l.flat) == 0 || end-i > 8 {
		return false
	}
	skip, ok := clauses.read(l.b.tokens[i:end]).(*Skip)
	return ok && skip.Place.From == FromHook
}

// goesOn tells whether the clause so far says to go on as before.
func (l *lister) goesOn() bool {
	return len(l.flat) > 0 && (firstWord(l.flat).Canon == "continue" || l.flat[len(l.flat)-1].Canon == "likewise")
}

// heading takes the words before a dash or colon that begin an instruction, or a
// sentence of it, as the name of a part, where no step could be meant: `Top edge—in White, ch 9`.
func (l *lister) heading() bool {
	begins := len(l.out) == 0 || l.out[len(l.out)-1].Sep >= SepSemi
	if l.depth > 0 || !begins || len(l.flat) == 0 {
		return false
	}
	flat, named := withoutFillers(l.flat), false
	if on := slices.IndexFunc(flat, func(t Token) bool { return t.Kind == Word && (t.Canon == "on" || t.Canon == "at") }); on > 0 && on+1 < len(flat) && flat[len(flat)-1].Kind == Name {
		flat = flat[:on] // `now a thorn on the twig: …`
	}
	if len(flat) > 4 {
		return false
	}
	if n := len(flat); n > 1 && numbersPart(flat[n-1]) {
		flat = flat[:n-1] // `Side 1: …`
	}
	for i, t := range flat {
		if i == 0 && len(flat) > 1 && t.Kind == Word && t.Canon == "more" {
			continue // `More trunk: …`
		}
		if i > 0 && i+1 < len(flat) && (t.Canon == "and" || t.Canon == "&") {
			continue // `Neck and tip: …`
		}
		part := t.Kind == Word && ((t.Canon == "branch" || t.Canon == "stem") && (i > 0 || len(flat) > 1) || t.Canon == "group" || t.Canon == "edge" || t.Canon == "top" || t.Canon == "base" || t.Canon == "side" || t.Canon == "back" || t.Canon == "front" || t.Canon == "trim")
		if !part && t.Kind != Name && t.Kind != Ordinal && !(t.Kind == Word && t.Canon == "") {
			return false
		}
		named = named || part || t.Kind == Name && len(t.Canon) > 1
	}
	if !named || len(l.flat) > 1 && clauses.read(l.flat) != nil {
		return false
	}
	l.set(&Remark{}, SepStop)
	return true
}

// withoutFillers are some words without those at either end that say nothing.
func withoutFillers(flat []Token) []Token {
	says := func(t Token) bool { return t.Kind != Word || t.Canon != "" }
	first := slices.IndexFunc(flat, says)
	if first < 0 {
		return nil
	}
	last := len(flat) - 1
	for !says(flat[last]) {
		last--
	}
	return flat[first : last+1]
}

// numbersPart tells what follows the name of a part to tell it from others: `Side 1`, `Side A`.
func numbersPart(t Token) bool {
	return t.Kind == Number && !t.Values.PerSize() || t.Kind == Name && len(t.Canon) == 1
}

// part takes the name of a part with its number before the comma at i, where more is told of it
// before a colon: `Side A, lobe 1: …`.
func (l *lister) part(i, hi int) bool {
	n := len(l.flat)
	if len(l.out) > 0 || n < 2 {
		return false
	}
	numbered := numbersPart(l.flat[n-1]) && (l.flat[0].Kind == Name || l.flat[0].Canon == "side")
	nth := n == 2 && l.flat[0].Kind == Ordinal && (l.flat[1].Canon == "side" || l.flat[1].Canon == "edge") // `Second side, along …: …`
	if !numbered && !nth {
		return false
	}
	for j := i + 1; j < hi && l.b.tokens[j].Kind != Period; j++ {
		if l.b.tokens[j].Kind == Colon {
			return l.heading()
		}
	}
	return false
}

func isBranchNode(n Node) bool { _, ok := n.(*Branch); return ok }

// listing tells a comma between numbers (`rows 2, 3 and 4`) from one between
// clauses.
func (l *lister) listing(i int) bool {
	tokens := l.b.tokens
	if i == 0 || i+1 >= len(tokens) {
		return false
	}
	before, after := tokens[i-1].Kind, tokens[i+1].Kind
	if i+2 < len(tokens) && (tokens[i+2].Kind == Stitch || tokens[i+1].Kind == Number && (tokens[i+2].Canon == "row" || tokens[i+2].Canon == "rnd")) {
		return false // `2 fpdc from row 3, 2 sc`, `as row 2, 18 rows`
	}
	return (before == Number || before == Ordinal) && after == before && l.ofRows()
}

// ofRows tells whether the clause so far speaks of rows.
func (l *lister) ofRows() bool {
	for _, t := range l.flat {
		if t.Kind == Word && (t.Canon == "row" || t.Canon == "rnd") || t.Kind == Ordinal {
			return true
		}
	}
	return false
}

// tallying tells a comma within a stated count (`— 9 hdc, 6 puffs`).
func (l *lister) tallying(i int) bool {
	tokens := l.b.tokens
	if i+1 < len(tokens) && tokens[i+1].Kind == Word && tokens[i+1].Canon == "and" {
		i++
	}
	if len(l.flat) == 0 || !l.counting && !tellsCount(l.flat) || i+2 >= len(tokens) || tokens[i+1].Kind != Number {
		return false
	}
	switch after := tokens[i+2]; after.Canon {
	case "ch", "st", "sp", "loop", "group", "corner", "on", "remaining":
		return true
	default:
		return after.Kind != Word
	}
}

// placing tells the comma of `in next ch-3 sp, work 3 dc`.
func (l *lister) placing(i int) bool {
	tokens := l.b.tokens
	return len(l.flat) > 0 && l.flat[0].Kind == Word && l.flat[0].Canon == "in" && i+1 < len(tokens) && tokens[i+1].Canon == "work"
}

// ranging tells the dash of `Rows 2 – 5` from one that separates.
func (l *lister) ranging(i int) bool {
	tokens := l.b.tokens
	if i == 0 || i+1 >= len(tokens) {
		return false
	}
	before, after := tokens[i-1].Kind, tokens[i+1].Kind
	if before == Number && (!l.ofRows() || tokens[i+1].Values.PerSize() || i+2 < len(tokens) && (tokens[i+2].Kind == Stitch || tokens[i+2].Canon == "st")) {
		return false // or a count: `as Row 12 – 44 sts`
	}
	return (before == Number || before == Ordinal) && before == after || before == Star && after == Star
}

// adding tells the comma of `a multiple of 6, plus 2`.
func (l *lister) adding(i int) bool {
	tokens := l.b.tokens
	return i+1 < len(tokens) && tokens[i+1].Canon == "plus" && slices.ContainsFunc(l.flat, func(t Token) bool { return t.Canon == "multiple" })
}

// byTurns tells whether what token i parts are stitches that are worked by turns:
// `alternate sc and dc across`, `rep sc and dc to end`.
func (l *lister) byTurns(i int) bool {
	tokens := l.b.tokens
	if i+1 < len(tokens) && tokens[i+1].Kind == Number {
		i++
	}
	if i+1 >= len(tokens) || tokens[i+1].Kind != Stitch || len(l.flat) < 2 {
		return false
	}
	turns := false
	for _, t := range l.flat {
		switch {
		case t.Kind == Word && (t.Canon == "alternate" || t.Canon == "alternating" || t.Canon == "rep"):
			turns = true
		case t.Kind == Word && t.Canon != "" && t.Canon != "work" && t.Canon != "between" && t.Canon != "and", t.Kind != Word && t.Kind != Number && t.Kind != Stitch && t.Kind != Comma:
			return false
		}
	}
	return turns && l.flat[len(l.flat)-1].Kind == Stitch
}

// bracket takes the group from open to end and gives the index of the last token
// taken. A bracket begins a new clause, unless words before it say how it is
// worked.
func (l *lister) bracket(open, end int) int {
	b := l.b
	inside, whole := b.tokens[open+1:end], spanOf(b.tokens[open:end+1])
	if l.drawnUp(open, end) {
		last := l.howOften(end)
		l.told = append(l.told, spanOf(b.tokens[open:last+1]))
		return last
	}
	if l.gloss(open, end) {
		l.told = append(l.told, whole)
		return end
	}
	if l.remark(open, end) || l.explained(open, end) {
		return end
	}
	if n := len(l.flat) - 1; n > 0 && l.flat[n].Canon == "of" && len(inside) == 1 && inside[0].Kind == Number {
		l.told = append(l.told, whole)
		l.flat = l.flat[:n]
		return end // `on the ch of (3)`, which step of the pattern laid
	}
	if len(l.flat) == 0 && headsSide(inside) {
		l.out = append(l.out, Clause{Span: whole, Sep: SepStop, Node: &Remark{}})
		return end
	}
	if holds(l.flat, Stitch) && leadsTo(l.flat) && namesOnly(inside) && !l.worksBracket(end) {
		return l.take(open, end, &Remark{}) // `2 dc in same sp (shell)`, `3 sc in next st (inc point)`
	}
	if oneToClose(inside) || onEach(inside) || l.spreadAlong(inside) {
		return l.take(open, end, &Remark{})
	}
	if open > 0 && b.tokens[open-1].Kind == Close && numberOfEach(inside) {
		return l.take(open, end, &Remark{}) // `(20 sc) (10 sc on each half)`
	}
	if side, ok := clauses.read(inside).(*Side); ok {
		return l.take(open, end, side)
	}
	if cut, change := changeBehind(inside); change != nil && l.depth == 0 && asTotal(inside[:cut]) != nil {
		l.flush(SepNone)
		l.out = append(l.out, Clause{Span: spanOf(inside[:cut]), Sep: SepComma, Node: asTotal(inside[:cut])}, Clause{Span: spanOf(inside[cut+1:]), Node: change})
		return end
	}
	if counted := withoutNamed(inside); len(counted) < len(inside) && l.depth == 0 && !b.worksBehind(end) {
		if total := cmp.Or(asTotal(counted), countsAmong(counted)); total != nil {
			return l.take(open, end, total) // `(19 sts, and the tip sp)`
		}
	}
	if total := brokenDown(inside); total != nil && l.depth == 0 && !b.worksBehind(end) {
		return l.take(open, end, total) // `(12 fans (96 dc, 36 picots), 60 sc)`
	}
	if total := tallied(inside); total != nil && l.depth == 0 && asTotal(inside) == nil && !b.worksBehind(end) {
		return l.take(open, end, total) // `(5 shells, 2 half-shells, 6 sc)`
	}
	if leavesOut(inside) {
		return l.take(open, end, &Remark{})
	}
	if total, told, says := countTakesIn(inside); total != nil && l.depth == 0 && !b.worksBehind(end) {
		l.flush(SepNone)
		l.out = append(l.out, Clause{Span: spanOf(inside[:told]), Sep: SepStop, Node: total})
		if said := inside[says:]; takesIn(said[0]) {
			l.out = append(l.out, Clause{Span: spanOf(said), Node: takenIn(said)})
		} else {
			l.out = append(l.out, Clause{Span: spanOf(said), Node: clauses.read(said)})
		}
		return end
	}
	if total := countAfterName(inside); total != nil && l.depth == 0 && !l.worksBracket(end) {
		return l.take(open, end, total)
	}
	if total := inParts(inside); total != nil && l.depth == 0 && !b.worksBehind(end) {
		return l.take(open, end, total)
	}
	if saysWhat(inside) && !l.worksBracket(end) {
		return l.take(open, end, &Remark{})
	}
	if total := cmp.Or(countsAmong(inside), countAlong(inside)); total != nil && l.depth == 0 && (len(l.flat) == 0 || !l.leads()) && !l.worksBracket(end) && !b.worksBehind(end) {
		return l.take(open, end, total)
	}
	if !l.leads() || l.toldHowOften(open, end) {
		l.flush(SepNone)
	}
	t := Token{Kind: Enclosed, Canon: "()", Group: len(b.groups), Span: whole}
	b.groups = append(b.groups, nil)
	b.totals = append(b.totals, nil)
	if l.depth >= maxDepth {
		b.problem(TooDeep, open)
	} else {
		if note, ok := clauses.read(inside).(*CountsNote); ok {
			b.groups[t.Group] = []Clause{{Span: spanOf(inside), Node: note}}
		} else {
			b.groups[t.Group] = b.list(open+1, end, l.depth+1)
		}
		b.totals[t.Group] = asTotal(inside)
	}
	l.collect(t)
	return end
}

// spreadAlong tells how stitches along a side are spread over the rows: `42 sc down the side (2 in each row end)`.
func (l *lister) spreadAlong(inside []Token) bool {
	if !holds(l.flat, Stitch) || holds(inside, Stitch) || !holds(inside, Number) {
		return false
	}
	along, ok := clauses.read(l.flat).(*Work)
	if !ok || !along.Number.Written() || len(along.Places) != 1 || along.Places[0].Noun.Kind != NounEdge && along.Places[0].Noun.Kind != NounOther {
		return false
	}
	return slices.ContainsFunc(inside, func(t Token) bool { return t.Kind == Word && (t.Canon == "rowend" || t.Canon == "row") })
}

// take makes one clause of a whole bracket, and gives its last token.
func (l *lister) take(open, end int, node Node) int {
	l.flush(SepNone)
	l.out = append(l.out, Clause{Span: spanOf(l.b.tokens[open : end+1]), Node: node})
	return end
}

// countsTo reads the sentence that begins with token i as such a count, where nothing is worked
// behind it, and gives its last token, 0 for none.
func (l *lister) countsTo(i, hi int) int {
	said := sentence(l.b.tokens[i:hi])
	if len(l.out) == 0 || l.depth > 0 || len(said) < 2 || said[0].Kind != Number && !ofEach(said) || l.b.worksBehind(i+len(said)) {
		return 0
	}
	total := countShared(said)
	if total == nil && leadsHome(said) {
		return 0
	}
	if total == nil {
		total = brokenDown(said)
	}
	if total == nil && !holds(said, Open) {
		total = countsAmong(said)
	}
	if total == nil {
		return 0
	}
	l.say(said, total, SepStop)
	return i + len(said) - 1
}

// countBehind takes the count that the sentence behind the mark at i is, and gives its last token. It
// gives i where it is none; mayCount tells whether what comes may still be read as a count.
func (l *lister) countBehind(i, hi int, mayCount bool) int {
	if end := l.countsTo(i+1, hi); end > 0 {
		return end
	}
	l.counting = mayCount
	return i
}

// lastStep is the last clause so far that is no remark and no handwork, nil for none.
func (l *lister) lastStep() Node {
	for _, c := range slices.Backward(l.out) {
		switch c.Node.(type) {
		case *Remark, *MakeUp:
			continue
		}
		return c.Node
	}
	return nil
}

// closes tells whether the clause before a full stop ends a row: what follows may count it.
func (l *lister) closes() bool {
	switch last := l.lastStep().(type) {
	case *Join:
		return !last.Ring
	case *Turn:
		return !last.Rotate
	case *NoJoin, *Leave, *Finish, *Rows:
		return true
	case *RepeatFrom:
		return last.Limit == ToEnd
	case *Work:
		if len(last.Places) == 0 {
			return false
		}
		end := last.Places[len(last.Places)-1]
		return end.To.Kind == ToTheEnd || end.Pick == PickLast || end.Each && !end.Number.Written()
	}
	return false
}

// headsSide tells a bracket that heads what is worked along a side: `(second side) 1 dc in
// next ch`.
func headsSide(inside []Token) bool {
	return len(inside) == 2 && inside[0].Kind == Ordinal && isSide(inside[1])
}

// remark takes a bracket that interrupts a clause to say what skipped chains
// count as: `dc in 4th ch from hook (skipped 3 ch count as dc) and in each ch`.
func (l *lister) remark(open, end int) bool {
	if len(l.flat) == 0 || l.flat[0].Canon == "ch" || l.flat[0].Kind == Number && len(l.flat) > 1 && l.flat[1].Canon == "ch" {
		return false
	}
	if first := firstWord(l.flat); first.Kind == Word && first.Canon == "" {
		return false // no clause comes of what stands before it
	}
	note, ok := clauses.read(l.b.tokens[open+1 : end]).(*CountsNote)
	if !ok {
		return false
	}
	l.note = note.Counts
	l.note.Span = spanOf(l.b.tokens[open : end+1])
	return true
}

// gloss passes over a bracket that says the words before it again: `3rd stitch
// (st) of ch`.
func (l *lister) gloss(open, end int) bool {
	n := len(l.flat)
	if n == 0 {
		return false
	}
	inside := l.b.tokens[open+1 : end]
	if len(inside) == 1 && inside[0].Kind == Word && (inside[0].Canon == "center" || inside[0].Canon == "corner" || inside[0].Canon == "tch") {
		return true
	}
	if last := l.flat[n-1]; len(inside) == 1 && inside[0].Kind == last.Kind &&
		(last.Kind == Word && last.Canon == inside[0].Canon || last.Kind == Stitch && last.Stitch == inside[0].Stitch) {
		return true
	}
	if l.defines(open, end) {
		return true
	}
	if len(inside) == 2 && inside[0].Canon == "with" && inside[1].Kind == Stitch && l.flat[0].Canon == "join" {
		return true // `join (with sl st) in first sc`
	}
	if len(inside) > 0 && inside[0].Canon == "between" && l.flat[0].Canon == "in" {
		return true // `in next ch-3 (between 2 dc) make dc`
	}
	if len(inside) == 1 && inside[0].Kind == Stitch && end+1 < len(l.b.tokens) && l.b.tokens[end+1].Canon == "in" {
		l.called = StitchRef{Word: inside[0].Canon, Meaning: inside[0].Stitch}
		return true // `3 dc (shell) in next sp`
	}
	return false
}

// namesOnly tells words that only name what was just made: a group's name, with
// what kind it is of.
func namesOnly(tokens []Token) bool {
	if holds(tokens, Number) && asTotal(tokens) != nil {
		return false // `(8 shells)` is a count
	}
	grouped := false
	for i, t := range tokens {
		switch {
		case t.Kind == Stitch && t.Stitch.Is(stitch.Group, stitch.Picot, stitch.Increase):
			grouped = true
		case t.Kind == Word && (t.Canon == "group" || t.Canon == "loop" || t.Canon == "corner" || t.Canon == ""):
		case t.Kind == Number && i == 0, t.Kind == Hyphen, t.Kind == Name, t.Kind == Stitch && i < len(tokens)-1:
		default:
			return false
		}
	}
	return grouped
}

// worksBracket tells whether what follows the bracket that closes at a token says
// how often or where it is worked.
func (l *lister) worksBracket(end int) bool {
	if end+1 >= len(l.b.tokens) {
		return false
	}
	t := l.b.tokens[end+1]
	return t.Kind == Number || t.Kind == Sign || t.Kind == Word && (t.Canon == "in" || t.Canon == "once" || t.Canon == "times" || t.Canon == "around" || t.Canon == "across")
}

// leads tells whether the words collected so far go with a bracket after
// them: `rep (…)`, `6 x (…)`, `in next sp work (…)`.
func (l *lister) leads() bool {
	n := len(l.flat)
	if n == 0 {
		return true
	}
	last := l.flat[n-1]
	ends := l.flat[0].Kind == Word && (l.flat[0].Canon == "ending" || l.flat[0].Canon == "end")
	if last.Kind == Word && (last.Canon == "rep" || last.Canon == "work" || (n == 1 || ends) && last.Canon == "with") {
		return true
	}
	if n == 2 && l.flat[0].Kind == Number && (last.Canon == "times" || last.Kind == Name && last.Canon == "x" || last.Kind == Sign && last.Canon == "×") {
		return true
	}
	first := l.flat[0]
	return first.Kind == Word && (first.Canon == "rep" || first.Canon == "in" || first.Canon == "fasten" || first.Canon == "multiple")
}

// toldHowOften tells the count of `repeat 6 times (24)`, `repeat (24)` and `fasten
// off (24 sc)` from what is repeated: `repeat (sc, inc) 6 times`.
func (l *lister) toldHowOften(open, end int) bool {
	inside := l.b.tokens[open+1 : end]
	if len(l.flat) == 2 && l.flat[0].Kind == Number && len(inside) == 1 && inside[0].Kind == Number {
		return true // `*sc, inc* 6 times (18)`
	}
	if len(l.flat) == 0 || l.flat[0].Kind != Word {
		return false
	}
	return l.flat[0].Canon == "rep" && asTotal(inside) != nil && !l.worksBracket(end) ||
		l.flat[0].Canon == "fasten" && len(inside) > 1 && asTotal(inside) != nil // `fasten off (24 sc)`
}

// star takes a star: one that opens or closes a repeat, or one that a phrase
// such as `rep from *` speaks of.
func (l *lister) star(i int) {
	t := l.b.tokens[i]
	if l.spans(i) {
		l.flat = []Token{{Kind: Word, Canon: "rep", Span: l.flat[0].Span}} // `work *-* 6 times`
	}
	if l.refers(i) || l.spans(i) {
		l.collect(t)
		l.stars = 0
		return
	}
	if n := len(l.flat); n > 0 && l.stars == 0 && i+1 < len(l.b.tokens) && !l.opens(i) && l.b.tokens[i+1].Kind == Number && (l.flat[n-1].Kind == Stitch || l.flat[n-1].Kind == Enclosed) {
		t.Kind, t.Canon = Sign, "×" // `inc*6`
		l.collect(t)
		return
	}
	if l.stars == 1 && l.timesAt(i+1) {
		l.flush(SepNone)
		l.out, l.stars = append(l.out, Clause{Span: t.Span, Node: &Mark{Text: t.Canon}}), 0
		l.flat = append(l.flat, Token{Kind: Word, Canon: "rep", Span: t.Span}, Token{Kind: Sign, Canon: "×", Span: t.Span})
		return // `*sc 2, inc*8`
	}
	at := t.Span
	if len(l.flat) == 1 && l.flat[0].Kind == Word && l.flat[0].Canon == "rep" {
		at, l.flat = at.Union(l.flat[0].Span), nil // how often is said after the second star
	}
	l.flush(SepNone)
	if t.Canon == "*" {
		l.stars = 1 - l.stars
	}
	l.out = append(l.out, Clause{Span: at, Node: &Mark{Text: t.Canon}})
}

// makes tells whether the words so far end in the verb: `in next sp make`.
func (l *lister) makes() bool {
	last := l.flat[len(l.flat)-1]
	return last.Kind == Word && last.Canon == "work"
}

// timesAt tells whether token i is a number that ends its clause.
func (l *lister) timesAt(i int) bool {
	tokens := l.b.tokens
	if i >= len(tokens) || tokens[i].Kind != Number {
		return false
	}
	return i+1 == len(tokens) || separates(tokens[i+1]) || tokens[i+1].Kind == Open
}

// opens tells a star that stands apart from the word before it and close to
// the one after: it begins a repeat.
func (l *lister) opens(i int) bool {
	tokens := l.b.tokens
	if i == 0 || tokens[i-1].Span.End == tokens[i].Span.Start {
		return false
	}
	// `(an increase) * 2 dc in next sp`, but `(sc, inc) * 6`
	steps := i+2 < len(tokens) && tokens[i-1].Kind == Close && (tokens[i+2].Kind == Stitch || tokens[i+2].Canon == "ch")
	return steps || tokens[i].Span.End == tokens[i+1].Span.Start
}

// spans tells the first of two stars with a dash between that stand for what they enclose,
// behind the verb alone.
func (l *lister) spans(i int) bool {
	tokens := l.b.tokens
	if len(l.flat) != 1 || l.flat[0].Canon != "rep" && l.flat[0].Canon != "work" || i+2 >= len(tokens) {
		return false
	}
	return (tokens[i+1].Kind == Hyphen || tokens[i+1].Kind == Dash) && tokens[i+2].Kind == Star
}

// refers tells whether the words before a star, at token i, make it part of a phrase.
func (l *lister) refers(i int) bool {
	n := len(l.flat)
	if n == 0 || l.flat[0].Kind != Word {
		return false
	}
	last := l.flat[n-1]
	if n > 1 && l.flat[n-2].Canon == "rep" && last.Canon == "from" {
		return true // `same as Row 4 but repeating from * 7 times`
	}
	if l.flat[0].Canon != "rep" && l.flat[0].Canon != "from" && l.flat[0].Canon != "end" && l.flat[0].Canon != "ending" && l.flat[0].Canon != "work" && l.flat[0].Canon != "as" {
		return false
	}
	if n > 1 && (last.Canon == "last" || last.Kind == Ordinal) {
		return l.flat[n-2].Canon == "from"
	}
	switch last.Canon {
	case "from", "to", "at", "between", "until", "and", "of":
		return true
	case "rep":
		return !l.stepsFrom(i + 1) // `repeat * 5 times`, but `repeat *sc, inc* 5 times`
	}
	return last.Kind == Dash || last.Kind == Star
}

// stepsFrom tells whether a step begins at token i.
func (l *lister) stepsFrom(i int) bool {
	tokens := l.b.tokens
	if i < len(tokens) && tokens[i].Kind == Number {
		i++
	}
	return i < len(tokens) && (tokens[i].Kind == Stitch || tokens[i].Kind == Word && (tokens[i].Canon == "ch" || tokens[i].Canon == "skip"))
}

// splits tells an `and` between clauses (`dc in next st and turn`) from one
// between places (`in next st and in each st`) or counted things.
func (l *lister) splits(i, hi int) bool {
	if len(l.flat) == 0 {
		return true
	}
	if first := firstWord(l.flat); first.Kind == Word && (first.Canon == "have" || first.Canon == "count" || first.Canon == "not" ||
		first.Canon == "leave" || first.Canon == "as" || first.Canon == "fasten" || first.Canon == "end" || first.Canon == "ending" || first.Canon == "hold") {
		return false
	}
	if l.byTurns(i) {
		return false
	}
	if first := firstWord(l.flat); first.Canon == "rep" && first.Kind == Word {
		return i+1 < hi && beginsAction(l.b.tokens[i+1]) && l.b.tokens[i+1].Canon != "rep"
	}
	next := i + 1
	for next < hi && l.b.tokens[next].Kind == Word && l.b.tokens[next].Canon == "" {
		next++
	}
	if next >= hi {
		return true
	}
	made := l.flat
	if made[0].Kind == Word && made[0].Canon == "work" {
		made = made[1:] // `make ch 68 and form a ring`
	}
	if len(made) == 2 && made[0].Canon == "ch" && made[1].Kind == Number && l.b.tokens[next].Kind != Number && l.b.tokens[next].Canon != "ch" {
		return true // `ch 4 and down the side of next petal`
	}
	if t := l.b.tokens[next]; t.Kind == Word && (t.Canon == "in" || t.Canon == "over" || t.Canon == "made" || t.Canon == "to" && next+1 < hi && isLoop(l.b.tokens[next+1])) && (l.flat[0].Canon == "ch" || l.flat[0].Canon == "turn") {
		return true // `ch 1 and over each loop work 1 sc`, `turn and through both loops`
	}
	if l.b.tokens[next].Kind == Number && next+1 < hi {
		if after := l.b.tokens[next+1]; after.Kind == Stitch || after.Kind == Word && after.Canon == "ch" && next+2 < hi && l.b.tokens[next+2].Kind != Hyphen {
			return !l.counting
		}
		_, works := clauses.read(l.flat).(*Work)
		return works && l.b.tokens[next+1].Kind == Word && l.b.tokens[next+1].Canon == "in" // `1 sc in next st and 2 in the next`
	}
	if last := l.flat[len(l.flat)-1]; last.Kind == Word && last.Canon == "in" && l.b.tokens[next].Kind == Stitch {
		return false // `dc in and FPdc around next st`
	}
	if t := l.b.tokens[next]; t.Kind == Word && t.Canon == "motion" && l.flat[0].Canon == "motion" {
		return false // `yarn over and draw through`
	}
	if t := l.b.tokens[next]; t.Kind == Word && t.Canon == "ch" && l.inEach() {
		return false // `in each dc and ch-1 sp`
	}
	return beginsAction(l.b.tokens[next]) && !(l.b.tokens[next].Kind == Stitch && l.inEach() && !l.placed(next, hi))
}

// isLoop tells a word for a loop of a stitch's top.
func isLoop(t Token) bool {
	return t.Kind == Word && (t.Canon == "blo" || t.Canon == "flo" || t.Canon == "bothloops" || t.Canon == "thirdloop")
}

// firstWord is the first token that is no filler.
func firstWord(tokens []Token) Token {
	for _, t := range tokens {
		if t.Kind != Word || t.Canon != "" {
			return t
		}
	}
	return tokens[0]
}

// inEach tells whether the clause so far speaks of each of something, as in
// `in each sc and dc around`.
func (l *lister) inEach() bool {
	for _, t := range l.flat {
		if t.Kind == Word && (t.Canon == "each" || t.Canon == "across" || t.Canon == "around") {
			return true
		}
	}
	return false
}

// numbersStitches tells whether the step so far is a number of stitches and no more: `14 dc`.
func (l *lister) numbersStitches() bool {
	n := len(l.flat)
	return n > 1 && l.flat[n-1].Kind == Stitch && l.flat[n-2].Kind == Number
}

// lastOnes tells whether the tokens from i on speak of the last stitches of the step: `the last
// dc`, `last 2 dc`.
func (l *lister) lastOnes(i, hi int) bool {
	for i < hi && l.b.tokens[i].Kind == Word && l.b.tokens[i].Canon == "" {
		i++
	}
	return i+1 < hi && (l.b.tokens[i].Canon == "last" || l.b.tokens[i].Kind == Number) && l.b.tokens[i+1].Kind == Stitch
}

// placed tells whether the stitch at i is worked somewhere: `and dc in next st`.
func (l *lister) placed(i, hi int) bool {
	return i+1 < hi && l.b.tokens[i+1].Kind == Word && l.b.tokens[i+1].Canon == "in"
}

// beginsAction tells whether a clause can begin with the token.
func beginsAction(t Token) bool {
	switch t.Kind {
	case Stitch:
		return true
	case Word:
		switch t.Canon {
		case "ch", "turn", "join", "skip", "omit", "comment", "fasten", "work", "rep", "return", "branch", "change", "place", "leave", "drop", "weave", "rotate", "not", "end", "ending", "continue", "likewise", "increased", "decreased", "motion":
			return true
		}
	}
	return false
}

// flush reads the collected words as a clause, or as several where the writer
// left out a comma.
func (l *lister) flush(sep Separator) {
	flat := l.flat
	l.flat = nil
	counting, leavesOut := l.counting, l.leavesOut
	l.counting, l.leavesOut = false, false
	if rows := l.lastRows(); rows != nil && len(flat) > 0 && flat[0].Kind == Word && flat[0].Written == "working" && holds(flat, Stitch) {
		l.changed(rows, spanOf(flat), sep) // `as row 2, working 1 tr in each ch-1 sp as well as in each tr`
		return
	}
	for len(flat) > 0 && flat[0].Kind == Word && (flat[0].Canon == "and" || flat[0].Canon == "") {
		counting = counting || flat[0].Written == "still" // `sc around, still 32`
		flat = flat[1:]
	}
	for n := len(flat); n > 0 && (flat[n-1].Canon == "" || flat[n-1].Canon == "and") && flat[n-1].Kind == Word; n = len(flat) {
		flat = flat[:n-1]
	}
	if len(flat) == 0 {
		if n := len(l.out); n > 0 && l.out[n-1].Sep < sep {
			l.out[n-1].Sep = sep
		}
		return
	}
	if n := len(l.out); n == 0 || l.out[n-1].Sep == SepStop {
		l.telling = flat[0].Kind == Word && flat[0].Canon == "have"
	}
	if l.lastRows() != nil && len(flat) == 2 && flat[0].Kind == Number && (flat[1].Canon == "row" || flat[1].Canon == "rnd") {
		l.say(flat, asTotal(flat), sep) // `as row 2, 18 rows`
		return
	}
	if n := len(l.out); n > 0 && l.depth == 0 && numberOfEach(flat) && CountOf(l.out[n-1].Node) != nil {
		l.say(flat, &Remark{}, sep) // `(144 tr), 72 tr on each side`
		return
	}
	if l.depth == 0 && (len(l.out) == 0 || l.out[len(l.out)-1].Sep == SepStop) {
		if total := countAgain(flat); total != nil {
			l.say(flat, total, sep)
			return
		}
		if countsAround(flat) {
			l.say(flat, &Remark{}, sep)
			l.leavesOut = sep == SepComma
			return
		}
	}
	if n := len(l.out); n > 0 && CountOf(l.out[n-1].Node) != nil && flat[len(flat)-1].Canon == "stem" && !slices.ContainsFunc(flat, goesHome) && !holds(flat, Stitch) && !holds(flat, Number) {
		if t, bare := l.out[n-1].Node.(*Total); bare {
			l.out[n-1].Node = t.on("stem") // `35 ch, the whole stem`
		}
		l.say(flat, &Remark{}, sep)
		return
	}
	if leavesOut && len(flat) > 1 && flat[0].Canon == "not" && takesIn(flat[1]) {
		l.say(flat, &Remark{}, sep) // `so 49 sts round the vane, not counting the quill`
		return
	}
	if total, rest := countBeside(flat); total != nil {
		l.sayBeside(flat, rest, total, sep)
		return
	}
	if total := countUnderName(flat); total != nil {
		l.say(flat, total, sep)
		return
	}
	if total := inAll(flat); total != nil {
		l.say(flat, total, sep)
		return
	}
	if counting || l.telling {
		said := flat
		if l.telling && len(said) > 1 && said[0].Canon == "have" {
			said = said[1:] // a tally has its first number first
		}
		if total := cmp.Or(asTotal(flat), tallied(said)); total != nil {
			l.say(flat, total, sep)
			return
		}
		if total, rest := countSpread(flat); total != nil {
			l.sayBeside(flat, rest, total, sep)
			return
		}
		if tallies(flat) || l.telling && tellsOn(flat) {
			l.say(flat, &Remark{}, sep)
			return
		}
	}
	if work := alongPart(flat); work != nil {
		l.say(flat, work, sep)
		return
	}
	from := len(l.out)
	if beginsWithChain(flat) {
		l.clause(flat[2:], sep)
		l.out[from].Span = l.out[from].Span.Union(flat[0].Span)
	} else {
		l.clause(flat, sep)
	}
	for i := from; i < len(l.out) && l.beside; i++ {
		if _, unread := l.out[i].Node.(*Unread); unread {
			l.out[i].Node = &Remark{} // `| lower stem`
		}
	}
	l.dropNote()
}

// sentence is what comes before the first full stop.
func sentence(tokens []Token) []Token {
	if end := slices.IndexFunc(tokens, func(t Token) bool { return t.Kind == Period }); end >= 0 {
		return tokens[:end]
	}
	return tokens
}

// held is the clause so far, from the word on for what is said to have so many stitches, nil where it
// begins with none: `the rib has 9 sc and 2 thorns`.
func (l *lister) held() []Token {
	for i, t := range l.flat {
		switch {
		case t.Written == holderToken:
			return l.flat[i:]
		case t.Kind != Word || t.Canon != "":
			return nil
		}
	}
	return nil
}

// dropNote takes in a bracket that says how the clause's stitch is drawn, and leaves
// a remark that no clause took up where it stands: within the
// clause before it.
func (l *lister) dropNote() {
	for _, at := range l.told {
		l.takeIn(at)
	}
	if l.note.Said {
		l.takeIn(l.note.Span)
	}
	l.told, l.note = nil, Counts{}
}

// takeIn makes a place part of the last clause that begins before it.
func (l *lister) takeIn(at source.Span) {
	for i := len(l.out) - 1; i >= 0; i-- {
		if l.out[i].Span.Start <= at.Start {
			l.out[i].Span = l.out[i].Span.Union(at)
			return
		}
	}
}

func spanOf(tokens []Token) source.Span {
	return source.Span{Start: tokens[0].Span.Start, End: tokens[len(tokens)-1].Span.End}
}

// maxFlat bounds the words without a sign among them that are read: in more, no
// writer means anything.
const maxFlat = 2_000

// clause reads flat and appends what it says. Where the whole is not
// understood, the longest beginning that is and the rest are tried.
func (l *lister) clause(flat []Token, sep Separator) {
	if len(flat) > maxFlat {
		l.read(&Unread{}, spanOf(flat), sep)
		return
	}
	if rows := l.lastRows(); rows != nil && excepts(flat[0]) {
		l.changed(rows, spanOf(flat), sep)
		return
	}
	if rows := l.lastRows(); rows != nil && rows.Changed && flat[0].Kind == Word && flat[0].Canon == "in" {
		l.changed(rows, spanOf(flat), sep) // `rep Rnd 7, but with ch 7, in the 4th dc of 6`
		return
	}
	if leavesHalf(flat) {
		l.read(&Leave{Place: Place{Pick: PickRemaining}}, spanOf(flat), sep)
		return
	}
	if seams(flat) {
		l.read(&MakeUp{}, spanOf(flat), sep)
		return
	}
	node, upTo := l.node(flat)
	if node != nil {
		l.read(node, spanOf(flat), sep)
		return
	}
	if rows := l.lastRows(); rows != nil && len(flat) > 1 && flat[0].Canon == "work" && flat[1].Canon == "rep" {
		l.changed(rows, spanOf(flat), sep) // `as Row 2, working the repeat 28 times`
		return
	}
	if cut := l.beginning(flat, upTo); cut > 0 {
		l.inTwo(flat, cut, sep)
		return
	}
	if rows := l.lastRows(); rows != nil && (flat[0].Canon == "with" || flat[0].Canon == "work" && flat[min(1, len(flat)-1)].Canon == "rep") {
		l.changed(rows, spanOf(flat), sep) // `rep Rows 3-6, with more repeats each time`
		return
	}
	if node = asStep(flat); node == nil && l.depth == 0 { // in brackets it is a remark
		node = l.gist(flat, sep)
	}
	if node == nil {
		node = inColour(flat)
	}
	if node == nil {
		node = &Unread{}
	}
	l.out = append(l.out, Clause{Span: spanOf(flat), Sep: sep, Node: node})
}

// leavesHalf tells words that leave the other half of a piece, with whatever lies between: `leave the tip sp and the other half
// alone`.
func leavesHalf(flat []Token) bool {
	if flat[0].Kind != Word || flat[0].Canon != "leave" || holds(flat, Number) || holds(flat, Stitch) {
		return false
	}
	return slices.ContainsFunc(flat, func(t Token) bool { return t.Kind == Name && t.Canon == "half" })
}

// asStep reads what is made as a step tells it, whatever it is called: `Work a thorn as in step 2`. It gives
// nil for anything else.
func asStep(flat []Token) Node {
	as := slices.IndexFunc(flat, func(t Token) bool { return t.Kind == Word && t.Canon == "as" })
	if as < 1 || as+2 >= len(flat) || slices.ContainsFunc(flat[:as], func(t Token) bool {
		return t.Kind != Name && !(t.Kind == Word && (t.Canon == "" || t.Canon == "work" || t.Canon == "branch" || t.Canon == "group"))
	}) {
		return nil
	}
	step := slices.DeleteFunc(slices.Clone(flat[as:]), func(t Token) bool { return t.Kind == Word && t.Canon == "in" })
	if len(step) != 3 || step[1].Canon != "step" || step[2].Kind != Number {
		return nil
	}
	return clauses.read(step)
}

// colourBehind tells the yarn, token i, that stands behind the stitches worked in it: `14 sc beige`, `3 hdc CC`.
func colourBehind(flat []Token, i int) bool {
	return stitchesBefore(flat, i) && (flat[i].Written == colourToken || i+1 == len(flat) && namesYarn(flat[i]))
}

// namesYarn tells the letter or letters of a yarn, where others may be those of a size or a stitch: `S`, `p`.
func namesYarn(t Token) bool {
	return t.Kind == Name && lettersYarn(t.Canon) && (len(t.Canon) > 1 || t.Canon < "g")
}

// inColour reads a colour that stands alone behind the stitches that are worked in it, with
// what they are for: `14 sc beige for the breast`. It gives nil for anything else.
func inColour(flat []Token) Node {
	if flat[0].Written != colourToken {
		return nil
	}
	upTo := slices.IndexFunc(flat, func(t Token) bool { return t.Kind == Word && t.Canon == "for" })
	if upTo < 0 {
		upTo = len(flat)
	}
	if !named(flat[:upTo]) || upTo < len(flat) && !named(flat[upTo+1:]) {
		return nil
	}
	var words []string
	for _, t := range flat[:upTo] {
		if t.Kind == Name {
			words = append(words, t.Canon)
		}
	}
	return &Yarn{Yarn: strings.Join(words, " ")}
}

// beginning finds the longest beginning of flat, of at most upTo tokens, that
// is a clause of its own with another after it. It gives 0 for none.
func (l *lister) beginning(flat []Token, upTo int) int {
	for cut := min(upTo, len(flat)-1); cut > 0; cut-- {
		if !beginsAction(flat[cut]) && flat[cut].Kind != Number && flat[cut].Kind != Enclosed && flat[cut].Canon != "with" && flat[cut].Canon != "for" && !colourBehind(flat, cut) &&
			!(flat[cut-1].Kind == Enclosed && l.b.totals[flat[cut-1].Group] != nil) {
			continue
		}
		if before := flat[cut-1]; flat[cut].Kind == Stitch && (before.Kind == Ordinal || before.Kind == Word && before.Canon == "of") {
			continue // `around post of 6th sc from …`
		}
		node, reach := l.node(flat[:cut])
		if node != nil {
			return cut
		}
		cut = min(cut, reach+1)
	}
	return 0
}

// inTwo reads two clauses with nothing between them. A yarn named after a
// stitch is taken up before it.
func (l *lister) inTwo(flat []Token, cut int, sep Separator) {
	node, _ := l.node(flat[:cut])
	l.read(node, spanOf(flat[:cut]), SepNone)
	if cut+1 == len(flat) && namesYarn(flat[cut]) {
		l.read(&Yarn{Yarn: flat[cut].Canon, Before: true}, flat[cut].Span, sep)
		return
	}
	at := len(l.out)
	l.clause(flat[cut:], sep)
	if at == len(l.out) {
		return // it only says how the rows differ that are worked again
	}
	if yarn, ok := l.out[at].Node.(*Yarn); ok && yarn.Action == YarnUse && (flat[cut].Canon == "with" || colourBehind(flat, cut)) {
		before := *yarn
		before.Before = true
		l.out[at].Node = &before
	}
}

// lastRows is the reference to other rows that was read last, if it was.
func (l *lister) lastRows() *Rows {
	if len(l.out) == 0 {
		return nil
	}
	rows, _ := l.out[len(l.out)-1].Node.(*Rows)
	return rows
}

// changed takes words that say how a row differs from the one it is like.
func (l *lister) changed(rows *Rows, at source.Span, sep Separator) {
	n := len(l.out) - 1
	other := *rows
	other.Changed = true
	l.out[n] = Clause{Span: l.out[n].Span.Union(at), Sep: sep, Node: &other}
}

// excepts tells the word that begins an exception: `but ending with sc`.
func excepts(t Token) bool {
	if t.Kind != Name {
		return t.Kind == Word && t.Canon == "alternating"
	}
	switch t.Canon {
	case "but", "except", "having", "treating", "omitting", "reversing", "instead":
		return true
	}
	return false
}

// read takes a clause that was understood, with what a bracket within it says
// of skipped chains.
func (l *lister) read(node Node, span source.Span, sep Separator) {
	if w, ok := node.(*Work); ok && l.body != nil {
		with := *w
		with.Body = l.body
		node, l.body = &with, nil
	}
	if w, ok := node.(*Work); ok && l.called.Written() {
		with := *w
		with.Called = l.called
		node = &with
	}
	l.called = StitchRef{}
	if b, branch := node.(*Branch); branch && !b.Labelled && l.speaksOn(span) {
		last := &l.out[len(l.out)-1]
		last.Span, last.Sep = last.Span.Union(span), sep // `between Branch 1 and Branch 2` opens none
		return
	}
	if _, chains := node.(*Chain); chains && l.each != "" {
		if star := l.out[len(l.out)-1]; isStar(star.Node) {
			l.out = append(l.out, Clause{Span: star.Span, Sep: SepStop, Node: &Branch{Name: l.each, Labelled: true}})
		}
		l.each = ""
	}
	taken := len(l.out) > 0 && l.note.Span.Start < l.out[len(l.out)-1].Span.End // by the clause before
	if w, ok := node.(*Work); ok && l.note.Said && !taken && (sep != SepNone || l.note.Span.Start <= span.End) {
		with := *w
		with.Counts = l.note
		node, span = &with, span.Union(l.note.Span)
		l.note = Counts{}
	}
	l.out = append(l.out, Clause{Span: span, Sep: sep, Node: node})
}

// speaksOn tells whether an `and` joins what begins at a place to words that ask for no stitches.
func (l *lister) speaksOn(at source.Span) bool {
	if len(l.out) == 0 {
		return false
	}
	switch l.out[len(l.out)-1].Node.(type) {
	case *Unread, *MakeUp, *Likewise:
		said := l.b.within(source.Span{Start: l.out[len(l.out)-1].Span.Start, End: at.End + 1}) // with the mark behind it
		i := slices.IndexFunc(said, func(t Token) bool { return t.Span.Start >= at.Start })
		return i > 0 && said[i-1].Canon == "and" && said[len(said)-1].Kind != Colon
	}
	return false
}

// node reads flat and puts the insides of its brackets in place. Where flat is
// no clause, upTo is how long a beginning of it may be one.
func (l *lister) node(flat []Token) (node Node, upTo int) {
	known := clauses.try(flat)
	if known.node == nil {
		return nil, known.upTo
	}
	node = known.node
	var inside []Clause
	var total *Total
	found := false
	for _, t := range flat {
		if t.Kind == Enclosed {
			inside, total, found = l.b.groups[t.Group], l.b.totals[t.Group], true
		}
	}
	if !found {
		return node, 0
	}
	return filled(node, inside, total), 0
}

// filled gives a copy of a shared node that holds the inside of its bracket.
func filled(node Node, inside []Clause, total *Total) Node {
	switch n := node.(type) {
	case *Bracket:
		return &Bracket{Body: inside, Total: total}
	case *Chain:
		ch := *n
		if ch.Multiple.Written() && !ch.Number.Written() {
			ch.sampled(inside)
		}
		return &ch
	case *Repeat:
		r := *n
		r.Body = inside
		return &r
	case *Alternate:
		return &Alternate{Body: inside, Limit: n.Limit, Number: n.Number, Last: n.Last}
	case *Shaping: // `(inc) 6 times evenly`
		if len(inside) == 1 {
			if w, ok := inside[0].Node.(*Work); ok && w.Stitch.Meaning.Shapes() && unplacedNode(w) {
				return &Shaping{Less: w.Stitch.Meaning.Is(stitch.Decrease), Number: n.Number}
			}
		}
		return &Likewise{}
	case *Group:
		g := *n
		if len(g.Body) == 1 {
			g.Body = []Clause{{Node: filled(g.Body[0].Node, inside, total), Span: spanOfClauses(inside)}}
		} else {
			g.Body = inside
		}
		return &g
	case *Ending:
		e := *n
		e.Step = filled(e.Step, inside, total)
		return &e
	case *PlaceFirst:
		p := *n
		p.First = filled(p.First, inside, total)
		return &p
	}
	return node
}

func spanOfClauses(list []Clause) source.Span {
	if len(list) == 0 {
		return source.Span{}
	}
	return list[0].Span.Union(list[len(list)-1].Span)
}
