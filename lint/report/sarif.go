package report

import (
	"io"
	"net/url"
	"path/filepath"
	"slices"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// The parts of SARIF 2.1.0 that are used (OASIS, "Static Analysis Results
// Interchange Format Version 2.1.0"; the schema in testdata was read).
type (
	sarifLog struct {
		Schema  string     `json:"$schema"`
		Version string     `json:"version"`
		Runs    []sarifRun `json:"runs"`
	}
	sarifRun struct {
		Tool               sarifTool            `json:"tool"`
		Invocations        []sarifInvocation    `json:"invocations"`
		OriginalURIBaseIDs map[string]sarifBase `json:"originalUriBaseIds"`
		ColumnKind         string               `json:"columnKind"`
		Artifacts          []sarifArtifact      `json:"artifacts"`
		Results            []sarifResult        `json:"results"`
	}
	sarifTool struct {
		Driver sarifDriver `json:"driver"`
	}
	sarifDriver struct {
		Name    string      `json:"name"`
		Version string      `json:"version,omitempty"`
		Rules   []sarifRule `json:"rules"`
	}
	sarifInvocation struct {
		ExecutionSuccessful bool `json:"executionSuccessful"`
	}
	sarifBase struct {
		Description sarifText `json:"description"`
	}
	sarifArtifact struct {
		Location sarifArtifactLocation `json:"location"`
	}
	sarifRule struct {
		ID                   string        `json:"id"`
		ShortDescription     sarifText     `json:"shortDescription"`
		FullDescription      sarifText     `json:"fullDescription"`
		Help                 sarifText     `json:"help"`
		DefaultConfiguration sarifLevel    `json:"defaultConfiguration"`
		Properties           sarifRuleTags `json:"properties"`
	}
	sarifText struct {
		Text     string `json:"text"`
		Markdown string `json:"markdown,omitempty"`
	}
	sarifLevel struct {
		Level   string `json:"level"`
		Enabled bool   `json:"enabled"`
	}
	sarifRuleTags struct {
		Tags []string `json:"tags"`
	}
	sarifResult struct {
		RuleID              string            `json:"ruleId"`
		RuleIndex           int               `json:"ruleIndex"`
		Level               string            `json:"level"`
		Message             sarifText         `json:"message"`
		Locations           []sarifLocation   `json:"locations"`
		RelatedLocations    []sarifLocation   `json:"relatedLocations,omitempty"`
		PartialFingerprints map[string]string `json:"partialFingerprints"`
		Fixes               []sarifFix        `json:"fixes,omitempty"`
	}
	sarifLocation struct {
		ID               *int                  `json:"id,omitempty"`
		PhysicalLocation sarifPhysicalLocation `json:"physicalLocation"`
		Message          *sarifText            `json:"message,omitempty"`
	}
	sarifPhysicalLocation struct {
		ArtifactLocation sarifArtifactLocation `json:"artifactLocation"`
		Region           sarifRegion           `json:"region"`
	}
	sarifArtifactLocation struct {
		URI       string `json:"uri"`
		URIBaseID string `json:"uriBaseId,omitempty"`
	}
	sarifRegion struct {
		StartLine   int `json:"startLine"`
		StartColumn int `json:"startColumn"`
		EndLine     int `json:"endLine"`
		EndColumn   int `json:"endColumn"`
	}
	sarifFix struct {
		Description     sarifText     `json:"description"`
		ArtifactChanges []sarifChange `json:"artifactChanges"`
	}
	sarifChange struct {
		ArtifactLocation sarifArtifactLocation `json:"artifactLocation"`
		Replacements     []sarifReplacement    `json:"replacements"`
	}
	sarifReplacement struct {
		DeletedRegion   sarifRegion `json:"deletedRegion"`
		InsertedContent sarifText   `json:"insertedContent"`
	}
)

const (
	sarifSchema  = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
	sarifBaseID  = "%SRCROOT%" // as code hosts expect it
	sarifSign    = "stitchproof/v1"
	sarifUTF16   = "utf16CodeUnits"
	sarifVersion = "2.1.0"
)

var sarifLevels = [...]string{lint.Info: "note", lint.Warning: "warning", lint.Error: "error", lint.Caution: "error"}

// SARIF writes findings for code hosts and editors. It fails only where w does.
func SARIF(w io.Writer, files []Checked, o Options) error {
	rules := slices.Concat(lint.Rules(), lint.Failures())
	run := sarifRun{
		Tool:               sarifTool{sarifDriver{Name: "stitchproof", Version: o.Version, Rules: sarifRules(rules)}},
		Invocations:        []sarifInvocation{{ExecutionSuccessful: !failed(files)}},
		OriginalURIBaseIDs: map[string]sarifBase{sarifBaseID: {sarifText{Text: "The folder that stitchproof was run in."}}},
		ColumnKind:         sarifUTF16,
		Artifacts:          []sarifArtifact{},
		Results:            []sarifResult{},
	}
	for _, c := range files {
		run.Artifacts = append(run.Artifacts, sarifArtifact{sarifAt(c.File)})
		signs := lint.Fingerprints(c.Text, c.Findings)
		for i, f := range c.Findings {
			r := sarifOf(c, f)
			r.RuleIndex = slices.IndexFunc(rules, func(r *lint.Rule) bool { return r.Name == f.Rule })
			r.PartialFingerprints = map[string]string{sarifSign: signs[i]}
			run.Results = append(run.Results, r)
		}
	}
	return writeJSON(w, sarifLog{sarifSchema, sarifVersion, []sarifRun{run}})
}

// failed tells whether the checking itself was hindered.
func failed(files []Checked) bool {
	return slices.ContainsFunc(files, Checked.Failed)
}

func sarifRules(rules []*lint.Rule) []sarifRule {
	var out []sarifRule
	for _, r := range rules {
		out = append(out, sarifRule{
			ID: r.Name, ShortDescription: sarifText{Text: r.Summary}, FullDescription: sarifText{Text: r.Why},
			Help:                 sarifText{Text: r.Summary + "\n\n" + r.Why + "\n", Markdown: markdownHelp(r)},
			DefaultConfiguration: sarifLevel{sarifLevels[r.Severity], !r.Asked},
			Properties:           sarifRuleTags{[]string{r.Family}},
		})
	}
	return out
}

// markdownHelp is what a rule is about, as a page.
func markdownHelp(r *lint.Rule) string {
	var b strings.Builder
	b.WriteString(r.Summary + "\n\n" + r.Why + "\n")
	if r.Bad != "" {
		b.WriteString("\nFound in:\n\n```\n" + strings.ToValidUTF8(r.Bad, "\uFFFD") + "```\n\nNot in:\n\n```\n" + r.Good + "```\n")
	}
	return b.String()
}

func sarifOf(c Checked, f lint.Finding) sarifResult {
	r := sarifResult{
		RuleID: f.Rule, Level: sarifLevels[f.Severity], Message: sarifText{Text: f.Message},
		Locations: []sarifLocation{sarifPlace(c, f.Span)},
	}
	for i, related := range f.Related {
		l := sarifPlace(c, related.Span)
		l.ID, l.Message = new(i), &sarifText{Text: related.Message}
		r.RelatedLocations = append(r.RelatedLocations, l)
	}
	if f.Fix != nil {
		for _, fix := range append([]lint.Fix{*f.Fix}, f.Alternatives...) {
			r.Fixes = append(r.Fixes, sarifFixOf(c, fix))
		}
	}
	return r
}

func sarifFixOf(c Checked, f lint.Fix) sarifFix {
	change := sarifChange{ArtifactLocation: sarifAt(c.File)}
	for _, e := range f.Edits {
		change.Replacements = append(change.Replacements, sarifReplacement{sarifRegionOf(c.Text, e.Span), sarifText{Text: e.New}})
	}
	return sarifFix{sarifText{Text: f.Title}, []sarifChange{change}}
}

func sarifPlace(c Checked, s source.Span) sarifLocation {
	return sarifLocation{PhysicalLocation: sarifPhysicalLocation{sarifAt(c.File), sarifRegionOf(c.Text, s)}}
}

func sarifRegionOf(t *source.Text, s source.Span) sarifRegion {
	var r sarifRegion
	r.StartLine, r.StartColumn = t.LineColumnIn(s.Start, source.UTF16)
	r.EndLine, r.EndColumn = t.LineColumnIn(s.End, source.UTF16)
	return r
}

// sarifAt is where a file is: from the folder the program runs in, if that is
// how it was named.
func sarifAt(file string) sarifArtifactLocation {
	path := slashed(filepath.Clean(file))
	if filepath.IsAbs(file) {
		if !strings.HasPrefix(path, "/") {
			path = "/" + path // a drive
		}
		return sarifArtifactLocation{URI: (&url.URL{Scheme: "file", Path: path}).String()}
	}
	return sarifArtifactLocation{URI: (&url.URL{Path: path}).String(), URIBaseID: sarifBaseID}
}
