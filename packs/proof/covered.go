package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// checkCovered sees that a reading which was taken with what covers its faces off is set
// before that is back: nobody gets at it afterward, and the box stands there all the same.
func (r *report) checkCovered() {
	for _, d := range r.job.Dims {
		set := r.walk.Set(d)
		for _, p := range uncovered(r.walk, d) {
			back := r.wentBack(p, set)
			if back == nil || !inPlace(r.walk, p, set) {
				continue
			}
			found := r.walk.Measured(d)
			message, help := d.Mark+" was read at "+found.Step.Name()+" with "+p.Called()+" off, and is set at "+set.Step.Name()+" when it is back", "set it above "+back.Step.No+", or put the part back in a later step"
			if back.Step == set.Step {
				help = "part the step in two: what goes on before the reading, and what covers it; or write set: above fit:"
			}
			r.problems.WarnWith(set.At, "covered", message, back.At, "put back here", help, "or take "+p.Key+" out of behind: at "+behindIt(d, p)+", if the reading is taken with it on")
			break
		}
	}
}

// uncovered lists the parts that cover the faces of a reading and were off when it was taken
// as found; none for one that is not both taken and set, or is read in the hand as well. What
// covers a face is what its part is behind, at one or more removes. What the reading itself
// hangs on covers nothing, nor does a fastener: it must be there.
func uncovered(w *walk.Walk, d *job.Dim) []*job.Part {
	found := w.Measured(d)
	if found == nil || w.Set(d) == nil || d.LostByNothing || d.Of.Part != nil && walk.KeepsSize[d.Kind] {
		return nil
	}
	hangs := walk.HangsOn(d)
	return slices.DeleteFunc(inFrontOf(d), func(p *job.Part) bool {
		return p.Fastens() || slices.Contains(hangs, p) || !p.Place.Agrees(d.Place) || inPlace(w, p, found)
	})
}

// behindIt names the part that is behind another and stands before the faces of a reading, or
// carries one.
func behindIt(d *job.Dim, p *job.Part) string {
	var own []*job.Part
	for _, p := range d.FaceParts() {
		own = append(own, p.Upward()...)
	}
	for _, q := range append(own, inFrontOf(d)...) {
		if slices.Contains(q.Behind, p) {
			return q.Key
		}
	}
	return d.Mark
}

// inFrontOf lists the parts in front of the faces of a reading, at one or more removes; not
// those that carry a face.
func inFrontOf(d *job.Dim) []*job.Part {
	var own, seen []*job.Part
	for _, p := range d.FaceParts() {
		own = append(own, p.Upward()...)
	}
	queue := slices.Clone(own)
	for len(queue) > 0 {
		p := queue[0]
		queue = queue[1:]
		for _, q := range p.Behind {
			if !slices.Contains(seen, q) && !slices.Contains(own, q) {
				seen = append(seen, q)
				queue = append(queue, q)
			}
		}
	}
	return seen
}

// inPlace reports whether any piece of a part is in the machine just before an event, for
// good or for now.
func inPlace(w *walk.Walk, p *job.Part, e *walk.Event) bool {
	now, _ := w.Now(p, e)
	return w.On(p, e)+now > 0
}

// wentBack is the last event before another that put a part back, nil if none did.
func (r *report) wentBack(p *job.Part, e *walk.Event) *walk.Event {
	var last *walk.Event
	for _, m := range p.Back {
		if x := r.walk.Moved(m); x != nil && x.Index < e.Index && (last == nil || x.Index > last.Index) {
			last = x
		}
	}
	return last
}

// covered binds a step that sets a reading to those that move what covers it.
func (b *binder) covered() {
	for _, d := range b.job.Dims {
		for _, p := range uncovered(b.walk, d) {
			b.looks(p, d.LeftAt)
		}
	}
}
