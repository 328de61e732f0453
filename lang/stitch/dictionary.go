package stitch

import (
	"cmp"
	"slices"
	"sync"
)

// Spelling is one way to write a stitch: in lower case, the words joined by single spaces
// and hyphens written as spaces. Where digits close a word (dc3tog) they are part of it; the
// forms that a reader cuts anyway (dc3 tog) are none.
type Spelling struct {
	Words string
	Meaning
}

// Find looks a spelling up, in any case, with spaces, hyphens or stops between
// its words, and with digits closed up to words or not.
func Find(spelling string) (Meaning, bool) {
	key := fold(spelling)
	m, ok := meaningOf(key)
	if !ok {
		m, ok = meaningOf(spread(key))
	}
	return m, ok
}

func meaningOf(words string) (Meaning, bool) {
	i, ok := slices.BinarySearchFunc(spellings[:], words, func(s Spelling, words string) int { return cmp.Compare(s.Words, words) })
	if !ok {
		return Meaning{}, false
	}
	return spellings[i].Meaning, true
}

// Spellings is every spelling, sorted.
func Spellings() []Spelling { return slices.Clip(spellings[:]) }

var byID = sync.OnceValue(func() map[string]*Stitch {
	all := make(map[string]*Stitch, len(stitches))
	for _, s := range stitches {
		all[s.ID] = s
	}
	return all
})

// ByID is the stitch with that ID, nil if there is none.
func ByID(id string) *Stitch { return byID()[id] }

// All is every stitch, plain ones first, in the order of the tables.
func All() []*Stitch { return slices.Clone(stitches[:]) }
