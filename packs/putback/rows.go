package putback

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// undo is the section that puts a section back, nil if nothing has to be.
func (b *undoer) undo(s *job.Section, at source.Pos) *job.Section {
	back := &job.Section{At: at, Name: s.Name, Place: s.Place, Back: true}
	for i := len(s.Steps) - 1; i >= 0; i-- {
		if row := b.undoStep(s.Steps[i], back); row != nil {
			back.Steps = append(back.Steps, row)
		}
	}
	back.Steps = recalled(back.Steps)
	if len(back.Steps) == 0 {
		return nil
	}
	return back
}

// undoStep is the row that undoes one step: fit what it removed, tighten what it
// loosened, set what it measured.
func (b *undoer) undoStep(st *job.Step, in *job.Section) *job.Step {
	row := &job.Step{
		At: st.At, Key: st.Key, Place: st.Place, Section: in, Back: true, Undoes: st,
		Do: st.PutBack.Value, Verbs: job.Undone(st.Verbs), Missed: st.MissedBack(), Bench: st.Bench,
	}
	switch row.Seen = st.Mirror.Seen; {
	case st.Mirror.First:
		row.Verbs = slices.Insert(row.Verbs, 0, job.DoSee)
	case len(row.Seen) > 0:
		row.Verbs = append(row.Verbs, job.DoSee) // when all else of the row is done
	}
	b.undoMoves(st, row)
	for _, d := range st.Measure {
		switch {
		case d.Left == nil:
			if !d.WatchedOnly() {
				row.Recall = append(row.Recall, d)
			}
		case d.LeftAt == nil:
			d.LeftAt = row
			row.Set = append(row.Set, d)
		}
	}
	alignAgain(st, row)
	closeAgain(st, row)
	heatAgain(st, row)
	b.liftBack(st, row)
	if len(row.Fit)+len(row.Lifts) > 0 {
		row.People, row.OnHook = st.People, st.OnHook
	}
	if st.Mirror.People > 0 {
		row.People = st.Mirror.People
	}
	if !works(row) && len(row.Set) == 0 && len(row.Recall) == 0 {
		return nil
	}
	row.Hours = st.Mirror.Hours
	guardAgain(st, row)
	return row
}

// undoMoves fits what a step removed and no written step fits, and tightens what
// it loosened, last first. A part that is scrapped for good stays away.
func (b *undoer) undoMoves(st, row *job.Step) {
	for i := len(st.Remove) - 1; i >= 0; i-- {
		off := st.Remove[i]
		if b.stock[off] == 0 || off.To.Scrap && !off.Part.ComesNew() {
			continue
		}
		fit := &job.Move{At: off.At, Step: row, Part: off.Part, N: b.stock[off]}
		fit.ComesFrom(off)
		b.stock[off] = 0
		off.Part.Back = append(off.Part.Back, fit)
		row.Fit = append(row.Fit, fit)
	}
	for i := len(st.Loosen) - 1; i >= 0; i-- {
		if f := st.Loosen[i]; !has(b.tight, f) && !takenOut(st, f) {
			row.Tighten = append(row.Tighten, f)
		}
	}
}

// takenOut reports whether all fasteners are aids, as the bolts of a lifting plate, that the same
// section takes out from the step on that loosens them: they are put on again by a step that says
// so. Aids that stay on, as a strongback that is slackened, are tightened again by the row.
func takenOut(st *job.Step, f job.Fastening) bool {
	steps := []*job.Step{st}
	if st.Section != nil {
		steps = st.Section.Steps[max(0, slices.Index(st.Section.Steps, st)):]
	}
	return len(f.Parts()) > 0 && !slices.ContainsFunc(f.Parts(), func(p *job.Part) bool {
		return !p.Aid || !slices.ContainsFunc(steps, func(s *job.Step) bool {
			return slices.ContainsFunc(s.TakeOut, func(m *job.Move) bool { return m.Part == p })
		})
	})
}

func has(list []job.Fastening, f job.Fastening) bool {
	for _, g := range list {
		if f.Same(g) {
			return true
		}
	}
	return false
}

// tightened lists what written steps tighten for good: not what is put on for a reading
// alone, as a cap that is bolted down for its bore and comes off again.
func (b *undoer) tightened() []job.Fastening {
	var out []job.Fastening
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			for _, f := range st.Tighten {
				if !onTrial(st, f) {
					out = append(out, f)
				}
			}
		}
	}
	return out
}

// onTrial reports whether a step tightens fasteners that it puts on for now.
func onTrial(st *job.Step, f job.Fastening) bool {
	return slices.ContainsFunc(st.ForNow, func(m *job.Move) bool { return slices.Contains(f.Parts(), m.Part) })
}

// tightenFitted lets the generated row that puts the last fastener of a joint back
// tighten it, where no step loosens or tightens that joint by name.
func (b *undoer) tightenFitted() {
	told := map[*job.Joint]bool{}
	place := map[*job.Step]int{}
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			place[st] = len(place)
			for _, f := range append(append([]job.Fastening{}, st.Loosen...), st.Tighten...) {
				told[f.Joint] = told[f.Joint] || !onTrial(st, f)
			}
		}
	}
	for _, j := range b.job.Joints {
		var last *job.Move
		for _, p := range j.Parts {
			for _, m := range p.Back {
				if last == nil || place[m.Step] > place[last.Step] {
					last = m
				}
			}
		}
		if last != nil && !told[j] && last.Step.Undoes != nil {
			last.Step.Tighten = append(last.Step.Tighten, job.Fastening{At: last.At, Joint: j})
		}
	}
}

// closeAgain lets a put-back row close what its step opened, unless another step
// does.
func closeAgain(st, row *job.Step) {
	for i := len(st.Open) - 1; i >= 0; i-- {
		if o := st.Open[i]; o.ClosedAt == nil {
			o.ClosedAt = row
			row.Close = append(row.Close, o)
		}
	}
}

// heatAgain lets a put-back row put on hot what its step drew off hot, unless
// another step does.
func heatAgain(st, row *job.Step) {
	for _, h := range st.Heats {
		fits := func(m *job.Move) bool { return h.Hub == nil || m.Part == h.Hub || h.Hub.Within(m.Part) }
		if h.PutOn == nil || h.PutOnAt != nil || !slices.ContainsFunc(row.Fit, fits) {
			continue
		}
		h.PutOnAt = row
		row.Heats = append(row.Heats, h)
	}
}
