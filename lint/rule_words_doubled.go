package lint

import (
	"iter"
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
	// smallWords are those that never stand twice in a row: a stitch or a number may.
	smallWords = map[string]bool{
		"the": true, "a": true, "an": true, "in": true, "of": true, "to": true, "and": true, "with": true, "each": true, "next": true, "from": true,
		"at": true, "on": true, "for": true, "is": true, "are": true, "it": true, "you": true, "as": true, "your": true, "this": true, "into": true,
		"first": true, "last": true, "same": true, "around": true, "across": true, "every": true,
	}
	// saidOnce begins what is done once: stitches, turns and rows may well be repeated.
	saidOnce = phrase.MustCompile(`^(?:fasten off|bind off|break off|break (?:the )?yarn|cut|stuff|fill|weave|darn|sew|block|press|place|insert|attach|embroider|close|fold|finish|leave|pin|wash|do not)\b`)
)

// doubledIn are the places of a section where something stands the second time, with the
// blanks before it.
var doubledIn = &fact[[]source.Span]{func(_ *Pass, s section) []source.Span {
	return append(doubledWords(s.text), doubledSentences(s.text)...)
}}

func doubledWords(text string) []source.Span {
	var out []source.Span
	var a source.Span // the word before
	for b := range wordsOf(text) {
		between := text[a.End:b.Start]
		if len(between) > 0 && strings.Trim(between, " \n\r") == "" && strings.EqualFold(text[a.Start:a.End], text[b.Start:b.End]) && strings.Count(between, "\n") < 2 &&
			text[a.Start:a.End] != strings.ToUpper(text[a.Start:a.End]) && smallWords[strings.ToLower(text[b.Start:b.End])] {
			out = append(out, source.Span{Start: a.End, End: b.End})
		}
		a = b
	}
	return out
}

// wordsOf are the runs of letters of a text.
func wordsOf(text string) iter.Seq[source.Span] {
	return func(yield func(source.Span) bool) {
		start := -1
		for i := 0; i <= len(text); i++ {
			letter := i < len(text) && (text[i]|0x20) >= 'a' && (text[i]|0x20) <= 'z'
			switch {
			case letter && start < 0:
				start = i
			case !letter && start >= 0:
				if !yield(source.Span{Start: start, End: i}) {
					return
				}
				start = -1
			}
		}
	}
}

func doubledSentences(text string) []source.Span {
	var out []source.Span
	var a source.Span // the sentence before
	for b := range sentencesInLines(text) {
		if said := plainText(text[b.Start:b.End]); a.End > 0 && saidOnce.MatchString(said) && said == plainText(text[a.Start:a.End]) && strings.Count(text[a.End:b.Start], "\n") < 2 {
			out = append(out, source.Span{Start: a.End, End: b.End})
		}
		a = b
	}
	return out
}

// sentencesInLines are the stretches of a text that end in a stop, each within a line.
func sentencesInLines(text string) iter.Seq[source.Span] {
	return func(yield func(source.Span) bool) {
		start := 0
		for i := range len(text) {
			switch text[i] {
			case '\n':
				start = i + 1
			case '.', '!', '?':
				if start < i && !yield(source.Span{Start: start, End: i + 1}) {
					return
				}
				start = i + 1
			}
		}
	}
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
