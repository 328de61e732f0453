package main

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"io/fs"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/alecthomas/kong"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lint"
	"stitchproof/lint/report"
)

// Every command in a document is carried out, or where it needs a network, an
// editor or more time than a test has, held against what it names: the folder, the
// script, the flag, the test. What a document shows of an answer is what comes.

// document is a page that people read.
type document struct {
	name  string // from the root
	parts []passage
}

// passage is a paragraph of a document or, where it is code, a block.
type passage struct {
	code bool
	text string
}

// goldens are folders whose pages are written by tests or are patterns.
var goldens = []string{".git", ".tools", "node_modules", "count", "manuscripts"}

func documents(t *testing.T) []document {
	t.Helper()
	var out []document
	require.NoError(t, filepath.WalkDir(root, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			if err == nil && slices.Contains(goldens, d.Name()) {
				return fs.SkipDir
			}
			return err
		}
		if filepath.Ext(name) == ".md" {
			text, err := os.ReadFile(name)
			if err != nil {
				return err
			}
			rel, _ := filepath.Rel(root, name)
			out = append(out, document{filepath.ToSlash(rel), passages(string(text))})
		}
		return nil
	}))
	return out
}

// passages cuts a document into its paragraphs and its blocks of code, which are
// fenced or indented.
func passages(text string) []passage {
	var out []passage
	fenced, blank := false, true
	for line := range strings.Lines(text) {
		line = strings.TrimRight(line, "\n")
		last := len(out) - 1
		switch {
		case strings.HasPrefix(line, "```"):
			if fenced = !fenced; fenced {
				out = append(out, passage{code: true})
			}
			blank = true
		case fenced:
			out[last].text += line + "\n"
		case line == "":
			blank = true
		case strings.HasPrefix(line, "    ") && (blank || last >= 0 && out[last].code):
			line = line[4:]
			if last >= 0 && out[last].code {
				if blank {
					line = "\n" + line
				}
				out[last].text += line + "\n"
			} else {
				out = append(out, passage{true, line + "\n"})
			}
			blank = false
		case blank || last < 0 || out[last].code:
			out = append(out, passage{text: line})
			blank = false
		default:
			out[last].text += "\n" + line
		}
	}
	return out
}

var codeSpan = regexp.MustCompile("`([^`]+)`")

// spans are the pieces of code within a paragraph.
func (p passage) spans() []string {
	var out []string
	if !p.code {
		for _, m := range codeSpan.FindAllStringSubmatch(p.text, -1) {
			out = append(out, strings.Join(strings.Fields(strings.ReplaceAll(m[1], `\|`, "|")), " "))
		}
	}
	return out
}

// reader carries out what a document says.
type reader struct {
	*testing.T
	document
	root  string
	model *kong.Application

	files   map[string]string // that the document shows
	answer  string            // of the command that came last
	code    int
	ran     []string // commands that were run
	held    []string // and those that were held against what they name
	answers int      // that the document shows
	counted []string // what the examples of the notation come to
	bends   []string // and how some are said to bend
}

func TestDocuments(t *testing.T) {
	parser, err := (&streams{}).parserOf(commands)
	require.NoError(t, err)
	whole, err := filepath.Abs(root)
	require.NoError(t, err)
	ran, held, answers := 0, 0, 0
	var counted, bends []string
	for _, d := range documents(t) {
		t.Run(d.name, func(t *testing.T) {
			r := &reader{T: t, document: d, root: whole, model: parser.Model, files: map[string]string{}}
			t.Chdir(t.TempDir())
			require.NoError(t, os.CopyFS("testdata/patterns", os.DirFS(filepath.Join(whole, "testdata/patterns"))))
			for i, p := range d.parts {
				r.read(i, p)
			}
			for _, c := range r.ran {
				t.Log("run: ", c)
			}
			for _, c := range r.held {
				t.Log("held:", c)
			}
			counted, bends = append(counted, r.counted...), append(bends, r.bends...)
			ran, held, answers = ran+len(r.ran), held+len(r.held), answers+r.answers
		})
	}
	assert.Greater(t, ran, 30)
	assert.Greater(t, held, 30)
	assert.Greater(t, answers, 5)
	assert.Greater(t, len(counted), 5)
	assert.Greater(t, len(bends), 1)
	for _, b := range bends {
		assert.Contains(t, strings.Join(counted, ""), b, "no example bends so")
	}
}

