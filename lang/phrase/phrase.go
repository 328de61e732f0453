// Package phrase finds phrases in texts, most of which hold none of them. A phrase
// is a regular expression that knows what a text must hold for it to match, so that it
// says no at the speed at which words are searched for, and that is compiled for the first
// text that may hold it.
package phrase

import (
	"regexp"
	"regexp/syntax"
	"slices"
	"sync"
)

// Phrase is a regular expression, with the methods of one.
type Phrase struct {
	expr     string
	needs    func() *needs
	compiled func() *regexp.Regexp
}

// needs are what a text must have for an expression to match.
type needs struct {
	// words are such that each match holds one of them; none where that is not known.
	words needles
	// begins and ends are what a text must, where the expression is held to its ends.
	begins, ends edge
}

// MustCompile makes a phrase of a regular expression. It is read at its first use, which
// panics where it is none: a program pays for what it looks for alone.
func MustCompile(expr string) *Phrase {
	return &Phrase{
		expr: expr,
		needs: sync.OnceValue(func() *needs {
			tree, err := syntax.Parse(expr, syntax.Perl)
			if err != nil {
				panic(err)
			}
			return &needs{needlesOf(needed(tree)), edgeOf(tree, left), edgeOf(tree, right)}
		}),
		compiled: sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(expr) }),
	}
}

// May tells quickly whether the phrase may be in a text: it is in none of which this
// is false.
func (p *Phrase) May(text string) bool {
	n := p.needs()
	if n.begins != nil && (text == "" || !n.begins[text[0]]) || n.ends != nil && (text == "" || !n.ends[text[len(text)-1]]) {
		return false
	}
	return n.words.in(text)
}

// in is the expression, nil where it cannot be in a text.
func (p *Phrase) in(text string) *regexp.Regexp {
	if !p.May(text) {
		return nil
	}
	return p.compiled()
}

// The methods are those of regexp.Regexp.

func (p *Phrase) String() string { return p.expr }

func (p *Phrase) MatchString(text string) bool {
	expr := p.in(text)
	return expr != nil && expr.MatchString(text)
}

func (p *Phrase) FindString(text string) string {
	if expr := p.in(text); expr != nil {
		return expr.FindString(text)
	}
	return ""
}

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
		if re.Min > 0 {
			return needed(re.Sub[0])
		}
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
	case syntax.OpCapture, syntax.OpPlus:
		return leading(re.Sub[0])
	case syntax.OpConcat:
		return leadingAll(re.Sub)
	case syntax.OpAlternate:
		return ofEach(re.Sub, leading)
	}
	return nil
}

// leadingAll are those of expressions that follow one another: a word, with what may
// come right after it.
func leadingAll(list []*syntax.Regexp) []word {
	words := leading(list[0])
	if list[0].Op != syntax.OpLiteral || len(words) == 0 || len(list) == 1 {
		return words
	}
	var longer []word
	for _, next := range leadingAll(list[1:]) {
		longer = append(longer, word{words[0].text + next.text, words[0].anyCase || next.anyCase})
	}
	if len(longer) == 0 {
		return words
	}
	return longer
}
