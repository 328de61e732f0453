package lsp

import (
	"go.lsp.dev/protocol"

	"stitchproof/lang/fabric"
	"stitchproof/lang/names"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// definition leads from a name to where it is given, and from any other words of
// a row to the clauses that made the stitches they are worked into.
func definition(v *view, params *protocol.DefinitionParams) protocol.DefinitionResult {
	from, to := v.origin(v.offset(params.Position))
	if v.can.links {
		links := protocol.DefinitionLinkSlice{}
		for _, s := range to {
			links = append(links, protocol.DefinitionLink{
				OriginSelectionRange: new(v.rangeOf(from)), TargetURI: v.uri, TargetRange: v.rangeOf(s), TargetSelectionRange: v.rangeOf(s),
			})
		}
		return links
	}
	places := protocol.LocationSlice{}
	for _, s := range to {
		places = append(places, v.location(v.uri, s))
	}
	return places
}

// origin gives the words at a place that come from elsewhere, and where from.
func (v *view) origin(at int) (from source.Span, to []source.Span) {
	name, m := v.names().At(at)
	if name != nil {
		from = m.Span
		for _, d := range name.Declarations() {
			to = append(to, d.Span)
		}
	}
	if len(to) > 0 || name != nil && name.Kind != names.Stitch {
		return from, to
	}
	return v.workedInto(at)
}

// workedInto gives the clause at a place and those that made what it is worked
// into in the first size.
func (v *view) workedInto(at int) (from source.Span, to []source.Span) {
	row, clause := v.clauseAt(at)
	if clause < 0 {
		return from, nil
	}
	return row.Tree.Abs(row.Tree.Clauses[clause].Span), groundOf(row, &row.Steps[clause])
}

// groundOf lists the clauses that made what a step is worked into, each once.
func groundOf(row *fabric.Row, step *fabric.Step) []source.Span {
	all := row.Piece.Stitches[0]
	var out []source.Span
	seen := map[source.Span]bool{}
	for _, s := range all[step.From:step.To] {
		if s.Into < 0 {
			continue
		}
		span, ok := madeBy(row, &all[s.Into])
		if ok && !seen[span] {
			seen[span] = true
			out = append(out, span)
		}
	}
	return out
}

// madeBy is the clause of a row's piece that made a stitch, or the count that
// stands for it.
func madeBy(row *fabric.Row, s *fabric.Stitch) (source.Span, bool) {
	switch below := row.Before(); {
	case s.Row >= 0 && !s.IsSpace() && s.Kind.Class == stitch.Chain:
		return chained(row.Piece, s)
	case s.Row >= 0:
		tree := row.Piece.Rows[s.Row].Tree
		if s.Clause >= len(tree.Clauses) {
			return tree.Written(), true // a row that works others again
		}
		return tree.Abs(tree.Clauses[s.Clause].Span), true
	case s.Row == fabric.OfStated && below != nil && below.Stated != nil:
		return below.Tree.Abs(below.StatedAt), true
	}
	return source.Span{}, false
}

// chained is the clause that chained what is worked along from the clause of a
// stitch on: the last one before.
func chained(piece *fabric.Piece, s *fabric.Stitch) (source.Span, bool) {
	for r := s.Row; r >= 0; r-- {
		tree := piece.Rows[r].Tree
		last := len(tree.Clauses)
		if r == s.Row {
			last = min(last, s.Clause)
		}
		for i := last - 1; i >= 0; i-- {
			if _, ok := tree.Clauses[i].Node.(*syntax.Chain); ok {
				return tree.Abs(tree.Clauses[i].Span), true
			}
		}
	}
	return source.Span{}, false
}
