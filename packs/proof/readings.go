package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// readings sees that every dimension is measured before it is destroyed, and set
// when all that it hangs on is back and tight.
func (r *report) readings() {
	for _, d := range r.job.Dims {
		hangs := walk.HangsOn(d)
		r.measured(d, hangs)
		r.set(d, hangs)
	}
}

// measured sees that a dimension is measured before the act that destroys it.
func (r *report) measured(d *job.Dim, hangs []*job.Part) {
	e, lost := r.walk.Measured(d), r.walk.Losses(d)
	if d.Formula != nil { // worked out later as well as at once: what it takes is read in time or told of
		lost = slices.DeleteFunc(slices.Clone(lost), func(l walk.Loss) bool { return l.Sets != nil })
	}
	if e == nil || len(lost) == 0 || e.Index < lost[0].Index {
		return
	}
	first := lost[0]
	when := e.Step.Name() + ", after " + first.Step.Name() + " has parted its faces"
	help := []string{"measure it at or before " + first.Step.No}
	if first.Step == e.Step {
		when = e.Step.Name() + ", after the step has parted its faces"
		help = []string{"write measure: above it: a step is done in the order in which it is written"}
	}
	if p := first.Sets; p != nil {
		when = e.Step.Name() + ", after " + first.Step.Name() + " has moved " + p.Called() + ", which sets it"
	}
	if p, q := r.ridesAlong(d, first, e); p != nil {
		help = append(help, "or, if "+p.Key+" comes off with "+q.Key+" and is read on it: of: "+q.Key+" at "+p.Key)
	}
	if d.Of.Part != nil && slices.Contains(hangs, d.Of.Part) {
		help = append(help, "or, if it is read with the part off: lost-by: nothing")
	}
	r.problems.AddWith(e.At, "too-late", d.Mark+" is measured at "+when, first.At, first.How, help...)
}

// ridesAlong is the part of a reading between two that is still on when it is read, where the
// other came off with it as one, as a hub does with its motor; nil where that cannot be.
func (r *report) ridesAlong(d *job.Dim, lost walk.Loss, e *walk.Event) (on, off *job.Part) {
	a, b := d.From.Part, d.To.Part
	if a == nil || b == nil || a == b {
		return nil, nil
	}
	for _, x := range [][2]*job.Part{{a, b}, {b, a}} {
		on, off := x[0], x[1]
		if on.Of == nil && len(on.Off) > 0 && r.walk.On(on, e) > 0 && r.walk.On(off, e) == 0 && slices.ContainsFunc(off.Off, func(m *job.Move) bool { return m.Step == lost.Step }) {
			return on, off
		}
	}
	return nil, nil
}

// set sees that a dimension is set when all pieces that it lies between are back and
// tight. What comes off later still is in its place then, as a casing that is
// jacked up level before it is lifted; so is what is on for now, as a hub that is
// tried cold before it is heated. On the bench only what belongs to the assembly
// there counts.
func (r *report) set(d *job.Dim, hangs []*job.Part) {
	e := r.walk.Set(d)
	if e == nil {
		return
	}
	if found := r.walk.Measured(d); found != nil && found.Index > e.Index {
		r.problems.AddWith(e.At, "too-early", d.Mark+" is set at "+e.Step.Name()+", before it is measured as found at "+found.Step.Name(), found.At, "measured here",
			"set it when the machine goes together again")
		return
	}
	if again := r.apartAgain(d, e); again != nil {
		does := " parts its faces again"
		if p := again.Sets; p != nil {
			does = " moves " + p.Called() + ", which sets it, again"
		}
		r.problems.AddWith(e.At, "too-early", d.Mark+" is set at "+e.Step.Name()+", and "+again.Step.Name()+does, again.At, again.How, "set it when all is back for good", "or take set: out here: the put-back row of the step that measures it sets it")
		return
	}
	if e.Step.Bench {
		hangs = slices.DeleteFunc(slices.Clone(hangs), func(p *job.Part) bool { return p.Of == nil })
	}
	for _, p := range hangs {
		if now, _ := r.walk.Now(p, e); now > 0 {
			continue
		}
		for _, m := range p.Back {
			off, back := r.walk.Moved(m.Undo), r.walk.Moved(m)
			if back != nil && back.Index > e.Index && (off == nil || off.Index < e.Index) {
				r.setEarly(d, e, back, p.Name+" is back", "puts back "+p.Name, "fit", "put back here")
			}
		}
	}
	for _, x := range r.walk.Events[e.Index:] {
		if x.Verb == job.DoTighten && overlap(x.Grip.Parts(), hangs) {
			r.setEarly(d, e, x, x.Grip.Mark()+" is tight", "tightens "+x.Grip.Mark(), "tighten", "tightened here")
		}
	}
}

// apartAgain is what ends a reading that had been found and is set, after it was set;
// nil if nothing does. One that is only set, as the level of a casing that is jacked up,
// is done with then.
func (r *report) apartAgain(d *job.Dim, set *walk.Event) *walk.Loss {
	if d.FoundAt == nil {
		return nil
	}
	for _, l := range r.walk.Losses(d) {
		if l.Index > set.Index {
			return &l
		}
	}
	return nil
}

// setEarly tells of a reading that is set before something it hangs on is done.
func (r *report) setEarly(d *job.Dim, e, done *walk.Event, is, does, verb, here string) {
	message, help := d.Mark+" is set at "+e.Step.Name()+", before "+is+" at "+done.Step.Name(), "set it at or after "+done.Step.No
	if done.Step == e.Step {
		message, help = d.Mark+" is set at "+e.Step.Name()+" before the step "+does, "write set: below "+verb+": a step is done in the order in which it is written"
	}
	r.problems.AddWith(e.At, "too-early", message, done.At, here, help)
}

func overlap(a, b []*job.Part) bool {
	return slices.ContainsFunc(a, func(p *job.Part) bool { return slices.Contains(b, p) })
}

// readings binds a step that reads to those that move or loosen what the reading
// hangs on, or that its author says destroy it, and the two readings of a dimension
// to each other.
func (b *binder) readings() {
	for _, st := range b.walk.Steps {
		for _, d := range slices.Concat(st.Measure, st.Set) {
			b.changes(d, st, job.Bind{Kind: job.BoundReading, Dim: d})
			for _, p := range d.FaceParts() {
				b.stands(p, st)
			}
			for _, p := range walk.HangsOn(d) {
				b.looks(p, st)
			}
		}
		for _, d := range st.Set {
			if d.Adjuster != nil {
				b.moves(d.Adjuster, st)
			}
		}
		for _, d := range st.Measure {
			for _, l := range d.LostBy {
				b.before(st, l.Step, job.Bind{Kind: job.BoundLost, Dim: d})
			}
		}
	}
}
