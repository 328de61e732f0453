// Package config reads what a house chooses of the checks, in files named
// stitchproof.toml, and tells for each pattern which choices hold and where
// they come from. The command line and the editor both ask here.
//
// The nearest file upward from a pattern holds, alone: files further up are not
// looked at, unless it extends one by name. Where there is none, the person's
// own in their settings folder holds, and else what the rules come with.
package config

import (
	"bytes"
	_ "embed" // the schema and the example
	"encoding"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"

	"github.com/pelletier/go-toml/v2"

	"stitchproof/lang/house"
	"stitchproof/lang/nearest"
	"stitchproof/lang/stitch"
	"stitchproof/lint"
	"stitchproof/lint/paths"
)

// Name is how a file of settings is called.
const Name = "stitchproof.toml"

// Schema is the JSON schema of a file of settings.
//
//go:embed stitchproof.schema.json
var Schema []byte

// Example is a file of settings to start from, in which nothing is chosen yet.
//
//go:embed example.toml
var Example []byte

// file is what a file of settings says.
type file struct {
	// Another file of settings whose choices hold where this one makes none, as a
	// path from this file's folder.
	Extends string `toml:"extends,omitempty"`
	// The least severity that makes a check fail.
	FailOn *worded[lint.Severity] `toml:"fail-on,omitempty"`
	// Which files of a folder are checked.
	Files files `toml:"files,omitempty"`
	choices
	// Choices for some files only. Later ones go before earlier ones.
	Override []override `toml:"override,omitempty"`
}

// files says which files of a folder are checked.
type files struct {
	// Files that are checked beside those that end in .crochet, as patterns of a
	// .gitignore.
	Include []string `toml:"include,omitempty"`
	// Files and folders that are not checked, as patterns of a .gitignore.
	Ignore []string `toml:"ignore,omitempty"`
	// Whether what a .gitignore names is left out as well; it is unless this says
	// false.
	Gitignore *bool `toml:"gitignore,omitempty"`
}

// choices are what can be chosen for all files and for some.
type choices struct {
	// Whose terms a pattern uses where nothing in it shows that: US or UK.
	Dialect *worded[stitch.Dialect] `toml:"dialect,omitempty"`
	// What is made of a rule, of a family of rules, or of all: a severity, or off.
	// A rule's own name goes before its family's, and that before all; an override
	// goes before what stands outside it.
	Rules levels `toml:"rules,omitempty"`
	// How the house has its patterns written.
	Style style `toml:"style,omitempty"`
}

// style is how the house has its patterns written.
type style struct {
	// How many characters a line of an instruction may have.
	LineWidth *uint16 `toml:"line-width,omitempty" jsonschema:"minimum=0,maximum=65535"`
	// Which way is written, of things that are written in several ways.
	Ways ways `toml:"ways,omitempty"`
}

// ways are the ways chosen, by the name of the thing.
type ways map[string]string

// levels are what is made of rules.
type levels map[string]worded[lint.Level]

// worded is a value that is written as a word, and never as the number that it
// happens to be within the program.
type worded[T any] struct{ is T }

// UnmarshalText reads the word.
func (w *worded[T]) UnmarshalText(text []byte) error {
	return any(&w.is).(encoding.TextUnmarshaler).UnmarshalText(text)
}

// override are choices for some files.
type override struct {
	// The files that the choices are for, as patterns of a .gitignore.
	Paths []string `toml:"paths"`
	choices
}

// layer is a file of settings that was read.
type layer struct {
	file
	name  string // as it is told
	lines map[string]int
	// include, ignore and overrides are its lists of paths, ready to be asked.
	include, ignore paths.List
	overrides       []paths.List
}

// read reads a file of settings. Every fault in it is told, with its place.
func read(name string) (*layer, error) {
	data, err := os.ReadFile(name)
	if err != nil {
		return nil, fmt.Errorf("%s: cannot be read: %w", name, errors.Unwrap(err))
	}
	l := &layer{name: name}
	data = bytes.TrimPrefix(data, []byte("\uFEFF")) // some editors of Windows write one
	d := toml.NewDecoder(bytes.NewReader(data)).DisallowUnknownFields()
	if err := d.Decode(&l.file); err != nil {
		return nil, told(name, err)
	}
	l.lines = linesOf(data)
	if err := errors.Join(l.faults()...); err != nil {
		return nil, err
	}
	whole, err := filepath.Abs(filepath.Dir(name))
	if err != nil {
		return nil, err
	}
	l.include, l.ignore = paths.New(whole, l.Files.Include), paths.New(whole, l.Files.Ignore)
	for _, o := range l.Override {
		l.overrides = append(l.overrides, paths.New(whole, o.Paths))
	}
	return l, nil
}

