package step

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// gone tells, at the step that takes readings away for good, which of earlier steps must be
// written down before it is begun: in a frame where that goes in a line of the width.
type gone struct {
	framed layout.Run
	width  layout.Mm // that of the frame
}

func (g gone) in(width layout.Mm) layout.Run {
	run := g.framed
	if g.width > width {
		run.Deco = layout.Plain
	}
	return run
}

// goneAfter is false for a step that takes none away.
func goneAfter(c *block.Composer, st *job.Step) (g gone, takes bool) {
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
		return gone{}, false
	}
	g.framed = layout.Run{Text: c.W.Step.GoneAfterThis.With(strings.Join(marks, ", ")), Style: layout.SubBold, Deco: layout.Boxed}
	g.width = c.Line(0, []layout.Run{g.framed}, layout.ParaOpts{Ref: st.At}).W
	return g, true
}

// goneLines is that as a line of its own.
func goneLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	g, takes := goneAfter(c, st)
	if !takes {
		return nil
	}
	return []layout.Block{c.Para(width, []layout.Run{g.in(width)}, layout.ParaOpts{Ref: st.At})}
}

// allLostAt reports whether a step takes all the readings of one block away.
func allLostAt(d *job.Dim, st *job.Step) bool {
	return !slices.ContainsFunc(d.Merged, func(x *job.Dim) bool { return !x.LastChanceAt(st) })
}
