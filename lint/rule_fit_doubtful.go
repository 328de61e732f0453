package lint

import (
	"fmt"
	"math"

	"stitchproof/lang/stock"
	"stitchproof/lang/units"
)

var fitDoubtful = &Rule{
	Name:     "fit-doubtful",
	Family:   "materials",
	Severity: Info,
	Summary:  "A hat or garment for somebody in particular is about as wide as published heads and bodies, and a warning names the ease.",
	Why:      "A maker chooses by the name of the size. A hat of 40 cm for a man fits nobody that the name suggests.",
	Bad: `Pattern: Hedge hat
Terms: US
For: men
Hook: 5 mm (US H-8)
Gauge: 12 hdc and 9 rnds = 10 cm (4 in)
Finished size: 40 cm (15 3/4 in) around
Turning chains: ch 1 does not count as a st.

Piece: Hat
With A, ch 48, sl st in first ch to join.
Rnd 1: Ch 1, hdc in each ch around; join. (48 hdc)
Rnd 2: Ch 1, hdc in each st around; join. (48 hdc)
Fasten off.
`,
	Good: `Pattern: Hedge hat
Terms: US
For: men
Hook: 5 mm (US H-8)
Gauge: 12 hdc and 9 rnds = 10 cm (4 in)
Finished size: 56.5 cm (22 1/4 in) around
Turning chains: ch 1 does not count as a st.

Piece: Hat
With A, ch 68, sl st in first ch to join.
Rnd 1: Ch 1, hdc in each ch around; join. (68 hdc)
Rnd 2: Ch 1, hdc in each st around; join. (68 hdc)
Fasten off.
`,
	Sources: []string{
		"Heads: Craft Yarn Council (memory), tables of knitting sites, calicojoy.com and crochetkitten, 2014 (read). They differ by two inches: every one is allowed, and a tenth less, as snug hats are worked",
		"Bodies: Craft Yarn Council, 2018 (memory; bust columns agree with Spinrite sheets, read). Ease: Craft Yarn Council (memory), Lion Brand and worldknits.com (read); up to 14 in is taken for meant (common practice)",
	},
	Check: checkFitDoubtful,
}

func checkFitDoubtful(p *Pass) {
	if w, ok := p.fitted(); ok {
		p.holdAgainstBodies(w)
	}
}

// holdAgainstBodies compares a width around with what is published of each size.
func (p *Pass) holdAgainstBodies(w fitted) {
	for size := range p.Fabric.Sizes() {
		body, ok := p.published(w.part, size)
		in := w.length.At(size) / stock.MMPerInch
		if !ok || w.part.fits(body).Holds(in, 0.25) {
			continue
		}
		p.inSizes([]int{size}, Finding{
			Span: w.span,
			Message: fmt.Sprintf("%s cm (%s in) is %s what is published for a %s, %s in around", units.Centimetres(w.length.At(size)), units.Inches(w.length.At(size)),
				easeWords(in, body), string(p.wearerOf(size)), body),
		})
	}
}

// easeWords says by how much a piece is wider than a body, and what that is
// called.
func easeWords(in float64, body stock.Range) string {
	ease := in - body.High
	if in < body.Low {
		return units.Inches((body.Low-in)*stock.MMPerInch) + " in less than"
	}
	name := ""
	for _, fit := range stock.Fits() {
		if fit.Inches.Holds(ease, 0) {
			name = " (" + fit.Name + ")"
		}
	}
	return units.Inches(math.Max(0, ease)*stock.MMPerInch) + " in more" + name + " than"
}
