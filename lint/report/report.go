// Package report writes what is known of patterns for people and for
// programs, a file a format: findings, stitch counts, and what a rule is
// about.
//
// Lines and columns count from 1, columns in characters.
package report

import (
	"path/filepath"
	"slices"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// Checked is a file with what was found in it.
type Checked struct {
	File     string // as it was named
	Text     *source.Text
	Findings []lint.Finding
	Lines    StatisticsLines
	Counts   StatedCounts
}

// CheckedOf keeps of an analysis what is reported, so that the rest, which is
// large, can go.
func CheckedOf(file string, a *lint.Analysis) Checked {
	c := Checked{File: file, Text: a.Text, Findings: a.Findings}
	c.tally(a.Fabric)
	return c
}

// Failed tells whether something hindered the checking of the file.
func (c Checked) Failed() bool {
	return slices.ContainsFunc(c.Findings, func(f lint.Finding) bool {
		return f.Rule == lint.InternalFailure || f.Rule == lint.FileUnreadable
	})
}

// place is a stretch of a file as a reader of a report counts it; the end is
// the first character that is no part of it.
type place struct {
	Line      int `json:"line"`
	Column    int `json:"column"`
	EndLine   int `json:"endLine"`
	EndColumn int `json:"endColumn"`
}

func placeOf(t *source.Text, s source.Span) place {
	var p place
	p.Line, p.Column = t.LineColumn(s.Start)
	p.EndLine, p.EndColumn = t.LineColumn(s.End)
	return p
}

// slashed is a file's name as programs on every system write it.
func slashed(name string) string { return filepath.ToSlash(name) }