var (
	showsFile   = regexp.MustCompile("`([a-z/-]+\\.crochet)`:$")
	showsAnswer = regexp.MustCompile(`\b(?:answers|prints|begins|ends)\b[^.]*:$`)
	showsCode   = regexp.MustCompile(`ends with exit code (\d)`)
	saysBend    = regexp.MustCompile(`bends about [^.` + "`" + `]+`)
	isSettings  = regexp.MustCompile(`(?m)^\[+[a-z.]+\]+`)
)

// read carries out one passage.
func (r *reader) read(i int, p passage) {
	if !p.code {
		if m := showsCode.FindStringSubmatch(p.text); m != nil {
			assert.Equal(r, m[1], strconv.Itoa(r.code), p.text)
		}
		r.bends = append(r.bends, saysBend.FindAllString(p.text, -1)...)
		for _, span := range p.spans() {
			r.command(span, true)
		}
		return
	}
	var lead string
	if i > 0 {
		lead = r.parts[i-1].text
	}
	switch m := showsFile.FindStringSubmatch(lead); {
	case m != nil:
		r.files[m[1]] = p.text
	case r.name == "lang/NOTATION.md" && strings.HasPrefix(p.text, "Pattern: "):
		example := r.write("example.crochet", p.text)
		r.own("check", "--fail-on", "info", example)
		assert.Equal(r, exitClean, r.code, r.answer)
		r.own("count", example)
		r.counted = append(r.counted, r.answer)
	case showsAnswer.MatchString(lead):
		r.answers++
		assert.Contains(r, "\n"+r.answer, "\n"+p.text)
	case isSettings.MatchString(p.text):
		r.own("config", "--config", r.write("shown.toml", p.text))
	}
	var script []string
	for line := range strings.Lines(p.text) {
		if r.command(strings.TrimSpace(line), false) {
			script = append(script, line)
		}
	}
	if script != nil {
		r.shell(script)
	}
}

// write puts a file into the folder that commands are run in.
func (r *reader) write(name, text string) string {
	require.NoError(r, os.MkdirAll(filepath.Dir(name), 0o755))
	require.NoError(r, os.WriteFile(name, []byte(text), 0o644))
	return name
}

// unknown are programs that a document may come to name, so that somebody has to
// say how that is held.
var unknown = strings.Fields("apt apt-get brew curl docker make pip python node npx cargo vim nvim emacs kate bash sudo wget tar rm mv ln export source gofmt")

// onPath are programs that are held against the files beside the document.
var onPath = []string{"npm", "code", "hx", "tree-sitter", "git", "cc"}

// forShell are commands that put files into place.
var forShell = []string{"cd", "mkdir", "cp", "cat", "printf"}

var (
	variable = regexp.MustCompile(`^[A-Z_]+=`)
	aScript  = regexp.MustCompile(`^(?:\.ci/[a-z]+|editors/(?:test|newer))$`)
	aGoFlag  = regexp.MustCompile(`^-[a-z]{2,}$`)
)

// command carries out a command or holds it, and tells whether it is for the
// shell. What is no command it leaves alone.
func (r *reader) command(text string, inProse bool) (shell bool) {
	for part := range strings.SplitSeq(text, " && ") {
		words := strings.Fields(part)
		for len(words) > 0 && variable.MatchString(words[0]) {
			words = words[1:]
		}
		if len(words) == 0 {
			continue
		}
		if args := r.ours(words, inProse); args != nil {
			r.own(args...)
			continue
		}
		first, rest := words[0], words[1:]
		switch {
		case aScript.MatchString(first):
			r.script(first, rest)
		case inProse && strings.HasPrefix(first, "--"):
			assert.Contains(r, r.flags(nil), strings.TrimPrefix(first, "--"), "no command has this flag: %s", text)
		case inProse && aGoFlag.MatchString(first):
			assert.NotEmpty(r, r.inCode(`flag\.\w+\("`+first[1:]+`"`, "."), "no test and no program has this flag: %s", text)
		case len(rest) == 0:
			continue // a name
		case first == "go":
			r.goTool(rest)
		case slices.Contains(onPath, first):
			r.tool(first, rest)
		case !inProse && slices.Contains(forShell, first):
			shell = true
			continue
		case !inProse && slices.Contains(unknown, first):
			r.Errorf("nothing carries this out: %s", text)
			continue
		default:
			continue
		}
		r.held = append(r.held, text)
	}
	return shell
}

