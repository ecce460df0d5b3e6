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
	// A trial fit had nearly all its stops struck: what goes on for a while and comes out again
	// was no movement of the load.
	m := []*Move{{Part: cover}}
	for _, c := range []struct {
		name  string
		st    *Step
		stays bool
		met   [StopSetDown + 1]bool
	}{
		{"fitted for a while", &Step{ForNow: m}, false, [...]bool{true, false, false, true, true, true, true}},
		{"fitted for a while, stays", &Step{ForNow: m}, true, [...]bool{true, false, false, true, true, false, false}},
		{"taken out again", &Step{TakeOut: m}, false, [...]bool{true, true, true, true, false, true, true}},
		{"on and out again", &Step{ForNow: m, TakeOut: m}, false, [...]bool{true, true, true, true, true, true, true}},
		{"off and on again", &Step{Remove: m, Fit: m}, false, [...]bool{true, true, true, true, true, true, true}},
		{"raised and let down", &Step{}, false, [...]bool{true, true, true, true, true, true, true}},
		{"raised", &Step{}, true, [...]bool{true, true, true, false, false, false, false}},
	} {
		one := &Lift{Parts: []*Part{cover}, Steps: []*Step{c.st}}
		if c.stays {
			c.st.LeftHanging = []*Lift{one}
		}
		for k, want := range c.met {
			if got := one.Meets(c.st, StopKind(k)); got != want {
				t.Errorf("%s: stop of kind %d met %t, want %t", c.name, k, got, want)
			}
		}
	}
	// Brought over its seat for a trial fit, and away again without being let down.
	tried := &Lift{Parts: []*Part{cover}}
	on, out := &Step{Index: 0, ForNow: m, LeftHanging: []*Lift{tried}}, &Step{Index: 1, TakeOut: m, GoesOn: []*Lift{tried}}
	tried.Steps = []*Step{on, out}
	for k, want := range [StopSetDown + 1]bool{false, false, true, true, false, true, true} {
		if got := tried.Meets(out, StopKind(k)); got != want {
			t.Errorf("away from its seat again: stop of kind %d met %t, want %t", k, got, want)
		}
	}
	// Raised by a hand's width to look below it, it was to be signed "clear of the dowels": it
	// comes out of its place with the step that takes it off.
	up, take := &Step{Index: 0, LeftHanging: []*Lift{tried}}, &Step{Index: 1, Remove: m, GoesOn: []*Lift{tried}}
	tried.Steps = []*Step{up, take}
	if tried.Meets(up, StopGoingUp) || !tried.Meets(up, StopTrial) || !tried.Meets(take, StopGoingUp) {
		t.Error("raised and taken off later: the stops on the way out are those of the step that takes it off")
	}
	// Set down between the two, nobody knows how far it was raised.
	take.GoesOn = nil
	if !tried.Meets(up, StopGoingUp) {
		t.Error("raised and set down: the stops on the way out were struck")
	}
	// Where none are told for the way in, those on the way out hold for both.
	l.StopsIn = nil
	for st, want := range map[*Step]int{off: 2, away: 1, over: 1, down: 0} {
		if got := l.StopsAt(st); len(got) != want {
			t.Errorf("step %d has the stops %q, want %d", st.Index, got, want)
		}
	}
}
