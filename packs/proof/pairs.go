package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkGuards sees that every lock is put on and taken off again, every opening
// opened and closed again, in this order, and every permit asked for.
func (r *report) checkGuards() {
	for _, x := range r.job.Isolations {
		r.checkPair(x.At, "the isolation "+x.Key, x.LockedAt, x.UnlockedAt, [4]string{"locked", "lock: [" + x.Key + "]", "unlocked", "unlock: [" + x.Key + "]"})
	}
	for _, x := range r.job.Openings {
		if r.inOneStep(x) {
			continue
		}
		r.checkPair(x.At, "the opening "+x.Mark(), x.OpenedAt, x.ClosedAt, [4]string{"opened", "open: [" + x.Key + "]", "closed", "close: [" + x.Key + "]"})
	}
	for _, x := range r.job.Permits {
		if len(x.Steps) == 0 {
			r.problems.Add(x.At, "never-asked", "the permit "+source.Quote(x.Key)+" is asked for at no step", "permit: ["+x.Key+"] at the step that is not begun without it")
		}
	}
}

// inOneStep reports whether one step opens and closes an opening, as a hand hole that is only
// looked through, and tells where it closes it first.
func (r *report) inOneStep(o *job.Opening) bool {
	if o.OpenedAt == nil || o.OpenedAt != o.ClosedAt {
		return false
	}
	if opened, closed := r.walk.Opened(o), r.walk.Closed(o); opened != nil && closed != nil && closed.Index < opened.Index {
		r.problems.AddWith(o.ClosedAt.At, "wrong-way-round", "step "+o.ClosedAt.Name()+" closes "+o.Mark()+" above the line that opens it: a step is done in the order in which it is written", o.At, "the opening",
			"write open: above what is seen or read through it, and close: below that")
	}
	return true
}

// checkPair sees that what one step does another undoes after it. words are the
// act and its key, and the act that undoes it and its key.
func (r *report) checkPair(at source.Pos, what string, on, off *job.Step, words [4]string) {
	switch {
	case on == nil:
		r.problems.Add(at, "never-"+words[0], what+" is "+words[0]+" by no step", words[1]+" at the step that does it")
	case off == nil:
		r.problems = append(r.problems, source.Problem{
			Pos: at, Severity: source.Error, Code: "never-" + words[2],
			Message: what + " is " + words[0] + " at " + on.Name() + " and " + words[2] + " by no step",
			Help:    []string{words[3] + " at the step that does it"},
			See:     []source.Also{{Pos: on.At, What: words[0] + " here"}},
		})
	case off.Index <= on.Index:
		r.problems = append(r.problems, source.Problem{
			Pos: off.At, Severity: source.Error, Code: "wrong-way-round",
			Message: what + " is " + words[2] + " at " + off.Name() + ", and " + words[0] + " only at " + on.Name(),
			Help:    []string{"put the step that it is " + words[2] + " at below the other"},
			See:     []source.Also{{Pos: on.At, What: words[0] + " here"}},
		})
	}
}

// guards binds the step that closes an opening to the one that opens it.
func (b *binder) guards() {
	for _, o := range b.job.Openings {
		b.before(o.OpenedAt, o.ClosedAt, job.Bind{Kind: job.BoundOpening, Opening: o})
	}
}
