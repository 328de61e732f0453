package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/numeral"
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
	settled := anywhere(p, tailLeftIn)
	for _, s := range p.sections.list {
		if s.piece != nil && s.piece.Tree.Name != "" && namesPiece(sewn, s.piece.Tree.Name) && !tailLeftIn.of(p, s) {
			settled = true
			p.noTail(s.piece, quoted(s.piece.Tree.Name)+" is sewn on later, and no long tail is left for it")
		}
	}
	for _, s := range p.sections.list {
		if s.piece != nil && !settled && tailUsedIn.of(p, s) {
			p.noTail(s.piece, "a tail is sewn with later, and none is left")
		}
	}
	p.noTailToBegin()
}

// noTailToBegin reports a pattern that sews with a tail from its beginning and leaves none
// there: any tail that it leaves is one of an end.
func (p *Pass) noTailToBegin() {
	if !anywhere(p, firstTailUsed) || anywhere(p, firstTailLeft) {
		return
	}
	for row := range p.Fabric.Rows() {
		p.Report(Finding{Span: headSpan(row.Tree), Message: "a tail from the beginning is sewn with later, and no long one is left here"})
		return
	}
}

// firstTailUsed tells whether a section sews with a tail from the beginning, and
// firstTailLeft whether it leaves one where no yarn is cut.
var (
	firstTailUsed = &fact[bool]{func(_ *Pass, s section) bool { return s.sewsWith(firstTail) }}
	firstTailLeft = &fact[bool]{func(_ *Pass, s section) bool {
		return s.anySentence(func(sentence string) bool {
			return tailLeft.MatchString(plainText(sentence)) && !yarnCut.MatchString(sentence)
		})
	}}
	firstTail = phrase.MustCompile(`\b(?:beginning|starting|foundation) tail\b|\btail (?:from|at|of) the (?:beginning|start|foundation)\b`)
	yarnCut   = phrase.MustCompile(`\b(?:fasten|cut|break|bind) `)
)

// noTail reports a piece that is fastened off with no tail to sew with.
func (p *Pass) noTail(piece *fabric.Piece, message string) {
	row, at := fastening(piece)
	if row == nil {
		return
	}
	p.Report(Finding{
		Span:    at,
		Message: message,
		Fix:     &Fix{Title: "leave a long tail", Safe: true, Edits: []source.Edit{{Span: source.At(at.End), New: ", leaving a long tail for sewing"}}},
	})
}

// tailLeftIn tells whether a section leaves yarn to sew with, and tailUsedIn whether it
// sews with such a tail.
var (
	tailLeftIn = &fact[bool]{func(_ *Pass, s section) bool { return tailLeft.MatchString(plainText(s.told)) }}
	tailUsedIn = &fact[bool]{func(_ *Pass, s section) bool { return s.sewsWith(tailUsed) }}
	tailUsed   = phrase.MustCompile(`\b(?:with|using) (?:the|its|their|your) (?:yarn )?tails?\b`)
)

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

// sewsWith tells whether a section sews with a tail that it speaks of in the same sentence.
func (s section) sewsWith(tail *phrase.Phrase) bool {
	return tail.MatchString(s.told) && s.anySentence(func(sentence string) bool {
		return tail.MatchString(sentence) && sewingVerb.MatchString(" "+plainText(sentence)+" ")
	})
}

// sewingVerb begins what is sewn. A stitch is a noun as well.
var sewingVerb = phrase.MustCompile(`\b(?:sew|whip ?stitch|attach)(?: on| up)? |(?:^ |then |and |, )stitch (?:on )?`)

