// Matchmark prints the paper for taking a machine apart and putting it back
// exactly as it was: from one equipment definition a job pack of traveler,
// reassembly and register sheets, and the tags for what comes off.
//
// Usage:
//
//	matchmark check FILE... [--order]
//	matchmark print FILE [--out DIR] [--job FILE] [--paper a4|letter] [--sheets NAME,...] [--marks MARK,...]
//	matchmark unpack PACK.pdf [--out DIR]
//
// check lists what is wrong with each definition, composed on A4 and on Letter,
// or says nothing. print does the same and then writes the pack, the tags and
// the register. FILE may be - for standard input. unpack writes the files that a
// pack was made from.
//
// Exit code: 0 done, 1 the definition has problems, 2 wrong usage, 3 a file could
// not be read or written.
package main

import "os"

func main() {
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}
