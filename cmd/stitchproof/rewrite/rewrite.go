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

// File replaces what stands in a file, if that is still what was read. A
// reader sees the old text or the new one and never a part, whatever happens:
// the new one is written beside the file and then takes its name. The mode
// stays, and a symbolic link goes on leading to the same file. Line ends and
// byte-order marks are the caller's: the bytes are written as they are.
func File(name string, was, now []byte) error {
	target, err := filepath.EvalSymlinks(name)
	if err != nil {
		return err
	}
	if bytes.Equal(was, now) {
		return nil
	}
	info, err := os.Stat(target)
	if err != nil {
		return err
	}
	if info.Mode().Perm()&0o200 == 0 {
		return fmt.Errorf("%s: %w", name, os.ErrPermission) // renaming over it would get round that
	}
	beside, err := written(target, now, info.Mode().Perm())
	if err != nil {
		return err
	}
	defer os.Remove(beside) // where it has not taken the name
	if err := unchanged(target, was); err != nil {
		return fmt.Errorf("%s: %w", name, err)
	}
	return os.Rename(beside, target)
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

// written puts content, safely on the disk, into a new file beside another.
func written(target string, content []byte, mode os.FileMode) (string, error) {
	f, err := os.CreateTemp(filepath.Dir(target), "."+filepath.Base(target)+".*.new")
	if err != nil {
		return "", err
	}
	_, err = f.Write(content)
	err = errors.Join(err, f.Chmod(mode), f.Sync(), f.Close())
	if err != nil {
		os.Remove(f.Name())
		return "", err
	}
	return f.Name(), nil
}

func unchanged(name string, was []byte) error {
	is, err := os.ReadFile(name)
	if err == nil && !bytes.Equal(is, was) {
		err = ErrChanged
	}
	return err
}
