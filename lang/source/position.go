package source

import (
	"slices"
	"sort"
	"unicode/utf16"
	"unicode/utf8"
)

// Encoding is the unit in which an editor counts along a line; the Language
// Server Protocol 3.17 calls it PositionEncodingKind. Only the constants below
// are encodings.
//
// An invalid byte is one unit in each: itself in UTF-8, and in the others the one
// unit of the U+FFFD that an editor shows for it. A byte-order mark is an ordinary
// code point of line 0: three units of UTF-8, one of UTF-16, one of UTF-32.
type Encoding uint8

// The encodings that the protocol knows.
const (
	UTF8  Encoding = iota // bytes
	UTF16                 // UTF-16 code units, the protocol's default
	UTF32                 // code points
)

var encodingNames = [...]string{UTF8: "utf-8", UTF16: "utf-16", UTF32: "utf-32"}

// String is the protocol's name for e.
func (e Encoding) String() string { return encodingNames[e] }

// ParseEncoding finds the encoding with the protocol's name for it.
func ParseEncoding(name string) (Encoding, bool) {
	i := slices.Index(encodingNames[:], name)
	if i < 0 {
		return 0, false
	}
	return Encoding(i), true
}

// Position is a place as an editor names it. Line and Character count from 0;
// Character is in the units of an [Encoding] that goes with it.
type Position struct{ Line, Character int }

// Range is a half-open stretch between two positions of one encoding.
type Range struct{ Start, End Position }

// Position is where offset lies. An offset inside a code point means the start of
// that code point; one inside a CRLF means the end of the line's text, since no
// position lies between the two bytes.
func (t *Text) Position(offset int, e Encoding) Position {
	line := t.LineOf(offset)
	return Position{line, t.seek(line, UTF8, offset-t.starts[line])[e]}
}

// Offset is the byte offset of p. As the protocol asks, a character beyond the
// line means the end of the line's text; one inside a code point means its start.
// A line beyond the last means the end of the text; a line before the first, its
// start.
func (t *Text) Offset(p Position, e Encoding) int {
	switch {
	case p.Line < 0:
		return 0
	case p.Line >= t.Lines():
		return t.Len()
	}
	return t.starts[p.Line] + t.seek(p.Line, e, p.Character)[UTF8]
}

// Range is s in the units of e.
func (t *Text) Range(s Span, e Encoding) Range {
	return Range{t.Position(s.Start, e), t.Position(s.End, e)}
}

// Span is the stretch of bytes between the ends of r, whichever comes first.
func (t *Text) Span(r Range, e Encoding) Span {
	a, b := t.Offset(r.Start, e), t.Offset(r.End, e)
	return Span{min(a, b), max(a, b)}
}

// LineColumn is where offset lies for a reader of a terminal or a report: line and
// column count from 1, columns in code points, the byte-order mark not counted.
func (t *Text) LineColumn(offset int) (line, column int) { return t.LineColumnIn(offset, UTF32) }

// LineColumnIn is LineColumn with columns in the units of e.
func (t *Text) LineColumnIn(offset int, e Encoding) (line, column int) {
	p := t.Position(max(offset, t.head()), e)
	if p.Line == 0 {
		p.Character -= t.Position(t.head(), e).Character
	}
	return p.Line + 1, p.Character + 1
}

// stride is how many bytes of a long line lie between two of its checkpoints. It
// bounds the work of one conversion, so that a file in one enormous line does not
// cost the square of its length. Ordinary lines are shorter and need none. It is a
// matter of speed only: every value gives the same positions.
const stride = 512

// columns is the distance of one code point boundary from the start of its line,
// in the units of each encoding.
type columns [len(encodingNames)]int

// seek finds the last code point boundary that is at most n units of e into the
// text of line i.
func (t *Text) seek(i int, e Encoding, n int) columns {
	n = max(n, 0)
	var at columns
	known := t.checkpoints[i]
	if after := sort.Search(len(known), func(k int) bool { return known[k][e] > n }); after > 0 {
		at = known[after-1]
	}
	line := t.Slice(t.body(i))
	for {
		at = at.plus(asciiPrefix(line[at[UTF8]:], n-at[e]))
		if at[UTF8] == len(line) {
			return at
		}
		next := at.next(line)
		if next[e] > n {
			return at
		}
		at = next
	}
}

// checkpointsOf gives the first boundary after each full stride of line.
func checkpointsOf(line string) []columns {
	var known []columns
	for at := (columns{}); at[UTF8] < len(line); at = at.next(line) {
		if at[UTF8] >= (len(known)+1)*stride {
			known = append(known, at)
		}
	}
	return known
}

// next is the boundary after the code point of line that begins at c.
func (c columns) next(line string) columns {
	r, size := utf8.DecodeRuneInString(line[c[UTF8]:])
	c[UTF8] += size
	c[UTF16] += utf16.RuneLen(r)
	c[UTF32]++
	return c
}

// plus is the boundary n ASCII characters after c: they are one unit each in
// every encoding.
func (c columns) plus(n int) columns {
	for e := range c {
		c[e] += n
	}
	return c
}

// asciiPrefix is the number of ASCII characters at the head of s, at most limit.
func asciiPrefix(s string, limit int) int {
	s = s[:min(limit, len(s))]
	for i := range len(s) {
		if s[i] >= utf8.RuneSelf {
			return i
		}
	}
	return len(s)
}
