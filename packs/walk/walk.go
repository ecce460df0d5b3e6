// Package walk plays a job through: the events of the work in their order, and
// what the machine is after each of them. It is built once and asked by all that
// prove something of the order of work. It finds nothing wrong by itself: what
// cannot be (pieces taken off that are off already) is noted at its event.
package walk

import "matchmark/packs/job"

// An Event is one act at its place in the order of work.
type Event struct {
	Index int
	Step  *job.Step
	job.Act
	// Had is, of an act that moves pieces, how many were there to be moved: in the
	// machine for those that come off, off it for those that go back or on for now,
	// in for now for those that come out again.
	Had int
}

// A Walk is a job with its events and the state of the machine at each.
type Walk struct {
	Job    *job.Job
	Steps  []*job.Step // in the order of work
	Events []*Event

	first      map[*job.Step]int // the index of the first event at or after a step's start
	parts      map[*job.Part]*timeline[pieces]
	grips      map[grip]*timeline[Grip]
	containers map[*job.Container]*timeline[int]
	locks      map[*job.Isolation]*timeline[*Event]
	openings   map[*job.Opening]*timeline[*Event]
	hung       map[*job.Lift]*timeline[*job.Step] // the step that raised the load
	off        map[*job.Move]int                  // pieces of a removal that are off the machine now
	seats      map[*job.Move]*job.Step            // where the load in which a part hangs as it is put back comes to stand
	disturbed  map[*job.Part][]Loss
}

// pieces is where the pieces of a part are.
type pieces struct {
	on  int    // in the machine
	now int    // in it for now, to be taken out again
	out *Event // the last that fitted some for now
}

// A grip is what can be loosened and tightened: a joint, or a part by its name.
type grip struct {
	joint *job.Joint
	part  *job.Part
}

// A Grip is how tight a joint or a part is.
type Grip struct {
	Of       job.Fastening
	Loosened *Event // nil while it is tight
	Fitted   *Event // put back a fastener since it was last tightened
	Trial    *Event // tightened it last, while a fastener was on for now
	Known    bool   // the walk has met it
}

// Of plays a job through.
func Of(j *job.Job) *Walk {
	w := &Walk{
		Job: j, first: map[*job.Step]int{}, off: map[*job.Move]int{},
		parts: map[*job.Part]*timeline[pieces]{}, grips: map[grip]*timeline[Grip]{}, containers: map[*job.Container]*timeline[int]{},
		disturbed: map[*job.Part][]Loss{}, hung: map[*job.Lift]*timeline[*job.Step]{}, seats: map[*job.Move]*job.Step{},
		locks: map[*job.Isolation]*timeline[*Event]{}, openings: map[*job.Opening]*timeline[*Event]{},
	}
	for _, p := range j.Parts {
		start := pieces{on: p.Count}
		if p.Aid || p.Added() {
			start.on = 0
		}
		w.parts[p] = &timeline[pieces]{start: start}
	}
	for _, jt := range j.Joints {
		w.grips[grip{joint: jt}] = &timeline[Grip]{start: Grip{Of: job.Fastening{Joint: jt, At: jt.At}, Known: true}}
	}
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			w.Steps = append(w.Steps, st)
			w.first[st] = len(w.Events)
			for _, a := range st.Acts() {
				e := &Event{Index: len(w.Events), Step: st, Act: a}
				w.Events = append(w.Events, e)
				w.apply(e)
				w.disturb(e)
			}
			w.hang(st)
		}
	}
	return w
}

// Start is the place in the order of events at which a step begins.
func (w *Walk) Start(st *job.Step) int { return w.first[st] }

// End is the place in the order of events at which a step is done.
func (w *Walk) End(st *job.Step) int {
	if st.Index+1 < len(w.Steps) {
		return w.first[w.Steps[st.Index+1]]
	}
	return len(w.Events)
}

// Find gives the event of a step that does something to a thing, nil if none does.
func (w *Walk) Find(st *job.Step, is func(*Event) bool) *Event {
	if st == nil {
		return nil
	}
	for _, e := range w.Events[w.Start(st):w.End(st)] {
		if is(e) {
			return e
		}
	}
	return nil
}

// Measured is the event that takes a reading as found, nil if none does.
func (w *Walk) Measured(d *job.Dim) *Event {
	return w.Find(d.FoundAt, func(e *Event) bool { return e.Verb == job.DoMeasure && e.Dim == d })
}

// Set is the event that takes a reading as left, nil if none does.
func (w *Walk) Set(d *job.Dim) *Event {
	return w.Find(d.LeftAt, func(e *Event) bool { return e.Verb == job.DoSet && e.Dim == d })
}

// Moved is the event of a move, nil if its step is not walked, or for no move.
func (w *Walk) Moved(m *job.Move) *Event {
	if m == nil {
		return nil
	}
	return w.Find(m.Step, func(e *Event) bool { return e.Move == m })
}
