package stitch

import (
	_ "embed"
	"strings"
	"unicode"
	"unicode/utf8"
)

var (
	//go:embed data/abbreviations.tsv
	abbreviationTable string
	//go:embed data/dialects.tsv
	dialectTable string
	//go:embed data/sources.tsv
	sourceTable string
)

// fold writes a spelling as the tables are searched: lower case, straight
// apostrophes, words joined by single spaces, hyphens and stops as spaces.
func fold(s string) string {
	plain := true
	for i := 0; i < len(s) && plain; i++ {
		c := s[i]
		plain = c >= 'a' && c <= 'z' || c >= '0' && c <= '9' ||
			c == ' ' && i > 0 && i < len(s)-1 && s[i-1] != ' '
	}
	if plain {
		return s
	}
	b := make([]byte, 0, len(s))
	gap := false
	for _, r := range s {
		switch {
		case r == '-' || r == '.' || unicode.IsSpace(r) || r >= utf8.RuneSelf && unicode.Is(unicode.Pd, r):
			gap = len(b) > 0
			continue
		case gap:
			b = append(b, ' ')
			gap = false
		}
		if r == '’' {
			r = '\''
		}
		b = utf8.AppendRune(b, unicode.ToLower(r))
	}
	return string(b)
}

// spread parts digits from letters, as a reader does that does not know the
// word they make.
func spread(s string) string {
	var b strings.Builder
	var last rune
	for _, r := range s {
		if unicode.IsDigit(r) && unicode.IsLetter(last) || unicode.IsLetter(r) && unicode.IsDigit(last) {
			b.WriteByte(' ')
		}
		b.WriteRune(r)
		last = r
	}
	return b.String()
}
