// Package rewrite puts text into files without ever losing what was there: every
// command that writes a file writes it through this. A reader sees the old text
// or the new one and never a part, whatever happens: the new one is written
// beside the file, settled on the disk, and then takes its name. A program
// killed on the way may leave a hidden file that ends in .new.
package rewrite

import (
	"bytes"
	"crypto/rand"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// ErrChanged says that a file is no longer what was read, so that writing it
// would undo someone else's work.
var ErrChanged = errors.New("the file was changed meanwhile: nothing is written, run it again")

// Writer writes files. The zero value is ready.
type Writer struct {
	// Before, where it is set, is told the name of each step before it is taken,
	// and an error of its own stands for one of the step.
	Before func(step string) error
}

// File replaces what stands in a file, if that is still what was read. The mode
// and, where this user may give it, the owner stay. A symbolic link is followed:
// what it leads to is written, and it goes on leading there; of a file with
// several names, the others keep the old text. Line ends and byte-order marks are
// the caller's: the bytes are written as they are.
func (w Writer) File(name string, was, now []byte) error {
	if bytes.Equal(was, now) {
		return nil
	}
	return w.write(&writing{name: name, now: now, replaces: true, compare: func(target string) error {
		is, err := os.ReadFile(target)
		if err == nil && !bytes.Equal(is, was) {
			err = fmt.Errorf("%s: %w", name, ErrChanged)
		}
		return err
	}})
}

// New writes a file that must not be there yet.
func (w Writer) New(name string, content []byte) error {
	absent := func(string) error {
		_, err := os.Lstat(name)
		switch {
		case err == nil:
			return fmt.Errorf("%s: %w", name, fs.ErrExist)
		case errors.Is(err, fs.ErrNotExist):
			return nil
		}
		return err
	}
	return w.write(&writing{name: name, now: content, compare: absent})
}

// Put writes a file, whatever stands in it now. What cannot be replaced, such as a
// pipe, is written to.
func (w Writer) Put(name string, content []byte) error {
	_, missing := os.Lstat(name)
	info, err := os.Stat(name)
	there := err == nil && info.Mode().IsRegular()
	if !there && !errors.Is(missing, fs.ErrNotExist) {
		return os.WriteFile(name, content, newMode)
	}
	return w.write(&writing{name: name, now: content, replaces: there, compare: func(string) error { return nil }})
}

// newMode is how a new file is opened to others, as far as its user lets it be.
const newMode = 0o644

// write takes all steps of a writing, up to one that fails.
func (w Writer) write(f *writing) error {
	defer f.tidy()
	for _, s := range f.steps() {
		if w.Before != nil {
			if err := w.Before(s.name); err != nil {
				return err
			}
		}
		if err := s.take(); err != nil {
			return f.told(err)
		}
	}
	return nil
}

// told is an error of the disk as one about the file, whose hidden neighbour is
// nobody's business.
func (f *writing) told(err error) error {
	var at *fs.PathError
	var linked *os.LinkError
	switch {
	case errors.As(err, &at):
		err = at.Err
	case errors.As(err, &linked):
		err = linked.Err
	default:
		return err
	}
	return fmt.Errorf("%s: %w", f.name, err)
}

// writing is one file on its way to other text.
type writing struct {
	name     string
	now      []byte
	replaces bool                      // whether a file is there, whose mode and owner stay
	compare  func(target string) error // whether what stands there now may go
	target   string                    // where links lead
	info     os.FileInfo               // of the file that is replaced
	beside   *os.File                  // holds the new text; nil before it is made and once it is the file
}

// step is one thing that is asked of the disk.
type step struct {
	name string
	take func() error
}

// steps are all that a file is written in. Up to the naming the old text is in
// its place, and from then on the new one is.
func (f *writing) steps() []step {
	return []step{
		{"find", f.find},
		{"make", f.make},
		{"fill", func() error { _, err := f.beside.Write(f.now); return err }},
		{"open to others", f.open},
		{"settle", func() error { return f.beside.Sync() }},
		{"close", func() error { return f.beside.Close() }},
		{"compare", func() error { return f.compare(f.target) }},
		{"take the name", f.rename},
		{"settle the folder", f.settle},
	}
}

func (f *writing) find() (err error) {
	if f.target = f.name; !f.replaces {
		return nil
	}
	if f.target, err = filepath.EvalSymlinks(f.name); err != nil {
		return err
	}
	f.info, err = os.Stat(f.target)
	if err == nil && f.info.Mode().Perm()&0o200 == 0 {
		err = fmt.Errorf("%s: %w", f.name, fs.ErrPermission) // taking its name would get round that
	}
	return err
}

// make makes the file beside. In the place of another it is nobody else's until it
// is opened as that one was.
func (f *writing) make() (err error) {
	mode := os.FileMode(newMode)
	if f.replaces {
		mode = 0o600
	}
	hidden := "." + filepath.Base(f.target) + "." + rand.Text() + ".new"
	f.beside, err = os.OpenFile(filepath.Join(filepath.Dir(f.target), hidden), os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
	return err
}

func (f *writing) open() error {
	if !f.replaces {
		return nil
	}
	own(f.beside, f.info)
	return f.beside.Chmod(f.info.Mode().Perm())
}

func (f *writing) rename() error {
	err := os.Rename(f.beside.Name(), f.target)
	if err == nil {
		f.beside = nil
	}
	return err
}

// settle has the disk remember the new name. Systems that cannot do so for a
// folder do it by themselves.
func (f *writing) settle() error {
	if folder, err := os.Open(filepath.Dir(f.target)); err == nil {
		_ = folder.Sync()
		_ = folder.Close()
	}
	return nil
}

// tidy takes away what has not become the file.
func (f *writing) tidy() {
	if f.beside != nil {
		_ = f.beside.Close()
		_ = os.Remove(f.beside.Name())
	}
}
