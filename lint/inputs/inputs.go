// Package inputs finds the patterns that a person names: files, folders, globs
// and standard input. What cannot be read is an input as well, with the reason,
// so that one bad file never ends a run.
package inputs

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/bmatcuk/doublestar/v4"

	"stitchproof/lint/config"
	"stitchproof/lint/paths"
)

// Stdin is how standard input is named.
const Stdin = "-"

// MaxSize is how large a text may be, in bytes. A book of three hundred pages is
// half as large; what is larger is no pattern, and may take minutes to read.
const MaxSize = 4 << 20

// Input is a file to check.
type Input struct {
	Name string
	Err  error // why it cannot be read, nil where nothing is known to hinder it
}

// Finder finds inputs.
type Finder struct {
	Settings *config.Finder
	// Ignore are more files to leave out, as patterns of a .gitignore in the
	// folder that the program runs in.
	Ignore []string
	// Force leaves out what is ignored even where it is named itself.
	Force bool
}

// search is one search of a finder.
type search struct {
	*Finder
	ignore  paths.List
	git     map[string][]paths.List // by folder, what is ignored in it
	found   []Input
	seen    map[string]bool
	ignored int
}

// Find lists the files that names mean, each once, in the order of the names and
// within a folder by name. It also counts what was left out as ignored. It
// fails only where settings cannot be read.
func (f *Finder) Find(names []string) (found []Input, ignored int, err error) {
	here, err := os.Getwd()
	if err != nil {
		return nil, 0, err
	}
	s := &search{Finder: f, ignore: paths.New(here, f.Ignore), git: map[string][]paths.List{}, seen: map[string]bool{}}
	for _, name := range names {
		if err := s.named(name); err != nil {
			return nil, 0, err
		}
	}
	return s.found, s.ignored, nil
}

// named takes what a person named.
func (s *search) named(name string) error {
	if name == Stdin {
		s.add(Input{Name: name})
		return nil
	}
	info, err := os.Stat(name)
	switch {
	case err != nil && errors.Is(err, fs.ErrNotExist) && strings.ContainsAny(name, "*?[{"):
		return s.glob(name)
	case err != nil:
		s.add(Input{name, plain(err)})
		return nil
	case info.IsDir():
		return s.folder(name)
	}
	left, err := s.leavesFile(name, s.Force)
	if !left && err == nil {
		s.add(Input{Name: name})
	}
	return err
}

// glob takes the files that a glob means.
func (s *search) glob(pattern string) error {
	names, err := doublestar.FilepathGlob(pattern, doublestar.WithFilesOnly(), doublestar.WithNoFollow(), doublestar.WithNoHidden())
	if err != nil {
		s.add(Input{pattern, fmt.Errorf("is no glob: %w", err)})
		return nil
	}
	if len(names) == 0 {
		s.add(Input{pattern, errors.New("no file is called so")})
	}
	slices.Sort(names)
	for _, name := range names {
		left, err := s.leavesFile(name, true)
		if err != nil {
			return err
		}
		if !left {
			s.addFound(name)
		}
	}
	return nil
}

// leavesFile tells whether a file is left out, where that is to be heeded.
func (s *search) leavesFile(name string, heeding bool) (bool, error) {
	if !heeding {
		return false, nil
	}
	c, err := s.Settings.In(filepath.Dir(name))
	if err != nil {
		return false, err
	}
	left, err := s.leaves(c, name, false)
	if left {
		s.ignored++
	}
	return left, err
}

// folder takes the patterns in a folder and the folders within it.
func (s *search) folder(name string) error {
	c, err := s.Settings.In(name)
	if err != nil {
		return err
	}
	entries, err := os.ReadDir(name)
	if err != nil {
		s.add(Input{name, plain(err)})
		return nil
	}
	for _, e := range entries {
		inner := filepath.Join(name, e.Name())
		if e.IsDir() && e.Name() == ".git" {
			continue
		}
		if err := s.entry(c, inner, e); err != nil {
			return err
		}
	}
	return nil
}

