package syntax

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestKeyWords(t *testing.T) {
	for key := range headerKeys {
		assert.LessOrEqual(t, len(strings.Fields(key)), mostKeyWords, key)
	}
}
