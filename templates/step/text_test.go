package step

import (
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// A row without words that only looks a reading up says so, though something is to be ticked in
// it; one that has nothing but ticks says those.
func TestWhatARowWithoutWordsSays(t *testing.T) {
	t.Parallel()
	c := block.New(pdf.NewFaces(), layout.Pen{}, &job.Job{}, words.English, 180)
	seen := []job.Seen{{What: "strap on again"}}
	d := &job.Dim{Mark: "D3"}
	for _, x := range []struct {
		st   job.Step
		want string
	}{
		{job.Step{Seen: seen}, "strap on again"},
		{job.Step{Seen: seen, Recall: []*job.Dim{d}}, words.English.Step.LookUp.With("D3")},
		{job.Step{Recall: []*job.Dim{d}}, words.English.Step.LookUp.With("D3")},
		{job.Step{Tighten: []job.Fastening{{Joint: &job.Joint{Mark: "J3"}}, {Part: &job.Part{Name: "Lock nut"}}}}, "Tighten: J3, Lock nut."},
		{job.Step{}, words.Untold},
	} {
		if got := Text(c, &x.st); got != x.want {
			t.Errorf("says %q, want %q", got, x.want)
		}
	}
}
