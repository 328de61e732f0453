package house

import (
	"strings"
	"unicode/utf8"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// laidOut are the edits that tidy the spaces of a row and break its lines.
func (f *formatter) laidOut(worked *fabric.Row) []source.Edit {
	row := worked.Tree
	for _, c := range f.now.File.Comments {
		if row.Span().Covers(c.Span) {
			return nil // lines with a note between them stay as they are
		}
	}
	l := layout{row: row, width: f.style.Width, indent: f.indentOf(row), end: f.lineEnd}
	return l.edits(f.columnOf(row))
}

// columnOf is how many characters stand before a row in its line.
func (f *formatter) columnOf(row *syntax.Row) int {
	line := f.now.File.Text.Line(f.now.File.Text.LineOf(row.At))
	return utf8.RuneCountInString(f.now.File.Text.Slice(source.Span{Start: line.Start, End: row.At}))
}

// indentOf is the white space that goes before the lines that continue a row:
// two spaces more than before its first.
func (f *formatter) indentOf(row *syntax.Row) string {
	line := f.now.File.Text.Slice(f.now.File.Text.Line(f.now.File.Text.LineOf(row.At)))
	return line[:len(line)-len(strings.TrimLeft(line, " \t"))] + "  "
}

// layout sets the white space between the words of a row.
type layout struct {
	row    *syntax.Row
	width  int
	indent string
	end    string
}

// edits changes the white space between tokens where it should be other; the
// row begins at a column of its line.
func (l *layout) edits(column int) []source.Edit {
	var out []source.Edit
	tokens := l.row.Tokens
	for i, t := range tokens {
		word := l.row.Source(t.Span)
		if i > 0 {
			gap := source.Span{Start: tokens[i-1].Span.End, End: t.Span.Start}
			now := l.row.Source(gap)
			want := l.gap(tokens[i-1], t, now)
			if l.width > 0 && want != "" && onlySpace(want) {
				if want = " "; column+1+l.unbroken(i) > l.width && tokens[i-1].Kind != syntax.Number {
					want = l.end + l.indent
				}
			}
			if want != now {
				out = append(out, source.Edit{Span: l.row.Abs(gap), New: want})
			}
			if at := strings.LastIndexAny(want, "\r\n"); at >= 0 {
				column = utf8.RuneCountInString(want[at+1:])
			} else {
				column += utf8.RuneCountInString(want)
			}
		}
		column += utf8.RuneCountInString(word)
	}
	return out
}

// unbroken is how many characters there are from the ith token to the next gap
// at which a line can be broken: not behind a number, which goes with its noun.
func (l *layout) unbroken(i int) int {
	n := utf8.RuneCountInString(l.row.Source(l.row.Tokens[i].Span))
	for k := i + 1; k < len(l.row.Tokens); k++ {
		before, t := l.row.Tokens[k-1], l.row.Tokens[k]
		gap := l.gap(before, t, l.row.Source(source.Span{Start: before.Span.End, End: t.Span.Start}))
		if gap != "" && before.Kind != syntax.Number {
			break
		}
		n += len(gap) + utf8.RuneCountInString(l.row.Source(t.Span))
	}
	return n
}

// gap is the white space that belongs between two tokens that now have some, or
// none, between them.
func (l *layout) gap(before, t syntax.Token, now string) string {
	switch {
	case !onlySpace(now):
		return now // a bullet, or what a word processor left: not to be lost unasked
	case l.width == 0 && strings.ContainsAny(now, "\r\n"):
		return now
	case before.Kind == syntax.Open:
		return ""
	}
	switch t.Kind {
	case syntax.Comma, syntax.Semi, syntax.Period, syntax.Colon, syntax.Close:
		return ""
	}
	if now != "" || before.Kind == syntax.Comma || before.Kind == syntax.Semi || l.endsLabel(before) {
		return " "
	}
	return ""
}

// onlySpace tells whether a gap holds nothing but white space.
func onlySpace(gap string) bool { return strings.Trim(gap, " \t\r\n\u00a0\u202f") == "" }

// endsLabel tells whether a token is the colon behind the row's label.
func (l *layout) endsLabel(t syntax.Token) bool {
	label := l.row.Label.Span
	return t.Kind == syntax.Colon && !label.Empty() && strings.TrimSpace(l.row.Source(source.Span{Start: label.End, End: max(label.End, t.Span.Start)})) == ""
}
