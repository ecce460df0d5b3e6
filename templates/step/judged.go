package step

import (
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
	"matchmark/templates/words"
)

// whichLeast is the least width of the box for which pieces of a set are out.
const whichLeast layout.Mm = 50

// judged are the blocks for matched sets that go back or are renewed as a whole: the
// readings with the pages they stand on, and one box to tick of two.
func judged(c *block.Composer, st *job.Step) []layout.Block {
	var out []layout.Block
	inner := c.Span - block.NumberWidth - 2*block.CellPad
	for _, s := range st.Judge {
		runs := []layout.Run{{Text: s.Mark, Style: layout.Strong, Deco: layout.Boxed}, layout.T(layout.Strong, "  "+s.What)}
		lines := []layout.Block{c.Para(inner, runs, layout.ParaOpts{Ref: st.At})}
		for _, text := range judgedBy(c, s) {
			lines = append(lines, c.Para(inner, []layout.Run{layout.T(layout.Sub, text)}, layout.ParaOpts{Ref: st.At}))
		}
		n := 0
		for _, p := range s.Members {
			n += p.Count
		}
		back, renewed := c.Tick(layout.Strong, c.W.Step.AllGoBack.With(c.W.Pieces(n)), st.At), c.Tick(layout.Strong, c.W.Step.AllRenewed.With(c.W.Pieces(n)), st.At)
		ticks := layout.Middle(layout.GapX, back, renewed)
		if ticks.W > inner {
			ticks = layout.Above(layout.GapY, back, renewed)
		}
		initials := c.Box(layout.RoleInitials, c.W.Common.Initials, st.At)
		which := c.WideBox(layout.RoleWords, inner-initials.W-layout.GapX, 1, c.W.Step.WhichIsOut, st.At)
		boxes := layout.Above(layout.GapY, ticks, layout.Bottom(layout.GapX, which, initials))
		if rest := inner - ticks.W - initials.W - 2*layout.GapX; rest >= whichLeast {
			which = c.WideBox(layout.RoleWords, rest, 1, c.W.Step.WhichIsOut, st.At)
			boxes = layout.Middle(layout.GapX, ticks, which, initials)
		}
		body := layout.Above(1.5, layout.Above(0.5, lines...), boxes)
		body.W = max(body.W, inner)
		out = append(out, body.Inset(block.CellPad).Border(layout.Rect{Weight: layout.Rule}).At(block.NumberWidth, 0).Anchored("judged "+s.Mark))
	}
	return out
}

// judgedBy lists the readings of a set, those of one kind in one line with their
// pages.
func judgedBy(c *block.Composer, s *job.Set) []string {
	var out, at, places []string
	for i, d := range s.JudgedBy {
		page, last := c.Page("found "+d.Mark), i+1 == len(s.JudgedBy)
		other := last || s.JudgedBy[i+1].Base != d.Base
		places = append(places, d.Place.Label)
		if other || !c.SamePage("found "+s.JudgedBy[i+1].Mark, "found "+d.Mark) {
			on := c.W.Front.PageNo.With(page)
			if d.Place.Label != "" {
				on = c.W.Common.StepPage.With(strings.Join(places, ", "), page)
			}
			at = append(at, on)
			places = nil
		}
		if other {
			l := d.Left
			if l == nil {
				l = d.Found
			}
			limit := words.Untold // of a draft, where neither limit is written
			if l != nil {
				limit = dimension.PlainWords(c.W, l)
			}
			if d.Reuse != nil {
				limit += ", " + dimension.OldWords(c.W, c.W.Common.OldPart, d.Reuse, dimension.WornWords(c, d, d.Reuse))
			}
			out = append(out, d.Base+" "+d.What+", "+limit+c.W.Common.Colon+strings.Join(at, c.W.Common.Semicolon))
			at = nil
		}
	}
	return out
}

// judgedWords words that a part of a set goes back or is renewed as was decided.
func judgedWords(c *block.Composer, s *job.Set) string {
	n := 0
	for _, p := range s.Members {
		n += p.Count
	}
	return c.W.Step.AsJudged.With(strconv.Itoa(n), s.Mark, s.JudgedAt.No, c.Page("judged "+s.Mark))
}
