package rework

import (
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/syntax"
)

// Count is the count that a row makes, as the pattern would state it: as stitches
// or by kind, whichever the count before it does, in every size. It is "" for a
// row that works nothing or cannot be counted.
func Count(row *fabric.Row) string {
	made := make([]int, len(row.Tallies))
	for size := range row.Tallies {
		if !row.Tallies[size].Known || !row.Works() {
			return ""
		}
		made[size] = row.Tallies[size].Made
	}
	kinds, spaces := styleBefore(row)
	list := []string{things(made, "st")}
	if kinds {
		list = nil
	}
	for _, name := range partNames(row) {
		space := strings.HasSuffix(name, " sp")
		if space && spaces || !space && kinds {
			list = append(list, part(row, name))
		}
	}
	return "(" + strings.Join(list, ", ") + ")"
}

// styleBefore tells whether the last count stated before a row is by kind of
// stitch, and whether it tells of spaces.
func styleBefore(row *fabric.Row) (kinds, spaces bool) {
	for i := row.Index; i >= 0; i-- {
		stated := row.Piece.Rows[i].Stated
		if stated == nil {
			continue
		}
		for _, p := range stated.Parts {
			kinds = kinds || p.Noun.Kind == syntax.NounStitch
			spaces = spaces || p.Noun.Kind == syntax.NounSpace
		}
		return kinds, spaces
	}
	return false, false
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
