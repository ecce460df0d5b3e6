//go:build unix

package main

import (
	"os"
	"syscall"
)

// lock waits until no other print writes into a folder. It reports whether the system
// can tell, which some network disks cannot. The lock ends with the program, killed or not.
func lock(dir string) (unlock func(), alone bool) {
	d, err := os.Open(dir)
	if err != nil {
		return nil, false
	}
	if err := syscall.Flock(int(d.Fd()), syscall.LOCK_EX); err != nil {
		d.Close()
		return nil, false
	}
	return func() { d.Close() }, true
}
