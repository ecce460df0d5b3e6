package templates

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// registerTick is the width of the box for the stub, registerMark the least of the mark of a
// spare before it, registerPad and registerPadY the room
// about a text, and registerLead the distance between its few lines.
const (
	registerLead layout.Mm = 3.5
	registerTick layout.Mm = 8
	registerMark layout.Mm = 8
	registerPad  layout.Mm = 0.6
	registerPadY layout.Mm = 0.3
)

// register sets the container register: a card a tag, two beside each other, with boxes for
// what was counted in, again when all was apart, and out in two goes with their dates, where
// it is shelved, what was scrapped, is missing or left over; and spare cards.
func register(c *composer) []layout.Piece {
	if len(c.Job.Tags) == 0 {
		return nil
	}
	out := []layout.Piece{anchored(c.RuleLine(c.W.Register.Rule), "register")}
	if sets := c.setsLine(); !sets.Empty() {
		changed := slices.ContainsFunc(c.Job.Sets, func(s *job.Set) bool { return c.since.Other(s.At) })
		out = append(out, c.barred([]layout.Piece{{Block: sets, Gap: 1}}, changed)...)
	}
	head := len(out)
	gap := layout.Mm(0)
	if head > 1 {
		gap = 1 // the frames of the first cards clear of the line above them
	}
	for pair := range slices.Chunk(c.Job.Tags, 2) {
		var cards []layout.Block
		high := layout.Mm(0)
		for _, t := range pair {
			text, boxes := c.registerText(t), c.registerTiers(t)
			cards = append(cards, text, boxes)
			high = max(high, text.H+2*registerPadY+boxes.H)
		}
		var row layout.Block
		for i, t := range pair {
			text, boxes := cards[2*i].Pad(registerPadY, 0, 0, registerPad), cards[2*i+1]
			card := layout.Above(0, text.Fill(c.cardWidth(), high-boxes.H, 0, 0), boxes).Border(layout.Rect{Weight: layout.Outline})
			row = layout.Beside(0, row, card.Anchored("register "+t.Mark))
		}
		out = append(out, c.barred([]layout.Piece{{Block: row, Gap: gap}}, slices.ContainsFunc(pair, c.since.Tag))...)
		gap = 0
	}
	for i := range out[:len(out)-1] {
		out[i].KeepNext = i < head || i >= len(out)-2 // no page has a row alone
	}
	return out
}

// setsLine says of each matched set what belongs together and why: cards and tags have its
// mark alone. Sets that are alike at all their places stand once.
func (c *composer) setsLine() layout.Block {
	var runs []layout.Run
	var last string
	for _, s := range c.Job.Sets {
		says := s.What
		if s.Why != "" {
			says += ", " + s.Why
		}
		if says == last && len(runs) > 0 {
			runs = slices.Insert(runs, len(runs)-1, layout.T(layout.SubBold, ", "+s.Mark))
			continue
		}
		before := " · "
		if len(runs) == 0 {
			before = c.W.Register.Sets + c.W.Common.Colon
		}
		runs = append(runs, layout.T(layout.Sub, before), layout.T(layout.SubBold, s.Mark), layout.T(layout.Sub, " "+says))
		last = says
	}
	if len(runs) == 0 {
		return layout.Block{}
	}
	return c.Para(c.Span, runs, layout.ParaOpts{Ref: c.Job.Sets[0].At})
}

// cardWidth is the width of a card of the register.
func (c *composer) cardWidth() layout.Mm { return c.Span / 2 }

// registerText is the text of one tag: mark, number and pieces, what is in it and where it
// comes off and goes back; none for a spare, whose mark stands before its boxes.
func (c *composer) registerText(t *job.Tag) layout.Block {
	if t.Spare {
		return layout.Block{}
	}
	mark, plain, bold := layout.Limit, layout.Sub, layout.SubBold
	mark.Lead, plain.Lead, bold.Lead = registerLead+1, registerLead, registerLead
	runs := []layout.Run{layout.T(mark, t.Mark)}
	runs = append(runs, layout.T(plain, "  "+noBreak(c.W.Common.Number+" "+strconv.Itoa(t.N))+" · "))
	if in := c.inIt(t); in != "" {
		runs = append(runs, layout.T(bold, noBreak(in)), layout.T(plain, " · "))
	}
	runs = append(runs, layout.T(bold, c.registerName(t)), layout.T(plain, c.registerContents(t)))
	if moves := joinFacts(c.movesText(c.W.Common.OffAt, t.In), c.movesText(c.W.Common.BackAt, t.Out)); moves != "" {
		runs = append(runs, layout.T(plain, " · "+moves))
	}
	return c.Para(c.cardWidth()-2*registerPad, runs, layout.ParaOpts{Ref: t.At})
}

