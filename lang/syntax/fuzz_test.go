package syntax_test

import (
	"strings"
	"testing"

	"stitchproof/lang/syntax"
)

// FuzzRead reads any text: it does not panic, and nothing is lost.
func FuzzRead(f *testing.F) {
	for _, text := range examples(f, "patterns", "counted") {
		f.Add(text[:min(len(text), mostFuzzed)])
	}
	for _, d := range append(documents, typography...) {
		f.Add(d.text)
	}
	for _, w := range wordings(f) {
		f.Add(w.document())
	}
	f.Add("Row 1: Sc in next st (center).\n") // a bracket that says a word again stays with its clause
	f.Add("sc next (center)")
	f.Fuzz(func(t *testing.T, text string) {
		if len(text) > mostFuzzed {
			return
		}
		if err := losses(text); err != "" && !passedOver(text) {
			t.Error(err)
		}
	})
}

// mostFuzzed bounds the texts that are read while fuzzing.
const mostFuzzed = 4_000

// passedOver tells whether a text may hold what no token does: a mark of
// Markdown or HTML, or a note to the checker.
func passedOver(text string) bool {
	return strings.ContainsAny(text, "<&") || strings.Contains(text, "](") || strings.Contains(text, "//")
}

// FuzzLex cuts any text into tokens at any place of a file: each stands in
// its place, and what stands between two is blank.
func FuzzLex(f *testing.F) {
	for _, w := range wordings(f) {
		f.Add(w.wording, uint8(0))
	}
	f.Add("81 (91, 101, 111) – 2/3/4 [-, 5:6]", uint8(4))
	f.Add("d.c. s. c. 3ch5 dc3tog ½ 2½ 3rd †† *** \xff", uint8(0))
	f.Fuzz(func(t *testing.T, text string, sizes uint8) {
		if len(text) > mostFuzzed {
			return
		}
		vocab := syntax.Standard().Defining([]syntax.OwnWord{{Text: "wren's foot"}}, make([]string, sizes))
		end := 0
		for _, tok := range syntax.Lex(text, vocab) {
			at := tok.Span
			if at.Start < end || at.Start >= at.End || at.End > len(text) {
				t.Fatalf("token %v of %q stands at %v, after %d", tok, text, at, end)
			}
			if lost := lostIn(text, end, at.Start); lost != "" && !passedOver(text) {
				t.Fatalf("%q of %q belongs to no token", lost, text)
			}
			if tok.Kind == syntax.Number != tok.Values.Written() && tok.Kind != syntax.Ordinal && tok.Kind != syntax.Word {
				t.Fatalf("token %v of %q has values %v", tok, text, tok.Values)
			}
			end = at.End
		}
		if lost := lostIn(text, end, len(text)); lost != "" && !passedOver(text) {
			t.Fatalf("%q at the end of %q belongs to no token", lost, text)
		}
	})
}
