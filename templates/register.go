package templates

import (
	"cmp"
	"strconv"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// Measures of the register: the boxes at the end of a line, the first of them for a tick.
const (
	registerBoxes layout.Mm = 113
	registerTick  layout.Mm = 8
	registerPad   layout.Mm = 0.8
)

// register sets the container register: a line a tag, with boxes for what was counted in,
// again when all was apart, and out in two goes with their dates, where it is shelved,
// what was scrapped, is missing or left over; and spare lines.
func register(c *composer) []layout.Piece {
	if len(c.Job.Tags) == 0 {
		return nil
	}
	rule := c.RuleLine(c.W.Register.Rule)
	rule.Block = rule.Block.Anchored("register")
	out := []layout.Piece{rule}
	for _, t := range c.Job.Tags {
		line := layout.Piece{Block: c.registerLine(t).Anchored("register " + t.Mark)}
		out = append(out, c.barred([]layout.Piece{line}, c.since.Tag(t))...)
	}
	for i := range out[:len(out)-1] {
		out[i].KeepNext = i < 2 || i >= len(out)-3 // no page has a line alone
	}
	return out
}

// registerLine is the line of one tag: mark, number and pieces, what is in it and where it
// comes off and goes back, and the boxes.
func (c *composer) registerLine(t *job.Tag) layout.Block {
	width := c.Span - registerBoxes - 2*registerPad
	runs := []layout.Run{layout.T(layout.Limit, t.Mark)}
	if !t.Spare {
		runs = append(runs, layout.T(layout.Sub, "  "+noBreak(c.W.Common.Number+" "+strconv.Itoa(t.N))+" · "), layout.T(layout.SubBold, noBreak(c.inIt(t))),
			layout.T(layout.SubBold, "\n"+c.registerName(t)), layout.T(layout.Sub, c.registerContents(t)))
		if moves := joinFacts(c.movesText(c.W.Common.OffAt, t.In), c.movesText(c.W.Common.BackAt, t.Out)); moves != "" {
			runs = append(runs, layout.T(layout.Sub, "\n"+moves))
		}
	}
	return c.registerRow(c.Para(width, runs, layout.ParaOpts{Ref: t.At}), c.registerTiers(t))
}

// registerRow is the frame of a line about its text and its boxes.
func (c *composer) registerRow(text, boxes layout.Block) layout.Block {
	left := c.Span - registerBoxes
	high := max(text.H+2*registerPad, boxes.H)
	return layout.Beside(0, text.Pad(registerPad, 0, 0, registerPad).Fill(left, high, 0, 0), boxes.Fill(registerBoxes, high, 0, 0)).
		Border(layout.Rect{Weight: layout.Outline})
}

// registerTiers are the boxes of a tag: two tiers, one where it is for a single piece, which
// comes and goes in one go, and the words of the language have room in it.
func (c *composer) registerTiers(t *job.Tag) layout.Block {
	w, r := c.W.Common, c.W.Register
	high := c.WideBox(layout.RoleWords, registerTick, 1, "", t.At).H
	seen := c.Tick(layout.Body, "", t.At).Fill(registerTick, high, 0.5, 0.5)
	rest := registerBoxes - registerTick
	words := func(s string) boxWord { return boxWord{layout.RoleWords, leastWords, s} }
	number := func(s string) boxWord { return boxWord{layout.RoleTally, leastNumber, s} }
	if !t.Spare && bagsOnly(t) == 0 && job.Pieces(t.In) == 1 {
		if one, ok := c.registerTier(t, rest, words(w.InitialsDate), words(w.Shelf), number(r.CountedApart), words(r.OutFirst), number(w.Scrap), number(r.Missing), number(r.LeftOver)); ok {
			return layout.Beside(0, seen, one)
		}
	}
	first, _ := c.registerTier(t, rest, words(w.CountedIn), words(w.InitialsDate), words(w.Shelf), words(r.CountedApart))
	second, _ := c.registerTier(t, registerBoxes, words(r.OutFirst), words(r.OutRest), number(w.Scrap), number(r.Missing), number(r.LeftOver))
	return layout.Above(0, layout.Beside(0, seen, first), second)
}

// The least width of boxes in the register: for words and dates, and for a number.
const leastWords, leastNumber layout.Mm = 15, 12

// A boxWord is a box with its caption.
type boxWord struct {
	role    string
	least   layout.Mm
	caption string
}

// registerTier sets boxes edge to edge over a width, each as wide as its caption, and what
// is left shared among them; it reports whether the captions have room.
func (c *composer) registerTier(t *job.Tag, width layout.Mm, boxes ...boxWord) (layout.Block, bool) {
	const about layout.Mm = 1.5 // what a box needs beside its caption
	left := width
	wide := make([]layout.Mm, len(boxes))
	for i, b := range boxes {
		wide[i] = max(b.least, c.Width(layout.Caption, b.caption)+about)
		left -= wide[i]
	}
	var out []layout.Block
	for i, b := range boxes {
		out = append(out, c.WideBox(b.role, wide[i]+max(left, 0)/layout.Mm(len(boxes)), 1, b.caption, t.At))
	}
	return layout.Beside(0, out...), left >= 0
}

// movesText is where the contents of a container come off, or go back.
func (c *composer) movesText(word string, ms []*job.Move) string {
	if len(ms) == 0 {
		return ""
	}
	return word + " " + c.stepsAndPages(ms)
}

// registerName is what a line of the register is for: of a container its name, of a bag in
// one and of a big part, whose marks tell the rest, the pieces themselves.
func (c *composer) registerName(t *job.Tag) string {
	if t.Pocket != "" || t.Part != nil {
		return block.PartList(t.In)
	}
	return c.tagName(t)
}

// registerContents is what is in a container, and what is to be known of it.
func (c *composer) registerContents(t *job.Tag) string {
	s := ""
	if t.Pocket == "" && t.Part == nil {
		s = "  " + joinFacts(block.PartList(t.In), c.bagsInside(t))
	}
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
