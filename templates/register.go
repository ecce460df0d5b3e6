package templates

import (
	"cmp"
	"strconv"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// register sets the container register: one row a tag, with boxes for what was
// counted in and out and where it is shelved, and spare rows.
func register(c *composer) []layout.Piece {
	w := c.W
	g := c.Grid(block.Col(w.Common.Number, 8), block.Col(w.Common.Mark, c.tagMarkWidth()), block.Col(w.Common.Contents, 0), block.Col(w.Register.OffAndBackAt, 31), block.Col(w.Common.CountedIn, 19.5), block.Col(w.Common.CountedOut, 19.5), block.Col(w.Common.Shelf, 19.5))
	var rows []layout.Row
	for _, tag := range c.Job.Tags {
		row := g.Row(tag.At, layout.Block{}, g.Text(1, layout.Strong, tag.Mark, tag.At))
		if !tag.Spare {
			row = g.Row(tag.At, g.Text(0, layout.Sub, strconv.Itoa(tag.N), tag.At), g.Text(1, layout.Strong, tag.Mark, tag.At),
				g.About(2, c.tagName(tag), c.registerContents(tag), tag.At),
				layout.Above(0, c.movesCell(g, w.Common.OffAt, tag.In, tag), c.movesCell(g, w.Common.BackAt, tag.Out, tag)))
		}
		row.Anchor = "register " + tag.Mark
		rows = append(rows, row)
	}
	return g.Table.Pieces(block.LastTogether(rows))
}

// widestMark is the most width of a column of marks; a longer mark does not fit.
const widestMark layout.Mm = 34

// tagMarkWidth is the width of a column of the marks of all tags.
func (c *composer) tagMarkWidth() layout.Mm {
	var marks []string
	for _, t := range c.Job.Tags {
		marks = append(marks, t.Mark)
	}
	return min(c.MarkWidth(layout.Strong, 12, marks...), widestMark)
}

// movesCell is where the contents of a container come off, or go back.
func (c *composer) movesCell(g block.Grid, word string, ms []*job.Move, tag *job.Tag) layout.Block {
	if len(ms) == 0 {
		return layout.Block{}
	}
	return g.Text(3, layout.Sub, word+" "+c.stepsAndPages(ms), tag.At)
}

// registerContents is what is in a container and how many pieces.
func (c *composer) registerContents(t *job.Tag) string {
	s := block.PartList(t.In)
	if n := job.Pieces(t.In); n > 1 {
		s += " (" + c.W.Pieces(n) + ")"
	}
	s = joinFacts(s, c.bagsInside(t))
	for _, text := range block.OldPieces(c.Composer, t.In) {
		s += " · " + text
	}
	if t.Scrap {
		s += c.scrapLater()
	}
	if spot := liesAt(t); spot != nil {
		s += " · " + spot.Mark + " " + spot.What
	}
	for _, x := range t.Sets {
		s += " · " + c.W.Common.MatchedSet.With(x.Mark)
	}
	return s
}

// scrapLater lists the old pieces that come to the scrap bag from where they were kept
// until the new ones were on.
func (c *composer) scrapLater() string {
	out := ""
	for _, p := range c.Job.Parts {
		for _, m := range p.Off {
			if b := m.OldOne(); b != nil {
				out += " · " + c.W.Register.ScrapLater.With(block.PartList([]*job.Move{m}), cmp.Or(m.To.Mark(), c.W.Step.Bench), c.StepRef(b.Step))
			}
		}
	}
	return out
}

// stepsAndPages lists where parts come off or go back: 3.2 p. 9.
func (c *composer) stepsAndPages(ms []*job.Move) string {
	s, last := "", ""
	for _, m := range ms {
		if m.Step.No == last {
			continue
		}
		if s != "" {
			s += ", "
		}
		last = m.Step.No
		s += c.W.Common.StepPage.With(m.Step.No, c.Page("step "+m.Step.No))
	}
	return s
}
