package putback

import (
	"testing"

	"matchmark/packs/job"
)

// A row that only lowers what hangs, between two steps of one lift, takes as many people as its
// step, and hangs on the same hook: the row has no part to fit.
func TestARowThatOnlyLowersHasItsPeople(t *testing.T) {
	t.Parallel()
	lift := &job.Lift{Mark: "L1", Parts: []*job.Part{{Name: "Rotor"}}}
	for _, c := range []struct {
		name   string
		mirror int
		want   int
	}{{"as its step", 0, 3}, {"said otherwise for the way back", 4, 4}} {
		st := &job.Step{Key: "lower", Lifts: []*job.Lift{lift}, People: 3, OnHook: "station crane"}
		st.Mirror.People = c.mirror
		b := &undoer{job: &job.Job{Lifts: []*job.Lift{lift}}, undoing: undoing{stock{}, nil}, stages: map[*job.Lift]bool{lift: true}}
		row := b.undoStep(st, &job.Section{})
		if row == nil {
			t.Fatal("the step has no row")
		}
		if row.People != c.want || row.OnHook != "station crane" || len(row.Fit) != 0 || len(row.Lifts) != 1 {
			t.Errorf("%s: %d people on hook %q, %d parts, %d lifts; want %d people, the station crane, no part and one lift", c.name, row.People, row.OnHook, len(row.Fit), len(row.Lifts), c.want)
		}
	}
}
