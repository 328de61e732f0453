package paths

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestOf(t *testing.T) {
	root := t.TempDir()
	l := Read(root, "# what is not for printing\r\n\n*.txt\n/drafts/\nold/**/*.crochet\n!keep.txt\n")
	for name, want := range map[string]Verdict{
		"notes.txt": Meant, "deep/notes.txt": Meant, "deep/keep.txt": Spared,
		"drafts/oak.crochet": Meant, "deep/drafts/oak.crochet": Silent,
		"old/oak.crochet": Meant, "old/a/b/oak.crochet": Meant, "oak.crochet": Silent,
		"../notes.txt": Silent, ".": Silent,
	} {
		assert.Equal(t, want, l.Of(filepath.Join(root, name), false), name)
	}
	assert.Equal(t, Meant, l.Of(filepath.Join(root, "drafts"), true))
	assert.Equal(t, Silent, l.Of(filepath.Join(root, "drafts"), false))
	assert.Equal(t, Silent, List{}.Of(filepath.Join(root, "notes.txt"), false))
}

// repository is a folder that git looks after, with files in it, and every path of it.
func repository(t *testing.T) (root string, paths []string) {
	t.Helper()
	root = t.TempDir()
	for _, a := range []string{"a", "b", "ab", "!a", "{a,b}"} {
		for _, b := range []string{"a", "ab", "a b", "*"} {
			for _, c := range []string{"b", "abb", "#a"} {
				name := filepath.Join(root, a, b, c)
				require.NoError(t, os.MkdirAll(filepath.Dir(name), 0o755))
				require.NoError(t, os.WriteFile(name, nil, 0o644))
			}
		}
	}
	said, err := exec.Command("git", "-C", root, "init", "--quiet").CombinedOutput()
	require.NoError(t, err, "%s", said)
	require.NoError(t, filepath.WalkDir(root, func(name string, e os.DirEntry, err error) error {
		switch {
		case e.Name() == ".git":
			return filepath.SkipDir
		case name != root:
			paths = append(paths, name)
		}
		return err
	}))
	return root, paths
}

// ignored are the paths that git leaves out, as one would that goes through the folders.
func ignored(t require.TestingT, root string, paths []string) map[string]bool {
	ask := exec.Command("git", "-C", root, "check-ignore", "--no-index", "-z", "--stdin")
	ask.Stdin = strings.NewReader(strings.Join(paths, "\x00"))
	said, err := ask.Output()
	if exit, ok := err.(*exec.ExitError); !ok || exit.ExitCode() != 1 { // none
		require.NoError(t, err)
	}
	out := map[string]bool{}
	for name := range bytes.SplitSeq(said, []byte{0}) {
		out[string(name)] = true
	}
	return out
}

// What a list means is what git takes it for, whatever is in it.
func TestListsAreThoseOfGit(t *testing.T) {
	if _, err := exec.LookPath("git"); err != nil {
		t.Skip("git is not installed")
	}
	root, paths := repository(t)
	name := rapid.SampledFrom([]string{"a", "b", "ab", "*", "**", "?", "a*", "*b", "a**b", "[ab]", "[!a]*", "[^a]b", `\*`, "a b", "{a,b}", "[a", "#a", "!a", `\!a`, "a "})
	line := rapid.Custom(func(t *rapid.T) string {
		parts := strings.Join(rapid.SliceOfN(name, 1, 3).Draw(t, "parts"), "/")
		return rapid.SampledFrom([]string{"", "", "", "!", "/"}).Draw(t, "before") + parts + rapid.SampledFrom([]string{"", "", "/", "/**", " ", `\ `}).Draw(t, "behind")
	})
	rapid.Check(t, func(t *rapid.T) {
		text := strings.Join(rapid.SliceOfN(line, 1, 3).Draw(t, "lines"), "\n") + "\n"
		require.NoError(t, os.WriteFile(filepath.Join(root, ".gitignore"), []byte(text), 0o644))
		want, list := ignored(t, root, paths), Read(root, text)
		got := map[string]bool{}
		for _, name := range paths {
			info, err := os.Stat(name)
			require.NoError(t, err)
			// what lies in a folder that is left out is never come upon
			got[name] = got[filepath.Dir(name)] || list.Of(name, info.IsDir()) == Meant
			require.Equal(t, want[name], got[name], "%q in\n%s", strings.TrimPrefix(name, root), text)
		}
	})
}
