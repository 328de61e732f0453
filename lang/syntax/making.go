package syntax

import (
	"slices"

	"stitchproof/lang/phrase"
	"stitchproof/lang/stitch"
)

// A stitch named where it is first worked: `(5 dc in next st) (fan made)`,
// `shell (2 dc, ch 2, 2 dc) in next sp`, `(cluster: …)`. What the name stands
// for is read from what was worked.

// madeHere finds a word with what it is made of after it, and a place for that:
// `Leaf (ch 4, dc2tog in first ch) in first st`.
var madeHere = phrase.MustCompile(`(?:^|[,;:.*] *)(\pL{3,}) \(([^()]+)\) in (?:the |each |same |first |last |next |any )`)

// madeNames lists the words of an instruction that name a stitch of the pattern's
// own where it is first worked: ones that the trade does not know.
func madeNames(instruction string) []string {
	var out []string
	for _, m := range madeHere.FindAllStringSubmatch(instruction, -1) {
		if word := Lex(m[1], Standard()); len(word) != 1 || word[0].Kind != Name || word[0].Written == colourToken {
			continue
		}
		inside := Lex(m[2], Standard())
		if holds(inside, Stitch) && (inside[0].Kind == Stitch || inside[0].Kind == Number || inside[0].Canon == "ch") {
			out = append(out, m[1])
		}
	}
	return out
}

// names takes a bracket that only names what was worked before it.
func (f *folder) names(c Clause, n *Bracket) bool {
	if len(n.Body) != 1 {
		return false
	}
	made, says := n.Body[0].Node.(*Made)
	if w, ok := n.Body[0].Node.(*Work); ok && unplacedNode(w) {
		made = &Made{Stitch: w.Stitch}
	}
	if made == nil || !made.Stitch.Written() {
		return false
	}
	if f.drawn(c, made.Stitch) {
		return true
	}
	if !says {
		return false
	}
	f.out = append(f.out, Clause{Span: c.Span, Sep: c.Sep, Node: &Made{Stitch: made.Stitch, Body: f.justWorked()}})
	return true
}

// unplacedNode tells a single stitch of which no more than its name is said.
func unplacedNode(w *Work) bool {
	return len(w.Places) == 0 && !w.Times.Written() && w.Number.Or(0, 1) == 1
}

// drawn makes one stitch of the motions before a bracket that names it:
// `yo, insert hook in ring, draw up a loop, yo, draw through all (cluster)`.
func (f *folder) drawn(c Clause, ref StitchRef) bool {
	from := len(f.out)
	var places []Place
	for from > f.inside() && motions(f.out[from-1:from]) {
		from--
		Walk(f.out[from:from+1], func(c Clause) {
			if m, ok := c.Node.(*Motion); ok && m.Place != nil && len(places) == 0 {
				places = []Place{*m.Place}
			}
		})
	}
	if from == len(f.out) {
		return false
	}
	if from > 0 && f.out[from-1].Sep < SepStop {
		if w, ok := f.out[from-1].Node.(*Work); ok && (w.HeldBack || drawnStitch(w.Stitch)) {
			return false // they say how that one is made
		}
	}
	f.out = append(f.out[:from], Clause{Span: f.out[from].Span.Union(c.Span), Sep: c.Sep, Node: &Work{Stitch: ref, Places: places}})
	return true
}

// motions tells clauses that say only what hook and yarn do.
func motions(list []Clause) bool {
	for _, c := range list {
		switch n := c.Node.(type) {
		case *Motion:
		case *Bracket:
			if len(n.Body) == 0 || !motions(n.Body) {
				return false
			}
		case *Repeat:
			if len(n.Body) == 0 || !motions(n.Body) {
				return false
			}
		default:
			return false
		}
	}
	return true
}

// drawnStitch tells a stitch that is drawn up in several motions: a puff, a
// cluster.
func drawnStitch(ref StitchRef) bool {
	return ref.Meaning.Is(stitch.Texture, stitch.Together)
}

