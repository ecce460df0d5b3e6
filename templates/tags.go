package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/stock"
)

// TagOptions say on what tags and labels are printed, and how many.
type TagOptions struct {
	// Stocks are what is in the printers: at most one for each use; the usual one cut
	// from the paper where none is named.
	Stocks []stock.Stock
	// Start is the first place that is free on the first page of each stock, from 1;
	// 0 counts as 1. A stock that has fewer places begins with a new page.
	Start int
	// Copies is how often each label of a use is printed; 0 counts as once. Of two labels
	// of a bag one says that it goes outside, the other inside.
	Copies [3]int
	// Envelope puts the codes of hang tags and box labels into the envelope of ISO/IEC 15434,
	// for systems that read it; stubs and bag labels have no room for it.
	Envelope bool
}

// A Roll is the labels of one stock that has pages of its own size.
type Roll struct {
	Name string
	Doc  *layout.Doc
}

// useOf is what a kind of tag is printed on.
var useOf = map[job.TagKind]stock.Use{job.HangTag: stock.Hang, job.BoxLabel: stock.Box, job.BagLabel: stock.Bag}

// stockFor is the stock for a use.
func (c *composer) stockFor(u stock.Use) stock.Stock {
	for _, s := range c.tagging.Stocks {
		if s.Use == u {
			return s
		}
	}
	return stock.On(c.paper.Name, stock.Mm(c.paper.W), stock.Mm(c.paper.H))[u]
}

// grid is a stock as labels are laid on it.
func grid(s stock.Stock) layout.Stock {
	return layout.Stock{
		Name: s.Name, PageW: layout.Mm(s.PageW), PageH: layout.Mm(s.PageH), W: layout.Mm(s.W), H: layout.Mm(s.H), Cols: s.Across, Rows: s.Down,
		Left: layout.Mm(s.Left), Top: layout.Mm(s.Top), PitchX: layout.Mm(s.PitchX), PitchY: layout.Mm(s.PitchY),
		Turned: s.Turned, Marks: s.Cut, Reach: layout.Mm(stock.Reach),
	}
}

// firstPlace is the place, from 0, on the first page of a stock with so many.
func firstPlace(start, perPage int) int {
	if start < 1 || start > perPage {
		return 0
	}
	return start - 1
}

// tags sets all tags and labels, each size apart: those on pages of the paper into one
// document, those on pages of another size into one each. It returns what does not fit
// on them.
func (c *composer) tags(p *Pack, keep func(mark string) bool) []layout.Misfit {
	var frames []layout.Frame
	var misfits []layout.Misfit
	p.TagCount, p.Rolls = 0, nil
	for _, u := range []stock.Use{stock.Hang, stock.Box, stock.Bag} {
		s := c.stockFor(u)
		var labels []layout.Block
		for _, t := range c.Job.Tags {
			if useOf[t.Kind] == u && keep(t.Mark) {
				labels = append(labels, c.copies(t, s)...)
				p.TagCount++
			}
		}
		if len(labels) == 0 {
			continue
		}
		pages := grid(s).Impose("tags", labels, firstPlace(c.tagging.Start, s.PerPage()))
		misfits = append(misfits, pages.Misfits...)
		if layout.Mm(s.PageW) == c.paper.W && layout.Mm(s.PageH) == c.paper.H {
			frames = append(frames, pages.Frames...)
			continue
		}
		p.Rolls = append(p.Rolls, Roll{Name: s.Name, Doc: c.tagDoc(pages.Frames)})
	}
	p.Tags = c.tagDoc(frames)
	return misfits
}

// tagDoc is a document of tags.
func (c *composer) tagDoc(frames []layout.Frame) *layout.Doc {
	d := c.doc(frames, nil)
	d.BothSides = false
	d.Title += ", " + c.W.Tag.Title
	return d
}

// copies sets the label of a tag as often as it is printed.
func (c *composer) copies(t *job.Tag, s stock.Stock) []layout.Block {
	n := max(c.tagging.Copies[s.Use], 1)
	out := make([]layout.Block, n)
	for i := range out {
		where := ""
		if s.Use == stock.Bag && n > 1 {
			where = []string{c.W.Tag.Outside, c.W.Tag.Inside}[min(i, 1)]
		}
		out[i] = c.label(t, s, where).Tagged(t.At)
	}
	return out
}

// label sets one tag or label, with its code at level H where that has room, else at level
// Q. Stock that is cut from a page gets its outline.
func (c *composer) label(t *job.Tag, s stock.Stock, where string) layout.Block {
	b := c.labelFace(t, s, where)
	if len(b.Misfits()) > 0 {
		smaller := *c
		smaller.levelQ = true
		b = smaller.labelFace(t, s, where)
	}
	if s.Cut {
		b = b.Border(layout.Rect{Weight: layout.Rule, Radius: layout.Mm(s.Corner)})
	}
	return b
}

// labelFace sets what is printed on a tag or label.
func (c *composer) labelFace(t *job.Tag, s stock.Stock, where string) (b layout.Block) {
	switch s.Use {
	case stock.Hang:
		b = c.hangTag(t, s)
	case stock.Box:
		b = c.boxLabel(t, s)
	case stock.Bag:
		b = c.bagLabel(t, s, where)
	}
	return b.Fill(layout.Mm(s.W), layout.Mm(s.H), 0, 0)
}
