//go:build unix

package inputs

import (
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestPipesAreLeftAlone(t *testing.T) {
	tree(t, map[string]string{"haw.crochet": ""})
	require.NoError(t, syscall.Mkfifo("pipe.crochet", 0o644))
	got, _ := find(t, Finder{}, ".")
	assert.Equal(t, []string{"haw.crochet"}, got)
	got, _ = find(t, Finder{}, "*.crochet")
	assert.Equal(t, []string{"haw.crochet"}, got)
	got, _ = find(t, Finder{}, "pipe.crochet")
	assert.Equal(t, []string{"pipe.crochet"}, got, "unless one is named")
}
