package materials

import (
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stock"
)

// weightNumber is the number of a standard weight: `worsted (4)`, `#4`,
// `weight 4`, `4 medium`.
var weightNumber = phrase.MustCompile(`\(([0-7])\)|#([0-7])\b|(?i:weight|category|cyc)\s*([0-7])\b`)

// readWeight finds the weight in a yarn's description: a name, a number or both.
func (y *Yarn) readWeight() {
	if m := weightNumber.FindStringSubmatchIndex(y.Text); m != nil {
		for i := 2; i < len(m); i += 2 {
			if m[i] >= 0 {
				n, _ := strconv.Atoi(y.Text[m[i]:m[i+1]]) // the pattern lets only digits through
				y.Number = &n
			}
		}
		y.WeightSpan = source.Span{Start: m[0], End: m[1]}.Shift(y.Span.Start)
	}
	if at := plyName.FindStringIndex(strings.ToLower(y.Text)); at != nil {
		y.Ply = stock.WeightsNamed(strings.ReplaceAll(strings.ToLower(y.Text[at[0]:at[1]]), "-", " "))
		y.named(source.Span{Start: at[0], End: at[1]})
	}
	if name, at := weightName(y.Text); name != "" {
		y.Weights = stock.WeightsNamed(name)
		y.named(source.Span{Start: at, End: at + len(name)})
	}
}

// named adds the place of a name, in the description, to that of the weight.
func (y *Yarn) named(at source.Span) {
	if at = at.Shift(y.Span.Start); y.WeightSpan.Empty() {
		y.WeightSpan = at
	} else {
		y.WeightSpan = y.WeightSpan.Union(at)
	}
}

// weightName finds the longest name of a weight that stands in a description
// by itself. A name that says more of yarns than of their weight (`baby`,
// `light`) is none unless the description calls it a weight.
func weightName(text string) (name string, at int) {
	lower := strings.ToLower(text)
	for _, w := range stock.Weights() {
		for _, candidate := range append([]string{w.Name}, w.Also...) {
			i := wordAt(lower, candidate)
			if i < 0 || len(candidate) <= len(name) {
				continue
			}
			if vague[candidate] && !strings.Contains(lower, candidate+" weight") && !strings.Contains(lower, candidate+"-weight") && !numbered(lower, candidate) {
				continue
			}
			name, at = candidate, i
		}
	}
	return name, at
}

// plyName is what yarns are called in the UK by the number of their plies.
var plyName = phrase.MustCompile(`\b(?:[1-5]|8|10|12|14)[ -]ply\b`)

// numbered tells whether a name of the standard stands with a number of it: `lace (0)`,
// `thread (0)`. Others may be part of what a yarn is called.
func numbered(text, name string) bool {
	i := wordAt(text, name)
	at := weightNumber.FindStringIndex(text[i+len(name):])
	if at == nil || strings.TrimSpace(text[i+len(name):][:at[0]]) != "" {
		return false
	}
	return name == "thread" || slices.ContainsFunc(stock.Weights(), func(w stock.Weight) bool { return w.Name == name })
}

// vague are names of weights that are words for much else.
var vague = map[string]bool{
	"baby": true, "fine": true, "light": true, "lace": true, "craft": true, "rug": true, "thread": true, "medium": true, "sock": true, "roving": true,
	"afghan": true, "super fine": true, "1 ply": true, "2 ply": true, "3 ply": true, "4 ply": true, "5 ply": true, "8 ply": true, "10 ply": true, "12 ply": true, "14 ply": true,
}

// lettered is a yarn of several in one description, which the rows call by a letter.
type lettered struct {
	name, colour string
	span         source.Span // in the description
}

// A description gives letters and colours in either order: `A (moss), B (frost)`,
// `moss (A) and frost (B)`, `A: moss, B: frost`, `A moss, 40 m; B frost, 60 m`.
var (
	letterFirst = phrase.MustCompile(`\b([A-Z]|MC|CC\d?) ?[(\[](\pL[^()\[\]]*)[)\]]`)
	letterLast  = phrase.MustCompile(`(\pL[\pL-]*) ?[(\[]([A-Z]|MC|CC\d?)(?:[,;:] [^()\[\]]*)?[)\]]`)
	letterBare  = phrase.MustCompile(`(?:^|[:;\n]\s*)([A-Z]|MC|CC\d?) {1,3}(\p{Ll}[^,;.:=()\n]*)`)
	letterMark  = phrase.MustCompile(`\b([A-Z]|MC|CC\d?)(?:[:=]| [–—-])\s*(\pL[^,;.:=]*)`)
)

// letterAlone is a letter in brackets that names the yarn described: `Moss DK wool, 25 m (A)`.
// Those of sizes and of hooks are none.
var letterAlone = phrase.MustCompile(`[(\[](?:[\pL ]*\b(?:colou?r|yarn) )?([A-F]|MC|CC\d?)[)\]]`)

