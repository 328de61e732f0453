package lint

import (
	"slices"
	"strconv"

	"stitchproof/lang/house"
	"stitchproof/lang/source"
)

var styleConsistency = &Rule{
	Name:     "style-consistency",
	Family:   "style",
	Severity: Info,
	Summary:  "One file says the same thing in one way.",
	Why:      "A maker who has read `sk` twenty times stops at the first `skip` and asks herself what is different here.",
	Bad: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 14.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (13 sc)
Row 2: Ch 1, sc in first st, *ch 1, sk next st, sc in next st; rep from * across; turn. (7 sc, 6 ch-1 sps)
Row 3: Ch 1, sc in first sc, *ch 1, sk next sp, sc in next sc; rep from * across; turn. (7 sc, 6 ch-1 sps)
Row 4: Ch 1, sc in first sc, *ch 1, sk next sp, sc in next sc; rep from * across; turn. (7 sc, 6 ch-1 sps)
Row 5: Ch 1, sc in first sc, *ch 1, skip next sp, sc in next sc; rep from * across. (7 sc, 6 ch-1 sps)
Fasten off.
`,
	Good: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 14.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (13 sc)
Row 2: Ch 1, sc in first st, *ch 1, sk next st, sc in next st; rep from * across; turn. (7 sc, 6 ch-1 sps)
Row 3: Ch 1, sc in first sc, *ch 1, sk next sp, sc in next sc; rep from * across; turn. (7 sc, 6 ch-1 sps)
Row 4: Ch 1, sc in first sc, *ch 1, sk next sp, sc in next sc; rep from * across; turn. (7 sc, 6 ch-1 sps)
Row 5: Ch 1, sc in first sc, *ch 1, sk next sp, sc in next sc; rep from * across. (7 sc, 6 ch-1 sps)
Fasten off.
`,
	Check: checkStyleConsistency,
}

// clearly is how many times as often a way must be used before another is a
// slip rather than a habit.
const clearly = 3

func checkStyleConsistency(p *Pass) {
	var all []written
	for s, in := range styles.in(p) {
		all = append(all, written{s, in})
	}
	for i, a := range house.Aspects() {
		if way, n := p.usualWay(all, i, a); way != "" {
			p.reportStyle(all, i, a, way, n)
		}
	}
}

// inWays is what a section writes of one aspect.
type inWays struct {
	uses []house.Use // as they stood when they were found
	in   []int       // how many of them are in each of its ways
}

// written is what a piece writes of every aspect.
type written struct {
	section
	of []inWays
}

// styles are what a section writes of each aspect that is expected to have one way.
var styles = &fact[[]inWays]{func(p *Pass, s section) []inWays {
	if s.piece == nil {
		return nil
	}
	aspects := house.Aspects()
	var out []inWays
	for _, u := range house.UsesIn(p.Fabric, slices.DeleteFunc(house.Aspects(), func(a *house.Aspect) bool { return p.House.Ways[a.Name] == "" && !oneWay[a.Name] }))(s.piece) {
		if p.House.Ways[u.Aspect.Name] == "" && !habitual(&u) {
			continue
		}
		if out == nil {
			out = make([]inWays, len(aspects))
		}
		of := &out[slices.Index(aspects, u.Aspect)]
		if of.in == nil {
			of.in = make([]int, len(u.Aspect.Ways))
		}
		of.uses = append(of.uses, u)
		for i, way := range u.Aspect.Ways {
			if u.In(way) {
				of.in[i]++
			}
		}
	}
	return out
}}

// oneWay are the aspects in which a file may be expected to have one way though
// no house says so. Repeats are marked as their contents need, and stitches are
// spelled out where they are explained.
var oneWay = map[string]bool{"skip": true, "round": true, "run": true, "count": true}

// moreThanOne tells a text with a number above one: one stitch alone is told in words
// of its own.
func moreThanOne(text string) bool {
	for i := range len(text) {
		if text[i] >= '2' && text[i] <= '9' || i > 0 && isDigit(text[i-1]) && isDigit(text[i]) {
			return true
		}
	}
	return false
}

func isDigit(b byte) bool { return b >= '0' && b <= '9' }

// habitual tells whether a use shows a habit of the writer.
func habitual(u *house.Use) bool {
	return oneWay[u.Aspect.Name] && (u.Aspect.Name != "run" || moreThanOne(u.Row.Tree.Source(u.Span)))
}

// usualWay is the way that the house has chosen or, where it has not, the one
// that the file clearly has, "" for none; with how often it is used.
func (p *Pass) usualWay(all []written, ith int, a *house.Aspect) (way string, n int) {
	in, uses := make([]int, len(a.Ways)), 0
	for _, piece := range all {
		uses += len(piece.of[ith].uses)
		for i, n := range piece.of[ith].in {
			in[i] += n
		}
	}
	for i, candidate := range a.Ways {
		if chosen := p.House.Ways[a.Name]; chosen == candidate || chosen == "" && in[i] > n {
			way, n = candidate, in[i]
		}
	}
	if p.House.Ways[a.Name] == "" && clearly*(uses-n) > n {
		return "", 0
	}
	return way, n
}

// reportStyle points at what is written otherwise, with one fix for all of it.
func (p *Pass) reportStyle(all []written, ith int, a *house.Aspect, way string, n int) {
	var odd []house.Use
	var edits []source.Edit
	for _, s := range all {
		of := &s.of[ith]
		if of.in == nil || of.in[slices.Index(a.Ways, way)] == len(of.uses) {
			continue
		}
		for _, u := range of.uses {
			u.Row = s.piece.Rows[u.Row.Index] // where it stands now
			if can := u.Edits(way); len(can) > 0 {
				odd, edits = append(odd, u), append(edits, can...)
			}
		}
	}
	if len(odd) == 0 {
		return
	}
	as := "the house has `" + way + "`"
	if p.House.Ways[a.Name] == "" {
		as = counted(strconv.Itoa(n), "other place") + " have `" + way + "`"
		if n == 1 {
			as = "the other place has `" + way + "`"
		}
	}
	f := Finding{Span: odd[0].At(), Message: a.About + ": " + quoted(p.File.Text.Slice(odd[0].At())) + " here, and " + as}
	for _, u := range odd[1:] {
		f.Related = append(f.Related, Related{u.At(), "and here"})
	}
	if p.keeps(rewriting{a, way}, edits) {
		f.Fix = &Fix{Title: "write it so everywhere", Safe: true, Edits: edits}
	}
	p.Report(f)
}

// rewriting is what a piece writes of an aspect written in one way.
type rewriting struct {
	aspect *house.Aspect
	way    string
}

// keeps tells whether the pattern comes to the same work after the edits of a rewriting. What
// was found of a piece is kept with it.
func (p *Pass) keeps(as rewriting, edits []source.Edit) bool {
	if !p.Fabric.Firm() {
		return p.Fabric.Keeps(edits)
	}
	slices.SortStableFunc(edits, func(a, b source.Edit) int { return a.Span.Start - b.Span.Start })
	left := edits
	for _, s := range p.sections.list {
		n := 0
		for n < len(left) && left[n].Span.Start < s.at.End {
			n++
		}
		if n == 0 {
			continue
		}
		own := left[:n]
		left = left[n:]
		k := remembered(s.memory, as, func() (k keeping) {
			k.same, k.sure = p.Fabric.KeepsIn(s.piece, own)
			return k
		})
		if !k.sure {
			return p.Fabric.Keeps(edits)
		}
		if !k.same {
			return false
		}
	}
	return true
}

// keeping tells whether a piece comes to the same work after some edits, and whether that is
// sure.
type keeping struct{ same, sure bool }
