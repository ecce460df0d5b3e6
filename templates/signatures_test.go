package templates

import (
	"slices"
	"testing"

	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// The register of who signs listed a rigger whom the lift does not have, and not those whom it
// has: their names stood on the lift sheet alone.
func TestRolesOfLifts(t *testing.T) {
	for _, x := range []struct {
		name  string
		lifts []*job.Lift
		want  []string
	}{
		{"no crew told", []*job.Lift{{}}, []string{"person in charge", "crane driver", "rigger", "mechanic"}},
		{"crew", []*job.Lift{{Crew: []string{"Person in charge", "hoist driver"}}}, []string{"Person in charge", "hoist driver", "mechanic"}},
		{"nobody in charge", []*job.Lift{{Crew: []string{"hoist driver"}}}, []string{"person in charge", "hoist driver", "mechanic"}},
		{"several at one post", []*job.Lift{{Crew: []string{"person in charge", "two on tag lines", "one at each end"}}}, []string{"person in charge", "two on tag lines 1/2", "two on tag lines 2/2", "one at each end (each signs; the others on free rows)", "mechanic"}},
		{"by hand", []*job.Lift{{ByHand: true, Crew: []string{"two mechanics"}}}, []string{"person in charge", "mechanic"}},
	} {
		c := &composer{Composer: &block.Composer{W: words.English, Job: &job.Job{Lifts: x.lifts}}}
		var got []string
		for _, r := range c.roles() {
			got = append(got, r.name)
		}
		if !slices.Equal(got, x.want) {
			t.Errorf("%s: %q sign, want %q", x.name, got, x.want)
		}
	}
}

// Those whom a lift names have rows of their own, and so have the mechanic and the fire watch:
// beside them there was one more for each.
func TestFreeRowsOfSignatures(t *testing.T) {
	lift := &job.Lift{Crew: []string{"person in charge", "crane driver", "two riggers"}}
	hot, dear := &job.Step{People: 6}, &job.Step{People: 5}
	flame, spring := &job.Caution{Key: job.HotWork, Steps: []*job.Step{hot}}, &job.Caution{Key: "spring", Steps: []*job.Step{dear}}
	for _, x := range []struct {
		name  string
		steps []*job.Step
		want  int
	}{
		{"nobody told", []*job.Step{{}}, 0},
		{"three turn a shaft", []*job.Step{{People: 3}}, 2},
		{"a lift with its crew and one more", []*job.Step{{People: 5, Lifts: []*job.Lift{lift}}}, 0},
		{"a load that hangs meanwhile", []*job.Step{{People: 6, Hangs: []*job.Lift{lift}}, {People: 1}}, 1},
		{"lifted by hand", []*job.Step{{People: 4, Lifts: []*job.Lift{{ByHand: true, Crew: []string{"four mechanics"}}}}}, 3},
		{"hot work with its fire watch", []*job.Step{hot}, 4},
		{"another hazard", []*job.Step{dear}, 4},
	} {
		if got := people(&job.Job{Sections: []*job.Section{{Steps: x.steps}}, Cautions: []*job.Caution{flame, spring}}); got != x.want {
			t.Errorf("%s: %d free rows, want %d", x.name, got, x.want)
		}
	}
}

// Who stands outside while somebody is in a space, and who watches for fire, sign where the work
// calls for them: by a hazard note that stands before a step, or by a permit. The attendant had no row.
func TestWatchersSign(t *testing.T) {
	st := &job.Step{}
	note := func(key string, steps ...*job.Step) *job.Caution { return &job.Caution{Key: key, Steps: steps} }
	for _, x := range []struct {
		name  string
		notes []*job.Caution
		of    []*job.Permit
		want  []string
	}{
		{"plain work", []*job.Caution{note(job.HotWork), note(job.ConfinedSpace)}, nil, []string{"mechanic"}},
		{"in a vessel", []*job.Caution{note(job.ConfinedSpace, st)}, nil, []string{"attendant", "mechanic"}},
		{"a flame", []*job.Caution{note(job.HotWork, st)}, nil, []string{"fire watch", "mechanic"}},
		{"welding in a vessel", []*job.Caution{note(job.HotWork, st), note(job.ConfinedSpace, st)}, nil, []string{"fire watch", "attendant", "mechanic"}},
		{"a permit for entry", nil, []*job.Permit{{Key: "tank-entry"}}, []string{"attendant", "permit holder", "mechanic"}},
		{"a permit for both", nil, []*job.Permit{{Key: "p", For: []string{job.ForEntry, job.ForHotWork}}}, []string{"fire watch", "attendant", "permit holder", "mechanic"}},
		{"a permit for work", nil, []*job.Permit{{Key: "p", For: []string{"work"}}}, []string{"permit holder", "mechanic"}},
	} {
		c := &composer{Composer: &block.Composer{W: words.English, Job: &job.Job{Cautions: x.notes, Permits: x.of}}}
		var got []string
		for _, r := range c.roles() {
			got = append(got, r.name)
		}
		if !slices.Equal(got, x.want) {
			t.Errorf("%s: %q sign, want %q", x.name, got, x.want)
		}
	}
}
