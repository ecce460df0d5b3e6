package main

import (
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
)

// boxesOf lists the write-in boxes of a role for the dimension, or other thing, that
// stands at a place of the file, on the pages of a sheet, without those that say which
// readings were not taken. cells chooses value boxes by their characters, 0 takes all.
func boxesOf(pack *templates.Pack, sheet, role string, at source.Pos, cells int) []layout.Item {
	var out []layout.Item
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != sheet {
			continue
		}
		for _, it := range f.Items {
			r, ok := it.Shape.(layout.Rect)
			if ok && it.Role == role && it.Ref == layout.Ref(at) && (cells == 0 || r.Cells == cells) && !ofNotTaken(f, it) {
				out = append(out, it)
			}
		}
	}
	return out
}

// ofNotTaken reports whether a box says that a reading was not taken: the one for the
// reason, by its caption, or the one to tick before the mark of a dimension.
func ofNotTaken(f layout.Frame, box layout.Item) bool {
	if box.Role != layout.RoleWords && box.Role != layout.RoleTick {
		return false
	}
	left, top, right, bottom := box.Bounds()
	for _, it := range f.Items {
		s, ok := it.Shape.(layout.Text)
		if !ok || it.Ref != box.Ref || it.Y < top || it.Y > bottom {
			continue
		}
		switch {
		case box.Role == layout.RoleWords && strings.HasPrefix(s.S, "not") && strings.Contains(s.S, "because") && it.X > left && it.X < right:
			return true
		case box.Role == layout.RoleTick && markAlone.MatchString(s.S) && it.X > right && it.X < right+2:
			return true
		}
	}
	return false
}

// markAlone is the mark of a dimension and nothing else.
var markAlone = regexp.MustCompile(`^D[0-9]+(/[^ ]+)?$`)

// atOf is the place of a dimension in the file.
func atOf(t *testing.T, jb *job.Job, base string) source.Pos {
	t.Helper()
	for _, d := range jb.Dims {
		if d.Base == base {
			return d.At
		}
	}
	t.Fatalf("no dimension %s", base)
	return source.Pos{}
}

// corner is where an item stands as the page is read: of a page that lies, turned
// back.
func corner(it layout.Item, f layout.Frame) (x, y float64) {
	if it.Turn == 90 {
		return float64(f.H - it.Y), float64(it.X)
	}
	return float64(it.X), float64(it.Y)
}

// checkLattice sees that boxes stand in rows of so many, each on one height, the
// columns below each other within a page.
func checkLattice(t *testing.T, paper layout.Paper, pack *templates.Pack, sheet string, at source.Pos, cells, cols int) {
	t.Helper()
	for _, f := range pack.Pages.BySheet() {
		one := &templates.Pack{Pages: &layout.Doc{Pages: []layout.Frame{f}}}
		boxes := boxesOf(one, sheet, layout.RoleValue, at, cells)
		rows := map[int][]float64{}
		for _, it := range boxes {
			x, y := corner(it, f)
			rows[int(math.Round(10*y))] = append(rows[int(math.Round(10*y))], x)
		}
		var first []float64
		for y, xs := range rows {
			slices.Sort(xs)
			if first == nil {
				first = xs
			}
			if len(xs) != cols || math.Abs(xs[0]-first[0]) > 0.05 || math.Abs(xs[cols-1]-first[len(first)-1]) > 0.05 {
				t.Errorf("%s %s page %d: a row of boxes at height %.1f stands at %.1f, want %d columns as %.1f", paper.Name, sheet, f.Number, float64(y)/10, xs, cols, first)
			}
		}
	}
}

// textsOf joins the texts that stand for a thing on the pages of a sheet.
func textsOf(pack *templates.Pack, sheet string, at source.Pos) string {
	var out []string
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != sheet {
			continue
		}
		for _, it := range f.Items {
			if s, ok := it.Shape.(layout.Text); ok && it.Ref == layout.Ref(at) {
				out = append(out, strings.ReplaceAll(s.S, "\u00a0", " "))
			}
		}
	}
	return strings.Join(out, " ")
}

// the machine is taken apart. Places of one dimension share the place in the file, so
// it is the page with the mark as well: in a frame in the head, or at the row of one of
// several places under one head.
func pageWith(pack *templates.Pack, d *job.Dim) int {
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != "traveler" && f.Sheet != "readings" {
			continue
		}
		one := &templates.Pack{Pages: &layout.Doc{Pages: []layout.Frame{f}}}
		boxes := 0
		for _, role := range []string{layout.RoleValue, layout.RoleFraction, layout.RoleSketch, layout.RoleTick, layout.RoleWords} {
			boxes += len(boxesOf(one, f.Sheet, role, d.At, 0))
		}
		sheet := d.Sheet || d.In != nil && d.In.Sheet
		told := d.Sheet && strings.Contains(textsOf(one, f.Sheet, d.At), d.Mark) // a sheet of its own has a head of its own
		if boxes > 0 && sheet == (f.Sheet == "readings") && (d.In != nil || told || boxedMark(f, d.Mark) || boxedMark(f, d.Base) && markOfRow(f, d)) {
			return f.Number
		}
	}
	return 0
}

// boxedMark reports whether a mark stands in a frame of its own on a page.
func boxedMark(f layout.Frame, mark string) bool {
	for _, it := range f.Items {
		s, ok := it.Shape.(layout.Text)
		if !ok || s.S != mark {
			continue
		}
		x, y := it.X, it.Y
		for _, frame := range f.Items {
			r, ok := frame.Shape.(layout.Rect)
			left, top, right, bottom := frame.Bounds()
			if ok && r.Radius > 0 && frame.Role == "" && x >= left && x <= left+2 && y >= top && y <= bottom && right-left < s.Width+6 {
				return true
			}
		}
	}
	return false
}

// markOfRow reports whether the mark of a dimension stands alone on a page, not as the
// name of a box to tick.
func markOfRow(f layout.Frame, d *job.Dim) bool {
	return slices.ContainsFunc(f.Items, func(it layout.Item) bool {
		s, ok := it.Shape.(layout.Text)
		if !ok || s.S != d.Mark || it.Ref != layout.Ref(d.At) {
			return false
		}
		return !slices.ContainsFunc(f.Items, func(box layout.Item) bool {
			_, top, right, bottom := box.Bounds()
			return box.Role == layout.RoleTick && it.Y >= top && it.Y <= bottom && it.X > right && it.X < right+2
		})
	})
}

// asksMark reports whether the caption in a box asks which reading was not taken.
func asksMark(f layout.Frame, box layout.Item) bool {
	left, top, right, bottom := box.Bounds()
	return slices.ContainsFunc(f.Items, func(it layout.Item) bool {
		s, ok := it.Shape.(layout.Text)
		return ok && strings.Contains(s.S, "which") && it.X > left && it.X < right && it.Y > top && it.Y < bottom
	})
}
