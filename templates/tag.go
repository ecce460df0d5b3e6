package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// Sizes of tags and labels, and the marks on them.
const (
	hangW, hangH layout.Mm = 70, 140
	stubH        layout.Mm = 25
	holeH        layout.Mm = 19 // the hole for the wire, 8 mm about it left free
	boxW, boxH   layout.Mm = 100, 70
	bagW, bagH   layout.Mm = 60, 40
	hangMark     layout.Mm = 20 // height of the mark's capitals
	boxMark      layout.Mm = 12
	smallMark    layout.Mm = 8
	stubMark     layout.Mm = 5
	tagCode      layout.Mm = 20
	tagEdge      layout.Mm = 4
)

// tags sets all tags and labels on sheets of their own, each size apart, and
// returns what does not fit on them.
func (c *composer) tags(p *Pack, keep func(mark string) bool) []layout.Misfit {
	sizes := []struct {
		kind job.TagKind
		w, h layout.Mm
		set  func(*job.Tag) layout.Block
	}{{job.HangTag, hangW, hangH, c.hangTag}, {job.BoxLabel, boxW, boxH, c.boxLabel}, {job.BagLabel, bagW, bagH, c.bagLabel}}
	var frames []layout.Frame
	var misfits []layout.Misfit
	p.TagCount = 0
	for _, s := range sizes {
		var labels []layout.Block
		for _, t := range c.Job.Tags {
			if t.Kind == s.kind && keep(t.Mark) {
				labels = append(labels, s.set(t).Tagged(t.At))
				p.TagCount++
			}
		}
		pages := layout.Fit(c.paper, s.w, s.h, 5).Impose("tags", labels)
		misfits = append(misfits, pages.Misfits...)
		frames = append(frames, pages.Frames...)
	}
	p.Tags = c.doc(frames, nil)
	p.Tags.Title += ", " + c.W.Tag.Title
	return misfits
}

// hangTag is tied to a part or container: all above the tear line, and the stub
// with the same code below it.
func (c *composer) hangTag(t *job.Tag) layout.Block {
	const inner = hangW - 2*tagEdge
	hole := layout.Drawn(hangW, holeH, layout.Item{Shape: layout.Path{Ops: layout.Circle(layout.Point{X: hangW / 2, Y: 11}, 3), Weight: layout.Inner, Dash: 0.8}})
	mark := c.Words(layout.MarkTag(layout.Bold, hangMark), t.Base)
	mark = layout.Block{W: mark.W, H: hangMark + 2, Items: mark.At(0, hangMark+1-mark.Base).Items}
	parts := []layout.Block{c.markAndPlace(t, mark, inner), c.tagRule(inner)}
	parts = append(parts, c.tagFacts(t, inner)...)
	body := layout.Above(0.3, parts...)
	low := c.tagLow(t, inner)
	body = body.Fill(inner, hangH-stubH-holeH-low.H-4, 0, 0)
	top := layout.Above(0, hole, layout.Above(2, body, low).At(tagEdge, 0)).Fill(hangW, hangH-stubH, 0, 0)
	tear := layout.Drawn(hangW, 0, layout.Item{Shape: layout.Line{DX: hangW, Weight: layout.Inner, Dash: 1.5}})
	return layout.Above(0, top, tear, c.stub(t)).Fill(hangW, hangH, 0, 0).Border(layout.Rect{Weight: layout.Rule, Radius: 3})
}

// markAndPlace sets the place beside the mark if it goes there, else below it.
func (c *composer) markAndPlace(t *job.Tag, mark layout.Block, width layout.Mm) layout.Block {
	room := width - mark.W - 3
	need := c.Width(layout.StepNo, c.numbered(t))
	if t.Detail != "" {
		need = max(need, c.Width(layout.MarkTag(layout.Bold, smallMark), t.Detail), c.Width(layout.Sub, t.PlaceName))
	}
	if need > room {
		return layout.Above(1, mark, c.placeLine(t, smallMark, width))
	}
	n := c.Words(layout.StepNo, c.numbered(t)).Right(room)
	var place, name layout.Block
	if t.Detail != "" {
		place = c.Words(layout.MarkTag(layout.Bold, smallMark), t.Detail).Right(room)
		name = c.Words(layout.Sub, t.PlaceName).Right(room)
	}
	return layout.Beside(3, mark, layout.Above(0, place, name, n))
}

