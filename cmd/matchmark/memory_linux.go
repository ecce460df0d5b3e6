package main

import (
	"runtime"
	"syscall"
)

// inLargePages has the heap lie in pages of 2 MB where the kernel gives them to who asks
// (madvise(2), MADV_HUGEPAGE). A run of a second else touches some ten thousand pages of 4 kB
// for the first time, each of them a trap into the kernel: a third of its time on a machine
// that is itself a guest. The runtime of Go does not ask; but it uses room again that it has
// had before, so room is taken, asked for, and given back untouched. Where the kernel will
// not, nothing is lost: hence no error.
func inLargePages(size int) {
	room := make([]byte, size)
	_ = syscall.Madvise(room, syscall.MADV_HUGEPAGE)
	runtime.KeepAlive(room)
	room = nil
	runtime.GC()
}
