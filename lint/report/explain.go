package report

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"stitchproof/lint"
)

// ExplainRule writes what a rule is about. It fails only where w does.
func ExplainRule(w io.Writer, r *lint.Rule) error {
	b := bufio.NewWriter(w)
	fmt.Fprintf(b, "%s (%s, %s)\n\n%s\n\n%s\n", r.Name, r.Severity, r.Family, wrapped(r.Summary), wrapped(r.Why))
	fmt.Fprintf(b, "\nFound in:\n\n%s\nNot in:\n\n%s", indented(strings.ToValidUTF8(r.Bad, "\uFFFD")), indented(r.Good))
	sources(b, r.Sources)
	return b.Flush()
}

// sources lists the works behind something, if there are any.
func sources(b *bufio.Writer, works []string) {
	if len(works) == 0 {
		return
	}
	fmt.Fprint(b, "\nWhere this comes from:\n")
	for _, s := range works {
		fmt.Fprintln(b, wrapped("- "+s))
	}
}

const textWide = 88 // characters in a line of prose

// wrapped breaks prose into lines.
func wrapped(s string) string { return wrappedTo(s, textWide) }

func wrappedTo(s string, width int) string {
	var b strings.Builder
	column := 0
	for word := range strings.FieldsSeq(s) {
		switch n := textWidth(word); {
		case column == 0:
		case column+1+n > width:
			b.WriteByte('\n')
			column = 0
		default:
			b.WriteByte(' ')
			column++
		}
		b.WriteString(word)
		column += textWidth(word)
	}
	return b.String()
}

func indented(s string) string {
	var b strings.Builder
	for line := range strings.Lines(s) {
		if strings.TrimSpace(line) != "" {
			b.WriteString(margin)
		}
		b.WriteString(line)
	}
	return b.String()
}
