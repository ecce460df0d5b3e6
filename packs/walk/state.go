package walk

import "matchmark/packs/job"

// On is how many pieces of a part are in the machine just before an event, those
// that are in for now left out.
func (w *Walk) On(p *job.Part, e *Event) int { return w.parts[p].before(e.Index).on }

// StandsAt is how many pieces of a part are in the machine at a step that has no verb for
// what it does with them, those that are in for now among them: just before it or when it is
// done, whichever is more.
func (w *Walk) StandsAt(p *job.Part, st *job.Step) int {
	before, after := w.parts[p].before(w.Start(st)), w.parts[p].before(w.End(st))
	return max(before.on+before.now, after.on+after.now)
}

// OnAtEnd is how many pieces of a part are in the machine when all is done.
func (w *Walk) OnAtEnd(p *job.Part) int { return w.parts[p].last().on }

// Now is how many pieces of a part are in the machine for now just before an event,
// and the event that fitted the last of them.
func (w *Walk) Now(p *job.Part, e *Event) (int, *Event) {
	s := w.parts[p].before(e.Index)
	return s.now, s.out
}

// NowAtEnd is how many pieces of a part are still in for now when all is done, and
// the event that fitted the last of them.
func (w *Walk) NowAtEnd(p *job.Part) (int, *Event) {
	s := w.parts[p].last()
	return s.now, s.out
}

// ForNow is how many fasteners of a joint are in for now just before an event.
func (w *Walk) ForNow(f job.Fastening, e *Event) int {
	n := 0
	for _, p := range f.Parts() {
		n += w.parts[p].before(e.Index).now
	}
	return n
}

// StayOff is how many pieces of a removal are off the machine when all is done.
func (w *Walk) StayOff(m *job.Move) int { return w.off[m] }

// Away is the assembly, at one or more removes, with which a part is off the
// machine just before an event; nil while all of them are in it.
func (w *Walk) Away(p *job.Part, e *Event) *job.Part {
	var away *job.Part
	for up := p.Of; up != nil; up = up.Of {
		if w.On(up, e) == 0 {
			away = up
		}
	}
	return away
}

// Grip is how tight a joint or a part is just before an event.
func (w *Walk) Grip(f job.Fastening, e *Event) Grip {
	return w.grips[grip{joint: f.Joint, part: f.Part}].before(e.Index)
}

// GripsAtEnd lists how tight all joints are when all is done, in the order of the
// job, then the parts that were loosened or tightened by name.
func (w *Walk) GripsAtEnd() []Grip {
	var out []Grip
	for _, jt := range w.Job.Joints {
		out = append(out, w.grips[grip{joint: jt}].last())
	}
	for _, p := range w.Job.Parts {
		if l := w.grips[grip{part: p}]; l != nil {
			out = append(out, l.last())
		}
	}
	return out
}

// Pieces is how many pieces lie in a container just before an event.
func (w *Walk) Pieces(c *job.Container, e *Event) int { return w.containers[c].before(e.Index) }

// Locked is the event that locked an isolation, nil while it is not locked just
// before an event.
func (w *Walk) Locked(x *job.Isolation, e *Event) *Event { return w.locks[x].before(e.Index) }

// LockedAt reports whether an isolation is locked at a place in the order of events.
func (w *Walk) LockedAt(x *job.Isolation, event int) bool { return w.locks[x].before(event) != nil }

// Open is the event that opened an opening, nil while it is closed just before an
// event.
func (w *Walk) Open(o *job.Opening, e *Event) *Event { return w.openings[o].before(e.Index) }

// InFront lists the parts that a part is behind and that are in the machine just
// before an event, given by its place in the order of events. One that is away with
// an assembly of its own stands in nobody's way.
func (w *Walk) InFront(p *job.Part, event int) []*job.Part {
	var out []*job.Part
	for _, q := range p.Behind {
		at := w.parts[q].before(event)
		gone := false
		for up := q.Of; up != nil; up = up.Of {
			gone = gone || up != p && !p.Within(up) && w.parts[up].before(event).on == 0
		}
		if at.on+at.now > 0 && !gone {
			out = append(out, q)
		}
	}
	return out
}
