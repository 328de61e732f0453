package lint

import (
	"slices"

	"stitchproof/lang/syntax"
)

// slipOfPen is a fault of writing with the row it stands in.
type slipOfPen struct {
	syntax.Problem
	row *syntax.Row
}

// problems gathers the faults of writing of some kinds in what is looked at.
func (p *Pass) problems(kinds ...syntax.ProblemKind) []slipOfPen {
	var out []slipOfPen
	add := func(r *syntax.Row) {
		for _, problem := range r.Problems {
			if slices.Contains(kinds, problem.Kind) {
				out = append(out, slipOfPen{problem, r})
			}
		}
	}
	for _, d := range p.Definitions {
		if d.Row != nil {
			add(d.Row)
		}
	}
	for row := range p.rows() {
		add(row.Tree)
	}
	return out
}
