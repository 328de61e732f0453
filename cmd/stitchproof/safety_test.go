package main

import (
	"bytes"
	"context"
	"errors"
	"io"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lint"
	"stitchproof/lint/inputs"
)

// lastStep is the variable that says before which step of writing a file the
// program is to be killed, counted from 1.
const lastStep = "STITCHPROOF_TEST_LAST_STEP"

// dieAt has this process killed before a step, as by kill -9: nothing is tidied.
func dieAt(step string) func(string) error {
	last, err := strconv.Atoi(step)
	if err != nil {
		return nil
	}
	return func(string) error {
		if last--; last > 0 {
			return nil
		}
		if self, err := os.FindProcess(os.Getpid()); err == nil {
			_ = self.Kill()
		}
		select {} // the end comes at once, but not at this instant
	}
}

// program is a run of the program as a process of its own.
func program(t *testing.T, dir, dieBefore string, args ...string) (output string, killed bool) {
	t.Helper()
	self, err := os.Executable()
	require.NoError(t, err)
	ctx, stop := context.WithTimeout(context.Background(), time.Minute)
	defer stop()
	command := exec.CommandContext(ctx, self)
	command.Args, command.Dir = append([]string{"stitchproof"}, args...), dir
	command.Env = append(os.Environ(), lastStep+"="+dieBefore)
	said, err := command.CombinedOutput()
	require.NoError(t, ctx.Err(), "%s", said)
	var exit *exec.ExitError
	if err != nil && !errors.As(err, &exit) {
		require.NoError(t, err)
	}
	return string(said), command.ProcessState.ExitCode() < 0 || runtime.GOOS == "windows" && dieBefore != "" && err != nil
}

// twig has something to fix, to format and to say in other terms.
const twig = `Pattern: Hawthorn twig
Terms: US

Piece: Twig
With A,ch 21.
Row 1:Sc in 2nd ch from hook and in each ch across ; turn.  (20 sc)
Row 2: Ch 1, sc in next 18 sts, 2 sc in each of next 2 sts; turn.
Row 3: Ch 1, sc in each st across; turn. (22 sc)
Row 4: Ch 1, sc in each st across; turn. (22 sc)
Fasten off.
`

// writers are the commands that write patterns.
var writers = map[string][]string{
	"check --fix": {"check", "--fix", "--quiet", "twig.crochet"},
	"format":      {"format", "twig.crochet"},
	"terms":       {"terms", "--to", "uk", "--write", "twig.crochet"},
}

// A program that is killed at any step of any command that writes leaves the old
// file or the new one, whole, with its mode, its line ends and its mark at the head.
func TestKilledAtEveryStep(t *testing.T) {
	tried := 0
	for name, args := range writers {
		for _, kind := range []string{"plain", "marked by a link"} {
			t.Run(name+" "+kind, func(t *testing.T) {
				linked := kind != "plain"
				old, mode := twig, os.FileMode(0o644)
				if linked {
					old, mode = "\ufeff"+strings.ReplaceAll(twig, "\n", "\r\n"), 0o600
				}
				written := ""
				for step := 0; ; step++ { // none is left out for 0
					dir, file := folderWith(t, old, mode, linked)
					dieBefore := ""
					if step > 0 {
						dieBefore = strconv.Itoa(step)
					}
					said, killed := program(t, dir, dieBefore, args...)
					content, err := os.ReadFile(file)
					require.NoError(t, err)
					if step == 0 {
						written = string(content)
						require.NotEqual(t, old, written, said)
						require.Equal(t, strings.Count(old, "\r\n") > 0, strings.Count(written, "\n") == strings.Count(written, "\r\n"))
						require.Equal(t, strings.HasPrefix(old, "\ufeff"), strings.HasPrefix(written, "\ufeff"))
					}
					assert.Contains(t, []string{old, written}, string(content), "killed before step %d", step)
					info, err := os.Stat(file)
					require.NoError(t, err)
					if runtime.GOOS != "windows" {
						assert.Equal(t, mode, info.Mode().Perm())
					}
					if step > 0 && !killed {
						assert.Equal(t, written, string(content), "there were not so many steps")
						assert.Greater(t, step, 9)
						break
					}
					if step > 0 {
						tried++
					}
					_, err = os.Lstat(filepath.Join(dir, "twig.crochet"))
					require.NoError(t, err)
				}
			})
		}
	}
	t.Logf("killed %d times", tried)
}

// folderWith is a folder with a pattern in it, or with a link to one elsewhere.
func folderWith(t *testing.T, text string, mode os.FileMode, linked bool) (dir, file string) {
	t.Helper()
	dir = t.TempDir()
	file = filepath.Join(dir, "twig.crochet")
	if linked {
		file = filepath.Join(t.TempDir(), "elsewhere.crochet")
		if err := os.Symlink(file, filepath.Join(dir, "twig.crochet")); err != nil {
			t.Skip("no symbolic links here: ", err)
		}
	}
	require.NoError(t, os.WriteFile(file, []byte(text), 0o600))
	require.NoError(t, os.Chmod(file, mode))
	return dir, file
}

