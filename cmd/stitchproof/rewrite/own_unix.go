//go:build unix

package rewrite

import (
	"os"
	"syscall"
)

// own gives a new file the owner of the old one, where this user may: what is
// run by an administrator must not take a writer's file away.
func own(f *os.File, old os.FileInfo) {
	if stat, ok := old.Sys().(*syscall.Stat_t); ok {
		_ = f.Chown(int(stat.Uid), int(stat.Gid))
	}
}
