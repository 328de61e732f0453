package syntax

import (
	"slices"
	"strings"

	"stitchproof/lang/stitch"
)

// Old books tell a maker what to do in sentences that no grammar holds, and
// remark on it in the next. What such a sentence is shows in its words: a remark,
// or work of which the number is not said. Either is read; the second leaves its row
// uncounted.

// loose reads a clause of any shape by a word in it that says what it is: a
// comment, or work as elsewhere in the pattern.
func loose(tokens []Token) Node {
	only := false // for one of the sizes
	if toEachSide(tokens) || tellsLength(tokens) || withStep(tokens) || asYouGo(tokens) {
		return &Remark{} // one to the left and one to the right
	}
	for i, t := range tokens {
		switch {
		case t.Kind == Enclosed || t.Kind == Comma:
			return nil
		case t.Kind == Name && t.Canon == "if" && !holds(tokens, Stitch):
			return &Remark{} // advice: `if it cups, add a few`
		case t.Kind == Name && t.Canon == "yet" && i > 0 && !holds(tokens, Stitch):
			return &Remark{} // what comes later: `do not come back just yet`
		case t.Kind == Name && t.Canon == "follows" && i > 0 && tokens[i-1].Canon == "as":
			return &Likewise{} // how it goes is told next
		case t.Kind != Word:
		case t.Canon == "comment":
			return &Remark{}
		case t.Canon == "for":
			only = true
		case t.Canon == "likewise", t.Canon == "correspond", t.Canon == "pattern", t.Canon == "size" && only:
			return &Likewise{}
		case t.Canon == "as" && i > 0 && i+1 < len(tokens):
			// same as, as on the other side, like 1st one
			if next := tokens[i+1]; tokens[i-1].Canon == "same" || next.Kind == Ordinal || next.Canon == "on" || next.Canon == "for" || next.Canon == "from" {
				return &Likewise{}
			}
		}
	}
	return nil
}

// seams tells stitches that close a seam and are none of the row's: `sl st the 10 sts together`, `sl st the last
// row to the starting chain`.
func seams(tokens []Token) bool {
	if tokens[0].Kind != Stitch {
		return false
	}
	edge, to := false, false
	for i, t := range tokens[1:] {
		switch {
		case t.Kind == Name && t.Canon == "together":
			return edge || tokens[0].Stitch.Is(stitch.Slip) && i > 1
		case t.Kind == Word && (t.Canon == "row" || t.Canon == "edge" || t.Canon == "end" || t.Canon == "tch" || t.Canon == "foundation"):
			if to && edge {
				return true
			}
			edge = edge || !to
		case t.Kind == Word && t.Canon == "to":
			to = true
		case t.Kind == Word && t.Canon != "" && t.Canon != "st" && t.Canon != "and" && t.Canon != "last" && t.Canon != "first" && t.Canon != "both" && t.Canon != "ch":
			return false
		}
	}
	return false
}

// putsOff tells words that say of something that it is done later: `leave the other 4 ch for a
// moment`, `5 ch are left for now`.
func putsOff(tokens []Token) bool {
	i := len(tokens) - 1
	for i > 0 && (tokens[i].Kind == Word && tokens[i].Canon == "" || tokens[i].Kind == Name && (tokens[i].Canon == "moment" || tokens[i].Canon == "later")) {
		i--
	}
	return i > 0 && i < len(tokens)-1 && tokens[i].Kind == Word && tokens[i].Canon == "for" && !holds(tokens, Stitch)
}

// tellsLength tells words that say what a branch has become: `which makes B 13 ch long`, `…, Branch C has 9 sts`.
func tellsLength(tokens []Token) bool {
	n := len(tokens) - 1
	if n == 4 && isBranch(tokens[0]) && tokens[2].Canon == "have" && tokens[4].Canon == "st" {
		return true
	}
	return n > 2 && tokens[n].Kind == Name && tokens[n].Canon == "long" && tokens[n-1].Canon == "ch" && tokens[n-2].Kind == Number && !holds(tokens, Stitch)
}

