package materials

import (
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var (
	// finishedSaid takes `Finished chest 110 cm; length 50 cm` from a sentence.
	finishedSaid = phrase.MustCompile(`(?i)\bfinished (?:size:?|measurements?:?|)\s*((?:(?:is|are|about|approx(?:\.|imately)?|bust|chest|width|length|height|circumference|of)[: ]\s*)*\d[^\n]*?)(?:\.(?:\s|$)|\n|$)`)
	// ofTheBody tells a size that is the wearer's, and not the piece's.
	ofTheBody = phrase.MustCompile(`(?i)\b(?:fits?|bust|chest|head|waist|hips?|foot|feet|hands?|shoes?|years?|months?|to)\b`)
	crossed   = phrase.MustCompile(`\d\s*(?:x|×|by)\s*\d|\b(?:wide|across|square)\b`)
)

// ownMeasure is a field that gives one measure of the finished piece, and no body's.
var ownMeasure = phrase.MustCompile(`^(?:(?:total|full|back|front|body|side|garment|sleeve) )?(?:length|width)$|^length to shoulder$|^sleeves?(?: seam)?$`)

// finishedSize finds the finished size of a pattern that has no field for it: a size
// that is a width and a height, or what a sentence above the work says. It is nil for
// none.
func finishedSize(file *syntax.File) []*syntax.Field {
	for _, f := range file.Header {
		if f.Key == "sizes" && len(file.Sizes) == 0 && !ofTheBody.MatchString(f.Value) && crossed.MatchString(unitless(f.Value)) {
			return []*syntax.Field{f}
		}
	}
	begin := firstRow(file)
	for _, span := range file.Prose {
		if span.Start >= begin {
			break
		}
		text := file.Text.Slice(span)
		if m := finishedSaid.FindStringSubmatchIndex(text); m != nil && len(syntax.FindLengths(text[m[2]:m[3]])) > 0 {
			at := source.Span{Start: m[2], End: m[3]}.Shift(span.Start)
			return []*syntax.Field{{Key: "finished size", Value: strings.Clone(text[m[2]:m[3]]), Span: span, KeySpan: source.At(at.Start), ValueSpan: at}}
		}
	}
	return nil
}

// unitless is a text without the units between its numbers: `40 cm x 17 cm` is `40 x 17`.
func unitless(text string) string { return unitWord.ReplaceAllString(text, "") }

var unitWord = phrase.MustCompile(`(?i) ?(?:cms?|mm|in(?:ch(?:es)?)?|["”″])(?:\b| |$)|\([^()]*\)`)

// firstRow is where the first instruction stands, the end of a file that has none.
func firstRow(file *syntax.File) int {
	begin := file.Text.Len()
	for _, piece := range file.Pieces {
		for _, row := range piece.Rows {
			begin = min(begin, row.At)
		}
	}
	return begin
}
