// Package phrase finds phrases in texts, most of which hold none of them. A phrase
// is a regular expression that knows what a text must hold for it to match, so that it
// says no at the speed at which words are searched for, and that is compiled for the first
// text that may hold it.
package phrase

import (
	"regexp"
	"regexp/syntax"
	"slices"
	"strings"
	"sync"
)

// Phrase is a regular expression, with the methods of one.
type Phrase struct {
	expr  string
	known func() *known
	// whole is the expression, here the same held to the beginning of a text.
	whole, here func() *regexp.Regexp
}

// known is what is known of the matches of an expression without compiling it.
type known struct {
	// words are such that each match holds one of them; none where that is not known.
	words needles
	heads heads
	// begins and ends are what a text must, where the expression is held to its ends.
	begins, ends edge
}

// MustCompile makes a phrase of a regular expression. It is read at its first use, which
// panics where it is none: a program pays for what it looks for alone.
func MustCompile(expr string) *Phrase {
	return &Phrase{
		expr: expr,
		known: sync.OnceValue(func() *known {
			tree, err := syntax.Parse(expr, syntax.Perl)
			if err != nil {
				panic(err)
			}
			return &known{needlesOf(needed(tree)), headsOf(tree), edgeOf(tree, left), edgeOf(tree, right)}
		}),
		whole: sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(expr) }),
		here:  sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(`\A(?:` + expr + `)`) }),
	}
}

// May tells quickly whether the phrase may be in a text: it is in none of which this
// is false.
func (p *Phrase) May(text string) bool {
	k := p.known()
	if k.begins != nil && (text == "" || !k.begins[text[0]]) || k.ends != nil && (text == "" || !k.ends[text[len(text)-1]]) {
		return false
	}
	return k.words.in(text)
}

// first is where the first match and its groups are, nil for none.
func (p *Phrase) first(text string) []int {
	switch {
	case !p.May(text):
		return nil
	case p.known().heads.tell(text):
		return p.from(text, 0)
	}
	return p.whole().FindStringSubmatchIndex(text)
}

// all are where the matches and their groups are, n of them at most, all for n < 0.
func (p *Phrase) all(text string, n int) [][]int {
	switch {
	case !p.May(text):
		return nil
	case !p.known().heads.tell(text):
		return p.whole().FindAllStringSubmatchIndex(text, n)
	}
	var out [][]int
	for at := p.from(text, 0); at != nil && len(out) != n; at = p.from(text, at[1]) {
		out = append(out, at)
	}
	return out
}

// from is where the first match from a place on is, for a text of which the heads tell
// where one may begin.
func (p *Phrase) from(text string, place int) []int {
	heads := &p.known().heads
	for i := heads.next(text, place); i >= 0; i = heads.next(text, i+1) {
		at := p.here().FindStringSubmatchIndex(text[i:])
		for j := range at {
			if at[j] >= 0 {
				at[j] += i
			}
		}
		if at != nil {
			return at
		}
	}
	return nil
}

// The methods are those of regexp.Regexp.

func (p *Phrase) String() string { return p.expr }

func (p *Phrase) MatchString(text string) bool { return p.first(text) != nil }

func (p *Phrase) FindString(text string) string {
	if at := p.first(text); at != nil {
		return text[at[0]:at[1]]
	}
	return ""
}

func (p *Phrase) FindStringIndex(text string) []int {
	if at := p.first(text); at != nil {
		return at[:2]
	}
	return nil
}

func (p *Phrase) FindStringSubmatch(text string) []string { return groups(text, p.first(text)) }

func (p *Phrase) FindStringSubmatchIndex(text string) []int { return p.first(text) }

func (p *Phrase) FindAllString(text string, n int) []string {
	var out []string
	for _, at := range p.all(text, n) {
		out = append(out, text[at[0]:at[1]])
	}
	return out
}

func (p *Phrase) FindAllStringIndex(text string, n int) [][]int {
	all := p.all(text, n)
	for i, at := range all {
		all[i] = at[:2]
	}
	return all
}

func (p *Phrase) FindAllStringSubmatch(text string, n int) [][]string {
	var out [][]string
	for _, at := range p.all(text, n) {
		out = append(out, groups(text, at))
	}
	return out
}

func (p *Phrase) FindAllStringSubmatchIndex(text string, n int) [][]int { return p.all(text, n) }

func (p *Phrase) ReplaceAllString(text, with string) string {
	return p.replaced(text, func(at []int) string { return string(p.whole().ExpandString(nil, with, text, at)) })
}

func (p *Phrase) ReplaceAllStringFunc(text string, with func(string) string) string {
	return p.replaced(text, func(at []int) string { return with(text[at[0]:at[1]]) })
}

// replaced is a text with other words for the matches.
func (p *Phrase) replaced(text string, with func(at []int) string) string {
	var out strings.Builder
	done := 0
	for _, at := range p.all(text, -1) {
		out.WriteString(text[done:at[0]])
		out.WriteString(with(at))
		done = at[1]
	}
	out.WriteString(text[done:])
	return out.String()
}

// groups are the words of a match and of its groups.
func groups(text string, at []int) []string {
	var out []string
	for i := 0; i < len(at); i += 2 {
		word := ""
		if at[i] >= 0 {
			word = text[at[i]:at[i+1]]
		}
		out = append(out, word)
	}
	return out
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
