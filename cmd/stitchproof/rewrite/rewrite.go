// Package rewrite puts new text into a pattern's file without ever losing the
// old: every command that changes files writes through it.
package rewrite

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
)

// ErrChanged says that a file is no longer what was read, so that writing it
// would undo someone else's work.
var ErrChanged = errors.New("the file was changed meanwhile: nothing is written, run it again")

// Watch, where it is set, is told the name of each step before it is taken, and
// an error of its own stands for one of the step. Tests set it, to see what is
// left of a file wherever the disk fails or the program is killed.
var Watch func(step string) error

// File replaces what stands in a file, if that is still what was read. A
// reader sees the old text or the new one and never a part, whatever happens:
// the new one is written beside the file, settled on the disk, and then takes
// its name. The mode and, where this user may give it, the owner stay. A
// symbolic link is followed: what it leads to is written, and it goes on
// leading there; of a file with several names, the others keep the old text.
// Line ends and byte-order marks are the caller's: the bytes are written as they
// are. A program killed on the way may leave a hidden file that ends in .new.
func File(name string, was, now []byte) error {
	if bytes.Equal(was, now) {
		return nil
	}
	w := writing{name: name, was: was, now: now}
	defer w.tidy()
	for _, s := range w.steps() {
		if Watch != nil {
			if err := Watch(s.name); err != nil {
				return err
			}
		}
		if err := s.take(); err != nil {
			return err
		}
	}
	return nil
}

// New writes a file that must not be there yet.
func New(name string, content []byte) error {
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	_, err = f.Write(content)
	return errors.Join(err, f.Close())
}

// writing is one file on its way to other text.
type writing struct {
	name     string
	was, now []byte
	target   string // where links lead
	info     os.FileInfo
	beside   *os.File // holds the new text; nil before it is made and once it is the file
}

// step is one thing that is asked of the disk.
type step struct {
	name string
	take func() error
}

// steps are all that a file is written in. Up to the naming the old text is in
// its place, and from then on the new one is.
func (w *writing) steps() []step {
	return []step{
		{"find", w.find},
		{"make", w.make},
		{"fill", func() error { _, err := w.beside.Write(w.now); return err }},
		{"own", func() error { own(w.beside, w.info); return nil }},
		{"open to others", func() error { return w.beside.Chmod(w.info.Mode().Perm()) }},
		{"settle", func() error { return w.beside.Sync() }},
		{"close", func() error { return w.beside.Close() }},
		{"compare", w.compare},
		{"take the name", w.rename},
		{"settle the folder", w.settle},
	}
}

func (w *writing) find() (err error) {
	if w.target, err = filepath.EvalSymlinks(w.name); err != nil {
		return err
	}
	w.info, err = os.Stat(w.target)
	if err == nil && w.info.Mode().Perm()&0o200 == 0 {
		err = fmt.Errorf("%s: %w", w.name, os.ErrPermission) // taking its name would get round that
	}
	return err
}

func (w *writing) make() (err error) {
	w.beside, err = os.CreateTemp(filepath.Dir(w.target), "."+filepath.Base(w.target)+".*.new")
	return err
}

// compare looks whether the file is still what was read.
func (w *writing) compare() error {
	is, err := os.ReadFile(w.target)
	if err == nil && !bytes.Equal(is, w.was) {
		err = fmt.Errorf("%s: %w", w.name, ErrChanged)
	}
	return err
}

func (w *writing) rename() error {
	err := os.Rename(w.beside.Name(), w.target)
	if err == nil {
		w.beside = nil
	}
	return err
}

// settle has the disk remember the new name. Systems that cannot do so for a
// folder do it by themselves.
func (w *writing) settle() error {
	if folder, err := os.Open(filepath.Dir(w.target)); err == nil {
		_ = folder.Sync()
		_ = folder.Close()
	}
	return nil
}

// tidy takes away what has not become the file.
func (w *writing) tidy() {
	if w.beside != nil {
		_ = w.beside.Close()
		_ = os.Remove(w.beside.Name())
	}
}
