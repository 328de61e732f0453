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
	if r.Asked {
		fmt.Fprintf(b, "\n%s\n", wrapped("It runs only where it is asked for by its name: in the settings, or by --level "+r.Name+"="+r.Severity.String()+"."))
	}
	if r.Cautions() {
		fmt.Fprintf(b, "\n%s\n", wrapped(lint.OfCautions))
	}
	if r.Check != nil {
		examples(b, r)
		fmt.Fprintf(b, "\n%s\n\n%s// allow %s: %s\n", wrapped(answered[r.Cautions()]), margin, r.Name, lint.ReasonToCome)
	}
	sources(b, r.Sources)
	return b.Flush()
}

// answered leads to the comment that answers a finding, and a caution.
var answered = map[bool]string{
	false: "Where it is as it should be, say so at the end of the line or in a line before it:",
	true:  "What is done about it may be said at the end of the line or in a line before it; it is told until a reason stands there:",
}

// examples shows what a rule finds, what it says, and what is right.
func examples(b *bufio.Writer, r *lint.Rule) {
	fmt.Fprintf(b, "\nFound in:\n\n%s\nIt says there:\n\n", indented(strings.ToValidUTF8(r.Bad, "\uFFFD")))
	a := r.Try(r.Bad)
	for _, f := range a.Findings {
		line, _ := a.Text.LineColumn(f.Span.Start)
		fmt.Fprintln(b, indented(wrapped(fmt.Sprintf("line %d: %s", line, f.Message))))
		if f.Fix != nil {
			fmt.Fprintln(b, indented(wrapped(fixLead(f.Fix)+": "+f.Fix.Title+by[f.Fix.Safe])))
		}
	}
	fmt.Fprintf(b, "\nNot in:\n\n%s", indented(r.Good))
}

// by is how a fix is made, safe or not.
var by = map[bool]string{true: " (check --fix does)", false: " (check --fix-risky does)"}

// sources lists the works behind something, if there are any.
func sources(b *bufio.Writer, works []string) {
	if len(works) == 0 {
		return
	}
	fmt.Fprint(b, "\nWhere this comes from:\n")
	for _, s := range works {
		fmt.Fprintln(b, "- "+strings.ReplaceAll(wrappedTo(s, textWide-2), "\n", "\n  "))
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