// letteredYarns are the yarns that a description gives letters to: several, of which it
// names at least A and B, or MC and another, or one.
func letteredYarns(text string) []lettered {
	for _, way := range [...]struct {
		words        *phrase.Phrase
		name, colour int // its groups
	}{{letterFirst, 1, 2}, {letterLast, 2, 1}, {letterMark, 1, 2}, {letterBare, 1, 2}} {
		var out []lettered
		first, others := false, false
		for _, m := range way.words.FindAllStringSubmatchIndex(text, -1) {
			group := func(i int) string { return text[m[2*i]:m[2*i+1]] }
			y := lettered{group(way.name), group(way.colour), source.Span{Start: m[0], End: m[1]}}
			first = first || y.name == "A" || y.name == "MC"
			others = others || y.name == "B" || strings.HasPrefix(y.name, "CC")
			out = append(out, y)
		}
		if first && others {
			return out
		}
	}
	if all := letterAlone.FindAllStringSubmatch(text, -1); len(all) == 1 {
		return []lettered{{all[0][1], text, source.Span{End: len(text)}}}
	}
	return nil
}

// headName is a yarn's own name that its line begins with, and what is said of it: `Bark: dark brown 4-ply wool`, `**Moss**,
// aran-weight wool`, `Rose (pink), 10 g`.
var headName = phrase.MustCompile(`(?m)^[-•*>\s]*(\p{Lu}\p{Ll}{2,})\**(?::\**|,| \(| [–—-]) ?(.*)$`)

// ofYarn are words by which a line tells of yarn.
var ofYarn = phrase.MustCompile(`(?i)\b(?:wool|cotton|yarn|acrylic|ply|dk|aran|worsted|chunky|floss|mohair|alpaca|blend|thread)\b|\b\d+ ?(?:g|m|yds?|yards?|oz)\b`)

// Names are what the list calls its yarns by, in words of their own, in lower case.
func (l *List) Names() []string {
	var out []string
	for _, m := range headName.FindAllStringSubmatch(l.written, -1) {
		if name := strings.ToLower(m[1]); ofYarn.MatchString(m[2]) && !ofYarn.MatchString(name) {
			out = append(out, name)
		}
	}
	return out
}

// callsYarn are the ways in which a list calls yarns by letters and numbers: `(A)`, `(yarn B)`,
// `Colour C`, `**D** Bark`, `F, hedge green: 3 balls`, `MC Moss`, `E = haw red`.
var callsYarn = [...]*phrase.Phrase{
	phrase.MustCompile(`[(\[](?:(?i:yarn|colou?r|shade) )?(` + codeExpr + `)[)\]]`),
	phrase.MustCompile(`\b(?i:yarn|colou?r|shade) (` + codeExpr + `|\d)\b`),
	phrase.MustCompile(`\*\*(` + codeExpr + `)(?: ?[:=])?\*\*`),
	phrase.MustCompile(`(?m:^[-•*\s]*)(` + codeExpr + `)\*{0,2}, \pL`),
	phrase.MustCompile(`(?m:^[-•*\s]*|[:;,] ?)(` + codeExpr + `)(?: ?[:=]| ?[–—-] ?\pL| \p{Lu}\p{Ll})`),
}

// codeExpr is a yarn's name that is no word: A, MC, CC2, CB.
const codeExpr = `[A-Z]|MC|CC\d?|C[A-F]`

// matched is a yarn that something else goes with: `thread to match Yarn B`. That lists no yarn.
var matched = phrase.MustCompile(`\b(?i:to match|matching) (?:(?i:the|your|yarn|colou?r|shade) )*(?:` + codeExpr + `)\b`)

// codesIn are those that a list calls yarns by, each once.
func codesIn(text string) []string {
	var out []string
	for _, way := range callsYarn {
		for _, m := range way.FindAllStringSubmatch(text, -1) {
			if !slices.Contains(out, m[1]) {
				out = append(out, m[1])
			}
		}
	}
	slices.Sort(out)
	return out
}

// wordAt is where a word stands by itself in a text in lower case, -1 for nowhere.
func wordAt(text, word string) int {
	return alone(text, word, func(c byte) bool { return lowerLetter(c) || c >= '0' && c <= '9' })
}

func lowerLetter(c byte) bool { return c >= 'a' && c <= 'z' }

// alone is where a word stands in a text with none of some characters beside it, -1
// for nowhere.
func alone(text, word string, joins func(byte) bool) int {
	for from := 0; ; {
		i := strings.Index(text[from:], word)
		if i < 0 {
			return -1
		}
		start, end := from+i, from+i+len(word)
		if (start == 0 || !joins(text[start-1])) && (end == len(text) || !joins(text[end])) {
			return start
		}
		from = start + 1
	}
}

// Weight is the standard weight that the description settles on: the number's
// where one is written, else that of a name which is used for one weight only.
func (y *Yarn) Weight() (stock.Weight, bool) {
	switch {
	case y.Number != nil:
		return stock.WeightNumbered(*y.Number)
	case len(y.Weights) == 1:
		return y.Weights[0], true
	}
	return stock.Weight{}, false
}

// Doubled tells whether more than one strand is held at once.
func (l *List) Doubled() bool {
	for _, words := range []string{"held", "strands", "double strand", "two strand"} {
		if strings.Contains(l.Text, words) {
			return true
		}
	}
	return false
}
