// Package names finds what a pattern calls by a name: its stitches, yarns,
// branches, markers, rows and pieces, where each is given its name and where it
// is called by it.
package names

import (
	"slices"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// Kind is what sort of thing has a name.
type Kind uint8

// The kinds of thing.
const (
	Stitch Kind = iota
	Yarn
	Branch
	Marker
	Row
	Piece
)

// Name is one thing that a pattern calls by a name.
type Name struct {
	Kind Kind
	// Own is set for a stitch that the pattern defines; another is the trade's.
	Own bool
	// Mentions are where it is named, in order.
	Mentions []Mention
}

// Mention is a place in the file where a thing is named.
type Mention struct {
	Span source.Span
	// Word is the name as it is written there, in lower case and in the singular;
	// a thing may have several.
	Word string
	// Declares is set where the thing is given the name, or made.
	Declares bool
	// Between is set where the thing is not written but lies in what is: Row 3 in
	// `Rows 2-5`.
	Between bool
}

// Index holds the names of a pattern.
type Index struct {
	Names []*Name
	byEnd []entry // every mention that is written, by place
}

type entry struct {
	name *Name
	at   Mention
}

// Of finds the names of a pattern.
func Of(file *syntax.File) *Index {
	f := finder{file: file, index: &Index{}, known: map[key]*Name{}, own: map[string]string{}}
	f.header()
	for i := range file.Pieces {
		f.heading(i)
		for _, row := range file.Pieces[i].Rows {
			f.row(i, row)
		}
	}
	f.settle()
	return f.index
}

// settle puts all mentions in order.
func (f *finder) settle() {
	for _, n := range f.index.Names {
		slices.SortStableFunc(n.Mentions, func(a, b Mention) int { return a.Span.Start - b.Span.Start })
		for _, m := range n.Mentions {
			if !m.Between {
				f.index.byEnd = append(f.index.byEnd, entry{n, m})
			}
		}
	}
	slices.SortStableFunc(f.index.byEnd, func(a, b entry) int { return a.at.Span.End - b.at.Span.End })
	slices.SortStableFunc(f.index.Names, func(a, b *Name) int { return a.Mentions[0].Span.Start - b.Mentions[0].Span.Start })
}

// At is what is named at an offset, nil for nothing. The place after the last
// letter of a name belongs to it, where no other name begins.
func (x *Index) At(offset int) (*Name, Mention) {
	first, _ := slices.BinarySearchFunc(x.byEnd, offset, func(e entry, at int) int { return e.at.Span.End - at })
	var found entry
	for _, e := range x.byEnd[first:] {
		if e.at.Span.Start > offset {
			break
		}
		found = e
	}
	return found.name, found.at
}

// Within gives the mentions that lie in a stretch of the file, in order.
func (x *Index) Within(s source.Span, visit func(*Name, Mention)) {
	first, _ := slices.BinarySearchFunc(x.byEnd, s.Start, func(e entry, at int) int { return e.at.Span.End - at })
	for _, e := range x.byEnd[first:] {
		if e.at.Span.Start >= s.End {
			return
		}
		visit(e.name, e.at)
	}
}

// Declarations are the mentions that give the thing its name.
func (n *Name) Declarations() []Mention {
	var out []Mention
	for _, m := range n.Mentions {
		if m.Declares {
			out = append(out, m)
		}
	}
	return out
}
