package lint

import (
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
)

var wordsDoubled = &Rule{
	Name:     "words-doubled",
	Family:   "order",
	Severity: Warning,
	Summary:  "No word and no sentence that is said once stands there twice in a row.",
	Why: "A sentence that was pasted twice makes a maker wonder whether she is to do it twice, and a doubled word is where " +
		"she loses the line.",
	Bad: `Pattern: Acorn
Terms: US

Piece: Acorn
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Stuff the acorn firmly. Stuff the acorn firmly.
Fasten off.
`,
	Good: `Pattern: Acorn
Terms: US

Piece: Acorn
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Stuff the acorn firmly.
Fasten off.
`,
	Check: checkWordsDoubled,
}

var (
	// lettersOnly are the words of a text.
	lettersOnly = phrase.MustCompile(`[A-Za-z]+`)
	// smallWords are those that never stand twice in a row: a stitch or a number may.
	smallWords = map[string]bool{
		"the": true, "a": true, "an": true, "in": true, "of": true, "to": true, "and": true, "with": true, "each": true, "next": true, "from": true,
		"at": true, "on": true, "for": true, "is": true, "are": true, "it": true, "you": true, "as": true, "your": true, "this": true, "into": true,
		"first": true, "last": true, "same": true, "around": true, "across": true, "every": true,
	}
	// saidOnce begins what is done once: stitches, turns and rows may well be repeated.
	saidOnce = phrase.MustCompile(`^(?:fasten off|bind off|break off|break (?:the )?yarn|cut|stuff|fill|weave|darn|sew|block|press|place|insert|attach|embroider|close|fold|finish|leave|pin|wash|do not)\b`)
	sentence = phrase.MustCompile(`[^.!?\n]+[.!?]`)
)

// doubledIn are the places of a section where something stands the second time, with the
// blanks before it.
var doubledIn = &fact[[]source.Span]{func(_ *Pass, s section) []source.Span {
	return append(doubledWords(s.text), doubledSentences(s.text)...)
}}

func doubledWords(text string) []source.Span {
	var out []source.Span
	words := lettersOnly.FindAllStringIndex(text, -1)
	for i := 1; i < len(words); i++ {
		a, b := words[i-1], words[i]
		between := text[a[1]:b[0]]
		if between == "" || strings.Trim(between, " \n\r") != "" || strings.Count(between, "\n") > 1 || text[a[0]:a[1]] == strings.ToUpper(text[a[0]:a[1]]) ||
			!smallWords[strings.ToLower(text[b[0]:b[1]])] || !strings.EqualFold(text[a[0]:a[1]], text[b[0]:b[1]]) {
			continue
		}
		out = append(out, source.Span{Start: a[1], End: b[1]})
	}
	return out
}

func doubledSentences(text string) []source.Span {
	var out []source.Span
	all := sentence.FindAllStringIndex(text, -1)
	for i := 1; i < len(all); i++ {
		a, b := all[i-1], all[i]
		said := plainText(text[b[0]:b[1]])
		if saidOnce.MatchString(said) && said == plainText(text[a[0]:a[1]]) && strings.Count(text[a[1]:b[0]], "\n") < 2 {
			out = append(out, source.Span{Start: a[1], End: b[1]})
		}
	}
	return out
}

func checkWordsDoubled(p *Pass) {
	for s, places := range doubledIn.in(p) {
		for _, at := range places {
			again := s.abs(at)
			words := strings.TrimLeft(p.File.Text.Slice(again), " \r\n")
			p.Report(Finding{
				Span:    source.Span{Start: again.End - len(words), End: again.End},
				Message: quoted(words) + " stands here twice in a row",
				Fix:     &Fix{Title: "take it out", Safe: true, Edits: []source.Edit{{Span: again}}},
			})
		}
	}
}
