package paths

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
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
