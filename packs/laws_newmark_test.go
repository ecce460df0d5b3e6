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
