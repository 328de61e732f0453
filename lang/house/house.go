// Package house knows the things that patterns write in several ways, so that a
// house may choose one: `sk` or `skip`, `5 sc` or `sc in next 5 sts`. It finds
// where a pattern does so, tells which way it writes, and rewrites one way into
// another without changing what is worked.
package house

import (
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// Aspect is a thing that is written in several ways.
type Aspect struct {
	// Name is what settings call it.
	Name string
	// About says what it is about, for messages: "skipping".
	About string
	// Ways are the ways to write it, each shown by itself: "sk".
	Ways []string

	find func(*reader)
}

// Aspects are all that are known, in the order of the reference.
func Aspects() []*Aspect { return slices.Clone(aspects) }

var aspects = []*Aspect{&skipping, &rounds, &stitches, &runs, &counts, &repeats}

// ByName is the aspect of a name, nil for none.
func ByName(name string) *Aspect {
	for _, a := range aspects {
		if a.Name == name {
			return a
		}
	}
	return nil
}

// Use is a place where a pattern writes something that has several ways.
type Use struct {
	Aspect *Aspect
	// Row is the instruction that it stands in.
	Row *fabric.Row
	// Span is the place in the row.
	Span source.Span

	// as is how it would be written in each way, by the way: edits of the row, none
	// where it is written so already. A way that cannot say it is not there.
	as map[string][]source.Edit
}

// At is the place in the file.
func (u *Use) At() source.Span { return u.Row.Tree.Abs(u.Span) }

// Edits are those of the file that write it in a way: none where it is written so
// already, or where the way cannot say it.
func (u *Use) Edits(way string) []source.Edit {
	var out []source.Edit
	for _, e := range u.as[way] {
		out = append(out, source.Edit{Span: u.Row.Tree.Abs(e.Span), New: e.New})
	}
	return out
}

// In tells whether the use is in a way already, or in one that is no other.
func (u *Use) In(way string) bool {
	edits, can := u.as[way]
	return can && len(edits) == 0
}

// Uses lists where a pattern writes what has several ways, in the order of the
// text.
func Uses(f *fabric.Fabric) []Use {
	var out []Use
	in := UsesIn(f)
	for _, piece := range f.Pieces {
		out = append(out, in(piece)...)
	}
	return out
}

// UsesIn lists those of one piece of a pattern.
func UsesIn(f *fabric.Fabric) func(*fabric.Piece) []Use {
	own := ownWords(f)
	return func(piece *fabric.Piece) []Use {
		var out []Use
		for _, row := range piece.Rows {
			r := reader{fabric: f, row: row, own: own}
			for _, a := range aspects {
				r.aspect = a
				a.find(&r)
			}
			slices.SortStableFunc(r.uses, func(a, b Use) int { return a.Span.Start - b.Span.Start })
			out = append(out, r.uses...)
		}
		return out
	}
}

// ownWords are the words that a pattern explains as stitches of its own.
func ownWords(f *fabric.Fabric) map[string]bool {
	own := map[string]bool{}
	for _, d := range f.File.Definitions {
		for _, name := range d.Names {
			own[lower(name)] = own[lower(name)] || d.Special
		}
	}
	return own
}

// reader looks through a row for the uses of an aspect.
type reader struct {
	fabric *fabric.Fabric
	row    *fabric.Row
	aspect *Aspect
	uses   []Use
	own    map[string]bool // the words that the pattern explains as stitches of its own
}

// rewriting is what a stretch of the row would read in one way.
type rewriting struct {
	span source.Span // in the row
	text string
}

// use notes a use at a span of the row, with what each way would write. What is
// written so already needs no edit.
func (r *reader) use(span source.Span, ways map[string][]rewriting) {
	u := Use{Aspect: r.aspect, Row: r.row, Span: span, as: map[string][]source.Edit{}}
	for way, texts := range ways {
		var edits []source.Edit
		for _, t := range texts {
			if !sameWords(r.row.Tree.Source(t.span), t.text) {
				edits = append(edits, source.Edit{Span: t.span, New: t.text})
			}
		}
		u.as[way] = edits
	}
	r.uses = append(r.uses, u)
}

// sameWords tells whether two texts differ in white space at most: where lines
// are broken is another matter.
func sameWords(a, b string) bool {
	return a == b || slices.Equal(strings.Fields(a), strings.Fields(b))
}

// tokens are those of the row that lie in a span.
func (r *reader) tokens(span source.Span) []syntax.Token {
	all := r.row.Tree.Tokens
	from, _ := slices.BinarySearchFunc(all, span.Start, func(t syntax.Token, at int) int { return t.Span.Start - at })
	to := from
	for to < len(all) && all[to].Span.End <= span.End {
		to++
	}
	return all[from:to]
}
