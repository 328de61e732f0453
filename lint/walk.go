package lint

import (
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// Walk visits every clause of a list and those within them, in the order
// written, outer ones first.
func Walk(list []syntax.Clause, visit func(syntax.Clause)) {
	for _, c := range list {
		visit(c)
		switch n := c.Node.(type) {
		case *syntax.Group:
			Walk(n.Body, visit)
		case *syntax.Bracket:
			Walk(n.Body, visit)
		case *syntax.Repeat:
			Walk(n.Body, visit)
			Walk(n.Ending, visit)
		}
	}
}

// Unread lists the places in a row that were not understood, counted from the
// row's beginning.
func Unread(r *syntax.Row) []source.Span {
	var out []source.Span
	Walk(r.Clauses, func(c syntax.Clause) {
		if _, ok := c.Node.(*syntax.Unread); ok {
			out = append(out, c.Span)
		}
	})
	return out
}

// has tells whether a row holds a clause of a kind.
func has[N syntax.Node](r *syntax.Row) bool {
	found := false
	Walk(r.Clauses, func(c syntax.Clause) {
		if _, ok := c.Node.(N); ok {
			found = true
		}
	})
	return found
}

// AsWritten is a word of a row as the pattern spells it. The tree holds words
// in one spelling, lower case.
func AsWritten(r *syntax.Row, word string) string {
	for _, t := range r.Tokens {
		if t.Canon == word && word != "" {
			return r.Source(t.Span)
		}
	}
	return word
}
