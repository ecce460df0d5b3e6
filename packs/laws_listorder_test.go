package packs_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Of what lies over each other the outer comes off first and goes back last, in one list as in
// several steps; what holds a part may be named behind it. Common practice, no source.
func TestListsAreWorkedOffAsWritten(t *testing.T) {
	t.Parallel()
	const parts = `parts:
  lid: {name: Lid}
  ring: {name: Ring, behind: [lid]}
  bush: {name: Bush, behind: [ring, pin]}
  pin: {name: Split pin}
containers: {C1: {name: Parts, kind: crate, keep: dry}}
steps:
  - section: All
    steps:
`
	turned := func(order []string, outer, inner string) bool {
		return slices.Index(order, outer) > slices.Index(order, inner)
	}
	toldWhere(t, "list-order", func(t *rapid.T) (string, bool) {
		off, on := anyOrder(t, "lid", "ring", "bush", "pin"), anyOrder(t, "lid", "ring", "bush", "pin")
		want := turned(off, "lid", "ring") || turned(off, "ring", "bush") || turned(on, "ring", "lid") || turned(on, "bush", "ring")
		return lawHead + parts +
			"      - {step: off, do: Take them off., remove: [" + strings.Join(off, ", ") + "], into: C1}\n" +
			"      - {step: back, do: Put them back., fit: [" + strings.Join(on, ", ") + "], from: C1}\n", want
	})
}
