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

// needles are words of which a text must hold one, looked for all at once where any of
// them may be written in any case; none where nothing is known.
type needles struct {
	words   []string // in lower case where they are looked for in any
	anyCase bool
	first   [256]bool // the bytes that they begin with
}

func needlesOf(words []word) needles {
	n := needles{anyCase: slices.ContainsFunc(words, func(w word) bool { return w.anyCase })}
	for _, w := range words {
		text := w.text
		if n.anyCase {
			text = strings.Map(lower, text)
			n.first[text[0]] = true
			n.first[upper(text[0])] = true
		}
		n.words = append(n.words, text)
	}
	return n
}

// in tells whether a text holds one of the words, or where none is known.
func (n *needles) in(text string) bool {
	if n.anyCase {
		return n.inAnyCase(text)
	}
	for _, w := range n.words {
		if strings.Contains(text, w) {
			return true
		}
	}
	return len(n.words) == 0
}

func (n *needles) inAnyCase(text string) bool {
	for i := range len(text) {
		if !n.first[text[i]] {
			continue
		}
		for _, w := range n.words {
			if begins(text[i:], w) {
				return true
			}
		}
	}
	// these two are an s and a k in another case
	return strings.Contains(text, "\u017f") || strings.Contains(text, "\u212a")
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
