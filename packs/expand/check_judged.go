package expand

// resolveJudged ties matched sets to the readings that they are judged by, and the
// steps that decide to the sets.
func (b *builder) resolveJudged() {
	for _, ds := range b.Def.Sets {
		for _, s := range b.Sets[ds.Mark.Value] {
			for _, t := range ds.JudgedBy {
				for _, d := range b.DimsAt(t, s.Place) {
					s.JudgedBy = append(s.JudgedBy, d)
					if !d.Judged() && !d.WatchedOnly() {
						b.Problems.AddWith(t.At, "no-verdict", d.Mark+" has no limit that it could be out of, so it judges no set", d.At, d.Mark, "left: at least … mm, at "+d.Base)
					}
				}
			}
		}
	}
	for _, sec := range b.Job.Sections {
		for _, st := range sec.Steps {
			for _, t := range b.StepDefs[st].Judge {
				s := b.SetAt(t, st.Place)
				switch {
				case s == nil:
				case len(s.JudgedBy) == 0:
					b.Problems.AddWith(t.At, "no-readings", "nothing says by which readings "+s.Mark+" is judged", s.At, "the set", "judged-by: [D9], at "+s.Base)
				case s.JudgedAt != nil:
					b.Problems.AddWith(t.At, "twice", s.Mark+" is judged by two steps", s.JudgedAt.At, "the first of them", "take it out of one of them")
				default:
					s.JudgedAt, s.JudgedNamed = st, t.At
					st.Judge = append(st.Judge, s)
				}
			}
		}
	}
}
