package phrase

import (
	"regexp/syntax"
	"slices"
	"strings"
)

// heads are words of which each match of an expression begins with one, so that it need
// be tried only where one of them stands; none where that is not known.
type heads struct {
	needles
	bound bool // set where a word begins or ends right before them
}

func headsOf(re *syntax.Regexp) heads {
	words, bound := beginning(re)
	if bound && slices.ContainsFunc(words, func(w word) bool { return !inWord(w.text[0]) }) {
		return heads{} // whether a boundary is there depends on what stands before it
	}
	return heads{needlesOf(words), bound}
}

// beginning are words of which each match begins with one, and whether each of them
// begins at a boundary of words.
func beginning(re *syntax.Regexp) (words []word, bound bool) {
	switch {
	case re.Op == syntax.OpCapture:
		return beginning(re.Sub[0])
	case re.Op == syntax.OpConcat && re.Sub[0].Op == syntax.OpWordBoundary:
		return leadingAll(re.Sub[1:]), true
	case re.Op == syntax.OpAlternate:
		for i, sub := range re.Sub {
			own, here := beginning(sub)
			if len(own) == 0 || i > 0 && here != bound {
				return nil, false
			}
			words, bound = append(words, own...), here
		}
		return words, bound
	}
	return leading(re), false
}

// tell tells whether the heads are known and stand in a text wherever a match begins.
func (h *heads) tell(text string) bool {
	return len(h.words) > 0 && !(h.anyCase && oddCase(text))
}

// next is the first place from one on where a match may begin, -1 for none.
func (h *heads) next(text string, from int) int {
	for i := from; i < len(text); i++ {
		if h.at(text, i) && !(h.bound && i > 0 && inWord(text[i-1]) == inWord(text[i])) {
			return i
		}
	}
	return -1
}

// inWord tells whether a byte belongs to a word, as expressions see it.
func inWord(b byte) bool {
	return b == '_' || b >= '0' && b <= '9' || b|0x20 >= 'a' && b|0x20 <= 'z'
}

// oddCase tells whether a text has one of the two letters beyond ASCII that are an s and
// a k in another case.
func oddCase(text string) bool {
	return strings.Contains(text, "\u017f") || strings.Contains(text, "\u212a")
}
