package fabric_test

import (
	"strings"
	"testing"
)

const countedDir = "../../testdata/counted"

// Small pieces of one construction each, whose counts were worked by hand.
func TestConstructionsAreCounted(t *testing.T) {
	for name, text := range patternFiles(t, countedDir) {
		t.Run(name, func(t *testing.T) {
			if !strings.HasPrefix(text, "// ") {
				t.Error("the file does not say what it shows")
			}
			comesOut(t, text)
		})
	}
}
