package main

import (
	"errors"
	"fmt"
	"io"

	"stitchproof/lang/fabric"
	"stitchproof/lang/house"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lint/config"
	"stitchproof/lint/inputs"
	"stitchproof/lint/report"
)

type formatCommand struct {
	Paths []string `arg:"" help:"Files, folders, globs (also with **), or - to read standard input and print it in the style."`
	Check bool     `xor:"output" help:"Write nothing and name the files that are not in the style; the exit code is 1 where there are any."`
	Diff  bool     `xor:"output" help:"Write nothing and show what would change; the exit code is 1 where there is something."`
	Quiet bool     `short:"q" help:"Do not tell how many files were written."`

	settingsFlags
	inputFlags
}

// Run writes the files in the house's style. One that cannot be read or written
// does not hinder the others.
func (c *formatCommand) Run(s *streams) error {
	settings, err := c.finder()
	if err != nil {
		return err
	}
	found, err := c.find(c.Paths, settings)
	if err != nil {
		return err
	}
	if len(found.inputs) == 0 && found.ignored == 0 {
		return noneFound(c.Paths)
	}
	var all []error
	changed := 0
	for _, in := range found.inputs {
		other, err := unbroken(in.Name, func() (bool, error) { return c.one(s, settings, in) })
		if other && err == nil {
			changed++
		}
		all = append(all, err)
	}
	if c.writes() && changed > 0 && !c.Quiet {
		fmt.Fprintf(s.err, "stitchproof: %s written in the style\n", report.Amount(changed, "file"))
	}
	if err := errors.Join(all...); err != nil || c.writes() || changed == 0 {
		return err
	}
	return errFound
}

// writes tells whether files are changed, not only looked at.
func (c *formatCommand) writes() bool { return !c.Check && !c.Diff }

// one formats a file, and tells whether that changes it.
func (c *formatCommand) one(s *streams, settings *config.Finder, in inputs.Input) (changed bool, err error) {
	content, err := in.Read(s.in)
	if err != nil {
		return false, fmt.Errorf("%s %w", in.Name, err)
	}
	name := c.named(in.Name)
	chosen, err := c.effective(settings, name)
	if err != nil {
		return false, err
	}
	was := source.New(string(content))
	formatted := house.Format(fabric.WorkIn(syntax.Read(was), chosen.Dialect), chosen.Style)
	c.tellKept(s, name, was, formatted.Kept)
	now := formatted.Text.String()
	changed = now != string(content)
	switch {
	case c.Diff:
		return changed, showDiff(s.out, name, content, []byte(now))
	case c.Check && changed:
		fmt.Fprintln(s.out, name)
	case c.Check:
	case in.Name == inputs.Stdin:
		_, err = io.WriteString(s.out, now)
		return false, err
	default:
		return changed, s.files.File(in.Name, content, []byte(now))
	}
	return changed, nil
}

// tellKept names the instructions that the style would have worked otherwise.
func (c *formatCommand) tellKept(s *streams, name string, was *source.Text, kept []source.Span) {
	if c.Quiet {
		return
	}
	for _, span := range kept {
		line, _ := was.LineColumn(span.Start)
		fmt.Fprintf(s.err, "%s:%d: left as it is: in the house's style other stitches would come of it\n", name, line)
	}
}
