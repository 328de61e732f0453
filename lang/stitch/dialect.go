package stitch

import (
	"slices"
	"strings"

	"stitchproof/lang/table"
)

// Force is how much a word tells of the dialect of a pattern that has it.
type Force uint8

// The forces, the least first.
const (
	Nothing Force = iota
	Hint          // a habit of the country, which does not settle the terms
	Lean          // seldom met in the other dialect
	Proof         // never met in the other dialect
)

var forceNames = [...]string{"nothing", "hint", "lean", "proof"}

// Swap says whether a pattern rewritten in the other dialect takes the other
// word.
type Swap uint8

// The ways to treat a word.
const (
	Keep         Swap = iota // both words are understood, or do not mean quite the same
	SwapAlways               // the other dialect's word is written
	SwapIfListed             // only where the pattern's own list explains the word
)

var swapNames = [...]string{"no", "yes", "listed"}

// Differing is a word beside the stitches' names in which the dialects differ.
type Differing struct {
	// US and UK are its forms; those of one place mean the same. One is empty where
	// the dialect has no word of its own.
	US, UK []string
	// ShowsUS and ShowsUK are what the words of each tell.
	ShowsUS, ShowsUK Force
	Swap             Swap
	// Sources are the works that print it, each with how it was had.
	Sources []string
}

// In gives the forms of a dialect and what they tell.
func (w Differing) In(d Dialect) ([]string, Force) {
	if d == UK {
		return w.UK, w.ShowsUK
	}
	return w.US, w.ShowsUS
}

var differing = table.Once(func() ([]Differing, error) { return readDiffering(dialectTable, sourceTable) })

// DifferingWords is every word beside the stitches' names in which the dialects
// differ, in the order of the table: of two words that mean the same, the
// usual one first.
func DifferingWords() []Differing { return slices.Clone(differing()) }

func readDiffering(text, sources string) ([]Differing, error) {
	cited, err := table.ReadCitations(sources)
	if err != nil {
		return nil, err
	}
	records, err := table.Read("dialects.tsv", text, "us", "uk", "us shows", "uk shows", "swap", "sources")
	if err != nil {
		return nil, err
	}
	out := make([]Differing, len(records))
	for i, r := range records {
		w := Differing{US: r.List("us", "|"), UK: r.List("uk", "|")}
		us, uk := slices.Index(forceNames[:], r.Text("us shows")), slices.Index(forceNames[:], r.Text("uk shows"))
		swap := slices.Index(swapNames[:], r.Text("swap"))
		switch {
		case us < 0 || uk < 0:
			return nil, r.Errorf("a word shows one of %q", forceNames)
		case swap < 0:
			return nil, r.Errorf("swap is one of %q, not %q", swapNames, r.Text("swap"))
		case Swap(swap) != Keep && (len(w.US) == 0 || len(w.UK) == 0):
			return nil, r.Errorf("there is no word to swap")
		}
		w.ShowsUS, w.ShowsUK, w.Swap = Force(us), Force(uk), Swap(swap)
		if w.Sources, err = cited.Of(r); err != nil {
			return nil, err
		}
		out[i] = w
	}
	return out, nil
}

// Counterpart is how the other dialect writes what a spelling names in from: dc
// for the sc of US terms, treble crochet for its double crochet, FPtr for its
// FPdc. What is written is folded as [Spellings] is, where it is not an abbreviation
// taken from the tables. It is false where from has no such word, and where the
// other calls the same stitch so.
func Counterpart(spelling string, from Dialect) (string, bool) {
	key := fold(spelling)
	m, ok := Find(key)
	to := from.Other()
	s := m.In(from)
	if !ok || s == nil || m.In(to) == s {
		return "", false
	}
	if s.Base == nil {
		return s.nearest(key, from), true
	}
	base := s.Base.spellings(from)
	slices.SortStableFunc(base, func(a, b string) int { return len(b) - len(a) })
	for _, word := range base {
		for at := strings.Index(key, word); at >= 0; {
			swapped := key[:at] + s.Base.nearest(word, from) + key[at+len(word):]
			if n, ok := Find(swapped); ok && n.In(to) == s {
				return swapped, true
			}
			next := strings.Index(key[at+1:], word)
			if next < 0 {
				break
			}
			at += 1 + next
		}
	}
	return s.Term(to).Abbr, true
}

// Other is the other of the two dialects, US for neither.
func (d Dialect) Other() Dialect {
	if d == UK {
		return US
	}
	return UK
}

// spellings is every way to write s in a dialect, folded.
func (s *Stitch) spellings(d Dialect) []string {
	t := s.Term(d)
	return append(slices.Clone(t.proper), t.Also...)
}

// nearest is the proper spelling in the other dialect that is built as a
// spelling of s in from is: short for short, plural for plural, with "crochet"
// for with it.
func (s *Stitch) nearest(spelling string, from Dialect) string {
	built := buildOf(spelling)
	best, likeness := "", -1
	for _, candidate := range s.Term(from.Other()).proper {
		if n := built.likeness(buildOf(candidate)); n > likeness {
			best, likeness = candidate, n
		}
	}
	return best
}

// build is how a spelling is put together.
type build struct {
	short, plural, crochet bool
	words                  int // of a short one
}

func buildOf(spelling string) build {
	words := strings.Fields(spelling)
	last, plural := strings.CutSuffix(words[len(words)-1], "s")
	if !strings.ContainsAny(last, "aeiou") || strings.HasSuffix(last, "tr") {
		return build{short: true, words: len(words)}
	}
	return build{plural: plural, crochet: last == "crochet"}
}

// likeness ranks how alike two spellings are built, the weightiest trait first.
func (b build) likeness(other build) int {
	n := 0
	for _, alike := range [...]bool{b.short == other.short, b.plural == other.plural, b.crochet == other.crochet, b.words == other.words} {
		n *= 2
		if alike {
			n++
		}
	}
	return n
}