// placeLine is the place in large letters with its name, and n of N at the end.
func (c *composer) placeLine(t *job.Tag, cap, width layout.Mm) layout.Block {
	n := c.Words(layout.StepNo, c.numbered(t))
	if t.Detail == "" {
		return n.Right(width)
	}
	big := c.Words(layout.MarkTag(layout.Bold, cap), t.Detail)
	if big.W+n.W+3 > width {
		return layout.Above(0.5, big, n.Right(width))
	}
	name := c.Para(width-big.W-3, []layout.Run{layout.T(layout.Sub, t.PlaceName)}, layout.ParaOpts{Align: layout.RightEnd, Ref: t.At})
	return layout.Beside(3, big, layout.Above(0.5, n.Right(width-big.W-3), name))
}

func (c *composer) tagRule(w layout.Mm) layout.Block {
	return layout.Drawn(w, layout.Rule, layout.Item{Shape: layout.Line{DX: w, Weight: layout.Rule}})
}

// tagFacts are the lines of a tag: what it is, what is in it, whose it is, where
// it comes off and goes back, how it is kept.
func (c *composer) tagFacts(t *job.Tag, width layout.Mm) []layout.Block {
	para := func(st layout.Style, text string) layout.Block {
		if text == "" {
			return layout.Block{}
		}
		return c.Para(width, []layout.Run{layout.T(st, text)}, layout.ParaOpts{Ref: t.At})
	}
	e, o := c.Job.Equipment, c.Job.Order
	name := c.tagName(t)
	if t.Part == nil && !t.Spare || job.Pieces(t.In) > 1 {
		name += ", " + c.inIt(t)
	}
	out := []layout.Block{para(layout.Strong, name)}
	if t.Part == nil && !t.Scrap {
		out = append(out, para(layout.Sub, joinFacts(block.PartList(t.In), c.bagsInside(t))))
	}
	out = append(out, para(layout.Sub, e.Tag+" "+e.Name+" · "+o.Number+" "+c.W.Common.Revision.With(o.Revision)))
	if t.Spare {
		return append(out, c.WideBox(layout.RoleWords, width, 1, c.W.Common.Contents, nil), c.WideBox(layout.RoleWords, width, 1, c.W.Common.OffAt, nil))
	}
	if t.Scrap {
		// What goes to scrap in a long job has no room here: the register lists it.
		return append(out, para(layout.Strong, c.W.Tag.ScrapKept), para(layout.Body, c.W.Tag.ScrapListed.With(c.Page("register "+t.Mark))))
	}
	if len(t.In) > 0 {
		steps := c.W.Common.OffAt + " " + c.stepsAndPages(t.In)
		if len(t.Out) > 0 {
			steps += " · " + c.W.Common.BackAt + " " + c.stepsAndPages(t.Out)
		}
		out = append(out, para(layout.Body, steps))
	}
	if len(c.tagMarks(t, false)) > 0 {
		out = append(out, c.minded(t, width, c.tagMarks))
	}
	return out
}

// minded sets a line of a tag with a word before what is easily missed, so that it does
// not read as an order, where that word takes no line of its own.
func (c *composer) minded(t *job.Tag, width layout.Mm, runs func(t *job.Tag, minded bool) []layout.Run) layout.Block {
	without := c.Para(width, runs(t, false), layout.ParaOpts{Ref: t.At})
	if with := c.Para(width, runs(t, true), layout.ParaOpts{Ref: t.At}); with.H <= without.H && len(with.Misfits) == 0 {
		return with
	}
	return without
}

