package templates

import (
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// cautions sets the sheet of permits and hazard notes: what the signal words mean,
// the permits with their numbers, every note in full with the steps before which
// it stands, and the notes that were left out, with the reason.
func cautions(c *composer) []layout.Piece {
	j, w := c.Job, c.W
	var notes []*job.Caution
	for _, n := range j.Cautions {
		if len(n.Steps) > 0 {
			notes = append(notes, n)
		}
	}
	if len(notes) == 0 && len(j.Permits) == 0 {
		return nil
	}
	out := []layout.Piece{c.RuleLine(block.Capital(w.Cautions.SiteRules) + ".")}
	if b := c.signalLegend(notes); !b.Empty() {
		out = append(out, layout.Piece{Block: b})
	}
	if len(j.Permits) > 0 {
		g := c.Grid(block.Col(w.Cautions.Permit, 0), block.Col(w.Cautions.PermitNumber, 22), block.Col(w.Cautions.PermitUntil, 22), block.Col(w.Cautions.PermitGiven, 36), block.Col(w.Cautions.PermitBack, 28))
		var rows []layout.Row
		for _, p := range j.Permits {
			rows = append(rows, g.Row(p.At, g.About(0, p.What, joinFacts(p.Note, w.Cautions.BeforeSteps.With(c.StepRefs(p.Steps))), p.At)))
		}
		out = append(out, g.Under(rows)...)
	}
	out = append(out, c.fireWatch(notes)...)
	if len(notes) > 0 {
		out = append(out, layout.Piece{Block: c.Heading(w.Cautions.CautionsTitle), Gap: 4, KeepNext: true})
	}
	const between = 2
	two := bands{width: (c.Span - between) / 2, between: between, gap: noteGap, either: true}
	var all []columnLine
	for _, n := range notes {
		if n.FullIn == nil {
			all = append(all, columnLine{c.cautionInFull(n, two.width), noteGap, false})
		}
	}
	out = c.columnPages(out, all, two)
	for i, s := range j.Spared {
		if i == 0 {
			out = append(out, layout.Piece{Block: c.Heading(w.Cautions.SparedTitle), Gap: 5, KeepNext: true})
		}
		text := w.Cautions.SparedLine.With(c.Note(s.Note).Hazard, c.StepRef(s.Step), s.Reason)
		out = append(out, layout.Piece{Block: c.Para(c.Span, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: s.At}), Gap: 1})
	}
	return out
}

// noteGap is the room between hazard notes in full.
const noteGap layout.Mm = 1.5

// cautionInFull is a hazard note with what happens and the steps it stands before, those of
// the notes among them whose text in full it is.
func (c *composer) cautionInFull(n *job.Caution, width layout.Mm) layout.Block {
	steps, anchors := slices.Clone(n.Steps), []string{"caution " + n.Key}
	for _, other := range c.Job.Cautions {
		if other.FullIn == n {
			steps, anchors = append(steps, other.Steps...), append(anchors, "caution "+other.Key)
		}
	}
	slices.SortStableFunc(steps, func(a, b *job.Step) int { return a.Index - b.Index })
	n = c.Note(n)
	runs := []layout.Run{layout.T(layout.Strong, n.Hazard)}
	for _, s := range []string{n.Result, n.Avoid} {
		if s != "" {
			runs = append(runs, layout.T(layout.Body, " "+s))
		}
	}
	box := c.NoteInFull(n, width, runs, c.W.Cautions.BeforeSteps.With(c.StepRefs(steps)))
	for _, a := range anchors {
		box = box.Anchored(a)
	}
	return box
}

// signalLegend explains the signal words of some notes, each as it is printed, in two columns
// below the title, or in one where a word of the language leaves a column no room for what it means.
func (c *composer) signalLegend(notes []*job.Caution) layout.Block {
	w := c.W
	var signals []string
	for _, signal := range []string{"danger", "warning", "caution", "notice"} {
		if slices.ContainsFunc(notes, func(n *job.Caution) bool { return n.Signal == signal }) {
			signals = append(signals, signal)
		}
	}
	if len(signals) == 0 {
		return layout.Block{}
	}
	half := (c.Span - layout.GapX) / 2
	width, plates := half, map[string]layout.Block{}
	for _, signal := range signals {
		plates[signal] = c.SignalPlate(signal, block.FullPlate, nil)
		if half-plates[signal].W-3 < leastMeaning {
			width = c.Span
		}
	}
	one := func(signal string) layout.Block {
		plate := plates[signal]
		text := c.Para(width-plate.W-3, []layout.Run{layout.T(layout.Body, w.Cautions.SignalMeans[signal])}, layout.ParaOpts{})
		b := layout.Middle(3, plate, text)
		b.W = width
		return b
	}
	var rows []layout.Block
	across := 1
	if width == half {
		across = 2
	}
	for some := range slices.Chunk(signals, across) {
		var row []layout.Block
		for _, signal := range some {
			row = append(row, one(signal))
		}
		rows = append(rows, layout.Middle(layout.GapX, row...))
	}
	return layout.Above(1, append(rows, c.Para(c.Span, []layout.Run{layout.T(layout.Sub, w.Cautions.SignalSource)}, layout.ParaOpts{}))...)
}

// leastMeaning is the least width that the meaning of a signal word is set in.
const leastMeaning layout.Mm = 30