// withStep tells words that take the stitches of an earlier step into a sum: `with the 4 ss of step 8`.
func withStep(tokens []Token) bool {
	n := len(tokens) - 1
	return n > 3 && tokens[0].Canon == "with" && tokens[n].Kind == Number && tokens[n-1].Canon == "step" && tokens[n-2].Canon == "of"
}

// asYouGo tells how the work comes to look on the way: `thickening as you go`.
func asYouGo(tokens []Token) bool {
	n := len(tokens) - 1
	return n > 2 && tokens[n].Canon == "go" && tokens[n-1].Canon == "" && tokens[n-2].Canon == "as" && !holds(tokens, Stitch) && !holds(tokens, Number)
}

// toEachSide tells words that lay two things out, one to each side.
func toEachSide(tokens []Token) bool {
	sides := 0
	for _, t := range tokens {
		switch {
		case t.Canon == "remaining", t.Canon == "right", t.Canon == "side" && t.Kind == Word:
			sides++
		case t.Kind == Number && t.Values.At(0) == 1, t.Kind == Word && sideWords[t.Canon]:
		default:
			return false
		}
	}
	return sides > 0 && len(tokens) > 2 && tokens[0].Kind == Number
}

// sideWords stand between the sides that two things go to.
var sideWords = map[string]bool{"": true, "to": true, "on": true, "in": true, "and": true, "each": true, "other": true}

// gist reads words that are no clause, nor several: a sentence that tells how
// something is, or work that begins with a known word and goes on beyond what any
// grammar holds. It gives nil where they do not say what they are.
func (l *lister) gist(tokens []Token, sep Separator) Node {
	first := firstWord(tokens)
	if n := len(l.out); n > 0 && onlyYarns(tokens) && isLikewise(l.out[n-1].Node) {
		return &Likewise{} // 2 rows of A, B, C
	}
	if first.Kind == Name && first.Canon == "stop" && !holds(tokens, Stitch) && !holds(tokens, Number) {
		return &Leave{Place: Place{Pick: PickRemaining}} // stop at the quill
	}
	if nthSide(tokens) > 0 || pointsAgain(tokens) || saysWhere(tokens) {
		return &Remark{} // first side; the one that holds the first dc; opposite the first twig
	}
	if sep == SepStop && titled(tokens) {
		return &Remark{} // 2nd Petal.
	}
	if apart(tokens) && !l.stitching() {
		return &Remark{}
	}
	if n := len(l.out); n > 0 && isChain(l.out[n-1].Node) && (ofStem(tokens) || sep == SepStop && onlyNames(tokens)) {
		return &Remark{} // foot of stem
	}
	if len(l.out) > 0 && len(tokens) > 2 && tokens[0].Kind == Word && tokens[0].Canon == "back" && tokens[1].Canon == "to" && tokens[len(tokens)-1].Kind == Name && !holds(tokens, Stitch) {
		return &Remark{} // where the work arrives: `…, back to the cane`
	}
	for _, t := range tokens {
		switch {
		case t.Kind == Word && t.Canon == "alternating":
			return &Likewise{}
		case t.Kind != Name:
		case t.Canon == "instead", t.Canon == "few", t.Canon == "several":
			return &Likewise{}
		case tells[t.Canon], speaks[t.Canon]:
			return told(first, speaks[t.Canon])
		}
	}
	switch {
	case first.Kind == Stitch && first.Stitch.Shapes(), first.Kind == Name && shapers[first.Canon], excepts(first):
		return &Likewise{} // decreasing at both ends of every other row
	case first.Kind == Word:
		return byFirstWord(first.Canon, tokens)
	}
	return nil
}

// speaks are words that a step has no use for: who does it, and what is done to the work by hand.
var speaks = func() map[string]bool {
	out := map[string]bool{}
	for word := range strings.FieldsSeq("you you're you've you'll you'd we we'll we're we've they they're they've he she it itself them our let let's push so brings though although") {
		out[word] = true
	}
	return out
}()

