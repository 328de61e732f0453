package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/materials"
	"stitchproof/lang/source"
)

var notionUnused = &Rule{
	Name:     "notion-unused",
	Family:   "materials",
	Severity: Warning,
	Summary:  "What the materials list to become part of the piece, buttons or filling, is spoken of in the instructions, and all of it is used.",
	Why: "A maker who has bought eight buttons and is never told to sew them on looks for the lines that got lost. Tools are " +
		"another matter: where a needle is wanted she knows herself.",
	Bad: `Pattern: Hedge jacket
Terms: US
Yarn: oak brown, DK (3), 10 m (11 yd)
Hook: 5 mm (US H-8)
Notions: 8 buttons, tapestry needle

Piece: Back
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Fasten off.
`,
	Good: `Pattern: Hedge jacket
Terms: US
Yarn: oak brown, DK (3), 10 m (11 yd)
Hook: 5 mm (US H-8)
Notions: 8 buttons, tapestry needle

Piece: Back
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Fasten off.
Sew on the buttons.
`,
	Check: checkNotionUnused,
}

func checkNotionUnused(p *Pass) {
	if len(p.Fabric.Pieces) == 0 {
		return
	}
	said := ""
	for _, n := range materials.Notions() {
		at, listed := p.lasting(&n)
		if !listed {
			continue
		}
		if said == "" {
			said = p.besideMaterials()
		}
		if !n.UsedIn(said) {
			p.Report(Finding{Span: at, Message: "no line besides the materials speaks of " + quoted(p.File.Text.Slice(at))})
		}
	}
	p.fewerThanListed()
}

// lasting is where the materials list a notion that becomes part of the piece.
func (p *Pass) lasting(n *materials.Notion) (source.Span, bool) {
	for _, item := range p.Materials.Items(p.File) {
		if at := n.LastsIn(p.File.Text.Slice(item)); at != nil {
			return source.Span{Start: at[0], End: at[1]}.Shift(item.Start), true
		}
	}
	return source.Span{}, false
}

// besideMaterials is all that the pattern says outside of its list of materials and of
// comments, in lower case.
func (p *Pass) besideMaterials() string {
	hidden := slices.Clone(p.Materials.Lines)
	for _, f := range p.File.Header {
		if f.Key == "notions" || f.Key == "materials" {
			hidden = append(hidden, f.Span)
		}
	}
	for _, c := range p.File.Comments {
		hidden = append(hidden, c.Span)
	}
	text := []byte(p.File.Text.String())
	for _, span := range hidden {
		for i := span.Start; i < span.End; i++ {
			text[i] = ' '
		}
	}
	return strings.ToLower(string(text))
}
