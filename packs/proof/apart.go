package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkReadApart sees that what lies between two parts is set while both are in the machine,
// where it is not set on the bench. Of a reading that nothing destroys (lost-by: nothing) no
// other law asks it: a gap under a cover that goes on for the reading alone was set before the
// cover was on.
func (r *report) checkReadApart() {
	told := map[source.Pos]bool{} // once for all places
	for _, d := range r.job.Dims {
		e := r.walk.Set(d)
		if e == nil || e.Step.Bench || !d.LostByNothing || !betweenTwo(d) || told[e.At] || r.ofCoupling(d) {
			continue
		}
		off := slices.DeleteFunc([]*job.Part{d.From.Part, d.To.Part}, func(p *job.Part) bool { return len(p.Off) == 0 || r.inPlaceWithin(p, e.Step) })
		if len(off) != 1 {
			continue // both off lie together on the bench
		}
		told[e.At] = true
		r.problems.WarnWith(e.At, "read-apart", d.Mark+" is set at "+e.Step.Name()+", and "+off[0].Called()+" is off all through that step", off[0].At, "the part",
			"set it at a step in which both parts are on, for now at least")
	}
}

// ofCoupling reports whether a reading is a dial of an alignment, of which another law tells.
func (r *report) ofCoupling(d *job.Dim) bool {
	return slices.ContainsFunc(r.job.Alignments, func(a *job.Alignment) bool {
		for _, x := range a.Read {
			if x == d {
				return true
			}
		}
		return false
	})
}

// betweenTwo reports whether a reading lies between two parts of which none is part of the other.
func betweenTwo(d *job.Dim) bool {
	a, b := d.From.Part, d.To.Part
	return a != nil && b != nil && a != b && !a.Within(b) && !b.Within(a)
}

// apart binds a step that sets such a reading to those that move its parts.
func (b *binder) apart() {
	for _, d := range b.job.Dims {
		if d.LeftAt != nil && !d.LeftAt.Bench && d.LostByNothing && betweenTwo(d) {
			b.looks(standing{d.From.Part}, d.LeftAt)
			b.looks(standing{d.To.Part}, d.LeftAt)
		}
	}
}
