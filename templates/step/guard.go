package step

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// guardLines are the lines of a step for what guards it: permits that must be
// there, locks, openings made and closed, tools counted.
func guardLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	w := c.W
	var out []layout.Block
	tick := func(text string) { out = append(out, guardTick(c, text, width, st)) }
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
	for _, x := range st.UnlockForNow {
		tick(w.Guard.UnlockForNow.With(x.Point, c.Page("isolation "+x.Key)))
	}
	if names := append(openingNameList(st.OpenMeanwhile), partNames(st.OffMeanwhile)...); len(names) > 0 {
		out = append(out, strongLine(c, w.Guard.Meanwhile.With(strings.Join(names, ", ")), width, st))
	}
	for _, x := range st.LockAgain {
		tick(w.Guard.LockAgain.With(x.Point, x.State, x.Proved, c.Page("isolation "+x.Key)))
	}
	for _, o := range st.Open {
		tick(w.Step.OpenLine.With(openingName(o), o.Cover, c.Page("opening "+o.Mark())))
	}
	for _, o := range st.Close {
		tick(w.Step.CloseLine.With(openingName(o), c.Page("opening "+o.Mark())))
	}
	for _, p := range st.HandBack {
		tick(w.Guard.HandBack.With(p.What))
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

// guardTick is a line of a step with a box to tick before it.
func guardTick(c *block.Composer, text string, width layout.Mm, st *job.Step) layout.Block {
	line := c.Para(width-9, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: st.At})
	return layout.Middle(1.8, c.Tick(layout.Body, "", st.At), line).Pad(0.5, 0, 0.5, 0)
}

// strongLine is a line of a step in bold.
func strongLine(c *block.Composer, text string, width layout.Mm, st *job.Step) layout.Block {
	return c.Para(width, []layout.Run{layout.T(layout.Strong, text)}, layout.ParaOpts{Ref: st.At})
}

// hangingLines say which loads hang while a step is done, and what is put under them
// before a hand goes in. They stand above what is moved.
func hangingLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, l := range st.Hangs {
		out = append(out, strongLine(c, c.W.Guard.Hangs.With(l.Mark, l.NoBefore(st), l.What), width, st))
	}
	if st.UnderLoad.Value != "" && len(st.Hangs) > 0 {
		out = append(out, guardTick(c, c.W.Guard.UnderLoad.With(st.UnderLoad.Value), width, st))
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

// without says which guard of its step a put-back row has not, and why.
func without(c *block.Composer, row *job.Step, x job.Without) string {
	sentence := map[job.Guard]words.Sentence{
		job.GuardCaution: c.W.Guard.NoCaution, job.GuardPermit: c.W.Guard.NoPermit,
		job.GuardHold: c.W.Guard.NoHold, job.GuardCheck: c.W.Guard.NoCheck,
	}[x.Guard]
	return sentence.With(row.Undoes.No, x.Reason)
}
