package lint

import (
	"regexp"
	"strconv"

	"stitchproof/lang/fabric"
	"stitchproof/lang/house"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
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
	byAspect := map[*house.Aspect][]house.Use{}
	for _, u := range house.Uses(p.Fabric) {
		if p.House.Ways[u.Aspect.Name] != "" || p.habitual(&u) {
			byAspect[u.Aspect] = append(byAspect[u.Aspect], u)
		}
	}
	for _, a := range house.Aspects() {
		if way, n := p.usualWay(a, byAspect[a]); way != "" {
			p.reportStyle(a, way, n, byAspect[a])
		}
	}
}

// oneWay are the aspects in which a file may be expected to have one way though
// no house says so. Repeats are marked as their contents need, and stitches are
// spelled out where they are explained.
var oneWay = map[string]bool{"skip": true, "round": true, "run": true, "count": true}

// moreThanOne is a number above one: one stitch alone is told in words of its own.
var moreThanOne = regexp.MustCompile(`[2-9]|\d\d`)

// habitual tells whether a use shows a habit of the writer.
func (p *Pass) habitual(u *house.Use) bool {
	return oneWay[u.Aspect.Name] && (u.Aspect.Name != "run" || moreThanOne.MatchString(p.File.Text.Slice(u.Span)))
}

// usualWay is the way that the house has chosen or, where it has not, the one
// that the file clearly has, "" for none; with how often it is used.
func (p *Pass) usualWay(a *house.Aspect, uses []house.Use) (way string, n int) {
	for _, candidate := range a.Ways {
		in := 0
		for _, u := range uses {
			if u.In(candidate) {
				in++
			}
		}
		if chosen := p.House.Ways[a.Name]; chosen == candidate || chosen == "" && in > n {
			way, n = candidate, in
		}
	}
	if p.House.Ways[a.Name] == "" && clearly*(len(uses)-n) > n {
		return "", 0
	}
	return way, n
}

// reportStyle points at what is written otherwise, with one fix for all of it.
func (p *Pass) reportStyle(a *house.Aspect, way string, n int, uses []house.Use) {
	var odd []house.Use
	var edits []source.Edit
	for _, u := range uses {
		if can := u.As[way]; len(can) > 0 {
			odd, edits = append(odd, u), append(edits, can...)
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
	f := Finding{Span: odd[0].Span, Message: a.About + ": " + quoted(p.File.Text.Slice(odd[0].Span)) + " here, and " + as}
	for _, u := range odd[1:] {
		f.Related = append(f.Related, Related{u.Span, "and here"})
	}
	if p.worksTheSame(edits) {
		f.Fix = &Fix{Title: "write it so everywhere", Safe: true, Edits: edits}
	}
	p.Report(f)
}

// worksTheSame tells whether the pattern comes to the same work after some edits.
func (p *Pass) worksTheSame(edits []source.Edit) bool {
	text, err := p.File.Text.Apply(edits)
	return err == nil && fabric.Same(p.Fabric, fabric.WorkIn(syntax.Read(text), p.Fabric.Dialect))
}