// ours are the arguments for the program itself, nil for another command. In prose
// its name may be left out.
func (r *reader) ours(words []string, inProse bool) []string {
	run := []string{"go", "run", "./cmd/stitchproof"}
	switch {
	case words[0] == "stitchproof" && len(words) > 1:
		return words[1:]
	case len(words) > len(run) && slices.Equal(words[:len(run)], run):
		return words[len(run):]
	case inProse && len(words) > 1 && r.commandNamed(words[0]) != nil:
		return words
	}
	return nil
}

func (r *reader) commandNamed(name string) *kong.Node {
	for _, c := range r.model.Children {
		if c.Name == name {
			return c
		}
	}
	return nil
}

// flags are the flags of a command, or of all.
func (r *reader) flags(c *kong.Node) []string {
	var out []string
	for _, n := range r.model.Children {
		if c == nil || n == c {
			for _, f := range n.Flags {
				out = append(out, f.Name)
			}
		}
	}
	return out
}

// given stands for what a document leaves open.
var given = map[string]string{
	"PATHS…": "cup.crochet", "FILE": "cup.crochet", "WORD": "dc3tog", "[PATH]": ".", "[FOLDER]": "new", "SHELL": "bash",
	"us|uk": "uk", "REASON": "so it is",
}

// own runs the program itself. A command with flags alone only has to have them.
func (r *reader) own(args ...string) {
	r.Helper()
	args = slices.Clone(args)
	for i, a := range args {
		if word, open := given[strings.Trim(a, "'")]; open {
			args[i] = word
		}
	}
	line := strings.Join(args, " ")
	named := r.commandNamed(args[0])
	if !assert.NotNil(r, named, "there is no such command: %s", line) {
		return
	}
	if args[0] != "config" && args[0] != "lsp" && len(args) > 1 && !slices.ContainsFunc(args[1:], func(a string) bool { return !strings.HasPrefix(a, "--") }) {
		for _, a := range args[1:] {
			assert.Contains(r, r.flags(named), strings.TrimPrefix(a, "--"), line)
		}
		r.held = append(r.held, line)
		return
	}
	for name, text := range r.files {
		for _, at := range []string{name, "haws/" + name, "archive/" + name} {
			r.write(at, text)
		}
	}
	require.NoError(r, os.MkdirAll("new", 0o755))
	var out, problems bytes.Buffer
	if slices.Contains(args, "--listen") {
		r.listens(args)
	} else {
		stdin := r.files["cup.crochet"]
		if args[0] == "lsp" {
			stdin = session
		}
		r.code = (&streams{in: strings.NewReader(stdin), out: &out, err: &problems}).run(args)
		assert.NotEqual(r, exitBroke, r.code, "%s: %s", line, &problems)
		r.answer = out.String()
	}
	for i, a := range args {
		if a == "--output" || a == "--write-baseline" {
			_, file, named := strings.Cut(args[i+1], "=")
			if !named {
				file = args[i+1]
			}
			assert.FileExists(r, file, line)
		}
	}
	r.ran = append(r.ran, line)
}

// session is that of an editor that comes and leaves.
var session = func() string {
	var b strings.Builder
	for _, message := range []string{
		`{"jsonrpc":"2.0","id":1,"method":"initialize","params":{"capabilities":{}}}`, `{"jsonrpc":"2.0","method":"initialized","params":{}}`,
		`{"jsonrpc":"2.0","id":2,"method":"shutdown"}`, `{"jsonrpc":"2.0","method":"exit"}`,
	} {
		fmt.Fprintf(&b, "Content-Length: %d\r\n\r\n%s", len(message), message)
	}
	return b.String()
}()

