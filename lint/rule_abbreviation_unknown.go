package lint

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var abbreviationUnknown = &Rule{
	Name:     "abbreviation-unknown",
	Family:   "terms",
	Severity: Warning,
	Summary:  "Every word that stands where a stitch would is a stitch, and not one that a slip of the fingers made of it.",
	Why: "Two letters that changed places are easily read over by the one who wrote them. A maker who does not know the " +
		"word looks for it in the list of abbreviations, and it is not there.",
	Bad: `Pattern: Dormouse paw
Terms: US

Piece: Paw
Rnd 1: 6 sc in magic ring, place marker in first st. (6 sc)
Rnd 2: 6 cs. (6 sc)
Fasten off.
`,
	Good: `Pattern: Dormouse paw
Terms: US

Piece: Paw
Rnd 1: 6 sc in magic ring, place marker in first st. (6 sc)
Rnd 2: 6 sc. (6 sc)
Fasten off.
`,
	Check: checkAbbreviationUnknown,
}

func checkAbbreviationUnknown(p *Pass) {
	used := p.stitchWords()
	for row := range p.Fabric.Rows() {
		for _, typo := range typos(row, used) {
			at := row.Tree.Abs(typo.span)
			p.Report(Finding{
				Span:    at,
				Message: quoted(typo.word) + " is no stitch that is known here; " + quoted(typo.meant) + " may be meant",
				Fix:     &Fix{Title: "write " + quoted(typo.meant), Edits: []source.Edit{{Span: at, New: typo.meant}}},
			})
		}
	}
}

// typo is a word that a stitch's became by a slip of the fingers.
type typo struct {
	span        source.Span
	word, meant string
}

// typos finds them in the words of a row that are not understood, where a stitch
// would stand. The stitches are those that the pattern uses elsewhere.
func typos(row *fabric.Row, used []string) (out []typo) {
	tokens := row.Tree.Tokens
	for _, unread := range row.Tree.Unread() {
		for i, t := range tokens {
			if t.Kind != syntax.Name || !unread.Covers(t.Span) || !stitchStands(tokens, i) {
				continue
			}
			meant := slices.IndexFunc(used, func(word string) bool { return slipped(t.Canon, word) })
			if meant >= 0 {
				out = append(out, typo{t.Span, row.Tree.Source(t.Span), used[meant]})
			}
		}
	}
	return out
}

// stitchStands tells whether a stitch would stand at a token: a number is before
// it, or a place or a number after it.
func stitchStands(tokens []syntax.Token, i int) bool {
	if i > 0 && tokens[i-1].Kind == syntax.Number {
		return true
	}
	if i+1 >= len(tokens) {
		return false
	}
	after := tokens[i+1]
	return after.Kind == syntax.Number || after.Kind == syntax.Word && (after.Canon == "in" || after.Canon == "around" || after.Canon == "across")
}

// slipped tells whether two neighbouring letters changed places.
func slipped(word, meant string) bool {
	if len(word) != len(meant) || word == meant {
		return false
	}
	for i := range len(word) - 1 {
		if word[:i] == meant[:i] && word[i] == meant[i+1] && word[i+1] == meant[i] && word[i+2:] == meant[i+2:] {
			return true
		}
	}
	return false
}

// stitchWords are the words for stitches and chains that the pattern uses, in
// the order first met.
func (p *Pass) stitchWords() (out []string) {
	for row := range p.Fabric.Rows() {
		for _, t := range row.Tree.Tokens {
			word := t.Canon
			if t.Kind != syntax.Stitch && (t.Kind != syntax.Word || word != "ch") || slices.Contains(out, word) {
				continue
			}
			out = append(out, word)
		}
	}
	return out
}
