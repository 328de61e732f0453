// Package phrase finds phrases of plain words in texts, most of which hold none of
// them. A phrase is a regular expression that knows what a text must hold for it to
// match, and so says no at the speed at which words are searched for.
package phrase

import (
	"regexp"
	"regexp/syntax"
	"strings"
)

// Phrase is a regular expression over lower-case text.
type Phrase struct {
	expr *regexp.Regexp
	// words are such that each match holds one of them; none where that is not known.
	words []string
}

// MustCompile makes a phrase of a regular expression; it panics where that is none.
func MustCompile(expr string) *Phrase {
	p := &Phrase{expr: regexp.MustCompile(expr)}
	if tree, err := syntax.Parse(expr, syntax.Perl); err == nil {
		p.words = needed(tree)
	}
	return p
}

// In tells whether the phrase is in a text.
func (p *Phrase) In(text string) bool { return p.May(text) && p.expr.MatchString(text) }

// Index is where the phrase is first in a text: the two ends, nil for nowhere.
func (p *Phrase) Index(text string) []int {
	if !p.May(text) {
		return nil
	}
	return p.expr.FindStringIndex(text)
}

// May tells quickly whether the phrase may be in a text: it is in none of which this
// is false.
func (p *Phrase) May(text string) bool {
	for _, w := range p.words {
		if strings.Contains(text, w) {
			return true
		}
	}
	return len(p.words) == 0
}

// shortest is the length from which a word is rare enough to be worth looking for.
const shortest = 2

// needed finds words of which each match holds one, none where it knows of none.
func needed(re *syntax.Regexp) []string {
	switch re.Op {
	case syntax.OpLiteral:
		if re.Flags&syntax.FoldCase == 0 && len(re.Rune) >= shortest {
			return []string{string(re.Rune)}
		}
	case syntax.OpCapture, syntax.OpPlus:
		return needed(re.Sub[0])
	case syntax.OpRepeat:
		if re.Min > 0 {
			return needed(re.Sub[0])
		}
	case syntax.OpConcat:
		var best []string
		for _, sub := range re.Sub {
			if words := needed(sub); len(words) > 0 && (best == nil || len(words) < len(best)) {
				best = words
			}
		}
		return best
	case syntax.OpAlternate:
		var all []string
		for _, sub := range re.Sub {
			words := needed(sub)
			if len(words) == 0 {
				return nil
			}
			all = append(all, words...)
		}
		return all
	}
	return nil
}
