package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// checkJudged sees that a set that is judged by readings is judged once, after the
// last of them and before the first piece goes back, and renewed as a set.
func (r *report) checkJudged() {
	for _, s := range r.job.Sets {
		if len(s.JudgedBy) == 0 {
			continue
		}
		at := s.JudgedAt
		if at == nil {
			r.problems.Add(s.At, "not-judged", "no step decides whether the pieces of "+s.Mark+" go back", "judge: ["+s.Base+"] at the step below its last reading")
			continue
		}
		for _, d := range s.JudgedBy {
			if r.readBelow(d, s) {
				r.problems.AddWith(s.JudgedNamed, "taken-later", at.Name()+" judges "+s.Mark+" above "+d.Mark+", by which it is judged, in the same step", d.FoundPos(), "read here",
					"write judge: below measure: a step is done in the order in which it is written")
				break
			}
			if d.FoundAt != nil && d.FoundAt.Index > at.Index {
				r.problems.AddWith(s.JudgedNamed, "taken-later", at.Name()+" judges "+s.Mark+" by "+d.Mark+", which is read only at "+d.FoundAt.Name(), d.FoundAt.At, "read here",
					"move judge: ["+s.Base+"] to a step below it")
				break
			}
		}
		for _, p := range s.Members {
			if p.Renew != "as set" {
				r.problems.AddWith(s.At, "not-as-set", s.Mark+" is judged as a whole, but "+p.Called()+" is not renewed as a set", p.At, "the part", "renew: as set")
				break
			}
			if i := slices.IndexFunc(p.Back, func(m *job.Move) bool { return m.Step.Index <= at.Index }); i >= 0 {
				r.problems.AddWith(s.JudgedNamed, "judged-late", at.Name()+" judges "+s.Mark+", but "+p.Called()+" is back at "+p.Back[i].Step.Name(), p.Back[i].At, "put back here",
					"judge it at a step above that")
				break
			}
		}
	}
}

// readBelow reports whether a reading stands below the verb that judges a set by it, in one step.
func (r *report) readBelow(d *job.Dim, s *job.Set) bool {
	read := r.walk.Measured(d)
	if read == nil || read.Step != s.JudgedAt {
		return false
	}
	judged := r.walk.Find(s.JudgedAt, func(e *walk.Event) bool { return e.Verb == job.DoJudge && e.Set == s })
	return judged != nil && judged.Index < read.Index
}

// judged binds the step that judges a set to the readings that it is judged by, and to
// the steps that put its pieces back.
func (b *binder) judged() {
	for _, s := range b.job.Sets {
		for _, d := range s.JudgedBy {
			b.before(d.FoundAt, s.JudgedAt, job.Bind{Kind: job.BoundReading, Dim: d})
		}
		for _, p := range s.Members {
			for _, m := range p.Back {
				b.before(s.JudgedAt, m.Step, job.Bind{Kind: job.BoundJudged, Set: s})
			}
		}
	}
}
