package lint

import (
	"strconv"
	"strings"

	"stitchproof/lang/inflect"
	"stitchproof/lang/source"
)

// counted is a number with its noun: "1 st", "4 sts", "2 ch-2 sps".
func counted(n, noun string) string {
	if n != "1" {
		noun = inflect.Plural(noun)
	}
	return n + " " + noun
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

// quoted puts words of the pattern in quotation marks, on one line and not
// too many of them.
func quoted(s string) string { return "`" + source.Excerpt(s) + "`" }
