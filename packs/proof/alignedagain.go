package proof

import (
	"matchmark/packs/align"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// dials are the readings of an alignment in their order.
var dials = []align.Dial{align.Rim, align.Face, align.OnStationary, align.OnMovable}

// checkAligned sees that a coupling is aligned, and its dials are read, while both machines
// stand in their places, and that what they read as left is written down where the coupling is
// aligned last, or below: a reading that stands above it tells of feet that have been moved
// since.
func (r *report) checkAligned() {
	for _, a := range r.job.Alignments {
		var last *job.Step
		told := false // once for a coupling
		for _, st := range a.Steps {
			if last == nil || st.Index > last.Index {
				last = st
			}
			told = told || r.alignedApart(a, st)
		}
		told = told || r.neverAgain(a, last)
		for _, dial := range dials {
			d := a.Read[dial]
			if d == nil {
				continue
			}
			for _, e := range []*walk.Event{r.walk.Measured(d), r.walk.Set(d)} {
				if e != nil && !told {
					told = r.readApart(a, d, e)
				}
			}
			if e := r.walk.Set(d); e != nil && !told && last != nil && e.Step.Index < last.Index {
				told = true
				r.problems.AddWith(e.At, "too-early", d.Mark+" is set at "+e.Step.Name()+", and "+a.Mark+" is aligned after that at "+last.Name()+": it reads otherwise then", last.At, "aligned here",
					"set: ["+d.Base+"] at "+last.No+" or below it")
			}
		}
	}
}

// alignedApart tells of a step that aligns a coupling while one of the two machines is off
// its place, and reports whether one was. A machine that the step itself puts there stands.
func (r *report) alignedApart(a *job.Alignment, st *job.Step) bool {
	for _, p := range a.Machines {
		if r.walk.StandsAt(p, st) >= p.Count {
			continue
		}
		r.apart(st.At, a.Mark+" is aligned at "+st.Name(), p, r.walk.Start(st), "align it at a step where both machines stand in their places")
		return true
	}
	return false
}

// neverAgain tells of a coupling that no step aligns once a machine of it is back in its place,
// and reports whether there is one: its feet stand somewhere else then.
func (r *report) neverAgain(a *job.Alignment, last *job.Step) bool {
	for _, p := range a.Machines {
		for _, m := range p.Back {
			if last == nil || m.Step.Index <= last.Index {
				continue
			}
			r.problems.AddWith(m.At, "never-aligned", p.Called()+" goes back at "+m.Step.Name()+", and "+a.Mark+" is aligned at no step from there on: its feet do not stand where they stood", last.At, "aligned last here",
				"align: ["+a.Mark+"] at "+m.Step.No+" or at a step below it")
			return true
		}
	}
	return false
}

// readApart tells of a reading of an alignment that is taken while one of the two machines
// is off its place, and reports whether it was.
func (r *report) readApart(a *job.Alignment, d *job.Dim, e *walk.Event) bool {
	for _, p := range a.Machines {
		if r.walk.On(p, e) == p.Count {
			continue
		}
		r.apart(e.At, d.Mark+" of "+a.Mark+" is read at "+e.Step.Name(), p, e.Index, "read it when both machines stand in their places")
		return true
	}
	return false
}

// apart tells that one of the two machines of an alignment is off before an event.
func (r *report) apart(at source.Pos, does string, p *job.Part, before int, help string) {
	see := p.At
	if off := r.cameOff(p, before); off != nil {
		see = off.At
	}
	r.problems.AddWith(at, "not-as-told", does+", while "+p.Called()+" is off: nothing stands there to be aligned", see, "comes off here", help)
}

// aligned binds the steps that read the dials of a coupling to those that align it above, and
// to those that move its machines; what is read as found to these alone.
func (b *binder) aligned() {
	for _, a := range b.job.Alignments {
		looks := func(st *job.Step) {
			for _, p := range a.Machines {
				b.looks(p, st)
			}
		}
		for _, st := range a.Steps {
			looks(st)
		}
		for _, dial := range dials {
			d := a.Read[dial]
			if d == nil {
				continue
			}
			if d.FoundAt != nil {
				looks(d.FoundAt)
			}
			if d.LeftAt == nil {
				continue
			}
			looks(d.LeftAt)
			for _, st := range a.Steps {
				b.before(st, d.LeftAt, job.Bind{Kind: job.BoundReading, Dim: d})
			}
		}
	}
}
