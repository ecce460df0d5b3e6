package picture

import (
	"matchmark/layout"
	"matchmark/layout/draw"
)

// The pictures of sizes of one part, and of play between two.

// bore: a hole in section, measured across.
func bore(s *draw.Scene, mark layout.Block) {
	sectionBox(s, draw.XY{X: 6, Y: 14.5}, draw.XY{X: 30, Y: 18}, true)
	sectionBox(s, draw.XY{X: 6, Y: 2}, draw.XY{X: 30, Y: 5.5}, false)
	s.CenterLine(draw.XY{X: 3, Y: 10}, draw.XY{X: 33, Y: 10})
	s.DoubleArrow(draw.Thin, draw.XY{X: 15, Y: 5.5}, draw.XY{X: 15, Y: 14.5})
	s.Label(draw.XY{X: 16.5, Y: 12}, mark, 0, 0.5)
}

// depth: from a face down to the floor of a recess.
func depth(s *draw.Scene, mark layout.Block) {
	sectionBox(s, draw.XY{X: 3, Y: 3}, draw.XY{X: 9, Y: 15}, true)
	sectionBox(s, draw.XY{X: 27, Y: 3}, draw.XY{X: 33, Y: 15}, true)
	sectionBox(s, draw.XY{X: 9, Y: 3}, draw.XY{X: 27, Y: 6}, true)
	s.Lines(draw.Thin, draw.XY{X: 9, Y: 15}, draw.XY{X: 27, Y: 15})
	s.DoubleArrow(draw.Thin, draw.XY{X: 13, Y: 6}, draw.XY{X: 13, Y: 15})
	s.Label(draw.XY{X: 14.5, Y: 10.5}, mark, 0, 0.5)
}

// length: a bar between its two ends.
func length(s *draw.Scene, mark layout.Block) {
	s.Box(draw.Thick, layout.Usual, draw.XY{X: 4, Y: 5}, draw.XY{X: 32, Y: 12})
	s.CenterLine(draw.XY{X: 2, Y: 8.5}, draw.XY{X: 34, Y: 8.5})
	s.Dim(draw.XY{X: 4, Y: 12}, draw.XY{X: 32, Y: 12}, 2, mark)
}

// thickness: a plate between its two faces.
func thickness(s *draw.Scene, mark layout.Block) {
	sectionBox(s, draw.XY{X: 4, Y: 7.5}, draw.XY{X: 26, Y: 12.5}, true)
	s.Arrow(draw.Thin, draw.XY{X: 30, Y: 17}, draw.XY{X: 30, Y: 12.5})
	s.Arrow(draw.Thin, draw.XY{X: 30, Y: 3}, draw.XY{X: 30, Y: 7.5})
	s.Lines(draw.Thin, draw.XY{X: 26, Y: 12.5}, draw.XY{X: 32, Y: 12.5})
	s.Lines(draw.Thin, draw.XY{X: 26, Y: 7.5}, draw.XY{X: 32, Y: 7.5})
	s.Label(draw.XY{X: 30, Y: 10}, mark, 0.5, 0.5)
}

// backlash: the play between a tooth and the gap that it sits in.
func backlash(s *draw.Scene, mark layout.Block) {
	s.Lines(draw.Thick, draw.XY{X: 1, Y: 14}, draw.XY{X: 7, Y: 14}, draw.XY{X: 11, Y: 3}, draw.XY{X: 22, Y: 3}, draw.XY{X: 26, Y: 14}, draw.XY{X: 32, Y: 14})
	// The tooth bears on the left flank; the play is on the right.
	s.Lines(draw.Thick, draw.XY{X: 3, Y: 17}, draw.XY{X: 6, Y: 17}, draw.XY{X: 10.4, Y: 5}, draw.XY{X: 16.5, Y: 5}, draw.XY{X: 20.5, Y: 17}, draw.XY{X: 25, Y: 17})
	s.Arrow(draw.Thin, draw.XY{X: 13, Y: 10}, draw.XY{X: 18.2, Y: 10})
	s.Arrow(draw.Thin, draw.XY{X: 31, Y: 10}, draw.XY{X: 24.6, Y: 10})
	s.Label(draw.XY{X: 27, Y: 7}, mark, 0, 0.5)
}

// angle: two legs and the arc between them.
func angle(s *draw.Scene, mark layout.Block) {
	o := draw.XY{X: 5, Y: 4}
	s.Lines(draw.Thick, draw.XY{X: 32, Y: 4}, o, draw.XY{X: 32, Y: 18})
	s.Arc(draw.Thin, o, 15, 62.6, 90)
	s.Label(draw.XY{X: 21, Y: 8}, mark, 0, 0.5)
}
