package terms

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// UnsettledError says why a pattern cannot be rewritten: whose words it uses is
// not known.
type UnsettledError struct{ Terms Terms }

func (e *UnsettledError) Error() string {
	if odd := e.Terms.Strangers(); len(odd) > 0 {
		return fmt.Sprintf("the pattern mixes US and UK terms: `%s` is a word of %v terms only; write all of it in one", odd[0].Text, odd[0].Dialect)
	}
	return "nothing in the pattern settles whether its terms are US or UK; write `Terms: US` or `Terms: UK` at its head"
}

// Rewrite gives the edits that put a pattern in the words of a dialect: in
// instructions, lists of abbreviations and definitions, counts, the header and
// the prose. What both dialects write alike stays, and so does all that only
// spelling distinguishes. A pattern that does not state its terms is given a
// line that does: without it the new words might not tell.
//
// Rewritten twice, a pattern is again what it was, but for that line and for
// spellings that its dialect has several of: trc comes back as tr. There are no
// edits for a pattern that is in the dialect already. One in which nothing shows
// whose words it uses is taken to be in usual, which may be Unsettled. The error
// is an [UnsettledError].
func Rewrite(f *syntax.File, usual, to stitch.Dialect) ([]source.Edit, error) {
	t := Find(f).Or(usual)
	if t.Dialect == stitch.Unsettled || len(t.Strangers()) > 0 {
		return nil, &UnsettledError{t}
	}
	if t.Dialect == to {
		return nil, nil
	}
	r := rewriter{file: f, from: t.Dialect, swaps: map[string]string{}}
	all := inOrder(f)
	r.choose(all)
	for _, p := range all {
		r.stitches(p)
		r.words(p)
		r.brackets(p)
	}
	r.statements(all)
	if !t.Stated() {
		r.edits = append(r.edits, Declare(f, to))
	}
	return apart(r.edits), nil
}

// apart sorts edits by place and leaves out what another has done already: a
// dialect named in a bracket is named in a statement too.
func apart(edits []source.Edit) []source.Edit {
	slices.SortStableFunc(edits, func(a, b source.Edit) int {
		return cmp.Or(cmp.Compare(a.Span.Start, b.Span.Start), cmp.Compare(a.Span.End, b.Span.End))
	})
	done := 0
	return slices.DeleteFunc(edits, func(e source.Edit) bool {
		if e.Span.Start < done {
			return true
		}
		done = e.Span.End
		return false
	})
}

// Declare is the edit that writes the line `Terms: US` into a pattern's header.
func Declare(f *syntax.File, d stitch.Dialect) source.Edit {
	line, end := fmt.Sprintf("Terms: %v", d), f.Text.LineEnd()
	for _, field := range f.Header {
		if field.Key == "pattern" {
			at := f.Text.Line(f.Text.LineOf(field.Span.Start)).End
			return source.Edit{Span: source.At(at), New: end + line}
		}
	}
	if len(f.Header) > 0 {
		at := f.Text.Line(f.Text.LineOf(f.Header[0].Span.Start)).Start
		return source.Edit{Span: source.At(at), New: line + end}
	}
	return source.Edit{Span: source.At(f.Text.Line(0).Start), New: line + end + end}
}

// rewriter gathers the edits that rewrite a file.
type rewriter struct {
	file *syntax.File
	from stitch.Dialect
	// swaps are the words beside the stitches' names that are rewritten, each with
	// what is written for it.
	swaps map[string]string
	// explained is the entry of the pattern's list that explains a word rewritten
	// only because it does: its meaning stays, so that it explains the new one.
	explained source.Span
	// only is the one name that is rewritten, "" for all.
	only  string
	edits []source.Edit
}

// dialectAt is the dialect that a place in a passage is written in: that of the
// pattern, or in `(UK tr)` the one named.
func (r *rewriter) dialectAt(p passage, at source.Span) stitch.Dialect {
	if d := p.aside(at); d != stitch.Unsettled {
		return d
	}
	return r.from
}

// replace writes other words for a place in a passage, in the letters of what
// stands there.
func (r *rewriter) replace(p passage, at source.Span, words string) {
	written := p.text[at.Start:at.End]
	if now := inLetters(written, words); now != written {
		r.edits = append(r.edits, source.Edit{Span: at.Shift(p.at), New: now})
	}
}

// stitches rewrites the names of stitches.
func (r *rewriter) stitches(p passage) {
	if p.sort == named || p.sort == label {
		return
	}
	tokens := p.tokens(r.file.Vocab)
	for i, t := range tokens {
		if t.Kind != syntax.Stitch || t.Stitch.US == t.Stitch.UK {
			continue
		}
		written := p.text[t.Span.Start:t.Span.End]
		if ordinary(written) && (p.loose(t.Span) || describes(tokens[i+1:])) || r.only != "" && spell(written) != r.only {
			continue
		}
		if words, ok := stitch.Counterpart(t.Canon, r.dialectAt(p, t.Span)); ok {
			r.replace(p, t.Span, words)
		}
	}
}

// describes tells whether an ordinary word stands before what it describes: the
// single tr between two groups, a double loop.
func describes(after []syntax.Token) bool {
	if len(after) == 0 {
		return false
	}
	switch after[0].Kind {
	case syntax.Stitch, syntax.Name:
		return true
	case syntax.Word:
		return described[after[0].Canon]
	}
	return false
}

var described = map[string]bool{"loop": true, "strand": true, "ch": true, "st": true, "sp": true, "row": true, "rnd": true, "yarn": true, "group": true}

