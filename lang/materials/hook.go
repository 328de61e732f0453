package materials

import (
	"strconv"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stock"
)

// Hook is one hook of the list.
type Hook struct {
	MM     float64 // 0 where only a label is given
	Steel  bool    // it is said to be of steel, and of nothing else
	Span   source.Span
	Labels []HookLabel
}

// HookLabel is what a pattern calls a hook besides its millimetres.
type HookLabel struct {
	Kind           string // US, UK, US steel, UK steel; "" where it is not said
	Letter, Number string
	Span           source.Span
}

var (
	hookMM = phrase.MustCompile(`(\d+(?:[.,]\d+)?)\s*-?mm\b`)
	// A label says whose it is, or that it is a size, or begins with a letter.
	hookLabel = phrase.MustCompile(`\b(?:(US|U\.S\.|USA|UK|U\.K\.)\s*)?((?i)steel\s*)?((?i)size\s*|no\.?\s*|#)?(?:([B-X])\b(?:[-/ ]([B-X])\b)?)?(?:[-/ ]?(\d{1,3}(?:½|(?:\.5| ?1/2)?\b)))?`)
)

// What a hook is made of: steel alone, or something else as well.
var (
	steelWord  = phrase.MustCompile(`(?i)\bsteel\b`)
	otherStuff = phrase.MustCompile(`(?i)\b(?:or|and|alumini?um|wood(?:en)?|bamboo|plastic)\b`)
)

// readHooks reads `4 mm (US G-6)`, `G/6 (4.00 mm)`, `US 7 (4.5 mm)`,
// `5 mm (H-8) and 4 mm (G-6)`. Labels go with the size they stand nearest to in
// the order written; where they cannot be matched they are left out.
func readHooks(value string, span source.Span, text *source.Text) []Hook {
	written := text.Slice(span)
	if len(written) != len(value) {
		value = written // a field that goes on in further lines, as it stands there
	}
	var out []Hook
	for _, m := range hookMM.FindAllStringSubmatchIndex(value, -1) {
		mm, _ := strconv.ParseFloat(strings.Replace(value[m[2]:m[3]], ",", ".", 1), 64) // the pattern lets only numbers through
		out = append(out, Hook{MM: mm, Span: source.Span{Start: m[0], End: m[1]}.Shift(span.Start)})
	}
	if steelWord.MatchString(value) && !otherStuff.MatchString(value) {
		for i := range out {
			out[i].Steel = true
		}
	}
	labels := hookLabels(hookMM.ReplaceAllStringFunc(value, func(s string) string { return strings.Repeat("~", len(s)) }), span.Start)
	switch {
	case len(out) == 1:
		out[0].Labels = labels
	case len(out) == len(labels):
		for i := range out {
			out[i].Labels = labels[i : i+1]
		}
	case len(out) == 0:
		for _, l := range labels {
			out = append(out, Hook{Span: l.Span, Labels: []HookLabel{l}})
		}
	}
	return out
}

// hookLabels finds the labels in a text that begins at offset at.
func hookLabels(text string, at int) []HookLabel {
	var out []HookLabel
	group := func(m []int, i int) string {
		if m[2*i] < 0 {
			return ""
		}
		return text[m[2*i]:m[2*i+1]]
	}
	for _, m := range hookLabel.FindAllStringSubmatchIndex(text, -1) {
		l := HookLabel{Letter: group(m, 4), Number: group(m, 6), Span: source.Span{Start: m[0], End: m[1]}.Shift(at)}
		whose, steel, sized := group(m, 1), group(m, 2) != "", group(m, 3) != ""
		if l.Letter == "" && (l.Number == "" || whose == "" && !steel && !sized) {
			continue
		}
		l.Kind = strings.NewReplacer(".", "", "USA", "US").Replace(whose)
		if steel {
			l.Kind = strings.TrimSpace(l.Kind + " steel")
			if l.Kind == "steel" {
				l.Kind = "US steel"
			}
		} else if l.Letter != "" && l.Kind == "" {
			l.Kind = "US"
		}
		l.Number = strings.NewReplacer(" 1/2", ".5", "1/2", ".5", "½", ".5").Replace(l.Number)
		if second := group(m, 5); second != "" { // `M/N-13`: either letter
			if len(stock.Labelled(l.Kind, l.Letter, l.Number)) == 0 {
				l.Letter = second
			}
		}
		out = append(out, l)
	}
	return out
}

// Published is what publications take the label for, none where no table has it.
func (l HookLabel) Published() []stock.Label { return stock.Labelled(l.Kind, l.Letter, l.Number) }
