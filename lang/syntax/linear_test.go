package syntax_test

import (
	"runtime"
	"strings"
	"testing"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// TestLinear holds reading to work that grows with the text: a row four times
// as long takes about four times the memory on the way, whatever its shape.
func TestLinear(t *testing.T) {
	for _, unit := range []string{"sc ", "sc in next st ", "2 (", "[sc, ", "* sc ", "2 dc, ", "rep from * around, ending with sc, ", "beech "} {
		work := func(n int) uint64 {
			text := source.New("Row 1: " + strings.Repeat(unit, n) + "2 dc with ch 1 between each st in next sp")
			syntax.Read(text) // its wordings are known from here on
			var before, after runtime.MemStats
			runtime.ReadMemStats(&before)
			syntax.Read(text)
			runtime.ReadMemStats(&after)
			return after.TotalAlloc - before.TotalAlloc
		}
		if half, whole := work(2_000), work(8_000); whole > 6*half {
			t.Errorf("%q: %d bytes for 2,000, %d for 8,000", unit, half, whole)
		}
	}
}
