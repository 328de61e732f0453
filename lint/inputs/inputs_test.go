package inputs

import (
	"io"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lint/config"
)

// tree makes files in a folder of its own and goes there.
func tree(t *testing.T, files map[string]string) {
	t.Helper()
	root := t.TempDir()
	t.Setenv("XDG_CONFIG_HOME", t.TempDir())
	for name, text := range files {
		name = filepath.Join(root, filepath.FromSlash(name))
		require.NoError(t, os.MkdirAll(filepath.Dir(name), 0o755))
		require.NoError(t, os.WriteFile(name, []byte(text), 0o644))
	}
	t.Chdir(root)
}

func find(t *testing.T, f Finder, names ...string) ([]string, int) {
	t.Helper()
	f.Settings = config.NewFinder()
	found, ignored, err := f.Find(names)
	require.NoError(t, err)
	out := []string{}
	for _, in := range found {
		name := filepath.ToSlash(in.Name)
		if in.Err != nil {
			name += ": " + in.Err.Error()
		}
		out = append(out, name)
	}
	return out, ignored
}

func TestFind(t *testing.T) {
	tree(t, map[string]string{
		".git/HEAD": "", ".git/x.crochet": "", ".gitignore": "build/\n*.tmp.crochet\n!keep.tmp.crochet\n",
		"haw.crochet": "", "notes.txt": "", "build/out.crochet": "", "a.tmp.crochet": "", "keep.tmp.crochet": "",
		"hedge/oak.crochet": "", "hedge/deep/ash.crochet": "", "hedge/.gitignore": "deep/\n", "hedge/readme.md": "",
		"drafts/sloe.crochet": "", "md/stitchproof.toml": "[files]\ninclude = [\"*.md\"]\nignore = [\"old.*\"]\ngitignore = false\n",
		"md/elm.md": "", "md/old.md": "", "md/b.tmp.crochet": "", "md/elm.txt": "",
	})
	for name, test := range map[string]struct {
		names   []string
		finder  Finder
		want    []string
		ignored int
	}{
		"a folder":               {[]string{"."}, Finder{}, []string{"drafts/sloe.crochet", "haw.crochet", "hedge/oak.crochet", "keep.tmp.crochet", "md/b.tmp.crochet", "md/elm.md"}, 4},
		"below the gitignore":    {[]string{"hedge"}, Finder{}, []string{"hedge/oak.crochet"}, 1},
		"ignored and named":      {[]string{"a.tmp.crochet", "md/old.md"}, Finder{}, []string{"a.tmp.crochet", "md/old.md"}, 0},
		"ignored by force":       {[]string{"a.tmp.crochet", "md/old.md", "build/out.crochet"}, Finder{Force: true}, []string{}, 3},
		"more to ignore":         {[]string{"."}, Finder{Ignore: []string{"drafts/", "*.md"}}, []string{"haw.crochet", "hedge/oak.crochet", "keep.tmp.crochet", "md/b.tmp.crochet"}, 6},
		"a glob":                 {[]string{"**/*.crochet"}, Finder{}, []string{"drafts/sloe.crochet", "haw.crochet", "hedge/oak.crochet", "keep.tmp.crochet", "md/b.tmp.crochet"}, 3},
		"a glob of other files":  {[]string{"*.{txt,md}"}, Finder{}, []string{"notes.txt"}, 0},
		"no such glob":           {[]string{"*.tea"}, Finder{}, []string{"*.tea: no file is called so"}, 0},
		"a bad glob":             {[]string{"[a"}, Finder{}, []string{"[a: is no glob: syntax error in pattern"}, 0},
		"another ending":         {[]string{"notes.txt"}, Finder{}, []string{"notes.txt"}, 0},
		"each once, as named":    {[]string{"haw.crochet", "-", "./haw.crochet", "hedge", "hedge/oak.crochet", "-"}, Finder{}, []string{"haw.crochet", "-", "hedge/oak.crochet"}, 1},
		"one missing, one there": {[]string{"nowhere.crochet", "haw.crochet"}, Finder{}, []string{"nowhere.crochet: cannot be read: no such file or directory", "haw.crochet"}, 0},
	} {
		t.Run(name, func(t *testing.T) {
			got, ignored := find(t, test.finder, test.names...)
			assert.Equal(t, test.want, got)
			assert.Equal(t, test.ignored, ignored)
		})
	}
}

