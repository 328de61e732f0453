package lsp

import (
	"strconv"
	"strings"

	"go.lsp.dev/protocol"

	"stitchproof/lang/fabric"
	"stitchproof/lang/syntax"
)

// inlayHints shows, in the part of the document that is asked for, the running
// count after each clause that changes it, where the branches stand, and the
// total at each row's end. A row that cannot be counted shows nothing. A row that
// works other rows again has no counts of its own clauses.
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
		if !ok || !span.Touches(asked) {
			continue
		}
		for i := range row.Steps {
			step := &row.Steps[i]
			if !step.Known || len(step.Total) != len(counts) {
				continue
			}
			end := row.Tree.Abs(step.Span).End
			if v.hints.running && some(step.Made) {
				show(end, perSize(step.Total))
			}
			if standing := branches(row, i); v.hints.branches && standing != "" {
				show(end, standing)
			}
		}
		if v.hints.totals {
			show(span.End, "= "+sts(counts))
		}
	}
	return hints
}

// branches tells in short where the work stands after a clause of a row that has
// branches: how much is worked, of what can be worked, of the one that the clause
// worked along and of those that came home as it did; after a return of the one
// returned to. The others stand as they were last told. It is empty where there is
// nothing to tell.
func branches(row *fabric.Row, i int) string {
	step := &row.Steps[i]
	at := step.Ledger
	var out []string
	switch {
	case some(step.Made):
		for _, b := range step.Home {
			out = append(out, standing(row.Tree, b))
		}
	case len(step.Home) == 0:
		return ""
	case len(at) == 0 && (i == 0 || len(row.Steps[i-1].Ledger) == 0): // back from a branch of an earlier line
	case len(at) == 0: // back on the stem, which has not moved meanwhile
		at = row.Steps[i-1].Ledger[:1]
	}
	if n := len(at); n > 0 && some(at[n-1].Chains) {
		out = append(out, standing(row.Tree, at[n-1]))
	}
	return strings.Join(out, ", ")
}

// standing is how far a branch is worked: A 4/8, or A 4/8 (5/9, 6/10).
func standing(row *syntax.Row, b fabric.BranchState) string {
	name := row.AsWritten(b.Name)
	if name == "" {
		name = "branch"
	}
	shares := make([]string, len(b.Worked))
	for size, n := range b.Worked {
		shares[size] = strconv.Itoa(n) + "/" + strconv.Itoa(b.Chains[size]-b.Skipped[size])
	}
	return name + " " + syntax.PerSize(shares)
}
