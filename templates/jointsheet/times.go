package jointsheet

import (
	"slices"
	"strings"

	"matchmark/packs/job"
)

// eachTime gives the joints of a group once for each step that tightens them, with the
// number of the step behind the name of their place: the ticks of a trial fitting cannot
// say that a joint is tight in the end.
func eachTime(jb *job.Job, g []*job.Joint) []*job.Joint {
	var out []*job.Joint
	for _, j := range g {
		at := tightenedAt(jb, j)
		if len(at) < 2 {
			out = append(out, j)
			continue
		}
		for _, st := range at {
			once := *j
			once.Place.Name = strings.TrimPrefix(j.Place.Name+" · "+st.No, " · ")
			out = append(out, &once)
		}
	}
	return out
}

// tightenedAt are the steps that tighten a joint, in their order.
func tightenedAt(jb *job.Job, j *job.Joint) []*job.Step {
	var out []*job.Step
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			if slices.ContainsFunc(st.Tighten, func(f job.Fastening) bool { return f.Joint == j }) {
				out = append(out, st)
			}
		}
	}
	return out
}
