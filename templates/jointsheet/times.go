package jointsheet

import (
	"strings"

	"matchmark/packs/job"
)

// eachTime gives the joints of a group once for each step that tightens them, with the
// number of the step behind the name of their place: the ticks of a trial fitting cannot
// say that a joint is tight in the end.
func eachTime(jb *job.Job, g []*job.Joint) []*job.Joint {
	var out []*job.Joint
	for _, j := range g {
		tight, _ := turnedAt(jb, []*job.Joint{j})
		if len(tight) < 2 {
			out = append(out, j)
			continue
		}
		for _, st := range tight {
			once := *j
			once.Place.Name = strings.TrimPrefix(j.Place.Name+" · "+st.No, " · ")
			out = append(out, &once)
		}
	}
	return out
}

// turnedAt are the steps that tighten some joints, and those that loosen them, in their
// order.
func turnedAt(jb *job.Job, g []*job.Joint) (tight, loose []*job.Step) {
	for _, st := range jb.Steps() {
		if turns(st.Tighten, g) {
			tight = append(tight, st)
		}
		if turns(st.Loosen, g) {
			loose = append(loose, st)
		}
	}
	return tight, loose
}
