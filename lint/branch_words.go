package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/fabric"
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
	name := freeName(row.Tree, "")
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

// freeName is a letter that no branch of the row is called: the next one after a
// name that is a letter, else the first.
func freeName(r *syntax.Row, after string) string {
	used := map[string]bool{}
	syntax.Walk(r.Clauses, func(c syntax.Clause) {
		if b, ok := c.Node.(*syntax.Branch); ok {
			used[strings.ToUpper(b.Name)] = true
		}
	})
	at := 0
	if len(after) == 1 {
		at = max(0, strings.Index(letters, strings.ToUpper(after)))
	}
	for _, letter := range letters[at:] + letters[:at] {
		if !used[string(letter)] {
			return string(letter)
		}
	}
	return "Z1" // twenty-six branches are taken
}

const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"

// namings are where a part of a row speaks of a branch by its name: `branch A`,
// `of A`, `to A`.
func namings(r *syntax.Row, name string, in source.Span) []source.Span {
	var out []source.Span
	for i, t := range r.Tokens {
		if i == 0 || t.Canon != name || !in.Covers(t.Span) {
			continue
		}
		switch r.Tokens[i-1].Canon {
		case "branch", "of", "to":
			out = append(out, t.Span)
		}
	}
	return out
}

// rename is the fix that gives the second of two branches of one name another
// one, and all words that mean it. It gives nil where one of them may mean
// either: the first is still open, or the second is closed already.
func rename(f *fault) *Fix {
	row := f.row
	first := -1 // the clause that begins it
	for i, c := range row.Tree.Clauses {
		if _, ok := c.Node.(*syntax.Branch); ok && c.Span == f.Span {
			first = i
		}
	}
	if first < 0 || len(row.Steps) <= first || first > 0 && isOpen(&row.Steps[first-1], f.Name) {
		return nil
	}
	last := first
	for last+1 < len(row.Steps) && isOpen(&row.Steps[last], f.Name) {
		last++ // to the clause that comes home
	}
	end := row.Tree.Clauses[last].Span.End
	if len(namings(row.Tree, f.Name, source.Span{Start: end, End: len(row.Tree.Text)})) > 0 {
		return nil
	}
	name := freeName(row.Tree, f.Name)
	fix := Fix{Title: "call it branch " + name}
	for _, span := range namings(row.Tree, f.Name, source.Span{Start: f.Span.Start, End: end}) {
		fix.Edits = append(fix.Edits, source.Edit{Span: row.Tree.Abs(span), New: name})
	}
	return &fix
}

// isOpen tells whether a branch of a name is open after a clause.
func isOpen(s *fabric.Step, name string) bool {
	return slices.ContainsFunc(s.Ledger, func(b fabric.BranchState) bool { return b.Name == name })
}

// chainAmiss is where in the row a branch, or the stem, is found not to fit what
// is worked along it; false where each does.
func chainAmiss(row *fabric.Row) (source.Span, bool) {
	for size := range row.Tallies {
		for _, f := range row.Tallies[size].Faults {
			if f.Kind == fabric.BranchChainLeft || f.Kind == fabric.StemExhausted {
				return f.Span, true
			}
		}
	}
	return source.Span{}, false
}

// alongChain finds what would make a chain and the stitches along it fit: the
// chain's own number, or the last number before the maker is at a loss. An
// earlier one is as able to, but no likelier, and there are many.
func (s *seeker) alongChain(w *writer, swatch *fabric.Swatch, at source.Span) []mend {
	s.numbersBelow()
	for i := range w.tokens {
		if w.amount(i) {
			s.number(w, i, swatch)
		}
	}
	var chains, last []mend
	for _, m := range s.mends {
		switch {
		case m.lengthens():
			chains = append(chains, m)
		case m.row == s.row && m.span().Start < at.End:
			last = []mend{m}
		}
	}
	_, words := best(nil, slices.Concat(last, chains))
	return words
}

// lengthens tells whether a change is of how many chains are made.
func (c *change) lengthens() bool {
	found := false
	syntax.Walk(c.row.Tree.Clauses, func(clause syntax.Clause) {
		_, ok := clause.Node.(*syntax.Chain)
		found = found || ok && clause.Span.Covers(c.span())
	})
	return found
}
