package house

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// Style is how a house has its patterns written. The zero value leaves every way
// as its writer has it, and only tidies the spaces.
type Style struct {
	// Width is how many characters a line of an instruction may have, 0 for as
	// many as its writer gives it.
	Width int
	// Ways are the ways chosen, by the name of the aspect.
	Ways map[string]string
}

// Formatted is a pattern in a house's style.
type Formatted struct {
	Text *source.Text
	// Edits make Text of the text as it was, one for each instruction that changes.
	Edits []source.Edit
	// Kept are the instructions, by their places in the text as it was, that
	// would have been worked otherwise if they were written in the style, and
	// are left as they were in that respect.
	Kept []source.Span
}

// Format writes a pattern, as it was worked, in a style. What is worked stays the same, stitch for
// stitch: an instruction of which that is not so is left as it was. Comments,
// prose and the header are not touched.
func Format(was *fabric.Fabric, style Style) Formatted {
	f := formatter{style: style, was: was, now: was, lineEnd: was.File.Text.LineEnd()}
	own := ownWords(was)
	for range maxRounds {
		before := f.now
		f.kept = nil
		for _, a := range aspects {
			if way := style.Ways[a.Name]; way != "" {
				f.pass(func(row *fabric.Row) []source.Edit { return f.chosen(a, way, row, own) })
			}
		}
		if f.pass(f.laidOut); f.now == before {
			break
		}
	}
	out := Formatted{Text: f.now.File.Text}
	before, now := slices.Collect(f.was.Rows()), slices.Collect(f.now.Rows())
	for i := range before {
		at := before[i].Tree.Written()
		if f.kept[i] {
			out.Kept = append(out.Kept, at)
		}
		if text := out.Text.Slice(now[i].Tree.Written()); text != f.was.File.Text.Slice(at) {
			out.Edits = append(out.Edits, source.Edit{Span: at, New: text})
		}
	}
	return out
}

type formatter struct {
	style    Style
	was, now *fabric.Fabric
	lineEnd  string       // of the file
	kept     map[int]bool // rows left as they were in some respect, by their number
}

// pass makes the edits of one kind in every row, and takes back those of rows
// that would be worked otherwise.
func (f *formatter) pass(edits func(*fabric.Row) []source.Edit) {
	rows := slices.Collect(f.now.Rows())
	without := map[int]bool{}
	for range maxTries {
		var all []source.Edit
		for i := range rows {
			if !without[i] {
				all = append(all, edits(rows[i])...)
			}
		}
		if len(all) == 0 {
			return
		}
		text, err := f.now.File.Text.Apply(all)
		if err != nil {
			return // edits of two rows overlap, which rows never do
		}
		next := fabric.WorkAfter(f.now, syntax.ReadAfter(f.now.File, text), f.was.Dialect)
		odd := firstOther(f.now, next)
		if odd < 0 {
			odd = f.firstCut(rows, next, edits, without)
		}
		if odd < 0 {
			f.now = next
			return
		}
		without[odd] = true
		f.keep(odd)
	}
	for i := range rows {
		if !without[i] && len(edits(rows[i])) > 0 {
			f.keep(i)
		}
	}
}

// firstCut is the first row, by its number, that is not read as one with the words that its
// edits give it, -1 for none: what comes to stand in a line of its own may be taken for
// something else.
func (f *formatter) firstCut(rows []*fabric.Row, next *fabric.Fabric, edits func(*fabric.Row) []source.Edit, without map[int]bool) int {
	now := slices.Collect(next.Rows())
	for i, row := range rows {
		tree := row.Tree
		want := source.New(tree.Source(tree.Written().Shift(-tree.At)))
		if !without[i] {
			var own []source.Edit
			for _, e := range edits(row) {
				own = append(own, source.Edit{Span: e.Span.Shift(-tree.At), New: e.New})
			}
			if edited, err := want.Apply(own); err == nil {
				want = edited
			}
		}
		if i >= len(now) || next.File.Text.Slice(now[i].Tree.Written()) != want.String() {
			return i
		}
	}
	return -1
}

// maxRounds is how often a pattern is gone through: what one way of writing hindered may go
// when another is in force, and of several rows in one line each begins where the ones before
// it end by then.
const maxRounds = 4

// maxTries is how many rows are taken back, one after the other, before a whole
// kind of edit is left.
const maxTries = 50

func (f *formatter) keep(row int) {
	if f.kept == nil {
		f.kept = map[int]bool{}
	}
	f.kept[row] = true
}

// chosen are the edits that write a row's uses of an aspect in the chosen way.
func (f *formatter) chosen(a *Aspect, way string, row *fabric.Row, own map[string]bool) []source.Edit {
	r := reader{fabric: f.now, row: row, aspect: a, own: own}
	a.find(&r)
	var out []source.Edit
	for _, u := range r.uses {
		for _, e := range u.Edits(way) {
			if !slices.ContainsFunc(out, func(o source.Edit) bool { return o.Span == e.Span }) { // steps that are worked again from elsewhere stand once
				out = append(out, e)
			}
		}
	}
	return out
}
