package choose

import (
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/source"
)

// scrub takes the names of things left out off the lists of what stays. Faces and
// adjusters are left: a dimension that hangs on a part left out is a problem.
func (b *chooser) scrub() {
	if len(b.chosen.LeftOut) == 0 {
		return
	}
	for _, x := range b.def.Dimensions {
		x.LostBy = b.staying(x.LostBy)
		for i := range x.Says {
			if !b.stays(x.Says[i].Used.Value) {
				x.Says[i].Used.Value = "yes" // used all the same
			}
		}
	}
	for _, p := range b.def.Parts {
		p.Behind = b.staying(p.Behind)
	}
	for _, l := range b.def.Lifts {
		l.Parts = b.staying(l.Parts)
	}
	for _, j := range b.def.Joints {
		j.Parts = b.staying(j.Parts)
	}
	for _, s := range b.def.Sections {
		s.Reverse = b.stayingSections(s.Reverse)
		for _, st := range s.Steps {
			for _, list := range []*[]source.Text{
				&st.Measure, &st.Set, &st.From, &st.Loosen, &st.Tighten, &st.Open, &st.Close,
				&st.Empty, &st.Heat, &st.Align, &st.Lock, &st.Unlock, &st.UnlockForNow, &st.LockAgain,
				&st.Permit, &st.BackPermit, &st.HandBack, &st.Lift, &st.SetDown, &st.Stacks, &st.EachTry,
			} {
				*list = b.staying(*list)
			}
			st.Remove, st.Fit = b.stayingCounts(st.Remove), b.stayingCounts(st.Fit)
			st.MatchMarks = b.stayingMarks(st.MatchMarks)
			st.Into.For = b.stayingNamed(st.Into.For)
			st.WayRound = slices.DeleteFunc(st.WayRound, func(w def.WayRound) bool { return !b.stays(w.Part.Value) })
		}
	}
}

// stays reports whether what a name stands for has not been left out.
func (b *chooser) stays(name string) bool {
	key, _, _ := strings.Cut(name, "/")
	return b.chosen.LeftOut[key] == ""
}

func (b *chooser) staying(list []source.Text) []source.Text {
	var out []source.Text
	for _, t := range list {
		if b.stays(t.Value) {
			out = append(out, t)
		}
	}
	return out
}

func (b *chooser) stayingSections(list []source.Text) []source.Text {
	var out []source.Text
	for _, t := range list {
		if b.chosen.LeftOut["section "+t.Value] == "" {
			out = append(out, t)
		}
	}
	return out
}

func (b *chooser) stayingCounts(list []def.Count) []def.Count {
	var out []def.Count
	for _, c := range list {
		if b.stays(c.Part.Value) {
			out = append(out, c)
		}
	}
	return out
}

// stayingMarks leaves a mark out with its part, and where the part across its joint is left out
// that alone.
func (b *chooser) stayingMarks(list []def.MatchMark) []def.MatchMark {
	var out []def.MatchMark
	for _, m := range list {
		if !b.stays(m.On.Value) {
			m.On = source.Text{}
		}
		if b.stays(m.Part.Value) {
			out = append(out, m)
		}
	}
	return out
}

func (b *chooser) stayingNamed(list []def.Named) []def.Named {
	var out []def.Named
	for _, n := range list {
		if b.stays(n.Name.Value) {
			out = append(out, n)
		}
	}
	return out
}
