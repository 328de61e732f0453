package lsp

import (
	"go.lsp.dev/protocol"
)

// documentColor shows a swatch at each plain colour word in a yarn's description.
func documentColor(v *view, _ *protocol.DocumentColorParams) []protocol.ColorInformation {
	out := []protocol.ColorInformation{}
	for _, y := range v.Materials.Yarns {
		for _, c := range y.Colours(v.Text) {
			share := func(i int) float64 { return float64(c.RGB[i]) / 255 }
			out = append(out, protocol.ColorInformation{
				Range: v.rangeOf(c.Span),
				Color: protocol.Color{Red: share(0), Green: share(1), Blue: share(2), Alpha: 1},
			})
		}
	}
	return out
}

// colorPresentation writes a colour as the word that stands there: a yarn is what it
// is, and a swatch picks no other.
func colorPresentation(v *view, params *protocol.ColorPresentationParams) []protocol.ColorPresentation {
	return []protocol.ColorPresentation{{Label: v.Text.Slice(v.span(params.Range))}}
}
