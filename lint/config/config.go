package config

import (
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"

	"stitchproof/lint"
	"stitchproof/lint/paths"
)

// Finder finds the settings that hold for files. It remembers those of each
// folder, and may be asked from many goroutines.
type Finder struct {
	// only is the settings for all files, nil where they are looked for.
	only *Config

	mu      sync.Mutex
	folders map[string]found
}

type found struct {
	config *Config
	err    error
}

// NewFinder looks for the settings of each file.
func NewFinder() *Finder { return &Finder{folders: map[string]found{}} }

// Always gives the same settings to every file.
func Always(c *Config) *Finder { return &Finder{only: c} }

// Config is the settings of a folder: a file of settings and those that it
// extends. The zero value is what the rules come with.
type Config struct {
	layers []*layer // the farthest first
}

// Load reads a file of settings and those that it extends.
func Load(name string) (*Config, error) { return load(name, nil) }

func load(name string, from []string) (*Config, error) {
	whole, err := filepath.Abs(name)
	if err != nil {
		return nil, err
	}
	if slices.Contains(from, whole) {
		return nil, fmt.Errorf("%s: the files of settings extend each other in a circle", name)
	}
	l, err := read(name)
	if err != nil {
		return nil, err
	}
	c := &Config{}
	if l.Extends != "" {
		base := l.Extends
		if !filepath.IsAbs(base) {
			base = filepath.Join(filepath.Dir(name), base)
		}
		if c, err = load(base, append(from, whole)); err != nil {
			return nil, fmt.Errorf("%s: cannot extend: %w", l.at("extends"), err)
		}
	}
	c.layers = append(c.layers, l)
	return c, nil
}

// In gives the settings that hold in a folder.
func (f *Finder) In(folder string) (*Config, error) {
	if f.only != nil {
		return f.only, nil
	}
	whole, err := filepath.Abs(folder)
	if err != nil {
		return nil, err
	}
	f.mu.Lock()
	defer f.mu.Unlock()
	return f.in(whole)
}

// in looks in a folder, then in those that it lies in.
func (f *Finder) in(folder string) (*Config, error) {
	if known, ok := f.folders[folder]; ok {
		return known.config, known.err
	}
	var c *Config
	var err error
	name := filepath.Join(folder, Name)
	above := filepath.Dir(folder)
	switch info, missing := os.Stat(name); {
	case missing == nil && !info.IsDir():
		c, err = Load(shown(name))
	case missing != nil && !errors.Is(missing, fs.ErrNotExist) && !errors.Is(missing, fs.ErrPermission):
		err = missing
	case above == folder:
		c, err = personal()
	default:
		c, err = f.in(above)
	}
	f.folders[folder] = found{c, err}
	return c, err
}

// personal is a person's own settings, for patterns that have none.
func personal() (*Config, error) {
	folder, err := os.UserConfigDir()
	if err != nil {
		return &Config{}, nil // who has no home has no settings there
	}
	name := filepath.Join(folder, "stitchproof", Name)
	if _, err := os.Stat(name); err != nil {
		return &Config{}, nil
	}
	return Load(name)
}

// shown is a path as a person would write it: from where they are, if that is
// no longer.
func shown(name string) string {
	here, err := os.Getwd()
	if err != nil {
		return name
	}
	if rel, err := filepath.Rel(here, name); err == nil && len(rel) < len(name) {
		return rel
	}
	return name
}

// Effective is the settings that hold for one file.
type Effective struct {
	lint.Settings
	FailOn lint.Severity
	// Choices are where each came from, by key.
	Choices []Choice
}

// Choice is one choice that holds for a file.
type Choice struct {
	Key   string `json:"key"`
	Value string `json:"value"`
	From  string `json:"from"` // "haws/stitchproof.toml:3"
}

// For gives the settings that hold for a file.
func (c *Config) For(name string) Effective {
	e := effect{Effective: Effective{FailOn: lint.Error}, from: map[string]Choice{}}
	e.Levels, e.Style.Ways = lint.Levels{}, map[string]string{}
	whole, err := filepath.Abs(name)
	if err != nil {
		whole = name
	}
	for _, l := range c.layers {
		if l.FailOn != nil {
			e.FailOn = l.FailOn.is
			e.note(l, "", "fail-on", e.FailOn)
		}
		e.choose(l, "", l.choices)
		for i, o := range l.Override {
			if l.overrides[i].Means(whole) {
				e.choose(l, fmt.Sprintf("override[%d].", i), o.choices)
			}
		}
	}
	for _, key := range sortedKeys(e.from) {
		name, isRule := strings.CutPrefix(key, "rules.")
		if _, holds := e.Levels[name]; holds || !isRule {
			e.Choices = append(e.Choices, e.from[key])
		}
	}
	return e.Effective
}

// effect gathers choices, each over those made before.
type effect struct {
	Effective
	from map[string]Choice
}

func (e *effect) choose(l *layer, at string, c choices) {
	if c.Dialect != nil {
		e.Dialect = c.Dialect.is
		e.note(l, at, "dialect", e.Dialect)
	}
	if c.Style.LineWidth != nil {
		e.Style.Width = int(*c.Style.LineWidth)
		e.note(l, at, "style.line-width", e.Style.Width)
	}
	for name, way := range c.Style.Ways {
		e.Style.Ways[name] = way
		e.note(l, at, "style.ways."+name, way)
	}
	later := lint.Levels{}
	for name, level := range c.Rules {
		later[name] = level.is
		e.note(l, at, "rules."+name, level.is)
	}
	e.Levels.Choose(later)
}

func (e *effect) note(l *layer, at, key string, value any) {
	e.from[key] = Choice{key, fmt.Sprint(value), l.at(at + key)}
}

// Ending is the ending of the files that are patterns wherever they are.
const Ending = ".crochet"

// Includes tells whether a file that is met in a folder is to be checked.
func (c *Config) Includes(whole string) bool {
	verdict := paths.Silent
	if filepath.Ext(whole) == Ending {
		verdict = paths.Meant
	}
	for _, l := range c.layers {
		if v := l.include.Of(whole, false); v != paths.Silent {
			verdict = v
		}
	}
	return verdict == paths.Meant
}

// Ignores tells whether a file or a folder is left out.
func (c *Config) Ignores(whole string, isFolder bool) bool {
	verdict := paths.Silent
	for _, l := range c.layers {
		if v := l.ignore.Of(whole, isFolder); v != paths.Silent {
			verdict = v
		}
	}
	return verdict == paths.Meant
}

// Gitignore tells whether what a .gitignore names is left out.
func (c *Config) Gitignore() bool {
	for _, l := range slices.Backward(c.layers) {
		if l.Files.Gitignore != nil {
			return *l.Files.Gitignore
		}
	}
	return true
}

// Files are the files of settings that were read, the nearest first.
func (c *Config) Files() []string {
	var out []string
	for _, l := range slices.Backward(c.layers) {
		out = append(out, l.name)
	}
	return out
}

func sortedKeys[V any](m map[string]V) []string { return slices.Sorted(maps.Keys(m)) }
