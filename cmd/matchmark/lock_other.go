//go:build !unix

package main

// lock reports that the system has no lock for a folder.
func lock(string) (unlock func(), alone bool) { return nil, false }
