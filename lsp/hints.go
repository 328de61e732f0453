package lsp

import (
	"go.lsp.dev/protocol"

	"stitchproof/lang/fabric"
)

// inlayHints shows, in the part of the document that is asked for, the running
// count after each clause and the total at each row's end. A row that cannot be
// counted shows nothing.
func inlayHints(v *view, params *protocol.InlayHintParams) []protocol.InlayHint {
	asked := v.span(params.Range)
	var hints []protocol.InlayHint
	show := func(offset int, label string) {
		if asked.Start <= offset && offset <= asked.End {
			hints = append(hints, protocol.InlayHint{
				Position: v.position(offset), Label: protocol.String(label), PaddingLeft: new(true),
			})
		}
	}
	for row := range rows(v.Fabric) {
		span := writtenSpan(row.Tree)
		counts, ok := made(row)
		if !ok || span.End < asked.Start || asked.End < span.Start {
			continue
		}
		if v.hints.running {
			for _, step := range row.Steps {
				if moves(&step, v.Fabric.Sizes()) {
					show(row.Tree.Abs(step.Span).End, perSize(step.Total))
				}
			}
		}
		if v.hints.totals {
			show(span.End, "= "+sts(counts))
		}
	}
	return hints
}

// moves tells whether a clause makes stitches or uses places, in some size; where
// none does, the count after it is the count before it. A clause of a row that
// works other rows again has no count of its own.
func moves(step *fabric.Step, sizes int) bool {
	if !step.Known || len(step.Total) != sizes {
		return false
	}
	for size := range sizes {
		if step.Made[size] != 0 || step.Used[size] != 0 {
			return true
		}
	}
	return false
}
