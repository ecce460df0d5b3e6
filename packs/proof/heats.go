package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkHeats sees that every heat is done by a step, that what is drawn off hot
// goes back hot, and that the joint is measured while it is apart.
func (r *report) checkHeats() {
	for _, h := range r.job.Heats {
		if h.Pull != nil && h.PulledAt == nil {
			r.problems.Add(h.At, "never-heated", h.Mark+" is drawn off at no step", "heat: ["+h.Base+"] at the step that removes "+h.PartName())
		}
		if h.PutOn != nil && h.PutOnAt == nil {
			r.problems.Add(h.At, "never-heated", h.Mark+" is put on at no step", "heat: ["+h.Base+"] at the step that fits "+h.PartName())
		}
		r.checkDrawn(h)
		r.checkMoved(h, h.PulledAt)
		r.checkMoved(h, h.PutOnAt)
		r.checkWayBack(h)
		r.checkRead(h)
	}
}

// checkDrawn sees that a heat which is named where its part comes off says how it is drawn.
// Where the row that undoes this step puts it on hot, it is named there for that row.
func (r *report) checkDrawn(h *job.Heat) {
	if h.PulledAt == nil || h.Pull != nil || h.PutOn == nil || h.PutOnAt == nil || h.PutOnAt.Undoes == h.PulledAt || len(h.Because) > 0 {
		return
	}
	r.problems.AddWith(h.PulledAt.At, "never-heated", "step "+h.PulledAt.Name()+" draws "+h.PartName()+" off with "+h.Mark+", which does not say how: no temperature and no time is printed there", h.At, "the heat",
		"pull: {by: torch, clearance: … mm, longest: … min, puller: …}, at "+h.Base, "or take "+h.Base+" out of that step, if it comes off cold")
}

// checkMoved sees that a step which heats a part moves it.
func (r *report) checkMoved(h *job.Heat, st *job.Step) {
	if h.Hub == nil || st == nil || r.walk.Find(st, func(e *walk.Event) bool {
		return e.Move != nil && (e.Move.Part == h.Hub || h.Hub.Within(e.Move.Part))
	}) != nil {
		return
	}
	r.problems.AddWith(st.At, "other-part", "step "+st.Name()+" does the heat "+h.Mark+" and does not move "+h.Hub.Called(), h.At, "the heat",
		"heat: ["+h.Base+"] at the step that removes or fits it")
}

// checkWayBack sees that a part which came off hot does not go back cold.
func (r *report) checkWayBack(h *job.Heat) {
	if h.Hub == nil || h.PulledAt == nil || h.PutOn != nil {
		return
	}
	for _, s := range r.job.Sections {
		for _, st := range s.Steps {
			for _, m := range st.Fit {
				if m.Part == h.Hub {
					r.problems = append(r.problems, source.Problem{
						Pos: h.At, Severity: source.Error, Code: "back-cold",
						Message: h.Hub.Name + " is drawn off hot and goes back at " + st.Name() + ", and " + h.Mark + " does not say how hot",
						Help:    []string{"put-on: {by: oven, clearance: … mm}"},
						See:     []source.Also{{Pos: m.At, What: "goes back here"}},
					})
				}
			}
		}
	}
}

// checkRead sees that bore and seat are read while the joint is apart.
func (r *report) checkRead(h *job.Heat) {
	for _, d := range []*job.Dim{h.Fit.Bore, h.Fit.Seat} {
		if d == nil || d.FoundAt == nil {
			continue
		}
		early := h.PulledAt != nil && d.FoundAt.Index <= h.PulledAt.Index
		late := h.PutOnAt != nil && d.FoundAt.Index >= h.PutOnAt.Index
		if early || late {
			when := ", while " + h.PartName() + " sits on its seat"
			if d.FoundAt == h.PulledAt || d.FoundAt == h.PutOnAt {
				when = ", the step that heats " + h.PartName() + ": a warm part reads larger"
			}
			r.problems.Add(d.FoundPos(), "read-together", d.Mark+" is read at "+d.FoundAt.Name()+when,
				"measure it at a step of its own, after the part is drawn off and before it is put on, when both are as warm as the shop")
		}
	}
}

// heats binds the steps that draw off or put on the same part, and what is read of the
// joint to the time while it is apart.
func (b *binder) heats() {
	for _, st := range b.walk.Steps {
		for _, h := range st.Heats {
			if h.Hub != nil {
				b.moves(h.Hub, st)
			}
			b.stands(h.Shaft, st)
		}
	}
	for _, h := range b.job.Heats {
		for _, d := range []*job.Dim{h.Fit.Bore, h.Fit.Seat} {
			if d != nil && h.Hub != nil {
				b.before(h.PulledAt, d.FoundAt, job.Bind{Kind: job.BoundPart, Part: h.Hub})
				b.before(d.FoundAt, h.PutOnAt, job.Bind{Kind: job.BoundReading, Dim: d})
			}
		}
	}
}
