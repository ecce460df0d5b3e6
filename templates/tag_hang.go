package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/stock"
)

// Measures of tags and labels, and the heights of the marks on them.
const (
	hangMark  layout.Mm = 20 // height of the mark's capitals
	boxMark   layout.Mm = 12
	smallMark layout.Mm = 8
	stubMark  layout.Mm = 5
	tagEdge   layout.Mm = 4
	holeRim   layout.Mm = 8 // about the hole nothing is printed: an eyelet covers it
	smallGap  layout.Mm = 1.5
	tickGap   layout.Mm = 2 // from the word at a tick to the next tick
)

// hangTag is tied to a part or container: all above the tear line, and the stub
// with the same code below it.
func (c *composer) hangTag(t *job.Tag, s stock.Stock) layout.Block {
	w, h := layout.Mm(s.W), layout.Mm(s.H)
	inner := w - 2*tagEdge
	top := c.holeRow(t, s)
	mark := c.markBlock(t, hangMark)
	head := layout.Above(0.3, c.markAndPlace(t, mark, inner, s.Hole == 0), c.tagRule(inner))
	low := c.tagLow(t, s, inner)
	room := h - layout.Mm(s.Stub) - top.H - low.H - smallGap - 0.5
	body := fitted(t, func(ty tagType, kinds int) (layout.Block, bool) {
		b := layout.Above(0.3, head, c.setFacts(t, c.tagFacts(t, ty, kinds, inner), inner, 0, 0))
		return b, hasRoom(b, room)
	})
	body = body.Fill(inner, room, 0, 0)
	return c.withStub(t, s, layout.Above(0, top, layout.Above(smallGap, body, low).At(tagEdge, 0)))
}

// withStub sets the stub of a tag or label below its face, with the line between them where
// it is torn or cut off; the face alone where the stock has none.
func (c *composer) withStub(t *job.Tag, s stock.Stock, face layout.Block) layout.Block {
	w, high := layout.Mm(s.W), layout.Mm(s.Stub)
	face = face.Fill(w, layout.Mm(s.H)-high, 0, 0)
	if high == 0 {
		return face
	}
	tear := layout.Drawn(w, 0, layout.Item{Shape: layout.Line{DX: w, Weight: layout.Inner, Dash: 1.5}})
	return layout.Above(0, face, tear, c.stub(t, s))
}

// holeRow is the room of the hole, drawn where it is punched by hand, with n of N beside
// what stays free about it.
func (c *composer) holeRow(t *job.Tag, s stock.Stock) layout.Block {
	w := layout.Mm(s.W)
	if s.Hole == 0 {
		return layout.Space(w, tagEdge)
	}
	r := layout.Mm(s.Hole) / 2
	row := layout.Space(w, layout.Mm(s.HoleAt)+r+holeRim)
	if s.Cut {
		row = layout.Drawn(row.W, row.H, layout.Item{Shape: layout.Path{Ops: layout.Circle(layout.Point{X: w / 2, Y: layout.Mm(s.HoleAt)}, r), Weight: layout.Inner, Dash: 0.8}})
	}
	beside := c.Para(w/2-r-holeRim-tagEdge, []layout.Run{layout.T(layout.StepNo, c.numbered(t))}, layout.ParaOpts{Ref: t.At})
	out := layout.Overlay(row, beside.At(tagEdge, tagEdge))
	out.W, out.H = row.W, row.H
	return out
}

// markBlock is the mark in letters of a height.
func (c *composer) markBlock(t *job.Tag, high layout.Mm) layout.Block {
	mark := c.Words(layout.MarkTag(layout.Bold, high), t.Base)
	return raised(mark, high+0.5, high+1.5)
}

// raised is a mark with its baseline so far down a block of a height: letters of a mark reach
// neither above nor below.
func raised(mark layout.Block, base, high layout.Mm) layout.Block {
	out := mark.At(0, base-mark.Base)
	out.H, out.Base = high, 0
	return out
}

// markAndPlace sets the place beside the mark if it goes there, else below it; with n of N
// where that does not stand elsewhere.
func (c *composer) markAndPlace(t *job.Tag, mark layout.Block, width layout.Mm, withN bool) layout.Block {
	room := width - mark.W - 3
	n := ""
	if withN {
		n = c.numbered(t)
	}
	low := c.Line(0, c.placeAndN(t, n), layout.ParaOpts{Ref: t.At})
	var place layout.Block
	if t.Detail != "" {
		place = c.Words(layout.MarkTag(layout.Bold, smallMark), t.Detail)
	}
	if max(place.W, low.W) > room {
		return layout.Above(1, mark, c.placeLine(t, n, width))
	}
	if !place.Empty() {
		place = place.Right(room)
	}
	if !low.Empty() {
		low = low.Right(room)
	}
	return layout.Beside(3, mark, layout.Above(0, place, low))
}

