package lint

import (
	"os"
	"runtime/debug"
	"runtime/metrics"
)

// How often memory is collected, by how much has come on top of what was left the last
// time, in parts of a hundred. Where patterns are looked at one after the other little
// of one is left when the next is begun, so collecting as often as where much stays
// costs a fifth of the time and saves a few megabytes.
const (
	batchPercent = 400
	// batchMemory is from where on it is collected as hard as it must be.
	batchMemory = 1 << 30
)

// A server keeps much for long: of what it keeps, half may come on top. A keystroke in a
// pattern throws two megabytes away: while little is kept, serverRoom may come on top, or
// collecting would take longer than looking at the pattern.
const (
	serverPercent = 50
	serverRoom    = 12 << 20
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
// on them, in the same way. It goes by what is kept, and is to be called again where that
// may be much more or much less.
func ForServer() {
	live := []metrics.Sample{{Name: "/gc/heap/live:bytes"}}
	metrics.Read(live)
	kept := max(live[0].Value.Uint64(), 1)
	collect(int(max(serverPercent, min(batchPercent, serverRoom*100/kept))))
}

func collect(percent int) {
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(percent)
	}
}
