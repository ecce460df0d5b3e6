package step

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// guardTick is a line of what guards a step, with a box to tick before it.
func guardTick(c *block.Composer, st *job.Step, text string, width layout.Mm) layout.Block {
	line := c.Para(width-9, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: st.At})
	return layout.Middle(1.8, c.Tick(layout.Body, "", st.At), line).Pad(tickPad, 0, tickPad, 0)
}

// tickPad is the room above and below a box to tick in a line of its own: with the room between
// lines, 1 mm between two boxes.
const tickPad layout.Mm = 0.3

// guardTicks are such lines for all things of a list.
func guardTicks[T any](c *block.Composer, st *job.Step, width layout.Mm, list []T, words func(T) string) []layout.Block {
	out := make([]layout.Block, 0, len(list))
	for _, x := range list {
		out = append(out, guardTick(c, st, words(x), width))
	}
	return out
}

// guardLines are the lines of each verb that has boxes to tick, each with its own words.
var guardLines = map[job.Verb]func(*block.Composer, *job.Step, layout.Mm) []layout.Block{
	job.DoPermit: permitLines, job.DoLock: lockLines, job.DoUnlock: unlockLines, job.DoUnlockForNow: unlockForNowLines,
	job.DoLockAgain: lockAgainLines, job.DoSee: seenLines, job.DoHandBack: handBackLines, job.DoCountAll: countAllLines,
	job.DoOpen: openLines, job.DoClose: closeLines,
}

// permitLines are the permits that must be there before the step is begun.
func permitLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	return guardTicks(c, st, width, st.Permits, func(p *job.Permit) string {
		text := c.W.Step.PermitLine.With(p.What)
		if p.Note != "" {
			text += " (" + p.Note + ")"
		}
		return text
	})
}

func lockLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	return guardTicks(c, st, width, st.Lock, func(x *job.Isolation) string {
		return c.W.Step.LockLine.With(x.Point, x.State, lockPage(c, x, st, true))
	})
}

func unlockLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	return guardTicks(c, st, width, st.Unlock, func(x *job.Isolation) string {
		return c.W.Step.UnlockLine.With(x.Point, lockPage(c, x, st, false))
	})
}

func unlockForNowLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	out := guardTicks(c, st, width, st.UnlockForNow, func(x *job.Isolation) string {
		return c.W.Guard.UnlockForNow.With(x.Point, lockPage(c, x, st, false))
	})
	if names := append(openingNameList(st.OpenMeanwhile), partNames(st.OffMeanwhile)...); len(names) > 0 {
		out = append(out, strongLine(c, c.W.Guard.Meanwhile.With(strings.Join(names, ", ")), width, st))
	}
	return out
}

// lockAgainLines are the locks that go on again. A permit was suspended while the lock of a trial
// was off, and work does not go on before it is given again.
func lockAgainLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	out := guardTicks(c, st, width, st.LockAgain, func(x *job.Isolation) string {
		return c.W.Guard.LockAgain.With(x.Point, x.State, x.Proved, lockPage(c, x, st, true))
	})
	order := st.VerbOrder()
	if len(out) == 0 || len(st.UnlockForNow) == 0 || slices.Index(order, job.DoLockAgain) < slices.Index(order, job.DoUnlockForNow) {
		return out
	}
	return append(out, guardTicks(c, st, width, st.Permits, func(p *job.Permit) string { return c.W.Guard.PermitAgain.With(p.What) })...)
}

func handBackLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	return guardTicks(c, st, width, st.HandBack, func(p *job.Permit) string { return c.W.Guard.HandBack.With(p.What) })
}

// seenLines are what is looked at and found so before the work goes on.
func seenLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	return guardTicks(c, st, width, st.Seen, func(x job.Seen) string { return c.W.Guard.Seen.With(x.What) })
}

func openLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	return guardTicks(c, st, width, st.Open, func(o *job.Opening) string {
		return c.W.Step.OpenLine.With(openingName(o), o.Cover, c.Page("opening "+o.Mark()))
	})
}

// countAllLines is the line to tick when every container has been counted.
func countAllLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	if !st.CountAll {
		return nil
	}
	return []layout.Block{guardTick(c, st, c.W.Step.CountAllLine.With(c.Page("register")), width)}
}

// toolLines are the boxes for the tools counted in and out.
func toolLines(c *block.Composer, st *job.Step, _ layout.Mm) []layout.Block {
	if !st.ToolCount {
		return nil
	}
	boxes := layout.Beside(layout.GapX, c.Box(layout.RoleCount, c.W.Step.ToolsIn, st.At), c.Box(layout.RoleCount, c.W.Step.ToolsOut, st.At))
	return []layout.Block{boxes.Pad(0.5, 0, 0.5, toolsIn)} // beside the box for hours
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
	if st.UnderLoad.Value != "" && st.LoadAbove() {
		out = append(out, guardTick(c, st, c.W.Guard.UnderLoad.With(st.UnderLoad.Value), width))
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

// without says which guards of its step a put-back row has not, and why. Where all cautions
// stand at the row by what it does, none is left out and nothing is said; so with permits that
// it names itself.
func without(c *block.Composer, row *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, x := range row.Without {
		text := ""
		switch x.Guard {
		case job.GuardCaution:
			var hazards []string
			for _, note := range row.Spares() {
				hazards = append(hazards, strings.TrimSuffix(c.W.Said(note.Hazard), "."))
			}
			if len(hazards) == 0 {
				continue
			}
			text = c.W.Guard.NoCaution.With(row.Undoes.No, strings.Join(hazards, ", "), x.Reason)
		case job.GuardPermit:
			var papers []string
			for _, p := range row.SparePermits() {
				papers = append(papers, p.What)
			}
			if len(papers) == 0 {
				continue
			}
			text = c.W.Guard.NoPermit.With(row.Undoes.No, strings.Join(papers, ", "), x.Reason)
		case job.GuardHold:
			text = c.W.Guard.NoHold.With(row.Undoes.No, x.Reason)
		case job.GuardCheck:
			text = c.W.Guard.NoCheck.With(row.Undoes.No, x.Reason)
		}
		out = append(out, c.Para(width, []layout.Run{layout.T(layout.Sub, text)}, layout.ParaOpts{Ref: x.At}))
	}
	return out
}

// toolsIn is how far the boxes for tools stand to the right of the number of their step.
const toolsIn layout.Mm = 3.2

// LockAnchor is the name by which the page is found of the row of an isolation for one of the
// times that it is locked, counted from 0: its rows may stand on two pages.
func LockAnchor(x *job.Isolation, period int) string {
	if period == 0 {
		return "isolation " + x.Key
	}
	return "isolation " + x.Key + " " + strconv.Itoa(period)
}

// lockPage is the page of the row in which a step writes that it locks an isolation, or unlocks it.
func lockPage(c *block.Composer, x *job.Isolation, st *job.Step, locks bool) string {
	for i, p := range x.Periods {
		if i > 0 && (locks && p.Locked == st || !locks && p.Unlocked == st) {
			return c.PageOr(LockAnchor(x, i), LockAnchor(x, 0))
		}
	}
	return c.Page(LockAnchor(x, 0))
}