// entry takes what lies in a folder. A symbolic link to a file is followed; one
// to a folder is not, since it may lead back up.
func (s *search) entry(c *config.Config, name string, e fs.DirEntry) error {
	whole, err := filepath.Abs(name)
	if err != nil {
		return err
	}
	if !e.IsDir() && !c.Includes(whole) {
		return nil
	}
	if left, err := s.leaves(c, name, e.IsDir()); left || err != nil {
		s.ignored++
		return err
	}
	if e.IsDir() {
		return s.folder(name)
	}
	s.addFound(name)
	return nil
}

// addFound takes a file that nobody named. A pipe is none: it might never end.
func (s *search) addFound(name string) {
	switch info, err := os.Stat(name); {
	case err != nil:
		s.add(Input{name, plain(err)})
	case info.Mode().IsRegular():
		s.add(Input{Name: name})
	}
}

// leaves tells whether a file or folder is left out: by the command line, by the
// settings, or by a .gitignore.
func (s *search) leaves(c *config.Config, name string, isFolder bool) (bool, error) {
	whole, err := filepath.Abs(name)
	if err != nil {
		return false, err
	}
	if s.ignore.Of(whole, isFolder) == paths.Meant || c.Ignores(whole, isFolder) {
		return true, nil
	}
	if !c.Gitignore() {
		return false, nil
	}
	verdict := paths.Silent
	for _, list := range s.gitignores(filepath.Dir(whole)) {
		if v := list.Of(whole, isFolder); v != paths.Silent {
			verdict = v
		}
	}
	return verdict == paths.Meant, nil
}

// gitignores are the lists that hold in a folder: its own and those of the
// folders around it, up to the top of the repository.
func (s *search) gitignores(folder string) []paths.List {
	if known, ok := s.git[folder]; ok {
		return known
	}
	var lists []paths.List
	above := filepath.Dir(folder)
	if _, err := os.Stat(filepath.Join(folder, ".git")); err != nil && above != folder {
		lists = slices.Clone(s.gitignores(above))
	}
	if text, err := os.ReadFile(filepath.Join(folder, ".gitignore")); err == nil {
		lists = append(lists, paths.Read(folder, string(text)))
	}
	s.git[folder] = lists
	return lists
}

// add takes an input that was not met before.
func (s *search) add(in Input) {
	key := in.Name
	if key != Stdin {
		key = filepath.Clean(key)
	}
	if !s.seen[key] {
		s.seen[key] = true
		s.found = append(s.found, in)
	}
}

// Read reads the input, where nothing hinders it.
func (in Input) Read(stdin io.Reader) ([]byte, error) {
	if in.Err != nil {
		return nil, in.Err
	}
	return Read(in.Name, stdin)
}

// Read reads a file, or standard input, as far as it is text.
func Read(name string, stdin io.Reader) ([]byte, error) {
	from := stdin
	if name != Stdin {
		f, err := os.Open(name)
		if err != nil {
			return nil, plain(err)
		}
		defer f.Close()
		from = f
	}
	content, err := io.ReadAll(io.LimitReader(from, MaxSize+1))
	if err != nil {
		return nil, plain(err)
	}
	if err := Fit(string(content)); err != nil {
		return nil, err
	}
	return content, nil
}

// Fit says why a text is none that can be checked, nil where it is one.
func Fit(text string) error {
	switch {
	case len(text) > MaxSize:
		return fmt.Errorf("is larger than %d MB: no pattern is", MaxSize>>20)
	case strings.IndexByte(text, 0) >= 0:
		return errors.New("is not UTF-8 text: it holds zero bytes, as programs, pictures and UTF-16 text do; text has to be saved as UTF-8")
	}
	return nil
}

// plain is the reason within an error about a path, without the path.
func plain(err error) error {
	var at *fs.PathError
	if errors.As(err, &at) {
		err = at.Err
	}
	return fmt.Errorf("cannot be read: %w", err)
}
