package main

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/alecthomas/kong"

	"stitchproof/cmd/stitchproof/rewrite"
	"stitchproof/lint/config"
	"stitchproof/lint/report"
)

// The exit codes. They are part of what scripts rely on.
const (
	exitClean = 0 // nothing found that matters
	exitFound = 1 // findings at or above --fail-on
	exitBroke = 2 // could not run: bad usage, a file that cannot be read
)

// commandLine is what every command has.
type commandLine struct {
	Help helpFlag `help:"Show this help, or that of a command." short:"h"`
}

// command is one of the program, by the name that it is called by.
type command struct {
	name, help string
	made       func() any
}

var commands = []command{
	{"check", "Check patterns and say what a maker must be told.", func() any { return &checkCommand{} }},
	{"count", "Count a pattern, row by row, for every size.", func() any { return &countCommand{} }},
	{"explain", "Explain a rule or a stitch.", func() any { return &explainCommand{} }},
	{"rules", "List the rules.", func() any { return &rulesCommand{} }},
	{"config", "Show the settings that hold for a file, and where they come from.", func() any { return &configCommand{} }},
	{"init", "Write a file of settings to start from.", func() any { return &initCommand{} }},
	{"format", "Write patterns in the style of the house, and nothing otherwise worked.", func() any { return &formatCommand{} }},
	{"terms", "Write a pattern in US or in UK terms.", func() any { return &termsCommand{} }},
	{"lsp", "Serve an editor over standard input and output.", func() any { return &lspCommand{} }},
	{"completion", "Write the script by which a shell completes the command line.", func() any { return &completionCommand{} }},
	{"man", "Write the manual page.", func() any { return &manCommand{} }},
	{"version", "Say which build this is.", func() any { return &versionCommand{} }},
}

// streams are what a command reads and writes.
type streams struct {
	in       io.Reader
	out, err io.Writer
	files    rewrite.Writer
}

// errFound is how a command says that it ran and found something.
var errFound = errors.New("findings")

// errHelp ends the parsing once help has been shown.
var errHelp = errors.New("help shown")

// helpFlag shows help in the place of running anything.
type helpFlag bool

// BeforeReset is called by kong before arguments are checked, so that help is
// shown whatever else is on the line.
func (helpFlag) BeforeReset(ctx *kong.Context) error {
	if err := ctx.PrintUsage(false); err != nil {
		return err
	}
	return errHelp
}

// variables are what the command line names that is listed elsewhere.
func variables() kong.Vars {
	return kong.Vars{
		"formats": strings.Join(report.FormatNames(), ","), "countFormats": strings.Join(report.CountFormatNames(), ","),
		"config": config.Name, "tokenVariable": tokenVariable,
	}
}

// called are the commands that some arguments may be meant for: the one that they begin
// with, else all.
func called(args []string) []command {
	if len(args) > 0 {
		if i := slices.IndexFunc(commands, func(c command) bool { return c.name == args[0] }); i >= 0 {
			return commands[i : i+1]
		}
	}
	return commands
}

// parserOf makes the parser of a command line of some commands. Those that are not called
// are left out of it: to model them takes longer than to read a pattern.
func (s *streams) parserOf(some []command) (*kong.Kong, error) {
	options := []kong.Option{
		kong.Name("stitchproof"),
		kong.Description("Checks plain-text crochet patterns: counts every row, in every size, and says where the words do not give the stated piece."),
		kong.NoDefaultHelp(), kong.Writers(s.out, s.err), kong.Bind(s),
		variables(),
	}
	for _, c := range some {
		options = append(options, kong.DynamicCommand(c.name, c.help, "", c.made()))
	}
	return kong.New(&commandLine{}, options...)
}

// run runs one command line and gives the exit code.
func (s *streams) run(args []string) int {
	parser, err := s.parserOf(called(args))
	if err == nil {
		var ctx *kong.Context
		if ctx, err = parser.Parse(args); err == nil {
			_, err = unbroken(ctx.Command(), func() (any, error) { return nil, ctx.Run() })
		}
	}
	switch {
	case err == nil, errors.Is(err, errHelp):
		return exitClean
	case errors.Is(err, errFound):
		return exitFound
	}
	fmt.Fprintf(s.err, "stitchproof: %v\n", helpful(err, args))
	return exitBroke
}

// helpful is an error that says what to type instead and where to read on, if it is one
// of how the program was called.
func helpful(err error, args []string) error {
	var misused *kong.ParseError
	if !errors.As(err, &misused) {
		return err
	}
	command, instead := "stitchproof", ""
	switch selected := misused.Context.Selected(); {
	case selected != nil:
		command += " " + selected.Name
	case len(args) == 0:
		instead = "; `stitchproof check FILE` checks a pattern"
	case isThere(args[0]):
		instead = fmt.Sprintf("; `stitchproof check %s` checks it", args[0])
	}
	return fmt.Errorf("%w%s; `%s --help` tells more", err, instead, command)
}

// unbroken does some work on what has a name, and makes an error of a panic, so
// that it costs nothing else.
func unbroken[T any](name string, work func() (T, error)) (done T, err error) {
	defer func() {
		if broken := recover(); broken != nil {
			err = fmt.Errorf("%s: this broke down: %v; please report it", name, broken)
		}
	}()
	return work()
}
