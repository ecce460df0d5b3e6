package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/walk"
)

// opens finds a step whose words say that it opens something: a door or a hatch that is
// no part of the definition.
var opens = phrase.Of(`(?i)\b(re-?)?open(s|ed|ing)?\b`)

// checkCovers sees that an opening is opened by the step that takes off what closes it,
// and is not said to be closed before any of that is back. What closes an opening is what
// its closing step puts back; fasteners tell nothing, for they come off before the cover.
func (r *report) checkCovers() {
	told := map[string]bool{} // once for all places
	for _, o := range r.job.Openings {
		opened, closed := r.walk.Opened(o), r.walk.Closed(o)
		if opened == nil || closed == nil || opened.Step.Index > closed.Step.Index || told[o.Key] {
			continue
		}
		if opened.Step == closed.Step { // it is closed by what was opened
			told[o.Key] = r.openedByNothing(o, opened.Step)
			continue
		}
		told[o.Key] = r.openedByNothing(o, opened.Step) || r.closedEarly(o, opened.Step, closed.Step) || r.openedElsewhere(o, opened.Step, closed.Step)
	}
}

// opensByWords reports whether a step takes nothing off and says that it opens something, or
// says in another language than English what it does.
func (r *report) opensByWords(st *job.Step) bool {
	off := slices.ContainsFunc(r.walk.At(st), func(e *walk.Event) bool { return e.Verb == job.DoRemove })
	return !off && (!r.job.HasEnglish(st.Do) || opens.MatchString(r.job.InEnglish(st.Do)))
}

// openedByNothing tells of an opening at whose step nothing comes off, is loosened or is
// said to be opened, and reports whether it did.
func (r *report) openedByNothing(o *job.Opening, st *job.Step) bool {
	worked := slices.ContainsFunc(r.walk.At(st), func(e *walk.Event) bool {
		return e.Move != nil || e.Verb == job.DoLoosen || e.Verb == job.DoTighten || e.Verb == job.DoLift
	})
	if worked || r.opensByWords(st) {
		return false
	}
	r.problems.Warn(st.At, "opened-elsewhere", "step "+st.Name()+" opens "+o.Mark()+", and takes nothing off by which it would stand open", "open: ["+o.Key+"] at the step that takes off what closes it", "or say in the words of the step what is opened")
	return true
}

// openedElsewhere tells of an opening that one step opens and another closes with parts
// that came off at a third, and reports whether it did.
func (r *report) openedElsewhere(o *job.Opening, opener, closer *job.Step) bool {
	var off *walk.Event
	for _, e := range r.walk.At(closer) {
		if e.Verb != job.DoFit || e.Move.Part.Fastens() {
			continue
		}
		was := r.walk.Moved(e.Move.Undo)
		if was == nil {
			continue
		}
		if was.Step == opener {
			return false
		}
		if off == nil || was.Step.Index < off.Step.Index {
			off = was
		}
	}
	if off == nil || off.Step.Bench != opener.Bench || r.within(o, closer) || r.opensByWords(opener) {
		return false
	}
	r.problems.WarnWith(opener.At, "opened-elsewhere", o.Mark()+" is opened at "+opener.Name()+" and closed at "+closer.Name()+", which puts "+off.Move.Part.Called()+" back; that came off at "+off.Step.Name()+", where nothing is opened by it", off.At, "comes off here",
		"open: ["+o.Key+"] at "+off.Step.No, "or close: ["+o.Key+"] at the step that puts back what "+opener.No+" takes off")
	return true
}

// within reports whether an opening lies within another one: a step opened both, and the
// other is closed at a step or below it.
func (r *report) within(o *job.Opening, st *job.Step) bool {
	opened, closed := r.walk.Opened(o), r.walk.Closed(o)
	return slices.ContainsFunc(r.job.Openings, func(x *job.Opening) bool {
		xo, xc := r.walk.Opened(x), r.walk.Closed(x)
		return x != o && x.Key != o.Key && xo != nil && xo.Step == opened.Step && xc != nil && xc.Step.Index >= st.Index && xc.Step != closed.Step
	})
}

// closedEarly tells of an opening that is said to be closed by a step which puts other
// parts back, while nothing is back of what came off when it was opened. One of several
// that a step opened may lie within another, and is closed before that.
func (r *report) closedEarly(o *job.Opening, opener, closer *job.Step) bool {
	var off, back *job.Move
	for _, e := range r.walk.At(opener) {
		if e.Verb != job.DoRemove || e.Move.Part.Fastens() {
			continue
		}
		b := r.walk.Moved(e.Move.PutBack())
		if b == nil {
			continue
		}
		if b.Step.Index <= closer.Index {
			return false
		}
		if back == nil || b.Step.Index < back.Step.Index {
			off, back = e.Move, b.Move
		}
	}
	if back == nil || r.within(o, back.Step) {
		return false
	}
	r.problems.AddWith(closer.At, "closed-early", "step "+closer.Name()+" closes "+o.Mark()+", and "+off.Part.Called()+", which came off when it was opened, goes back only at "+back.Step.Name(), back.At, "goes back here",
		"close: ["+o.Key+"] at "+back.Step.No)
	return true
}

// covers binds the step at which an opening is closed to those that put back what came off
// when it was opened.
func (b *binder) covers() {
	for _, o := range b.job.Openings {
		opened, closed := b.walk.Opened(o), b.walk.Closed(o)
		if opened == nil || closed == nil || opened.Step == closed.Step {
			continue
		}
		for _, e := range b.walk.At(opened.Step) {
			if e.Verb != job.DoRemove {
				continue
			}
			if back := b.walk.Moved(e.Move.PutBack()); back != nil {
				b.before(back.Step, closed.Step, job.Bind{Kind: job.BoundPart, Part: e.Move.Part})
			}
		}
	}
}