var (
	// sewnTo is what stands between what is sewn and where to.
	sewnTo = phrase.MustCompile(` (?:to|onto|on|at|by|along|in|into|round|around|over|between|below|under|behind|above|beside|together|through|evenly|so|as|opposite)(?: |$)`)
	// sewnWith tells with what, or how, and sewnAlone where that is nothing but the tail or no
	// yarn: with any other yarn no tail is needed.
	sewnWith  = phrase.MustCompile(` (?:with|using) `)
	sewnAlone = phrase.MustCompile(`^(?:the |a |its |their |your |an? )?(?:\w+ )?(?:needle|tails?|ends?|stitch(?:es)?|sides?|seam)\b|^(?:right|wrong|rs|ws)\b`)
	// unsewn is fastened in another way, or is yarn.
	unsewn = phrase.MustCompile(`\b(?:glue|no sewing|not sew|attach (?:the |new )?(?:yarn|thread|wool|cotton|colou?r|[a-f]|mc|cc)\b)`)
	// partOf is a part of a piece: the last row of the strip.
	partOf = phrase.MustCompile(`^(?:the )?(?:\w+ )?(?:row|rnd|round|edge|end|top|bottom|side|base|open edge) of (?:the |each |both )?`)
)

// sewnOn lists, in plain text, what is said in a text in lower case to be sewn to
// something: of `sew the stalk to the cup and the cup to the nut`, the stalk and the
// cup. What is sewn with another yarn needs no tail.
func sewnOn(text string) []string {
	var out []string
	for _, at := range sentencesOf(text) {
		sentence := text[at.Start:at.End]
		if !sewingVerb.May(sentence) {
			continue
		}
		plain := " " + plainText(sentence) + " "
		at := sewingVerb.FindStringIndex(plain)
		if at == nil || withAnother(plain) {
			continue
		}
		sewing := sewnWith.ReplaceAllString(plain[at[1]:], ";")
		sewing = strings.NewReplacer(" and ", ",", ";", ",").Replace(sewing)
		for part := range strings.SplitSeq(sewing, ",") {
			part = strings.TrimSpace(part) + " "
			for _, verb := range []string{"sew ", "on ", "whipstitch ", "attach ", "stitch ", "then "} {
				part = strings.TrimPrefix(part, verb)
			}
			if to := sewnTo.FindStringIndex(part); to != nil {
				part = part[:to[0]]
			}
			out = append(out, partOf.ReplaceAllString(part, ""))
		}
	}
	return out
}

// withAnother tells whether a sentence sews with something else than a tail.
func withAnother(sentence string) bool {
	for _, at := range sewnWith.FindAllStringIndex(sentence, -1) {
		if rest := sentence[at[1]:]; !sewnAlone.MatchString(rest) {
			return true
		}
	}
	return unsewn.MatchString(sentence)
}

// namesPiece tells whether one of some things is a piece of a name, one of it
// or several.
func namesPiece(things []string, name string) bool {
	if len(things) == 0 {
		return false
	}
	forms := formsOf(name)
	for _, thing := range things {
		thing = article.ReplaceAllString(strings.TrimSpace(thing), "")
		if slices.Contains(forms, thing) {
			return true
		}
	}
	return false
}

// formsOf are what a piece of a name may be called, by itself or with those beside it.
func formsOf(name string) []string {
	name = plainText(name)
	forms := pluralForms(name)
	if one := whichOne.ReplaceAllString(name, ""); one != name {
		forms = append(forms, pluralForms(one)[1:]...) // `the shoulders` are the first and the second
	}
	return forms
}

var (
	// article stands before what is sewn, with its number.
	article = phrase.MustCompile(`^(?:(?:the|each|both|all|an?|your|other|of|\d+|` + numeral.Expression(2, numeral.Most) + `) )+`)
	// whichOne tells one of several pieces from the others.
	whichOne = phrase.MustCompile(`^(?:first|second|left|right) `)
)

// pluralForms are a name of one piece and of several.
func pluralForms(name string) []string {
	forms := []string{name, name + "s", name + "es", strings.TrimSuffix(name, "f") + "ves", strings.TrimSuffix(name, "fe") + "ves", strings.ReplaceAll(name, "foot", "feet")}
	if stem, ok := strings.CutSuffix(name, "y"); ok {
		forms = append(forms, stem+"ies")
	}
	return forms
}
