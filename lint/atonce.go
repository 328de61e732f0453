package lint

import (
	"fmt"
	"runtime"
	"runtime/debug"
	"sync"
	"sync/atomic"
)

// atOnce does something n times, as many at once as there are processors. Where doing it
// panics, so does atOnce, with a breakdown.
func atOnce(n int, do func(i int)) {
	var next atomic.Int64
	var broken atomic.Pointer[breakdown]
	work := func() {
		defer func() {
			if why := recover(); why != nil {
				broken.CompareAndSwap(nil, &breakdown{why, debug.Stack()})
			}
		}()
		for i := int(next.Add(1)) - 1; i < n; i = int(next.Add(1)) - 1 {
			do(i)
		}
	}
	var all sync.WaitGroup
	for range min(n, runtime.GOMAXPROCS(0)) - 1 {
		all.Go(work)
	}
	work()
	all.Wait()
	if b := broken.Load(); b != nil {
		panic(b)
	}
}

// breakdown is a panic that was met while several things were done at once.
type breakdown struct {
	why   any
	stack []byte // where it was
}

// String says why, as the panic would.
func (b *breakdown) String() string { return fmt.Sprint(b.why) }

// stackOf is where a panic was, for whoever recovers it.
func stackOf(broken any) string {
	if b, ok := broken.(*breakdown); ok {
		return string(b.stack)
	}
	return string(debug.Stack())
}
