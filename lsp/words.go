package lsp

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// perSize writes one value a size as patterns do: 24, or 24 (28, 32).
func perSize(values []int) string { return syntax.Num{Vals: values}.String() }

// signed writes a difference with its sign, one value a size.
func signed(values []int) string {
	words := make([]string, len(values))
	for i, n := range values {
		words[i] = syntax.Signed(n)
	}
	return syntax.PerSize(words)
}

// made is how many stitches a row makes in each size, false where that is not
// known of every size or the row works none.
func made(row *fabric.Row) ([]int, bool) {
	counts := make([]int, len(row.Tallies))
	for size := range row.Tallies {
		if !row.Tallies[size].Known {
			return nil, false
		}
		counts[size] = row.Tallies[size].Made
	}
	return counts, row.Works()
}

// some tells whether a number is anything but 0, in some size.
func some(counts []int) bool {
	return slices.ContainsFunc(counts, func(n int) bool { return n != 0 })
}

// sts is a count of stitches: 1 st, 24 (28, 32) sts.
func sts(counts []int) string { return counted(counts, "st") }

// places is a count of what can be worked into: 1 place, 24 (28, 32) places.
func places(counts []int) string { return counted(counts, "place") }

func counted(counts []int, noun string) string {
	if n := perSize(counts); n != "1" {
		return n + " " + noun + "s"
	}
	return "1 " + noun
}

// rowName is what a row is called: its label or, without one, its first words.
func rowName(r *syntax.Row) string {
	if name := r.Label.Name(); name != "" {
		return name
	}
	return source.Excerpt(r.Text)
}
