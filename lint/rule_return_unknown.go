package lint

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
)

var returnUnknown = &Rule{
	Name:     "return-unknown",
	Family:   "branches",
	Severity: Error,
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
		open := openBranches(f)
		message := "nothing to return from: no branch is open"
		if len(open) > 0 && f.Name != "" {
			message = "no " + f.branch() + " to return to: " + both(open) + " can be returned to"
		} else if f.Name != "" {
			message = "no " + f.branch() + " to return to: no branch is open"
		}
		finding := Finding{Message: message}
		if fixes := p.returns(f, open); len(fixes) > 0 {
			finding.Fix, finding.Alternatives = &fixes[0], fixes[1:]
		}
		p.reportFault(f, finding)
	}
}

// openBranches names what could have been returned to: the stem and the
// branches that are open, but for the innermost, which is being left.
func openBranches(f *fault) []string {
	var open []string
	for _, s := range f.row.Steps {
		if s.Span.Start >= f.Span.Start {
			break
		}
		open = nil
		for i, b := range s.Ledger {
			if i < len(s.Ledger)-1 && b.Name != "" {
				open = append(open, f.row.Tree.AsWritten(b.Name))
			}
		}
	}
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
	swatch, names := f.row.Swatch(), namings(f.row.Tree, f.Name, f.Span)
	if swatch == nil || len(names) == 0 {
		return nil
	}
	type way struct {
		Fix
		misfit int
	}
	var ways []way
	for _, name := range slices.Backward(open) {
		c := change{row: f.row, edits: []source.Edit{{Span: names[0], New: name}}}
		rows, _ := swatch.Try(p.File.Reread(f.row.Tree, c.text()))
		if lostReturns(rows[0]) < lostReturns(f.row) {
			ways = append(ways, way{Fix{Title: "return to " + name, Edits: c.inFile()}, rows[0].Misfit()})
		}
	}
	slices.SortStableFunc(ways, func(a, b way) int { return a.misfit - b.misfit })
	var out []Fix
	for _, w := range ways {
		out = append(out, w.Fix)
	}
	return out
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
