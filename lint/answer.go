package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/source"
)

// Answer gives the edits that answer findings in comments, with a reason: one
// comment at the end of each line, or above one that has a comment already. What
// cannot be answered is left out: failures, and what is said of answers themselves.
func Answer(text *source.Text, found []Finding, reason string) []source.Edit {
	names := map[int][]string{}
	var lines []int
	for _, f := range found {
		r, known := Find(f.Rule)
		if !known || r.Check == nil || r.Family == allowUnused.Family {
			continue
		}
		line := text.LineOf(f.Span.Start)
		if names[line] == nil {
			lines = append(lines, line)
		}
		if !slices.Contains(names[line], f.Rule) {
			names[line] = append(names[line], f.Rule)
		}
	}
	var edits []source.Edit
	for _, line := range lines {
		edits = append(edits, answering(text, line, "// allow "+strings.Join(names[line], ", ")+": "+reason))
	}
	return edits
}

// answering is the edit that writes a comment for a line.
func answering(text *source.Text, line int, comment string) source.Edit {
	at := text.Line(line)
	written := text.Slice(at)
	if !strings.Contains(written, "//") {
		return source.Edit{Span: source.At(at.End), New: " " + comment}
	}
	indent := written[:len(written)-len(strings.TrimLeft(written, " \t"))]
	return source.Edit{Span: source.At(at.Start), New: indent + comment + text.LineEnd()}
}
