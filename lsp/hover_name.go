package lsp

import (
	"strconv"

	"stitchproof/lang/materials"
	"stitchproof/lang/names"
	"stitchproof/lang/source"
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
		for _, y := range v.materials().Yarns {
			for _, d := range name.Declarations() {
				if v.Text.Slice(d.Span) == y.Name {
					return yarnCard(&y), m.Span
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

// hoverMaterials is the card of a yarn or a hook in the header.
func (v *view) hoverMaterials(at int) (*card, source.Span) {
	list := v.materials()
	for _, y := range list.Yarns {
		if y.Span.Contains(at) {
			return yarnCard(&y), y.Span
		}
	}
	for _, h := range list.Hooks {
		if c := hookCard(&h); h.Span.Contains(at) && len(c.facts) > 0 {
			return c, h.Span
		}
	}
	return nil, source.Span{}
}

// yarnCard says what is published of a yarn's weight.
func yarnCard(y *materials.Yarn) *card {
	c := &card{title: "Yarn " + y.Name, facts: []fact{{"Listed as", y.Text}}}
	weights := y.Weights
	if w, ok := y.Weight(); ok {
		weights = []stock.Weight{w}
	}
	for _, w := range weights {
		c.add("Weight", w.Name+" ("+strconv.Itoa(w.Number)+"), "+w.SC.String()+" sc to 10 cm, hook "+w.Hook.String()+" mm")
	}
	return c
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
