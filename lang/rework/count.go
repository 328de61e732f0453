package rework

import (
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// Count is the count that a row makes, as the pattern states the one before it, or
// the next: in the same brackets, as stitches or by kind, with the spaces or
// without, in every size. It is "" for a row that works nothing or cannot be
// counted.
func Count(row *fabric.Row) string {
	made := make([]int, len(row.Tallies))
	for size := range row.Tallies {
		if !row.Tallies[size].Known || !row.Works() {
			return ""
		}
		made[size] = row.Tallies[size].Made
	}
	how := mannerNear(row)
	var list []string
	switch {
	case how.bare:
		list = []string{syntax.Num{Vals: made}.String()}
	case !how.kinds:
		list = []string{things(made, "st")}
	}
	for _, name := range partNames(row) {
		if space := strings.HasSuffix(name, " sp"); space && how.spaces || !space && how.kinds {
			list = append(list, part(row, name))
		}
	}
	if how.square {
		return "[" + strings.Join(list, ", ") + "]"
	}
	return "(" + strings.Join(list, ", ") + ")"
}

// manner is how a pattern states its counts.
type manner struct{ kinds, spaces, bare, square bool }

// mannerNear is that of the last count stated before a row, else of the first one
// after it.
func mannerNear(row *fabric.Row) manner {
	rows := row.Piece.Rows
	for _, before := range slices.Backward(rows[:row.Index]) {
		if before.Stated != nil {
			return mannerOf(before)
		}
	}
	for _, after := range rows[row.Index:] {
		if after.Stated != nil {
			return mannerOf(after)
		}
	}
	return manner{}
}

func mannerOf(row *fabric.Row) manner {
	how := manner{square: strings.HasPrefix(row.Tree.Source(row.StatedAt), "[")}
	parts := row.Stated.Parts
	for _, p := range parts {
		how.kinds = how.kinds || p.Noun.Kind == syntax.NounStitch
		how.spaces = how.spaces || p.Noun.Kind == syntax.NounSpace
		how.bare = len(parts) == 1 && p.Noun.Kind == syntax.NounNone
	}
	return how
}

// partNames lists the kinds that a row makes in some size, in the order made.
func partNames(row *fabric.Row) []string {
	var out []string
	seen := map[string]bool{}
	for size := range row.Tallies {
		for _, p := range row.Tallies[size].Parts {
			if !seen[p.Name] {
				seen[p.Name] = true
				out = append(out, p.Name)
			}
		}
	}
	return out
}

// part is the number of one kind that a row makes. A stitch's abbreviation has no
// plural.
func part(row *fabric.Row, name string) string {
	counts := make([]int, len(row.Tallies))
	for size := range row.Tallies {
		counts[size] = row.Tallies[size].Part(name)
	}
	if strings.HasSuffix(name, " sp") {
		return things(counts, name)
	}
	return syntax.Num{Vals: counts}.String() + " " + name
}

// things is a number of things, in the plural but for one.
func things(counts []int, noun string) string {
	n := syntax.Num{Vals: counts}.String()
	if n == "1" {
		return n + " " + noun
	}
	return n + " " + noun + "s"
}

// WriteCounts writes its count into every row that makes stitches and states none.
func (p *Pattern) WriteCounts() []Change {
	c := Change{Title: "write the count into every row that lacks one"}
	for row := range p.Fabric.Rows() {
		said := Count(row)
		if row.Stated != nil || said == "" || row.Tree.Label.Kind == syntax.Unlabelled || row.Agrees() != fabric.NotStated {
			continue
		}
		edit := source.Edit{Span: source.At(row.Tree.Written().End), New: " " + said}
		if p.bears(row, edit) {
			c.Edits = append(c.Edits, edit)
		}
	}
	return p.kept(c)
}

// bears tells whether a row agrees with the count that an edit states.
func (p *Pattern) bears(row *fabric.Row, edit source.Edit) bool {
	tree := p.File.Reread(row.Tree, row.Tree.Text[:edit.Span.Start-row.Tree.At]+edit.New)
	return len(tree.Unread()) == len(row.Tree.Unread()) && slices.ContainsFunc(tree.Clauses, func(c syntax.Clause) bool { _, ok := c.Node.(*syntax.Total); return ok })
}
