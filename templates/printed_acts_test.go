package templates_test

import (
	"matchmark/packs/job"
	"matchmark/packs/units"
)

// moves asks for where pieces go and come from, how many, their tags, sets and ends.
func (w *wants) moves(jb *job.Job, st *job.Step, own func(string, string)) {
	for _, list := range [][]*job.Move{st.Remove, st.Fit, st.ForNow, st.TakeOut} {
		for _, c := range job.Contents(list) {
			own(c.Name, "is moved")
		}
	}
	for _, m := range st.Remove {
		own(markOf(m.To), "where "+m.Part.Name+" goes")
		if m.To.Spot != nil {
			own(m.To.Spot.What, "where "+m.To.Spot.Mark+" is")
		}
		if m.OldOne() != nil {
			own("old "+m.Part.Name, "does not go back")
		}
	}
	for _, m := range st.Remove {
		may, _ := jb.Site.OneLifts(m.Part.Mass)
		if tag := jb.TagOf(m.Part); tag != nil && m.N == 1 && may {
			own(tag.Mark+" "+units.Pointed(m.Part.Mass.Print()), "what "+m.Part.Name+" weighs")
		}
	}
	for _, m := range st.Fit {
		if !m.From.Scrap {
			own(markOf(m.From), "where "+m.Part.Name+" comes from")
		}
		if m.New {
			own("new, from stores", "a new "+m.Part.Name)
		}
		for _, r := range m.Part.WayRound {
			own(r.Mark+" faces "+r.Faces, "the way round of "+m.Part.Name)
		}
		if m.Part.MarkedAbove(st) != nil && m.Part.Meets == nil && m.MeetsAt == nil {
			own("match marks of "+m.Part.Name, "its marks meet")
		}
	}
	for _, p := range st.Meet {
		if p.MarkedAbove(st) != nil {
			own("match marks of "+p.Name, "its marks meet")
		}
	}
	for _, m := range append(append([]*job.Move{}, st.Remove...), st.Fit...) {
		if b := jb.TagOf(m.Part); b != nil {
			own(b.Mark, "the tag of "+m.Part.Name)
		}
		if m.Part.Set != nil {
			own(m.Part.Set.Mark, "the matched set of "+m.Part.Name)
		}
		if m.Part.Handed {
			hand := "right-hand thread"
			if m.Part.Left {
				hand = "left-hand thread"
			}
			own(m.Part.Name+": "+hand, "the hand of its thread")
		}
	}
}

// markOf is where a part is kept as printed.
func markOf(x job.Where) string {
	switch {
	case x.Scrap:
		return job.ScrapMark
	case x.Bench:
		return "bench"
	}
	return x.Mark()
}

// acts asks for what a step loosens, tightens, locks, opens, lifts, heats and writes down.
func (w *wants) acts(jb *job.Job, st *job.Step, own func(string, string)) {
	for _, list := range [][]job.Fastening{st.Loosen, st.Tighten} {
		for _, f := range list {
			if f.Joint != nil {
				own(f.Joint.Mark, "a joint")
				own(f.Joint.What, "a joint")
			} else if f.Part != nil {
				own(f.Part.Name, "is loosened or tightened")
			}
		}
	}
	for _, f := range st.Tighten {
		if f.Joint != nil {
			own(f.Joint.Torque, "the torque of "+f.Joint.Mark)
			own(f.Joint.NoValue, "how tight "+f.Joint.Mark+" becomes")
		}
	}
	for _, x := range append(append([]*job.Isolation{}, st.Lock...), st.Unlock...) {
		own(x.Point, "is locked or unlocked")
	}
	for _, x := range st.Permits {
		own(x.What, "a permit")
	}
	for _, o := range append(append([]*job.Opening{}, st.Open...), st.Close...) {
		own(o.What, "an opening")
	}
	for _, o := range st.Open {
		own(o.Cover, "what covers it")
	}
	for _, l := range st.Lifts {
		own(l.Mark, "a lift")
	}
	for _, h := range st.Heats {
		own(h.Mark, "a heat")
	}
	for _, p := range st.Marks {
		own("match mark", "is marked")
		own(p.Name, "is marked")
		if p.Across != nil {
			own(saidAt(p, st)+" and "+saidAt(p.Across, st), "is marked across its joint")
		}
	}
	if st.Undoes == nil && !st.Back {
		for _, r := range st.WayRound {
			own(r.Mark+" faces "+r.Faces, "the way round")
		}
		for _, k := range st.Stacks {
			own(k.Mark, "a stack")
			own(k.What, "a stack")
			own(k.From, "from where a stack is counted")
		}
	}
	stops(st, own)
}

// stops asks for what a step judges, sees empty and holds for.
func stops(st *job.Step, own func(string, string)) {
	for _, m := range st.Judge {
		own(m.Mark, "a set that is judged")
		own(m.What, "a set that is judged")
	}
	for _, x := range st.Empty {
		own(x.In.Mark, "must be empty")
	}
	if h := st.Hold; h != nil {
		own(h.Mark, "a hold")
		own(h.What, "what must have been seen")
		own(h.Releases, "who releases it")
		if h.Witness {
			own("seen by: name and signature", "a witness")
		} else {
			own("released by: name and signature", "a hold")
		}
	}
}

// saidAt is the name of a part, with the letters of its place where the step has none or others.
func saidAt(p *job.Part, st *job.Step) string {
	if l := p.Place.Label; l != "" && l != st.Place.Label {
		return p.Name + " " + l
	}
	return p.Name
}
