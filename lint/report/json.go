package report

import (
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
func JSON(w io.Writer, files []Checked) error {
	out := jsonReport{Files: []jsonFile{}}
	for _, f := range files {
		file := jsonFile{File: f.File, Findings: []jsonFinding{}}
		for _, finding := range f.Analysis.Findings {
			file.Findings = append(file.Findings, jsonOf(f.Analysis.Text, finding))
		}
		out.Files = append(out.Files, file)
	}
	return writeJSON(w, out)
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