// words rewrites the words beside the stitches' names.
func (r *rewriter) words(p passage) {
	if p.sort == named {
		return
	}
	for _, m := range p.differing() {
		other, ok := r.swaps[spell(p.text[m.span.Start:m.span.End])]
		if ok && !r.explains(m.span.Shift(p.at)) && p.aside(m.span) == stitch.Unsettled {
			r.replace(p, m.span, other)
		}
	}
}

// choose settles which words are rewritten. Those stay of which the pattern
// has the other dialect's already: then none could tell the way back.
func (r *rewriter) choose(all []passage) {
	table := stitch.DifferingWords()
	for _, w := range table {
		if w.Swap == stitch.SwapIfListed {
			own, _ := w.In(r.from)
			other, _ := w.In(r.from.Other())
			r.abbreviate(own[0], other[0], all)
		}
	}
	used := r.used(all)
	for _, w := range table {
		own, _ := w.In(r.from)
		other, _ := w.In(r.from.Other())
		if w.Swap != stitch.SwapAlways || slices.ContainsFunc(other, func(form string) bool { return used[form] && !slices.Contains(own, form) }) {
			continue
		}
		for i, form := range own {
			if r.swaps[form] == "" {
				r.swaps[form] = other[i]
			}
		}
	}
}

// abbreviate has a word rewritten for an abbreviation, or the other way, if the
// pattern's list explains it by the full word, and that is written nowhere
// else: `sk = skip` becomes `miss = skip`.
func (r *rewriter) abbreviate(own, other string, all []passage) {
	for _, d := range r.file.Definitions {
		if d.Row != nil || spell(d.Names[0]) != own {
			continue
		}
		r.explained = source.Span{Start: d.NameSpan.End, End: d.Span.End}
		used := r.used(all)
		if full := spell(d.Text); full != inFull(own, other) || used[full] || used[other] {
			r.explained = source.Span{}
			return
		}
		r.swaps[own] = other
		return
	}
}

// inFull is the word that one of two words is short for, which is rewritten as
// the other is.
func inFull(own, other string) string {
	for _, w := range stitch.DifferingWords() {
		if i := slices.IndexFunc(w.UK, func(form string) bool { return form == own || form == other }); i >= 0 && w.Swap == stitch.SwapAlways {
			return w.US[i]
		}
	}
	return ""
}

// explains tells whether a place of the file lies in the entry that explains a
// rewritten abbreviation.
func (r *rewriter) explains(at source.Span) bool {
	return r.explained.Covers(at) && r.explained.Len() > 0
}

// used lists the words that the pattern has of those in which the dialects
// differ.
func (r *rewriter) used(all []passage) map[string]bool {
	out := map[string]bool{}
	for _, p := range all {
		for _, m := range p.differing() {
			if p.sort != named && p.aside(m.span) == stitch.Unsettled && !r.explains(m.span.Shift(p.at)) {
				out[spell(p.text[m.span.Start:m.span.End])] = true
			}
		}
	}
	return out
}

// spell writes words as the table of differing words does.
func spell(written string) string { return strings.ToLower(strings.Join(strings.Fields(written), " ")) }

// brackets rewrites the dialect that a bracket names: what was (UK tr) is
// (US dc).
func (r *rewriter) brackets(p passage) {
	for _, a := range p.asides {
		if r.namesStitch(p, a) {
			r.nations(p.text[a.Start:a.End], p.at+a.Start)
		}
	}
}

// namesStitch tells whether a name that the dialects differ in stands in a part
// of a passage.
func (r *rewriter) namesStitch(p passage, within source.Span) bool {
	return slices.ContainsFunc(p.tokens(r.file.Vocab), func(t syntax.Token) bool {
		return t.Kind == syntax.Stitch && t.Stitch.US != t.Stitch.UK && within.Covers(t.Span)
	})
}

// statements rewrites what the pattern says of its terms.
func (r *rewriter) statements(all []passage) {
	for _, field := range r.file.Header {
		if field.Key == "terms" {
			r.nations(r.file.Text.Slice(field.Span), field.Span.Start)
		}
	}
	for _, p := range all {
		if !p.tells() {
			continue
		}
		for _, at := range statement.FindAllStringIndex(p.text, -1) {
			r.nations(p.text[at[0]:at[1]], p.at+at[0])
		}
	}
}

// nations writes the other dialect for each that a text names.
func (r *rewriter) nations(text string, at int) {
	for _, found := range nations.FindAllStringIndex(text, -1) {
		written := text[found[0]:found[1]]
		other := nationPairs[strings.TrimRight(strings.TrimSuffix(strings.ToLower(written), " english"), ".")]
		r.edits = append(r.edits, source.Edit{Span: source.Span{Start: found[0], End: found[1]}.Shift(at), New: inLetters(written, other)})
	}
}

// nationPairs are the names of the dialects, each with that of the other.
var nationPairs = map[string]string{
	"us": "uk", "usa": "uk", "uk": "us", "u.s": "u k", "u.k": "u s", "american": "british", "british": "american", "english": "american",
}

// Reword is the edits that write the other dialect's name for a stitch, wherever
// the pattern uses it by the name that a piece of evidence shows.
func Reword(f *syntax.File, e Evidence) []source.Edit {
	r := rewriter{file: f, from: e.Dialect, only: spell(e.Text)}
	for _, p := range inOrder(f) {
		if p.instructs() {
			r.stitches(p)
		}
	}
	return r.edits
}
