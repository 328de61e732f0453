package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var returnUnknown = &Rule{
	Name:     "return-unknown",
	Family:   "branches",
	Severity: Error,
	OfPiece:  true,
	Summary:  "A return goes to the stem or to a branch that is open.",
	Why:      "The maker stands at the foot of a branch and is sent to a place that does not exist, or that was left before.",
	Bad: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, sc in 2nd ch from hook and in each ch of A, return
  to stem, sc in next 2 ch, return to B, sc in next 3 ch.
Fasten off.
`,
	Good: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, sc in 2nd ch from hook and in each ch of A, return
  to stem, sc in next 2 ch, sc in next 3 ch.
Fasten off.
`,
	Check: checkReturnUnknown,
}

func checkReturnUnknown(p *Pass) {
	for _, f := range p.faults(fabric.ReturnUnknown) {
		open := openBefore(f.row, f.Span)
		if len(open) == 0 && hasFault(&f.row.Tallies[f.sizes[0]], fabric.BranchChainLeft) {
			continue // an earlier return went too far
		}
		message := "nothing to return from: no branch is open here"
		if len(open) > 0 {
			message = "no " + strings.TrimPrefix(f.branch(), "the ") + " to return to: " + returnable(open) + " can be returned to"
		}
		finding := Finding{Message: message}
		if fixes := p.returns(f, open); len(fixes) > 0 {
			finding.Fix, finding.Alternatives = &fixes[0], fixes[1:]
		}
		p.reportFault(f, finding)
	}
}

// returnable lists the stem and the branches that are open.
func returnable(open []string) string {
	if len(open) == 1 {
		return "only the stem"
	}
	return both(append([]string{"the stem"}, open[1:]...))
}

// openBefore names what could be returned to at a place: the stem and the
// branches that are open, but for the innermost, which is being left.
func openBefore(row *fabric.Row, at source.Span) []string {
	open := branchesAt(row.Tree, at.Start)
	if len(open) == 0 {
		return nil
	}
	out := []string{"stem"}
	for _, name := range open[:len(open)-1] {
		if name != "" {
			out = append(out, row.Tree.AsWritten(name))
		}
	}
	return out
}

// branchesAt names the branches that are open at a place, the innermost last.
func branchesAt(r *syntax.Row, at int) []string {
	var open []string
	syntax.Walk(r.Clauses, func(c syntax.Clause) {
		if c.Span.Start >= at {
			return
		}
		switch n := c.Node.(type) {
		case *syntax.Branch:
			open = append(open, n.Name)
		case *syntax.Return:
			open = n.Leaves(open)
		}
	})
	return open
}

// returns are the fixes that go where there is a way, after which no later
// return is lost: first where the row then fits best, of equals the nearest.
// Where no branch is open, the return is left out.
func (p *Pass) returns(f *fault, open []string) []Fix {
	if len(open) == 0 {
		return []Fix{{
			Title: "leave out " + quoted(f.row.Tree.Source(f.Span)),
			Edits: []source.Edit{{Span: f.row.Tree.Abs(newWriter(f.row, nil).separate(f.Span))}},
		}}
	}
	swatch, names := p.Fabric.Swatch(f.row), namings(f.row.Tree, f.Name, f.Span)
	if swatch == nil || len(names) == 0 {
		return nil
	}
	var ways []outcome
	for _, name := range slices.Backward(open) {
		c := change{row: f.row, edits: []source.Edit{{Span: names[0], New: name}}}
		if w := p.tried(swatch, "return to "+name, c); lostReturns(w.row) < lostReturns(f.row) {
			ways = append(ways, w)
		}
	}
	return likeliest(ways)
}

// lostReturns counts the returns of a row for which there is no way, in all
// sizes.
func lostReturns(row *fabric.Row) int {
	n := 0
	for size := range row.Tallies {
		for _, f := range row.Tallies[size].Faults {
			if f.Kind == fabric.ReturnUnknown {
				n++
			}
		}
	}
	return n
}
