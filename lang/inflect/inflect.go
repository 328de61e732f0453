// Package inflect writes words as others are written: with their capitals, and in
// the plural.
package inflect

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Capital writes a word with a capital.
func Capital(word string) string {
	first, size := utf8.DecodeRuneInString(word)
	if size == 0 {
		return word
	}
	return string(unicode.ToUpper(first)) + word[size:]
}

// Like writes a word with a capital, or all in capitals, where another has them.
func Like(word, other string) string {
	first, _ := utf8.DecodeRuneInString(other)
	switch {
	case !unicode.IsUpper(first):
		return word
	case utf8.RuneCountInString(other) > 2 && other == strings.ToUpper(other):
		return strings.ToUpper(word)
	}
	return Capital(word)
}

// Plural is a noun for other numbers than one. Abbreviations of stitches stay as
// they are: a maker reads 12 dc and 4 sc2tog, but 3 sts and 5 bobbles; so does ch,
// which has none in the trade.
func Plural(noun string) string {
	last := noun[strings.LastIndexAny(noun, " -")+1:]
	switch {
	case !short[last] && (len(last) < 4 || !strings.ContainsAny(last, "aeiou") || strings.ContainsAny(last, "0123456789") || strings.HasSuffix(last, "s")):
		return noun
	case strings.HasSuffix(last, "ch"), strings.HasSuffix(last, "sh"):
		return noun + "es"
	case strings.HasSuffix(last, "y") && !strings.ContainsAny(last[len(last)-2:len(last)-1], "aeiou"):
		return strings.TrimSuffix(noun, "y") + "ies"
	}
	return noun + "s"
}

// short are the short nouns and abbreviations that have a plural.
var short = map[string]bool{"st": true, "sp": true, "rnd": true, "lp": true, "row": true, "end": true, "top": true, "eye": true}
