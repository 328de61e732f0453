// Package manual writes what the command line offers for shells, which complete
// it, and as a manual page. It is made of the command line's own model, so that
// it is never behind.
package manual

import (
	"strings"

	"github.com/alecthomas/kong"
)

// Manual is the command line as it is told.
type Manual struct {
	Name, Help string
	Commands   []Command
	// Extra are the sections of the manual page that no model knows.
	Extra []Section
}

// Command is one command.
type Command struct {
	Name, Help string
	Usage      string // its arguments
	Words      []string
	Flags      []Flag
}

// Flag is one flag.
type Flag struct {
	Name  string
	Short string // one letter, or none
	Help  string
	Value string   // what its value is called, "" for a flag without one
	Words []string // what its value may be, none where that is open
}

// Section is a section of the manual page.
type Section struct {
	Title string
	// Items are paragraphs with what each is about.
	Items []Item
}

// Item is a word and what there is to say of it.
type Item struct{ Word, Text string }

// Of tells of a command line. Words are what the arguments of a command may be,
// by its name; other arguments are files.
func Of(app *kong.Application, words map[string][]string, extra []Section) Manual {
	m := Manual{Name: app.Name, Help: app.Help, Extra: extra}
	for _, n := range app.Leaves(true) {
		c := Command{Name: n.Name, Help: n.Help, Words: words[n.Name]}
		var usage []string
		for _, p := range n.Positional {
			usage = append(usage, p.Summary())
		}
		c.Usage = strings.Join(usage, " ")
		for _, flags := range n.AllFlags(true) {
			for _, f := range flags {
				c.Flags = append(c.Flags, flagOf(f))
			}
		}
		m.Commands = append(m.Commands, c)
	}
	return m
}

func flagOf(f *kong.Flag) Flag {
	out := Flag{Name: f.Name, Help: f.Help}
	if f.Short != 0 {
		out.Short = string(f.Short)
	}
	if f.IsBool() {
		return out
	}
	if f.Enum != "" {
		out.Words = f.EnumSlice()
	}
	out.Value = f.PlaceHolder
	if out.Value == "" {
		out.Value = strings.ToUpper(f.Name)
	}
	return out
}

// takesFile tells whether a flag's value is a file.
func (f Flag) takesFile() bool { return strings.Contains(f.Value, "FILE") }

// spelled are the ways to write a flag.
func (f Flag) spelled() []string {
	out := []string{"--" + f.Name}
	if f.Short != "" {
		out = append(out, "-"+f.Short)
	}
	return out
}

// names are the names of all commands.
func (m Manual) names() []string {
	var out []string
	for _, c := range m.Commands {
		out = append(out, c.Name)
	}
	return out
}
