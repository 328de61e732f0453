package config

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/house"
	"stitchproof/lang/stitch"
	"stitchproof/lint"
)

const everything = `dialect = "UK"
fail-on = "warning"

[files]
include = ["*.md", "!readme.md"]
ignore = ["drafts/"]
gitignore = false

[rules]
all = "info"
counts = "error"
count-missing = "off"

[style]
line-width = 100
ways.skip = "sk"

[[override]]
paths = ["us/"]
dialect = "us"
[override.rules]
counts = "warning"

[[override]]
paths = ["us/old/"]
rules = { count-missing = "caution" }
`

// file1 writes a file of settings into a folder of its own.
func file1(t *testing.T, text string) string {
	t.Helper()
	return put(t, t.TempDir(), Name, text)
}

func put(t *testing.T, folder, name, text string) string {
	t.Helper()
	name = filepath.Join(folder, filepath.FromSlash(name))
	require.NoError(t, os.MkdirAll(filepath.Dir(name), 0o755))
	require.NoError(t, os.WriteFile(name, []byte(text), 0o644))
	return name
}

// uncommented is the example with every choice made.
func uncommented(t *testing.T) string {
	t.Helper()
	text := regexp.MustCompile(`(?m)^# ((?:\[|[a-z-]+ = ).*)$`).ReplaceAllString(string(Example), "$1")
	require.Greater(t, strings.Count(text, "="), 8)
	return strings.Replace(text, "extends = \"../house.toml\"\n", "", 1)
}

func TestChoices(t *testing.T) {
	name := file1(t, everything)
	root := filepath.Dir(name)
	c, err := Load(name)
	require.NoError(t, err)

	e := c.For(filepath.Join(root, "haw.crochet"))
	assert.Equal(t, stitch.UK, e.Dialect)
	assert.Equal(t, lint.Warning, e.FailOn)
	assert.Equal(t, house.Style{Width: 100, Ways: map[string]string{"skip": "sk"}}, e.Style)
	assert.Equal(t, lint.Levels{"all": lint.Level(lint.Info), "counts": lint.Level(lint.Error), "count-missing": lint.Off}, e.Levels)

	us := c.For(filepath.Join(root, "us", "haw.crochet"))
	assert.Equal(t, stitch.US, us.Dialect)
	assert.Equal(t, lint.Level(lint.Warning), us.Levels["counts"])
	assert.NotContains(t, us.Levels, "count-missing", "a later choice for its family undoes it")
	assert.Equal(t, lint.Level(lint.Caution), c.For(filepath.Join(root, "us", "old", "haw.crochet")).Levels["count-missing"])

	from := map[string]string{}
	for _, choice := range c.For(filepath.Join(root, "us", "old", "haw.crochet")).Choices {
		from[choice.Key] = choice.Value + " " + strings.TrimPrefix(choice.From, name)
	}
	assert.Equal(t, map[string]string{
		"dialect": "US :20", "fail-on": "warning :2", "rules.all": "info :10", "rules.counts": "warning :22",
		"rules.count-missing": "caution :26", "style.line-width": "100 :15", "style.ways.skip": "sk :16",
	}, from)
}

func TestWhichFiles(t *testing.T) {
	name := file1(t, everything)
	at := func(s string) string { return filepath.Join(filepath.Dir(name), s) }
	c, err := Load(name)
	require.NoError(t, err)
	for file, want := range map[string]bool{"haw.crochet": true, "deep/haw.md": true, "haw.txt": false, "readme.md": false} {
		assert.Equal(t, want, c.Includes(at(file)), file)
	}
	assert.True(t, c.Ignores(at("drafts"), true))
	assert.True(t, c.Ignores(at("drafts/haw.crochet"), false))
	assert.False(t, c.Ignores(at("haw.crochet"), false))
	assert.False(t, c.Gitignore())
	assert.True(t, (&Config{}).Gitignore())
	assert.True(t, (&Config{}).Includes(at("haw.crochet")))
}

