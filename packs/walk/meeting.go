package walk

import (
	"slices"

	"matchmark/packs/job"
)

// noteMeeting writes into the job where the mark of a part that goes back meets, if that is below
// the step that puts it on. Of three parts in a row the middle one has nothing to meet until the
// next is on, and what hangs meets nothing until it stands. Where the author says it, it is left
// there; what is put together at the bench meets there.
func (w *Walk) noteMeeting() {
	for _, x := range w.Steps {
		for _, m := range x.Fit {
			p := m.Part
			if p.Meets != nil || p.Marked == nil || p.Marked.Index >= x.Index || x.Renews(p) {
				continue
			}
			at := w.meets(m)
			if at == x {
				continue
			}
			m.MeetsAt = at
			if p.MarkedAbove(at) != nil && w.parts[p].before(w.End(at)).on > 0 && !slices.Contains(at.Meet, p) && !job.AnyOf(at.Fit, p) {
				at.Meet = append(at.Meet, p)
			}
		}
	}
}

// meets is the step at which the mark of a part that goes back meets: the latest at which one
// side of it comes on, or comes to stand.
func (w *Walk) meets(m *job.Move) *job.Step {
	at := m.Step
	if s := w.seats[m]; s != nil {
		at = s
	}
	q := m.Part.Across
	if q == nil || m.Step.Bench {
		return at
	}
	on := w.whole(q, m.Part.Marked, at)
	if on == nil {
		return at // that it stays off is another law's
	}
	var last *job.Move
	for _, b := range q.Back {
		if b.Step.Index <= on.Index && (last == nil || b.Step.Index >= last.Step.Index) {
			last = b
		}
	}
	if s := w.seats[last]; s != nil && s.Index > on.Index {
		return s
	}
	return on
}

// whole is the first step from one on that leaves as many pieces of a part in the machine as
// were there when a mark was made; nil if none does.
func (w *Walk) whole(p *job.Part, marked, from *job.Step) *job.Step {
	had := w.parts[p].before(w.Start(marked)).on
	for _, st := range w.Steps {
		if st.Index >= from.Index && w.parts[p].before(w.End(st)).on >= had {
			return st
		}
	}
	return nil
}
