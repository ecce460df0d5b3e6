package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkLeftAlone sees that nobody turns an adjuster that stays as it is: it is not
// taken off or slackened by itself, and what it sets is only recorded.
func (r *report) checkLeftAlone() {
	touched := func(p *job.Part, at source.Pos, what string) {
		r.problems = append(r.problems, source.Problem{
			Pos: at, Severity: source.Error, Code: "left-alone",
			Message: p.Name + " is left alone (" + p.LeaveAlone + "), and " + what,
			Help:    []string{"take it out here, or take leave-alone: out of the part"},
			See:     []source.Also{{Pos: p.At, What: "the part"}},
		})
	}
	for _, p := range r.job.Parts {
		if p.LeaveAlone != "" && len(p.Off) > 0 {
			touched(p, p.Off[0].At, "comes off at "+p.Off[0].Step.Name())
		}
	}
	for _, s := range r.job.Sections {
		for _, st := range s.Steps {
			for _, f := range st.Loosen {
				if f.Part != nil && f.Part.LeaveAlone != "" {
					touched(f.Part, f.At, "is loosened at "+st.Name())
				}
			}
		}
	}
	for _, d := range r.job.Dims {
		if p := d.Adjuster; p != nil && p.LeaveAlone != "" && d.Left != nil {
			touched(p, d.LimitPos(), d.Mark+", which it sets, has a limit for closing; write found: only")
		}
	}
}
