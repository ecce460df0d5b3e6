package step

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/heatsheet"
	"matchmark/templates/liftsheet"
)

// Measures of a step row.
const (
	signOff layout.Mm = 41 // initials and time, with their gap
	textGap layout.Mm = 5
)

// stepRow is one step: number, what to do, what goes where, and who did it when.
func stepRow(c *block.Composer, st *job.Step) layout.Block {
	width := c.Span - block.NumberWidth - signOff - textGap
	number := c.Line(block.NumberWidth, []layout.Run{layout.T(layout.StepNo, st.No)}, layout.ParaOpts{Ref: st.At})
	if st.Hours != nil {
		number = layout.Above(2, number, c.WideBox(layout.RoleWords, block.NumberWidth-2, 1, c.W.Step.Hours, st.At))
		number.W = block.NumberWidth
	}
	boxes := layout.Beside(layout.GapX, c.Box(layout.RoleInitials, c.W.Common.Initials, st.At), c.Box(layout.RoleTime, c.W.Common.Time, st.At))
	var extra []layout.Block
	if st.Check != "" {
		extra = append(extra, c.WideBox(layout.RoleInitials, signOff, 1, c.W.Step.CheckedBy.With(st.Check), st.At))
	}
	if st.Photo {
		extra = append(extra, c.WideBox(layout.RoleWords, signOff, 1, c.W.Step.Photo, st.At))
	}
	boxes = layout.Above(layout.GapY, append([]layout.Block{boxes}, extra...)...)
	var row layout.Block
	for beside := range 3 {
		// The lines stand beside the boxes for initials, or below them over the whole
		// width, whichever takes less height.
		text := layout.Above(1, textLines(c, st, width, beside)...)
		text.W = width
		r := layout.Beside(0, number, text, layout.Space(textGap, 1), boxes)
		if below := linesBelow(c, st, c.Span-block.NumberWidth, beside); len(below) > 0 {
			r = layout.Above(1, r, layout.Above(1, below...).At(block.NumberWidth, 0))
		}
		if row.Empty() || r.H < row.H-0.5 {
			row = r
		}
	}
	return row.Pad(0, 0, 1, 0).Anchored("step " + st.No)
}

// textLines are the lines of a step that stand beside the boxes for initials: what
// to do, and with beside 1 what goes where, with 0 all of them.
func textLines(c *block.Composer, st *job.Step, width layout.Mm, beside int) []layout.Block {
	runs := append(state(c, st), layout.T(layout.Body, Text(c, st)))
	if st.Missed != "" {
		runs = append(runs, layout.T(layout.Body, "  "), layout.Run{Text: st.Missed, Style: layout.Strong, Deco: layout.Inverse})
	}
	lines := append(branchLines(c, st, width), c.Para(width, runs, layout.ParaOpts{Ref: st.At}))
	lines = append(lines, lastLines(c, st, width)...)
	lines = append(lines, hangingLines(c, st, width)...)
	if beside < 2 {
		lines = append(lines, removalLines(c, st, width)...)
	}
	if beside < 1 {
		lines = append(append(lines, fitLines(c, st, width)...), furtherLines(c, st, width)...)
	}
	return lines
}

// lastLines is the line at the step that takes readings away for good: those of
// earlier steps must be written down before it is begun.
func lastLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var marks []string
	last := ""
	for _, d := range c.Job.Dims {
		if d.LastChance != st || d.FoundAt == nil || d.FoundAt == st || d.In != nil {
			continue
		}
		page := c.Page("found " + d.Mark)
		if page == last {
			marks = append(marks, d.Mark)
			continue
		}
		marks, last = append(marks, c.W.Common.StepPage.With(d.Mark, page)), page
	}
	if len(marks) == 0 {
		return nil
	}
	runs := []layout.Run{{Text: c.W.Step.GoneAfterThis.With(strings.Join(marks, ", ")), Style: layout.SubBold, Deco: layout.Boxed}}
	if one := c.Line(0, runs, layout.ParaOpts{Ref: st.At}); one.W > width {
		runs[0].Deco = layout.Plain
	}
	return []layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: st.At})}
}

// linesBelow are the lines of a step that do not stand beside its boxes.
func linesBelow(c *block.Composer, st *job.Step, width layout.Mm, beside int) []layout.Block {
	var out []layout.Block
	if beside > 1 {
		out = append(out, removalLines(c, st, width)...)
	}
	if beside > 0 {
		if len(fitLines(c, st, width)) > 0 {
			out = append(out, inPairs(c, st))
		}
		out = append(out, furtherLines(c, st, width)...)
	}
	return out
}

// furtherLines are heats, what guards the step, lifts, what is on for now, what is
// loosened and tightened, and the small line.
func furtherLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	out := heatsheet.Lines(c, st, width)
	out = append(out, guardLines(c, st, width)...)
	out = append(out, liftsheet.Lines(c, st, width)...)
	out = append(out, forNowLines(c, st, width)...)
	out = append(out, fastenLines(c, st, width)...)
	for _, x := range st.Without {
		out = append(out, c.Para(width, []layout.Run{layout.T(layout.Sub, without(c, st, x))}, layout.ParaOpts{Ref: x.At}))
	}
	if note := note(c, st); note != "" {
		out = append(out, c.Para(width, []layout.Run{layout.T(layout.Sub, note)}, layout.ParaOpts{Ref: st.At}))
	}
	return out
}

// inPairs sets the lines of what comes out of containers in two columns over the
// whole width, each with its box for the count.
func inPairs(c *block.Composer, st *job.Step) layout.Block {
	width := (c.Span - block.NumberWidth - textGap) / 2
	lines := fitLines(c, st, width)
	var rows []layout.Block
	for i := 0; i < len(lines); i += 2 {
		left := lines[i].Fill(width, lines[i].H, 0, 0)
		rows = append(rows, layout.Beside(textGap, append([]layout.Block{left}, lines[i+1:min(i+2, len(lines))]...)...))
	}
	return layout.Above(layout.GapY, rows...)
}
