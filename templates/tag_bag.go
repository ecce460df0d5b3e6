package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/stock"
)

// bagEdge is what stays free along the edges of a bag label.
const bagEdge layout.Mm = 1

// bagText is the type of a bag label: lines closer than elsewhere.
var bagText = layout.Style{Face: layout.Regular, Size: layout.Caption.Size, Lead: 2.8}

// bagLabel is small: mark and place, whose it is, what is in it and where from, the code
// in the upper right corner, and at the foot ticks and boxes edge to edge. The text goes
// round the code.
func (c *composer) bagLabel(t *job.Tag, s stock.Stock, where string) layout.Block {
	w, h := layout.Mm(s.W), layout.Mm(s.H)
	inner := w - 2*bagEdge
	code := c.code(t, s)
	left := w - bagEdge - code.W
	head, low := c.bagHead(t, left, where), c.bagBoxes(t, inner)
	room := h - 2*bagEdge - low.H
	o := layout.ParaOpts{Ref: t.At, NotchW: inner - left, NotchH: code.H - bagEdge - head.H}
	set := func(kinds int, say bagSays) (layout.Block, bool) {
		b := layout.Above(0, head, c.Para(inner, c.bagRuns(t, kinds, say, left), o))
		return b, hasRoom(b, room)
	}
	body := fitted(t, func(_ tagType, kinds int) (layout.Block, bool) {
		for _, say := range []bagSays{{name: true, steps: true, plates: true}, {steps: true, plates: true}, {steps: true}} {
			if b, ok := set(kinds, say); ok {
				return b, true
			}
		}
		return set(kinds, bagSays{steps: kinds != 0})
	})
	if t.Spare {
		body = layout.Above(0, head, c.Para(left, c.bagWhose(t, left), layout.ParaOpts{Ref: t.At}))
		body = layout.Above(0.3, body, c.WideBox(layout.RoleWords, left-1, 1, c.W.Common.Contents, t.At))
	}
	face := layout.Above(0, body.Fill(inner, room, 0, 0), low).Inset(bagEdge)
	return layout.Overlay(face, code.At(w-code.W, 0))
}

// bagHead is the mark with its place, and how many tags there are.
func (c *composer) bagHead(t *job.Tag, width layout.Mm, where string) layout.Block {
	mark := c.Words(layout.MarkTag(layout.Bold, smallMark), t.Base)
	mark = raised(mark, smallMark+0.2, smallMark+0.4)
	room := width - mark.W - 2
	para := func(st layout.Style, text string) layout.Block {
		if text == "" {
			return layout.Block{}
		}
		return c.Para(room, []layout.Run{layout.T(st, c.Breakable(st, room, text))}, layout.ParaOpts{Ref: t.At})
	}
	place := layout.Strong
	if c.Width(place, t.Detail) > room {
		place = layout.SubBold
	}
	return layout.Beside(2, mark, layout.Above(0, para(place, t.Detail), para(bagText.With(layout.Bold), joinFacts(c.numbered(t), where))))
}

// bagWhose is the text of the code for a person, with machine and job as they are
// written: the mark stands above it.
func (c *composer) bagWhose(t *job.Tag, room layout.Mm) []layout.Run {
	e, o := c.Job.Equipment, c.Job.Order
	return []layout.Run{
		layout.T(bagText, c.Breakable(bagText, room, e.Tag)+" · "+c.Breakable(bagText, room, o.Number)+" · "),
		layout.T(bagText.With(layout.Mono), noBreak(t.Check())),
	}
}

// bagSays is what a bag label says where it has room: by what name the box goes that it
// lies in, which its mark tells as well; at which steps the parts come off and go back,
// which the register tells; and plates about what is easily missed.
type bagSays struct{ name, steps, plates bool }

// bagRuns are all texts of a bag label below its mark, one after the other, so many kinds
// of parts named.
func (c *composer) bagRuns(t *job.Tag, kinds int, say bagSays, room layout.Mm) []layout.Run {
	bold := bagText.With(layout.Bold)
	steps := c.W.Pieces(job.Pieces(t.In))
	if b := c.offBack(t); b != "" && say.steps {
		steps += ", " + b
	}
	name := c.tagName(t)
	if t.Pocket != "" {
		name = t.Container.Name // the name of the bag stands beside its mark
	}
	name += c.W.Common.Colon
	if !say.name {
		name = ""
	}
	runs := append(c.bagWhose(t, room), layout.T(bold, "\n"+name), layout.T(bagText, c.contents(t, kinds)+" · "), layout.T(bold, steps))
	return append(runs, c.bagMarks(t, say.plates)...)
}

// bagMarks are how a bag is kept, its remark, its mass, which way round, its set, and what
// is easily missed.
func (c *composer) bagMarks(t *job.Tag, plates bool) []layout.Run {
	bold := bagText.With(layout.Bold)
	var runs []layout.Run
	add := func(deco layout.Deco, text string) {
		if !plates {
			deco = layout.Plain
		}
		between := " "
		if deco == layout.Plain {
			between = " · "
		}
		if text != "" {
			runs = append(runs, layout.T(bagText, between), layout.Run{Text: text, Style: bold, Deco: deco})
		}
	}
	if t.Keep != "" {
		add(layout.Plain, c.W.Tag.Keep+" "+t.Keep)
	}
	add(layout.Plain, t.Note)
	add(layout.Plain, c.tagMass(t)) // the bag is lifted out of its box
	for _, text := range c.waysRound(t) {
		add(layout.Plain, text)
	}
	for _, s := range t.Sets {
		add(layout.Boxed, s.Mark)
	}
	for _, m := range missedOf(t) {
		add(layout.Inverse, m)
	}
	return runs
}

// bagBoxes are the ticks and boxes at the foot of a bag label.
func (c *composer) bagBoxes(t *job.Tag, width layout.Mm) layout.Block {
	w := c.W
	var ticks []layout.Block
	for _, word := range []string{w.Tag.Reuse, w.Tag.Repair, w.Common.Scrap, w.Tag.OnHold} {
		ticks = append(ticks, c.Tick(layout.Caption, word, t.At).Fill(width/4, 6, 0, 0))
	}
	const count, shelf = 14.2, 12
	return layout.Above(0, layout.Beside(0, ticks...), layout.Beside(0,
		c.WideBox(layout.RoleTally, count, 1, w.Common.CountedIn, t.At), c.WideBox(layout.RoleTally, count, 1, w.Common.CountedOut, t.At),
		c.WideBox(layout.RoleTally, shelf, 1, w.Common.Shelf, t.At),
		c.WideBox(layout.RoleWords, width-2*count-shelf, 1, w.Common.InitialsDate, t.At)))
}
