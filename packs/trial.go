package packs

import (
	"matchmark/packs/job"
	"slices"
)

// onForNow reports whether a fastener of it is on for a while only.
func (l *ledger) onForNow(f job.Fastening) bool {
	return slices.ContainsFunc(f.Parts(), func(p *job.Part) bool { return l.pieces[p].now > 0 })
}

// piecesForNow is how many fasteners of it are on for a while.
func (l *ledger) piecesForNow(f job.Fastening) int {
	n := 0
	for _, p := range f.Parts() {
		n += l.pieces[p].now
	}
	return n
}

// lastTorque is the joint of the same fasteners that a later step tightens for good, nil
// if none does. Parts that are put together to be measured often have a torque of
// their own, on fewer screws: whoever comes back to them must not take it for the
// last one.
func (b *builder) lastTorque(j *job.Joint, trial *job.Step) *job.Joint {
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			for _, f := range st.Tighten {
				if st.Index > trial.Index && f.Joint != nil && f.Joint != j && slices.Equal(f.Joint.Parts, j.Parts) {
					return f.Joint
				}
			}
		}
	}
	return nil
}
