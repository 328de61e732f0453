package report

import (
	"bufio"
	"encoding/json"
	"io"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

type jsonReport struct {
	Files []jsonFile `json:"files"`
}

type jsonFile struct {
	File     string        `json:"file"`
	Findings []jsonFinding `json:"findings"`
}

type jsonFinding struct {
	Rule     string        `json:"rule"`
	Severity lint.Severity `json:"severity"`
	place
	Message string        `json:"message"`
	Size    string        `json:"size,omitempty"`
	Related []jsonRelated `json:"related"`
	Fix     *jsonFix      `json:"fix,omitempty"`
	// Alternatives are other fixes, each by itself.
	Alternatives []jsonFix `json:"alternatives,omitempty"`
	// Fingerprint is the same for a finding of the same words, wherever its line
	// moves to.
	Fingerprint string `json:"fingerprint"`
}

// jsonLine is a finding that stands alone.
type jsonLine struct {
	File string `json:"file"`
	jsonFinding
}

type jsonRelated struct {
	place
	Message string `json:"message"`
}

type jsonFix struct {
	Title string     `json:"title"`
	Safe  bool       `json:"safe"`
	Edits []jsonEdit `json:"edits"`
}

type jsonEdit struct {
	place
	New string `json:"new"`
}

// JSON writes findings for programs. It fails only where w does.
func JSON(w io.Writer, files []Checked, _ Options) error {
	out := jsonReport{Files: []jsonFile{}}
	for _, c := range files {
		file := jsonFile{File: c.File, Findings: []jsonFinding{}}
		file.Findings = append(file.Findings, jsonFindings(c)...)
		out.Files = append(out.Files, file)
	}
	return writeJSON(w, out)
}

// JSONLines writes findings for programs that read a line at a time: an object
// each, with the file it is in. It fails only where w does.
func JSONLines(w io.Writer, files []Checked, _ Options) error {
	b := bufio.NewWriter(w)
	e := json.NewEncoder(b)
	e.SetEscapeHTML(false)
	for _, c := range files {
		for _, f := range jsonFindings(c) {
			if err := e.Encode(jsonLine{c.File, f}); err != nil {
				return err
			}
		}
	}
	return b.Flush()
}

func jsonFindings(c Checked) []jsonFinding {
	var out []jsonFinding
	signs := lint.Fingerprints(c.Text, c.Findings)
	for i, f := range c.Findings {
		finding := jsonOf(c.Text, f)
		finding.Fingerprint = signs[i]
		out = append(out, finding)
	}
	return out
}

func jsonOf(t *source.Text, f lint.Finding) jsonFinding {
	out := jsonFinding{
		Rule: f.Rule, Severity: f.Severity, place: placeOf(t, f.Span), Message: f.Message, Size: f.Size,
		Related: []jsonRelated{},
	}
	for _, r := range f.Related {
		out.Related = append(out.Related, jsonRelated{placeOf(t, r.Span), r.Message})
	}
	if f.Fix != nil {
		fix := fixOf(t, f.Fix)
		out.Fix = &fix
	}
	for i := range f.Alternatives {
		out.Alternatives = append(out.Alternatives, fixOf(t, &f.Alternatives[i]))
	}
	return out
}

func fixOf(t *source.Text, f *lint.Fix) jsonFix {
	out := jsonFix{Title: f.Title, Safe: f.Safe, Edits: []jsonEdit{}}
	for _, e := range f.Edits {
		out.Edits = append(out.Edits, jsonEdit{placeOf(t, e.Span), e.New})
	}
	return out
}

// writeJSON writes v for people to read as well, with the words of a pattern
// as they are.
func writeJSON(w io.Writer, v any) error {
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(v)
}
