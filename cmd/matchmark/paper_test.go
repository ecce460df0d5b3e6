package main

import (
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

// leastBox is the least size of each write-in box, in millimetres: the table of
// box sizes that was tried with real pens. Words is the least line of handwriting.
var leastBox = map[string][2]layout.Mm{
	layout.RoleValue:    {9.5, 9},
	layout.RoleSign:     {9, 7},
	layout.RoleFraction: {15, 9},
	layout.RoleTick:     {6, 6},
	layout.RoleInitials: {18, 9},
	layout.RoleName:     {55, 10},
	layout.RoleDate:     {24, 9},
	layout.RoleTime:     {18, 9},
	layout.RoleCount:    {20, 9},
	layout.RoleWords:    {15, 9},
	layout.RoleTally:    {12, 9},
	layout.RoleSketch:   {80, 60},
}

// TestNothingOutside sees that every item of every page lies on its page, every
// write-in box has its size, and no two boxes are nearer than a pen needs.
func TestNothingOutside(t *testing.T) {
	t.Parallel()
	for _, starter := range starters(t) {
		for _, paper := range papers {
			for _, gloves := range []bool{false, true} {
				_, pack := composed(t, starter, templates.Options{Paper: paper, Pen: layout.Pen{Gloves: gloves}})
				for i, f := range pack.Pages.Pages {
					checkFrame(t, starter, i+1, f, gloves)
				}
				for i, f := range pack.Tags.Pages {
					checkFrame(t, starter, i+1, f, false)
				}
			}
		}
	}
}

// edge is the strip of paper that an office printer does not reach, and paperLeast the
// width of a page from which it is one of such a printer.
const edge, paperLeast layout.Mm = 4, 200

func checkFrame(t *testing.T, starter string, page int, f layout.Frame, gloves bool) {
	t.Helper()
	var boxes [][4]layout.Mm
	for _, it := range f.Items {
		l, top, r, b := it.Bounds()
		edge := edge
		if m, ok := it.Shape.(layout.Modules); ok && m.Count() > 0 && f.W >= paperLeast {
			// Its white margin may lie where nothing is printed.
			edge -= m.Size * layout.QuietModules / layout.Mm(m.Count())
		}
		if f.W < paperLeast {
			edge = 0 // a label of a roll has no edge that the printer does not reach
		}
		if l < edge || top < edge || r > f.W-edge || b > f.H-edge {
			t.Errorf("%s %s page %d: item at %.1f,%.1f to %.1f,%.1f is outside %.1f by %.1f: %+v", starter, f.Sheet, page, l, top, r, b, f.W, f.H, it.Shape)
		}
		least, isBox := leastBox[it.Role]
		if !isBox {
			continue
		}
		rect := it.Shape.(layout.Rect)
		if gloves && it.Role != layout.RoleTick && it.Role != layout.RoleSign && it.Role != layout.RoleSketch {
			least[1] += 1
		}
		if rect.W < least[0]-0.01 || rect.H < least[1]-0.01 {
			t.Errorf("%s %s page %d: a box for %s is %.1f x %.1f mm, under %.1f x %.1f", starter, f.Sheet, page, it.Role, rect.W, rect.H, least[0], least[1])
		}
		if rect.Cells > 0 && rect.W < 5.5*layout.Mm(rect.Cells)+4-0.01 {
			t.Errorf("%s %s page %d: a box for %d characters is %.1f mm wide", starter, f.Sheet, page, rect.Cells, rect.W)
		}
		h := rect.Weight / 2
		boxes = append(boxes, [4]layout.Mm{l + h, top + h, r - h, b - h})
	}
	for i, a := range boxes {
		for _, b := range boxes[i+1:] {
			if a[0] < b[2]-0.05 && b[0] < a[2]-0.05 && a[1] < b[3]-0.05 && b[1] < a[3]-0.05 {
				t.Errorf("%s %s page %d: two boxes overlap at %.1f,%.1f and %.1f,%.1f", starter, f.Sheet, page, a[0], a[1], b[0], b[1])
			}
		}
	}
}
