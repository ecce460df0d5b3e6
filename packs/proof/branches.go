package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkBranches sees that what decides is known by then, that no reading is taken
// for granted whose step may be left out, and that what waits stands at the end.
func (r *report) checkBranches() {
	var last *job.Step // that is not for later
	for _, st := range r.walk.Steps {
		if st.Later == "" {
			last = st
		}
	}
	tabled := map[source.Pos]bool{} // told once for all places
	for _, st := range r.walk.Steps {
		if a := st.If; a != nil && a.Dim != nil {
			r.checkDecided(st, a)
		}
		if st.Later != "" && last != nil && st.Index < last.Index && st.Undoes == nil {
			r.problems.AddWith(st.At, "not-last", "step "+st.Name()+" waits ("+st.Later+"), and "+last.Name()+" comes after it and does not wait", last.At, "this one does not wait", "move it to the end")
		}
		if what := st.NotAlike(); !st.TableAt.IsZero() && !st.Table && what != "" && !tabled[st.TableAt] {
			tabled[st.TableAt] = true
			r.problems.Add(st.TableAt, "not-in-a-table", "step "+st.Name()+" "+what+", and is not printed together with other places",
				"take as-table: out, or make a step of its own for it")
		}
	}
	for _, d := range r.job.Dims {
		r.checkGranted(d, d.FoundAt, d.FoundWork)
		r.checkGranted(d, d.LeftAt, d.LeftWork)
	}
}

// checkDecided sees that the reading that decides whether a step is done is taken
// before it.
func (r *report) checkDecided(st *job.Step, a *job.Asked) {
	if found, left := walk.ReadBefore(a.Dim, st); found || left {
		return
	}
	p := source.Problem{
		Pos: a.At, Severity: source.Error, Code: "taken-later",
		Message: st.Name() + " is decided by " + a.Dim.Mark + ", which is not read before it",
		Help:    []string{"measure " + a.Dim.Base + " at a step above " + st.No},
	}
	if at := a.Dim.FoundAt; at != nil {
		p.See = []source.Also{{Pos: at.At, What: "read here"}}
	}
	r.problems = append(r.problems, p)
}

// checkGranted sees that no sum takes a reading whose step may be left out, unless
// it is left out in the same case.
func (r *report) checkGranted(d *job.Dim, st *job.Step, w job.Working) {
	if st == nil {
		return
	}
	uses := func(l *job.Ladder) {
		if l == nil {
			return
		}
		for _, u := range l.Uses {
			for _, in := range u.Dims {
				from := in.FoundAt
				if u.Left {
					from = in.LeftAt
				}
				if from == nil || from.If == nil || st.If != nil && st.If.Cond.Text() == from.If.Cond.Text() && st.If.Dim == from.If.Dim {
					continue
				}
				r.problems = append(r.problems, source.Problem{
					Pos: st.At, Severity: source.Error, Code: "may-be-missing",
					Message: d.Mark + " at " + st.Name() + " needs " + in.Mark + ", which is read only if " + from.If.Cond.Text(),
					Help:    []string{"read it always, or give this step the same if:"},
					See:     []source.Also{{Pos: from.If.At, What: "read only if this is so"}},
				})
			}
		}
	}
	uses(w.Formula)
	for _, l := range w.Limits {
		uses(l.At)
		uses(l.Low)
		uses(l.High)
	}
}

// branches binds a step to the readings that decide whether it is done or that what
// it reads is worked out from, and all steps to those that wait until the machine has
// run.
func (b *binder) branches() {
	named := map[string][]*job.Dim{}
	for _, d := range b.job.Dims {
		named[d.Mark] = append(named[d.Mark], d)
		if d.Base != d.Mark {
			named[d.Base] = append(named[d.Base], d)
		}
	}
	var run, waits *job.Step // the last that does not wait, the first that does
	for _, st := range b.walk.Steps {
		switch {
		case st.Later == "" || st.Undoes != nil:
			run = st
		case waits == nil:
			waits = st
		}
		if a := st.If; a != nil && a.Dim != nil {
			b.looks(a.Dim, st)
		}
		for _, d := range slices.Concat(st.Measure, st.Set) {
			for _, m := range d.Marks() {
				for _, e := range named[string(m)] {
					if e.Mark == string(m) || e.Place.Agrees(d.Place) {
						b.looks(e, st)
					}
				}
			}
		}
	}
	for _, st := range b.walk.Steps {
		if st.Later != "" && st.Undoes == nil {
			b.before(run, st, job.Bind{Kind: job.BoundLater})
		} else {
			b.before(st, waits, job.Bind{Kind: job.BoundLater})
		}
	}
}
