package templates

import (
	"matchmark/packs/job"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"matchmark/layout"
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
		for _, t := range c.job.Tags {
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
	p.Tags.Title += ", " + c.w.tags
	return misfits
}

// numbered is "3 of 18", or that the tag is a spare.
func (c *composer) numbered(t *job.Tag) string {
	if t.Spare {
		return c.w.spare
	}
	return fill(c.w.pageOf, strconv.Itoa(t.N), strconv.Itoa(t.Of))
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
	e, o := c.job.Equipment, c.job.Order
	name := c.tagName(t)
	if t.Part == nil && !t.Spare || job.Pieces(t.In) > 1 {
		name += ", " + c.inIt(t)
	}
	out := []layout.Block{para(layout.Strong, name)}
	if t.Part == nil && !t.Scrap {
		out = append(out, para(layout.Sub, joined(partList(t.In), c.bagsInside(t))))
	}
	out = append(out, para(layout.Sub, e.Tag+" "+e.Name+" · "+o.Number+" "+fill(c.w.revision, o.Revision)))
	if t.Spare {
		return append(out, c.WideBox(layout.RoleWords, width, 1, c.w.contents, nil), c.WideBox(layout.RoleWords, width, 1, c.w.offAt, nil))
	}
	if t.Scrap {
		// What goes to scrap in a long job has no room here: the register lists it.
		return append(out, para(layout.Strong, c.w.scrapKept), para(layout.Body, fill(c.w.scrapListed, c.page("register "+t.Mark))))
	}
	if len(t.In) > 0 {
		steps := c.w.offAt + " " + c.stepsAndPages(t.In)
		if len(t.Out) > 0 {
			steps += " · " + c.w.backAt + " " + c.stepsAndPages(t.Out)
		}
		out = append(out, para(layout.Body, steps))
	}
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
		add(layout.Strong, layout.Plain, c.w.keep+" "+t.Keep)
	}
	if spot := liesAt(t); spot != "" {
		add(layout.Strong, layout.Boxed, spot)
	}
	if t.Support != "" {
		add(layout.Body, layout.Plain, fill(c.w.support, t.Support))
	}
	for _, text := range c.waysRound(t) {
		add(layout.Strong, layout.Plain, text)
	}
	for _, s := range t.Sets {
		add(layout.SubBold, layout.Boxed, fill(c.w.matchedSet, s.Mark))
	}
	for _, m := range missedOf(t) {
		add(layout.SubBold, layout.Inverse, m)
	}
	if t.Mass != nil {
		sentence := c.w.mass
		if t.MassAtLeast {
			sentence = c.w.massAtLeast
		}
		add(layout.Strong, layout.Plain, fill(sentence, t.Mass.Print()))
	}
	if len(more) > 0 {
		out = append(out, c.Para(width, more, layout.ParaOpts{Ref: t.At}))
	}
	return out
}

// tagName is what a tag is hung on.
func (c *composer) tagName(t *job.Tag) string {
	if t.Scrap {
		return c.w.scrapBag
	}
	if t.Pocket != "" {
		return fill(c.w.bagIn, t.Container.Name, t.Pocket)
	}
	return t.Name
}

// liesAt is the mark of the lay-down spot that a big part is taken to.
func liesAt(t *job.Tag) string {
	for _, m := range t.In {
		if t.Part != nil && m.To.Spot != nil {
			return m.To.Spot.Mark
		}
	}
	return ""
}

// waysRound says which side of the parts in a container faces what.
func (c *composer) waysRound(t *job.Tag) []string {
	var out []string
	for _, m := range t.In {
		for _, r := range m.Part.WayRound {
			text := fill(c.w.sideFaces, r.Mark, r.Faces)
			if t.Part == nil {
				text = r.Part.Name + ": " + text // one of several in a container
			}
			if !slices.Contains(out, text) {
				out = append(out, text)
			}
		}
	}
	return out
}

// joined sets a dot between two texts, if there are two.
func joined(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + " · " + b
}

// bagsInside names the bags that lie in a container and have tags of their own.
func (c *composer) bagsInside(t *job.Tag) string {
	if t.Container == nil || t.Pocket != "" || len(t.Container.Pockets) == 0 {
		return ""
	}
	return fill(c.w.bagsInside, strings.Join(t.Container.Pockets, ", "))
}

// inIt is how many pieces are in a container, without those in the bags inside it;
// of one that holds nothing but bags, how many of these.
func (c *composer) inIt(t *job.Tag) string {
	if n := bagsOnly(t); n > 0 {
		return fill(c.w.bags, strconv.Itoa(n))
	}
	return c.w.count(job.Pieces(t.In))
}

// bagsOnly is the number of bags in a container that holds nothing but bags, which
// are counted by themselves; 0 for any other.
func bagsOnly(t *job.Tag) int {
	if len(t.In) > 0 || t.Container == nil || t.Pocket != "" {
		return 0
	}
	return len(t.Container.Pockets)
}

// missedOf are the easily missed things of the steps that fill a container, where
// they name what is in it.
func missedOf(t *job.Tag) []string {
	var out []string
	for _, m := range t.In {
		if s := missedBack(m); s != "" && namesPart(s, m.Part.Name) && !slices.Contains(out, s) {
			out = append(out, s)
		}
	}
	return out
}

// missedBack is what is easily missed in putting back what a move takes off: what the
// step that puts it back says of it, else what is said where it comes off, if that
// is not for taking off alone.
func missedBack(m *job.Move) string {
	if back := m.PutBack(); back != nil && back.Step != nil && namesPart(back.Step.Missed, m.Part.Name) {
		return back.Step.Missed
	}
	return m.Step.MissedBack()
}

