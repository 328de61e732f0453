package phrase

import (
	"math"
	"regexp/syntax"
	"slices"
	"unicode"
	"unicode/utf8"
)

// edgeOf finds the bytes that a text must begin with, or end with, for an expression to
// match that is held to that end of it; nil for any.
func edgeOf(re *syntax.Regexp, end side) *byteSet {
	if !held(re, end) {
		return nil
	}
	var set byteSet
	if end.bytes(re, &set) {
		return nil // it may match nothing
	}
	return &set
}

// side is an end of a text.
type side bool

const (
	left  side = false
	right side = true
)

// held tells whether all that an expression matches reaches an end of the text.
func held(re *syntax.Regexp, end side) bool {
	switch re.Op {
	case syntax.OpBeginText:
		return end == left
	case syntax.OpEndText:
		return end == right
	case syntax.OpCapture:
		return held(re.Sub[0], end)
	case syntax.OpConcat:
		return held(end.order(re.Sub)[0], end)
	case syntax.OpAlternate:
		return !slices.ContainsFunc(re.Sub, func(sub *syntax.Regexp) bool { return !held(sub, end) })
	}
	return false
}

// order is some expressions from an end on.
func (end side) order(list []*syntax.Regexp) []*syntax.Regexp {
	if end == right {
		list = slices.Clone(list)
		slices.Reverse(list)
	}
	return list
}

// bytes adds those that stand at an end of what an expression matches, and tells
// whether it may match nothing.
func (end side) bytes(re *syntax.Regexp, set *byteSet) (empty bool) {
	switch re.Op {
	case syntax.OpLiteral:
		r := re.Rune[0]
		if end == right {
			r = re.Rune[len(re.Rune)-1]
		}
		add(set, r, r)
		for f := unicode.SimpleFold(r); re.Flags&syntax.FoldCase != 0 && f != r; f = unicode.SimpleFold(f) {
			add(set, f, f)
		}
	case syntax.OpCharClass:
		for i := 0; i < len(re.Rune); i += 2 {
			add(set, re.Rune[i], re.Rune[i+1])
		}
	case syntax.OpAnyChar, syntax.OpAnyCharNotNL:
		add(set, 0, unicode.MaxRune)
	case syntax.OpCapture, syntax.OpPlus:
		return end.bytes(re.Sub[0], set)
	case syntax.OpStar, syntax.OpQuest:
		end.bytes(re.Sub[0], set)
		return true
	case syntax.OpRepeat:
		return end.bytes(re.Sub[0], set) || re.Min == 0
	case syntax.OpConcat:
		for _, sub := range end.order(re.Sub) {
			if !end.bytes(sub, set) {
				return false
			}
		}
		return true
	case syntax.OpAlternate:
		for _, sub := range re.Sub {
			empty = end.bytes(sub, set) || empty
		}
		return empty
	default:
		return re.Op != syntax.OpNoMatch // no character: a boundary, an end
	}
	return false
}

// add adds the bytes of some characters; of those beyond ASCII all that there are.
func add(set *byteSet, from, to rune) {
	for r := from; r <= min(to, utf8.RuneSelf-1); r++ {
		set.add(byte(r))
	}
	if to >= utf8.RuneSelf {
		for b := utf8.RuneSelf; b <= math.MaxUint8; b++ {
			set.add(byte(b))
		}
	}
}
