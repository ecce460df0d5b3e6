package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
)

// A holdRow is one release of a hold: at its step, or once more at the put-back row.
type holdRow struct {
	hold *job.Hold
	at   *job.Step
}

// holdRows are all releases, those of one hold below each other.
func holdRows(j *job.Job) []holdRow {
	var out []holdRow
	for _, h := range j.Holds {
		out = append(out, holdRow{h, h.Step})
		if h.Again != nil {
			out = append(out, holdRow{h, h.Again})
		}
	}
	return out
}

// holds sets the list of hold and witness points, for the people who have to be
// there.
func holds(c *composer) []layout.Piece {
	if len(c.job.Holds) == 0 {
		return nil
	}
	w := c.w
	g := c.grid(column{w.mark, 18}, column{w.holdWhat, 0}, column{w.seenAndReleased, 58}, column{w.dateTime, 28})
	var rows []layout.Row
	for _, r := range holdRows(c.job) {
		h, text := r.hold, r.hold.Mark
		if r.at != nil && r.at == h.Again {
			text = fill(w.holdAgain, text)
		}
		word, rule := w.hold, w.stopsHere
		if h.Witness {
			word, rule = w.witness, w.mayGoOn
		}
		mark := layout.Above(0.3, g.text(0, layout.Limit, text, h.At), g.text(0, layout.SubBold, word, h.At))
		facts := h.Releases + " · " + rule
		if r.at != nil {
			facts = c.stepRef(r.at) + " · " + facts
		}
		what := layout.Above(0.5, g.text(1, layout.Body, h.What, h.At), g.text(1, layout.Sub, facts, h.At))
		rows = append(rows, g.row(h.At, mark, what))
	}
	return c.listSheet(w.holdsRule, g, append(rows, g.blank(2)...))
}