// namesPart reports whether a sentence has a word of the name of a part, in the
// singular or the plural.
func namesPart(sentence, name string) bool {
	stem := func(word string) string { return strings.TrimSuffix(strings.ToLower(word), "s") }
	word := func(r rune) bool { return !unicode.IsLetter(r) }
	for _, a := range strings.FieldsFunc(name, word) {
		if len(a) < leastWord {
			continue
		}
		for _, b := range strings.FieldsFunc(sentence, word) {
			if stem(a) == stem(b) {
				return true
			}
		}
	}
	return false
}

// leastWord is how long a word is at the least that names a part.
const leastWord = 3

// tagLow is what is filled in by hand: counts and who took it off across the tag,
// below them what becomes of it, beside the code with its text.
func (c *composer) tagLow(t *job.Tag, width layout.Mm) layout.Block {
	const count = 15
	w := c.w
	code := c.codeWithText(t, tagCode)
	row := layout.Beside(layout.GapX,
		c.WideBox(layout.RoleWords, count, 1, w.countedIn, t.At), c.WideBox(layout.RoleWords, count, 1, w.countedOut, t.At),
		c.WideBox(layout.RoleWords, width-2*count-2*layout.GapX, 1, w.initialsDate, t.At))
	ticks := layout.Above(layout.GapY,
		layout.Beside(layout.GapX, c.Tick(layout.Sub, w.reuse, nil), c.Tick(layout.Sub, w.repair, nil)),
		layout.Beside(layout.GapX, c.Tick(layout.Sub, w.scrap, nil), c.Tick(layout.Sub, w.holdTag, nil)))
	ticks.W = width - code.W - 2
	return layout.Above(1.5, row, layout.Middle(2, ticks, code))
}

// codeWithText is the code of a tag with the same text below it.
func (c *composer) codeWithText(t *job.Tag, side layout.Mm) layout.Block {
	code := c.QR(t.Code, side, leastMm, t.At)
	text := c.Para(side+2, []layout.Run{layout.T(layout.Caption.With(layout.Mono), t.Code)}, layout.ParaOpts{Align: layout.Centered, Ref: t.At})
	return layout.Above(0, code.Center(side+2), text)
}

// stub is torn off and stays with the paper.
func (c *composer) stub(t *job.Tag) layout.Block {
	const side = 22
	code := c.QR(t.Code, side, leastMm, t.At)
	width := hangW - side - tagEdge - 4
	mark := c.Line(width, []layout.Run{layout.T(layout.MarkTag(layout.Bold, stubMark), t.Mark)}, layout.ParaOpts{Ref: t.At})
	if mark.W < c.Width(layout.MarkTag(layout.Bold, stubMark), t.Mark) {
		mark = c.Para(width, []layout.Run{layout.T(layout.Head, t.Mark)}, layout.ParaOpts{Ref: t.At})
	}
	facts := c.w.stub + " · " + c.numbered(t)
	if !t.Spare {
		facts += " · " + c.inIt(t)
	}
	text := layout.Above(0.3, mark,
		c.Line(width, []layout.Run{layout.T(layout.Caption.With(layout.Mono), t.Code)}, layout.ParaOpts{Ref: t.At}),
		c.Line(width, []layout.Run{layout.T(layout.Caption, facts)}, layout.ParaOpts{Ref: t.At}),
		c.WideBox(layout.RoleWords, width, 1, c.w.initialsDate, t.At))
	return layout.Middle(2, layout.Space(1, 1), code, text).Fill(hangW, stubH-0.8, 0, 0.5)
}

// boxLabel is stuck on a box. The code stands at its right end; the lines go on
// below the mark beside it, and below it over the whole width.
func (c *composer) boxLabel(t *job.Tag) layout.Block {
	const inner = boxW - 2*tagEdge
	code := c.codeWithText(t, tagCode)
	left := layout.Mm(inner) - code.W - 3
	mark := c.Words(layout.MarkTag(layout.Bold, boxMark), t.Base)
	mark = layout.Block{W: mark.W, H: boxMark + 1.5, Items: mark.At(0, boxMark+0.5-mark.Base).Items}
	beside := c.markAndPlace(t, mark, left)
	narrow, wide := c.tagFacts(t, left), c.tagFacts(t, inner)
	n := 0
	for n < len(narrow) && beside.H+0.2+narrow[n].H <= code.H {
		beside = layout.Above(0.2, beside, narrow[n])
		n++
	}
	beside.W = left
	low := c.labelBoxes(t, inner)
	facts := layout.Above(0.2, append([]layout.Block{layout.Beside(3, beside, code)}, wide[n:]...)...)
	body := facts.Fill(inner, boxH-2*tagEdge-low.H-1, 0, 0)
	return c.label(boxW, boxH, layout.Above(1, body, low))
}

// labelBoxes are the boxes at the foot of a box label, and what becomes of the
// parts.
func (c *composer) labelBoxes(t *job.Tag, width layout.Mm) layout.Block {
	w := c.w
	tick := func(word string) layout.Block { return c.Tick(layout.Caption, word, t.At) }
	status := layout.Beside(2, layout.Above(1, tick(w.reuse), tick(w.scrap)), layout.Above(1, tick(w.repair), tick(w.holdTag)))
	each := (width - status.W - 3*layout.GapX) / 3
	return layout.Bottom(layout.GapX,
		c.WideBox(layout.RoleWords, each, 1, w.countedIn, t.At), c.WideBox(layout.RoleWords, each, 1, w.countedOut, t.At), c.WideBox(layout.RoleWords, each, 1, w.shelf, t.At), status)
}

// label is the frame of a stuck label.
func (c *composer) label(w, h layout.Mm, body layout.Block) layout.Block {
	return body.Inset(tagEdge).Fill(w, h, 0, 0).Border(layout.Rect{Weight: layout.Rule, Radius: 3})
}
