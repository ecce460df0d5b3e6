package heatsheet

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/figure"
)

// Heats that are alike at several places, as the bearings of both ends of a shaft, are
// told once: one picture and one set of figures, and for each place its own ticks and
// its own boxes.

// alikeHeats joins neighbouring heats of which every word and figure is the same. One
// that is drawn off hot stands for itself: its boxes are filled while it is hot.
func alikeHeats(c *block.Composer, all []*job.Heat) [][]*job.Heat {
	var out [][]*job.Heat
	var last []string
	for _, h := range all {
		said := append([]string{h.What}, wordsOf(sheetOf(c.Now(), h).pieces())...)
		said = append(said, toldOf(c, h)...)
		if n := len(out); n > 0 && h.Pull == nil && out[n-1][0].Pull == nil && slices.Equal(said, last) {
			out[n-1] = append(out[n-1], h)
			continue
		}
		out, last = append(out, []*job.Heat{h}), said
	}
	return out
}

// sheetOf is the sheet of one heat.
func sheetOf(c *block.Composer, h *job.Heat) sheet {
	return sheet{Composer: c, h: h, u: figure.UnitsOf(h)}
}

// wordsOf lists the texts of some pieces.
func wordsOf(ps []layout.Piece) []string {
	var out []string
	for _, p := range ps {
		for _, it := range p.Block.Items() {
			if t, ok := it.Shape.(layout.Text); ok {
				out = append(out, t.S)
			}
		}
	}
	return out
}

// each are the heats that the sheet is for: its own, or all that are alike.
func (s sheet) each() []*job.Heat {
	if len(s.alike) == 0 {
		return []*job.Heat{s.h}
	}
	return s.alike
}

// ticksOf are the ticks of an act, one for each place.
func (s sheet) ticksOf() layout.Block {
	var ticks []layout.Block
	for _, h := range s.each() {
		ticks = append(ticks, s.Tick(layout.Body, "", h.At))
	}
	return layout.Beside(s.tickStep()-6, ticks...)
}

// ticksWide is the width of the ticks of an act.
func (s sheet) ticksWide() layout.Mm { return s.tickStep()*layout.Mm(len(s.each())) - 2 }

// tickStep is from one tick of a row to the next: as wide as the marks above them.
func (s sheet) tickStep() layout.Mm {
	step := 6 + layout.GapX
	if len(s.each()) == 1 {
		return step
	}
	for _, h := range s.each() {
		step = max(step, s.Width(layout.SubBold, s.tickName(h))+1.5)
	}
	return step
}

// tickName is what stands above the ticks of a heat: its place, in a family its mark.
func (s sheet) tickName(h *job.Heat) string {
	if s.family {
		return h.Mark
	}
	return h.Place.Label
}

// tickHeads name the places above their ticks; nothing where there is one place.
func (s sheet) tickHeads() layout.Block {
	if len(s.each()) == 1 {
		return layout.Block{}
	}
	var names []layout.Block
	for _, h := range s.each() {
		names = append(names, s.Para(s.tickStep()-1, []layout.Run{layout.T(layout.SubBold, s.tickName(h))}, layout.ParaOpts{Ref: h.At}))
	}
	return layout.Beside(1, names...)
}

// eachOnBoxes are the boxes of hot fits, for each place its own.
func (s sheet) eachOnBoxes() layout.Block {
	if table := s.onTable(); !table.Empty() {
		return table
	}
	if len(s.each()) == 1 {
		return s.onBoxes()
	}
	var rows []layout.Block
	for _, h := range s.each() {
		one := s
		one.h = h
		mark := s.Para(s.Span, []layout.Run{{Text: h.Mark, Style: layout.Strong, Deco: layout.Boxed}, layout.T(layout.Strong, "  "+h.Place.Name)}, layout.ParaOpts{Ref: h.At})
		rows = append(rows, layout.Above(0.5, mark, one.onBoxes()))
	}
	return layout.Above(layout.GapY, rows...)
}

// Measures of the table of hot fits: a column of temperatures, and the room beside its words.
const (
	tempColumn layout.Mm = 22.5
	onPad      layout.Mm = 0.8
)

// onTable has the boxes of hot fits in a table, a row each; empty where a flame
// asks for more of them.
func (s sheet) onTable() layout.Block {
	const temp, time, sign = tempColumn, layout.Mm(18), layout.Mm(18)
	cold := layout.Mm(19)
	w, watched := s.W, s.watchedInTable()
	if watched != nil {
		cold = min(cold, s.Span-4*temp-3*time-sign) // of its box no cell is lost
	}
	if slices.ContainsFunc(s.each(), func(h *job.Heat) bool { return h.PutOn.By == heat.Torch }) {
		return layout.Block{}
	}
	t := layout.Table{PadX: onPad, PadY: layout.GapY / 2, Grid: true, MinH: 9}
	column := func(width layout.Mm, text string) {
		head := s.Para(width-2*t.PadX, []layout.Run{layout.T(layout.Caption, text)}, layout.ParaOpts{Ref: s.h.At})
		t.Columns = append(t.Columns, layout.Column{Width: width, Head: head})
	}
	degree := strings.Trim(s.u.Degree(), figure.NBSP)
	place := s.Span - 3*temp - 3*time - cold - sign
	if len(s.each()) > 1 {
		column(place, "")
	}
	column(temp, w.HeatOn.SetTo+", "+degree)
	column(time, w.HeatOn.InAt)
	column(temp, w.HeatOn.ShaftTemp+", "+degree)
	column(time, w.HeatOn.OutAt)
	column(temp, w.HeatOn.PartTemp+", "+degree)
	column(time, w.HeatOn.HomeAt)
	if watched != nil {
		column(temp, s.watchedHead(*watched))
	}
	column(cold, w.HeatOn.HomeWhenCold)
	column(sign, w.Common.Initials)
	var rows []layout.Row
	for _, h := range s.each() {
		box, none := s.Value(layout.Number{Before: 3, Ref: h.At}), layout.Block{}
		tick := s.Tick(layout.Sub, "", h.At).Center(cold - 2*t.PadX)
		cells := []layout.Block{box, none, box, none, box, none, tick, none}
		if watched != nil {
			cells = slices.Insert(cells, 6, box)
		}
		if len(s.each()) > 1 {
			name := s.Para(place-2*t.PadX, []layout.Run{{Text: h.Mark, Style: layout.SubBold, Deco: layout.Boxed}, layout.T(layout.Caption, " "+h.Place.Name)}, layout.ParaOpts{Ref: h.At})
			cells = append([]layout.Block{name}, cells...)
		}
		rows = append(rows, layout.Row{Cells: cells, Middle: true, Ref: h.At})
	}
	return t.Block(rows)
}
