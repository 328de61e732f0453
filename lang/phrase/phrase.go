// Package phrase finds phrases in texts, most of which hold none of them. A phrase
// is a regular expression that is compiled when it is first looked for, and that knows
// what a text must hold for it to match: so it says no at the speed at which words are
// searched for.
package phrase

import (
	"regexp"
	"regexp/syntax"
	"strings"
	"sync"
)

// Phrase is a regular expression, with the methods of one.
type Phrase struct{ compiled func() *compiled }

type compiled struct {
	*regexp.Regexp
	// words are such that each match holds one of them; none where that is not known.
	words []string
	// begins and ends are what a text must, where the expression is held to its ends.
	begins, ends edge
}

// MustCompile makes a phrase of a regular expression. It is compiled at its first
// use, which panics where it is none: a program pays for what it looks for alone.
func MustCompile(expr string) *Phrase {
	return &Phrase{sync.OnceValue(func() *compiled {
		c := &compiled{Regexp: regexp.MustCompile(expr)}
		if tree, err := syntax.Parse(expr, syntax.Perl); err == nil {
			c.words, c.begins, c.ends = needed(tree), edgeOf(tree, left), edgeOf(tree, right)
		}
		return c
	})}
}

// May tells quickly whether the phrase may be in a text: it is in none of which this
// is false.
func (p *Phrase) May(text string) bool { return p.compiled().may(text) }

func (c *compiled) may(text string) bool {
	if c.begins != nil && (text == "" || !c.begins[text[0]]) || c.ends != nil && (text == "" || !c.ends[text[len(text)-1]]) {
		return false
	}
	for _, w := range c.words {
		if strings.Contains(text, w) {
			return true
		}
	}
	return len(c.words) == 0
}

// in is the expression, nil where it cannot be in a text.
func (p *Phrase) in(text string) *regexp.Regexp {
	if c := p.compiled(); c.may(text) {
		return c.Regexp
	}
	return nil
}

// The methods are those of regexp.Regexp.

func (p *Phrase) String() string { return p.compiled().String() }

func (p *Phrase) MatchString(text string) bool {
	expr := p.in(text)
	return expr != nil && expr.MatchString(text)
}

func (p *Phrase) FindString(text string) string { return p.compiled().FindString(text) }

func (p *Phrase) FindStringIndex(text string) []int {
	if expr := p.in(text); expr != nil {
		return expr.FindStringIndex(text)
	}
	return nil
}

func (p *Phrase) FindStringSubmatch(text string) []string {
	if expr := p.in(text); expr != nil {
		return expr.FindStringSubmatch(text)
	}
	return nil
}

func (p *Phrase) FindStringSubmatchIndex(text string) []int {
	if expr := p.in(text); expr != nil {
		return expr.FindStringSubmatchIndex(text)
	}
	return nil
}

func (p *Phrase) FindAllString(text string, n int) []string {
	if expr := p.in(text); expr != nil {
		return expr.FindAllString(text, n)
	}
	return nil
}

func (p *Phrase) FindAllStringIndex(text string, n int) [][]int {
	if expr := p.in(text); expr != nil {
		return expr.FindAllStringIndex(text, n)
	}
	return nil
}

func (p *Phrase) FindAllStringSubmatch(text string, n int) [][]string {
	if expr := p.in(text); expr != nil {
		return expr.FindAllStringSubmatch(text, n)
	}
	return nil
}

func (p *Phrase) FindAllStringSubmatchIndex(text string, n int) [][]int {
	if expr := p.in(text); expr != nil {
		return expr.FindAllStringSubmatchIndex(text, n)
	}
	return nil
}

func (p *Phrase) ReplaceAllString(text, with string) string {
	if expr := p.in(text); expr != nil {
		return expr.ReplaceAllString(text, with)
	}
	return text
}

func (p *Phrase) ReplaceAllStringFunc(text string, with func(string) string) string {
	if expr := p.in(text); expr != nil {
		return expr.ReplaceAllStringFunc(text, with)
	}
	return text
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
