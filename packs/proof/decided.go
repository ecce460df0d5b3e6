package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// decides finds the words of a step, or of its hold, at which it is decided of each part
// whether it goes back: those of its tag.
var decides = phrase.Of(`(?i)\breuse\b.*\b(scrap|renew|repair)\b|\btick every tag\b`)

// checkReused sees that it is decided which parts go back before the first of them does; of
// words that name parts only those are looked at. A job that decides in several steps is
// looked at by the first of them.
func (r *report) checkReused() {
	st := decision(r.job, r.walk.Steps)
	if st == nil {
		return
	}
	named := r.decidedOf(st)
	for _, e := range r.walk.Events[:r.walk.Start(st)] {
		if e.Verb != job.DoFit || e.Move.New || e.Move.Undo == nil || e.Move.Part.Fastens() || len(named) > 0 && !slices.Contains(named, e.Move.Part) {
			continue
		}
		r.problems.AddWith(st.At, "decided-late", "the words of "+st.Name()+" decide what is reused, and "+e.Move.Part.Called()+" is back at "+e.Step.Name(), e.At, "goes back here",
			"move the step above the first that puts something back, or the reverse: line below it")
		return
	}
}

// isDecided finds of a part that it is decided at some step whether it is renewed.
var isDecided = phrase.Of(`(?i)\bdecided\b`)

// checkDecidedBlind sees that a part whose renewal is decided at a step has been measured by
// then: whoever decides does it by the readings. Where several steps decide of it, the last counts.
func (r *report) checkDecidedBlind() {
	deciding := slices.DeleteFunc(slices.Clone(r.walk.Steps), func(x *job.Step) bool { return decision(r.job, []*job.Step{x}) == nil })
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		if e.Verb != job.DoMeasure || e.Dim.Formula != nil || told[e.At] {
			continue
		}
		p := decidedBy(r.job, e.Dim)
		if p == nil {
			continue
		}
		if st := r.lastDeciding(deciding, p); st != nil && e.Index >= r.walk.End(st) {
			told[e.At] = true
			r.problems.WarnWith(e.At, "decided-late", e.Dim.Mark+" is measured at "+e.Step.Name()+", when "+st.Name()+" has decided whether "+p.Called()+" is renewed", st.At, "decided here",
				"measure it at a step above "+st.No)
		}
	}
}

// lastDeciding is the last of some steps that decides of a part: one whose words name parts decides
// of those alone.
func (r *report) lastDeciding(steps []*job.Step, p *job.Part) *job.Step {
	for _, st := range slices.Backward(steps) {
		if named := r.decidedOf(st); len(named) == 0 || slices.Contains(named, p) {
			return st
		}
	}
	return nil
}

// decidedBy is a part of a reading whose renewal is decided at some step, nil if there is none.
func decidedBy(j *job.Job, d *job.Dim) *job.Part {
	for _, p := range d.FaceParts() {
		if isDecided.MatchString(j.InEnglish(p.Renew)) {
			return p
		}
	}
	return nil
}

// decidedOf lists the parts that the words name at which it is decided; none where they
// speak of all, as of every tag.
func (r *report) decidedOf(st *job.Step) []*job.Part {
	words := r.job.InEnglish(st.Do)
	if !decides.MatchString(words) && st.Hold != nil {
		words = r.job.InEnglish(st.Hold.What)
	}
	if ofEveryTag.MatchString(words) {
		return nil
	}
	var out []*job.Part
	for _, word := range tokens.FindAllString(strings.ToLower(words), -1) {
		out = append(out, r.calledBy(word, st.Place)...)
	}
	return out
}

// ofEveryTag finds the words that speak of all parts.
var ofEveryTag = phrase.Of(`(?i)\b(every|each|all) (tags?|parts?)\b`)

// decision is the first step at which it is decided what goes back, nil if none is.
func decision(j *job.Job, steps []*job.Step) *job.Step {
	i := slices.IndexFunc(steps, func(st *job.Step) bool {
		return st.Undoes == nil && (decides.MatchString(j.InEnglish(st.Do)) || st.Hold != nil && decides.MatchString(j.InEnglish(st.Hold.What)))
	})
	if i < 0 {
		return nil
	}
	return steps[i]
}

// decided binds the step at which it is decided what goes back to those that put back.
func (b *binder) decided() {
	if st := decision(b.job, b.walk.Steps); st != nil {
		for _, t := range b.walk.Steps {
			if len(t.Fit) > 0 {
				b.before(st, t, job.Bind{Kind: job.BoundBelow})
			}
			if t.Index < st.Index && slices.ContainsFunc(t.Measure, func(d *job.Dim) bool { return d.Formula == nil && decidedBy(b.job, d) != nil }) {
				b.before(t, st, job.Bind{Kind: job.BoundBelow})
			}
		}
	}
}
