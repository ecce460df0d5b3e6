// Package proofread looks at a definition as a careful colleague would who reads it
// beside the job made from it: at limits and instruments, names and words. It
// needs no order of work; what does stands in proof.
package proofread

import "matchmark/packs/names"

// A proofreader holds a job with its definition.
type proofreader struct{ *names.Index }

// Limits looks at the tables of limits of all builds, before one machine is chosen.
func Limits(ix *names.Index) {
	(&proofreader{ix}).checkTables()
}

// All looks at everything else. Warnings of what may have been forgotten make sense
// only of a definition that holds together: one with errors has holes where they
// stand.
func All(ix *names.Index) {
	b := &proofreader{ix}
	b.checkHeadings()
	b.checkRoles()
	b.checkSays()
	b.checkReadings()
	b.checkInputs()
	b.checkTwoMovements()
	b.checkFaces()
	if b.Problems.Errors() == 0 {
		b.checkNamed()
		b.checkWeighed()
		b.checkOdd()
		b.checkGuardNames()
		b.checkSpares()
	}
}
