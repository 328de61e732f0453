// Package suggest tells what may come next at a place of a pattern that is being
// written, knowing the work so far: the stitches of the dialect, the places that
// are there and how many are left, the next row, the count that the row has come
// to.
package suggest

import (
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// Kind is what is suggested.
type Kind uint8

// The kinds of suggestion.
const (
	Stitch Kind = iota
	Own         // a stitch that the pattern defines
	Place
	Step // a whole clause
	Label
	Count
	Yarn
	Key
	Value
	Template // words with places to fill in
)

// Item is one suggestion.
type Item struct {
	Kind Kind
	// Text is what is written in the place of Replace; it begins with what that
	// holds.
	Text string
	// Holes are the parts of Text that are only examples, in order; those of the
	// same number are filled in alike.
	Holes   []Hole
	Replace source.Span
	// Detail says in short what speaks for it: "3 sts left".
	Detail string
	// Word is the stitch that is suggested, "" for anything else.
	Word string
}

// Hole is a part of a suggestion to be filled in.
type Hole struct {
	Span   source.Span // in Item.Text
	Number int
}

// At suggests what may come at a place of a text, the likeliest first. known is the
// pattern as it was worked, in this text or an earlier one: what is the same in both
// is taken from there.
func At(known *fabric.Fabric, text *source.Text, offset int) []Item {
	offset = min(max(offset, 0), text.Len())
	w := &writing{known: known, file: known.File, before: text.Slice(source.Span{End: offset}), at: offset}
	if known.File.Text != text {
		w.file = syntax.ReadAfter(known.File, text)
	}
	w.line = w.before[strings.LastIndexAny(w.before, "\r\n")+1:]
	switch {
	case strings.HasPrefix(strings.TrimSpace(w.line), "//"):
	case w.inHeader():
		w.header()
	case w.beginsLine():
		w.labels()
		w.clause()
	default:
		w.clause()
	}
	return w.items
}

// writing is a pattern up to the place where it is being written.
type writing struct {
	known  *fabric.Fabric // the whole of it, or of an earlier text
	file   *syntax.File   // the whole of it
	before string         // the text up to there
	line   string         // the line up to there
	at     int
	items  []Item
}

// lineStart is where the line begins that is being written.
func (w *writing) lineStart() int { return w.at - len(w.line) }

// work works a text that begins as the pattern does, in the pattern's terms.
func (w *writing) work(text string) *fabric.Fabric {
	return fabric.WorkAfter(w.known, syntax.ReadAfter(w.file, source.New(text)), w.known.Dialect)
}

// offer suggests a text where what is written so far begins it, in one line.
func (w *writing) offer(so string, item Item) {
	if len(so) > len(w.line) || len(so) > len(item.Text) || !strings.EqualFold(item.Text[:len(so)], so) || item.Text == so {
		return
	}
	item.Replace = source.Span{Start: w.at - len(so), End: w.at}
	w.items = append(w.items, item)
}

// template is a suggestion with holes, which its text marks so: {1:A}.
func template(marked, detail string) Item {
	item := Item{Kind: Template, Detail: detail}
	for {
		before, rest, found := strings.Cut(marked, "{")
		item.Text += before
		if !found {
			return item
		}
		hole, after, _ := strings.Cut(rest, "}")
		number, example, _ := strings.Cut(hole, ":")
		start := len(item.Text)
		item.Text += example
		item.Holes = append(item.Holes, Hole{source.Span{Start: start, End: len(item.Text)}, int(number[0] - '0')})
		marked = after
	}
}

// blank tells a line with nothing on it.
func blank(line string) bool { return strings.TrimSpace(line) == "" }
