// Package house knows the things that patterns write in several ways, so that a
// house may choose one: `sk` or `skip`, `5 sc` or `sc in next 5 sts`. It finds
// where a pattern does so, tells which way it writes, and rewrites one way into
// another without changing what is worked.
package house

import (
	"slices"
	"strings"
	"unicode"

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

	// texts are how it would be written in each of the aspect's ways, "" where it is
	// written so already.
	texts []string
}

// At is the place in the file.
func (u *Use) At() source.Span { return u.Row.Tree.Abs(u.Span) }

// in is how it would be written in a way, "" where it is written so already. ok is false
// where the aspect has no such way.
func (u *Use) in(way string) (text string, ok bool) {
	i := slices.Index(u.Aspect.Ways, way)
	if i < 0 {
		return "", false
	}
	return u.texts[i], true
}

// Edits are those of the file that write it in a way: none where it is written so
// already.
func (u *Use) Edits(way string) []source.Edit {
	text, _ := u.in(way)
	if text == "" {
		return nil
	}
	return []source.Edit{{Span: u.At(), New: text}}
}

// In tells whether the use is in a way already.
func (u *Use) In(way string) bool {
	text, ok := u.in(way)
	return ok && text == ""
}

// UsesIn lists where one piece of a pattern writes what has several ways, of some
// aspects, in the order of the text.
func UsesIn(f *fabric.Fabric, aspects []*Aspect) func(*fabric.Piece) []Use {
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

// use notes a use at a span of the row, with how it would be written in each of the
// aspect's ways.
func (r *reader) use(span source.Span, texts ...string) {
	written := r.row.Tree.Source(span)
	for i, text := range texts {
		if sameWords(written, text) {
			texts[i] = ""
		}
	}
	r.uses = append(r.uses, Use{Aspect: r.aspect, Row: r.row, Span: span, texts: texts})
}

// sameWords tells whether two texts differ in white space at most: where lines
// are broken is another matter.
func sameWords(a, b string) bool {
	for {
		var x, y string
		x, a = firstWord(a)
		y, b = firstWord(b)
		if x != y {
			return false
		}
		if x == "" {
			return true
		}
	}
}

// firstWord cuts the first word off a text; it is "" where there is none.
func firstWord(text string) (word, rest string) {
	text = strings.TrimLeftFunc(text, unicode.IsSpace)
	if end := strings.IndexFunc(text, unicode.IsSpace); end >= 0 {
		return text[:end], text[end:]
	}
	return text, ""
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
