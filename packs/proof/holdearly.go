package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkHoldEarly sees that a hold stands below the readings that it is for: those that send
// somebody to it when they are out, and those that its words name, by their marks or by their
// kind. One of them at or above it is enough: the rest may be told at another time.
func (r *report) checkHoldEarly() {
	for _, h := range r.job.Holds {
		e := r.released(h)
		if e == nil || h.Again != nil {
			continue
		}
		if !r.sentEarly(h, e) && !r.triedEarly(h, e) {
			r.wordedEarly(h, e)
		}
	}
}

// sentEarly tells of a reading that sends to a hold which is released by then, and reports
// whether it did.
func (r *report) sentEarly(h *job.Hold, e *walk.Event) bool {
	for _, d := range r.sentEarlyTo(h) {
		if read := r.readingsOf(d, nil); len(read) > 0 && below(read, e) {
			r.early(h, e, read[0], " "+sends(d, h)+", and is read only")
			return true
		}
	}
	return false
}

// triedEarly tells of a step below a hold that sends to it when its last try is no good either,
// where no step at or above it does.
func (r *report) triedEarly(h *job.Hold, e *walk.Event) bool {
	there, done := phrase.Of(`\bat `+phrase.Quoted(h.Mark)+`\b`), doneAt(h)
	var first *job.Step
	for _, st := range r.walk.Steps {
		switch {
		case !there.MatchString(done.ReplaceAllString(r.job.InEnglish(st.StillOut), "")):
		case r.walk.Start(st) < e.Index:
			return false
		case first == nil:
			first = st
		}
	}
	if first == nil {
		return false
	}
	r.problems.WarnWith(e.Step.At, "hold-early", h.Mark+", "+source.Quote(h.What)+", is released at "+e.Step.Name()+", and "+first.Name()+" sends to it when its last try is out", first.At, "tried here",
		"hold: "+h.Mark+" at that step or below it")
	return true
}

// doneAt finds what lies behind a hold already, and sends nobody to it: the gasket agreed at W1.
func doneAt(h *job.Hold) *phrase.Pattern {
	return phrase.Of(`(?i)\b(?:chosen|agreed|released|set|decided|named|approved|accepted|given|signed|fixed|picked|selected|seen|shown|left|written down|laid down)(?: (?:by|with) (?:the )?(?:\pL+ )?\pL+)? at ` + phrase.Quoted(h.Mark) + `\b`)
}

// wordedEarly tells of readings that the words of a hold name, where all stand below it.
func (r *report) wordedEarly(h *job.Hold, e *walk.Event) {
	if read := r.worded(r.job.InEnglish(h.What)); len(read) > 0 && below(read, e) {
		r.early(h, e, read[0], ", of which that tells, is read only")
	}
}

// worded lists the events that read what words of a hold name, the first of them first.
func (r *report) worded(words string) []*walk.Event {
	if noReading.MatchString(words) {
		return nil
	}
	marks, kinds := dimMark.FindAllString(words, -1), kindsIn(words)
	var read []*walk.Event
	for _, d := range r.job.Dims {
		if d.Merged == nil && (slices.Contains(marks, d.Base) || r.ofKind(d, kinds)) {
			read = append(read, r.readingsOf(d, &words)...)
		}
	}
	slices.SortFunc(read, func(x, y *walk.Event) int { return x.Index - y.Index })
	return read
}

// ofKind reports whether a reading is of one of some kinds.
func (r *report) ofKind(d *job.Dim, kinds []kindWord) bool {
	return slices.ContainsFunc(kinds, func(k kindWord) bool {
		return k.kind == "" || d.Kind == k.kind || k.words.MatchString(r.job.InEnglish(d.What))
	})
}

// readingsOf are the events that read a dimension, of words those alone that they tell of.
func (r *report) readingsOf(d *job.Dim, words *string) []*walk.Event {
	both := []*walk.Event{r.walk.Measured(d), r.walk.Set(d)}
	if words != nil && closesOn.MatchString(*words) {
		both = both[1:]
	} else if words != nil && seesFound.MatchString(*words) {
		both = both[:1]
	}
	return slices.DeleteFunc(slices.Clone(both), func(e *walk.Event) bool { return e == nil })
}

// below reports whether all of some events stand below another.
func below(list []*walk.Event, e *walk.Event) bool {
	return !slices.ContainsFunc(list, func(x *walk.Event) bool { return x.Index < e.Index })
}

// early tells of one hold.
func (r *report) early(h *job.Hold, e *walk.Event, first *walk.Event, why string) {
	r.problems.WarnWith(e.Step.At, "hold-early", h.Mark+", "+source.Quote(h.What)+", is released at "+e.Step.Name()+", and "+first.Dim.Mark+why+" at "+first.Step.Name(), first.At, "read here",
		"hold: "+h.Mark+" at that step or below it")
}

// holdEarly binds a hold to the step above it that alone reads what it is for.
func (b *binder) holdEarly() {
	r := &report{walk: b.walk, job: b.job}
	for _, h := range b.job.Holds {
		e := r.released(h)
		if e == nil || h.Again != nil {
			continue
		}
		words := b.job.InEnglish(h.What)
		read := r.worded(words)
		for _, d := range r.sentEarlyTo(h) {
			b.alone(r.readingsOf(d, nil), e)
		}
		b.alone(read, e)
	}
}

// alone binds a hold to the one step above it that has any of some readings.
func (b *binder) alone(read []*walk.Event, hold *walk.Event) {
	above := slices.DeleteFunc(slices.Clone(read), func(x *walk.Event) bool { return x.Index > hold.Index })
	if len(above) == 0 || slices.ContainsFunc(above, func(x *walk.Event) bool { return x.Step != above[0].Step }) {
		return
	}
	b.before(above[0].Step, hold.Step, job.Bind{Kind: job.BoundReading, Dim: above[0].Dim})
}
