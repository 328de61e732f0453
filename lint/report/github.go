package report

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"stitchproof/lint"
)

// GitHub writes findings as the commands by which a workflow annotates files
// (docs.github.com, "Workflow commands for GitHub Actions"; from memory). It
// fails only where w does.
func GitHub(w io.Writer, files []Checked, _ Options) error {
	b := bufio.NewWriter(w)
	for _, c := range files {
		for _, f := range c.Findings {
			p := placeOf(c.Text, f.Span)
			fmt.Fprintf(b, "::%s file=%s,line=%d,col=%d", githubLevels[f.Severity], githubProperty.Replace(slashed(c.File)), p.Line, p.Column)
			if p.EndLine == p.Line { // columns of a place over several lines are refused
				fmt.Fprintf(b, ",endColumn=%d", p.EndColumn)
			}
			fmt.Fprintf(b, ",endLine=%d,title=%s::%s\n", p.EndLine, f.Rule, githubData.Replace(inFull(c, f)))
		}
	}
	return b.Flush()
}

var githubLevels = [...]string{lint.Info: "notice", lint.Warning: "warning", lint.Error: "error", lint.Caution: "error"}

var (
	githubData     = strings.NewReplacer("%", "%25", "\r", "%0D", "\n", "%0A")
	githubProperty = strings.NewReplacer("%", "%25", "\r", "%0D", "\n", "%0A", ":", "%3A", ",", "%2C")
)

// inFull is a finding's message with what goes with it, a line each.
func inFull(c Checked, f lint.Finding) string {
	lines := []string{f.Message}
	for _, r := range f.Related {
		line, _ := c.Text.LineColumn(r.Span.Start)
		lines = append(lines, fmt.Sprintf("line %d: %s", line, r.Message))
	}
	if f.Fix != nil {
		lines = append(lines, fixLead(f.Fix)+": "+f.Fix.Title)
	}
	return strings.Join(lines, "\n")
}
