package layout_test

import (
	"fmt"
	"unicode/utf8"

	"matchmark/layout"
)

// ruler measures every sign half as wide as its type is high; a program hands in
// the faces of package layout/pdf instead.
type ruler struct{}

func (ruler) Width(_ layout.Face, size layout.Pt, s string) layout.Mm {
	return layout.Mm(utf8.RuneCountInString(s)) * size.Mm() / 2
}

func (ruler) Has(_ layout.Face, r rune) bool { return r < 0x180 }

func Example() {
	s := layout.NewSetter(ruler{}, layout.Pen{})
	paper := layout.Paper{Name: "slip", W: 80, H: 60, Left: 5, Right: 5, Top: 5, Bottom: 5}
	w, _ := paper.Inner()

	step := layout.Above(layout.GapY,
		s.Para(w, []layout.Run{layout.T(layout.Body, "Measure the nut from the shaft end, then take it off.")}, layout.ParaOpts{}),
		s.Value(layout.Number{Before: 3, After: 2, Unit: "mm"}),
	)
	p := layout.Paginate(paper, []layout.Sheet{{Name: "slip", Title: "Slip", Pieces: []layout.Piece{{Block: step}}}})
	fmt.Print(layout.Dump(p.Frames[0]))

	// What does not fit is said, and nothing is shrunk.
	b := s.Line(20, []layout.Run{layout.T(layout.Limit, "130.015 to 130.040 mm")}, layout.ParaOpts{Ref: "fan.yaml:12"})
	for _, m := range b.Misfits() {
		fmt.Println(m.Ref, m)
	}
	// Output:
	// frame slip 80.00 x 60.00
	//    5.00    8.39  text regular 10 pt w 61.74 "Measure the nut from the shaft end,"
	//    5.00   12.63  text regular 10 pt w 29.99 "then take it off."
	//    5.00   16.48  rect 37.00 x 9.00 stroke 0.30 cells 6 point 4 [box:value]
	//    5.00   16.48  path 10 steps within 7.41 0.51 29.59 8.49 stroke 0.18 faint dash 0.40
	//   26.25   23.28  path 6 steps within -0.55 -0.55 0.55 0.55 fill black
	//   43.50   22.25  text regular 10 pt w 3.53 "mm"
	// fan.yaml:12 "130.015 to 130.040 mm" is too wide by 20.7 mm
}
