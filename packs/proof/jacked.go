package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/walk"
)

// jacks are screws that push a part off its joint, by their name. A puller may go on while
// the nut is slack and still on: it catches the part.
var jacks = phrase.Of(`(?i)\b(?:jack(?:ing)?(?:[ -]off)?|forcing|push(?:ing)?[ -]?off|lifting[ -]off)[ -]?(?:screw|bolt)s?\b`)

// checkJacked warns of what is pushed off its joint, by the name of the screws or by the words
// of the step that puts a wedge, a jack or a press in, while a nut or a
// dowel still holds it: a dowel left in cracks the face, a nut left on breaks its stud. Nuts that
// are slackened and left on catch the part.
func (r *report) checkJacked() {
	for _, e := range r.walk.Events {
		if e.Verb != job.DoFitForNow || !r.pushes(e) {
			continue
		}
		pushed := r.pushedOff(e)
		if pushed == nil {
			continue
		}
		front := slices.DeleteFunc(r.walk.InFront(pushed.Part, e.Index), func(p *job.Part) bool {
			return p == e.Move.Part || !r.fixes(p) || job.AnyOf(e.Step.Remove, p) || r.slackAt(p, e)
		})
		if len(front) == 0 {
			continue
		}
		at, what := front[0].At, "holds it"
		for _, off := range front[0].Off {
			at, what = off.At, "comes off only here"
		}
		r.problems.WarnWith(e.At, "jacked-early", e.Move.Part.Called()+" goes in at "+e.Step.Name()+", but "+front[0].Called()+" still holds "+pushed.Part.Called()+", which it pushes off", at, what,
			"remove: ["+front[0].Key+"] at a step above it", "or take "+front[0].Key+" out of behind: at "+pushed.Part.Key)
	}
}

// dowels are fasteners that hold a part where it is, loosened or not, by their name.
var dowels = phrase.Of(`(?i)\b(?:dowels?|pins?)\b`)

// fixes reports whether a part is a fastener or a dowel, and none that screws push off.
func (r *report) fixes(p *job.Part) bool {
	return p.Fastens() || len(p.Joints) > 0 || dowels.MatchString(r.job.InEnglish(p.Name))
}

// slackAt reports whether a nut or a screw is loosened when jacking screws go in, or by their step.
func (r *report) slackAt(p *job.Part, e *walk.Event) bool {
	if dowels.MatchString(r.job.InEnglish(p.Name)) {
		return false
	}
	fastenings := []job.Fastening{{Part: p}}
	for _, j := range p.Joints {
		fastenings = append(fastenings, job.Fastening{Joint: j})
	}
	return slices.ContainsFunc(fastenings, func(f job.Fastening) bool {
		return r.walk.Grip(f, e).Loosened != nil || slices.ContainsFunc(e.Step.Loosen, f.Same)
	})
}

// pushedOff is the removal of what jacking screws push off: the first part that is no fastener of
// those that the step takes off in which they come out again; where they have a step of their own,
// the first that comes off below and that the words of the step call in which they go in.
func (r *report) pushedOff(in *walk.Event) *job.Move {
	var named *job.Move
	for _, e := range r.walk.Events[in.Index+1:] {
		switch {
		case e.Step.Back:
			return named
		case e.Verb == job.DoTakeOut && e.Move.Part == in.Move.Part:
			for _, m := range e.Step.Remove {
				if !r.fixes(m.Part) {
					return m
				}
			}
		case e.Verb == job.DoRemove && named == nil && !r.fixes(e.Move.Part) && r.speaksOf(in.Step, e.Move.Part):
			named = e.Move
		}
	}
	return named
}

// speaksOf reports whether the words of a step hold the word by which a part is called.
func (r *report) speaksOf(st *job.Step, p *job.Part) bool {
	if p.Aid || !p.Place.Agrees(st.Place) {
		return false
	}
	last := r.calledLast(p)
	return slices.ContainsFunc(tokens.FindAllString(strings.ToLower(r.job.InEnglish(st.Do)), -1), func(word string) bool { return isOne(last, word) })
}

// jacked binds a step that puts jacking screws in to those that move what holds the part
// that they push off.
func (b *binder) jacked() {
	r := &report{walk: b.walk, job: b.job}
	for _, e := range b.walk.Events {
		if e.Verb != job.DoFitForNow || !r.pushes(e) {
			continue
		}
		if m := r.pushedOff(e); m != nil {
			for _, q := range m.Part.Behind {
				for _, st := range moves(q) {
					why := job.Bind{Kind: job.BoundBehind, Part: m.Part, Front: q}
					b.before(st, e.Step, why)
					b.before(e.Step, st, why)
				}
			}
		}
	}
}
