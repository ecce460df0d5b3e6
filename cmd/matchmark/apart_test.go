package main

import (
	"math"
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

// TestBoxesOfWorkApart sees that two boxes of the traveler and the reassembly sheet are as
// far apart as a pen needs: 3 mm below each other, 5 mm beside each other. Boxes of one
// value stand closer: sign and figures, the parts of a fraction; so do ticks in a list. The
// cells of a ruled table and the strips of the foot share their lines.
func TestBoxesOfWorkApart(t *testing.T) {
	t.Parallel()
	const foot = 36
	alone := map[string]bool{layout.RoleValue: true, layout.RoleInitials: true, layout.RoleTime: true, layout.RoleCount: true,
		layout.RoleWords: true, layout.RoleName: true, layout.RoleSketch: true}
	for _, starter := range starters(t) {
		for _, paper := range papers {
			_, pack := composed(t, starter, templates.Options{Paper: paper})
			for _, f := range pack.Pages.BySheet() {
				if f.Sheet != "traveler" && f.Sheet != "reassembly" {
					continue
				}
				var boxes [][4]layout.Mm
				for _, part := range f.Parts {
					if part.Sheet != "traveler" && part.Sheet != "reassembly" {
						continue // a list that goes on below the work
					}
					for _, it := range f.Items[part.From:part.To] {
						if r, ok := it.Shape.(layout.Rect); ok && alone[it.Role] && it.Y < f.H-foot {
							boxes = append(boxes, [4]layout.Mm{it.X, it.Y, it.X + r.W, it.Y + r.H})
						}
					}
				}
				for k, a := range boxes {
					for _, b := range boxes[k+1:] {
						across, down := max(a[0]-b[2], b[0]-a[2]), max(a[1]-b[3], b[1]-a[3])
						if math.Abs(float64(down)) < 0.01 || math.Abs(float64(across)) < 0.01 && a[1] == b[1] && a[3] == b[3] {
							continue // cells of a ruled table
						}
						if across < layout.GapX-0.05 && down < layout.GapY-0.05 {
							t.Errorf("%s %s page %d: boxes at %.1f,%.1f and %.1f,%.1f are %.1f and %.1f mm apart", starter, paper.Name, f.Number, a[0], a[1], b[0], b[1], across, down)
						}
					}
				}
			}
		}
	}
}
