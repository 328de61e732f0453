package main

import (
	"errors"
	"fmt"
	"io"
	"path/filepath"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
	"stitchproof/lang/terms"
	"stitchproof/lint/inputs"
)

type termsCommand struct {
	File  string `arg:"" help:"A pattern, or - for standard input."`
	To    string `enum:"us,uk" required:"" placeholder:"us|uk" help:"Whose terms to write it in: ${enum}."`
	Write bool   `xor:"output" help:"Rewrite the file instead of printing it."`
	Diff  bool   `xor:"output" help:"Print what would change instead of the whole."`

	configFlags
}

// dialects are what --to takes.
var dialects = map[string]stitch.Dialect{"us": stitch.US, "uk": stitch.UK}

// Run rewrites one pattern in the terms asked for. A pattern that is in them
// already stays as it is.
func (c *termsCommand) Run(s *streams) error {
	if c.Write && c.File == inputs.Stdin {
		return errors.New("standard input cannot be rewritten: leave --write out")
	}
	was, err := s.read(c.File)
	if err != nil {
		return err
	}
	usual, err := c.usual()
	if err != nil {
		return err
	}
	now, err := inTerms(was, usual, dialects[c.To])
	if err != nil {
		return fmt.Errorf("%s: %w", c.File, err)
	}
	switch {
	case c.Write:
		return s.files.File(c.File, []byte(was.String()), []byte(now.String()))
	case c.Diff:
		err = showDiff(s.out, c.File, []byte(was.String()), []byte(now.String()))
	default:
		_, err = io.WriteString(s.out, now.String())
	}
	return err
}

// usual is whose terms the house writes, Unsettled where the settings do not say.
func (c *termsCommand) usual() (stitch.Dialect, error) {
	finder, err := c.finder()
	if err != nil {
		return stitch.Unsettled, err
	}
	settings, err := finder.In(filepath.Dir(c.File))
	if err != nil {
		return stitch.Unsettled, err
	}
	return settings.For(c.File).Dialect, nil
}

// inTerms is a pattern in the words of a dialect.
func inTerms(text *source.Text, usual, to stitch.Dialect) (*source.Text, error) {
	edits, err := terms.Rewrite(syntax.Read(text), usual, to)
	if err != nil {
		return nil, err
	}
	return text.Apply(edits)
}
