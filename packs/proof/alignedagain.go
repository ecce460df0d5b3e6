package proof

import (
	"matchmark/packs/align"
	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// dials are the readings of an alignment in their order.
var dials = []align.Dial{align.Rim, align.Face, align.OnStationary, align.OnMovable}

// checkAligned sees that the dials of a coupling are read while both machines stand in their
// places, and that what they read as left is written down where the coupling is aligned last,
// or below: a reading that stands above it tells of feet that have been moved since.
func (r *report) checkAligned() {
	for _, a := range r.job.Alignments {
		var last *job.Step
		for _, st := range a.Steps {
			if last == nil || st.Index > last.Index {
				last = st
			}
		}
		told := false // once for a coupling
		for _, dial := range dials {
			d := a.Read[dial]
			if d == nil {
				continue
			}
			for _, e := range []*walk.Event{r.walk.Measured(d), r.walk.Set(d)} {
				if e != nil && !told {
					told = r.alignApart(a, d, e)
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

// alignApart tells of a reading of an alignment that is taken while one of the two machines
// is off its place, and reports whether it was.
func (r *report) alignApart(a *job.Alignment, d *job.Dim, e *walk.Event) bool {
	for _, name := range []string{a.Movable, a.Stationary} {
		for _, p := range r.job.Parts {
			if p.Place.Mark(p.Key) != name && p.Name != name || r.walk.On(p, e) == p.Count {
				continue
			}
			see := p.At
			if off := r.cameOff(p, e); off != nil {
				see = off.At
			}
			r.problems.AddWith(e.At, "not-as-told", d.Mark+" of "+a.Mark+" is read at "+e.Step.Name()+", while "+p.Called()+" is off: nothing stands there to be aligned", see, "comes off here",
				"read it when both machines stand in their places")
			return true
		}
	}
	return false
}

// aligned binds the steps that read the dials of a coupling to those that align it above, and
// to those that move its machines.
func (b *binder) aligned() {
	for _, a := range b.job.Alignments {
		for _, dial := range dials {
			d := a.Read[dial]
			if d == nil || d.LeftAt == nil {
				continue
			}
			for _, st := range a.Steps {
				b.before(st, d.LeftAt, job.Bind{Kind: job.BoundReading, Dim: d})
			}
			for _, p := range b.job.Parts {
				if name := p.Place.Mark(p.Key); name == a.Movable || name == a.Stationary {
					b.looks(p, d.LeftAt)
				}
			}
		}
	}
}
