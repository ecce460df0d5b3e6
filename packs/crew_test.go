package packs_test

import (
	"os"
	"slices"
	"testing"

	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/units"
)

// storm loads the storm pump.
func storm(t *testing.T) *job.Job {
	t.Helper()
	jb, problems := packs.Load(os.DirFS("starters"), packs.Inputs{Definition: "storm-pump.yaml"})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return jb
}

// stepNamed is the step of a job with a key.
func stepNamed(t *testing.T, jb *job.Job, key string) *job.Step {
	t.Helper()
	for _, st := range jb.Steps() {
		if st.Key == key {
			return st
		}
	}
	t.Fatalf("no step %s", key)
	return nil
}

// A step that asks for the permit for entry has somebody inside: the note of the enclosed
// space stood before the step that opened the casing alone.
func TestEntryIsWarnedOfAtEachStep(t *testing.T) {
	t.Parallel()
	jb := storm(t)
	warned := func(st *job.Step) bool {
		return slices.ContainsFunc(st.Cautions, func(c *job.Caution) bool { return c.Key == "confined-space" })
	}
	for key, want := range map[string]bool{"lift-casing": true, "from-stop": true, "travel": true, "faces": true, "centre": true, "raise-rotor": false} {
		if st := stepNamed(t, jb, key); warned(st) != want {
			t.Errorf("%s carries the note of the enclosed space: %v, want %v", st.Name(), !want, want)
		}
	}
}

// What was put under a load that hangs is ticked as it comes out: above the line of a lift that
// lets the load down upon its seat, below one that carries it away. Eight wedges had no box but
// that by which they went in; ticked in order, four blocks were pulled from under a cover on the hook.
func TestWhatStandsUnderALoadComesOut(t *testing.T) {
	t.Parallel()
	jb := storm(t)
	in, out := stepNamed(t, jb, "look-in"), stepNamed(t, jb, "casing-on")
	if want := []string{in.UnderLoad.Value}; !slices.Equal(out.FromUnder, want) || len(out.LeftBehind) > 0 {
		t.Errorf("at casing-on comes out %q first, %q last, want %q first", out.FromUnder, out.LeftBehind, want)
	}
	in, out = stepNamed(t, jb, "shims-out"), stepNamed(t, jb, "lift-rotor")
	if want := []string{in.UnderLoad.Value}; !slices.Equal(out.LeftBehind, want) || len(out.FromUnder) > 0 {
		t.Errorf("at lift-rotor comes out %q first, %q last, want %q last", out.FromUnder, out.LeftBehind, want)
	}
	if st := stepNamed(t, jb, "lift-casing"); len(st.FromUnder)+len(st.LeftBehind) > 0 {
		t.Errorf("nothing was put under the casing, and %q %q comes out", st.FromUnder, st.LeftBehind)
	}
}

// A lift takes the people who must be there, also while its load hangs: five were counted
// as one.
func TestCrewHoursCountWhoMustBeThereForALift(t *testing.T) {
	t.Parallel()
	jb := storm(t)
	for key, want := range map[string]int{"lift-casing": 5, "shims-out": 5, "rotor-in": 5, "uncouple": 2, "slacken": 2} {
		if st := stepNamed(t, jb, key); st.Crew() != want {
			t.Errorf("%s takes %d people, want %d", st.Name(), st.Crew(), want)
		}
	}
	sum := units.Whole(0)
	for _, st := range jb.Steps() {
		if st.Hours != nil {
			sum = sum.Add(st.Hours.Mul(units.Whole(int64(st.Crew()))))
		}
	}
	if sum.Text() != jb.CrewHours.Text() {
		t.Errorf("the steps take %s crew hours together, the job says %s", sum.Text(), jb.CrewHours.Text())
	}
}