// justWorked is what the clause before works in one place, nil where it works
// in several. A beginning chain in the same place is the first stitch of it.
func (f *folder) justWorked() []Clause {
	k := len(f.out)
	if k == 0 {
		return nil
	}
	body, place := workedInOne(f.out[k-1])
	if body == nil || place.Pick != PickSame || k < 2 || slices.ContainsFunc(f.out[:k-1], func(c Clause) bool { return !begins(c.Node) }) {
		return body
	}
	first, ok := body[0].Node.(*Work)
	if _, chain := f.out[k-2].Node.(*Chain); !chain || !ok {
		return body
	}
	return append([]Clause{{Span: body[0].Span, Node: &Work{Stitch: first.Stitch}}}, body...)
}

// workedInOne gives the stitches that a clause works all in one place.
func workedInOne(c Clause) ([]Clause, Place) {
	switch n := c.Node.(type) {
	case *Group:
		if len(n.Places) == 1 && !n.Between.Written() {
			return n.Body, n.Places[0]
		}
	case *Work:
		if len(n.Places) == 1 && n.Number.Or(0, 1) > 1 && n.Places[0].Number.Or(0, 1) == 1 {
			return []Clause{{Span: c.Span, Node: &Work{Stitch: n.Stitch, Number: n.Number}}}, n.Places[0]
		}
	}
	return nil, Place{}
}

// defines takes a bracket that says what the stitch before it is, where it is
// worked: `shell (2 dc, ch 2, 2 dc) in next sp`.
func (l *lister) defines(open, end int) bool {
	last := l.flat[len(l.flat)-1]
	k := last.Stitch.In(stitch.Unsettled)
	if last.Kind != Stitch || k != nil && k.Class != stitch.Group || end+1 >= len(l.b.tokens) || l.b.tokens[end+1].Canon != "in" {
		return false
	}
	if first := l.b.tokens[open+1]; first.Kind != Number && first.Kind != Stitch && first.Canon != "ch" || l.depth >= maxDepth {
		return false
	}
	l.body = l.b.list(open+1, end, l.depth+1)
	return true
}

// explained takes a bracket that gives a stitch its meaning by name, `(shell: 5
// dc in one st)`. Where a place follows, it is also the stitch that is worked.
func (l *lister) explained(open, end int) bool {
	inside := l.b.tokens[open+1 : end]
	if len(inside) < 3 || inside[0].Kind != Stitch || inside[1].Kind != Colon && inside[1].Canon != "=" || l.depth >= maxDepth {
		return false
	}
	body := l.b.list(open+3, end, l.depth+1)
	if end+1 < len(l.b.tokens) && l.b.tokens[end+1].Canon == "in" {
		l.flush(SepNone)
		l.flat, l.body = append(l.flat, inside[0]), body
		return true
	}
	l.flush(SepNone)
	l.out = append(l.out, Clause{Span: spanOf(inside), Node: &Made{Stitch: StitchRef{Word: inside[0].Canon, Meaning: inside[0].Stitch}, Body: body, Defines: true}})
	return true
}

// drawnUp tells a bracket that says how the stitch before it is drawn: `d tr (3
// times over hook) in next st`.
func (l *lister) drawnUp(open, end int) bool {
	n := len(l.flat)
	if n == 0 || l.flat[n-1].Kind != Stitch {
		return false
	}
	start := open + 1
	for i := start; i <= end; i++ {
		t := l.b.tokens[i]
		if i < end && !separates(t) && !(t.Kind == Word && t.Canon == "and") {
			continue
		}
		if _, motion := clauses.read(l.b.tokens[start:i]).(*Motion); i > start && !motion {
			return false
		}
		start = i + 1
	}
	return end > open+1
}

// howOften passes over how often the motions in a bracket are made, which is not
// how often their stitch is: `cluster (yo, draw up a loop) twice`.
func (l *lister) howOften(end int) int {
	tokens := l.b.tokens
	if next := end + 1; next < len(tokens) {
		if tokens[next].Canon == "once" {
			return next
		}
		if tokens[next].Kind == Number && next+1 < len(tokens) && tokens[next+1].Canon == "times" {
			return next + 1
		}
	}
	return end
}

