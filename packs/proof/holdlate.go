package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkHoldLate sees that what is decided at a hold can still be decided there: a part that was
// found out, and of which that is told at the hold, is not back by then; and what was left out is
// told before the last of the locks comes off for good. What goes back new is no longer judged, words that
// name two holds tell the one or the other, and what is only for a later outage may be told at
// any time.
func (r *report) checkHoldLate() {
	for _, h := range r.job.Holds {
		e := r.released(h)
		if e == nil || h.Again != nil {
			continue
		}
		for _, d := range r.sentTo(h) {
			if !decidedAt(r.job, d) {
				continue
			}
			if back := r.backBefore(d, e); back != nil {
				r.late(h, d, e, back, d.Mark+" "+sends(d, h)+"; "+back.Move.Part.Called()+" is back at "+back.Step.Name(), "goes back here")
				break
			}
			if off := r.unlockedBefore(d, e); off != nil {
				r.late(h, d, e, off, d.Mark+" "+sends(d, h)+"; with the lock "+off.Lock.Key+" the last is off for good at "+off.Step.Name(), "unlocked here")
				break
			}
		}
	}
}

var (
	// holdMark finds the marks of holds in words.
	holdMark = phrase.Of(`\bW\d+\b`)
	// forLater are words by which nothing is decided on this job.
	forLater = phrase.Of(`(?i)\bnext (?:outage|overhaul|shutdown|stop|time|turnaround|job|year|inspection)\b|\border(?:s|ed)? (?:a|one|two|new|another|it|them|spares?)\b|\bfor the (?:record|report|file|history)\b|\b(?:go|goes) (?:on|back) (?:again )?as (?:it|they) (?:is|are|was|were)\b`)
	// doneFirst is what is done at once when a reading is out, and only told at the hold.
	doneFirst = phrase.Of(`(?i)(?:^|[.;:,] ?|\b(?:and|then) )(?:(?:renew|replace|exchange|change|swap|scrap|repair|mend|polish|dress|grind|machine|skim|file|hone|lap|ream|weld|metal-spray|straighten|shim|clean|tighten)\b|(?:fit|use|put in|put on|take) (?:a|an|the|one) (?:new|spare)\b)[^;.,]*?(?:[;.,]| and\b| then\b)`)
	// notedFirst is what is written down, and shown at the hold.
	notedFirst = phrase.Of(`(?i)^(?:write|note|record|enter|log|mark)\b[^;.,]*(?:[;.,]| and\b) ?(?:(?:it|this|that|them|to be|is|are|and) )*(?:show|report|say|seen)`)
	// asksFirst are words by which it is decided at the hold whether that is done.
	asksFirst = phrase.Of(`(?i)\b(?:or|if|unless|until|after|once|when|before|whether|what|which|asks?|decides?|agree[sd]?|approve[sd]?|accept(?:s|ed)?|released?|releases|stop|not|may)\b`)
)

// decidedAt reports whether a dimension that sends somebody to a hold sends to one alone, for
// something that is decided on this job.
func decidedAt(j *job.Job, d *job.Dim) bool {
	var all []string
	for _, text := range append(whenOut(d), d.States()...) {
		all = append(all, j.InEnglish(text))
	}
	words := strings.Join(all, "; ")
	marks := holdMark.FindAllString(words, -1)
	return !slices.ContainsFunc(marks, func(m string) bool { return m != marks[0] }) && !forLater.MatchString(words) &&
		slices.ContainsFunc(all, leftToHold)
}

// leftToHold reports whether words about a reading that is out leave it to a hold what is done.
func leftToHold(words string) bool {
	at := holdMark.FindStringIndex(words)
	if at == nil {
		return false
	}
	done := doneFirst.MatchString(words[:at[0]]) || notedFirst.MatchString(words[:at[0]])
	return !done || asksFirst.MatchString(words)
}

// backBefore is the first event that puts a part on again of which a reading is judged as found
// alone, after that reading and before a hold; nil if none does.
func (r *report) backBefore(d *job.Dim, hold *walk.Event) *walk.Event {
	read := r.walk.Measured(d)
	if read == nil || !d.JudgedFound() || read.Index > hold.Index {
		return nil
	}
	for _, e := range r.walk.Events[read.Index:hold.Index] {
		if e.Verb == job.DoFit && !e.Move.New && slices.Contains(d.FaceParts(), e.Move.Part) {
			return e
		}
	}
	return nil
}

// unlockedBefore is the event that takes the last lock off for good after a reading was set with
// that lock on, and before a hold; nil if none does. While any lock is on nothing runs: one of
// several is taken off to fill or to vent.
func (r *report) unlockedBefore(d *job.Dim, hold *walk.Event) *walk.Event {
	set := r.walk.Set(d)
	if set == nil || set.Index > hold.Index || !r.noneLocked(hold.Index) {
		return nil
	}
	for _, e := range r.walk.Events[set.Index:hold.Index] {
		if e.Verb == job.DoUnlock && r.walk.LockedAt(e.Lock, set.Index) && r.noneLocked(e.Index+1) {
			return e
		}
	}
	return nil
}

// noneLocked reports whether no isolation is locked before an event.
func (r *report) noneLocked(at int) bool {
	return !slices.ContainsFunc(r.job.Isolations, func(x *job.Isolation) bool { return r.walk.LockedAt(x, at) })
}

// late tells of one hold.
func (r *report) late(h *job.Hold, d *job.Dim, e, by *walk.Event, why, here string) {
	help := []string{"hold: " + h.Mark + " at a step above " + by.Step.No, "or let over:, under:, out: and the limit send to a hold above it"}
	if slices.ContainsFunc(append(whenOut(d), d.States()...), func(t string) bool { return t != "" && !r.job.HasEnglish(t) }) {
		help = append(help, "or, if nothing is decided there on this job, say so in English beside it: {en: "+h.Mark+", for the next outage}")
	}
	r.problems.WarnWith(e.Step.At, "hold-late", h.Mark+", "+source.Quote(h.What)+", is released only at "+e.Step.Name()+", and "+why, by.Step.At, here, help...)
}

// holdLate binds a hold to the step below it that puts back what is judged there.
func (b *binder) holdLate() {
	r := &report{walk: b.walk, job: b.job}
	for _, h := range b.job.Holds {
		e := r.released(h)
		if e == nil || h.Again != nil {
			continue
		}
		for _, d := range r.sentTo(h) {
			if read := b.walk.Measured(d); read == nil || !d.JudgedFound() || read.Index > e.Index || !decidedAt(b.job, d) {
				continue
			}
			for _, x := range b.walk.Events[e.Index:] {
				if x.Verb == job.DoFit && !x.Move.New && slices.Contains(d.FaceParts(), x.Move.Part) {
					b.before(e.Step, x.Step, job.Bind{Kind: job.BoundReading, Dim: d})
				}
			}
		}
	}
}
