package lint

import (
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

var branchEmpty = &Rule{
	Name:     "branch-empty",
	Family:   "branches",
	Severity: Error,
	OfPiece:  true,
	Summary:  "Stitches are worked back along every branch.",
	Why: "A chain that is not worked back is a loose string, and there is no way home from its tip. The words for the way " +
		"back have been lost.",
	Bad: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, return to stem, sc in next 5 ch.
Fasten off.
`,
	Good: `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A, ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, sc in 2nd ch from hook and in each ch of A, return
  to stem, sc in next 5 ch.
Fasten off.
`,
	Check: checkBranchEmpty,
}

func checkBranchEmpty(p *Pass) {
	for _, f := range p.faults(fabric.BranchEmpty) {
		message := f.branch() + " makes no chain to work along"
		if f.N > 0 {
			message = "nothing is worked back along the " + f.num(func(f fabric.Fault) int { return f.N }) + " ch of " + f.branch()
		}
		finding := Finding{Message: message, Related: f.related(f.branch() + " leaves here")}
		if chains, work := chainedBefore(f); f.N == 0 && work != nil {
			finding.Message = f.branch() + " makes " + strconv.Itoa(chains) + " ch, and nothing says that it is worked from the hook: `in 2nd ch from hook` is lacking"
			finding.Fix = p.fromTheHook(f.row, chains, work)
		} else if ways := p.waysBack(f); len(ways) > 0 {
			finding.Fix, finding.Alternatives = &ways[0], ways[1:]
		}
		p.reportFault(f, finding)
	}
}

// chainedBefore is how many chains an empty branch makes before the first stitch that goes on
// along what lies below, and the clause of that; nil for none.
func chainedBefore(f *fault) (chains int, work *syntax.Clause) {
	begun := false
	for i := range f.row.Tree.Clauses {
		c := &f.row.Tree.Clauses[i]
		switch n := c.Node.(type) {
		case *syntax.Branch:
			begun, chains = n.Name == f.Name, 0
		case *syntax.Return:
			begun = false
		case *syntax.Chain:
			chains += n.Number.At(0)
		case *syntax.Work:
			if begun && chains > 0 && c.Span.Start >= f.Related.Start {
				return chains, c
			}
			begun = false
		}
	}
	return 0, nil
}

// fromTheHook is the fix that counts the first stitch along a chain from the hook, where the
// rest is just what the words go on along; nil where it is not.
func (p *Pass) fromTheHook(row *fabric.Row, chains int, work *syntax.Clause) *Fix {
	w := work.Node.(*syntax.Work)
	k := p.plain(w.Stitch)
	if k == nil || len(w.Places) != 1 || w.Places[0].Number.PerSize() || w.Places[0].Noun.Kind != syntax.NounChain {
		return nil
	}
	first, along := max(k.Turning, 1)+1, w.Places[0].Number.At(0)
	written := row.Tree.Source(work.Span)
	before, _, found := strings.Cut(written, " in ")
	if along < 2 || first-1+along != chains || !found {
		return nil
	}
	words := before + " in " + syntax.Nth(first) + " ch from hook and in next " + strconv.Itoa(along-1) + " ch"
	return &Fix{Title: "write " + quoted(words), Edits: []source.Edit{{Span: row.Tree.Abs(work.Span), New: words}}}
}

// waysBack are the fixes that work back along a branch's chain in a stitch that
// the row works elsewhere: first in the one in which the row then fits best, of
// equals the one it works first.
func (p *Pass) waysBack(f *fault) []Fix {
	after := slices.IndexFunc(f.row.Tree.Clauses, func(c syntax.Clause) bool { return c.Span == f.Span }) - 1
	swatch := p.Fabric.Swatch(f.row)
	if swatch == nil || after < 0 || f.N == 0 {
		return nil
	}
	_, free := f.row.Tree.Clauses[after].Node.(*syntax.Chain) // else its tip is joined
	var ways []outcome
	tried := map[string]bool{}
	for _, t := range f.row.Tree.Tokens {
		k := t.Stitch.In(p.Fabric.Dialect)
		if t.Kind != syntax.Stitch || k == nil || tried[k.ID] || k.Class != stitch.Plain && k.Class != stitch.Slip {
			continue
		}
		tried[k.ID] = true
		words := strings.ToLower(f.row.Tree.Source(t.Span)) + " in each rem ch"
		if free {
			words = strings.ToLower(f.row.Tree.Source(t.Span)) + " in " + syntax.Nth(max(k.Turning, 1)+1) + " ch from hook and in each rem ch"
		}
		ways = append(ways, p.tried(swatch, "write "+quoted(words), change{
			row: f.row, edits: []source.Edit{{Span: source.At(f.row.Tree.Clauses[after].Span.End), New: ", " + words}},
		}))
	}
	return likeliest(ways)
}
