package heat

import "slices"

// A kept is a moment of bodies to which they can be taken back: runs that begin alike are
// followed once to where they part, and bodies are cut up once for all powers that are tried.
type kept struct {
	t, before []float64
	lastStep  float64
	books     books
	closes    float64
	power     float64
	depth     float64
	clock     stepper // of the run, as it was then
}

// keep notes the moment that a run is at.
func (b *bodies) keep(clock *stepper) kept {
	return kept{
		t: slices.Clone(b.t), before: slices.Clone(b.before), lastStep: b.lastStep,
		books: books{b.clock, b.in, b.lost}, closes: b.closes, power: b.power, depth: b.depth, clock: *clock,
	}
}

// back takes the bodies to a moment before the hub was drawn off, and gives the clock of the
// run that goes on from there.
func (b *bodies) back(k kept) *stepper {
	copy(b.t, k.t)
	copy(b.guess, k.t)
	copy(b.before, k.before)
	b.lastStep = k.lastStep
	b.clock, b.in, b.lost = k.books.clock, k.books.in, k.books.lost
	b.closes, b.apart = k.closes, false
	b.putPower(k.power, k.depth)
	b.closeJoints()
	b.closeSkin()
	return &k.clock
}