// A repository within another, as a submodule is, has lists of its own.
func TestRepositoryWithinAnother(t *testing.T) {
	tree(t, map[string]string{
		".git/HEAD": "", ".gitignore": "*.crochet\n", "haw.crochet": "",
		"hedge/.git/HEAD": "", "hedge/oak.crochet": "", "hedge/inner/ash.crochet": "",
	})
	got, ignored := find(t, Finder{}, ".")
	assert.Equal(t, []string{"hedge/inner/ash.crochet", "hedge/oak.crochet"}, got)
	assert.Equal(t, 1, ignored)
}

func TestSettingsThatCannotBeReadEndTheSearch(t *testing.T) {
	tree(t, map[string]string{"stitchproof.toml": "nonsense", "haw.crochet": ""})
	_, _, err := (&Finder{Settings: config.NewFinder()}).Find([]string{"."})
	assert.ErrorContains(t, err, "stitchproof.toml:1:")
}

func TestLinks(t *testing.T) {
	tree(t, map[string]string{"hedge/haw.crochet": "", "elsewhere/oak.crochet": ""})
	for link, target := range map[string]string{
		"hedge/round": ".", "hedge/loop.crochet": "loop.crochet", "hedge/gone.crochet": "nowhere",
		"hedge/oak.crochet": "../elsewhere/oak.crochet", "hedge/away": "../elsewhere", "way": "hedge",
	} {
		if err := os.Symlink(filepath.FromSlash(target), link); err != nil {
			t.Skip("no symbolic links here: ", err)
		}
	}
	got, _ := find(t, Finder{}, "*/*.crochet", "**/haw.crochet")
	assert.Equal(t, []string{
		"elsewhere/oak.crochet", "hedge/gone.crochet: cannot be read: no such file or directory", "hedge/haw.crochet",
		"hedge/loop.crochet: cannot be read: too many levels of symbolic links", "hedge/oak.crochet",
	}, got, "a glob goes through no link to a folder")
	got, _ = find(t, Finder{}, "way")
	assert.Equal(t, []string{
		"way/gone.crochet: cannot be read: no such file or directory", "way/haw.crochet",
		"way/loop.crochet: cannot be read: too many levels of symbolic links", "way/oak.crochet",
	}, got)
}

func TestUnreadableFolder(t *testing.T) {
	tree(t, map[string]string{"hedge/haw.crochet": "", "oak.crochet": ""})
	require.NoError(t, os.Chmod("hedge", 0))
	t.Cleanup(func() { os.Chmod("hedge", 0o755) })
	if _, err := os.ReadDir("hedge"); err == nil {
		t.Skip("everything can be read here")
	}
	got, _ := find(t, Finder{}, ".")
	assert.Equal(t, []string{"hedge: cannot be read: permission denied", "oak.crochet"}, got)
}

func TestRead(t *testing.T) {
	tree(t, map[string]string{"haw.crochet": "Haw", "large": strings.Repeat("x", MaxSize+1), "just": strings.Repeat("x", MaxSize), "picture": "P\x00NG"})
	content, err := Read("haw.crochet", nil)
	require.NoError(t, err)
	assert.Equal(t, "Haw", string(content))
	content, err = Read(Stdin, strings.NewReader("Hip"))
	require.NoError(t, err)
	assert.Equal(t, "Hip", string(content))
	_, err = Read("just", nil)
	assert.NoError(t, err)
	for name, want := range map[string]string{
		"large": "is larger than 4 MB", "picture": "is not UTF-8 text", "nowhere": "cannot be read: no such file", ".": "is a directory",
	} {
		_, err := Read(name, nil)
		assert.ErrorContains(t, err, want, name)
	}
}

// A file of a hundred megabytes, or input without end, is refused for little: what
// is read of it is what a pattern may have.
func TestLargeInputsTakeLittle(t *testing.T) {
	tree(t, map[string]string{"large": ""})
	require.NoError(t, os.Truncate("large", 100<<20))
	for name, from := range map[string]io.Reader{"large": nil, Stdin: endless{}} {
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		_, err := Read(name, from)
		runtime.ReadMemStats(&after)
		assert.ErrorContains(t, err, "is larger than", name)
		assert.Less(t, after.TotalAlloc-before.TotalAlloc, uint64(8*MaxSize), name)
	}
}

// endless is one line that goes on for ever.
type endless struct{}

func (endless) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = 'x'
	}
	return len(p), nil
}
