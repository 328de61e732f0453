package syntax

import (
	"strings"

	"stitchproof/lang/source"
)

// commentMark begins a comment.
const commentMark = "//"

// noteWord begins a comment that speaks to the checker. Such a note may also
// end a line: no other words are taken off a line's end, so that none of a
// pattern can be lost.
const noteWord = "allow"

// Comment is a line of the writer's own, or a note to the checker.
type Comment struct {
	Span source.Span // from the slashes to the end of the line
	Text string      // without the slashes
	// Ends is set where the comment ends a line that says something.
	Ends bool
	// Within is set where the part of the file that it ends a line of goes on.
	Within bool
}

// comment keeps a comment that stands alone in its line.
func (d *document) comment(span source.Span) {
	trimmed := strings.TrimFunc(d.text(span), isBlank)
	d.file.Comments = append(d.file.Comments, &Comment{Span: span, Text: strings.Clone(strings.TrimSpace(strings.TrimPrefix(trimmed, commentMark)))})
}

// withoutNote is a line without the note that ends it, which is kept.
func (d *document) withoutNote(span source.Span) source.Span {
	line := d.text(span)
	words := bare(line)
	if len(words) == len(line) {
		return span
	}
	d.comment(source.Span{Start: span.Start + len(words), End: span.End})
	d.file.Comments[len(d.file.Comments)-1].Ends = true
	return source.Span{Start: span.Start, End: span.Start + len(strings.TrimRightFunc(words, isBlank))}
}

// takeIn marks the notes that a part of the file goes on after.
func (d *document) takeIn(part source.Span) {
	for i := len(d.file.Comments) - 1; i >= 0 && part.Start <= d.file.Comments[i].Span.Start; i-- {
		c := d.file.Comments[i]
		c.Within = c.Ends && part.Covers(c.Span)
	}
}

// bare is a line without the note that ends it. A note that has the line to
// itself ends none.
func bare(line string) string {
	if words := beforeNote(line); strings.TrimFunc(words, isBlank) != "" {
		return words
	}
	return line
}

// beforeNote is a text up to its first note to the checker.
func beforeNote(text string) string {
	for at := 0; at < len(text); at += len(commentMark) {
		i := strings.Index(text[at:], commentMark)
		if i < 0 {
			break
		}
		at += i
		if notes(text, at) {
			return text[:at]
		}
	}
	return text
}

// notes tells whether a note to the checker begins at an offset of a text.
func notes(text string, at int) bool {
	rest, ok := strings.CutPrefix(text[at:], commentMark)
	if !ok || at > 0 && !strings.ContainsAny(text[at-1:at], " \t\r\n") {
		return false
	}
	after, ok := strings.CutPrefix(strings.TrimLeft(rest, " \t"), noteWord)
	return ok && after != "" && strings.ContainsAny(after[:1], " \t-")
}

// lineEnd is where the line that holds an offset ends.
func lineEnd(text string, at int) int {
	if n := strings.IndexAny(text[at:], "\r\n"); n >= 0 {
		return at + n
	}
	return len(text)
}