// registerTiers are the boxes of a tag edge to edge, in tiers of the width of its card, the
// first of them to tick. One for a single piece has none for the count, nor for a rest that
// goes back later.
func (c *composer) registerTiers(t *job.Tag) layout.Block {
	w, r := c.W.Common, c.W.Register
	words := func(s string) boxWord { return boxWord{layout.RoleWords, leastWords, s} }
	number := func(s string) boxWord { return boxWord{layout.RoleTally, leastNumber, s} }
	first := []boxWord{words(w.CountedIn), words(w.InitialsDate), words(w.Shelf), words(r.CountedApart)}
	second := []boxWord{words(r.OutFirst), words(r.OutRest), number(w.Scrap), number(r.Missing), number(r.LeftOver)}
	if !t.Spare && bagsOnly(t) == 0 && job.Pieces(t.In) == 1 {
		first, second = first[1:], append(second[:1:1], second[2:]...)
	}
	high := c.WideBox(layout.RoleWords, registerTick, 1, "", t.At).H
	seen := c.Tick(layout.Body, "", t.At).Fill(registerTick, high, 0.5, 0.5)
	if t.Spare {
		mark := c.Words(layout.Limit, t.Mark).Pad(0, registerPad, 0, registerPad)
		seen = layout.Beside(0, mark.Fill(max(mark.W, registerMark), high, 0, 0.5), seen)
	}
	return layout.Above(0, layout.Beside(0, seen, c.registerTier(t, c.cardWidth()-seen.W, first)), c.registerTier(t, c.cardWidth(), second))
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
// is left shared among them; those that do not go beside the others stand below them.
func (c *composer) registerTier(t *job.Tag, width layout.Mm, boxes []boxWord) layout.Block {
	const about layout.Mm = 1.5 // what a box needs beside its caption
	left, n := width, 0
	var wide []layout.Mm
	for _, b := range boxes {
		w := max(b.least, c.Width(layout.Caption, b.caption)+about)
		if n > 0 && w > left {
			break
		}
		wide = append(wide, w)
		left -= w
		n++
	}
	var out []layout.Block
	for i, b := range boxes[:n] {
		out = append(out, c.WideBox(b.role, wide[i]+max(left, 0)/layout.Mm(n), 1, b.caption, t.At))
	}
	row := layout.Beside(0, out...)
	if n == len(boxes) {
		return row
	}
	return layout.Above(0, row, c.registerTier(t, width, boxes[n:]))
}

// movesText is where the contents of a container come off, or go back, without pages: the
// storeroom has the sheets of the work not before it, and the sheet of all steps has the pages.
func (c *composer) movesText(word string, ms []*job.Move) string {
	if len(ms) == 0 {
		return ""
	}
	return word + " " + c.stepNumbers(movedAt(ms))
}

// ownPieces reports whether the pieces name a tag: those of a bag in a container and of a
// big part, whose marks tell the rest, and one kind of pieces that has the name.
func (c *composer) ownPieces(t *job.Tag) bool {
	if t.Pocket != "" || t.Part != nil {
		return true
	}
	in := job.Contents(t.In)
	return len(in) == 1 && c.bagsInside(t) == "" && strings.EqualFold(in[0].Name, c.tagName(t))
}

// registerName is what a card of the register is for: its pieces, or the name of the
// container.
func (c *composer) registerName(t *job.Tag) string {
	if c.ownPieces(t) {
		return block.PartList(t.In, nil)
	}
	return c.tagName(t)
}

// registerContents is what is in a container, and what is to be known of it.
func (c *composer) registerContents(t *job.Tag) string {
	s := ""
	if !c.ownPieces(t) {
		s = "  " + joinFacts(block.PartList(t.In, nil), c.bagsInside(t))
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
				out += " · " + c.W.Register.ScrapLater.With(block.PartList([]*job.Move{m}, nil), cmp.Or(m.To.Mark(), c.W.Step.Bench), c.StepRef(b.Step))
			}
		}
	}
	return out
}
