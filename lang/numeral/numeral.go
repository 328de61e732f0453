// Package numeral has the words for numbers, from which they are written, read and
// looked for in a text.
package numeral

import (
	"slices"
	"strconv"
	"strings"
)

// Most is the largest number that there are words for.
const Most = 99

var (
	small = [20]string{
		"zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine",
		"ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
	}
	tens = [10]string{2: "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"}
)

// Words writes a number in words: thirty-three; "" where there are none for it.
func Words(n int) string {
	switch {
	case n < 0 || n > Most:
		return ""
	case n < len(small):
		return small[n]
	case n%10 == 0:
		return tens[n/10]
	}
	return tens[n/10] + "-" + small[n%10]
}

// Read reads a number in figures or in words, of which the two parts of one may
// stand apart: 33, thirty-three, thirty three.
func Read(text string) (n int, ok bool) {
	if n, err := strconv.Atoi(text); err == nil {
		return n, true
	}
	text = strings.ReplaceAll(text, " ", "-")
	for n := range Most + 1 {
		if Words(n) == text {
			return n, true
		}
	}
	return 0, false
}

// Expression is a regular expression, in one group, of the words for the numbers from one
// to another, both below twenty, or from one below twenty to Most. Of what there are only
// ever a few a short one is faster.
func Expression(from, to int) string {
	if to < len(small) {
		return oneOf(small[from : to+1])
	}
	return "(?:" + oneOf(tens[2:]) + "(?:[ -]" + oneOf(small[1:10]) + ")?|" + oneOf(small[from:]) + ")"
}

// oneOf is the expression of any of some words. Those that begin alike stand together, so
// that a letter in a text tells at once which it may be, and a longer one before its own
// beginning, so that it is taken whole.
func oneOf(words []string) string {
	words = slices.Sorted(slices.Values(words))
	slices.Reverse(words)
	return "(?:" + strings.Join(words, "|") + ")"
}
