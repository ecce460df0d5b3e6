package liftsheet

import (
	"testing"

	"matchmark/packs/job"
)

// A cover is taken off and stays on the hook, the next step carries it to its blocks; at the
// end it is brought over its seat in one step and let down in the next. The stop before it
// travels stood struck at the step that carries it away, and nobody looked whether the way
// was clear.
func TestStopBeforeItTravels(t *testing.T) {
	cover := &job.Part{Key: "cover"}
	off, away, over, down := &job.Step{Index: 0}, &job.Step{Index: 1}, &job.Step{Index: 2}, &job.Step{Index: 3}
	l := &job.Lift{Parts: []*job.Part{cover}, Steps: []*job.Step{off, away, over, down}}
	off.Remove, over.Fit = []*job.Move{{Part: cover}}, []*job.Move{{Part: cover}}
	for _, st := range []*job.Step{off, over} {
		st.LeftHanging = []*job.Lift{l}
	}
	for _, st := range []*job.Step{away, down} {
		st.GoesOn = []*job.Lift{l}
	}
	const of = 6
	for _, c := range []struct {
		name   string
		st     *job.Step
		struck [of]bool // slack, trial, clear, before it travels, above its place, unhook
	}{
		{"taken off", off, [of]bool{false, false, false, false, true, true}},
		{"carried away", away, [of]bool{true, true, false, false, false, false}},
		{"brought over its seat", over, [of]bool{false, false, false, false, true, true}},
		{"let down", down, [of]bool{true, true, false, true, false, false}},
	} {
		for stop, want := range c.struck {
			if got := struckAt(l, c.st, stop, of); got != want {
				t.Errorf("%s: stop %d struck %t, want %t", c.name, stop+1, got, want)
			}
		}
	}
}
