package packs_test

import (
	"maps"
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
	head := lawHead + parts
	for list, key := range map[string]string{"remove: [ring, lid], into: C1": "remove:", "fit: [lid, ring], from: C1": "fit:", "fit-for-now: [lid, ring]": "fit-for-now:", "take-out-again: [ring, lid]": "take-out-again:"} {
		before := map[string]string{"remove:": "", "fit:": "remove: [lid, ring], into: C1", "fit-for-now:": "remove: [lid, ring], into: C1", "take-out-again:": "remove: [lid, ring], into: C1, fit-for-now: [ring, lid]"}[key]
		text := head
		if before != "" {
			text += "      - {step: before, do: Do it., " + before + "}\n"
		}
		_, problems := loadLaw(text + "      - {step: now, do: Do it., " + list + "}\n")
		found := 0
		for _, p := range problems {
			if p.Code == "list-order" {
				if found++; !strings.HasSuffix(p.Help[0], " in "+key) {
					t.Errorf("%s: the help is %q", list, p.Help[0])
				}
			}
		}
		if found != 1 {
			t.Errorf("%s: told %d times: %v", list, found, problems)
		}
	}
	_, problems := loadLaw(lawHead + strings.Replace(parts, "behind: [ring, pin]", "behind: [ring, pin, lid]", 1) + "      - {step: off, do: Take them off., remove: [bush, ring, lid], into: C1}\n")
	told := map[string]int{}
	for _, p := range problems {
		if p.Code == "list-order" {
			part, _, _ := strings.Cut(p.Message, " comes off ")
			told[part]++
		}
	}
	if most := slices.Max(append(slices.Collect(maps.Values(told)), 0)); len(told) != 2 || most != 1 {
		t.Errorf("told of one part several times: %v", problems)
	}
	toldWhere(t, "list-order", func(t *rapid.T) (string, bool) {
		off, on := anyOrder(t, "lid", "ring", "bush", "pin"), anyOrder(t, "lid", "ring", "bush", "pin")
		want := turned(off, "lid", "ring") || turned(off, "ring", "bush") || turned(on, "ring", "lid") || turned(on, "bush", "ring")
		return lawHead + parts +
			"      - {step: off, do: Take them off., remove: [" + strings.Join(off, ", ") + "], into: C1}\n" +
			"      - {step: back, do: Put them back., fit: [" + strings.Join(on, ", ") + "], from: C1}\n", want
	})
}
