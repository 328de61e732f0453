package main

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.yaml.in/yaml/v3"
)

const root = "../.."

// clone gives the committed files in a clean folder, as a build server has them.
func clone(t *testing.T) string {
	t.Helper()
	if _, err := os.Stat(filepath.Join(root, ".git")); err != nil {
		t.Skip("this is no repository: ", err)
	}
	folder := filepath.Join(t.TempDir(), "clone")
	out, err := exec.Command("git", "clone", "--quiet", "--no-hardlinks", root, folder).CombinedOutput()
	require.NoError(t, err, "%s", out)
	return folder
}

func read(t *testing.T, name string, into any) {
	t.Helper()
	text, err := os.ReadFile(name)
	require.NoError(t, err)
	require.NoError(t, yaml.Unmarshal(text, into)) // of which JSON is a part
}

// runs runs a step as a build server does and gives what it prints. What Go
// builds holds no path of the clone, so that the next clone need not build it
// again.
func runs(t *testing.T, folder, script string, env ...string) (string, error) {
	t.Helper()
	cmd := exec.Command("bash", "-e", "-o", "pipefail", "-c", script)
	cmd.Dir, cmd.Env = folder, append(append(os.Environ(), "GOFLAGS=-trimpath", "CGO_ENABLED=0"), env...)
	out, err := cmd.CombinedOutput()
	return string(out), err
}

// step is one of a workflow or an action.
type step struct {
	Name, Run, Uses string
	With, Env       map[string]string
}

// TestWorkflow runs the workflow in a clean clone: the steps of the action that it
// uses, with what it gives them.
func TestWorkflow(t *testing.T) {
	folder := clone(t)
	var workflow struct {
		Jobs map[string]struct{ Steps []step }
	}
	read(t, filepath.Join(folder, ".github/workflows/patterns.yml"), &workflow)
	steps := workflow.Jobs["check"].Steps
	at := slices.IndexFunc(steps, func(s step) bool { return s.Uses == "./" })
	require.Positive(t, at)
	act := action(t, folder, steps[at].With)
	out, err := act()
	require.NoError(t, err, out)
	report := steps[len(steps)-1].With["sarif_file"]
	text, err := os.ReadFile(filepath.Join(folder, report))
	require.NoError(t, err, "the report to upload")
	assert.Contains(t, string(text), `"version": "2.1.0"`)

	// A fault in a pattern fails it.
	broken := filepath.Join(folder, "testdata/patterns/broken.crochet")
	require.NoError(t, os.WriteFile(broken, []byte("Terms: US\n\nPiece: Haw\nRnd 1: 6 sc in magic ring. (7 sc)\nFasten off.\n"), 0o644))
	out, err = act()
	assert.Error(t, err, out)
	assert.Contains(t, out, "broken.crochet:4:")

	// Without anything chosen the whole folder is checked.
	out, err = action(t, folder, nil)()
	assert.Error(t, err)
	assert.Contains(t, out, "testdata/broken/acorn--wrong-count.crochet:")
}

// action gives what runs the steps of the packaged action with some inputs.
func action(t *testing.T, folder string, with map[string]string) func() (string, error) {
	t.Helper()
	var action struct {
		Inputs map[string]struct{ Default string }
		Runs   struct{ Steps []step }
	}
	read(t, filepath.Join(folder, "action.yml"), &action)
	var given []string
	for name, input := range action.Inputs {
		value, ok := with[name]
		if !ok {
			value = input.Default
		}
		given = append(given, "${{ inputs."+name+" }}", value)
	}
	for name := range with {
		require.Contains(t, action.Inputs, name)
	}
	env := []string{"RUNNER_TEMP=" + t.TempDir(), "GITHUB_ACTION_PATH=" + folder}
	return func() (all string, err error) {
		ran := 0
		for _, s := range action.Runs.Steps {
			if s.Run == "" || err != nil {
				continue
			}
			for name, value := range s.Env {
				env = append(env, name+"="+strings.NewReplacer(given...).Replace(value))
			}
			var out string
			out, err = runs(t, folder, s.Run, env...)
			all += out
			ran++
		}
		require.Equal(t, 2, ran)
		return all, err
	}
}

