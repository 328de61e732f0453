package report

import (
	"crypto/sha256"
	"encoding/hex"
	"io"

	"stitchproof/lint"
)

// gitlabIssue is a finding as a code quality report has it (docs.gitlab.com,
// "Code Quality", the supported fields; from memory).
type gitlabIssue struct {
	Description string         `json:"description"`
	CheckName   string         `json:"check_name"`
	Fingerprint string         `json:"fingerprint"`
	Severity    string         `json:"severity"`
	Location    gitlabLocation `json:"location"`
}

type gitlabLocation struct {
	Path  string      `json:"path"`
	Lines gitlabLines `json:"lines"`
}

type gitlabLines struct {
	Begin int `json:"begin"`
	End   int `json:"end"`
}

var gitlabSeverities = [...]string{lint.Info: "info", lint.Warning: "minor", lint.Error: "major", lint.Caution: "critical"}

// GitLab writes findings as a code quality report. It fails only where w does.
func GitLab(w io.Writer, files []Checked, _ Options) error {
	issues := []gitlabIssue{}
	for _, c := range files {
		signs := lint.Fingerprints(c.Text, c.Findings)
		for i, f := range c.Findings {
			p := placeOf(c.Text, f.Span)
			sum := sha256.Sum256([]byte(slashed(c.File) + "\x00" + signs[i])) // told apart over all files
			issues = append(issues, gitlabIssue{
				Description: inFull(c, f), CheckName: f.Rule, Fingerprint: hex.EncodeToString(sum[:16]),
				Severity: gitlabSeverities[f.Severity],
				Location: gitlabLocation{slashed(c.File), gitlabLines{p.Line, p.EndLine}},
			})
		}
	}
	return writeJSON(w, issues)
}
