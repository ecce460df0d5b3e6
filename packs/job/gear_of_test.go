package job

import (
	"testing"

	"pgregory.net/rapid"
)

// A step was sent to the sheet of a lift of which its words only say that it is done, or that its
// gear is not taken. What a planner writes of a hook, by what every mechanic reads in it: common
// practice, no source.
func TestTheGearThatALoadHangsIn(t *testing.T) {
	t.Parallel()
	l2, l3 := &Lift{Mark: "L2"}, &Lift{Mark: "L3"}
	for words, want := range map[string]*Lift{
		"hall crane with the slings of L2, only taut": l2, "the slings of L2": l2, "L2's slings, only taut": l2, "in the gear of L2": l2, "slings as for L2": l2, "L2": l2,
		"slings of L2 after L3": l2, "the slings of L2 once L3 is down": l2, "not by hand but in the slings of L2": l2, "the slings of L3, not of L2": l3, "when cold in the slings of L2": l2,
		"after L2, still in the slings of L2": l2, "under the hook in the slings of L2": l2, "not L2 but the slings of L3": l3, "L2 is down, in the slings of L3": l3, "after L3, in the slings of L2": l2, "after L2, in the slings of L2": l2,
		"not L2": nil, "hall crane, not in the slings of L2": nil, "hall crane, after L2": nil, "hall crane, clear of L2": nil, "hall crane, clear of the load of L2": nil, "one chain sling, neither L2 nor L3": nil,
		"workshop crane once L2 is down": nil, "hall crane, L2 is down": nil, "L2 has gone away, shop crane": nil, "hall crane without the slings of L2 and L3": nil, "hall crane beside L2": nil,
		"Not L2, one sling": nil, "workshop crane": nil,
		"hall crane; L2 comes later": nil, "hook of the hall crane, before it the gear of L2 is taken off": nil, "hall crane, L2 comes next": nil, "hall crane, L2 is removed": nil, "hall crane, as L2 was done": l2, "hall crane LL2": nil, "hall crane L22": nil,
	} {
		if got := (&Job{Lifts: []*Lift{l2, l3}}).GearOf(&Step{OnHook: words}); got != want {
			t.Errorf("%q: %+v", words, got)
		}
	}
}

// Of any list of clauses that lift alone is taken whose gear is told of in one.
func TestTheGearIsFoundAmongWhatIsOnlyTold(t *testing.T) {
	t.Parallel()
	l2, l3 := &Lift{Mark: "L2"}, &Lift{Mark: "L3"}
	rapid.Check(t, func(t *rapid.T) {
		told := rapid.SliceOfN(rapid.SampledFrom([]string{"after L2", "not L3", "clear of L2", "before L3", "without the gear of L2", "L3 is down", "hall crane", "one chain sling"}), 0, 3).Draw(t, "told")
		use := rapid.SampledFrom([]string{"", "the slings of L2", "with the gear of L2", "in L2's slings", "slings as for L2"}).Draw(t, "used")
		at := rapid.IntRange(0, len(told)).Draw(t, "at")
		words := ""
		for i := range len(told) + 1 {
			if i == at && use != "" {
				words += use + "; "
			}
			if i < len(told) {
				words += told[i] + "; "
			}
		}
		got := (&Job{Lifts: []*Lift{l2, l3}}).GearOf(&Step{OnHook: words})
		if (got == l2) != (use != "") || got == l3 {
			t.Fatalf("%q: %+v", words, got)
		}
	})
}
