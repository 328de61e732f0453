// Package fix applies the changes that findings offer, until none is left that
// makes the pattern better.
package fix

import (
	"slices"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// Choice is which fixes are wanted. The zero value is all that are safe.
type Choice struct {
	// Risky takes those as well that a person should choose: of several changes
	// that would settle a finding, the first offered.
	Risky bool
	// Only are the rules whose findings are settled; none means all.
	Only []string
}

// Result is what fixing came to.
type Result struct {
	Text    *source.Text
	Applied int // how many fixes were made
	// Unsettled is set where the text still offers fixes that were wanted: each
	// of them would bring as much as it settles, or the passes did not suffice.
	Unsettled bool
}

// maxPasses bounds how often a text is fixed and looked at again.
const maxPasses = 20

// Fix makes the fixes wanted. Of fixes that would change the same place the one
// whose finding comes first is made, and the others after the next look. No fix
// is kept that does not leave fewer findings than there were, and none after which
// less is cautioned of.
func Fix(text *source.Text, c Choice, check func(*source.Text) []lint.Finding) Result {
	r := Result{Text: text}
	found := check(text)
	for range maxPasses {
		wanted := c.wanted(found)
		r.Unsettled = len(wanted) > 0
		if !r.Unsettled {
			return r
		}
		next, left, made := best(r.Text, apart(wanted), found, check)
		if made == 0 {
			return r
		}
		r.Text, found, r.Applied = next, left, r.Applied+made
	}
	r.Unsettled = len(c.wanted(found)) > 0
	return r
}

// wanted are the fixes that findings offer and the choice takes, in the order of
// the findings.
func (c Choice) wanted(found []lint.Finding) []*lint.Fix {
	var out []*lint.Fix
	for i := range found {
		f := &found[i]
		if f.Fix != nil && (f.Fix.Safe || c.Risky) && (len(c.Only) == 0 || slices.Contains(c.Only, f.Rule)) {
			out = append(out, f.Fix)
		}
	}
	return out
}

// apart leaves out fixes that change a place which one before them changes.
func apart(fixes []*lint.Fix) []*lint.Fix {
	var out []*lint.Fix
	for _, f := range fixes {
		if !slices.ContainsFunc(out, func(g *lint.Fix) bool { return collide(f, g) }) {
			out = append(out, f)
		}
	}
	return out
}

func collide(f, g *lint.Fix) bool {
	return slices.ContainsFunc(f.Edits, func(a source.Edit) bool {
		return slices.ContainsFunc(g.Edits, func(b source.Edit) bool {
			return a.Span.Start == b.Span.Start || a.Span.Start < b.Span.End && b.Span.Start < a.Span.End
		})
	})
}

// best makes all of some fixes, if the text is better for it, else those of them
// that each make it better.
func best(text *source.Text, fixes []*lint.Fix, found []lint.Finding, check func(*source.Text) []lint.Finding) (*source.Text, []lint.Finding, int) {
	if next, left := try(text, fixes, found, check); next != nil && len(left)+len(fixes) <= len(found) {
		return next, left, len(fixes)
	}
	var kept []*lint.Fix
	out := text
	for _, f := range fixes {
		if next, left := try(text, append(slices.Clone(kept), f), found, check); next != nil && len(left) < len(found) {
			kept, out, found = append(kept, f), next, left
		}
	}
	return out, found, len(kept)
}

// cautions counts what cannot be for a fix to settle.
func cautions(found []lint.Finding) int {
	n := 0
	for _, f := range found {
		if f.IsCaution() {
			n++
		}
	}
	return n
}

// try makes fixes and looks at what is found then; no text where the edits do
// not go together, or a caution is gone.
func try(text *source.Text, fixes []*lint.Fix, found []lint.Finding, check func(*source.Text) []lint.Finding) (*source.Text, []lint.Finding) {
	var edits []source.Edit
	for _, f := range fixes {
		edits = append(edits, f.Edits...)
	}
	next, err := text.Apply(edits)
	if err != nil {
		return nil, nil
	}
	left := check(next)
	if cautions(left) < cautions(found) {
		return nil, nil
	}
	return next, left
}
