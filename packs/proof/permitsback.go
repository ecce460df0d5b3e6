package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkPermitsBack sees that every permit is handed back where one of the job is: a permit
// for work that is done lies open at the office, and its holder is looked for; and that it
// is handed back once. Where none is, the site takes them back by its own rules.
func (r *report) checkPermitsBack() {
	back := map[*job.Permit]*walk.Event{}
	var first *walk.Event
	for _, e := range r.walk.Events {
		if e.Verb != job.DoHandBack {
			continue
		}
		if was := back[e.Permit]; was != nil && was.Step.At != e.Step.At && !r.askedBetween(e.Permit, was, e) {
			r.problems.AddWith(e.Step.At, "back-again", "step "+e.Step.Name()+" hands the permit "+e.Permit.Key+" back, which "+was.Step.Name()+" has handed back already", was.Step.At, "handed back here",
				"take it out of one of them")
		}
		back[e.Permit] = e
		if first == nil {
			first = e
		}
	}
	if first == nil {
		return
	}
	for _, p := range r.job.Permits {
		if back[p] != nil || len(p.Steps) == 0 {
			continue
		}
		last := p.Steps[0]
		for _, st := range p.Steps {
			if st.Index > last.Index {
				last = st
			}
		}
		where := last.No + ", the last step that asks for it, or below it"
		for _, st := range r.walk.Steps {
			if underLock(p) && len(st.Unlock) > 0 && st.Index >= last.Index {
				where = st.No + ", where the locks come off"
			}
		}
		see := []source.Also{{Pos: last.At, What: "asked for last here, at " + last.Name()}, {Pos: first.Step.At, What: "another is handed back here"}}
		r.problems = append(r.problems, source.Problem{
			Pos: p.At, Severity: source.Warning, Code: "never-handed-back",
			Message: "the permit " + p.Key + " is handed back by no step, and " + first.Permit.Key + " is at " + first.Step.Name(),
			Help:    []string{"hand-back: [" + p.Key + "] at " + where},
			See:     see,
		})
	}
}

// askedBetween reports whether a permit is asked for once more between two events. It only
// spares a second message: that a permit is asked for when it has ended is told already, as
// permit-ended.
func (r *report) askedBetween(p *job.Permit, from, to *walk.Event) bool {
	for _, e := range r.walk.Events[from.Index:to.Index] {
		if e.Verb == job.DoPermit && e.Permit == p {
			return true
		}
	}
	return false
}