// told words what the reader of TOML found wrong.
func told(name string, err error) error {
	var unknown *toml.StrictMissingError
	if errors.As(err, &unknown) {
		var all []error
		for i := range unknown.Errors {
			all = append(all, unknownKey(name, &unknown.Errors[i]))
		}
		return errors.Join(all...)
	}
	var wrong *toml.DecodeError
	if errors.As(err, &wrong) {
		line, column := wrong.Position()
		return fmt.Errorf("%s:%d:%d: %s", name, line, column, strings.TrimPrefix(wrong.Error(), "toml: "))
	}
	return fmt.Errorf("%s: %w", name, err)
}

// unknownKey names the key that one was meant to be.
func unknownKey(name string, e *toml.DecodeError) error {
	line, column := e.Position()
	key := e.Key()
	known := keysAt(reflect.TypeFor[file](), key[:len(key)-1])
	return fmt.Errorf("%s:%d:%d: there is no key %q%s", name, line, column, strings.Join(key, "."), guess(key[len(key)-1], known))
}

// guess is what is said of what a word was meant to be.
func guess(word string, known []string) string {
	if meant, ok := nearest.To(word, known); ok {
		return fmt.Sprintf("; perhaps %q is meant", meant)
	}
	return "; there are " + strings.Join(known, ", ")
}

// keysAt lists the keys that a table may have.
func keysAt(t reflect.Type, table []string) []string {
	for t.Kind() == reflect.Slice || t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	if t.Kind() != reflect.Struct {
		return nil
	}
	var keys []string
	for _, f := range reflect.VisibleFields(t) {
		key, _, _ := strings.Cut(f.Tag.Get("toml"), ",")
		switch {
		case key == "":
		case len(table) == 0:
			keys = append(keys, key)
		case key == table[0]:
			return keysAt(f.Type, table[1:])
		}
	}
	return keys
}

// faults are what is wrong with a file that is sound TOML with known keys.
func (l *layer) faults() []error {
	out := append(l.unknownRules("rules", l.Rules), l.unknownWays("style.ways", l.Style.Ways)...)
	for i, o := range l.Override {
		at := fmt.Sprintf("override[%d]", i)
		if len(o.Paths) == 0 {
			out = append(out, fmt.Errorf("%s: an override names no paths", l.at(at)))
		}
		out = append(out, l.unknownRules(at+".rules", o.Rules)...)
		out = append(out, l.unknownWays(at+".style.ways", o.Style.Ways)...)
	}
	return out
}

func (l *layer) unknownWays(table string, chosen ways) []error {
	var out []error
	for _, name := range sortedKeys(chosen) {
		a := house.ByName(name)
		switch {
		case a == nil:
			out = append(out, fmt.Errorf("%s: nothing that is written in several ways is called %q%s", l.at(table+"."+name), name, guess(name, aspects())))
		case !slices.Contains(a.Ways, chosen[name]):
			out = append(out, fmt.Errorf("%s: %q is no way of %s%s", l.at(table+"."+name), chosen[name], a.About, guess(chosen[name], a.Ways)))
		}
	}
	return out
}

// aspects are the names of what is written in several ways.
func aspects() []string {
	var out []string
	for _, a := range house.Aspects() {
		out = append(out, a.Name)
	}
	return out
}

func (l *layer) unknownRules(table string, chosen levels) []error {
	var out []error
	for _, name := range sortedKeys(chosen) {
		if err := lint.CheckSelector(name); err != nil {
			out = append(out, fmt.Errorf("%s: %w", l.at(table+"."+name), err))
		}
	}
	return out
}

// at is the place of a key, as it is told.
func (l *layer) at(key string) string { return fmt.Sprintf("%s:%d", l.name, l.lines[key]) }
