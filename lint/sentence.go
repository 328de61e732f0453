package lint

import (
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
)

// sentencesOf are the sentences of a text in lower case, over lines that go on in the next.
func sentencesOf(text string) []source.Span {
	var out []source.Span
	start := 0
	for i := range len(text) + 1 {
		switch {
		case i < len(text) && !endsSentence(text, start, i):
			continue
		case strings.TrimSpace(text[start:i]) != "":
			out = append(out, source.Span{Start: start, End: i})
		}
		start = i + 1
	}
	return out
}

// endsSentence tells whether the ith character of a text ends a sentence that begins at
// start. A stop before a number does not: it is the point of one, or stands behind a word
// cut short, `rnds. 14 and 15`.
func endsSentence(text string, start, i int) bool {
	rest := text[i+1:]
	switch text[i] {
	case '\n':
		return !isWrapped(text[start:i], rest)
	case '.', '!':
		after := strings.TrimLeft(rest, " \t")
		return after == "" || !isDigit(after[0]) && (len(after) < len(rest) || after[0] < 'a' || after[0] > 'z')
	}
	return false
}

var (
	// openEnd is what a line ends in that goes on in the next one.
	openEnd = phrase.MustCompile(`(?:,|\b(?:the|an?|and|or|to|of|on|onto|in|into|with|between|over|at|for|from|by|each|both|all|your|their|its))\s*$`)
	// nextLine begins a line that goes on with the one before it.
	nextLine = phrase.MustCompile(`^[ \t]*(?:[a-z(]|\d+ [a-z])`)
	// ownLine begins one that does not: `ears: sew`, `- pin`, `## tail`.
	ownLine = phrase.MustCompile(`^[ \t]*(?:[^\n:.,;]{1,30}:|#|[-•*] )`)
)

// isWrapped tells whether a line goes on in the text below it.
func isWrapped(line, below string) bool {
	return strings.TrimSpace(line) != "" && !ownLine.MatchString(below) && (openEnd.MatchString(line) || nextLine.MatchString(below))
}
