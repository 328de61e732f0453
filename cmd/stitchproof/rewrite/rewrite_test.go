package rewrite

import (
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const (
	was = "\ufeffRnd 1: 6 sc.\r\n"
	now = "\ufeffRnd 1: 6 sc in ring.\r\n"
)

func pattern(t *testing.T, mode os.FileMode) string {
	t.Helper()
	name := filepath.Join(t.TempDir(), "haw.crochet")
	require.NoError(t, os.WriteFile(name, []byte(was), 0o600))
	require.NoError(t, os.Chmod(name, mode))
	return name
}

func content(t *testing.T, name string) string {
	t.Helper()
	b, err := os.ReadFile(name)
	require.NoError(t, err)
	return string(b)
}

func TestFileIsReplacedWithItsMode(t *testing.T) {
	for _, mode := range []os.FileMode{0o644, 0o600, 0o664, 0o755} {
		name := pattern(t, mode)
		require.NoError(t, Writer{}.File(name, []byte(was), []byte(now)))
		assert.Equal(t, now, content(t, name))
		info, err := os.Stat(name)
		require.NoError(t, err)
		if runtime.GOOS != "windows" {
			assert.Equal(t, mode, info.Mode().Perm())
		}
		assert.Len(t, folder(t, name), 1)
	}
}

func TestChangedMeanwhileIsLeftAlone(t *testing.T) {
	name := pattern(t, 0o644)
	assert.ErrorIs(t, Writer{}.File(name, []byte("Rnd 1: 7 sc.\n"), []byte(now)), ErrChanged)
	assert.Equal(t, was, content(t, name))
	assert.Len(t, folder(t, name), 1)
}

func TestReadOnlyIsLeftAlone(t *testing.T) {
	name := pattern(t, 0o444)
	assert.ErrorIs(t, Writer{}.File(name, []byte(was), []byte(now)), fs.ErrPermission)
	assert.Equal(t, was, content(t, name))
	assert.Len(t, folder(t, name), 1)
}

func TestLinkStaysALink(t *testing.T) {
	name := pattern(t, 0o644)
	link := filepath.Join(t.TempDir(), "link.crochet")
	if err := os.Symlink(name, link); err != nil {
		t.Skip("no symbolic links here: ", err)
	}
	require.NoError(t, Writer{}.File(link, []byte(was), []byte(now)))
	assert.Equal(t, now, content(t, name))
	target, err := os.Readlink(link)
	require.NoError(t, err)
	assert.Equal(t, name, target)
}

func TestNothingToWriteTouchesNothing(t *testing.T) {
	name := pattern(t, 0o644)
	before, err := os.Stat(name)
	require.NoError(t, err)
	require.NoError(t, Writer{}.File(name, []byte(was), []byte(was)))
	after, err := os.Stat(name)
	require.NoError(t, err)
	assert.True(t, os.SameFile(before, after))
	assert.Equal(t, before.ModTime(), after.ModTime())
}

func TestNewOverwritesNothing(t *testing.T) {
	name := pattern(t, 0o644)
	assert.ErrorIs(t, Writer{}.New(name, []byte(now)), fs.ErrExist)
	assert.Equal(t, was, content(t, name))
	other := filepath.Join(filepath.Dir(name), "sloe.crochet")
	require.NoError(t, Writer{}.New(other, []byte(now)))
	assert.Equal(t, now, content(t, other))
}

func TestPutKeepsTheMode(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("files have no mode there")
	}
	name := pattern(t, 0o600)
	require.NoError(t, Writer{}.Put(name, []byte(now)))
	assert.Equal(t, now, content(t, name))
	info, err := os.Stat(name)
	require.NoError(t, err)
	assert.Equal(t, os.FileMode(0o600), info.Mode().Perm())
}

// What is no file is written to: its name must not be taken from it.
func TestPutWritesToWhatIsNoFile(t *testing.T) {
	link := filepath.Join(t.TempDir(), "report")
	if err := os.Symlink(os.DevNull, link); err != nil {
		t.Skip("no symbolic links here: ", err)
	}
	require.NoError(t, Writer{}.Put(link, []byte(now)))
	target, err := os.Readlink(link)
	require.NoError(t, err)
	assert.Equal(t, os.DevNull, target)
	info, err := os.Stat(link)
	require.NoError(t, err)
	assert.False(t, info.Mode().IsRegular())
}

// An error is about the file that was to be written.
func TestErrorsNameTheFile(t *testing.T) {
	name := filepath.Join(t.TempDir(), "nowhere", "report")
	err := Writer{}.Put(name, []byte(now))
	require.ErrorIs(t, err, fs.ErrNotExist)
	assert.Contains(t, err.Error(), name+": ")
	assert.NotContains(t, err.Error(), ".new")
}
