package lint

import (
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// branch is how a message speaks of the branch at fault; some have no name.
func (f *fault) branch() string {
	if f.Name == "" {
		return "the branch"
	}
	return "branch " + f.row.Tree.AsWritten(f.Name)
}

// writeBranch is the fix that writes the words round an unmarked branch: its
// name before the chain, the return where its chains are used up. It gives
// nil where the branch does not begin and end between clauses of the row.
// What a maker does stays the same, so it is safe.
func writeBranch(f *fault) *Fix {
	row := f.row
	first := -1 // the clause that works back first
	for i, c := range row.Tree.Clauses {
		if c.Span == f.Span {
			first = i
		}
	}
	if first < 1 {
		return nil
	}
	if _, ok := row.Tree.Clauses[first-1].Node.(*syntax.Chain); !ok {
		return nil
	}
	last := first
	for last < len(row.Steps) && len(row.Steps[last].Ledger) > 0 {
		last++ // the ledger is empty from the clause on that comes home
	}
	if last >= len(row.Steps) || len(row.Steps[first-1].Ledger) > 0 {
		return nil
	}
	name := freeName(row.Tree)
	start := row.Tree.At + row.Tree.Clauses[first-1].Span.Start
	end := row.Tree.At + row.Tree.Clauses[last].Span.End
	return &Fix{
		Title: "write `branch " + name + ":` and `return`",
		Safe:  true,
		Edits: []source.Edit{
			{Span: source.At(start), New: "branch " + name + ": "},
			{Span: source.At(end), New: ", return"},
		},
	}
}

// freeName is the first letter that no branch of the row is called.
func freeName(r *syntax.Row) string {
	used := map[string]bool{}
	syntax.Walk(r.Clauses, func(c syntax.Clause) {
		if b, ok := c.Node.(*syntax.Branch); ok {
			used[strings.ToUpper(b.Name)] = true
		}
	})
	for letter := 'A'; letter <= 'Z'; letter++ {
		if !used[string(letter)] {
			return string(letter)
		}
	}
	return "Z1" // twenty-six branches are taken
}
