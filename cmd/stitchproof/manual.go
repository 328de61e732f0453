package main

import (
	"slices"

	"stitchproof/cmd/stitchproof/manual"
	"stitchproof/lint"
	"stitchproof/lint/config"
)

type completionCommand struct {
	Shell string `arg:"" enum:"bash,fish,zsh" help:"The shell: ${enum}."`
}

// Run writes the script by which a shell completes the command line.
func (c completionCommand) Run(s *streams) error {
	m, err := s.manual()
	if err != nil {
		return err
	}
	return manual.Shells[c.Shell](m, s.out)
}

type manCommand struct{}

// Run writes the manual page.
func (manCommand) Run(s *streams) error {
	m, err := s.manual()
	if err != nil {
		return err
	}
	return m.Page(s.out, version())
}

// manual is that of all commands.
func (s *streams) manual() (manual.Manual, error) {
	parser, err := s.parserOf(commands)
	if err != nil {
		return manual.Manual{}, err
	}
	rules := slices.Concat(lint.Names(), []string{lint.FileUnreadable, lint.InternalFailure})
	return manual.Of(parser.Model, map[string][]string{"explain": rules, "completion": manual.ShellNames()}, manualSections), nil
}

// manualSections are what the model of the command line does not know.
var manualSections = []manual.Section{
	{Title: "Answering a finding", Items: []manual.Item{
		{Word: "// allow RULE: reason", Text: "At the end of a line, or in a line before it: the rule's findings in that instruction are as they should be. A caution is told until a reason is given."},
		{Word: "// allow-begin RULE: reason", Text: "The same for all lines up to // allow-end."},
		{Word: "// allow-file RULE: reason", Text: "The same for the whole file."},
	}},
	{Title: "Exit status", Items: []manual.Item{
		{Word: "0", Text: "Nothing was found at or above what --fail-on says."},
		{Word: "1", Text: "Something was found, or --diff shows a change."},
		{Word: "2", Text: "The command could not be carried out, or not for every file."},
	}},
	{Title: "Environment", Items: []manual.Item{
		{Word: "NO_COLOR", Text: "Where it is set to anything, nothing is coloured unless --color always is given."},
		{Word: "XDG_CONFIG_HOME", Text: "Where the folder stitchproof with a person's own " + config.Name + " is looked for; else ~/.config."},
	}},
	{Title: "Files", Items: []manual.Item{
		{Word: config.Name, Text: "Settings for the patterns in its folder and below. The nearest one upward from a pattern holds."},
		{Word: ".gitignore", Text: "What it names is left out where a folder is searched."},
	}},
}
