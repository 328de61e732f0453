package lint

import (
	"slices"
	"strconv"
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
	return branchCalled(f.row, f.Name)
}

// branchCalled is a branch as its pattern calls it: by a noun of the writer's own, or by the
// word and a name.
func branchCalled(row *fabric.Row, name string) string {
	labelled := false
	for _, r := range row.Piece.Rows {
		labelled = labelled || r.Tree.Label.Limb == name
		syntax.Walk(r.Tree.Clauses, func(c syntax.Clause) {
			b, ok := c.Node.(*syntax.Branch)
			labelled = labelled || ok && b.Labelled && b.Name == name
		})
	}
	if labelled {
		return "the " + name
	}
	return "branch " + row.Tree.AsWritten(name)
}

// ground is how a message speaks of what a row is worked on where it goes wrong.
func (f *fault) ground() string {
	switch {
	case f.OnBranch && f.Branch == "":
		return "this branch"
	case f.OnBranch:
		return branchCalled(f.row, f.Branch)
	case f.Kind == fabric.PlaceAbsent && f.Base > 0:
		return "Row " + strconv.Itoa(f.Base)
	case f.row.Before() == nil:
		return "the chain"
	}
	return "the row below"
}

// onBranch names the branch that places are on, where it is one.
func (f *fault) onBranch() string {
	if !f.OnBranch {
		return ""
	}
	return " on " + f.ground()
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
	for last < len(row.Steps) && len(row.Steps[last].Ledger) > len(row.Steps[first-1].Ledger) {
		last++ // to the clause that comes home
	}
	if last >= len(row.Steps) {
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

// outcome is a change by which a branch could be put right, and the row as it then
// comes out.
type outcome struct {
	Fix
	row *fabric.Row
}

// tried works a row again in other words.
func (p *Pass) tried(swatch *fabric.Swatch, title string, c change) outcome {
	rows, _ := swatch.Try(p.File.Reread(c.row.Tree, c.text()))
	return outcome{Fix{Title: title, Edits: c.inFile()}, rows[0]}
}

// likeliest are fixes, first the one after which the row fits best, of equals the
// one that comes first.
func likeliest(ways []outcome) []Fix {
	slices.SortStableFunc(ways, func(a, b outcome) int { return a.row.Misfit() - b.row.Misfit() })
	var out []Fix
	for _, w := range ways {
		out = append(out, w.Fix)
	}
	return out
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
	end, ok := endOfBranch(row.Tree.Clauses, f.Span)
	if !ok || len(namings(row.Tree, f.Name, source.Span{Start: end, End: len(row.Tree.Text)})) > 0 {
		return nil
	}
	name := freeName(row.Tree, f.Name)
	fix := Fix{Title: "call it branch " + name}
	for _, span := range namings(row.Tree, f.Name, source.Span{Start: f.Span.Start, End: end}) {
		fix.Edits = append(fix.Edits, source.Edit{Span: row.Tree.Abs(span), New: name})
	}
	return &fix
}

// endOfBranch is where the branch that begins at a place comes home, among some
// clauses or in a repeat of them. It gives false where it never does, or where one
// of its name is open when it begins.
func endOfBranch(list []syntax.Clause, at source.Span) (int, bool) {
	var open []string
	depth := -1 // how many were open before it
	for _, c := range list {
		switch n := c.Node.(type) {
		case *syntax.Repeat:
			if c.Span.Covers(at) {
				return endOfBranch(n.Body, at)
			}
		case *syntax.Branch:
			if c.Span == at {
				if slices.Contains(open, n.Name) {
					return 0, false
				}
				depth = len(open)
			}
			open = append(open, n.Name)
		case *syntax.Return:
			if open = n.Leaves(open); depth >= 0 && len(open) <= depth {
				return c.Span.End, true
			}
		}
	}
	return 0, false
}

// chainAmiss is where in the row a branch, or the stem, is found not to fit what
// is worked along it; false where each does.
func chainAmiss(row *fabric.Row) (source.Span, bool) {
	for size := range row.Tallies {
		for _, f := range row.Tallies[size].Faults {
			switch f.Kind {
			case fabric.BranchChainLeft, fabric.StemExhausted:
				return f.Span, true
			case fabric.PlaceAbsent, fabric.RowOver:
				if f.OnBranch {
					return f.Span, true
				}
			case fabric.RowShort:
				if f.Name == "ch" && row.Branched() {
					return f.Span, true
				}
			}
		}
	}
	return source.Span{}, false
}

// alongChain finds what would make a chain and the stitches along it fit: a return
// that goes less far, the chain's own number, or the last number before the maker
// is at a loss. An earlier one is as able to, but no likelier, and there are many.
func (s *seeker) alongChain(w *writer, swatch *fabric.Swatch, at source.Span) []mend {
	s.numbersBelow()
	for i := range w.tokens {
		if w.amount(i) {
			s.number(w, i, swatch)
		}
	}
	for _, name := range openBefore(s.row, at) {
		if strings.HasPrefix(strings.ToLower(s.row.Tree.Source(at)), "return to ") {
			c := w.change(byWord, source.Edit{Span: at, New: "return to " + name})
			s.try(swatch, c, c.title())
		}
	}
	var returns, chains, last []mend
	for _, m := range s.mends {
		switch {
		case m.row == s.row && m.size == byWord:
			returns = append(returns, m)
		case m.lengthens():
			chains = append(chains, m)
		case m.row == s.row && m.span().Start < at.End:
			last = []mend{m}
		}
	}
	_, words := best(nil, slices.Concat(returns, last, chains))
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
