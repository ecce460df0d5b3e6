package heatsheet

import (
	"testing"

	"matchmark/packs/job"
)

// The order of work listed the heats by bearing, H2/L, H2/R, H3/L, H3/R, and the work goes by
// side: both of the left one first.
func TestHeatsAsPutOn(t *testing.T) {
	t.Parallel()
	pinion, left, right := &job.Step{}, &job.Step{}, &job.Step{}
	jb := &job.Job{Sections: []*job.Section{{Steps: []*job.Step{pinion}}, {Steps: []*job.Step{left, right}}}}
	var all []*job.Heat
	for _, h := range []struct {
		mark string
		at   *job.Step
	}{{"H1/P", pinion}, {"H2/L", left}, {"H2/R", right}, {"H3/L", left}, {"H3/R", right}} {
		all = append(all, &job.Heat{Mark: h.mark, PutOnAt: h.at})
	}
	if got, want := marksOf(asPutOn(jb, all)), "H1/P, H2/L, H3/L, H2/R, H3/R"; got != want {
		t.Errorf("the heats of the shared order are %s, want %s", got, want)
	}
}
