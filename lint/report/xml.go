package report

import (
	"encoding/xml"
	"fmt"
	"io"

	"stitchproof/lint"
)

// junitReport is what test runners write and build servers read. There is no
// standard of it; the names are those that all of them share (from memory).
type junitReport struct {
	XMLName  xml.Name     `xml:"testsuites"`
	Name     string       `xml:"name,attr"`
	Tests    int          `xml:"tests,attr"`
	Failures int          `xml:"failures,attr"`
	Suites   []junitSuite `xml:"testsuite"`
}

type junitSuite struct {
	Name     string      `xml:"name,attr"`
	Tests    int         `xml:"tests,attr"`
	Failures int         `xml:"failures,attr"`
	Cases    []junitCase `xml:"testcase"`
}

type junitCase struct {
	Class   string        `xml:"classname,attr"`
	Name    string        `xml:"name,attr"`
	File    string        `xml:"file,attr"`
	Line    int           `xml:"line,attr,omitempty"`
	Failure *junitFailure `xml:"failure"`
}

type junitFailure struct {
	Type    string `xml:"type,attr"`
	Message string `xml:"message,attr"`
	Text    string `xml:",chardata"`
}

// JUnit writes each file as a suite of tests: a failed one for each finding, or
// one that passed. It fails only where w does.
func JUnit(w io.Writer, files []Checked, _ Options) error {
	out := junitReport{Name: "stitchproof"}
	for _, c := range files {
		name := slashed(c.File)
		s := junitSuite{Name: name}
		for _, f := range c.Findings {
			p := placeOf(c.Text, f.Span)
			s.Cases = append(s.Cases, junitCase{
				Class: name, Name: fmt.Sprintf("%s at %d:%d", f.Rule, p.Line, p.Column), File: name, Line: p.Line,
				Failure: &junitFailure{Type: f.Severity.String(), Message: f.Message, Text: inFull(c, f)},
			})
		}
		s.Failures = len(s.Cases)
		if s.Failures == 0 {
			s.Cases = []junitCase{{Class: name, Name: "nothing found", File: name}}
		}
		s.Tests = len(s.Cases)
		out.Tests, out.Failures = out.Tests+s.Tests, out.Failures+s.Failures
		out.Suites = append(out.Suites, s)
	}
	return writeXML(w, out)
}

// checkstyleReport is as Checkstyle writes it (from memory).
type checkstyleReport struct {
	XMLName xml.Name         `xml:"checkstyle"`
	Version string           `xml:"version,attr"`
	Files   []checkstyleFile `xml:"file"`
}

type checkstyleFile struct {
	Name   string            `xml:"name,attr"`
	Errors []checkstyleError `xml:"error"`
}

type checkstyleError struct {
	Line     int    `xml:"line,attr"`
	Column   int    `xml:"column,attr"`
	Severity string `xml:"severity,attr"`
	Message  string `xml:"message,attr"`
	Source   string `xml:"source,attr"`
}

var checkstyleSeverities = [...]string{lint.Info: "info", lint.Warning: "warning", lint.Error: "error", lint.Caution: "error"}

// Checkstyle writes findings as Checkstyle does. It fails only where w does.
func Checkstyle(w io.Writer, files []Checked, _ Options) error {
	out := checkstyleReport{Version: "10.0"}
	for _, c := range files {
		file := checkstyleFile{Name: slashed(c.File)}
		for _, f := range c.Findings {
			p := placeOf(c.Text, f.Span)
			file.Errors = append(file.Errors, checkstyleError{p.Line, p.Column, checkstyleSeverities[f.Severity], f.Message, "stitchproof." + f.Rule})
		}
		out.Files = append(out.Files, file)
	}
	return writeXML(w, out)
}

func writeXML(w io.Writer, v any) error {
	if _, err := io.WriteString(w, xml.Header); err != nil {
		return err
	}
	e := xml.NewEncoder(w)
	e.Indent("", "  ")
	if err := e.Encode(v); err != nil {
		return err
	}
	_, err := io.WriteString(w, "\n")
	return err
}