func TestPreCommitHook(t *testing.T) {
	folder := clone(t)
	var hooks []struct{ ID, Entry, Language, Files string }
	read(t, filepath.Join(folder, ".pre-commit-hooks.yaml"), &hooks)
	require.Len(t, hooks, 1)
	hook := hooks[0]
	assert.Equal(t, "golang", hook.Language)
	files := regexp.MustCompile(hook.Files)
	assert.True(t, files.MatchString("hedge/haw.crochet") && !files.MatchString("haw.crochet.txt"))

	// The file that the README has a person write asks for it.
	readme, err := os.ReadFile(filepath.Join(root, "README.md"))
	require.NoError(t, err)
	_, shown, _ := strings.Cut(string(readme), "```yaml\n")
	shown, _, _ = strings.Cut(shown, "```")
	var asked struct {
		Repos []struct {
			Repo, Rev string
			Hooks     []struct{ ID string }
		}
	}
	require.NoError(t, yaml.Unmarshal([]byte(shown), &asked))
	require.Len(t, asked.Repos, 1)
	assert.NotEmpty(t, asked.Repos[0].Repo)
	assert.NotEmpty(t, asked.Repos[0].Rev)
	assert.Equal(t, []struct{ ID string }{{hook.ID}}, asked.Repos[0].Hooks)

	// The framework installs the program as Go does, and gives it the files that are
	// to be committed.
	bin := t.TempDir()
	out, err := runs(t, folder, "go install ./...", "GOBIN="+bin)
	require.NoError(t, err, out)
	path := "PATH=" + bin + string(os.PathListSeparator) + os.Getenv("PATH")
	out, err = runs(t, folder, hook.Entry+" testdata/patterns/*.crochet", path)
	assert.NoError(t, err, out)
	out, err = runs(t, folder, hook.Entry+" testdata/broken/acorn--wrong-count.crochet", path)
	assert.Error(t, err)
	assert.Contains(t, out, "[count-mismatch]")
}

// The problem matchers read what the program prints.
func TestProblemMatchers(t *testing.T) {
	var matchers struct {
		ProblemMatcher []struct {
			Owner    string
			Severity string
			Pattern  []struct {
				Regexp                                      string
				File, Line, Column, Severity, Message, Code int
			}
		}
	}
	text, err := os.ReadFile(filepath.Join(root, ".github/stitchproof-matcher.json"))
	require.NoError(t, err)
	require.NoError(t, json.Unmarshal(text, &matchers))
	lines, err := os.ReadFile(filepath.Join(root, "lint/report/testdata/report.lines.golden"))
	require.NoError(t, err)
	type problem struct{ file, line, column, severity, code string }
	var got []problem
	for line := range strings.Lines(string(lines)) {
		matched := 0
		for _, m := range matchers.ProblemMatcher {
			p := m.Pattern[0]
			groups := regexp.MustCompile(p.Regexp).FindStringSubmatch(strings.TrimSuffix(line, "\n"))
			if groups == nil {
				continue
			}
			matched++
			severity := m.Severity
			if severity == "" {
				severity = groups[p.Severity]
			}
			assert.NotEmpty(t, groups[p.Message])
			got = append(got, problem{groups[p.File], groups[p.Line], groups[p.Column], severity, groups[p.Code]})
		}
		assert.Equal(t, 1, matched, "each line is a problem once: %s", line)
	}
	assert.Contains(t, got, problem{"hedge row/haw.crochet", "6", "65", "error", "count-mismatch"})
	assert.Contains(t, got, problem{"signs,50%.crochet", "1", "10", "error", "count-unknown"})
	assert.Contains(t, got, problem{"nest.crochet", "7", "1", "notice", "tail-missing"})
}
