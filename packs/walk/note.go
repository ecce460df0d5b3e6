package walk

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/units"
)

// Note writes into the job what the sheets print of the walk: which step ends a
// reading, where a torque is not the last one, when a step is done, and the hours
// until it is done.
func (w *Walk) Note() {
	for _, d := range w.Job.Dims {
		if lost := w.lostAsTold(d); len(lost) > 0 {
			d.LastChance, d.LostAt, d.LostVerb = lost[0].Step, nil, job.DoPermit
			if i := lost[0].Index; i < w.End(lost[0].Step) {
				d.LostVerb = w.Events[i].Verb
			}
			for _, l := range lost {
				if !slices.Contains(d.LostAt, l.Step) {
					d.LostAt = append(d.LostAt, l.Step)
				}
			}
		}
	}
	for _, e := range w.Events {
		if f := e.Grip; e.Verb == job.DoTighten && f.Joint != nil && w.ForNow(f, e) > 0 {
			i := slices.IndexFunc(e.Step.Tighten, func(x job.Fastening) bool { return x.Same(f) })
			t := &e.Step.Tighten[i]
			t.Final, t.On, t.Held = w.LastTorque(f.Joint, e.Step), w.ForNow(f, e), f.Joint.Spec.ForNow
			if t.Final == nil && t.Held != nil {
				t.Final = f.Joint // the same screws go in again and are tightened for good
			}
		}
	}
	for _, st := range w.Steps {
		w.branch(st)
	}
	w.noteHanging()
	w.noteMeeting()
	w.hours() // by who must be there while a load hangs
	w.noteLocks()
	w.deferred()
}

// lostAsTold is what ends a reading as the sheets tell of it. One that is worked out is not gone
// with the part that sets it, since what it takes is written down; nor is it before the last of
// what it takes is read.
func (w *Walk) lostAsTold(d *job.Dim) []Loss {
	lost := w.Losses(d)
	if d.Formula == nil {
		return lost
	}
	return slices.DeleteFunc(lost, func(l Loss) bool {
		return l.Sets != nil || slices.ContainsFunc(d.Refs, func(r job.Ref) bool {
			return slices.ContainsFunc(r.Dims, func(in *job.Dim) bool {
				e := w.Measured(in)
				return e != nil && l.Index <= e.Index
			})
		})
	})
}

// hours adds up what the steps are planned to take: elapsed hours, one step after
// another, and crew hours, which are elapsed hours times the people that a step takes. A
// section has the sums until it is done.
func (w *Walk) hours() {
	total, crew := units.Whole(0), units.Whole(0)
	for _, s := range w.Job.Sections {
		planned := false
		for _, st := range s.Steps {
			if st.Hours == nil {
				continue
			}
			planned = true
			total = total.Add(*st.Hours)
			crew = crew.Add(st.Hours.Mul(units.Whole(int64(st.Crew()))))
			sum, people := total, crew
			st.HoursSoFar, st.CrewSoFar = &sum, &people
		}
		if planned {
			sum, people := total, crew
			s.HoursSoFar, s.CrewSoFar = &sum, &people
		}
	}
	w.Job.Hours, w.Job.CrewHours = total, crew
}

// branch notes by which reading it is decided whether a step is done, and whether
// it is printed in a table.
func (w *Walk) branch(st *job.Step) {
	if st.Undoes != nil {
		if st.Undoes.If != nil {
			st.OnlyIf = st.Undoes
		}
		wanted := st.Undoes.Table || st.Undoes.Alike
		st.Table = wanted && st.BeyondRow() == ""
		st.Alike = wanted && !st.Table && st.NotAlike() == ""
	} else {
		wanted := st.Table
		st.Table = wanted && st.NotInTable() == ""
		st.Alike = wanted && !st.Table && st.NotAlike() == ""
	}
	if a := st.If; a != nil && a.Dim != nil {
		found, left := ReadBefore(a.Dim, st)
		a.Left = left && (!found || a.Dim.LeftAt.Index > a.Dim.FoundAt.Index)
	}
	if u := st.Until; u != nil && u.Dim != nil {
		u.Left = slices.Contains(st.Set, u.Dim)
	}
}

// ReadBefore reports whether a dimension is read as found, and as left, at a step
// before another.
func ReadBefore(d *job.Dim, st *job.Step) (found, left bool) {
	return d.FoundAt != nil && d.FoundAt.Index < st.Index, d.LeftAt != nil && d.LeftAt.Index < st.Index
}

// deferred lists the work that waits until the machine has run: the steps that say
// so, and the joints that are tightened again.
func (w *Walk) deferred() {
	for _, st := range w.Steps {
		if st.Later != "" && st.Undoes == nil {
			w.Job.Deferred = append(w.Job.Deferred, &job.Deferred{At: st.At, When: st.Later, Step: st})
		}
	}
	for _, j := range w.Job.Joints {
		for _, t := range j.Stages {
			if when, ok := strings.CutPrefix(t, "again after "); ok {
				w.Job.Deferred = append(w.Job.Deferred, &job.Deferred{At: j.At, When: "after " + when, Joint: j})
			}
		}
	}
}
