package materials

import (
	"slices"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/stock"
)

// Coloured is a colour word with its place.
type Coloured struct {
	stock.Colour
	Span source.Span
}

// Colours are the colour words that describe the yarn, in order: of words within one
// another the longest, `dark green`. text is the one that the pattern was read from.
func (y *Yarn) Colours(text *source.Text) []Coloured {
	written := strings.ToLower(text.Slice(y.Span))
	var out []Coloured
	for _, c := range longestFirst(stock.Colours()) {
		for from := 0; ; {
			i := wordAt(written[from:], c.Name)
			if i < 0 {
				break
			}
			word := source.Span{Start: from + i, End: from + i + len(c.Name)}
			out = append(out, Coloured{c, word.Shift(y.Span.Start)})
			written = written[:word.Start] + strings.Repeat("~", word.Len()) + written[word.End:]
			from = word.End
		}
	}
	slices.SortFunc(out, func(a, b Coloured) int { return a.Span.Start - b.Span.Start })
	return out
}

func longestFirst(all []stock.Colour) []stock.Colour {
	return slices.SortedFunc(slices.Values(all), func(a, b stock.Colour) int { return len(b.Name) - len(a.Name) })
}
