package heatsheet

import (
	"slices"

	"matchmark/layout"
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
		said := append([]string{h.What}, wordsOf(sheet{Composer: c, h: h, u: figure.UnitsOf(h)}.pieces())...)
		if n := len(out); n > 0 && h.Pull == nil && out[n-1][0].Pull == nil && slices.Equal(said, last) {
			out[n-1] = append(out[n-1], h)
			continue
		}
		out, last = append(out, []*job.Heat{h}), said
	}
	return out
}

// wordsOf lists the texts of some pieces.
func wordsOf(ps []layout.Piece) []string {
	var out []string
	for _, p := range ps {
		for _, it := range p.Block.Items {
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

// tickStep is from one tick of a row to the next.
const tickStep layout.Mm = 6 + layout.GapX

// ticksOf are the ticks of an act, one for each place.
func (s sheet) ticksOf() layout.Block {
	var ticks []layout.Block
	for _, h := range s.each() {
		ticks = append(ticks, s.Tick(layout.Body, "", h.At))
	}
	return layout.Beside(layout.GapX, ticks...)
}

// tickHeads name the places above their ticks; nothing where there is one place.
func (s sheet) tickHeads() layout.Block {
	if len(s.each()) == 1 {
		return layout.Block{}
	}
	var names []layout.Block
	for _, h := range s.each() {
		names = append(names, s.Para(tickStep-1, []layout.Run{layout.T(layout.SubBold, h.Place.Label)}, layout.ParaOpts{Ref: h.At}))
	}
	return layout.Beside(1, names...)
}

// eachOnBoxes are the boxes of a hot fit, for each place its own.
func (s sheet) eachOnBoxes() layout.Block {
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
