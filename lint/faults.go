package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// fault is one fault of the fabric, the same one in several sizes as one.
type fault struct {
	fabric.Fault // as it is in the first of its sizes
	sized[fabric.Fault]
	row  *fabric.Row
	span source.Span // in the file
}

// faults gathers the faults of some kinds that are slips of their own. A row
// whose brackets or stars do not pair is left out, and so is what follows from
// an earlier fault: of the row, or of a row before it.
func (p *Pass) faults(kinds ...fabric.FaultKind) []*fault {
	var out []*fault
	for row := range p.worked() {
		if miswritten(row.Tree) || len(missized(row.Tree, p.File.SizeCount())) > 0 {
			continue
		}
		var all []fabric.Fault
		for size := range row.Tallies {
			all = append(all, p.own(row, size)...)
		}
		if !slices.Contains(p.Parts, row.Piece) {
			all = slices.DeleteFunc(all, p.ofPart)
		}
		out = append(out, gather(row, all, kinds)...)
	}
	return out
}

// ofPart tells a fault of a branch that a word of the pattern's own stands for, and that is wrong where
// the word is told: there it is told once.
func (p *Pass) ofPart(f fabric.Fault) bool {
	return f.Kind == fabric.BranchChainLeft && f.Name != "" && slices.ContainsFunc(p.Fabric.Parts, func(part *fabric.Piece) bool {
		return strings.EqualFold(part.Tree.Name, f.Name) && part.Rows[0].Misfit() > 0
	})
}

// own are the faults of a row that follow from no other. What is wrong within a
// branch is so whatever the row below is, but for a branch from which the words
// lead nowhere.
func (p *Pass) own(row *fabric.Row, size int) []fabric.Fault {
	var out []fabric.Fault
	derailed, astray := false, false
	for _, f := range row.Tallies[size].Faults {
		follows := derailed || p.doubts[row][size] != certain && !absentBelow(row, size, f)
		if inBranch(f) {
			follows = astray && (f.Kind == fabric.BranchUnreturned || f.Kind == fabric.BranchEmpty)
		}
		if follows && (f.Kind == fabric.RowShort || slices.Contains(misfits, f.Kind)) {
			continue
		}
		astray = astray || f.Kind == fabric.ReturnUnknown || f.Kind == fabric.PlaceAbsent && f.Name == ""
		derailed = derailed || slices.Contains(derailing, f.Kind)
		out = append(out, f)
	}
	return out
}

// inBranch tells whether a fault lies within a branch and its own chain, whatever
// the row below is.
func inBranch(f fabric.Fault) bool {
	switch f.Kind {
	case fabric.BranchUnreturned, fabric.BranchChainLeft, fabric.BranchEmpty, fabric.ReturnUnknown:
		return true
	}
	return f.OnBranch
}

// absentBelow tells whether a stitch that is asked for is neither made in the row
// below nor stated there. That row may have a wrong count and nothing else.
func absentBelow(row *fabric.Row, size int, f fabric.Fault) bool {
	below := row.Below(size)
	if f.Kind != fabric.PlaceAbsent || f.Name == "" || below == nil || below.Stated == nil {
		return false
	}
	t := &below.Tallies[size]
	return t.Known && len(t.Faults) == 0 && t.Part(f.Name) == 0 &&
		!slices.ContainsFunc(t.Compared, func(c fabric.Compared) bool { return c.Name == f.Name || c.Result == fabric.Uncheckable })
}

// gather picks the faults of some kinds, the same one in several sizes as one.
func gather(row *fabric.Row, found []fabric.Fault, kinds []fabric.FaultKind) []*fault {
	var out []*fault
	for _, f := range found {
		if !slices.Contains(kinds, f.Kind) {
			continue
		}
		span := row.Tree.Abs(f.Span)
		i := slices.IndexFunc(out, func(g *fault) bool {
			return g.Kind == f.Kind && g.span == span && g.Name == f.Name && !slices.Contains(g.sizes, f.Size)
		})
		if i < 0 {
			i = len(out)
			out = append(out, &fault{Fault: f, row: row, span: span})
		}
		out[i].add(f.Size, f)
	}
	return out
}

// miswritten tells whether a row's brackets and stars are so that nobody can
// say what is repeated.
func miswritten(r *syntax.Row) bool {
	return slices.ContainsFunc(r.Problems, func(p syntax.Problem) bool { return p.Kind != syntax.StarUnused })
}

// hasFault tells whether a tally has a fault of one of some kinds.
func hasFault(t *fabric.Tally, kinds ...fabric.FaultKind) bool {
	return slices.ContainsFunc(t.Faults, func(f fabric.Fault) bool { return slices.Contains(kinds, f.Kind) })
}

// misfits are the faults by which a row does not fit the row below or its own
// branches. Where one of them is told, a count that comes out wrong is its
// consequence.
var misfits = []fabric.FaultKind{
	fabric.RowOver, fabric.RepeatRemainder, fabric.PlaceAbsent, fabric.StemExhausted,
	fabric.BranchUnreturned, fabric.BranchChainLeft, fabric.BranchEmpty, fabric.ReturnUnknown,
}

// derailing are the faults after which the rest of a row is out of step.
var derailing = []fabric.FaultKind{
	fabric.RowOver, fabric.RepeatRemainder, fabric.PlaceAbsent, fabric.StemExhausted, fabric.ReturnUnknown,
}

// reportFault reports a fault in a rule's words.
func (p *Pass) reportFault(f *fault, finding Finding) {
	finding.Span = f.span
	p.inSizes(f.sizes, finding)
}

// reportMisfit reports a fault by which a row does not fit the row below or its
// own branches, with what would make it fit.
func (p *Pass) reportMisfit(f *fault, finding Finding) {
	p.reportFault(f, p.mending(f.row).fitted(finding))
}

// related is the place in the row that the engine says explains a fault, with
// a rule's words for it; nothing where it names none.
func (f *fault) related(message string) []Related {
	if f.Related.Empty() {
		return nil
	}
	return []Related{{f.row.Tree.Abs(f.Related), message}}
}
