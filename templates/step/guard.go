package step

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// guardLines are the lines of a step for what guards it: permits that must be
// there, locks, openings made and closed, tools counted.
func guardLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	w := c.W
	var out []layout.Block
	tick := func(text string) {
		line := c.Para(width-9, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: st.At})
		out = append(out, layout.Middle(1.8, c.Tick(layout.Body, "", st.At), line).Pad(0.5, 0, 0.5, 0))
	}
	for _, p := range st.Permits {
		text := w.Step.PermitLine.With(p.What)
		if p.Note != "" {
			text += " (" + p.Note + ")"
		}
		tick(text)
	}
	for _, x := range st.Lock {
		tick(w.Step.LockLine.With(x.Point, x.State, c.Page("isolation "+x.Key)))
	}
	for _, x := range st.Unlock {
		tick(w.Step.UnlockLine.With(x.Point, c.Page("isolation "+x.Key)))
	}
	for _, o := range st.Open {
		tick(w.Step.OpenLine.With(openingName(o), o.Cover, c.Page("opening "+o.Mark())))
	}
	for _, o := range st.Close {
		tick(w.Step.CloseLine.With(openingName(o), c.Page("opening "+o.Mark())))
	}
	if st.CountAll {
		tick(w.Step.CountAllLine.With(c.Page("counts")))
	}
	if st.ToolCount {
		boxes := layout.Beside(layout.GapX, c.Box(layout.RoleCount, w.Step.ToolsIn, st.At), c.Box(layout.RoleCount, w.Step.ToolsOut, st.At))
		out = append(out, boxes.Pad(0.5, 0, 0.5, 0))
	}
	return out
}

// openingName is an opening with its place.
func openingName(o *job.Opening) string {
	if o.Place.Label == "" {
		return o.What
	}
	return o.What + " " + o.Place.Label
}

func openingNames(list []*job.Opening) string {
	var out []string
	for _, o := range list {
		out = append(out, openingName(o))
	}
	return strings.Join(out, ", ")
}
