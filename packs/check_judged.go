package packs

import (
	"matchmark/packs/job"
	"slices"

	"matchmark/packs/source"
)

// resolveJudged ties matched sets to the readings that they are judged by, and the
// steps that decide to the sets.
func (b *builder) resolveJudged() {
	for _, ds := range b.def.Sets {
		for _, s := range b.sets[ds.Mark.Value] {
			for _, t := range ds.JudgedBy {
				for _, d := range b.dimsAt(t, s.Place) {
					s.JudgedBy = append(s.JudgedBy, d)
					if !d.Judged() && !d.WatchedOnly() {
						b.problems.AddWith(t.At, "no-verdict", d.Mark+" has no limit that it could be out of, so it judges no set", d.At, d.Mark, "left: at least 28.50 mm, at "+d.Base)
					}
				}
			}
		}
	}
	for _, sec := range b.job.Sections {
		for _, st := range sec.Steps {
			for _, t := range b.stepDefs[st].Judge {
				s := b.setAt(t, st.Place)
				switch {
				case s == nil:
				case len(s.JudgedBy) == 0:
					b.problems.AddWith(t.At, "no-readings", "nothing says by which readings "+s.Mark+" is judged", s.At, "the set", "judged-by: [D9], at "+s.Base)
				case s.JudgedAt != nil:
					b.problems.AddWith(t.At, "twice", s.Mark+" is judged by two steps", s.JudgedAt.At, "the first of them", "take it out of one of them")
				default:
					s.JudgedAt = st
					st.Judge = append(st.Judge, s)
				}
			}
		}
	}
}

// checkJudged sees that a set that is judged by readings is judged once, after the
// last of them and before the first piece goes back, and renewed as a set.
func (b *builder) checkJudged() {
	for _, s := range b.job.Sets {
		if len(s.JudgedBy) == 0 {
			continue
		}
		at := s.JudgedAt
		if at == nil {
			b.problems.Add(s.At, "not-judged", "no step decides whether the pieces of "+s.Mark+" go back", "judge: ["+s.Base+"] at the step below its last reading")
			continue
		}
		for _, d := range s.JudgedBy {
			if d.FoundAt != nil && d.FoundAt.Index > at.Index {
				b.problems.AddWith(b.judgedPos(s), "taken-later", at.Name()+" judges "+s.Mark+" by "+d.Mark+", which is read only at "+d.FoundAt.Name(), d.FoundAt.At, "read here",
					"move judge: ["+s.Base+"] to a step below it")
				break
			}
		}
		for _, p := range s.Members {
			if p.Renew != "as set" {
				b.problems.AddWith(s.At, "not-as-set", s.Mark+" is judged as a whole, but "+p.Called()+" is not renewed as a set", p.At, "the part", "renew: as set")
				break
			}
			if i := slices.IndexFunc(p.Back, func(m *job.Move) bool { return m.Step.Index <= at.Index }); i >= 0 {
				b.problems.AddWith(b.judgedPos(s), "judged-late", at.Name()+" judges "+s.Mark+", but "+p.Called()+" is back at "+p.Back[i].Step.Name(), p.Back[i].At, "put back here",
					"judge it at a step above that")
				break
			}
		}
	}
}

// judgedPos is where a step names the set that it judges.
func (b *builder) judgedPos(s *job.Set) source.Pos {
	if ds := b.stepDefs[s.JudgedAt]; ds != nil {
		for _, t := range ds.Judge {
			if key, _, _ := cut(t.Value); key == s.Base {
				return t.At
			}
		}
	}
	return s.JudgedAt.At
}
