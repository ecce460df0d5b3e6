package packs_test

import (
	"strings"
	"testing"
)

// The mark of an old coupling half was taken for one on the new half: it goes back by a mark
// that nobody has made on it. One that is carried over, made on the new half or made by its
// maker, and what goes back itself, are not told.
func TestANewPartHasNoMarkOfTheOld(t *testing.T) {
	t.Parallel()
	const (
		takes  = "      - {step: off, do: Match mark the half and draw it off., match-marks: [half], remove: [half], into: scrap, back: \"BACK\"}\n"
		words  = "      - {step: off, do: \"Chalk the half, draw it off.\", remove: [half], into: scrap, back: \"BACK\"}\n"
		onward = "  - reverse: [Open]\n"
	)
	def := func(renew, step, between, back string) string {
		return renew + "}\ncontainers:\n  C1: {name: Coupling half, kind: box, keep: dry}\nsteps:\n  - section: Open\n    steps:\n" + strings.Replace(step, "BACK", back, 1) + between + onward
	}
	kept := func(step string) string { return strings.ReplaceAll(step, "into: scrap", "into: C1") }
	toldJust(t, "unmarked", lawHead+"parts:\n  half: {name: Coupling half, thread: M20x1.5PUT", []warned{
		{def(", renew: always", takes, "", "Push the new half home, marks in line."), true},
		{def(", renew: always", words, "", "Push the new half home, marks in line."), true},
		{def(", renew: always", takes, "", "Push the new half on to its mark."), true},
		{def("", kept(takes), "", "Push the half home, marks in line."), false},
		{def("", kept(words), "", "Push the half home, marks in line."), false},
		{def(", renew: always", takes, "", "Push the new half home."), false},
		{def(", renew: always", takes, "", "Push the new half home, maker's marks in line."), false},
		{def(", renew: always", takes, "      - {step: new, do: Punch the new half as the old one was., where: bench}\n", "Push the half home, marks in line."), false},
		{def(", renew: always", takes, "      - {step: new, do: Carry the mark over to the new half., where: bench}\n", "Push the half home, marks in line."), false},
		{def(", renew: always", takes, "      - {step: new, do: Transfer the marks from the old half to the new one., where: bench}\n", "Push the half home, marks in line."), false},
		{def(", renew: always", takes, "", "Copy the mark from the old half, push the new one home, marks in line."), false},
		{def(", renew: always", words, "", "Scribe the new half by the old one, push it home, marks in line."), false},
	})
}

// A mark stands on both parts of its joint. Where the one across it is renewed, the old part has
// its half of the mark and the new one has none, whichever of the two is named first; one that is
// made on the new part is not told.
func TestAcrossANewPartIsNoMark(t *testing.T) {
	t.Parallel()
	def := func(mark, between, back string) string {
		return `parts: {motor-hub: {name: Hub of the motor}, pump-hub: {name: Hub of the pump, renew: always}}
containers:
  C1: {name: Hub, kind: box, keep: dry}
steps:
  - section: Open
    steps:
      - {step: motor, do: Mark the hubs and draw the motor hub off., match-marks: [` + mark + `], remove: [motor-hub], into: C1, back: "` + back + `"}
      - {step: pump, after: {motor: it is in the way}, do: Draw the pump hub off., remove: [pump-hub], into: scrap, back: Push the new pump hub home.}
` + between + "  - reverse: [Open]\n"
	}
	const marks = "Push the motor hub on, marks in line."
	toldJust(t, "unmarked", lawHead+"PUT", []warned{
		{def("{motor-hub: pump-hub}", "", marks), true},
		{def("{motor-hub: pump-hub}", "      - {step: new, do: Punch the new pump hub by the old one., where: bench}\n", marks), false},
		{def("{motor-hub: pump-hub}", "", "Push the motor hub on."), false},
		{def("{pump-hub: motor-hub}", "", marks), true},
		{def("{pump-hub: motor-hub}", "      - {step: new, do: Punch the new pump hub by the old one., where: bench}\n", marks), false},
	})
}
