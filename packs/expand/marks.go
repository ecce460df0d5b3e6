package expand

import (
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// noteMark ties a step to a part that gets its mark there, or that it puts on by the mark which
// a step above has made. A part that is on for good by then has its mark meet there: a hub goes
// on at the bench, and what it was marked to is far from it until the coupling closes.
func (b *builder) noteMark(st *job.Step, p *job.Part) {
	switch {
	case p.Marked != nil && job.AnyOf(slices.Concat(st.Fit, st.ForNow), p):
		st.Meet = append(st.Meet, p)
	case p.Marked != nil && b.isOn(p, st):
		st.Meet = append(st.Meet, p)
		p.Meets = st
	default:
		st.Marks = append(st.Marks, p)
		p.Marked = st
	}
}

// isOn reports whether a part that was marked is put back above a step and stays on.
func (b *builder) isOn(p *job.Part, at *job.Step) bool {
	on, above := false, true
	for _, s := range b.Job.Sections {
		for _, st := range s.Steps {
			above = above && st != at
			switch {
			case job.AnyOf(st.Remove, p):
				on = false
			case above && job.AnyOf(st.Fit, p):
				on = true
			}
		}
	}
	return on
}

// noteAcross notes the part on the other side of the joint that a mark stands on. It is said
// once, at the step that makes the mark or at one where it meets.
func (b *builder) noteAcross(st *job.Step, p *job.Part, m def.MatchMark) {
	if !m.On.Written() {
		return
	}
	from := p.Place
	if from.Label == "" {
		from = st.Place
	}
	found := b.PartsAt(m.On, from)
	if len(found) > 1 {
		b.Problems.Add(m.On.At, "which-place", source.Quote(m.On.Value)+" stands at several places, and the mark of "+p.Called()+" at one", "name the place: "+found[0].Place.Mark(found[0].Key))
	}
	if len(found) != 1 {
		return
	}
	switch q := found[0]; {
	case q == p:
		b.Problems.Add(m.On.At, "marked-alone", "the mark of "+p.Called()+" is to stand across a joint of "+p.Called()+" and itself", "write the part on the other side of the joint behind it")
	case p.Across != nil && p.Across != q:
		b.Problems.Add(m.On.At, "said-twice", "the mark of "+p.Called()+" stands across its joint with "+p.Across.Called()+", and here with "+q.Called(), "keep one of them")
	default:
		p.Across, p.AcrossSaid = q, true
	}
}
