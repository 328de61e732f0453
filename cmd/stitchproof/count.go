package main

import (
	"stitchproof/lint"
	"stitchproof/lint/report"
)

type countCommand struct {
	File    string `arg:"" help:"A pattern, or - for standard input."`
	Reading bool   `name:"show-reading" help:"Also say in plain words what each clause was read as, in text and Markdown; JSON always does."`
	Format  string `enum:"${countFormats}" default:"text" help:"How to write the table: ${enum}."`

	settingsFlags
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
	if counted.Lines() == 0 {
		s.tellUnworked(c.File)
	}
	format, _ := report.FindCountFormat(c.Format) // there is no other
	return format.Write(counted, s.out)
}
