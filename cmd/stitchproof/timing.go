package main

import (
	"cmp"
	"fmt"
	"io"
	"maps"
	"slices"
	"sync"
	"time"
)

// timing adds up how long each rule took, on files that are checked at the same
// time.
type timing struct {
	mu   sync.Mutex
	took map[string]time.Duration
}

// adder is what is told of each rule, nil where nobody asked for it.
func (t *timing) adder() func(string, time.Duration) {
	if t == nil {
		return nil
	}
	return func(what string, d time.Duration) {
		t.mu.Lock()
		defer t.mu.Unlock()
		if t.took == nil {
			t.took = map[string]time.Duration{}
		}
		t.took[what] += d
	}
}

// brief is how long what is not worth a line of its own takes at most.
const brief = 50 * time.Microsecond

// write tells what took how long in milliseconds, the slowest first, and what was done
// in no time together.
func (t *timing) write(w io.Writer) {
	if t == nil {
		return
	}
	names := slices.SortedFunc(maps.Keys(t.took), func(a, b string) int {
		return cmp.Or(cmp.Compare(t.took[b], t.took[a]), cmp.Compare(a, b))
	})
	line := func(took time.Duration, what string) {
		fmt.Fprintf(w, "%10.1f ms  %s\n", float64(took.Microseconds())/1000, what)
	}
	rest, others := time.Duration(0), 0
	for _, name := range names {
		if took := t.took[name]; took < brief {
			rest, others = rest+took, others+1
		} else {
			line(took, name)
		}
	}
	if others > 0 {
		line(rest, fmt.Sprintf("%d others, each in less than %.2f ms", others, float64(brief.Microseconds())/1000))
	}
}
