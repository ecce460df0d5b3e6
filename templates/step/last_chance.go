package step

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// lastLines is the line at the step that takes readings away for good: those of
// earlier steps must be written down before it is begun.
func lastLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var marks []string
	last := ""
	for _, d := range c.Job.Dims {
		if d.FoundAt == nil || d.FoundAt == st || !d.LastChanceAt(st) {
			continue
		}
		mark := d.Mark
		if d.In != nil && allLostAt(d.In, st) {
			if d != d.In.Merged[0] {
				continue // told by its first
			}
			mark = d.In.Mark
		}
		anchor := "found " + d.Mark
		if last != "" && c.SamePage(anchor, last) {
			marks = append(marks, mark)
			continue
		}
		marks, last = append(marks, c.W.Common.StepPage.With(mark, c.Page(anchor))), anchor
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

// allLostAt reports whether a step takes all the readings of one block away.
func allLostAt(d *job.Dim, st *job.Step) bool {
	return !slices.ContainsFunc(d.Merged, func(x *job.Dim) bool { return !x.LastChanceAt(st) })
}
