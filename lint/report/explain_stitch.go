package report

import (
	"bufio"
	"fmt"
	"io"
	"strconv"
	"strings"

	"stitchproof/lang/stitch"
)

// ExplainStitch writes what a spelling means in each dialect and how the
// stitch is made. It fails only where w does.
func ExplainStitch(w io.Writer, spelling string, m stitch.Meaning) error {
	b := bufio.NewWriter(w)
	switch {
	case m.Ambiguous():
		fmt.Fprintf(b, "%s is one stitch in US terms and another in UK terms: a pattern must say whose terms it uses.\n", spelling)
		fmt.Fprint(b, "\nIn US terms ")
		stitchText(b, m.US)
		fmt.Fprint(b, "\nIn UK terms ")
		stitchText(b, m.UK)
	case m.US != nil && m.UK != nil:
		stitchText(b, m.US)
	case m.US != nil:
		fmt.Fprint(b, "Only in US terms: ")
		stitchText(b, m.US)
	case m.UK != nil:
		fmt.Fprint(b, "Only in UK terms: ")
		stitchText(b, m.UK)
	}
	return b.Flush()
}

func stitchText(b *bufio.Writer, k *stitch.Stitch) {
	fmt.Fprintln(b, bothNames(k))
	if k.How != "" {
		fmt.Fprintln(b, indented(wrapped(k.How)))
	}
	for _, line := range figures(k) {
		fmt.Fprintln(b, "    "+line)
	}
	for _, s := range k.Sources {
		fmt.Fprintln(b, indented(wrapped("from "+s)))
	}
}

// bothNames is a stitch's name in both dialects.
func bothNames(k *stitch.Stitch) string {
	us, uk := termText(k.US), termText(k.UK)
	switch {
	case us == uk || uk == "":
		return us
	case us == "":
		return uk
	}
	return us + "; UK " + uk
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
	var out []string
	out = append(out, fmt.Sprintf("uses %s, makes %s", amount(k.Uses, "st"), amount(k.Makes, "st")))
	if k.Loops > 0 {
		out = append(out, fmt.Sprintf("%s before it is finished", amount(k.Loops, "loop")+" on the hook"))
	}
	if k.Height > 0 {
		out = append(out, strings.TrimSpace(fmt.Sprintf("%s ch high", trim(k.Height))))
	}
	if k.Turning > 0 {
		out = append(out, fmt.Sprintf("turning chain: ch %d, %s", k.Turning, conventions[k.TurningCounts]))
	}
	if k.Defined {
		out = append(out, "publications differ: a pattern that uses it says what it means")
	}
	return out
}

// conventions words whether a turning chain counts.
var conventions = [...]string{
	stitch.No:     "which does not count as a stitch",
	stitch.Varies: "which counts as a stitch in some patterns and not in others",
	stitch.Yes:    "which counts as a stitch",
}

// trim writes a height without needless zeros.
func trim(f float64) string { return strconv.FormatFloat(f, 'f', -1, 64) }
