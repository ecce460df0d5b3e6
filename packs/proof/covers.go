package proof

import (
	"regexp"
	"slices"

	"matchmark/packs/job"
)

// opens finds a step whose words say that it opens something: a door or a hatch that is
// no part of the definition.
var opens = regexp.MustCompile(`(?i)\b(re-?)?open(s|ed|ing)?\b`)

// checkCovers sees that an opening is opened by the step that takes off what closes it,
// and is not said to be closed before any of that is back. What closes an opening is what
// its closing step puts back; fasteners tell nothing, for they come off before the cover.
func (r *report) checkCovers() {
	told := map[string]bool{} // once for all places
	for _, o := range r.job.Openings {
		if o.OpenedAt == nil || o.ClosedAt == nil || o.OpenedAt.Index >= o.ClosedAt.Index || told[o.Key] {
			continue
		}
		told[o.Key] = r.openedByNothing(o) || r.closedEarly(o) || r.openedElsewhere(o)
	}
}

// opensByWords reports whether a step takes nothing off and says that it opens something, or
// says in another language than English what it does.
func (r *report) opensByWords(st *job.Step) bool {
	return len(st.Remove) == 0 && (!r.job.HasEnglish(st.Do) || opens.MatchString(r.job.InEnglish(st.Do)))
}

// openedByNothing tells of an opening at whose step nothing comes off, is loosened or is
// said to be opened, and reports whether it did.
func (r *report) openedByNothing(o *job.Opening) bool {
	st := o.OpenedAt
	if !st.Idle() || len(st.Lifts) > 0 || r.opensByWords(st) {
		return false
	}
	r.problems.Warn(st.At, "opened-elsewhere", "step "+st.Name()+" opens "+o.Mark()+", and takes nothing off by which it would stand open", "open: ["+o.Key+"] at the step that takes off what closes it", "or say in the words of the step what is opened")
	return true
}

// openedElsewhere tells of an opening that one step opens and another closes with parts
// that came off at a third, and reports whether it did.
func (r *report) openedElsewhere(o *job.Opening) bool {
	var off *job.Move
	for _, m := range o.ClosedAt.Fit {
		if m.Undo == nil || m.Part.Fastens() || r.walk.Moved(m.Undo) == nil {
			continue
		}
		if m.Undo.Step == o.OpenedAt {
			return false
		}
		if off == nil || m.Undo.Step.Index < off.Step.Index {
			off = m.Undo
		}
	}
	if off == nil || off.Step.Bench != o.OpenedAt.Bench || r.within(o, o.ClosedAt) || r.opensByWords(o.OpenedAt) {
		return false
	}
	r.problems.WarnWith(o.OpenedAt.At, "opened-elsewhere", o.Mark()+" is opened at "+o.OpenedAt.Name()+" and closed at "+o.ClosedAt.Name()+", which puts "+off.Part.Called()+" back; that came off at "+off.Step.Name()+", where nothing is opened by it", off.At, "comes off here",
		"open: ["+o.Key+"] at "+off.Step.No, "or close: ["+o.Key+"] at the step that puts back what "+o.OpenedAt.No+" takes off")
	return true
}

// within reports whether an opening lies within another one: a step opened both, and the
// other is closed at a step or below it.
func (r *report) within(o *job.Opening, st *job.Step) bool {
	return slices.ContainsFunc(r.job.Openings, func(x *job.Opening) bool {
		return x != o && x.Key != o.Key && x.OpenedAt == o.OpenedAt && x.ClosedAt != nil && x.ClosedAt.Index >= st.Index && x.ClosedAt != o.ClosedAt
	})
}

// closedEarly tells of an opening that is said to be closed by a step which puts other
// parts back, while nothing is back of what came off when it was opened. One of several
// that a step opened may lie within another, and is closed before that.
func (r *report) closedEarly(o *job.Opening) bool {
	var off, back *job.Move
	for _, m := range o.OpenedAt.Remove {
		b := m.PutBack()
		if m.Part.Fastens() || b == nil {
			continue
		}
		if b.Step.Index <= o.ClosedAt.Index {
			return false
		}
		if back == nil || b.Step.Index < back.Step.Index {
			off, back = m, b
		}
	}
	if back == nil || r.within(o, back.Step) {
		return false
	}
	r.problems.AddWith(o.ClosedAt.At, "closed-early", "step "+o.ClosedAt.Name()+" closes "+o.Mark()+", and "+off.Part.Called()+", which came off when it was opened, goes back only at "+back.Step.Name(), back.At, "goes back here",
		"close: ["+o.Key+"] at "+back.Step.No)
	return true
}

// covers binds the step at which an opening is closed to those that put back what came off
// when it was opened.
func (b *binder) covers() {
	for _, o := range b.job.Openings {
		if o.OpenedAt == nil {
			continue
		}
		for _, m := range o.OpenedAt.Remove {
			if back := m.PutBack(); back != nil {
				b.before(back.Step, o.ClosedAt, job.Bind{Kind: job.BoundPart, Part: m.Part})
			}
		}
	}
}