// placeAndN are the name of the place and n of N, if there is one.
func (c *composer) placeAndN(t *job.Tag, n string) []layout.Run {
	var runs []layout.Run
	if t.Detail != "" && t.PlaceName != "" {
		runs = append(runs, layout.T(layout.Sub, t.PlaceName))
	}
	if n != "" && len(runs) > 0 {
		runs = append(runs, layout.T(layout.Sub, " · "))
	}
	if n != "" {
		runs = append(runs, layout.T(layout.StepNo, n))
	}
	return runs
}

// placeLine is the place in large letters with its name, and n of N at the end.
func (c *composer) placeLine(t *job.Tag, n string, width layout.Mm) layout.Block {
	var of layout.Block
	if n != "" {
		of = c.Words(layout.StepNo, n)
	}
	if t.Detail == "" {
		return of.Right(width)
	}
	big := c.Words(layout.MarkTag(layout.Bold, smallMark), t.Detail)
	if big.W+of.W+3 > width {
		return layout.Above(0.5, big, of.Right(width))
	}
	name := c.Para(width-big.W-3, []layout.Run{layout.T(layout.Sub, t.PlaceName)}, layout.ParaOpts{Align: layout.RightEnd, Ref: t.At})
	return layout.Beside(3, big, layout.Above(0.5, of.Right(width-big.W-3), name))
}

func (c *composer) tagRule(w layout.Mm) layout.Block {
	return layout.Drawn(w, layout.Rule, layout.Item{Shape: layout.Line{DX: w, Weight: layout.Rule}})
}

// tagLow is what is filled in by hand: counts and shelf across the tag, below them who
// took it off and what becomes of it, beside the code with its text.
func (c *composer) tagLow(t *job.Tag, s stock.Stock, width layout.Mm) layout.Block {
	const count = 15
	w := c.W
	code := c.codeWithText(t, s)
	row := layout.Beside(layout.GapX,
		c.WideBox(layout.RoleWords, count, 1, w.Common.CountedIn, t.At), c.WideBox(layout.RoleWords, count, 1, w.Common.CountedOut, t.At),
		c.WideBox(layout.RoleWords, width-2*count-2*layout.GapX, 1, w.Common.Shelf, t.At))
	left := width - code.W - 2
	ticks := layout.Above(2,
		layout.Beside(tickGap, c.Tick(layout.Sub, w.Tag.Reuse, nil), c.Tick(layout.Sub, w.Tag.Repair, nil)),
		layout.Beside(tickGap, c.Tick(layout.Sub, w.Common.Scrap, nil), c.Tick(layout.Sub, w.Tag.OnHold, nil)))
	hand := layout.Above(2, c.WideBox(layout.RoleWords, left, 1, w.Common.InitialsDate, t.At), ticks)
	hand.W = left
	return layout.Above(smallGap, c.compared(t, width), row, layout.Middle(2, hand, code))
}

// compared is the line by which old parts are let go: held against the new ones, and who
// did it. It is empty where nothing is renewed.
func (c *composer) compared(t *job.Tag, width layout.Mm) layout.Block {
	if !comparedOn(t) {
		return layout.Block{}
	}
	sign := c.Box(layout.RoleInitials, c.W.Common.Initials, t.At)
	return layout.Middle(2, c.comparedLine(t, width-sign.W-2), sign)
}

// comparedLine is the same without a box for initials.
func (c *composer) comparedLine(t *job.Tag, width layout.Mm) layout.Block {
	if !comparedOn(t) {
		return layout.Block{}
	}
	words := c.W.Tag.Compared
	if t.Scrap {
		words = c.W.Tag.ScrapKept
	}
	tick := c.Tick(layout.Sub, "", t.At)
	out := layout.Middle(2, tick, c.Para(width-tick.W-2, []layout.Run{layout.T(layout.SubBold, words)}, layout.ParaOpts{Ref: t.At}))
	out.W = width
	return out
}

// stub is torn off and stays with the paper.
func (c *composer) stub(t *job.Tag, s stock.Stock) layout.Block {
	w := layout.Mm(s.W)
	code := c.stubCode(t, s)
	width := w - code.W - tagEdge - 2
	sign := c.WideBox(layout.RoleWords, 22, 1, c.W.Common.InitialsDate, t.At)
	beside := width - sign.W - 2
	mark := c.Words(layout.MarkTag(layout.Bold, stubMark), t.Mark)
	if mark.W > beside {
		mark = c.Para(beside, []layout.Run{layout.T(layout.Strong, c.Breakable(layout.Strong, beside, t.Mark))}, layout.ParaOpts{Ref: t.At})
	}
	facts := c.W.Tag.Stub + " · " + c.numbered(t)
	if !t.Spare {
		facts = joinFacts(facts, c.inIt(t))
	}
	text := layout.Above(0.5, layout.Middle(2, mark.Fill(beside, mark.H, 0, 0), sign), c.spelled(t, width, layout.ParaOpts{}),
		c.Para(width, []layout.Run{layout.T(layout.Sub, facts)}, layout.ParaOpts{Ref: t.At}))
	return layout.Middle(2, code, text).Fill(w, layout.Mm(s.Stub), 0, 0.5)
}