// listens serves a socket until it is interrupted, as a person would end it.
func (r *reader) listens(args []string) {
	says, out := io.Pipe()
	done := make(chan int)
	go func() { done <- (&streams{in: strings.NewReader(""), out: out, err: io.Discard}).run(args) }()
	first := make([]byte, 64)
	n, err := says.Read(first)
	require.NoError(r, err)
	assert.Regexp(r, `^listening on 127\.0\.0\.1:\d+\n$`, string(first[:n]))
	go func() { _, _ = io.Copy(io.Discard, says) }()
	self, err := os.FindProcess(os.Getpid())
	require.NoError(r, err)
	require.NoError(r, self.Signal(os.Interrupt))
	select {
	case code := <-done:
		assert.Equal(r, exitClean, code)
	case <-time.After(10 * time.Second):
		r.Fatal("it does not end")
	}
}

// shell runs what a document has a person type to copy files into place, in a home
// of its own.
func (r *reader) shell(script []string) {
	home := r.TempDir()
	cmd := exec.CommandContext(context.Background(), "sh", "-e", "-c", strings.ReplaceAll(strings.Join(script, ""), "/path/to/stitchproof", r.root))
	cmd.Dir, cmd.Env = filepath.Join(r.root, path.Dir(r.name)), append(os.Environ(), "HOME="+home)
	out, err := cmd.CombinedOutput()
	assert.NoError(r, err, "%s", out)
	assert.Empty(r, string(out))
	for _, line := range script {
		r.ran = append(r.ran, strings.TrimSpace(line))
	}
}

// script holds a script of the project and what it is given.
func (r *reader) script(name string, args []string) {
	info, err := os.Stat(filepath.Join(r.root, name))
	if assert.NoError(r, err) {
		assert.NotZero(r, info.Mode()&0o111, "%s cannot be run", name)
	}
	for i, arg := range args {
		switch {
		case name == "editors/test":
			assert.FileExists(r, filepath.Join(r.root, "editors", arg, "test"))
		case name == ".ci/fuzz" && i == 0:
			_, err := time.ParseDuration(arg)
			assert.NoError(r, err)
		case name == ".ci/fuzz":
			assert.NotEmpty(r, r.inCode(`func Fuzz\w*`+arg+`\w*\(`, "."), arg)
		default:
			r.Errorf("%s takes no %s", name, arg)
		}
	}
}

// flagsOfGo are those of the Go command itself.
var flagsOfGo = []string{"race", "v", "run", "count", "fuzzcache"}

// goTool holds a command of Go: its packages are there, their flags and tests too.
func (r *reader) goTool(words []string) {
	line := "go " + strings.Join(words, " ")
	packages := []string{}
	for _, w := range words[1:] {
		if strings.HasPrefix(w, "./") && w != "./..." {
			found, err := filepath.Glob(filepath.Join(r.root, w, "*.go"))
			require.NoError(r, err)
			assert.NotEmpty(r, found, line)
			packages = append(packages, w)
		}
	}
	for i, w := range words {
		name, isFlag := strings.CutPrefix(w, "-")
		name, _, _ = strings.Cut(name, "=")
		switch {
		case !isFlag || slices.Contains(flagsOfGo, name) && name != "run":
		case name == "run":
			assert.NotEmpty(r, r.inCode(`func `+words[i+1], packages...), line)
		case strings.HasPrefix(name, "rapid."):
			assert.NotEmpty(r, r.inCode(`"pgregory.net/rapid"`, packages...), line)
		default:
			assert.NotEmpty(r, r.inCode(`flag\.\w+\("`+name+`"`, packages...), line)
		}
	}
}

// inCode finds an expression in the Go files of packages, or of all below one.
func (r *reader) inCode(expression string, packages ...string) []string {
	want := regexp.MustCompile(expression)
	var out []string
	for _, p := range packages {
		_ = filepath.WalkDir(filepath.Join(r.root, p), func(name string, d fs.DirEntry, err error) error {
			if err == nil && filepath.Ext(name) == ".go" {
				if text, _ := os.ReadFile(name); want.Match(text) {
					out = append(out, name)
				}
			}
			return nil
		})
	}
	return out
}

