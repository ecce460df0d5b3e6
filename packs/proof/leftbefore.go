package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// checkLeftBefore sees that what is only set is not set before the machine is so much as locked,
// where a part of it comes off later: what is written as left is then not what is left. Below the
// locks a gap may be set to take a part off by. A part that is renewed may be read before the old
// one comes off, and one of which no step ends the reading is read on the bench. What stands until
// the reading is right, as a rotor that cools, is waited for; and one may set what the work wants,
// as a keyway at the top: so it is a warning.
func (r *report) checkLeftBefore() {
	for _, d := range r.job.Dims {
		set := r.walk.Set(d)
		if set == nil || d.FoundAt != nil || d.LostByNothing || set.Step.Until != nil || !r.aboveLocks(set) {
			continue
		}
		if off := r.offBelow(d, set); off != nil {
			r.problems.WarnWith(set.At, "left-before", d.Mark+" is set at "+set.Step.Name()+", as it is left, and "+off.Move.Part.Called()+" comes off below that at "+off.Step.Name(), off.At, "comes off here",
				"set: ["+d.Base+"] at a step below the one that puts it back")
		}
	}
}

// aboveLocks reports whether an event stands above the first lock of the job.
func (r *report) aboveLocks(at *walk.Event) bool {
	for _, e := range r.walk.Events {
		if e.Verb == job.DoLock {
			return e.Index > at.Index
		}
	}
	return false
}

// offBelow is the first event after a reading that takes one of its parts off; nil if all stay,
// or have been off before.
func (r *report) offBelow(d *job.Dim, set *walk.Event) *walk.Event {
	for _, p := range d.FaceParts() {
		if p == nil || p.Renew != "" || p.Aid || r.cameOff(p, set.Index) != nil {
			continue
		}
		for _, m := range p.Off {
			if e := r.walk.Moved(m); e != nil && e.Index > set.Index && e.Step != set.Step {
				return e
			}
		}
	}
	return nil
}
