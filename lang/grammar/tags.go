package grammar

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
)

// rule is a part of the grammar.
type rule struct {
	op     op
	absent bool   // of opAhead: nothing of it may come
	least  uint8  // of opRepeat, 0 or 1
	most   uint8  // of opRepeat, 0 for any number
	field  uint16 // of opCapture: the field of the production

	subs       []rule // of a sequence, a choice; the one that is repeated, looked for or captured
	production *production

	first
}

// op is what a rule does.
type op uint8

const (
	opSymbol     op = iota // 'word', Kind, and one of several
	opSequence             // a b
	opChoice               // a | b
	opRepeat               // a? a* a+
	opAhead                // (?= a), (?! a)
	opCapture              // @a
	opProduction           // @@
)

// production is a struct of the grammar.
type production struct {
	typ  reflect.Type
	pos  int // the field Pos, which takes the place where it begins; -1 for none
	body rule
}

// tags are those of the structs of a grammar.
type tags struct {
	kinds       map[string]int
	productions map[reflect.Type]*production
	words       map[string]int // their numbers, from 1 on
	// parts are those of the sequences and choices that are being read, the innermost last.
	parts []rule
}

// since gives the parts from one on, and leaves them out of those being read.
func (g *tags) since(first int) []rule {
	parts := slices.Clone(g.parts[first:])
	g.parts = g.parts[:first]
	return parts
}

// refer is a rule that takes a struct, or a field that holds it.
func (g *tags) refer(t reflect.Type) rule {
	for t.Kind() == reflect.Pointer || t.Kind() == reflect.Slice {
		t = t.Elem()
	}
	p := g.productions[t]
	if p == nil {
		p = &production{typ: t, pos: -1}
		g.productions[t] = p
		if f, ok := t.FieldByName("Pos"); ok {
			p.pos = f.Index[0]
		}
		r := tagReader{tags: g, typ: t, field: -1}
		r.next()
		if p.body = r.choice(); r.sign != "" {
			r.fail()
		}
	}
	return rule{op: opProduction, production: p, first: p.body.first}
}

// tagReader reads the tags of a struct, one after the other, as one text.
type tagReader struct {
	*tags
	typ   reflect.Type
	field int    // that the tag belongs to
	tag   string // what is left of it
	sign  string // the next one: a word in quotes, a name, a mark; "" for none
}

func (r *tagReader) fail() {
	panic(fmt.Sprintf("the grammar of %s cannot be read at %q", r.typ.Name(), r.sign+r.tag))
}

// next goes on to the next sign.
func (r *tagReader) next() {
	for r.tag = strings.TrimLeft(r.tag, " "); r.tag == ""; r.tag = strings.TrimLeft(r.tag, " ") {
		if r.field++; r.field == r.typ.NumField() {
			r.sign = ""
			return
		}
		r.tag = r.typ.Field(r.field).Tag.Get("parser")
	}
	n := 1
	switch c := r.tag[0]; {
	case c == '\'':
		n = 2 + strings.IndexByte(r.tag[1:], c)
	case strings.HasPrefix(r.tag, "@@"), strings.HasPrefix(r.tag, "?="), strings.HasPrefix(r.tag, "?!"):
		n = 2
	case c >= 'A' && c <= 'Z':
		for n < len(r.tag) && (r.tag[n] >= 'a' && r.tag[n] <= 'z' || r.tag[n] >= 'A' && r.tag[n] <= 'Z') {
			n++
		}
	}
	r.sign, r.tag = r.tag[:n], r.tag[n:]
}

func (r *tagReader) choice() rule {
	begin := len(r.parts)
	r.parts = append(r.parts, r.sequence())
	for r.sign == "|" {
		r.next()
		r.parts = append(r.parts, r.sequence())
	}
	switch parts := r.parts[begin:]; {
	case len(parts) == 1:
		r.parts = r.parts[:begin]
		return parts[0]
	case !slices.ContainsFunc(parts, func(sub rule) bool { return sub.op != opSymbol }):
		r.parts = r.parts[:begin]
		return rule{op: opSymbol, first: ofChoice(parts)}
	}
	parts := r.since(begin)
	return rule{op: opChoice, subs: parts, first: ofChoice(parts)}
}

