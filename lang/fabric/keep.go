package fabric

import (
	"iter"
	"maps"

	"github.com/benbjohnson/immutable"
)

// Copies of a hand share what they remember. What is kept here is never changed:
// adding to it gives another that shares the rest, however often it is done.

// named is what is remembered by name.
type named[V any] struct{ m *immutable.Map[string, V] }

func (n named[V]) get(name string) (V, bool) {
	if n.m == nil {
		var none V
		return none, false
	}
	return n.m.Get(name)
}

// with remembers one thing more, or another of the same name.
func (n named[V]) with(name string, v V) named[V] {
	if n.m == nil {
		return named[V]{immutable.NewMap[string, V](nil).Set(name, v)}
	}
	return named[V]{n.m.Set(name, v)}
}

func (n named[V]) all() iter.Seq2[string, V] {
	return func(yield func(string, V) bool) {
		if n.m == nil {
			return
		}
		for i := n.m.Iterator(); !i.Done(); {
			if name, v, _ := i.Next(); !yield(name, v) {
				return
			}
		}
	}
}

// past is a row of things that happened, the last one first; nil for none.
type past[V any] struct {
	last   V
	before *past[V]
}

// and adds what happened after.
func (p *past[V]) and(v V) *past[V] { return &past[V]{v, p} }

// inOrder lists what happened, the first one first.
func (p *past[V]) inOrder() []V {
	n := 0
	for q := p; q != nil; q = q.before {
		n++
	}
	out := make([]V, n)
	for q := p; q != nil; q = q.before {
		n--
		out[n] = q.last
	}
	return out
}

// with is a small map with one value set.
func with[K comparable, V any](m map[K]V, key K, value V) map[K]V {
	out := maps.Clone(m)
	if out == nil {
		out = map[K]V{}
	}
	out[key] = value
	return out
}
