package job

import (
	"slices"
	"testing"
)

// Guide pins were printed below the lift that they guide, whatever the author wrote: the
// casing would have come down with nothing to guide it.
func TestAidsStandAboveTheHookWhereTheyAreWritten(t *testing.T) {
	t.Parallel()
	pin, cover := &Part{Aid: true}, &Part{}
	for _, c := range []struct {
		name  string
		verbs []Verb
		part  *Part
		above bool
	}{
		{"pins written above the lift", []Verb{DoFitForNow, DoLift, DoFit}, pin, true},
		{"pins written below the lift", []Verb{DoLift, DoFitForNow, DoFit}, pin, false},
		{"a cover tried on with the hook", []Verb{DoFitForNow, DoLift}, cover, false},
	} {
		st := &Step{Verbs: c.verbs, Lifts: []*Lift{{}}, ForNow: []*Move{{Part: c.part}}}
		order := st.VerbOrder()
		if above := slices.Index(order, DoFitForNow) < slices.Index(order, DoLift); above != c.above {
			t.Errorf("%s: above the hook %v, want %v", c.name, above, c.above)
		}
	}
}

// The limits of a hot pull stood below the temperatures that are read in it: they were read when
// the skin was too hot already.
func TestHeatStandsAboveWhatIsReadInIt(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name  string
		verbs []Verb
		above bool
	}{
		{"heat written above the reading", []Verb{DoHeat, DoMeasure, DoRemove}, true},
		{"heat written below a reading that must be had before", []Verb{DoMeasure, DoHeat, DoRemove}, false},
	} {
		order := (&Step{Verbs: c.verbs}).VerbOrder()
		heat, read, off := slices.Index(order, DoHeat), slices.Index(order, DoMeasure), slices.Index(order, DoRemove)
		if above := heat < read; above != c.above || heat > off {
			t.Errorf("%s: above the reading %v, want %v, and above what comes off in any case", c.name, above, c.above)
		}
	}
}

// A load that was left hanging was let down below all that is done to it when it stands: bolts were
// tightened and the permit went back with the load on the hook.
func TestALoadThatIsLetDownStandsWhereItIsWritten(t *testing.T) {
	t.Parallel()
	for _, verbs := range [][]Verb{{DoLift, DoTighten, DoHandBack}, {DoSee, DoLift, DoTighten}, {DoMeasure, DoLift, DoUnlock}} {
		order := (&Step{Verbs: verbs, Lifts: []*Lift{{}}}).VerbOrder()
		for i := range verbs[1:] {
			if slices.Index(order, verbs[i]) > slices.Index(order, verbs[i+1]) {
				t.Errorf("written %v, done %v", verbs, order)
			}
		}
	}
}
