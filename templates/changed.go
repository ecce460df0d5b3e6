package templates

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates/block"
)

// A change bar stands in the margin beside what is not as it was in the revision before,
// with the letter of the revision at its top, clear of the holes of the binder, which end
// 15 mm from the edge of the paper.
const (
	barOut    layout.Mm = 1.6 // from the text to the bar
	letterGap layout.Mm = 0.5
)

// barred puts a change bar beside pieces, the letter at the first of them. The pieces may
// be kept from pass to pass: they are not changed themselves.
func (c *composer) barred(ps []layout.Piece, changed bool) []layout.Piece {
	if !changed {
		return ps
	}
	out := slices.Clone(ps)
	for i := range out {
		out[i].Block = c.bar(out[i].Block, i == 0)
	}
	return out
}

// bar puts a change bar beside a block.
func (c *composer) bar(b layout.Block, lettered bool) layout.Block {
	if b.H <= 0 {
		return b
	}
	ways := slices.Clone(b.Partings())
	for i, x := range ways {
		ways[i] = layout.Parting{Upper: c.bar(x.Upper, lettered), Lower: c.bar(x.Lower, false), Apart: x.Apart, Led: x.Led}
	}
	parts := []layout.Block{b, layout.Drawn(b.W, b.H, layout.Item{X: -barOut, Role: layout.RoleChange, Shape: layout.Line{DY: b.H, Weight: layout.Heavy}})}
	if lettered {
		letter := c.Words(layout.SubBold, c.Job.Order.Revision)
		parts = append(parts, letter.At(-barOut-letterGap-letter.W, 0))
	}
	out := layout.Overlay(parts...)
	out.SetPartings(ways)
	return out
}

// barredRows puts a change bar beside the rows of a table that are of changed things: the
// pieces of the table, whose last ones are its rows.
func (c *composer) barredRows(ps []layout.Piece, changed []bool) []layout.Piece {
	first := len(ps) - len(changed)
	for i, is := range changed {
		if is {
			ps[first+i].Block = c.bar(ps[first+i].Block, true)
		}
	}
	return ps
}

// changedSince says what the bars in the margin mean, empty where there are none.
func (c *composer) changedSince() layout.Block {
	if c.since == nil {
		return layout.Block{}
	}
	lines := []layout.Block{c.Para(c.Span, []layout.Run{layout.T(layout.Body, c.W.Front.ChangedSince.With(c.Job.Order.Revision, c.since.Was))}, layout.ParaOpts{})}
	list := func(head string, names []string) {
		if len(names) > 0 {
			lines = append(lines, c.Para(c.Span, []layout.Run{layout.T(layout.SubBold, head+" "), layout.T(layout.Sub, strings.Join(names, " · "))}, layout.ParaOpts{}))
		}
	}
	var names []string
	for _, x := range c.since.Others {
		names = append(names, c.whereChanged(x))
	}
	list(c.W.Front.ChangedToo, names)
	list(c.W.Front.Gone, c.since.Gone)
	return c.bar(layout.Above(0.5, lines...), true)
}

// sheetsOf are the sheets on which the things of a kind stand that have no anchor of their own.
var sheetsOf = map[string]string{"isolation": "isolations", "permit": "isolations", "opening": "openings", "joint": "tightening", "fetched": "gather", "instrument": "gather", "set": "register"}

// whereChanged names a changed thing with its page, as far as it has one.
func (c *composer) whereChanged(x job.Changed) string {
	kind, mark, _ := strings.Cut(x.Anchor, " ")
	if kind == "spot" {
		x.Anchor = c.toldOfSpot(mark)
	}
	_, known := c.Pages[x.Anchor]
	span, listed := c.sheet[sheetsOf[kind]]
	switch {
	case known:
		return c.W.Common.StepPage.With(x.Name, c.Page(x.Anchor))
	case listed:
		return c.W.Common.StepPage.With(x.Name, strconv.Itoa(span[0]))
	}
	return x.Name
}

// toldOfSpot is the anchor of the lift that lays down on a spot; of another spot the front sheet,
// which has none, tells.
func (c *composer) toldOfSpot(mark string) string {
	for _, l := range c.Job.Lifts {
		if l.LayDown != nil && l.LayDown.Mark == mark {
			return "lift " + l.Mark
		}
	}
	return ""
}

// barsOwn are the sheets that put bars beside their own rows.
var barsOwn = []string{"front", "register", "critical", "dimensions"}

// barOthers puts change bars beside the pieces of a sheet that tell of what has changed and
// is neither a step nor a reading. Not beside workings, which stand there for several things: what
// has changed of one has its bar where it is told.
func (c *composer) barOthers(k kind, ps []layout.Piece) []layout.Piece {
	if c.since == nil || k.handover || slices.Contains(barsOwn, k.name) {
		return ps
	}
	out := slices.Clone(ps)
	for i, p := range out {
		tells := func(it layout.Item) bool {
			at, placed := it.Ref.(source.Pos)
			return placed && it.Role != block.RoleWorking && c.since.Other(at)
		}
		if slices.ContainsFunc(p.Block.Items(), tells) {
			out[i].Block = c.bar(p.Block, true)
		}
	}
	return out
}

// tabledChanged reports whether one of the steps of a table is changed.
func (c *composer) tabledChanged(steps []*job.Step) bool {
	return slices.ContainsFunc(steps, c.since.Step)
}
