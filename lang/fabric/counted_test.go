package fabric_test

import (
	"strings"
	"testing"

	"stitchproof/lang/fabric"
)

const countedDir = "../../testdata/counted"

// Small pieces of one construction each, whose counts were worked by hand.
func TestConstructionsAreCounted(t *testing.T) {
	for name, text := range patternFiles(t, countedDir) {
		t.Run(name, func(t *testing.T) {
			if !strings.HasPrefix(text, "// ") {
				t.Error("the file does not say what it shows")
			}
			stated := 0
			for _, r := range allRows(worked(text)) {
				for _, tally := range r.Tallies {
					for _, fault := range tally.Faults {
						t.Errorf("fault %+v: %s", fault, r.Tree.Text)
					}
					if r.Stated == nil {
						continue
					}
					stated++
					if !tally.Known || tally.Agrees() != fabric.Agrees {
						t.Errorf("stated count not met, %+v: %s", tally.Compared, r.Tree.Text)
					}
				}
			}
			if stated == 0 {
				t.Error("the file states no count")
			}
		})
	}
}
