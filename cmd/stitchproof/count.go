package main

import (
	"stitchproof/lint"
	"stitchproof/lint/report"
)

type countCommand struct {
	File   string `arg:"" help:"A pattern, or - for standard input."`
	Format string `enum:"text,json" default:"text" help:"How to write the table: ${enum}."`
}

// Run writes the table of one pattern.
func (c *countCommand) Run(s *streams) error {
	text, err := s.read(c.File)
	if err != nil {
		return err
	}
	table := report.Counted(c.File, lint.Analyze(text))
	if c.Format == "json" {
		return table.JSON(s.out)
	}
	return table.Text(s.out)
}
