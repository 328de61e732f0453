package fabric

import (
	"slices"
	"strings"
	"unicode"

	"stitchproof/lang/nearest"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// limbs is what a piece calls its branches and what they grow from. A writer may call them
// by any noun and a branch by the last words of its name; whatever is gone home to and is no
// branch is the chain that was laid first.
type limbs struct {
	names    []string        // of its branches
	returned map[string]bool // the nouns of those that the work is told to come home from
	homes    map[string]int  // how often the work is told to go home to each name
	worded   bool            // a branch is called one by the word
	lines    int             // how many lines begin with a branch
	turns    int             // the line that lays the chains beyond which the work turns back along the stem, -1 for none
}

// limbsOf finds what a piece calls its branches.
func limbsOf(tree *syntax.Piece) *limbs {
	l := &limbs{returned: map[string]bool{}, homes: map[string]int{}, turns: -1}
	var open []string
	grown := -1 // the last line that counts the chains of the stem
	for i, row := range tree.Rows {
		earlier := len(open)
		if name := row.Label.Limb; name != "" {
			l.names, open = append(l.names, name), append(open, name)
		}
		if _, branches := firstStep(row.Clauses).(*syntax.Branch); branches {
			l.lines++
		}
		if to := placesOf(firstStep(row.Clauses)); len(to) > 0 && to[0].From == syntax.FromHook {
			l.turns = grown
		}
		syntax.Walk(row.Clauses, func(c syntax.Clause) {
			switch n := c.Node.(type) {
			case *syntax.Branch:
				l.names, open = append(l.names, n.Name), append(open, n.Name)
				l.worded = l.worded || !n.Labelled
			case *syntax.Total:
				if n.OfChains() && n.Parts[0].On != "" {
					grown = i
				}
			case *syntax.Return:
				left := n.Leaves(open)
				to := n.To
				if to == "" && len(left) > earlier {
					to = left[len(left)-1] // from a branch on a branch of the same line
				}
				l.homes[to]++
				for _, name := range open[len(left):] {
					l.returned[noun(name)] = true
				}
				open = slices.Clip(left)
			}
		})
	}
	return l
}

// noun is what a branch of a name is.
func noun(name string) string {
	name = syntax.Unnumbered(name)
	return name[strings.LastIndexByte(name, ' ')+1:]
}

// isStem tells whether a name is that of what the branches grow from. Where they are called
// by the word, that is the stem, unless none is spoken of; a name that is nearly a
// branch's is a slip of the pen, said once.
func (l *limbs) isStem(name string) bool {
	switch {
	case name == "stem", strings.HasSuffix(name, " stem"), strings.HasPrefix(name, "main "):
		return true
	case l == nil || len(name) < 3 || strings.ContainsFunc(name, unicode.IsDigit) || l.worded && l.homes["stem"] > 0:
		return false
	case l.homes[name] > 1:
		return true
	case slices.ContainsFunc(l.names, func(other string) bool { return noun(other) == noun(name) }):
		return l.strangers() == 1
	}
	_, slip := nearest.To(name, l.names)
	return !slip
}

// strangers is how many names that are gone home to call no branch.
func (l *limbs) strangers() int {
	n := 0
	for home := range l.homes {
		if home != "" && !l.branch(home) {
			n++
		}
	}
	return n
}

// branch tells whether a name that is gone home to is that of a branch.
func (l *limbs) branch(home string) bool {
	return slices.ContainsFunc(l.names, func(name string) bool { return syntax.CalledBy(name, home) })
}

// owes tells whether a branch must be told to be come home from. Where several have a line each and
// none is, all come home without a word. One that a label names
// need not be where no other of its kind is, or nothing is told to come home to what it grows
// from: its chain is at an end, and the row goes on.
func (h *hand) owes(b *branch) bool {
	switch {
	case !b.marked || !b.labelled:
		return b.marked && !(len(h.limbs.homes) == 0 && h.limbs.lines > 1)
	case b.parent.growing:
		return false // the work stands at the foot of it, and the stem goes on from there
	case b.chains > maxSpike:
		return h.limbs.goHomeTo(h.grownFrom(b))
	}
	return h.limbs.returned[noun(b.name)]
}

// grownFrom is the name of the branch that an open one grows from, "" for the row.
func (h *hand) grownFrom(b *branch) string {
	at := slices.IndexFunc(h.branches, func(other branch) bool { return other.span == b.span && other.name == b.name })
	if at < 1 {
		return ""
	}
	return h.branches[at-1].name
}

// goHomeTo tells whether the work is told anywhere to come home to a branch or, where the name
// is "", to what is none.
func (l *limbs) goHomeTo(name string) bool {
	for home := range l.homes {
		if home == "" || name != "" && syntax.CalledBy(name, home) || name == "" && !l.branch(home) {
			return true
		}
	}
	return false
}

// grownAs lists the stitches of a branch that is done, by its name or the end of it.
func (h *hand) grownAs(name string) (own []int, done bool) {
	if own, done = h.grown.get(name); done {
		return own, true
	}
	for other, stitches := range h.grown.all() {
		if syntax.CalledBy(other, name) && (!done || latest(stitches) > latest(own)) {
			own, done = stitches, true
		}
	}
	return own, done
}

// latest is the stitch of some that was made last, -1 for none.
func latest(stitches []int) int {
	if len(stitches) == 0 {
		return -1
	}
	return stitches[len(stitches)-1]
}

// outAndBack works one of the pattern's own stitches that is a branch: out along a chain, and
// all the way back.
func (h *hand) outAndBack(own *ownStitch) {
	open, from := len(h.branches), h.made()
	h.openBranch(&syntax.Branch{Name: own.name, Labelled: true})
	h.list(own.body)
	for len(h.branches) > open {
		h.closeBranch()
	}
	h.calledSince(from, own.name)
}

// grownRow is a row that is done, of which a sentence after it may tell how many stitches
// stand on each of its branches.
type grownRow struct {
	row     []int
	made    int
	objects named[int]
	leaving *past[run]
}

// grew keeps what a row is made of, for what is told of it afterwards.
func (h *hand) grew(known bool) {
	h.lastRow = nil
	if known {
		h.lastRow = &grownRow{h.row, h.rowMade, h.objects, h.leaving}
	}
}

// speaksOf is the hand as it stood at the end of the row that a count speaks of: this one or, in a
// line that works nothing, the one before it.
func (h *hand) speaksOf(stated *syntax.Total) *hand {
	if h.works || h.lastRow == nil || !h.tells && !slices.ContainsFunc(stated.Parts, func(p syntax.Part) bool { return p.On != "" }) {
		return h
	}
	then := *h
	r := h.lastRow
	then.row, then.rowMade, then.objects, then.leaving, then.works = r.row, r.made, r.objects, r.leaving, true
	return &then
}

// on lists the stitches of the row that stand on what a count names: one list for each
// branch that is meant. It gives false where nothing is called so.
func (h *hand) on(name string) (own [][]int, ok bool) {
	if open := h.openAs(name); open != nil {
		return [][]int{h.ownOf(open)}, true
	}
	_, home := h.limbs.homes[name]
	main := name == "stem" || strings.HasPrefix(name, "main ")
	stitches, done := h.grownAs(name)
	switch {
	case h.leaving != nil && (main || home && !done) && h.limbs.isStem(name):
		return [][]int{h.offBranches()}, true
	case done && !main:
		return [][]int{stitches}, true
	}
	for other, stitches := range h.grown.all() {
		if strings.HasPrefix(other, name+" ") || noun(other) == strings.TrimSuffix(name, "s") {
			own = append(own, stitches)
		}
	}
	return own, len(own) > 0
}

// openAs is the innermost branch of a name that is still worked on, nil for none.
func (h *hand) openAs(name string) *branch {
	for i := len(h.branches) - 1; i >= 0; i-- {
		if b := &h.branches[i]; b.marked && syntax.CalledBy(b.name, name) {
			return b
		}
	}
	return nil
}

// onChain lists the row's stitches that stand in chains, which are not those with which it is
// then joined to other work.
func (h *hand) onChain() []int {
	var out []int
	for _, i := range h.row {
		if s := h.stitch(i); !s.IsSpace() && s.Into >= 0 && !h.stitch(s.Into).IsSpace() && h.stitch(s.Into).Kind == chainStitch() {
			out = append(out, i)
		}
	}
	if n := len(out); n > 1 {
		last, before := h.stitch(out[n-1]), h.stitch(out[n-2])
		if last.Kind.Class == stitch.Slip && last.Into == before.Into {
			out = out[:n-1] // it fastens the work where that was joined, wherever that is
		}
	}
	return out
}

// compareOn compares a part of a stated count that names what its stitches stand on.
func (h *hand) compareOn(p syntax.Part, t *Tally, stated *syntax.Total) Compared {
	if p.On == "" {
		return h.compareEither(p, t, stated)
	}
	if p.Noun.Kind == syntax.NounStitch && h.words.own[p.Noun.Stitch.Word] != nil {
		return Compared{Name: p.Noun.Stitch.Word, Stated: p.Number.At(h.size), Result: Uncheckable, On: p.On} // how many of them stand there is not kept
	}
	lists, ok := h.on(p.On)
	if along := h.onChain(); !ok && len(along) > 0 && len(along) < len(h.row) {
		c := likely(h.compareAlong(along, p, t, stated))
		c.On = p.On
		return c
	}
	if !ok {
		c := h.compareEither(p, t, stated)
		if c.Result == Disagrees && slices.ContainsFunc(stated.Parts, func(other syntax.Part) bool { return other.On == "" }) {
			c.Result = Uncheckable // `20 sc, 10 on each half`: nobody knows what a half is
		}
		return c
	}
	c := Compared{Stated: p.Number.At(h.size), Result: Uncheckable}
	if !slices.ContainsFunc(lists, func(own []int) bool { return len(own) > 0 }) {
		return c // its stitches were told in words that are not read
	}
	for _, own := range lists {
		if c = h.compareAlong(own, p, t, stated); c.Result != Agrees {
			break
		}
	}
	c.On = p.On
	return c
}

// likely takes a comparison with what is only likely to be meant: that there is none of the
// stitches says no more than that others are.
func likely(c Compared) Compared {
	if c.Result == Disagrees && c.Made == 0 {
		c.Result = Uncheckable
	}
	return c
}
