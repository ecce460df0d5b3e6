package proof

import (
	"regexp"
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// jacks are screws that push a part off its joint, by their name. A puller may go on while
// the nut is slack and still on: it catches the part.
var jacks = regexp.MustCompile(`(?i)\b(?:jack|jacking|forcing|push-?off|lifting-off)[ -](?:screw|bolt)s?\b`)

// checkJacked sees that nothing is pushed off its joint while a nut or a dowel still holds it:
// a dowel left in cracks the face, a nut left on breaks its stud.
func (r *report) checkJacked() {
	for _, e := range r.walk.Events {
		if e.Verb != job.DoFitForNow || !jacks.MatchString(r.job.InEnglish(e.Move.Part.Name)) {
			continue
		}
		pushed := r.pushedOff(e)
		for _, m := range pushed {
			front := slices.DeleteFunc(r.walk.InFront(m.Part, e.Index), func(p *job.Part) bool {
				return p == e.Move.Part || anyOf(e.Step.Remove, p) || anyOf(pushed, p) && !p.Fastens()
			})
			if len(front) == 0 {
				continue
			}
			p := source.Problem{
				Pos: e.At, Severity: source.Error, Code: "jacked-early",
				Message: e.Move.Part.Called() + " goes in at " + e.Step.Name() + ", but " + front[0].Called() + " still holds " + m.Part.Called() + ", which it pushes off",
				Help:    []string{"remove: [" + front[0].Key + "] at a step above it", "or take " + front[0].Key + " out of behind: at " + m.Part.Key},
				See:     []source.Also{{Pos: front[0].At, What: "holds it"}},
			}
			for _, off := range front[0].Off {
				p.See = []source.Also{{Pos: off.At, What: "comes off only here"}}
			}
			r.problems = append(r.problems, p)
			break
		}
	}
}

// pushedOff lists what the step takes off in which a jacking screw comes out again.
func (r *report) pushedOff(in *walk.Event) []*job.Move {
	for _, e := range r.walk.Events[in.Index+1:] {
		if e.Verb == job.DoTakeOut && e.Move.Part == in.Move.Part {
			if e.Step.Back {
				return nil
			}
			return e.Step.Remove
		}
	}
	return nil
}

// anyOf reports whether some moves are of a part.
func anyOf(ms []*job.Move, p *job.Part) bool {
	return slices.ContainsFunc(ms, func(m *job.Move) bool { return m.Part == p })
}

// jacked binds a step that puts jacking screws in to those that move what holds the part
// that they push off.
func (b *binder) jacked() {
	r := &report{walk: b.walk, job: b.job}
	for _, e := range b.walk.Events {
		if e.Verb != job.DoFitForNow || !jacks.MatchString(b.job.InEnglish(e.Move.Part.Name)) {
			continue
		}
		for _, m := range r.pushedOff(e) {
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
