package report

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"stitchproof/lint"
)

// Text writes findings for people: each with its line of the pattern, the
// place underlined, and what goes with it. It fails only where w does.
func Text(w io.Writer, files []Checked, o Options) error {
	t := texter{Writer: bufio.NewWriter(w), ink: inks[o.Colour], width: o.Width}
	for _, f := range files {
		for _, finding := range f.Findings {
			t.finding(f, finding)
		}
	}
	if !o.Quiet {
		fmt.Fprintln(t, summary(files))
	}
	return t.Flush()
}

// texter writes findings for people.
type texter struct {
	*bufio.Writer
	ink   ink
	width int
}

func (t texter) finding(c Checked, f lint.Finding) {
	t.WriteString(head(c, f, t.ink))
	words, under := excerpt(c.Text, f.Span, t.width)
	if words != "" {
		fmt.Fprintf(t, "    %s\n    %s%s%s\n", words, t.ink.severity[f.Severity], under, t.ink.off)
	}
	for _, r := range f.Related {
		line, _ := c.Text.LineColumn(r.Span.Start)
		t.aside(fmt.Sprintf("line %d: %s", line, visible(r.Message)))
	}
	if f.Fix != nil {
		t.aside(fixLead(f.Fix) + ": " + visible(f.Fix.Title))
	}
	t.WriteByte('\n')
}

// fixLead is what stands before a fix.
func fixLead(f *lint.Fix) string {
	if f.Safe {
		return "to put it right"
	}
	return "perhaps"
}

// aside writes what goes with a finding, folded where it is too wide for the
// terminal.
func (t texter) aside(s string) {
	lines := s
	if t.width > 0 {
		lines = wrappedTo(s, max(leadIn, t.width-textWidth(margin)))
	}
	t.WriteString(indented(lines) + "\n")
}

// margin stands before what goes with a finding.
const margin = "    "

// head is the line that tells a finding.
func head(c Checked, f lint.Finding, ink ink) string {
	line, column := c.Text.LineColumn(f.Span.Start)
	return fmt.Sprintf("%s:%d:%d: %s%s%s: %s %s[%s]%s\n", visible(c.File), line, column,
		ink.severity[f.Severity], f.Severity, ink.off, visible(f.Message), ink.faint, f.Rule, ink.off)
}

// Lines writes findings a line each, in colour or not. It fails only where w
// does.
func Lines(w io.Writer, files []Checked, o Options) error {
	b := bufio.NewWriter(w)
	for _, c := range files {
		for _, f := range c.Findings {
			b.WriteString(head(c, f, inks[o.Colour]))
		}
	}
	return b.Flush()
}

// summary counts the findings by severity, the gravest first.
func summary(files []Checked) string {
	var counts [lint.Caution + 1]int
	touched := 0
	for _, f := range files {
		if len(f.Findings) > 0 {
			touched++
		}
		for _, finding := range f.Findings {
			counts[finding.Severity]++
		}
	}
	var parts []string
	for s := lint.Caution; ; s-- {
		if n := counts[s]; n > 0 {
			parts = append(parts, Amount(n, s.String()))
		}
		if s == lint.Info {
			break
		}
	}
	if len(parts) == 0 {
		return "nothing found in " + Amount(len(files), "file")
	}
	found := strings.Join(parts, ", ") + " in " + Amount(touched, "file")
	if len(files) > touched {
		found += ", nothing in " + Amount(len(files)-touched, "other")
	}
	return found
}

// Amount is a number of things: `1 error`, `2 files`.
func Amount(n int, noun string) string {
	if n != 1 && noun != "info" {
		noun += "s"
	}
	return fmt.Sprintf("%d %s", n, noun)
}

// ink is what colours a report: nothing, or the control sequences of ECMA-48.
type ink struct {
	severity   [lint.Caution + 1]string
	faint, off string
}

var inks = map[bool]ink{
	true: {
		severity: [...]string{lint.Info: "\x1b[36m", lint.Warning: "\x1b[33m", lint.Error: "\x1b[31m", lint.Caution: "\x1b[1;35m"},
		faint:    "\x1b[2m", off: "\x1b[0m",
	},
}
