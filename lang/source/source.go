// Package source holds the text of a file: its bytes, its lines, and the
// conversion between byte offsets and the positions that editors and terminals
// speak of.
//
// Invariants:
//
//   - Inside the program a place in a text is a byte offset and a stretch of it
//     is a [Span]. No other package converts to lines, columns, UTF-16 or UTF-32.
//   - Nothing is lost: [Text.String] gives back the bytes that went into [New],
//     byte-order mark, line ends and invalid bytes included.
//   - A [Text] never changes, so it may be read from many goroutines at once.
//   - Asking for a place outside the text never panics; the place is clamped to
//     the text. Only [Text.Apply] refuses, because a clamped edit would harm.
//
// A line ends with LF, CRLF or CR. A byte that is not part of valid UTF-8 counts
// as a code point of its own.
package source

import (
	"sort"
	"strings"
)

// byteOrderMark is U+FEFF, which some editors write at the head of a file.
const byteOrderMark = "\ufeff"

// Span is a half-open range of byte offsets: Start belongs to it, End does not.
type Span struct{ Start, End int }

// At is the empty span at an offset: where something can be put in.
func At(offset int) Span { return Span{offset, offset} }

// Len is the number of bytes in s.
func (s Span) Len() int { return s.End - s.Start }

// Empty reports whether s holds no byte. An empty span still has a place.
func (s Span) Empty() bool { return s.Start == s.End }

// Contains reports whether the byte at offset belongs to s.
func (s Span) Contains(offset int) bool { return s.Start <= offset && offset < s.End }

// Covers reports whether the whole of other lies within s. An empty span at
// either edge of s is covered.
func (s Span) Covers(other Span) bool { return s.Start <= other.Start && other.End <= s.End }

// Overlaps reports whether s and other have a byte in common.
func (s Span) Overlaps(other Span) bool { return s.Start < other.End && other.Start < s.End }

// Touches reports whether s and other overlap or meet, so that no byte lies between them: a
// cursor at either edge of a word touches it.
func (s Span) Touches(other Span) bool { return s.Start <= other.End && other.Start <= s.End }

// Union is the smallest span that covers both s and other.
func (s Span) Union(other Span) Span {
	return Span{min(s.Start, other.Start), max(s.End, other.End)}
}

// Shift is s moved n bytes towards the end of the text, or back if n is negative.
func (s Span) Shift(n int) Span { return Span{s.Start + n, s.End + n} }

// Text is the unchanging text of a file with an index of its lines. Make one
// with [New].
type Text struct {
	content     string
	starts      []int             // offset of each line's first byte; never empty
	checkpoints map[int][]columns // by line number, for lines longer than stride
}

// New indexes the lines of s.
func New(s string) *Text {
	t := &Text{content: s, starts: lineStarts(s), checkpoints: map[int][]columns{}}
	for i := range t.starts {
		if line := t.LineWithEnd(i); line.Len() > stride {
			t.checkpoints[i] = checkpointsOf(t.Slice(t.body(i)))
		}
	}
	return t
}

// lineStarts finds the lines of s: those that end with LF first, as most do, and in each
// of them those that a CR ends.
func lineStarts(s string) []int {
	starts := append(make([]int, 0, strings.Count(s, "\n")+1), 0)
	carriage := strings.Contains(s, "\r")
	for at := 0; ; {
		end := strings.IndexByte(s[at:], '\n')
		line := s[at:]
		if end >= 0 {
			line = s[at : at+end]
		}
		if carriage {
			for i := range len(line) {
				if line[i] == '\r' && (i+1 < len(line) || end < 0) {
					starts = append(starts, at+i+1)
				}
			}
		}
		if end < 0 {
			return starts
		}
		at += end + 1
		starts = append(starts, at)
	}
}

// String is the text exactly as it was given to [New].
func (t *Text) String() string { return t.content }

// Len is the length of the text in bytes.
func (t *Text) Len() int { return len(t.content) }

// Slice is the part of the text that s covers.
func (t *Text) Slice(s Span) string {
	start := t.clamp(s.Start)
	return t.content[start:max(start, t.clamp(s.End))]
}

// Lines is the number of lines, at least 1. A text that ends with a line end has
// one more line, an empty one, after it.
func (t *Text) Lines() int { return len(t.starts) }

// Line is line i, counted from 0, without its line end and, for line 0, without
// the byte-order mark.
func (t *Text) Line(i int) Span {
	line := t.body(i)
	line.Start = max(line.Start, t.head())
	return line
}

// LineWithEnd is line i, counted from 0, with its line end and, for line 0, with
// the byte-order mark. These spans, put end to end, are the whole text.
func (t *Text) LineWithEnd(i int) Span {
	i = min(max(i, 0), len(t.starts)-1)
	if i == len(t.starts)-1 {
		return Span{t.starts[i], len(t.content)}
	}
	return Span{t.starts[i], t.starts[i+1]}
}

// LineOf is the number, from 0, of the line that holds offset. A line end belongs
// to the line it ends.
func (t *Text) LineOf(offset int) int {
	after := sort.Search(len(t.starts), func(i int) bool { return t.starts[i] > offset })
	return max(after-1, 0)
}

// body is line i without its line end but with the byte-order mark, which is how
// an editor counts it.
func (t *Text) body(i int) Span {
	line := t.LineWithEnd(i)
	line.End -= len(t.endOf(line))
	return line
}

// endOf is the line end that closes line, empty for the last line.
func (t *Text) endOf(line Span) string {
	s := t.Slice(line)
	for _, end := range lineEnds {
		if strings.HasSuffix(s, end) {
			return end
		}
	}
	return ""
}

// head is the offset of the first byte after the byte-order mark, 0 without one.
func (t *Text) head() int {
	if strings.HasPrefix(t.content, byteOrderMark) {
		return len(byteOrderMark)
	}
	return 0
}

func (t *Text) clamp(offset int) int { return min(max(offset, 0), len(t.content)) }
