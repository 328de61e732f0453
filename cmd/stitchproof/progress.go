package main

import (
	"fmt"
	"io"
	"sync"
	"time"
)

const (
	// patience is how long a run may take before it says how far it is.
	patience = 500 * time.Millisecond
	// pace is how often it says so.
	pace = 100 * time.Millisecond
)

// progress tells a person at a terminal how far a long run is. A nil one tells
// nobody.
type progress struct {
	w    io.Writer
	mu   sync.Mutex
	all  int
	done int
	next time.Time // when to tell again
	told int       // how long what was told is
}

// progressOn tells on w, if a person looks at it.
func progressOn(w io.Writer, quiet bool) *progress {
	if quiet || !isTerminal(w) {
		return nil
	}
	return &progress{w: w}
}

func (p *progress) start(all int) {
	if p != nil {
		p.all, p.next = all, time.Now().Add(patience)
	}
}

// step says that one more file is checked.
func (p *progress) step() {
	if p == nil {
		return
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	p.done++
	if now := time.Now(); now.After(p.next) {
		n, _ := fmt.Fprintf(p.w, "\r%d of %d files checked", p.done, p.all)
		p.next, p.told = now.Add(pace), n-1
	}
}

// end takes the line back, so that the report stands alone.
func (p *progress) end() {
	if p != nil && p.told > 0 {
		fmt.Fprintf(p.w, "\r%*s\r", p.told, "")
	}
}
