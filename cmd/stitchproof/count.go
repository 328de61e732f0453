package main

import (
	"io"

	"stitchproof/lint"
	"stitchproof/lint/report"
)

type countCommand struct {
	File    string `arg:"" help:"A pattern, or - for standard input."`
	Reading bool   `name:"show-reading" help:"Also say in plain words what each clause was read as, in text and Markdown; JSON always does."`
	Format  string `enum:"text,csv,markdown,json" default:"text" help:"How to write the table: ${enum}."`

	settingsFlags
}

// countFormats are the ways to write the table.
var countFormats = map[string]func(*report.Count, io.Writer) error{
	"text":     (*report.Count).Text,
	"csv":      (*report.Count).CSV,
	"markdown": (*report.Count).Markdown,
	"json":     (*report.Count).JSON,
}

// Run writes the table of one pattern.
func (c *countCommand) Run(s *streams) error {
	lint.ForBatch()
	text, err := s.read(c.File)
	if err != nil {
		return err
	}
	finder, err := c.finder()
	if err != nil {
		return err
	}
	settings, err := c.effective(finder, c.File)
	if err != nil {
		return err
	}
	counted := report.Counted(c.File, settings.Analyze(text))
	counted.ShowReading = c.Reading
	return countFormats[c.Format](counted, s.out)
}
