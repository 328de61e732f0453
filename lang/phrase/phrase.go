// Package phrase finds phrases in texts, most of which hold none of them. A phrase
// is a regular expression that knows what a text must hold for it to match, so that it
// says no at the speed at which words are searched for, and that is compiled for the first
// text that may hold it.
package phrase

import (
	"regexp"
	"strings"
	"sync/atomic"
)

// Phrase is a regular expression, with the methods of one. What is made of the expression
// is made where it is first needed; two that need it at once may both make it.
type Phrase struct {
	expr  string
	facts atomic.Pointer[facts]
	// compiled is the expression, headed the same held to the beginning of a text.
	compiled, headed atomic.Pointer[regexp.Regexp]
}

// listed are the expressions that the program is written with, for the table of facts.
var listed []string

// MustCompile makes a phrase of a regular expression that the program is written with: it
// is for variables of packages. The expression is read at its first use, which panics where
// it is none: a program pays for what it looks for alone.
func MustCompile(expr string) *Phrase {
	listed = append(listed, expr)
	return Of(expr)
}

// Of is MustCompile for an expression that is put together while the program runs.
func Of(expr string) *Phrase { return &Phrase{expr: expr} }

func (p *Phrase) known() *facts {
	if p.facts.Load() == nil {
		p.facts.Store(factsOf(p.expr))
	}
	return p.facts.Load()
}

func (p *Phrase) whole() *regexp.Regexp {
	if p.compiled.Load() == nil {
		p.compiled.Store(regexp.MustCompile(p.expr))
	}
	return p.compiled.Load()
}

func (p *Phrase) here() *regexp.Regexp {
	if p.headed.Load() == nil {
		p.headed.Store(regexp.MustCompile(`\A(?:` + p.expr + `)`))
	}
	return p.headed.Load()
}

// May tells quickly whether the phrase may be in a text: it is in none of which this
// is false.
func (p *Phrase) May(text string) bool {
	k := p.known()
	if k.begins != nil && (text == "" || !k.begins.has(text[0])) || k.ends != nil && (text == "" || !k.ends.has(text[len(text)-1])) {
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
