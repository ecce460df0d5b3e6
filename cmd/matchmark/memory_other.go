//go:build !linux

package main

// largePages does nothing here: only Linux is asked for them.
func largePages() {}
