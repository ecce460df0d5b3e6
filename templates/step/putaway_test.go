package step

import (
	"slices"
	"testing"

	"matchmark/packs/job"
)

// A cap that comes off, goes on again over a strip and comes off is put away when the strip is
// read: common practice, no source. What stays off is put away at once.
func TestPutAwayBelowWhatIsReadWithItOut(t *testing.T) {
	t.Parallel()
	bolt, rod := &job.Part{Name: "bolt"}, &job.Part{Name: "rod"}
	st := &job.Step{
		Verbs:   []job.Verb{job.DoRemove, job.DoFitForNow, job.DoTighten, job.DoTakeOut, job.DoMeasure},
		Remove:  []*job.Move{{Part: bolt}},
		ForNow:  []*job.Move{{Part: bolt}},
		TakeOut: []*job.Move{{Part: bolt}},
	}
	order, away := putAway(st)
	at := func(v job.Verb) int { return slices.Index(order, v) }
	if !away || !(at(job.DoTakeOut) < at(job.DoMeasure) && at(job.DoMeasure) < at(job.DoRemove)) {
		t.Errorf("written %v, printed %v: it is put away below its reading", st.Verbs, order)
	}
	st.Verbs = []job.Verb{job.DoRemove, job.DoFitForNow, job.DoMeasure, job.DoTakeOut}
	if order, away = putAway(st); !away || at(job.DoTakeOut)+1 != at(job.DoRemove) || at(job.DoMeasure) > at(job.DoTakeOut) {
		t.Errorf("written %v, printed %v: it is put away when it is out", st.Verbs, order)
	}
	st.Remove = []*job.Move{{Part: rod}}
	if order, away = putAway(st); away || at(job.DoRemove) > at(job.DoMeasure) {
		t.Errorf("written %v, printed %v: what stays off is put away at once", st.Verbs, order)
	}
}
