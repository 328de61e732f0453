package lsp

import (
	"strings"

	"go.lsp.dev/protocol"

	"stitchproof/lint/report"
)

// codeLens tells over each heading what its piece comes to.
func codeLens(v *view, _ *protocol.CodeLensParams) []protocol.CodeLens {
	out := []protocol.CodeLens{}
	if !v.lenses {
		return out
	}
	counted := report.Counted("", v.Analysis)
	for i, piece := range v.Fabric.Pieces {
		lines := counted.Pieces[i].Lines()
		out = append(out, protocol.CodeLens{
			Range: v.rangeOf(headingOf(piece.Tree)), Command: protocol.Command{Title: strings.Join(lines, " · ")},
		})
	}
	return out
}
