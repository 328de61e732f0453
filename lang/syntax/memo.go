package syntax

import (
	"strings"
	"sync"
)

// memo keeps what was last worked out for each key. Pattern text repeats itself, so
// that little is ever worked out twice. It has two generations: where the young one is
// full it becomes the old one, and what nobody has asked for since then is forgotten.
type memo[V any] struct {
	// most is how many keys a generation has, which bounds the memory that a long-lived
	// process spends on it.
	most       int
	mu         sync.RWMutex
	young, old map[string]V
}

// How many are kept: of lines those of the patterns at hand, of clauses many more, for
// every pattern has the same ones.
const (
	mostLines   = 1 << 9
	mostClauses = 1 << 12
)

// maxKey is the length of the longest key that is kept: what is longer is not likely
// to be asked for again.
const maxKey = 1 << 11

// of gives what is known for a key, found out where it is not. What is found may keep
// the key that it is found of, and no more of the text that it was cut from.
func (m *memo[V]) of(key string, find func(key string) V) V {
	m.mu.RLock()
	v, young := m.young[key]
	known := young
	if !young {
		v, known = m.old[key]
	}
	m.mu.RUnlock()
	if young {
		return v
	}
	key = strings.Clone(key)
	if !known {
		v = find(key)
	}
	if len(key) <= maxKey {
		m.keep(key, v)
	}
	return v
}

// ofBytes is of, for a key that is spelled for the purpose.
func (m *memo[V]) ofBytes(key []byte, find func(key string) V) V {
	m.mu.RLock()
	v, known := m.young[string(key)]
	m.mu.RUnlock()
	if known {
		return v
	}
	return m.of(string(key), find)
}

func (m *memo[V]) keep(key string, v V) {
	m.mu.Lock()
	defer m.mu.Unlock()
	if m.young == nil || len(m.young) >= m.most {
		m.young, m.old = map[string]V{}, m.young
	}
	m.young[key] = v
}
