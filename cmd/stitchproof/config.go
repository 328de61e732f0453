package main

import (
	"fmt"
	"io"
	"os"
	"path/filepath"

	"stitchproof/lint/config"
	"stitchproof/lint/report"
)

type configCommand struct {
	Path   string `arg:"" optional:"" default:"." help:"A pattern, or a folder."`
	Schema bool   `help:"Write the JSON schema of the settings instead."`
	Format string `enum:"text,json" default:"text" help:"How to write: ${enum}."`

	settingsFlags
}

// Run writes the settings that hold for a file, and where each comes from.
func (c *configCommand) Run(s *streams) error {
	if c.Schema {
		_, err := s.out.Write(config.Schema)
		return err
	}
	finder, err := c.finder()
	if err != nil {
		return err
	}
	name := c.Path
	if isFolder(name) {
		name = filepath.Join(name, "any"+config.Ending)
	}
	found, err := finder.In(filepath.Dir(name))
	if err != nil {
		return err
	}
	effective, err := c.effective(finder, name)
	if err != nil {
		return err
	}
	return report.Settings(s.out, found.Files(), effective, c.Format == "json")
}

type initCommand struct {
	Folder string `arg:"" optional:"" default:"." help:"Where to write it."`
}

// Run writes a file of settings to start from.
func (c *initCommand) Run(s *streams) error {
	if at, err := os.Stat(c.Folder); err != nil || !at.IsDir() {
		return fmt.Errorf("there is no folder %s", c.Folder)
	}
	name := filepath.Join(c.Folder, config.Name)
	if err := s.files.New(name, config.Example); err != nil {
		return err
	}
	_, err := fmt.Fprintf(s.out, "%s is written: nothing is chosen in it yet\n", name)
	return err
}

type rulesCommand struct {
	Format string `enum:"text,json" default:"text" help:"How to write: ${enum}."`
}

// Run lists all rules.
func (c *rulesCommand) Run(s *streams) error {
	return map[string]func(io.Writer) error{"text": report.Rules, "json": report.RulesJSON}[c.Format](s.out)
}
