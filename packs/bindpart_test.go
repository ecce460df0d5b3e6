package packs_test

import (
	"os"
	"testing"

	"matchmark/packs"
	"matchmark/packs/job"
)

// A valve cover of the triplex pump was printed as free "before R7.2 (Damper gasket goes on after
// it)": a mechanic knows that step by its damper.
func TestWhatGoesOnIsToldByItsHeaviestPart(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(os.DirFS("starters"), packs.Inputs{Definition: "triplex-pump.yaml"})
	seen := false
	for _, st := range jb.Steps() {
		if st.Undoes == nil || st.Undoes.Key != "damper" {
			continue
		}
		for _, b := range st.Binds {
			if b.Kind == job.BoundBack {
				seen = true
				if b.Part.Name != "Pulsation damper" {
					t.Errorf("%s comes after %s and is told by %s, want the damper", st.Name(), b.Before.Name(), b.Part.Name)
				}
			}
		}
	}
	if !seen {
		t.Error("nothing binds the damper's way back")
	}
}
