// Package report writes what is known of patterns for people and for
// programs, a file a format: findings, stitch counts, and what a rule is
// about.
//
// Lines and columns count from 1, columns in characters.
package report

import (
	"stitchproof/lang/source"
	"stitchproof/lint"
)

// Checked is a file with what was found in it.
type Checked struct {
	File     string // as it was named
	Analysis *lint.Analysis
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
