package lsp

import (
	"iter"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// rows gives every instruction of every piece, worked, in order.
func rows(f *fabric.Fabric) iter.Seq[*fabric.Row] {
	return func(yield func(*fabric.Row) bool) {
		for _, piece := range f.Pieces {
			for _, row := range piece.Rows {
				if !yield(row) {
					return
				}
			}
		}
	}
}

// perSize writes one value a size as patterns do: 24, or 24 (28, 32).
func perSize(values []int) string {
	words := make([]string, len(values))
	same := true
	for i, n := range values {
		words[i] = strconv.Itoa(n)
		same = same && n == values[0]
	}
	if same {
		return words[0]
	}
	return words[0] + " (" + strings.Join(words[1:], ", ") + ")"
}

// signed writes a difference with its sign, one value a size.
func signed(values []int) string {
	words := make([]string, len(values))
	same := true
	for i, n := range values {
		words[i] = strconv.Itoa(n)
		if n > 0 {
			words[i] = "+" + words[i]
		}
		same = same && n == values[0]
	}
	if same {
		return words[0]
	}
	return words[0] + " (" + strings.Join(words[1:], ", ") + ")"
}

// made is how many stitches a row makes in each size, false where that is not
// known of every size or the row works none.
func made(row *fabric.Row) ([]int, bool) {
	works := false
	counts := make([]int, len(row.Tallies))
	for size := range row.Tallies {
		t := &row.Tallies[size]
		if !t.Known {
			return nil, false
		}
		works = works || t.Works
		counts[size] = t.Made
	}
	return counts, works
}

// sts is a count of stitches: 1 st, 24 (28, 32) sts.
func sts(counts []int) string {
	if n := perSize(counts); n != "1" {
		return n + " sts"
	}
	return "1 st"
}

// rowName is what a row is called: its label or, without one, its first words.
func rowName(r *syntax.Row) string {
	if name := strings.Trim(r.Label.Text, "*_: "); name != "" {
		return name
	}
	return excerpt(r.Text)
}

// excerptLength is how many characters of an instruction stand for it where its whole text
// would be too long to show.
const excerptLength = 60

// excerpt is the beginning of a text, on one line.
func excerpt(text string) string {
	text = strings.Join(strings.Fields(text), " ")
	if letters := []rune(text); len(letters) > excerptLength {
		text = strings.TrimRight(string(letters[:excerptLength]), " ,;") + " …"
	}
	return text
}

// writtenSpan is the place of a row in the file, without the white space after it.
func writtenSpan(r *syntax.Row) source.Span {
	return source.Span{Start: r.At, End: r.At + len(strings.TrimRight(r.Text, " \t\r\n"))}
}
