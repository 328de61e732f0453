package lint

import (
	"strings"

	"stitchproof/lang/materials"
	"stitchproof/lang/source"
)

var notionUnlisted = &Rule{
	Name:     "notion-unlisted",
	Family:   "materials",
	Severity: Warning,
	Summary:  "What the instructions ask for besides yarn and hook is in the materials, in as large a number and of that size.",
	Why:      "A maker who has gathered what is listed sits down to work. A marker, filling or needle that was not listed is missing when it is needed.",
	Bad: `Pattern: Acorn
Terms: US
Yarn: oak brown, DK (3), 10 m (11 yd)
Hook: 3.25 mm (US D-3)
Notions: tapestry needle

Piece: Acorn
Rnd 1: 6 sc in magic ring, place marker in first st; do not join. (6 sc)
Rnd 2: 2 sc in each st around, move marker up. (12 sc)
Rnd 3: Sc in each st around. (12 sc)
Fasten off.
`,
	Good: `Pattern: Acorn
Terms: US
Yarn: oak brown, DK (3), 10 m (11 yd)
Hook: 3.25 mm (US D-3)
Notions: tapestry needle, stitch marker

Piece: Acorn
Rnd 1: 6 sc in magic ring, place marker in first st; do not join. (6 sc)
Rnd 2: 2 sc in each st around, move marker up. (12 sc)
Rnd 3: Sc in each st around. (12 sc)
Fasten off.
`,
	Check: checkNotionUnlisted,
}

// notionTold is where instructions first ask for a notion.
type notionTold struct {
	name string
	at   source.Span // in the section
}

// notionsIn are the notions that the instructions of a section ask for.
var notionsIn = &fact[[]notionTold]{func(p *Pass, s section) []notionTold {
	if s.piece == nil {
		return nil
	}
	var out []notionTold
	for _, n := range materials.Notions() {
		if !n.May(s.told) {
			continue
		}
		if at, found := p.toldOf(&n, p.directionsIn(s)); found {
			out = append(out, notionTold{n.Name, s.place(at)})
		}
	}
	return out
}}

func checkNotionUnlisted(p *Pass) {
	if !p.Materials.Given {
		return
	}
	told := map[string]source.Span{}
	for s, all := range notionsIn.in(p) {
		for _, n := range all {
			if _, before := told[n.name]; !before {
				told[n.name] = s.abs(n.at)
			}
		}
	}
	for _, n := range materials.Notions() {
		at, asked := told[n.Name]
		if !asked || p.Materials.Has(&n) || p.Materials.HasWords(p.File.Text.Slice(at)) || n.Handy && !p.Materials.ListsNotions() {
			continue
		}
		f := Finding{
			Span:    at,
			Message: quoted(p.File.Text.Slice(at)) + " needs " + n.Name + ", which " + isOrAre(n.Name) + " not in the materials",
			Fix:     p.listNotion(n.Name),
		}
		if n.Handy {
			p.Note(f)
		} else {
			p.Report(f)
		}
	}
	p.moreThanListed()
}

// isOrAre is the verb for the name of a notion.
func isOrAre(name string) string {
	if strings.HasSuffix(name, "s") && !strings.HasSuffix(name, "ss") {
		return "are"
	}
	return "is"
}

// toldOf is the first place where some instructions ask for a notion.
func (p *Pass) toldOf(n *materials.Notion, directions []source.Span) (at source.Span, found bool) {
	for _, span := range directions {
		text := p.File.Text.Slice(span)
		if found && span.Start > at.Start || !n.May(strings.ToLower(text)) {
			continue
		}
		if m := n.ToldIn(text); m != nil {
			here := source.Span{Start: m[0], End: m[1]}.Shift(span.Start)
			if !found || here.Start < at.Start {
				at, found = here, true
			}
		}
	}
	return at, found
}

// listNotion adds a notion to the materials, nil where they have no line for it.
func (p *Pass) listNotion(name string) *Fix {
	for _, f := range p.File.Header {
		if f.Key == "notions" && f.Value != "" && !strings.EqualFold(f.Value, "none") {
			return &Fix{Title: "list " + name, Safe: true, Edits: []source.Edit{{Span: source.At(f.ValueSpan.End), New: ", " + name}}}
		}
	}
	return nil
}
