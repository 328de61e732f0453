package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// AnInstruction tells what would be read as one, where none was found.
const AnInstruction = "one is a line such as `Row 1: Sc in each st across.`, in English"

// How much of a text may stand there before it is more than what a writer begins with: lines
// of prose below the title, and lines of them with a number, as rows have.
const (
	openingLines  = 6
	numberedLines = 2
)

// NothingRead tells whether a text goes on beyond a title, a header and an introduction, and
// no line of it was read as an instruction.
func (a *Analysis) NothingRead() bool {
	lines, numbered := 0, 0
	for _, piece := range a.File.Pieces {
		if len(piece.Rows) > 0 {
			return false
		}
	}
	title := !slices.ContainsFunc(a.File.Header, func(f *syntax.Field) bool { return f.Key == "pattern" })
	for _, span := range a.File.Prose {
		if slices.Contains(a.File.Supplies, span) {
			continue
		}
		for line := range strings.Lines(a.File.Text.Slice(span)) {
			switch {
			case strings.TrimSpace(line) == "":
			case title:
				title = false
			default:
				lines++
				if strings.ContainsAny(line, "0123456789") {
					numbered++
				}
			}
		}
	}
	for _, f := range a.File.Header {
		if isDigit(f.Key[len(f.Key)-1]) {
			numbered++ // `Rang 1 : 6 ms`
		}
	}
	return lines >= openingLines || numbered >= numberedLines
}

// FirstLine is the first line of the text that says something.
func (a *Analysis) FirstLine() source.Span {
	for n := range a.Text.Lines() {
		if line := a.Text.Line(n); strings.TrimSpace(a.Text.Slice(line)) != "" {
			return line
		}
	}
	return source.Span{}
}