// byFirstWord reads words by the first of them.
func byFirstWord(first string, tokens []Token) Node {
	switch first {
	case "turn":
		if numbersNothing(tokens) && holds(tokens, Name) {
			return &Remark{} // turn the cuff so that the seam is inside
		}
		return &Likewise{}
	case "increased", "decreased", "ending", "end", "beg", "same", "with", "change":
		return &Likewise{} // ending at front edge: with what is not said
	case "as":
		if len(tokens) > 1 && tokens[1].Canon == "far" {
			return &Remark{} // as far as the foot of the branch
		}
	case "rep":
		if !holds(tokens, Star) {
			return &Likewise{}
		}
	case "join":
		if leadsTo(tokens) {
			return &Join{Place: Place{Elsewhere: true}}
		}
		return &Likewise{}
	case "for", "to":
		if numbersNothing(tokens) || !placesAnything(tokens) {
			return &Remark{} // for the sleeve, to shape the neck, for the next length of stem
		}
		return &Likewise{}
	case "work", "along", "across":
		if first == "across" && nthSide(tokens[1:]) > 0 {
			return &Remark{} // along the first side
		}
		if numbersNothing(tokens) {
			return &Likewise{} // work in blocks down the front
		}
	case "in", "on", "at", "of", "over", "under", "between", "around":
		if knowsAll(tokens) {
			return &Likewise{} // at the back of the heel
		}
	}
	return nil
}

// titled tells words that name what comes next: `2nd Petal`, `Last Block`.
func titled(tokens []Token) bool {
	named := false
	for i, t := range tokens {
		switch {
		case t.Kind == Name, t.Kind == Word && (t.Canon == "group" || t.Canon == "stem"):
			named = true
		case i == 0 && (t.Kind == Ordinal || t.Kind == Word && (t.Canon == "next" || t.Canon == "last" || t.Canon == "center")):
		default:
			return false
		}
	}
	return named && tokens[0].Kind != Name && len(tokens) <= maxNamed
}

// stitching tells whether the sentence so far makes or passes stitches.
func (l *lister) stitching() bool {
	for _, c := range slices.Backward(l.out) {
		if _, beside := c.Node.(*Bracket); beside || c.Sep >= SepStop {
			break // `(12 sc) Put the eyes in, with 4 sts between`
		}
		if acts(c.Node) {
			return true
		}
	}
	return len(l.out) == 0
}

// apart tells words that say how far apart two things go: `with 8 sts between them`, `8 sts apart`.
func apart(tokens []Token) bool {
	if tokens[0].Kind == Word && (tokens[0].Canon == "with" || tokens[0].Canon == "leave") {
		tokens = tokens[1:]
	}
	if len(tokens) < 3 || tokens[0].Kind != Number || tokens[1].Kind != Stitch && nouns[tokens[1].Canon] == NounNone {
		return false
	}
	return tokens[2].Canon == "between" || tokens[2].Canon == "apart"
}

func isChain(n Node) bool { _, ok := n.(*Chain); return ok }

// ofStem tells words that say which part of the stem, or of a branch, a chain is: `foot of
// stem`, `the lower half of the stem`.
func ofStem(tokens []Token) bool {
	last := tokens[len(tokens)-1]
	return len(tokens) > 1 && last.Kind == Word && (last.Canon == "stem" || last.Canon == "branch") && mayName(tokens)
}

// onlyNames tells words that only say what something is called: `Upper stem`, `Tip`.
func onlyNames(tokens []Token) bool {
	last := tokens[len(tokens)-1]
	return len(tokens) <= maxNamed && (last.Kind == Name && !tells[last.Canon] || limbNouns[last.Canon]) && mayName(tokens)
}

// mayName tells whether all of some tokens may name a limb.
func mayName(tokens []Token) bool {
	return !slices.ContainsFunc(tokens, func(t Token) bool { return t.Kind != Name && !(t.Kind == Word && limbWords[t.Canon]) })
}

