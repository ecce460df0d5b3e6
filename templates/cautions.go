package templates

import (
	"matchmark/layout"
	"matchmark/layout/sign"
	"matchmark/packs/job"
)

// cautions sets the sheet of permits and hazard notes: what the signal words mean,
// the permits with their numbers, every note in full with the steps before which
// it stands, and the notes that were left out, with the reason.
func cautions(c *composer) []layout.Piece {
	j, w := c.job, c.w
	var notes []*job.Caution
	for _, n := range j.Cautions {
		if len(n.Steps) > 0 {
			notes = append(notes, n)
		}
	}
	if len(notes) == 0 && len(j.Permits) == 0 {
		return nil
	}
	out := []layout.Piece{{Block: c.signalLegend()}}
	if len(j.Permits) > 0 {
		g := c.grid(col(w.Cautions.Permit, 0), col(w.Cautions.PermitNumber, 30), col(w.Cautions.PermitUntil, 30), col(w.Cautions.PermitGiven, 50))
		var rows []layout.Row
		for _, p := range j.Permits {
			rows = append(rows, g.row(p.At, g.about(0, p.What, joined(p.Note, w.Cautions.BeforeSteps.With(c.stepRefs(p.Steps))), p.At)))
		}
		out = append(out, g.under(rows)...)
	}
	out = append(out, c.fireWatch(notes)...)
	for i, n := range notes {
		gap := layout.Mm(1.5)
		if i == 0 {
			out = append(out, layout.Piece{Block: c.heading(w.Cautions.CautionsTitle), Gap: 5, KeepNext: true})
		}
		out = append(out, layout.Piece{Block: c.cautionInFull(n), Gap: gap})
	}
	for i, s := range j.Spared {
		if i == 0 {
			out = append(out, layout.Piece{Block: c.heading(w.Cautions.SparedTitle), Gap: 5, KeepNext: true})
		}
		text := w.Cautions.SparedLine.With(s.Note.Hazard, c.stepRef(s.Step), s.Reason)
		out = append(out, layout.Piece{Block: c.Para(c.width, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: s.At}), Gap: 1})
	}
	return out
}

// cautionInFull is a hazard note with what happens and the steps it stands before.
func (c *composer) cautionInFull(n *job.Caution) layout.Block {
	runs := []layout.Run{layout.T(layout.Strong, n.Hazard)}
	for _, s := range []string{n.Result, n.Avoid} {
		if s != "" {
			runs = append(runs, layout.T(layout.Body, " "+s))
		}
	}
	return c.noteInFull(n, runs, c.w.Cautions.BeforeSteps.With(c.stepRefs(n.Steps))).Anchored("caution " + n.Key)
}

// signalLegend explains the four signal words, each as it is printed, in two
// columns.
func (c *composer) signalLegend() layout.Block {
	w := c.w
	half := (c.width - layout.GapX) / 2
	one := func(signal string) layout.Block {
		plate := sign.Panel(c.Setter, w.Cautions.Signal[signal], signal != "notice", 8, nil)
		text := c.Para(half-plate.W-3, []layout.Run{layout.T(layout.Body, w.Cautions.SignalMeans[signal])}, layout.ParaOpts{})
		b := layout.Middle(3, plate, text)
		b.W = half
		return b
	}
	return layout.Above(1.2, c.heading(w.Cautions.LegendTitle),
		layout.Middle(layout.GapX, one("danger"), one("warning")), layout.Middle(layout.GapX, one("caution"), one("notice")),
		c.Para(c.width, []layout.Run{layout.T(layout.Sub, w.Cautions.SignalSource)}, layout.ParaOpts{}))
}
