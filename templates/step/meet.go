package step

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/templates/block"
)

// marked lists the parts that a step puts on by a mark which a step above has made: those that
// it says, and all old pieces that go back for good. What stays on meets its mark where the step that
// made it is undone.
func marked(st *job.Step) []*job.Part {
	var out []*job.Part
	add := func(p *job.Part) {
		if p.MarkedAbove(st) != nil && !slices.Contains(out, p) {
			out = append(out, p)
		}
	}
	for _, p := range st.Meet {
		add(p)
	}
	for _, m := range st.Fit {
		if m.Part.Meets == nil && m.MeetsAt == nil {
			add(m.Part)
		}
	}
	if st.Undoes != nil {
		for _, p := range st.Undoes.Marks {
			if staysOn(p) {
				add(p)
			}
		}
	}
	return out
}

// staysOn reports whether a part is never moved, neither by itself nor with what it is a part of.
func staysOn(p *job.Part) bool {
	for ; p != nil; p = p.Of {
		if len(p.Off)+len(p.Back) > 0 {
			return false
		}
	}
	return true
}

func meetWords(c *block.Composer, p *job.Part, st *job.Step) string {
	return c.W.Step.MarksMeet.With(joinOf(c, p, st), c.Page("marks "+p.MarkedAbove(st).No))
}
