package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// checkHeldAsFound sees that a reading which was taken with a part held by its fasteners is set
// when they are back and tight: with the nuts still in their box a cover, a collar or a hub
// does not stand where they will draw it. A reading with a state in words is left to its
// author, and so is one whose fasteners are in and loose, which another law tells of.
func (r *report) checkHeldAsFound() {
	for _, d := range r.job.Dims {
		found, set := r.walk.Measured(d), r.walk.Set(d)
		if found == nil || set == nil || set.Step.Bench || d.Formula != nil || d.State.With != "" {
			continue
		}
		for _, h := range heldBy(d) {
			if !r.heldAt(h.joint, found) {
				continue
			}
			if tight := r.outAndTightenedLater(h.joint, set); tight != nil && r.walk.On(h.part, set) > 0 {
				help := "set: [" + d.Base + "] at " + tight.Step.No + " below tighten:, or at a step below it"
				if tight.Step == set.Step {
					help = "write set: below tighten:: a step is done in the order in which it is written"
				}
				r.problems.WarnWith(set.At, "held-as-found", d.Mark+" was read at "+found.Step.Name()+" with "+h.joint.Mark+" tight, which holds "+h.part.Called()+", and is set at "+set.Step.Name()+" before its fasteners are in", tight.At, "tightened here",
					help, "or say under with: how it is read")
				break
			}
		}
	}
}

// A heldPart is a part that a reading hangs on and a joint that holds it: one whose fasteners
// it lies behind.
type heldPart struct {
	part  *job.Part
	joint *job.Joint
}

func heldBy(d *job.Dim) []heldPart {
	var out []heldPart
	for _, p := range walk.HangsOn(d) {
		for _, q := range p.Behind {
			for _, j := range q.Joints {
				if j.Place.Agrees(d.Place) {
					out = append(out, heldPart{p, j})
				}
			}
		}
	}
	return out
}

// heldAt reports whether all fasteners of a joint are in before an event, and tight.
func (r *report) heldAt(j *job.Joint, e *walk.Event) bool {
	g := r.walk.Grip(job.Fastening{Joint: j}, e)
	return g.Loosened == nil && g.Fitted == nil && !slices.ContainsFunc(j.Parts, func(p *job.Part) bool { return r.walk.On(p, e) < p.Count })
}

// outAndTightenedLater is the event that tightens a joint of which nothing is in before
// another one, nil where something is or nothing tightens it.
func (r *report) outAndTightenedLater(j *job.Joint, e *walk.Event) *walk.Event {
	if slices.ContainsFunc(j.Parts, func(p *job.Part) bool { return inPlace(r.walk, p, e) }) {
		return nil
	}
	return r.tightenedLater(j, e)
}

// heldAsFound binds a step that sets a reading to those that move the fasteners of what it
// hangs on.
func (b *binder) heldAsFound() {
	for _, d := range b.job.Dims {
		if d.LeftAt == nil || d.FoundAt == nil || d.LeftAt.Bench || d.Formula != nil || d.State.With != "" {
			continue
		}
		for _, h := range heldBy(d) {
			for _, q := range h.joint.Parts {
				b.looks(q, d.LeftAt)
			}
		}
	}
}
