package fabric

import (
	"maps"
	"slices"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// words settles what a pattern's words mean in its dialect, and what its own
// stitches do.
type words struct {
	dialect stitch.Dialect
	own     map[string]*ownStitch
	turning turningRule
	// uncounted are the lengths of beginning chains that never count, whatever stitch follows them: `Ch 2 never counts.`
	uncounted []int
	// multiple is the header's `Stitch multiple: 6 + 2`, said of the foundation
	// chain; of a pattern of several pieces nobody can say which it means.
	multiple struct{ unit, plus int }
	marks    bool // a marker is placed somewhere in the pattern
	gauge    syntax.Gauge
	// tops is set where the pattern calls the top of any stitch a loop: it works
	// into `successive loops`.
	tops bool
	// turns is set where the pattern says once that every row is turned at its end.
	turns bool
	// halved is set where the pattern says that its counts are of one of two sides.
	halved bool
	// called are the names by which rows with numbers call for rows that are told elsewhere, each once.
	called []string
}

// ownStitch is a stitch that the pattern defines.
type ownStitch struct {
	name string // "" for several stitches that are told where they are worked
	// body is the definition read as clauses; nil where it is prose.
	body []syntax.Clause
	// overSpace is what is worked where a space lies below, nil for the body.
	overSpace []syntax.Clause
	// uses and makes are said, or 0.
	uses, makes syntax.Num
	// spans is how many places the body works over where nothing is said.
	spans int
	// spread is set where the body names places of its own, one after the other:
	// a cable over four stitches.
	spread bool
	// branches is set where the body makes a chain of its own and goes back along that.
	branches bool
	// kind stands for the stitch where the body cannot be worked; same is set
	// where it is that stitch by another word.
	kind *stitch.Stitch
	same bool
}

// turningRule is what the header or the prose says of turning chains, by the stitch's ID;
// "" holds for all stitches not named.
type turningRule map[string]bool

func newWords(f *syntax.File, d stitch.Dialect) *words {
	w := &words{dialect: d, own: map[string]*ownStitch{}, turning: turningRule{}}
	for _, d := range f.Definitions {
		if d.Special {
			w.define(d)
		}
	}
	for _, d := range f.OwnParts {
		w.define(d)
	}
	w.grow()
	w.marks, w.tops = f.Traits&syntax.SetsMarkers != 0, f.Traits&syntax.SuccessiveTops != 0
	for _, span := range f.Prose {
		w.turns = w.turns || turnsEvery(f.Text.Slice(span))
		w.halved = w.halved || ofOneSide.MatchString(f.Text.Slice(span))
		w.marks = w.marks || slices.ContainsFunc(syntax.Lex(f.Text.Slice(span), syntax.Standard()), func(t syntax.Token) bool { return t.Canon == "marker" })
	}
	w.defineInPassing(f)
	for _, span := range f.Turning {
		w.readTurning(f.Text.Slice(span))
	}
	for _, field := range f.Header {
		switch {
		case field.Key == "gauge":
			w.gauge = syntax.ParseGauge(field.Value)
		case field.Key == "notes":
			w.turns = w.turns || turnsEvery(field.Value)
			w.halved = w.halved || ofOneSide.MatchString(field.Value)
		case field.Key == "turning chains":
			w.readTurning(field.Value)
		case field.Key == "stitch multiple" && len(f.Pieces) == 1:
			w.readMultiple(field.Value)
		}
	}
	w.called = rowsCalled(f)
	return w
}

// rowsCalled are the names by which rows with numbers call for others.
func rowsCalled(f *syntax.File) (names []string) {
	if f.Traits&syntax.CallsRows == 0 {
		return nil
	}
	for _, p := range f.Pieces {
		for _, r := range p.Rows {
			if ref := reference(r.Clauses); r.Traits&syntax.CallsRows != 0 && ref != nil && ref.Called != "" && !slices.Contains(names, ref.Called) {
				names = append(names, ref.Called)
			}
		}
	}
	return names
}

// everyTurn says once for all rows that they are turned: `Turn at the end of every row.`
var everyTurn = phrase.MustCompile(`(?i)\bturn(?: (?:the |your )?work)? (?:after|at (?:the )?end of|on) (?:every|each) row\b|\b(?:every|each) row (?:is turned|ends with a turn)\b|(?:at|after) (?:the )?(?:end of )?(?:every|each) row,? turn\b`)

// turnedNot ends before what is not done.
var turnedNot = phrase.MustCompile(`(?i)\b(?:not|never|no|without|n['’]t)\b[^.;]*$`)

// ofOneSide says of the counts that they are of half of what a row makes: `The numbers after a dash are for one side.`
var ofOneSide = phrase.MustCompile(`(?i)\b(?:numbers?|counts?|totals?|figures?)\b[^.:;]*\b(?:are|is)\b[^.:;]*\b(?:for|of|per|on) (?:just |only )?(?:one|each|a single) (?:side|half)\b`)

// turnsEvery tells whether a note says that all rows are turned: `do not turn at the end of each
// row` does not.
func turnsEvery(text string) bool {
	at := everyTurn.FindStringIndex(text)
	return at != nil && !turnedNot.MatchString(text[:at[0]])
}

func (w *words) define(d *syntax.Definition) {
	own := &ownStitch{name: d.Names[0], uses: d.Uses, makes: d.Makes}
	meaning, known := stitch.Find(spelled(d.Names[0]))
	own.kind = meaning.In(w.dialect)
	if !known || own.kind == nil {
		own.kind = w.calledFirst(d)
	}
	if own.kind == nil {
		own.kind = &stitch.Stitch{ID: d.Names[0], Class: stitch.Group, Uses: 1, Makes: 1}
	}
	if body := workIn(d); workable(body) && !d.Makes.Written() {
		own.body = body
		if k := w.shaping(own.body); k != nil {
			own.body, own.kind, own.same = nil, k, true
		}
	}
	if d.OverSpace != nil && along(d.OverStitches) && workable(d.OverStitches) && workable(d.OverSpace) {
		own.body, own.overSpace = d.OverStitches, d.OverSpace
	}
	own.spans, own.spread = spanned(own.body), own.overSpace != nil || spread(own.body)
	for _, name := range d.Names {
		w.own[spelled(name)] = own
	}
}

// workIn is what a definition says to work, without the sentences behind it that only tell of
// the stitch: `The spine leans over the row.`
func workIn(d *syntax.Definition) []syntax.Clause {
	if d.Row == nil {
		return nil
	}
	list := d.Row.Clauses
	whole := workable(list)
	for i, c := range list {
		if c.Sep == syntax.SepStop && i == len(list)-2 && countsFirst(list[i+1].Node, list) {
			return list[:i+1] // a shell's own chain is taken by custom
		}
		if c.Sep == syntax.SepStop && i < len(list)-1 && (!whole && onlyTell(d, list[i+1:]) || recounts(list[i+1:], list[:i+1])) {
			return list[:i+1]
		}
	}
	return list
}

// countsFirst tells a sentence that says for what the chain counts with which a definition
// begins: `Beg shell: (ch 3, dc, ch 2, 2 dc) in sp. The ch 3 stands for the first dc.`
func countsFirst(said syntax.Node, body []syntax.Clause) bool {
	rise := riseOf(body)
	chain, ok := said.(*syntax.Chain)
	return ok && rise != nil && chain.Counts.Said && chain.Number.At(0) == rise.Number.At(0)
}

// riseOf is the chain that a definition begins with, be it in a place that is named behind it, nil for none:
// `(ch 3, dc, ch 2, 2 dc) in the sp`.
func riseOf(body []syntax.Clause) *syntax.Chain {
	if len(body) == 0 {
		return nil
	}
	first := body[0].Node
	if g, ok := first.(*syntax.Group); ok && len(g.Body) > 0 {
		first = g.Body[0].Node
	}
	rise, _ := first.(*syntax.Chain)
	return rise
}

// recounts tells clauses that say how many stitches of each kind others have made: `8 dc and 3
// picots.`
func recounts(said, done []syntax.Clause) bool {
	made, counted := map[string]int{}, map[string]int{}
	add := func(to map[string]int, n syntax.Node) bool {
		w, ok := n.(*syntax.Work)
		if ok && len(w.Body) == 0 {
			to[w.Stitch.Word] += max(1, w.Number.At(0))
		}
		return ok && len(w.Body) == 0
	}
	for _, c := range said {
		if _, spaces := c.Node.(*syntax.Total); spaces {
			continue
		}
		if w, ok := c.Node.(*syntax.Work); !ok || !w.Number.Written() || len(w.Places) > 0 || !add(counted, c.Node) {
			return false
		}
	}
	for _, c := range done {
		switch n := c.Node.(type) {
		case *syntax.Group:
			for _, c := range n.Body {
				add(made, c.Node)
			}
		default:
			add(made, n)
		}
	}
	return len(counted) > 0 && maps.Equal(made, counted)
}

// ofHand are words of what hands do, and of what they do it with.
var ofHand = phrase.MustCompile(`(?i)\b(?:yo|yoh|yrh|yarn|loops?|lps?|hook|draw|pull|insert|through|repeat|rep|again|skip|miss|turn|join|close|work|make|leav\w+|hold)\b`)

// onlyTell tells whether clauses of a definition ask for nothing: they count, or what is not
// read of them has no numbers but of times, no stitch but its own, and no word of what hands do.
func onlyTell(d *syntax.Definition, clauses []syntax.Clause) bool {
	own := func(t syntax.Token) bool {
		return slices.ContainsFunc(d.Names, func(name string) bool { return t.Canon == spelled(name) })
	}
	return !slices.ContainsFunc(clauses, func(c syntax.Clause) bool {
		switch c.Node.(type) {
		case *syntax.Total, *syntax.Remark, *syntax.CountsNote:
			return false
		}
		if ofHand.MatchString(d.Row.Text[c.Span.Start:c.Span.End]) {
			return true
		}
		for i, t := range d.Row.Tokens {
			times := i+1 < len(d.Row.Tokens) && d.Row.Tokens[i+1].Canon == "times"
			if t.Span.Start >= c.Span.Start && t.Span.End <= c.Span.End && (t.Kind == syntax.Number && !times || t.Kind == syntax.Stitch && !own(t)) {
				return true
			}
		}
		return false
	})
}

// calledFirst is the textured stitch that a definition names before it says how that is made:
// `MB = make bobble: (yo, insert hook, …)`; nil for none.
func (w *words) calledFirst(d *syntax.Definition) *stitch.Stitch {
	if d.Row == nil {
		return nil
	}
	tokens := d.Row.Tokens
	for len(tokens) > 0 && tokens[0].Kind == syntax.Word && (tokens[0].Canon == "work" || tokens[0].Canon == "") {
		tokens = tokens[1:]
	}
	if len(tokens) < 2 || tokens[0].Kind != syntax.Stitch || tokens[1].Kind != syntax.Colon && tokens[1].Kind != syntax.Dash {
		return nil
	}
	if k := w.named(tokens[0].Stitch); k != nil && k.Class == stitch.Texture {
		return k
	}
	return nil
}

// defineInPassing takes the stitches that are named where they are first worked:
// `(2 dc, ch 2, 2 dc) in next st (shell made)`. A name that stands for one
// stitch, as a cluster does, needs no meaning.
func (w *words) defineInPassing(f *syntax.File) {
	define := func(ref syntax.StitchRef, body []syntax.Clause) {
		k := ref.Meaning.In(w.dialect)
		if len(body) == 0 || w.own[ref.Word] != nil || k == nil || k.Class != stitch.Group || !workable(body) {
			return
		}
		w.own[ref.Word] = &ownStitch{name: ref.Word, kind: k, body: body, spans: spanned(body), spread: spread(body)}
	}
	if f.Traits&syntax.NamesStitches == 0 {
		return
	}
	for _, p := range f.Pieces {
		for _, r := range p.Rows {
			if r.Traits&syntax.NamesStitches != 0 {
				eachMade(r, define)
			}
		}
	}
}

// eachMade visits what a row says that its stitches are made of.
func eachMade(r *syntax.Row, visit func(syntax.StitchRef, []syntax.Clause)) {
	syntax.Walk(r.Clauses, func(c syntax.Clause) {
		switch n := c.Node.(type) {
		case *syntax.Made:
			visit(n.Stitch, n.Body)
		case *syntax.Work:
			visit(n.Stitch, n.Body)
			if n.Called.Written() {
				one := *n
				one.Places, one.Called = nil, syntax.StitchRef{}
				visit(n.Called, []syntax.Clause{{Span: c.Span, Node: &one}})
			}
		case *syntax.Group:
			visit(n.Called, n.Body)
		}
	})
}

// definesInPassing tells whether a row says what one of its stitches is made of.
func definesInPassing(r *syntax.Row) bool {
	found := false
	eachMade(r, func(ref syntax.StitchRef, body []syntax.Clause) { found = found || ref.Written() && len(body) > 0 })
	return found
}

// spanned is how many places a definition's body uses: one where all of it
// goes in one place, none where it is closed into its own chains.
func spanned(body []syntax.Clause) int {
	if len(body) == 0 {
		return 1
	}
	_, chains := body[0].Node.(*syntax.Chain)
	for _, c := range body {
		switch n := c.Node.(type) {
		case *syntax.Chain, *syntax.Join, *syntax.Remark, *syntax.Total, *syntax.CountsNote, *syntax.Branch, *syntax.Return:
		case *syntax.Work:
			if !chains || len(n.Places) == 0 || slices.ContainsFunc(n.Places, belowBody) {
				return 1
			}
		default:
			return 1
		}
	}
	return 0
}

// alongOwnChain tells whether a definition's body makes a chain and works back along it,
// as a leaf does that grows from a stem; others that do so may grow on it.
func (w *words) alongOwnChain(body []syntax.Clause) bool {
	if len(body) < 2 {
		return false
	}
	if _, chain := body[0].Node.(*syntax.Chain); !chain {
		return false
	}
	places, laid := 0, true
	for _, c := range body[1:] {
		switch n := c.Node.(type) {
		case *syntax.Chain:
			laid = true // a fork
			continue
		case *syntax.Work:
			if own := w.own[n.Stitch.Word]; own != nil && own.branches && len(n.Places) == 0 {
				continue
			}
		case *syntax.Group:
		case *syntax.Bracket:
			if n.Total == nil {
				return false
			}
			continue // `(3 sl sts)`
		default:
			if spanned([]syntax.Clause{body[0], c}) > 0 {
				return false
			}
			continue
		}
		along := placesOf(c.Node)
		for _, p := range along {
			switch {
			case p.From == syntax.FromHook && laid:
				laid = false
			case p.From == syntax.FromHook, places == 0, belowBody(p) && p.Noun.Kind > syntax.NounAny:
				return false
			}
			places++
		}
		if len(along) == 0 {
			return false
		}
	}
	return places > 1
}

// grow finds the words that are branches, and those on which such branches grow.
func (w *words) grow() {
	for again := true; again; {
		again = false
		for _, own := range w.own {
			if !own.branches && w.alongOwnChain(own.body) {
				own.branches, own.spread, own.spans, again = true, false, 0, true
			}
		}
	}
}

// belowBody tells a place of the row below from one that a definition's own
// chains give.
func belowBody(p syntax.Place) bool {
	return p.From != syntax.FromHook && p.Pick != syntax.PickSame && p.Noun.Kind != syntax.NounChain
}

// spread tells whether a definition's body passes over stitches as it goes: it skips some, or goes
// on from one to the next, `ch 3, dc in next 3 sts`. Chains are those of the foundation where it makes none.
func spread(body []syntax.Clause) bool {
	passed, chains := 0, false
	for _, c := range body {
		switch n := c.Node.(type) {
		case *syntax.Chain:
			chains = true
		case *syntax.Skip:
			return true
		case *syntax.Work:
			for _, p := range n.Places {
				below := belowBody(p) && p.Noun.Kind <= syntax.NounStitch || p.Noun.Kind == syntax.NounChain && p.From == syntax.FromHere && !chains
				if p.Pick == syntax.PickNext && below && p.To.Kind == syntax.ToNothing {
					passed += max(1, p.Number.At(0))
				}
			}
		}
	}
	return passed > 1
}

// along tells whether a definition's body goes along several places, as the squares of a
// filet do, and is not all worked in one.
func along(body []syntax.Clause) bool { return spread(body) || placesAlong(body) > 1 }

// placesAlong is how many places a definition's body names.
func placesAlong(body []syntax.Clause) int {
	n := 0
	for _, c := range body {
		for _, p := range placesOf(c.Node) {
			n += max(1, p.Number.At(0))
		}
	}
	return n
}

// shaping is the increase or decrease that a definition names before it says how
// that is made: `V: increase, 2 in 1`; nil for any other.
func (w *words) shaping(body []syntax.Clause) *stitch.Stitch {
	first, ok := body[0].Node.(*syntax.Work)
	if !ok || first.Number.Written() || len(first.Places) > 0 {
		return nil
	}
	if k := first.Stitch.Meaning.In(w.dialect); k != nil && (k.Class == stitch.Increase || k.Class == stitch.Decrease) {
		return k
	}
	return nil
}

// spelled writes a word as the lexer does: lower case, hyphens as spaces.
func spelled(word string) string {
	return strings.ToLower(strings.Join(strings.FieldsFunc(word, func(r rune) bool { return r == ' ' || r == '-' }), " "))
}

// workable tells whether a definition says stitch by stitch what is made, not
// how a single stitch is drawn up.
func workable(list []syntax.Clause) bool {
	made := false
	for _, c := range list {
		switch n := c.Node.(type) {
		case *syntax.Work, *syntax.Chain, *syntax.Skip:
			made = true
		case *syntax.Group:
			made = made || workable(n.Body)
			if !workable(n.Body) {
				return false
			}
		case *syntax.Bracket:
			if !workable(n.Body) {
				return false
			}
			made = true
		case *syntax.Repeat:
			if !workable(n.Body) {
				return false
			}
			made = true
		case *syntax.Join, *syntax.LoopNote, *syntax.Total, *syntax.Remark, *syntax.CountsNote, *syntax.Branch, *syntax.Return:
		default:
			return false
		}
	}
	return made
}

// readMultiple reads `6 + 2`. A multiple of stitches, to which chains are
// added, is not one of the foundation chain.
func (w *words) readMultiple(value string) {
	var numbers []int
	for _, t := range syntax.Lex(value, syntax.Standard()) {
		switch {
		case t.Kind == syntax.Number:
			numbers = append(numbers, t.Values.At(0))
		case t.Canon == "st" || t.Kind == syntax.Enclosed || t.Kind == syntax.Open:
			return
		}
	}
	if len(numbers) == 0 || len(numbers) > 2 || numbers[0] < 1 {
		return
	}
	w.multiple.unit = numbers[0]
	if len(numbers) == 2 {
		w.multiple.plus = numbers[1]
	}
}

// readTurning reads `ch 2 counts as hdc, ch 3 counts as dc`, `ch 2 does not
// count as a st`, `dc: ch 3 counts`.
func (w *words) readTurning(value string) {
	tokens := syntax.Lex(value, syntax.Standard())
	start := 0
	for i := 0; i <= len(tokens); i++ {
		if i < len(tokens) && tokens[i].Kind != syntax.Comma && tokens[i].Kind != syntax.Semi && tokens[i].Kind != syntax.Period {
			continue
		}
		w.turningPart(tokens[start:i])
		start = i + 1
	}
}

func (w *words) turningPart(tokens []syntax.Token) {
	counts, said := true, false
	var chains []int
	var named []string
	for i, t := range tokens {
		switch {
		case t.Kind == syntax.Word && t.Canon == "not":
			counts = false
		case t.Kind == syntax.Word && (t.Canon == "count" || t.Canon == "st" && !counts):
			said = true // or `is never a stitch`
		case t.Kind == syntax.Stitch:
			if k := t.Stitch.In(w.dialect); k != nil {
				named = append(named, k.ID)
			}
		case t.Kind == syntax.Number && i > 0 && !said: // behind that stands what it counts for
			chains = append(chains, t.Values.At(0))
		}
	}
	if !said {
		return
	}
	if len(named) == 0 {
		if !counts {
			w.uncounted = append(w.uncounted, chains...)
		}
		for _, k := range stitch.All() {
			if k.Class == stitch.Plain && slices.Contains(chains, k.Turning) {
				named = append(named, k.ID)
			}
		}
	}
	if len(named) == 0 {
		named = []string{""}
	}
	for _, id := range named {
		w.turning[id] = counts
	}
}

// Uncounted tells whether the pattern says that so many chains at the beginning of a row never count as a stitch, whatever
// follows them.
func (f *Fabric) Uncounted(chains int) bool { return slices.Contains(f.words.uncounted, chains) }

// stitch is what a word means in this pattern.
func (w *words) stitch(ref syntax.StitchRef) (*stitch.Stitch, *ownStitch) {
	if own := w.own[ref.Word]; own != nil {
		if own.same {
			return own.kind, nil
		}
		return own.kind, own
	}
	return w.named(ref.Meaning), nil
}

// named is the stitch that a spelling names: in the pattern's dialect, or, where
// that has no such word, in the other.
func (w *words) named(m stitch.Meaning) *stitch.Stitch {
	if k := m.In(w.dialect); k != nil {
		return k
	}
	return m.In(w.dialect.Other())
}
