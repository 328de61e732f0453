package lint

import (
	"iter"
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

// fact is something that rules want to know of every section. It comes of the section
// alone and of what the pattern says outside of its rows.
type fact[T any] struct {
	find func(*Pass, section) T
}

func (f *fact[T]) of(p *Pass, s section) T {
	return remembered(s.memory, f, func() T { return f.find(p, s) })
}

// in gives what is so of each section, in their order.
func (f *fact[T]) in(p *Pass) iter.Seq2[section, T] {
	return func(yield func(section, T) bool) {
		for _, s := range p.sections {
			if !yield(s, f.of(p, s)) {
				return
			}
		}
	}
}

// anywhere tells whether something is so of some section.
func anywhere(p *Pass, f *fact[bool]) bool {
	return slices.ContainsFunc(p.sections, func(s section) bool { return f.of(p, s) })
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
	return slices.ContainsFunc(strings.Split(s.told, "."), is)
}

// toldSomewhere tells whether some section of the file tells what a function looks for.
func (p *Pass) toldSomewhere(key any, in func(text string) bool) bool {
	return slices.ContainsFunc(p.sections, func(s section) bool { return s.tells(key, in) })
}

// tells tells whether the pattern says something anywhere.
func (p *Pass) tells(thing *phrase.Phrase) bool { return p.toldSomewhere(thing, thing.MatchString) }

// says tells whether the pattern has one of some words anywhere.
func (p *Pass) says(words ...string) bool {
	return p.toldSomewhere(strings.Join(words, "|"), func(text string) bool { return says(text, words...) })
}