// tagMarks are the pieces of the last line of a tag: how it is kept and where it
// lies, which way round, its set, what is easily missed, its mass.
func (c *composer) tagMarks(t *job.Tag, minded bool) []layout.Run {
	var more []layout.Run
	add := func(st layout.Style, deco layout.Deco, text string) {
		if text == "" {
			return
		}
		if n := len(more); n > 0 && deco == layout.Plain && more[n-1].Deco == layout.Plain {
			more = append(more, layout.T(layout.Body, " · "))
		} else if n > 0 {
			more = append(more, layout.T(layout.Body, "  "))
		}
		more = append(more, layout.Run{Text: text, Style: st, Deco: deco})
	}
	if t.Keep != "" {
		add(layout.Strong, layout.Plain, c.W.Tag.Keep+" "+t.Keep)
	}
	if spot := liesAt(t); spot != nil {
		add(layout.Strong, layout.Boxed, spot.Mark)
	}
	if t.Support != "" {
		add(layout.Body, layout.Plain, c.W.Common.On.With(t.Support))
	}
	for _, text := range c.waysRound(t) {
		add(layout.Strong, layout.Plain, text)
	}
	for _, text := range c.oldPieces(t) {
		add(layout.SubBold, layout.Plain, text)
	}
	for _, s := range t.Sets {
		add(layout.SubBold, layout.Boxed, c.W.Common.MatchedSet.With(s.Mark))
	}
	for _, m := range missedOf(t) {
		if minded {
			add(layout.Sub, layout.Plain, c.W.Tag.Mind)
		}
		add(layout.SubBold, layout.Inverse, m)
	}
	if t.Mass != nil {
		sentence := c.W.Tag.Mass
		if t.MassAtLeast {
			sentence = c.W.Tag.MassAtLeast
		}
		add(layout.Strong, layout.Plain, sentence.With(t.Mass.Print()))
	}
	return more
}

// tagLow is what is filled in by hand: counts and who took it off across the tag,
// below them what becomes of it, beside the code with its text.
func (c *composer) tagLow(t *job.Tag, width layout.Mm) layout.Block {
	const count = 15
	w := c.W
	code := c.codeWithText(t, tagCode)
	row := layout.Beside(layout.GapX,
		c.WideBox(layout.RoleWords, count, 1, w.Common.CountedIn, t.At), c.WideBox(layout.RoleWords, count, 1, w.Common.CountedOut, t.At),
		c.WideBox(layout.RoleWords, width-2*count-2*layout.GapX, 1, w.Common.InitialsDate, t.At))
	ticks := layout.Above(layout.GapY,
		layout.Beside(layout.GapX, c.Tick(layout.Sub, w.Tag.Reuse, nil), c.Tick(layout.Sub, w.Tag.Repair, nil)),
		layout.Beside(layout.GapX, c.Tick(layout.Sub, w.Common.Scrap, nil), c.Tick(layout.Sub, w.Tag.OnHold, nil)))
	ticks.W = width - code.W - 2
	return layout.Above(1.5, row, layout.Middle(2, ticks, code))
}

// codeWithText is the code of a tag with the same text below it.
func (c *composer) codeWithText(t *job.Tag, side layout.Mm) layout.Block {
	code := c.QR(t.Code, side, leastModule, t.At)
	text := c.Para(side+2, []layout.Run{layout.T(layout.Caption.With(layout.Mono), t.Code)}, layout.ParaOpts{Align: layout.Centered, Ref: t.At})
	return layout.Above(0, code.Center(side+2), text)
}

// stub is torn off and stays with the paper.
func (c *composer) stub(t *job.Tag) layout.Block {
	const side = 22
	code := c.QR(t.Code, side, leastModule, t.At)
	width := hangW - side - tagEdge - 4
	mark := c.Line(width, []layout.Run{layout.T(layout.MarkTag(layout.Bold, stubMark), t.Mark)}, layout.ParaOpts{Ref: t.At})
	if mark.W < c.Width(layout.MarkTag(layout.Bold, stubMark), t.Mark) {
		mark = c.Para(width, []layout.Run{layout.T(layout.Head, t.Mark)}, layout.ParaOpts{Ref: t.At})
	}
	facts := c.W.Tag.Stub + " · " + c.numbered(t)
	if !t.Spare {
		facts += " · " + c.inIt(t)
	}
	text := layout.Above(0.3, mark,
		c.Line(width, []layout.Run{layout.T(layout.Caption.With(layout.Mono), t.Code)}, layout.ParaOpts{Ref: t.At}),
		c.Line(width, []layout.Run{layout.T(layout.Caption, facts)}, layout.ParaOpts{Ref: t.At}),
		c.WideBox(layout.RoleWords, width, 1, c.W.Common.InitialsDate, t.At))
	return layout.Middle(2, layout.Space(1, 1), code, text).Fill(hangW, stubH-0.8, 0, 0.5)
}
