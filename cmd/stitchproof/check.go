package main

import (
	"runtime"
	"sync"

	"stitchproof/lang/source"
	"stitchproof/lint"
	"stitchproof/lint/report"
)

type checkCommand struct {
	Paths      []string      `arg:"" help:"Files, folders, or - for standard input."`
	Format     string        `enum:"text,json" default:"text" help:"How to report: ${enum}."`
	FailOn     lint.Severity `default:"error" placeholder:"SEVERITY" help:"The least severity that makes the exit code 1: info, warning, error or caution."`
	Statistics bool          `help:"Add all files up instead of listing what was found in each."`
}

// Run checks the files and reports them in the order named.
func (c *checkCommand) Run(s *streams) error {
	files, err := patternFiles(c.Paths)
	if err != nil {
		return err
	}
	checked, err := s.analyze(files)
	if err != nil {
		return err
	}
	if err := c.write(s, checked); err != nil {
		return err
	}
	for _, file := range checked {
		for _, f := range file.Analysis.Findings {
			if f.Severity >= c.FailOn {
				return errFound
			}
		}
	}
	return nil
}

// write reports what was found, or what it all comes to.
func (c *checkCommand) write(s *streams, checked []report.Checked) error {
	json := c.Format == "json"
	switch {
	case c.Statistics && json:
		return report.StatisticsOf(checked).JSON(s.out)
	case c.Statistics:
		return report.StatisticsOf(checked).Text(s.out)
	case json:
		return report.JSON(s.out, checked)
	}
	return report.Text(s.out, checked, report.Coloured(s.out))
}

// analyze reads and checks files, as many at a time as there are processors.
func (s *streams) analyze(files []string) ([]report.Checked, error) {
	texts := make([]*source.Text, len(files))
	for i, name := range files {
		var err error
		if texts[i], err = s.read(name); err != nil {
			return nil, err
		}
	}
	checked := make([]report.Checked, len(files))
	turn := make(chan struct{}, runtime.GOMAXPROCS(0))
	var all sync.WaitGroup
	for i := range files {
		turn <- struct{}{}
		all.Go(func() {
			checked[i] = report.Checked{File: files[i], Analysis: lint.Analyze(texts[i])}
			<-turn
		})
	}
	all.Wait()
	return checked, nil
}