// What a killed run left does not hinder the next.
func TestAfterAKill(t *testing.T) {
	dir, file := folderWith(t, twig, 0o644, false)
	_, killed := program(t, dir, "6", "format", ".")
	require.True(t, killed)
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Len(t, entries, 2, "the new text was on its way")
	said, _ := program(t, dir, "", "format", ".")
	assert.Contains(t, said, "1 file written")
	content, err := os.ReadFile(file)
	require.NoError(t, err)
	assert.NotEqual(t, twig, string(content))
}

// A disk without room for the new text keeps the old.
func TestFullDisk(t *testing.T) {
	dir := t.TempDir()
	if out, err := exec.Command("mount", "-t", "tmpfs", "-o", "size=16k", "tmpfs", dir).CombinedOutput(); err != nil {
		t.Skipf("no small disk can be made here: %s", out)
	}
	t.Cleanup(func() { require.NoError(t, exec.Command("umount", dir).Run()) })
	long := twig + strings.Repeat("\n// the hedge in winter\n", 380) // three pages of four
	file := filepath.Join(dir, "twig.crochet")
	require.NoError(t, os.WriteFile(file, []byte(long), 0o644))
	all := maps.Clone(writers)
	all["a report"] = []string{"check", "--output", "text=report.txt", "--output", "json=report.json", "twig.crochet"}
	all["a baseline"] = []string{"check", "--write-baseline", "aside.json", "twig.crochet"}
	all["settings"] = []string{"init"}
	filler := strings.Repeat("x", 4<<10)
	for name, args := range all {
		if _, writes := writers[name]; !writes {
			require.NoError(t, os.WriteFile(filepath.Join(dir, "full"), []byte(filler), 0o644))
		}
		said, _ := program(t, dir, "", args...)
		require.NoError(t, os.RemoveAll(filepath.Join(dir, "full")))
		assert.Contains(t, said, "no space left", name)
		content, err := os.ReadFile(file)
		require.NoError(t, err)
		assert.Equal(t, long, string(content), name)
		entries, err := os.ReadDir(dir)
		require.NoError(t, err)
		assert.Len(t, entries, 1, name)
	}
}

// A file that cannot be written is said to be so, and the others are written.
func TestOneFileCannotBeWritten(t *testing.T) {
	for name, args := range writers {
		if name == "terms" {
			continue // takes one file
		}
		dir, _ := folderWith(t, twig, 0o644, false)
		shut := filepath.Join(dir, "shut.crochet")
		require.NoError(t, os.WriteFile(shut, []byte(twig), 0o444))
		said, _ := program(t, dir, "", append(append([]string{}, args[:len(args)-1]...), ".")...)
		assert.Contains(t, said, "shut.crochet: permission denied", name)
		assert.NotContains(t, said, "2 files", name)
		kept, err := os.ReadFile(shut)
		require.NoError(t, err)
		assert.Equal(t, twig, string(kept), name)
		written, err := os.ReadFile(filepath.Join(dir, "twig.crochet"))
		require.NoError(t, err)
		assert.NotEqual(t, twig, string(written), name)
	}
}

// What breaks down over one file costs that file's findings: it is told of, and
// the others are checked.
func TestOneFileBreaksDown(t *testing.T) {
	dir := t.TempDir()
	for _, name := range []string{"a", "b", "c"} {
		require.NoError(t, os.WriteFile(filepath.Join(dir, name+".crochet"), []byte(twig), 0o644))
	}
	c := &checkCommand{}
	c.NoConfig = true
	settings, err := c.finder()
	require.NoError(t, err)
	r := &checkRun{streams: &streams{in: breaks{}, out: io.Discard, err: io.Discard}, checkCommand: c, settings: settings}
	var found []inputs.Input
	for _, name := range []string{filepath.Join(dir, "a.crochet"), inputs.Stdin, filepath.Join(dir, "c.crochet")} {
		found = append(found, inputs.Input{Name: name})
	}
	got := r.all(found)
	assert.False(t, got[0].Failed())
	assert.True(t, got[1].Failed())
	assert.Equal(t, lint.InternalFailure, got[1].Findings[0].Rule)
	assert.False(t, got[2].Failed())
}

// breaks is an input that nobody can read.
type breaks struct{}

func (breaks) Read([]byte) (int, error) { panic("the hedge is cut") }

// A command that breaks down says so, and is no run that found nothing.
func TestACommandBreaksDown(t *testing.T) {
	var out, err bytes.Buffer
	assert.Equal(t, exitBroke, (&streams{in: breaks{}, out: &out, err: &err}).run([]string{"count", "-"}))
	assert.Contains(t, err.String(), "the hedge is cut; please report it")
}
