package templates

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// indexPlaces are for each row the lines of its places.
func (c *composer) indexPlaces(g block.Grid, dims [][]*job.Dim) []layout.Block {
	out := make([]layout.Block, len(dims))
	for i, ds := range dims {
		var lines []layout.Block
		for _, like := range c.samePlaces(ds) {
			lines = append(lines, c.indexLine(g, like))
		}
		out[i] = layout.Above(0, lines...)
	}
	return out
}

// samePlaces are the places of a row in those that are read and set at the same steps, on the
// same pages: they share a line.
func (c *composer) samePlaces(ds []*job.Dim) [][]*job.Dim {
	same := func(a, b *job.Dim) bool {
		return a.FoundAt == b.FoundAt && a.LeftAt == b.LeftAt && placeOf(a) != "" && placeOf(b) != "" &&
			(a.FoundAt == nil || c.SamePage("found "+a.Mark, "found "+b.Mark)) &&
			(a.LeftAt == nil || c.SamePage("left "+a.Mark, "left "+b.Mark))
	}
	var out [][]*job.Dim
	for _, d := range ds {
		if n := len(out) - 1; n >= 0 && same(out[n][0], d) {
			out[n] = append(out[n], d)
			continue
		}
		out = append(out, []*job.Dim{d})
	}
	return out
}

// placeOf is what the mark of a dimension has behind its slash.
func placeOf(d *job.Dim) string {
	place, _ := strings.CutPrefix(strings.TrimPrefix(d.Mark, d.Base), "/")
	return place
}

// sharedMark are the runs of a mark with its places: D20 DE, NDE.
func sharedMark(ds []*job.Dim) []layout.Run {
	var places []string
	for _, d := range ds {
		places = append(places, placeOf(d))
	}
	return []layout.Run{layout.T(layout.Strong, ds[0].Base), layout.T(layout.Sub, " "+strings.Join(places, ", "))}
}

// indexLine is the line of places that share one, or a line of each where that is no higher:
// marks, and across the row where they are read and set.
func (c *composer) indexLine(g block.Grid, ds []*job.Dim) layout.Block {
	var apart []layout.Block
	for _, d := range ds {
		apart = append(apart, c.indexPlace(g, d, g.Mark(0, layout.Strong, d.Mark, d.At)))
	}
	each := layout.Above(0, apart...)
	if len(ds) == 1 {
		return each
	}
	one := c.indexPlace(g, ds[0], c.Para(g.Table.Room(0), sharedMark(ds), layout.ParaOpts{Ref: ds[0].At}))
	if len(one.Misfits()) > 0 || one.H > each.H-0.5 {
		return each
	}
	return one
}

// indexPlace is the line of a place in its row: its mark, and across the row where it is
// read and set.
func (c *composer) indexPlace(g block.Grid, d *job.Dim, mark layout.Block) layout.Block {
	page := func(col int, st *job.Step, what string) layout.Block {
		x := layout.Mm(0)
		for i := range col {
			x += g.Table.Columns[i].Width
		}
		return g.Text(col, layout.Sub, c.whereRead(d, st, what), d.At).At(x, 0.3)
	}
	line := layout.Overlay(mark, page(3, d.FoundAt, "found "), page(4, d.LeftAt, "left "))
	line.W = g.Table.Room(0)
	return line
}