// tool holds a command of another program against the files beside the document.
func (r *reader) tool(name string, args []string) {
	folder := filepath.Join(r.root, path.Dir(r.name))
	line := name + " " + strings.Join(args, " ")
	var made struct{ Scripts map[string]string }
	if text, err := os.ReadFile(filepath.Join(folder, "package.json")); err == nil {
		require.NoError(r, json.Unmarshal(text, &made))
	}
	switch name {
	case "npm":
		if args[0] == "ci" {
			assert.FileExists(r, filepath.Join(folder, "package-lock.json"))
		} else {
			assert.Equal(r, "run", args[0])
			assert.Contains(r, made.Scripts, args[1], line)
		}
	case "code":
		assert.Contains(r, made.Scripts["package"], "--out "+args[1], line)
	case "hx":
		text, err := os.ReadFile(filepath.Join(folder, "languages.toml"))
		require.NoError(r, err)
		assert.Contains(r, string(text), `name = "`+args[1]+`"`, line)
	case "tree-sitter":
		assert.Equal(r, "generate", args[0])
		assert.FileExists(r, filepath.Join(folder, "grammar.js"))
	case "git":
		assert.Equal(r, "tag", args[0], line)
	case "cc":
		for _, a := range args {
			if strings.HasPrefix(a, "../") {
				_, err := os.Stat(filepath.Join(folder, a))
				assert.NoError(r, err, line)
			}
		}
	}
}

// What documents list is what there is.
func TestDocumentsListAll(t *testing.T) {
	listed := func(name, heading string) []string {
		text, err := os.ReadFile(filepath.Join(root, name))
		require.NoError(t, err)
		_, table, found := strings.Cut(string(text), heading)
		require.True(t, found, heading)
		table, _, _ = strings.Cut(table, "\n\n")
		var out []string
		for _, m := range regexp.MustCompile("(?m)^\\| ((?:`[^`]+`(?:, )?)+)").FindAllStringSubmatch(table, -1) {
			for _, s := range codeSpan.FindAllStringSubmatch(m[1], -1) {
				out = append(out, strings.Fields(s[1])[0])
			}
		}
		return out
	}
	var names []string
	parser, err := (&streams{}).parserOf(commands)
	require.NoError(t, err)
	for _, c := range parser.Model.Children {
		names = append(names, c.Name)
	}
	assert.ElementsMatch(t, names, listed("README.md", "| command | does |"))
	assert.ElementsMatch(t, report.FormatNames(), listed("README.md", "| `--format` | is |"))
	assert.ElementsMatch(t, report.CountFormatNames(), listed("README.md", "| format | is |"))

	packages := map[string]bool{}
	require.NoError(t, filepath.WalkDir(root, func(name string, d fs.DirEntry, err error) error {
		if err == nil && d.IsDir() && (d.Name() == "node_modules" || d.Name() == ".tools") {
			return fs.SkipDir
		}
		if err == nil && filepath.Ext(name) == ".go" && !strings.HasSuffix(name, "_test.go") {
			rel, _ := filepath.Rel(root, filepath.Dir(name))
			packages[filepath.ToSlash(rel)] = true
		}
		return err
	}))
	mapped := listed("DEVELOPERS.md", "| package | is |")
	for p := range packages {
		within := slices.ContainsFunc(mapped, func(m string) bool {
			return p == m || m == "cmd/stitchproof" && path.Dir(p) == m || path.Dir(p) == m && path.Base(p) == path.Base(m)+"test"
		})
		assert.True(t, within, "the map of the code has no %s", p)
	}
	for _, m := range mapped {
		assert.DirExists(t, filepath.Join(root, m))
	}

	changes, err := os.ReadFile(filepath.Join(root, "CHANGELOG.md"))
	require.NoError(t, err)
	rules := regexp.MustCompile(`(\d+) rules`).FindSubmatch(changes)
	require.NotNil(t, rules)
	assert.Equal(t, strconv.Itoa(len(lint.Rules())), string(rules[1]))

	notation, err := os.ReadFile(filepath.Join(root, "lang/NOTATION.md"))
	require.NoError(t, err)
	var headings, contents []string
	for _, m := range regexp.MustCompile(`(?m)^## (.*)$|^\d+\. \[(.*)\]\(#`).FindAllStringSubmatch(string(notation), -1) {
		if m[1] != "" {
			headings = append(headings, m[1])
		} else {
			contents = append(contents, m[2])
		}
	}
	assert.Equal(t, headings, contents)
}

