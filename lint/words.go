package lint

import (
	"strconv"
	"strings"
)

// counted is a number with its noun: "1 st", "4 sts", "2 ch-2 sps".
func counted(n, noun string) string {
	if n != "1" {
		noun = plural(noun)
	}
	return n + " " + noun
}

// plural is a noun for other numbers than one. Abbreviations of stitches stay
// as they are: a maker reads 12 dc.
func plural(noun string) string {
	for _, word := range [...]string{"st", "sp", "place", "row", "rnd", "round", "time", "shell", "loop", "corner", "chain"} {
		if noun == word || strings.HasSuffix(noun, " "+word) {
			return noun + "s"
		}
	}
	return noun
}

// either lists alternatives: "24 or 30", "A, B or the stem".
func either(words []string) string { return list(words, " or ") }

// both lists things that hold together: "S and L".
func both(words []string) string { return list(words, " and ") }

func list(words []string, last string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	n := len(words) - 1
	return strings.Join(words[:n], ", ") + last + words[n]
}

func itoas(numbers []int) []string {
	out := make([]string, len(numbers))
	for i, n := range numbers {
		out[i] = strconv.Itoa(n)
	}
	return out
}

// quoteWidth is how many characters of the pattern a message quotes; the place
// itself is always shown beside it.
const quoteWidth = 40

// quoted puts words of the pattern in quotation marks, on one line and not
// too many of them.
func quoted(s string) string {
	s = strings.Join(strings.Fields(s), " ")
	if r := []rune(s); len(r) > quoteWidth {
		s = strings.TrimRight(string(r[:quoteWidth]), " ,;") + " …"
	}
	return "`" + s + "`"
}
