package manual

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/alecthomas/kong"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// hedge is a command line with every kind of flag and argument.
type hedge struct {
	Trim struct {
		Paths  []string `arg:"" help:"Hedges."`
		Format string   `short:"f" enum:"text,lines" default:"text" help:"How; it's [said]: ${enum}."`
		Output []string `short:"o" placeholder:"[FORMAT=]FILE" help:"Where to."`
		Depth  int      `placeholder:"N" help:"How deep."`
		Fix    bool     `help:"Do it."`
		Secret bool     `hidden:"" help:"Not told."`
	} `cmd:"" help:"Trim hedges. All of them."`
	Explain struct {
		Word string `arg:"" help:"A word."`
	} `cmd:"" help:"Explain a word."`
	Version struct{} `cmd:"" help:".Say which -- \"it\" is."`
}

func ours(t *testing.T) Manual {
	t.Helper()
	k, err := kong.New(&hedge{}, kong.Name("hedge"), kong.Description("Cares for hedges."), kong.NoDefaultHelp())
	require.NoError(t, err)
	return Of(k.Model, map[string][]string{"explain": {"acorn", "bramble"}}, []Section{{"Exit status", []Item{{"0", "All is well."}}}})
}

func TestOf(t *testing.T) {
	m := ours(t)
	assert.Equal(t, []string{"trim", "explain", "version"}, m.names())
	trim := m.Commands[0]
	assert.Equal(t, "<paths> ...", trim.Usage)
	assert.Equal(t, []string{"--format", "--output", "--depth", "--fix"}, trim.flagWords(), "what is hidden is not told")
	assert.Equal(t, []string{"text", "lines"}, trim.Flags[0].Words)
	assert.True(t, trim.Flags[1].takesFile())
	assert.Empty(t, trim.Flags[3].Value)
}

// shell runs a script in a shell. It must be there where all tests must run.
func shell(t *testing.T, name, script string) string {
	t.Helper()
	if _, err := exec.LookPath(name); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatalf("%s is not installed: .ci/run does that", name)
		}
		t.Skip(name, " is not installed")
	}
	folder := t.TempDir()
	for _, file := range []string{"acorn.crochet", "bramble.txt"} {
		require.NoError(t, os.WriteFile(filepath.Join(folder, file), nil, 0o644))
	}
	var b bytes.Buffer
	require.NoError(t, Shells[strings.Fields(name)[0]](ours(t), &b))
	require.NoError(t, os.WriteFile(filepath.Join(folder, "completion"), b.Bytes(), 0o644))
	args := map[string][]string{"bash": {"--norc", "-c"}, "zsh": {"-f", "-c"}, "fish": {"--no-config", "-c"}}[name]
	cmd := exec.Command(name, append(args, script)...)
	cmd.Dir = folder
	cmd.Env = append(os.Environ(), "HOME="+folder, "XDG_CONFIG_HOME="+folder, "XDG_DATA_HOME="+folder)
	out, err := cmd.CombinedOutput()
	require.NoError(t, err, "%s", out)
	return strings.Join(strings.Fields(string(out)), " ")
}

// completed is what is offered at the end of a command line, by shell.
var completed = []struct{ line, want string }{
	{"hedge ", "trim explain version"},
	{"hedge tr", "trim"},
	{"hedge trim --f", "--format --fix"},
	{"hedge trim --format ", "text lines"},
	{"hedge trim -f l", "lines"},
	{"hedge trim --output ac", "acorn.crochet"},
	{"hedge trim --fix a", "acorn.crochet"},
	{"hedge explain ", "acorn bramble"},
	{"hedge explain b", "bramble"},
	{"hedge trim --depth ", ""},
}

func TestBashCompletes(t *testing.T) {
	for _, c := range completed {
		words := strings.Split(c.line, " ")
		var quotedWords []string
		for _, w := range words {
			quotedWords = append(quotedWords, quoted(w))
		}
		script := "source ./completion; complete -p hedge >/dev/null || exit 1; COMP_WORDS=(" + strings.Join(quotedWords, " ") + "); COMP_CWORD=$((${#COMP_WORDS[@]} - 1)); _hedge; echo \"${COMPREPLY[@]}\""
		want := c.want
		if words[1] == "" {
			want += " --help"
		}
		assert.Equal(t, want, shell(t, "bash", script), c.line)
	}
}

func TestFishCompletes(t *testing.T) {
	for _, c := range completed {
		got := shell(t, "fish", "source ./completion; complete -C "+quoted(c.line)+" | string split -f1 \\t; true")
		for _, word := range strings.Fields(c.want) {
			assert.Contains(t, strings.Fields(got), word, c.line)
		}
		if c.want != "" && !strings.Contains(c.line, "--f") && !strings.Contains(c.line, " a") {
			assert.Len(t, strings.Fields(got), len(strings.Fields(c.want)), "%s: %s", c.line, got)
		}
	}
}

// A zsh without a terminal completes nothing, so the functions it would call are
// stood in for: what is asked of them is what would be offered.
func TestZshCompletes(t *testing.T) {
	script := `autoload -Uz compinit 2>/dev/null; compdef() { :; }
_describe() { print -l -- $commands; }
_arguments() { print -l -- "$@"; }
source ./completion
ask() { words=("$@"); CURRENT=$#; _hedge; }
ask hedge ""; ask hedge trim ""; ask hedge explain ""`
	got := shell(t, "zsh", script)
	for _, want := range []string{
		"trim:Trim hedges", "explain:Explain a word.", `*--format[How]:format:(text lines)`, `*-f[How]`, "*--output[Where to]:format=file:_files",
		"*--fix[Do it]", "*--depth[How deep]:n: ", "*: :_files", "*: :(acorn bramble)",
	} {
		assert.Contains(t, got, strings.Join(strings.Fields(want), " "))
	}
	assert.NotContains(t, got, "secret")
}

func TestPage(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, ours(t).Page(&b, "v1.0.0"))
	for _, want := range []string{
		".TH HEDGE 1", ".SH NAME\nhedge \\- cares for hedges\n", ".SS trim <paths> ...\n", "\\fB\\-\\-format\\fR, \\fB\\-f\\fR \\fIFORMAT\\fR",
		".SH EXIT STATUS\n.TP\n.B 0\nAll is well.\n", "\n\\&.Say which \\-\\- \"it\" is.\n",
	} {
		assert.Contains(t, b.String(), want)
	}
}

// What formats manual pages has nothing to object to.
func TestPageIsSound(t *testing.T) {
	if _, err := exec.LookPath("mandoc"); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("mandoc is not installed: .ci/run does that")
		}
		t.Skip("mandoc is not installed")
	}
	var b bytes.Buffer
	require.NoError(t, ours(t).Page(&b, "v1.0.0"))
	cmd := exec.Command("mandoc", "-T", "lint", "-W", "error")
	cmd.Stdin = &b
	out, err := cmd.CombinedOutput()
	assert.NoError(t, err, "%s", out)
}
