package templates

import (
	"slices"
	"strings"
	"unicode"

	"matchmark/layout"
	"matchmark/packs/job"
)

// legend explains the marks.
func (c *composer) legend() layout.Block {
	var runs []layout.Run
	for _, l := range c.W.Front.Marks {
		if !marksOf(c.Job)[l.Letter] {
			continue
		}
		sep := ""
		if len(runs) > 0 {
			sep = " · "
		}
		runs = append(runs, layout.T(layout.Body, sep), layout.T(layout.Strong, l.Letter), layout.T(layout.Body, " "+l.Means))
	}
	runs = append(runs, c.spotLegend()...)
	runs = append(runs, layout.T(layout.Body, ". "+c.markSentence()+" "), layout.T(layout.CodeText, c.Job.Digest), layout.T(layout.Body, " "+c.W.Front.PackSign))
	marks := append([]layout.Block{c.Para(c.Span, runs, layout.ParaOpts{})}, c.placeLegend()...)
	return layout.Above(1, c.Heading(c.W.Front.HowToRead), layout.Above(0.2, marks...),
		c.Para(c.Span, []layout.Run{layout.T(layout.Strong, c.W.Front.Planning)}, layout.ParaOpts{}))
}

// marksOf are the letters of the marks that a pack has. Lines for what is found on the day are
// in each.
func marksOf(j *job.Job) map[string]bool {
	out := map[string]bool{
		"D": len(j.Dims) > 0, "C": len(j.Containers) > 0, "B": len(j.Bigs) > 0, "Y": len(j.Spots) > 0, "W": len(j.Holds) > 0,
		"S": len(j.Sets) > 0, "K": len(j.Stacks) > 0, "J": len(j.Joints) > 0, "A": len(j.Alignments) > 0, "L": len(j.Lifts) > 0,
		"H": len(j.Heats) > 0, "X": true, spareBackKey: true,
	}
	for _, s := range j.Sections {
		out["R"] = out["R"] || s.Back
	}
	for _, t := range j.Tags {
		out["SCRAP"] = out["SCRAP"] || t.Scrap
	}
	return out
}

// markSentence says how marks are read, with a place of this job.
func (c *composer) markSentence() string {
	for _, p := range c.placesUsed() {
		return c.W.Front.MarkStays + " " + c.W.Front.PlaceBehindMark.With(p.Label)
	}
	return c.W.Front.MarkStays
}

// placesUsed are the places that something of the job stands at.
func (c *composer) placesUsed() []job.Place {
	used := map[string]bool{}
	add := func(p job.Place) {
		for _, k := range p.Keys {
			used[k] = true
		}
	}
	j := c.Job
	for _, d := range j.Dims {
		add(d.Place)
	}
	for _, p := range j.Parts {
		add(p.Place)
	}
	for _, x := range j.Containers {
		add(x.Place)
	}
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			add(st.Place)
		}
	}
	for _, x := range j.Joints {
		add(x.Place)
	}
	for _, o := range j.Openings {
		add(o.Place)
	}
	return slices.DeleteFunc(slices.Clone(j.Places), func(p job.Place) bool { return !used[p.Label] })
}

// spotLegend says of lay-down spots on what a part is laid there and what the floor carries,
// unless the sheet of a lift tells it.
func (c *composer) spotLegend() []layout.Run {
	var out []layout.Run
	for _, s := range c.Job.Spots {
		var facts []string
		if s.Support != "" {
			facts = append(facts, c.W.Common.On.With(s.Support))
		}
		if s.Floor != "" {
			facts = append(facts, c.W.Step.Floor.With(s.Floor))
		}
		if len(facts) > 0 && !slices.ContainsFunc(c.Job.Lifts, func(l *job.Lift) bool { return l.LayDown == s }) {
			out = append(out, layout.Run{Text: " · " + s.Mark + " " + strings.Join(facts, ", "), Style: layout.Body, Ref: s.At})
		}
	}
	return out
}

// placeLegend says in a line for each group of places what their short names mean, from where
// they are counted and from where they are seen; nothing of those that say none of it.
func (c *composer) placeLegend() []layout.Block {
	var out []layout.Block
	for used := c.placesUsed(); len(used) > 0; {
		group := used[0].Groups
		n := 1
		for n < len(used) && slices.Equal(used[n].Groups, group) {
			n++
		}
		if text := c.groupOfPlaces(used[:n]); text != "" {
			out = append(out, c.Para(c.Span, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: used[0].At}))
		}
		used = used[n:]
	}
	return out
}

// groupOfPlaces says of the places of a group what they are, those of the same sides together:
// what stands behind a colon is of all before it.
func (c *composer) groupOfPlaces(list []job.Place) string {
	var out []string
	for len(list) > 0 {
		n := 1
		for n < len(list) && list[n].CountedFrom == list[0].CountedFrom && list[n].ViewedFrom == list[0].ViewedFrom {
			n++
		}
		var sides []string
		if from := list[0].CountedFrom; from != "" {
			sides = append(sides, c.W.Common.CountedFrom.With(from))
		}
		if from := list[0].ViewedFrom; from != "" {
			sides = append(sides, c.W.Common.SeenFrom.With(from))
		}
		names, told := placeNames(list[:n])
		switch {
		case len(sides) > 0:
			out = append(out, names+c.W.Common.Colon+strings.Join(sides, ", "))
		case told:
			out = append(out, names)
		}
		list = list[n:]
	}
	return strings.Join(out, c.W.Common.Semicolon)
}

// placeNames are the short names of places with what they mean; told says that one means more
// than it says. Of numbers in a row the first stands there with its whole name, and the last.
func placeNames(list []job.Place) (names string, told bool) {
	numbered := func(p job.Place) bool { return unicode.IsDigit(rune(p.Label[len(p.Label)-1])) && !meansMore(p) }
	var out []string
	for i := 0; i < len(list); i++ {
		p := list[i]
		switch {
		case meansMore(p):
			out, told = append(out, p.Label+" "+p.Name), true
		case numbered(p):
			first := i
			for i+1 < len(list) && numbered(list[i+1]) {
				i++
			}
			text := p.Name
			if i > first {
				text += " – " + list[i].Label
			}
			out = append(out, text)
		case i == 0:
			out = append(out, p.Name)
		default:
			out = append(out, p.Label)
		}
	}
	return strings.Join(out, " · "), told
}

// meansMore reports whether the name of a place is one that its author gave it, not that of its
// group with its short name.
func meansMore(p job.Place) bool {
	return p.Name != p.Label && !strings.HasSuffix(p.Name, " "+p.Label)
}
