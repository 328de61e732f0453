package source

import "strings"

// excerptLength is how many characters of a long text stand for the whole of it.
const excerptLength = 60

// Excerpt is the beginning of a text, on one line, cut after a word where the
// whole would be too long to show.
func Excerpt(s string) string {
	s = strings.Join(strings.Fields(s), " ")
	letters := []rune(s)
	if len(letters) <= excerptLength {
		return s
	}
	cut := string(letters[:excerptLength])
	if space := strings.LastIndexByte(cut, ' '); space > 0 {
		cut = cut[:space]
	}
	return strings.TrimRight(cut, " ,;") + " …"
}
