package lint

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var stitchMisspelled = &Rule{
	Name:     "stitch-misspelled",
	Family:   "order",
	Severity: Warning,
	Summary:  "A stitch is spelled as elsewhere in the pattern.",
	Why: "Two letters that changed places make a word that no maker can look up. Most see what is meant; a beginner searches the " +
		"list of abbreviations in vain.",
	Bad: `Pattern: Wren's nest
Terms: US

Piece: Nest
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, cs in next 5 ch. (10 sc)
Fasten off.
`,
	Good: `Pattern: Wren's nest
Terms: US

Piece: Nest
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, sc in next 5 ch. (10 sc)
Fasten off.
`,
	Check: checkStitchMisspelled,
}

func checkStitchMisspelled(p *Pass) {
	for row := range p.Fabric.Rows() {
		for _, s := range row.Tree.Unread() {
			if word, meant, ok := p.misspelled(row, s); ok {
				at := row.Tree.Abs(word)
				p.Report(Finding{
					Span:    at,
					Message: quoted(row.Tree.Source(word)) + " is no stitch that is known here; " + quoted(meant) + " is likely meant",
					Fix:     &Fix{Title: "write " + quoted(meant), Edits: []source.Edit{{Span: at, New: meant}}},
				})
			}
		}
	}
}

// misspells tells whether a stitch of the row is misspelled.
func (p *Pass) misspells(row *fabric.Row) bool {
	return slices.ContainsFunc(row.Tree.Unread(), func(s source.Span) bool {
		_, _, ok := p.misspelled(row, s)
		return ok
	})
}

// misspelled finds in words that are not understood a stitch of the pattern with
// one slip of the pen, with which they would be.
func (p *Pass) misspelled(row *fabric.Row, unread source.Span) (word source.Span, meant string, ok bool) {
	for _, t := range row.Tree.Tokens {
		if t.Kind != syntax.Name || !unread.Covers(t.Span) {
			continue
		}
		for _, other := range p.stitchWords() {
			if !slipOf(t.Canon, other) {
				continue
			}
			before, after := row.Tree.Text[unread.Start:t.Span.Start], row.Tree.Text[t.Span.End:unread.End]
			if readsWhole("Row 1: " + before + other + after + "\n") {
				return t.Span, other, true
			}
		}
	}
	return source.Span{}, "", false
}

// stitchWords are the words for stitches that the pattern uses.
func (p *Pass) stitchWords() []string {
	var out []string
	for row := range p.Fabric.Rows() {
		for _, t := range row.Tree.Tokens {
			if t.Kind == syntax.Stitch && !slices.Contains(out, t.Canon) {
				out = append(out, t.Canon)
			}
		}
	}
	return out
}

// slipOf tells whether one word is another in which two neighbouring letters
// changed places or, in a word of three letters or more, one is too many or lost.
func slipOf(word, other string) bool {
	switch len(word) - len(other) {
	case 0:
		for i := 0; i+1 < len(word); i++ {
			if word[i] != other[i] {
				return word[i] == other[i+1] && word[i+1] == other[i] && word[i+2:] == other[i+2:]
			}
		}
	case 1:
		return len(other) > 2 && lost(word, other)
	case -1:
		return len(word) > 2 && lost(other, word)
	}
	return false
}

// lost tells whether a word is a longer one without one of its letters.
func lost(longer, word string) bool {
	for i := range longer {
		if longer[:i]+longer[i+1:] == word {
			return true
		}
	}
	return false
}

// readsWhole tells whether all of a row is understood.
func readsWhole(text string) bool {
	file := syntax.Read(source.New(text))
	for _, piece := range file.Pieces {
		for _, r := range piece.Rows {
			if len(r.Unread()) > 0 {
				return false
			}
		}
	}
	return len(file.Pieces) > 0
}
