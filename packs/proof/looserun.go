package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkLooseRun sees that no lock comes off while a joint is loose that is tightened
// only later: the machine would run on nuts that are run up by hand. While a lock is off
// for a test what has only been slackened may be so, as a joint on a machine that is
// barred over; what has been put back may not.
func (r *report) checkLooseRun() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		if e.Verb != job.DoUnlock && e.Verb != job.DoUnlockForNow {
			continue
		}
		for _, j := range r.job.Joints {
			loose := r.looseBefore(j, e)
			if loose == nil || told[j.At] || e.Verb == job.DoUnlockForNow && loose.Verb != job.DoFit {
				continue
			}
			tight := r.tightenedLater(j, e)
			if tight == nil {
				continue // never is told by the law of the fastenings
			}
			told[j.At] = true
			since := "loosened at " + loose.Step.Name()
			if loose.Verb == job.DoFit {
				since = "loose since " + loose.Move.Part.Called() + " went back at " + loose.Step.Name()
			}
			r.problems.AddWith(tight.At, "loose-at-unlock", j.Mark+" is tightened at "+tight.Step.Name()+", below "+e.Step.Name()+", which takes the lock "+e.Lock.Key+" off: the machine can turn while it is "+since, e.Step.At, "the lock comes off here",
				"tighten: ["+j.Base+"] at a step above it")
		}
	}
}

// looseBefore is what left a joint loose just before an event: the first loosening that
// no tightening of its fasteners has followed, or the last of them that went back since;
// nil while it is tight, or apart altogether.
func (r *report) looseBefore(j *job.Joint, before *walk.Event) *walk.Event {
	g := r.walk.Grip(job.Fastening{Joint: j}, before)
	for _, e := range []*walk.Event{g.Fitted, g.Loosened} {
		if e != nil && !r.tightSince(j, e, before) && r.someOn(j, before) {
			return e
		}
	}
	return nil
}

// tightSince reports whether a fastener of a joint has been tightened between two
// events, by whatever joint it belongs to: one of them may be gone over once more under
// another mark.
func (r *report) tightSince(j *job.Joint, from, to *walk.Event) bool {
	for _, e := range r.walk.Events[from.Index:to.Index] {
		if e.Verb == job.DoTighten && overlap(e.Grip.Parts(), j.Parts) {
			return true
		}
	}
	return false
}

// someOn reports whether a fastener of a joint is in the machine.
func (r *report) someOn(j *job.Joint, e *walk.Event) bool {
	for _, p := range j.Parts {
		if r.walk.On(p, e) > 0 {
			return true
		}
	}
	return false
}

// tightenedLater is the first tightening of a joint below an event, nil if none is.
func (r *report) tightenedLater(j *job.Joint, after *walk.Event) *walk.Event {
	for _, e := range r.walk.Events[after.Index:] {
		if e.Verb == job.DoTighten && e.Grip.Joint == j {
			return e
		}
	}
	return nil
}