func holds(tokens []Token, kind Kind) bool {
	return slices.ContainsFunc(tokens, func(t Token) bool { return t.Kind == kind })
}

// leadsTo tells whether words say where something goes.
func leadsTo(tokens []Token) bool {
	return slices.ContainsFunc(tokens, func(t Token) bool {
		return t.Kind == Word && (t.Canon == "in" || t.Canon == "to" || t.Canon == "on")
	})
}

// knowsAll tells words of the trade, and of what is made, from slips of the pen.
func knowsAll(tokens []Token) bool {
	thing := false
	for _, t := range tokens {
		if t.Kind == Name && !parts[t.Canon] {
			return false
		}
		thing = thing || t.Kind == Name || t.Kind == Stitch || t.Kind == Word && (nouns[t.Canon] != NounNone || t.Canon == "side" || t.Canon == "post" || isLoop(t))
	}
	return thing
}

// wordSet are the words of a text.
func wordSet(text string) map[string]bool {
	out := map[string]bool{}
	for word := range strings.FieldsSeq(text) {
		out[word] = true
	}
	return out
}

// parts are what a garment, a motif or a stitch consists of.
var parts = wordSet(`armhole armholes back band bands bar bars belt block bodice bow brim bud buttonhole buttonholes calyx center collar crown
	cuff cuffs curve ear eye fold front fronts gusset half hand heel hem instep knot left leaf leg lower middle neck neckline outer outside inside panel petal
	pocket point right ribbon ridge ripple seam seams section shoulder shoulders side sleeve sleeves slit sole spoke stem strap straps strip strips
	stripe thumb toe top trefoil underarm underarms upper vamp waist wing wrist yoke bottom curved straight end large small long short entire whole
	piece work flower motif shaded inner dark light thickness thicknesses vein veins crossing`)

// alongPart reads so many stitches along a part of what is made, `35 dc up the right front to the first neck decrease`,
// `22 dc round the back neck`: of an edge, whatever it is called. It gives nil for anything else.
func alongPart(tokens []Token) Node {
	for len(tokens) > 0 && tokens[0].Kind == Word && (tokens[0].Canon == "work" || tokens[0].Canon == "evenly") {
		tokens = tokens[1:]
	}
	if len(tokens) < 4 || tokens[0].Kind != Number || tokens[1].Kind != Stitch {
		return nil
	}
	where := tokens[2:]
	if where[0].Kind == Word && where[0].Canon == "evenly" {
		where = where[1:]
	}
	if len(where) < 2 || !(where[0].Kind == Word && leadAlong[where[0].Canon]) && !(where[0].Kind == Name && where[0].Canon == "up") {
		return nil
	}
	part := false
	for i, t := range where[1:] {
		before := where[i]
		switch {
		case t.Kind == Name && (parts[t.Canon] || edges[t.Canon]):
			part = part || edges[t.Canon]
		case t.Kind == Ordinal, t.Kind == Stitch && i > 0 && t.Stitch.Shapes(): // to the first neck decrease
		case t.Kind == Word && lieAlong[t.Canon]:
			part = part || (t.Canon == "front" || t.Canon == "back") && (before.Canon == "right" || before.Canon == "remaining") // left
		default:
			return nil
		}
	}
	if !part {
		return nil
	}
	edge := []Token{tokens[0], tokens[1], {Kind: Word, Canon: "evenly"}, {Kind: Word, Canon: "across"}, {Kind: Word, Canon: "edge"}}
	return clauses.read(edge)
}

// leadAlong are the words that lead along a part: those for up and down mean nothing by themselves.
var leadAlong = map[string]bool{"": true, "across": true, "around": true, "until": true, "to": true}

// lieAlong are words of the trade that say which part it is, and how far; the left is the same word as what remains.
var lieAlong = map[string]bool{"": true, "remaining": true, "back": true, "front": true, "side": true, "edge": true, "top": true, "base": true, "other": true, "last": true, "to": true, "from": true, "of": true, "until": true, "across": true}

