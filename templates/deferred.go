package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/jointsheet"
	"matchmark/templates/step"
)

// deferred sets the work that waits until the machine has run, on the close-out
// sheet: when it is due, the step with its boxes, or the joint that is tightened
// again. What waits for the same stands below one line of when it is due.
func (c *composer) deferred() []layout.Piece {
	if len(c.Job.Deferred) == 0 {
		return nil
	}
	w := c.W
	head := layout.Above(1, c.Words(layout.Section, w.CloseOut.LaterHead).Heading(2), c.Rule(layout.Heavy)).Pad(0, 0, 1, 0)
	out := []layout.Piece{{Block: head, Gap: 4, KeepNext: true}}
	for i, x := range c.Job.Deferred {
		if i == 0 || x.When != c.Job.Deferred[i-1].When {
			when := c.Words(layout.Strong, x.When)
			boxes := layout.Beside(layout.GapX, c.Box(layout.RoleDate, w.CloseOut.DueDate, x.At), c.Box(layout.RoleTime, w.Common.Time, x.At), c.Box(layout.RoleName, w.Common.NameSign, x.At))
			out = append(out, layout.Piece{Block: layout.Middle(layout.GapX, when, boxes), Gap: 3, KeepNext: true})
		}
		if x.Step != nil {
			out = append(out, c.waiting(x.Step)...)
			continue
		}
		text := w.CloseOut.TightenAgain.With(x.Joint.Mark+" "+x.Joint.What) + " " + jointsheet.Tightness(c.Composer, x.Joint)
		line := c.Para(c.Span-30, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: x.At})
		out = append(out, layout.Piece{Block: layout.Middle(layout.GapX, line, c.Box(layout.RoleInitials, w.Common.Initials, x.At)), Gap: 2})
	}
	return out
}

// waiting sets a step that waits, with its number and its hazards again on a page that it goes
// on to.
func (c *composer) waiting(st *job.Step) []layout.Piece {
	pieces := step.Pieces(c.Composer, st)
	goesOn := step.ContinuedLine(c.Composer, st, step.Running{})
	notes, above := step.NotesAgain(c.Composer, st)
	for i := range pieces {
		if i < above {
			continue
		}
		pieces[i].Under = []*layout.Block{goesOn}
		if notes != nil {
			pieces[i].Under = append(pieces[i].Under, notes)
		}
	}
	return pieces
}
