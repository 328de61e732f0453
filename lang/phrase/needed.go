package phrase

import (
	"regexp/syntax"
	"slices"
	"strings"
)

// shortest is the length from which a word is rare enough to be worth looking for, and
// rare the one from which a longer word is no rarer.
const (
	shortest = 2
	rare     = 4
)

// needed finds words of which each match holds one, none where it knows of none.
func needed(re *syntax.Regexp) []word {
	switch re.Op {
	case syntax.OpLiteral:
		return worth(leading(re))
	case syntax.OpCapture, syntax.OpPlus:
		return needed(re.Sub[0])
	case syntax.OpRepeat:
		if words := worth(leading(re)); words != nil || re.Min == 0 {
			return words
		}
		return needed(re.Sub[0])
	case syntax.OpConcat:
		var best []word
		for i, sub := range re.Sub {
			for _, words := range [...][]word{needed(sub), worth(leadingAll(re.Sub[i:]))} {
				if better(words, best) {
					best = words
				}
			}
		}
		return best
	case syntax.OpAlternate:
		return ofEach(re.Sub, needed)
	}
	return nil
}

// worth gives words that are all worth looking for, else none.
func worth(words []word) []word {
	if len(words) == 0 || length(words) < shortest {
		return nil
	}
	return words
}

// better tells whether words are rarer than others, or as rare and fewer.
func better(words, others []word) bool {
	a, b := min(length(words), rare), min(length(others), rare)
	return len(words) > 0 && (a > b || a == b && len(words) < len(others))
}

// length is that of the shortest of some words, 0 for none.
func length(words []word) int {
	if len(words) == 0 {
		return 0
	}
	return len(slices.MinFunc(words, func(a, b word) int { return len(a.text) - len(b.text) }).text)
}

// ofEach is what a function finds for each of some expressions, none where it finds
// nothing for one of them.
func ofEach(list []*syntax.Regexp, find func(*syntax.Regexp) []word) []word {
	var all []word
	for _, re := range list {
		words := find(re)
		if len(words) == 0 {
			return nil
		}
		all = append(all, words...)
	}
	return all
}

// leading are words of which each match begins with one, none where that is not known.
// What alternatives begin with alike is parted from them when an expression is read.
func leading(re *syntax.Regexp) []word {
	switch re.Op {
	case syntax.OpLiteral:
		return literal(string(re.Rune), re.Flags&syntax.FoldCase != 0)
	case syntax.OpCharClass:
		return oneOf(re.Rune)
	case syntax.OpCapture, syntax.OpPlus:
		return leading(re.Sub[0])
	case syntax.OpRepeat:
		if re.Min == 0 {
			return nil
		}
		words := leading(re.Sub[0])
		if re.Sub[0].Op == syntax.OpLiteral {
			for i := range words {
				words[i].text = strings.Repeat(words[i].text, re.Min)
			}
		}
		return words
	case syntax.OpConcat:
		return leadingAll(re.Sub)
	case syntax.OpAlternate:
		return ofEach(re.Sub, leading)
	}
	return nil
}

// classed is how many characters a class may have to be told one by one.
const classed = 8

// oneOf are the characters of a class, which has the first and the last of each range;
// none where they are many.
func oneOf(class []rune) []word {
	var all []word
	for i := 0; i < len(class); i += 2 {
		for r := class[i]; r <= class[i+1]; r++ {
			if len(all) == classed {
				return nil
			}
			all = append(all, word{string(r), false})
		}
	}
	return all
}

// most is how many words are looked for at most, where fewer shorter ones would do.
const most = 60

// leadingAll are those of expressions that follow one another: characters that stand
// there whole, with what may come right after them.
func leadingAll(list []*syntax.Regexp) []word {
	words := leading(list[0])
	if list[0].Op != syntax.OpLiteral && list[0].Op != syntax.OpCharClass || len(words) == 0 || len(list) == 1 {
		return words
	}
	next := leadingAll(list[1:])
	if len(next) == 0 || len(words)*len(next) > most {
		return words
	}
	var longer []word
	for _, a := range words {
		for _, b := range next {
			longer = append(longer, word{a.text + b.text, a.anyCase || b.anyCase})
		}
	}
	return longer
}
