package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkTurnable sees that the nut or screw which sets a reading can be got at with a spanner
// when that is set: a lock nut behind a cover that is back is turned by nobody, and the box
// on the sheet stands open. What is turned has a thread; shims lie below what is put on them.
// What covers it may go on in the step that sets the reading, for its author sees both. One
// that was read as found with the cover on is read so again: only if it is out, the cover
// comes off once more.
func (r *report) checkTurnable() {
	told := map[source.Pos]bool{} // once for all places
	for _, d := range r.job.Dims {
		e := r.walk.Set(d)
		if e == nil || !byThread(d) || told[e.At] {
			continue
		}
		away := r.walk.Away(d.Adjuster, e) // on the bench what rides along covers it, and nothing else does
		for _, front := range r.walk.InFront(d.Adjuster, r.walk.Start(e.Step)) {
			if away != nil && !front.Within(away) {
				continue
			}
			if found := r.walk.Measured(d); inPlace(r.walk, front, e) && (found == nil || !inPlace(r.walk, front, found)) {
				told[e.At] = true
				r.shutNut(d, e, front)
				break
			}
		}
	}
}

// byThread reports whether a reading is set by turning something with a thread.
func byThread(d *job.Dim) bool {
	return d.Adjusted() && d.Adjuster != nil && d.Adjuster.Thread != nil
}

// shutNut tells of what sets a reading and can't be turned then.
func (r *report) shutNut(d *job.Dim, e *walk.Event, front *job.Part) {
	see, what, help := front.At, "the part", "set it while "+front.Key+" is off"
	if back := r.wentBack(front, e); back != nil {
		see, what, help = back.At, "put back here", "set: ["+d.Base+"] above "+back.Step.No+", or put "+front.Key+" back in a later step"
	}
	r.problems.AddWith(e.At, "nut-shut-in", d.Mark+" is set at "+e.Step.Name()+" by turning "+d.Adjuster.Called()+", and "+front.Called()+", which that is behind, is in the machine then", see, what,
		help, "or take "+front.Key+" out of behind: at "+d.Adjuster.Key+", if it can be turned past it")
}

// turnable binds what moves a part in front of what sets a reading: to the step that sets
// it, or, where the part is on then because it was on when it was read as found, to that one.
func (b *binder) turnable() {
	for _, d := range b.job.Dims {
		e := b.walk.Set(d)
		if d.LeftAt == nil || e == nil || !byThread(d) {
			continue
		}
		for _, front := range d.Adjuster.Behind {
			at := d.LeftAt
			if found := b.walk.Measured(d); found != nil && inPlace(b.walk, front, e) && inPlace(b.walk, front, found) {
				at = d.FoundAt
			}
			b.looks(front, at)
		}
	}
}
