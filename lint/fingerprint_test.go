package lint

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
)

func fingerprints(t *testing.T, pattern string) []string {
	t.Helper()
	text := source.New(pattern)
	return Fingerprints(text, Analyze(text).Findings)
}

func TestFingerprints(t *testing.T) {
	pattern := haw + wrongRow + end
	was := fingerprints(t, pattern)
	require.Len(t, was, 1)
	assert.Len(t, was[0], 32)
	for name, moved := range map[string]string{
		"lines before":    "// mine\n\n" + pattern,
		"other line ends": strings.ReplaceAll(pattern, "\n", "\r\n"),
		"other spacing":   strings.Replace(pattern, "Ch 1, 2 sc", "Ch 1,  2 sc", 1),
		"a mark":          "\ufeff" + pattern,
	} {
		assert.Equal(t, was, fingerprints(t, moved), name)
	}
	assert.NotEqual(t, was, fingerprints(t, strings.Replace(pattern, "14 sc", "15 sc", 1)), "another row is another finding")

	twice := haw + wrongRow + end + "\n" + strings.Replace(strings.Split(haw, "\n\n")[1], "Piece: Haw", "Piece: Hip", 1) + wrongRow + end
	two := fingerprints(t, twice)
	require.Len(t, two, 2)
	assert.Equal(t, was[0], two[0])
	assert.NotEqual(t, two[0], two[1], "two findings of the same words are told apart")
}
