package rewrite

import (
	"errors"
	"io/fs"
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

// ways are the ways to write a file, over one that is there or where none is.
var ways = map[string]struct {
	write func(Writer, string) error
	over  bool
}{
	"replace":           {func(w Writer, name string) error { return w.File(name, []byte(was), []byte(now)) }, true},
	"put over":          {func(w Writer, name string) error { return w.Put(name, []byte(now)) }, true},
	"put where none is": {func(w Writer, name string) error { return w.Put(name, []byte(now)) }, false},
	"make":              {func(w Writer, name string) error { return w.New(name, []byte(now)) }, false},
}

// Whichever step the disk fails at, what was there is there, and nothing else is
// left.
func TestEveryStepMayFail(t *testing.T) {
	broken := errors.New("the disk is broken")
	for way, how := range ways {
		for i, at := range names() {
			name := pattern(t, 0o640)
			if !how.over {
				require.NoError(t, os.Remove(name))
			}
			before := func(step string) error {
				if step == at {
					return broken
				}
				return nil
			}
			assert.ErrorIs(t, how.write(Writer{before}, name), broken, "%s: %s", way, at)
			want := ""
			switch {
			case i == len(names())-1:
				want = now // it has its name: whether the disk remembers that is not known
			case how.over:
				want = was
			}
			if want == "" {
				assert.Empty(t, folder(t, name), "%s: %s", way, at)
				continue
			}
			assert.Equal(t, want, content(t, name), "%s: %s", way, at)
			assert.Len(t, folder(t, name), 1, "%s: %s", way, at)
		}
	}
}

// What is changed at any step up to the comparison is seen.
func TestChangedAtAnyStep(t *testing.T) {
	const theirs = "\ufeffRnd 1: 7 sc.\r\n"
	for _, at := range names() {
		name := pattern(t, 0o640)
		before := func(step string) error {
			if step == at {
				return os.WriteFile(name, []byte(theirs), 0o640)
			}
			return nil
		}
		err := Writer{before}.File(name, []byte(was), []byte(now))
		if at == "take the name" || at == "settle the folder" {
			continue // nobody can tell any more
		}
		assert.ErrorIs(t, err, ErrChanged, at)
		assert.Equal(t, theirs, content(t, name), at)
		assert.Len(t, folder(t, name), 1, at)
	}
}

// A new file does not take the place of one that came meanwhile.
func TestCameMeanwhile(t *testing.T) {
	name := filepath.Join(t.TempDir(), "haw.crochet")
	before := func(step string) error {
		if step == "settle" {
			return os.WriteFile(name, []byte(was), 0o600)
		}
		return nil
	}
	assert.ErrorIs(t, Writer{before}.New(name, []byte(now)), fs.ErrExist)
	assert.Equal(t, was, content(t, name))
	assert.Len(t, folder(t, name), 1)
}

// A file that went away meanwhile does not come back.
func TestGoneMeanwhile(t *testing.T) {
	name := pattern(t, 0o640)
	before := func(step string) error {
		if step == "settle" {
			return os.Remove(name)
		}
		return nil
	}
	assert.ErrorIs(t, Writer{before}.File(name, []byte(was), []byte(now)), os.ErrNotExist)
	assert.Empty(t, folder(t, name))
}

func folder(t *testing.T, name string) []os.DirEntry {
	t.Helper()
	entries, err := os.ReadDir(filepath.Dir(name))
	require.NoError(t, err)
	return entries
}
