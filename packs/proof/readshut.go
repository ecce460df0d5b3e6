package proof

import (
	"slices"

	"matchmark/packs/job"
)

// checkReadShut warns of a reading that is taken as found before what closes the machine over its
// faces is off, and set while that is off: the first cannot be taken there, or the two are not of
// one state. It is the other side of what was read with a cover off and is set with it on.
func (r *report) checkReadShut() {
	for _, d := range r.job.Dims {
		found, set := r.walk.Measured(d), r.walk.Set(d)
		if found == nil || set == nil || found.Step.Bench || d.LostByNothing || d.Formula != nil || !isTouched(d) || d.State.With != "" {
			continue
		}
		for _, p := range straightInFront(d) {
			if p.Fastens() || p.Guard || !p.Place.Agrees(d.Place) || !inPlace(r.walk, p, found) || inPlace(r.walk, p, set) {
				continue
			}
			off := r.opensBy(p)
			if off == nil {
				continue
			}
			r.problems.WarnWith(found.At, "read-shut", d.Mark+" is read at "+found.Step.Name()+" with "+p.Called()+" on, and is set at "+set.Step.Name()+" with it off", off.At, "comes off here",
				"measure it below "+off.Step.No+", when "+p.Key+" is off", "or take "+p.Key+" out of behind: at "+behindIt(d, p)+", or say with: how it is read")
			break
		}
	}
}

// straightInFront lists the parts straight in front of those that carry the faces of a reading:
// what lies deeper is reached from another side as often.
func straightInFront(d *job.Dim) []*job.Part {
	var out []*job.Part
	for _, p := range d.FaceParts() {
		for _, q := range p.Behind {
			if !slices.Contains(d.FaceParts(), q) && !slices.Contains(out, q) {
				out = append(out, q)
			}
		}
	}
	return out
}

// opensBy is the removal of a part by which an opening of the machine stands open, nil for none.
func (r *report) opensBy(p *job.Part) *job.Move {
	for _, o := range r.job.Openings {
		if o.OpenedAt == nil {
			continue
		}
		if i := slices.IndexFunc(o.OpenedAt.Remove, func(m *job.Move) bool { return m.Part == p }); i >= 0 {
			return o.OpenedAt.Remove[i]
		}
	}
	return nil
}

// readShut binds a step that measures a reading, to be set with what closes the machine off, to
// the step that takes that off.
func (b *binder) readShut() {
	r := &report{walk: b.walk, job: b.job}
	for _, d := range b.job.Dims {
		set := b.walk.Set(d)
		if d.FoundAt == nil || set == nil || d.FoundAt.Bench || d.LostByNothing || d.Formula != nil || !isTouched(d) || d.State.With != "" {
			continue
		}
		for _, p := range straightInFront(d) {
			if off := r.opensBy(p); off != nil && !p.Fastens() && !p.Guard && p.Place.Agrees(d.Place) && !inPlace(b.walk, p, set) && off.Step.Index < d.FoundAt.Index {
				b.before(off.Step, d.FoundAt, job.Bind{Kind: job.BoundPart, Part: p})
			}
		}
	}
}
