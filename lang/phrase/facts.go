package phrase

import (
	"regexp/syntax"
	"slices"
	"strings"
)

// facts are what is known of the matches of an expression without compiling it.
type facts struct {
	// words are such that each match holds one of them; none where that is not known.
	words needles
	heads heads
	// begins and ends are what a text must, where the expression is held to its ends.
	begins, ends *byteSet
}

// fact is a line of the table.
type fact struct {
	expr  string
	facts facts
}

// factsOf are those of an expression. To find them takes longer than to look through a
// pattern for it: those of the expressions that the program is written with stand in a
// table, which a test makes and holds to them.
func factsOf(expr string) *facts {
	i, known := slices.BinarySearchFunc(table[:], expr, func(f fact, expr string) int { return strings.Compare(f.expr, expr) })
	if known {
		return &table[i].facts
	}
	return find(expr)
}

// find finds the facts of an expression, and panics where it is none.
func find(expr string) *facts {
	tree, err := syntax.Parse(expr, syntax.Perl)
	if err != nil {
		panic(err)
	}
	return &facts{needlesOf(needed(tree)), headsOf(tree), edgeOf(tree, left), edgeOf(tree, right)}
}
