package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"golang.org/x/term"

	"stitchproof/cmd/stitchproof/rewrite"
	"stitchproof/lint/report"
)

// outputs is where a report goes, and how.
type outputs struct {
	targets []target
	options report.Options // of what goes to standard output
	colour  string
	sums    bool // statistics in place of the findings
	files   rewrite.Writer
}

// target is one report to write.
type target struct {
	format report.Format
	file   string // "" for standard output
	stdout io.Writer
}

// outputs reads where reports are to go.
func (c *checkCommand) outputs(s *streams) (*outputs, error) {
	main, _ := report.FindFormat(c.Format)
	out := &outputs{colour: c.Color, sums: c.Statistics, files: s.files}
	first := target{format: main, stdout: c.reportOn(s)}
	for _, o := range c.Output {
		name, file, formatted := strings.Cut(o, "=")
		if format, ok := report.FindFormat(name); ok && formatted {
			out.targets = append(out.targets, target{format: format, file: file})
			continue
		}
		if first.file != "" {
			return nil, fmt.Errorf("the report cannot go to both %s and %s: give one of them a format, as in --output sarif=%s", first.file, o, o)
		}
		first.file = o
	}
	out.targets = append([]target{first}, out.targets...)
	out.options = report.Options{
		Colour: coloured(first.stdout, c.Color), Width: widthOf(first.stdout), Quiet: c.Quiet, Version: version(),
	}
	return out, nil
}

// reportOn is where a report goes that goes to no file: standard output, unless
// patterns or changes are written there.
func (c *checkCommand) reportOn(s *streams) io.Writer {
	switch {
	case c.Diff:
		return io.Discard
	case c.wanted() && c.readsStdin():
		return s.err
	}
	return s.out
}

// write writes all reports.
func (out *outputs) write(outcomes []outcome) error {
	checked := make([]report.Checked, len(outcomes))
	for i, o := range outcomes {
		checked[i] = o.Checked
	}
	var all []error
	for _, t := range out.targets {
		all = append(all, out.writeOne(t, checked))
	}
	return errors.Join(all...)
}

func (out *outputs) writeOne(t target, checked []report.Checked) error {
	write := func(w io.Writer, o report.Options) error {
		if out.sums {
			return sum(w, t.format.Name, checked)
		}
		return t.format.Write(w, checked, o)
	}
	if t.file == "" {
		return write(t.stdout, out.options)
	}
	var b bytes.Buffer
	o := report.Options{Colour: out.colour == "always", Quiet: out.options.Quiet, Version: out.options.Version}
	if err := write(&b, o); err != nil {
		return err
	}
	return out.files.Put(t.file, b.Bytes())
}

// sum writes what all files come to, as JSON where that is the format.
func sum(w io.Writer, format string, checked []report.Checked) error {
	s := report.StatisticsOf(checked)
	if format == "json" {
		return s.JSON(w)
	}
	return s.Text(w)
}

// coloured tells whether what goes to w is in colour.
func coloured(w io.Writer, choice string) bool {
	if choice != "auto" {
		return choice == "always"
	}
	return isTerminal(w) && os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb"
}

func isTerminal(w io.Writer) bool {
	f, ok := w.(*os.File)
	return ok && term.IsTerminal(int(f.Fd()))
}

// widthOf is how many cells a line of a terminal has, 0 for what is none.
func widthOf(w io.Writer) int {
	if f, ok := w.(*os.File); ok {
		if width, _, err := term.GetSize(int(f.Fd())); err == nil {
			return width
		}
	}
	return 0
}
