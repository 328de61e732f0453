package lint

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"stitchproof/lang/source"
)

var textMisleading = &Rule{
	Name:     "text-misleading",
	Family:   "order",
	Severity: Warning,
	Summary:  "The text is what it looks like: no letters of another alphabet in disguise, no marks that turn its order, nothing unseen.",
	Why: "A Cyrillic с looks like the Latin c, and a pattern that was pasted together, or meant to deceive, may hold both: a name that is " +
		"written alike twice is then two names, and a search finds one of them. Marks that turn the direction of writing show a line in another " +
		"order than the one in which it is read aloud, searched or checked. Nobody can see either by reading.",
	Bad: "Pattern: Wren's n\u0435st\nTerms: US\n\nPiece: Nest\nWith A (moss), ch 11.\n" +
		"Row 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\nFasten off.\n",
	Good: "Pattern: Wren's nest\nTerms: US\n\nPiece: Nest\nWith A (moss), ch 11.\n" +
		"Row 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\nFasten off.\n",
	Sources: []string{"Unicode Technical Standard 39, Unicode Security Mechanisms, version 16.0: mixed scripts, and its table of letters that are taken for each other (from memory, the plainest of them)",
		"Unicode Standard Annex 9, Unicode Bidirectional Algorithm, section 2: explicit directional marks"},
	Check: checkTextMisleading,
}

// maxMisleading bounds the words told of a file: one with more of them was mangled
// as a whole.
const maxMisleading = 20

// lookalikes gives letters of other alphabets the Latin one that each looks like.
var lookalikes = pairs("аеорсухіѕјһԁԛԝАВСЕНІЈКМОРЅТУХ", "aeopcyxisjhdqwABCEHIJKMOPSTYX", "οΑΒΕΖΗΙΚΜΝΟΡΤΥΧ", "oABEZHIKMNOPTYX")

// pairs sets letters of one string against those of the next.
func pairs(lists ...string) map[rune]rune {
	out := map[rune]rune{}
	for i := 0; i < len(lists); i += 2 {
		latin := []rune(lists[i+1])
		for j, r := range []rune(lists[i]) {
			out[r] = latin[j]
		}
	}
	return out
}

// alphabets are those whose letters are taken for Latin ones.
var alphabets = []struct {
	name  string
	table *unicode.RangeTable
}{{"Cyrillic", unicode.Cyrillic}, {"Greek", unicode.Greek}}

// misleads tells of a section with characters that may mislead.
var misleads = &fact[bool]{func(_ *Pass, s section) bool {
	return strings.ContainsFunc(s.text, func(r rune) bool {
		_, alike := lookalikes[r]
		return r >= utf8.RuneSelf && alike || turnsWriting(r) || hidden(r)
	})
}}

// turnsWriting tells a mark that turns the direction of writing.
func turnsWriting(r rune) bool {
	return r >= '\u202a' && r <= '\u202e' || r >= '\u2066' && r <= '\u2069'
}

// hidden tells a character that nobody sees.
func hidden(r rune) bool { return unicode.IsControl(r) && !strings.ContainsRune("\t\n\v\f\r\u0085", r) }

func checkTextMisleading(p *Pass) {
	if !anywhere(p, misleads) {
		return
	}
	text := p.File.Text.String()
	turned, unseen := seen{}, seen{}
	for i, r := range text {
		switch {
		case turnsWriting(r):
			turned.add(i, r)
		case hidden(r):
			unseen.add(i, r)
		}
	}
	turned.report(p, "a mark that turns the direction of writing stands here", "marks that turn the direction of writing stand in the file, the first here",
		": what is shown stands in another order than what is read")
	unseen.report(p, "a character that nobody sees stands here", "characters that nobody sees stand in the file, the first here", "")
	for i, w := range disguised(text) {
		if i == maxMisleading {
			break
		}
		word := text[w.Start:w.End]
		plain := strings.Map(func(r rune) rune {
			if latin, ok := lookalikes[r]; ok {
				return latin
			}
			return r
		}, word)
		p.Report(Finding{
			Span:    w,
			Message: quoted(word) + " is not written as it looks: " + aliens(word),
			Fix:     &Fix{Title: "write it in Latin letters", Safe: true, Edits: []source.Edit{{Span: w, New: plain}}},
		})
	}
}

// seen is where characters of a kind stand: the first of them, and how many.
type seen struct {
	first source.Span
	what  rune
	n     int
}

func (s *seen) add(at int, r rune) {
	if s.n++; s.n == 1 {
		s.first, s.what = source.Span{Start: at, End: at + len(string(r))}, r
	}
}

// report tells of all places at once.
func (s *seen) report(p *Pass, one, many, consequence string) {
	if s.n == 0 {
		return
	}
	if s.n > 1 {
		one = strconv.Itoa(s.n) + " " + many
	}
	p.Report(Finding{Span: s.first, Message: fmt.Sprintf("%s (U+%04X)%s", one, s.what, consequence)})
}

// disguised are the words of a text that look Latin and are not: those that mix
// alphabets, and those that are of look-alikes alone where no word of the text
// shows that it speaks that language.
func disguised(text string) []source.Span {
	var mixed, alone []source.Span
	var speaks bool
	word := func(start, end int) {
		latin, alike, other := false, 0, 0
		for _, r := range text[start:end] {
			switch _, like := lookalikes[r]; {
			case like:
				alike++
			case unicode.Is(unicode.Latin, r):
				latin = true
			case unicode.In(r, unicode.Cyrillic, unicode.Greek):
				other++
			}
		}
		s := source.Span{Start: start, End: end}
		switch {
		case alike > 0 && latin && other == 0:
			mixed = append(mixed, s)
		case alike > 0 && !latin && other == 0:
			alone = append(alone, s)
		case other > 1:
			speaks = true
		}
	}
	letter := func(r rune) bool { return unicode.IsLetter(r) || unicode.Is(unicode.Mn, r) }
	for i := 0; i < len(text); i++ {
		if text[i] < utf8.RuneSelf {
			continue // a word that is written plainly is what it looks like
		}
		start, end := len(strings.TrimRightFunc(text[:i], letter)), len(text)-len(strings.TrimLeftFunc(text[i:], letter))
		if end > i {
			word(start, end)
			i = end - 1
		}
	}
	if speaks {
		return mixed
	}
	all := append(mixed, alone...)
	slices.SortFunc(all, func(a, b source.Span) int { return a.Start - b.Start })
	return all
}

// aliens says which letters of a word are of which alphabet.
func aliens(word string) string {
	var out []string
	for _, of := range alphabets {
		var letters []string
		for _, r := range word {
			if unicode.Is(of.table, r) {
				letters = append(letters, quoted(string(r)))
			}
		}
		switch len(letters) {
		case 0:
		case 1:
			out = append(out, letters[0]+" is a "+of.name+" letter")
		default:
			out = append(out, strings.Join(letters, ", ")+" are "+of.name+" letters")
		}
	}
	return strings.Join(out, ", ")
}
