package lint

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/numeral"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var piecesMismatch = &Rule{
	Name:     "pieces-mismatch",
	Family:   "counts",
	Severity: Warning,
	Summary:  "As many pieces are put together as are made.",
	Why: "A maker finds out when she sews them on that a leaf is missing, and that the yarn of it is another dye lot by " +
		"now. One too many is only left over, and still makes her look for its place.",
	Bad: `Pattern: Hawthorn twig
Terms: US

Piece: Leaf (make 3)
With A, ch 5.
Row 1: Sc in 2nd ch from hook and in each ch across. (4 sc)
Fasten off, leaving a long tail for sewing.

Piece: Twig
With B, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Fasten off. Sew the 4 leaves to the twig.
`,
	Good: `Pattern: Hawthorn twig
Terms: US

Piece: Leaf (make 4)
With A, ch 5.
Row 1: Sc in 2nd ch from hook and in each ch across. (4 sc)
Fasten off, leaving a long tail for sewing.

Piece: Twig
With B, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Fasten off. Sew the 4 leaves to the twig.
`,
	Check: checkPiecesMismatch,
}

// madeUpFrom is where a section says how many of something are put together: the words for
// them and their number, or the words for what each of them goes with.
type madeUpFrom struct {
	at       source.Span // in the section
	of, with string      // in lower case; with is "" where there is a number
	number   int
}

var (
	// putTogether begins what is done with pieces that are made.
	putTogether = phrase.MustCompile(`\b(?:sew|join|attach|lay|arrange|whip ?stitch|crochet the|stitch|set) `)
	// those takes `the 4 leaves`, `all 30 squares`.
	those = phrase.MustCompile(`\b(?:the|all|all the|your) (` + howMany + `) ((?:[a-z]+ )?[a-z]+)`)
	// laidOut takes `the squares out in 5 rows of 6`.
	laidOut = phrase.MustCompile(`\b(?:the|all|all the|your) ((?:[a-z]+ )?[a-z]+?) (?:out |together )?in (` + howMany + `) rows of (` + howMany + `)\b`)
	// atTips takes `a leaf to the tips of branches A, B and D`.
	atTips = phrase.MustCompile(`\b(?:an?|one) ((?:[a-z]+ )?[a-z]+?) (?:to|at|on|onto) (?:each of )?(?:the )?(?:tips?|ends?) of branches ((?:[a-z]|\d{1,2})(?:(?:, and|,| and) (?:[a-z]|\d{1,2}))+)(?:[^a-z\d]|$)`)
	// onEach takes `a cup on each nut`.
	onEach = phrase.MustCompile(`\b(?:an?|one) ((?:[a-z]+ )?[a-z]+?) (?:to|on|onto|in|into|over|at) (?:each|every) ((?:[a-z]+ )?[a-z]+)`)
	// howMany is a number of things, in figures or in words.
	howMany = `\d{1,3}|` + numeral.Expression(2, numeral.Most)
	// tip is one branch of such a list.
	tip = phrase.MustCompile(`[a-z\d]+`)
)

// putTogetherIn are those places of a section.
var putTogetherIn = &fact[[]madeUpFrom]{func(_ *Pass, s section) []madeUpFrom {
	lower := strings.ToLower(s.text)
	if len(lower) != len(s.text) || !putTogether.MatchString(lower) {
		return nil
	}
	var out []madeUpFrom
	at := 0
	for sentence := range strings.SplitAfterSeq(lower, ".") {
		if putTogether.MatchString(sentence) {
			for _, m := range piecesIn(sentence) {
				m.at = m.at.Shift(at)
				out = append(out, m)
			}
		}
		at += len(sentence)
	}
	return out
}}

// piecesIn finds them in a sentence.
func piecesIn(sentence string) []madeUpFrom {
	var out []madeUpFrom
	group := func(m []int, i int) string { return sentence[m[2*i]:m[2*i+1]] }
	number := func(m []int, i int) int {
		n, _ := numeral.Read(group(m, i))
		return n
	}
	add := func(m []int, of, with string, number int) {
		out = append(out, madeUpFrom{source.Span{Start: m[0], End: m[1]}, strings.Clone(of), strings.Clone(with), number})
	}
	for _, m := range those.FindAllStringSubmatchIndex(sentence, -1) {
		add(m, group(m, 2), "", number(m, 1))
	}
	for _, m := range laidOut.FindAllStringSubmatchIndex(sentence, -1) {
		add(m, group(m, 1), "", number(m, 2)*number(m, 3))
	}
	for _, m := range atTips.FindAllStringSubmatchIndex(sentence, -1) {
		names := slices.DeleteFunc(tip.FindAllString(group(m, 2), -1), func(w string) bool { return w == "and" })
		add(m, group(m, 1), "", len(names))
	}
	for _, m := range onEach.FindAllStringSubmatchIndex(sentence, -1) {
		add(m, group(m, 1), group(m, 2), 0)
	}
	return out
}

// restIn tells whether a section has a sentence on putting together that speaks of more
// pieces than it names.
var (
	restIn = &fact[bool]{func(_ *Pass, s section) bool {
		return s.anySentence(func(sentence string) bool {
			return putTogether.MatchString(sentence) && restWords.MatchString(sentence)
		})
	}}
	restWords = phrase.MustCompile(`\b(?:remaining|other|last|rest|leftover|spare|extra|another)\b`)
)

// Fewer than are made may be all that one sentence speaks of.
func checkPiecesMismatch(p *Pass) {
	times := map[*syntax.Piece]int{}
	for _, all := range putTogetherIn.in(p) {
		for _, m := range all {
			times[p.madePiece(m.of)]++
		}
	}
	for s, all := range putTogetherIn.in(p) {
		for _, m := range all {
			piece := p.madePiece(m.of)
			wanted, of := p.wanted(m, piece)
			if wanted == 0 {
				continue
			}
			made := piece.Make.At(0)
			if wanted == made || wanted < made && m.with == "" && (times[piece] > 1 || anywhere(p, restIn)) {
				continue
			}
			p.Report(Finding{
				Span:    s.abs(m.at),
				Message: fmt.Sprintf("takes %d of %s%s, and %d are made", wanted, quoted(piece.Name), of, made),
				Related: []Related{{piece.Span, strconv.Itoa(made) + " are made here"}},
			})
		}
	}
}

// wanted is how many of a piece are put together, 0 where that is not said, and what for.
func (p *Pass) wanted(m madeUpFrom, piece *syntax.Piece) (n int, what string) {
	switch with := p.madePiece(m.with); {
	case piece == nil:
		return 0, ""
	case m.with == "":
		return m.number, ""
	case with == nil || with == piece:
		return 0, ""
	default:
		return with.Make.At(0), ", one for each of " + quoted(with.Name)
	}
}

// madePiece is the only piece that some words name and of which several are made, nil for
// none: of two alike nobody knows which is meant.
func (p *Pass) madePiece(words string) *syntax.Piece {
	var found *syntax.Piece
	first, _, _ := strings.Cut(words, " ")
	things := []string{words, first}
	for _, piece := range p.File.Pieces {
		named := namesPiece(things, piece.Name)
		if piece.Name == "" || !named && !sameKind(things, piece.Name) {
			continue
		}
		if found != nil || !named || !piece.Make.Written() || piece.Make.PerSize() {
			return nil
		}
		found = piece
	}
	return found
}

// sameKind tells whether a piece is one of several kinds of a thing: a small leaf, of leaves.
func sameKind(things []string, name string) bool {
	kind := strings.Fields(plainText(name))
	return len(kind) > 1 && namesPiece(things, kind[len(kind)-1])
}
