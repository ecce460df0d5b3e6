package jointsheet

import (
	"strings"

	"matchmark/packs/job"
	"matchmark/templates/block"
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

// TurnAnchor is the name by which the page is found on which a step turns a joint.
func TurnAnchor(j *job.Joint, st *job.Step) string { return "turn " + j.Mark + " " + st.No }

// turnedRefs lists steps that turn joints of a group, with the pages on which they do.
func turnedRefs(c *block.Composer, g []*job.Joint, list []*job.Step) string {
	var out []string
	for _, st := range list {
		page := ""
		for _, j := range g {
			if page == "" && (turns(st.Tighten, []*job.Joint{j}) || turns(st.Loosen, []*job.Joint{j})) {
				page = c.PageOr(TurnAnchor(j, st), "step "+st.No)
			}
		}
		out = append(out, c.W.Common.StepPage.With(st.No, page))
	}
	return strings.Join(out, ", ")
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
