package report

import (
	"bufio"
	"fmt"
	"io"
	"strconv"

	"stitchproof/lang/stitch"
)

// ExplainStitch writes what a spelling means in each dialect and how the
// stitch is made. It fails only where w does.
func ExplainStitch(w io.Writer, spelling string, m stitch.Meaning) error {
	b := bufio.NewWriter(w)
	if m.Ambiguous() {
		fmt.Fprintf(b, "%s is one stitch in US terms and another in UK terms: a pattern must say whose terms it uses.\n", spelling)
	}
	if m.US != nil {
		stitchText(b, m.US, stitch.US)
	}
	if m.UK != nil && m.UK != m.US {
		stitchText(b, m.UK, stitch.UK)
	}
	return b.Flush()
}

// stitchText writes what is known of a stitch, its name in one dialect first.
func stitchText(b *bufio.Writer, k *stitch.Stitch, d stitch.Dialect) {
	fmt.Fprintf(b, "\n%s\n", bothNames(k, d))
	if k.How != "" {
		fmt.Fprintf(b, "%s\n", indented(wrapped(k.How)))
	}
	for _, line := range figures(k) {
		fmt.Fprintf(b, "    %s\n", line)
	}
	sources(b, k.Sources)
}

// bothNames is a stitch's name in both dialects, one of them first.
func bothNames(k *stitch.Stitch, first stitch.Dialect) string {
	second := stitch.UK
	if first == stitch.UK {
		second = stitch.US
	}
	a, b := termText(k.Term(first)), termText(k.Term(second))
	if b == "" || a == b {
		return a
	}
	return fmt.Sprintf("in %s terms %s, in %s terms %s", first, a, second, b)
}

func termText(t stitch.Term) string {
	switch {
	case t.Name == "" || t.Name == t.Abbr:
		return t.Abbr
	case t.Abbr == "":
		return t.Name
	}
	return t.Name + " (" + t.Abbr + ")"
}

// figures are what is known of a stitch in numbers.
func figures(k *stitch.Stitch) []string {
	out := []string{"uses " + Amount(k.Uses, "st") + ", makes " + Amount(k.Makes, "st")}
	if k.Loops > 0 {
		out = append(out, Amount(k.Loops, "loop")+" on the hook before the last step")
	}
	if k.Height > 0 {
		out = append(out, strconv.FormatFloat(k.Height, 'f', -1, 64)+" ch high")
	}
	if k.Turning > 0 {
		out = append(out, fmt.Sprintf("turning chain: ch %d, which %s", k.Turning, conventions[k.TurningCounts]))
	}
	if k.Defined {
		out = append(out, "publications differ: a pattern that uses it says what it means")
	}
	return out
}

// conventions words whether a turning chain counts.
var conventions = [...]string{
	stitch.No:     "does not count as a stitch",
	stitch.Varies: "counts as a stitch in some patterns and not in others",
	stitch.Yes:    "counts as a stitch",
}
