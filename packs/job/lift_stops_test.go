package job

import "testing"

// A cover is taken off and stays on the hook, the next step carries it to its blocks; at the
// end it is brought over its seat in one step and let down in the next. The stop before it
// travels stood struck at the step that carries it away, and nobody looked whether the way
// was clear; and "a hand's width above where it is set down" was to be signed where it hung
// lower than that already.
func TestStopsOfAMovement(t *testing.T) {
	cover := &Part{Key: "cover"}
	off, away, over, down := &Step{Index: 0}, &Step{Index: 1}, &Step{Index: 2}, &Step{Index: 3}
	l := &Lift{Parts: []*Part{cover}, Steps: []*Step{off, away, over, down},
		TrialStops: []string{"joint open"}, Stops: []string{"clear of the dowels"}, StopsIn: []string{"dowels in line"}}
	off.Remove, over.Fit = []*Move{{Part: cover}}, []*Move{{Part: cover}}
	for _, st := range []*Step{off, over} {
		st.LeftHanging = []*Lift{l}
	}
	for _, st := range []*Step{away, down} {
		st.GoesOn = []*Lift{l}
	}
	for _, c := range []struct {
		name string
		st   *Step
		met  [StopSetDown + 1]bool // taken up, in its place, going up, before it travels, coming down, above its seat, set down
	}{
		{"taken off", off, [...]bool{true, true, true, true, false, false, false}},
		{"carried away", away, [...]bool{false, false, true, true, false, true, true}},
		{"brought over its seat", over, [...]bool{true, false, false, true, true, false, false}},
		{"let down", down, [...]bool{false, false, false, false, false, false, true}},
	} {
		for k, want := range c.met {
			if got := l.Meets(c.st, StopKind(k)); got != want {
				t.Errorf("%s: stop of kind %d met %t, want %t", c.name, k, got, want)
			}
		}
	}
	// Where none are told for the way in, those on the way out hold for both.
	l.StopsIn = nil
	for st, want := range map[*Step]int{off: 2, away: 1, over: 1, down: 0} {
		if got := l.StopsAt(st); len(got) != want {
			t.Errorf("step %d has the stops %q, want %d", st.Index, got, want)
		}
	}
}
