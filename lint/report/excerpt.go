package report

import (
	"strings"
	"unicode"

	"golang.org/x/text/width"

	"stitchproof/lang/source"
)

const (
	tabStop      = 4   // cells; a terminal's own stops would not agree with the underline
	excerptWidth = 108 // cells shown of a line at most, so that a row in one long line stays readable
	leadIn       = 30  // cells shown before the place where a line is cut
	cuts         = 8   // cells that the margin and the signs of a cut take
)

// cell is one character as a terminal shows it.
type cell struct {
	text  string
	width int // in cells: 0 for what combines with the character before it, 2 for wide ones
	at    int // offset in the file
}

// excerpt is the line that a place begins on, and a line that underlines the
// place, as far as it lies on that line. A terminal of some width, if that is
// given, must show them in one line each.
func excerpt(t *source.Text, s source.Span, terminal int) (line, under string) {
	room := excerptWidth
	if terminal > 0 {
		room = min(room, max(leadIn, terminal-cuts))
	}
	number, _ := t.LineColumn(s.Start)
	span := t.Line(number - 1)
	cells := cellsOf(t.Slice(span), span.Start)
	from, to := cut(cells, s.Start, room)
	var words, marks strings.Builder
	if from > 0 {
		words.WriteString("… ")
		marks.WriteString("  ")
	}
	marked := false
	for _, c := range cells[from:to] {
		words.WriteString(c.text)
		mark := " "
		if c.at >= s.Start && (c.at < s.End || c.at == s.Start) {
			mark, marked = "^", true
		}
		marks.WriteString(strings.Repeat(mark, c.width))
	}
	if !marked {
		marks.WriteByte('^') // the place is the end of the line
	}
	if to < len(cells) {
		words.WriteString(" …")
	}
	return strings.TrimRight(words.String(), " "), strings.TrimRight(marks.String(), " ")
}

// cut chooses which cells of a line to show in the room there is, so that the
// one at offset is among them.
func cut(cells []cell, offset, room int) (from, to int) {
	total, before := 0, 0
	for _, c := range cells {
		if c.at < offset {
			before += c.width
		}
		total += c.width
	}
	if total <= room {
		return 0, len(cells)
	}
	first := min(max(0, before-min(leadIn, room/3)), total-room)
	seen := 0
	for i, c := range cells {
		if seen < first {
			from = i + 1
		}
		if seen < first+room {
			to = i + 1
		}
		seen += c.width
	}
	return from, to
}

// cellsOf spells a line out. Tabs become spaces, and control characters, which
// could do anything to a terminal, a sign that stands for them.
func cellsOf(line string, at int) []cell {
	var out []cell
	column := 0
	for i, r := range line {
		c := cell{text: string(r), width: runeWidth(r), at: at + i}
		switch {
		case r == '\t':
			c.width = tabStop - column%tabStop
			c.text = strings.Repeat(" ", c.width)
		case unicode.IsControl(r):
			c.text = "\uFFFD"
		}
		column += c.width
		out = append(out, c)
	}
	return out
}

// runeWidth is how many cells a character takes: Unicode Standard Annex 11,
// with what combines taking none.
func runeWidth(r rune) int {
	if unicode.In(r, unicode.Mn, unicode.Me, unicode.Cf) {
		return 0
	}
	switch width.LookupRune(r).Kind() {
	case width.EastAsianWide, width.EastAsianFullwidth:
		return 2
	}
	return 1
}

// textWidth is how many cells a text takes.
func textWidth(s string) int {
	n := 0
	for _, r := range s {
		n += runeWidth(r)
	}
	return n
}

// visible is text with nothing in it that a terminal would obey.
func visible(s string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) {
			return '\uFFFD'
		}
		return r
	}, s)
}
