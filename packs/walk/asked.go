package walk

import (
	"slices"

	"matchmark/packs/job"
)

// At lists the events of a step.
func (w *Walk) At(st *job.Step) []*Event { return w.Events[w.Start(st):w.End(st)] }

// Opened is the first event that opens an opening, nil if none does.
func (w *Walk) Opened(o *job.Opening) *Event {
	return w.firstOf(func(e *Event) bool { return e.Verb == job.DoOpen && e.Opening == o })
}

// Closed is the first event that closes an opening, nil if none does.
func (w *Walk) Closed(o *job.Opening) *Event {
	return w.firstOf(func(e *Event) bool { return e.Verb == job.DoClose && e.Opening == o })
}

func (w *Walk) firstOf(is func(*Event) bool) *Event {
	if i := slices.IndexFunc(w.Events, is); i >= 0 {
		return w.Events[i]
	}
	return nil
}

// Lifted lists the events that make a lift.
func (w *Walk) Lifted(l *job.Lift) []*Event {
	return w.all(func(e *Event) bool { return e.Verb == job.DoLift && e.Lift == l })
}

// AskedFor lists the events that ask for a permit.
func (w *Walk) AskedFor(p *job.Permit) []*Event {
	return w.all(func(e *Event) bool { return e.Verb == job.DoPermit && e.Permit == p })
}

func (w *Walk) all(is func(*Event) bool) []*Event {
	var out []*Event
	for _, e := range w.Events {
		if is(e) {
			out = append(out, e)
		}
	}
	return out
}

// Lands reports whether an event takes the load of a lift off or puts it on, by the lift
// or without it. A part of the load that comes off while it hangs does not land it.
func (e *Event) Lands(l *job.Lift) bool {
	switch e.Verb {
	case job.DoRemove, job.DoTakeOut, job.DoFit, job.DoFitForNow:
	default:
		return false
	}
	m := e.Move
	return slices.ContainsFunc(l.Parts, func(p *job.Part) bool { return p == m.Part || p.Within(m.Part) })
}
