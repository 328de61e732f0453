package fabric

import (
	"slices"
	"strings"
	"unicode"

	"stitchproof/lang/nearest"
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
}

// limbsOf finds what a piece calls its branches.
func limbsOf(tree *syntax.Piece) *limbs {
	l := &limbs{returned: map[string]bool{}, homes: map[string]int{}}
	var open []string
	for _, row := range tree.Rows {
		if name := row.Label.Limb; name != "" {
			l.names, open = append(l.names, name), append(open, name)
		}
		syntax.Walk(row.Clauses, func(c syntax.Clause) {
			switch n := c.Node.(type) {
			case *syntax.Branch:
				l.names, open = append(l.names, n.Name), append(open, n.Name)
				l.worded = l.worded || !n.Labelled
			case *syntax.Return:
				l.homes[n.To]++
				left := n.Leaves(open)
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
func noun(name string) string { return name[strings.LastIndexByte(name, ' ')+1:] }

// isStem tells whether a name is that of what the branches grow from. Where they are called
// by the word, that is the stem, unless none is spoken of; a name that is nearly a
// branch's is a slip of the pen, said once.
func (l *limbs) isStem(name string) bool {
	switch {
	case name == "stem", strings.HasPrefix(name, "main "):
		return true
	case l == nil || len(name) < 3 || strings.ContainsFunc(name, unicode.IsDigit) || l.worded && l.homes["stem"] > 0:
		return false
	case slices.ContainsFunc(l.names, func(other string) bool { return noun(other) == noun(name) }):
		return false
	}
	_, slip := nearest.To(name, l.names)
	return !slip || l.homes[name] > 1
}

// owes tells whether a branch must be told to be come home from. One that a label names
// need not be where no other of its kind is: its chain is at an end, and the row goes on.
func (h *hand) owes(b *branch) bool {
	switch {
	case !b.marked || !b.labelled:
		return b.marked
	case b.chains > maxSpike:
		return len(h.limbs.homes) > 0
	}
	return h.limbs.returned[noun(b.name)]
}

// grownAs lists the stitches of a branch that is done, by its name or the end of it.
func (h *hand) grownAs(name string) (own []int, done bool) {
	if own, done = h.grown.get(name); done {
		return own, true
	}
	for other, stitches := range h.grown.all() {
		if syntax.CalledBy(other, name) {
			return stitches, true
		}
	}
	return nil, false
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
