package main

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"stitchproof/lint"
	"stitchproof/lint/baseline"
	"stitchproof/lint/report"
)

type checkCommand struct {
	Paths []string `arg:"" help:"Files, folders, globs (also with **), or - for standard input."`

	Format     string         `short:"f" enum:"${formats}" default:"text" help:"How to report: ${enum}."`
	Output     []string       `short:"o" sep:"none" placeholder:"[FORMAT=]FILE" help:"Write the report to a file; with a format, write one of that format as well. May be given several times."`
	FailOn     *lint.Severity `placeholder:"SEVERITY" help:"The least severity that makes the exit code 1: info, warning, error or caution. Else what the settings say, else error."`
	Statistics bool           `help:"Add all files up instead of listing what was found in each."`
	Timing     bool           `help:"Tell on standard error how long each rule took over all files together."`
	Quiet      bool           `short:"q" help:"Tell what was found and nothing else."`
	Color      string         `enum:"auto,always,never" default:"auto" help:"Colour the report: ${enum}. Auto is on a terminal, unless NO_COLOR is set."`

	settingsFlags
	inputFlags

	Baseline      string `placeholder:"FILE" help:"Leave out the findings that a baseline sets aside."`
	WriteBaseline string `placeholder:"FILE" help:"Set all that is found now aside, in a baseline, but for cautions."`

	fixFlags
}

// Run checks the files and reports them in the order named.
func (c *checkCommand) Run(s *streams) error {
	lint.ForBatch()
	out, err := c.outputs(s)
	if err != nil {
		return err
	}
	run, err := c.run(s)
	if err != nil {
		return err
	}
	found, err := c.find(c.Paths, run.settings)
	if err != nil {
		return err
	}
	if len(found.inputs) == 0 {
		return c.nothing(s, found)
	}
	outcomes := run.all(found.inputs)
	run.timing.write(s.err)
	if c.WriteBaseline != "" {
		return c.setAside(s, outcomes)
	}
	changed, err := c.rewrite(s, outcomes)
	if err := errors.Join(err, out.write(outcomes)); err != nil {
		return err
	}
	c.tellGone(s, run.baseline)
	if !c.Quiet {
		s.tellUnworked(filesOf(outcomes, unworked)...)
	}
	if err := unchecked(outcomes); err != nil {
		return err
	}
	if c.Diff && changed || grave(outcomes) {
		return errFound
	}
	return nil
}

// run makes ready what every file is checked with.
func (c *checkCommand) run(s *streams) (*checkRun, error) {
	settings, err := c.finder()
	if err != nil {
		return nil, err
	}
	if err := c.fixFlags.check(); err != nil {
		return nil, err
	}
	r := &checkRun{streams: s, checkCommand: c, settings: settings, progress: progressOn(s.err, c.Quiet)}
	if c.Timing {
		r.timing = &timing{}
	}
	if c.Baseline != "" {
		r.baseline, err = baseline.Load(c.Baseline)
	}
	return r, err
}

// nothing answers for a run that has no file to check. Where all that was named
// is ignored, as it may be in a hook, that is as it should be.
func (c *checkCommand) nothing(s *streams, found foundFiles) error {
	if found.ignored == 0 {
		return noneFound(c.Paths)
	}
	if !c.Quiet {
		fmt.Fprintf(s.err, "stitchproof: nothing is checked: all of %s is ignored\n", strings.Join(c.Paths, ", "))
	}
	return nil
}

// setAside writes a baseline.
func (c *checkCommand) setAside(s *streams, outcomes []outcome) error {
	w, err := baseline.NewWriter(c.WriteBaseline)
	if err != nil {
		return err
	}
	for _, o := range outcomes {
		w.Add(o.File, o.Text, o.Findings)
	}
	content, err := w.Bytes()
	if err != nil {
		return err
	}
	if err := s.files.Put(c.WriteBaseline, content); err != nil {
		return err
	}
	if !c.Quiet {
		fmt.Fprintf(s.out, "%s set aside in %s\n", report.Amount(w.Len(), "finding"), c.WriteBaseline)
	}
	return unchecked(outcomes)
}

// tellGone says that a baseline holds more than is found.
func (c *checkCommand) tellGone(s *streams, b *baseline.Baseline) {
	if gone := b.Gone(); gone > 0 && !c.Quiet {
		fmt.Fprintf(s.err, "stitchproof: %s of %s found no more: write it anew\n", report.Amount(gone, "finding"), c.Baseline)
	}
}

// grave tells whether something was found that matters.
func grave(outcomes []outcome) bool {
	return slices.ContainsFunc(outcomes, func(o outcome) bool {
		return slices.ContainsFunc(o.Findings, func(f lint.Finding) bool { return f.Severity >= o.failOn })
	})
}

// unchecked names the files that could not be checked.
func unchecked(outcomes []outcome) error {
	if failed := filesOf(outcomes, report.Checked.Failed); len(failed) > 0 {
		return fmt.Errorf("could not check %s", naming(failed))
	}
	return nil
}

// unworked tells of a file that was read that no instruction is in it.
func unworked(c report.Checked) bool { return c.Lines.All == 0 && !c.Failed() }

func filesOf(outcomes []outcome, of func(report.Checked) bool) []string {
	var names []string
	for _, o := range outcomes {
		if of(o.Checked) {
			names = append(names, o.File)
		}
	}
	return names
}
