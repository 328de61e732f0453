// Command speed measures how fast stitchproof is, and says it as ratios to what the
// same machine does in the same run: an empty request's round trip for what an editor
// waits for, the standard library's parser of Go on as many bytes for what is read in
// bulk.
//
//	go run ./cmd/speed                  all of it, some minutes
//	go run ./cmd/speed -only editor     one part: editor, batch, start, growth, memory
//	go run ./cmd/speed -plots cmd/speed also draws how time grows with size
//
// It asserts nothing: how fast a run is depends on what else the machine does.
package main

import (
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"text/tabwriter"
	"time"
)

var (
	only  = flag.String("only", "", "measure one part: editor, batch, start, growth or memory")
	plots = flag.String("plots", "", "draw how time grows with size, into this folder")
	edits = flag.Int("edits", 2_000, "how many edits to watch the memory over")
)

// parts are what can be measured.
var parts = []struct {
	name    string
	measure func(out *tabwriter.Writer, program string) error
}{
	{"editor", measureEditor},
	{"batch", measureBatch},
	{"start", measureStart},
	{"growth", measureGrowth},
	{"memory", measureMemory},
}

func main() {
	flag.Parse()
	if err := run(); err != nil {
		fmt.Fprintln(os.Stderr, "speed:", err)
		os.Exit(1)
	}
}

// run builds the program and measures it.
func run() error {
	folder, err := os.MkdirTemp("", "speed")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	program := filepath.Join(folder, "stitchproof")
	build := exec.Command("go", "build", "-o", program, "./cmd/stitchproof")
	build.Env = append(os.Environ(), "CGO_ENABLED=0") // as it is released
	if said, err := build.CombinedOutput(); err != nil {
		return fmt.Errorf("building: %w: %s", err, said)
	}
	known := false
	out := tabwriter.NewWriter(os.Stdout, 0, 8, 2, ' ', 0)
	for _, p := range parts {
		if *only != "" && *only != p.name {
			continue
		}
		known = true
		fmt.Fprintf(out, "\n%s\n", p.name)
		if err := p.measure(out, program); err != nil {
			return fmt.Errorf("%s: %w", p.name, err)
		}
		out.Flush()
	}
	if !known {
		return fmt.Errorf("there is no part %q", *only)
	}
	return nil
}

// median is the middle of some times of the same thing.
func median(times []time.Duration) time.Duration {
	slices.Sort(times)
	return times[len(times)/2]
}

// several measures something a number of times and gives the middle.
func several(n int, do func() time.Duration) time.Duration {
	times := make([]time.Duration, n)
	for i := range times {
		times[i] = do()
	}
	return median(times)
}

// timed is how long something takes.
func timed(do func()) time.Duration {
	start := time.Now()
	do()
	return time.Since(start)
}
