package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lint"
	"stitchproof/lint/config"
	"stitchproof/lint/inputs"
)

// configFlags choose the file of settings.
type configFlags struct {
	Config   string `placeholder:"FILE" help:"Use these settings for all files, whatever ${config} lies beside them."`
	NoConfig bool   `help:"Use no settings but those given here."`
}

// settingsFlags choose the settings.
type settingsFlags struct {
	configFlags

	Level map[string]string `mapsep:"," placeholder:"RULE=LEVEL" help:"What is made of a rule, a family of rules, or all: off, info, warning, error or caution. May be given several times."`
}

// finder finds the settings of files.
func (f *settingsFlags) finder() (*config.Finder, error) {
	if _, err := f.levels(); err != nil {
		return nil, err
	}
	return f.configFlags.finder()
}

func (f *configFlags) finder() (*config.Finder, error) {
	switch {
	case f.Config != "" && f.NoConfig:
		return nil, errors.New("--config and --no-config cannot both hold")
	case f.NoConfig:
		return config.Always(&config.Config{}), nil
	case f.Config != "":
		c, err := config.Load(f.Config)
		return config.Always(c), err
	}
	return config.NewFinder(), nil
}

// effective is the settings that hold for a file, with what the command line
// chooses.
func (f *settingsFlags) effective(finder *config.Finder, name string) (config.Effective, error) {
	c, err := finder.In(filepath.Dir(name))
	if err != nil {
		return config.Effective{}, err
	}
	e := c.For(name)
	levels, err := f.levels()
	e.Levels.Choose(levels)
	return e, err
}

// levels are the levels that the command line chooses.
func (f *settingsFlags) levels() (lint.Levels, error) {
	out := lint.Levels{}
	for name, word := range f.Level {
		var level lint.Level
		if err := errors.Join(lint.CheckSelector(name), level.UnmarshalText([]byte(word))); err != nil {
			return nil, err
		}
		out[name] = level
	}
	return out, nil
}

// inputFlags choose the files.
type inputFlags struct {
	Ignore      []string `placeholder:"PATTERN" help:"Leave these files and folders out, as a .gitignore would. May be given several times."`
	ForceIgnore bool     `help:"Leave out what is ignored even where it is named, as hooks need."`
	StdinName   string   `placeholder:"FILE" default:"-" help:"What standard input is called: its settings are those of such a file."`
}

// foundFiles are the files that paths mean, and how many were left out of them.
type foundFiles struct {
	inputs  []inputs.Input
	ignored int
}

// find finds the files that paths mean.
func (f *inputFlags) find(named []string, settings *config.Finder) (foundFiles, error) {
	finder := inputs.Finder{Settings: settings, Ignore: f.Ignore, Force: f.ForceIgnore}
	found, ignored, err := finder.Find(named)
	for _, in := range found {
		if err == nil { // a fault in settings is told once, before anything is done
			_, err = settings.In(filepath.Dir(f.named(in.Name)))
		}
	}
	return foundFiles{found, ignored}, err
}

// noneFound says that paths mean no pattern.
func noneFound(named []string) error {
	return fmt.Errorf("no %s file in %s: name a file of another ending by itself, or let %s include its ending", config.Ending, strings.Join(named, ", "), config.Name)
}

// named is what a file is called in reports.
func (f *inputFlags) named(name string) string {
	if name == inputs.Stdin {
		return f.StdinName
	}
	return name
}

// read reads one file, or standard input, for a command that works on one.
func (s *streams) read(name string) (*source.Text, error) {
	if isFolder(name) {
		return nil, fmt.Errorf("%s is a folder: name one pattern in it", name)
	}
	content, err := inputs.Read(name, s.in)
	if err != nil {
		return nil, fmt.Errorf("%s %w", name, err)
	}
	return source.New(string(content)), nil
}

func isFolder(name string) bool {
	info, err := os.Stat(name)
	return err == nil && info.IsDir()
}

func isThere(name string) bool {
	_, err := os.Stat(name)
	return err == nil
}

// maxNamed is how many files a message names.
const maxNamed = 3

// naming names files, or some of them and how many more.
func naming(files []string) string {
	if n := len(files) - maxNamed; n > 0 {
		return fmt.Sprintf("%s and %d more", strings.Join(files[:maxNamed], ", "), n)
	}
	return strings.Join(files, ", ")
}

// tellUnworked names the files in which no instruction was found, so that nobody takes
// what was not read for sound.
func (s *streams) tellUnworked(files ...string) {
	if len(files) > 0 {
		fmt.Fprintf(s.err, "stitchproof: no instruction was found in %s: %s\n", naming(files), lint.AnInstruction)
	}
}
