// Matchmark prints the paper for taking a machine apart and putting it back
// exactly as it was: from one equipment definition a job pack of traveler,
// reassembly and register sheets, and the tags for what comes off.
//
// Usage:
//
//	matchmark new NAME [--like STARTER] [--from PARTS.csv]
//	matchmark check FILE... [--job FILE] [--site FILE] [--order] [--json|--sarif]
//	matchmark print FILE [--out DIR|-] [--job FILE] [--jobs CSV|DIR] [--paper a4|letter] [--sheets NAME,...] [--marks MARK,...]
//	matchmark fill FILE --readings FILE...
//	matchmark report FILE --readings FILE...
//	matchmark unpack PACK.pdf [--out DIR]
//	matchmark watch FILE
//	matchmark explain WORD...
//	matchmark schema [KIND]
//
// "matchmark help COMMAND" tells more. check lists what is wrong with each definition,
// composed on A4 and on Letter, or says nothing. print does the same and then writes the
// pack, the tags, the register and the file for the readings. FILE may be - for standard
// input.
//
// Exit code: 0 done, 1 the definition has problems, 2 wrong usage, 3 a file could
// not be read or written.
package main

import (
	"os"
	"runtime/debug"
)

// A run is short and makes much that is soon thrown away: memory is tidied up a sixteenth as
// often as usual, until it is mostMemory that is held.
const (
	tidied     = 1600 // percent
	mostMemory = 150 << 20
)

func main() {
	debug.SetGCPercent(tidied)
	debug.SetMemoryLimit(mostMemory)
	if len(os.Args) > 2 { // a command with its file
		largePages()
	}
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}
