package heatsheet

import (
	"strconv"

	"matchmark/layout"
	"matchmark/templates/block"
)

// handBoxes are the rows of who does what while a flame draws a part off: how many there must be
// at the least, and a box for the name of each whom no other box of the pack has. The fire watch
// has its own below; who drives and who signals in a lift signs on the sheet of that lift.
func (s sheet) handBoxes() []layout.Block {
	least, _ := s.h.Hands()
	if least == 0 {
		return nil
	}
	w := s.W.HeatPull
	names := []string{w.HandTorch, w.HandPull, w.HandWatch}
	if s.h.OnHook() && s.h.HangsIn() == nil {
		names = append(names, w.HandCrane, w.HandSignal)
	}
	var boxes []layout.Block
	for _, name := range names {
		boxes = append(boxes, s.WideBox(layout.RoleName, 55, 1, name, s.h.At))
	}
	out := []layout.Block{s.paras(layout.Body, []string{w.Hands.With(strconv.Itoa(least))})}
	for _, row := range block.Rows(boxes, s.Span) {
		out = append(out, layout.Bottom(layout.GapX, row...))
	}
	return out
}
