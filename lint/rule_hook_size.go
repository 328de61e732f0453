package lint

import (
	"strings"

	"stitchproof/lang/materials"
	"stitchproof/lang/source"
	"stitchproof/lang/stock"
)

var hookSize = &Rule{
	Name:     "hook-size",
	Family:   "materials",
	Severity: Warning,
	Summary:  "The letter or number of a hook and its millimetres are those of one hook.",
	Why: "Half the makers read the letter, the other half the millimetres. Where the two disagree, half of them work " +
		"with the wrong hook, and nothing comes out to size.",
	Bad: `Pattern: Oak leaf mat
Terms: US
Hook: 4.5 mm (US G-6)

Piece: Mat
Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Fasten off.
`,
	Good: `Pattern: Oak leaf mat
Terms: US
Hook: 4 mm (US G-6)

Piece: Mat
Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Fasten off.
`,
	Sources: []string{
		"Craft Yarn Council, hook table (memory); pairs as printed by Spinrite, matifs.com and others, each named in lang/stock/data/hooks.tsv",
		"Publications disagree on some labels (P is 10, 11.5 or 15 mm): every published pair is accepted, with 0.06 mm for rounding",
	},
	Check: checkHookSize,
}

func checkHookSize(p *Pass) {
	for _, h := range p.Materials.Hooks {
		if largest := stock.LargestSteel(); h.Steel && h.MM > largest {
			p.Report(Finding{Span: h.Span, Message: "a steel hook of " + mm(h.MM) + ", and the largest of any table is " + mm(largest)})
		}
		for _, l := range h.Labels {
			published := l.Published()
			switch {
			case len(published) == 0:
				p.unheardLabel(l)
			case h.MM == 0:
				p.vagueLabel(l, published)
			case !stock.AnyIs(published, h.MM):
				p.wrongLabel(h, l, published)
			}
		}
	}
}

// unheardLabel reports a letter and a number that no publication puts together.
func (p *Pass) unheardLabel(l materials.HookLabel) {
	letter := stock.Labelled(l.Kind, l.Letter, "")
	if l.Letter == "" || l.Number == "" || len(letter) == 0 {
		return
	}
	p.Report(Finding{
		Span:    l.Span,
		Message: "no table has a hook " + quoted(p.File.Text.Slice(l.Span)) + ": " + meanings(letter),
	})
}

// spreadOfLabel is how far apart the sizes of one label may be, in
// millimetres, before a maker is at a loss; common practice.
const spreadOfLabel = 1

// vagueLabel reports a label without millimetres that publications give to
// hooks far apart.
func (p *Pass) vagueLabel(l materials.HookLabel, published []stock.Label) {
	if l.Letter == "" {
		return
	}
	var sizes []stock.Range
	for _, pub := range published {
		sizes = append(sizes, pub.MM)
	}
	if stock.Hull(sizes).Width() <= spreadOfLabel {
		return
	}
	p.Report(Finding{
		Span:    l.Span,
		Message: quoted(p.File.Text.Slice(l.Span)) + " alone may be several hooks (" + meanings(published) + "): give the millimetres too",
	})
}

func (p *Pass) wrongLabel(h materials.Hook, l materials.HookLabel, published []stock.Label) {
	f := Finding{
		Span:    h.Span.Union(l.Span),
		Message: "the hook is " + mm(h.MM) + " and " + quoted(p.File.Text.Slice(l.Span)) + ", and " + meanings(published),
	}
	kind := published[0].Kind
	usual, known := stock.UsualLabel(kind, h.MM)
	if known {
		f.Message += "; " + mm(h.MM) + " is " + usual.String()
	}
	if size := published[0].MM; size.Width() == 0 {
		f.Fix = &Fix{Title: "write " + mm(size.Low), Edits: []source.Edit{{Span: h.Span, New: mm(size.Low)}}}
		if known {
			f.Alternatives = []Fix{{Title: "write " + usual.String(), Edits: []source.Edit{{Span: l.Span, New: usual.String()}}}}
		}
	}
	p.Report(f)
}

// meanings tells what labels stand for: `US G-6 is 4 mm`, `US P is 10, 11.5 or 15 mm`.
func meanings(labels []stock.Label) string {
	var order []string
	sizes := map[string][]string{}
	for _, l := range labels {
		name := l.String()
		if sizes[name] == nil {
			order = append(order, name)
		}
		sizes[name] = append(sizes[name], l.MM.String())
	}
	parts := make([]string, len(order))
	for i, name := range order {
		parts[i] = name + " is " + either(sizes[name]) + " mm"
	}
	return strings.Join(parts, ", ")
}
