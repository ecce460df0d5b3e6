package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/walk"
)

// What pulls a machine out of line when it is tightened: its feet, and the large pipes at its
// nozzles. Small lines bend. Common practice, no source.
var (
	feet  = phrase.Of(`(?i)\b(?:feet|foot|holding[ -]?down|hold[ -]?down|foundation|anchor|sole ?plate|base ?plate|base) ?(?:bolts?|nuts?|screws?|studs?)?\b`)
	mains = phrase.Of(`(?i)\b(?:suction|discharge|delivery|inlet|outlet|intake|exhaust) (?:pipe ?)?(?:flanges?|pipes?|branch(?:es)?|nozzles?|spools?|bends?)\b`)
	small = phrase.Of(`(?i)\b(?:oil|flush|drain|vent|seal|cooling|gauge|impulse|grease|small|balance)\b`)
)

// checkOutOfLine warns of a coupling that is read as left while the feet of a machine, or a large
// pipe, are loose and tightened below: that pulls it out of line again, and nothing reads it any
// more.
func (r *report) checkOutOfLine() {
	for _, a := range r.job.Alignments {
		last := r.lastRead(a)
		if last == nil {
			continue
		}
		for _, j := range r.job.Joints {
			what, tight := r.pulls(j), r.tightenedLater(j, last)
			if what == "" || tight == nil || slices.ContainsFunc(a.Steps, func(st *job.Step) bool { return st.Index > tight.Step.Index }) || tight.Step == last.Step || r.looseBefore(j, last) == nil && r.someOn(j, last) {
				continue
			}
			r.problems.WarnWith(tight.At, "pulled-out-of-line", j.Mark+", "+what+", is tightened at "+tight.Step.Name()+", when "+a.Mark+" has been read as left at "+last.Step.Name(), last.At, "read last here",
				"tighten it above that", "or read the coupling once more below it")
			break
		}
	}
}

// lastRead is the event that reads a coupling last as left, nil if none does.
func (r *report) lastRead(a *job.Alignment) *walk.Event {
	var last *walk.Event
	for _, dial := range dials {
		if d := a.Read[dial]; d != nil {
			if e := r.walk.Set(d); e != nil && (last == nil || e.Index > last.Index) {
				last = e
			}
		}
	}
	return last
}

// pulls says what a joint is that pulls a machine out of line, empty for none.
func (r *report) pulls(j *job.Joint) string {
	names := []string{r.job.InEnglish(j.What)}
	for _, p := range j.Parts {
		names = append(names, r.job.InEnglish(p.Name))
	}
	for _, n := range names {
		switch {
		case small.MatchString(n):
		case feet.MatchString(n):
			return "which holds the feet"
		case mains.MatchString(n):
			return "which draws up a large pipe"
		}
	}
	return ""
}

// outOfLine binds the steps that tighten feet and large pipes to the one that reads the coupling
// last.
func (b *binder) outOfLine() {
	r := &report{walk: b.walk, job: b.job}
	for _, a := range b.job.Alignments {
		last := r.lastRead(a)
		if last == nil {
			continue
		}
		for _, e := range b.walk.Events[:last.Index] {
			if j := e.Grip.Joint; e.Verb == job.DoTighten && j != nil && r.pulls(j) != "" {
				b.before(e.Step, last.Step, job.Bind{Kind: job.BoundReading, Dim: last.Dim})
			}
		}
	}
}
