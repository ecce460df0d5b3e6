package draw_test

import (
	"fmt"
	"unicode/utf8"

	"matchmark/layout"
	"matchmark/layout/draw"
)

type ruler struct{}

func (ruler) Width(_ layout.Face, size layout.Pt, s string) layout.Mm {
	return layout.Mm(utf8.RuneCountInString(s)) * size.Mm() / 2
}

func (ruler) Has(_ layout.Face, r rune) bool { return r < 0x180 }

// A shaft of 400 by 120 mm with its axis and length, in 60 by 30 mm of paper.
func Example() {
	s := layout.NewSetter(ruler{}, layout.Pen{})
	sc := draw.NewScene(draw.View{X0: -20, Y0: -100, X1: 420, Y1: 60}, 60, 30, nil)
	sc.Box(draw.Thick, layout.Usual, draw.XY{X: 0, Y: -60}, draw.XY{X: 400, Y: 60})
	sc.CenterLine(draw.XY{X: -20}, draw.XY{X: 420})
	sc.Dim(draw.XY{X: 400, Y: -60}, draw.XY{X: 0, Y: -60}, 4, s.Words(layout.Sub, "400"))
	b := sc.Block()
	fmt.Printf("1 : %.1f on %v x %v mm\n", 1/sc.Scale(), b.W, b.H)
	// Output: 1 : 7.3 on 60 x 30 mm
}
