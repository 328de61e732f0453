package lint

import (
	"slices"
	"strconv"

	"stitchproof/lang/materials"
	"stitchproof/lang/phrase"
	"stitchproof/lang/stitch"
	"stitchproof/lang/stock"
)

var yarnWeight = &Rule{
	Name:     "yarn-weight",
	Family:   "materials",
	Severity: Warning,
	Summary:  "A yarn's weight has the number that goes with its name, and hook and gauge are not far from those published for it.",
	Why: "A maker who has to take another yarn goes by its weight. `Worsted (3)` names two weights, and a gauge of " +
		"twice the stitches is that of a yarn half as thick.",
	Bad: `Pattern: Oak leaf mat
Terms: US
Hook: 5.5 mm (US I-9)
Yarn: bark brown, worsted (3), 20 m (22 yd)
Gauge: 13 sc and 14 rows = 10 cm (4 in)

Piece: Mat
Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Fasten off.
`,
	Good: `Pattern: Oak leaf mat
Terms: US
Hook: 5.5 mm (US I-9)
Yarn: bark brown, worsted (4), 20 m (22 yd)
Gauge: 13 sc and 14 rows = 10 cm (4 in)

Piece: Mat
Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Fasten off.
`,
	Sources: []string{
		"Standard Yarn Weight System as printed in Crochet World (Annie's), October 2018, p. 64 (read); names in the UK and Australia, skeinqueenyarns.co.uk and knitsplease.co.uk (read)",
		"The published ranges are guidelines: a gauge is told of only where it lies outside those of the neighbouring weights as well, and a hook without a gauge, which is chosen large for a shawl and small for a pot holder, outside those of two weights either way (common practice)",
	},
	Check: checkYarnWeight,
}

func checkYarnWeight(p *Pass) {
	for i, y := range p.Materials.Yarns {
		told := i > 0 && y.WeightSpan == p.Materials.Yarns[i-1].WeightSpan // one description of several yarns
		if told || !p.weightAgrees(y) {
			continue
		}
		if w, ok := y.Weight(); ok && !p.Materials.Doubled() && len(p.Materials.Yarns) == numbered(p.Materials.Yarns, w.Number) {
			p.farFrom(w, y)
			return // the others have the same weight
		}
	}
}

// numbered is how many yarns are of a weight: hook and gauge can be held against
// one only.
func numbered(yarns []materials.Yarn, weight int) int {
	n := 0
	for _, y := range yarns {
		if w, ok := y.Weight(); ok && w.Number == weight {
			n++
		}
	}
	return n
}

// weightAgrees reports a number and a name that are of different weights.
func (p *Pass) weightAgrees(y materials.Yarn) bool {
	weights := y.Weights
	if len(weights) == 0 && p.Fabric.Dialect == stitch.UK {
		weights = y.Ply
	}
	if y.Number == nil || len(weights) == 0 {
		return true
	}
	if slices.ContainsFunc(weights, func(w stock.Weight) bool { return w.Number == *y.Number }) {
		return true
	}
	numbered, _ := stock.WeightNumbered(*y.Number)
	var named []string
	for _, w := range weights {
		named = append(named, strconv.Itoa(w.Number)+" ("+w.Name+")")
	}
	p.Report(Finding{
		Span: y.WeightSpan,
		Message: quoted(p.File.Text.Slice(y.WeightSpan)) + " names two weights: by its name it is " + either(named) +
			", and " + strconv.Itoa(*y.Number) + " is " + numbered.Name,
	})
	return false
}

// stuffed tells of a toy, which is worked tighter than the yarn suggests so that
// the filling does not show.
var stuffed = phrase.MustCompile(`\b(?:stuff|filling|fiberfill|fibrefill|polyfill|toy|amigurumi)`)

// farFrom reports a gauge, or where there is none a hook, that is far from what
// is published for a weight.
func (p *Pass) farFrom(w stock.Weight, y materials.Yarn) {
	sc := reach(w, gaugeReach, func(w stock.Weight) stock.Range { return w.SC })
	for _, g := range p.Materials.Gauges {
		if meaning, _ := stitch.Find(g.Of); meaning.In(p.Fabric.Dialect) != stitch.ByID("sc") {
			continue
		}
		if n := g.Stitches * 100 / g.Length; !sc.Holds(n, 0.5) && !(n > sc.High && p.stuffed()) {
			p.Report(Finding{
				Span:    g.Span,
				Message: "a gauge of " + strconv.Itoa(int(n+0.5)) + " sc to 10 cm is far from " + w.SC.String() + ", which is published for " + w.Name + " yarn (" + strconv.Itoa(w.Number) + ")",
				Related: []Related{{y.WeightSpan, "the yarn"}},
			})
		}
		return
	}
	if len(p.Materials.Gauges) > 0 || len(p.Materials.Hooks) != 1 {
		return
	}
	h := p.Materials.Hooks[0]
	hook := reach(w, hookReach, func(w stock.Weight) stock.Range { return w.Hook })
	if w.Number == 0 {
		hook.Low = 0 // of thread no weight is the finest
	}
	if h.MM == 0 || hook.Holds(h.MM, 0) || h.MM < hook.Low && p.stuffed() {
		return
	}
	p.Report(Finding{
		Span:    h.Span,
		Message: "a hook of " + mm(h.MM) + " is far from " + w.Hook.String() + " mm, which is published for " + w.Name + " yarn (" + strconv.Itoa(w.Number) + ")",
		Related: []Related{{y.WeightSpan, "the yarn"}},
	})
}

func (p *Pass) stuffed() bool { return p.tells(stuffed) }

// How many weights lighter or heavier the gauge and the hook of a yarn may be those of.
const (
	gaugeReach = 1
	hookReach  = 2
)

// reach is what is published for a weight and for so many weights on both sides of it.
func reach(w stock.Weight, weights int, published func(stock.Weight) stock.Range) stock.Range {
	var ranges []stock.Range
	for n := w.Number - weights; n <= w.Number+weights; n++ {
		if near, ok := stock.WeightNumbered(n); ok {
			ranges = append(ranges, published(near))
		}
	}
	return stock.Hull(ranges)
}
