package step

import (
	"slices"
	"testing"

	"matchmark/packs/job"
)

// What a load covers is closed when it stands and its bolts are tight, and the permit to go in ends
// below that. Common practice, no source.
func TestAPermitEndsBelowWhatIsClosed(t *testing.T) {
	t.Parallel()
	for _, verbs := range [][]job.Verb{{job.DoLift, job.DoHandBack}, {job.DoLift, job.DoTighten, job.DoHandBack}} {
		st := &job.Step{Verbs: verbs, Lifts: []*job.Lift{{}}, Shut: []*job.Opening{{}}}
		if slices.Contains(verbs, job.DoTighten) {
			st.Tighten = make([]job.Fastening, 1)
		}
		order := withClosing(st, st.VerbOrder())
		at := func(v job.Verb) int { return slices.Index(order, v) }
		if !(at(job.DoLift) < at(doShut) && at(doShut) < at(job.DoHandBack)) || len(st.Tighten) > 0 && at(job.DoTighten) > at(doShut) {
			t.Errorf("written %v, printed %v", verbs, order)
		}
	}
}
