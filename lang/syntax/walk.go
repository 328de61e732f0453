package syntax

import (
	"reflect"
	"slices"
	"strings"

	"stitchproof/lang/source"
)

// Walk visits every clause of a list and those within them, in the order
// written, outer ones first.
func Walk(list []Clause, visit func(Clause)) {
	for _, c := range list {
		visit(c)
		switch n := c.Node.(type) {
		case *Group:
			Walk(n.Body, visit)
		case *Bracket:
			Walk(n.Body, visit)
		case *Repeat:
			Walk(n.Body, visit)
			Walk(n.Ending, visit)
		}
	}
}

// Holders gives, for each token of the row, the innermost clause that it belongs
// to; one without a node where it belongs to none.
func (r *Row) Holders() []Clause {
	out := make([]Clause, len(r.Tokens))
	Walk(r.Clauses, func(c Clause) { // an outer clause comes before those in it
		first, _ := slices.BinarySearchFunc(r.Tokens, c.Span.Start, func(t Token, at int) int { return t.Span.Start - at })
		for i := first; i < len(r.Tokens) && r.Tokens[i].Span.End <= c.Span.End; i++ {
			out[i] = c
		}
	})
	return out
}

// Places gives every place that a clause names, without those that the clauses
// within it name.
func (c Clause) Places() []Place {
	switch n := c.Node.(type) {
	case *Work:
		return n.Places
	case *Group:
		return n.Places
	case *Skip:
		return []Place{n.Place}
	case *Leave:
		return []Place{n.Place}
	case *Join:
		return []Place{n.Place}
	case *Yarn:
		return []Place{n.Place}
	case *Repeat:
		return []Place{n.Last}
	case *PlaceFirst:
		return append(Clause{Node: n.First}.Places(), n.Place)
	case *Ending:
		return Clause{Node: n.Step}.Places()
	}
	return nil
}

// Unread lists the places in the row that were not understood.
func (r *Row) Unread() []source.Span {
	var out []source.Span
	Walk(r.Clauses, func(c Clause) {
		if _, ok := c.Node.(*Unread); ok {
			out = append(out, c.Span)
		}
	})
	return out
}

// InTurn is how many stitches the step works one after the other, each in the
// next place, and whether that is all that it says of places: `5 sc` and `sc in
// next 5 sts` are five. A number that is not written is one.
func (n *Work) InTurn() (Num, bool) {
	if len(n.Places) == 0 {
		return n.Number, true
	}
	p := n.Places[0]
	number, each := p.Number, p.Each
	if p.Noun.Kind == NounAny {
		p.Noun = Noun{}
	}
	p.Number, p.Each = Num{}, false
	only := len(n.Places) == 1 && len(p.Also) == 0 && p.Empty() && (number.Written() || !each) &&
		p.From == FromHere && p.Below == 0 && p.Name == "" && !p.Row.Written()
	return number, only && (!n.Number.Written() || n.Number.Equal(One(1)))
}

// AsWritten is a word of the row as the pattern spells it. The tree holds words
// in one spelling, lower case.
func (r *Row) AsWritten(word string) string {
	for _, t := range r.Tokens {
		if word != "" && t.Canon == word && t.Written != movedToken {
			return r.Source(t.Span)
		}
	}
	return word
}

// Written is the place of the row in the file without the white space after it.
func (r *Row) Written() source.Span {
	return source.Span{Start: r.At, End: r.At + len(strings.TrimRight(r.Text, " \t\r\n"))}
}

// Has tells whether something of a kind is written wrong in the row.
func (r *Row) Has(kind ProblemKind) bool {
	return slices.ContainsFunc(r.Problems, func(p Problem) bool { return p.Kind == kind })
}

// GoesAround tells whether the row is called by a name, as a border is, and says
// that it goes around.
func (r *Row) GoesAround() bool {
	return r.Label.Kind == Named && slices.ContainsFunc(r.Tokens, func(t Token) bool { return t.Kind == Word && t.Canon == "around" })
}

// Means tells whether two rows say the same, clause by clause, and differ in spelling
// alone. Rows that say the same in other ways may not be told.
func (r *Row) Means(other *Row) bool {
	label := func(l Label) Label {
		l.Text, l.Span = "", source.Span{}
		return l
	}
	return reflect.DeepEqual(label(r.Label), label(other.Label)) && len(r.Problems) == len(other.Problems) && means(r.Clauses, other.Clauses)
}

// means compares lists of clauses. Clauses in the same words share a node.
func means(a, b []Clause) bool {
	return slices.EqualFunc(a, b, func(c, d Clause) bool {
		if c.Sep != d.Sep {
			return false
		}
		switch n := c.Node.(type) {
		case *Unread, *Remark:
			return false // only their words tell
		case *Group:
			m, ok := d.Node.(*Group)
			return ok && means(n.Body, m.Body) && sameBut(*n, *m, func(g *Group) { g.Body = nil })
		case *Bracket:
			m, ok := d.Node.(*Bracket)
			return ok && means(n.Body, m.Body)
		case *Repeat:
			m, ok := d.Node.(*Repeat)
			return ok && means(n.Body, m.Body) && means(n.Ending, m.Ending) && sameBut(*n, *m, func(r *Repeat) { r.Body, r.Ending = nil, nil })
		}
		return reflect.DeepEqual(c.Node, d.Node)
	})
}

// sameBut compares two nodes without what a function takes out of them.
func sameBut[N any](a, b N, without func(*N)) bool {
	without(&a)
	without(&b)
	return reflect.DeepEqual(a, b)
}

// Ideas spells the words of a text as the grammar knows them, for comparing names that
// are written in several ways.
func Ideas(text string) string {
	return ideas(Lex(text, Standard()), nil)
}

// ideas spells tokens that stand after one of a kind, or all.
func ideas(tokens []Token, after func(*Token) bool) string {
	var out []string
	for i := range tokens {
		switch t := &tokens[i]; {
		case after != nil:
			if after(t) {
				after = nil
			}
		case t.Kind != Word || t.Canon != "":
			out = append(out, t.Canon)
		}
	}
	return strings.Join(out, " ")
}
