package materials

import (
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stock"
	"stitchproof/lang/syntax"
)

// Extent is what the header says of a width as one figure or as a range, in
// millimetres, for all sizes or one for each: a body that is to be fitted, or by
// how much a piece is wider than one.
type Extent struct {
	Low, High syntax.Length
	Text      string // all that is said, in lower case
	Span      source.Span
}

// to is what may stand between the ends of a range besides a dash.
var to = phrase.MustCompile(`\s+to\s+|\s*[–—]\s*`)

// readExtent reads `81 (91, 101) cm`, `5-10 cm`, `81-86 (91-97) cm`, nil where no
// length is written. The first metric length counts, else the first one.
func readExtent(f *syntax.Field) *Extent {
	text := strings.ToLower(f.Value)
	ranged := to.ReplaceAllString(text, "-")
	length := syntax.ParseLength(ranged)
	if !length.Written() {
		return nil
	}
	e := &Extent{Low: length, High: length, Text: text, Span: f.ValueSpan}
	if n := len(length.Vals); n%2 == 0 && strings.Count(written(ranged), "-") == n/2 {
		e.Low, e.High = syntax.Length{}, syntax.Length{}
		for i := 0; i < n; i += 2 {
			e.Low.Vals = append(e.Low.Vals, length.Vals[i])
			e.High.Vals = append(e.High.Vals, length.Vals[i+1])
		}
	}
	return e
}

// written is the length of a text that [syntax.ParseLength] takes.
func written(text string) string {
	all := syntax.FindLengths(text)
	for _, l := range all {
		if l.Metric() {
			return text[l.Span.Start:l.Span.End]
		}
	}
	return text[all[0].Span.Start:all[0].Span.End]
}

var (
	narrower = phrase.MustCompile(`\bnegative\b|\b(?:less|smaller|narrower) than\b|(?:^|\s)[-−]\d`)
	wider    = phrase.MustCompile(`\bpositive\b|\b(?:more|larger|wider) than\b|(?:^|\s)\+\d`)
	noEase   = phrase.MustCompile(`^\W*(?:none|no ease|zero|zero ease)\b|^\W*0(?:\s*(?:cm|in|ease)\b|$)`)
)

// readEase reads by how much a piece is to be wider than the body: `5 cm (2 in)`,
// `2-4 in of negative ease`, `none`, `close-fitting`. It is nil where nothing
// can be told, and where some of it is wider and some narrower.
func readEase(f *syntax.Field) *Extent {
	text := strings.ToLower(f.Value)
	less := narrower.MatchString(text)
	switch e := readExtent(f); {
	case less && wider.MatchString(text):
		return nil
	case noEase.MatchString(text):
		return &Extent{Low: syntax.Length{Vals: []float64{0}}, High: syntax.Length{Vals: []float64{0}}, Text: text, Span: f.ValueSpan}
	case e == nil:
		return namedEase(f, text)
	case less:
		e.Low, e.High = negative(e.High), negative(e.Low)
		return e
	default:
		return e
	}
}

func negative(l syntax.Length) syntax.Length {
	out := syntax.Length{}
	for _, v := range l.Vals {
		out.Vals = append(out.Vals, -v)
	}
	return out
}

// namedEase is the ease that a name for it stands for in publications, nil where
// a text has none of them.
func namedEase(f *syntax.Field, text string) *Extent {
	name, ranges := "", []stock.Range(nil)
	for _, fit := range stock.Fits() {
		if wordAt(text, fit.Name) < 0 || len(fit.Name) < len(name) {
			continue
		}
		if fit.Name != name {
			name, ranges = fit.Name, nil
		}
		ranges = append(ranges, fit.Inches)
	}
	if name == "" {
		return nil
	}
	inches := stock.Hull(ranges)
	end := func(v float64) syntax.Length { return syntax.Length{Vals: []float64{v * stock.MMPerInch}} }
	return &Extent{Low: end(inches.Low), High: end(inches.High), Text: text, Span: f.ValueSpan}
}
