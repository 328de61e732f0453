package plain

import (
	"stitchproof/lang/inflect"
	"stitchproof/lang/syntax"
)

// amount counts things: 1 chain, 5 chains, 81 (91, 101) chains. A number that is
// not written is one.
func amount(n syntax.Num, noun string) string {
	if !n.Written() {
		n = syntax.One(1)
	}
	if plural(n) {
		noun = inflect.Plural(noun)
	}
	return n.String() + " " + noun
}

// plural tells whether a number is of several things.
func plural(n syntax.Num) bool { return n.Written() && !n.Equal(syntax.One(1)) }

func when(b bool, s string) string {
	if b {
		return s
	}
	return ""
}

// after is a word behind its lead, "" where there is no word.
func after(lead, word string) string { return when(word != "", lead+word) }

// numbered is a number behind its lead, "" where none is written.
func numbered(lead string, n syntax.Num) string { return when(n.Written(), lead+n.String()) }
