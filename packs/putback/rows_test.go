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

// A strongback that is slackened and stays on is tightened again by the row; bolts of a lifting
// plate that the same step, or one below it, takes out are not there to tighten. Common practice,
// no source.
func TestBoltsOfAnAidThatStayAreTightenedAgain(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name       string
		out, later bool
		tightened  int
	}{{"stays on", false, false, 1}, {"out at the step", true, false, 0}, {"out at one below", false, true, 0}} {
		bolt := &job.Part{Key: "bolt", Name: "Strongback bolt", Count: 4, Aid: true}
		joint := &job.Joint{Mark: "J1", Parts: []*job.Part{bolt}}
		slack, below := &job.Step{Key: "slack", Loosen: []job.Fastening{{Joint: joint}}}, &job.Step{Key: "below"}
		away := []*job.Move{{Part: bolt, N: 4}}
		if c.out {
			slack.TakeOut = away
		}
		if c.later {
			below.TakeOut = away
		}
		slack.Section = &job.Section{Steps: []*job.Step{slack, below}}
		b := &undoer{job: &job.Job{}, undoing: undoing{stock{}, nil}}
		got := 0
		if row := b.undoStep(slack, &job.Section{}); row != nil {
			got = len(row.Tighten)
		}
		if got != c.tightened {
			t.Errorf("%s: %d joints tightened, want %d", c.name, got, c.tightened)
		}
	}
}
