package lint

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/inflect"
	"stitchproof/lang/numeral"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var piecesMismatch = &Rule{
	Name:     "pieces-mismatch",
	Family:   "counts",
	Severity: Warning,
	Summary:  "As many pieces are put together as are made, and a list of them all comes to what it says.",
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
// them and their number, and where each of something else takes as many the words for that.
type madeUpFrom struct {
	at       source.Span // in the section
	of, with string      // in lower case; with is "" where the number is that of all
	number   int
	some     bool // there may be more of them
}

// countExpr is a number of pieces, calledExpr what they are called.
var (
	countExpr  = `(\d{1,3}|` + numeral.Expression(2, numeral.Most) + `)`
	calledExpr = `((?:[a-z]+ )?[a-z]+)`
)

var (
	// those takes `the 4 leaves`, `all 30 squares`, `all six of the petals`.
	those = phrase.MustCompile(`\b(?:the|all|all the|your) ` + countExpr + `(?: of the)?(?: (?:made|finished))? ` + calledExpr)
	// ofSome follows those of which there are others: `the 4 squares of each strip`.
	ofSome = phrase.MustCompile(`^ (?:of|in|for|per|on) `)
	// someOf takes `sew 6 leaves`, beside which there may be others.
	someOf = phrase.MustCompile(`\b(?:sew|attach|pin|arrange|place|position|glue|stitch|space|distribute)(?: on)? ` + countExpr + ` ` + calledExpr)
	// bothOf takes `both wings`.
	bothOf = phrase.MustCompile(`\bboth (?:of )?(?:the )?` + calledExpr)
	// laidOut takes `the squares out in 5 rows of 6`.
	laidOut = phrase.MustCompile(`\b(?:the|all|all the|your) ((?:[a-z]+ )?[a-z]+?) (?:out |together )?in ` + countExpr + ` rows of ` + countExpr + `\b`)
	// atTips takes `a leaf to the tips of branches A, B and D`.
	atTips = phrase.MustCompile(`\b(?:an?|one) ((?:[a-z]+ )?[a-z]+?) (?:to|at|on|onto) (?:each of )?(?:the )?(?:tips?|ends?) of branches ((?:[a-z]|\d{1,2})(?:(?:, and|,| and) (?:[a-z]|\d{1,2}))+)(?: (?:at|on) (each|either|both) (?:ends?|sides?)|[^a-z\d]|$)`)
	// onEach takes `a cup on each nut`, `3 leaves to every twig`.
	onEach = phrase.MustCompile(`\b(?:an?|one|` + countExpr + `) ((?:[a-z]+ )?[a-z]+?) (?:to|on|onto|in|into|over|at) (?:the (?:[a-z]+ ){1,3}of )?(?:each|every)(?: of the)?(?: ` + countExpr + `)? ` + calledExpr)
	// eachOfSome takes `a berry to the tip of each of the 4 twigs`, and eachSide `a wing to each side`.
	eachOfSome = phrase.MustCompile(`\b(?:an?|one|` + countExpr + `) ((?:[a-z]+ )?[a-z]+?) (?:to|on|onto|at|in|into|over|beside) (?:the (?:[a-z]+ ){1,3}of )?each of the ` + countExpr + ` `)
	eachSide   = phrase.MustCompile(`\b(?:an?|one) ((?:[a-z]+ )?[a-z]+?) (?:to|on|at) (?:each|either) side\b`)
	// sharedOut takes the first of `two berries to the tip of the stem, one to each of the 2 twigs
	// and one to the foot`, and andOne each that follows.
	sharedOut = phrase.MustCompile(`\b(?:sew|hang|attach|pin|place|fix|stitch|set)(?: on)? (an?|one|` + countExpr + `) ((?:[a-z]+ )?[a-z]+?) (?:to|on|at|from|in|beside|near) `)
	andOne    = phrase.MustCompile(`(?:,| and|, and) (one|` + countExpr + `)(?: ([a-z]+))?(?: side by side)? (?:to|on|at|from|in|beside|near) (?:each of the ` + countExpr + ` )?`)
	// comesTo takes what such a list says that it comes to.
	comesTo = phrase.MustCompile(`(?:,| and|, and) ` + countExpr + ` in (?:all|total)\b`)
	// laidBy takes `the squares out 4 across and 6 down`.
	laidBy = phrase.MustCompile(`\b(?:the|all|all the|your) ([a-z]+) (?:out )?` + countExpr + ` across (?:and|by) ` + countExpr + ` (?:down|deep|high)\b`)
	// inMiddle takes `one hexagon in the middle and the other six around it`.
	inMiddle = phrase.MustCompile(`\bone ([a-z]+) in the (?:middle|cent(?:er|re)) and (?:the )?(?:other )?` + countExpr + ` (?:others )?around\b`)
	// tip is one branch of such a list.
	tip = phrase.MustCompile(`[a-z\d]+`)
)

// putTogetherIn are those places of a section.
var putTogetherIn = &fact[[]madeUpFrom]{func(p *Pass, s section) []madeUpFrom {
	var out []madeUpFrom
	for _, a := range assembliesIn.of(p, s) {
		for _, m := range piecesIn(a.text) {
			m.at = m.at.Shift(a.at.Start)
			out = append(out, m)
		}
	}
	return out
}}

// piecesIn finds them in a sentence.
func piecesIn(sentence string) []madeUpFrom {
	var out []madeUpFrom
	group := func(m []int, i int) string { return groupOf(sentence, m, i) }
	add := func(m []int, f madeUpFrom) {
		f.at, f.of, f.with = source.Span{Start: m[0], End: m[1]}, strings.Clone(f.of), strings.Clone(f.with)
		out = append(out, f)
	}
	for _, m := range onEach.FindAllStringSubmatchIndex(sentence, -1) {
		add(m, madeUpFrom{of: group(m, 2), with: group(m, 4), number: max(1, inWords(group(m, 1)))})
	}
	each := func(m []int) bool { // the number is that of each
		return slices.ContainsFunc(out, func(o madeUpFrom) bool { return o.with != "" && o.at.Overlaps(source.Span{Start: m[0], End: m[1]}) })
	}
	for _, m := range those.FindAllStringSubmatchIndex(sentence, -1) {
		add(m, madeUpFrom{of: group(m, 2), number: inWords(group(m, 1)), some: ofSome.MatchString(sentence[m[1]:])})
	}
	for _, m := range eachOfSome.FindAllStringSubmatchIndex(sentence, -1) {
		add(m, madeUpFrom{of: group(m, 2), number: max(1, inWords(group(m, 1))) * inWords(group(m, 3)), some: true})
	}
	for _, m := range eachSide.FindAllStringSubmatchIndex(sentence, -1) {
		add(m, madeUpFrom{of: group(m, 1), number: 2, some: true})
	}
	for _, m := range laidBy.FindAllStringSubmatchIndex(sentence, -1) {
		add(m, madeUpFrom{of: group(m, 1), number: inWords(group(m, 2)) * inWords(group(m, 3))})
	}
	for _, m := range inMiddle.FindAllStringSubmatchIndex(sentence, -1) {
		add(m, madeUpFrom{of: group(m, 1), number: 1 + inWords(group(m, 2)), some: true})
	}
	if m := sharedOut.FindStringSubmatchIndex(sentence); m != nil {
		first := max(1, inWords(group(m, 2)))
		n, of := first, group(m, 3)
		for _, more := range andOne.FindAllStringSubmatch(sentence[m[1]:], -1) {
			if strings.HasSuffix(more[0], " in ") && comesTo.MatchString(sentence[m[1]:]) {
				n = inWords(more[2]) // `…, 7 in all`
				break
			}
			if noun := more[3]; noun == "" || namesPiece([]string{noun}, of) || namesPiece([]string{of}, noun) {
				n += max(1, inWords(more[2])) * max(1, inWords(more[4]))
			}
		}
		if n > first {
			add(m, madeUpFrom{of: of, number: n, some: true})
		}
	}
	for _, m := range someOf.FindAllStringSubmatchIndex(sentence, -1) {
		if !each(m) {
			add(m, madeUpFrom{of: group(m, 2), number: inWords(group(m, 1)), some: true})
		}
	}
	for _, m := range bothOf.FindAllStringSubmatchIndex(sentence, -1) {
		add(m, madeUpFrom{of: group(m, 1), number: 2, some: true})
	}
	for _, m := range laidOut.FindAllStringSubmatchIndex(sentence, -1) {
		add(m, madeUpFrom{of: group(m, 1), number: inWords(group(m, 2)) * inWords(group(m, 3))})
	}
	for _, m := range atTips.FindAllStringSubmatchIndex(sentence, -1) {
		names := slices.DeleteFunc(tip.FindAllString(group(m, 2), -1), func(w string) bool { return w == "and" })
		if group(m, 3) != "" {
			names = append(names, names...)
		}
		add(m, madeUpFrom{of: group(m, 1), number: len(names)})
	}
	return out
}

// groupOf is the ith group of a match in a text, "" where it took no part in that.
func groupOf(text string, match []int, i int) string {
	if match[2*i] < 0 {
		return ""
	}
	return text[match[2*i]:match[2*i+1]]
}

// inWords reads a number in figures or in words, 0 for none.
func inWords(number string) int {
	n, _ := numeral.Read(number)
	return n
}

// restIn tells whether a section has a sentence on putting together that speaks of more
// pieces than it names.
var (
	restIn = &fact[bool]{func(p *Pass, s section) bool {
		return slices.ContainsFunc(assembliesIn.of(p, s), func(a assembly) bool { return restWords.MatchString(a.text) })
	}}
	restWords = phrase.MustCompile(`\b(?:remaining|other|last|rest|leftover|spare|extra|another)\b`)
)

// Fewer than are made may be all that one sentence speaks of.
func checkPiecesMismatch(p *Pass) {
	p.holdInventories()
	times, named := map[string]int{}, map[string]makes{}
	made := func(words string) makes {
		if _, known := named[words]; !known {
			named[words] = p.makes(words)
		}
		return named[words]
	}
	for _, all := range putTogetherIn.in(p) {
		for _, m := range all {
			times[made(m.of).called]++
		}
	}
	for s, all := range putTogetherIn.in(p) {
		for _, m := range all {
			of := made(m.of)
			wanted, each := m.wanted(of, made)
			if wanted == 0 || wanted == of.n || wanted < of.n && (m.some || of.some || times[of.called] > 1 || anywhere(p, restIn) || of.n%wanted == 0 && putTwice(s)) {
				continue
			}
			p.Report(Finding{
				Span:    s.abs(m.at),
				Message: fmt.Sprintf("takes %d of %s%s, and %d are made", wanted, quoted(of.called), each, of.n),
				Related: of.madeHere(),
			})
		}
	}
}

// putTwice tells whether a section is gone through more than once: `Putting a wing together (do it twice)`.
func putTwice(s section) bool { return s.tells(againWords, againWords.MatchString) }

var againWords = phrase.MustCompile(`\b(?:do|work|make|repeat|go through) (?:it|this|these|all this|the same|all of it) (?:twice|again|for|\d|two|three|four)|\b(?:repeat|again|same) for (?:the|each|every) (?:other|second|next|further)\b`)

// wanted is how many of what is made are put together, 0 where that is not said, and what
// for. made gives what is made of what some words name.
func (m madeUpFrom) wanted(of makes, made func(words string) makes) (n int, what string) {
	switch {
	case of.n == 0:
		return 0, ""
	case m.with == "":
		return m.number, ""
	}
	with := made(m.with)
	if with.n == 0 || with.some || with.called == of.called {
		return 0, ""
	}
	each := "one"
	if m.number > 1 {
		each = strconv.Itoa(m.number)
	}
	return m.number * with.n, ", " + each + " for each of " + quoted(with.called)
}

// makes is what is made of what some words name.
type makes struct {
	called string
	n      int // 0 where it is not known
	pieces []*syntax.Piece
	some   bool // they are of several kinds, and the words may mean one of them
}

// madeHere says of each piece how many of it are made.
func (m makes) madeHere() []Related {
	var out []Related
	for _, piece := range m.pieces {
		out = append(out, Related{piece.Span, strconv.Itoa(piece.Make.At(0)) + " are made here"})
	}
	return out
}

// makes is the only piece that some words name and of which several are made; where they
// name none, it is all of a kind, as front legs and back legs.
func (p *Pass) makes(words string) makes {
	first, _, _ := strings.Cut(words, " ")
	things := []string{words, first, inflect.Plural(words), inflect.Plural(first)}
	var named, kinds []*syntax.Piece
	for _, piece := range p.File.Pieces {
		switch {
		case piece.Name == "":
		case namesPiece(things, piece.Name):
			named = append(named, piece)
		case sameKind(things, piece.Name):
			kinds = append(kinds, piece)
		}
	}
	switch {
	case len(named) == 1 && limbsOf(named[0], first):
		return makes{} // a twig with twigs
	case len(named) == 1 && len(kinds) == 0:
		return makes{called: named[0].Name, n: madeOf(named[0]), pieces: named}
	case len(named) == 0 && len(kinds) > 1:
		out := makes{called: article.ReplaceAllString(first, ""), pieces: kinds, some: true}
		for _, piece := range kinds {
			n := madeOf(piece)
			if n == 0 {
				return makes{}
			}
			out.n += n
		}
		return out
	}
	return makes{} // of two alike nobody knows which is meant
}

// limbsOf tells whether a piece calls branches of its own by a word: `Twig 1: ch 6, …`.
func limbsOf(piece *syntax.Piece, word string) bool {
	for _, row := range piece.Rows {
		names := []string{row.Label.Limb}
		for _, b := range clausesOf[*syntax.Branch](row) {
			names = append(names, b.Name)
		}
		for _, name := range names {
			if slices.ContainsFunc(strings.Fields(name), func(part string) bool { return part == word || inflect.Plural(part) == word }) {
				return true
			}
		}
	}
	return false
}

// madeOf is how many of a piece are made, 0 where it is not said or depends on the size.
func madeOf(piece *syntax.Piece) int {
	if !piece.Make.Written() || piece.Make.PerSize() {
		return 0
	}
	return piece.Make.At(0)
}

// sameKind tells whether a piece is one of several kinds of a thing: a small leaf, of leaves.
func sameKind(things []string, name string) bool {
	kind := strings.Fields(plainText(name))
	return len(kind) > 1 && namesPiece(things, kind[len(kind)-1])
}
