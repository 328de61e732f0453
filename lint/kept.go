package lint

import (
	"fmt"
	"iter"
	"maps"
	"reflect"
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/house"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// A keystroke changes one piece, and what rules find in the others stays true. It is
// kept from one analysis to the next, with its places counted from where the piece
// begins.

// keptPieces are what was found in pieces, by the work of their first rows.
type keptPieces map[*fabric.Tally]*keptPiece

// keptPiece is what was found in a piece, from its heading to the next one.
type keptPiece struct {
	text     string
	findings []Finding // placed in text
	// firm is set where all that they speak of lies in the piece.
	firm bool
	// uses are what it writes in several ways.
	uses []house.Use
	told *section
	// same tells of edits of it whether it comes to the same work after them.
	same map[string]bool
}

// runOnPieces runs rules on each piece by itself.
func (s Settings) runOnPieces(rules []*Rule, look *Pass, kept keptPieces) (found []Finding, keep keptPieces) {
	keep = keptPieces{}
	look.told = []*section{aboveThePieces(look.File, look.Fabric.Pieces)}
	look.kept = keep
	usesIn := house.UsesIn(look.Fabric, s.aspects())
	for i, piece := range look.Fabric.Pieces {
		span := source.Span{Start: piece.Tree.Span.Start, End: look.File.Text.Len()}
		if i+1 < len(look.Fabric.Pieces) {
			span.End = look.Fabric.Pieces[i+1].Tree.Span.Start
		}
		text, work := look.File.Text.Slice(span), piece.Rows[0].Work()
		k := kept[work]
		if k != nil && k.firm && k.text == text {
			again := *k // others may go on from the same analysis
			again.same = maps.Clone(k.same)
			k = &again
		} else {
			own := *look
			own.Pieces, own.doubts, own.mendings = []*fabric.Piece{piece}, doubtsOf(look.Fabric, piece), &mendings{of: map[*fabric.Row]*mending{}}
			k = &keptPiece{text: strings.Clone(text), firm: true, uses: usesIn(piece), told: sectionOf(look.File, span), same: map[string]bool{}} // it outlives the text of the file
			for _, r := range rules {
				for _, f := range s.runOne(&own, r) {
					k.firm = k.firm && f.within(span)
					k.findings = append(k.findings, f.shift(-span.Start))
				}
			}
		}
		keep[work] = k
		look.told = append(look.told, k.told)
		for _, f := range k.findings {
			found = append(found, f.shift(span.Start))
		}
	}
	return found, keep
}

// keptFor are the findings that hold for a later text: none where it says something
// else outside of its rows, or is looked at otherwise.
func (a *Analysis) keptFor(b *Analysis) keptPieces {
	if a.Fabric == nil || a.Fabric.Dialect != b.Fabric.Dialect || a.turningSaid != b.turningSaid || !reflect.DeepEqual(a.Settings, b.Settings) || !slices.Equal(a.File.Sizes, b.File.Sizes) ||
		!slices.Equal(sayings(a.File), sayings(b.File)) {
		return nil
	}
	return a.pieces
}

// sayings are what a pattern says outside of its rows.
func sayings(f *syntax.File) []string {
	var out []string
	for _, h := range f.Header {
		out = append(out, h.Key, h.Value)
	}
	for _, piece := range f.Pieces {
		out = append(out, piece.Name)
	}
	for _, d := range f.Definitions {
		out = append(out, d.Names[0], d.Text)
	}
	for _, s := range f.Prose {
		out = append(out, f.Text.Slice(s))
	}
	if f.Multiple != nil {
		out = append(out, fmt.Sprint(*f.Multiple))
	}
	return out
}

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
