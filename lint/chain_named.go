package lint

import (
	"slices"
	"strconv"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// checkChainsNamed finds them in rows that are right in all else.
func (p *Pass) checkChainsNamed() {
	for row := range p.rows() {
		if row.Misfit() > 0 {
			continue // what is told of it comes first
		}
		for _, f := range chainsMisnamed(row) {
			p.Report(f)
		}
	}
}

// chainsMisnamed holds the chains that a row calls by their length, `top of beg ch-3`,
// against those with which the round, or the row below, begins.
func chainsMisnamed(row *fabric.Row) []Finding {
	var out []Finding
	own, at := chainsBegun(row)
	for i, c := range row.Tree.Clauses {
		of, begun := row, own
		switch {
		case i > at && preparesOrTravels(c.Node) && (row.Round || row.Joined): // closes the round
		case row.Round:
			continue // a tall stitch may close the round, or stand in the one below
		default:
			if of = row.Below(0); of == nil {
				continue
			}
			begun, _ = chainsBegun(of)
		}
		for _, place := range c.Places() {
			if len(begun) > 0 && place.Of != nil && place.Of.Noun.Kind == syntax.NounTurning && place.Of.Noun.Length.Written() {
				out = append(out, chainMisnamed(row, of, begun, c, place)...)
			}
		}
	}
	return out
}

// chainMisnamed holds a place of a beginning chain against the chain that a row has.
func chainMisnamed(row, of *fabric.Row, begun []int, c syntax.Clause, place syntax.Place) []Finding {
	said := place.Of.Noun.Length.At(0)
	if place.Of.Noun.Length.PerSize() {
		return nil
	}
	start := "this round begins with ch " + strconv.Itoa(begun[0])
	if of != row {
		start = rowDoes(of.Tree, "begins", "begin") + " with ch " + strconv.Itoa(begun[0])
	}
	f := Finding{Span: row.Tree.Abs(c.Span)}
	switch length := slices.Max(begun); {
	case !slices.Contains(begun, said):
		f.Message, f.Fix = "asks for ch "+strconv.Itoa(said)+", and "+start, relengthed(row, c, said, begun[0])
	case place.Pick == syntax.PickNth && place.Noun.Kind == syntax.NounChain && place.Nth > length:
		f.Message = "asks for chain " + strconv.Itoa(place.Nth) + " of " + strconv.Itoa(length) + ", and " + start
	default:
		return nil
	}
	return []Finding{f}
}

// chainsBegun are the lengths by which the chain that a row begins with may be called, after
// any ring: its own, that of the stitch it stands for where a space comes after it, with
// the chains written right after it, and without the one that is worked into; and the index of its clause. None where the row begins
// in another way.
func chainsBegun(row *fabric.Row) (lengths []int, at int) {
	at = -1
	total := 0
	for i, c := range row.Tree.Clauses {
		ch, ok := c.Node.(*syntax.Chain)
		switch {
		case ok && (!ch.Number.Written() || ch.Number.PerSize()):
			return nil, -1
		case ok:
			at, total = i, total+ch.Number.At(0)
			lengths = append(lengths, total)
			for _, part := range ch.Counts.As {
				if part.Noun.Kind == syntax.NounSpace || part.Noun.Kind == syntax.NounChain {
					lengths = append(lengths, total-part.Noun.Length.Or(0, part.Number.At(0)))
				}
			}
		case preparesOrTravels(c.Node) && (at < 0 || joins(c.Node)):
			lengths, at, total = nil, -1, 0
		default:
			if places := c.Places(); at >= 0 && len(places) > 0 {
				switch p := places[0]; {
				case p.From == syntax.FromHook && p.Nth > 1:
					lengths = append(lengths, p.Nth-1) // `ch 4, 11 dc in 4th ch from hook, sl st in top of ch-3`
				case p.Pick == syntax.PickFirst && p.Noun.Kind == syntax.NounChain:
					lengths = append(lengths, total-1) // `ch 4, 11 dc in first ch`
				}
			}
			return lengths, at
		}
	}
	return lengths, at
}

// joins tells a step that closes a ring, brings new yarn, or travels.
func joins(n syntax.Node) bool {
	switch n.(type) {
	case *syntax.Join, *syntax.Yarn:
		return true
	}
	return !prepares(n)
}

// relengthed is the fix that calls a chain by the length that it has; nil where the number
// is not found.
func relengthed(row *fabric.Row, c syntax.Clause, was, is int) *Fix {
	for _, t := range slices.Backward(row.Tree.Tokens) {
		if t.Kind == syntax.Number && c.Span.Covers(t.Span) && row.Tree.Source(t.Span) == strconv.Itoa(was) {
			return &Fix{Title: "write ch " + strconv.Itoa(is), Edits: []source.Edit{{Span: row.Tree.Abs(t.Span), New: strconv.Itoa(is)}}}
		}
	}
	return nil
}
