package lint

import (
	"iter"
	"reflect"
	"slices"
	"strings"
	"sync"

	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// section is a part of the file: what stands above the first piece, or a piece from its
// heading to the next one.
type section struct {
	*memory
	at    source.Span
	piece *fabric.Piece // nil above the first
}

// memory is what is known of a section. It stays while the section says the same, from one
// analysis to the next, and its places are counted from where the section begins.
type memory struct {
	text string // as it stands in the file
	told string // what it tells a maker, in lower case, below the end of a line: words may be told by what stands before them

	mu    sync.Mutex
	facts map[any]any // by what they are
}

func memoryOf(f *syntax.File, at source.Span) *memory {
	return &memory{
		text: strings.Clone(f.Text.Slice(at)), // it outlives the text of the file
		told: "\n" + strings.ToLower(toldIn(f, at)), facts: map[any]any{},
	}
}

func (m *memory) recall(key any) (known any, ok bool) {
	m.mu.Lock()
	defer m.mu.Unlock()
	known, ok = m.facts[key]
	return known, ok
}

func (m *memory) remember(key, known any) {
	m.mu.Lock()
	defer m.mu.Unlock()
	m.facts[key] = known
}

// remembered is something that is known of a section, found out where it is not; key
// stands for what it is.
func remembered[T any](m *memory, key any, find func() T) T {
	if known, ok := m.recall(key); ok {
		return known.(T)
	}
	found := find() // two who find it out at once find the same
	m.remember(key, found)
	return found
}

// sections are those of a file, in their order, with what is known of all of them together.
type sections struct {
	list []section
	nth  map[*memory]int
	// fresh are those that an earlier text of the file did not have.
	fresh []int
	// found is what is known, and earlier what was of the earlier text, nothing where that
	// may not hold.
	found, earlier *tellers
}

// tellers are the sections of which something is so: all of them by a fact, or one by a key
// that stands for what is asked, nil for none. Rules that run at once ask at once.
type tellers struct {
	mu  sync.Mutex
	all map[any][]*memory
	one map[any]*memory
}

func newTellers() *tellers { return &tellers{all: map[any][]*memory{}, one: map[any]*memory{}} }

func (t *tellers) allOf(key any) (all []*memory, known bool) {
	t.mu.Lock()
	defer t.mu.Unlock()
	all, known = t.all[key]
	return all, known
}

func (t *tellers) oneOf(key any) (one *memory, known bool) {
	t.mu.Lock()
	defer t.mu.Unlock()
	one, known = t.one[key]
	return one, known
}

// pieceOf is the number of the piece that a section is, -1 above the first.
func (all *sections) pieceOf(s section) int { return all.nth[s.memory] - 1 }

// every is the numbers of all sections.
func (all *sections) every() iter.Seq[int] {
	return func(yield func(int) bool) {
		for i := range all.list {
			if !yield(i) {
				return
			}
		}
	}
}

// where gives the sections of which something is so, in their order; key stands for it. Of
// those that an earlier text had, only those are looked at of which it was so there.
func (all *sections) where(key any, is func(section) bool) []*memory {
	if found, ok := all.found.allOf(key); ok {
		return found
	}
	var at []int
	among := all.every()
	if were, ok := all.earlier.allOf(key); ok {
		among = slices.Values(all.fresh)
		for _, m := range were {
			if i, here := all.nth[m]; here {
				at = append(at, i)
			}
		}
	}
	for i := range among {
		if is(all.list[i]) {
			at = append(at, i)
		}
	}
	slices.Sort(at)
	found := make([]*memory, len(at))
	for i, n := range at {
		found[i] = all.list[n].memory
	}
	all.found.mu.Lock()
	defer all.found.mu.Unlock()
	all.found.all[key] = found
	return found
}

// anywhere tells whether something is so of some section; key stands for it.
func (all *sections) anywhere(key any, is func(section) bool) bool {
	one, ok := all.found.oneOf(key)
	if !ok {
		one = all.anyone(key, is)
		all.found.mu.Lock()
		defer all.found.mu.Unlock()
		all.found.one[key] = one
	}
	return one != nil
}

// anyone is a section of which something is so, nil for none.
func (all *sections) anyone(key any, is func(section) bool) *memory {
	among := all.every()
	if one, ok := all.earlier.oneOf(key); ok {
		if _, here := all.nth[one]; here {
			return one
		}
		if one == nil {
			among = slices.Values(all.fresh)
		}
	}
	for i := range among {
		if is(all.list[i]) {
			return all.list[i].memory
		}
	}
	return nil
}

// fact is something that rules want to know of every section. It comes of the section
// alone and of what the pattern says outside of its rows.
type fact[T any] struct {
	find func(*Pass, section) T
}

func (f *fact[T]) of(p *Pass, s section) T {
	return remembered(s.memory, f, func() T { return f.find(p, s) })
}

// in gives what is so of each section of which anything is, in their order.
func (f *fact[T]) in(p *Pass) iter.Seq2[section, T] {
	return func(yield func(section, T) bool) {
		for _, m := range p.sections.where(f, func(s section) bool { return isSomething(f.of(p, s)) }) {
			if s := p.sections.list[p.sections.nth[m]]; !yield(s, f.of(p, s)) {
				return
			}
		}
	}
}

// isSomething tells a fact that says anything.
func isSomething(v any) bool {
	value := reflect.ValueOf(v)
	return !value.IsZero() && (value.Kind() != reflect.Slice || value.Len() > 0)
}

// anywhere tells whether something is so of some section.
func anywhere(p *Pass, f *fact[bool]) bool {
	return p.sections.anywhere(f, func(s section) bool { return f.of(p, s) })
}

// place is a place of the file counted from where the section begins, and abs one that is
// so counted in the file.
func (s section) place(at source.Span) source.Span { return at.Shift(-s.at.Start) }
func (s section) abs(at source.Span) source.Span   { return at.Shift(s.at.Start) }

// rows are the instructions of the section.
func (s section) rows() []*fabric.Row {
	if s.piece == nil {
		return nil
	}
	return s.piece.Rows
}

// those are the places, of some of the file in their order, that lie in the section.
func (s section) those(places []source.Span) []source.Span {
	from, _ := slices.BinarySearchFunc(places, s.at.Start, func(at source.Span, start int) int { return at.Start - start })
	to := from
	for to < len(places) && places[to].Start < s.at.End {
		to++
	}
	return places[from:to]
}

// tells tells whether what the section tells, in lower case, is what a function looks
// for; key stands for that.
func (s section) tells(key any, in func(text string) bool) bool {
	return remembered(s.memory, key, func() bool { return in(s.told) })
}

// anySentence tells whether some sentence of what the section tells, in lower case, is what
// a function looks for.
func (s section) anySentence(is func(sentence string) bool) bool {
	return slices.ContainsFunc(sentencesOf(s.told), func(at source.Span) bool { return is(s.told[at.Start:at.End]) })
}

// toldSomewhere tells whether some section of the file tells what a function looks for.
func (p *Pass) toldSomewhere(key any, in func(text string) bool) bool {
	return p.sections.anywhere(key, func(s section) bool { return s.tells(key, in) })
}

// tells tells whether the pattern says something anywhere.
func (p *Pass) tells(thing *phrase.Phrase) bool { return p.toldSomewhere(thing, thing.MatchString) }

// says tells whether the pattern has one of some words anywhere.
func (p *Pass) says(words ...string) bool {
	return p.toldSomewhere(strings.Join(words, "|"), func(text string) bool { return says(text, words...) })
}
