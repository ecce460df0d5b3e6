//go:build !linux

package main

// inLargePages is for Linux alone.
func inLargePages(int) {}
