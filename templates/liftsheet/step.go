package liftsheet

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// Lines are the lines of a step that makes lifts: the sheet, the mass, how it
// hangs, and the trial lift.
func Lines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	if st.OnHook != "" {
		text := c.W.Lift.OnHook.With(strings.TrimRight(st.OnHook, ". ")) + " "
		if heavy := heavyParts(c, st); heavy != "" {
			text += heavy + ". "
		}
		if l := c.Job.GearOf(st); l != nil {
			text += sheetLine(c, l)
		} else {
			text += c.W.Lift.NoSheet
		}
		out = append(out, c.Para(width, []layout.Run{layout.T(layout.Strong, text)}, layout.ParaOpts{Ref: st.At}))
	}
	strong := func(text string) {
		out = append(out, c.Para(width, []layout.Run{layout.T(layout.Strong, text)}, layout.ParaOpts{Ref: st.At}))
	}
	for _, l := range st.Lifts {
		if slices.Contains(st.GoesOn, l) {
			out = append(out, goesOn(c, st, l, width))
		} else {
			strong(stepLine(c, l, st))
		}
		if slices.Contains(st.LeftHanging, l) {
			strong(c.W.Guard.StaysUp.With(l.Mark, cmp.Or(strings.Join(l.StopsAt(st), " "), c.W.Guard.NoStops)))
		}
	}
	return out
}

// sheetLine names the sheet of a lift whose gear is used, and what the load weighs; of a lift that
// must not be made it is the line that says so.
func sheetLine(c *block.Composer, l *job.Lift) string {
	if l.Result == nil && l.HandResult == nil || len(l.Reasons(nil)) > 0 {
		return stepLine(c, l, nil)
	}
	return c.W.Lift.OnSheet.With(l.Mark, c.Page("lift "+l.Mark), massText(c, l))
}

// goesOn is the line of a lift that goes on with a load that hangs. What was put under that
// load is ticked above it, as it is out again: the line of the lift is no part of what is ticked.
func goesOn(c *block.Composer, st *job.Step, l *job.Lift, width layout.Mm) layout.Block {
	on := layout.T(layout.Strong, c.W.Guard.GoesOn.With(l.Mark, l.NoBefore(st), c.Page("lift "+l.Mark), massText(c, l)))
	if len(st.FromUnder) == 0 || l != st.GoesOn[0] {
		return c.Para(width, []layout.Run{on}, layout.ParaOpts{Ref: st.At})
	}
	tick := c.Tick(layout.Body, "", st.At)
	const gap = 1.8
	out := []layout.Run{layout.T(layout.Body, c.W.Guard.FromUnder.With(strings.Join(st.FromUnder, c.W.Common.Semicolon)))}
	line := layout.Middle(gap, tick, c.Para(width-tick.W-gap, out, layout.ParaOpts{Ref: st.At}))
	return layout.Above(1, line, c.Para(width, []layout.Run{on}, layout.ParaOpts{Ref: st.At}))
}

// heavyParts lists the parts that a step moves and that are heavy on this site, with their
// place where the step does not tell it: Impeller 405 kg.
func heavyParts(c *block.Composer, st *job.Step) string {
	var out []string
	for _, m := range slices.Concat(st.Remove, st.Fit, st.ForNow) {
		if may, known := c.Job.Site.OneLifts(m.Part.Mass); known && !may {
			name := m.Part.Name
			if at := m.Part.Place.Label; at != "" && at != st.Place.Label {
				name += " " + at
			}
			out = append(out, name+" "+m.Part.Mass.Print())
		}
	}
	return strings.Join(out, ", ")
}

// stepLine is the line of a lift at a step that makes it, nil where only its gear is used.
func stepLine(c *block.Composer, l *job.Lift, st *job.Step) string {
	page := c.Page("lift " + l.Mark)
	switch {
	case l.Computed() && len(l.Reasons(nil)) > 0:
		return c.W.Lift.StepLineStopped.With(l.Mark, page)
	case l.HandResult != nil:
		line := c.W.Lift.StepLineByHand.With(l.Mark, page, massText(c, l), strconv.Itoa(len(l.HandPlan.Grips)))
		// What a named person answers for stands where the load is taken up, with the reason.
		if p := l.HandPlan; p.DecidedBy != "" && p.Reason != "" {
			line += " " + p.DecidedBy + c.W.Common.Colon + p.Reason + "."
		}
		return line
	case l.Result != nil && st != nil && l.DrawnHot(st):
		return c.W.Lift.StepLineDrawnHot.With(l.Mark, page, massText(c, l), tiltText(c, l))
	case l.Result != nil && st != nil && l.HotLoad(st) != nil:
		return c.W.Lift.StepLinePutOnHot.With(l.Mark, page, massText(c, l), tiltText(c, l), l.Print(l.Trial.Size()))
	case l.Result != nil:
		return c.W.Lift.StepLine.With(l.Mark, page, massText(c, l), tiltText(c, l), l.Print(l.Trial.Size()))
	}
	return c.W.Lift.StepLineRefused.With(l.Mark, page)
}

// tiltSide says by how much and to which side the load hangs out of level.
func tiltSide(c *block.Composer, l *job.Lift) string {
	t := l.Result.Tilt
	if t.Lower != "" {
		return c.W.Lift.Tilted.With(l.Print(t.Total.Up()), t.Lower, l.Print(t.Drop.Up()))
	}
	return c.W.Lift.TiltedSide.With(l.Print(t.Total.Up()), l.LowSide())
}

// tiltText says how level the load hangs.
func tiltText(c *block.Composer, l *job.Lift) string {
	t := l.Result.Tilt
	if r := l.Result.Turn; r != nil {
		return c.W.Lift.TurnedLevel.With(r.Upper, l.Print(r.MostLean.Up()), l.Print(t.Most.Up()))
	}
	text := c.W.Lift.Level
	if l.OutOfLevel() {
		text = tiltSide(c, l)
	}
	if t.Most > t.Total {
		text = c.W.Lift.TiltedMost.With(text, l.Print(t.Most.Up()))
	}
	return text
}
