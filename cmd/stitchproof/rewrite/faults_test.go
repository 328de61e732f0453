package rewrite

import (
	"errors"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// names are the steps of writing.
func names() []string {
	var out []string
	for _, s := range new(writing).steps() {
		out = append(out, s.name)
	}
	return out
}

// Whichever step the disk fails at, the file is what it was, and nothing else is
// left.
func TestEveryStepMayFail(t *testing.T) {
	broken := errors.New("the disk is broken")
	t.Cleanup(func() { Watch = nil })
	for i, at := range names() {
		name := pattern(t, 0o640)
		Watch = func(step string) error {
			if step == at {
				return broken
			}
			return nil
		}
		assert.ErrorIs(t, File(name, []byte(was), []byte(now)), broken, at)
		want := was
		if i == len(names())-1 {
			want = now // it has its name: whether the disk remembers that is not known
		}
		assert.Equal(t, want, content(t, name), at)
		assert.Len(t, folder(t, name), 1, at)
	}
}

// What is changed at any step up to the comparison is seen.
func TestChangedAtAnyStep(t *testing.T) {
	t.Cleanup(func() { Watch = nil })
	const theirs = "\ufeffRnd 1: 7 sc.\r\n"
	for _, at := range names() {
		name := pattern(t, 0o640)
		Watch = func(step string) error {
			if step == at {
				return os.WriteFile(name, []byte(theirs), 0o640)
			}
			return nil
		}
		err := File(name, []byte(was), []byte(now))
		if at == "take the name" || at == "settle the folder" {
			continue // nobody can tell any more
		}
		assert.ErrorIs(t, err, ErrChanged, at)
		assert.Equal(t, theirs, content(t, name), at)
		assert.Len(t, folder(t, name), 1, at)
	}
}

// A file that went away meanwhile does not come back.
func TestGoneMeanwhile(t *testing.T) {
	t.Cleanup(func() { Watch = nil })
	name := pattern(t, 0o640)
	Watch = func(step string) error {
		if step == "settle" {
			return os.Remove(name)
		}
		return nil
	}
	assert.ErrorIs(t, File(name, []byte(was), []byte(now)), os.ErrNotExist)
	assert.Empty(t, folder(t, name))
}

func folder(t *testing.T, name string) []os.DirEntry {
	t.Helper()
	entries, err := os.ReadDir(filepath.Dir(name))
	require.NoError(t, err)
	return entries
}