// worksOver tells a bracket that lists the stitches which the one before it takes
// together: `dc5tog over next 5 sts (2 dc, the sc and 2 dc)`.
func (f *folder) worksOver(c Clause, n *Bracket) bool {
	k := len(f.out)
	if k == 0 || len(n.Body) == 0 {
		return false
	}
	w, ok := f.out[k-1].Node.(*Work)
	if !ok || !drawnStitch(w.Stitch) || len(w.Places) != 1 || w.Places[0].Number.Or(0, 1) < 2 {
		return false
	}
	listed := 0
	for _, inner := range n.Body {
		part, ok := inner.Node.(*Work)
		if !ok || len(part.Places) > 0 {
			return false
		}
		listed += part.Number.Or(0, 1)
	}
	if listed != w.Places[0].Number.At(0) {
		return false
	}
	f.out[k-1].Span, f.out[k-1].Sep = f.out[k-1].Span.Union(c.Span), c.Sep
	return true
}

// sharesOut takes a bracket that says how many of the stitches before it go in each place: `2 dc (one in each of 2 ch)`,
// `2 dc in next 2 ch (one in each)`.
func (f *folder) sharesOut(c Clause, n *Bracket) bool {
	each, place, told := f.sharedOut(c, n)
	return told && f.shareOut(c, each, place)
}

// shares takes the same behind a comma: `6 dc, one in each of the last 6 ch`.
func (f *folder) shares(c Clause, w *Work) bool {
	k := len(f.out)
	return k > f.inside() && unplacedWork(f.out[k-1]) && !w.Stitch.Written() && w.Number.Written() && !w.Number.PerSize() && len(w.Places) == 1 &&
		w.Places[0].Number.Or(0, 1) > 1 && f.shareOut(c, w.Number.At(0), w.Places[0])
}

// shareOut gives the stitches before a clause the places that it shares them out over, where there are as many.
func (f *folder) shareOut(c Clause, each int, place Place) bool {
	k := len(f.out)
	if k == 0 {
		return false
	}
	w, ok := f.out[k-1].Node.(*Work)
	if !ok || !w.Number.Written() || w.Number.PerSize() || w.Times.Written() || len(w.Places) > 1 {
		return false
	}
	places, all := place.Number, w.Number.At(0)
	if len(w.Places) == 1 {
		if places.Written() {
			return false
		}
		place, places = w.Places[0], w.Places[0].Number
	} else if !places.Written() && each > 0 {
		places = One(all / each)
		place.Number, place.Each = places, false
	}
	if each*places.Or(0, 1) != all {
		return false
	}
	shared := *w
	shared.Number, shared.Places = One(each), []Place{place}
	f.out[k-1] = Clause{Span: f.out[k-1].Span.Union(c.Span), Sep: c.Sep, Node: &shared}
	return true
}

// sharedOut reads such a bracket: how many there are in each place, and which those are, as far as it says.
func (f *folder) sharedOut(c Clause, n *Bracket) (each int, place Place, ok bool) {
	if in := f.b.within(c.Span); len(in) == 5 && in[1].Kind == Number && in[2].Canon == "in" && in[3].Canon == "each" {
		return in[1].Values.At(0), Place{Each: true}, !in[1].Values.PerSize()
	}
	if len(n.Body) != 1 {
		return 0, Place{}, false
	}
	w, works := n.Body[0].Node.(*Work)
	if !works || w.Stitch.Written() || len(w.Places) != 1 || w.Number.PerSize() {
		return 0, Place{}, false
	}
	place = w.Places[0]
	return w.Number.Or(0, 1), place, (place.Pick == PickNext || place.Pick == PickLast) && place.To.Kind == ToNothing && (place.Each || place.Number.Written())
}
