package report

import "io"

// Options are what a report of findings depends on besides them.
type Options struct {
	Colour bool
	// Width is how many cells the terminal has, 0 where the report goes to none.
	Width int
	// Quiet leaves out the last line, which adds up.
	Quiet bool
	// Version is which build reports.
	Version string
}

// Format is a way to write findings.
type Format struct {
	Name string
	Is   string // what it is, in a few words
	// Write writes findings. It fails only where w does.
	Write func(w io.Writer, files []Checked, o Options) error
}

// Formats are the ways to write findings, those for people first.
var Formats = []Format{
	{"text", "each finding with its line of the pattern, for people", Text},
	{"lines", "a line for each finding", Lines},
	{"json", "one object with everything (lint/report/schema/findings.schema.json)", JSON},
	{"jsonl", "an object in a line for each finding (lint/report/schema/finding.schema.json)", JSONLines},
	{"sarif", "SARIF 2.1.0, which code hosts and editors read", SARIF},
	{"github", "annotations of a GitHub workflow", GitHub},
	{"gitlab", "a GitLab code quality report", GitLab},
	{"junit", "a JUnit report: a test case for each finding and each clean file", JUnit},
	{"checkstyle", "a Checkstyle report", Checkstyle},
}

// FormatNames are the names of the formats, in their order.
func FormatNames() []string {
	names := make([]string, len(Formats))
	for i, f := range Formats {
		names[i] = f.Name
	}
	return names
}

// CountFormat is a way to write the table of a count. It fails only where w does.
type CountFormat struct {
	Name  string
	Write func(c *Count, w io.Writer) error
}

// CountFormats are the ways to write a count, those for people first.
var CountFormats = []CountFormat{
	{"text", (*Count).Text},
	{"csv", (*Count).CSV},
	{"markdown", (*Count).Markdown},
	{"json", (*Count).JSON},
}

// CountFormatNames are the names of the formats of a count, in their order.
func CountFormatNames() []string {
	names := make([]string, len(CountFormats))
	for i, f := range CountFormats {
		names[i] = f.Name
	}
	return names
}

// FindCountFormat gives the format of a count of a name.
func FindCountFormat(name string) (CountFormat, bool) {
	for _, f := range CountFormats {
		if f.Name == name {
			return f, true
		}
	}
	return CountFormat{}, false
}

// FindFormat gives the format of a name.
func FindFormat(name string) (Format, bool) {
	for _, f := range Formats {
		if f.Name == name {
			return f, true
		}
	}
	return Format{}, false
}
