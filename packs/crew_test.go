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

// What was put under a load that hangs is ticked as it comes out, where its lift goes on:
// eight wedges had no box but that by which they went in.
func TestWhatStandsUnderALoadComesOut(t *testing.T) {
	t.Parallel()
	jb := storm(t)
	for in, out := range map[string]string{"shims-out": "lift-rotor", "look-in": "casing-on"} {
		want := []string{stepNamed(t, jb, in).UnderLoad.Value}
		if got := stepNamed(t, jb, out).FromUnder; !slices.Equal(got, want) {
			t.Errorf("at %s comes out %q, want %q", out, got, want)
		}
	}
	if got := stepNamed(t, jb, "lift-casing").FromUnder; len(got) > 0 {
		t.Errorf("nothing was put under the casing, and %q comes out", got)
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
