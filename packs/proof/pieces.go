package proof

import (
	"slices"
	"strconv"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// pieces sees that every piece that a step takes is there, and that all that came
// off is back at the end.
func (r *report) pieces() {
	sited := map[source.Pos]bool{} // places where a move on the wrong site was told
	for _, e := range r.walk.Events {
		switch e.Verb {
		case job.DoRemove:
			r.sited(e, "comes off", sited)
			r.removed(e)
		case job.DoFit:
			r.sited(e, "goes back", sited)
			r.fitted(e)
		}
	}
	for _, p := range r.job.Parts {
		for _, off := range p.Off {
			r.staysOff(p, off)
		}
	}
}

func (r *report) removed(e *walk.Event) {
	m := e.Move
	p := m.Part
	switch {
	case e.Had == 0 && p.Added():
		r.problems.AddWith(m.At, "not-there-yet", p.Called()+" is added by this job, and comes off at "+e.Step.Name()+" before it is on", p.At, "the part", "take renew: added out, or remove it below the step that fits it")
	case e.Had == 0:
		r.problems.AddWith(m.At, "removed-twice", p.Called()+" is taken off by two steps", p.Off[0].At, "taken off here first", "take it out of one of them")
	case e.Had < m.N:
		r.problems.AddWith(m.At, "removed-twice", "only "+strconv.Itoa(e.Had)+" of "+strconv.Itoa(p.Count)+" "+p.Called()+" are still on, not "+strconv.Itoa(m.N), p.Off[0].At, "the others come off here",
			"remove: [{"+p.Key+": "+strconv.Itoa(e.Had)+"}]")
	}
}

func (r *report) fitted(e *walk.Event) {
	m := e.Move
	if now, out := r.walk.Now(m.Part, e); now > 0 {
		r.problems.AddWith(m.At, "still-in", m.Part.Called()+" goes back, and is still in for now", out.At, "fitted for now here", "take-out-again: ["+m.Part.Key+"] before it goes back for good")
	}
	if off := r.walk.Moved(m.Undo); e.Had < m.N && off != nil && off.Index > e.Index {
		r.problems.AddWith(m.At, "back-before-off", m.Part.Name+" is put back at "+e.Step.Name()+" before it comes off at "+m.Undo.Step.Name(), m.Undo.At, "comes off here",
			"move the step that fits it below the step that removes it")
	}
}

// sited sees that a part that belongs to an assembly is moved where that assembly
// is: on the bench when it has come off, else in the machine.
func (r *report) sited(e *walk.Event, verb string, told map[source.Pos]bool) {
	m := e.Move
	away := r.walk.Away(m.Part, e)
	if told[m.At] {
		return // the row that undoes it goes wrong with it
	}
	told[m.At] = (away == nil) == m.Step.Bench
	switch {
	case away == nil && m.Step.Bench:
		what := m.Part.Name + " " + verb + " on the bench"
		if m.Part.Of == nil {
			r.problems.Add(m.At, "not-on-bench", what+", but it belongs to no assembly that could be there", "take where: bench out, or write of: at the part")
			return
		}
		at := m.Part.Of.At
		if off := m.Part.Of.Off; len(off) > 0 {
			at = off[0].At
		}
		r.problems.AddWith(m.At, "not-on-bench", what+", but "+m.Part.Of.Called()+" is in the machine then", at, "the assembly",
			"take where: bench out, or move the step")
	case away != nil && !m.Step.Bench:
		r.problems.AddWith(m.At, "on-bench", m.Part.Name+" "+verb+" in the machine, but "+away.Called()+" is off it then", away.Off[0].At, "comes off here",
			"where: bench, or move the step")
	}
}

// staysOff sees that what one move took off goes back, or is gone for good.
func (r *report) staysOff(p *job.Part, off *job.Move) {
	left, back := r.walk.StayOff(off), off.PutBack()
	switch {
	case left == 0, off.To.Scrap && p.Renew == "never", off.Step.Section.Unreversed:
	case off.To.Scrap && !p.ComesNew():
		r.problems.Add(off.At, "nothing-new", p.Called()+" is scrapped at "+off.Step.Name()+" and no new one goes on", "renew: always at the part", "or renew: never if it is gone for good")
	case left < off.N && back == nil:
		// Fewer came off than this step says: spoken of already.
	case left < off.N:
		r.problems.AddWith(off.At, "count-differs", strconv.Itoa(off.N)+" of "+p.Name+" come off and "+strconv.Itoa(off.N-left)+" go back", back.At, "put back here", "make the two counts the same")
	case back == nil:
		r.problems.Add(off.At, "never-back", p.Called()+" comes off at "+off.Step.Name()+" and never goes back", "fit: ["+p.Key+"] at a later step", "or reverse: its section", "or into: scrap if it is done with")
	}
}

// pieces binds the steps that move the same part, or a part and the assembly that it
// belongs to.
func (b *binder) pieces() {
	for _, st := range b.walk.Steps {
		for _, m := range slices.Concat(st.Remove, st.Fit, st.ForNow, st.TakeOut) {
			b.moves(m.Part, st)
		}
		for _, l := range st.LeftOut {
			b.moves(l.Part, st)
		}
	}
}

// A standing is where a part is: it changes when the part is moved, and not when the
// part is only loosened or tightened.
type standing struct{ part *job.Part }

// moves notes that a step moves a part, which must be in its assembly or on the bench
// with it.
func (b *binder) moves(p *job.Part, st *job.Step) {
	why := job.Bind{Kind: job.BoundPart, Part: p}
	b.changes(p, st, why)
	b.changes(standing{p}, st, why)
	b.stands(p.Of, st)
}

// stands notes that a step needs a part, and the assemblies that it belongs to, where
// they are.
func (b *binder) stands(p *job.Part, st *job.Step) {
	for _, q := range p.Upward() {
		b.looks(standing{q}, st)
	}
}
