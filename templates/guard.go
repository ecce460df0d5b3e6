package templates

import (
	"matchmark/packs/job"
	"strings"

	"matchmark/layout"
)

// guardLines are the lines of a step for what guards it: permits that must be
// there, locks, openings made and closed, tools counted.
func (c *composer) guardLines(st *job.Step, width layout.Mm) []layout.Block {
	w := c.w
	var out []layout.Block
	tick := func(text string) { out = append(out, c.guardTick(text, width, st)) }
	for _, p := range st.Permits {
		text := fill(w.permitLine, p.What)
		if p.Note != "" {
			text += " (" + p.Note + ")"
		}
		tick(text)
	}
	for _, x := range st.Lock {
		tick(fill(w.lockLine, x.Point, x.State, c.page("isolation "+x.Key)))
	}
	for _, x := range st.Unlock {
		tick(fill(w.unlockLine, x.Point, c.page("isolation "+x.Key)))
	}
	for _, x := range st.UnlockForNow {
		tick(fill(w.unlockNowLine, x.Point, c.page("isolation "+x.Key)))
	}
	if names := append(openingNameList(st.OpenMeanwhile), partNames(st.OffMeanwhile)...); len(names) > 0 {
		out = append(out, c.strongLine(fill(w.meanwhileLine, strings.Join(names, ", ")), width, st))
	}
	for _, x := range st.LockAgain {
		tick(fill(w.lockAgainLine, x.Point, x.State, x.Proved, c.page("isolation "+x.Key)))
	}
	for _, o := range st.Open {
		tick(fill(w.openLine, openingName(o), o.Cover, c.page("opening "+o.Mark())))
	}
	for _, o := range st.Close {
		tick(fill(w.closeLine, openingName(o), c.page("opening "+o.Mark())))
	}
	for _, p := range st.HandBack {
		tick(fill(w.handBackLine, p.What))
	}
	if st.CountAll {
		tick(fill(w.countAllLine, c.page("counts")))
	}
	if st.ToolCount {
		boxes := layout.Beside(layout.GapX, c.Box(layout.RoleCount, w.toolsIn, st.At), c.Box(layout.RoleCount, w.toolsOut, st.At))
		out = append(out, boxes.Pad(0.5, 0, 0.5, 0))
	}
	return out
}

// guardTick is a line of a step with a box to tick before it.
func (c *composer) guardTick(text string, width layout.Mm, st *job.Step) layout.Block {
	line := c.Para(width-9, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: st.At})
	return layout.Middle(1.8, c.Tick(layout.Body, "", st.At), line).Pad(0.5, 0, 0.5, 0)
}

// strongLine is a line of a step in bold.
func (c *composer) strongLine(text string, width layout.Mm, st *job.Step) layout.Block {
	return c.Para(width, []layout.Run{layout.T(layout.Strong, text)}, layout.ParaOpts{Ref: st.At})
}

// hangingLines say which loads hang while a step is done, and what is put under them
// before a hand goes in. They stand above what is moved.
func (c *composer) hangingLines(st *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, l := range st.Hangs {
		out = append(out, c.strongLine(fill(c.w.hangsLine, l.Mark, c.raisedAt(l, st), l.What), width, st))
	}
	if st.UnderLoad.Value != "" && len(st.Hangs) > 0 {
		out = append(out, c.guardTick(fill(c.w.underLoadLine, st.UnderLoad.Value), width, st))
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
	return strings.Join(openingNameList(list), ", ")
}

func openingNameList(list []*job.Opening) []string {
	var out []string
	for _, o := range list {
		out = append(out, openingName(o))
	}
	return out
}

func partNames(list []*job.Part) []string {
	var out []string
	for _, p := range list {
		name := p.Name
		if p.Place.Label != "" {
			name += " " + p.Place.Label
		}
		out = append(out, name)
	}
	return out
}

// raisedAt names the step that raised a load which hangs at another one: the last
// above it that makes its lift.
func (c *composer) raisedAt(l *job.Lift, st *job.Step) string {
	at := ""
	for _, x := range l.Steps {
		if x.Index < st.Index {
			at = x.No
		}
	}
	return at
}
