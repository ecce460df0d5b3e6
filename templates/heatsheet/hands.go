package heatsheet

import (
	"strconv"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// handPieces tell who does what while a flame draws a part off: how many there must be at the
// least, as many as its step takes, and a box for the name of each whom no other box of the pack
// has. The fire watch has its own below; who drives and who signals in a lift signs on the sheet
// of that lift. Where the step takes more people than these a second one is at the torches.
func (s sheet) handPieces() []layout.Piece {
	least, _ := s.h.Hands()
	if least == 0 {
		return nil
	}
	w := s.W.HeatPull
	names := []string{w.HandTorch, w.HandPull, w.HandWatch}
	if pulled := s.h.PulledAt; pulled != nil && pulled.People > least {
		least = pulled.People
		if pulled.People > s.h.Apart() {
			names = append([]string{w.HandTorch}, names...)
		}
	}
	if s.h.OnHook(s.h.PulledAt) && s.h.HangsIn(s.h.PulledAt) == nil {
		names = append(names, w.HandCrane, w.HandSignal)
	}
	var boxes []layout.Block
	for _, name := range names {
		boxes = append(boxes, s.WideBox(layout.RoleName, 55, 1, name, s.h.At))
	}
	line := s.paras(layout.Body, []string{w.Hands.With(strconv.Itoa(least))})
	out := []layout.Piece{{Block: line, Gap: 1.5, KeepNext: true}}
	again := s.paras(layout.Caption, []string{w.Hands.With(strconv.Itoa(least))})
	rows := block.Rows(boxes, s.Span)
	for i, row := range rows {
		out = append(out, layout.Piece{Block: layout.Bottom(layout.GapX, row...), Gap: layout.GapY, KeepNext: i < len(rows)-1, MayPart: true,
			Under: []*layout.Block{&again}}) // who they are, where a page begins with some of them
	}
	return out
}

// slingPieces are what is told of slings where the part hangs on a hook hot at a step: none that
// melts or chars. Bands of temperature: EN 1492-1 and -2 (polyester to 100 °C, polypropylene to
// 80 °C), EN 13414-1 (fibre core to 100 °C), EN 818-4 and ASME B30.9 (chain), from memory.
func (s sheet) slingPieces(st *job.Step) []layout.Piece {
	if !s.h.OnHook(st) {
		return nil
	}
	return []layout.Piece{{Block: s.paras(layout.Strong, []string{s.W.HeatPull.SlingHot}), Gap: 1.5}}
}
