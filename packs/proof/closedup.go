package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkClosedUp sees that before a lock comes off for good, or the permit under
// which it went on ends, all openings are closed, all guards are on and the tools
// are counted. For a test in mid-job what stands open or off is printed at the step;
// there only an opening that a person can be in must be closed.
func (r *report) checkClosedUp() {
	told := map[any]bool{}
	for _, e := range r.walk.Events {
		act := ""
		switch {
		case e.Verb == job.DoUnlock:
			act = "takes the lock " + e.Lock.Key + " off"
		case e.Verb == job.DoUnlockForNow:
			act = "takes the lock " + e.Lock.Key + " off for now"
		case e.Verb == job.DoHandBack:
			act = "ends the permit " + e.Permit.Key
			if !underLock(e.Permit) {
				r.openedUnder(e, act)
				continue
			}
		default:
			continue
		}
		r.stillOpen(e, act, told)
		if e.Verb == job.DoUnlockForNow {
			continue
		}
		r.guardsOff(e, act, told)
		if worked, open := r.walk.UncountedTools(e); worked != nil && !told[worked] {
			told[worked] = true
			r.uncounted(e, act, worked, open)
		}
	}
}

// uncounted tells of tools that may have been left in an opening.
func (r *report) uncounted(e *walk.Event, act string, worked *job.Step, open *job.Opening) {
	p := source.Problem{
		Pos: e.Step.At, Severity: source.Error, Code: "tools-uncounted",
		Message: "step " + e.Step.Name() + " " + act + ", and the tools have not been counted since " + worked.Name() + ", when the opening " + open.Mark() + " was open",
		Help:    []string{"tool-count: yes above it, or at a step before it"},
		See:     []source.Also{{Pos: worked.At, What: "work beside it"}},
	}
	if open.OpenedAt != nil && open.OpenedAt != worked {
		p.See = append(p.See, source.Also{Pos: open.OpenedAt.At, What: "opened here"})
	}
	r.problems = append(r.problems, p)
}

// underLock reports whether a permit is asked for where an isolation is locked: it
// is the one under which people work at the machine.
func underLock(p *job.Permit) bool {
	return slices.ContainsFunc(p.Steps, func(st *job.Step) bool { return len(st.Lock) > 0 })
}

// stillOpen tells of the openings that stand open.
func (r *report) stillOpen(e *walk.Event, act string, told map[any]bool) {
	for _, o := range r.job.Openings {
		opened := r.walk.Open(o, e)
		if opened == nil || o.ClosedAt == nil || told[o] || e.Verb == job.DoUnlockForNow && !o.Enclosed {
			continue
		}
		told[o] = true
		help := "close: [" + o.Key + "] above it, or at a step before it; it is closed at " + o.ClosedAt.Name()
		if o.ClosedAt == e.Step {
			help = "write close: above it: a step is done in the order in which it is written"
		}
		r.problems.AddWith(e.Step.At, "open-at-unlock", "step "+e.Step.Name()+" "+act+" while the opening "+o.Mark()+" is open", opened.Step.At, "opened here", help)
	}
}

// openedUnder tells of openings that were opened under a permit and are open when it
// ends, or over which what closes them still hangs.
func (r *report) openedUnder(e *walk.Event, act string) {
	for _, o := range r.job.Openings {
		under := o.OpenedAt != nil && slices.Contains(o.OpenedAt.Permits, e.Permit)
		switch opened := r.walk.Open(o, e); {
		case opened != nil && slices.Contains(opened.Step.Permits, e.Permit):
			r.problems.AddWith(e.Step.At, "open-at-unlock", "step "+e.Step.Name()+" "+act+" while the opening "+o.Mark()+" is open", opened.Step.At, "opened under this permit",
				"close: ["+o.Key+"] above it, or at a step before it")
		case under && o.ShutAt != nil && o.ClosedAt.Index <= e.Step.Index && e.Step.Index < o.ShutAt.Index:
			r.problems.AddWith(e.Step.At, "open-at-unlock", "step "+e.Step.Name()+" "+act+" while what closes the opening "+o.Mark()+" hangs over it", o.ShutAt.At, "comes to stand here",
				"hand-back: ["+e.Permit.Key+"] at "+o.ShutAt.No+", where it is closed, or below it")
		}
	}
}

// guardsOff tells of the guards that are not on.
func (r *report) guardsOff(e *walk.Event, act string, told map[any]bool) {
	for _, p := range r.job.Parts {
		if !p.Guard || told[p] || r.walk.On(p, e) == p.Count || len(p.Off) == 0 {
			continue
		}
		back := p.Off[0].PutBack()
		if back == nil {
			continue // stays off for good, or is missing, which is told
		}
		told[p] = true
		r.problems.AddWith(e.Step.At, "guard-off", "step "+e.Step.Name()+" "+act+" while the guard "+p.Called()+" is off", p.Off[0].At, "taken off here",
			"fit it before; it is fitted at "+back.Step.Name())
	}
}

// checkPermitsEnd sees that no step asks for a permit that has ended.
func (r *report) checkPermitsEnd() {
	ended := map[*job.Permit]*job.Step{}
	for _, e := range r.walk.Events {
		switch e.Verb {
		case job.DoHandBack:
			ended[e.Permit] = e.Step
		case job.DoPermit:
			if end := ended[e.Permit]; end != nil {
				help := []string{"move hand-back: to the last step that needs it, or give the later work a permit of its own"}
				if e.Step.Undoes != nil {
					help = append(help, "or, if it is put back without it: back-permit: none, because …")
				}
				r.problems.AddWith(e.Step.At, "permit-ended", "step "+e.Step.Name()+" asks for the permit "+e.Permit.Key+", which ends at "+end.Name(), end.At, "ends here", help...)
			}
		}
	}
}

// tools and handedBack are what the steps share after which tools are counted, and
// what all share: none may pass the end of a permit.
type (
	tools      struct{}
	handedBack struct{}
)

// closedUp binds the steps that need tools at the open machine to the counting of
// them, and all steps to the ends of permits between which they stand.
func (b *binder) closedUp() {
	for _, st := range b.walk.Steps {
		switch {
		case st.ToolCount:
			b.changes(tools{}, st, job.Bind{Kind: job.BoundTools})
		case walk.WorksOpen(st):
			b.looks(tools{}, st)
		}
		if len(st.HandBack) > 0 {
			b.changes(handedBack{}, st, job.Bind{Kind: job.BoundPermit, Permit: st.HandBack[0]})
		} else {
			b.looks(handedBack{}, st)
		}
	}
}
