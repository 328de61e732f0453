package lint

import (
	"cmp"
	"fmt"
	"iter"
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/materials"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// A keystroke changes one piece, and what is known of the others stays true. It is kept
// from one analysis to the next.

// knowledge is what is known of a file: of its sections, by the work of their first rows, of
// that above the pieces by none; and which of them say what.
type knowledge struct {
	of    map[*fabric.Tally]*memory
	found *tellers // nil for nothing known
}

// sectionsOf are the sections of a file. What is known of those that say what they said
// is taken from kept.
func sectionsOf(look *Pass, kept knowledge) (*sections, knowledge) {
	pieces, end := look.Fabric.Pieces, look.File.Text.Len()
	of := make(map[*fabric.Tally]*memory, len(pieces)+1)
	all := &sections{list: make([]section, 0, len(pieces)+1), nth: make(map[*memory]int, len(pieces)+1), found: newTellers(), earlier: cmp.Or(kept.found, newTellers())}
	add := func(start int, next int, piece *fabric.Piece) {
		s := section{at: source.Span{Start: start, End: end}, piece: piece}
		if next < len(pieces) {
			s.at.End = pieces[next].Tree.Span.Start
		}
		var work *fabric.Tally
		if piece != nil {
			work = piece.Rows[0].Work()
		}
		if m := kept.of[work]; m != nil && m.text == look.File.Text.Slice(s.at) {
			s.memory = m
		} else {
			s.memory = memoryOf(look.File, s.at)
			all.fresh = append(all.fresh, len(all.list))
		}
		of[work] = s.memory
		all.nth[s.memory] = len(all.list)
		all.list = append(all.list, s)
	}
	add(0, 0, nil)
	for i, piece := range pieces {
		add(piece.Tree.Span.Start, i+1, piece)
	}
	return all, knowledge{of, all.found}
}

// onPieces is what rules find in each section by itself, and in what the pattern defines.
type onPieces struct {
	settings Settings
	rules    []*Rule
	look     *Pass
	fresh    []int       // the sections of which it is not known
	in       [][]Finding // of each section, with places counted from where it begins
}

// onPieces takes what is known of the sections.
func (s Settings) onPieces(rules []*Rule, look *Pass) *onPieces {
	all := look.sections.list
	o := &onPieces{settings: s, rules: rules, look: look, in: make([][]Finding, len(all))}
	for i, sec := range all {
		if known, ok := sec.recall(foundInSection); ok {
			o.in[i] = known.([]Finding)
		} else {
			o.fresh = append(o.fresh, i)
		}
	}
	return o
}

// run runs the rules on the ith section of which it is not known what they find.
func (o *onPieces) run(i int) {
	n := o.fresh[i]
	o.in[n] = o.settings.foundIn(o.look.sections.list[n], o.rules, o.look)
}

// findings are those that the whole pattern does not make moot.
func (o *onPieces) findings() (found []Finding) {
	moot := map[string]bool{}
	for _, r := range o.rules {
		moot[r.Name] = r.Moot != nil && r.Moot(o.look)
	}
	for i, sec := range o.look.sections.list {
		for _, f := range o.in[i] {
			if !moot[f.Rule] {
				found = append(found, f.shift(sec.at.Start))
			}
		}
	}
	return found
}

// foundIn is what rules find in a section, with places counted from where it begins. It is
// remembered where all that is spoken of lies in the section.
func (s Settings) foundIn(sec section, rules []*Rule, look *Pass) []Finding {
	own := *look
	own.Pieces, own.Parts = nil, nil
	for _, part := range look.Parts {
		if sec.at.Covers(part.Tree.Span) {
			own.Parts = append(own.Parts, part)
		}
	}
	worked := own.Parts
	if sec.piece != nil {
		own.Pieces, own.Definitions = []*fabric.Piece{sec.piece}, nil
		worked = append(worked, sec.piece)
	}
	own.doubts, own.mendings = doubtsOf(look.Fabric, worked), &mendings{of: map[*fabric.Row]*mending{}}
	found, firm := []Finding{}, true
	for _, r := range rules {
		for _, f := range s.runOne(&own, r) {
			firm = firm && f.within(sec.at)
			found = append(found, f.shift(-sec.at.Start))
		}
	}
	if firm {
		sec.remember(foundInSection, found)
	}
	return found
}

// foundInSection is what findings in a section are remembered as.
const foundInSection = "what rules find that look at each piece by itself"

// keptFor is what holds for a later text: nothing where that says something else outside
// of its rows, or is looked at otherwise.
func (a *Analysis) keptFor(b *Analysis) knowledge {
	if a.Fabric == nil || a.Fabric.Dialect != b.Fabric.Dialect || !a.Settings.sameAs(b.Settings) || !slices.Equal(a.File.Sizes, b.File.Sizes) ||
		!a.around.says(b.around) {
		return knowledge{}
	}
	return a.known
}

// materialsOf is what a later text says is needed, which is what this one does where all
// that may say it is as it was.
func (a *Analysis) materialsOf(b *Analysis) *materials.List {
	if a.around != nil && slices.Equal(a.File.Sizes, b.File.Sizes) && a.around.says(b.around) && a.around.needs(b.around) {
		return a.Materials
	}
	return materials.Read(b.File)
}

// around is what a pattern says outside of its rows. Rules look at a piece by itself and at
// this.
type around struct {
	words []string
	// above are the places where it may say what is needed.
	above []source.Span
	// notes are its prose and the notes of its header, as plain text.
	notes string
	// turningSaid is set where it is said anywhere whether a turning chain counts.
	turningSaid bool
	// opening is the first line of the pattern, which stands for a title where the header
	// has none.
	opening string
}

func aroundOf(f *syntax.File) *around {
	b := &around{notes: notesOf(f), opening: opening(f)}
	b.turningSaid = turningSaid(f, b.notes)
	begin := f.Text.Len()
	for _, piece := range f.Pieces {
		if len(piece.Rows) > 0 {
			begin = min(begin, piece.Rows[0].At)
		}
	}
	for _, h := range f.Header {
		b.words, b.above = append(b.words, h.Key, h.Value), append(b.above, h.Span)
	}
	for _, piece := range f.Pieces {
		b.words = append(b.words, piece.Name)
	}
	for _, d := range slices.Concat(f.Definitions, f.OwnParts) {
		b.words = append(append(b.words, d.Names...), d.Text)
	}
	for _, s := range f.Prose {
		if b.words = append(b.words, f.Text.Slice(s)); s.Start < begin {
			b.above = append(b.above, s)
		}
	}
	b.above = append(b.above, f.Supplies...)
	if f.Multiple != nil {
		b.words = append(b.words, fmt.Sprint(*f.Multiple))
	}
	return b
}

// says tells whether another text says the same outside of its rows, and needs whether it
// says in the same places what is needed.
func (b *around) says(other *around) bool {
	return b.turningSaid == other.turningSaid && b.opening == other.opening && slices.Equal(b.words, other.words)
}

func (b *around) needs(other *around) bool { return slices.Equal(b.above, other.above) }

// rows gives every instruction of the pieces looked at, in order.
func (p *Pass) rows() iter.Seq[*fabric.Row] {
	return func(yield func(*fabric.Row) bool) {
		for _, piece := range p.Pieces {
			for _, row := range piece.Rows {
				if !yield(row) {
					return
				}
			}
		}
	}
}

// worked gives every instruction of the pieces looked at and of the parts.
func (p *Pass) worked() iter.Seq[*fabric.Row] {
	return func(yield func(*fabric.Row) bool) {
		for _, piece := range slices.Concat(p.Parts, p.Pieces) {
			for _, row := range piece.Rows {
				if !yield(row) {
					return
				}
			}
		}
	}
}

// places visits every place that a finding speaks of.
func (f *Finding) places(visit func(*source.Span)) {
	visit(&f.Span)
	for i := range f.Related {
		visit(&f.Related[i].Span)
	}
	fixes := func(fix *Fix) {
		for i := range fix.Edits {
			visit(&fix.Edits[i].Span)
		}
	}
	if f.Fix != nil {
		fixes(f.Fix)
	}
	for i := range f.Alternatives {
		fixes(&f.Alternatives[i])
	}
}

func (f Finding) within(span source.Span) bool {
	all := true
	f.places(func(s *source.Span) { all = all && span.Covers(*s) })
	return all
}

// shift is the finding with its places moved.
func (f Finding) shift(n int) Finding {
	f.Related = slices.Clone(f.Related)
	if f.Fix != nil {
		fix := f.Fix.own()
		f.Fix = &fix
	}
	f.Alternatives = slices.Clone(f.Alternatives)
	for i := range f.Alternatives {
		f.Alternatives[i] = f.Alternatives[i].own()
	}
	f.places(func(s *source.Span) { *s = s.Shift(n) })
	return f
}

// own is a copy of the fix with edits of its own.
func (f *Fix) own() Fix {
	out := *f
	out.Edits = slices.Clone(f.Edits)
	return out
}
