package report

import (
	"bufio"
	"fmt"
	"io"
	"os"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// Text writes findings for people: each with its line of the pattern, the
// place underlined, and what goes with it. It fails only where w does.
func Text(w io.Writer, files []Checked, colour bool) error {
	b := bufio.NewWriter(w)
	ink := inks[colour]
	for _, f := range files {
		for _, finding := range f.Analysis.Findings {
			textOf(b, f.File, f.Analysis.Text, finding, ink)
		}
	}
	fmt.Fprintln(b, summary(files))
	return b.Flush()
}

func textOf(b *bufio.Writer, file string, t *source.Text, f lint.Finding, ink ink) {
	line, column := t.LineColumn(f.Span.Start)
	mark := ink.severity[f.Severity]
	fmt.Fprintf(b, "%s:%d:%d: %s%s%s: %s %s[%s]%s\n", file, line, column, mark, f.Severity, ink.off, visible(f.Message), ink.faint, f.Rule, ink.off)
	words, under := excerpt(t, f.Span)
	if words != "" {
		fmt.Fprintf(b, "    %s\n    %s%s%s\n", words, mark, under, ink.off)
	}
	for _, r := range f.Related {
		line, _ := t.LineColumn(r.Span.Start)
		fmt.Fprintf(b, "    line %d: %s\n", line, visible(r.Message))
	}
	if f.Fix != nil {
		lead := "to put it right"
		if !f.Fix.Safe {
			lead = "perhaps"
		}
		fmt.Fprintf(b, "    %s: %s\n", lead, visible(f.Fix.Title))
	}
	b.WriteByte('\n')
}

// summary counts the findings by severity, the gravest first.
func summary(files []Checked) string {
	var counts [lint.Caution + 1]int
	touched := 0
	for _, f := range files {
		if len(f.Analysis.Findings) > 0 {
			touched++
		}
		for _, finding := range f.Analysis.Findings {
			counts[finding.Severity]++
		}
	}
	var parts []string
	for s := lint.Caution; ; s-- {
		if n := counts[s]; n > 0 {
			parts = append(parts, amount(n, s.String()))
		}
		if s == lint.Info {
			break
		}
	}
	if len(parts) == 0 {
		return "nothing found in " + amount(len(files), "file")
	}
	found := strings.Join(parts, ", ") + " in " + amount(touched, "file")
	if len(files) > touched {
		found += ", nothing in " + amount(len(files)-touched, "other")
	}
	return found
}

func amount(n int, noun string) string {
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

// Coloured tells whether a report on w should be in colour: it goes to a
// terminal, and the environment does not set NO_COLOR.
func Coloured(w io.Writer) bool {
	f, ok := w.(*os.File)
	if !ok || os.Getenv("NO_COLOR") != "" {
		return false
	}
	info, err := f.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}
