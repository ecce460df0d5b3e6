package templates

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
	"matchmark/templates/words"
)

// critical sets the sheet that is asked for in the middle of the night: every
// dimension with a limit, as found and as left, and all that is easily missed.
func critical(c *composer) []layout.Piece {
	dims := c.criticalDims()
	if len(dims) == 0 {
		return nil
	}
	out := []layout.Piece{c.RuleLine(c.W.Critical.Rule)}
	out = append(out, c.easilyMissed()...)
	g, wide := c.criticalGrids(dims)
	table := &layout.TableOf{Columns: len(g.Table.Columns)}
	g.Table.Of, wide.Table.Of = table, table
	pieces := g.Table.Pieces(make([]layout.Row, 1))
	head := pieces[0]
	head.Gap = 3
	out = append(out, head)
	var name *layout.Block
	said := ""
	for i, d := range dims {
		changed, before := c.since.Dim(d), said
		said = c.criticalSaid(d)
		named := i == 0 || d.Base != dims[i-1].Base || said != before // else its boxes stand below others
		if named {
			b := c.criticalName(d, table)
			name = &b
			out = append(out, c.barred([]layout.Piece{{Block: b, KeepNext: true, Under: pieces[1].Under}}, changed)...)
		}
		var row []layout.Piece
		switch {
		case c.tight(d):
			row = c.tightRow(d, table, named)
		case c.besides(g, d):
			row = g.Bare().Pieces([]layout.Row{c.criticalRow(g, d, false, named)})
		default:
			row = wide.Bare().Pieces([]layout.Row{c.criticalRow(wide, d, true, named)})
		}
		row[0].Under = append(pieces[1].Under[:1:1], name)
		out = append(out, c.barred(row, changed)...)
	}
	return out
}

// criticalSaid is what stands above the rows of a dimension: of the next place of the
// same dimension it is not said again.
func (c *composer) criticalSaid(d *job.Dim) string {
	said := append(dimension.StateLine(c.Composer, d), c.limitLines(d)...)
	return strings.Join(append(said, d.What, c.criticalActs(d), strconv.FormatBool(d.NotSourced())), "|")
}

// criticalName is what is measured, its limit, how, and what is done when it is out of its
// limit; drawn again where a page begins between its rows. What is easily missed at its step
// stands in the list above: it need have nothing to do with the reading.
func (c *composer) criticalName(d *job.Dim, of *layout.TableOf) layout.Block {
	t := layout.Table{PadX: 1.2, PadY: 0.3, Grid: true, Columns: []layout.Column{{Width: c.Span, Span: of.Columns}}, Of: of}
	runs := []layout.Run{layout.T(layout.Body, d.What)}
	for _, l := range c.limitsOf(d) {
		if l.style == layout.Strong {
			l.style = layout.Limit
		}
		runs = append(runs, layout.T(layout.Body, "  "), layout.T(l.style, l.text))
	}
	runs = append(runs, layout.T(layout.Body, "  "))
	if d.NotSourced() {
		runs = append(runs, layout.Run{Text: c.W.Common.NotSourced, Style: layout.SubBold, Deco: layout.Boxed}, layout.T(layout.Sub, "  "))
	}
	facts := dimension.StateLine(c.Composer, d)
	if acts := c.criticalActs(d); acts != "" {
		facts = append(facts, acts)
	}
	runs = append(runs, layout.T(layout.Sub, strings.Join(facts, " · ")))
	return t.Block([]layout.Row{{Cells: []layout.Block{c.Para(t.Room(0), runs, layout.ParaOpts{Ref: d.At})}, Ref: d.At}})
}

// criticalActs say what is done when a reading is out of its limit, each for its box where it
// is another thing as found than as left.
func (c *composer) criticalActs(d *job.Dim) string {
	var act []string
	for _, n := range []struct {
		sentence words.Sentence
		value    string
	}{{c.W.Common.IfOver, d.Over}, {c.W.Common.IfUnder, d.Under}, {c.W.Common.IfOut, d.Out}} {
		if n.value != "" {
			act = append(act, n.sentence.With(n.value))
		}
	}
	left := strings.Join(act, " · ")
	if d.FoundOut == "" || d.FoundAt == nil {
		return left
	}
	found := dimension.FoundOut(c.W, d)
	if d.LeftAt == nil || left == "" {
		return found // there is no box as left, or nothing is said of it
	}
	return found + " · " + c.W.Common.AsLeft + ", " + left
}

// criticalDims are the dimensions of the sheet, merged ones once: the critical ones, and those
// by which a hold is released.
func (c *composer) criticalDims() []*job.Dim {
	var out []*job.Dim
	done := map[*job.Dim]bool{}
	deciding := c.Job.Deciding()
	for _, d := range c.Job.Dims {
		critical := d.Critical || deciding[d.Base]
		if d.In != nil {
			d = d.In
		}
		if critical && !done[d] && d.Box.Form != reading.Grid {
			done[d] = true
			out = append(out, d)
		}
	}
	slices.SortStableFunc(out, func(a, b *job.Dim) int { return job.ByNumber(a.Base, b.Base) })
	return out
}

// easilyMissed lists what is easily missed, one thing a line in two columns, with the
// steps and their pages.
func (c *composer) easilyMissed() []layout.Piece {
	width := (c.Span - layout.GapX) / 2
	var things []string
	at := map[string][]layout.Run{}
	for _, s := range c.Job.Sections {
		for _, st := range s.Steps {
			if st.Missed == "" {
				continue
			}
			where := c.StepRef(st) // its number is its place's alone
			if at[st.Missed] == nil {
				things = append(things, st.Missed)
			}
			at[st.Missed] = append(at[st.Missed], layout.Run{Text: where, Style: layout.SubBold, Deco: layout.Boxed, Ref: st.At}, layout.Run{Text: " ", Style: layout.Body, Ref: st.At})
		}
	}
	if len(things) == 0 {
		return nil
	}
	var lines []columnLine
	for _, s := range things {
		runs := append(at[s], layout.Run{Text: block.Together(s), Style: layout.Body, Ref: at[s][0].Ref})
		lines = append(lines, columnLine{c.Para(width, runs, layout.ParaOpts{Hang: 3}), 0.6, false})
	}
	two := bands{width: width, between: layout.GapX}
	row := func(lines []columnLine) layout.Block {
		cut, _ := balanced(lines)
		return two.row(lines, cut)
	}
	list := row(lines)
	var ways []layout.Parting
	for k := leastMissed; k <= len(lines)-leastMissed; k += 2 {
		ways = append(ways, layout.Parting{Upper: row(lines[:k]), Lower: row(lines[k:])})
	}
	list.SetPartings(ways)
	return []layout.Piece{{Block: c.Heading(c.W.Critical.EasilyMissedTitle), KeepNext: true}, {Block: list, Gap: 1}}
}

// leastMissed is how many lines of what is easily missed stand on a page at the least.
const leastMissed = 6