// edges are what has an edge to be worked along, by any of these words.
var edges = wordSet(`armhole armholes neck neckline shoulder shoulders underarm underarms cuff cuffs collar hem waist yoke
	instep heel toe sole pocket strap slit seam slope slopes placket opening lapel`)

// onlyYarns tells words that name yarns and say nothing else.
func onlyYarns(tokens []Token) bool {
	for _, t := range tokens {
		if t.Kind != Name && !(t.Kind == Word && (t.Canon == "" || t.Canon == "and")) || t.Kind == Name && t.Written != colourToken && len(t.Canon) > 1 {
			return false
		}
	}
	return true
}

func isLikewise(n Node) bool { _, ok := n.(*Likewise); return ok }

// told is a sentence that tells how something is: a remark, unless it begins with
// a step or speaks of stitches that it counts.
func told(first Token, chats bool) Node {
	if beginsAction(first) || first.Kind == Number || first.Kind == Name && shapers[first.Canon] {
		return &Likewise{}
	}
	return &Remark{Chats: chats}
}

// shapers begin what shapes the work by as much as it needs.
var shapers = map[string]bool{"narrow": true, "narrowing": true, "widen": true, "widening": true, "these": true}

// pointsAgain tells words that say which of the things just spoken of is meant: `the marked one`, `the one that holds the
// first sl st`.
func pointsAgain(tokens []Token) bool {
	one := slices.IndexFunc(tokens, func(t Token) bool { return t.Kind == Number && t.Canon == "one" })
	switch {
	case one == 1:
		return len(tokens) == 2 && (tokens[0].Kind == Word || tokens[0].Kind == Name)
	case one == 0 && len(tokens) > 2 && tokens[1].Kind == Word:
		return tokens[1].Canon == "" || tokens[1].Canon == "where" || tokens[1].Canon == "with"
	}
	return false
}

// saysWhere tells words that say beside what a branch grows, or that it comes next, and no more: `opposite Branch 2`,
// `across from the twiglet`, `next comes the fork`.
func saysWhere(tokens []Token) bool {
	if len(tokens) < 2 {
		return false
	}
	word := func(i int, canon string) bool { return tokens[i].Kind == Word && tokens[i].Canon == canon }
	name := func(i int, canons ...string) bool {
		return tokens[i].Kind == Name && slices.Contains(canons, tokens[i].Canon)
	}
	if !(word(0, "other") || word(0, "across") && word(1, "from") || word(0, "next") && name(1, "comes", "come", "follows", "follow") || name(0, "facing", "level", "beside", "near")) {
		return false
	}
	named := false
	for _, t := range tokens {
		named = named || t.Kind == Name || t.Kind == Word && limbNouns[t.Canon]
		if t.Kind == Stitch || t.Kind == Word && nouns[t.Canon] != NounNone && !limbNouns[t.Canon] {
			return false
		}
	}
	return named
}

// placesAnything tells words that speak of a number, or of stitches or the places of them.
func placesAnything(tokens []Token) bool {
	for i, t := range tokens {
		ofStep := i > 0 && tokens[i-1].Kind == Word && tokens[i-1].Canon == "step" // to the thorn of step 2
		if t.Kind == Number && !ofStep || t.Kind == Stitch || t.Kind == Word && nouns[t.Canon] != NounNone {
			return true
		}
	}
	return false
}

// numbersNothing tells words without a number, a stitch, or a place of the row
// below: no count is lost by not knowing what they say.
func numbersNothing(tokens []Token) bool {
	for _, t := range tokens {
		switch {
		case t.Kind == Number || t.Kind == Stitch || t.Kind == Ordinal:
			return false
		case t.Kind == Word && (t.Canon == "next" || t.Canon == "each" || t.Canon == "same"):
			return false
		}
	}
	return true
}
