package editors_test

import (
	"encoding/json"
	"os"
	"strings"
	"testing"

	"github.com/pelletier/go-toml/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Editors that are not started here have at least their settings read, strictly: a
// name that the editor's documentation does not have fails.

func strictly(t *testing.T, file string, into any) {
	content, err := os.Open(file)
	require.NoError(t, err)
	defer content.Close()
	if strings.HasSuffix(file, ".toml") {
		require.NoError(t, toml.NewDecoder(content).DisallowUnknownFields().Decode(into))
		return
	}
	decoder := json.NewDecoder(content)
	decoder.DisallowUnknownFields()
	require.NoError(t, decoder.Decode(into))
}

// hints is how the server's settings are written below "hints".
type hints struct {
	Running, Branches, Totals *bool
}

func (h hints) areAll(t *testing.T) {
	assert.NotNil(t, h.Running)
	assert.NotNil(t, h.Branches)
	assert.NotNil(t, h.Totals)
}

// The keys are those of https://docs.helix-editor.com/languages.html.
func TestHelixSettings(t *testing.T) {
	var helix struct {
		Servers map[string]struct {
			Command string
			Args    []string
			Config  struct {
				Stitchproof struct{ Hints hints }
			}
		} `toml:"language-server"`
		Languages []struct {
			Name, Scope   string
			FileTypes     []string `toml:"file-types"`
			CommentTokens string   `toml:"comment-tokens"`
			Roots         []string
			SoftWrap      struct{ Enable bool } `toml:"soft-wrap"`
			Servers       []string              `toml:"language-servers"`
		} `toml:"language"`
	}
	strictly(t, "helix/languages.toml", &helix)
	require.Len(t, helix.Languages, 1)
	language := helix.Languages[0]
	assert.Equal(t, []string{"crochet"}, language.FileTypes)
	require.Len(t, language.Servers, 1)
	server, named := helix.Servers[language.Servers[0]]
	require.True(t, named)
	assert.Equal(t, []string{"stitchproof", "lsp"}, append([]string{server.Command}, server.Args...))
	server.Config.Stitchproof.Hints.areAll(t)
}

// The keys are those of https://sublimelsp.github.io/LSP/client_configuration/.
func TestSublimeSettings(t *testing.T) {
	var sublime struct {
		Hints    bool   `json:"show_inlay_hints"`
		Semantic bool   `json:"semantic_highlighting"`
		Lenses   string `json:"show_code_lens"`
		Clients  map[string]struct {
			Enabled  bool
			Command  []string
			Selector string
			Settings map[string]bool
		}
	}
	strictly(t, "sublime/LSP.sublime-settings", &sublime)
	client := sublime.Clients["stitchproof"]
	assert.True(t, client.Enabled)
	assert.Equal(t, []string{"stitchproof", "lsp"}, client.Command)
	assert.Equal(t, "text.crochet", client.Selector, "the scope of crochet.sublime-syntax")
	assert.Contains(t, client.Settings, "stitchproof.hints.running")
}

// The keys are those of
// https://docs.kde.org/trunk5/en/kate/kate/kate-application-plugin-lspclient.html.
func TestKateSettings(t *testing.T) {
	var kate struct {
		Servers map[string]struct {
			Command               []string
			Root                  string
			HighlightingModeRegex string
			InitializationOptions struct{ Hints hints }
		}
	}
	strictly(t, "kate/settings.json", &kate)
	server := kate.Servers["crochet"]
	assert.Equal(t, []string{"stitchproof", "lsp"}, server.Command)
	assert.Equal(t, "^Crochet$", server.HighlightingModeRegex, "the name in crochet.xml")
	server.InitializationOptions.Hints.areAll(t)
}

// The keys are those of https://zed.dev/docs/configuring-languages.
func TestZedSettings(t *testing.T) {
	var zed struct {
		FileTypes map[string][]string `json:"file_types"`
		Languages map[string]struct {
			Servers   []string `json:"language_servers"`
			Formatter string
			SoftWrap  string `json:"soft_wrap"`
		}
		Inlay struct {
			Enabled bool
			Other   bool `json:"show_other_hints"`
		} `json:"inlay_hints"`
		Servers map[string]struct {
			Binary struct {
				Path      string
				Arguments []string
			}
			Options struct{ Hints hints } `json:"initialization_options"`
		} `json:"lsp"`
	}
	strictly(t, "zed/settings.json", &zed)
	for language := range zed.FileTypes {
		require.Contains(t, zed.Languages, language)
	}
	servers := zed.Languages["Crochet"].Servers
	require.Len(t, servers, 1)
	server, named := zed.Servers[servers[0]]
	require.True(t, named)
	assert.Equal(t, []string{"lsp"}, server.Binary.Arguments)
	assert.True(t, strings.HasSuffix(server.Binary.Path, "/stitchproof"))
	assert.True(t, zed.Inlay.Enabled && zed.Inlay.Other, "the counts are neither types nor parameters")
	server.Options.Hints.areAll(t)
}

// The keys are those of https://zed.dev/docs/extensions/languages.
func TestZedExtension(t *testing.T) {
	var manifest struct {
		ID, Name, Description, Version string
		Schema                         int `toml:"schema_version"`
		Authors                        []string
		Grammars                       map[string]struct{ Repository, Rev, Path string }
		Servers                        map[string]struct {
			Name      string
			Languages []string
		} `toml:"language_servers"`
	}
	strictly(t, "zed/extension.toml", &manifest)
	var language struct {
		Name, Grammar string
		Suffixes      []string `toml:"path_suffixes"`
		Comments      []string `toml:"line_comments"`
		Brackets      []struct {
			Start, End     string
			Close, Newline bool
		}
	}
	strictly(t, "zed/languages/crochet/config.toml", &language)
	assert.Equal(t, []string{language.Name}, manifest.Servers["stitchproof"].Languages)
	assert.Equal(t, []string{"crochet"}, language.Suffixes)
	require.Contains(t, manifest.Grammars, language.Grammar)
	assert.FileExists(t, strings.TrimPrefix(manifest.Grammars[language.Grammar].Path, "editors/")+"/src/parser.c")
}

// What can be chosen in VS Code is what the server reads, the program's place and the
// status bar aside.
func TestVSCodeSettings(t *testing.T) {
	var manifest struct {
		Contributes struct {
			Configuration struct {
				Properties map[string]struct{ Default any }
			}
		}
	}
	content, err := os.ReadFile("vscode/package.json")
	require.NoError(t, err)
	require.NoError(t, json.Unmarshal(content, &manifest))
	chosen := map[string]any{}
	for name, property := range manifest.Contributes.Configuration.Properties {
		chosen[name] = property.Default
	}
	assert.Equal(t, map[string]any{
		"stitchproof.path": "stitchproof", "stitchproof.tally": true, "stitchproof.lenses": true,
		"stitchproof.hints.running": true, "stitchproof.hints.branches": true, "stitchproof.hints.totals": true,
	}, chosen)
}

// A lock file names packages by version and checksum only, not where one person's
// registry is.
func TestLockNamesNoRegistry(t *testing.T) {
	content, err := os.ReadFile("vscode/package-lock.json")
	require.NoError(t, err)
	assert.NotContains(t, string(content), `"resolved"`)
	assert.Contains(t, string(content), `"integrity"`)
}