func (r *tagReader) sequence() rule {
	begin := len(r.parts)
	for r.sign != "" && r.sign != "|" && r.sign != ")" {
		r.parts = append(r.parts, r.repeated(r.term()))
	}
	switch parts := r.parts[begin:]; len(parts) {
	case 0:
		r.fail()
	case 1:
		r.parts = r.parts[:begin]
		return parts[0]
	}
	parts := r.since(begin)
	return rule{op: opSequence, subs: parts, first: ofSequence(parts)}
}

// repeated takes the mark that says how often a term may come.
func (r *tagReader) repeated(term rule) rule {
	out := rule{op: opRepeat, first: term.first}
	switch r.sign {
	case "?":
		out.most = 1
	case "+":
		out.least = 1
	case "*":
	default:
		return term
	}
	r.next()
	out.subs = []rule{term}
	out.empty, out.quiet = out.least == 0 || term.empty, true
	return out
}

func (r *tagReader) term() rule {
	sign, field := r.sign, r.field
	r.next()
	switch {
	case sign == "@@":
		return capturing(field, r.refer(r.typ.Field(field).Type))
	case sign == "@":
		return capturing(field, r.term())
	case sign == "(":
		return r.group()
	case sign[0] == '\'':
		return rule{op: opSymbol, first: one(0, r.number(sign[1:len(sign)-1]))}
	}
	kind, ok := r.kinds[sign]
	if !ok {
		r.fail()
	}
	return rule{op: opSymbol, first: one(kind, 0)}
}

func capturing(field int, of rule) rule {
	return rule{op: opCapture, field: uint16(field), subs: []rule{of}, first: of.first}
}

// number is that of a word.
func (r *tagReader) number(word string) int {
	n, known := r.words[word]
	if !known {
		if n = len(r.words) + 1; n == maxWords {
			panic("the grammar has too many words")
		}
		r.words[word] = n
	}
	return n
}

// group takes what stands in brackets.
func (r *tagReader) group() rule {
	ahead := r.sign
	if ahead == "?=" || ahead == "?!" {
		r.next()
	}
	out := r.choice()
	if r.sign != ")" {
		r.fail()
	}
	r.next()
	if ahead == "?=" || ahead == "?!" {
		return rule{op: opAhead, absent: ahead == "?!", subs: []rule{out}, first: first{empty: true}}
	}
	return out
}

// first is what a rule may begin with, so that what cannot is not tried.
type first struct {
	kinds uint32
	words [maxWords / 64]uint64
	empty bool // it may take nothing, so that anything may come
	// quiet is set where it does not fit what it cannot begin with, and unset where it
	// fails there, because something before has been taken for nothing.
	quiet bool
}

// maxWords is how many words a grammar may have.
const maxWords = 256

// one is the first of a rule that takes one symbol.
func one(kind, word int) first {
	f := first{quiet: true}
	if word > 0 {
		f.words[word/64] = 1 << (word % 64)
	} else {
		f.kinds = 1 << kind
	}
	return f
}

// names tells whether it holds a symbol.
func (f *first) names(s *symbol) bool {
	return f.kinds>>s.Kind&1 != 0 || f.words[s.word/64]>>(s.word%64)&1 != 0
}

// admits tells whether it may come to something where a symbol stands.
func (f *first) admits(s *symbol) bool { return f.empty || f.names(s) }

func (f *first) add(other *first) {
	f.kinds |= other.kinds
	for i, w := range other.words {
		f.words[i] |= w
	}
}

// ofSequence is what may come first of rules that follow one another.
func ofSequence(subs []rule) first {
	f := first{empty: true, quiet: subs[0].quiet && !subs[0].empty}
	for i := range subs {
		if f.add(&subs[i].first); !subs[i].empty {
			f.empty = false
			break
		}
	}
	return f
}

// ofChoice is what may come first of one of some rules.
func ofChoice(subs []rule) first {
	f := first{quiet: true}
	for i := range subs {
		sub := &subs[i].first
		f.add(sub)
		f.empty, f.quiet = f.empty || sub.empty, f.quiet && sub.quiet
	}
	return f
}
