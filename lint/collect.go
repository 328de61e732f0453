package lint

import (
	"os"
	"runtime/debug"
)

// How often memory is collected, by how much has come on top of what was left the last
// time, in parts of a hundred. Where patterns are looked at one after the other little
// of one is left when the next is begun, so collecting as often as where much stays
// costs a fifth of the time and saves a few megabytes. A server keeps much for long,
// and throws little away at a keystroke.
const (
	batchPercent  = 400
	serverPercent = 50
	// batchMemory is from where on it is collected as hard as it must be.
	batchMemory = 1 << 30
)

// ForBatch makes the process ready to look at patterns and end, unless the environment
// says how memory is to be collected.
func ForBatch() {
	collect(batchPercent)
	if os.Getenv("GOMEMLIMIT") == "" {
		debug.SetMemoryLimit(batchMemory)
	}
}

// ForServer makes the process ready to keep patterns open for as long as someone works
// on them, in the same way.
func ForServer() { collect(serverPercent) }

func collect(percent int) {
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(percent)
	}
}
