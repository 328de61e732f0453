package baseline

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

const wrong = "Pattern: Haw\nTerms: US\n\nPiece: Haw\nRnd 1: 6 sc in magic ring; sl st in first sc to join. (7 sc)\nFasten off.\n"

func look(pattern string) (*source.Text, []lint.Finding) {
	text := source.New(pattern)
	return text, lint.Analyze(text).Findings
}

// kept writes a baseline of one file and reads it back.
func kept(t *testing.T, folder, name, pattern string) *Baseline {
	t.Helper()
	path := filepath.Join(folder, "baseline.json")
	w, err := NewWriter(path)
	require.NoError(t, err)
	text, found := look(pattern)
	require.Len(t, found, 1)
	w.Add(filepath.Join(folder, name), text, found)
	assert.Equal(t, 1, w.Len())
	data, err := w.Bytes()
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(path, data, 0o644))
	b, err := Load(path)
	require.NoError(t, err)
	return b
}

func TestOldFindingsAreSetAside(t *testing.T) {
	folder := t.TempDir()
	b := kept(t, folder, "haws/haw.crochet", wrong)
	at := func(name, pattern string) int {
		text, found := look(pattern)
		return len(b.Filter(filepath.Join(folder, name), text, found))
	}
	assert.Zero(t, at("haws/haw.crochet", wrong))
	assert.Zero(t, at("haws/haw.crochet", "// a line more\n\n"+wrong), "where the line moves")
	assert.Equal(t, 1, at("haws/haw.crochet", strings.Replace(wrong, "7 sc", "8 sc", 1)), "another fault is new")
	assert.Equal(t, 1, at("hip.crochet", wrong), "another file's is new")
	t.Chdir(filepath.Join(folder))
	text, found := look(wrong)
	assert.Empty(t, b.Filter(filepath.Join("haws", "haw.crochet"), text, found), "wherever the program runs")
}

// What could hurt somebody is told every day.
func TestCautionsAreNotSetAside(t *testing.T) {
	path := filepath.Join(t.TempDir(), "baseline.json")
	text, found := look("Pattern: Baby blanket\nTerms: US\n\nPiece: Haw\nRnd 1: 6 sc in magic ring; sl st in first sc to join. (7 sc)\nFasten off.\n")
	require.Len(t, found, 2)
	w, err := NewWriter(path)
	require.NoError(t, err)
	w.Add(path, text, found)
	assert.Equal(t, 1, w.Len())

	// Nor by an entry that names one.
	w.file.Files["baby.crochet"] = []entry{{"sleep-loose", lint.Fingerprints(text, found)[0]}}
	data, err := w.Bytes()
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(path, data, 0o644))
	b, err := Load(path)
	require.NoError(t, err)
	left := b.Filter(filepath.Join(filepath.Dir(path), "baby.crochet"), text, found)
	assert.Equal(t, found, left)
}

func TestGone(t *testing.T) {
	folder := t.TempDir()
	b := kept(t, folder, "haw.crochet", wrong)
	assert.Zero(t, b.Gone(), "of a file that was not looked at nobody knows")
	text, found := look(strings.Replace(wrong, "7 sc", "6 sc", 1))
	b.Filter(filepath.Join(folder, "haw.crochet"), text, found)
	assert.Equal(t, 1, b.Gone())
	text, found = look(wrong)
	b.Filter(filepath.Join(folder, "haw.crochet"), text, found)
	assert.Zero(t, b.Gone())
}

func TestNone(t *testing.T) {
	var b *Baseline
	text, found := look(wrong)
	assert.Equal(t, found, b.Filter("haw.crochet", text, found))
	assert.Zero(t, b.Gone())
}

func TestFailuresAreNotSetAside(t *testing.T) {
	w, err := NewWriter("x")
	require.NoError(t, err)
	text := source.New("")
	w.Add("haw.crochet", text, lint.Unread(text, lint.FileUnreadable, "gone").Findings)
	assert.Zero(t, w.Len())
}

func TestWhatIsNoBaseline(t *testing.T) {
	for text, want := range map[string]string{
		"":                             "is no baseline",
		`{"version": 2, "files": {}}`:  "version 2",
		`{"version": 1, "rules": {} }`: "is no baseline",
	} {
		name := filepath.Join(t.TempDir(), "b.json")
		require.NoError(t, os.WriteFile(name, []byte(text), 0o644))
		_, err := Load(name)
		assert.ErrorContains(t, err, want)
	}
	_, err := Load(filepath.Join(t.TempDir(), "nowhere"))
	assert.ErrorIs(t, err, os.ErrNotExist)
}
