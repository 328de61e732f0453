package nearest

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestTo(t *testing.T) {
	known := []string{"count-mismatch", "count-missing", "row-over", "row-order", "off"}
	for word, want := range map[string]string{
		"count-mismach":  "count-mismatch",
		"countmissing":   "count-missing",
		"row-oder":       "row-over", // as near as row-order, and the first of them
		"row-ordre":      "row-order",
		"of":             "off",
		"count-mismatch": "count-mismatch",
	} {
		got, ok := To(word, known)
		assert.True(t, ok, word)
		assert.Equal(t, want, got, word)
	}
	for _, word := range []string{"ease", "x", "", "blackthorn-winter", "row-ease"} {
		_, ok := To(word, known)
		assert.False(t, ok, word)
	}
}

func TestSlips(t *testing.T) {
	assert.Equal(t, 0, Slips("haw", "haw"))
	assert.Equal(t, 1, Slips("haw", "hwa"))
	assert.Equal(t, 3, Slips("", "haw"))
	assert.Equal(t, 1, Slips("größe", "größer"))
	assert.Equal(t, 3, Slips("hip", "saw"))
}
