package lsp

import (
	"context"
	"errors"
	"os"
	"runtime"
	"runtime/debug"
	"syscall"
	"time"
)

// parentEvery is how often the process that started the server is looked for.
const parentEvery = 2 * time.Second

// followParent ends the session once the process is gone that the client names as
// the one that started the server. One that cannot be seen from the beginning, as
// from within a container, is not followed.
func (s *server) followParent(ctx context.Context, id *int32) {
	if id == nil || !alive(int(*id)) {
		return
	}
	s.beside(func() {
		tick := time.NewTicker(parentEvery)
		defer tick.Stop()
		for alive(int(*id)) {
			select {
			case <-tick.C:
			case <-s.left:
				return
			case <-ctx.Done():
				return
			}
		}
		s.log.Printf("process %d, which started the server, is gone", *id)
		s.leave()
	})
}

// alive tells whether a process is there.
func alive(id int) bool {
	if id <= 0 {
		return false
	}
	p, err := os.FindProcess(id)
	if err != nil {
		return false
	}
	defer func() { _ = p.Release() }()
	if runtime.GOOS == "windows" {
		return true // where only one that is there is found
	}
	err = p.Signal(syscall.Signal(0))
	return err == nil || errors.Is(err, os.ErrPermission)
}

// beside does something that no message waits for. A panic there is noted, and
// costs nothing else.
func (s *server) beside(work func()) {
	go func() {
		defer func() {
			if broken := recover(); broken != nil {
				s.log.Printf("something broke down: %v\n%s", broken, debug.Stack())
			}
		}()
		work()
	}()
}
