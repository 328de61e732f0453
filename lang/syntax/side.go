package syntax

import (
	"slices"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
)

// A leaf is worked along one side of its chain and back along the other. Writers name the sides: `Side 2: …`,
// `Second side`, `Side two, from the stalk to the tip`. The name of the second is all that sends the work to the
// other side of the chain.

// isSide tells the word for a side or an edge.
func isSide(t Token) bool { return t.Kind == Word && (t.Canon == "side" || t.Canon == "edge") }

// sideNamed is which side some words name, 1 or 2, and 0 for none: `Side 2`, `Side B`, `Second side`, `Along second
// side`.
func sideNamed(flat []Token) int {
	if nth := nthSide(flat); nth <= 2 {
		return nth
	}
	return 0
}

// nthSide is which of any number of sides some words name, 0 for none.
func nthSide(flat []Token) int {
	flat = withoutFillers(flat)
	n := len(flat)
	if n < 2 {
		return 0
	}
	nth := 0
	switch one, other := flat[n-2], flat[n-1]; {
	case isSide(one) && n == 2 && other.Kind == Number:
		nth = other.Values.At(0)
	case isSide(one) && n == 2 && other.Kind == Name && len(other.Canon) == 1:
		nth = int(other.Canon[0]-'a') + 1
	case isSide(other) && one.Kind == Ordinal && !slices.ContainsFunc(flat[:n-2], func(t Token) bool { return t.Kind != Word || t.Canon != "" && !toSide[t.Canon] }):
		nth = one.Values.At(0)
	}
	return max(0, nth)
}

// namesSecondSide tells the name of a second side.
func namesSecondSide(flat []Token) bool { return sideNamed(flat) == 2 }

// secondSide takes the words before the mark at i that name the other side of a chain, where what
// follows goes along one: `Side 2: sc in next ch`.
func (l *lister) secondSide(i, hi int) bool {
	if mark := l.b.tokens[i].Kind; len(l.out) > 0 || mark != Colon && mark != Period && mark != Dash || !namesSecondSide(l.flat) {
		return false
	}
	first := l.b.tokens[i+1 : hi]
	if end := slices.IndexFunc(first, func(t Token) bool { return t.Kind == Comma || t.Kind == Semi || t.Kind == Period }); end >= 0 {
		first = first[:end]
	}
	n := len(first)
	if n < 2 || first[n-1].Canon != "ch" || first[n-1].Kind != Word || !holds(first, Stitch) {
		return false
	}
	l.set(&Turn{Rotate: true, OtherSide: true}, SepStop)
	return true
}

// mostOfSide is the most tokens of words that tell of the other side: every beginning of them is read.
const mostOfSide = 16

// tellsOtherSide tells words that say of what comes that it goes along the other side, and how in words that ask for
// nothing.
func tellsOtherSide(flat []Token) bool {
	if len(flat) > mostOfSide || holds(flat, Stitch) || holds(flat, Number) || clauses.read(flat) != nil {
		return false
	}
	for n := len(flat) - 1; n > 0; n-- {
		if sendsAcross(flat[:n]) {
			return !slices.ContainsFunc(flat[n:], beginsAction)
		}
	}
	return false
}

// leadsAcross tells a word without which no words send the work to the other side: most labels have none, and need not be
// read for it.
func leadsAcross(t Token) bool {
	return isSide(t) || t.Kind == Word && (t.Canon == "other side" || t.Canon == "loop" || t.Canon == "ch" || t.Canon == "foundation")
}

// sendsAcross tells words that send the work to the other side of its chain, and say no more.
func sendsAcross(flat []Token) bool {
	turn, ok := clauses.read(flat).(*Turn)
	return ok && turn.OtherSide
}

// sideHead is a line of its own that names a side and says no more than how it goes.
var sideHead = phrase.MustCompile(`(?i)^[*_# ]*(?:side (?:one|two|1|2|a|b)|(?:the )?(?:first|second) side)\b[^.:;\d]*[*_]*$`)

// sideAhead tells such a line, where the work goes on from what stands above it.
func (d *document) sideAhead(trimmed string, at int) bool {
	if !sideHead.MatchString(trimmed) || !d.belowSteps() {
		return false
	}
	next := d.nextSaid(at)
	return firstOf(next) != 1 && lays(readRow(next, 0, Standard())) == laysNothing
}

// sideAlone reads an instruction that names a side of a chain and works nothing, nil for any other: the work is not
// turned before the second.
func sideAlone(tokens []Token) []Clause {
	head := tokens
	if end := slices.IndexFunc(tokens, func(t Token) bool { return t.Kind == Comma }); end > 0 {
		head = tokens[:end]
	}
	nth := sideNamed(head)
	if nth == 0 || slices.ContainsFunc(tokens[len(head):], func(t Token) bool {
		return t.Kind == Stitch || t.Kind == Number || t.Kind == Period || t.Kind == Colon || t.Kind == Semi || t.Kind == Word && t.Canon == "ch"
	}) {
		return nil
	}
	at := spanOf(tokens)
	if nth == 1 {
		return []Clause{{Span: at, Node: &Remark{}}}
	}
	first := tokens[0].Span
	return []Clause{{Span: first, Node: &Turn{Not: true}}, {Span: source.Span{Start: first.End, End: at.End}, Node: &Turn{Rotate: true, OtherSide: true}}}
}

// numberSides takes the number of a side for a part of its name, `20 dc along side two`, of which there are not two.
func numberSides(tokens []Token) {
	for i := 1; i+1 < len(tokens); i++ {
		last := i+2 == len(tokens) || separates(tokens[i+2]) || tokens[i+2].Kind == Close
		before := tokens[i-1].Kind == Word && toSide[tokens[i-1].Canon]
		if nth := tokens[i+1]; last && before && isSide(tokens[i]) && nth.Kind == Number && !nth.Values.PerSize() && nth.Values.At(0) <= 2 {
			tokens[i+1] = Token{Kind: Word, Span: nth.Span}
		}
	}
}

// toSide are the words that lead along a side, or to what is on it.
var toSide = map[string]bool{"across": true, "around": true, "in": true, "of": true, "on": true, "to": true}
