package stock

import (
	"errors"
	"fmt"
	"strings"
)

// Mm is a length in millimetres.
type Mm float64

// A Use is what the labels of a stock are for.
type Use int

// The uses: tags that are tied on with wire and have a stub to tear off, labels for
// boxes, labels for bags.
const (
	Hang Use = iota
	Box
	Bag
)

// Uses are the words for the uses, in their order.
var Uses = []string{"hang", "box", "bag"}

// String is the word for a use.
func (u Use) String() string { return Uses[u] }

// A Stock is a page with labels of one size in a grid, or a roll.
type Stock struct {
	Name string
	Use  Use
	Roll bool
	// PageW and PageH is the size of the page; of a roll that of one label.
	PageW, PageH Mm
	// W and H is the size of a label as it is read, its stub counted in.
	W, H Mm
	// Stub is the height of the stub at its foot, which is torn or cut off and stays with
	// the paper; 0 for none.
	Stub Mm
	// Across and Down count the labels on a page; 1 and 1 on a roll.
	Across, Down int
	// PitchX and PitchY are from one label to the next, edge to the same edge.
	PitchX, PitchY Mm
	// Left and Top are the margins: from the edges of the page to the first label.
	Left, Top Mm
	// Turned says that the labels lie on their side, their tops to the left.
	Turned bool
	// Cut says that the labels are cut from the page along printed marks; else they
	// come cut, and neither outline nor marks are printed.
	Cut bool
	// Corner is the radius of the corners.
	Corner Mm
	// Hole is the diameter of the hole for the wire, 0 for none, HoleAt its middle below
	// the upper edge, in the middle of the width.
	Hole, HoleAt Mm
	// Gap is the room between two labels of a roll.
	Gap Mm
	// Resolution is that of its printer in dots an inch, 0 where that is not known:
	// the squares of codes are made of whole dots.
	Resolution int
}

// Reach is the strip along the edges of a page that ordinary printers leave white: 4.2 mm,
// what makers of office printers state as their margin (common practice, no source).
const Reach Mm = 4.2

// Least and most of what can be right.
const (
	leastW, leastH Mm = 40, 25
	mostSide       Mm = 450
	leastHole      Mm = 5  // for a wire with its eyelet
	holeEdge       Mm = 10 // from the middle of the hole to the edge of the tag
	leastDots         = 150
	mostDots          = 2400
)

// slack is what two lengths may differ by and still be the same.
const slack Mm = 0.01

// Check tells what of a stock cannot be: labels that lie on each other or beyond the
// page, a hole at the edge. Nil says that labels can be printed on it.
func (s Stock) Check() error {
	w, h := s.W, s.H
	if s.Turned {
		w, h = h, w
	}
	switch {
	case s.W < leastW || s.H < leastH || s.W > mostSide || s.H > mostSide:
		return fmt.Errorf("a label of %s is none that can be read and handled: at least %s", sized(s.W, s.H), sized(leastW, leastH))
	case s.Across < 1 || s.Down < 1 || s.Across > 20 || s.Down > 50:
		return errors.New("a page has 1 to 20 labels across and 1 to 50 down")
	case s.Across > 1 && s.PitchX < w-slack || s.Down > 1 && s.PitchY < h-slack:
		return fmt.Errorf("labels of %s at a pitch of %s lie on each other", sized(w, h), sized(s.PitchX, s.PitchY))
	case s.Left < 0 || s.Top < 0 || s.Left+s.PitchX*Mm(s.Across-1)+w > s.PageW+slack || s.Top+s.PitchY*Mm(s.Down-1)+h > s.PageH+slack:
		return fmt.Errorf("%d by %d labels of %s do not go on a page of %s", s.Across, s.Down, sized(w, h), sized(s.PageW, s.PageH))
	case s.Hole != 0 && s.Hole < leastHole:
		return fmt.Errorf("a hole of %s takes no wire with its eyelet: at least %s", side(s.Hole), side(leastHole))
	case s.Hole != 0 && s.HoleAt < holeEdge:
		return fmt.Errorf("a hole %s from the edge tears out: its middle is at least %s from it", side(s.HoleAt), side(holeEdge))
	case s.Resolution != 0 && (s.Resolution < leastDots || s.Resolution > mostDots):
		return fmt.Errorf("a printer of %d dots an inch prints no codes that can be read: %d to %d", s.Resolution, leastDots, mostDots)
	}
	return nil
}

// sized is a size in words: 70 x 140 mm.
func sized(w, h Mm) string { return fmt.Sprintf("%g x %g mm", float64(w), float64(h)) }

// side is one length in words.
func side(l Mm) string { return fmt.Sprintf("%g mm", float64(l)) }

// PerPage is the number of labels on a page.
func (s Stock) PerPage() int { return s.Across * s.Down }

// Dots is the least length of whole dots that is not under l; l where the resolution is
// not known.
func (s Stock) Dots(l Mm) Mm {
	if s.Resolution == 0 {
		return l
	}
	dot := Mm(25.4) / Mm(s.Resolution)
	n := int((l + slack/10) / dot)
	if Mm(n)*dot < l-slack/10 {
		n++
	}
	return Mm(n) * dot
}

// Named finds a stock among some by its name, in capitals or small letters.
func Named(all []Stock, name string) (Stock, bool) {
	for _, s := range all {
		if strings.EqualFold(s.Name, name) {
			return s, true
		}
	}
	return Stock{}, false
}
