package phrase

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// word is one that a text must hold, in any case where that does not matter.
type word struct {
	text    string
	anyCase bool
}

// literal is the word that some characters of an expression are, none where they are
// beyond ASCII and may be written in any case.
func literal(text string, anyCase bool) []word {
	if anyCase && strings.ContainsFunc(text, func(r rune) bool { return r >= utf8.RuneSelf }) {
		return nil
	}
	return []word{{text, anyCase}}
}

// byteSet is some of the bytes that there are, one bit for each.
type byteSet [4]uint64

func (b *byteSet) has(c byte) bool { return b[c/64]&(1<<(c%64)) != 0 }

func (b *byteSet) add(c byte) { b[c/64] |= 1 << (c % 64) }

// needles are words of which a text must hold one, looked for all at once where they are
// many or may be written in any case; none where nothing is known.
type needles struct {
	words   []string // in lower case where they are looked for in any
	anyCase bool     // set where any of them may be written in any case
	firsts  byteSet  // those that they begin with
}

func needlesOf(words []word) needles {
	n := needles{anyCase: slices.ContainsFunc(words, func(w word) bool { return w.anyCase })}
	for _, w := range words {
		text := w.text
		if n.anyCase {
			text = strings.Map(lower, text)
			n.firsts.add(upper(text[0]))
		}
		n.firsts.add(text[0])
		n.words = append(n.words, text)
	}
	return n
}

// few is how many words are sooner looked for one after the other.
const few = 3

// in tells whether a text holds one of the words, or where none is known.
func (n *needles) in(text string) bool {
	switch {
	case len(n.words) == 0:
		return true
	case !n.anyCase && len(n.words) <= few:
		return slices.ContainsFunc(n.words, func(w string) bool { return strings.Contains(text, w) })
	}
	for i := range len(text) {
		if n.at(text, i) {
			return true
		}
	}
	return n.anyCase && oddCase(text)
}

// at tells whether one of the words stands at a place of a text.
func (n *needles) at(text string, i int) bool {
	if !n.firsts.has(text[i]) {
		return false
	}
	for _, w := range n.words {
		if n.anyCase && begins(text[i:], w) || !n.anyCase && strings.HasPrefix(text[i:], w) {
			return true
		}
	}
	return false
}

// begins tells whether a text begins with a word in lower case, in whatever case.
func begins(text, word string) bool {
	if len(text) < len(word) {
		return false
	}
	for i := range len(word) {
		if c := text[i]; c != word[i] && (c < 'A' || c > 'Z' || c|0x20 != word[i]) {
			return false
		}
	}
	return true
}

// lower and upper are a letter of ASCII in the other case; other characters stay.
func lower(r rune) rune {
	if r >= 'A' && r <= 'Z' {
		return r | 0x20
	}
	return r
}

func upper(b byte) byte {
	if b >= 'a' && b <= 'z' {
		return b &^ 0x20
	}
	return b
}
