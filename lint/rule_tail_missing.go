package lint

import (
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var tailMissing = &Rule{
	Name:     "tail-missing",
	Family:   "order",
	Severity: Info,
	Summary:  "A piece that is sewn to another is fastened off with a long tail.",
	Why:      "Once the yarn is cut short the maker has to join another to sew with, and the join shows.",
	Bad: `Pattern: Acorn
Terms: US

Piece: Stalk
With A, ch 8.
Row 1: Sl st in 2nd ch from hook and in each ch across. (7 sts)
Fasten off.

Piece: Cup
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Fasten off. Sew the stalk to the cup.
`,
	Good: `Pattern: Acorn
Terms: US

Piece: Stalk
With A, ch 8.
Row 1: Sl st in 2nd ch from hook and in each ch across. (7 sts)
Fasten off, leaving a long tail for sewing.

Piece: Cup
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Fasten off. Sew the stalk to the cup.
`,
	Check: checkTailMissing,
}

// sewnIn is what a section says is sewn to something.
var sewnIn = &fact[[]string]{func(_ *Pass, s section) []string { return sewnOn(s.told) }}

func checkTailMissing(p *Pass) {
	var sewn []string
	for _, things := range sewnIn.in(p) {
		sewn = append(sewn, things...)
	}
	if len(sewn) == 0 {
		return
	}
	for _, s := range p.sections {
		piece := s.piece
		if piece == nil || piece.Tree.Name == "" || !namesPiece(sewn, piece.Tree.Name) || s.tells(tailLeft, leavesTail) {
			continue
		}
		row, at := fastening(piece)
		if row == nil {
			continue
		}
		end := source.At(at.End)
		p.Report(Finding{
			Span:    at,
			Message: quoted(piece.Tree.Name) + " is sewn on later, and no long tail is left for it",
			Fix:     &Fix{Title: "leave a long tail", Safe: true, Edits: []source.Edit{{Span: end, New: ", leaving a long tail for sewing"}}},
		})
	}
}

func leavesTail(text string) bool { return tailLeft.MatchString(plainText(text)) }

// tailLeft is how a pattern says that yarn is left to sew with.
var tailLeft = phrase.MustCompile(`\bleav[^.]*\b(?:tail|end)\b|\blong (?:tail|end)\b|\btail for\b`)

// fastening is the last line that fastens a piece off, with the place of
// those words in the file.
func fastening(piece *fabric.Piece) (row *fabric.Row, at source.Span) {
	for _, r := range piece.Rows {
		for _, c := range r.Tree.Clauses {
			if _, ok := c.Node.(*syntax.Finish); ok {
				row, at = r, r.Tree.Abs(c.Span)
			}
		}
	}
	return row, at
}

// sewnOn lists, in plain text, what is said in a text in lower case to be sewn to
// something: of `sew the stalk to the cup and the cup to the nut`, the stalk and the
// cup. What is sewn with another yarn needs no tail.
func sewnOn(text string) []string {
	var out []string
	for {
		at := strings.Index(text, "sew")
		if at < 0 {
			return out
		}
		sentence, rest, _ := strings.Cut(text[at:], ".")
		sentence = text[strings.LastIndexByte(text[:at], '.')+1:at] + sentence
		text = rest
		_, sewing, found := strings.Cut(" "+plainText(sentence)+" ", " sew ")
		if !found || strings.Contains(sewing, " with ") {
			continue
		}
		sewing = strings.NewReplacer(" and ", ",", ";", ",").Replace(sewing)
		for part := range strings.SplitSeq(sewing, ",") {
			for _, toward := range []string{" to ", " onto ", " on ", " at ", " by ", " along ", " in ", " below ", " under ", " behind ", " above ", " beside ", " together"} {
				part, _, _ = strings.Cut(part, toward)
			}
			out = append(out, part)
		}
	}
}

// namesPiece tells whether one of some things is a piece of a name, one of it
// or several.
func namesPiece(things []string, name string) bool {
	name = plainText(name)
	forms := []string{name, name + "s", name + "es", strings.TrimSuffix(name, "f") + "ves", strings.ReplaceAll(name, "foot", "feet")}
	for _, thing := range things {
		thing = strings.TrimSpace(thing)
		for _, article := range []string{"the ", "each ", "both ", "all ", "a "} {
			thing = strings.TrimPrefix(thing, article)
		}
		for _, form := range forms {
			if thing == form {
				return true
			}
		}
	}
	return false
}
