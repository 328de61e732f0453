package lsp

import (
	"go.lsp.dev/protocol"
)

// inlayHints shows, in the part of the document that is asked for, the running
// count after each clause that changes it and the total at each row's end. A row
// that cannot be counted shows nothing. A row that works other rows again has
// no counts of its own clauses.
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
	for row := range v.Fabric.Rows() {
		span := row.Tree.Written()
		counts, ok := made(row)
		if !ok || span.End < asked.Start || asked.End < span.Start {
			continue
		}
		if v.hints.running {
			for _, step := range row.Steps {
				if step.Known && len(step.Total) == len(counts) && some(step.Made) {
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