func TestFaultsNameTheirPlaceAndWhatIsMeant(t *testing.T) {
	for text, want := range map[string]string{
		"\ndialct = \"US\"\n":                                             `:2:1: there is no key "dialct"; perhaps "dialect" is meant`,
		"[files]\nignored = []\n":                                         `:2:1: there is no key "files.ignored"; perhaps "ignore" is meant`,
		"[[override]]\npaths = [\"x\"]\nstyle.linewidth = 3\n":            `:3:1: there is no key "override.style.linewidth"; perhaps "line-width" is meant`,
		"xyzzy = 1\n":                                                     `:1:1: there is no key "xyzzy"; there are extends, fail-on, files, dialect, rules, style, override`,
		"[rules]\nall = \"off\"\ncount-mismach = \"off\"\n":               `:3: no rule and no family of rules is called "count-mismach"; perhaps "count-mismatch" is meant`,
		"rules = { branchs = \"off\" }\n":                                 `:1: no rule and no family of rules is called "branchs"; perhaps "branches" is meant`,
		"[[override]]\npaths = [\"x\"]\n[override.rules]\nrow-over = 1\n": `: "1" is no level`,
		"[rules]\nall = \"grave\"\n":                                      `:2:7: "grave" is no level: off, info, warning, error and caution are`,
		"fail-on = \"grave\"\n":                                           `:1:11: "grave" is no severity`,
		"[[override]]\ndialect = \"UK\"\n":                                `:1: an override names no paths`,
		"[style.ways]\nskips = \"sk\"\n":                                  `:2: nothing that is written in several ways is called "skips"; perhaps "skip" is meant`,
		"style.ways.skip = \"skipp\"\n":                                   `:1: "skipp" is no way of skipping stitches; perhaps "skip" is meant`,
		"dialect = \"US\n":                                                `:1:`,
		"[style]\nline-width = -5\n":                                      `:2`,
		"extends = \"nowhere.toml\"\n":                                    `:1: cannot extend: `,
		"extends = \"stitchproof.toml\"\n":                                `extend each other in a circle`,
	} {
		name := file1(t, text)
		_, err := Load(name)
		if assert.Error(t, err, text) {
			assert.Contains(t, err.Error(), name+":", text)
			assert.Contains(t, err.Error(), want, text)
		}
	}
	_, err := Load(file1(t, "a = 1\nb = 2\n"))
	assert.ErrorContains(t, err, `"a"`)
	assert.ErrorContains(t, err, `"b"`, "every fault is told")
}

func TestNearestHoldsAlone(t *testing.T) {
	t.Setenv("XDG_CONFIG_HOME", t.TempDir())
	root := t.TempDir()
	put(t, root, Name, "dialect = \"UK\"\nfail-on = \"info\"\n")
	put(t, root, "haws/"+Name, "[rules]\nall = \"off\"\n")
	put(t, root, "hips/"+Name, "extends = \"../house.toml\"\n[rules]\nrow-over = \"info\"\n")
	put(t, root, "house.toml", "dialect = \"US\"\n[rules]\nrow-over = \"off\"\nrow-short = \"off\"\n")
	f := NewFinder()
	for folder, want := range map[string]struct {
		dialect stitch.Dialect
		levels  lint.Levels
		files   int
	}{
		"":          {stitch.UK, lint.Levels{}, 1},
		"deep/down": {stitch.UK, lint.Levels{}, 1},
		"haws/deep": {stitch.Unsettled, lint.Levels{"all": lint.Off}, 1},
		"hips":      {stitch.US, lint.Levels{"row-over": lint.Level(lint.Info), "row-short": lint.Off}, 2},
	} {
		c, err := f.In(filepath.Join(root, folder))
		require.NoError(t, err)
		e := c.For(filepath.Join(root, folder, "x.crochet"))
		assert.Equal(t, want.dialect, e.Dialect, folder)
		assert.Equal(t, want.levels, e.Levels, folder)
		assert.Len(t, c.Files(), want.files, folder)
	}
}

// A file of settings is told as a person would write it from where they are, where that
// is no longer than the whole.
func TestFilesAsAPersonWritesThem(t *testing.T) {
	root, away := t.TempDir(), t.TempDir()
	put(t, root, "haws/"+Name, "extends = \"../"+Name+"\"\n")
	put(t, root, Name, "extends = \"haws/"+Name+"\"\n")
	t.Chdir(root)
	_, err := Load(Name)
	assert.ErrorContains(t, err, "extend each other in a circle", "by whatever names they are called")
	put(t, root, Name, "")
	c, err := NewFinder().In("haws")
	require.NoError(t, err)
	assert.Equal(t, []string{filepath.Join("haws", Name), Name}, c.Files())
	deep := filepath.Join(away, "a", "b", "c", "d", "e", "f", "g", "h", "i", "j", "k", "l", "m", "n", "o", "p", "q", "r", "s", "t", "u", "v", "w", "x")
	require.NoError(t, os.MkdirAll(deep, 0o755))
	t.Chdir(deep)
	c, err = NewFinder().In(root)
	require.NoError(t, err)
	assert.Equal(t, []string{filepath.Join(root, Name)}, c.Files())
}

func TestPersonalSettingsAreTheLastResort(t *testing.T) {
	home := t.TempDir()
	t.Setenv("XDG_CONFIG_HOME", home)
	t.Setenv("HOME", home)
	t.Setenv("AppData", home)
	folder, err := os.UserConfigDir()
	require.NoError(t, err)
	root := t.TempDir()
	c, err := NewFinder().In(root)
	require.NoError(t, err)
	assert.Empty(t, c.Files())
	put(t, folder, "stitchproof/"+Name, "dialect = \"UK\"\n")
	c, err = NewFinder().In(root)
	require.NoError(t, err)
	assert.Equal(t, stitch.UK, c.For("x").Dialect)
}

func TestExampleChoosesNothing(t *testing.T) {
	c, err := Load(file1(t, string(Example)))
	require.NoError(t, err)
	assert.Empty(t, c.For("x").Choices)
	c, err = Load(file1(t, uncommented(t)))
	require.NoError(t, err)
	assert.NotEmpty(t, c.For("x").Choices)
}

func TestFixedSettings(t *testing.T) {
	fixed := &Config{}
	c, err := Always(fixed).In(t.TempDir())
	require.NoError(t, err)
	assert.Same(t, fixed, c)
}
