package lint

import (
	"os"
	"runtime/debug"
)

// How memory is collected while patterns are looked at one after the other: little of
// one is left when the next is begun, so collecting it as often as where much stays
// costs a fifth of the time and saves a few megabytes. From batchMemory on it is
// collected as hard as it must be.
const (
	batchPercent = 400
	batchMemory  = 1 << 30
)

// ForBatch makes the process ready to look at patterns and end, unless the environment
// says how memory is to be collected.
func ForBatch() {
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(batchPercent)
	}
	if os.Getenv("GOMEMLIMIT") == "" {
		debug.SetMemoryLimit(batchMemory)
	}
}