// What a document leads to is there: other documents and their parts, files,
// tests.
func TestDocumentsLeadSomewhere(t *testing.T) {
	var files []string
	require.NoError(t, filepath.WalkDir(root, func(name string, d fs.DirEntry, err error) error {
		if err == nil && d.IsDir() && slices.Contains(goldens[:3], d.Name()) {
			return fs.SkipDir
		}
		files = append(files, filepath.ToSlash(name))
		return err
	}))
	tests := map[string]bool{}
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			text, err := os.ReadFile(name)
			require.NoError(t, err)
			for _, m := range regexp.MustCompile(`(?m)^func (Test\w+)`).FindAllSubmatch(text, -1) {
				tests[string(m[1])] = true
			}
		}
	}
	anchor := strings.NewReplacer(" ", "-", "`", "", ",", "", "…", "", ":", "")
	var code strings.Builder
	for _, name := range files {
		if filepath.Ext(name) == ".go" {
			text, err := os.ReadFile(name)
			require.NoError(t, err)
			code.Write(text)
		}
	}
	links, named := 0, 0
	for _, d := range documents(t) {
		folder := filepath.Join(root, path.Dir(d.name))
		headings := map[string]bool{}
		for _, p := range d.parts {
			if m := regexp.MustCompile(`^#+ (.*)`).FindStringSubmatch(p.text); m != nil && !p.code {
				headings[anchor.Replace(strings.ToLower(m[1]))] = true
			}
		}
		for _, p := range d.parts {
			for _, at := range regexp.MustCompile(`/path/to/stitchproof(/[a-z/-]+)`).FindAllStringSubmatch(p.text, -1) {
				named++
				assert.DirExists(t, filepath.Join(root, at[1]), d.name)
			}
			for _, m := range regexp.MustCompile(`\(require '([a-z-]+)\)`).FindAllStringSubmatch(p.text, -1) {
				named++
				text, err := os.ReadFile(filepath.Join(folder, m[1]+".el"))
				require.NoError(t, err)
				assert.Contains(t, string(text), "(provide '"+m[1]+")", d.name)
			}
			if p.code {
				continue
			}
			for _, m := range regexp.MustCompile(`\]\(([^)\s]+)\)`).FindAllStringSubmatch(codeSpan.ReplaceAllString(p.text, ""), -1) {
				links++
				if part, within := strings.CutPrefix(m[1], "#"); within {
					assert.True(t, headings[part], "%s: no heading for %s", d.name, m[1])
				} else if !strings.Contains(m[1], "://") {
					_, err := os.Stat(filepath.Join(folder, m[1]))
					assert.NoError(t, err, d.name)
				}
			}
			for _, span := range p.spans() {
				switch {
				case allows.MatchString(span) && d.name != "lint/RULES.md":
					for name := range strings.SplitSeq(allows.FindStringSubmatch(span)[1], ", ") {
						assert.Contains(t, lint.Names(), name, d.name)
					}
				case regexp.MustCompile(`^Test[A-Z]\w+$`).MatchString(span):
					named++
					assert.True(t, tests[span], "%s: there is no test %s", d.name, span)
				case d.name == "DEVELOPERS.md" && identifier.MatchString(span):
					named++
					assert.True(t, regexp.MustCompile(`\b`+span[strings.LastIndex(span, ".")+1:]+`\b`).MatchString(code.String()), "the code has no %s", span)
				case d.name != "README.md" && regexp.MustCompile(`^[a-zA-Z_./-]+\.(?:go|tsv|md|json|svg|el|toml)$`).MatchString(span):
					named++
					assert.True(t, slices.ContainsFunc(files, func(f string) bool { return strings.HasSuffix(f, "/"+strings.TrimLeft(span, "./")) }) || made[span],
						"%s: there is no file %s", d.name, span)
				}
			}
		}
	}
	assert.Greater(t, links, 100)
	assert.Greater(t, named, 100)
}

// identifier is a name in the code, with its package or type.
var identifier = regexp.MustCompile(`^(?:[A-Za-z]+\.)?[A-Za-z]*(?:[a-z][A-Z]|[A-Z][a-z])[A-Za-z]*$`)

// allows is an answer to findings.
var allows = regexp.MustCompile(`^// allow(?:-begin|-file)? ([a-z-]+(?:, [a-z-]+)*):`)

// made are files that a person makes.
var made = map[string]bool{"stitchproof.toml": true}
