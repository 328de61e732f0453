package lint

import (
	"fmt"

	"stitchproof/lang/stock"
	"stitchproof/lang/syntax"
	"stitchproof/lang/units"
)

var easeMismatch = &Rule{
	Name:     "ease-mismatch",
	Family:   "materials",
	Severity: Warning,
	Summary:  "The ease that a pattern names is the finished size less the body that it is to fit.",
	Why: "A maker measures herself, adds the ease and chooses the size. Where finished size, body and ease do not go together, " +
		"one of the three is wrong, and she works a garment for somebody else.",
	Bad: `Pattern: Hedge pullover
Terms: US
Sizes: S (M, L)
Hook: 5 mm (US H-8)
Gauge: 12 hdc and 9 rows = 10 cm (4 in)
To fit: bust 81 (91, 101) cm (32 (36, 40) in)
Ease: 5 cm (2 in) of positive ease
Finished size: bust 101 (111, 121) cm (39 3/4 (43 3/4, 47 1/2) in)

Piece: Ribbing
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (10 sc)
Fasten off.
`,
	Good: `Pattern: Hedge pullover
Terms: US
Sizes: S (M, L)
Hook: 5 mm (US H-8)
Gauge: 12 hdc and 9 rows = 10 cm (4 in)
To fit: bust 81 (91, 101) cm (32 (36, 40) in)
Ease: 5 cm (2 in) of positive ease
Finished size: bust 86 (96, 106) cm (33 3/4 (37 3/4, 41 3/4) in)

Piece: Ribbing
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (10 sc)
Fasten off.
`,
	Sources: []string{
		"Ease is the garment less the body (Craft Yarn Council, memory; Lion Brand and worldknits.com, read, from whom the names of it are taken). Allowed: an inch, as each of the three figures may have been rounded",
		"Where the pattern names no body, those of lang/stock/data/bodies.tsv and heads.tsv, with two inches more: by so much publications differ",
	},
	Check: checkEaseMismatch,
}

// What ease may be off, in millimetres: the figures are rounded, and what is
// published of bodies differs.
const (
	easeGive      = stock.MMPerInch
	publishedGive = 2 * stock.MMPerInch
)

func checkEaseMismatch(p *Pass) {
	ease := p.Materials.Ease
	w, ok := p.fitted()
	if ease == nil || !ok {
		return
	}
	var off sized[misfit]
	for size := range p.Fabric.Sizes() {
		m := misfit{says: stock.Range{Low: ease.Low.At(size), High: ease.High.At(size)}, finished: w.length.At(size)}
		if m.body, m.written, ok = p.body(w.part, size); ok && !m.fits() {
			off.add(size, m)
		}
	}
	if len(off.facts) == 0 {
		return
	}
	related := []Related{{w.span, "the finished size"}}
	if off.facts[0].written {
		related = append(related, Related{p.Materials.ToFit.Span, "the body that it is to fit"})
	}
	p.inSizes(off.sizes, Finding{Span: ease.Span, Message: misfitWords(off.facts, w.part), Related: related})
}

// misfit is an ease that the finished size does not give, in millimetres.
type misfit struct {
	says, body stock.Range
	finished   float64
	written    bool // the pattern says itself which body it fits
}

// fits tells whether some body of the range has some ease of what is said.
func (m misfit) fits() bool {
	give := easeGive
	if !m.written {
		give += publishedGive
	}
	return m.finished-m.body.Low >= m.says.Low-give && m.finished-m.body.High <= m.says.High+give
}

// body is how wide the body of a size is, in millimetres: as the pattern says,
// else as published.
func (p *Pass) body(part bodyPart, size int) (body stock.Range, written, ok bool) {
	if e := p.Materials.ToFit; e != nil {
		return stock.Range{Low: e.Low.At(size), High: e.High.At(size)}, true, true
	}
	in, ok := p.published(part, size)
	return stock.Range{Low: in.Low * stock.MMPerInch, High: in.High * stock.MMPerInch}, false, ok
}

func misfitWords(all []misfit, part bodyPart) string {
	each := func(write func(float64) string, get func(misfit) stock.Range) string {
		words := make([]string, len(all))
		for i, m := range all {
			r := get(m)
			if words[i] = write(r.Low); write(r.High) != words[i] {
				words[i] += "-" + write(r.High)
			}
		}
		return syntax.PerSize(words)
	}
	both := func(get func(misfit) stock.Range) string {
		return each(units.Centimetres, get) + " cm (" + each(units.Inches, get) + " in)"
	}
	where := "published for a " + string(part) + " of the size"
	if all[0].written {
		where = "that it is to fit"
	}
	finished := func(m misfit) stock.Range { return stock.Range{Low: m.finished, High: m.finished} }
	gives := func(m misfit) stock.Range {
		return stock.Range{Low: m.finished - m.body.High, High: m.finished - m.body.Low}
	}
	return fmt.Sprintf("says %s of ease, and %s finished less the %s %s leaves %s", both(func(m misfit) stock.Range { return m.says }),
		both(finished), both(func(m misfit) stock.Range { return m.body }), where, both(gives))
}
