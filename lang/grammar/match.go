// Package grammar holds tokens against a grammar that is written in the tags of
// structs, in the notation of participle: 'word', Kind, @ and @@ to capture into the
// field, brackets, |, ?, * and +, (?= ) and (?! ). It makes of them what participle
// makes with lookahead without end, in a twentieth of the time: it knows what each
// part of the grammar may begin with, and tries no other.
package grammar

import (
	"reflect"

	"github.com/alecthomas/participle/v2/lexer"
)

// Symbol is a token as a grammar sees it.
type Symbol struct {
	Kind int
	Word string
	At   int // the place that productions and faults are told by
}

// Grammar is that of a struct, and of those that its fields refer to.
type Grammar[G any] struct {
	root  rule
	words map[string]int
}

// Of reads the grammar of a struct. Kinds are those of symbols, below 32, by their
// names in the tags. Tags that cannot be read are a fault of the program.
func Of[G any](kinds map[string]int) *Grammar[G] {
	t := &tags{kinds: kinds, productions: map[reflect.Type]*production{}, words: map[string]int{}}
	return &Grammar[G]{t.refer(reflect.TypeFor[G]()), t.words}
}

// Match holds symbols, of which the last is the end, against the grammar. The value is
// nil where they do not fit: bad is the place of the one that was not expected.
func (g *Grammar[G]) Match(symbols []Symbol) (value *G, bad int) {
	m := matcher{symbols: make([]symbol, len(symbols))}
	for i, s := range symbols {
		m.symbols[i] = symbol{s, g.words[s.Word]}
	}
	switch m.match(&g.root, reflect.Value{}) {
	case fits:
		return m.made.Addr().Interface().(*G), 0
	case fails:
		return nil, symbols[m.bad].At
	}
	return nil, symbols[0].At
}

// symbol is one with the number of its word, 0 for one that the grammar has not.
type symbol struct {
	Symbol
	word int
}

// matcher tries the alternatives of the grammar in their order, each to the end of
// the clause.
type matcher struct {
	symbols []symbol
	at      int
	bad     int           // where the last rule that failed did
	made    reflect.Value // the production matched last
	// captured is what was taken and is not yet set, that of the alternative at work
	// from branch on.
	captured []captured
	branch   int
}

// captured is what a field takes: a production, or some symbols.
type captured struct {
	into     reflect.Value
	field    int
	made     reflect.Value
	from, to int
}

// result is whether a rule fits.
type result uint8

const (
	unfit result = iota // it does not begin here
	fits
	fails // it begins here and does not go on
)

// fail fails where the next symbol is not expected.
func (m *matcher) fail() result {
	m.bad = m.at
	return fails
}

// match matches a rule of a production whose value is into.
func (m *matcher) match(r *rule, into reflect.Value) result {
	switch r.op {
	case opSymbol:
		return m.take(r.names(&m.symbols[m.at]))
	case opSequence:
		return m.sequence(r, into)
	case opChoice:
		return m.choice(r, into)
	case opRepeat:
		return m.repeat(r, into)
	case opAhead:
		at, captured := m.at, len(m.captured)
		result := m.try(&r.subs[0], into)
		m.at, m.captured = at, m.captured[:captured]
		if (result == fits) == r.absent {
			return m.fail()
		}
		return fits
	case opCapture:
		from := m.at
		result := m.match(&r.subs[0], into)
		if result == fits {
			m.captured = append(m.captured, captured{into, int(r.field), m.madeBy(&r.subs[0]), from, m.at})
		}
		return result
	}
	return m.produce(r)
}

// madeBy is what a rule has made, where it is a production.
func (m *matcher) madeBy(r *rule) reflect.Value {
	if r.op == opProduction {
		return m.made
	}
	return reflect.Value{}
}

// take takes a symbol that fits. The end stays where it is.
func (m *matcher) take(ok bool) result {
	if !ok {
		return unfit
	}
	if m.at < len(m.symbols)-1 {
		m.at++
	}
	return fits
}

func (m *matcher) sequence(r *rule, into reflect.Value) result {
	for i := range r.subs {
		switch result := m.match(&r.subs[i], into); {
		case result == unfit && i > 0:
			return m.fail()
		case result != fits:
			return result
		}
	}
	return fits
}

// try matches a rule on a branch of its own: what that captures is left where it does
// not fit.
func (m *matcher) try(r *rule, into reflect.Value) result {
	branch := m.branch
	m.branch = len(m.captured)
	result := m.match(r, into)
	if result != fits {
		m.captured = m.captured[:m.branch]
	}
	m.branch = branch
	return result
}

// choice takes the first alternative that fits. Where none does, the one that came
// furthest tells why.
func (m *matcher) choice(r *rule, into reflect.Value) result {
	from, far, bad := m.at, -1, 0
	for i := range r.subs {
		sub := &r.subs[i]
		if !sub.admits(&m.symbols[from]) {
			if !sub.quiet && far <= from {
				far, bad = from, from
			}
			continue
		}
		result := m.try(sub, into)
		if result == fits {
			return fits
		}
		if result == fails && m.at >= far {
			far, bad = m.at, m.bad
		}
		m.at = from
	}
	if far < 0 {
		return unfit
	}
	m.bad = bad
	return fails
}

func (m *matcher) repeat(r *rule, into reflect.Value) result {
	sub := &r.subs[0]
	for n := 0; ; n++ {
		from, result := m.at, unfit
		if (r.most == 0 || n < int(r.most)) && sub.admits(&m.symbols[from]) {
			result = m.try(sub, into)
		}
		if result == fits && m.at > from {
			continue
		}
		if result != fits {
			m.at = from
		}
		if result != fits && n < int(r.least) {
			return unfit
		}
		return fits
	}
}

// produce makes a production.
func (m *matcher) produce(r *rule) result {
	if !r.admits(&m.symbols[m.at]) {
		if r.quiet {
			return unfit
		}
		m.set()
		return m.fail()
	}
	p := r.production
	value := reflect.New(p.typ).Elem()
	if p.pos >= 0 {
		value.Field(p.pos).Addr().Interface().(*lexer.Position).Offset = m.symbols[m.at].At
	}
	result := m.match(&p.body, value)
	if result != unfit {
		m.set()
	}
	m.made = value
	return result
}

// set sets what the branch at work has captured.
func (m *matcher) set() {
	for i := m.branch; i < len(m.captured); i++ {
		m.captured[i].set(m.symbols)
	}
	m.captured = m.captured[:m.branch]
}

func (c *captured) set(symbols []symbol) {
	f := c.into.Field(c.field)
	switch {
	case f.Kind() == reflect.Pointer && f.IsNil():
		f.Set(c.made.Addr())
	case f.Kind() == reflect.Pointer:
		f.Elem().Set(c.made)
	case f.Kind() == reflect.Slice && c.made.IsValid():
		f.Set(reflect.Append(f, c.made.Addr()))
	}
	if c.made.IsValid() {
		return
	}
	for _, s := range symbols[c.from:c.to] {
		switch f.Kind() {
		case reflect.Bool:
			f.SetBool(true)
		case reflect.String:
			f.SetString(f.String() + s.Word)
		case reflect.Slice:
			f.Set(reflect.Append(f, reflect.ValueOf(s.Word)))
		}
	}
}
