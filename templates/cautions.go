package templates

import (
	"matchmark/layout"
	"matchmark/layout/sign"
	"matchmark/packs"
)

// cautions sets the sheet of permits and hazard notes: what the signal words mean,
// the permits with their numbers, every note in full with the steps before which
// it stands, and the notes that were left out, with the reason.
func cautions(c *composer) []layout.Piece {
	j, w := c.job, c.w
	var notes []*packs.Caution
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
		g := c.grid(column{w.permit, 0}, column{w.permitNumber, 30}, column{w.permitUntil, 30}, column{w.permitGiven, 50})
		var rows []layout.Row
		for _, p := range j.Permits {
			what := layout.Above(0.3, g.text(0, layout.Strong, p.What, p.At), g.text(0, layout.Sub, p.Note, p.At),
				g.text(0, layout.Sub, fill(w.beforeSteps, c.stepRefs(p.Steps)), p.At))
			rows = append(rows, g.row(p.At, what))
		}
		out = append(out, g.under(rows)...)
	}
	for i, n := range notes {
		gap := layout.Mm(2.5)
		if i == 0 {
			out = append(out, layout.Piece{Block: c.heading(w.cautionsTitle), Gap: 5, KeepNext: true})
		}
		out = append(out, layout.Piece{Block: c.cautionInFull(n), Gap: gap})
	}
	for i, s := range j.Spared {
		if i == 0 {
			out = append(out, layout.Piece{Block: c.heading(w.sparedTitle), Gap: 5, KeepNext: true})
		}
		text := fill(w.sparedLine, s.Note.Hazard, c.stepRef(s.Step), s.Reason)
		out = append(out, layout.Piece{Block: c.Para(c.width, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: s.At}), Gap: 1})
	}
	return out
}

// cautionInFull is a hazard note with what happens and the steps it stands before.
func (c *composer) cautionInFull(n *packs.Caution) layout.Block {
	runs := []layout.Run{layout.T(layout.Strong, n.Hazard)}
	for _, s := range []string{n.Result, n.Avoid} {
		if s != "" {
			runs = append(runs, layout.T(layout.Body, " "+s))
		}
	}
	return c.noteInFull(n, runs, fill(c.w.beforeSteps, c.stepRefs(n.Steps))).Anchored("caution " + n.Key)
}

// signalLegend explains the four signal words, each as it is printed.
func (c *composer) signalLegend() layout.Block {
	w := c.w
	lines := []layout.Block{c.heading(w.legendTitle)}
	width := layout.Mm(0)
	var plates []layout.Block
	order := []string{"danger", "warning", "caution", "notice"}
	for _, s := range order {
		p := sign.Panel(c.Setter, w.signals[s], s != "notice", 8, nil)
		plates = append(plates, p)
		width = max(width, p.W)
	}
	for i, s := range order {
		text := c.Para(c.width-width-4, []layout.Run{layout.T(layout.Body, w.signalMeans[s])}, layout.ParaOpts{})
		lines = append(lines, layout.Middle(4, plates[i].Fill(width, plates[i].H, 0, 0), text))
	}
	lines = append(lines, c.Para(c.width, []layout.Run{layout.T(layout.Sub, w.signalSource)}, layout.ParaOpts{}))
	return layout.Above(1.2, lines...)
}
