package lsp

import (
	"slices"
	"strconv"

	"stitchproof/lang/materials"
	"stitchproof/lang/names"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/stock"
)

// hoverName is the card of a yarn or a branch where it is named.
func (v *view) hoverName(at int) (*card, source.Span) {
	name, m := v.names().At(at)
	if name == nil || !m.Span.Contains(at) {
		return nil, source.Span{}
	}
	switch name.Kind {
	case names.Yarn:
		for _, y := range v.Materials.Yarns {
			for _, d := range name.Declarations() {
				if v.Text.Slice(d.Span) == y.Name {
					return v.yarnCard(&y), m.Span
				}
			}
		}
	case names.Branch:
		if c := v.branchCard(m); c != nil {
			return c, m.Span
		}
	}
	return nil, source.Span{}
}

// branchCard is the ledger of a branch as it comes home or, where it does not, at
// the end of its row.
func (v *view) branchCard(m names.Mention) *card {
	var c *card
	for row := range v.Fabric.Rows() {
		if !row.Tree.Span().Contains(m.Span.Start) {
			continue
		}
		for i := range row.Steps {
			step := &row.Steps[i]
			for _, b := range step.Ledger {
				if b.Name == m.Word {
					c = &card{title: branchName(row.Tree, b), facts: []fact{{"", ledger(b)}}}
				}
			}
			for _, b := range step.Home {
				if b.Name == m.Word {
					return &card{title: branchName(row.Tree, b) + ", closed", facts: []fact{{"", ledger(b)}}}
				}
			}
		}
	}
	return c
}

// hoverMaterials is the card of a yarn, a hook or a gauge in the header.
func (v *view) hoverMaterials(at int) (*card, source.Span) {
	list := v.Materials
	for _, y := range list.Yarns {
		if y.Span.Contains(at) {
			return v.yarnCard(&y), y.Span
		}
	}
	for _, h := range list.Hooks {
		if c := hookCard(&h); h.Span.Contains(at) && len(c.facts) > 0 {
			return c, h.Span
		}
	}
	for _, g := range list.Gauges {
		if g.Span.Contains(at) {
			return v.gaugeCard(&g), g.Span
		}
	}
	return nil, source.Span{}
}

// yarnCard says what is published of a yarn's weight.
func (v *view) yarnCard(y *materials.Yarn) *card {
	c := &card{title: "Yarn " + y.Name, facts: []fact{{"Listed as", y.Text}}}
	for _, w := range weights(y) {
		c.add("Weight", v.published(w))
	}
	return c
}

// weights are those that a yarn may have by its description.
func weights(y *materials.Yarn) []stock.Weight {
	if w, ok := y.Weight(); ok {
		return []stock.Weight{w}
	}
	return y.Weights
}

// published is what is published of a weight, in a line.
func (v *view) published(w stock.Weight) string {
	return w.Name + " (" + strconv.Itoa(w.Number) + "), " + w.SC.String() + " " + stitch.ByID("sc").Abbreviation(v.Fabric.Dialect) +
		" to 10 cm, hook " + w.Hook.String() + " mm"
}

// gaugeCard says what a gauge makes of one stitch and one row, and what is
// published of the weights that the yarns have.
func (v *view) gaugeCard(g *materials.Gauge) *card {
	c := &card{title: source.Excerpt(v.Text.Slice(g.Span))}
	if g.Stitches > 0 {
		c.add("One stitch", inMMAndInches(g.Length/g.Stitches)+" wide")
	}
	if g.Rows > 0 {
		c.add("One row", inMMAndInches(g.Length/g.Rows)+" high")
	}
	var said []int
	for _, y := range v.Materials.Yarns {
		for _, w := range weights(&y) {
			if !slices.Contains(said, w.Number) {
				said = append(said, w.Number)
				c.add("Published for the yarn", v.published(w))
			}
		}
	}
	return c
}

// inMMAndInches writes a length in millimetres so that a stitch can be told from
// its neighbour in size: 5.6 mm (0.22 in).
func inMMAndInches(mm float64) string {
	return strconv.FormatFloat(mm, 'f', 1, 64) + " mm (" + strconv.FormatFloat(mm/stock.MMPerInch, 'f', 2, 64) + " in)"
}

// hookCard says what publications take a hook's labels for.
func hookCard(h *materials.Hook) *card {
	c := &card{title: "Hook"}
	if h.MM > 0 {
		c.title = "Hook " + decimal(h.MM) + " mm"
	}
	for _, l := range h.Labels {
		for _, p := range l.Published() {
			c.add(p.String(), p.MM.String()+" mm ("+p.Source+")")
		}
	}
	return c
}
